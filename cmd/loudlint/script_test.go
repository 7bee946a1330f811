package main

import (
	"bytes"
	"errors"
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write what the command prints into the scripts and the README")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){name: main})
}

// TestScripts runs the command as a process, as people call it: each script in
// testdata/script at the top of the repository shows one behaviour.
func TestScripts(t *testing.T) {
	t.Parallel()
	if testing.Short() {
		t.Skip("it starts some two hundred processes")
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       *update,
		Cmds:                map[string]func(ts *testscript.TestScript, neg bool, args []string){"exits": exits},
		Setup: func(env *testscript.Env) error {
			recipes, err := filepath.Abs("../../examples/teamwork")
			if err != nil {
				return err
			}
			env.Setenv("RECIPES", recipes) // what scripts try out of them
			env.Setenv("NO_COLOR", "")
			env.Setenv("TERM", "xterm")
			return nil
		},
	})
}

// exits runs a command and demands an exit status: exits 2 loudlint chek.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("it is written: exits STATUS COMMAND...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		exit, ok := errors.AsType[*exec.ExitError](err)
		if !ok {
			ts.Fatalf("%v", err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("the exit status is %d, want %d", got, want)
	}
}

// TestClosedPipe shows that a reader that has seen enough is no reason to fail,
// nor to hide what was found.
func TestClosedPipe(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		args []string
		want int
	}{
		{[]string{"check", "--only", "load-margin", "testdata/overloaded.pa.hcl"}, statusFindings},
		{[]string{"check", "--gate", "never", "testdata/overloaded.pa.hcl"}, statusPassed},
		{[]string{"models"}, statusPassed},
		{[]string{"help"}, statusPassed},
	} {
		read, write, err := os.Pipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := read.Close(); err != nil {
			t.Fatal(err)
		}
		var problems bytes.Buffer
		command := exec.CommandContext(t.Context(), name, test.args...)
		command.Stdout, command.Stderr = write, &problems
		err = command.Run()
		if got := command.ProcessState.ExitCode(); got != test.want || problems.Len() > 0 {
			t.Errorf("%v: the exit status is %d, want %d; it says %q (%v)", test.args, got, test.want, problems.String(), err)
		}
		if err := write.Close(); err != nil {
			t.Fatal(err)
		}
	}
}
