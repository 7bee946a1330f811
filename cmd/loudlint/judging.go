package main

import (
	"errors"
	"fmt"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/rules"
	"loudlint/schema/quantity"
)

// judging holds the flags of every command that judges designs.
type judging struct {
	only     []string
	folders  []string
	criteria []string
	workers  int
	date     quantity.Date
}

// declare declares the flags. The day is today unless it is given.
func (f *judging) declare(p *Process) []*cli.Flag {
	f.date = p.Today
	return []*cli.Flag{
		onlyFlag(&f.only, "ask these checks and no others"),
		criteriaFlag(&f.criteria),
		cli.Texts(&f.folders, "folder", "FOLDER", "where else a file that a design uses may lie"),
		{
			Name: "date", Value: "YEAR-MONTH-DAY", Doc: "the day for which deviations are looked at (default today); given, the result is the same on any day",
			Offer: func() []cli.Choice { return nil },
			Set: func(text string) error {
				date, err := quantity.ParseDate(text)
				if problem, ok := errors.AsType[*quantity.Error](err); ok {
					return &cli.CallError{Found: fmt.Sprintf("--date: found %s.", problem.Found), Hint: fmt.Sprintf("It is %s.", problem.Expected)}
				}
				f.date = date
				return err
			},
		},
		cli.Number(&f.workers, "workers", "NUMBER", "processors to use at most (default all); the result is the same", 1, 1024),
	}
}

// options gives the options of the engine; when the criteria files are not
// understood, that has been told and nothing can be judged.
func (f *judging) options(p *Process) (options linter.Options, ok bool) {
	options = linter.Options{Checks: rules.All(), Only: f.only, Workers: f.workers, Folders: f.folders, Date: f.date}
	return options, p.specify(&options, f.criteria)
}
