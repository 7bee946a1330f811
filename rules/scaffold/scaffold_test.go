package main

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"loudlint/linter/checktest"
	"loudlint/schema"
	"loudlint/schema/source"
)

// repository makes a folder that passes for the top of the repository.
func repository(t *testing.T) string {
	t.Helper()
	folder := t.TempDir()
	if err := os.Mkdir(filepath.Join(folder, "rules"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(folder, "rules", "all.go"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	return folder
}

// TestWhatIsBegunCompiles lays a new check of every subject over the package
// rules and has Go vet it, and reads the fixtures as designs.
func TestWhatIsBegunCompiles(t *testing.T) {
	t.Parallel()
	top, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	overlay := struct{ Replace map[string]string }{map[string]string{}}
	for _, s := range subjects() {
		folder := repository(t)
		id := "begun-for-a-test-of-each-" + s.name
		var out, problems bytes.Buffer
		if status := run([]string{"-each", s.name, id}, folder, &out, &problems); status != 0 {
			t.Fatalf("%s: status %d, %s", s.name, status, problems.String())
		}
		if !strings.Contains(out.String(), "write BegunForATestOfEach") || !strings.Contains(out.String(), "rules/all.go") {
			t.Errorf("%s: it says %q", s.name, out.String())
		}
		name := strings.ReplaceAll(id, "-", "_") + ".go"
		overlay.Replace[filepath.Join(top, "rules", name)] = filepath.Join(folder, "rules", name)
		for _, kind := range checktest.Kinds {
			text, err := os.ReadFile(filepath.Join(folder, "rules", "testdata", id, kind+"-first"+schema.Ending))
			if err != nil {
				t.Fatal(err)
			}
			if _, found := schema.Read(kind, []*source.File{source.NewFile(kind, text)}, schema.Options{Workers: 1}); len(found) > 0 {
				t.Errorf("%s, %s: the fixture is no design: %s", s.name, kind, found[0])
			}
			if n := strings.Count(string(text), "# expect "); n != 1 {
				t.Errorf("%s, %s: the fixture expects %d answers, want 1", s.name, kind, n)
			}
		}
	}
	text, err := json.Marshal(overlay)
	if err != nil {
		t.Fatal(err)
	}
	list := filepath.Join(t.TempDir(), "overlay.json")
	if err := os.WriteFile(list, text, 0o644); err != nil {
		t.Fatal(err)
	}
	command := exec.CommandContext(t.Context(), "go", "build", "-overlay", list, "./rules")
	command.Dir = top
	if out, err := command.CombinedOutput(); err != nil {
		t.Errorf("what is begun does not compile: %v\n%s", err, out)
	}
}

func TestWhatIsRefused(t *testing.T) {
	t.Parallel()
	folder := repository(t)
	if status := run([]string{"cable-current"}, folder, &bytes.Buffer{}, &bytes.Buffer{}); status != 0 {
		t.Fatalf("the first time the status is %d", status)
	}
	tests := []struct {
		name string
		args []string
		at   string
		want string
	}{
		{"it is there", []string{"cable-current"}, folder, "rules/cable_current.go is there already"},
		{"id with capitals", []string{"CableCurrent"}, folder, "not of lower-case words"},
		{"id with underscores", []string{"cable_current"}, folder, "not of lower-case words"},
		{"unknown subject", []string{"-each", "wire", "cable-age"}, folder, `cannot be asked of "wire"`},
		{"elsewhere", []string{"cable-age"}, t.TempDir(), "at the top of the repository"},
		{"no id", nil, folder, "go run ./rules/scaffold"},
	}
	for _, test := range tests {
		var problems bytes.Buffer
		if status := run(test.args, test.at, &bytes.Buffer{}, &problems); status == 0 || !strings.Contains(problems.String(), test.want) {
			t.Errorf("%s: status %d, it says %q, want %q", test.name, status, problems.String(), test.want)
		}
	}
	if left, err := filepath.Glob(filepath.Join(folder, "rules", "*age*")); err != nil || len(left) > 0 {
		t.Errorf("what was refused is there: %v", left)
	}
}
