package rules_test

import (
	"path/filepath"
	"testing"

	"loudlint/linter/checktest"
	"loudlint/rules"
	"loudlint/schema"
)

// TestField judges designs that were written after reports from the field: what
// went wrong there is found, and nothing else fails.
func TestField(t *testing.T) {
	t.Parallel()
	paths, err := filepath.Glob(filepath.Join("..", "testdata", "field", "*"+schema.Ending))
	if err != nil || len(paths) == 0 {
		t.Fatalf("no designs from the field found: %v", err)
	}
	all := rules.All()
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			t.Parallel()
			checktest.Field(t, filepath.ToSlash(path), all)
		})
	}
}
