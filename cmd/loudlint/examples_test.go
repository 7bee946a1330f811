package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestExamples judges each design under examples and compares the page with the
// one in testdata/examples, which was read line by line. With -update it is
// written anew.
func TestExamples(t *testing.T) {
	t.Chdir("../..")
	paths, err := filepath.Glob("examples/*.pa.hcl")
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range paths {
		path = filepath.ToSlash(path)
		if strings.HasSuffix(path, "catalogue.pa.hcl") {
			continue // models that the others use
		}
		command := runSource + " check " + path
		if strings.HasSuffix(path, "_criteria.pa.hcl") { // a design is held against it
			command = runSource + " check --criteria " + path + " examples/ferry_terminal.pa.hcl"
		}
		prints(t, command, strings.TrimSuffix(filepath.Base(path), ".pa.hcl")+".txt")
	}
}

// TestReviews answers two of the designs under examples by the specification that
// lies there, and compares the answers with those in testdata/examples.
func TestReviews(t *testing.T) {
	t.Chdir("../..")
	const reviewed = runSource + " review --criteria examples/consultant_criteria.pa.hcl --date 2026-11-25 "
	prints(t, reviewed+"examples/ferry_terminal.pa.hcl", "review_ferry_terminal.txt")
	prints(t, reviewed+"--format markdown examples/ferry_terminal.pa.hcl", "review_ferry_terminal.md")
	prints(t, reviewed+"examples/hotel.pa.hcl", "review_hotel.txt")
}

// prints compares what a command prints with a file in testdata/examples, and with
// -update writes it.
func prints(t *testing.T, command, file string) {
	t.Helper()
	t.Run(file, func(t *testing.T) {
		got, err := outputOf(showing{command: command})
		if err != nil {
			t.Fatal(err)
		}
		golden := "testdata/examples/" + file
		if *update {
			if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(golden)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), got); diff != "" {
			t.Errorf("%s (-want +got; go test ./cmd/loudlint -update writes it):\n%s", golden, diff)
		}
	})
}

// TestReadmeShowsTheTable: the table in the README is the one in the examples.
func TestReadmeShowsTheTable(t *testing.T) {
	t.Parallel()
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	table, err := os.ReadFile("../../examples/foyer_loudspeakers.csv")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Contains(readme, append([]byte("```csv\n"), append(table, []byte("```\n")...)...)) {
		t.Error("README.md shows another table than examples/foyer_loudspeakers.csv")
	}
}
