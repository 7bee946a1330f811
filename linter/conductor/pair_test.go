package conductor_test

import (
	"math"
	"testing"

	"loudlint/linter/conductor"
)

const metresPerFoot = 0.3048

// The span taken for two-core cable holds what a pair of round wires has by the textbook formula of the two-wire line,
// L' = (µ0/π)·arcosh(D/d): 0.480 µH/m for a diameter d of 1.38 mm and middles D = 2.5 mm apart (derived).
func TestTypicalPairHoldsTwoWires(t *testing.T) {
	t.Parallel()
	got := 4e-7 * math.Acosh(2.5/1.38)
	within(t, "d 1.38 mm, D 2.5 mm", got, 0.480e-6, 2e-3)
	span := conductor.TypicalPair()
	if !(span.LeastHenry < got && got < span.MostHenry) {
		t.Errorf("%g H/m is outside the span taken for two-core cable", got)
	}
}

// The span holds what is published of cable without a data sheet.
func TestTypicalPair(t *testing.T) {
	t.Parallel()
	span := conductor.TypicalPair()
	within := func(what string, perFoot, least, most float64) {
		t.Helper()
		perMetre := perFoot / metresPerFoot
		if perMetre < least*0.99 || perMetre > most*1.01 {
			t.Errorf("%s: %g per metre is outside %g to %g", what, perMetre, least, most)
		}
	}
	// Lamp cord: encyclopaedia, "Speaker wire" (text seen in copies).
	for _, henry := range []float64{0.1e-6, 0.2e-6} {
		within("lamp cord, inductance", henry, span.LeastHenry, span.MostHenry)
	}
	for _, farad := range []float64{10e-12, 20e-12} {
		within("lamp cord, capacitance", farad, span.LeastFarad, span.MostFarad)
	}
	// Measured samples: table in a loudspeaker owner's manual (read).
	for _, sample := range []struct {
		gauge                int
		ohmFoot, farad, henr float64
	}{
		{12, 0.0033, 24e-12, 0.21e-6},
		{14, 0.0048, 17e-12, 0.13e-6},
		{16, 0.0079, 16e-12, 0.18e-6},
		{18, 0.0128, 28e-12, 0.21e-6},
	} {
		within("sample, inductance", sample.henr, span.LeastHenry, span.MostHenry)
		within("sample, capacitance", sample.farad, span.LeastFarad, span.MostFarad)
		// Their loop resistance is that of the tables within 6 %.
		loop := 2 * perKM(t, conductor.Conductor{IsAWG: true, AWG: sample.gauge}, 20) / 1000 * metresPerFoot
		if math.Abs(sample.ohmFoot/loop-1) > 0.06 {
			t.Errorf("%d AWG: %g ohm a foot, by the tables %g", sample.gauge, sample.ohmFoot, loop)
		}
	}
}

// TestCircle holds the inductance of a circle against Neumann's double integral over two filaments that lie as far apart
// as the parts of a round conductor do on geometric average, a·e^(−1/4) (Maxwell).
func TestCircle(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ radius, mm2 float64 }{{1, math.Pi}, {30, 1.5}, {3, 0.5}} {
		apart := math.Sqrt(c.mm2/math.Pi) / 1000 * math.Exp(-0.25)
		// By symmetry one of the two runs over the circle once; steps grow with the distance from the other.
		sum := 0.0
		const steps = 200000
		reach := math.Log(math.Pi * c.radius / apart)
		for i := range steps {
			from, to := -reach+2*reach*float64(i)/steps, -reach+2*reach*float64(i+1)/steps
			angle := func(u float64) float64 { return math.Pi * (math.Sinh((u+reach)/2) / math.Sinh(reach)) }
			middle := angle((from + to) / 2)
			width := angle(to) - angle(from)
			distance := math.Hypot(2*c.radius*math.Sin(middle/2), apart)
			sum += 2 * math.Cos(middle) / distance * width
		}
		want := 1e-7 * 2 * math.Pi * c.radius * c.radius * sum // μ0/4π ∮∮ ds·ds'/r
		if got := conductor.CircleHenry(2*math.Pi*c.radius, c.mm2); math.Abs(got/want-1) > 1e-3 {
			t.Errorf("a circle of %g m radius and %g mm²: %g H, by Neumann %g H", c.radius, c.mm2, got, want)
		}
	}
	if got := conductor.CircleHenry(0, 1.5); got != 0 {
		t.Errorf("no loop has %g H", got)
	}
}
