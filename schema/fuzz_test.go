package schema

import (
	"os"
	"strings"
	"testing"

	"loudlint/schema/source"
)

// FuzzRead reads any text as a design of one or two files: it must end, and say
// where in the files each problem is, or give a design.
func FuzzRead(f *testing.F) {
	for _, folder := range []string{"testdata/slips", "testdata/designs"} {
		for _, name := range fixtures(f, folder) {
			text, err := os.ReadFile(name)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(string(text))
		}
	}
	f.Add("line \"A\" {\n  home_run = \"40 m\"\n}\n\x01line \"B\" { like = \"A\" }\n")
	f.Fuzz(func(t *testing.T, text string) {
		const most = 1 << 14 // longer ones teach nothing
		if len(text) > most {
			t.Skip()
		}
		first, second, _ := strings.Cut(text, "\x01")
		files := []*source.File{source.NewFile("a.pa.hcl", []byte(first)), source.NewFile("b.pa.hcl", []byte(second))}
		design, problems := Read("fuzz", files, Options{Workers: 1})
		if (design == nil) != (len(problems) > 0) {
			t.Fatalf("design %v with %d problems", design != nil, len(problems))
		}
		for _, p := range problems {
			if p.Found == "" {
				t.Error("a problem says nothing")
			}
			insideFile(t, p.Span)
			for _, r := range p.Related {
				insideFile(t, r.Span)
			}
		}
	})
}

func insideFile(t *testing.T, s source.Span) {
	t.Helper()
	if s.File == nil || s.Start < 0 || s.Start > s.End || int(s.End) > len(s.File.Text) {
		t.Errorf("a place outside its file: %d to %d", s.Start, s.End)
	}
}
