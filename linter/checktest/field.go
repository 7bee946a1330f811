package checktest

import (
	"os"
	"slices"
	"strings"
	"testing"

	"loudlint/linter/check"
)

// Field judges a whole design with all checks. Expectations name their check:
//
//	amplifier "Rack" { # expect load-margin fail error: 250 W
//
// Each has to be met on its line, and no check may fail otherwise with an error
// or a warning. Passes, open answers and notes need not be expected. Remedies
// of all failures are proved.
func Field(t *testing.T, path string, all []*check.Check) {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	want := fieldExpectations(t, path, string(text), all)
	j := Judge(t, path, string(text), all)
	for _, o := range j.Outcomes {
		line := o.Primary.From().Line
		met := slices.IndexFunc(want, func(e fieldExpectation) bool {
			return !e.met && e.check == o.Check.ID && e.line == line && matches(e.expectation, o)
		})
		switch {
		case met >= 0:
			want[met].met = true
		case o.Verdict == check.Fail && o.Severity > check.Note:
			t.Errorf("%s:%d: not expected: %s %s", path, line, o.Check.ID, Describe(o))
		}
		proveRemedies(t, path, string(text), j, o, all)
	}
	for _, e := range want {
		if !e.met {
			t.Errorf("%s:%d: expected but not found: %s %s %s %q", path, e.line, e.check, e.verdict, e.severity, e.fragments)
		}
	}
}

type fieldExpectation struct {
	expectation
	check string
}

func fieldExpectations(t *testing.T, path, text string, all []*check.Check) []fieldExpectation {
	t.Helper()
	var want []fieldExpectation
	for i, line := range strings.Split(text, "\n") {
		for _, p := range strings.Split(line, "# expect ")[1:] {
			id, rest, _ := strings.Cut(strings.TrimSpace(p), " ")
			if !slices.ContainsFunc(all, func(c *check.Check) bool { return c.ID == id }) {
				t.Fatalf("%s:%d: expectation %q: it begins with the name of a check", path, i+1, p)
			}
			want = append(want, fieldExpectation{expectation: parseExpectation(t, path, i+1, rest), check: id})
		}
	}
	if len(want) == 0 {
		t.Errorf("%s: nothing is expected", path)
	}
	return want
}
