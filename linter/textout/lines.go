package textout

import (
	"bufio"
	"io"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/source"
)

// WriteLines writes a result with one line for each outcome, for searching and
// for editors:
//
//	file:line:column: severity: message [check] (subject)
//
// An open outcome has "open" for its severity, one that passes "pass" and what to
// mind on site "caution" (both only with Options.Passes), and what keeps a design
// from being judged "problem". A finding that was accepted by agreement has
// "accepted", with by whom and why at the end of the line; one that was known
// before has "known" in front of its severity, and one that is found no more is
// "gone".
// The column counts visible characters from 1. What stands nowhere in the text
// is placed at 1:1 of the design. Colour and Width do not matter. Errors are
// those of w.
func WriteLines(w io.Writer, r *linter.Result, o Options) error {
	l := BeginLines(w, o)
	for _, d := range r.Designs {
		l.Design(d)
	}
	return l.End()
}

// Lines are written design by design, as WriteLines does for all of a result.
type Lines struct {
	b      *bufio.Writer
	passes bool
}

// BeginLines begins with the first line.
func BeginLines(w io.Writer, o Options) *Lines { return &Lines{bufio.NewWriter(w), o.Passes} }

// Design writes the lines of one design.
func (l *Lines) Design(d *linter.Judged) {
	b := l.b
	if d.Err != nil {
		linePlace(b, source.Span{}, d.Name)
		lineText(b, "problem: ", d.Err.Error())
		_ = b.WriteByte('\n')
	}
	for _, problem := range d.Problems {
		linePlace(b, problem.Span, d.Name)
		lineText(b, "problem: ", problem.String())
		_ = b.WriteByte('\n')
	}
	for i := range d.Outcomes {
		writeOutcome(b, &d.Outcomes[i], d.Name, l.passes)
	}
	if d.Before != nil {
		for _, g := range d.Before.Gone {
			linePlace(b, source.Span{}, d.Name)
			lineText(b, "gone: ", g.Severity.String(), " of ", d.Before.From, ", found no more [", g.Check, "] (", strings.TrimPrefix(g.Identity, g.Check+": "), ")")
			_ = b.WriteByte('\n')
		}
	}
}

// End ends them. Its error is the first of the writer.
func (l *Lines) End() error { return l.b.Flush() }

func writeOutcome(b *bufio.Writer, o *check.Outcome, design string, passes bool) {
	about := []string{" [", o.Check.ID, "] (", o.Subject.String(), ")"}
	if o.Verdict != check.Pass || passes {
		word := o.Verdict.String()
		switch {
		case o.Accepted != nil:
			word = "accepted"
		case o.Known():
			word = "known " + o.Severity.String()
		case o.Verdict == check.Fail:
			word = o.Severity.String()
		}
		linePlace(b, o.Primary, design)
		lineText(b, word, ": ", o.Message)
		lineText(b, about...)
		if a := o.Accepted; a != nil {
			lineText(b, " by ", a.By)
			if a.Until != "" {
				lineText(b, " until ", a.Until)
			}
			lineText(b, ": ", a.Reason)
		}
		_ = b.WriteByte('\n')
	}
	if !passes {
		return // cautions stand on the page; here they would bury the findings
	}
	for _, text := range o.Cautions {
		linePlace(b, o.Primary, design)
		lineText(b, "caution: ", text)
		lineText(b, about...)
		_ = b.WriteByte('\n')
	}
}

func linePlace(b *bufio.Writer, s source.Span, design string) {
	line, column, name := 1, 1, design
	if !s.IsZero() {
		from := s.From()
		line, column, name = from.Line, from.Column, s.File.Name
	}
	lineText(b, name, ":", strconv.Itoa(line), ":", strconv.Itoa(column), ": ")
}

func lineText(b *bufio.Writer, parts ...string) {
	for _, part := range parts {
		_, _ = b.WriteString(Printable(part))
	}
}
