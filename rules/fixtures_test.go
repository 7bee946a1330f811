package rules_test

import (
	"path/filepath"
	"testing"

	"loudlint/linter/checktest"
	"loudlint/rules"
)

// TestFixtures asks every check of its fixtures and proves its remedies. A
// check without a fixture of every kind fails.
func TestFixtures(t *testing.T) {
	t.Parallel()
	all := rules.All()
	for _, c := range all {
		for _, path := range checktest.Fixtures(t, "testdata", c) {
			t.Run(c.ID+"/"+filepath.Base(path), func(t *testing.T) {
				t.Parallel()
				checktest.Run(t, filepath.ToSlash(path), c, all)
			})
		}
	}
}
