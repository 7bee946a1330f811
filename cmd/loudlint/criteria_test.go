package main

import (
	"bytes"
	"math"
	"testing"

	"loudlint/linter"
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
