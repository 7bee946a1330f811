package main

import (
	"bytes"
	"math"
	"testing"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/criterion"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/source"
)

const setLimits = `criteria {
  limit "load-margin" {
    warning_margin = "12.3456789 %"
    severity       = "note"
  }
  limit "spare-capacity" { wanted = "20 %" }
  limit "microphone-lead" { severity = "warning" }
}
criteria {
  limit "microphone-lead" { severity = "off" }
  limit "override-supply" { severity = "error" }
}
`

// TestSavedCriteriaAreInForce reads back what the command writes and demands that
// the same limits are in force: the defaults, and some that are set.
func TestSavedCriteriaAreInForce(t *testing.T) {
	t.Parallel()
	for name, text := range map[string]string{"defaults": "", "set": setLimits} {
		options := linter.Options{Checks: rules.All()}
		design, problems := schema.Read("job", []*source.File{source.NewFile("job.pa.hcl", []byte(text))}, schema.Options{})
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		want, problems := linter.LimitsInForce(design, options)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		var saved bytes.Buffer
		if err := textout.WriteCriteria(&saved, []textout.CriteriaSheet{{InForce: want}}); err != nil {
			t.Fatal(err)
		}
		options.Specification, problems = schema.ReadCriteria(source.NewFile("saved.pa.hcl", saved.Bytes()), schema.Options{})
		if len(problems) > 0 {
			t.Fatalf("%v in\n%s", problems, &saved)
		}
		got, problems := linter.LimitsInForce(&schema.Design{}, options)
		if len(problems) > 0 || len(got) != len(want) {
			t.Fatalf("%v, %d checks, not %d", problems, len(got), len(want))
		}
		for i := range want {
			w, g := want[i], got[i]
			if g.Check != w.Check || g.Severity != w.Severity || g.Off != w.Off {
				t.Errorf("%s: %s: severity %s, off %v; not %s, %v", name, w.Check.ID, g.Severity, g.Off, w.Severity, w.Off)
			}
			for _, p := range w.Check.Params {
				have, was := g.Limits.Get(p.Name).Value, w.Limits.Get(p.Name).Value
				if math.Abs(have-was) > 1e-9*math.Abs(was) {
					t.Errorf("%s: %s of %s is %v, not %v", name, p.Name, w.Check.ID, have, was)
				}
			}
		}
	}
}

// TestConsultantCriteria holds every example against the specification that is
// shown: each of its ten criterions has to judge something there.
func TestConsultantCriteria(t *testing.T) {
	t.Parallel()
	held, problems, err := schema.LoadCriteria([]string{"../../examples/consultant_criteria.pa.hcl"}, schema.Options{})
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if len(held.Criterions) != 10 {
		t.Errorf("%d criterions", len(held.Criterions))
	}
	var paths []string
	for _, name := range []string{"ferry_terminal", "hotel", "school", "village_hall", "warehouse_us", "first_steps"} {
		paths = append(paths, "../../examples/"+name+schema.Ending)
	}
	answers := map[string]map[check.Verdict]int{}
	for _, d := range linter.Check(paths, linter.Options{Checks: rules.All(), Specification: held}).Designs {
		if !d.Understood() {
			t.Fatal(d.Name, d.Err, d.Problems)
		}
		for _, o := range d.Outcomes {
			if answers[o.Check.ID] == nil {
				answers[o.Check.ID] = map[check.Verdict]int{}
			}
			answers[o.Check.ID][o.Verdict]++
		}
	}
	for _, c := range held.Criterions {
		n := answers[criterion.ID(c.Name)]
		t.Logf("%s: %d pass, %d fail, %d open", c.Name, n[check.Pass], n[check.Fail], n[check.Open])
		if n[check.Pass]+n[check.Fail] == 0 {
			t.Errorf("%q judges nothing", c.Name)
		}
	}
}
