package schema

import (
	"os"
	"strings"
	"testing"

	"loudlint/schema/source"
)

// Each file in testdata/slips is a design with slips of one kind; the file of
// the same name that ends in .want says what is told of it.
func TestSlips(t *testing.T) {
	t.Parallel()
	for _, name := range fixtures(t, "testdata/slips") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			file := source.NewFile(name, text)
			design, problems := Read("x", []*source.File{file}, Options{})
			if design != nil || len(problems) == 0 {
				t.Fatal("read without a problem")
			}
			for _, p := range problems {
				if p.Span.File != file || int(p.Span.End) > len(file.Text) || p.Span.Start > p.Span.End {
					t.Errorf("place %d-%d is not in the file: %s", p.Span.Start, p.Span.End, p)
				}
				for _, word := range []string{"rgument", "nvalid", "nsupported", "onfiguration", "identifier", "heredoc", "delimit", "expression"} {
					if strings.Contains(p.String(), word) {
						t.Errorf("%q is no word of ours: %s", word, p)
					}
				}
			}
			golden(t, strings.TrimSuffix(name, Ending)+".want", told(problems))
		})
	}
}
