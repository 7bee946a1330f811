package main

import (
	"bytes"
	"errors"
	"io"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/textout"
)

func call(words ...string) (status int, out, problems string) {
	var o, e bytes.Buffer
	status = Main(words, Process{Out: &o, Err: &e, Env: func(string) string { return "" }})
	return status, o.String(), e.String()
}

func TestColourAndWidth(t *testing.T) {
	t.Parallel()
	tests := []struct {
		name    string
		process Process
		env     map[string]string
		colour  string
		width   int
		want    textout.Options
	}{
		{"terminal", Process{Terminal: true, Columns: 200}, nil, "auto", 0, textout.Options{Colour: true}},
		{"narrow terminal", Process{Terminal: true, Columns: 50}, nil, "auto", 0, textout.Options{Colour: true, Width: 50}},
		{"terminal of unknown width", Process{Terminal: true}, nil, "auto", 0, textout.Options{Colour: true}},
		{"no terminal", Process{}, nil, "auto", 0, textout.Options{}},
		{"no terminal, always", Process{}, nil, "always", 0, textout.Options{Colour: true}},
		{"NO_COLOR", Process{Terminal: true}, map[string]string{"NO_COLOR": "1"}, "auto", 0, textout.Options{}},
		{"NO_COLOR, always", Process{Terminal: true}, map[string]string{"NO_COLOR": "1"}, "always", 0, textout.Options{Colour: true}},
		{"NO_COLOR empty", Process{Terminal: true}, map[string]string{"NO_COLOR": ""}, "auto", 0, textout.Options{Colour: true}},
		{"dumb terminal", Process{Terminal: true}, map[string]string{"TERM": "dumb"}, "auto", 0, textout.Options{}},
		{"never", Process{Terminal: true}, nil, "never", 0, textout.Options{}},
		{"width given", Process{Terminal: true, Columns: 50}, nil, "never", 120, textout.Options{Width: 120}},
	}
	for _, test := range tests {
		test.process.Env = func(name string) string { return test.env[name] }
		if diff := cmp.Diff(test.want, test.process.page(test.colour, test.width)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}

type broken struct{ err error }

func (b broken) Write([]byte) (int, error) { return 0, b.err }

// TestUnwritableOutput shows that a result nobody got is never called passed.
func TestUnwritableOutput(t *testing.T) {
	t.Parallel()
	const clean = "testdata/roomy.pa.hcl"
	tests := []struct {
		name  string
		err   error
		words []string
		want  int
		says  string
	}{
		{"disk full", errors.New("no space left on device"), []string{"check", clean}, statusNotUnderstood, "no space left on device"},
		{"disk full, lines", errors.New("no space left on device"), []string{"check", "--format", "lines", "--passes", clean}, statusNotUnderstood, "no space left on device"},
		{"disk full, sarif", errors.New("no space left on device"), []string{"check", "--format", "sarif", clean}, statusNotUnderstood, "no space left on device"},
		{"disk full, checks", errors.New("no space left on device"), []string{"checks"}, statusNotUnderstood, "no space left on device"},
		{"closed pipe", syscall.EPIPE, []string{"check", "--gate", "error", clean}, statusPassed, ""},
		{"closed pipe, sarif", syscall.EPIPE, []string{"check", "--gate", "error", "--format", "sarif", clean}, statusPassed, ""},
		{"closed pipe, checks", io.ErrClosedPipe, []string{"checks"}, statusPassed, ""},
	}
	for _, test := range tests {
		var problems bytes.Buffer
		got := Main(test.words, Process{Out: broken{test.err}, Err: &problems, Env: func(string) string { return "" }})
		if got != test.want || !strings.Contains(problems.String(), test.says) || (test.says == "") != (problems.Len() == 0) {
			t.Errorf("%s: the exit status is %d, want %d; it says %q", test.name, got, test.want, problems.String())
		}
	}
}

func TestVersion(t *testing.T) {
	t.Parallel()
	const sum = "00112233445566778899aabbccddeeff"
	tests := []struct {
		name string
		info *debug.BuildInfo
		want string
	}{
		{"nothing known", nil, "loudlint build 001122334455\nSHA-256 of the program " + sum + "\n"},
		{"no revision", &debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "(devel)"}},
			"loudlint build 001122334455\nSHA-256 of the program " + sum + "\nbuilt with go1.26.8\n"},
		{"no version at all", &debug.BuildInfo{GoVersion: "go1.26.8"},
			"loudlint build 001122334455\nSHA-256 of the program " + sum + "\nbuilt with go1.26.8\n"},
		{"built in a clone", &debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "(devel)"}, Settings: []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}, {Key: "vcs.time", Value: "2027-01-02T03:04:05Z"}, {Key: "vcs.modified", Value: "false"}}},
			"loudlint revision 0123456789ab of 2027-01-02\nrevision 0123456789abcdef of 2027-01-02\nbuilt with go1.26.8\n"},
		{"built in a clone that was changed", &debug.BuildInfo{GoVersion: "go1.26.8", Settings: []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}, {Key: "vcs.modified", Value: "true"}}},
			"loudlint revision 0123456789ab, changed since\nrevision 0123456789abcdef, changed since\nbuilt with go1.26.8\n"},
		{"release", &debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "v1.2.3"}, Settings: []debug.BuildSetting{{Key: "GOOS", Value: "linux"}, {Key: "GOARCH", Value: "arm64"}}},
			"loudlint v1.2.3\nbuilt with go1.26.8 for linux/arm64\n"},
		{"changed", &debug.BuildInfo{GoVersion: "go1.26.8", Main: debug.Module{Version: "v1.2.4-0.20270102030405-0123456789ab+dirty"}, Settings: []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}, {Key: "vcs.modified", Value: "true"}}},
			"loudlint v1.2.4-0.20270102030405-0123456789ab+dirty\nrevision 0123456789abcdef, changed since\nbuilt with go1.26.8\n"},
	}
	for _, test := range tests {
		if diff := cmp.Diff(test.want, versionOf(test.info, func() string { return sum })); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
	if got := versionOf(nil, func() string { return "" }); got != "loudlint of an unknown build\n" {
		t.Errorf("of a program that cannot be read it says %q", got)
	}
	if sum := programDigest(); len(sum) != 64 {
		t.Errorf("the digest of this program is %q", sum)
	}
}

// TestEveryCommandHasAPage asks every command for help, both ways.
func TestEveryCommandHasAPage(t *testing.T) {
	t.Parallel()
	for _, c := range programOf(&Process{}).Commands {
		status, page, problems := call("help", c.Name)
		if status != statusPassed || problems != "" || !strings.HasPrefix(page, "loudlint "+c.Name) {
			t.Errorf("help %s: status %d, %q, %q", c.Name, status, page, problems)
		}
		status, other, _ := call(c.Name, "--help")
		if diff := cmp.Diff(page, other); diff != "" || status != statusPassed {
			t.Errorf("%s --help tells something else than help %s:\n%s", c.Name, c.Name, diff)
		}
		for _, f := range c.Flags {
			if !strings.Contains(page, "--"+f.Name) {
				t.Errorf("help %s is silent about --%s", c.Name, f.Name)
			}
		}
	}
}
