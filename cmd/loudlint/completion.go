package main

import (
	"bufio"
	"fmt"
	"io"

	"loudlint/cmd/loudlint/internal/cli"
)

func completionCommand(p *Process, program *cli.Program) *cli.Command {
	var typed bool
	return &cli.Command{
		Name:      "completion",
		Arguments: "bash|fish|zsh",
		Summary:   "teach a shell to complete commands, flags, checks and models",
		About:     []string{"Writes a script for the shell. How to use it stands at its head."},
		Flags: []*cli.Flag{
			cli.Switch(&typed, "typed", "for the script: list what could stand for the last of the words that follow"),
		},
		Examples: []cli.Example{{Line: "source <(loudlint completion bash)", Does: "complete in this shell"}},
		Offer:    cli.Shells,
		Run: func(arguments []string) int {
			if typed {
				return p.say(p.Out, func(w io.Writer) error { return writeOffer(w, program, arguments) })
			}
			if len(arguments) != 1 {
				return p.misunderstood(&cli.CallError{Found: "One shell is to be named.", Hint: "It is one of bash, fish, zsh."}, "help completion")
			}
			script, err := cli.Script(arguments[0])
			if err != nil {
				return p.misunderstood(err, "help completion")
			}
			return p.say(p.Out, func(w io.Writer) error {
				_, err := io.WriteString(w, script)
				return err
			})
		},
	}
}

// writeOffer writes "files" or "words", then a line for each word with what it
// says behind a tab.
func writeOffer(w io.Writer, program *cli.Program, typed []string) error {
	b := bufio.NewWriter(w)
	choices, files := program.Offer(typed)
	if files {
		_, _ = fmt.Fprintln(b, "files")
	} else {
		_, _ = fmt.Fprintln(b, "words")
	}
	for _, c := range choices {
		_, _ = fmt.Fprintf(b, "%s\t%s\n", c.Word, c.Says)
	}
	return b.Flush()
}
