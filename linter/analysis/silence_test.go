package analysis_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"loudlint/linter/analysis"
)

func cmpSorted() cmp.Option { return cmpopts.SortSlices(func(a, b string) bool { return a < b }) }

func rankWord(r analysis.Rank) string {
	return map[analysis.Rank]string{analysis.Before: "before", analysis.Equal: "beside", analysis.After: "after", analysis.Unranked: "unranked to"}[r]
}

func obstacleWord(o analysis.Obstacle) string {
	return map[analysis.Obstacle]string{
		analysis.SharedInput: "shared input", analysis.DoesNotMute: "does not mute", analysis.NotReceiving: "not receiving",
		analysis.NothingTriggers: "no trigger", analysis.GivesNothing: "gives nothing", analysis.WantsContact: "wants contact",
		analysis.PlugRefused: "plug refused", analysis.PlugTooSmall: "plug too small",
	}[o]
}

// told describes what one source does to another on one line.
func told(c analysis.Silencing) string {
	text := c.By.Part.Name + " " + rankWord(c.Rank) + " " + c.Of.Part.Name + ": "
	switch c.State {
	case analysis.Silenced:
		text += "silenced"
	case analysis.Heard:
		text += "heard"
	case analysis.Unsure:
		text += "unsure"
	}
	if c.State != analysis.Silenced && len(c.Lines) > 1 {
		if len(c.Still) == len(c.Lines) {
			text += " on all"
		} else {
			text += " on " + lineNames(c.Still)
		}
	}
	var places []string
	for _, m := range c.Mutes {
		p := strings.TrimSuffix(m.By.Into.Name(), " of "+m.Unit.Part.Name) + "→" + m.Of.Name()
		if m.By.Feed == nil {
			p = "link " + p
		}
		if m.Obstacle != analysis.NoObstacle {
			p += ": " + obstacleWord(m.Obstacle)
		}
		places = append(places, p)
	}
	if len(places) > 0 {
		text += " [" + strings.Join(places, "; ") + "]"
	}
	for _, m := range c.Missing {
		text += " missing " + m.What
	}
	return text
}

func priorities(s *analysis.System) []string {
	var all []string
	for _, c := range s.Priorities() {
		all = append(all, told(c))
	}
	return all
}

// input is a block of an input with attributes.
func input(name string, attributes ...string) string {
	return "  input \"" + name + "\" {\n    " + strings.Join(attributes, "\n    ") + "\n  }\n"
}

func amp(name, line string, parts ...string) string {
	return "amplifier \"" + name + "\" {\n  rated_power = \"100 W\"\n" + strings.Join(parts, "") + "}\nline \"" + line + "\" {\n  amplifier = \"" + name + "\"\n  output = \"100 V\"\n  loudspeaker \"L\" { tap = \"6 W\" }\n}\n"
}

func TestWhoSilencesWhom(t *testing.T) {
	t.Parallel()
	sends := input("Mic", `triggers = ["signal"]`, `mutes = ["Aux"]`)
	deaf := input("Mic", `triggers = []`)
	aux := input("Aux", `takes = "line"`)
	tests := map[string]struct {
		design string
		want   []string
	}{
		"in one amplifier": {
			amp("Rack", "Hall", sends, aux) + mic("Desk", "Rack", "Mic") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: silenced [Mic→Aux of Rack]"},
		},
		"in the mixer, before both go on together": {
			mixer("Desk mixer", sends, aux, send("Out", "Rack", "In")) + amp("Rack", "Hall", input("In", `triggers = []`)) +
				mic("Desk", "Desk mixer", "Mic") + music("Player", "Desk mixer", "Aux"),
			[]string{"Desk before Player: silenced [Mic→Aux of Desk mixer]"},
		},
		"not in the mixer, and after it they are one signal": {
			mixer("Desk mixer", deaf, aux, send("Out", "Rack", "In")) + amp("Rack", "Hall", input("In", `triggers = ["signal"]`, `mutes = "all"`)) +
				mic("Desk", "Desk mixer", "Mic") + music("Player", "Desk mixer", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Desk mixer: does not mute]"},
		},
		"by its signal through a link": {
			mixer("Desk mixer", input("Mic", `takes = "microphone"`), send("Out", "Rack", "In")) + amp("Rack", "Hall", input("In", `triggers = ["signal"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Desk mixer", "Mic") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: silenced [link In→Aux of Rack]"},
		},
		"no contact through a link": {
			mixer("Desk mixer", input("Mic", `takes = "microphone"`), send("Out", "Rack", "In")) + amp("Rack", "Hall", input("In", `triggers = ["contact"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Desk mixer", "Mic", `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: unsure [link In→Aux of Rack] missing whether its contact is wired to a later unit too"},
		},
		"no contact through a link, and none to wire": {
			mixer("Desk mixer", input("Mic", `takes = "microphone"`), send("Out", "Rack", "In")) + amp("Rack", "Hall", input("In", `triggers = ["contact"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Desk mixer", "Mic", `trigger = "signal"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [link In→Aux of Rack: wants contact]"},
		},
		"a contact that could be wired to another input of the later unit": {
			mixer("Desk mixer", input("Mic", `takes = "microphone"`), send("Out", "Rack", "In")) +
				amp("Rack", "Hall", input("In", `triggers = []`), input("Page", `takes = "contact"`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Desk mixer", "Mic", `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: unsure [link In→Aux of Rack] missing whether its contact is wired to a later unit too"},
		},
		"a contact wired to the later unit": {
			mixer("Desk mixer", input("Mic", `takes = "microphone"`), send("Out", "Rack", "In")) +
				amp("Rack", "Hall", input("In", `triggers = []`), input("Page", `takes = "contact"`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Desk mixer", "Mic", `trigger = "contact"`, "also {\n    into = \"Rack\"\n    input = \"Page\"\n  }") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: silenced [Page→Aux of Rack]"},
		},
		"on one of two lines": {
			mixer("Desk mixer", sends, aux, send("A", "Amp A", "In"), send("B", "Amp B", "In")) + amp("Amp A", "One", input("In", `triggers = []`)) +
				amp("Amp B", "Two", input("In", `triggers = []`), aux) +
				mic("Desk", "Desk mixer", "Mic") + music("Player", "Desk mixer", "Aux", "also {\n    into = \"Amp B\"\n    input = \"Aux\"\n  }"),
			[]string{"Desk before Player: heard on Two [link In→Aux of Amp B: does not mute]"},
		},
		"on both ways of a diamond": {
			mixer("A", sends, aux, send("1", "B", "In 1"), send("2", "B", "In 2")) + amp("B", "Hall", input("In 1", `takes = "line"`), input("In 2", `takes = "line"`)) +
				mic("Desk", "A", "Mic") + music("Player", "A", "Aux"),
			[]string{"Desk before Player: silenced [Mic→Aux of A]"},
		},
		"on neither way of a diamond": {
			mixer("A", deaf, aux, send("1", "B", "In 1"), send("2", "B", "In 2")) + amp("B", "Hall", input("In 1", `takes = "line"`), input("In 2", `takes = "line"`)) +
				mic("Desk", "A", "Mic") + music("Player", "A", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of A: does not mute]"},
		},
		"channels of one amplifier do not meet": {
			mixer("A", sends, input("Aux", `takes = "line"`), send("1", "Quad", "In 1"), send("2", "Quad", "In 2")) + quad("Quad", "One", "Two") +
				mic("Desk", "A", "Mic", `lines = ["One"]`) + music("Player", "Quad", "In 3") + music("Other", "A", "Aux", `lines = ["Two"]`),
			nil,
		},
		"in a ring": {
			mixer("A", deaf, send("Out", "B", "In")) + mixer("B", aux, input("In", `triggers = ["signal"]`, `mutes = ["Aux"]`), send("Back", "A", "Return"), send("Out", "Rack", "In")) +
				amp("Rack", "Hall") + mic("Desk", "A", "Mic") + music("Player", "B", "Aux"),
			[]string{"Desk before Player: silenced [link In→Aux of B]"},
		},
		"nothing is known of an input that is only named": {
			amp("Rack", "Hall") + mic("Desk", "Rack", "Mic") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: unsure [Mic→Aux of Rack] missing which inputs it mutes missing what makes it silence others"},
		},
		"nor of one that is not named": {
			amp("Rack", "Hall", sends, aux) + mic("Desk", "Rack", "Mic") + "music \"Player\" { into = \"Rack\" }\n",
			[]string{"Desk before Player: unsure [Mic→an input of Rack] missing input it goes to"},
		},
		"not set to be muted, whatever else is unknown": {
			amp("Rack", "Hall", input("Aux", `muted_by_others = false`)) + mic("Desk", "Rack", "Mic") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Rack: not receiving]"},
		},
		"set to be muted by one that mutes nothing": {
			amp("Rack", "Hall", deaf, input("Aux", `muted_by_others = true`)) + mic("Desk", "Rack", "Mic") + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Rack: does not mute]"},
		},
		"the plug decides before the trigger is known": {
			amp("Rack", "Hall", input("Mic", `triggers = ["contact"]`, "needs_cores = 5", `connectors = ["XLR 3", "DIN 5"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Rack", "Mic", `connector = "XLR 3"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Rack: plug too small]"},
		},
		"a contact also gives its signal": {
			amp("Rack", "Hall", input("Mic", `triggers = ["contact", "signal"]`, "needs_cores = 5", `mutes = ["Aux"]`), aux) +
				mic("Desk", "Rack", "Mic", `connector = "XLR 3"`, `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: silenced [Mic→Aux of Rack]"},
		},
		"one contact less than two conductors leave room for": {
			amp("Rack", "Hall", input("Mic", `triggers = ["contact"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Rack", "Mic", `connector = "RCA"`, `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Rack: plug too small]"},
		},
		"terminals take bare ends of any kind": {
			amp("Rack", "Hall", input("Mic", `triggers = ["contact"]`, "needs_cores = 5", `connectors = ["pluggable terminals"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Rack", "Mic", `connector = "screw terminals"`, `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: silenced [Mic→Aux of Rack]"},
		},
		"as many contacts as the socket has": {
			amp("Rack", "Hall", input("Mic", `triggers = ["contact"]`, "needs_cores = 5", `connectors = ["pluggable terminals 3"]`, `mutes = ["Aux"]`), aux) +
				mic("Desk", "Rack", "Mic", `connector = "screw terminals"`, `trigger = "contact"`) + music("Player", "Rack", "Aux"),
			[]string{"Desk before Player: heard [Mic→Aux of Rack: plug too small]"},
		},
		"ranks": {
			amp("Rack", "Hall", input("Mic", `triggers = ["signal"]`, `mutes = "all"`), input("Mic 2", `triggers = []`), input("Mic 3", `triggers = []`), aux) +
				mic("Desk", "Rack", "Mic", "priority = 2") + mic("Lectern", "Rack", "Mic 2", "priority = 2") + mic("Roaming", "Rack", "Mic 3") + music("Player", "Rack", "Aux", "priority = 1"),
			[]string{
				"Desk beside Lectern: silenced [Mic→Mic 2 of Rack]",
				"Desk unranked to Roaming: silenced [Mic→Mic 3 of Rack] missing priority",
				"Desk after Player: silenced [Mic→Aux of Rack]",
				"Lectern beside Desk: heard [Mic 2→Mic of Rack: does not mute]",
				"Lectern unranked to Roaming: heard [Mic 2→Mic 3 of Rack: does not mute] missing priority",
				"Lectern after Player: heard [Mic 2→Aux of Rack: does not mute]",
				"Roaming unranked to Desk: heard [Mic 3→Mic of Rack: does not mute] missing priority",
				"Roaming unranked to Lectern: heard [Mic 3→Mic 2 of Rack: does not mute] missing priority",
				"Roaming before Player: heard [Mic 3→Aux of Rack: does not mute]",
			},
		},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(tc.want, priorities(chain(t, tc.design))); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// TestSilenceWhateverTheOrder: that a source goes on by one way is found whatever
// order the design has.
func TestSilenceWhateverTheOrder(t *testing.T) {
	t.Parallel()
	parts := []string{
		mixer("A", input("Mic", `triggers = ["signal"]`, `mutes = ["Aux"]`), input("Aux", `takes = "line"`), send("1", "B", "In 1"), send("2", "C", "In")),
		mixer("C", input("In", `triggers = []`), input("Local", `takes = "line"`), send("Out", "B", "In 2")),
		amp("B", "Hall", input("In 1", `triggers = []`), input("In 2", `triggers = []`)),
		mic("Desk", "A", "Mic"),
		music("Player", "C", "Local"),
	}
	want := []string{"Desk before Player: heard [link In→Local of C: does not mute]"}
	for range parts {
		parts = slices.Concat(parts[1:], parts[:1])
		if diff := cmp.Diff(want, priorities(chain(t, strings.Join(parts, "")))); diff != "" {
			t.Errorf("(-want +got):\n%s", diff)
		}
	}
}
