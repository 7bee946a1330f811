package main

import (
	"io"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/schema/quantity"
)

// onePage is what commands have in common that make one thing of one design.
type onePage struct {
	output string
	judging
}

// outputFlag declares --output, which may be written -o: what goes into the file,
// "" where nobody can be in doubt, and what else is to be known.
func outputFlag(to *string, what, more string) *cli.Flag {
	if what != "" {
		what += " "
	}
	f := cli.Text(to, "output", "FILE", "write "+what+"into a file, whole or not at all, instead of showing it"+more)
	f.Short = "o"
	return f
}

func (o *onePage) declareAll(p *Process) []*cli.Flag {
	flags := append([]*cli.Flag{
		outputFlag(&o.output, "", ""),
	}, o.declare(p)...)
	// A picture or a report is the same on any day unless a day is given.
	o.date = quantity.Date{}
	return flags
}

// run judges the one design that is named and writes what is made of it.
func (o *onePage) run(arguments []string, p *Process, command string, write func(io.Writer, *linter.Judged) error) int {
	path, err := oneDesign(arguments)
	if err == nil {
		err = refuseOutput(o.output, []string{path})
	}
	if err != nil {
		return p.misunderstood(err, "help "+command)
	}
	options, ok := o.options(p)
	if !ok {
		return statusNotUnderstood
	}
	result := linter.Check([]string{path}, options)
	if err := knownCriterions(o.only, result); err != nil {
		return p.misunderstood(err, "criteria")
	}
	if !result.Understood() {
		p.sayProblems(result.Designs...)
		return statusNotUnderstood
	}
	written := func(w io.Writer) error { return write(w, result.Designs[0]) }
	if o.output == "" {
		return p.say(p.Out, written)
	}
	if err := save(o.output, result, options.Specification, written); err != nil {
		return p.failed(err)
	}
	return statusPassed
}
