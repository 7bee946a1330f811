package analysis_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
)

// selecting describes what the first source can choose.
func selecting(s *analysis.System) string {
	sel := s.Selecting(s.Sources[0])
	var groups []string
	for _, lines := range sel.Destinations {
		groups = append(groups, lineNames(lines))
	}
	text := strings.Join(groups, " | ")
	if sel.Keys {
		text = "keys: " + text
	}
	if len(sel.Later) != len(sel.Destinations) {
		text += fmt.Sprintf("; later %d", len(sel.Later))
	}
	if len(sel.Missing) > 0 {
		text += "; missing " + whats(sel.Missing)
	}
	return text
}

// zones is an amplifier with a line on each of its outputs.
func zones(routing, more string, lines ...string) string {
	const name = "Rack"
	var b strings.Builder
	fmt.Fprintf(&b, "amplifier %q {\n  rated_power = \"120 W\"\n", name)
	if routing != "" {
		fmt.Fprintf(&b, "  routing = %q\n", routing)
	}
	fmt.Fprintf(&b, "  output \"Zone\" {\n    quantity = %d\n    volts = \"100 V\"\n    %s\n  }\n}\n", max(len(lines), 2), more)
	for n, l := range lines {
		fmt.Fprintf(&b, "line %q {\n  amplifier = %q\n  output = \"Zone %d\"\n  loudspeaker \"L\" { tap = \"6 W\" }\n}\n", l, name, n+1)
	}
	return b.String()
}

func TestSelecting(t *testing.T) {
	t.Parallel()
	tests := map[string]struct{ design, want string }{
		"lines switched":              {zones("one programme, lines switched", "", "A", "B") + mic("M", "Rack", "Mic"), "A | B"},
		"all lines":                   {zones("one programme, all lines", "", "A", "B") + mic("M", "Rack", "Mic"), "A, B"},
		"all lines, outputs switched": {zones("one programme, all lines", "switched = true", "A", "B") + mic("M", "Rack", "Mic"), "A | B"},
		"fixed":                       {zones("fixed", "", "A", "B") + mic("M", "Rack", "Mic"), "A, B"},
		"any to any":                  {zones("any input to any output", "switched = false", "A", "B") + mic("M", "Rack", "Mic"), "A | B"},
		"outputs that are not":        {zones("one programme, lines switched", "switched = false", "A", "B") + mic("M", "Rack", "Mic"), "A, B"},
		"not said":                    {zones("", "", "A", "B") + mic("M", "Rack", "Mic"), `A, B; missing routing of amplifier "Rack"`},
		"not said and of no matter":   {zones("", "", "A") + mic("M", "Rack", "Mic"), "A"},
		"two lines on one output": {
			zones("one programme, lines switched", "", "A", "B") + "line \"C\" {\n  amplifier = \"Rack\"\n  output = \"Zone 2\"\n  loudspeaker \"L\" { tap = \"6 W\" }\n}\n" + mic("M", "Rack", "Mic"),
			"A | B, C",
		},
		"parted by the mixer": {
			mixer("Desk", "  routing = \"any input to any output\"\n", send("1", "One", "In"), send("2", "Two", "In")) + ampAndLine("One", "A") + ampAndLine("Two", "B") + mic("M", "Desk", "Mic"),
			"A | B",
		},
		"parted behind the mixer": {
			mixer("Desk", "  routing = \"one programme, all lines\"\n", send("1", "Rack", "In")) + zones("one programme, lines switched", "", "A", "B") + mic("M", "Desk", "Mic"),
			"A | B",
		},
		"which keys do not reach": {
			mixer("Desk", "  routing = \"one programme, all lines\"\n", input("Data", `takes = "paging desk"`), send("1", "Rack", "In")) + zones("one programme, lines switched", "", "A", "B") + mic("M", "Desk", "Data"),
			"keys: A, B; later 2",
		},
		"by both": {
			mixer("Desk", "  routing = \"any input to any output\"\n", input("Data", `takes = "paging desk"`), send("1", "Rack", "In"), send("2", "Two", "In")) +
				zones("one programme, lines switched", "", "A", "B") + ampAndLine("Two", "C") + mic("M", "Desk", "Data"),
			"keys: A, B | C; later 3",
		},
		"in a loop": {
			mixer("Desk", "  routing = \"any input to any output\"\n", send("1", "One", "In"), send("2", "Other", "In")) + mixer("Other", send("1", "Desk", "Back")) + ampAndLine("One", "A") + mic("M", "Desk", "Mic"),
			"A",
		},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(tt.want, selecting(chain(t, tt.design))); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestReturning(t *testing.T) {
	t.Parallel()
	s := chain(t, mixer("A", send("Out", "B", "In"))+mixer("B", send("Out", "C", "In"))+mixer("C", send("Back", "A", "In")))
	if len(s.Loops) != 1 {
		t.Fatalf("%d loops, want 1", len(s.Loops))
	}
	if all := analysis.Returning(s.Loops[0]); len(all) != 1 || all[0].Part.Send.Name != "Back" {
		t.Errorf("%d links lead back", len(all))
	}
}
