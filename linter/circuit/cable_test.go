package circuit_test

import (
	"math"
	"math/cmplx"
	"testing"

	"loudlint/linter/circuit"
)

// oneLoad is a load behind one leg of cable.
func oneLoad(t *testing.T, leg circuit.Leg, ohm, hz float64) *circuit.Solution {
	t.Helper()
	n := circuit.New(2)
	n.Load(n.Leg(0, leg), circuit.Load{Ohm: ohm})
	var s circuit.Solver
	solution, err := s.Solve(n, hz, 100)
	if err != nil {
		t.Fatal(err)
	}
	return solution
}

// 300 m of cable of 0.6 µH/m (derived: X = 2πfL, level 20·lg|1 + jX/Z|): 1.13, 11.3 and 22.6 ohm at 1, 10 and 20 kHz; with
// 100 ohm behind it 0.055 dB at 10 kHz and 0.217 dB at 20 kHz.
func TestCableInductance(t *testing.T) {
	t.Parallel()
	leg := circuit.Leg{LHenry: 300 * 0.6e-6}
	for _, test := range []struct{ hz, ohm, lossDB, decimal float64 }{
		{1e3, 1.13, 0.0006, 0.0005},
		{10e3, 11.3, 0.055, 0.0005},
		{20e3, 22.6, 0.217, 0.0005},
	} {
		solution := oneLoad(t, leg, 100, test.hz)
		z, _ := solution.InputImpedance()
		if math.Abs(imag(z)/test.ohm-1) > 5e-3 {
			t.Errorf("%g Hz: reactance %.4g ohm, want %g", test.hz, imag(z), test.ohm)
		}
		if loss, _ := solution.CableLossDB(1); math.Abs(loss-test.lossDB) > test.decimal {
			t.Errorf("%g Hz: %.4f dB, want %g", test.hz, loss, test.lossDB)
		}
	}
}

// 300 m of 60 pF/m are 18 nF (derived: X = 1/(2πfC)): 8842, 884 and 442 ohm at 1, 10 and 20 kHz; a line of 1 kohm shows
// 662 ohm at 10 kHz.
func TestCableCapacitance(t *testing.T) {
	t.Parallel()
	leg := circuit.Leg{CFarad: 300 * 60e-12}
	for _, test := range []struct{ hz, ohm float64 }{{1e3, 8842}, {10e3, 884}, {20e3, 442}} {
		solution := oneLoad(t, leg, 1000, test.hz)
		if got := 1 / imag(solution.InputAdmittance); math.Abs(got/test.ohm-1) > 1e-3 {
			t.Errorf("%g Hz: reactance %.5g ohm, want %g", test.hz, got, test.ohm)
		}
	}
	z, _ := oneLoad(t, leg, 1000, 10e3).InputImpedance()
	if math.Abs(cmplx.Abs(z)-662) > 0.5 {
		t.Errorf("1 kohm behind 18 nF at 10 kHz: %.5g ohm, want 662", cmplx.Abs(z))
	}
}

// A copy and what it was made from do not touch each other.
func TestCopy(t *testing.T) {
	t.Parallel()
	curve, err := circuit.NewCurve([]circuit.Point{{Hz: 1e3, Ohm: 100}})
	if err != nil {
		t.Fatal(err)
	}
	built := func() *circuit.Network {
		n := circuit.New(64)
		node := n.Leg(0, circuit.Leg{ROhm: 10})
		n.Load(n.Attenuator(node, circuit.Attenuator{}), circuit.Load{Curve: curve})
		return n
	}
	solve := func(n *circuit.Network) float64 {
		var s circuit.Solver
		solution, err := s.Solve(n, 1e3, 100)
		if err != nil {
			t.Fatal(err)
		}
		return solution.SourceWatts
	}
	before := solve(built())
	n := built()
	c := n.Copy()
	c.SetLeg(1, circuit.Leg{ROhm: 50})
	c.Load(c.Leg(1, circuit.Leg{ROhm: 1}), circuit.Load{Ohm: 10})
	if after := solve(n); math.Abs(after-before) > 1e-9 {
		t.Errorf("changing a copy changes the original: %g W, then %g W", before, after)
	}
	changed := solve(c)
	n.SetLeg(1, circuit.Leg{ROhm: 1})
	n.Load(n.Leg(1, circuit.Leg{}), circuit.Load{Ohm: 1})
	if again := solve(c); math.Abs(again-changed) > 1e-9 {
		t.Errorf("changing the original changes its copy: %g W, then %g W", changed, again)
	}
}

const (
	copperOhmMetre = 1.7241e-8 // at 20 °C, 100 % IACS
	magnetic       = 4e-7 * math.Pi
)

// skinDepth is √(ρ/(π·f·µ0)), in metres.
func skinDepth(hz float64) float64 { return math.Sqrt(copperOhmMetre / (math.Pi * hz * magnetic)) }

// roundWire is how much higher the resistance of a solid round wire is at a frequency than at direct current: the real
// part of ka·J0(ka)/(2·J1(ka)), k = (1−j)/δ (exact; textbook formula), by the power series of the Bessel functions.
func roundWire(areaMM2, hz float64) float64 {
	ka := complex(1, -1) * complex(math.Sqrt(areaMM2*1e-6/math.Pi)/skinDepth(hz), 0)
	var j0, j1 complex128
	term := complex(1, 0)
	for m := range 60 {
		j0 += term
		j1 += term * ka / complex(2*float64(m+1), 0)
		term *= -ka * ka / complex(4*float64((m+1)*(m+1)), 0)
	}
	return real(ka * j0 / (2 * j1))
}

// Direct-current resistance is the right model: skin depth in copper is 9.35, 2.09, 0.661 and 0.467 mm at 50 Hz, 1, 10 and
// 20 kHz, and what it adds to the resistance of a solid wire (exact Bessel, derived) moves a line loss of 10 % by less than
// 0.06 dB up to 2.5 mm² and 10 kHz.
func TestSkinEffectIsSmall(t *testing.T) {
	t.Parallel()
	for hz, mm := range map[float64]float64{50: 9.35, 1e3: 2.09, 10e3: 0.661, 20e3: 0.467} {
		if got := skinDepth(hz) * 1000; math.Abs(got/mm-1) > 2e-3 {
			t.Errorf("skin depth at %g Hz: %.4g mm, want %g", hz, got, mm)
		}
	}
	const drop = 1.0 / 9 // loop resistance over load: 10 % of the voltage
	plain, _ := oneLoad(t, circuit.Leg{ROhm: 100 * drop}, 100, 1e3).CableLossDB(1)
	for _, wire := range []struct {
		mm2    float64
		ratios [3]float64 // at 1, 10 and 20 kHz
	}{
		{0.75, [3]float64{1.000, 1.006, 1.024}},
		{1.5, [3]float64{1.000, 1.024, 1.092}},
		{2.5, [3]float64{1.001, 1.066, 1.228}},
		{4, [3]float64{1.002, 1.155, 1.461}},
		{6, [3]float64{1.004, 1.305, 1.746}},
	} {
		for i, hz := range []float64{1e3, 10e3, 20e3} {
			ratio := roundWire(wire.mm2, hz)
			if math.Abs(ratio-wire.ratios[i]) > 2e-3 {
				t.Errorf("%g mm² at %g Hz: %.4f, want %g", wire.mm2, hz, ratio, wire.ratios[i])
			}
			loss, _ := oneLoad(t, circuit.Leg{ROhm: 100 * drop * ratio}, 100, hz).CableLossDB(1)
			if wire.mm2 <= 2.5 && hz <= 10e3 && loss-plain >= 0.06 {
				t.Errorf("%g mm² at %g Hz: the loss moves by %.3f dB", wire.mm2, hz, loss-plain)
			}
		}
	}
}
