package schema

import (
	commandline "flag" // flag is a name of the dialect
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = commandline.Bool("update", false, "write what the tests get to the files they compare with")

// golden compares a text with a file, or writes it there.
func golden(t *testing.T, name, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatalf("%v (go test ./schema -run %s -update writes it)", err, t.Name())
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s differs (-want +got); go test ./schema -run %s -update writes it anew:\n%s", name, t.Name(), diff)
	}
}

// told writes problems for comparison: place, marked text, message.
func told(problems []Problem) string {
	var b strings.Builder
	for _, p := range problems {
		from := p.Span.From()
		fmt.Fprintf(&b, "%d:%d %q\n    %s\n", from.Line, from.Column, p.Span.Text(), p.Found)
		if p.Expected != "" {
			fmt.Fprintf(&b, "    %s\n", p.Expected)
		}
		if p.Nearest != "" {
			fmt.Fprintf(&b, "    -> %s\n", strings.ReplaceAll(p.Nearest, "\n", "\n       "))
		}
		for _, r := range p.Related {
			at := r.Span.From()
			fmt.Fprintf(&b, "    %d:%d %q: %s\n", at.Line, at.Column, r.Span.Text(), r.Note)
		}
	}
	return b.String()
}

// fixtures lists the designs in a folder.
func fixtures(t testing.TB, folder string) []string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(folder, "*"+Ending))
	if err != nil || len(names) == 0 {
		t.Fatalf("no designs in %s: %v", folder, err)
	}
	return names
}
