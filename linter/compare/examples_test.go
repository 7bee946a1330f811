package compare_test

import (
	"path/filepath"
	"testing"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/compare"
	"loudlint/rules"
)

// TestEveryFindingIsAccountedFor compares every example with every other: each
// finding that counted before is still there, less grave, accepted or gone, each
// that counts now is new or known, and none is told twice.
func TestEveryFindingIsAccountedFor(t *testing.T) {
	t.Parallel()
	var paths []string
	for _, pattern := range []string{"../../examples/*.pa.hcl", "../../examples/revisions/*.pa.hcl"} {
		found, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		paths = append(paths, found...)
	}
	options := linter.Options{Checks: rules.All(), Folders: []string{"../../examples"}}
	all := linter.Check(paths, options).Designs
	for i, before := range all {
		for k, now := range all {
			if !before.Understood() || !now.Understood() {
				t.Fatalf("%s or %s is not understood", before.Name, now.Name)
			}
			copied := *now
			copied.Outcomes = append([]check.Outcome(nil), now.Outcomes...)
			c := compare.Compare(before, &copied, before.Name, now.Name)
			accounted(t, c)
			if i == k && (len(c.Parts)+len(c.Figures) > 0 || c.Count(compare.New)+c.Count(compare.Gone)+c.Count(compare.Changed) > 0) {
				t.Errorf("%s differs from itself: %+v %+v", now.Name, c.Parts, c.Figures)
			}
		}
	}
}

func accounted(t *testing.T, c *compare.Comparison) {
	t.Helper()
	old, current := map[*check.Outcome]int{}, map[*check.Outcome]int{}
	for _, f := range c.Findings {
		if f.Old != nil && f.Old.Counts() {
			old[f.Old]++
		}
		if f.New != nil && f.State != compare.Gone {
			current[f.New]++
		}
	}
	for i := range c.Old.Outcomes {
		if o := &c.Old.Outcomes[i]; o.Counts() && old[o] != 1 {
			t.Errorf("%s to %s: %s is told %d times", c.OldName, c.NewName, o.Identity, old[o])
		}
	}
	for i := range c.New.Outcomes {
		o := &c.New.Outcomes[i]
		if o.Counts() && current[o] != 1 {
			t.Errorf("%s to %s: %s is told %d times", c.OldName, c.NewName, o.Identity, current[o])
		}
		if o.State == check.NotCompared {
			t.Errorf("%s to %s: %s has no state", c.OldName, c.NewName, o.Identity)
		}
	}
}
