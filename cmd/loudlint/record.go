package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/cmd/loudlint/internal/wholefile"
	"loudlint/linter"
	"loudlint/linter/record"
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// recording holds the flags of record.
type recording struct {
	output  string
	replace bool
	searching
	judging
}

func recordCommand(p *Process) *cli.Command {
	c := &recording{}
	return &cli.Command{
		Name:      "record",
		Arguments: "[DESIGN...]",
		Summary:   "write down the present findings, so that only new ones count",
		About: []string{
			"Writes what is found in designs into a small text file, a line for each finding, which is kept beside them. Held against it with loudlint check --record FILE, only findings that are not in it, or have become graver, count for the gate. A line holds neither places nor figures, so the file changes only where findings come and go.",
			"What was accepted by agreement is not recorded, and what is open is no finding. Names of designs are written from the folder of the file, or from the current one when it is shown, so that it can be used from anywhere.",
		},
		Flags: append([]*cli.Flag{
			outputFlag(&c.output, "the record", "; a record that is there is replaced, and no other file"),
			cli.Switch(&c.replace, "replace", "let --output replace a file that is no record, but never a design"),
			c.belowFlag("record"),
		}, c.declare(p)...),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "the record was written, whatever was found"},
			{Status: statusNotUnderstood, Means: "a design, or the call itself, could not be understood, or the record not be written; nothing was recorded"},
		},
		Examples: []cli.Example{
			{Line: "loudlint record --output hall.record hall" + schema.Ending, Does: "write down what is found in a design"},
			{Line: "loudlint record --output known.record --below jobs", Does: "the same of all designs of a tree of folders"},
			{Line: "loudlint check --record hall.record hall" + schema.Ending, Does: "and from then on, let only new findings count"},
		},
		Run: func(arguments []string) int { return c.run(arguments, p) },
	}
}

func (c *recording) run(arguments []string, p *Process) int {
	paths, err := c.designs(arguments)
	if err == nil {
		err = refuseOutput(c.output, paths)
	}
	if err != nil {
		return p.misunderstood(err, "help record")
	}
	options, ok := c.options(p)
	if !ok {
		return statusNotUnderstood
	}
	if err := c.refuseOther(); err != nil {
		return p.failed(err)
	}
	result := linter.Check(paths, options)
	if err := knownCriterions(c.only, result); err != nil {
		return p.misunderstood(err, "criteria")
	}
	if !result.Understood() {
		p.sayProblems(result.Designs...)
		return p.failed(errors.New("nothing was recorded: not every design could be judged"))
	}
	r := record.Of(result, namesFrom(filepath.Dir(c.output)))
	if c.output == "" {
		return p.say(p.Out, r.Write)
	}
	if err := save(c.output, result, options.Specification, r.Write); err != nil {
		return p.failed(err)
	}
	return p.say(p.Out, func(w io.Writer) error {
		_, err := fmt.Fprintf(w, "%s recorded in %s.\n", wording.Counted(r.Count(), "finding"), textout.Printable(c.output))
		return err
	})
}

// refuseOther refuses to write over a file that is there and is no record.
func (c *recording) refuseOther() error {
	if c.output == "" || c.replace {
		return nil
	}
	f, err := os.Open(c.output)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("look at the record %s: %w", c.output, wholefile.Plain(err))
	}
	defer func() { _ = f.Close() }() // it was only read
	text := make([]byte, 64)
	n, err := io.ReadFull(f, text)
	if err != nil && !errors.Is(err, io.ErrUnexpectedEOF) && !errors.Is(err, io.EOF) {
		return fmt.Errorf("look at the record %s: %w", c.output, wholefile.Plain(err))
	}
	if !record.Is(text[:n]) {
		return fmt.Errorf("write the record: %s is there and is no record; --replace replaces it", c.output)
	}
	return nil
}

// namesFrom gives the names of designs as they are seen from a folder, with
// forward slashes.
func namesFrom(folder string) func(design string) string {
	return func(design string) string {
		from, err := filepath.Abs(folder)
		if err != nil {
			return design
		}
		to, err := filepath.Abs(filepath.FromSlash(design))
		if err != nil {
			return design
		}
		name, err := filepath.Rel(from, to)
		if err != nil {
			return design // on another drive
		}
		return filepath.ToSlash(name)
	}
}

// readRecord reads a record that a call names. What is wrong with it is told.
func (p *Process) readRecord(name string) (*record.Record, bool) {
	text, err := readBounded(name)
	if err != nil {
		p.failed(fmt.Errorf("read the record %s: %w", name, wholefile.Plain(err)))
		return nil, false
	}
	r, problems := record.Read(source.NewFile(filepath.ToSlash(name), text))
	if len(problems) > 0 {
		_, _ = fmt.Fprintf(p.Err, "%s: nothing was judged: the record is not understood.\n", name)
		_ = textout.Problems(p.Err, problems, textout.Options{})
		return nil, false
	}
	return r, true
}

// readBounded reads a file that is no larger than a design may be.
func readBounded(name string) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer func() { _ = f.Close() }() // it was only read
	text, err := io.ReadAll(io.LimitReader(f, schema.MaxFileBytes+1))
	if err == nil && len(text) > schema.MaxFileBytes {
		return nil, fmt.Errorf("it is larger than %d bytes", schema.MaxFileBytes)
	}
	return text, err
}
