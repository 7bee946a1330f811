package circuit_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"slices"
	"testing"

	"loudlint/linter/circuit"
)

// tree is a network written down as data, so that one and the same can be given to the solver, to the dense solution
// below and to a circuit simulator.
type tree struct {
	hz, volts float64
	edges     []edge // edges[i] leads to node i+1
	loads     []hung
	loops     []bent
}

// bent is a ring or a reverse return.
type bent struct {
	first, far circuit.Node // first: of a reverse return
	leg        circuit.Leg
	reverse    bool
}

type edge struct {
	from         circuit.Node
	leg          circuit.Leg
	attenuator   circuit.Attenuator
	isAttenuator bool
}

// hung is a load, or several in series, across a node.
type hung struct {
	at    circuit.Node
	parts []circuit.Load
}

func (tr tree) build() *circuit.Network {
	n := circuit.New(len(tr.edges) + 1)
	for _, e := range tr.edges {
		if e.isAttenuator {
			n.Attenuator(e.from, e.attenuator)
		} else {
			n.Leg(e.from, e.leg)
		}
	}
	for _, h := range tr.loads {
		if len(h.parts) == 1 {
			n.Load(h.at, h.parts[0])
		} else {
			n.Series(h.at, h.parts...)
		}
	}
	for _, l := range tr.loops {
		if l.reverse {
			n.ReverseReturn(l.first, l.far, l.leg)
		} else {
			n.Ring(l.far, l.leg)
		}
	}
	return n
}

// path lists the nodes from the terminals, without them, to a node.
func (tr tree) path(far circuit.Node) []circuit.Node {
	var path []circuit.Node
	for ; far > 0; far = tr.edges[far-1].from {
		path = slices.Insert(path, 0, far)
	}
	return path
}

// sections tells of each node what leads there: the go conductor of a reverse return alone, both its conductors apart, or
// as ever both together.
func (tr tree) sections() []section {
	leads := make([]section, len(tr.edges)+1)
	for _, l := range tr.loops {
		if !l.reverse {
			continue
		}
		for _, node := range tr.path(l.far) {
			leads[node] = apart
			if node <= l.first {
				leads[node] = goAlone
			}
		}
	}
	return leads
}

// begins tells that the return conductor of a reverse return begins at a node.
func (tr tree) begins(node circuit.Node) bool {
	return slices.ContainsFunc(tr.loops, func(l bent) bool { return l.reverse && l.first == node })
}

type section int

const (
	together section = iota
	goAlone
	apart
)

func (tr tree) solve(t testing.TB) *circuit.Solution {
	t.Helper()
	sol, err := new(circuit.Solver).Solve(tr.build(), tr.hz, tr.volts)
	if err != nil {
		t.Fatalf("%v\n%+v", err, tr)
	}
	return sol
}

// factors are V_out/V_in and I_in/I_out of an attenuator.
func (e edge) factors() (volts, amps float64) {
	if e.attenuator.Off {
		return 0, 0
	}
	amps = math.Pow(10, e.attenuator.SettingDB/20)
	return amps * math.Pow(10, -e.attenuator.InsertionDB/20), amps
}

// impedance of a load with its series resistance.
func impedance(l circuit.Load, hz float64) complex128 {
	series := complex(l.SeriesOhm, 0)
	switch {
	case l.Curve != nil:
		scale := l.CurveScale
		if scale == 0 {
			scale = 1
		}
		return complex(scale, 0)*l.Curve.At(hz) + series
	case l.Ohm > 0:
		return complex(l.Ohm, 0) + series
	default:
		return complex(l.MarkedVolts*l.MarkedVolts/l.PowerW, 0) + series
	}
}

// exactly is what the dense solution gives.
type exactly struct {
	volts      []complex128 // by node, between its two conductors
	amps       []complex128 // by edge: what arrives at its node
	returning  []complex128 // by edge: what comes back through its second conductor
	closing    []complex128 // by loop
	sourceAmps complex128
}

// dense solves a tree with its loops another way: the potential of every conductor at every node and the current of every
// conductor between nodes as unknowns of one system of equations (Kirchhoff's two laws, modified nodal analysis), by
// Gaussian elimination with pivoting. The return conductor of a two-core leg is one node with all others that it is joined
// to; only that of a reverse return has potentials of its own.
func (tr tree) dense() (x exactly, ok bool) {
	nodes, edges, loops, omega := len(tr.edges)+1, len(tr.edges), len(tr.loops), 2*math.Pi*tr.hz
	// Unknowns: potentials of the go conductors, of the return conductors, currents there, currents back, of loops, source.
	ret, there, back := nodes, 2*nodes, 2*nodes+edges
	loop, source := back+edges, back+edges+loops
	size := source + 1
	m := make([][]complex128, size)
	for i := range m {
		m[i] = make([]complex128, size+1)
	}
	leads := tr.sections()
	low := make([]int, nodes) // which return conductor a node hangs on; -1 for that of the terminals
	low[0] = -1
	for i, e := range tr.edges {
		low[i+1] = low[e.from]
		if leads[i+1] == apart || tr.begins(circuit.Node(i+1)) {
			low[i+1] = ret + i + 1
		}
	}
	put := func(row, column int, value complex128) {
		if row >= 0 && column >= 0 { // the other terminal is at no potential and has no equation
			m[row][column] += value
		}
	}
	// Row of a conductor at a node: currents out of it sum to nothing.
	flows := func(from, to, current int, amps complex128) { put(from, current, amps); put(to, current, -amps) }
	shunt := func(node circuit.Node, admittance complex128) {
		g, r := int(node), low[node]
		put(g, g, admittance)
		put(g, r, -admittance)
		put(r, g, -admittance)
		put(r, r, admittance)
	}
	// Row of a current: the potential falls by z times it.
	falls := func(row, from, to int, z complex128) {
		put(row, from, 1)
		put(row, to, -1)
		put(row, row, -z)
	}
	used := func(unknown int) { m[unknown][unknown] = 1 } // one that does not exist: 0
	for _, h := range tr.loads {
		total := complex128(0)
		for _, part := range h.parts {
			total += impedance(part, tr.hz)
		}
		shunt(h.at, 1/total)
	}
	for i, e := range tr.edges {
		child, parent, current := i+1, int(e.from), there+i
		z := complex(e.leg.ROhm, omega*e.leg.LHenry)
		charges := func() {
			half := complex(0, omega*e.leg.CFarad/2)
			shunt(e.from, half)
			shunt(circuit.Node(child), half)
		}
		switch {
		case e.isAttenuator:
			v, a := e.factors()
			put(current, child, 1)
			put(current, low[child], -1)
			put(current, parent, complex(-v, 0))
			put(current, low[child], complex(v, 0))
			flows(parent, low[child], current, complex(a, 0))
			flows(low[child], child, current, 1)
			used(back + i)
		case leads[child] == apart:
			falls(current, parent, child, z/2)
			flows(parent, child, current, 1)
			falls(back+i, low[child], low[parent], z/2)
			flows(low[child], low[parent], back+i, 1)
			charges()
		default:
			falls(current, parent, child, z)
			flows(parent, child, current, 1)
			used(back + i)
			if leads[child] == together {
				charges()
			}
		}
	}
	for i, l := range tr.loops {
		z := complex(l.leg.ROhm, omega*l.leg.LHenry)
		if l.reverse {
			falls(loop+i, low[l.far], -1, z)
			flows(low[l.far], -1, loop+i, 1)
			continue
		}
		falls(loop+i, 0, int(l.far), z)
		flows(0, int(l.far), loop+i, 1)
		half := complex(0, omega*l.leg.CFarad/2)
		shunt(0, half)
		shunt(l.far, half)
	}
	put(0, source, -1)
	m[source][0], m[source][size] = 1, complex(tr.volts, 0)
	for node := range nodes {
		if low[node] != ret+node {
			used(ret + node)
		}
	}
	u, ok := eliminate(m)
	if !ok {
		return x, false
	}
	x = exactly{volts: make([]complex128, nodes), amps: u[there:back], returning: make([]complex128, edges), closing: u[loop:source], sourceAmps: u[source]}
	for node := range nodes {
		x.volts[node] = u[node]
		if low[node] >= 0 {
			x.volts[node] -= u[low[node]]
		}
	}
	for i, e := range tr.edges {
		switch {
		case leads[i+1] == apart:
			x.returning[i] = u[back+i]
		case leads[i+1] == together && !e.isAttenuator:
			x.returning[i] = u[there+i]
		}
	}
	return x, true
}

func eliminate(m [][]complex128) ([]complex128, bool) {
	size := len(m)
	for col := range size {
		pivot := col
		for row := col + 1; row < size; row++ {
			if cmplx.Abs(m[row][col]) > cmplx.Abs(m[pivot][col]) {
				pivot = row
			}
		}
		if !(cmplx.Abs(m[pivot][col]) > 0) {
			return nil, false
		}
		m[col], m[pivot] = m[pivot], m[col]
		for row := col + 1; row < size; row++ {
			factor := m[row][col] / m[col][col]
			if factor == 0 {
				continue
			}
			for k := col; k <= size; k++ {
				m[row][k] -= factor * m[col][k]
			}
		}
	}
	x := make([]complex128, size)
	for row := size - 1; row >= 0; row-- {
		sum := m[row][size]
		for k := row + 1; k < size; k++ {
			sum -= m[row][k] * x[k]
		}
		x[row] = sum / m[row][row]
	}
	return x, true
}

// kind says what randomTree may use.
type kind struct {
	reactive    bool // inductance, capacitance, curves
	attenuators bool
	loops       bool // rings and reverse returns
}

// randomTree makes the same tree for the same seed on every machine: figures are whole numbers over a power of ten, which
// no compiler rounds differently.
func randomTree(seed uint64, k kind) tree {
	rng := rand.New(rand.NewPCG(seed, 2))
	upTo := func(highest int, unit float64) float64 { return float64(1+rng.IntN(highest)) / unit }
	tr := tree{hz: []float64{50, 400, 1000, 4000, 20000}[rng.IntN(5)], volts: []float64{25, 70.7, 100}[rng.IntN(3)]}

	curves := []*circuit.Curve{
		mustCurve([]circuit.Point{{Hz: 1000, Ohm: 1667, Degrees: -30}}),
		mustCurve([]circuit.Point{{Hz: 100, Ohm: 20, Degrees: 50}, {Hz: 1000, Ohm: 7, Degrees: -10}, {Hz: 20000, Ohm: 30, Degrees: 60}}),
	}
	randomLoad := func() circuit.Load {
		l := circuit.Load{PowerW: upTo(600, 10), MarkedVolts: []float64{70.7, 100}[rng.IntN(2)]}
		switch choice := rng.IntN(6); {
		case choice == 0:
			l = circuit.Load{Ohm: upTo(4000, 10)}
		case choice == 1 && k.reactive:
			l = circuit.Load{Curve: curves[0], CurveScale: upTo(300, 100)}
		case choice == 2 && k.reactive:
			l = circuit.Load{Curve: curves[1]}
		}
		if rng.IntN(3) == 0 {
			l.SeriesOhm = upTo(500, 10)
		}
		return l
	}

	for count := 1 + rng.IntN(15); count > 0; count-- {
		e := edge{from: circuit.Node(rng.IntN(len(tr.edges) + 1))}
		if rng.IntN(3) > 0 { // mostly on from the last, as lines are
			e.from = circuit.Node(len(tr.edges))
		}
		switch {
		case k.attenuators && rng.IntN(4) == 0:
			e.isAttenuator = true
			e.attenuator = circuit.Attenuator{SettingDB: -float64(rng.IntN(25)), InsertionDB: float64(rng.IntN(20)) / 10}
			e.attenuator.Off = rng.IntN(8) == 0
		default:
			if rng.IntN(8) > 0 { // else a leg of no length
				e.leg.ROhm = upTo(5000, 1000)
			}
			if k.reactive {
				e.leg.LHenry = upTo(500, 1e6)
				e.leg.CFarad = upTo(50, 1e9)
			}
		}
		tr.edges = append(tr.edges, e)
		for range rng.IntN(3) {
			h := hung{at: circuit.Node(len(tr.edges)), parts: []circuit.Load{randomLoad()}}
			if rng.IntN(5) == 0 {
				h.parts = append(h.parts, randomLoad(), randomLoad())
			}
			tr.loads = append(tr.loads, h)
		}
	}
	tr.loads = append(tr.loads, hung{at: circuit.Node(len(tr.edges)), parts: []circuit.Load{randomLoad()}})
	if k.loops {
		tr.loops = tr.somewhere(rand.New(rand.NewPCG(seed, 7)), k)
	}
	return tr
}

// somewhere gives up to three loops that have no leg in common.
func (tr tree) somewhere(rng *rand.Rand, k kind) []bent {
	var loops []bent
	laid := map[circuit.Node]bool{}
	for range 3 {
		l := bent{far: circuit.Node(1 + rng.IntN(len(tr.edges))), reverse: rng.IntN(2) == 0}
		if rng.IntN(6) > 0 {
			l.leg.ROhm = float64(1+rng.IntN(8000)) / 1000
		}
		if k.reactive {
			l.leg.LHenry = float64(1+rng.IntN(500)) / 1e6
			l.leg.CFarad = float64(1+rng.IntN(50)) / 1e9
		}
		l.first = tr.firstOf(l.far, rng)
		free := true
		path := tr.path(l.far)
		for _, node := range path {
			free = free && !laid[node] && !tr.edges[node-1].isAttenuator
		}
		if !free {
			continue
		}
		loops = append(loops, l)
		for _, node := range path {
			laid[node] = true
		}
	}
	return loops
}

// firstOf picks where a reverse return may begin on the way to a node: nothing hangs on the way there.
func (tr tree) firstOf(far circuit.Node, rng *rand.Rand) circuit.Node {
	path := tr.path(far)
	for i, node := range path {
		hangs := node == far || rng.IntN(4) == 0
		for j, e := range tr.edges {
			hangs = hangs || e.from == node && circuit.Node(j+1) != path[i+1]
		}
		for _, h := range tr.loads {
			hangs = hangs || h.at == node
		}
		if hangs {
			return node
		}
	}
	panic("a way without an end")
}

func mustCurve(points []circuit.Point) *circuit.Curve {
	c, err := circuit.NewCurve(points)
	if err != nil {
		panic(err)
	}
	return c
}

// ampsFloor is below what a current counts as that much: where currents from both ends of a loop meet, what is left of them
// is rounding of the two.
func (tr tree) ampsFloor(sol *circuit.Solution) float64 {
	floor := max(1e-9, 1e-6*cmplx.Abs(sol.SourceAmps))
	for i := range tr.loops {
		floor = max(floor, 1e-3*cmplx.Abs(sol.SourceAmps), 1e-3*cmplx.Abs(sol.LoopAmps(circuit.LoopID(i))))
	}
	return floor
}

// off is how far a figure is from another, as a part of it; figures below floor count as floor.
func off(got, want complex128, floor float64) float64 {
	return cmplx.Abs(got-want) / max(cmplx.Abs(want), floor)
}

var everyKind = []kind{
	{}, {attenuators: true}, {reactive: true}, {reactive: true, attenuators: true},
	{loops: true}, {loops: true, attenuators: true}, {loops: true, reactive: true}, {loops: true, reactive: true, attenuators: true},
}

func TestAgainstDenseNodalAnalysis(t *testing.T) {
	t.Parallel()
	rings, reverses := 0, 0
	for _, k := range everyKind {
		for seed := range uint64(150) {
			tr := randomTree(seed, k)
			sol := tr.solve(t)
			x, ok := tr.dense()
			if !ok {
				t.Fatalf("seed %d: the dense system is singular", seed)
			}
			highest := tr.volts
			for _, v := range x.volts {
				highest = max(highest, cmplx.Abs(v))
			}
			agrees := func(what string, index int, got, want complex128, floor float64) {
				if d := off(got, want, floor); !(d <= 1e-9*highest/tr.volts) {
					t.Errorf("%+v seed %d %s %d: %v, dense %v, off by %g", k, seed, what, index, got, want, d)
				}
			}
			for node := range x.volts {
				agrees("volts at node", node, sol.Volts(circuit.Node(node)), x.volts[node], 1e-6*tr.volts)
			}
			floor := tr.ampsFloor(sol)
			for i, e := range tr.edges {
				want := x.amps[i]
				if e.isAttenuator {
					_, a := e.factors()
					want *= complex(a, 0)
				} else {
					agrees("returning amperes of leg", i+1, sol.ReturnAmps(circuit.Node(i+1)), x.returning[i], floor)
				}
				agrees("amperes of leg", i+1, sol.LegAmps(circuit.Node(i+1)), want, floor)
			}
			for i, l := range tr.loops {
				agrees("amperes of loop", i, sol.LoopAmps(circuit.LoopID(i)), x.closing[i], floor)
				if l.reverse {
					reverses++
				} else {
					rings++
				}
			}
			agrees("amperes of the source", 0, sol.SourceAmps, x.sourceAmps, floor)
		}
	}
	t.Logf("%d rings, %d reverse returns", rings, reverses)
}
