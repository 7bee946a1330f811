package sound

import (
	"math"
	"slices"
	"testing"
)

const squareFoot, cubicFoot = 0.3048 * 0.3048, 0.3048 * 0.3048 * 0.3048

func material(t *testing.T, name string) Bands {
	t.Helper()
	for _, m := range Materials() {
		if m.Name == name {
			return m.Absorption
		}
	}
	t.Fatalf("no material %q", name)
	return Bands{}
}

// The Master Handbook of Acoustics, p. 163, second example of reverberation: a
// treated room of 23.3 × 16 × 10 ft. Figures of 125 Hz to 4 kHz, without air.
func TestSabineRoom(t *testing.T) {
	t.Parallel()
	surfaces := []Surface{
		{373 * squareFoot, material(t, "concrete, smooth")},
		{1159 * squareFoot, material(t, "gypsum board on studs")},
		{340 * squareFoot, material(t, "acoustic ceiling tiles")},
	}
	volume := 3728 * cubicFoot
	got := SabineSeconds(volume, surfaces, Air{})
	mean, area := MeanAbsorption(surfaces)
	for k, want := range []float64{0.49, 0.85, 0.56, 0.54, 0.54, 0.55} {
		// The book reckons with 0.049 in feet, 0.16076 in metres, and rounds.
		within(t, "T", got[k], want, 0.0062)
		sabins := []float64{370.4, 214.8, 328.8, 339.5, 336.8, 329.4}[k]
		within(t, "A", mean[k]*area/squareFoot, sabins, 0.15)
	}
}

// A class room of 10 × 5 × 4 m with α of walls 0.35, ceiling 0.60, floor 0.15
// (lecture slides; results worked by hand).
func TestSabineAndEyring(t *testing.T) {
	t.Parallel()
	surfaces := []Surface{{120, Flat(0.35)}, {50, Flat(0.60)}, {50, Flat(0.15)}}
	mean, area := MeanAbsorption(surfaces)
	within(t, "A", mean[3]*area, 79.5, 1e-9)
	within(t, "mean absorption", mean[3], 0.3614, 0.0001)
	within(t, "Sabine", SabineSeconds(200, surfaces, Air{})[3], 0.405, 0.0005)
	within(t, "Eyring", EyringSeconds(200, surfaces, Air{})[3], 0.326, 0.0005)
	within(t, "all absorbed", EyringSeconds(200, []Surface{{200, Flat(1)}}, Air{})[3], 0, 0)
}

// Air adds 4·m·V, with m of 20 °C and 50 % at 8 kHz being 104 dB/km (ISO 9613-1) over 4.343.
func TestAirShortensReverberation(t *testing.T) {
	t.Parallel()
	surfaces := []Surface{{2000, Flat(0.1)}}
	got := SabineSeconds(5000, surfaces, OrdinaryAir())
	within(t, "8 kHz", got[6], 0.161*5000/(200+4*0.104/4.343*5000), 0.01)
	if got[0] <= got[6] {
		t.Error("air takes no more of 8 kHz than of 125 Hz")
	}
}

// Sound System Design Reference Manual, p. 6-8 and 6-15.
func TestRoomConstantAndCriticalDistance(t *testing.T) {
	t.Parallel()
	within(t, "R at 0.2", RoomConstantM2(0.2*440, 440), 110, 0.05)
	within(t, "R at 0.4", RoomConstantM2(0.4*440, 440), 293.3, 0.05)
	within(t, "Dc", CriticalDistanceMetres(2, 110), 2.09, 0.005)
	within(t, "Dc", CriticalDistanceMetres(2, 293.3), 3.42, 0.005)
	if !math.IsInf(RoomConstantM2(500, 440), 1) {
		t.Error("a room that absorbs all has a reverberant field")
	}
	// 0.057·√(Q·V/T) of the textbooks, from memory: 2.85 m for 1000 m³, 2 s, Q 5.
	room := Room{VolumeM3: 1000, Reverberation: Flat(2)}
	within(t, "Dc", CriticalDistanceMetres(5, room.ConstantM2()[3]), 2.85, 0.025)
}

// At the critical distance direct and reverberant sound are equal, at twice that the
// direct is 6 dB below, at four times 12 dB (Sound System Design Reference Manual, end of chapter 5).
func TestDirectAgainstReverberant(t *testing.T) {
	t.Parallel()
	room := Room{VolumeM3: 1000, SurfaceM2: 700, Reverberation: Flat(2), Theory: Uniform}
	m := NewModel(Space{Room: &room}, []Loudspeaker{{OnAxisDB: Flat(90)}})
	critical := CriticalDistanceMetres(1, room.ConstantM2()[3])
	for times, want := range map[float64]float64{1: 0, 2: -6.02, 4: -12.04} {
		h := m.Heard(Vector{X: critical * times})
		within(t, "direct re reverberant", h.Direct[3]-h.Reverberant[3], want, 0.005)
	}
}

// The formula of Hopkins and Stryker, worked beside it.
func TestUniformTheory(t *testing.T) {
	t.Parallel()
	directivity := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 60, Q: Flat(8)})
	room := Room{VolumeM3: 3000, SurfaceM2: 1500, Reverberation: Flat(1.5), Theory: Uniform}
	m := NewModel(Space{Room: &room}, []Loudspeaker{{Aim: Vector{X: 1}, OnAxisDB: Flat(95), Directivity: directivity}})
	power := 95 + 10*math.Log10(4*math.Pi/8) // level of sound power
	a := 0.161 * 3000 / 1.5
	r := a / (1 - a/1500)
	for _, metres := range []float64{1, 4, 20} {
		want := power + 10*math.Log10(8/(4*math.Pi*metres*metres)+4/r)
		within(t, "level", m.Heard(Vector{X: metres}).Total()[4], want, 0.001)
	}
}

// Barron and Lee: reverberant energy is 31200·T/V·e^(−0.04·r/T) re the direct
// sound of the same source at 10 m (from memory).
func TestRevisedTheory(t *testing.T) {
	t.Parallel()
	room := Room{VolumeM3: 12000, Reverberation: Flat(1.8)}
	space := Space{Planes: []Plane{{Rectangle(50, 20), 0}}, Room: &room, Air: Air{Celsius: 20}}
	m := NewModel(space, []Loudspeaker{{OnAxisDB: Flat(100)}})
	for _, metres := range []float64{5, 20, 45} {
		want := 80 + 10*math.Log10(31200*1.8/12000*math.Exp(-0.04*metres/1.8))
		within(t, "reverberant level", m.Heard(Vector{X: metres}).Reverberant[3], want, 0.05)
	}
}

func TestSchroederFrequency(t *testing.T) {
	t.Parallel()
	// 2000·√(T/V): 2000·√(2/200) = 200 Hz.
	within(t, "Schroeder frequency", SchroederHz(2, 200), 200, 1e-9)
}

func TestDoubts(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name                  string
		room                  Room
		length, width, height float64
		want                  []Doubt
	}{
		{"hall", Room{VolumeM3: 3000, SurfaceM2: 1400, Reverberation: Flat(1.5)}, 25, 20, 6, nil},
		{"five times as long as high is not too flat", Room{VolumeM3: 4500, SurfaceM2: 1900, Reverberation: Flat(1.5)}, 30, 25, 6, nil},
		{"warehouse", Room{VolumeM3: 40000, SurfaceM2: 12000, Reverberation: Flat(3)}, 100, 50, 8, []Doubt{TooFlat}},
		{"cupboard", Room{VolumeM3: 20, SurfaceM2: 45, Reverberation: Flat(0.5)}, 3, 2.8, 2.4, []Doubt{TooSmall}},
		{"padded", Room{VolumeM3: 200, SurfaceM2: 220, Reverberation: Flat(0.2)}, 10, 5, 4, []Doubt{TooAbsorbent}},
	} {
		if got := test.room.Doubts(test.length, test.width, test.height); !slices.Equal(got, test.want) {
			t.Errorf("%s: %v, want %v", test.name, got, test.want)
		}
	}
}

func TestMaterialsAreCoefficients(t *testing.T) {
	t.Parallel()
	names := map[string]bool{}
	for _, m := range Materials() {
		if names[m.Name] || m.Source == "" {
			t.Errorf("%q is there twice, or has no source", m.Name)
		}
		names[m.Name] = true
		for _, a := range m.Absorption {
			if !(a > 0 && a <= 1) {
				t.Errorf("%q absorbs %g", m.Name, a)
			}
		}
	}
}
