package sarif_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The golden files are indented for their readers; what is written has a result
// on each line.
func TestGolden(t *testing.T) {
	t.Parallel()
	for name, r := range goldens(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tool := program
			if !r.Understood() {
				two := 2
				tool.ExitCode = &two
			}
			var got bytes.Buffer
			if err := json.Indent(&got, write(t, r, tool), "", "  "); err != nil {
				t.Fatal(err)
			}
			path := filepath.Join("testdata", name+".sarif.json")
			if *update {
				if err := os.WriteFile(path, got.Bytes(), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), got.String()); diff != "" {
				t.Errorf("differs from %s; go test ./linter/sarif -update writes it anew (-want +got):\n%s", path, diff)
			}
		})
	}
}

func goldens(t *testing.T) map[string]*linter.Result {
	t.Helper()
	return map[string]*linter.Result{
		"nothing":        nothing(t),
		"one":            result(judged(one(t, "hall.pa.hcl"))),
		"many":           many(t),
		"open":           open(t),
		"non-ascii":      nonASCII(t),
		"files":          severalFiles(t),
		"designs":        result(judged(one(t, "a/hall.pa.hcl")), nothing(t).Designs[0]),
		"accepted":       accepted(t),
		"known":          known(t),
		"not-understood": notUnderstood(),
	}
}

// nothing is a design about which nothing was found.
func nothing(t *testing.T) *linter.Result {
	t.Helper()
	r := result(judged(read(t, "clean.pa.hcl", map[string]string{"clean.pa.hcl": design})))
	r.Checks = []*check.Check{loadCheck()}
	return r
}

// one is a finding with everything a finding can have.
func one(t testing.TB, name string) (*schema.Design, check.Outcome) {
	t.Helper()
	d := read(t, name, map[string]string{name: design})
	rated, tap, many := in(t, d, `"240 W"`), in(t, d, `"10 W"`), in(t, d, "25")
	o := outcome(loadCheck(), check.Fail, check.Error, subject("amplifier", "Rack"), rated, "The loudspeakers ask for 250 W of 240 W.")
	o.Related = []schema.Place{{Span: tap, Note: "tap"}, {Span: many, Note: "so many"}}
	o.Evidence = []check.Evidence{
		{Name: "load", Value: "250 W", Number: 250, Unit: "W", Sum: "25 × 10 W = 250 W", From: o.Related},
		{Name: "share", Value: "104 %", Number: 100 * 250.0 / 240, Unit: "%"},
	}
	o.Limit = &check.Bound{Text: "at most 216 W (90 % of 240 W)", Number: 216, Unit: "W", AtMost: true, Basis: "common practice, no published source"}
	o.Assumed = []string{"all outputs are driven at once"}
	o.Remedies = []check.Remedy{
		{Text: "Set the tap to 6 W.", Sure: check.Proved, Edits: []check.Edit{{Span: tap, New: `"6 W"`}}},
		{Text: "Fit an amplifier rated 300 W or more.", Sure: check.Computed},
		{Text: "Leave loudspeakers out and say so.", Sure: check.Advice, Edits: []check.Edit{
			{Span: many, New: "20"},
			{Span: source.Span{File: many.File, Start: rated.End, End: rated.End}, New: " # enough for 20"},
		}},
	}
	return d, o
}

// accepted has findings that were accepted, for a while and for good, and one that
// was not.
func accepted(t *testing.T) *linter.Result {
	t.Helper()
	const agreed = `deviation "test-load" {
  amplifier   = "Rack"
  reason      = "Replaced in phase {2}"
  accepted_by = "Client's engineer"
  until       = "2027-06-30"
}
`
	const house = `deviation "test-load" {
  line        = "Hall"
  reason      = "House rule"
  accepted_by = "Firm"
}
`
	d := read(t, "hall", map[string]string{
		"hall/hall.pa.hcl":   design,
		"hall/agreed.pa.hcl": agreed + house,
	})
	rack, hall := in(t, d, `amplifier "Rack"`), in(t, d, `line "Hall"`)
	load := loadCheck()
	one := outcome(load, check.Fail, check.Error, subject("amplifier", "Rack"), rack, "Too much.")
	one.Accepted = &check.Acceptance{Reason: "Replaced in phase {2}", By: "Client's engineer", Until: "2027-06-30", Place: d.Deviations[0].Header}
	two := outcome(load, check.Fail, check.Note, subject("line", "Hall"), hall, "Nearly too much.")
	two.Accepted = &check.Acceptance{Reason: "House rule", By: "Firm", Place: d.Deviations[1].Header}
	return result(judged(d, one, two,
		outcome(load, check.Fail, check.Warning, subject("amplifier", "Rack", "channel", "A"), rack, "Close to too much."),
		outcome(lengthCheck(), check.Pass, 0, subject("line", "Hall"), hall, "The line is short enough."),
	))
}

// known has a finding of each state, and one that is gone with its part.
func known(t *testing.T) *linter.Result {
	t.Helper()
	r := accepted(t)
	j := r.Designs[0]
	for i, s := range []check.State{check.New, check.Unchanged, check.Changed, check.Unchanged} {
		j.Outcomes[i].State = s
	}
	j.Before = &linter.Before{From: "the record hall.record", Gone: []linter.Gone{
		{Check: "test-length", Identity: `test-length: line "Hall"`, Severity: check.Note, Now: check.Pass},
		{Check: "test-load", Identity: `test-load: line "Roof {1}", loudspeaker "R"`, Severity: check.Error},
		{Check: "test-load", Identity: `test-load: line "Attic"`, Severity: check.Note, Then: &check.Outcome{
			Check: r.Checks[0], Verdict: check.Fail, Severity: check.Note, Subject: subject("line", "Attic"), Message: "The attic was nearly too much.",
		}},
	}}
	return r
}

// many has every kind and level, and criteria that turn checks off and on.
func many(t *testing.T) *linter.Result {
	t.Helper()
	d := read(t, "many.pa.hcl", map[string]string{"many.pa.hcl": design})
	load, length := loadCheck(), lengthCheck()
	silent := &check.Check{ID: "test-silent", Asks: "Is it quiet?", Summary: "It is not quiet.", Why: "Because.", How: "Listens.", Basis: "invented", Severity: check.Note}
	rack, hall := in(t, d, `amplifier "Rack"`), in(t, d, `line "Hall"`)
	j := judged(d,
		outcome(load, check.Fail, check.Error, subject("amplifier", "Rack"), rack, "Too much."),
		outcome(load, check.Fail, check.Note, subject("amplifier", "Rack", "channel", "A"), rack, "Close to too much."),
		outcome(length, check.Pass, 0, subject("line", "Hall"), hall, "The line is short enough."),
		outcome(load, check.Fail, check.Warning, subject("line", "Hall", "loudspeaker", "H"), in(t, d, `loudspeaker "H"`), "Nearly too much."),
		outcome(load, check.Fail, check.Warning, check.Subject{}, source.Span{}, "The job as a whole is too much."),
	)
	origin := in(t, d, "25")
	j.Outcomes[0].SeverityOrigin = origin
	param := &load.Params[0]
	j.InForce[0].Severity, j.InForce[0].Origin = check.Error, origin
	j.InForce[0].Limits = j.InForce[0].Limits.With(check.Limit{Param: param, Value: param.Default / 2, Origin: origin})
	j.InForce = append(j.InForce, linter.InForce{Check: silent, Off: true})
	j.Off = []*check.Check{silent}
	r := result(j)
	r.Checks = append(r.Checks, silent)
	return r
}

func open(t *testing.T) *linter.Result {
	t.Helper()
	d := read(t, "open.pa.hcl", map[string]string{"open.pa.hcl": design})
	hall := in(t, d, `line "Hall"`)
	o := outcome(lengthCheck(), check.Open, 0, subject("line", "Hall"), hall, "What the cable loses cannot be told.")
	for _, what := range []string{"cable", "length", "first leg", "last leg", "way"} {
		o.Missing = append(o.Missing, analysis.Missing{What: what, Part: `line "Hall"`, Where: hall, Write: what + ` = "…"`})
	}
	return result(judged(d, o))
}

// nonASCII has names with umlauts, in both Unicode forms, and characters beyond
// the basic plane in front of the places that are shown. Names look like
// placeholders, links and tags.
func nonASCII(t *testing.T) *linter.Result {
	t.Helper()
	const name = "Öffentlich/Gemeindesäle 🎭/Bühne [1](2) 100%.pa.hcl"
	d := read(t, name, map[string]string{name: "\ufeff" + `/* 🎤🎶 é e` + "\u0301" + ` */ amplifier "Bühne {0} [x](1) <b>" { rated_power = "240 W" } # 🎵` + "\r\n" +
		`line "Rang 🎭" {` + "\r\n" + `  amplifier = "Bühne {0} [x](1) <b>"` + "\r\n" + `  output = "100 V"` + "\r\n" + `}` + "\r\n"})
	o := outcome(loadCheck(), check.Fail, check.Error, subject("amplifier", `Bühne {0} [x](1) <b>`), in(t, d, `"240 W"`),
		`Amplifier "Bühne {0} [x](1) <b>" is asked for 250 W of 240 W.`)
	o.Related = []schema.Place{{Span: in(t, d, `"Rang 🎭"`), Note: `line "Rang 🎭", 2 Ω`}}
	o.Remedies = []check.Remedy{{Text: "Take the rating of the next larger one ≥ 300 W.", Sure: check.Computed, Edits: []check.Edit{{Span: o.Primary, New: `"300 W" /* 🎤 */`}}}}
	return result(judged(d, o))
}

// severalFiles is a folder with two files, a used one and a part of the program.
func severalFiles(t *testing.T) *linter.Result {
	t.Helper()
	d := read(t, "halls", map[string]string{
		"halls/amplifiers.pa.hcl":  "use {\n  file = \"used-models.pa.hcl\"\n}\namplifier \"Rack\" {\n  rated_power = \"240 W\"\n}\n",
		"halls/lines.pa.hcl":       "line \"Hall\" {\n  amplifier = \"Rack\"\n  output    = \"100 V\"\n}\n",
		"halls/used-models.pa.hcl": "loudspeaker_model \"house/six\" {\n  rated_power = \"6 W\"\n}\n",
	})
	builtIn := source.NewFile("loudlint:typical/invented.pa.hcl", []byte("loudspeaker_model \"typical/invented\" {\n}\n"))
	o := outcome(loadCheck(), check.Fail, check.Warning, subject("line", "Hall"), in(t, d, `line "Hall"`), "Too much.")
	o.Related = []schema.Place{
		{Span: in(t, d, `"240 W"`), Note: "rating"},
		{Span: in(t, d, `"6 W"`), Note: "tap"},
		{Span: source.Span{File: builtIn, Start: 18, End: 36}, Note: "a typical figure"},
		{Note: "a note without a place"},
	}
	o.Limit = &check.Bound{Text: "at least 10 W", Number: 10, Unit: "W", Basis: "set by the criteria", Origin: in(t, d, `"used-models.pa.hcl"`)}
	o.Remedies = []check.Remedy{{Text: "Change both files.", Sure: check.Proved, Edits: []check.Edit{
		{Span: in(t, d, `"240 W"`), New: `"300 W"`},
		{Span: in(t, d, `"100 V"`), New: `"70 V"`},
		{Span: source.Span{File: o.Primary.File, Start: 0, End: 0}, New: "# changed\n"},
	}}}
	return result(judged(d, o))
}

// notUnderstood has a design with problems and one whose files cannot be read.
func notUnderstood() *linter.Result {
	f := source.NewFile("bad/hall.pa.hcl", []byte("amplifer \"Räck\" {\n}\n"))
	word := source.Span{File: f, Start: 0, End: 8}
	return &linter.Result{Checks: []*check.Check{loadCheck()}, Designs: []*linter.Judged{
		{Name: "bad", Problems: []schema.Problem{
			{Span: word, Found: `There is no block "amplifer".`, Expected: "A design has {amplifiers} and lines.", Nearest: "`amplifier`"},
			{Span: word.Part(0, 3), Found: "Something else is wrong.", Related: []schema.Place{{Span: word, Note: "here too"}}},
		}},
		{Name: "absent.pa.hcl", Err: errors.New("there is no file or folder absent.pa.hcl")},
	}}
}

// A result takes a line, so that comparing two logs shows the outcomes that
// changed.
func TestOneResultALine(t *testing.T) {
	t.Parallel()
	r := many(t)
	lines := bytes.Split(write(t, r, program), []byte("\n"))
	found := 0
	for _, l := range lines {
		var one struct{ RuleID string }
		if json.Unmarshal(bytes.TrimSuffix(l, []byte(",")), &one) == nil && one.RuleID != "" {
			found++
		}
	}
	if want := len(r.Designs[0].Outcomes); found != want {
		t.Errorf("%d lines are a result, want %d", found, want)
	}
}
