package analysis_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

func soundOf(t *testing.T, s *analysis.System, space string) *analysis.Sound {
	t.Helper()
	one := s.Sound(s.Design.Space(space))
	if one == nil {
		t.Fatalf("no loudspeaker serves %q", space)
	}
	return one
}

// rack feeds lines without cable loss worth the name: tests of levels state what
// each loudspeaker receives.
const rack = `
amplifier "Rack" { rated_power = "240 W" }
`

func served(line, loudspeakers string) string {
	return rack + fmt.Sprintf(`
line %q {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 16 mm2"
  home_run  = "0 m"
%s}
`, line, loudspeakers)
}

const ceiling = `
    kind        = "ceiling"
    sensitivity = "92 dB"
    coverage    = "90 deg"
    tap         = "3 W"
    space       = "Room"
`

// A ceiling loudspeaker at 3.2 m over ears at 1.2 m: D = 2·h·tan(45°) = 4.000 m, on
// its axis 92 + 10 lg 3 − 20 lg 2 = 90.75 dB; a floor of 12 × 8 m needs 3 × 2 with
// touching circles and 5 × 3 without a gap (geometry).
func TestOneCeilingLoudspeaker(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
    position = ["6 m", "4 m"]
  }
`)+`space "Room" {
  length   = "12 m"
  width    = "8 m"
  height   = "3.2 m"
  humidity = "0 %"
}`)
	room := soundOf(t, s, "Room")
	c := room.Coverage()
	within(t, "diameter", float64(c.Diameter.Value), 4, 1e-9)
	if columns, rows := c.Need(1); columns != 3 || rows != 2 || c.Touching != 6 || c.Overlapping != 15 || c.Even(1) {
		t.Errorf("needed: %d × %d, %d, %d", columns, rows, c.Touching, c.Overlapping)
	}
	l := room.Levels()
	if !l.Known() || !l.DirectOnly || !l.Placed {
		t.Fatalf("levels: %+v", l)
	}
	// The loudest of the grid stands all but under it.
	if most := float64(l.Most.Value); most > 90.8 || most < 90.5 {
		t.Errorf("under it %.2f dBA; want 90.75", most)
	}
}

// The field over a floor is the sum, done by hand here, of what each loudspeaker
// gives: all round, without air or room.
func TestLevelsAreTheSumOfAll(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Yard", `
  loudspeaker "P" {
    kind        = "pendant"
    sensitivity = "90 dB"
    coverage    = "360 deg"
    tap         = "10 W"
    space       = "Yard"
    height      = "4 m"
    quantity    = 3
    spacing     = "1 m"
    position    = ["5 m", "5 m"]
    to          = ["25 m", "5 m"]
  }
`)+`space "Yard" {
  length    = "30 m"
  width     = "10 m"
  outdoors  = true
  listeners = "standing"
  humidity  = "0 %"
}`)
	l := soundOf(t, s, "Yard").Levels()
	watts := float64(l.Speakers[0].Watts)
	least, most, sum := math.Inf(1), math.Inf(-1), 0.0
	for _, at := range l.Survey.Listeners {
		energy := 0.0
		for _, x := range []float64{5, 15, 25} {
			r := math.Hypot(math.Hypot(at.X-x, at.Y-5), 2.5)
			energy += math.Pow(10, (90+10*math.Log10(watts)-20*math.Log10(r))/10)
		}
		level := 10 * math.Log10(energy)
		least, most, sum = min(least, level), max(most, level), sum+level
	}
	for what, pair := range map[string][2]float64{
		"least": {float64(l.Least.Value), least}, "most": {float64(l.Most.Value), most},
		"mean": {float64(l.Mean.Value), sum / float64(len(l.Survey.Listeners))},
	} {
		if math.Abs(pair[0]-pair[1]) > 0.06 { // printed to a tenth
			t.Errorf("%s is %.2f dBA; want %.2f", what, pair[0], pair[1])
		}
	}
}

// What arrives counts: 20 dB of attenuator without an override, none with one; and
// 70 V taps on 100 V get twice their marking.
func TestLevelsFollowThePowerDelivered(t *testing.T) {
	t.Parallel()
	level := func(around, setting string) float64 {
		s := worked(t, served("Room", `
  attenuator "Wall" {
    `+around+`
    loudspeaker "C" {`+ceiling+setting+`
      position = ["3 m", "3 m"]
    }
  }
`)+`space "Room" {
  length = "6 m"
  width  = "6 m"
  height = "3.2 m"
}`)
		l := soundOf(t, s, "Room").Levels()
		if !l.Known() {
			t.Fatal(l.Missing)
		}
		return float64(l.Mean.Value)
	}
	full := level(`override = "none"`, "")
	within(t, "turned down", level("override = \"none\"\nsetting = \"-20 dB\"", ""), full-20, 0.002)
	within(t, "lifted", level("override = \"24 V relay\"\nsetting = \"-20 dB\"", ""), full, 1e-9)
	within(t, "marked for 70 V", level("", "tap_for = \"70 V\""), full+3.01, 0.002)
}

// V = 3728 ft³ of concrete, gypsum board and acoustical tile: 0.56, 0.54 and 0.54 s at
// 500 Hz to 2 kHz (The Master Handbook of Acoustics, p. 163), 0.545 s on the average.
// The book leaves the air out; it takes 1.5 % here.
func TestReverberationFromSurfaces(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
  }
`)+`space "Room" {
  length = "23.3 ft"
  width  = "16 ft"
  height = "10 ft"
  surface "Floor" {
    area     = "373 sq ft"
    material = "concrete, smooth"
  }
  surface "Walls" {
    area     = "1159 sq ft"
    material = "gypsum board on studs"
  }
  surface "Ceiling" {
    area       = "340 sq ft"
    absorption = { "125 Hz" = 0.09, "250 Hz" = 0.28, "500 Hz" = 0.78, "1 kHz" = 0.84, "2 kHz" = 0.73, "4 kHz" = 0.64 }
  }
}`)
	f := soundOf(t, s, "Room").Reverberation
	within(t, "reverberation time", float64(f.Value), 0.545, 0.017)
	if !strings.Contains(f.Sum, "Sabine") || len(f.Assumed) != 3 { // two materials, and 8 kHz as 4 kHz
		t.Errorf("%+v", f)
	}
}

// A class room of 10 × 5 × 4 m, walls 0.35, ceiling 0.60, floor 0.15: mean absorption
// 79.5 m² / 220 m² = 0.3614, and by Eyring 0.161·200/(−220·ln(1 − 0.3614)) = 0.326 s
// (lecture slides, the problem only; worked out here). Air takes 1 %.
func TestReverberationOfAnAbsorbentRoom(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
  }
`)+`space "Room" {
  length = "10 m"
  width  = "5 m"
  height = "4 m"
  surface "Walls" {
    area       = "120 m2"
    absorption = 0.35
  }
  surface "Ceiling" {
    area       = "50 m2"
    absorption = 0.6
  }
  surface "Floor" {
    area       = "50 m2"
    absorption = 0.15
  }
}`)
	f := soundOf(t, s, "Room").Reverberation
	within(t, "reverberation time", float64(f.Value), 0.161*200/(-220*math.Log(1-79.5/220)), 0.012)
	within(t, "published problem", float64(f.Value), 0.326, 0.012)
	if !strings.Contains(f.Sum, "Eyring") {
		t.Errorf("%+v", f)
	}
}

// Steps of the ceiling: 10 m at 3 m, 5 m at 6 m, 8 m wide: 10·8·3 + 5·8·6 = 480 m³.
// With 0.161·V/T = A and one absorption everywhere, T tells the volume.
func TestVolumeOfASteppedCeiling(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
    position = ["12 m", "4 m"]
  }
`)+`space "Room" {
  length   = "15 m"
  width    = "8 m"
  heights  = [["0 m", "3 m"], ["10 m", "6 m"]]
  humidity = "100 %"
  surface "All" {
    area       = "1000 m2"
    absorption = 0.19
  }
}`)
	room := soundOf(t, s, "Room")
	within(t, "reverberation time", float64(room.Reverberation.Value), 0.161*480/190, 0.015) // a little less: air
	l := room.Levels()
	if !l.Known() || math.Abs(l.Speakers[0].At.Z-6) > 1e-9 {
		t.Errorf("it hangs at %+v", l.Speakers)
	}
}

func TestNoiseInOctaves(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
  }
`)+`space "Room" {
  length = "6 m"
  width  = "6 m"
  height = "3 m"
  noise  = { "125 Hz" = "60 dB", "250 Hz" = "60 dB", "500 Hz" = "60 dB", "1 kHz" = "60 dB", "2 kHz" = "60 dB", "4 kHz" = "60 dB", "8 kHz" = "60 dB" }
  wanted_over_noise = "10 dB"
}`)
	room := soundOf(t, s, "Room")
	// 60 dB + 10 lg Σ 10^(A/10), A = −16.1 −8.6 −3.2 0 1.2 1.0 −1.1 dB (IEC 61672-1,
	// table 3, from memory).
	within(t, "noise", float64(room.Noise.Value), 67.0, 0.0008)
	within(t, "wanted", float64(room.Wanted.Value), 77.0, 0.0008)
	if len(room.Noise.Assumed) > 0 {
		t.Errorf("every octave is stated, yet assumed %q", room.Noise.Assumed)
	}
}

// Octaves of which nothing is stated are filled in, and each figure that rests on them
// says with what.
func TestNoiseInSomeOctaves(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
  }
`)+`space "Room" {
  length    = "6 m"
  width     = "6 m"
  height    = "3 m"
  noise     = { "250 Hz" = "66 dB", "1 kHz" = "60 dB" }
  programme = "80 dBA"
  wanted_over_noise = "10 dB"
}`)
	room := soundOf(t, s, "Room")
	want := []string{`the noise in "Room" is 66 dB at 125 Hz, 63 dB at 500 Hz, 60 dB at 2 kHz, 60 dB at 4 kHz, 60 dB at 8 kHz: only its other octaves are stated`}
	for name, assumed := range map[string][]string{
		"noise": room.Noise.Assumed, "wanted": room.Wanted.Assumed, "with the programme silenced": analysis.RelyingIn(room.Space).Muted.Assumed,
	} {
		if diff := cmp.Diff(want, assumed); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

// Reverberation, absorption and sensitivity that are stated in some octaves only are
// filled in on straight lines over the octaves, and outside as the nearest; what rests
// on them says so. Tables of absorption end at 4 kHz, which is told once.
func TestSomeOctaves(t *testing.T) {
	t.Parallel()
	room := func(more string) *analysis.Sound {
		s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
    sensitivity_at = { "250 Hz" = "88 dB", "500 Hz" = "89 dB", "1 kHz" = "90 dB", "2 kHz" = "92 dB", "8 kHz" = "86 dB" }
  }
`)+`space "Room" {
  length       = "6 m"
  width        = "6 m"
  height       = "3 m"
  noise        = "40 dBA"
  wanted_level = "60 dBA"
`+more+`
}`)
		return soundOf(t, s, "Room")
	}
	const hiss = `the sensitivity of loudspeaker "C" is 88 dB at 125 Hz, 89 dB at 4 kHz: only its other octaves are stated`
	for name, test := range map[string]struct {
		more string
		want []string
	}{
		"every octave": {`reverberation = { "125 Hz" = "1 s", "250 Hz" = "1 s", "500 Hz" = "1 s", "1 kHz" = "1 s", "2 kHz" = "1 s", "4 kHz" = "1 s", "8 kHz" = "1 s" }`, nil},
		"single":       {`reverberation = "1 s"`, nil},
		"some octaves": {
			`reverberation = { "250 Hz" = "1.2 s", "1 kHz" = "0.85 s" }`,
			[]string{`the reverberation time of "Room" is 1.2 s at 125 Hz, 1.02 s at 500 Hz, 0.85 s at 2 kHz, 0.85 s at 4 kHz, 0.85 s at 8 kHz: only its other octaves are stated`},
		},
		"surfaces": {
			`surface "Floor" {
    area       = "36 m2"
    absorption = { "125 Hz" = 0.02, "250 Hz" = 0.02, "500 Hz" = 0.03, "1 kHz" = 0.03, "2 kHz" = 0.04, "4 kHz" = 0.05 }
  }
  surface "Walls" {
    area       = "72 m2"
    absorption = { "500 Hz" = 0.1, "2 kHz" = 0.2, "4 kHz" = 0.25 }
  }
  surface "Ceiling" {
    area       = "36 m2"
    absorption = 0.6
  }
  surface "Panels" {
    area       = "4 m2"
    absorption = { "1 kHz" = 0.8 }
  }`,
			[]string{
				"surfaces absorb at 8 kHz as they do at 4 kHz, where nothing is stated",
				`the absorption of "Walls" is 0.1 at 125 Hz, 0.1 at 250 Hz, 0.15 at 1 kHz: only its other octaves are stated`,
				`the absorption of "Panels" is 0.8 at 125 Hz, 0.8 at 250 Hz, 0.8 at 500 Hz, 0.8 at 2 kHz, 0.8 at 4 kHz, 0.8 at 8 kHz: only its other octaves are stated`,
			},
		},
	} {
		one := room(test.more)
		if diff := cmp.Diff(test.want, one.Reverberation.Assumed); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
		for _, text := range append(test.want, hiss) {
			if !slices.Contains(one.Levels().Assumed, text) || !slices.Contains(one.Speech().Assumed, text) {
				t.Errorf("%s: level or intelligibility does not say that %s", name, text)
			}
		}
	}
}

// Places that are not stated are even, said to be assumed, and in the space.
func TestPlacesAreEven(t *testing.T) {
	t.Parallel()
	for name, test := range map[string]struct {
		space, loudspeaker string
		want               []string // along, across of each
		assumed            string
	}{
		"grid": {
			space: `length = "12 m"
  width  = "8 m"`,
			loudspeaker: "quantity = 6\nspacing = \"4 m\"",
			want:        []string{"2 2", "6 2", "10 2", "10 6", "6 6", "2 6"},
			assumed:     `6 loudspeakers in "Room" hang in an even grid over the floor`,
		},
		"rows": {
			space: `length = "12 m"
  width  = "8 m"
  layout = "1 x 2"`,
			loudspeaker: "quantity = 2\nspacing = \"4 m\"",
			want:        []string{"3 4", "9 4"},
		},
		"hexagonal": {
			space: `length = "12 m"
  width  = "8 m"
  layout = "hexagonal"`,
			loudspeaker: "quantity = 4\nspacing = \"4 m\"",
			want:        []string{"4.5 2", "10.5 2", "7.5 6", "1.5 6"},
		},
		"run with both ends": {
			space: `length = "12 m"
  width  = "8 m"`,
			loudspeaker: "quantity = 3\nspacing = \"4 m\"\nposition = [\"1 m\", \"4 m\"]\nto = [\"11 m\", \"4 m\"]",
			want:        []string{"1 4", "6 4", "11 4"},
		},
		"corner of an L": {
			space:       `outline = [["0 m", "0 m"], ["8 m", "0 m"], ["8 m", "4 m"], ["4 m", "4 m"], ["4 m", "8 m"], ["0 m", "8 m"]]`,
			loudspeaker: "quantity = 3\nspacing = \"4 m\"",
			want:        []string{"2 2", "6 2", "2 6"},
			assumed:     `3 loudspeakers in "Room" hang in an even grid over the floor`,
		},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := worked(t, served("Room", "\n  loudspeaker \"C\" {"+ceiling+test.loudspeaker+"\n  }\n")+"space \"Room\" {\n  listeners = \"seated\"\n  height = \"3 m\"\n  "+test.space+"\n}")
			l := soundOf(t, s, "Room").Levels()
			var got []string
			for _, at := range l.Speakers {
				got = append(got, fmt.Sprintf("%.3g %.3g", at.At.X, at.At.Y))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Error(diff)
			}
			if assumed := strings.Join(l.Assumed, "; "); assumed != test.assumed {
				t.Errorf("assumed %q", assumed)
			}
		})
	}
}

// Wall loudspeakers hang along the long walls and look across; a horn is asked where
// it hangs, in the open everything is.
func TestPlacesOnWalls(t *testing.T) {
	t.Parallel()
	design := func(kind, space string) string {
		return served("Room", `
  loudspeaker "W" {
    kind        = "`+kind+`"
    sensitivity = "92 dB"
    coverage    = "90 deg"
    tap         = "3 W"
    height      = "3 m"
    space       = "Room"
    quantity    = 3
    spacing     = "4 m"
  }
`) + "space \"Room\" {\n  length = \"8 m\"\n  width = \"12 m\"\n" + space + "\n}"
	}
	l := soundOf(t, worked(t, design("wall", "")), "Room").Levels()
	var got []string
	for _, at := range l.Speakers {
		got = append(got, fmt.Sprintf("%.3g %.3g looks %.0f %.0f", at.At.X, at.At.Y, at.Aim.X, at.Aim.Y))
	}
	if diff := cmp.Diff([]string{"0 3 looks 1 0", "0 9 looks 1 0", "8 6 looks -1 -0"}, got); diff != "" {
		t.Error(diff)
	}
	for _, other := range []string{design("horn", ""), design("wall", "outdoors = true")} {
		l := soundOf(t, worked(t, other), "Room").Levels()
		if len(l.Missing) != 1 || l.Missing[0].What != "position of the loudspeaker" {
			t.Errorf("missing: %+v", l.Missing)
		}
	}
}

// One run serves several equal spaces: each gets its share in walking order, and the
// one at the far end of a thin cable is the one that is asked.
func TestEqualSpacesShare(t *testing.T) {
	t.Parallel()
	s := worked(t, rack+`
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2"
  home_run  = "100 m"
  loudspeaker "C" {`+ceiling+`
    quantity = 8
    spacing  = "50 m"
  }
}
space "Room" {
  alike  = 4
  length = "6 m"
  width  = "3 m"
  height = "3 m"
}`)
	room := soundOf(t, s, "Room")
	l := room.Levels()
	if room.Count != 2 || len(l.Speakers) != 2 || l.Speakers[0].Name != "C 7" || l.Speakers[1].Name != "C 8" || !strings.Contains(l.Of, "number 4") {
		t.Errorf("%d, %q, %+v", room.Count, l.Of, l.Speakers)
	}
}

// A change that is tried gives the figures of the design in which it is written.
func TestChangeIsWhatIsWritten(t *testing.T) {
	t.Parallel()
	design := func(count, tap string) string {
		return served("Room", strings.Replace(`
  loudspeaker "C" {`+ceiling+`
    quantity = `+count+`
    spacing  = "200 m"
  }
`, `"3 W"`, `"`+tap+`"`, 1)) + `space "Room" {
  length        = "12 m"
  width         = "8 m"
  height        = "3 m"
  reverberation = "0.8 s"
}`
	}
	before := worked(t, design("4", "3 W"))
	after := worked(t, design("6", "6 W"))
	part := run(t, before, "C").Part
	with := *part
	with.Quantity.V, with.Tap.V = 6, 6
	change := analysis.Instead{part: &with}
	got, want := soundOf(t, before, "Room").With(change), soundOf(t, after, "Room").Levels()
	if got.Fifth.Value != want.Fifth.Value || got.Most.Value != want.Most.Value || len(got.Speakers) != 6 {
		t.Errorf("tried %v to %v; written %v to %v", got.Fifth.Value, got.Most.Value, want.Fifth.Value, want.Most.Value)
	}
	lines := before.Change(change)
	wanted := line(t, after, "Room")
	if len(lines) != 1 || lines[0].Load != 36 || lines[0].More != 24 {
		t.Fatalf("change: %+v", lines)
	}
	within(t, "drop", float64(lines[0].Drop.Value), float64(wanted.Loss.Drop.Value), 1e-12)
	if soundOf(t, before, "Room").Levels().Fifth.Value == want.Fifth.Value {
		t.Error("the change stayed")
	}
}

// In a free field of all-round loudspeakers the margin is what potential and needed
// acoustic gain leave: PAG without margin is 20 lg(D1·D0/(D2·Ds)), NAG 20 lg(D0/EAD)
// (D. Davis and C. Davis, Sound System Engineering, from memory). A talker of L1 at
// 1 m is heard at L1 from EAD = 1 m, so that a wanted level of L1 asks for
// 20 lg(D0/1 m), whatever D0 is.
func TestFeedbackIsGainThatIsLeft(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Court", `
  loudspeaker "P" {
    kind        = "pendant"
    sensitivity = "95 dB"
    coverage    = "360 deg"
    tap         = "10 W"
    space       = "Court"
    position    = ["10 m", "5 m", "1.2 m"]
  }
`)+`
microphone "Lectern" {
  into            = "Rack"
  stands_in       = "Court"
  position        = ["2 m", "5 m", "1.2 m"]
  talker_distance = "50 cm"
}
space "Court" {
  outline      = [["28 m", "4.9 m"], ["28.1 m", "4.9 m"], ["28.1 m", "5.1 m"], ["28 m", "5.1 m"]]
  outdoors     = true
  wanted_level = "66 dBA"
  humidity     = "0 %"
  listeners    = "seated"
}`)
	f := s.Feedback(s.Sources[0])
	if f == nil || !f.Known() || !f.Placed {
		t.Fatalf("%+v", f)
	}
	d1, d2, ds := 8.0, 18.05, 0.5
	want := 20 * math.Log10(d1*1/(d2*ds)) // PAG − NAG, D0 falls out
	if got := float64(f.Margin(66).Value); math.Abs(got-want) > 0.11 {
		t.Errorf("margin %.2f dB; want %.2f", got, want)
	}
	// What rings is PAG + 20 lg(Ds/D0), what is needed NAG with the talker at the microphone.
	if got := float64(f.Potential().Value); math.Abs(got-20*math.Log10(d1/d2)) > 0.11 {
		t.Errorf("it rings at a gain of %.2f dB", got)
	}
	if got := float64(f.Needed(66).Value); math.Abs(got-20*math.Log10(ds)) > 0.06 {
		t.Errorf("%.2f dB are needed", got)
	}
	near := float64(f.Nearer(66, 6))
	if left := want + 20*math.Log10(ds/near); left < 6 || left > 6.6 {
		t.Errorf("at %.2f m %.2f dB are left", near, left)
	}
}

// The speech transmission index of a dense grid in a diffuse field is near that of
// the closed form for reverberation alone, and falls with it: T 0.5 s 0.736, 1.5 s
// 0.498, 3 s 0.357 (IEC 60268-16, m(F) = 1/√(1 + (2πF·T/13.8)²) worked out by itself).
// Direct sound adds to it.
func TestSpeechFollowsReverberation(t *testing.T) {
	t.Parallel()
	index := func(seconds string) *analysis.Speech {
		s := worked(t, served("Room", `
  loudspeaker "C" {
    kind        = "pendant"
    sensitivity = "92 dB"
    coverage    = "360 deg"
    tap         = "6 W"
    height      = "7 m"
    space       = "Room"
    quantity    = 16
    spacing     = "1 m"
  }
`)+`space "Room" {
  length        = "20 m"
  width         = "20 m"
  height        = "8 m"
  noise         = "30 dBA"
  wanted_level  = "70 dBA"
  reverberation = "`+seconds+` s"
}`)
		t.Helper()
		speech := soundOf(t, s, "Room").Speech()
		if !speech.Known() {
			t.Fatal(speech.Missing)
		}
		return speech
	}
	before := 1.0
	for _, test := range []struct {
		seconds string
		bare    float64
	}{{"1.5", 0.498}, {"3", 0.357}} {
		got := index(test.seconds)
		if got.Mean < test.bare-0.03 || got.Mean > test.bare+0.12 || got.Mean >= before || got.Fifth > got.Mean || got.Least > got.Fifth {
			t.Errorf("%s s: %.3f on the average, %.3f, %.3f; reverberation alone gives %.3f", test.seconds, got.Mean, got.Fifth, got.Least, test.bare)
		}
		before = got.Mean
	}
}

// What is asked first is the level wanted; in the open, speech stays open.
func TestWhatSoundLacks(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" { space = "Room" }
`)+`space "Room" {}
space "Empty" {}`)
	if s.Sound(s.Design.Space("Empty")) != nil {
		t.Error("nothing serves the empty space")
	}
	room := soundOf(t, s, "Room")
	var purpose, levels []string
	for _, m := range room.Purpose() {
		purpose = append(purpose, m.What)
	}
	for _, m := range room.Levels().Missing {
		levels = append(levels, m.What)
	}
	if diff := cmp.Diff([]string{"level of speech that is wanted", "noise"}, purpose); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]string{"size of the floor", "tap", "sensitivity", "coverage angle"}, levels); diff != "" {
		t.Error(diff)
	}
}

// Every number of workers gives the same, asked in any order.
func TestSoundIsTheSameForAnyWorkers(t *testing.T) {
	t.Parallel()
	text := served("Room", `
  loudspeaker "C" {`+ceiling+`
    quantity = 12
    spacing  = "4 m"
  }
`) + `space "Room" {
  length        = "22 m"
  width         = "9 m"
  height        = "3.4 m"
  noise         = "50 dBA"
  wanted_level  = "70 dBA"
  reverberation = { "125 Hz" = "1.4 s", "1 kHz" = "1 s", "8 kHz" = "0.6 s" }
}`
	var first string
	for _, workers := range []int{1, 2, 5} {
		design, problems := schema.Read("test", []*source.File{source.NewFile("x.pa.hcl", []byte(text))}, schema.Options{})
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		s := analysis.Analyse(design, workers)
		room := s.Sound(design.Spaces[0])
		late, _ := room.Late(0.01, 20)
		speech := room.Speech()
		got := fmt.Sprint(room.Levels().Survey.LevelDBA, speech.STI, speech.ArticulationLoss.Sum, late.Share, late.Below, late.After, late.Speaker.Name)
		if first == "" {
			first = got
		} else if got != first {
			t.Fatalf("%d workers give something else", workers)
		}
	}
}

// Two taps of one kind: 10 lg(6/1.5) = 6.02 dB; other sensitivities count.
func TestSpreads(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "Old" {
    kind        = "ceiling"
    sensitivity = "92 dB"
    tap         = "1.5 W"
    space       = "Room"
  }
  loudspeaker "New" {
    kind        = "ceiling"
    sensitivity = "87 dB"
    tap         = "6 W"
    leg         = "1 m"
    space       = "Room"
  }
`)+`space "Room" {}`)
	all := soundOf(t, s, "Room").Spreads()
	if len(all) != 1 || all[0].Loudest.Part.Name != "New" || all[0].Softest.Part.Name != "Old" {
		t.Fatalf("%+v", all)
	}
	within(t, "difference", float64(all[0].Difference), 10*math.Log10(4)-5, 1e-6)
	if got := quantity.Gain(all[0].Difference).String(); got != "1.021 dB" {
		t.Errorf("printed %s", got)
	}
}
