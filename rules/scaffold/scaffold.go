package main

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"go/format"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"text/template"

	"loudlint/linter/checktest"
	"loudlint/schema"
)

//go:embed check.go.tmpl
var checkText string

//go:embed fixture.pa.hcl.tmpl
var fixtureText string

// subject is what a check can be asked of.
type subject struct {
	name  string // as the flag has it
	plain string // as people say it
	each  string // the function of linter/check
	param string // what the judgement gets
	pkg   string // where that type is
	// block begins the line of a fixture where the answer is expected.
	block string
}

func subjects() []subject {
	const analysis = "loudlint/linter/analysis"
	return []subject{
		{"job", "the job", "EachJob", "s *analysis.System", analysis, "system"},
		{"amplifier", "amplifier", "EachAmplifier", "a *analysis.Amplifier", analysis, "amplifier"},
		{"unit", "amplifier and mixer", "EachUnit", "u *analysis.Unit", analysis, "amplifier"},
		{"channel", "power channel", "EachChannel", "c *analysis.Channel", analysis, "amplifier"},
		{"output", "output", "EachOutput", "o *analysis.Output", analysis, "amplifier"},
		{"line", "line", "EachLine", "l *analysis.Line", analysis, "line"},
		{"run", "loudspeaker block", "EachRun", "s *analysis.Run", analysis, "loudspeaker"},
		{"source", "source", "EachSource", "s *analysis.Source", analysis, "microphone"},
		{"space", "space", "EachSpace", "s *schema.Space", "loudlint/schema", "space"},
	}
}

func subjectNames() []string {
	var names []string
	for _, s := range subjects() {
		names = append(names, s.name)
	}
	return names
}

func subjectOf(name string) (subject, error) {
	for _, s := range subjects() {
		if s.name == name {
			return s, nil
		}
	}
	return subject{}, fmt.Errorf("a check cannot be asked of %q; it is one of %s", name, strings.Join(subjectNames(), ", "))
}

// file is a file to be written.
type file struct {
	name string // with forward slashes, from the top of the repository
	text []byte
}

var idForm = regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)

// filesOf makes the files of a new check.
func filesOf(id, each string) ([]file, error) {
	if !idForm.MatchString(id) {
		return nil, fmt.Errorf("the id %q is not of lower-case words with hyphens, such as cable-current", id)
	}
	s, err := subjectOf(each)
	if err != nil {
		return nil, err
	}
	code, err := filled(checkText, map[string]string{
		"ID": id, "Name": goName(id), "Func": strings.ToLower(goName(id)[:1]) + goName(id)[1:],
		"Plain": s.plain, "Each": s.each, "Param": s.param, "Package": s.pkg,
	})
	if err != nil {
		return nil, err
	}
	if code, err = format.Source(code); err != nil {
		return nil, fmt.Errorf("lay out the code of %s: %w", id, err)
	}
	files := []file{{"rules/" + strings.ReplaceAll(id, "-", "_") + ".go", code}}
	for _, kind := range checktest.Kinds {
		text, err := filled(fixtureText, map[string]string{"Kind": kind, "Block": s.block, "Expect": expectation(kind)})
		if err != nil {
			return nil, err
		}
		files = append(files, file{"rules/testdata/" + id + "/" + kind + "-first" + schema.Ending, text})
	}
	return files, nil
}

func expectation(kind string) string {
	switch kind {
	case "broken", "just-past":
		return "# expect fail warning: a text of the finding"
	case "open":
		return "# expect open: what is missing"
	}
	return "# expect pass"
}

// goName makes CableCurrent of cable-current.
func goName(id string) string {
	var b strings.Builder
	for word := range strings.SplitSeq(id, "-") {
		b.WriteString(strings.ToUpper(word[:1]) + word[1:])
	}
	return b.String()
}

func filled(text string, data map[string]string) ([]byte, error) {
	t, err := template.New("").Option("missingkey=error").Parse(text)
	if err != nil {
		return nil, fmt.Errorf("read a template: %w", err)
	}
	var b bytes.Buffer
	if err := t.Execute(&b, data); err != nil {
		return nil, fmt.Errorf("fill a template: %w", err)
	}
	return b.Bytes(), nil
}

// write writes files that are not there yet: all, or none when one is.
func write(repository string, files []file) error {
	if _, err := os.Stat(filepath.Join(repository, "rules", "all.go")); err != nil {
		return errors.New("rules/all.go is not here: call it at the top of the repository")
	}
	for _, f := range files {
		if _, err := os.Stat(filepath.Join(repository, filepath.FromSlash(f.name))); !errors.Is(err, fs.ErrNotExist) {
			return fmt.Errorf("%s is there already", f.name)
		}
	}
	for _, f := range files {
		path := filepath.Join(repository, filepath.FromSlash(f.name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return fmt.Errorf("make the folder of %s: %w", f.name, err)
		}
		if err := os.WriteFile(path, f.text, 0o644); err != nil {
			return fmt.Errorf("write %s: %w", f.name, err)
		}
	}
	return nil
}
