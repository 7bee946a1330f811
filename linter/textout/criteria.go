package textout

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"loudlint/linter"
	"loudlint/schema"
	"loudlint/schema/source"
)

// CriteriaSheet is what holds for the checks of one design.
type CriteriaSheet struct {
	// Name is the design's; empty for what holds without any.
	Name    string
	InForce []linter.InForce
	// Criterions are the checks of somebody's own that are asked too.
	Criterions []*schema.Criterion
}

// WriteCriteria writes the limits in force as a criteria file that can be saved
// and used: behind each limit stands in a comment where it comes from. Its
// errors are those of w.
func WriteCriteria(w io.Writer, sheets []CriteriaSheet) error {
	b := bufio.NewWriter(w)
	for i, s := range sheets {
		if i > 0 {
			_ = b.WriteByte('\n')
		}
		of := "without any design"
		if s.Name != "" {
			of = "for " + Printable(s.Name)
		}
		writeLines(b, "# The limits in force "+of+".", "# Saved as a file of its own, this is what a design can use, or what --criteria takes.", "")
		writeCriteria(b, s.InForce)
		for _, c := range s.Criterions {
			writeLines(b, "", "# "+fileLine(c.Header), c.Text())
		}
	}
	return b.Flush()
}

func writeLines(b *bufio.Writer, lines ...string) {
	for _, line := range lines {
		_, _ = b.WriteString(line)
		_ = b.WriteByte('\n')
	}
}

func writeCriteria(b *bufio.Writer, all []linter.InForce) {
	writeLines(b, "criteria {")
	var plain []string
	first := true
	for i := range all {
		settings := settingsOf(&all[i])
		if len(settings) == 0 {
			if all[i].Check.Origin.IsZero() { // the others are written out below
				plain = append(plain, all[i].Check.ID)
			}
			continue
		}
		if !first {
			writeLines(b, "")
		}
		first = false
		if basis := all[i].Check.Basis; basis != "" {
			writeLines(b, "  # "+basis)
		}
		writeLines(b, fmt.Sprintf("  limit %q {", all[i].Check.ID))
		writeSettings(b, settings)
		writeLines(b, "  }")
	}
	writeLines(b, "}")
	if len(plain) > 0 {
		writeLines(b, "", "# Without limits, each with its own severities: "+strings.Join(plain, ", ")+".")
	}
}

// setting is one line of a limit block.
type setting struct{ name, value, origin string }

// settingsOf gives what a limit block has to say to bring about what is in force.
func settingsOf(f *linter.InForce) []setting {
	var all []setting
	for i := range f.Check.Params {
		p := &f.Check.Params[i]
		l := f.Limits.Get(p.Name)
		name, value, _ := strings.Cut(p.Exactly(l.Value), " = ")
		s := setting{name: name, value: value, origin: "default"}
		switch {
		case !l.Origin.IsZero():
			s.origin = fileLine(l.Origin)
		case p.Basis != "":
			s.origin += "; " + p.Basis
		}
		all = append(all, s)
	}
	severity := setting{name: "severity", origin: "default"}
	if !f.Origin.IsZero() {
		severity.origin = fileLine(f.Origin)
	}
	switch {
	case f.Off:
		severity.value = `"off"`
	case f.Severity != 0:
		severity.value = `"` + f.Severity.String() + `"`
	default:
		return all
	}
	return append(all, severity)
}

func writeSettings(b *bufio.Writer, all []setting) {
	name, value := 0, 0
	for _, s := range all {
		name, value = max(name, len(s.name)), max(value, len(s.value))
	}
	for _, s := range all {
		writeLines(b, fmt.Sprintf("    %-*s = %-*s # %s", name, s.name, value, s.value, s.origin))
	}
}

// fileLine names a place in a comment.
func fileLine(s source.Span) string {
	return Printable(fmt.Sprintf("%s:%d", s.File.Name, s.From().Line))
}
