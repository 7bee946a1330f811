package sound

import (
	"math"
	"testing"
)

// Coverage of ceiling loudspeakers: 2.600 m is printed by a distributor for 90° at
// 2.8 m over ears at 1.5 m; the others are worked from 2·h·tan(angle/2).
func TestCoverageDiameter(t *testing.T) {
	t.Parallel()
	for _, row := range []struct{ ceiling, ears, degrees, want float64 }{
		{2.8, 1.5, 90, 2.600}, {3, 1.2, 90, 3.6}, {4, 1.2, 120, 9.70}, {3.2, 1.2, 90, 4}, {2.7, 1.2, 90, 3},
	} {
		within(t, "diameter", CoverageDiameterMetres(row.ceiling-row.ears, row.degrees), row.want, 0.005)
	}
	if !math.IsInf(CoverageDiameterMetres(2, 180), 1) {
		t.Error("180° end somewhere")
	}
}

// A room of 12 × 8 m, ceiling 3.2 m, ears 1.2 m, 90°, 92 dB, 3 W, worked by hand.
func TestCeilingRoom(t *testing.T) {
	t.Parallel()
	diameter := CoverageDiameterMetres(2, 90)
	for _, row := range []struct {
		density       Density
		pattern       Pattern
		spacing       float64
		columns, rows int
	}{
		{EdgeToEdge, Square, 4, 3, 2},
		{MinimumOverlap, Square, 2.828, 5, 3},
		{MinimumOverlap, Hexagonal, 3.464, 4, 3},
		{CentreToCentre, Square, 2, 6, 4},
	} {
		spacing := SpacingMetres(diameter, row.density, row.pattern)
		within(t, "spacing", spacing, row.spacing, 0.0005)
		if columns, rows := Needed(12, 8, spacing, row.pattern); columns != row.columns || rows != row.rows {
			t.Errorf("%d × %d at %.3f m, want %d × %d", columns, rows, spacing, row.columns, row.rows)
		}
	}
	onAxis := NewModel(Space{}, []Loudspeaker{{At: Vector{Z: 3.2}, OnAxisDB: OnAxisDB(Flat(92), 3),
		Directivity: NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90})}}).Heard(Vector{Z: 1.2}).Total().DBA()
	within(t, "level on the axis", onAxis, 90.75, 0.01)
}

// A field report on a form for offices: at 2.7 m, ears at 1.2 m and 90° a circle has
// 3.0 m and 7.1 m²; 50 m² need more than the form's one, about 9 as a square of 7.07 m.
func TestOfficesNeedMoreThanOneInFiftySquareMetres(t *testing.T) {
	t.Parallel()
	diameter := CoverageDiameterMetres(1.5, 90)
	within(t, "circle", math.Pi/4*diameter*diameter, 7.1, 0.05)
	side := math.Sqrt(50)
	columns, rows := Needed(side, side, SpacingMetres(diameter, EdgeToEdge, Square), Square)
	if columns*rows != 9 {
		t.Errorf("%d × %d", columns, rows)
	}
	if n := NeededForArea(50, SpacingMetres(diameter, EdgeToEdge, Square), Square); n != 6 {
		t.Errorf("%d for an area of any shape, want 50/9", n)
	}
	if n := NeededForArea(50, SpacingMetres(diameter, MinimumOverlap, Square), Square); n != 12 {
		t.Errorf("%d without gaps, want 50/4.5", n)
	}
}

// At minimum overlap no point of the floor is outside every circle; with a spacing
// 2 % wider one is.
func TestMinimumOverlapLeavesNoGap(t *testing.T) {
	t.Parallel()
	for _, pattern := range []Pattern{Square, Hexagonal} {
		spacing := SpacingMetres(2, MinimumOverlap, pattern)
		if gap := furthest(spacing, pattern); gap > 1+1e-9 {
			t.Errorf("pattern %d: a point is %g radii away", pattern, gap)
		}
		if gap := furthest(1.02*spacing, pattern); gap <= 1 {
			t.Errorf("pattern %d: a wider spacing leaves no gap", pattern)
		}
	}
}

// furthest is how far any point of an endless pattern is from the next loudspeaker,
// by trying points of one cell.
func furthest(spacing float64, pattern Pattern) float64 {
	rowPitch, shift := spacing, 0.0
	if pattern == Hexagonal {
		rowPitch, shift = spacing*math.Sqrt(3)/2, spacing/2
	}
	worst := 0.0
	const steps = 120
	for i := range steps + 1 {
		for j := range steps + 1 {
			x, y := spacing*float64(i)/steps, rowPitch*float64(j)/steps
			best := math.Inf(1)
			for row := -2; row <= 2; row++ {
				for column := -2; column <= 2; column++ {
					sx := float64(column)*spacing + shift*math.Abs(float64(row%2))
					best = min(best, math.Hypot(x-sx, y-float64(row)*rowPitch))
				}
			}
			worst = max(worst, best)
		}
	}
	return worst
}

// V. M. A. Peutz 1971 in its textbook form, worked by hand (from memory).
func TestArticulationLoss(t *testing.T) {
	t.Parallel()
	percent, far := ArticulationLossPercent(8, 1.5, 2000, 5, 1)
	within(t, "near", percent, 2.88, 0.005)
	if far {
		t.Error("8 m of 14.7 m are far")
	}
	percent, far = ArticulationLossPercent(10, 2, 1000, 5, 1)
	within(t, "far", percent, 18, 0.005)
	if !far {
		t.Error("10 m of 9.0 m are near")
	}
	percent, _ = ArticulationLossPercent(8, 1.5, 2000, 5, 2)
	within(t, "two groups", percent, 5.76, 0.005)
}

// Farrel Becker's relation, worked from its formula; its values agree with the bands
// of the encyclopaedia: 3, 7, 15, 33 % at 0.75, 0.6, 0.45, 0.3.
func TestArticulationLossOfSTI(t *testing.T) {
	t.Parallel()
	for sti, want := range map[float64]float64{0.3: 33.6, 0.45: 14.9, 0.5: 11.35, 0.6: 6.60, 0.75: 2.93} {
		within(t, "articulation loss", ArticulationLossOfSTI(sti), want, 0.05)
		within(t, "and back", STIOfArticulationLoss(ArticulationLossOfSTI(sti)), sti, 1e-12)
	}
}

// D. Davis and C. Davis, Sound System Engineering (formulae from memory), worked by hand.
func TestAcousticGain(t *testing.T) {
	t.Parallel()
	d := GainDistances{TalkerToMicrophone: 0.5, LoudspeakerToMicrophone: 8, LoudspeakerToListener: 10, TalkerToListener: 16}
	// 20 lg(8·16/(10·0.5)) = 28.16.
	within(t, "PAG", PotentialGainDB(d, 1, 6), 28.16-6, 0.01)
	within(t, "PAG of four microphones", PotentialGainDB(d, 4, 6), 28.16-6.02-6, 0.01)
	within(t, "NAG", NeededGainDB(16, 2), 18.06, 0.005)
	d.Within = 9
	// 20 lg(8·9/(9·0.5)) = 24.08.
	within(t, "PAG within the critical distance", PotentialGainDB(d, 1, 0), 24.08, 0.01)
}

// In a free field the general form is the one in distances.
func TestGainFromLevels(t *testing.T) {
	t.Parallel()
	d := GainDistances{TalkerToMicrophone: 0.3, LoudspeakerToMicrophone: 5, LoudspeakerToListener: 12, TalkerToListener: 11}
	talker := 66.0 // at 1 m
	fall := func(metres float64) float64 { return 20 * math.Log10(metres) }
	heard := GainFromLevelsDB(talker-fall(d.TalkerToMicrophone), 90-fall(d.LoudspeakerToListener), 90-fall(d.LoudspeakerToMicrophone), 2, FeedbackMarginDB)
	within(t, "gain", heard-(talker-fall(d.TalkerToListener)), PotentialGainDB(d, 2, FeedbackMarginDB), 1e-9)
}

func TestExposureHours(t *testing.T) {
	t.Parallel()
	// NIOSH 98-126, table 1-1 (from memory): 85 dBA 8 h, 88 dBA 4 h, 100 dBA 15 min, 94 dBA 1 h.
	for level, hours := range map[float64]float64{85: 8, 88: 4, 94: 1, 100: 0.25} {
		within(t, "hours", ExposureHours(level), hours, 1e-9)
	}
}

// Sound System Design Reference Manual, p. 6-8: a lecture room of 485 m³ with forty
// ceiling loudspeakers on centres of 1.5 m, where the level varies by 2 to 3 dB. Its
// surface of some 440 m² with a mean absorption of 0.2 makes it about 15 × 9 × 3.6 m
// (the sides are ours). An ideal diffuse field is more even than a real one.
func TestLectureRoom(t *testing.T) {
	t.Parallel()
	room := Room{VolumeM3: 485, SurfaceM2: 440, Reverberation: Flat(0.161 * 485 / (0.2 * 440)), Theory: Uniform}
	space := Space{Planes: []Plane{{Rectangle(15, 9), 1.2}}, Room: &room, Air: OrdinaryAir()}
	cone := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, HalfSpace: true})
	var forty []Loudspeaker
	for i := range 40 {
		at := Vector{2.25 + 1.5*float64(i%8), 1.5 + 1.5*float64(i/8), 3.6}
		forty = append(forty, Loudspeaker{At: at, OnAxisDB: OnAxisDB(Flat(90), 1), Directivity: cone})
	}
	s := SurveySpace(space, forty, SurveyOptions{})
	if s.Level.Spread > 3 {
		t.Errorf("the level varies by %.1f dB", s.Level.Spread)
	}
	within(t, "room constant", room.ConstantM2()[3], 110, 0.5)
}
