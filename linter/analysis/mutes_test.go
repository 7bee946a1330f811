package analysis_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
)

// muted describes what a mute link does.
func muted(m *analysis.MuteLink) string {
	var parts []string
	for _, c := range m.Silences {
		word := map[analysis.State]string{analysis.Silenced: "silent", analysis.Heard: "heard", analysis.Unsure: "unsure"}[c.State]
		if len(c.Still) > 0 {
			word += " on " + lineNames(c.Still)
		}
		if len(c.Missing) > 0 {
			word += " (" + whats(c.Missing) + ")"
		}
		parts = append(parts, c.Of.Part.Name+" "+word)
	}
	parts = append(parts, map[analysis.ContactMatch]string{analysis.ContactUntold: "untold", analysis.ContactMatches: "matches", analysis.ContactOpposite: "opposite"}[m.Contact])
	if m.FailsSafe {
		parts = append(parts, "fails safe")
	}
	if m.LooseJoint {
		parts = append(parts, "loose")
	}
	if m.Mains.Set() {
		parts = append(parts, "mains")
	}
	return strings.Join(parts, "; ")
}

func link(attributes ...string) string {
	return fmt.Sprintf("mute_link \"Panel\" {\n  %s\n}\n", strings.Join(attributes, "\n  "))
}

func TestMuteLinks(t *testing.T) {
	t.Parallel()
	rack := func(mute string) string {
		return amp("Rack", "Hall", input("Aux", `takes = "line"`), input("Mic", `takes = "microphone"`), mute) + music("Player", "Rack", "Aux") + mic("Desk", "Rack", "Mic")
	}
	whole := input("Mute", `takes = "contact"`, `mutes = "all"`, `mutes_on = "open"`)
	at := []string{`into = "Rack"`, `input = "Mute"`}
	with := func(more ...string) string { return link(append(append([]string{}, at...), more...)...) }
	tests := map[string]struct{ design, want string }{
		"all, open":           {rack(whole) + with(`mutes = "all"`, `contact = "opens in alarm"`), "Player silent; Desk silent; matches; fails safe"},
		"some":                {rack(whole) + with(`mutes = ["Player"]`, `contact = "opens in alarm"`), "Player silent; matches; fails safe"},
		"the other contact":   {rack(whole) + with(`mutes = ["Player"]`, `contact = "closes in alarm"`), "Player silent; opposite"},
		"both close":          {rack(input("Mute", `takes = "contact"`, `mutes = "all"`, `mutes_on = "closed"`)) + with(`mutes = ["Player"]`, `contact = "closes in alarm"`), "Player silent; matches"},
		"not what it mutes":   {rack(input("Mute", `takes = "contact"`, `mutes = ["Mic"]`)) + with(`mutes = "all"`), "Player heard on Hall; Desk silent; untold"},
		"nothing of it said":  {rack(input("Mute", `takes = "contact"`)) + with(`mutes = ["Player"]`), `Player unsure on Hall (which inputs it mutes of input "Mute" of amplifier "Rack"); untold`},
		"no terminals said":   {rack(whole) + link(`into = "Rack"`, `mutes = ["Player"]`), `Player unsure on Hall (input it goes to of mute_link "Panel"); untold`},
		"no unit said":        {rack(whole) + link(`mutes = "all"`), "untold"},
		"no source said":      {rack(whole) + with(`contact = "opens in alarm"`), "matches; fails safe"},
		"a signal input":      {rack(input("Mute", `takes = "line"`, `triggers = ["contact"]`, `mutes = "all"`, `connectors = ["pluggable terminals"]`)) + with(`mutes = ["Player"]`), "Player silent; untold"},
		"one that no contact": {rack(input("Mute", `takes = "line"`, "triggers = []", `mutes = ["Aux"]`)) + with(`mutes = ["Player"]`), "Player heard on Hall; untold"},
		"one that is not muted": {
			amp("Rack", "Hall", input("Aux", "muted_by_others = false"), whole) + music("Player", "Rack", "Aux") + with(`mutes = ["Player"]`),
			"Player heard on Hall; untold",
		},
		"a way beside the unit": {
			mixer("Desk", input("Aux"), whole, send("Out", "Amp", "In")) + amp("Amp", "Hall", input("In"), input("Aux")) + music("Player", "Desk", "Aux") + music("Local", "Amp", "Aux") +
				link(`into = "Desk"`, `input = "Mute"`, `mutes = "all"`),
			"Player silent; Local heard on Hall; untold",
		},
		"words of the joint":   {rack(whole) + with(`joint = "push-in plug"`), "untold; loose"},
		"a box near the mains": {rack(whole) + with(`joint = "fixed box beside the mains panel"`), "untold"},
		"words of the mains":   {rack(whole) + with(`joint = "contactor in the mixer's mains"`), "untold; mains"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(tt.want, muted(chain(t, tt.design).MuteLinks()[0])); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestRelying(t *testing.T) {
	t.Parallel()
	s := chain(t, link()+`
space "Nave" {
  noise             = "70 dBA"
  programme         = "95 dBA"
  muted_by          = "Panel"
  wanted_over_noise = "15 dB"
}
space "Market" {
  noise             = "90 dBA"
  programme         = "80 dBA"
  wanted_over_noise = "10 dB"
}
space "Porch" { programme = "80 dBA" }
space "Chapel" {
  programme         = "80 dBA"
  wanted_over_noise = "10 dB"
}
`)
	var got []string
	for _, space := range s.Design.Spaces {
		text := "nothing"
		if r := analysis.RelyingIn(space); r != nil {
			text = r.Needed.Sum + ", " + r.Muted.Sum + whats(r.Muted.Missing)
		}
		got = append(got, space.Name+": "+text)
	}
	want := []string{
		"Nave: 95 dBA + 15 dB = 110 dBA, 70 dBA + 15 dB = 85 dBA",
		"Market: 90 dBA + 10 dB = 100 dBA, 90 dBA + 10 dB = 100 dBA",
		"Porch: nothing",
		`Chapel: 80 dBA + 10 dB = 90 dBA, noise of space "Chapel"`,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if m := s.MuteLinks()[0]; len(m.Relying) != 1 || m.Relying[0].Space.Name != "Nave" {
		t.Errorf("%d spaces rely on the link", len(m.Relying))
	}
}
