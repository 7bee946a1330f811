package sound

import (
	"math"
	"testing"
)

// IEC 60268-16, annex A, worked by hand for seven reverberation times and
// signal-to-noise ratios, without masking and threshold.
func TestTransmissionOfReverberationAndNoise(t *testing.T) {
	t.Parallel()
	mtf := ReverberantMTF(Bands{2.4, 2.1, 1.8, 1.6, 1.4, 1.2, 0.9}).WithNoise(Bands{5, 8, 10, 12, 12, 10, 8}, Bands{})
	got := mtf.Transmission()
	for k, want := range []float64{0.3315, 0.3841, 0.4260, 0.4591, 0.4844, 0.4985, 0.5243} {
		within(t, "MTI", got.MTI[k], want, 0.0005)
	}
	within(t, "STI", got.STI, 0.4665, 0.0005)
	if Letter(got.STI) != "H" || Rating(got.STI) != "fair" {
		t.Errorf("%.4f is %s, %s; want H, fair", got.STI, Letter(got.STI), Rating(got.STI))
	}
}

// Verification signals for IEC 60268-16:2020, A.2.2: two neighbouring octaves are
// transmitted whole, the others not at all.
func TestTransmissionOfTwoOctaves(t *testing.T) {
	t.Parallel()
	for k, want := range []float64{0.127, 0.279, 0.398, 0.531, 0.486, 0.302} {
		var m MTF
		for f := range m[k] {
			m[k][f], m[k+1][f] = 1, 1
		}
		within(t, "STI", m.Transmission().STI, want, 0.0005)
	}
}

// Verification signals for IEC 60268-16:2020, A.3.1.2: one m everywhere.
func TestTransmissionOfOneModulation(t *testing.T) {
	t.Parallel()
	for _, row := range []struct{ m, index float64 }{
		{0.059351, 0.1}, {0.11182, 0.2}, {0.20076, 0.3}, {0.33386, 0.4}, {0.5, 0.5},
		{0.66614, 0.6}, {0.79924, 0.7}, {0.88818, 0.8}, {0.94065, 0.9}, {1, 1}, {0, 0}, {0.02, 0}, {0.99, 1},
	} {
		var m MTF
		for k := range m {
			for f := range m[k] {
				m[k][f] = row.m
			}
		}
		within(t, "STI", m.Transmission().STI, row.index, 0.00002)
	}
}

// Worked by hand from the formula of IEC 60268-16, annex A, all octaves alike.
func TestTransmissionOfOneCause(t *testing.T) {
	t.Parallel()
	for _, row := range []struct{ seconds, snr, want float64 }{
		{0.5, 200, 0.736}, {1, 200, 0.588}, {1.5, 200, 0.498}, {2, 200, 0.437}, {3, 200, 0.357}, {4, 200, 0.303},
		{0, 0, 0.5}, {0, 10, 0.833}, {0, -15, 0}, {0, 15, 1}, {0, 30, 1},
		{0.9, 15, 0.586}, {1.5, 10, 0.459}, {1.5, 15, 0.483}, {2, 20, 0.434},
	} {
		got := ReverberantMTF(Flat(row.seconds)).WithNoise(Flat(row.snr), Bands{}).Transmission().STI
		within(t, "STI", got, row.want, 0.0006)
	}
}

// IEC 60268-16:2020, annex A: the slopes of masking meet at 63 and 67 dB.
func TestMasking(t *testing.T) {
	t.Parallel()
	for level, want := range map[float64]float64{40: -45, 63: -33.5, 67: -26.3, 80: -19.8, 100: -10, 120: -10} {
		within(t, "masking", maskingDB(level), want, 1e-9)
	}
	within(t, "just below 63 dB", maskingDB(63-1e-9), -33.5, 1e-6)
	within(t, "just below 67 dB", maskingDB(67-1e-9), -26.3, 1e-6)
}

// Quiet speech sinks below the threshold of hearing, loud speech masks itself;
// speech of some 65 to 75 dBA is understood best.
func TestHearing(t *testing.T) {
	t.Parallel()
	clean := ReverberantMTF(Flat(0))
	index := func(levelDBA float64) float64 {
		return clean.WithHearing(SpeechDB(levelDBA)).Transmission().STI
	}
	if !(index(20) < index(40) && index(40) < index(60) && index(60) > index(90)) {
		t.Errorf("STI at 20, 40, 60, 90 dBA: %.3f %.3f %.3f %.3f", index(20), index(40), index(60), index(90))
	}
	// One octave worked by hand: 1 kHz at 70 dB over 500 Hz at 76 dB.
	// a = 0.5·76 − 59.8 = −21.8; I = 10⁷, Iam = 10^5.42, Irt = 10^0.65.
	level := SpeechDB(0)
	level = level.Shift(76 - level[2])
	got := clean.WithHearing(level)[3][0]
	within(t, "m", got, 1e7/(1e7+math.Pow(10, 5.42)+math.Pow(10, 0.65)), 1e-9)
	// Silence transmits nothing, and is no accident of division.
	if got := clean.WithNoise(Flat(math.Inf(-1)), Flat(math.Inf(-1))).WithHearing(Flat(math.Inf(-1))).Transmission().STI; got != 0 {
		t.Errorf("silence has STI %g", got)
	}
}

func TestLettersAndRatings(t *testing.T) {
	t.Parallel()
	// IEC 60268-16:2011 and 2020, annex F: bands begin at 0.36, 0.40 … 0.76.
	for sti, want := range map[float64]string{
		0: "U", 0.3599: "U", 0.36: "J", 0.40: "I", 0.44: "H", 0.48: "G", 0.52: "F", 0.56: "E",
		0.60: "D", 0.64: "C", 0.68: "B", 0.72: "A", 0.7599: "A", 0.76: "A+", 1: "A+",
	} {
		if got := Letter(sti); got != want {
			t.Errorf("%g is %s, want %s", sti, got, want)
		}
	}
	// IEC 60268-16:1998, as in the manual of a measuring instrument.
	for sti, want := range map[float64]string{0.29: "bad", 0.30: "poor", 0.45: "fair", 0.60: "good", 0.75: "excellent", 0.74: "good"} {
		if got := Rating(sti); got != want {
			t.Errorf("%g is %s, want %s", sti, got, want)
		}
	}
}

// The formula with direct sound goes over into that of each part alone.
func TestDirectAndReverberantLimits(t *testing.T) {
	t.Parallel()
	reverberation := Flat(2)
	within(t, "all direct", DirectAndReverberantMTF(Flat(1), Flat(0), reverberation)[3][5], 1, 1e-12)
	within(t, "none direct", DirectAndReverberantMTF(Flat(0), Flat(5), reverberation)[3][5], ReverberantMTF(reverberation)[3][5], 1e-12)
	within(t, "nothing", DirectAndReverberantMTF(Flat(0), Flat(0), reverberation)[3][5], 0, 0)
	// The form with squares, as the papers have it: A² + B².
	x := 2 * math.Pi * 2 * 2 / 13.8
	a := 1.0/3 + 2.0/3/(1+x*x)
	b := 2.0 / 3 * x / (1 + x*x)
	within(t, "one third direct", DirectAndReverberantMTF(Flat(1), Flat(2), reverberation)[3][5], math.Sqrt(a*a+b*b), 1e-12)
}
