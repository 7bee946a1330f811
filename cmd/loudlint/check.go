package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/cmd/loudlint/internal/wholefile"
	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/jsonout"
	"loudlint/linter/junit"
	"loudlint/linter/record"
	"loudlint/linter/sarif"
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Forms of output.
const (
	formText  = "text"
	formLines = "lines"
	formSARIF = "sarif"
	formJUnit = "junit"
	formJSON  = "json"
	// formMatrix shows no findings but who silences whom.
	formMatrix = "matrix"
)

// checking holds the flags of check.
type checking struct {
	format string
	schema bool
	output string
	gate   string
	passes bool
	record string
	searching
	judging
	page pageFlags
}

func checkCommand(p *Process) *cli.Command {
	c := &checking{format: formText, gate: check.Warning.String()}
	return &cli.Command{
		Name:      "check",
		Arguments: "[DESIGN...]",
		Summary:   "judge designs",
		About: []string{
			"Reads designs, asks the checks of them, and writes what they found: each finding with the sum behind it, the limit and where that comes from, and what would put it right.",
			"A design is a file that ends in " + schema.Ending + ", or a folder whose files of that ending are read together. Without any, the current folder is the design.",
		},
		Flags: slices.Concat([]*cli.Flag{
			cli.Word(&c.format, "format", "form of the result: a page for people (text, the default), a line for each finding, to search in and for editors (lines), SARIF 2.1.0, for code-scanning services (sarif), JUnit XML, for CI services that show tests (junit), JSON, for programs of your own (json), or instead of findings a table of who silences whom on each line (matrix)",
				cli.Choice{Word: formText, Says: "a page for people"}, cli.Choice{Word: formLines, Says: "one line per finding"}, cli.Choice{Word: formSARIF, Says: "SARIF 2.1.0"}, cli.Choice{Word: formJUnit, Says: "JUnit XML"}, cli.Choice{Word: formJSON, Says: "JSON"}, cli.Choice{Word: formMatrix, Says: "who silences whom"}),
			{Name: "json", Doc: "the same as --format json", Set: func(string) error { c.format = formJSON; return nil }},
			cli.Switch(&c.schema, "schema", "show the JSON Schema of --format json, and judge nothing"),
			outputFlag(&c.output, "the result", ""),
			gateFlag(&c.gate, "least severity that makes the exit status 1 (default warning); with never, no finding does"),
			cli.Text(&c.record, "record", "FILE", "hold the findings against a record that loudlint record wrote: those that are in it are told and do not count"),
			cli.Switch(&c.passes, "passes", "show what passes, too"),
			c.belowFlag("judge"),
		}, c.declare(p), c.page.declare()),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "every design was judged, and nothing is as grave as the gate"},
			{Status: statusFindings, Means: "every design was judged, and something that was neither accepted nor known is as grave as the gate or graver"},
			{Status: statusNotUnderstood, Means: "a design, or the call itself, could not be understood, or the result not be written; the other designs are judged all the same"},
		},
		Examples: []cli.Example{
			{Line: "loudlint check hall" + schema.Ending, Does: "judge a design of one file"},
			{Line: "loudlint check hall terminal", Does: "judge two designs, each a folder of files"},
			{Line: "loudlint check --below jobs", Does: "judge all designs of a tree of folders"},
			{Line: "loudlint check --gate error --format sarif --output found.sarif hall", Does: "in CI: stop at errors only, and hand the result to a code-scanning service"},
		},
		Run: func(arguments []string) int { return c.run(arguments, p) },
	}
}

func (c *checking) run(arguments []string, p *Process) int {
	if c.schema {
		return c.writeSchema(arguments, p)
	}
	paths, err := c.designs(arguments)
	if err == nil {
		err = refuseOutput(c.output, paths)
	}
	if err == nil && c.record != "" && sameFile(c.record, c.output) {
		err = &cli.CallError{Found: fmt.Sprintf("--output %s would write over the record that is read.", c.output), Hint: "Give the result a name of its own; loudlint record writes a record anew."}
	}
	if err != nil {
		return p.misunderstood(err, "help check")
	}
	options, ok := c.options(p)
	if !ok {
		return statusNotUnderstood
	}
	run := checkRun{checking: c, process: p, paths: paths, options: options}
	if c.record != "" {
		if run.known, ok = p.readRecord(c.record); !ok {
			return statusNotUnderstood
		}
	}
	if c.output == "" {
		err = run.write(p.Out)
	} else if err = wholefile.Write(c.output, run.write); run.refused != nil {
		err = run.refused
	}
	if call, ok := errors.AsType[*cli.CallError](err); ok {
		return p.misunderstood(call, "criteria")
	}
	if err != nil && !closedPipe(err) {
		return p.failed(err)
	}
	return run.status
}

// writeSchema shows what the JSON form looks like.
func (c *checking) writeSchema(arguments []string, p *Process) int {
	if len(arguments)+len(c.below) > 0 || c.output != "" {
		return p.misunderstood(&cli.CallError{Found: "--schema judges no design and writes no file.", Hint: "It shows the schema and nothing else."}, "help check")
	}
	return p.say(p.Out, func(w io.Writer) error {
		_, err := io.WriteString(w, jsonout.Schema)
		return err
	})
}

// checkRun is one call of check. Designs are judged side by side and written one
// after the other, so that hundreds need the memory of a few.
type checkRun struct {
	*checking
	process *Process
	paths   []string
	options linter.Options
	known   *record.Record // nil when nothing is held against one
	names   criterionNames
	status  int
	refused error // the result would overwrite what was read
}

// form writes designs in one form of output, one after the other.
type form interface {
	Design(d *linter.Judged)
	// End sums up what there is to sum up. Its error is the first of the writer.
	End() error
}

// write judges all designs and writes what was found. That it cannot be written is
// no reason to stop: the exit status tells what was found in all.
func (r *checkRun) write(w io.Writer) error {
	if r.refused = readForCriteria(r.options.Specification, r.output); r.refused != nil {
		return r.refused
	}
	alone := len(r.paths) == 1
	var to form
	if !alone {
		to = r.form(w)
	}
	for d := range linter.Each(r.paths, r.options) {
		if r.known != nil {
			r.known.Mark(&linter.Result{Checks: r.options.Checks, Designs: []*linter.Judged{d}}, "the record "+filepath.ToSlash(r.record), namesFrom(filepath.Dir(r.record)))
		}
		r.status = max(r.status, statusOf(d, r.gate))
		r.names.meet(d)
		if r.refused = readAsPart(d, r.output); r.refused != nil {
			return r.refused
		}
		if alone { // then all is known that stands at its beginning
			if err := r.names.refuse(r.only); err != nil {
				return err
			}
			to = r.form(w)
		}
		to.Design(d)
		// People are told why a design was not judged when the result is written
		// for machines, or out of sight.
		if r.output != "" || slices.Contains([]string{formSARIF, formJUnit, formJSON}, r.format) {
			r.process.sayProblems(d)
		}
	}
	if err := r.names.refuse(r.only); err != nil {
		return err
	}
	return to.End()
}

// form begins the output. The exit status is known then only of one design.
func (r *checkRun) form(w io.Writer) form {
	o := r.page.options(r.process, r.output)
	o.Passes = r.passes
	gate, _ := check.ParseSeverity(r.gate) // 0 for never
	switch r.format {
	case formSARIF:
		var status *int
		if len(r.paths) == 1 {
			status = &r.status
		}
		return sarif.Begin(w, r.options.Checks, sarifTool(status))
	case formJUnit:
		return junit.Begin(w, junit.Options{Name: name, Version: releaseOf(readBuild()), Gate: gate})
	case formJSON:
		return jsonout.Begin(w, jsonout.Options{Name: name, Version: releaseOf(readBuild()), Gate: gate, ExitStatus: &r.status})
	case formLines:
		return textout.BeginLines(w, o)
	case formMatrix:
		return textout.BeginMatrix(w, o)
	}
	return textout.Begin(w, o, len(r.paths))
}

// sarifTool is this program, which ends with a status if that is known, as SARIF
// names it.
func sarifTool(status *int) sarif.Tool {
	tool := sarif.Tool{Name: name, Version: releaseOf(readBuild()), ExitCode: status}
	if folder, err := os.Getwd(); err == nil {
		tool.Folder = filepath.ToSlash(folder)
	}
	return tool
}

// sayProblems tells people why designs were not judged.
func (p *Process) sayProblems(all ...*linter.Judged) {
	// What the call is for is written: only the message may be lost.
	for _, d := range all {
		if d.Err != nil {
			_, _ = fmt.Fprintf(p.Err, "%s: %s\n", name, textout.Printable(d.Err.Error()))
		}
		if len(d.Problems) > 0 {
			_ = textout.Problems(p.Err, d.Problems, textout.Options{})
		}
	}
}

// gateNever lets everything pass that is understood.
const gateNever = "never"

func gateFlag(to *string, doc string) *cli.Flag {
	return cli.Word(to, "gate", doc, cli.Choice{Word: "error"}, cli.Choice{Word: "warning"}, cli.Choice{Word: "note"}, cli.Choice{Word: gateNever, Says: "whatever is found"})
}

// statusOf is the exit status that one design alone would give.
func statusOf(d *linter.Judged, gate string) int {
	least, some := check.ParseSeverity(gate)
	switch {
	case !d.Understood():
		return statusNotUnderstood
	case some && d.Gravest() >= least:
		return statusFindings
	}
	return statusPassed
}

// refuseOutput refuses to write over a design.
func refuseOutput(output string, paths []string) error {
	if output == "" {
		return nil
	}
	if strings.HasSuffix(output, schema.Ending) || slices.ContainsFunc(paths, func(path string) bool { return sameFile(path, output) }) {
		return &cli.CallError{Found: fmt.Sprintf("--output %s would write over a design.", output), Hint: "Give the result a name of its own."}
	}
	return nil
}

// save writes the result into a file that is none of those that were read.
func save(output string, r *linter.Result, held *schema.Specification, write func(io.Writer) error) error {
	if err := readForCriteria(held, output); err != nil {
		return err
	}
	for _, d := range r.Designs {
		if err := readAsPart(d, output); err != nil {
			return err
		}
	}
	err := wholefile.Write(output, write)
	if err != nil && !closedPipe(err) {
		return err
	}
	return nil
}

// readForCriteria refuses a file for the result that was read for its criteria.
func readForCriteria(held *schema.Specification, output string) error {
	if output != "" && held != nil && slices.ContainsFunc(held.Files, func(f *source.File) bool { return sameFile(f.Name, output) }) {
		return fmt.Errorf("write the result: %s was read for its criteria", output)
	}
	return nil
}

// readAsPart refuses one that was read as a part of a design.
func readAsPart(d *linter.Judged, output string) error {
	if output == "" {
		return nil
	}
	if slices.ContainsFunc(filesOf(d), func(f *source.File) bool { return sameFile(f.Name, output) }) {
		return fmt.Errorf("write the result: %s was read as a part of %s", output, d.Name)
	}
	return nil
}

func filesOf(d *linter.Judged) []*source.File {
	if d.Design != nil {
		return d.Design.Files
	}
	var files []*source.File
	for _, problem := range d.Problems {
		if !problem.Span.IsZero() {
			files = append(files, problem.Span.File)
		}
	}
	return files
}

func sameFile(a, b string) bool {
	one, err := os.Stat(filepath.FromSlash(a))
	if err != nil {
		return false
	}
	other, err := os.Stat(b)
	return err == nil && os.SameFile(one, other)
}
