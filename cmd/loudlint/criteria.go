package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/linter/criterion"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
)

// criteriaFlag is that of every command that judges.
func criteriaFlag(to *[]string) *cli.Flag {
	return cli.Texts(to, "criteria", "FILE", "hold the designs against the criteria of a file, which count over those of the designs themselves, a later file over an earlier one")
}

// onlyFlag is that of every command that asks checks. A criterion is known only
// when the designs are read.
func onlyFlag(to *[]string, doc string) *cli.Flag {
	f := cli.Words(to, "only", "CHECK", doc, "check", offerChecks)
	set := f.Set
	f.Set = func(text string) error {
		for word := range strings.SplitSeq(text, ",") {
			if word = strings.TrimSpace(word); strings.HasPrefix(word, criterion.Prefix) {
				*to = append(*to, word)
			} else if err := set(word); err != nil {
				return err
			}
		}
		return nil
	}
	return f
}

// criterionNames are those of the criterions that designs have.
type criterionNames struct {
	known []string
	// untold is set when a design was not understood, which may have others.
	untold bool
}

func (n *criterionNames) meet(d *linter.Judged) {
	n.untold = n.untold || !d.Understood()
	for _, c := range d.Own {
		if !slices.Contains(n.known, c.ID) {
			n.known = append(n.known, c.ID)
		}
	}
}

// refuse refuses the name of a criterion that no design has.
func (n *criterionNames) refuse(only []string) error {
	slices.Sort(n.known)
	for _, word := range only {
		if strings.HasPrefix(word, criterion.Prefix) && !slices.Contains(n.known, word) && !n.untold {
			return cli.Unknown(fmt.Sprintf("There is no check %q: no design has such a criterion.", word), word, n.known)
		}
	}
	return nil
}

// knownCriterions refuses the name of a criterion that no design of a result has.
func knownCriterions(only []string, r *linter.Result) error {
	var n criterionNames
	for _, d := range r.Designs {
		n.meet(d)
	}
	return n.refuse(only)
}

// specify reads the criteria files named in a call. What is wrong with them is
// told once, before any design is looked at.
func (p *Process) specify(options *linter.Options, files []string) bool {
	if len(files) == 0 {
		return true
	}
	held, problems, err := schema.LoadCriteria(files, schema.Options{Folders: options.Folders, Workers: options.Workers})
	if err != nil {
		p.failed(err)
		return false
	}
	if options.Specification = held; len(problems) == 0 {
		problems = linter.SpecificationProblems(*options)
	}
	if len(problems) > 0 {
		_, _ = fmt.Fprintf(p.Err, "%s: nothing was judged: the criteria are not understood.\n", name)
		_ = textout.Problems(p.Err, problems, textout.Options{})
		return false
	}
	return true
}

// limiting holds the flags of criteria.
type limiting struct {
	only     []string
	folders  []string
	criteria []string
}

func criteriaCommand(p *Process) *cli.Command {
	c := &limiting{}
	return &cli.Command{
		Name:      "criteria",
		Arguments: "[DESIGN...]",
		Summary:   "show the limits in force, and where each comes from",
		About: []string{
			"Writes the limits in force for a design as a criteria file: behind each limit stands the file and line that set it, or what its default rests on. Saved, it can be used by other designs, or changed and handed to --criteria.",
			"Criteria count in layers. A file counts over the files it uses, and of two that it uses the later over the earlier; the design's own files count over all that they use; and files named with --criteria count over the design itself, so that who reviews a design has the last word.",
			"Without any design, the current folder is the design, or if it is none, the limits are those that hold without any.",
		},
		Flags: []*cli.Flag{
			criteriaFlag(&c.criteria),
			onlyFlag(&c.only, "show these checks and no others"),
			cli.Texts(&c.folders, "folder", "FOLDER", "where else a file that a design uses may lie"),
		},
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "the limits were written"},
			{Status: statusNotUnderstood, Means: "a design, the criteria or the call could not be understood"},
		},
		Examples: []cli.Example{
			{Line: "loudlint criteria hall" + schema.Ending, Does: "show what holds for a design"},
			{Line: "loudlint criteria --criteria client" + schema.Ending + " hall" + schema.Ending, Does: "show what holds when it is held against a client's criteria"},
		},
		Run: func(arguments []string) int { return c.run(arguments, p) },
	}
}

func (c *limiting) run(arguments []string, p *Process) int {
	options := linter.Options{Checks: rules.All(), Only: c.only, Folders: c.folders}
	if !p.specify(&options, c.criteria) {
		return statusNotUnderstood
	}
	paths, err := designsOf(arguments)
	if err != nil && len(arguments) > 0 {
		return p.misunderstood(err, "help criteria")
	}
	var sheets []textout.CriteriaSheet
	if len(paths) == 0 {
		sheet, _ := sheetOf(&schema.Design{}, options) // what can be wrong was told before
		sheets = append(sheets, sheet)
	}
	status := statusPassed
	for _, path := range paths {
		design, problems, err := schema.Load(path, schema.Options{Folders: c.folders})
		if err != nil {
			status = p.failed(err)
			continue
		}
		var sheet textout.CriteriaSheet
		if len(problems) == 0 {
			sheet, problems = sheetOf(design, options)
		}
		if len(problems) > 0 {
			_ = textout.Problems(p.Err, problems, textout.Options{})
			status = statusNotUnderstood
			continue
		}
		sheets = append(sheets, sheet)
	}
	return max(status, p.say(p.Out, func(w io.Writer) error { return textout.WriteCriteria(w, sheets) }))
}

func sheetOf(design *schema.Design, options linter.Options) (textout.CriteriaSheet, []schema.Problem) {
	inForce, problems := linter.LimitsInForce(design, options)
	sheet := textout.CriteriaSheet{Name: design.Name, InForce: inForce, Criterions: design.Criterions}
	if options.Specification != nil {
		sheet.Criterions = schema.LayCriterions(design.Criterions, options.Specification.Criterions)
	}
	if len(options.Only) > 0 {
		sheet.Criterions = slices.DeleteFunc(slices.Clone(sheet.Criterions), func(c *schema.Criterion) bool {
			return !slices.Contains(options.Only, criterion.ID(c.Name))
		})
	}
	return sheet, problems
}
