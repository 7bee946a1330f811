package main

import (
	"bytes"
	"os"
	"testing"
)

// TestPicturesAreTrue draws the pictures that README shows and compares them.
// With -update they are drawn anew.
func TestPicturesAreTrue(t *testing.T) {
	t.Chdir("../..")
	readme, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, one := range pictures() {
		file := "examples/pictures/ferry_terminal_" + one.word + ".svg"
		if !bytes.Contains(readme, []byte(file)) {
			continue // not shown
		}
		var got, problems bytes.Buffer
		status := Main([]string{"draw", one.word, "examples/ferry_terminal.pa.hcl"}, Process{Out: &got, Err: &problems, Env: func(string) string { return "" }})
		if status != statusPassed {
			t.Fatalf("%s is not drawn: %s", one.word, problems.String())
		}
		if *update {
			if err := os.WriteFile(file, got.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(want, got.Bytes()) {
			t.Errorf("%s is not what is drawn (go test ./cmd/loudlint -update draws it anew)", file)
		}
	}
}
