package resulttest

import (
	"errors"
	"strings"
	"testing"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Design is the text of the design that Sample judges.
const Design = `system "Hall <Öl> & Söhne" {
  reference = "T-1"
  revision  = "B"
}
amplifier "Rack" {
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
deviation "test-load" {
  line        = "Hall"
  reason      = "Phase 2 replaces it"
  accepted_by = "Client's engineer"
  until       = "2027-06-30"
}
`

// Sample is a result with an outcome of each kind, each with all it can hold, and
// with designs that could not be judged.
func Sample(t testing.TB) *linter.Result {
	t.Helper()
	load, idle := checks()
	d := read(t, "jobs/hall.pa.hcl", Design)
	j := &linter.Judged{Name: d.Name, Design: d, System: analysis.Analyse(d, 1), Off: []*check.Check{idle}}
	j.InForce = []linter.InForce{
		{Check: load, Limits: check.DefaultLimits(load).With(check.Limit{Param: &load.Params[0], Value: 20, Origin: In(t, d, `"B"`)}), Severity: check.Error, Origin: In(t, d, `"T-1"`)},
		{Check: idle, Limits: check.DefaultLimits(idle), Off: true},
	}
	j.Before = &linter.Before{From: "the record hall.record", Gone: []linter.Gone{
		{Check: "test-load", Identity: `test-load: line "Bar"`, Severity: check.Warning},
		{Check: "test-load", Identity: `test-load: job`, Severity: check.Error, Now: check.Pass},
	}}
	j.Outcomes = []check.Outcome{found(t, d, load), open(t, d, load), passed(t, d, load), accepted(t, d, load), known(t, d, load), slight(t, d, load)}
	for i, id := range linter.Identities(j.Outcomes, nil) {
		j.Outcomes[i].Identity = id
	}
	clean := read(t, "clean.pa.hcl", "system \"Clean\" {}\n")
	return &linter.Result{Checks: []*check.Check{load, idle}, Designs: []*linter.Judged{
		j,
		{Name: clean.Name, Design: clean, System: analysis.Analyse(clean, 1)},
		{Name: "gone.pa.hcl", Err: errors.New("read gone.pa.hcl: no such file")},
		notUnderstood(),
	}}
}

func checks() (load, idle *check.Check) {
	load = &check.Check{
		ID: "test-load", Asks: "Is the load below the rating?", Summary: "The load is above the rating.", Severity: check.Error,
		Params: []check.Param{{Name: "margin", Doc: "least margin", Unit: check.Percent, Default: 10, Low: 0, High: 50}, {Name: "strict", Doc: "no rounding", Unit: check.Switch}},
	}
	return load, &check.Check{ID: "test-idle", Asks: "Is it idle?", Summary: "It is idle.", Severity: check.Note, Off: true}
}

func found(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	rated, tap := In(t, d, `"240 W"`), In(t, d, `"10 W"`)
	return check.Outcome{
		Check: c, Verdict: check.Fail, Severity: check.Error, SeverityOrigin: In(t, d, `"T-1"`), State: check.Changed, Was: check.Warning,
		Subject: check.Subject{Path: []check.Step{{Kind: "amplifier", Name: "Rack"}}}, Key: "main",
		Message: "The loudspeakers take 250 W of 240 W.", Primary: rated,
		Related: []schema.Place{{Span: tap, Note: "25 × 10 W"}},
		Evidence: []check.Evidence{
			{Name: "load", Value: "250 W", Number: 250, Unit: "W", Sum: "25 × 10 W = 250 W", From: []schema.Place{{Span: tap, Note: "tap"}}},
			{Name: "share", Value: "104 %", Number: 100 * 250.0 / 240, Unit: "%"},
		},
		Limit:   &check.Bound{Text: "at most 192 W (20 % below 240 W)", Number: 192, Unit: "W", AtMost: true, Basis: "common practice, no published source", Origin: In(t, d, `"B"`)},
		Assumed: []string{"all outputs are driven at once"},
		Remedies: []check.Remedy{
			{Text: "Set the tap to 6 W.", Sure: check.Proved, Edits: []check.Edit{{Span: tap, New: `"6 W"`}}},
			{Text: "Fit an amplifier rated 320 W or more.", Sure: check.Computed},
		},
		Cautions: []string{"Warn people before tests at full level."},
	}
}

func open(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	return check.Outcome{
		Check: c, Verdict: check.Open, State: check.Unchanged,
		Subject: check.Subject{Path: []check.Step{{Kind: "line", Name: "Hall"}, {Kind: "loudspeaker", Name: "H"}}},
		Message: "Whether it holds cannot be told.", Primary: In(t, d, `loudspeaker "H"`),
		Missing: []analysis.Missing{{What: "cable", Part: `line "Hall"`, Write: `cable = "2 x 1.5 mm2"`, Where: In(t, d, `line "Hall"`)}},
	}
}

func passed(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	return check.Outcome{
		Check: c, Verdict: check.Pass, State: check.Unchanged, Message: "It holds.", Primary: In(t, d, `system`),
		Evidence: []check.Evidence{{Name: "least impedance", Value: "41.67 ohm", Number: 41.66666666666667, Unit: "ohm"}},
		Limit:    &check.Bound{Text: "at least 40 ohm", Number: 40, Unit: "ohm"},
	}
}

func accepted(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	return check.Outcome{
		Check: c, Verdict: check.Fail, Severity: check.Warning, State: check.New, Subject: check.Subject{Path: []check.Step{{Kind: "line", Name: "Hall"}}},
		Message: "Nearly too much.", Primary: In(t, d, `line "Hall"`),
		Accepted: &check.Acceptance{Reason: "Phase 2 replaces it", By: "Client's engineer", Until: "2027-06-30", Place: d.Deviations[0].Header},
	}
}

func known(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	return check.Outcome{
		Check: c, Verdict: check.Fail, Severity: check.Warning, State: check.Unchanged, Was: check.Warning, Key: "spare",
		Message: "Little is spare.", Primary: In(t, d, `amplifier "Rack"`), Subject: check.Subject{Path: []check.Step{{Kind: "amplifier", Name: "Rack"}}},
	}
}

func slight(t testing.TB, d *schema.Design, c *check.Check) check.Outcome {
	t.Helper()
	return check.Outcome{
		Check: c, Verdict: check.Fail, Severity: check.Note, State: check.New, Key: "name",
		Message: "It is called <Öl>\x1b[31m & Söhne.", Primary: In(t, d, `"Hall <`),
	}
}

func notUnderstood() *linter.Judged {
	f := source.NewFile("broken.pa.hcl", []byte("amplifer \"Rack\" {}\n"))
	return &linter.Judged{Name: f.Name, Problems: []schema.Problem{{
		Span: source.Span{File: f, End: 8}, Found: `A design has no block "amplifer".`, Expected: "Blocks are listed in the reference.", Nearest: "amplifier",
		Related: []schema.Place{{Span: source.Span{File: f, Start: 9, End: 15}, Note: "its name"}},
	}}}
}

func read(t testing.TB, name, text string) *schema.Design {
	t.Helper()
	d, problems := schema.Read(name, []*source.File{source.NewFile(name, []byte(text))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatalf("%s: %s", name, problems[0].String())
	}
	return d
}

// In finds a text in a design.
func In(t testing.TB, d *schema.Design, text string) source.Span {
	t.Helper()
	for _, f := range d.Files {
		if at := strings.Index(string(f.Text), text); at >= 0 {
			return source.Span{File: f, Start: int32(at), End: int32(at + len(text))}
		}
	}
	t.Fatalf("%s is not in %s", text, d.Name)
	return source.Span{}
}
