package schema

import (
	"os"
	"slices"
	"strings"
	"testing"

	"loudlint/schema/source"
)

// Each file in testdata/refused holds what the parser reads and the dialect
// refuses; the file of the same name that ends in .want says what is told of it.
func TestRefused(t *testing.T) {
	t.Parallel()
	for _, name := range fixtures(t, "testdata/refused") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			file := source.NewFile(name, text)
			if s := parseFile(file); s.mended != nil {
				t.Errorf("the parser refuses it: %s", told(s.problems))
			}
			design, problems := Read("x", []*source.File{file}, Options{})
			if design != nil || len(problems) == 0 {
				t.Fatal("read without a problem")
			}
			golden(t, strings.TrimSuffix(name, Ending)+".want", told(problems))
		})
	}
}

// What is told does not hang on the order in which files come, nor on how many
// processors read them.
func TestOrderOfFilesIsIrrelevant(t *testing.T) {
	t.Parallel()
	var files []*source.File
	for _, folder := range []string{"testdata/refused", "testdata/slips", "testdata/designs"} {
		for _, name := range fixtures(t, folder) {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, source.NewFile(name, text))
		}
	}
	_, want := Read("x", files, Options{Workers: 1})
	for _, workers := range []int{1, 2, 7} {
		slices.Reverse(files)
		files = append(files[5:], files[:5]...)
		_, got := Read("x", files, Options{Workers: workers})
		if told(got) != told(want) {
			t.Fatalf("%d workers and another order tell something else", workers)
		}
	}
}
