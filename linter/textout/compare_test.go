package textout

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/compare"
)

// comparison is put together by hand from two issues of the pier: one of
// everything that can have changed.
func comparison(t *testing.T) *compare.Comparison {
	t.Helper()
	was := judge(read(t, "old.pa.hcl", map[string]string{"old.pa.hcl": strings.Replace(pier, `"B"`, `"A"`, 1)}), everyCheck()...)
	now := judge(pierDesign(t), append(everyCheck(), relayCheck(), passing("cable-loss"))...)
	c := &compare.Comparison{Old: was, New: now, OldName: "old.pa.hcl", NewName: "pier.pa.hcl"}
	now.Before = &linter.Before{From: c.OldName}
	for i := range now.Outcomes {
		o := &now.Outcomes[i]
		o.State = check.Unchanged
		if o.Verdict != check.Fail {
			continue
		}
		f := compare.Finding{State: compare.Unchanged, New: o}
		switch o.Check.ID {
		case "load-margin":
			o.State, f.State = check.New, compare.New
		case "tap-setting":
			o.State, o.Was, f.State = check.Changed, check.Error, compare.Changed
		case "safety-notes":
			o.Accepted, f.State = &check.Acceptance{Reason: "Told to everybody", By: "Owner"}, compare.Accepted
		default:
			o.Was = o.Severity
		}
		c.Findings = append(c.Findings, f)
	}
	var passes, opens *check.Outcome
	for i := range now.Outcomes {
		switch o := &now.Outcomes[i]; o.Verdict {
		case check.Pass:
			passes = o
		case check.Open:
			opens = o
		case check.Fail:
		}
	}
	answers := []*check.Outcome{passes, opens, nil} // what is said now where something failed
	for i := range was.Outcomes {
		if o := &was.Outcomes[i]; o.Verdict == check.Fail && len(answers) > 0 {
			c.Findings = append(c.Findings, compare.Finding{State: compare.Gone, Old: o, New: answers[0]})
			answers = answers[1:]
		}
	}
	deck, post := was.System.Lines[0], now.System.Lines[0].Runs[0]
	c.Figures = []compare.Figure{
		{Subject: check.JobSubject(now.System), Name: "loudspeakers", Before: compare.Value{Known: true, Text: "12"}, Now: compare.Value{Known: true, Text: "13"}, Difference: "+1"},
		{Subject: check.LineSubject(deck), Name: "load", Before: compare.Value{Known: true, Text: "107.5 W"}, Now: compare.Value{Known: true, Text: "127.5 W"}, Difference: "+20 W (+18.6 %)"},
		{Subject: check.LineSubject(deck), Name: "drop at the worst loudspeaker", Before: compare.Value{Known: true, Text: "4 %"}, Now: compare.Value{Text: "not known"}},
	}
	for i := range 20 {
		s := check.RunSubject(post)
		s.Path[1].Name = fmt.Sprintf("Post %d", i)
		c.Figures = append(c.Figures, compare.Figure{Subject: s, Name: "load of one", Before: compare.Value{Known: true, Text: "10 W"}, Now: compare.Value{Known: true, Text: "15 W"}, Difference: "+5 W (+50 %)"})
	}
	c.Parts = []compare.Part{
		{Change: compare.Removed, Kind: "line", Was: "Roof", Devices: 4, Old: deck.Part.Header},
		{Change: compare.Removed, Kind: "mute_link", Was: "Panel", Old: deck.Part.Header},
		{Change: compare.Renamed, Kind: "line", Was: "Foyer", Is: "Café", Stated: true, New: now.System.Lines[1].Part.Header},
		{Change: compare.Renamed, Kind: "loudspeaker", Line: "Deck", Was: "Pole", Is: "Post", Count: 8, New: post.Part.Header},
		{Change: compare.Added, Kind: "loudspeaker", Line: "Deck", Is: "Door\x1b", Count: 2, New: post.Part.Header},
		{Change: compare.Added, Kind: "space", Is: "Deck", Count: 1, New: now.Design.Spaces[0].Header},
	}
	for i := range 15 {
		c.Parts = append(c.Parts, compare.Part{Change: compare.Added, Kind: "loudspeaker", Line: "Deck", Is: fmt.Sprintf("Lamp %d", i), Count: 1, New: post.Part.Header})
	}
	return c
}

func TestComparisons(t *testing.T) {
	t.Parallel()
	same := &compare.Comparison{Old: judge(pierDesign(t), passing("zone-load")), New: judge(pierDesign(t), passing("zone-load")), OldName: "pier.pa.hcl at B", NewName: "pier.pa.hcl"}
	for _, test := range []struct {
		name    string
		c       *compare.Comparison
		options Options
	}{
		{"comparison", comparison(t), Options{}},
		{"comparison-narrow", comparison(t), Options{Width: 44}},
		{"comparison-colours", comparison(t), Options{Colour: true}},
		{"comparison-nothing", same, Options{}},
	} {
		var page bytes.Buffer
		if err := WriteComparison(&page, test.c, test.options); err != nil {
			t.Fatal(err)
		}
		golden(t, test.name, page.Bytes())
		if test.options.Width > 0 {
			for i, line := range strings.Split(page.String(), "\n") {
				if visibleWidth(line) > test.options.Width && !strings.Contains(line, ".pa.hcl") { // a place is never cut
					t.Errorf("%s:%d is wider than the page: %s", test.name, i+1, line)
				}
			}
		}
	}
	var lines bytes.Buffer
	if err := WriteComparisonLines(&lines, comparison(t)); err != nil {
		t.Fatal(err)
	}
	golden(t, "comparison-lines", lines.Bytes())
}

// TestComparisonErrors demands that what cannot be written is told.
func TestComparisonErrors(t *testing.T) {
	t.Parallel()
	full := errors.New("disk full")
	if err := WriteComparison(broken{full}, comparison(t), Options{}); !errors.Is(err, full) {
		t.Errorf("the page: %v", err)
	}
	if err := WriteComparisonLines(broken{full}, comparison(t)); !errors.Is(err, full) {
		t.Errorf("the lines: %v", err)
	}
}

type broken struct{ err error }

func (b broken) Write([]byte) (int, error) { return 0, b.err }
