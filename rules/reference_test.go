package rules_test

import (
	"flag"
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/rules"
)

var update = flag.Bool("update", false, "write README.md anew")

// TestReferenceIsInStep compares rules/README.md with what the checks declare.
func TestReferenceIsInStep(t *testing.T) {
	t.Parallel()
	if *update {
		if err := os.WriteFile("README.md", []byte(rules.Reference()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	have, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(have), rules.Reference()); diff != "" {
		t.Errorf("rules/README.md is not what the checks declare; go test ./rules -update writes it (-have +want):\n%s", diff)
	}
}
