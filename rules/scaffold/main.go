// Command scaffold begins a check: it writes the file of the check and a fixture
// of each kind, and says what is left to do. It is for developers; call it at the
// top of the repository:
//
//	go run ./rules/scaffold cable-current
//	go run ./rules/scaffold -each channel spare-capacity
//
// What it writes compiles, and fails the tests until it is filled in.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
)

func main() { os.Exit(run(os.Args[1:], ".", os.Stdout, os.Stderr)) }

// run begins a check in the repository at a folder and gives the exit status.
func run(args []string, repository string, out, problems io.Writer) int {
	flags := flag.NewFlagSet("scaffold", flag.ContinueOnError)
	flags.SetOutput(problems)
	each := flags.String("each", "line", "what the check is asked of: "+strings.Join(subjectNames(), ", "))
	flags.Usage = func() {
		_, _ = fmt.Fprintln(problems, "go run ./rules/scaffold [-each PART] ID")
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() != 1 {
		flags.Usage()
		return 2
	}
	id := flags.Arg(0)
	files, err := filesOf(id, *each)
	if err == nil {
		err = write(repository, files)
	}
	if err != nil {
		_, _ = fmt.Fprintf(problems, "scaffold: %v\n", err)
		return 1
	}
	_, _ = fmt.Fprintf(out, "Begun:\n")
	for _, f := range files {
		_, _ = fmt.Fprintf(out, "  %s\n", f.name)
	}
	_, _ = fmt.Fprintf(out, `Left to do:
  write %s, into its group in rules/all.go
  write the fixtures; several of a kind differ in what stands behind it: broken-two-lines.pa.hcl
  fill in the declaration, and the judgement at its end
  go test ./rules           says what is missing
  go test ./rules -update   writes rules/README.md anew
`, goName(id))
	return 0
}
