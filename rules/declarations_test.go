package rules_test

import (
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"loudlint/linter/check"
	"loudlint/linter/checktest"
	"loudlint/rules"
)

var (
	idForm    = regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)
	paramForm = regexp.MustCompile(`^[a-z]+(_[a-z]+)*$`)
)

// TestDeclarations holds what every check declares to the form that help, the
// reference and SARIF rely on.
func TestDeclarations(t *testing.T) {
	t.Parallel()
	seen := map[string]bool{}
	for _, c := range rules.All() {
		for _, fault := range faultsOf(c) {
			t.Errorf("%s: %s", c.ID, fault)
		}
		if seen[c.ID] {
			t.Errorf("%s: two checks have this id", c.ID)
		}
		seen[c.ID] = true
	}
}

// faultsOf lists what is wrong with a declaration.
func faultsOf(c *check.Check) []string {
	var faults []string
	demand := func(holds bool, fault string, args ...any) {
		if !holds {
			faults = append(faults, fmt.Sprintf(fault, args...))
		}
	}
	demand(idForm.MatchString(c.ID), "the id is not of lower-case words with hyphens")
	demand(strings.HasSuffix(c.Asks, "?") && sentences(c.Asks) == 1, "Asks is not one question: %q", c.Asks)
	demand(strings.HasSuffix(c.Summary, ".") && sentences(c.Summary) == 1, "Summary is not one sentence: %q", c.Summary)
	for name, text := range map[string]string{"Why": c.Why, "How": c.How, "Blind": c.Blind, "Failing.Shows": c.Failing.Shows, "Passing.Shows": c.Passing.Shows} {
		demand(strings.HasSuffix(text, "."), "%s is no sentence: %q", name, text)
	}
	demand(c.Basis != "" && !strings.HasSuffix(c.Basis, "."), "Basis is to be a phrase without full stop, as it stands behind a limit: %q", c.Basis)
	for _, caution := range c.Cautions {
		demand(strings.HasSuffix(caution, "."), "a caution is no sentence: %q", caution)
	}
	for name, text := range map[string]string{"Asks": c.Asks, "Summary": c.Summary, "Why": c.Why, "How": c.How, "Blind": c.Blind} {
		demand(text == "" || text[:1] != strings.ToLower(text[:1]), "%s does not begin with a capital: %q", name, text)
	}
	demand(c.Severity >= check.Note && c.Severity <= check.Error, "Severity is none")
	demand(c.Judge != nil, "Judge is nil")
	names := map[string]bool{"severity": true} // the one name that is taken
	for _, p := range c.Params {
		demand(paramForm.MatchString(p.Name), "the parameter %q is not of lower-case words with underscores", p.Name)
		demand(!names[p.Name], "the name of the parameter %q is taken", p.Name)
		names[p.Name] = true
		demand(p.Doc != "" && !strings.HasSuffix(p.Doc, "."), "Doc of the parameter %q is no phrase: %q", p.Name, p.Doc)
		demand(p.Low <= p.Default && p.Default <= p.High && p.Low < p.High, "the default of the parameter %q is not between its ends: %g, %g, %g", p.Name, p.Low, p.Default, p.High)
		value, err := p.Unit.Parse(strings.Trim(strings.TrimPrefix(p.Written(p.Default), p.Name+" = "), `"`), p.Unit != check.Plain && p.Unit != check.Switch)
		demand(err == nil && near(value, p.Default), "the default of the parameter %q cannot be written into criteria: %v", p.Name, err)
	}
	return faults
}

// sentences counts ends of sentences; a stop inside a number or a name is none.
func sentences(text string) int {
	n := 0
	for i, r := range text {
		if strings.ContainsRune(".?!", r) && (i+1 == len(text) || text[i+1] == ' ') {
			n++
		}
	}
	return n
}

func near(a, b float64) bool { return max(a, b)-min(a, b) <= 1e-6*max(1, a, b) }

// TestDeclarationFaultsAreFound shows that the test above can fail.
func TestDeclarationFaultsAreFound(t *testing.T) {
	t.Parallel()
	good := *rules.All()[0]
	for name, spoil := range map[string]func(c *check.Check){
		"id":            func(c *check.Check) { c.ID = "Load_Margin" },
		"question":      func(c *check.Check) { c.Asks = "It is asked." },
		"two sentences": func(c *check.Check) { c.Summary = "One. Two." },
		"why":           func(c *check.Check) { c.Why = "" },
		"basis":         func(c *check.Check) { c.Basis = "" },
		"severity":      func(c *check.Check) { c.Severity = 0 },
		"span":          func(c *check.Check) { c.Params = []check.Param{{Name: "p", Doc: "d", Default: 5, High: 4}} },
		"taken":         func(c *check.Check) { c.Params = []check.Param{{Name: "severity", Doc: "d", Default: 1, High: 4}} },
		"caution":       func(c *check.Check) { c.Cautions = []string{"mind the gap"} },
	} {
		c := good
		spoil(&c)
		if len(faultsOf(&c)) == 0 {
			t.Errorf("%s: no fault is found", name)
		}
	}
}

// TestExamples judges the designs in the declarations: the failing one has a
// finding of its check, the passing one is passed by it and has no finding.
func TestExamples(t *testing.T) {
	t.Parallel()
	all := rules.All()
	for _, c := range all {
		t.Run(c.ID, func(t *testing.T) {
			t.Parallel()
			if !has(answersOf(t, c, all, c.Failing), check.Fail) {
				t.Error("the failing example does not fail")
			}
			passing := answersOf(t, c, all, c.Passing)
			if has(passing, check.Fail) || has(passing, check.Open) || !has(passing, check.Pass) {
				t.Error("the passing example does not pass")
			}
		})
	}
}

func answersOf(t *testing.T, c *check.Check, all []*check.Check, e check.Example) []check.Outcome {
	t.Helper()
	text := e.Design
	if c.Off {
		text += c.Criteria()
	}
	j := checktest.Judge(t, "example.pa.hcl", text, all)
	return slices.DeleteFunc(j.Outcomes, func(o check.Outcome) bool { return o.Check != c })
}

func has(answers []check.Outcome, v check.Verdict) bool {
	return slices.ContainsFunc(answers, func(o check.Outcome) bool { return o.Verdict == v })
}

// TestEachCheckHasAFileAndFixtures demands that what is declared, its file and
// its fixtures go by one name, and that no fixtures are left of a check that is
// gone.
func TestEachCheckHasAFileAndFixtures(t *testing.T) {
	t.Parallel()
	ids := map[string]bool{}
	for _, c := range rules.All() {
		ids[c.ID] = true
		if _, err := os.Stat(strings.ReplaceAll(c.ID, "-", "_") + ".go"); err != nil {
			t.Errorf("%s: %v", c.ID, err)
		}
	}
	folders, err := os.ReadDir("testdata")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range folders {
		if !ids[f.Name()] {
			t.Errorf("testdata/%s: there is no such check", f.Name())
		}
	}
}
