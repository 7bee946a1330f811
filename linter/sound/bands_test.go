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

func TestAWeighting(t *testing.T) {
	t.Parallel()
	// IEC 61672-1:2013, table 3 (from memory), rounded to 0.1 dB.
	want := Bands{-16.1, -8.6, -3.2, 0, 1.2, 1.0, -1.1}
	for k, got := range AWeightingDB() {
		within(t, "A-weighting", got, want[k], 0.05)
	}
}

func TestEnergySums(t *testing.T) {
	t.Parallel()
	// n equal levels are 10 lg n more than one: 10 lg(n).
	for n, want := range map[int]float64{2: 3.01, 3: 4.77, 4: 6.02, 8: 9.03, 10: 10} {
		levels := make([]float64, n)
		for i := range levels {
			levels[i] = 70
		}
		within(t, "sum of equal levels", EnergySumDB(levels...), 70+want, 0.005)
	}
	within(t, "60, 60 and 66 dB", EnergySumDB(60, 60, 66), 67.77, 0.005)
	within(t, "seven equal octaves", Flat(60).TotalDB(), 60+10*math.Log10(7), 1e-9)
	within(t, "60 dB over 60 dB", Over(Flat(60), Flat(60))[3], 63.01, 0.005)
	if !math.IsInf(EnergySumDB(), -1) {
		t.Error("nothing has a level")
	}
}

func TestSpeechSpectrum(t *testing.T) {
	t.Parallel()
	speech := SpeechDB(70)
	within(t, "A-weighted sum", speech.DBA(), 70, 1e-9)
	// IEC 60268-16:2011 gives male speech re its A-weighted level: 2.9, 2.9, −0.8,
	// −6.8, −12.8, −18.8, −24.8 dB. The 2020 edition lowered the two lowest octaves
	// by 4.6 and 1.6 dB re 500 Hz.
	for k := 2; k+1 < BandCount; k++ {
		within(t, "fall per octave", speech[k+1]-speech[k], -6, 1e-9)
	}
	within(t, "noise", NoiseDB(55).DBA(), 55, 1e-9)
}

// A loudspeaker of 90 dB with 8 W, on its axis: published as 99, 93, 87, 81 dB at 1,
// 2, 4, 8 m (a note on the wattage of loudspeakers), 90 + 10 lg 8 − 20 lg r.
// With three octaves more of distance the air is left out.
func TestLevelOverDistance(t *testing.T) {
	t.Parallel()
	m := NewModel(Space{}, []Loudspeaker{{OnAxisDB: OnAxisDB(Flat(90), 8)}})
	for metres, want := range map[float64]float64{1: 99.03, 2: 93.01, 4: 86.99, 8: 80.97} {
		within(t, "level", m.Heard(Vector{Z: -metres}).Total().DBA(), want, 0.005)
	}
}

func TestDistanceLoss(t *testing.T) {
	t.Parallel()
	m := NewModel(Space{}, []Loudspeaker{{OnAxisDB: SpeechDB(100)}})
	loss := func(metres float64) float64 { return 100 - m.Heard(Vector{X: metres}).Total().DBA() }
	// "Sound Pressure Levels & Ambient Noise" (a UK page on public address): 80 dB
	// at 8 m need 98 dB at 1 m.
	within(t, "loss over 8 m", loss(8), 18.06, 0.005)
	// A magazine's tutorial on sizing loudspeakers: 80 ft, 28 dB.
	within(t, "loss over 80 ft", loss(24.384), 27.74, 0.005)
	// A loudspeaker maker's application guide: a horn of 112 dB with 30 W gives 99 dB at 80 ft.
	horn := NewModel(Space{}, []Loudspeaker{{OnAxisDB: OnAxisDB(Flat(112), 30)}})
	within(t, "horn at 80 ft", horn.Heard(Vector{X: 24.384}).Total().DBA(), 99.03, 0.005)
}
