package drawing

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// plane is a lattice of 9 × 6 points over 80 × 50 pixels whose figures are a
// function of the place.
func plane(of func(x, y float64) float64) *relief {
	r := &relief{box: box{10, 20, 90, 70}, columns: 9, rows: 6}
	for row := range r.rows {
		for column := range r.columns {
			r.figures = append(r.figures, of(10+10*float64(column), 20+10*float64(row)))
		}
	}
	return r
}

// lines gives the pieces of all contour lines of a level.
func lines(r *relief, level float64) (all [][2]ringPoint) {
	for _, one := range r.rings(level) {
		for i, p := range one {
			if q := one[(i+1)%len(one)]; !p.edge && !q.edge {
				all = append(all, [2]ringPoint{p, q})
			}
		}
	}
	return all
}

// areaOf is what the figures from a level on cover.
func areaOf(r *relief, level float64) (area float64) {
	for _, one := range r.rings(level) {
		for i, p := range one {
			q := one[(i+1)%len(one)]
			area += (p.x*q.y - q.x*p.y) / 2
		}
	}
	return area
}

func TestContoursLieWhereTheFiguresAre(t *testing.T) {
	t.Parallel()
	slope := plane(func(x, _ float64) float64 { return x })
	got := lines(slope, 33)
	length := 0.0
	for _, piece := range got {
		for _, p := range piece {
			if math.Abs(p.x-33) > 1e-9 {
				t.Errorf("the line of 33 is at %g", p.x)
			}
		}
		length += math.Abs(piece[1].y - piece[0].y)
	}
	if math.Abs(length-50) > 1e-9 {
		t.Errorf("the line is %g long, want the 50 of the rectangle", length)
	}
	// Rings around a middle: between points of the lattice the line is straight.
	middle := plane(func(x, y float64) float64 { return math.Hypot(x-50, y-45) })
	got = lines(middle, 17)
	if len(got) < 12 {
		t.Errorf("a ring of %d pieces", len(got))
	}
	for _, piece := range got {
		if r := math.Hypot(piece[0].x-50, piece[0].y-45); math.Abs(r-17) > 1 {
			t.Errorf("the ring of 17 is at %.1f", r)
		}
	}
	if len(middle.rings(1e6)) > 0 {
		t.Error("there is a line of what is nowhere")
	}
	silent := plane(func(x, _ float64) float64 { return math.Log(x - 50) })
	for _, piece := range lines(silent, 0) {
		if math.IsNaN(piece[0].x + piece[0].y) {
			t.Error("a line through nothing")
		}
	}
}

// At a saddle the two lines do not cross, and the middle tells them apart.
func TestContoursAtASaddle(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		middleHigh bool
		figures    []float64
	}{
		{true, []float64{1, 0, 0, 0.9}},
		{false, []float64{0.6, 0, 0, 0.7}},
	} {
		r := &relief{box: box{0, 0, 10, 10}, columns: 2, rows: 2, figures: test.figures}
		got := lines(r, 0.4)
		if len(got) != 2 {
			t.Fatalf("%d lines", len(got))
		}
		// Each line cuts off one corner: a low one when the middle is high, else a high one.
		for _, piece := range got {
			x, y := (piece[0].x+piece[1].x)/2, (piece[0].y+piece[1].y)/2
			lowCorner := math.Min(math.Hypot(x-10, y), math.Hypot(x, y-10)) < math.Min(math.Hypot(x, y), math.Hypot(x-10, y-10))
			if lowCorner != test.middleHigh {
				t.Errorf("with the middle high %t a line runs past %.1f, %.1f", test.middleHigh, x, y)
			}
		}
		if rings := len(r.rings(0.4)); test.middleHigh && rings != 1 || !test.middleHigh && rings != 2 {
			t.Errorf("with the middle high %t: %d rings", test.middleHigh, rings)
		}
	}
}

// The shades cover what their figures do, holes and the edge of the map among it.
func TestShadesCoverWhatTheyMean(t *testing.T) {
	t.Parallel()
	slope := plane(func(x, _ float64) float64 { return x })
	ring := plane(func(x, y float64) float64 { return -math.Abs(math.Hypot(x-50, y-45) - 14) })
	for _, test := range []struct {
		name   string
		relief *relief
		level  float64
		want   float64
		within float64
	}{
		{"all", slope, 10, 80 * 50, 1e-6},
		{"a part", slope, 30, 60 * 50, 1e-6},
		{"nothing", slope, 91, 0, 0},
		{"a ring with a hole", ring, -8, math.Pi * (22*22 - 6*6), 60},
	} {
		if got := areaOf(test.relief, test.level); math.Abs(got-test.want) > test.within {
			t.Errorf("%s: %.0f, want %.0f", test.name, got, test.want)
		}
	}
	// What is left out of a line cannot be seen.
	fine := plane(func(x, y float64) float64 { return math.Hypot(x-50, y-45) })
	thin := fine.rings(17)[0]
	for _, p := range thin.thinned() {
		if !slices.Contains(thin, p) {
			t.Error("thinning moved a point")
		}
	}
}

func TestScales(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		least, most float64
		first, step float64
		count       int
	}{
		{71.2, 76.9, 71, 1, 6}, {70, 70, 70, 1, 1}, {60, 79.9, 60, 3, 7}, {-20, 110, -20, 20, 7},
	} {
		r := levelScale(test.least, test.most)
		if len(r.levels) != test.count || math.Abs(r.levels[0]+0.05-test.first) > 1e-9 || test.count > 1 && math.Abs(r.levels[1]-r.levels[0]-test.step) > 1e-9 {
			t.Errorf("%g to %g: %v", test.least, test.most, r.levels)
		}
	}
	r := speechScale(0.455, 0.59)
	if got := strings.Join(r.names, " "); got != "H 0.44– G 0.48– F 0.52– E 0.56–" {
		t.Errorf("bands %s", got)
	}
	if r := speechScale(0, 1); len(r.levels) > shadeCount {
		t.Errorf("%d bands", len(r.levels))
	}
	for _, r := range []reading{levelScale(math.Inf(-1), 70), levelScale(math.Inf(1), math.Inf(-1)), speechScale(math.NaN(), 1)} {
		if len(r.levels) != 1 {
			t.Errorf("figures that are none have %d shades", len(r.levels))
		}
	}
	for of := 1; of <= shadeCount; of++ {
		last := ""
		for n := range of {
			if class := shade(n, of); class <= last || class > "d-shade8" {
				t.Errorf("shade %d of %d is %s after %s", n, of, class, last)
			} else {
				last = class
			}
		}
	}
}

// A figure lies in the shade that the digits it is written with say.
func TestAFigureLiesInTheShadeItReads(t *testing.T) {
	t.Parallel()
	for _, r := range []reading{speechScale(0.4, 0.7), levelScale(70, 78), levelScale(60, 79.9)} {
		for step := range 4000 {
			v := r.levels[0] + 0.005 + (r.levels[len(r.levels)-1]-r.levels[0]+0.01)*float64(step)/4000
			written, err := strconv.ParseFloat(fmt.Sprintf(r.format, v), 64)
			if err != nil {
				t.Fatal(err)
			}
			n := shadeOf(v, r.levels)
			if from, err := strconv.ParseFloat(r.marks[n], 64); err != nil || written < from {
				t.Fatalf("%g is written %g and lies in the shade from %s", v, written, r.marks[n])
			}
			if n+1 < len(r.marks) {
				if to, err := strconv.ParseFloat(r.marks[n+1], 64); err != nil || written >= to {
					t.Fatalf("%g is written %g and lies in the shade below %s", v, written, r.marks[n+1])
				}
			}
		}
	}
}

// The shades are evenly apart for the eye, and so is their grey: CIE 1976 L*a*b* with
// its plain colour difference (ISO/CIE 11664-4; formulae from memory).
func TestShadesAreEven(t *testing.T) {
	t.Parallel()
	var lab [shadeCount][3]float64
	for n := range lab {
		_, after, ok := strings.Cut(MapStyle, ".d-shade"+strconv.Itoa(n)+"{fill:#")
		if !ok {
			t.Fatalf("shade %d has no colour", n)
		}
		hex, err := strconv.ParseUint(after[:6], 16, 32)
		if err != nil {
			t.Fatal(err)
		}
		lab[n] = cieLab(float64(hex>>16&255), float64(hex>>8&255), float64(hex&255))
	}
	lightness, distance := (lab[0][0]-lab[shadeCount-1][0])/(shadeCount-1), 0.0
	var steps []float64
	for n := 1; n < shadeCount; n++ {
		a, b := lab[n-1], lab[n]
		d := math.Hypot(math.Hypot(a[0]-b[0], a[1]-b[1]), a[2]-b[2])
		steps, distance = append(steps, d), distance+d/(shadeCount-1)
		if step := a[0] - b[0]; math.Abs(step-lightness) > 0.1*lightness {
			t.Errorf("from shade %d to %d it gets %.1f darker, on the average %.1f", n-1, n, step, lightness)
		}
	}
	for n, d := range steps {
		if math.Abs(d-distance) > 0.15*distance {
			t.Errorf("shades %d and %d are %.1f apart, on the average %.1f", n, n+1, d, distance)
		}
	}
}

func cieLab(red, green, blue float64) [3]float64 {
	linear := func(v float64) float64 {
		if v /= 255; v > 0.04045 {
			return math.Pow((v+0.055)/1.055, 2.4)
		}
		return v / 12.92
	}
	r, g, b := linear(red), linear(green), linear(blue)
	root := func(v float64) float64 {
		if v > 216.0/24389 {
			return math.Cbrt(v)
		}
		return (v*24389/27 + 16) / 116
	}
	x := root((0.4124564*r + 0.3575761*g + 0.1804375*b) / 0.95047)
	y := root(0.2126729*r + 0.7151522*g + 0.0721750*b)
	z := root((0.0193339*r + 0.1191920*g + 0.9503041*b) / 1.08883)
	return [3]float64{116*y - 16, 500 * (x - y), 200 * (y - z)}
}

// hallText is a hall with a corner cut out, ceiling loudspeakers laid out evenly and
// three on a wall; its name has to be escaped.
const hallText = `
amplifier "A" {
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "A"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker "C" {
    quantity    = 10
    spacing     = "5 m"
    tap         = "6 W"
    kind        = "ceiling"
    space       = "Hall <b>&"
    sensitivity = "90 dB"
    coverage    = "100 deg"
  }
  loudspeaker "W" {
    quantity    = 3
    spacing     = "5 m"
    leg         = "5 m"
    tap         = "10 W"
    kind        = "wall"
    space       = "Hall <b>&"
    position    = ["2 m", "0.2 m", "3 m"]
    to          = ["14 m", "0.2 m"]
    aim         = "90 deg"
    tilt        = "20 deg"
    sensitivity = "92 dB"
    coverage    = "90 deg"
  }
}
space "Hall <b>&" {
  outline           = [["0 m", "0 m"], ["24 m", "0 m"], ["24 m", "8 m"], ["14 m", "8 m"], ["14 m", "14 m"], ["0 m", "14 m"]]
  height            = "4 m"
  noise             = "58 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "1.3 s"
}
`

func TestMapsOfAHall(t *testing.T) {
	t.Parallel()
	j := judge(t, hallText)
	one := j.System.Sounds()[0]
	p := Sound(j)
	var b, again bytes.Buffer
	if err := p.Write(&b); err != nil {
		t.Fatal(err)
	}
	if err := Sound(judge(t, hallText)).Write(&again); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(b.Bytes(), again.Bytes()) {
		t.Error("the same design gives another picture")
	}
	text := b.String()
	for what, n := range map[string]int{
		`<circle class="d-speaker"`:       2 * 10, // on both maps
		`<path class="d-speaker"`:         2 * 3,
		`<path class="d-wall"`:            2,
		`<path class="d-around"`:          2,
		"Speech transmission index (STI)": 1,
	} {
		if got := strings.Count(text, what); got != n {
			t.Errorf("%d of %s, want %d", got, what, n)
		}
	}
	if strings.Contains(text, "<b>") || strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
		t.Error("the name is not escaped, or there are places that are none")
	}
	for _, says := range []string{one.Levels().Fifth.Value.String(), one.Levels().Mean.Value.String(), fmt.Sprintf("%.2f", one.Speech().Mean), one.Speech().Level.Value.String()} {
		if !strings.Contains(p.Desc, says) {
			t.Errorf("%q is not said in %q", says, p.Desc)
		}
	}
	level, speech := MapsOf(j, one)
	for _, picture := range []*Picture{p, level.Picture, speech.Picture} {
		for _, clash := range clashes(picture) {
			t.Error(clash)
		}
	}
	if b.Len() > 150_000 {
		t.Errorf("the picture has %d bytes", b.Len())
	}
}

// Figures on a map are those of the system at that very place.
func TestFiguresOnAMap(t *testing.T) {
	t.Parallel()
	one := judge(t, hallText).System.Sounds()[0]
	m := mapping{sheet: &sheet{}, sound: one}
	figures := m.place(100, 50).figures(one.LevelsAt)
	least, most := m.inside(figures)
	survey := one.Levels().Survey.Level
	if math.Abs(least-survey.Least) > 0.3 || math.Abs(most-survey.Most) > 0.3 {
		t.Errorf("%.1f to %.1f on the map, %.1f to %.1f on the grid", least, most, survey.Least, survey.Most)
	}
	x, y := m.on(m.off(123, 77))
	if math.Abs(x-123) > 1e-9 || math.Abs(y-77) > 1e-9 {
		t.Errorf("a place goes to %g, %g and not back", x, y)
	}
}

func TestMapsOfTheExamples(t *testing.T) {
	t.Parallel()
	for name, j := range examples(t) {
		for _, clash := range clashes(Sound(j)) {
			t.Errorf("%s: %s", name, clash)
		}
	}
}

func TestMapsThatCannotBeDrawn(t *testing.T) {
	t.Parallel()
	for text, says := range map[string]string{
		`amplifier "A" {}`: "no space that loudspeakers serve",
		strings.Replace(hallText, `reverberation     = "1.3 s"`, "", 1):        "No map of speech intelligibility: the design does not state the reverberation time.",
		strings.Replace(hallText, `["14 m", "0.2 m"]`, `["33 m", "0.2 m"]`, 1): "1 of the loudspeakers",
		strings.Replace(hallText, `sensitivity = "90 dB"`, "", 1):              "No map of levels: the design does not state the sensitivity.",
	} {
		p := Sound(judge(t, text))
		if !strings.Contains(p.Desc, says) {
			t.Errorf("%q is not said in %q", says, p.Desc)
		}
		for _, clash := range clashes(p) {
			t.Error(clash)
		}
	}
}
