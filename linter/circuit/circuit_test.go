package circuit_test

import (
	"errors"
	"math"
	"math/cmplx"
	"slices"
	"strings"
	"testing"

	"loudlint/linter/circuit"
)

var (
	sixWatts  = circuit.Load{PowerW: 6, MarkedVolts: 100}
	fiftyOhms = circuit.Load{Ohm: 50}
)

func solve(t *testing.T, n *circuit.Network, hz, volts float64) *circuit.Solution {
	t.Helper()
	sol, err := new(circuit.Solver).Solve(n, hz, volts)
	if err != nil {
		t.Fatal(err)
	}
	return sol
}

func approx(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-9*max(1, math.Abs(want))) {
		t.Errorf("%s: got %.12g, want %.12g", what, got, want)
	}
}

func TestNothingConnected(t *testing.T) {
	t.Parallel()
	n := circuit.New(0)
	end := n.Leg(0, circuit.Leg{ROhm: 1})
	sol := solve(t, n, 1000, 100)
	if z, ok := sol.InputImpedance(); ok {
		t.Errorf("an open line has an impedance of %v", z)
	}
	if _, ok := sol.Worst(); ok {
		t.Error("a line without loads has a worst node")
	}
	approx(t, "volts at the open end", real(sol.Volts(end)), 100)
	approx(t, "watts", sol.SourceWatts, 0)
}

// A tap on the wrong voltage takes P·(V/Vn)²: 6 W at 100 V is 3 W on a line of 70.7107 V, and a 25 V tap takes eight times
// its marking there.
func TestTapOnAnotherVoltage(t *testing.T) {
	t.Parallel()
	n := circuit.New(1)
	hundred := n.Load(0, sixWatts)
	twentyFive := n.Load(0, circuit.Load{PowerW: 6, MarkedVolts: 25})
	sol := solve(t, n, 1000, 100/math.Sqrt2)
	approx(t, "100 V tap", sol.LoadWatts(hundred), 3)
	approx(t, "25 V tap", sol.LoadWatts(twentyFive), 48)
}

// By hand: 100 V, 6 dB down with a = 0.5 and 1 dB of insertion loss, b = 10^(−1/20) = 0.891251, before 100 ohm.
// V_out = 0.5 × 0.891251 × 100 = 44.5625 V, I_out = 0.445625 A, I_in = 0.2228127 A. In 22.28127 W, load 19.858204 W, and
// the rest, 10.87 % or 2.423062 W, is the attenuator's.
func TestAttenuatorByHand(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	out := n.Attenuator(0, circuit.Attenuator{SettingDB: 20 * math.Log10(0.5), InsertionDB: 1})
	load := n.Load(out, circuit.Load{Ohm: 100})
	sol := solve(t, n, 1000, 100)
	b := math.Pow(10, -1.0/20)
	approx(t, "volts out", real(sol.Volts(out)), 50*b)
	approx(t, "amperes in", real(sol.LegAmps(out)), 0.25*b)
	approx(t, "amperes out", real(sol.LoadAmps(load)), 0.5*b)
	approx(t, "source watts", sol.SourceWatts, 25*b)
	approx(t, "load watts", sol.TotalLoadWatts, 25*b*b)
	approx(t, "attenuator watts", sol.AttenuatorWatts, 25*b*(1-b))
	lossDB, ok := sol.LossDB(out)
	if !ok {
		t.Fatal("no loss behind the attenuator")
	}
	approx(t, "loss", lossDB, -20*math.Log10(0.5)+1)
	cableDB, ok := sol.CableLossDB(out)
	if !ok {
		t.Fatal("no cable loss behind the attenuator")
	}
	approx(t, "cable loss", cableDB, 0)
}

func TestAttenuatorOff(t *testing.T) {
	t.Parallel()
	n := circuit.New(4)
	tee := n.Leg(0, circuit.Leg{ROhm: 2})
	before := n.Load(tee, circuit.Load{Ohm: 98})
	out := n.Attenuator(tee, circuit.Attenuator{SettingDB: -12, InsertionDB: 1, Off: true})
	behind := n.Leg(out, circuit.Leg{ROhm: 1, LHenry: 1e-3, CFarad: 1e-6})
	load := n.Load(behind, sixWatts)
	sol := solve(t, n, 1000, 100)
	approx(t, "volts before", real(sol.Volts(tee)), 98)
	approx(t, "watts before", sol.LoadWatts(before), 98)
	for _, node := range []circuit.Node{out, behind} {
		if sol.Volts(node) != 0 || sol.LegAmps(node) != 0 || sol.LossWatts(node) > 0 {
			t.Errorf("node %d: %v V, %v A, %g W lost", node, sol.Volts(node), sol.LegAmps(node), sol.LossWatts(node))
		}
		if lossDB, ok := sol.LossDB(node); ok {
			t.Errorf("node %d: a loss of %g dB where no voltage arrives", node, lossDB)
		}
		if lossDB, ok := sol.CableLossDB(node); ok {
			t.Errorf("node %d: a cable loss of %g dB where no voltage arrives", node, lossDB)
		}
	}
	approx(t, "watts behind", sol.LoadWatts(load), 0)
	approx(t, "attenuator watts", sol.AttenuatorWatts, 0)
	if worst, ok := sol.Worst(); !ok || worst != tee {
		t.Errorf("worst node %d, %t", worst, ok)
	}
}

// What an attenuator takes away is not cable loss: the far load, 1 ohm beyond an attenuator, is the worst by cable though
// the one behind the deep attenuator has fewer volts.
func TestWorstIgnoresAttenuators(t *testing.T) {
	t.Parallel()
	n := circuit.New(3)
	deep := n.Attenuator(0, circuit.Attenuator{SettingDB: -20})
	n.Load(deep, fiftyOhms)
	far := n.Leg(0, circuit.Leg{ROhm: 1})
	n.Load(far, fiftyOhms)
	if worst, ok := solve(t, n, 0, 100).Worst(); !ok || worst != far {
		t.Errorf("worst node %d (%t), want %d", worst, ok, far)
	}
}

// Branches that are equal but for rounding, because their cable is written as one piece or as two: the one whose load came
// first is named, on every machine.
func TestWorstOfEquals(t *testing.T) {
	t.Parallel()
	n := circuit.New(60)
	first := n.Leg(0, circuit.Leg{ROhm: 0.1})
	n.Load(first, fiftyOhms)
	var others []circuit.Node
	for hundredths := range 29 {
		piece := float64(1+hundredths) / 300
		other := n.Leg(n.Leg(0, circuit.Leg{ROhm: piece}), circuit.Leg{ROhm: 0.1 - piece})
		n.Load(other, fiftyOhms)
		others = append(others, other)
	}
	sol := solve(t, n, 1000, 100)
	if !slices.ContainsFunc(others, func(other circuit.Node) bool { return real(sol.Volts(other)) < real(sol.Volts(first)) }) {
		t.Error("no branch is lower by rounding: the test shows nothing")
	}
	if worst, _ := sol.Worst(); worst != first {
		t.Errorf("worst node %d, want %d", worst, first)
	}
}

// Attenuators piled up until nothing measurable is left are as silent as one that is off.
func TestPiledAttenuators(t *testing.T) {
	t.Parallel()
	n := circuit.New(12)
	n.Load(0, fiftyOhms)
	at := circuit.Node(0)
	for range 11 {
		at = n.Attenuator(at, circuit.Attenuator{SettingDB: -200})
	}
	n.Load(at, fiftyOhms)
	sol := solve(t, n, 1000, 100)
	if lossDB, ok := sol.LossDB(at); ok {
		t.Errorf("a loss of %g dB", lossDB)
	}
	if lossDB, ok := sol.CableLossDB(at); ok {
		t.Errorf("a cable loss of %g dB", lossDB)
	}
	if lossDB, ok := sol.LossDB(at - 2); !ok || math.Abs(lossDB-1800) > 1e-9 {
		t.Errorf("1800 dB down: %g dB (%t)", lossDB, ok)
	}
}

// By hand: 4, 8 and 4 ohm with 0.5 ohm before the first, in series on 16.5 V: 1 A.
func TestSeriesString(t *testing.T) {
	t.Parallel()
	n := circuit.New(1)
	other := n.Load(0, circuit.Load{Ohm: 16.5})
	first := n.Series(0, circuit.Load{Ohm: 4, SeriesOhm: 0.5}, circuit.Load{Ohm: 8}, circuit.Load{Ohm: 4})
	sol := solve(t, n, 1000, 16.5)
	approx(t, "source amperes", real(sol.SourceAmps), 2)
	approx(t, "beside the string", sol.LoadWatts(other), 16.5)
	for i, want := range []float64{4, 8, 4} {
		id := first + circuit.LoadID(i)
		approx(t, "volts of a part", real(sol.LoadVolts(id)), want)
		approx(t, "amperes of a part", real(sol.LoadAmps(id)), 1)
		approx(t, "watts of a part", sol.LoadWatts(id), want)
	}
	approx(t, "series watts", sol.SeriesWatts, 0.5)
	approx(t, "load watts", sol.TotalLoadWatts, 32.5)
}

// Inductor and capacitor in series cancel: a string that is a short circuit at that frequency alone.
func TestSeriesStringShort(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	at := n.Leg(0, circuit.Leg{ROhm: 1})
	coil, err := circuit.NewCurve([]circuit.Point{{Hz: 100, Ohm: 10, Degrees: 90}, {Hz: 10000, Ohm: 1000, Degrees: 90}})
	if err != nil {
		t.Fatal(err)
	}
	capacitor, err := circuit.NewCurve([]circuit.Point{{Hz: 100, Ohm: 1000, Degrees: -90}, {Hz: 10000, Ohm: 10, Degrees: -90}})
	if err != nil {
		t.Fatal(err)
	}
	n.Series(at, circuit.Load{Curve: coil}, circuit.Load{Curve: capacitor})
	var s circuit.Solver
	_, err = s.Solve(n, 1000, 100)
	var problem *circuit.Error
	if !errors.As(err, &problem) || problem.Node != at || !strings.Contains(err.Error(), "series string is a short circuit at 1000 Hz") {
		t.Errorf("got %v", err)
	}
	if _, err := s.Solve(n, 2000, 100); err != nil {
		t.Errorf("away from resonance: %v", err)
	}
}

// A leg of pure inductance before a pure capacitance of the same reactance.
func TestLosslessResonance(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	at := n.Leg(0, circuit.Leg{LHenry: 100 / (2 * math.Pi * 1000)})
	capacitor, err := circuit.NewCurve([]circuit.Point{{Hz: 1000, Ohm: 100, Degrees: -90}})
	if err != nil {
		t.Fatal(err)
	}
	n.Load(at, circuit.Load{Curve: capacitor})
	_, err = new(circuit.Solver).Solve(n, 1000, 100)
	var problem *circuit.Error
	if !errors.As(err, &problem) || problem.Node != at || !strings.Contains(err.Error(), "resonates without loss at 1000 Hz") {
		t.Errorf("got %v", err)
	}
}

// Resonances that nearly cancel, one before the other, raise voltage and admittance a hundred million times each. That must
// end in an error, not in an infinity.
func TestResonancesInARow(t *testing.T) {
	t.Parallel()
	const hz = 1000
	capacitor := mustCurve([]circuit.Point{{Hz: hz, Ohm: 100, Degrees: -90}})
	legs := []circuit.Leg{}
	siemens := 0.01
	for range 8 {
		legs = append(legs, circuit.Leg{LHenry: (1 - 1e-8) / siemens / (2 * math.Pi * hz)})
		n := circuit.New(len(legs) + 1)
		at := circuit.Node(0)
		for i := range legs {
			at = n.Leg(at, legs[len(legs)-1-i]) // the newest is the nearest to the source
		}
		n.Load(at, circuit.Load{Curve: capacitor})
		sol, err := new(circuit.Solver).Solve(n, hz, 1)
		if err != nil {
			if len(legs) < 3 || !strings.Contains(err.Error(), "solving a network: it resonates without loss at 1000 Hz") {
				t.Errorf("%d resonances: %v", len(legs), err)
			}
			return
		}
		siemens = imag(sol.InputAdmittance)
	}
	t.Error("eight resonances in a row were solved")
}

// R, L and C as short pi sections tend to the line of transmission-line theory, V(l) = V·Z_L/(Z_L·cosh γl + Z_0·sinh γl)
// with γ = √((R'+jωL')·jωC') and Z_0 = √((R'+jωL')/jωC') (any textbook on lines). 600 m, 24.2 ohm/km loop, 0.6 µH/m,
// 60 pF/m, at 20 kHz.
func TestPiSectionsTendToALine(t *testing.T) {
	t.Parallel()
	const metres, hz, volts, loadOhm = 600, 20000, 100, 500
	z := complex(24.2e-3*metres, 2*math.Pi*hz*0.6e-6*metres)
	y := complex(0, 2*math.Pi*hz*60e-12*metres)
	length, z0 := cmplx.Sqrt(z*y), cmplx.Sqrt(z/y)
	want := volts * loadOhm / (loadOhm*cmplx.Cosh(length) + z0*cmplx.Sinh(length))

	previous := math.Inf(1)
	for _, sections := range []int{1, 10, 100, 1000} {
		n := circuit.New(sections + 1)
		at := circuit.Node(0)
		for range sections {
			s := float64(sections)
			at = n.Leg(at, circuit.Leg{ROhm: 24.2e-3 * metres / s, LHenry: 0.6e-6 * metres / s, CFarad: 60e-12 * metres / s})
		}
		n.Load(at, circuit.Load{Ohm: loadOhm})
		d := off(solve(t, n, hz, volts).Volts(at), want, 1)
		if d > previous/50 {
			t.Errorf("%d sections: off by %g, before by %g", sections, d, previous)
		}
		previous = d
	}
	if previous > 1e-8 {
		t.Errorf("1000 sections: still off by %g", previous)
	}
}

func TestChainIsSections(t *testing.T) {
	t.Parallel()
	leg := circuit.Leg{ROhm: 0.4, LHenry: 1e-5, CFarad: 1e-9}
	one, many := circuit.New(9), circuit.New(9)
	run := one.Chain(one.Leg(0, leg), 7, leg, sixWatts)
	at := many.Leg(0, leg)
	for range 7 {
		at = many.Leg(at, leg)
		many.Load(at, sixWatts)
	}
	if want := (circuit.Run{First: 2, Last: 8, FirstLoad: 0, LastLoad: 6}); run != want || one.Nodes() != 9 || one.Loads() != 7 {
		t.Fatalf("run %+v of %d nodes, want %+v", run, one.Nodes(), want)
	}
	a, b := solve(t, one, 1000, 100), solve(t, many, 1000, 100)
	for node := range circuit.Node(9) {
		if one.Parent(node) != many.Parent(node) || off(a.Volts(node), b.Volts(node), 1) > 1e-14 {
			t.Errorf("node %d: %v V, section by section %v V", node, a.Volts(node), b.Volts(node))
		}
	}
}

func TestSetLeg(t *testing.T) {
	t.Parallel()
	n := circuit.New(2)
	end := n.Leg(0, circuit.Leg{ROhm: 50, CFarad: 1e-6})
	n.Load(end, fiftyOhms)
	n.SetLeg(end, circuit.Leg{ROhm: 150})
	approx(t, "volts", real(solve(t, n, 1000, 100).Volts(end)), 25)

	out := n.Attenuator(end, circuit.Attenuator{})
	n.SetLeg(out, circuit.Leg{ROhm: 1})
	if err := n.Err(); err == nil || err.Error() != "replacing a leg: no leg of cable leads here (node 2)" {
		t.Errorf("got %v", err)
	}
}

// One solver for networks of falling and rising size, and for several voltages: nothing of an earlier solution remains.
func TestSolverIsReusable(t *testing.T) {
	t.Parallel()
	var s circuit.Solver
	for _, seed := range []uint64{3, 4, 5, 4, 3} {
		tr := randomTree(seed, kind{reactive: true, attenuators: true})
		again, err := s.Solve(tr.build(), tr.hz, tr.volts)
		if err != nil {
			t.Fatal(err)
		}
		fresh := tr.solve(t)
		for node := range len(tr.edges) + 1 {
			if off(again.Volts(circuit.Node(node)), fresh.Volts(circuit.Node(node)), 1e-9) > 1e-15 {
				t.Errorf("seed %d node %d: differs when solved again", seed, node)
			}
		}
		approx(t, "watts", again.TotalLoadWatts, fresh.TotalLoadWatts)
		approx(t, "cable watts", again.CableWatts, fresh.CableWatts)
	}
}

func TestSolvingAgainTakesNoMemory(t *testing.T) {
	tr := randomTree(11, kind{reactive: true, attenuators: true})
	n := tr.build()
	var s circuit.Solver
	if allocs := testing.AllocsPerRun(50, func() {
		if _, err := s.Solve(n, tr.hz, tr.volts); err != nil {
			t.Fatal(err)
		}
	}); allocs > 0 {
		t.Errorf("%g allocations per solution", allocs)
	}
}

// A uniform ladder of N sections, r in each leg and R across each node, has V_k = V·cosh((N−k+½)θ)/cosh((N+½)θ) with
// 2·sinh(θ/2) = √(r/R): it satisfies V_(k−1) − (2 + r/R)·V_k + V_(k+1) = 0 and the end's V_(N−1) = (1 + r/R)·V_N.
func TestMillionLoudspeakers(t *testing.T) {
	t.Parallel()
	const count = 1_000_000
	const legOhm = 6e-9 // so thick that volts are left at the far end
	n := circuit.New(count + 1)
	run := n.Chain(0, count, circuit.Leg{ROhm: legOhm}, sixWatts)
	sol := solve(t, n, 1000, 100)
	theta := 2 * math.Asinh(math.Sqrt(legOhm*6/1e4)/2)
	for _, k := range []int{0, 1, 10, 1000, 500_000, 999_999, count} {
		want := 100 * math.Cosh((count-float64(k)+0.5)*theta) / math.Cosh((count+0.5)*theta)
		if d := off(sol.Volts(circuit.Node(k)), complex(want, 0), 1); d > 1e-9 {
			t.Errorf("node %d: %v V, want %g V", k, sol.Volts(circuit.Node(k)), want)
		}
	}
	if worst, ok := sol.Worst(); !ok || real(sol.Volts(worst)) > real(sol.Volts(run.Last))*(1+1e-9) {
		t.Errorf("worst node %d (%t), want one as low as %d", worst, ok, run.Last)
	}
	approx(t, "energy", sol.TotalLoadWatts+sol.CableWatts, sol.SourceWatts)
}

// A star with a million points is as good as a chain with a million links.
func TestMillionBranches(t *testing.T) {
	t.Parallel()
	const count = 1_000_000
	n := circuit.New(count + 1)
	for range count {
		n.Load(n.Leg(0, circuit.Leg{ROhm: 10}), circuit.Load{Ohm: 90})
	}
	approx(t, "amperes", real(solve(t, n, 0, 100).SourceAmps), count)
}

func TestRefused(t *testing.T) {
	t.Parallel()
	nan, inf := math.NaN(), math.Inf(1)
	curve := mustCurve([]circuit.Point{{Hz: 1000, Ohm: 8}})
	for _, test := range []struct {
		build func(n *circuit.Network, at circuit.Node)
		want  string
	}{
		{func(n *circuit.Network, at circuit.Node) { n.Leg(at, circuit.Leg{ROhm: -1}) }, "adding a leg: resistance -1 ohm is not between 0 and 1e+09 ohm (node 1)"},
		{func(n *circuit.Network, at circuit.Node) { n.Leg(at, circuit.Leg{ROhm: nan}) }, "resistance NaN ohm"},
		{func(n *circuit.Network, at circuit.Node) { n.Leg(at, circuit.Leg{ROhm: inf}) }, "resistance +Inf ohm"},
		{func(n *circuit.Network, at circuit.Node) { n.Leg(at, circuit.Leg{LHenry: -1e-6}) }, "inductance -1e-06 H"},
		{func(n *circuit.Network, at circuit.Node) { n.Leg(at, circuit.Leg{CFarad: nan}) }, "capacitance NaN F"},
		{func(n *circuit.Network, _ circuit.Node) { n.Leg(7, circuit.Leg{}) }, "adding a leg: there is no such node, the network has 2 (node 7)"},
		{func(n *circuit.Network, _ circuit.Node) { n.Leg(-1, circuit.Leg{}) }, "there is no such node"},
		{func(n *circuit.Network, _ circuit.Node) { n.Load(2, sixWatts) }, "connecting a load: there is no such node"},
		{func(n *circuit.Network, _ circuit.Node) { n.SetLeg(0, circuit.Leg{}) }, "replacing a leg: no leg of cable leads here (node 0)"},
		{func(n *circuit.Network, _ circuit.Node) { n.SetLeg(9, circuit.Leg{}) }, "replacing a leg: there is no such node"},
		{func(n *circuit.Network, at circuit.Node) { n.SetLeg(at, circuit.Leg{ROhm: nan}) }, "replacing a leg: resistance NaN ohm"},
		{func(n *circuit.Network, at circuit.Node) { n.Attenuator(at, circuit.Attenuator{SettingDB: 3}) }, "adding an attenuator: setting 3 dB is not between -200 and 0 dB (node 1)"},
		{func(n *circuit.Network, at circuit.Node) { n.Attenuator(at, circuit.Attenuator{SettingDB: nan}) }, "setting NaN dB"},
		{func(n *circuit.Network, at circuit.Node) { n.Attenuator(at, circuit.Attenuator{InsertionDB: -1}) }, "insertion loss -1 dB is not between 0 and 60 dB"},
		{func(n *circuit.Network, at circuit.Node) {
			n.Attenuator(at, circuit.Attenuator{InsertionDB: inf, Off: true})
		}, "insertion loss +Inf dB"},
		{func(n *circuit.Network, _ circuit.Node) { n.Attenuator(5, circuit.Attenuator{}) }, "adding an attenuator: there is no such node"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{}) }, "connecting a load: its impedance is zero, a short circuit; or none was given (node 1)"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{SeriesOhm: 8}) }, "its impedance is zero"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: -8}) }, "-8 ohm is not between 1e-06 and 1e+12 ohm"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: nan}) }, "NaN ohm is not between"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: 1e-9}) }, "1e-09 ohm is not between"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{PowerW: 6}) }, "marked voltage 0 V is not above 0"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{MarkedVolts: 100}) }, "power 0 W is not above 0"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{PowerW: -6, MarkedVolts: 100}) }, "power -6 W is not above 0"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{PowerW: nan, MarkedVolts: 100}) }, "power NaN W"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{PowerW: 6, MarkedVolts: inf}) }, "marked voltage +Inf V"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{PowerW: 1e-12, MarkedVolts: 100}) }, "1e+16 ohm is not between"},
		{func(n *circuit.Network, at circuit.Node) {
			n.Load(at, circuit.Load{PowerW: 6, MarkedVolts: 100, Ohm: 8})
		}, "not several"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: 8, Curve: curve}) }, "not several"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: 8, SeriesOhm: nan}) }, "series resistance NaN ohm"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Ohm: 8, CurveScale: 2}) }, "a factor for a curve, but no curve"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Curve: curve, CurveScale: -1}) }, "curve times -1 leaves the span"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Curve: curve, CurveScale: nan}) }, "curve times NaN leaves the span"},
		{func(n *circuit.Network, at circuit.Node) { n.Load(at, circuit.Load{Curve: new(circuit.Curve)}) }, "leaves the span"},
		{func(n *circuit.Network, at circuit.Node) { n.Series(at) }, "connecting a series string: it has no loads (node 1)"},
		{func(n *circuit.Network, at circuit.Node) { n.Series(at, fiftyOhms, circuit.Load{}) }, "connecting a series string: its impedance is zero"},
		{func(n *circuit.Network, _ circuit.Node) { n.Series(4, fiftyOhms) }, "connecting a series string: there is no such node"},
		{func(n *circuit.Network, at circuit.Node) { n.Chain(at, 0, circuit.Leg{}, sixWatts) }, "adding a run: 0 sections; at least 1 is needed (node 1)"},
		{func(n *circuit.Network, at circuit.Node) { n.Chain(at, -1, circuit.Leg{}, sixWatts) }, "adding a run: -1 sections"},
		{func(n *circuit.Network, at circuit.Node) { n.Chain(at, math.MaxInt, circuit.Leg{}, sixWatts) }, "adding a run: more than 16777216 nodes or loads"},
		{func(n *circuit.Network, at circuit.Node) { n.Chain(at, 2, circuit.Leg{}, circuit.Load{}) }, "adding a run: its impedance is zero"},
		{func(n *circuit.Network, at circuit.Node) { n.Chain(at, 2, circuit.Leg{ROhm: -2}, sixWatts) }, "adding a run: resistance -2 ohm"},
	} {
		n := circuit.New(4)
		test.build(n, n.Leg(0, circuit.Leg{ROhm: 1}))
		err := n.Err()
		if err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("got %v, want %q", err, test.want)
			continue
		}
		// The first error stays, whatever follows.
		n.Load(n.Leg(0, circuit.Leg{ROhm: 1}), sixWatts)
		n.Series(99)
		n.Chain(0, 0, circuit.Leg{}, sixWatts)
		if _, again := new(circuit.Solver).Solve(n, 1000, 100); again == nil || again.Error() != err.Error() {
			t.Errorf("solving: got %v, want %v", again, err)
		}
	}
}

func TestSolveRefuses(t *testing.T) {
	t.Parallel()
	n := circuit.New(1)
	n.Load(0, sixWatts)
	for _, test := range []struct {
		hz, volts float64
		want      string
	}{
		{-1, 100, "solving a network: frequency -1 Hz is not between 0 and 1e+09 Hz"},
		{math.NaN(), 100, "frequency NaN Hz"},
		{math.Inf(1), 100, "frequency +Inf Hz"},
		{1000, 0, "source of 0 V is not between 1e-06 and 1e+06 V"},
		{1000, -100, "source of -100 V"},
		{1000, math.NaN(), "source of NaN V"},
	} {
		if _, err := new(circuit.Solver).Solve(n, test.hz, test.volts); err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("%g Hz, %g V: got %v, want %q", test.hz, test.volts, err, test.want)
		}
	}
}

func TestCurve(t *testing.T) {
	t.Parallel()
	c := mustCurve([]circuit.Point{{Hz: 100, Ohm: 4}, {Hz: 1000, Ohm: 16, Degrees: 40}, {Hz: 10000, Ohm: 16, Degrees: -90}})
	for _, test := range []struct{ hz, ohm, degrees float64 }{
		{0, 4, 0}, {50, 4, 0}, {100, 4, 0}, // clamped below, and the first point
		{math.Sqrt(100 * 1000), 8, 20}, // half way on logarithmic scales
		{1000, 16, 40},
		{math.Sqrt(1000 * 10000), 16, -25},
		{10000, 16, -90}, {20000, 16, -90}, // and clamped above
	} {
		ohm, phase := cmplx.Polar(c.At(test.hz))
		approx(t, "magnitude", ohm, test.ohm)
		approx(t, "phase", phase*180/math.Pi, test.degrees)
	}
	if r := real(c.At(20000)); r != 0 {
		t.Errorf("a pure reactance has a resistance of %g ohm", r)
	}
}

func TestCurveRefused(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		points []circuit.Point
		want   string
	}{
		{nil, "making an impedance curve: it has no points"},
		{[]circuit.Point{{Hz: 0, Ohm: 8}}, "point 1: frequency 0 Hz is not above 0"},
		{[]circuit.Point{{Hz: math.NaN(), Ohm: 8}}, "point 1: frequency NaN Hz"},
		{[]circuit.Point{{Hz: 100, Ohm: 8}, {Hz: 100, Ohm: 9}}, "point 2: 100 Hz does not lie above 100 Hz"},
		{[]circuit.Point{{Hz: 100, Ohm: 8}, {Hz: 50, Ohm: 9}}, "point 2: 50 Hz does not lie above 100 Hz"},
		{[]circuit.Point{{Hz: 100, Ohm: 0}}, "point 1: 0 ohm is not between"},
		{[]circuit.Point{{Hz: 100, Ohm: math.Inf(1)}}, "point 1: +Inf ohm"},
		{[]circuit.Point{{Hz: 100, Ohm: 8, Degrees: 91}}, "point 1: phase 91 degrees"},
		{[]circuit.Point{{Hz: 100, Ohm: 8, Degrees: math.NaN()}}, "point 1: phase NaN degrees"},
	} {
		if _, err := circuit.NewCurve(test.points); err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("%v: got %v, want %q", test.points, err, test.want)
		}
	}
}
