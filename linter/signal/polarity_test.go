package signal_test

import (
	"math"
	"math/cmplx"
	"testing"

	"loudlint/linter/signal"
)

// TestOppositeAgainstPhasors adds two phasors; and 12 to 15 dB, which a report
// from the field measured along the centre line of a cluster with one loudspeaker
// reversed, is what levels 3 to 5 dB apart make.
func TestOppositeAgainstPhasors(t *testing.T) {
	for _, difference := range []float64{0.1, 1, 3, 6, 20} {
		one, other := cmplx.Rect(1, 0.7), cmplx.Rect(math.Pow(10, -difference/20), 0.7)
		turned := cmplx.Rect(cmplx.Abs(other), 0.7+math.Pi)
		want := 20 * math.Log10(cmplx.Abs(one+turned)/cmplx.Abs(one+other))
		near(t, "opposite polarity", signal.OppositeDB(difference), want, 1e-9)
		near(t, "the other one louder", signal.OppositeDB(-difference), want, 1e-9)
	}
	if low, high := signal.OppositeDB(4.4), signal.OppositeDB(3.1); low < -15 || low > -12 || high < -15.2 || high > -12 {
		t.Errorf("levels 3.1 to 4.4 dB apart make %.1f to %.1f dB, not 12 to 15 dB less", high, low)
	}
	if !math.IsInf(signal.OppositeDB(0), -1) {
		t.Errorf("equal levels leave %g dB", signal.OppositeDB(0))
	}
}
