package analysis_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

// staged describes what is in hand at the first plug of a source.
func staged(f *analysis.Feed) string {
	st := f.Stage()
	switch {
	case st == nil:
		return "not compared"
	case !st.InHand.Known():
		return "missing " + whats(st.InHand.Missing)
	}
	text := st.InHand.Sum
	if st.AsSet.Known() {
		text += "; as set " + st.AsSet.Value.String()
	}
	if st.Knob.Set() {
		text += "; knob at " + st.Knob.V
	}
	return text
}

func TestStages(t *testing.T) {
	t.Parallel()
	tests := map[string]struct{ design, want string }{
		"a microphone": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "-60 dBV"`)) + mic("Desk", "Rack", "Mic", `level = "-54 dBV"`),
			"-54 dBV − (-60 dBV) = 6 dB",
		},
		"levels in three units": {
			amp("Rack", "Hall", input("Line", `sensitivity = "1 V"`)) + mic("Desk", "Rack", "Line", `level = "+4 dBu"`),
			"4 dBu, 1.782 dBV − (1 V, 0 dBV) = 1.782 dB",
		},
		"a pad is a loss, whatever its sign": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "-56 dBV"`, `pad = "20 dB"`)) + mic("Desk", "Rack", "Mic", `level = "-10 dBV"`),
			"-10 dBV − 20 dB (pad) − (-56 dBV) = 26 dB",
		},
		"controls as they are set": {
			amp("Rack", "Hall", `  master = "-6 dB"`+"\n", input("Mic", `sensitivity = "-60 dBV"`, `trim = "-3 dB"`)) + mic("Desk", "Rack", "Mic", `level = "-54 dBV"`),
			"-54 dBV − (-60 dBV) = 6 dB; as set -3 dB",
		},
		"a gain control alone leaves the master free": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "-60 dBV"`, `trim = "0 dB"`)) + mic("Desk", "Rack", "Mic", `level = "-54 dBV"`),
			"-54 dBV − (-60 dBV) = 6 dB",
		},
		"a knob without decibels": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "-60 dBV"`, `setting = "2 o'clock"`)) + mic("Desk", "Rack", "Mic", `level = "-54 dBV"`),
			"-54 dBV − (-60 dBV) = 6 dB; knob at 2 o'clock",
		},
		"a level without a reference": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "-60 dBV"`)) + mic("Desk", "Rack", "Mic", `level = "0 dB"`),
			`missing reference of the level (dBV, dBu or volts) of microphone "Desk"`,
		},
		"a sensitivity without a reference": {
			amp("Rack", "Hall", input("Mic", `sensitivity = "0 dB"`)) + mic("Desk", "Rack", "Mic", `level = "-54 dBV"`),
			`missing reference of the sensitivity (dBV, dBu or volts) of input "Mic" of amplifier "Rack"`,
		},
		"neither": {
			amp("Rack", "Hall", input("Mic")) + mic("Desk", "Rack", "Mic"),
			`missing nominal level of microphone "Desk"; sensitivity of input "Mic" of amplifier "Rack"`,
		},
		"a switch that stands otherwise than the model": {
			"amplifier_model \"m\" {\n" + input("Mic", `takes = "microphone"`, `sensitivity = "-60 dBV"`) + "}\n" +
				"amplifier \"Rack\" {\n  model = \"m\"\n" + input("Mic", `setting = "Line"`) + "}\n" + mic("Desk", "Rack", "Mic", `level = "-10 dBV"`),
			`missing sensitivity with its switch at line of input "Mic" of amplifier "Rack"`,
		},
		"a contact": {
			amp("Rack", "Hall", input("Mute", `takes = "contact"`)) + mic("Desk", "Rack", "Mute", `level = "-10 dBV"`),
			"not compared",
		},
		"a data input": {
			amp("Rack", "Hall", input("Desk", `takes = "paging desk"`)) + mic("Desk", "Rack", "Desk", `level = "-10 dBV"`),
			"not compared",
		},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(tt.want, staged(chain(t, tt.design).Sources[0].Feeds[0])); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// TestSummingResistors holds the loss of a summing lead against the figures for
// the values of the note "Why Not Wye" (475 ohm legs, 20 kohm): one leg driven
// loses 6.12 dB, and two unlike ones of equal level add 3.01 dB to that.
func TestSummingResistors(t *testing.T) {
	t.Parallel()
	s := chain(t, amp("Rack", "Hall", input("Line", `sensitivity = "-20 dBV"`, `impedance = "20 kohm"`))+music("Tablet", "Rack", "Line", `summed_by = "resistors"`, `level = "-10 dBV"`))
	within(t, "in hand", float64(s.Sources[0].Feeds[0].Stage().InHand.Value), 10-6.12+3.01, 0.01)
}

// TestGainOverAChain: a mixer, then the amplifier that has the least, of two.
func TestGainOverAChain(t *testing.T) {
	t.Parallel()
	design := mixer("Desk", input("Mic", `sensitivity = "-50 dBV"`), "  output \"Out\" { level = \"0 dBV\" }\n",
		send("Out", "Weak", "In"), send("Out", "Rack", "In")) +
		amp("Rack", "Hall", input("In", `sensitivity = "-10 dBV"`)) + amp("Weak", "Yard", input("In", `sensitivity = "3 dBV"`))
	for _, tt := range []struct{ lines, want string }{
		{`lines = ["Hall"]`, "-4 dB (Mic of Desk) + 10 dB (In of Rack) = 6 dB"},
		{`lines = "all"`, "-4 dB (Mic of Desk) = -4 dB"},
	} {
		s := chain(t, design+mic("Lectern", "Desk", "Mic", `level = "-54 dBV"`, tt.lines))
		way := s.Sources[0].Feeds[0].Stage().Through()
		if diff := cmp.Diff(tt.want, way.InHand.Sum); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.lines, diff)
		}
	}
	s := chain(t, strings.Replace(design, `sensitivity = "3 dBV"`, `takes = "line"`, 1)+mic("Lectern", "Desk", "Mic", `level = "-54 dBV"`))
	if way := s.Sources[0].Feeds[0].Stage().Through(); whats(way.InHand.Missing) != `sensitivity of input "In" of amplifier "Weak"` {
		t.Errorf("the way of which not everything is known does not count first: %s", way.InHand.Sum)
	}
}

// TestGainInALoop: a signal that comes back ends the search.
func TestGainInALoop(t *testing.T) {
	t.Parallel()
	s := chain(t, mixer("A", send("Out", "B", "In"), send("Main", "Rack", "In"))+mixer("B", send("Out", "A", "In"))+ampAndLine("Rack", "Hall")+mic("Desk", "A", "Mic", `level = "-54 dBV"`))
	if way := s.Sources[0].Feeds[0].Stage().Through(); len(way.Stages) != 2 {
		t.Errorf("%d inputs on the way, want 2", len(way.Stages))
	}
}

func TestDriving(t *testing.T) {
	t.Parallel()
	units := func(parts ...string) string {
		var b strings.Builder
		for n, p := range parts {
			b.WriteString(mixer(fmt.Sprintf("M%d", n+1), p))
		}
		return b.String()
	}
	ten := input("Aux", `impedance = "10 kohm"`)
	isolated := input("Aux", `impedance = "10 kohm"`, "isolated = true")
	also := func(unit string, more ...string) string {
		return fmt.Sprintf("also {\n    into = %q\n    input = \"Aux\"\n    %s\n  }", unit, strings.Join(more, "\n    "))
	}
	tests := map[string]struct {
		design string
		ohm    float64
		apart  int
		lacks  string
	}{
		"one input":          {units(ten) + music("P", "M1", "Aux", `impedance = "600 ohm"`), 10e3, 0, ""},
		"two units":          {units(ten, ten) + music("P", "M1", "Aux", `impedance = "600 ohm"`, also("M2")), 5e3, 2, ""},
		"isolated":           {units(isolated, isolated) + music("P", "M1", "Aux", `impedance = "600 ohm"`, also("M2")), 5e3, 0, ""},
		"one supply":         {units(ten, ten) + "supply \"S\" { feeds = [\"M1\", \"M2\"] }\n" + music("P", "M1", "Aux", `impedance = "600 ohm"`, also("M2")), 5e3, 0, ""},
		"left and right":     {units(ten, ten) + music("P", "M1", "Aux", `impedance = "600 ohm"`, `summed_by = "left only"`, also("M2", `summed_by = "right only"`)), 10e3, 0, ""},
		"through resistors":  {units(ten) + music("P", "M1", "Aux", `summed_by = "resistors"`), 475 + 1/(1/475.0+1/10e3), 0, ""},
		"nothing said":       {units(input("Aux"), ten) + music("P", "M1", "Aux", also("M2")), math.Inf(1), 2, `impedance of music "P"; impedance of input "Aux" of mixer "M1"`},
		"contacts are none":  {units(ten, input("Aux", `takes = "contact"`)) + music("P", "M1", "Aux", `impedance = "600 ohm"`, also("M2")), 10e3, 0, ""},
		"an input not named": {units(ten+input("Two"), ten) + "music \"P\" {\n  into = \"M1\"\n  impedance = \"600 ohm\"\n}\n", math.Inf(1), 0, `input it goes to of music "P"`},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := chain(t, tt.design)
			d := s.Driving(s.Sources[0])
			if got := whats(analysis.MergeMissing(d.Own.Missing, d.Load.Missing)); got != tt.lacks && (tt.lacks != "" || len(d.Load.Missing) > 0) {
				t.Errorf("lacks %q, want %q", got, tt.lacks)
			}
			if got := float64(d.Load.Value); got != tt.ohm && !(math.Abs(got-tt.ohm) < 1e-6) {
				t.Errorf("%g ohm, want %g", got, tt.ohm)
			}
			if len(d.Apart) != tt.apart {
				t.Errorf("%d units apart, want %d", len(d.Apart), tt.apart)
			}
		})
	}
}

// TestDrivingOutputs: two sends of one output are one load, tied outputs none.
func TestDrivingOutputs(t *testing.T) {
	t.Parallel()
	s := chain(t, mixer("Desk", "  output \"Out\" { impedance = \"600 ohm\" }\n", send("Out", "A", "In"), send("Out", "B", "In"), send("Record", "A", "In 2"))+
		amp("A", "Hall", input("In", `impedance = "20 kohm"`), input("In 2", `impedance = "20 kohm"`))+amp("B", "Yard", input("In", `impedance = "20 kohm"`)))
	all := s.DrivingOutputs(s.Units[0])
	if len(all) != 2 || len(all[0].Inputs) != 2 || len(all[1].Inputs) != 1 {
		t.Fatalf("%d outputs drive something", len(all))
	}
	within(t, "load of Out", float64(all[0].Load.Value), 10e3, 1e-6)
	within(t, "level lost", float64(all[0].LoadingDB), 20*math.Log10(10e3/10.6e3), 1e-9)
}

func TestLeads(t *testing.T) {
	t.Parallel()
	balance := map[analysis.Balance]string{analysis.UnknownBalance: "unknown", analysis.Balanced: "balanced", analysis.Unbalanced: "unbalanced"}
	tests := map[string]struct{ design, want string }{
		"both ends":            {amp("Rack", "Hall", input("Mic", "balanced = true")) + mic("M", "Rack", "Mic", "balanced = true", `lead = "5 m"`), "balanced"},
		"the source is not":    {amp("Rack", "Hall", input("Mic", "balanced = true")) + mic("M", "Rack", "Mic", "balanced = false", `lead = "5 m"`), "unbalanced"},
		"the input is not":     {amp("Rack", "Hall", input("Mic", "balanced = false")) + mic("M", "Rack", "Mic", "balanced = true", `lead = "5 m"`), "unbalanced"},
		"the plug is not":      {amp("Rack", "Hall", input("Mic", "balanced = true")) + mic("M", "Rack", "Mic", `connector = "RCA"`, `lead = "5 m"`), "unbalanced"},
		"two channels on four": {amp("Rack", "Hall", input("Aux")) + strings.Replace(music("M", "Rack", "Aux", `connector = "RCA pair"`, `lead = "5 m"`), "mono", "stereo", 1), "unbalanced"},
		"one end not said":     {amp("Rack", "Hall", input("Mic")) + mic("M", "Rack", "Mic", "balanced = true", `lead = "5 m"`), `unknown: whether it is balanced of input "Mic" of amplifier "Rack"`},
		"the other not said":   {amp("Rack", "Hall", input("Mic", "balanced = true")) + mic("M", "Rack", "Mic", `lead = "5 m"`), `unknown: whether it is balanced of microphone "M"`},
		"no length":            {amp("Rack", "Hall", input("Mic")) + mic("M", "Rack", "Mic"), "none"},
		"data":                 {amp("Rack", "Hall", input("D", `takes = "paging desk"`)) + mic("M", "Rack", "D", `lead = "5 m"`), "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := chain(t, tt.design)
			got := "none"
			if l := s.LeadOf(s.Sources[0].Feeds[0]); l != nil {
				got = balance[l.Balance]
				if len(l.Missing) > 0 {
					got += ": " + whats(l.Missing)
				}
			}
			if got != tt.want {
				t.Errorf("%s, want %s", got, tt.want)
			}
		})
	}
}

// TestCornerOfALead: 200 ohm on 100 m of microphone cable at 100 pF/m, 79.6 kHz
// (formula of the page "Cable and treble damping").
func TestCornerOfALead(t *testing.T) {
	t.Parallel()
	s := chain(t, amp("Rack", "Hall", input("Mic"))+mic("M", "Rack", "Mic", `impedance = "200 ohm"`, `lead = "100 m"`))
	l := s.LeadOf(s.Sources[0].Feeds[0])
	within(t, "corner", float64(l.Corner(100e-12).Value)/1e3, 79.6, 0.05)
	within(t, "longest", float64(l.Longest(100e-12, quantity.Frequency(l.Corner(100e-12).Value))), 100, 1e-9)
}
