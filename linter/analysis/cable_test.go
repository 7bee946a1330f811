package analysis_test

import (
	"fmt"
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// cablesOf writes the cables of a line with the parts that name them.
func cablesOf(l *analysis.Line) string {
	named, missing := l.Cables()
	var all []string
	for _, n := range named {
		all = append(all, n.Cable.Name+" of "+n.Owner())
	}
	text := strings.Join(all, "; ")
	if len(missing) > 0 {
		text += " without " + lacks(missing)
	}
	return text
}

func TestCables(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "240 W" }
line "Plain" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  loudspeaker "P" { tap = "6 W" }
}
line "Nested" { # in walking order, after the line's own
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  loudspeaker "A" { tap = "6 W" }
  branch "Tee" {
    cable = "2 x 1.5 mm2"
    loudspeaker "B" {
      tap   = "6 W"
      cable = "2 x 1 mm2"
    }
    loudspeaker "C" { tap = "6 W" }
  }
  loudspeaker "D" {
    tap   = "6 W"
    cable = "2 x 0.75 mm2"
  }
}
line "Of devices" { # nothing is left for the line's own cable
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 6 mm2"
  branch "Tee" {
    cable = "2 x 1.5 mm2"
    loudspeaker "E" { tap = "6 W" }
  }
}
line "Home run" {
  amplifier = "Rack"
  output    = "100 V"
  home_run  = "20 m"
  loudspeaker "F" {
    tap   = "6 W"
    cable = "2 x 1 mm2"
  }
}
line "Bare" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "6 W" }
}
line "Empty" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1 mm2"
  home_run  = "2 m"
}
`)
	for name, want := range map[string]string{
		"Plain":      `2 x 1.5 mm2 of line "Plain"`,
		"Nested":     `2 x 2.5 mm2 of line "Nested"; 2 x 1.5 mm2 of branch "Tee"; 2 x 1 mm2 of loudspeaker "B"; 2 x 0.75 mm2 of loudspeaker "D"`,
		"Of devices": `2 x 1.5 mm2 of branch "Tee"`,
		"Home run":   `2 x 1 mm2 of loudspeaker "F" without cable of line "Home run"`,
		"Bare":       ` without cable of line "Bare"`,
		"Empty":      "",
	} {
		if got := cablesOf(line(t, s, name)); got != want {
			t.Errorf("%s: %s; want %s", name, got, want)
		}
	}
}

// Worked by hand from the far end: 8 ohm behind 10 m of 0.75 mm² (26 ohm/km, IEC
// 60228 class 5: 0.52 ohm there and back) and 8 ohm at the tee, behind 20 m of 2.5
// mm² (7.98 ohm/km: 0.3192 ohm), on √(400 W × 4 ohm) = 40 V.
func TestCurrents(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "L" { impedance = "8 ohm" }
  branch "Foyer" {
    leg   = "4 m"
    cable = "2 x 0.75 mm2"
    loudspeaker "F" {
      impedance = "8 ohm"
      leg       = "6 m"
    }
  }
}
`)
	currents, missing := line(t, s, "Left").Currents()
	if len(missing) > 0 || len(currents) != 2 {
		t.Fatalf("%d currents, lacking %s", len(currents), lacks(missing))
	}
	parallel := 1 / (1/8.0 + 1/8.52)
	whole := 40 / (0.3192 + parallel)
	branch := whole * parallel / 8.52
	for i, want := range []struct {
		amps, rating float64
		leg          string
	}{{whole, 27, "to L"}, {branch, 6, "to F"}} {
		c := currents[i]
		within(t, c.Owner(), float64(c.Most.Value), want.amps, 1e-9)
		within(t, c.Owner()+" at least", float64(c.Least.Value), want.amps, 1e-9)
		within(t, c.Owner()+" may", float64(c.Rating.Value), want.rating, 1e-12)
		if c.Leg != want.leg || c.Bound {
			t.Errorf("%s: in the leg %q, bound %t", c.Owner(), c.Leg, c.Bound)
		}
	}
}

// The most and the least hold the current of any way of hanging the load along a
// length of which only the total is known.
func TestCurrentBounds(t *testing.T) {
	t.Parallel()
	const text = `amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "2 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 0.75 mm2"
  %s
  loudspeaker "L" { impedance = "4 ohm" }
  loudspeaker "M" {
    impedance = "4 ohm"
    %s
  }
}
`
	total := worked(t, fmt.Sprintf(text, `length = "30 m"`, ""))
	bounds, _ := line(t, total, "Left").Currents()
	if len(bounds) != 1 || !bounds[0].Bound || len(bounds[0].Exact) == 0 {
		t.Fatalf("%+v", bounds)
	}
	if most := 400.0 / (math.Sqrt(800)); math.Abs(float64(bounds[0].Most.Value)-most) > 1e-9 {
		t.Errorf("at most %g; without cable it is %g", bounds[0].Most.Value, most)
	}
	for home := 1; home <= 30; home += 7 {
		s := worked(t, fmt.Sprintf(text, fmt.Sprintf(`home_run = "%d m"`, home), fmt.Sprintf(`leg = "%d m"`, 30-home)))
		exact, missing := line(t, s, "Left").Currents()
		if len(missing) > 0 || exact[0].Bound {
			t.Fatalf("not known with every leg stated: %s", lacks(missing))
		}
		if got := exact[0].Most.Value; got < bounds[0].Least.Value*(1-1e-9) || got > bounds[0].Most.Value {
			t.Errorf("home run of %d m: %g A is outside %g to %g", home, got, bounds[0].Least.Value, bounds[0].Most.Value)
		}
	}
}

func TestCableFor(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Stage" {
  rated_power = "1600 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 0.75 mm2"
  home_run  = "10 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
`)
	l := line(t, s, "Left")
	currents, _ := l.Currents()
	// 20 A with no cable at all: 1.5 mm² may carry 19.5 A, 2.5 mm² 27 A, which is 21.6 A at 80 %; 16 mm² 85 A.
	for _, test := range []struct {
		share float64
		cable string
	}{{1, "2 x 2.5 mm2"}, {0.8, "2 x 2.5 mm2"}, {0.5, "2 x 6 mm2"}, {0.1, ""}} {
		cable, most, ok := l.CableFor(&currents[0], test.share)
		if ok != (test.cable != "") || cable != test.cable || ok && float64(most)*test.share < 20*(1-1e-9) {
			t.Errorf("at %g: %q, %g A, %t; want %q", test.share, cable, most, ok, test.cable)
		}
	}
}

// trebleDesign is a 100 V line of some loudspeakers on cable with known figures.
func trebleDesign(count int, tap, home, spacing float64, pair string) string {
	return fmt.Sprintf(`amplifier "Rack" { rated_power = "2000 W" }
cable_model "own/cable" {
  size  = "6 mm2"
  cores = 2
  %s
}
line "Road" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/cable"
  home_run  = "%g m"
  loudspeaker "R" {
    quantity = %d
    tap      = "%g W"
    spacing  = "%g m"
  }
}
`, pair, home, count, tap, spacing)
}

// ladder works the same line out from its far end, leg by leg, and gives the
// volts at each loudspeaker: the textbook's way, without the solver.
func ladder(count int, tap, home, spacing, henry, farad, hz float64) []float64 {
	leg := func(metres float64) (z, y complex128) {
		return complex(2*3.3e-3*metres, 2*math.Pi*hz*henry*metres), complex(0, math.Pi*hz*farad*metres)
	}
	g := complex(tap/1e4, 0)
	ratios := make([]complex128, count)
	var seen complex128
	for i := count - 1; i >= 0; i-- {
		metres := spacing
		if i == 0 {
			metres = home
		}
		z, y := leg(metres)
		y0 := seen + g + y
		ratios[i] = 1 / (1 + z*y0)
		seen = y + y0*ratios[i]
	}
	volts, at := make([]float64, count), complex(100, 0)
	for i, r := range ratios {
		at *= r
		volts[i] = cmplx.Abs(at)
	}
	return volts
}

// mostTreble is the largest growth of the loss between 1 kHz and 10 kHz.
func mostTreble(count int, tap, home, spacing, henry, farad float64) float64 {
	low, high := ladder(count, tap, home, spacing, henry, farad, 1e3), ladder(count, tap, home, spacing, henry, farad, 1e4)
	most := math.Inf(-1)
	for i := range low {
		most = max(most, 20*math.Log10(low[i]/high[i]))
	}
	return most
}

func TestTreble(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		count              int
		tap, home, spacing float64
	}{{1, 400, 700, 0}, {16, 50, 600, 60}, {4, 10, 3000, 100}, {1, 6, 20, 0}} {
		if test.count == 1 {
			test.spacing = 0
		}
		text := trebleDesign(test.count, test.tap, test.home, max(test.spacing, 1), `inductance = "0.6 uH/m"
  capacitance = "70 pF/m"`)
		if test.count == 1 {
			text = strings.Replace(strings.Replace(text, "    quantity = 1\n", "", 1), "    spacing  = \"1 m\"\n", "", 1)
		}
		got := line(t, worked(t, text), "Road").Treble()
		if len(got.Missing) > 0 || got.Bound {
			t.Fatalf("%+v: lacking %s, bound %t", test, lacks(got.Missing), got.Bound)
		}
		want := mostTreble(test.count, test.tap, test.home, test.spacing, 0.6e-6, 70e-12)
		if math.Abs(float64(got.Loss)-want) > 1e-6 {
			t.Errorf("%+v: %.6f dB; by the ladder %.6f dB", test, got.Loss, want)
		}
	}
}

// What is taken where a cable states nothing is no less than with any figures
// inside the span that published cable has.
func TestTrebleBound(t *testing.T) {
	t.Parallel()
	bound := line(t, worked(t, trebleDesign(16, 50, 600, 60, "")), "Road").Treble()
	if !bound.Bound || len(bound.Unstated) != 1 || bound.Unstated[0].Part != `cable_model "own/cable"` {
		t.Fatalf("bound %t, unstated %s", bound.Bound, lacks(bound.Unstated))
	}
	for henry := 0.33e-6; henry < 0.691e-6; henry += 0.06e-6 {
		for farad := 33e-12; farad < 92.1e-12; farad += 59e-12 / 4 {
			if loss := mostTreble(16, 50, 600, 60, henry, farad); loss > float64(bound.Loss)+1e-6 {
				t.Errorf("%g H/m, %g F/m: %.4f dB is above the bound of %.4f dB", henry, farad, loss, bound.Loss)
			}
		}
	}
}

// A load shared out over lines of the same cable is the same design with fewer
// watts on each.
func TestTrebleSplit(t *testing.T) {
	t.Parallel()
	const pair = `inductance = "0.6 uH/m"
  capacitance = "70 pF/m"`
	whole := line(t, worked(t, trebleDesign(16, 60, 600, 60, pair)), "Road")
	n, loss, ok := whole.TrebleSplit(3)
	if !ok || n < 2 {
		t.Fatalf("%d lines, %t", n, ok)
	}
	part := line(t, worked(t, trebleDesign(16, 60/float64(n), 600, 60, pair)), "Road").Treble()
	if math.Abs(float64(part.Loss-loss)) > 1e-6 || !quantity.AtMost(loss, 3) {
		t.Errorf("over %d lines %.6f dB; such a line loses %.6f dB", n, loss, part.Loss)
	}
	if less := line(t, worked(t, trebleDesign(16, 60/float64(n-1), 600, 60, pair)), "Road").Treble(); quantity.AtMost(less.Loss, 3) {
		t.Errorf("%d lines would do", n-1)
	}
	if _, _, ok := whole.TrebleSplit(-5); ok {
		t.Error("eight lines do for a lift of 5 dB")
	}
}

func TestCableInstead(t *testing.T) {
	t.Parallel()
	s := worked(t, `cable_model "own/old" {
  size       = "1.5 mm2"
  class      = 2
  cores      = 2
  insulation = "300 V"
}
cable_model "own/thin" {
  size       = "1 mm2"
  cores      = 2
  insulation = "500 V"
}
cable_model "own/more resistance" {
  size       = "1.5 mm2"
  class      = 5
  cores      = 2
  insulation = "500 V"
}
cable_model "own/low voltage" {
  size       = "2.5 mm2"
  cores      = 2
  insulation = "100 V"
}
cable_model "own/one core" {
  size       = "2.5 mm2"
  cores      = 1
  insulation = "500 V"
}
cable_model "own/thick" {
  size       = "4 mm2"
  cores      = 2
  insulation = "500 V"
}
cable_model "own/right" {
  size       = "2.5 mm2"
  cores      = 2
  insulation = "500 V"
}
line "Hall" {
  cable = "own/old"
  loudspeaker "H" { tap = "6 W" }
}
`)
	old := s.Design.Cable("own/old")
	got := s.CableInstead(old, func(m *schema.CableModel) bool { return m.Name != "own/old" })
	if got == nil || got.Name != "own/right" {
		t.Errorf("in place of own/old: %+v", got)
	}
	if got := s.CableInstead(old, func(*schema.CableModel) bool { return false }); got != nil {
		t.Errorf("nothing suits, and yet %s", got.Name)
	}
}

// Loudspeakers of equal spaces are shared out in walking order.
func TestShares(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name   string
		alike  int
		lines  string // amplifier and count of each
		shares string
		most   string
	}{
		{"one space", 1, "A6 B6", "6 6", "[6 6]"},
		{"two lines of one amplifier", 1, "A5 A7 B3", "12 3", "[12 3]"},
		{"room by room", 4, "A4 B4", "4 4", "[2 2]"},
		{"interleaved as written", 2, "A1 B2 A1", "2 2", "[1 1]"},
		{"a room on both", 2, "A3 B3", "3 3", "[3 3]"},
		{"many rooms", 100, "A250 B150", "250 150", "[4 4]"},
		{"one each", 5, "A3 B2", "3 2", "[1 1]"},
	} {
		var b strings.Builder
		b.WriteString("amplifier \"A\" { rated_power = \"2400 W\" }\namplifier \"B\" { rated_power = \"2400 W\" }\n")
		fmt.Fprintf(&b, "space \"Room\" { alike = %d }\n", test.alike)
		for i, l := range strings.Fields(test.lines) {
			fmt.Fprintf(&b, "line \"%d\" {\n  amplifier = %q\n  output = \"100 V\"\n  loudspeaker \"L\" {\n    quantity = %s\n    tap = \"1 W\"\n    space = \"Room\"\n  }\n}\n", i, l[:1], l[1:])
		}
		s := worked(t, b.String())
		space := s.Design.Space("Room")
		shares, total := s.Shares(space)
		var counts []string
		for _, share := range shares {
			counts = append(counts, fmt.Sprint(share.Count))
		}
		if got := strings.Join(counts, " "); got != test.shares {
			t.Errorf("%s: shares %s; want %s", test.name, got, test.shares)
		}
		if got := fmt.Sprint(s.MostInOne(space, shares, total)); got != test.most {
			t.Errorf("%s: most in one %s; want %s", test.name, got, test.most)
		}
	}
}
