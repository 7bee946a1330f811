package textout

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

var update = flag.Bool("update", false, "write what the tests get into testdata")

func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", name+".txt")
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Errorf("%s (-want +got; go test -update writes it):\n%s", path, diff)
	}
}

func pierDesign(t testing.TB) *schema.Design {
	t.Helper()
	return read(t, "pier.pa.hcl", map[string]string{"pier.pa.hcl": pier})
}

func TestPages(t *testing.T) {
	t.Parallel()
	deck, house, _ := strings.Cut(pier, `line "Café"`)
	tests := []struct {
		name    string
		result  *linter.Result
		options Options
	}{
		{"nothing-found", resultOf(judge(pierDesign(t), passing("cable-loss"), passing("zone-load"), spareCheck())), Options{}},
		{"nothing-asked", resultOf(judge(pierDesign(t))), Options{}},
		{"one", resultOf(judge(pierDesign(t), loadCheck())), Options{}},
		{"many", resultOf(judge(pierDesign(t), everyCheck()...)), Options{}},
		{"cautions", resultOf(judge(pierDesign(t), passing("zone-load"), cautionCheck())), Options{}},
		{"long-lists", resultOf(judge(pierDesign(t), longCheck(), relayCheck(), noteCheck())), Options{}},
		{"passes", resultOf(judge(pierDesign(t), everyCheck()...)), Options{Passes: true}},
		{"colours", resultOf(judge(pierDesign(t), everyCheck()...)), Options{Passes: true, Colour: true}},
		{"narrow", resultOf(judge(pierDesign(t), everyCheck()...)), Options{Passes: true, Width: 40}},
		{"open-grouped", resultOf(judge(read(t, "long.pa.hcl", map[string]string{"long.pa.hcl": manyLines(20)}), lossCheck(), tapsOpen(), priorityCheck())), Options{}},
		{"non-ascii", resultOf(judge(read(t, "høyttalere.pa.hcl", map[string]string{"høyttalere.pa.hcl": foreign}), foreignCheck())), Options{Width: 72}},
		{"several-files", resultOf(judge(read(t, "pier", map[string]string{"pier/deck.pa.hcl": deck, "pier/house.pa.hcl": `line "Café"` + house}), everyCheck()...)), Options{}},
		{"several-designs", resultOf(
			judge(pierDesign(t), lossCheck(), tapCheck(), spareCheck()),
			judge(read(t, "clean.pa.hcl", map[string]string{"clean.pa.hcl": pier}), passing("cable-loss")),
			notADesign("broken.pa.hcl", "line \"North\" {\n  cabel = \"2 x 1.5 mm2\"\n  home_run = \"20\"\n}\n"),
			&linter.Judged{Name: "gone.pa.hcl", Err: errors.New("read gone.pa.hcl: no such file")},
		), Options{}},
		{"accepted", resultOf(agreed(t)), Options{}},
		{"known", resultOf(known(t, false)), Options{}},
		{"known-all", resultOf(known(t, true)), Options{Width: 72}},
		{"known-nothing", resultOf(unknown(t)), Options{}},
		{"accepted-narrow", resultOf(agreed(t)), Options{Width: 40}},
		{"not-understood", resultOf(notADesign("broken.pa.hcl", "line \"North\" {\n  cabel = \"2 x 1.5 mm2\"\n}\n")), Options{}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var page bytes.Buffer
			if err := Write(&page, test.result, test.options); err != nil {
				t.Fatal(err)
			}
			golden(t, test.name, page.Bytes())
		})
	}
}

// known has findings that were known before, one that has become graver unless
// all are as they were, and some that are gone.
func known(t *testing.T, all bool) *linter.Judged {
	t.Helper()
	j := judge(pierDesign(t), everyCheck()...)
	j.Before = &linter.Before{From: "the record pier.record"}
	for i := range j.Outcomes {
		o := &j.Outcomes[i]
		o.State = check.Unchanged
		if o.Verdict != check.Fail {
			continue
		}
		o.Was = o.Severity
		if !all && o.Severity == check.Error {
			o.State, o.Was = check.Changed, check.Warning
		}
	}
	if !all {
		j.Before.Gone = []linter.Gone{
			{Check: "zone-load", Identity: `zone-load: amplifier "Rack", output "100 V"`, Severity: check.Error, Now: check.Pass},
			{Check: "cable-loss", Identity: `cable-loss: line "Café"`, Severity: check.Warning, Now: check.Open},
			{Check: "tap-setting", Identity: `tap-setting: line "Roof", loudspeaker "R"`, Severity: check.Note},
		}
	}
	return j
}

// unknown is a design that a record does not know.
func unknown(t *testing.T) *linter.Judged {
	t.Helper()
	j := judge(pierDesign(t), tapCheck())
	j.Before = &linter.Before{From: "the record pier.record", Unknown: true}
	for i := range j.Outcomes {
		j.Outcomes[i].State = check.New
	}
	return j
}

// agreed has findings that were accepted, and nothing else that fails.
func agreed(t *testing.T) *linter.Judged {
	t.Helper()
	d := read(t, "pier.pa.hcl", map[string]string{"pier.pa.hcl": pier + `deviation "load-margin" {
  reason      = "The deck is closed in winter, and a larger amplifier is in the budget of next year"
  accepted_by = "Client's engineer"
  until       = "2027-06-30"
}
`})
	j := judge(d, loadCheck(), tapCheck(), lossCheck())
	for i := range j.Outcomes {
		o := &j.Outcomes[i]
		switch {
		case o.Verdict != check.Fail:
		case o.Severity == check.Error:
			o.Accepted = &check.Acceptance{Reason: d.Deviations[0].Reason.V, By: d.Deviations[0].AcceptedBy.V, Until: "2027-06-30", Place: d.Deviations[0].Header}
		default:
			o.Accepted = &check.Acceptance{Reason: "Special transformer", By: "Owner", Place: d.Deviations[0].Header}
		}
	}
	return j
}

func everyCheck() []*check.Check {
	return []*check.Check{loadCheck(), tapCheck(), lossCheck(), priorityCheck(), safetyCheck(), spareCheck()}
}

// longCheck gives a finding with more of everything than is shown.
func longCheck() *check.Check {
	c := &check.Check{ID: "zone-load"}
	c.Judge = check.EachRun(func(r *check.Report, s *analysis.Run) {
		if s.Part.Name != "Door" {
			r.NotAsked()
			return
		}
		a := r.Fail(check.Error, "Door is one too many.").Bound(check.Bound{Text: "at most 100 W", Basis: "set by the criteria at house.pa.hcl:4"})
		a.Evidence(check.Number("load", 107.5, "W"), check.Number("loudspeakers", 9, ""))
		a.Remedy(check.Proved, "Take it off the line.", check.Edit{Span: s.Part.Body}, check.Edit{Span: s.Part.Body.Part(1, 0), New: "\n    leg = \"3 m\"\n    tap = \"6 W\"\n"})
		a.Remedy(0, "Ask whoever drew it.")
		for i := range int32(6) {
			a.Assumed(fmt.Sprintf("Assumption %d", i+1))
			a.See(source.Span{File: r.System().Design.Files[0], Start: 30 * i, End: 30*i + 1}, fmt.Sprintf("place %d", i+1))
		}
	})
	return c
}

// relayCheck gives findings about a part of a kind the page does not know.
func relayCheck() *check.Check {
	c := &check.Check{ID: "override-supply"}
	c.Judge = func(r *check.Run) {
		for _, s := range []check.Severity{check.Note, check.Error} {
			r.Outcomes = append(r.Outcomes, check.Outcome{
				Check: c, Verdict: check.Fail, Severity: s, Message: "The relays get too little.",
				Subject: check.Subject{Path: []check.Step{{Kind: "mute_link", Name: "Fire panel"}}},
			})
		}
	}
	return c
}

// noteCheck gives a note at the head of each line, in front of graver findings.
func noteCheck() *check.Check {
	return &check.Check{ID: "line-monitor", Judge: check.EachLine(func(r *check.Report, _ *analysis.Line) {
		r.Fail(check.Note, "Nothing watches the line.")
	})}
}

func notADesign(name, text string) *linter.Judged {
	_, problems := schema.Read(name, files(map[string]string{name: text}), schema.Options{Workers: 1})
	return &linter.Judged{Name: name, Problems: problems}
}

func passing(id string) *check.Check {
	return &check.Check{ID: id, Judge: check.EachLine(func(r *check.Report, l *analysis.Line) {
		r.Pass(fmt.Sprintf("Line \"%s\" is well inside.", l.Part.Name))
	})}
}

func manyLines(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "line \"L %d\" {\n  loudspeaker \"A\" {\n    leg = \"4 m\"\n  }\n  attenuator \"V\" {\n    leg = \"2 m\"\n    loudspeaker \"B\" {\n      leg = \"3 m\"\n    }\n  }\n}\n", i+1)
		if i%2 == 0 {
			fmt.Fprintf(&b, "microphone \"M %d\" {\n  into = \"Rack\"\n}\n", i+1)
		}
	}
	return b.String() + "amplifier \"Rack\" {\n}\n"
}

func tapsOpen() *check.Check {
	return &check.Check{ID: "load-margin", Judge: check.EachLine(func(r *check.Report, l *analysis.Line) {
		var missing []analysis.Missing
		for _, device := range l.Part.Devices {
			for _, inside := range append([]schema.Device{device}, device.Inside()...) {
				if s, ok := inside.(*schema.Loudspeaker); ok {
					missing = append(missing, analysis.Missing{What: "tap", Part: fmt.Sprintf("loudspeaker \"%s\"", s.Name), Where: s.Header, Write: `tap = "6 W"`})
				}
			}
		}
		r.Open("The load is not known.", append(missing, analysis.Missing{What: "tap", Part: `attenuator "V"`, Where: l.Part.Header, Write: `rating = "12 W"`}, missingOn(l, "amplifier", `amplifier = "Rack"`))...)
	})}
}

const foreign = `system "Høyttaleranlegg på fergekaien, ventehall og billettsalg for passasjerer til øyene" {
  reference = "日本語-4"
}
line "Нижняя палуба" {
  loudspeaker "拡声器" {
    tap = "6 W"
  }
}
line "e\u0301tage 👩‍👩‍👧" {
  loudspeaker "H" {
    tap = "6 W"
  }
}
`

func foreignCheck() *check.Check {
	return &check.Check{ID: "tap-setting", Judge: check.EachRun(func(r *check.Report, s *analysis.Run) {
		r.Fail(check.Error, fmt.Sprintf("Loudspeaker \"%s\" on line \"%s\" takes 6 W – too much; "+strings.Repeat("これは長い文章で空白がありません", 5)+" \x1b[31mred\x07 \u202eesrever.", s.Part.Name, s.Line.Part.Name)).At(s.Part.Tap.Span)
	})}
}

func TestLines(t *testing.T) {
	t.Parallel()
	r := resultOf(
		judge(pierDesign(t), append(everyCheck(), cautionCheck())...),
		notADesign("broken.pa.hcl", "line \"North\" {\n  cabel = \"2 x 1.5 mm2\"\n}\n"),
		&linter.Judged{Name: "gone.pa.hcl", Err: errors.New("read gone.pa.hcl: no such file")},
		judge(read(t, "høyttalere.pa.hcl", map[string]string{"høyttalere.pa.hcl": foreign}), foreignCheck()),
		agreed(t),
		known(t, false),
	)
	for name, o := range map[string]Options{"lines": {}, "lines-passes": {Passes: true}} {
		var text bytes.Buffer
		if err := WriteLines(&text, r, o); err != nil {
			t.Fatal(err)
		}
		golden(t, name, text.Bytes())
	}
}
