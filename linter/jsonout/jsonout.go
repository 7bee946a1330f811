package jsonout

import (
	_ "embed" // for the schema
	"fmt"
	"io"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/internal/jsonstream"
	"loudlint/linter/textout"
)

// Version is that of the form; see the package comment for what it promises.
const Version = "1.0"

// Schema is the JSON Schema (2020-12) of what Write writes.
//
//go:embed schema.json
var Schema string

// Options is what a result does not know about its call.
type Options struct {
	Name    string // of the program
	Version string // of the program; left out when empty
	// Gate is the least severity that makes a design stop a pipeline; 0 for none.
	Gate check.Severity
	// ExitStatus is what the process ends with. It is read when all designs are
	// written, and left out when nil.
	ExitStatus *int
}

// Write writes a result. Its errors are those of w.
func Write(w io.Writer, r *linter.Result, o Options) error {
	d := Begin(w, o)
	for _, j := range r.Designs {
		d.Design(j)
	}
	return d.End()
}

// Document is written design by design.
type Document struct {
	out     *jsonstream.Writer
	options Options
	summary summary
}

// Begin begins a document.
func Begin(w io.Writer, o Options) *Document {
	d := &Document{out: jsonstream.New(w), options: o}
	d.out.Open("{")
	d.out.Member("format", "loudlint result")
	d.out.Member("version", Version)
	d.out.Member("program", program{o.Name, o.Version})
	d.out.Member("gate", gateOf(o.Gate))
	d.out.List("designs")
	return d
}

func gateOf(s check.Severity) string {
	if s == 0 {
		return "never"
	}
	return s.String()
}

// Design writes one design.
func (d *Document) Design(j *linter.Judged) {
	out := d.out
	out.Item()
	out.Open("{")
	out.Member("name", j.Name)
	out.Member("state", stateOf(j))
	if j.Understood() {
		d.judged(j)
	} else {
		d.notJudged(j)
	}
	out.Close("}")
	d.summary.meet(j)
}

func stateOf(j *linter.Judged) string {
	switch {
	case j.Err != nil:
		return "not-read"
	case len(j.Problems) > 0:
		return "not-understood"
	}
	return "judged"
}

func (d *Document) judged(j *linter.Judged) {
	out := d.out
	out.Member("system", systemOf(j))
	out.Member("files", filesOf(j))
	if j.Held != nil {
		held := make([]string, len(j.Held.Named))
		for i, f := range j.Held.Named {
			held[i] = f.Name
		}
		out.Member("heldAgainst", held)
	}
	out.Member("verdict", textout.Verdict(j))
	out.Member("reachesGate", d.options.Gate != 0 && j.Gravest() >= d.options.Gate)
	out.Member("counts", counts(j.Tally()))
	out.Member("size", size(j.Size()))
	if b := j.Before; b != nil {
		out.Member("comparedWith", compared{From: b.From, Unknown: b.Unknown})
	}
	out.List("outcomes")
	for i := range j.Outcomes {
		out.Item()
		out.Value(outcomeOf(&j.Outcomes[i]))
	}
	out.Close("]")
	if j.Before != nil {
		out.List("gone")
		for i := range j.Before.Gone {
			out.Item()
			out.Value(goneOf(&j.Before.Gone[i]))
		}
		out.Close("]")
	}
	out.List("criteria")
	for i := range j.InForce {
		out.Item()
		out.Value(criterionOf(&j.InForce[i]))
	}
	out.Close("]")
}

func (d *Document) notJudged(j *linter.Judged) {
	if j.Err != nil {
		d.out.Member("error", j.Err.Error())
	}
	if len(j.Problems) == 0 {
		return
	}
	d.out.List("problems")
	for i := range j.Problems {
		d.out.Item()
		d.out.Value(problemOf(&j.Problems[i]))
	}
	d.out.Close("]")
}

// End sums all designs up. Its error is the first of the writer.
func (d *Document) End() error {
	d.out.Close("]")
	d.out.Member("summary", d.summary)
	if d.options.ExitStatus != nil {
		d.out.Member("exitStatus", *d.options.ExitStatus)
	}
	d.out.Member("scope", textout.Scope)
	d.out.Close("}")
	if err := d.out.Flush(); err != nil {
		return fmt.Errorf("write JSON: %w", err)
	}
	return nil
}
