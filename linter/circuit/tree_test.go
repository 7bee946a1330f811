package circuit_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"testing"

	"loudlint/linter/circuit"
)

// tree is a network written down as data, so that one and the same can be given to the solver, to the dense solution
// below and to a circuit simulator.
type tree struct {
	hz, volts float64
	edges     []edge // edges[i] leads to node i+1
	loads     []hung
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
	return n
}

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

// dense solves a tree another way: all node voltages and all edge currents as unknowns of one system of equations
// (Kirchhoff's two laws, modified nodal analysis), by Gaussian elimination with pivoting.
func (tr tree) dense() (volts, amps []complex128, ok bool) {
	nodes, omega := len(tr.edges)+1, 2*math.Pi*tr.hz
	size := nodes + len(tr.edges)
	m := make([][]complex128, size)
	for i := range m {
		m[i] = make([]complex128, size+1)
	}
	// Row of a node: currents out of it sum to nothing. Row 0: the source holds its voltage.
	m[0][0], m[0][size] = 1, complex(tr.volts, 0)
	shunt := func(node circuit.Node, admittance complex128) {
		if node != 0 {
			m[node][node] += admittance
		}
	}
	for _, h := range tr.loads {
		total := complex128(0)
		for _, part := range h.parts {
			total += impedance(part, tr.hz)
		}
		shunt(h.at, 1/total)
	}
	for i, e := range tr.edges {
		child, current := i+1, nodes+i // current: what arrives at the child
		out := complex128(1)
		m[current][child] = 1
		if e.isAttenuator {
			v, a := e.factors()
			out = complex(a, 0)
			m[current][e.from] -= complex(v, 0)
		} else {
			m[current][e.from]--
			m[current][current] = complex(e.leg.ROhm, omega*e.leg.LHenry)
			half := complex(0, omega*e.leg.CFarad/2)
			shunt(e.from, half)
			shunt(circuit.Node(child), half)
		}
		m[child][current]--
		if e.from != 0 {
			m[e.from][current] += out
		}
	}
	x, ok := eliminate(m)
	if !ok {
		return nil, nil, false
	}
	return x[:nodes], x[nodes:], true
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
	return tr
}

func mustCurve(points []circuit.Point) *circuit.Curve {
	c, err := circuit.NewCurve(points)
	if err != nil {
		panic(err)
	}
	return c
}

// off is how far a figure is from another, as a part of it; figures below floor count as floor.
func off(got, want complex128, floor float64) float64 {
	return cmplx.Abs(got-want) / max(cmplx.Abs(want), floor)
}

var everyKind = []kind{{}, {attenuators: true}, {reactive: true}, {reactive: true, attenuators: true}}

func TestAgainstDenseNodalAnalysis(t *testing.T) {
	t.Parallel()
	for _, k := range everyKind {
		for seed := range uint64(150) {
			tr := randomTree(seed, k)
			sol := tr.solve(t)
			volts, amps, ok := tr.dense()
			if !ok {
				t.Fatalf("seed %d: the dense system is singular", seed)
			}
			for node := range volts {
				if d := off(sol.Volts(circuit.Node(node)), volts[node], 1e-9*tr.volts); d > 1e-9 {
					t.Errorf("%+v seed %d node %d: %v V, dense %v V", k, seed, node, sol.Volts(circuit.Node(node)), volts[node])
				}
			}
			for i, e := range tr.edges {
				want := amps[i]
				if e.isAttenuator {
					_, a := e.factors()
					want *= complex(a, 0)
				}
				if got := sol.LegAmps(circuit.Node(i + 1)); off(got, want, 1e-9) > 1e-9 {
					t.Errorf("%+v seed %d leg %d: %v A, dense %v A", k, seed, i+1, got, want)
				}
			}
		}
	}
}
