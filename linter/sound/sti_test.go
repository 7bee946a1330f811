package sound

import (
	"math"
	"testing"
)

// within fails the test when a figure is further from the wanted one than tolerance.
func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.7g, want %.7g ± %.2g", what, got, want, tolerance)
	}
}

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
