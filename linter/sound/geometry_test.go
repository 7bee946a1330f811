package sound

import (
	"math"
	"slices"
	"testing"
)

// lShape is 12 × 8 m without a corner of 6 × 4 m.
var lShape = Outline{{0, 0}, {12, 0}, {12, 4}, {6, 4}, {6, 8}, {0, 8}}

func TestOutline(t *testing.T) {
	t.Parallel()
	within(t, "area of a rectangle", Rectangle(12, 8).AreaM2(), 96, 1e-12)
	within(t, "perimeter", Rectangle(12, 8).PerimeterMetres(), 40, 1e-12)
	within(t, "area of an L", lShape.AreaM2(), 72, 1e-12)
	within(t, "perimeter of an L", lShape.PerimeterMetres(), 40, 1e-12)
	backwards := slices.Clone(lShape)
	slices.Reverse(backwards)
	within(t, "area the other way round", backwards.AreaM2(), 72, 1e-12)
	within(t, "area of a triangle", Outline{{0, 0}, {4, 0}, {0, 3}}.AreaM2(), 6, 1e-12)
	for _, o := range []Outline{lShape, backwards} {
		for p, want := range map[Point]bool{
			{1, 1}: true, {11, 1}: true, {1, 7}: true, {11, 7}: false, {7, 5}: false, {5.9, 7.9}: true, {-1, 1}: false, {3, 9}: false,
		} {
			if o.Contains(p) != want {
				t.Errorf("%v inside: %t", p, !want)
			}
		}
	}
	if (Outline{}).AreaM2() != 0 || (Outline{}).Contains(Point{}) {
		t.Error("no floor has an area")
	}
}

// As many listeners as there are cells in the floor, each inside, evenly spread.
func TestGrid(t *testing.T) {
	t.Parallel()
	plane := Plane{lShape, 1.2}
	for _, spacing := range []float64{2, 1, 0.5, 0.25} {
		grid := plane.Grid(spacing)
		if want := int(math.Round(72 / (spacing * spacing))); len(grid) != want {
			t.Errorf("%d listeners at %g m, want %d", len(grid), spacing, want)
		}
		for _, at := range grid {
			if !lShape.Contains(Point{at.X, at.Y}) || at.Z != 1.2 {
				t.Fatalf("%v is no place for ears", at)
			}
		}
	}
	// A wish that does not divide the floor gets the next finer that does.
	if grid := (Plane{Rectangle(10, 10), 0}).Grid(3); len(grid) != 16 {
		t.Errorf("%d listeners, want 4 × 4", len(grid))
	}
	// tan 45° is a little below 1, and 12 m over 3.9999999999 m are 3 cells all the same.
	if n, _ := cells(12, 4*math.Tan(math.Pi/4)); n != 3 {
		t.Errorf("12 m are %d cells of 4 m", n)
	}
	if grid := (Plane{Outline{{0, 0}, {10, 0.001}, {5, 9}}, 0}).Grid(100); len(grid) != 1 {
		t.Errorf("%d listeners in one cell", len(grid))
	}
}

func TestSurveySettles(t *testing.T) {
	t.Parallel()
	d := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, HalfSpace: true})
	room := Room{VolumeM3: 12 * 8 * 3.2, SurfaceM2: 2 * (12*8 + 20*3.2), Reverberation: Flat(0.6)}
	space := Space{Planes: []Plane{{Rectangle(12, 8), 1.2}}, Room: &room, Air: OrdinaryAir(), NoiseDB: NoiseDB(45)}
	var ceiling []Loudspeaker
	for _, x := range []float64{2, 6, 10} {
		for _, y := range []float64{2, 6} {
			ceiling = append(ceiling, Loudspeaker{At: Vector{x, y, 3.2}, OnAxisDB: OnAxisDB(Flat(92), 1), Directivity: d})
		}
	}
	s := SurveySpace(space, ceiling, SurveyOptions{Transmission: true})
	if !s.Settled {
		t.Fatalf("not settled at %g m with %d listeners", s.SpacingMetres, len(s.Listeners))
	}
	fine := SurveySpace(space, ceiling, SurveyOptions{SpacingMetres: 0.05})
	within(t, "least", s.Level.Least, fine.Level.Least, 0.2)
	within(t, "5th percentile", s.Level.Fifth, fine.Level.Fifth, 0.1)
	within(t, "mean", s.Level.Mean, fine.Level.Mean, 0.05)
	if fine.Settled || fine.SpacingMetres != 0.05 || fine.STI != nil {
		t.Error("a spacing that was given was not taken as it is")
	}
	if s.Transmission.Least > s.Transmission.Mean || s.STI[s.Transmission.LeastAt] != s.Transmission.Least {
		t.Errorf("index %+v", s.Transmission)
	}
	// Three decibels are not lost by counting floor parts apart.
	halves := space
	halves.Planes = []Plane{{Outline{{0, 0}, {6, 0}, {6, 8}, {0, 8}}, 1.2}, {Outline{{6, 0}, {12, 0}, {12, 8}, {6, 8}}, 1.2}}
	within(t, "mean of two parts", SurveySpace(halves, ceiling, SurveyOptions{SpacingMetres: 0.5}).Level.Mean,
		SurveySpace(space, ceiling, SurveyOptions{SpacingMetres: 0.5}).Level.Mean, 1e-9)
}

func TestSurveyOfNothing(t *testing.T) {
	t.Parallel()
	silent := SurveySpace(Space{Planes: []Plane{{Rectangle(5, 5), 1.2}}}, nil, SurveyOptions{Transmission: true})
	if len(silent.Listeners) == 0 || !math.IsInf(silent.Level.Most, -1) || silent.Transmission.Most != 0 {
		t.Errorf("%+v", silent.Level)
	}
	if empty := SurveySpace(Space{}, nil, SurveyOptions{Transmission: true}); len(empty.Listeners) != 0 || empty.Level != (Statistics{}) {
		t.Errorf("%+v", empty)
	}
}

func TestDescribe(t *testing.T) {
	t.Parallel()
	figures := make([]float64, 101)
	for i := range figures {
		figures[i] = float64((i*37)%101) + 50
	}
	got := Describe(figures)
	want := Statistics{Least: 50, Fifth: 55, Mean: 100, Spread: 100, Most: 150, LeastAt: 0, MostAt: slices.Index(figures, 150)}
	if got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	within(t, "between two", Describe([]float64{0, 10}).Fifth, 0.5, 1e-12)
	within(t, "of one", Describe([]float64{7}).Fifth, 7, 0)
}

func TestBeyond(t *testing.T) {
	t.Parallel()
	hall := Outline{{0, 0}, {24, 0}, {24, 8}, {14, 8}, {14, 14}, {0, 14}}
	for _, test := range []struct {
		at   Point
		want float64
	}{
		{Point{5, 5}, 0}, {Point{27, 4}, 3}, {Point{27, -4}, 5}, {Point{17, 12}, 3}, {Point{-1, 7}, 1}, {Point{14, 8}, 0},
	} {
		if got := hall.BeyondMetres(test.at); math.Abs(got-test.want) > 1e-9 {
			t.Errorf("%v is %g m outside, want %g", test.at, got, test.want)
		}
	}
	if got := (Outline{}).BeyondMetres(Point{1, 1}); got != 0 {
		t.Errorf("%g m outside of nothing", got)
	}
}
