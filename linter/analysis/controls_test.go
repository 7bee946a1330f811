package analysis_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

// controlled is a design with one line on one amplifier that has 24 V for relays.
// The line says what is handed in.
func controlled(line string, more ...string) string {
	return `
amplifier "Rack" {
  rated_power = "240 W"
  relays      = "24 V, 5 A"
}
line "Floor" {
  amplifier = "Rack"
  output    = "100 V"
` + line + "\n}\n" + strings.Join(more, "\n")
}

// rooms is a run of attenuators with relays, so many metres of cable apart.
func rooms(n, metres int, current string) string {
	run := ""
	if n > 1 {
		run = fmt.Sprintf("quantity = %d\n spacing = \"%d m\"", n, metres)
	}
	return fmt.Sprintf(`
cable         = "4 x 1.5 mm2"
override_from = "Rack"
attenuator "Room" {
  %s
  leg      = "%d m"
  override = "24 V relay"
  current  = %q
  loudspeaker "Bed" {
    tap = "1 W"
    leg = "500 m"
  }
}`, run, metres, current)
}

// TestRelayVolts holds the voltage at the last of a run of relays against the
// ladder folded by hand, and against the sum of constant currents that is done by
// hand on site: drop = loop ohm per section × current × n(n+1)/2. A coil takes
// less at less voltage, so the exact figure lies above that sum, and by no more
// than drop²/24 V.
//
// Conductors of 1.5 mm², class 5: 13.3 ohm/km (IEC 60228, Table 3).
func TestRelayVolts(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		n, metres int
		current   string
		amps      float64
		exact     float64 // derived outside: v(k+1) = v(k)/(1 + r·y), y the admittance from there on
		at, sum   string
	}{
		{3, 100, "100 mA", 0.1, 22.490535, "Room 3", "3 × 0.1 A = 0.3 A"},
		{40, 10, "25 mA", 0.025, 19.418536, "Room 40", "40 × 25 mA = 1 A"},
		{1, 100, "100 mA", 0.1, 24 * 240 / (240 + 2.66), "Room", ""},
	} {
		s := worked(t, controlled(rooms(c.n, c.metres, c.current)))
		r := s.Relays(line(t, s, "Floor"))
		if !r.Volts.Known() {
			t.Fatalf("%d relays: missing %s", c.n, lacks(r.Volts.Missing))
		}
		got := float64(r.Volts.Value)
		within(t, fmt.Sprintf("%d relays: volts at the last", c.n), got, c.exact, 1e-6)
		drop := 2 * float64(c.metres) * 0.0133 * c.amps * float64(c.n*(c.n+1)) / 2
		if got < 24-drop || got > 24-drop+drop*drop/24 {
			t.Errorf("%d relays: %g V does not lie just above the %g V of constant currents", c.n, got, 24-drop)
		}
		if r.Count != c.n || r.At != c.at || r.Current.Sum != c.sum {
			t.Errorf("%d relays at %q, current %q; want %d at %q, %q", r.Count, r.At, r.Current.Sum, c.n, c.at, c.sum)
		}
	}
}

// TestRelayVoltsOnATree: 50 m to a tee, 30 m of 0.75 mm² to a relay of 20 mA, 60 m
// further to one of 40 mA; and the same with a cable of its own, 2 × 0.5 mm².
// Class 5: 13.3, 26.0 and 39.0 ohm/km (IEC 60228, Table 3). Derived from the two
// branches in parallel behind the first 50 m.
func TestRelayVoltsOnATree(t *testing.T) {
	t.Parallel()
	const tree = `
cable         = "4 x 1.5 mm2"
home_run      = "50 m"
override_from = "Rack"
branch "Tee" {
  attenuator "A" {
    leg      = "30 m"
    cable    = "4 x 0.75 mm2"
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "LA" {
      tap = "1 W"
      leg = "1 m"
    }
  }
}
attenuator "B" {
  leg      = "60 m"
  override = "24 V relay"
  current  = "40 mA"
  loudspeaker "LB" {
    tap = "1 W"
    leg = "1 m"
  }
}
attenuator "Plain" {
  leg      = "200 m"
  override = "none"
  loudspeaker "LP" {
    tap = "1 W"
    leg = "1 m"
  }
}`
	s := worked(t, controlled(tree))
	l := line(t, s, "Floor")
	r := s.Relays(l)
	within(t, "volts at B", float64(r.Volts.Value), 23.857179, 1e-7)
	if r.At != "B" || r.Apart {
		t.Errorf("the least is at %q, apart %v", r.At, r.Apart)
	}
	// By hand: 600 ohm + 1.596 ohm beside 1200 ohm + 1.56 ohm, behind 1.33 ohm.
	within(t, "current of both", float64(r.Drawn.Value), 24/(1.33+1/(1/601.596+1/1201.56)), 1e-9)
	if want := "24 V at Rack − 59.67 mA × 1.33 ohm along 50 m of cable, there and back − 63.46 mV along 60 m more with less current = 23.86 V at B"; r.Volts.Sum != want {
		t.Errorf("the sum reads %q, want %q", r.Volts.Sum, want)
	}

	s = worked(t, controlled(`override_cable = "2 x 0.5 mm2"`+tree))
	l = line(t, s, "Floor")
	r = s.Relays(l)
	within(t, "volts at B over a cable of its own", float64(r.Volts.Value), 23.585625, 1e-7)
	for _, c := range []struct {
		least quantity.Voltage
		cable string
		volts float64
	}{
		{23.6, "2 x 0.75 mm2", 23.722249},
		{23.75, "2 x 1 mm2", 23.791120},
		{23.9, "2 x 2.5 mm2", 23.914105},
	} {
		cable, volts, ok := l.SmallestOverride(r, c.least)
		if !ok || cable != c.cable {
			t.Errorf("for %s: %q, %v; want %q", c.least, cable, ok, c.cable)
		}
		within(t, "volts with "+c.cable, float64(volts), c.volts, 1e-7)
	}
	if cable, _, ok := l.SmallestOverride(r, 24); ok {
		t.Errorf("%q is to keep all of 24 V", cable)
	}
}

func TestRelayVoltsMissing(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct{ design, want string }{
		"current": {
			controlled(`cable = "4 x 1.5 mm2"
home_run = "5 m"
override_from = "Rack"
attenuator "Room" {
  override = "24 V relay"
  loudspeaker "Bed" {
    tap = "1 W"
    leg = "1 m"
  }
}`), `current of the override relay of attenuator "Room"`,
		},
		"length": {
			controlled(`cable = "4 x 1.5 mm2"
override_from = "Rack"
attenuator "Room" {
  override = "24 V relay"
  current = "20 mA"
  loudspeaker "Bed" {
    tap = "1 W"
    leg = "1 m"
  }
}`), `length of the home run of line "Floor"`,
		},
		"feed": {
			strings.Replace(controlled(rooms(1, 5, "20 mA")), `relays      = "24 V, 5 A"`, "", 1),
			`volts and current for the override relays of amplifier "Rack"`,
		},
		"supply": {
			strings.Replace(controlled(rooms(1, 5, "20 mA"), `supply "Battery" { feeds = ["Rack"] }`), `relays      = "24 V, 5 A"`, "", 1),
			`volts and current for the override relays of supply "Battery"`,
		},
		"unit": {
			strings.NewReplacer(`relays      = "24 V, 5 A"`, "", `override_from = "Rack"`, "").Replace(controlled(rooms(1, 5, "20 mA"))),
			`unit that switches the override of line "Floor"`,
		},
	} {
		s := worked(t, c.design)
		if got := lacks(s.Relays(line(t, s, "Floor")).Volts.Missing); got != c.want {
			t.Errorf("%s: missing %q, want %q", name, got, c.want)
		}
	}
}

// TestRelayFeed: the unit that switches them, then the supply that feeds it, then
// the only part that has volts for relays.
func TestRelayFeed(t *testing.T) {
	t.Parallel()
	const relays = `relays = "24 V, 1 A"`
	for _, c := range []struct {
		override, unit, first, second, want string
		assumed                             bool
	}{
		{`override_from = "M"`, relays, relays, relays, `mixer "M"`, false},
		{`override_from = "M"`, "", relays, relays, `supply "Second"`, false},
		{`override_from = "M"`, "", relays, "", `supply "First"`, true},
		{"", "", relays, "", `supply "First"`, true},
		{"", relays, "", "", `mixer "M"`, true},
		{"", "", relays, relays, "", false},
	} {
		s := worked(t, fmt.Sprintf(`
amplifier "A" { rated_power = "100 W" }
mixer "M" { %s }
line "L" {
  amplifier = "A"
  output    = "100 V"
  %s
  attenuator "Room" {
    quantity = 3
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "First" {
  feeds = ["A"]
  %s
}
supply "Second" {
  feeds = ["M"]
  %s
}
`, c.unit, c.override, c.first, c.second))
		f, missing := s.RelayFeed(s.Lines[0])
		got := ""
		if len(missing) == 0 {
			got = f.Named()
			if n, current, lines := s.RelaysFrom(f.Part()); n != 3 || len(lines) != 1 || current.Sum != "3 × 20 mA = 60 mA" {
				t.Errorf("%s feeds %d relays with %q", got, n, current.Sum)
			}
		}
		if got != c.want || len(f.Assumed) > 0 != c.assumed {
			t.Errorf("%+v: fed from %q, assumed %v", c, got, f.Assumed)
		}
	}
	// A unit with volts of its own does not load the only supply that has some.
	s := worked(t, controlled(rooms(2, 5, "20 mA"), `mixer "M" {}`, `supply "Battery" {
  feeds  = ["M"]
  relays = "24 V, 1 A"
}`))
	if got := s.Supplies[0].Relays.Count; got != 0 {
		t.Errorf("the battery feeds %d relays of another unit", got)
	}
}

// TestReversedAttenuator: at half the turns, 6.02 dB, four times the load: the
// ratio squared of an ideal transformer.
func TestReversedAttenuator(t *testing.T) {
	t.Parallel()
	s := worked(t, controlled(`attenuator "Bar" {
  loudspeaker "B" {
    quantity = 3
    tap      = "10 W"
  }
}`))
	a := s.Lines[0].Attenuators[0]
	within(t, "load at half the turns", float64(a.Reversed(20*0.3010299957).Value), 120, 1e-9)
	if got, want := a.Reversed(6).Sum, "30 W × 10^(6/10) = 119.4 W"; got != want {
		t.Errorf("the sum reads %q, want %q", got, want)
	}
}

func TestTurnedDown(t *testing.T) {
	t.Parallel()
	s := worked(t, controlled(`
attenuator "Floor control" {
  lowest   = "-6 dB"
  override = "none"
  attenuator "Plain" {
    lowest   = "-20 dB"
    override = "none"
    loudspeaker "A" { tap = "10 W" }
  }
  attenuator "Silent" {
    lowest = "off"
    loudspeaker "B" { tap = "10 W" }
  }
  attenuator "Unsaid" {
    loudspeaker "C" { tap = "10 W" }
  }
}
attenuator "Lifted" {
  lowest   = "-6 dB"
  override = "24 V relay"
  attenuator "Behind it" {
    lowest = "-10 dB"
    loudspeaker "D" { tap = "10 W" }
  }
}`))
	want := map[string]string{
		"Floor control": "6 dB, left 7.536 W",
		"Plain":         "26 dB (6 dB + 20 dB = 26 dB), left 0.02512 W",
		"Silent":        "off",
		"Unsaid":        "missing how far the attenuator can be turned down",
		"Lifted":        "6 dB, left 2.512 W",
		"Behind it":     "10 dB, left 1 W",
	}
	got := map[string]string{}
	for _, a := range s.Lines[0].Attenuators {
		d := a.Down()
		text := d.DB.Value.String()
		switch {
		case d.Off:
			text = "off"
		case !d.DB.Known():
			text = "missing " + d.DB.Missing[0].What
		default:
			if d.DB.Sum != "" {
				text += " (" + d.DB.Sum + ")"
			}
			text += ", left " + d.Left.Value.String()
		}
		got[a.Part.Name] = text
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// overrideCables writes which cable needs how many conductors.
func overrideCables(l *analysis.Line) string {
	all, unsaid := l.OverrideCables(nil)
	var texts []string
	for _, c := range all {
		texts = append(texts, fmt.Sprintf("%s: %d", c.Names[0].V, c.Needs))
	}
	if unsaid {
		texts = append(texts, "unsaid")
	}
	return strings.Join(texts, ", ")
}

func TestOverrideCables(t *testing.T) {
	t.Parallel()
	const relay, third, none = `override = "24 V relay"`, `override = "third conductor"`, `override = "none"`
	chain := func(first, second string) string {
		return fmt.Sprintf(`
loudspeaker "Hall" { tap = "1 W" }
attenuator "A" {
  cable = "4 x 0.75 mm2"
  leg   = "1 m"
  %s
  loudspeaker "LA" {
    tap   = "1 W"
    cable = "2 x 0.5 mm2"
  }
}
branch "Tee" {
  cable = "3 x 1 mm2"
  loudspeaker "LT" { tap = "1 W" }
  attenuator "B" {
    %s
    loudspeaker "LB" { tap = "1 W" }
  }
}
loudspeaker "End" {
  tap   = "1 W"
  cable = "2 x 4 mm2"
}`, first, second)
	}
	for name, c := range map[string]struct{ line, want string }{
		"none":                       {`cable = "2 x 1.5 mm2"` + chain(none, none), ""},
		"relay first":                {`cable = "2 x 1.5 mm2"` + chain(relay, none), "2 x 1.5 mm2: 4, 4 x 0.75 mm2: 4"},
		"third conductor in the tee": {`cable = "2 x 1.5 mm2"` + chain(none, third), "2 x 1.5 mm2: 3, 4 x 0.75 mm2: 3, 3 x 1 mm2: 3"},
		"both":                       {`cable = "2 x 1.5 mm2"` + chain(relay, third), "2 x 1.5 mm2: 4, 4 x 0.75 mm2: 4, 3 x 1 mm2: 3"},
		"as stated":                  {`cable = "2 x 1.5 mm2"` + chain(relay+"\n  cores = 3", none), "2 x 1.5 mm2: 3, 4 x 0.75 mm2: 3"},
		"a cable of its own":         {`override_cable = "2 x 0.5 mm2"` + chain(relay, third), "2 x 0.5 mm2: 2"},
		"no cable stated":            {chain(relay, none), "4 x 0.75 mm2: 4, unsaid"},
		"its own cable inside only":  {"cable = \"4 x 1.5 mm2\"\nhome_run = \"9 m\"\nattenuator \"A\" {\n cable = \"2 x 0.5 mm2\"\n" + relay + "\nloudspeaker \"LA\" { tap = \"1 W\" }\n}", "4 x 1.5 mm2: 4"},
	} {
		s := worked(t, controlled(c.line))
		if got := overrideCables(s.Lines[0]); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

func TestAnnouncements(t *testing.T) {
	t.Parallel()
	const lines = `
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "1 W" }
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { tap = "1 W" }
}
`
	for name, c := range map[string]struct{ design, want string }{
		"music alone":          {`music "Player" { into = "Rack" }`, ""},
		"over music":           {"microphone \"Desk\" { into = \"Rack\" }\nmusic \"Player\" { into = \"Rack\" }", "Desk first"},
		"alone":                {`microphone "Desk" { into = "Rack" }`, "Desk"},
		"alone with priority":  {"microphone \"Desk\" {\n into = \"Rack\"\n priority = 1\n}", "Desk first"},
		"emergency":            {"system \"S\" { duty = \"emergency\" }\nmessage \"Alarm\" { into = \"Rack\" }", "Alarm first"},
		"for another line":     {"microphone \"Desk\" {\n into = \"Rack\"\n lines = [\"Yard\"]\n}", ""},
		"not plugged in":       {`microphone "Desk" {}`, "perhaps Desk"},
		"that, for another":    {`microphone "Desk" { lines = ["Yard"] }`, ""},
		"music not plugged in": {`music "Player" {}`, ""},
	} {
		s := worked(t, lines+c.design)
		on, unsure := s.Announcements(line(t, s, "Hall"))
		var texts []string
		for _, a := range on {
			text := a.Source.Part.Name
			if a.First {
				text += " first"
			}
			texts = append(texts, text)
		}
		for _, src := range unsure {
			texts = append(texts, "perhaps "+src.Part.Name)
		}
		if got := strings.Join(texts, ", "); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

func TestSwitching(t *testing.T) {
	t.Parallel()
	const design = `
amplifier "Rack" { rated_power = "240 W" }
mixer "Matrix" {
  input "Page" { %s }
  input "Fire" { takes = "contact" }
  output "Out" {}
  send "Out" { into = "Rack" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "1 W" }
}
message "M" {
  %s
}
`
	for name, c := range map[string]struct{ input, source, want string }{
		"signal":       {`triggers = ["signal"]`, "into = \"Matrix\"\ninput = \"Page\"\ntrigger = \"signal\"", "holds"},
		"later unit":   {`triggers = ["signal"]`, `into = "Rack"`, "does not pass"},
		"no trigger":   {`triggers = []`, "into = \"Matrix\"\ninput = \"Page\"", "no trigger"},
		"gives none":   {`triggers = ["signal"]`, "into = \"Matrix\"\ninput = \"Page\"\ntrigger = \"none\"", "gives nothing"},
		"not said":     {``, "into = \"Matrix\"\ninput = \"Page\"", `missing what makes it silence others of input "Page" of mixer "Matrix"`},
		"which input":  {`triggers = ["signal"]`, `into = "Matrix"`, `missing input it goes to of message "M"`},
		"own contacts": {``, "into = \"Rack\"\ntrigger = \"contact\"\nalso {\n  into = \"Matrix\"\n  input = \"Fire\"\n}", "holds"},
	} {
		s := worked(t, fmt.Sprintf(design, c.input, c.source))
		w := s.Switching(s.Sources[0], s.Units[1])
		got := obstacleWord(w.At.Obstacle)
		switch {
		case !w.Passes:
			got = "does not pass"
		case w.Holds():
			got = "holds"
		case len(w.At.Missing) > 0:
			got = "missing " + lacks(w.At.Missing)
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

func TestWatch(t *testing.T) {
	t.Parallel()
	const l = `loudspeaker "%s" { tap = "1 W" }` + "\n"
	const end = `line_end "%s" {}` + "\n"
	block := func(kind, name string, inside ...string) string {
		return fmt.Sprintf("%s %q {\n%s}\n", kind, name, strings.Join(inside, ""))
	}
	speaker := func(name string) string { return fmt.Sprintf(l, name) }
	device := func(name string) string { return fmt.Sprintf(end, name) }
	for name, c := range map[string]struct{ line, want string }{
		"none":              {speaker("A"), "0 ends"},
		"at the end":        {speaker("A") + device("E"), "1 ends"},
		"before the end":    {speaker("A") + device("E") + speaker("B") + speaker("C"), "1 ends; from B after E"},
		"tee beside":        {speaker("A") + block("branch", "Tee", speaker("B")) + speaker("C") + device("E"), "1 ends; Tee"},
		"in the tee":        {speaker("A") + block("branch", "Tee", speaker("B"), device("E")), "1 ends"},
		"on after the tee":  {block("branch", "Tee", speaker("B"), device("E")) + speaker("C"), "1 ends; from C after Tee"},
		"one each":          {block("branch", "Tee", speaker("B"), device("E")) + speaker("C") + device("F"), "2 ends"},
		"tee in a tee":      {block("branch", "Tee", speaker("B"), block("branch", "Inner", speaker("C")), device("E")), "1 ends; Inner"},
		"unwatched tee":     {block("branch", "Tee", block("branch", "Inner", speaker("C"))) + device("E"), "1 ends; Tee"},
		"behind":            {block("attenuator", "Bar", speaker("B"), device("E")), "0 ends; E behind Bar"},
		"deep behind":       {block("attenuator", "Bar", block("branch", "Tee", block("attenuator", "In", speaker("B"), device("E")))), "0 ends; E behind Bar"},
		"beside attenuator": {block("attenuator", "Bar", speaker("B")) + device("E"), "1 ends"},
	} {
		s := worked(t, controlled(c.line))
		w := s.Lines[0].Watch()
		texts := []string{fmt.Sprintf("%d ends", len(w.Ends))}
		for _, b := range w.Behind {
			texts = append(texts, b.End.Name+" behind "+b.Attenuator.Name)
		}
		for _, u := range w.Unwatched {
			if u.After != "" {
				texts = append(texts, "from "+u.Name+" after "+u.After)
				continue
			}
			texts = append(texts, u.Name)
		}
		if got := strings.Join(texts, "; "); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// TestIdleRunKeepsItsCable: loudspeakers set to 0 W hang nothing on the line, but
// the cable passes them all the same.
func TestIdleRunKeepsItsCable(t *testing.T) {
	t.Parallel()
	lossWith := func(tap string) float64 {
		s := worked(t, controlled(fmt.Sprintf(`
cable    = "2 x 1.5 mm2"
home_run = "10 m"
loudspeaker "Idle" {
  quantity = 5
  spacing  = "20 m"
  tap      = %q
}
loudspeaker "Last" {
  tap = "10 W"
  leg = "10 m"
}`, tap)))
		return float64(line(t, s, "Floor").Loss.Drop.Value)
	}
	// 100 m of 2 × 13.3 ohm/km before a load of 1000 ohm.
	within(t, "drop", lossWith("0 W"), 100*2.66/1002.66, 1e-9)
}

func TestReadTerminals(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		"":                       "",
		"1 in, 2 out, 3 common":  "1 line, 2 loudspeakers, 3 common",
		"in 1; out 2; common 3":  "1 line, 2 loudspeakers, 3 common",
		"A = line, B = speakers": "A line, B loudspeakers",
		"1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V":            "1 line, 2 loudspeakers, 3 common, 4 override, 5 override",
		"1 attenuated line in, 2 priority line in, 3 to the loudspeakers, 4 common": "1 line, 2 override, 3 loudspeakers, 4 common",
		"1 line out, 2 line in":          "1 loudspeakers, 2 line",
		"see data sheet":                 "see not understood",
		"1 Eingang, 2 Ausgang, 3 common": "1 not understood, 2 not understood, 3 common",
	} {
		var texts []string
		for _, r := range analysis.ReadTerminals(text) {
			texts = append(texts, r.Name+" "+r.Role.String())
		}
		if got := strings.Join(texts, ", "); got != want {
			t.Errorf("%q reads %q, want %q", text, got, want)
		}
	}
}

// TestTransposed: with three quarters of the turns between tap and common
// (2.499 dB down) the line lies across one quarter, and the loudspeakers get three
// times the line's voltage: nine times the load, by the turns ratio squared.
func TestTransposed(t *testing.T) {
	t.Parallel()
	s := worked(t, controlled("attenuator \"Bar\" {\n loudspeaker \"B\" { tap = \"10 W\" }\n}"))
	within(t, "load", float64(s.Lines[0].Attenuators[0].Transposed(2.498774732).Value), 90, 1e-7)
}
