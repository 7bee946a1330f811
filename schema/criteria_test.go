package schema

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/schema/source"
)

// limits is a file that sets one limit, so that the layer that counts shows,
// and uses others.
func limits(mark string, uses ...string) string {
	var b strings.Builder
	for _, u := range uses {
		fmt.Fprintf(&b, "use { file = %q }\n", u)
	}
	fmt.Fprintf(&b, "criteria {\n  limit \"some-check\" { mark = %q }\n}\n", mark)
	return b.String()
}

// marks lists the limits of criteria, the weakest first.
func marks(all []*Criteria) string {
	var marks []string
	for _, c := range all {
		for _, l := range c.Limits {
			marks = append(marks, l.Settings[0].Value.V)
		}
	}
	return strings.Join(marks, " ")
}

func TestCriteriaCountInLayers(t *testing.T) {
	t.Parallel()
	for name, test := range map[string]struct {
		files map[string]string
		load  string // "" is the folder
		want  string // the weakest first
	}{
		"own over used":               {map[string]string{"a.pa.hcl": limits("own", "firm.pa.hcl"), "firm.pa.hcl": limits("firm")}, "a.pa.hcl", "firm own"},
		"job over firm":               {map[string]string{"a.pa.hcl": limits("own", "c/job.pa.hcl"), "c/job.pa.hcl": limits("job", "firm.pa.hcl"), "c/firm.pa.hcl": limits("firm")}, "a.pa.hcl", "firm job own"},
		"later used over earlier":     {map[string]string{"a.pa.hcl": limits("own", "c/1.pa.hcl", "c/2.pa.hcl"), "c/1.pa.hcl": limits("one"), "c/2.pa.hcl": limits("two")}, "a.pa.hcl", "one two own"},
		"firm named too":              {map[string]string{"a.pa.hcl": limits("own", "c/job.pa.hcl", "c/firm.pa.hcl"), "c/job.pa.hcl": limits("job", "firm.pa.hcl"), "c/firm.pa.hcl": limits("firm")}, "a.pa.hcl", "firm job own"},
		"used by two of the design's": {map[string]string{"a.pa.hcl": limits("a", "c/1.pa.hcl"), "b.pa.hcl": limits("b", "c/2.pa.hcl"), "c/1.pa.hcl": limits("one"), "c/2.pa.hcl": limits("two")}, "", "one two a b"},
		"in a circle":                 {map[string]string{"a.pa.hcl": limits("own", "c/1.pa.hcl"), "c/1.pa.hcl": limits("one", "2.pa.hcl"), "c/2.pa.hcl": limits("two", "1.pa.hcl")}, "a.pa.hcl", "two one own"},
		"blocks of one file":          {map[string]string{"a.pa.hcl": limits("first") + limits("second")}, "a.pa.hcl", "first second"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			design, problems, err := Load(filepath.Join(folderWith(t, test.files), test.load), Options{})
			if err != nil || len(problems) > 0 {
				t.Fatal(err, problems)
			}
			if diff := cmp.Diff(test.want, marks(design.Criteria)); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// TestCriteriaOfALargeFile shows that blocks keep their order in a file that is
// read in pieces.
func TestCriteriaOfALargeFile(t *testing.T) {
	t.Parallel()
	var text strings.Builder
	var want []string
	for i := range 100 {
		fmt.Fprint(&text, limits(fmt.Sprint(i)))
		want = append(want, fmt.Sprint(i))
	}
	used := source.NewFile("used.pa.hcl", []byte(text.String()))
	own := []*source.File{source.NewFile("own.pa.hcl", []byte("use { file = \"used.pa.hcl\" }\n"))}
	design, problems := readInPieces("made", own, Options{Open: func(*source.File, string) (*source.File, error) { return used, nil }}, 64)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if diff := cmp.Diff(strings.Join(want, " "), marks(design.Criteria)); diff != "" {
		t.Error(diff)
	}
}

func criterionFile(mark string, uses ...string) string {
	text := fmt.Sprintf("criterion \"Far end\" {\n  each   = \"line\"\n  expect = drop_percent <= %s\n}\n", mark)
	for _, u := range uses {
		text += fmt.Sprintf("use { file = %q }\n", u)
	}
	return text
}

func TestCriterionsCountInLayers(t *testing.T) {
	t.Parallel()
	for name, test := range map[string]struct {
		files   map[string]string
		want    string
		problem string
	}{
		"one":                {map[string]string{"a.pa.hcl": criterionFile("5")}, "drop_percent <= 5", ""},
		"own over used":      {map[string]string{"a.pa.hcl": criterionFile("5", "firm/f.pa.hcl"), "firm/f.pa.hcl": criterionFile("3")}, "drop_percent <= 5", ""},
		"two in one file":    {map[string]string{"a.pa.hcl": criterionFile("5") + criterionFile("3")}, "", `A second criterion is called "Far end".`},
		"two of the design":  {map[string]string{"a.pa.hcl": criterionFile("5"), "b.pa.hcl": criterionFile("3")}, "", `A second criterion is called "Far end".`},
		"alike in one file":  {map[string]string{"a.pa.hcl": criterionFile("5") + strings.Replace(criterionFile("3"), "Far", "far", 1)}, "", `The name "far end" differs from "Far end" only`},
		"own over one alike": {map[string]string{"a.pa.hcl": criterionFile("5", "firm/f.pa.hcl"), "firm/f.pa.hcl": strings.Replace(criterionFile("3"), "Far", "far", 1)}, "drop_percent <= 5", ""},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			design, problems, err := Load(folderWith(t, test.files), Options{})
			switch {
			case err != nil:
				t.Fatal(err)
			case test.problem != "":
				if len(problems) != 1 || !strings.HasPrefix(problems[0].String(), test.problem) {
					t.Fatalf("%v, not %q", problems, test.problem)
				}
			case len(problems) > 0:
				t.Fatal(problems)
			case len(design.Criterions) != 1 || !strings.Contains(design.Criterions[0].Text(), test.want):
				t.Errorf("%v, not %q", design.Criterions, test.want)
			}
		})
	}
}

func TestLoadCriteria(t *testing.T) {
	t.Parallel()
	folder := folderWith(t, map[string]string{
		"spec/spec.pa.hcl": limits("spec", "common.pa.hcl") + criterionFile("5"), "spec/common.pa.hcl": limits("common") + oneModel,
		"late.pa.hcl": limits("late") + criterionFile("3"), "design.pa.hcl": "line \"A\" {}\n", "way-out.pa.hcl": limits("x", "../x.pa.hcl"),
	})
	load := func(names ...string) (*Specification, []Problem, error) {
		for i := range names {
			names[i] = filepath.Join(folder, names[i])
		}
		return LoadCriteria(names, Options{})
	}
	s, problems, err := load("spec/spec.pa.hcl", "late.pa.hcl")
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if diff := cmp.Diff("common spec late", marks(s.Criteria)); diff != "" {
		t.Error(diff)
	}
	if len(s.Files) != 3 || len(s.Criterions) != 1 || !strings.Contains(s.Criterions[0].Text(), "<= 3") {
		t.Errorf("%d files and the criterions %v", len(s.Files), s.Criterions)
	}
	for name, want := range map[string]string{
		"design.pa.hcl":  "This file is read for its criteria and holds a line.",
		"way-out.pa.hcl": "The path \"../x.pa.hcl\" leaves",
	} {
		if _, problems, err := load(name); err != nil || len(problems) != 1 || !strings.HasPrefix(problems[0].String(), want) {
			t.Errorf("%s: %v, %v, not %q", name, problems, err, want)
		}
	}
	if _, _, err := load("lat.pa.hcl"); err == nil || !strings.Contains(err.Error(), "did you mean "+filepath.Join(folder, "late.pa.hcl")) {
		t.Errorf("a missing file: %v", err)
	}
	if _, _, err := load("spec"); err == nil {
		t.Error("a folder is no file of criteria")
	}
}
