package main

import (
	"errors"
	"fmt"
	"io"
	"syscall"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter/textout"
	"loudlint/schema/quantity"
)

// Exit statuses.
const (
	statusPassed        = 0
	statusFindings      = 1
	statusNotUnderstood = 2
)

const name = "loudlint"

// Process is what the command uses of the process it runs in.
type Process struct {
	Out, Err io.Writer
	Env      func(string) string
	Terminal bool // Out is a terminal
	Columns  int  // its width, 0 when that is not known
	// Today is the day of the clock; zero when it is not known, and then no
	// deviation has expired unless --date says so.
	Today quantity.Date
}

// Main does what the words behind the program's name ask for and gives the exit
// status.
func Main(words []string, p Process) int {
	program := programOf(&p)
	if len(words) == 0 {
		// Nothing was judged, so it must not look as if a gate had passed.
		p.say(p.Err, func(w io.Writer) error { return program.WriteHelp(w, p.page("auto", 0)) })
		return statusNotUnderstood
	}
	switch words[0] {
	case "-h", "--help":
		words[0] = "help"
	case "--version":
		words[0] = "version"
	}
	command := program.Find(words[0])
	if command == nil {
		return p.misunderstood(program.NoCommand(words[0]), "help")
	}
	arguments, err := command.Parse(words[1:])
	switch {
	case errors.Is(err, cli.ErrHelp):
		return p.say(p.Out, func(w io.Writer) error { return command.WriteHelp(w, name, p.page("auto", 0)) })
	case err != nil:
		return p.misunderstood(err, "help "+command.Name)
	}
	return command.Run(arguments)
}

func programOf(p *Process) *cli.Program {
	program := &cli.Program{
		Name:    name,
		Summary: "loudlint reads the design of a public-address system and says, before anything is ordered, where it breaks the rules of the trade, with the sums that show it.",
		About:   []string{"It works offline and changes no design. What it says replaces neither local codes nor licensed practice."},
	}
	program.Commands = []*cli.Command{
		checkCommand(p),
		recordCommand(p),
		compareCommand(p),
		drawCommand(p),
		explainCommand(p),
		checksCommand(p),
		criteriaCommand(p),
		figuresCommand(p),
		modelsCommand(p),
		reviewCommand(p),
		reportCommand(p),
		scheduleCommand(p),
		importCommand(p),
		completionCommand(p, program),
		versionCommand(p),
		helpCommand(p, program),
	}
	return program
}

// page gives how text is laid out: colour is "auto", "always" or "never", and a
// width of 0 leaves it to the terminal.
func (p *Process) page(colour string, width int) textout.Options {
	o := textout.Options{Width: width, Colour: colour == "always"}
	if colour == "auto" {
		o.Colour = p.Terminal && p.Env("NO_COLOR") == "" && p.Env("TERM") != "dumb"
	}
	// Beyond the usual width lines are longer than the eye follows.
	if usual := textout.DefaultWidth; o.Width == 0 && p.Columns > 0 && p.Columns < usual {
		o.Width = p.Columns
	}
	return o
}

// pageFlags are those of every command that writes a page.
type pageFlags struct {
	colour string
	width  int
}

func (f *pageFlags) declare() []*cli.Flag {
	f.colour = "auto"
	return []*cli.Flag{
		cli.Word(&f.colour, "colour", "whether to colour the page; auto, the default, does so on a terminal unless NO_COLOR is set",
			cli.Choice{Word: "auto"}, cli.Choice{Word: "always"}, cli.Choice{Word: "never"}),
		cli.Number(&f.width, "width", "COLUMNS", "width of the page (default: that of the terminal, at most 96)", 24, 1000),
	}
}

// options gives how a page is laid out that is shown, or written into a file:
// there neither colour nor width is a terminal's.
func (f *pageFlags) options(p *Process, output string) textout.Options {
	if output != "" {
		return textout.Options{Colour: f.colour == "always", Width: f.width}
	}
	return p.page(f.colour, f.width)
}

// say writes to a stream and gives the exit status: a reader that has seen
// enough and closed the pipe is no reason to fail.
func (p *Process) say(to io.Writer, write func(io.Writer) error) int {
	if err := write(to); err != nil && !closedPipe(err) {
		return p.failed(err)
	}
	return statusPassed
}

func closedPipe(err error) bool {
	return errors.Is(err, syscall.EPIPE) || errors.Is(err, io.ErrClosedPipe)
}

// misunderstood tells what was wrong with a call and where to read on.
func (p *Process) misunderstood(err error, more string) int {
	_, _ = fmt.Fprintf(p.Err, "%s: %s\n%s %s shows how it is called.\n", name, textout.Printable(err.Error()), name, more)
	return statusNotUnderstood
}

// failed tells what went wrong although the call was right.
func (p *Process) failed(err error) int {
	_, _ = fmt.Fprintf(p.Err, "%s: %s\n", name, textout.Printable(err.Error()))
	return statusNotUnderstood
}
