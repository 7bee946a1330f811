package circuit_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"loudlint/linter/circuit"
)

// eachTree runs a property over random trees of every kind.
func eachTree(t *testing.T, property func(t *testing.T, tr tree, rng *rand.Rand)) {
	t.Helper()
	t.Parallel()
	for _, k := range everyKind {
		for seed := range uint64(60) {
			tr := randomTree(1000+seed, k)
			property(t, tr, rand.New(rand.NewPCG(seed, 3)))
			if t.Failed() {
				t.Fatalf("kind %+v, seed %d: %+v", k, 1000+seed, tr)
			}
		}
	}
}

func near(t *testing.T, what string, got, want complex128, floor float64) {
	t.Helper()
	if !(off(got, want, floor) <= 1e-9) {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}

// Kirchhoff's current law: what arrives at a node leaves it, in loads, in legs and attenuators onward, and in the
// capacitance of the cable ends there.
func TestCurrentBalance(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		sol, n := tr.solve(t), tr.build()
		leaving := make([]complex128, n.Nodes())
		for id := range n.Loads() {
			// The parts of a string carry one current; count its first part alone.
			if id == 0 || !sameString(tr, id-1, id) {
				leaving[n.LoadNode(circuit.LoadID(id))] += sol.LoadAmps(circuit.LoadID(id))
			}
		}
		charging := func(node circuit.Node, leg circuit.Leg) complex128 {
			return complex(0, math.Pi*tr.hz*leg.CFarad) * sol.Volts(node)
		}
		leads := tr.sections()
		for i, e := range tr.edges {
			leaving[e.from] += sol.LegAmps(circuit.Node(i + 1))
			if leads[i+1] != goAlone {
				leaving[e.from] += charging(e.from, e.leg)
				leaving[i+1] += charging(circuit.Node(i+1), e.leg)
			}
		}
		for i, l := range tr.loops {
			if amps := sol.LoopAmps(circuit.LoopID(i)); !l.reverse {
				leaving[0] += amps + charging(0, l.leg)
				leaving[l.far] += charging(l.far, l.leg) - amps
			}
		}
		floor := tr.ampsFloor(sol)
		near(t, "source", sol.SourceAmps, leaving[0], floor)
		for i, e := range tr.edges {
			arriving := sol.LegAmps(circuit.Node(i + 1))
			if _, a := e.factors(); e.isAttenuator && a > 0 {
				arriving /= complex(a, 0)
			}
			near(t, "node", arriving, leaving[i+1], floor)
		}
	})
}

// The same in the return conductors: what comes into one, from loads and from behind, leaves it towards the terminals.
func TestReturnBalance(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		sol, n := tr.solve(t), tr.build()
		coming := make([]complex128, n.Nodes())
		for id := range n.Loads() {
			if id == 0 || !sameString(tr, id-1, id) {
				coming[n.LoadNode(circuit.LoadID(id))] += sol.LoadAmps(circuit.LoadID(id))
			}
		}
		charging := func(node circuit.Node, leg circuit.Leg) complex128 {
			return complex(0, math.Pi*tr.hz*leg.CFarad) * sol.Volts(node)
		}
		leads := tr.sections()
		for i, e := range tr.edges {
			coming[e.from] += sol.ReturnAmps(circuit.Node(i + 1))
			if leads[i+1] != goAlone {
				coming[e.from] += charging(e.from, e.leg)
				coming[i+1] += charging(circuit.Node(i+1), e.leg)
			}
		}
		for i, l := range tr.loops {
			coming[l.far] -= sol.LoopAmps(circuit.LoopID(i))
			if !l.reverse {
				coming[l.far] += charging(l.far, l.leg)
			}
		}
		for i, e := range tr.edges {
			if !e.isAttenuator {
				near(t, "return conductor", sol.ReturnAmps(circuit.Node(i+1)), coming[i+1], tr.ampsFloor(sol))
			}
		}
	})
}

func sameString(tr tree, a, b int) bool {
	first := 0
	for _, h := range tr.loads {
		next := first + len(h.parts)
		if a >= first && a < next {
			return b < next
		}
		first = next
	}
	return false
}

// Energy: what the amplifier gives is what loads, series resistances, cable and attenuators take, each figure worked here
// from volts and amperes alone.
func TestEnergyBalance(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		sol, n := tr.solve(t), tr.build()
		power := func(v, i complex128) float64 { return real(v)*real(i) + imag(v)*imag(i) }
		var loads, series, cable, attenuators float64
		id := circuit.LoadID(0)
		for _, h := range tr.loads {
			across := complex128(0)
			for _, part := range h.parts {
				v, i := sol.LoadVolts(id), sol.LoadAmps(id)
				near(t, "watts of a load", complex(sol.LoadWatts(id), 0), complex(power(v, i), 0), 1e-9)
				near(t, "volts over amperes", v+i*complex(part.SeriesOhm, 0), i*impedance(part, tr.hz), 1e-9)
				loads += power(v, i)
				series += power(i, i) * part.SeriesOhm
				across += i * impedance(part, tr.hz)
				id++
			}
			near(t, "volts across a node", across, sol.Volts(h.at), 1e-9)
		}
		leads := tr.sections()
		for i, e := range tr.edges {
			child := circuit.Node(i + 1)
			v, amps := sol.Volts(e.from)-sol.Volts(child), sol.LegAmps(child)
			lost := power(v, amps)
			if e.isAttenuator {
				lost = power(sol.Volts(e.from), amps)
				if _, a := e.factors(); a > 0 {
					lost -= power(sol.Volts(child), amps/complex(a, 0))
				}
				attenuators += lost
			} else {
				switch there, back := sol.LegAmps(child), sol.ReturnAmps(child); leads[child] {
				case apart: // its node's volts are no longer against the conductor they began with
					lost = (power(there, there) + power(back, back)) * e.leg.ROhm / 2
				case goAlone:
					lost = power(there, there) * e.leg.ROhm
				case together:
				}
				cable += lost
			}
			near(t, "watts lost on the way", complex(sol.LossWatts(child), 0), complex(lost, 0), 1e-3*max(1, tr.ampsFloor(sol)*1e4))
		}
		for i, l := range tr.loops {
			amps := sol.LoopAmps(circuit.LoopID(i))
			cable += power(amps, amps) * l.leg.ROhm
			if !l.reverse { // Ohm's law of the closing leg
				z := complex(l.leg.ROhm, 2*math.Pi*tr.hz*l.leg.LHenry)
				near(t, "volts over a closing leg", sol.Volts(0)-sol.Volts(l.far), amps*z, 1e-3*tr.volts)
			}
		}
		if id != circuit.LoadID(n.Loads()) {
			t.Errorf("%d loads seen of %d", id, n.Loads())
		}
		near(t, "loads", complex(sol.TotalLoadWatts, 0), complex(loads, 0), 1e-6)
		near(t, "series", complex(sol.SeriesWatts, 0), complex(series, 0), 1e-6)
		near(t, "cable", complex(sol.CableWatts, 0), complex(cable, 0), 1e-3)
		near(t, "attenuators", complex(sol.AttenuatorWatts, 0), complex(attenuators, 0), 1e-3)
		near(t, "source", complex(sol.SourceWatts, 0), complex(loads+series+cable+attenuators, 0), 1e-6)
		if z, ok := sol.InputImpedance(); ok {
			near(t, "input impedance", z*sol.SourceAmps, complex(tr.volts, 0), 1e-9)
		} else if sol.SourceAmps != 0 {
			t.Errorf("no input impedance at %v A", sol.SourceAmps)
		}
	})
}

// Twice the volts: twice every volt and ampere, four times the watts, the same decibels.
func TestScaling(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		low := tr.solve(t)
		tr.volts *= 2
		high := tr.solve(t)
		near(t, "amperes", high.SourceAmps, 2*low.SourceAmps, 1e-9)
		near(t, "watts", complex(high.TotalLoadWatts, 0), complex(4*low.TotalLoadWatts, 0), 1e-9)
		for i := range tr.edges {
			node := circuit.Node(i + 1)
			near(t, "volts", high.Volts(node), 2*low.Volts(node), 1e-9)
			a, aOK := low.LossDB(node)
			b, bOK := high.LossDB(node)
			if aOK != bOK || math.Abs(a-b) > 1e-9 {
				t.Errorf("loss: %g dB (%t), at twice the volts %g dB (%t)", a, aOK, b, bOK)
			}
		}
	})
}

// Cutting a leg in two halves changes nothing. With capacitance the pi form of the whole and of the halves differ a
// little, by the square of the leg's length in wavelengths: up to 1 kHz under 1 in 10 000 even for these legs of several
// hundred metres.
func TestSplittingALeg(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, rng *rand.Rand) {
		for _, withC := range []bool{false, true} {
			tolerance := 1e-9
			whole := tree{hz: tr.hz, volts: tr.volts, loads: tr.loads}
			for _, l := range tr.loops {
				if !withC {
					l.leg.CFarad = 0
				}
				whole.loops = append(whole.loops, l)
			}
			for _, e := range tr.edges {
				if !withC {
					e.leg.CFarad = 0
				} else if e.leg.CFarad > 0 {
					tolerance, whole.hz = 1e-4, min(tr.hz, 1000)
				}
				whole.edges = append(whole.edges, e)
			}
			cut := rng.IntN(len(whole.edges))
			if whole.edges[cut].isAttenuator {
				continue
			}
			// The new node takes the next free number, after all others, so it cannot be the parent of an older one in a
			// network built in order: rebuild with numbers moved up from the cut.
			split := tree{hz: whole.hz, volts: tr.volts}
			moved := func(n circuit.Node) circuit.Node {
				if int(n) > cut {
					return n + 1
				}
				return n
			}
			for i, e := range whole.edges {
				e.from = moved(e.from)
				if i == cut {
					half := circuit.Leg{ROhm: e.leg.ROhm / 2, LHenry: e.leg.LHenry / 2, CFarad: e.leg.CFarad / 2}
					split.edges = append(split.edges, edge{from: e.from, leg: half})
					e = edge{from: circuit.Node(cut + 1), leg: half}
				}
				split.edges = append(split.edges, e)
			}
			for _, h := range whole.loads {
				split.loads = append(split.loads, hung{at: moved(h.at), parts: h.parts})
			}
			for _, l := range whole.loops {
				l.first, l.far = moved(l.first), moved(l.far)
				split.loops = append(split.loops, l)
			}
			a, b := whole.solve(t), split.solve(t)
			for i := range whole.edges {
				node := circuit.Node(i + 1)
				if d := off(b.Volts(moved(node)), a.Volts(node), 1e-9); d > tolerance {
					t.Errorf("leg %d cut in two, capacitance %t: node %d off by %g", cut+1, withC, node, d)
				}
			}
			if d := off(b.SourceAmps, a.SourceAmps, 1e-9); d > tolerance {
				t.Errorf("leg %d cut in two, capacitance %t: source current off by %g", cut+1, withC, d)
			}
		}
	})
}

// The order in which branches and loads are written is of no account: the same tree built in another order that keeps
// parents before children.
func TestOrderOfSiblings(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, rng *rand.Rand) {
		placed := map[circuit.Node]circuit.Node{0: 0}
		other := tree{hz: tr.hz, volts: tr.volts}
		for len(other.edges) < len(tr.edges) {
			i := rng.IntN(len(tr.edges))
			from, parentPlaced := placed[tr.edges[i].from]
			if _, done := placed[circuit.Node(i+1)]; done || !parentPlaced {
				continue
			}
			e := tr.edges[i]
			e.from = from
			other.edges = append(other.edges, e)
			placed[circuit.Node(i+1)] = circuit.Node(len(other.edges))
		}
		for _, i := range rng.Perm(len(tr.loads)) {
			other.loads = append(other.loads, hung{at: placed[tr.loads[i].at], parts: tr.loads[i].parts})
		}
		for _, i := range rng.Perm(len(tr.loops)) {
			l := tr.loops[i]
			l.first, l.far = placed[l.first], placed[l.far]
			other.loops = append(other.loops, l)
		}
		a, b := tr.solve(t), other.solve(t)
		for i := range tr.edges {
			near(t, "volts", b.Volts(placed[circuit.Node(i+1)]), a.Volts(circuit.Node(i+1)), 1e-9)
		}
		near(t, "source", b.SourceAmps, a.SourceAmps, 1e-9)
		near(t, "loads", complex(b.TotalLoadWatts, 0), complex(a.TotalLoadWatts, 0), 1e-9)
	})
}

// An attenuator at 0 dB without insertion loss is a piece of wire.
func TestAttenuatorAtZero(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		for i := range tr.edges {
			if !tr.edges[i].isAttenuator {
				continue
			}
			with, without := tr, tr
			with.edges = append([]edge(nil), tr.edges...)
			without.edges = append([]edge(nil), tr.edges...)
			with.edges[i].attenuator = circuit.Attenuator{}
			without.edges[i] = edge{from: tr.edges[i].from}
			a, b := with.solve(t), without.solve(t)
			for node := range len(tr.edges) + 1 {
				near(t, "volts", a.Volts(circuit.Node(node)), b.Volts(circuit.Node(node)), 1e-9)
			}
			near(t, "source", a.SourceAmps, b.SourceAmps, 1e-9)
		}
	})
}

// Worst is what a search over the load nodes finds.
func TestWorst(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		sol, n := tr.solve(t), tr.build()
		worstDB, found := math.Inf(-1), false
		for id := range n.Loads() {
			if lossDB, ok := sol.CableLossDB(n.LoadNode(circuit.LoadID(id))); ok {
				worstDB, found = max(worstDB, lossDB), true
			}
		}
		node, ok := sol.Worst()
		if ok != found {
			t.Fatalf("worst node found %t, by search %t", ok, found)
		}
		if !ok {
			return
		}
		if lossDB, _ := sol.CableLossDB(node); math.Abs(lossDB-worstDB) > 1e-8 {
			t.Errorf("worst node %d at %g dB, by search %g dB", node, lossDB, worstDB)
		}
	})
}
