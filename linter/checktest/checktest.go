// Package checktest runs checks over small designs in which the expected
// answers are written as comments, and proves their remedies.
//
// It is for tests only: of the checks in rules, and of checks that anyone else
// hands to the engine.
//
// A fixture is a file <kind>-<anything>.pa.hcl in a folder named after the check.
// An answer is expected on the line where its primary place begins:
//
//	amplifier "Rack" { # expect fail error: 250 W
//	line "North" {     # expect open: length
//	line "South" {     # expect pass
//
// The text after the colon must stand somewhere in the answer's message,
// arithmetic, limit or missing things; several are joined by " && ". Several
// answers on one line are joined by " # expect ". Every answer of the check
// must be expected, passes too, and every expectation must be met. The day on
// which deviations are looked at is always Today.
package checktest

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Kinds are the kinds of fixture every check has: at the limit is the last case
// that still passes, just past the nearest one that fails, open the case that
// cannot be judged.
var Kinds = []string{"broken", "kept", "at-limit", "just-past", "open"}

// Today is the day on which fixtures are judged.
func Today() quantity.Date { return quantity.Date{Year: 2026, Month: 11, Day: 25} }

// Fixtures gives the fixtures of a check below a folder, and fails the test
// when a kind is absent.
func Fixtures(t *testing.T, folder string, c *check.Check) []string {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(folder, c.ID, "*"+schema.Ending))
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range Kinds {
		if kind == "open" && c.NeverOpen != "" {
			continue
		}
		if !slices.ContainsFunc(paths, func(p string) bool { return strings.HasPrefix(filepath.Base(p), kind) }) {
			t.Errorf("%s has no fixture %s-*%s in %s", c.ID, kind, schema.Ending, filepath.Join(folder, c.ID))
		}
	}
	for _, p := range paths {
		if !slices.ContainsFunc(Kinds, func(kind string) bool { return strings.HasPrefix(filepath.Base(p), kind) }) {
			t.Errorf("%s: a fixture's name begins with one of %v", p, Kinds)
		}
	}
	return paths
}

// Run judges one fixture with all checks, compares the answers of c with the
// expectations, and proves the remedies of its failures.
func Run(t *testing.T, path string, c *check.Check, all []*check.Check) {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	j := Judge(t, path, string(text), all)
	var got []check.Outcome
	for _, o := range j.Outcomes {
		if o.Check == c {
			got = append(got, o)
		}
	}
	wantKind(t, path, got)
	compare(t, path, string(text), got)
	for _, o := range got {
		proveRemedies(t, path, string(text), j, o, all)
	}
}

// wantKind demands that the file shows what its name says.
func wantKind(t *testing.T, path string, got []check.Outcome) {
	t.Helper()
	has := func(v check.Verdict) bool {
		return slices.ContainsFunc(got, func(o check.Outcome) bool { return o.Verdict == v })
	}
	base := filepath.Base(path)
	switch {
	case strings.HasPrefix(base, "broken") || strings.HasPrefix(base, "just-past"):
		if !has(check.Fail) {
			t.Errorf("%s: nothing fails", path)
		}
	case strings.HasPrefix(base, "open"):
		if !has(check.Open) {
			t.Errorf("%s: nothing is open", path)
		}
	default:
		if has(check.Fail) || has(check.Open) || !has(check.Pass) {
			t.Errorf("%s: everything is to pass", path)
		}
	}
}

// Judge reads and judges a design in memory; it has to be understood.
func Judge(t *testing.T, name, text string, all []*check.Check) *linter.Judged {
	t.Helper()
	j, problems := judge(name, text, all)
	for _, p := range problems {
		pos := p.Span.From()
		t.Errorf("%s:%d:%d: %s", name, pos.Line, pos.Column, p)
	}
	if len(problems) > 0 {
		t.FailNow()
	}
	return j
}

func judge(name, text string, all []*check.Check) (*linter.Judged, []schema.Problem) {
	design, problems := schema.Read(name, []*source.File{source.NewFile(name, []byte(text))}, schema.Options{Workers: 1})
	if len(problems) > 0 {
		return nil, problems
	}
	j := linter.Judge(design, linter.Options{Checks: all, Workers: 1, Date: Today()})
	return j, j.Problems
}

type expectation struct {
	line      int
	verdict   string
	severity  string
	fragments []string
	met       bool
}

func expectations(t *testing.T, path, text string) []expectation {
	t.Helper()
	var all []expectation
	for i, line := range strings.Split(text, "\n") {
		parts := strings.Split(line, "# expect ")
		for _, p := range parts[1:] {
			all = append(all, parseExpectation(t, path, i+1, p))
		}
	}
	return all
}

// parseExpectation reads what stands behind "expect".
func parseExpectation(t *testing.T, path string, line int, text string) expectation {
	t.Helper()
	head, tail, _ := strings.Cut(strings.TrimSpace(text), ":")
	words := strings.Fields(head)
	e := expectation{line: line}
	if len(words) == 0 || len(words) > 2 || !slices.Contains([]string{"pass", "fail", "open"}, words[0]) || (words[0] == "fail") != (len(words) == 2) {
		t.Fatalf("%s:%d: expectation %q: it reads pass, open, or fail with a severity, then a colon and texts", path, line, text)
	}
	e.verdict = words[0]
	if len(words) == 2 {
		e.severity = words[1]
	}
	for f := range strings.SplitSeq(tail, "&&") {
		if f = strings.TrimSpace(f); f != "" {
			e.fragments = append(e.fragments, f)
		}
	}
	return e
}

func compare(t *testing.T, path, text string, got []check.Outcome) {
	t.Helper()
	want := expectations(t, path, text)
	for _, o := range got {
		line := o.Primary.From().Line
		met := slices.IndexFunc(want, func(e expectation) bool { return !e.met && e.line == line && matches(e, o) })
		if met < 0 {
			t.Errorf("%s:%d: not expected: %s", path, line, Describe(o))
			continue
		}
		want[met].met = true
	}
	for _, e := range want {
		if !e.met {
			t.Errorf("%s:%d: expected but not found: %s %s %q", path, e.line, e.verdict, e.severity, e.fragments)
		}
	}
}

func matches(e expectation, o check.Outcome) bool {
	if e.verdict != o.Verdict.String() || e.severity != "" && e.severity != o.Severity.String() {
		return false
	}
	text := Describe(o)
	return !slices.ContainsFunc(e.fragments, func(f string) bool { return !strings.Contains(text, f) })
}

// Describe writes everything an outcome says on a few lines.
func Describe(o check.Outcome) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s", o.Verdict, o.Severity)
	fmt.Fprintf(&b, ": %s", o.Message)
	for _, e := range o.Evidence {
		fmt.Fprintf(&b, "\n  %s %s", e.Name, e.Value)
		if e.Sum != "" {
			fmt.Fprintf(&b, " (%s)", e.Sum)
		}
	}
	if o.Limit != nil {
		fmt.Fprintf(&b, "\n  limit %s; %s", o.Limit.Text, o.Limit.Basis)
	}
	for _, m := range o.Missing {
		fmt.Fprintf(&b, "\n  missing %s of %s: %s", m.What, m.Part, m.Write)
	}
	for _, c := range o.Cautions {
		fmt.Fprintf(&b, "\n  mind %s", c)
	}
	for _, a := range o.Assumed {
		fmt.Fprintf(&b, "\n  assumed %s", a)
	}
	for _, r := range o.Remedies {
		fmt.Fprintf(&b, "\n  remedy (%s) %s", r.Sure, r.Text)
	}
	return b.String()
}

// Apply carries out edits in a text. Edits in other files than name are
// refused.
func Apply(name, text string, edits []check.Edit) (string, error) {
	sorted := slices.Clone(edits)
	slices.SortFunc(sorted, func(a, b check.Edit) int { return int(b.Span.Start) - int(a.Span.Start) })
	for _, e := range sorted {
		if e.Span.File == nil || e.Span.File.Name != name {
			return "", fmt.Errorf("an edit is outside %s", name)
		}
		text = text[:e.Span.Start] + e.New + text[e.Span.End:]
	}
	return text, nil
}

// proveRemedies applies the edits of each remedy that has any and demands that
// the finding is gone and no other has come.
func proveRemedies(t *testing.T, path, text string, before *linter.Judged, o check.Outcome, all []*check.Check) {
	t.Helper()
	for _, r := range o.Remedies {
		if r.Sure == check.Proved && len(r.Edits) == 0 {
			t.Errorf("%s: %s: a remedy is called proved but has no edits: %s", path, o.Identity, r.Text)
		}
		if len(r.Edits) == 0 {
			continue
		}
		changed, err := Apply(path, text, r.Edits)
		if err != nil {
			t.Errorf("%s: %s: %v", path, o.Identity, err)
			continue
		}
		after, problems := judge(path, changed, all)
		if len(problems) > 0 {
			t.Errorf("%s: after %q the design is not understood: %s\n%s", path, r.Text, problems[0], changed)
			continue
		}
		old := failures(before)
		for id, message := range failures(after) {
			if id == o.Identity {
				t.Errorf("%s: %q does not clear the finding: %s", path, r.Text, message)
			} else if _, there := old[id]; !there {
				t.Errorf("%s: %q brings a new finding: %s", path, r.Text, message)
			}
		}
	}
}

func failures(j *linter.Judged) map[string]string {
	all := map[string]string{}
	for _, o := range j.Outcomes {
		if o.Verdict == check.Fail {
			all[o.Identity] = o.Message
		}
	}
	return all
}
