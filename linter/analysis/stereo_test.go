package analysis_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
)

func joiningWord(j *analysis.Joint) string {
	word := map[analysis.Joining]string{
		analysis.UnknownJoining: "unknown", analysis.Summed: "summed", analysis.KeptApart: "kept", analysis.OneSide: "left only",
		analysis.Tied: "tied", analysis.Difference: "difference", analysis.Unnamed: "unnamed", analysis.InputDoesNotSum: "not by input",
	}[j.Joining]
	if j.Joining == analysis.OneSide && j.Right {
		word = "right only"
	}
	return word
}

// channelsOf describes what becomes of the two channels of a source.
func channelsOf(s *analysis.Source) string {
	if s.Stereo == nil {
		return "one channel"
	}
	var parts []string
	for i := range s.Stereo.Joints {
		parts = append(parts, joiningWord(&s.Stereo.Joints[i]))
	}
	for _, lines := range []struct {
		what string
		on   []*analysis.Line
	}{{"left", s.Stereo.Left}, {"right", s.Stereo.Right}, {"whole", s.Stereo.Whole}} {
		if len(lines.on) > 0 {
			parts = append(parts, lines.what+" on "+lineNames(lines.on))
		}
	}
	for _, l := range s.Stereo.Elsewhere {
		parts = append(parts, "decided at "+l.Part.Send.Name)
	}
	for _, m := range s.Stereo.Missing {
		parts = append(parts, "missing "+m.What)
	}
	return strings.Join(parts, "; ")
}

func stereo(into, inputName string, more ...string) string {
	return fmt.Sprintf("music \"Player\" {\n  into = %q\n  input = %q\n  channels = \"stereo\"\n  %s\n}\n", into, inputName, strings.Join(more, "\n  "))
}

func sendOf(output, into, input, channels string) string {
	return fmt.Sprintf("  send %q {\n    into = %q\n    input = %q\n    %s\n  }\n", output, into, input, channels)
}

func TestWaysOfTwoChannels(t *testing.T) {
	t.Parallel()
	kept := input("Stereo", `stereo = "left and right kept"`)
	tests := map[string]struct{ design, want string }{
		"summed by the input": {
			amp("Rack", "Hall", input("Aux", `stereo = "summed inside"`)) + stereo("Rack", "Aux"),
			"summed; whole on Hall",
		},
		"an input that takes one of two": {
			amp("Rack", "Hall", input("Aux", `stereo = "left only"`)) + stereo("Rack", "Aux"),
			"left only; left on Hall",
		},
		"a microphone input has one channel": {
			amp("Rack", "Hall", input("Mic", `takes = "microphone"`)) + stereo("Rack", "Mic"),
			"unnamed",
		},
		"so has a balanced one with three contacts": {
			amp("Rack", "Hall", input("Line", `takes = "line"`, "balanced = true", `connectors = ["XLR 3"]`)) + stereo("Rack", "Line"),
			"unnamed",
		},
		"and one with two contacts": {
			amp("Rack", "Hall", input("Line", `takes = "line"`, `connectors = ["RCA"]`)) + stereo("Rack", "Line"),
			"unnamed",
		},
		"of a pair of sockets that is not known": {
			amp("Rack", "Hall", input("Line", `takes = "line"`, `connectors = ["RCA pair"]`)) + stereo("Rack", "Line"),
			"unknown",
		},
		"nor of three contacts unbalanced": {
			amp("Rack", "Hall", input("Line", `takes = "line"`, `connectors = ["6.35 mm jack 3-pole"]`)) + stereo("Rack", "Line"),
			"unknown",
		},
		"nothing is not a way of summing": {
			amp("Rack", "Hall", input("Mic", `takes = "microphone"`)) + stereo("Rack", "Mic", `summed_by = "nothing"`),
			"unnamed",
		},
		"a mono input cannot sum": {
			amp("Rack", "Hall", input("Mic", `takes = "microphone"`)) + stereo("Rack", "Mic", `summed_by = "input"`),
			"not by input",
		},
		"nor can the unit behind it": {
			amp("Rack", "Hall", input("Mic", `takes = "microphone"`)) + stereo("Rack", "Mic", `summed_by = "output"`),
			"not by input",
		},
		"left and right to lines of their own": {
			mixer("Desk", kept, sendOf("L", "Amp L", "In", `channels = "left"`), sendOf("R", "Amp R", "In", `channels = "right"`)) +
				amp("Amp L", "One") + amp("Amp R", "Two") + stereo("Desk", "Stereo"),
			"kept; left on One; right on Two",
		},
		"left and right into two inputs of one amplifier": {
			mixer("Desk", kept, sendOf("L", "Rack", "In 1", `channels = "left"`), sendOf("R", "Rack", "In 2", `channels = "right"`)) +
				amp("Rack", "Hall") + stereo("Desk", "Stereo"),
			"kept; whole on Hall",
		},
		"a mono output": {
			mixer("Desk", kept, sendOf("Mono", "Rack", "In", `channels = "mono"`)) + amp("Rack", "Hall") + stereo("Desk", "Stereo"),
			"kept; whole on Hall",
		},
		"an output of which it is not said what it carries": {
			mixer("Desk", kept, sendOf("Out", "Rack", "In", "")) + amp("Rack", "Hall") + stereo("Desk", "Stereo"),
			"kept; missing channels it carries",
		},
		"that does not matter where it is not meant to be heard": {
			mixer("Desk", kept, sendOf("Out", "Rack", "In", ""), sendOf("L", "Lounge", "In 1", `channels = "left"`), sendOf("R", "Lounge", "In 2", `channels = "right"`)) +
				amp("Rack", "Hall") + quad("Lounge", "Left", "Right") + stereo("Desk", "Stereo", `lines = ["Left", "Right"]`),
			"kept; left on Left; right on Right",
		},
		"summed at the outputs of the unit": {
			mixer("Desk", kept, sendOf("Out", "Rack", "In", "")) + amp("Rack", "Hall") + stereo("Desk", "Stereo", `summed_by = "output"`),
			"summed; whole on Hall",
		},
		"two outputs tied: the send answers": {
			mixer("Desk", kept, sendOf("L", "Rack", "In", `tied_with = ["R"]`)) + amp("Rack", "Hall") + stereo("Desk", "Stereo"),
			"kept; decided at L",
		},
		"two outputs through resistors": {
			mixer("Desk", kept, sendOf("L", "Rack", "In", "tied_with = [\"R\"]\n    summed_by = \"resistors\"")) + amp("Rack", "Hall") + stereo("Desk", "Stereo"),
			"kept; whole on Hall",
		},
		"both on one send into an input that sums": {
			mixer("Desk", kept, sendOf("Out", "Rack", "Aux", `channels = "stereo"`)) + amp("Rack", "Hall", input("Aux", `stereo = "summed inside"`)) + stereo("Desk", "Stereo"),
			"kept; whole on Hall",
		},
		"left on one plug and right on another": {
			amp("Rack", "Hall") + stereo("Rack", "In 1", `summed_by = "left only"`, "also {\n    into = \"Rack\"\n    input = \"In 2\"\n    summed_by = \"right only\"\n  }"),
			"left only; right only; whole on Hall",
		},
		"kept apart in an amplifier with two power channels": {
			"amplifier \"Duo\" {\n  channel \"Left\" { rated_power = \"50 W\" }\n  channel \"Right\" { rated_power = \"50 W\" }\n" + kept + "}\n" +
				"line \"A\" {\n  amplifier = \"Duo\"\n  output = \"Left\"\n}\nline \"B\" {\n  amplifier = \"Duo\"\n  output = \"Right\"\n}\n" + stereo("Duo", "Stereo"),
			"kept; whole on A, B",
		},
		"kept apart in an amplifier with one": {
			amp("Rack", "Hall", kept) + stereo("Rack", "Stereo"),
			"kept; missing how left and right become one",
		},
		"round a ring": {
			mixer("A", kept, sendOf("Out", "B", "In", `channels = "left"`)) + mixer("B", sendOf("Back", "A", "Return", ""), sendOf("Out", "Rack", "In", "")) +
				amp("Rack", "Hall") + stereo("A", "Stereo"),
			"kept; left on Hall",
		},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := chain(t, tc.design)
			if diff := cmp.Diff(tc.want, channelsOf(s.Sources[len(s.Sources)-1])); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// TestParalleled holds the impedance of tied outputs against the rule for
// impedances in parallel, worked by hand: 600 ohm twice is 300 ohm, and 100, 150
// and 300 ohm are 50 ohm (1/100 + 1/150 + 1/300 = 6/300).
func TestParalleled(t *testing.T) {
	t.Parallel()
	outputs := func(all ...string) string {
		text := ""
		for i, z := range all {
			text += fmt.Sprintf("  output \"O %d\" { impedance = %q }\n", i+1, z)
		}
		return text
	}
	tests := map[string]struct {
		design string
		known  bool
		ohm    float64
		sum    string
	}{
		"two of 600 ohm": {
			mixer("Desk", outputs("600 ohm", "600 ohm"), sendOf("O 1", "Rack", "In", `tied_with = ["O 2"]`)) + amp("Rack", "Hall"),
			true, 300, "1 / (1 / 600 ohm + 1 / 600 ohm) = 300 ohm",
		},
		"three": {
			mixer("Desk", outputs("100 ohm", "150 ohm", "300 ohm"), sendOf("O 1", "Rack", "In", `tied_with = ["O 2", "O 3"]`)) + amp("Rack", "Hall"),
			true, 50, "1 / (1 / 100 ohm + 1 / 150 ohm + 1 / 300 ohm) = 50 ohm",
		},
		"one of them not known": {
			mixer("Desk", outputs("600 ohm"), sendOf("O 1", "Rack", "In", `tied_with = ["O 2"]`)) + amp("Rack", "Hall"),
			false, 0, "",
		},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := chain(t, tc.design)
			if len(s.Joints) != 1 || s.Joints[0].Joining != analysis.Tied {
				t.Fatalf("joints: %+v", s.Joints)
			}
			f := s.Joints[0].Paralleled
			if f.Known() != tc.known || f.Sum != tc.sum {
				t.Errorf("known %v, sum %q", f.Known(), f.Sum)
			}
			if d := float64(f.Value) - tc.ohm; tc.known && (d > 1e-9 || d < -1e-9) {
				t.Errorf("%v ohm; want %v", float64(f.Value), tc.ohm)
			}
		})
	}
}
