package sound

import (
	"math"
	"testing"
)

// ISO 9613-2:1996, table 2: attenuation by air in dB/km, six climates, as rounded
// there; 15 °C and 80 % at 1 kHz is printed 4.1 where the formula gives 4.15.
func TestAirAbsorptionInSixClimates(t *testing.T) {
	t.Parallel()
	for _, climate := range []struct {
		celsius, humidity float64
		want              Bands
	}{
		{10, 70, Bands{0.4, 1.0, 1.9, 3.7, 9.7, 32.8, 117}},
		{20, 70, Bands{0.3, 1.1, 2.8, 5.0, 9.0, 22.9, 76.6}},
		{30, 70, Bands{0.3, 1.0, 3.1, 7.4, 12.7, 23.1, 59.3}},
		{15, 20, Bands{0.6, 1.2, 2.7, 8.2, 28.2, 88.8, 202}},
		{15, 50, Bands{0.5, 1.2, 2.2, 4.2, 10.8, 36.2, 129}},
		{15, 80, Bands{0.3, 1.1, 2.4, 4.1, 8.3, 23.7, 82.8}},
	} {
		got := Air{Celsius: climate.celsius, HumidityPercent: climate.humidity}.AbsorptionDBPerMetre()
		for k, want := range climate.want {
			// Half of the last digit printed, and 0.01 for the one above.
			tolerance := 0.06
			if want > 100 {
				tolerance = 0.6
			}
			if math.Abs(1000*got[k]-want) > tolerance {
				t.Errorf("%g °C, %g %%, %d Hz: %.3f dB/km, want %g", climate.celsius, climate.humidity, NominalHz()[k], 1000*got[k], want)
			}
		}
	}
}

// ISO 9613-1:1993, table 1: single points at standard pressure, dB/km, three digits.
func TestAirAbsorptionOfTones(t *testing.T) {
	t.Parallel()
	for _, point := range []struct {
		celsius, humidity float64
		band              int
		want              float64
	}{
		{0, 20, 4, 34.6}, {10, 50, 5, 46.7}, {15, 50, 3, 4.16}, {20, 50, 3, 4.66},
		{20, 50, 4, 9.86}, {25, 100, 4, 11.4}, {30, 50, 5, 24.5},
	} {
		got := 1000 * Air{Celsius: point.celsius, HumidityPercent: point.humidity}.AbsorptionDBPerMetre()[point.band]
		within(t, "absorption", got, point.want, 0.005*point.want)
	}
}

func TestSpeedOfSound(t *testing.T) {
	t.Parallel()
	// 343 m/s at 20 °C; 1130 ft/s at 70 °F (Sound System Design Reference Manual, p. 6-16).
	within(t, "at 20 °C", Air{Celsius: 20}.SpeedMetresPerSecond(), 343, 0.5)
	within(t, "at 70 °F", Air{Celsius: (70 - 32) / 1.8}.SpeedMetresPerSecond(), 1130*0.3048, 1.5) // three digits
}

// With as much water vapour in it, absorption over pressure depends on frequency
// over pressure alone: twice the pressure moves all by one octave. And standard
// pressure is what 0 means.
func TestAirPressure(t *testing.T) {
	t.Parallel()
	sea := Air{Celsius: 20, HumidityPercent: 50}
	standard, dense := sea, sea
	standard.PressureKPa = 101.325
	octave := math.Pow(10, 0.3)
	dense.PressureKPa, dense.HumidityPercent = 101.325*octave, 50*octave
	if sea.AbsorptionDBPerMetre() != standard.AbsorptionDBPerMetre() {
		t.Error("no pressure is not the standard one")
	}
	for k := range BandCount - 1 {
		want := octave * standard.AbsorptionDBPerMetre()[k]
		within(t, "absorption an octave higher", dense.AbsorptionDBPerMetre()[k+1], want, 1e-9*want)
	}
}

// A level in a free field falls by the air's absorption as well as with distance.
func TestAirInTheField(t *testing.T) {
	t.Parallel()
	air := Air{Celsius: 15, HumidityPercent: 20}
	plane := Plane{Rectangle(1000, 1), 0}
	space := Space{Planes: []Plane{plane}, Air: air}
	m := NewModel(space, []Loudspeaker{{OnAxisDB: Flat(100)}})
	for _, metres := range []float64{1, 7.3, 50, 333.3, 990} {
		heard := m.Heard(Vector{X: metres}).Direct
		for k, alpha := range air.AbsorptionDBPerMetre() {
			within(t, "level", heard[k], 100-20*math.Log10(metres)-alpha*metres, 0.003)
		}
	}
}
