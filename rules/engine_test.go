package rules_test

import (
	"bytes"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/sarif"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// The engine is tested here, with the checks it is made for.

const rack = `system "Hall" { duty = "announcements" }
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
`

// judged judges a design whose used files are given by name.
func judged(t *testing.T, text string, used map[string]string) *linter.Judged {
	t.Helper()
	open := func(_ *source.File, name string) (*source.File, error) {
		return source.NewFile(name, []byte(used[name])), nil
	}
	design, problems := schema.Read("hall", []*source.File{source.NewFile("hall.pa.hcl", []byte(text))}, schema.Options{Open: open})
	if len(problems) > 0 {
		t.Fatal(problems[0])
	}
	return linter.Judge(design, linter.Options{Checks: rules.All()})
}

func loadMarginOf(j *linter.Judged) *check.Outcome {
	i := slices.IndexFunc(j.Outcomes, func(o check.Outcome) bool { return o.Check == rules.LoadMargin })
	if i < 0 {
		return nil
	}
	return &j.Outcomes[i]
}

func TestCriteria(t *testing.T) {
	t.Parallel()
	const firm = `criteria { 
  limit "load-margin" { warning_margin = "30 %" }
}
`
	for _, test := range []struct {
		name, text string
		want       check.Severity // 0: passes
		origin     string         // file of the limit
	}{
		{"default", rack, 0, ""},
		{"the job's", rack + "criteria {\n  limit \"load-margin\" { warning_margin = \"20 %\" }\n}\n", check.Warning, "hall.pa.hcl"},
		{"the firm's", rack + "use { file = \"firm.pa.hcl\" }\n", check.Warning, "firm.pa.hcl"},
		{"the job's over the firm's", rack + "use { file = \"firm.pa.hcl\" }\ncriteria {\n  limit \"load-margin\" { warning_margin = \"5 %\" }\n}\n", 0, ""},
		{"severity", rack + "criteria {\n  limit \"load-margin\" {\n    warning_margin = \"20 %\"\n    severity       = \"error\"\n  }\n}\n", check.Error, "hall.pa.hcl"},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			o := loadMarginOf(judged(t, test.text, map[string]string{"firm.pa.hcl": firm}))
			if o == nil || o.Severity != test.want {
				t.Fatalf("load-margin answers %+v, not with severity %s", o, test.want)
			}
			if test.origin != "" && o.Limit.Origin.File.Name != test.origin {
				t.Errorf("the limit comes from %s, not %s", o.Limit.Origin.File.Name, test.origin)
			}
		})
	}
	j := judged(t, rack+"criteria {\n  limit \"load-margin\" { severity = \"off\" }\n}\n", nil)
	if loadMarginOf(j) != nil || !slices.Contains(j.Off, rules.LoadMargin) {
		t.Error("load-margin answers although it is off, or is not named as off")
	}
}

func TestCriteriaThatAreNotUnderstood(t *testing.T) {
	t.Parallel()
	for limit, want := range map[string]string{
		`limit "load-margn" { warning_margin = "5 %" }`:   `There is no check "load-margn". ` + "`loudlint checks` lists them." + ` Did you mean "load-margin"?`,
		`limit "load-margin" { warning_margim = "5 %" }`:  `Did you mean warning_margin?`,
		`limit "load-margin" { warning_margin = "5 W" }`:  `warning_margin of load-margin`,
		`limit "load-margin" { warning_margin = "95 %" }`: `It lies between 0 % and 90 %.`,
		`limit "load-margin" { severity = "eror" }`:       `Did you mean "error"?`,
	} {
		j := judged(t, rack+"criteria {\n  "+limit+"\n}\n", nil)
		if len(j.Problems) != 1 || !strings.Contains(j.Problems[0].String(), want) {
			t.Errorf("%s: %v, not %q", limit, j.Problems, want)
		}
	}
}

// TestDeviations holds what the engine does with deviations; what they are worth
// is said by fixtures of deviation-stands.
func TestDeviations(t *testing.T) {
	t.Parallel()
	const over = "\ncriteria {\n  limit \"load-margin\" {\n    warning_margin = \"30 %\"\n    severity       = \"error\"\n  }\n}\n"
	const agreed = "deviation \"load-margin\" {\n  amplifier   = \"Rack\"\n  reason      = \"First\"\n  accepted_by = \"Engineer\"\n  until       = \"2026-11-24\"\n}\n"
	const again = "deviation \"load-margin\" {\n  amplifier   = \"Rack\"\n  reason      = \"Second\"\n  accepted_by = \"Engineer\"\n}\n"
	judge := func(text string, options linter.Options) *linter.Judged {
		design, problems := schema.Read("hall", []*source.File{source.NewFile("hall.pa.hcl", []byte(text))}, schema.Options{})
		if len(problems) > 0 {
			t.Fatal(problems[0])
		}
		options.Checks = rules.All()
		return linter.Judge(design, options)
	}
	load := []string{rules.LoadMargin.ID, rules.DeviationStands.ID}
	day := func(d int) quantity.Date { return quantity.Date{Year: 2026, Month: 11, Day: d} }
	for _, test := range []struct {
		name, text string
		options    linter.Options
		reason     string // of what is accepted; "" for nothing
		gravest    check.Severity
	}{
		{"without a day nothing expires", rack + over + agreed, linter.Options{Only: load}, "First", 0},
		{"on its last day", rack + over + agreed, linter.Options{Only: load, Date: day(24)}, "First", 0},
		{"after it", rack + over + agreed, linter.Options{Only: load, Date: day(25)}, "", check.Error},
		{"the first of two", rack + over + agreed + again, linter.Options{Only: load, Date: day(24)}, "First", 0},
		{"the second where the first is over", rack + over + agreed + again, linter.Options{Only: load, Date: day(25)}, "Second", check.Warning},
		{"though nobody asks about deviations", rack + over + agreed, linter.Options{Only: load[:1], Date: day(24)}, "First", 0},
	} {
		j := judge(test.text, test.options)
		o := loadMarginOf(j)
		switch {
		case o == nil || o.Verdict != check.Fail || o.Severity != check.Error:
			t.Errorf("%s: load-margin answers %+v", test.name, o)
		case (o.Accepted != nil) != (test.reason != "") || o.Accepted != nil && o.Accepted.Reason != test.reason:
			t.Errorf("%s: accepted by %+v, want %q", test.name, o.Accepted, test.reason)
		}
		result := linter.Result{Designs: []*linter.Judged{j}}
		if got := result.Gravest(); got != test.gravest {
			t.Errorf("%s: the gravest is %s, want %s", test.name, got, test.gravest)
		}
	}
	// Where the check is not asked, or is off, a deviation from it is let be.
	for name, text := range map[string]string{"off": rack + "criteria {\n  limit \"load-margin\" { severity = \"off\" }\n}\n" + again, "not asked": rack + again} {
		only := load
		if name == "not asked" {
			only = load[1:]
		}
		if j := judge(text, linter.Options{Only: only}); len(j.Outcomes) != 0 {
			t.Errorf("%s: %+v", name, j.Outcomes)
		}
	}
	// A criterion is departed from like any check.
	j := judge(rack+"criterion \"Small\" {\n  each   = \"line\"\n  expect = load_w <= 10\n}\n"+strings.Replace(again, `load-margin" {`+"\n  amplifier   = \"Rack\"", `criterion:small" {`+"\n  line        = \"Hall\"", 1), linter.Options{Only: []string{"criterion:small"}})
	if len(j.Outcomes) != 1 || j.Outcomes[0].Accepted == nil {
		t.Errorf("the criterion answers %+v", j.Outcomes)
	}
}

// TestSameBytes demands the same pages and SARIF for any number of workers.
func TestSameBytes(t *testing.T) {
	t.Parallel()
	var first string
	for _, workers := range []int{1, 2, 3, 8, 0} {
		r := linter.Check([]string{"../examples/ferry_terminal.pa.hcl", "../examples/hotel.pa.hcl"}, linter.Options{Checks: rules.All(), Workers: workers})
		var b bytes.Buffer
		if err := textout.Write(&b, r, textout.Options{Passes: true}); err != nil {
			t.Fatal(err)
		}
		if err := sarif.Write(&b, r, sarif.Tool{Name: "loudlint", Version: "test"}); err != nil {
			t.Fatal(err)
		}
		if first == "" {
			first = b.String()
		} else if b.String() != first {
			t.Errorf("with %d workers the output differs from that with one", workers)
		}
	}
}

// TestIdentitySurvives demands that the outcomes of a design keep their names
// when it is reformatted, moved down, and its numbers change.
func TestIdentitySurvives(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("../examples/ferry_terminal.pa.hcl")
	if err != nil {
		t.Fatal(err)
	}
	catalogue, err := os.ReadFile("../examples/house_catalogue.pa.hcl")
	if err != nil {
		t.Fatal(err)
	}
	used := map[string]string{"house_catalogue.pa.hcl": string(catalogue)}
	names := func(text string) []string {
		var all []string
		for _, o := range judged(t, text, used).Outcomes {
			all = append(all, fmt.Sprint(o.Verdict, " ", o.Identity))
		}
		slices.Sort(all)
		return all
	}
	before := names(string(text))
	for name, changed := range map[string]string{
		"moved down": strings.Repeat("# more\n", 40) + string(text),
		"spread out": strings.ReplaceAll(string(text), "\n", "\n\n"),
		"renumbered": strings.Replace(string(text), "quantity = 18", "quantity = 19", 1),
		"line ends":  strings.ReplaceAll(string(text), "\n", "\r\n"),
	} {
		if diff := cmp.Diff(before, names(changed)); diff != "" {
			t.Errorf("%s: (-before +after)\n%s", name, diff)
		}
	}
}
