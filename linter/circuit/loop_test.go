package circuit_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"strings"
	"testing"

	"loudlint/linter/circuit"
)

// hold compares a figure with one worked by hand.
func hold(t *testing.T, what string, got complex128, want float64) {
	t.Helper()
	if !(cmplx.Abs(got-complex(want, 0)) <= 1e-12*max(1, math.Abs(want))) {
		t.Errorf("%s: %v, by hand %v", what, got, want)
	}
}

// One load in the middle of a ring, 4 ohm of cable either way: two equal paths in parallel, 2 ohm before 98 ohm. At 100 V
// flows 1 A, half of it each way; 98 V arrive, and the cable takes 2 × 0.5² × 4 = 2 W.
func TestRingWithOneLoad(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	middle := n.Leg(0, circuit.Leg{ROhm: 4})
	n.Load(middle, circuit.Load{Ohm: 98})
	ring := n.Ring(middle, circuit.Leg{ROhm: 4})
	sol := solve(t, n, 1000, 100)
	hold(t, "source", sol.SourceAmps, 1)
	hold(t, "volts", sol.Volts(middle), 98)
	hold(t, "by the first leg", sol.LegAmps(middle), 0.5)
	hold(t, "round the ring", sol.LoopAmps(ring), 0.5)
	hold(t, "watts in the closing leg", complex(sol.LoopWatts(ring), 0), 1)
	hold(t, "watts in the cable", complex(sol.CableWatts, 0), 2)
	z, _ := sol.InputImpedance()
	hold(t, "input impedance", z, 100)
}

// One load anywhere in a ring of 12 ohm in all: a ohm one way and 12 − a the other in parallel, a·(12 − a)/12, and the
// currents in the opposite proportion of the ways.
func TestRingDividesByItsWays(t *testing.T) {
	t.Parallel()
	for _, a := range []float64{0, 1, 3, 6, 9, 12} {
		n := circuit.New(2)
		at := n.Leg(0, circuit.Leg{ROhm: a})
		n.Load(at, circuit.Load{Ohm: 50})
		ring := n.Ring(at, circuit.Leg{ROhm: 12 - a})
		sol := solve(t, n, 1000, 100)
		amps := 100 / (50 + a*(12-a)/12)
		hold(t, "volts", sol.Volts(at), 50*amps)
		hold(t, "by the first leg", sol.LegAmps(at), amps*(12-a)/12)
		hold(t, "round the ring", sol.LoopAmps(ring), amps*a/12)
	}
}

// Two equal loads, as far from the amplifier on either side: the leg between them joins two nodes of one voltage, so
// nothing flows there and each load is fed by its own side: 100 V × 48/50 = 96 V, 2 A each.
func TestRingOfTwoAlike(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	first := n.Leg(0, circuit.Leg{ROhm: 2})
	second := n.Leg(first, circuit.Leg{ROhm: 7})
	n.Load(first, circuit.Load{Ohm: 48})
	n.Load(second, circuit.Load{Ohm: 48})
	ring := n.Ring(second, circuit.Leg{ROhm: 2})
	sol := solve(t, n, 1000, 100)
	for _, node := range []circuit.Node{first, second} {
		hold(t, "volts", sol.Volts(node), 96)
	}
	hold(t, "first leg", sol.LegAmps(first), 2)
	hold(t, "leg between", sol.LegAmps(second), 0)
	hold(t, "closing leg", sol.LoopAmps(ring), 2)
}

// Two rings on one source: each is as it would be alone.
func TestTwoRings(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	a, b := n.Leg(0, circuit.Leg{ROhm: 4}), n.Leg(0, circuit.Leg{ROhm: 8})
	n.Load(a, circuit.Load{Ohm: 98})
	n.Load(b, circuit.Load{Ohm: 96})
	n.Ring(a, circuit.Leg{ROhm: 4})
	n.Ring(b, circuit.Leg{ROhm: 8})
	sol := solve(t, n, 1000, 100)
	hold(t, "volts of the one", sol.Volts(a), 98)
	hold(t, "volts of the other", sol.Volts(b), 96)
	hold(t, "source", sol.SourceAmps, 2)
}

// A ring whose cable has no impedance is one node: the amplifier's.
func TestRingOfNoLength(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	end := n.Leg(n.Leg(0, circuit.Leg{}), circuit.Leg{})
	n.Load(end, circuit.Load{Ohm: 50})
	n.Ring(end, circuit.Leg{})
	sol := solve(t, n, 1000, 100)
	hold(t, "volts", sol.Volts(end), 100)
	hold(t, "source", sol.SourceAmps, 2)
}

// A closing leg of no impedance holds the far node at the amplifier's volts: the node between has two equal legs before it,
// 4 ohm in parallel with 4, and 98 V.
func TestRingClosedAtTheTerminals(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	between := n.Leg(0, circuit.Leg{ROhm: 4})
	far := n.Leg(between, circuit.Leg{ROhm: 4})
	n.Load(between, circuit.Load{Ohm: 98})
	ring := n.Ring(far, circuit.Leg{})
	sol := solve(t, n, 1000, 100)
	hold(t, "volts at the far node", sol.Volts(far), 100)
	hold(t, "volts between", sol.Volts(between), 98)
	hold(t, "leg to the far node", sol.LegAmps(far), -0.5)
	hold(t, "closing leg", sol.LoopAmps(ring), 0.5)
}

// Two equal loads of 40 ohm with a reverse return: go conductor 1 ohm to the first, the pair between them 4 ohm (2 in each
// conductor), return conductor 3 ohm from the second. Both loops hold 1 + 2 + 3 ohm of cable, so both loads get half the
// current I: 100 V = 1 I + 40 I/2 + 2 I/2 + 3 I = 25 I. So I = 4 A, 80 V on each. One loaded two-core cable of the same
// conductors would leave the second with less than the first.
func TestReverseReturnOfTwo(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	first := n.Leg(0, circuit.Leg{ROhm: 1})
	second := n.Leg(first, circuit.Leg{ROhm: 4})
	for _, node := range []circuit.Node{first, second} {
		n.Load(node, circuit.Load{Ohm: 40})
	}
	back := n.ReverseReturn(first, second, circuit.Leg{ROhm: 3})
	sol := solve(t, n, 1000, 100)
	hold(t, "source", sol.SourceAmps, 4)
	hold(t, "volts at the first", sol.Volts(first), 80)
	hold(t, "volts at the second", sol.Volts(second), 80)
	hold(t, "go conductor to the first", sol.LegAmps(first), 4)
	hold(t, "return conductor before the first", sol.ReturnAmps(first), 0)
	hold(t, "go conductor between", sol.LegAmps(second), 2)
	hold(t, "return conductor between", sol.ReturnAmps(second), -2)
	hold(t, "return conductor home", sol.LoopAmps(back), 4)
	// 16·1 before, 4·2 + 4·2 between, 16·3 home.
	hold(t, "watts in the cable", complex(sol.CableWatts, 0), 80)
	hold(t, "watts between", complex(sol.LossWatts(second), 0), 16)
	hold(t, "watts home", complex(sol.LoopWatts(back), 0), 48)
	z, _ := sol.InputImpedance()
	hold(t, "input impedance", z, 25)
}

// Three equal loads R, r in each conductor between neighbours: the outer two are alike by symmetry, and with I1 in each and
// I2 in the middle one, I = 2·I1 + I2. Between the first and the middle the go conductor carries I1 + I2 and the return
// conductor I1: R·I2 = R·I1 − r·(I1 + I2) + r·I1, so I1 = I2·(1 + r/R). With R = 10 and r = 5: 1.5 to 1, and for I2 = 2 A
// I1 = 3 A and I = 8 A. The loop of the first: 1·8 + 10·3 + 5·3 + 5·(3 + 2) + 2·8 = 94 V.
func TestReverseReturnOfThree(t *testing.T) {
	t.Parallel()
	n := circuit.New(4)
	run := n.Chain(n.Leg(0, circuit.Leg{ROhm: 1}), 3, circuit.Leg{}, circuit.Load{Ohm: 10})
	first, middle, last := run.First, run.First+1, run.Last
	n.SetLeg(middle, circuit.Leg{ROhm: 10})
	n.SetLeg(last, circuit.Leg{ROhm: 10})
	back := n.ReverseReturn(first, last, circuit.Leg{ROhm: 2})
	sol := solve(t, n, 1000, 94)
	hold(t, "volts at the first", sol.Volts(first), 30)
	hold(t, "volts in the middle", sol.Volts(middle), 20)
	hold(t, "volts at the last", sol.Volts(last), 30)
	hold(t, "source", sol.SourceAmps, 8)
	hold(t, "go conductor to the middle", sol.LegAmps(middle), 5)
	hold(t, "go conductor to the last", sol.LegAmps(last), 3)
	hold(t, "return conductor to the middle", sol.ReturnAmps(middle), -3)
	hold(t, "return conductor to the last", sol.ReturnAmps(last), -5)
	hold(t, "return conductor home", sol.LoopAmps(back), 8)
	if worst, ok := sol.Worst(); !ok || worst != middle {
		t.Errorf("worst is node %d, want %d, the middle", worst, middle)
	}
}

// Equal loads at equal distances on a reverse return: as much from the one end as from the other, whatever the conductors
// there and home are.
func TestReverseReturnIsEven(t *testing.T) {
	t.Parallel()
	n := circuit.New(12)
	run := n.Chain(n.Leg(0, circuit.Leg{ROhm: 9}), 10, circuit.Leg{ROhm: 0.8}, circuit.Load{PowerW: 20, MarkedVolts: 100})
	n.ReverseReturn(run.First, run.Last, circuit.Leg{ROhm: 1})
	sol := solve(t, n, 1000, 100)
	for k := range circuit.Node(5) {
		near(t, "volts", sol.Volts(run.First+k), sol.Volts(run.Last-k), 1)
	}
}

// One device on a reverse return has one conductor there and one back.
func TestReverseReturnOfOne(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	at := n.Leg(0, circuit.Leg{ROhm: 2})
	n.Load(at, circuit.Load{Ohm: 45})
	n.ReverseReturn(at, at, circuit.Leg{ROhm: 3})
	sol := solve(t, n, 1000, 100)
	hold(t, "source", sol.SourceAmps, 2)
	hold(t, "volts", sol.Volts(at), 90)
}

// With nothing that draws current the volts are everywhere the amplifier's.
func TestReverseReturnUnloaded(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	first := n.Leg(0, circuit.Leg{ROhm: 2})
	last := n.Leg(first, circuit.Leg{ROhm: 2})
	n.ReverseReturn(first, last, circuit.Leg{ROhm: 3})
	sol := solve(t, n, 1000, 100)
	hold(t, "volts", sol.Volts(last), 100)
	if _, ok := sol.InputImpedance(); ok {
		t.Error("an unloaded line has an impedance")
	}
}

// A closing leg of a million megohm closes nothing.
func TestRingOpensIntoATree(t *testing.T) {
	eachTree(t, func(t *testing.T, tr tree, _ *rand.Rand) {
		open := tr
		open.loops = nil
		closed := open
		for _, l := range tr.loops {
			if l.reverse {
				return
			}
			l.leg = circuit.Leg{ROhm: 1e9}
			closed.loops = append(closed.loops, l)
		}
		a, b := open.solve(t), closed.solve(t)
		for i := range tr.edges {
			if d := off(b.Volts(circuit.Node(i+1)), a.Volts(circuit.Node(i+1)), 1e-3*tr.volts); d > 1e-5 {
				t.Errorf("node %d off by %g", i+1, d)
			}
		}
		if d := off(b.SourceAmps, a.SourceAmps, 1e-3); d > 1e-4 {
			t.Errorf("source off by %g", d)
		}
	})
}

// A ring walked from its other end is the same ring.
func TestRingEitherWayRound(t *testing.T) {
	t.Parallel()
	for seed := range uint64(50) {
		rng := rand.New(rand.NewPCG(seed, 4))
		legs := make([]circuit.Leg, 2+rng.IntN(12))
		for i := range legs {
			legs[i] = circuit.Leg{ROhm: float64(rng.IntN(3000)) / 1000, LHenry: float64(rng.IntN(100)) / 1e6, CFarad: float64(rng.IntN(20)) / 1e9}
		}
		loads := make([]float64, len(legs)-1)
		for i := range loads {
			loads[i] = float64(1+rng.IntN(100)) * 20
		}
		walk := func(legs []circuit.Leg, loads []float64) (*circuit.Solution, []circuit.Node) {
			n := circuit.New(len(legs))
			at, nodes := circuit.Node(0), make([]circuit.Node, len(loads))
			for i, ohm := range loads {
				at = n.Leg(at, legs[i])
				n.Load(at, circuit.Load{Ohm: ohm})
				nodes[i] = at
			}
			n.Ring(at, legs[len(legs)-1])
			return solve(t, n, 4000, 100), nodes
		}
		a, there := walk(legs, loads)
		turnedLegs, turnedLoads := make([]circuit.Leg, len(legs)), make([]float64, len(loads))
		for i := range legs {
			turnedLegs[i] = legs[len(legs)-1-i]
		}
		for i := range loads {
			turnedLoads[i] = loads[len(loads)-1-i]
		}
		b, back := walk(turnedLegs, turnedLoads)
		near(t, "source", b.SourceAmps, a.SourceAmps, 1e-9)
		near(t, "first leg, closing leg", b.LoopAmps(0), a.LegAmps(there[0]), 1e-3*cmplx.Abs(a.SourceAmps))
		for i := range there {
			near(t, "volts", b.Volts(back[len(back)-1-i]), a.Volts(there[i]), 1e-9)
		}
	}
}

// A branch on a reverse return is two-core as ever: what hangs behind it is like one load there.
func TestBranchOnReverseReturn(t *testing.T) {
	t.Parallel()
	build := func(branched bool) *circuit.Solution {
		n := circuit.New(5)
		first := n.Leg(0, circuit.Leg{ROhm: 1})
		middle := n.Leg(first, circuit.Leg{ROhm: 4})
		last := n.Leg(middle, circuit.Leg{ROhm: 4})
		n.Load(first, circuit.Load{Ohm: 40})
		n.Load(last, circuit.Load{Ohm: 60})
		if branched {
			n.Load(n.Leg(middle, circuit.Leg{ROhm: 10}), circuit.Load{Ohm: 20})
		} else {
			n.Load(middle, circuit.Load{Ohm: 30})
		}
		n.ReverseReturn(first, last, circuit.Leg{ROhm: 3})
		return solve(t, n, 1000, 100)
	}
	a, b := build(false), build(true)
	for node := range circuit.Node(4) {
		near(t, "volts", b.Volts(node), a.Volts(node), 1e-9)
	}
	near(t, "source", b.SourceAmps, a.SourceAmps, 1e-9)
}

// The ends of loops can be laid anew, on a copy too, and the first network stays as it is.
func TestSetLoop(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	middle := n.Leg(0, circuit.Leg{ROhm: 4})
	n.Load(middle, circuit.Load{Ohm: 98})
	ring := n.Ring(middle, circuit.Leg{ROhm: 4})
	again := n.Copy()
	again.SetLoop(ring, circuit.Leg{ROhm: 12}) // 3 ohm in parallel
	hold(t, "volts of the copy", solve(t, again, 1000, 101).Volts(middle), 98)
	hold(t, "volts", solve(t, n, 1000, 100).Volts(middle), 98)
}

func TestLoopsRefused(t *testing.T) {
	t.Parallel()
	leg := circuit.Leg{ROhm: 1}
	load := circuit.Load{Ohm: 10}
	for name, c := range map[string]struct {
		build func(n *circuit.Network)
		want  string
	}{
		"no such node":             {func(n *circuit.Network) { n.Ring(7, leg) }, "there is no such node"},
		"at the terminals":         {func(n *circuit.Network) { n.Ring(0, leg) }, "it ends where it begins"},
		"impossible leg":           {func(n *circuit.Network) { n.Ring(n.Leg(0, leg), circuit.Leg{ROhm: -1}) }, "resistance -1 ohm"},
		"impossible leg laid anew": {func(n *circuit.Network) { n.SetLoop(n.Ring(n.Leg(0, leg), leg), circuit.Leg{LHenry: math.NaN()}) }, "inductance NaN H"},
		"no such loop":             {func(n *circuit.Network) { n.SetLoop(0, leg) }, "there is no such loop"},
		"an attenuator in the ring": {func(n *circuit.Network) {
			n.Ring(n.Leg(n.Attenuator(0, circuit.Attenuator{}), leg), leg)
		}, "none can lie in a loop (node 1)"},
		"a leg in common": {func(n *circuit.Network) {
			shared := n.Leg(0, leg)
			n.Ring(n.Leg(shared, leg), leg)
			n.Ring(n.Leg(shared, leg), leg)
		}, "belongs to another loop (node 1)"},
		"the first is not on the way": {func(n *circuit.Network) {
			n.ReverseReturn(n.Leg(0, leg), n.Leg(0, leg), leg)
		}, "its first device does not lie on the way to its last (node 1)"},
		"a load before the first": {func(n *circuit.Network) {
			before := n.Leg(0, leg)
			n.Load(before, load)
			first := n.Leg(before, leg)
			n.ReverseReturn(first, first, leg)
		}, "a load hangs before its first device"},
		"a load before the first, later": {func(n *circuit.Network) {
			before := n.Leg(0, leg)
			first := n.Leg(before, leg)
			n.ReverseReturn(first, first, leg)
			n.Load(before, load)
		}, "only the go conductor of a reverse return passes here"},
		"a branch before the first": {func(n *circuit.Network) {
			before := n.Leg(0, leg)
			n.Leg(before, leg)
			first := n.Leg(before, leg)
			n.ReverseReturn(first, first, leg)
		}, "something hangs before its first device"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			n := circuit.New(4)
			c.build(n)
			if err := n.Err(); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("error %v, want %q", err, c.want)
			}
		})
	}
}

// A solver that was used for a network with loops is fit for any other.
func TestSolverGoesOnToOtherNetworks(t *testing.T) {
	t.Parallel()
	var s circuit.Solver
	for seed := range uint64(40) {
		for _, k := range everyKind {
			tr := randomTree(seed, k)
			sol, err := s.Solve(tr.build(), tr.hz, tr.volts)
			if err != nil {
				t.Fatal(err)
			}
			fresh := tr.solve(t)
			for node := range circuit.Node(len(tr.edges) + 1) {
				if sol.Volts(node) != fresh.Volts(node) || sol.LegAmps(node) != fresh.LegAmps(node) {
					t.Fatalf("seed %d %+v node %d: %v, by a fresh solver %v", seed, k, node, sol.Volts(node), fresh.Volts(node))
				}
			}
		}
	}
}
