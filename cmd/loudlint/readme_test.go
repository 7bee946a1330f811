package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/source"
)

// The documents at the top show commands and what they print in blocks marked
// console: a line that begins with "$ " is a command, and the lines up to the
// next are what it prints, both streams together. A line of three dots stands
// for any number of lines left out.

// documents are the texts that are held to be true.
var documents = []string{"README.md", "DEVELOPERS.md"}

// unrun are commands that are shown without being run here, with why.
var unrun = map[string]string{
	"go test ./...":           "it is what runs this test",
	"bash .ci/run":            "it runs go test ./...",
	"go build ./...":          "go test ./... builds it all",
	"go run ./rules/scaffold": "it writes files; its own test runs it",
	"git clone":               "it needs a network",
	"cd ":                     "it prints nothing",
}

// TestDocumentsAreTrue runs every command the documents show and compares what
// it prints. With -update it writes what is printed into them.
func TestDocumentsAreTrue(t *testing.T) {
	t.Chdir("../..")
	for _, document := range documents {
		text, err := os.ReadFile(document)
		if err != nil {
			t.Error(err)
			continue
		}
		shown := shownIn(string(text))
		if document == "README.md" && !slices.ContainsFunc(shown, func(s showing) bool { return strings.HasPrefix(s.command, runSource) }) {
			t.Errorf("%s shows no run of the command", document)
		}
		renewed := string(text)
		for _, s := range slices.Backward(shown) { // from the back, so that places stay right
			got, err := outputOf(s)
			if err != nil {
				t.Errorf("%s:%d: %v", document, s.line, err)
				continue
			}
			if alike(s.output, got) {
				continue
			}
			if *update && !slices.Contains(s.output, elision) {
				renewed = renewed[:s.start] + got + renewed[s.end:]
				continue
			}
			t.Errorf("%s:%d: $ %s prints something else (go test ./cmd/loudlint -update writes it, where nothing is left out; -shown +printed):\n%s",
				document, s.line, s.command, cmp.Diff(strings.Join(s.output, "\n"), strings.TrimSuffix(got, "\n")))
		}
		if renewed != string(text) {
			if err := os.WriteFile(document, []byte(renewed), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// TestDocumentsShowDesigns reads every block marked hcl as a design: what the
// documents tell people to write has to be right.
func TestDocumentsShowDesigns(t *testing.T) {
	t.Chdir("../..")
	for _, document := range documents {
		text, err := os.ReadFile(document)
		if err != nil {
			t.Fatal(err)
		}
		for i, block := range strings.Split(string(text), "```hcl\n")[1:] {
			block, _, _ = strings.Cut(block, "```")
			file := source.NewFile(fmt.Sprintf("%s, block %d", document, i+1), []byte(block))
			design, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{})
			if len(problems) == 0 {
				problems = linter.Judge(design, linter.Options{Checks: rules.All()}).Problems
			}
			for _, p := range problems {
				t.Errorf("%s:%d: %s", file.Name, p.Span.From().Line, p)
			}
		}
	}
}

const (
	runSource = "go run ./cmd/loudlint"
	elision   = "..."
)

// showing is a command with its output, as shown.
type showing struct {
	command    string
	line       int // of the command, from 1
	output     []string
	start, end int // of the output, as bytes of the document
}

func shownIn(text string) []showing {
	var all []showing
	inside, at := false, 0
	for i, line := range strings.Split(text, "\n") {
		next := at + len(line) + 1
		command, isCommand := strings.CutPrefix(line, "$ ")
		switch {
		case strings.HasPrefix(line, "```"):
			inside = line == "```console"
		case inside && isCommand:
			all = append(all, showing{command: command, line: i + 1, start: next, end: next})
		case inside && len(all) > 0:
			last := &all[len(all)-1]
			last.output = append(last.output, line)
			last.end = next
		}
		at = next
	}
	return all
}

// outputOf runs a command, as far as it is one of ours.
func outputOf(s showing) (string, error) {
	words := strings.Fields(s.command)
	if strings.ContainsAny(s.command, "|<>;&$`\"'\\*?") {
		return "", fmt.Errorf("$ %s: only plain commands are run here: no quotes, pipes or patterns", s.command)
	}
	fromSource := strings.HasPrefix(s.command, runSource+" ") || s.command == runSource
	switch {
	case fromSource:
		words = words[len(strings.Fields(runSource)):]
	case words[0] == name:
		words = words[1:]
	default:
		return unrunOutput(s)
	}
	var both bytes.Buffer
	status := Main(words, Process{Out: &both, Err: &both, Env: func(string) string { return "" }})
	if fromSource && status != statusPassed {
		fmt.Fprintf(&both, "exit status %d\n", status) // go run says so
	}
	return both.String(), nil
}

// unrunOutput lets only such output stand under a command that is not run as
// cannot be wrong.
func unrunOutput(s showing) (string, error) {
	for command := range unrun {
		if strings.HasPrefix(s.command, command) {
			for _, line := range s.output {
				if line != elision && !strings.HasPrefix(line, "ok ") {
					return "", fmt.Errorf("$ %s is not run here, so nothing of what it prints can be shown: %q", s.command, line)
				}
			}
			return strings.Join(append(s.output, ""), "\n"), nil
		}
	}
	return "", fmt.Errorf("$ %s: this test knows no such command; it would have to run it, or to be told why not", s.command)
}

// alike compares lines, where three dots stand for any number of them.
func alike(shown []string, printed string) bool {
	lines := strings.Split(strings.TrimSuffix(printed, "\n"), "\n")
	if printed == "" {
		lines = nil
	}
	at, skipping := 0, false
	for i := range shown {
		if shown[i] == elision {
			skipping = true
			continue
		}
		found := at < len(lines) && lines[at] == shown[i]
		for skipping && !found && at < len(lines) {
			at++
			found = at < len(lines) && lines[at] == shown[i]
		}
		if !found {
			return false
		}
		at, skipping = at+1, false
	}
	return skipping || at == len(lines)
}

func TestShowingsAreCompared(t *testing.T) {
	t.Parallel()
	const text = "Text\n\n```console\n$ loudlint version\none\ntwo\n$ cd there\n```\n\n```hcl\n$ not a command\n```\n"
	shown := shownIn(text)
	if len(shown) != 2 || shown[0].command != name+" version" || shown[0].line != 4 || text[shown[0].start:shown[0].end] != "one\ntwo\n" || shown[1].start != shown[1].end {
		t.Errorf("the commands shown are %+v", shown)
	}
	for _, test := range []struct {
		shown   []string
		printed string
		want    bool
	}{
		{nil, "", true},
		{nil, "a\n", false},
		{[]string{"a"}, "a\n", true},
		{[]string{"a"}, "b\n", false},
		{[]string{"a"}, "a\nb\n", false},
		{[]string{"a", "b"}, "a\n", false},
		{[]string{"a", "...", "c"}, "a\nb\nd\nc\n", true},
		{[]string{"a", "...", "c"}, "a\nc\n", true},
		{[]string{"a", "...", "c"}, "a\nb\n", false},
		{[]string{"a", "..."}, "a\nb\n", true},
		{[]string{"...", "b"}, "a\nb\n", true},
		{[]string{"...", "b"}, "a\nb\nc\n", false},
	} {
		if got := alike(test.shown, test.printed); got != test.want {
			t.Errorf("%q alike %q: %v, want %v", test.shown, test.printed, got, test.want)
		}
	}
	for _, command := range []string{"rm -r here", "loudlint check hall.pa.hcl | head", "loudlint explain 'load-margin'"} {
		if _, err := outputOf(showing{command: command}); err == nil {
			t.Errorf("%s: there is no error", command)
		}
	}
	if _, err := outputOf(showing{command: "go test ./...", output: []string{"all is well"}}); err == nil {
		t.Error("output that nobody checked is let through")
	}
}

// TestPagesFromNothing follows the pages for each kind of user in an empty folder:
// a block marked hcl is written into the file that the line above names, a block
// marked diff changes that file (lines with - are taken out where they stand
// together, those with + put in their place, or at its end), and a block marked
// shell-session is run, its commands by a shell as far as they are not ours. With
// -update what is printed is written into the page.
func TestPagesFromNothing(t *testing.T) {
	for _, needed := range []string{"git", "bash"} {
		if _, err := exec.LookPath(needed); err != nil {
			t.Skipf("%s is not installed", needed)
		}
	}
	top, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	readme := filepath.Join(top, "README.md")
	text, err := os.ReadFile(readme)
	if err != nil {
		t.Fatal(err)
	}
	const heading = "## For "
	pages := strings.Split(string(text), "\n"+heading)
	if len(pages) != 4 {
		t.Fatalf("there are %d pages, and should be three", len(pages)-1)
	}
	for i, page := range pages[1:] {
		page, rest, _ := strings.Cut(page, "\n## ")
		f := fromNothing{top: top}
		t.Run(strings.ReplaceAll(strings.SplitN(page, "\n", 2)[0], " ", "_"), func(t *testing.T) { f.follow(t, page) })
		if rest != "" {
			rest = "\n## " + rest
		}
		pages[i+1] = f.renewed.String() + rest
	}
	if renewed := strings.Join(pages, "\n"+heading); *update && renewed != string(text) && !t.Failed() {
		if err := os.WriteFile(readme, []byte(renewed), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// fromNothing is somebody who follows a page.
type fromNothing struct {
	top     string // of the repository
	file    string // written last
	renewed strings.Builder
}

func (f *fromNothing) follow(t *testing.T, page string) {
	folder := t.TempDir()
	if err := os.Symlink(f.top, filepath.Join(folder, name)); err != nil {
		t.Skip(err)
	}
	t.Setenv("HOME", folder)
	for variable, value := range map[string]string{
		"GIT_CONFIG_NOSYSTEM": "1", "GIT_AUTHOR_NAME": "A. Person", "GIT_AUTHOR_EMAIL": "person@team.example",
		"GIT_COMMITTER_NAME": "A. Person", "GIT_COMMITTER_EMAIL": "person@team.example", "NO_COLOR": "1",
	} {
		t.Setenv(variable, value)
	}
	work := filepath.Join(folder, "work")
	if err := os.Mkdir(work, 0o755); err != nil {
		t.Fatal(err)
	}
	t.Chdir(work)
	blocks := strings.Split(page, "```")
	for i, block := range blocks {
		if i > 0 {
			f.renewed.WriteString("```")
		}
		mark, body, _ := strings.Cut(block, "\n")
		switch {
		case i%2 == 0: // between blocks
		case mark == "hcl":
			above := strings.Split(strings.TrimSpace(blocks[i-1]), "`")
			if len(above) < 3 || !strings.HasSuffix(above[len(above)-2], schema.Ending) {
				t.Fatalf("no file is named above %q", body)
			}
			f.file = above[len(above)-2]
			f.write(t, body)
		case mark == "diff":
			f.change(t, body)
		case mark == "shell-session":
			block = mark + "\n" + session(t, body)
		}
		f.renewed.WriteString(block)
	}
}

func (f *fromNothing) write(t *testing.T, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(f.file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(f.file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func (f *fromNothing) change(t *testing.T, diff string) {
	t.Helper()
	read, err := os.ReadFile(f.file)
	if err != nil {
		t.Fatal(err)
	}
	text := string(read)
	var before, after strings.Builder
	apply := func() {
		switch old := before.String(); {
		case old == "":
			text += after.String()
		case strings.Count(text, old) != 1:
			t.Errorf("%q does not stand once in %s", old, f.file)
		default:
			text = strings.Replace(text, old, after.String(), 1)
		}
		before.Reset()
		after.Reset()
	}
	for line := range strings.Lines(diff) {
		sign, rest := line[:1], line[1:]
		if sign == "-" && after.Len() > 0 {
			apply()
		}
		if sign == "-" {
			before.WriteString(rest)
		} else {
			after.WriteString(rest)
		}
	}
	apply()
	f.write(t, text)
}

// session runs the commands of a block and gives it with what they print.
func session(t *testing.T, body string) string {
	var renewed strings.Builder
	for _, s := range shownIn("```console\n" + body + "```") {
		command := exec.CommandContext(t.Context(), "bash", "-c", s.command) //nolint:gosec // what the README of this repository shows
		both, _ := command.CombinedOutput()                                  // its status is shown by nobody
		got := string(both)
		renewed.WriteString("$ " + s.command + "\n")
		switch {
		case alike(s.output, got):
			got = strings.Join(append(s.output, ""), "\n")
		case !*update || slices.Contains(s.output, elision):
			t.Errorf("$ %s prints something else (-shown +printed):\n%s", s.command, cmp.Diff(strings.Join(s.output, "\n"), strings.TrimSuffix(got, "\n")))
		}
		renewed.WriteString(got)
	}
	return renewed.String()
}
