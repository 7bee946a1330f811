package signal_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"testing"

	"loudlint/linter/signal"
)

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %g, want %g ± %g", name, got, want, tolerance)
	}
}

// TestPublishedLevels holds levels against published figures.
func TestPublishedLevels(t *testing.T) {
	t.Parallel()
	dBu := func(volts float64) float64 { return signal.DBV(volts) - signal.DBV(math.Sqrt(0.6)) }
	for _, c := range []struct {
		source               string
		got, want, tolerance float64
	}{
		{"\"Commonly used voltage and audio levels\": 0 dBu is 0.7746 V", signal.DBV(0.7746), -2.218, 0.0005},
		{"the same page: 0 dBV is 1 V, +2.218 dBu", dBu(1), 2.218, 0.0005},
		{"the same page: +4 dBu is 1.2277 V", dBu(1.2277), 4, 0.0005},
		{"the same page: −10 dBV is 0.3162 V", signal.DBV(0.3162), -10, 0.001},
		{"the same page: −10 dBV is −7.78 dBu", dBu(0.3162), -7.78, 0.005},
		{"glossary, \"Line level\": +4 dBu and −10 dBV are 11.79 dB apart (exact 11.78)", signal.DBV(1.2277) - signal.DBV(0.3162), 11.785, 0.006},
		{"\"Commonly used voltage and audio levels\": a microphone of −60 dBu gives 0.77 mV", dBu(0.77e-3), -60, 0.06},
		{"the same page: one of −22 dBu gives 61.5 mV", dBu(61.5e-3), -22, 0.01},
		{"from memory: a dynamic microphone of −54 dBV/Pa gives 2.0 mV", signal.DBV(2.0e-3), -54, 0.03},
		{"from memory: a condenser microphone of −34 dBV/Pa gives 20 mV", signal.DBV(20e-3), -34, 0.03},
	} {
		near(t, c.source, c.got, c.want, c.tolerance)
	}
}

// alike is the level when all legs carry the same signal: voltages add, one after
// the other.
func alike(c signal.Combiner) float64 { return c.OneDB() + 20*math.Log10(float64(c.Legs)) }

// TestPublishedSums holds passive sums against published figures.
func TestPublishedSums(t *testing.T) {
	t.Parallel()
	published := signal.Combiner{Legs: 2, LegOhm: 475, ShuntOhm: 20e3}
	bare := signal.Combiner{Legs: 2, LegOhm: 680, ShuntOhm: math.Inf(1)}
	for _, c := range []struct {
		source               string
		got, want, tolerance float64
	}{
		{"\"Summing to Mono\": two outputs of 600 ohm tied together are 300 ohm", signal.Parallel(600, 600), 300, 1e-9},
		{"derived for the values of the note \"Why Not Wye\" (475 ohm legs, 20 kohm; values from memory): one leg driven, −6.12 dB", published.OneDB(), -6.12, 0.005},
		{"the same: both driven alike, −0.10 dB", alike(published), -0.10, 0.005},
		{"the same: an output whose neighbour is silent drives 939 ohm", published.LoadOhm(), 939, 0.5},
		{"textbooks: equal resistors into a high impedance, one channel −6.02 dB", bare.OneDB(), -6.02, 0.005},
		{"textbooks: left and right alike, 0 dB", alike(bare), 0, 1e-9},
		{"textbooks: left and right with nothing in common, −3.01 dB", bare.UnlikeDB(), -3.01, 0.005},
	} {
		near(t, c.source, c.got, c.want, c.tolerance)
	}
}

// TestPublishedLeads holds the roll-off of leads against published figures. The
// page "Cable and treble damping" gives 100 pF/m for microphone cable; the
// frequencies follow from its formula.
func TestPublishedLeads(t *testing.T) {
	t.Parallel()
	const microphone = 100e-12
	for _, c := range []struct {
		source                           string
		sourceOhm, perMetre, metres, kHz float64
		tolerance                        float64
	}{
		{"10 kohm and 10 m: 15.9 kHz", 10e3, microphone, 10, 15.9, 0.05},
		{"200 ohm and 100 m: 79.6 kHz", 200, microphone, 100, 79.6, 0.05},
		{"600 ohm and 30 m: 88.4 kHz", 600, microphone, 30, 88.4, 0.05},
		// 300 m of loudspeaker cable with 60 pF/m have a reactance of 8842, 884 and
		// 442 ohm at 1, 10 and 20 kHz: at the corner reactance and source are equal.
		{"8842 ohm and 18 nF: 1 kHz", 8842, 60e-12, 300, 1, 0.0001},
		{"884 ohm and 18 nF: 10 kHz", 884, 60e-12, 300, 10, 0.005},
		{"442 ohm and 18 nF: 20 kHz", 442, 60e-12, 300, 20, 0.01},
	} {
		near(t, c.source, signal.CornerHz(c.sourceOhm, c.perMetre, c.metres)/1e3, c.kHz, c.tolerance)
	}
	near(t, "a length has its corner where it was asked for", signal.CornerHz(600, microphone, signal.LongestMetres(600, microphone, 20e3)), 20e3, 1e-6)
}

// TestLeadAgainstPhasors works the low-pass out with complex impedances instead: 3 dB
// are lost at the corner, and 1 dB at 0.509 of it ("Cable and treble damping", factor
// derived).
func TestLeadAgainstPhasors(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(7, 1))
	for range 200 {
		ohm, farad, metres := 10+1e4*r.Float64(), 1e-11+3e-10*r.Float64(), 1+500*r.Float64()
		cornerHz := signal.CornerHz(ohm, farad, metres)
		lossDB := func(hertz float64) float64 {
			xc := complex(0, -1/(2*math.Pi*hertz*farad*metres))
			return -20 * math.Log10(cmplx.Abs(xc/(xc+complex(ohm, 0))))
		}
		near(t, "loss at the corner", lossDB(cornerHz), 10*math.Log10(2), 1e-9)
		near(t, "loss below it", lossDB(0.509*cornerHz), 1, 0.001)
	}
}

// TestCombinerAgainstNodes solves the junction by Kirchhoff's current law instead:
// v·(n/R + 1/S) = Σ vᵢ/R.
func TestCombinerAgainstNodes(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(7, 2))
	for range 200 {
		c := signal.Combiner{Legs: 2 + r.IntN(5), LegOhm: 50 + 1e4*r.Float64(), ShuntOhm: 100 + 1e5*r.Float64()}
		n := float64(c.Legs)
		v := func(sum float64) float64 { return sum / c.LegOhm / (n/c.LegOhm + 1/c.ShuntOhm) }
		near(t, "one", c.OneDB(), signal.DBV(v(1)), 1e-9)
		near(t, "alike", alike(c), signal.DBV(v(n)), 1e-9)
		near(t, "unlike", c.UnlikeDB(), signal.DBV(v(math.Sqrt(n))), 1e-9)
		near(t, "load", c.LoadOhm(), c.LegOhm/(1-v(1)), 1e-6)
	}
}

func TestInHand(t *testing.T) {
	t.Parallel()
	near(t, "−54 dBV into −56 dBV", signal.InHandDB(-54, 0, -56), 2, 1e-12)
	near(t, "+4 dBu into a microphone input of −56 dBV with a pad of 20 dB", signal.InHandDB(1.782, -20, -56), 37.782, 1e-12)
	for _, c := range []struct {
		name   string
		stages []float64
		want   float64
	}{
		{"one input", []float64{2}, 2},
		{"what is in hand later helps", []float64{-4, 10}, 6},
		{"what is lacking later takes nothing from before", []float64{8, -3}, 8},
		{"over three", []float64{-4, 3, 5}, 4},
		{"no input", nil, math.Inf(1)},
	} {
		if got := signal.InHandThroughDB(c.stages); got != c.want {
			t.Errorf("%s: %g, want %g", c.name, got, c.want)
		}
	}
}

// TestLoading: at ten times its impedance a source loses 20·lg(11/10) = 0.83 dB,
// at its own impedance half of its voltage (circuit theory).
func TestLoading(t *testing.T) {
	t.Parallel()
	near(t, "ten times", signal.LoadingDB(600, 6000), -0.828, 0.0005)
	near(t, "matched", signal.LoadingDB(600, 600), -6.021, 0.0005)
	near(t, "three inputs of 10 kohm", signal.Parallel(10e3, 10e3, 10e3), 10e3/3, 1e-9)
	if none := signal.Parallel(); !math.IsInf(none, 1) {
		t.Errorf("none: %g", none)
	}
}
