package record

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
)

// Record is what was found when it was written.
type Record struct{ Designs []Design }

// Design is what was found in one design, in the order of identities.
type Design struct {
	Name     string
	Findings []Finding
}

// Finding is one finding.
type Finding struct {
	Severity check.Severity
	Identity string // as in check.Outcome
}

// Of records the findings of designs, each under the name the function gives its
// design. What was accepted by agreement is not recorded: the agreement speaks for
// it for as long as it holds, and no longer.
func Of(r *linter.Result, name func(design string) string) *Record {
	record := &Record{}
	for _, j := range r.Designs {
		d := Design{Name: name(j.Name)}
		for i := range j.Outcomes {
			if o := &j.Outcomes[i]; o.Counts() {
				d.Findings = append(d.Findings, Finding{Severity: o.Severity, Identity: o.Identity})
			}
		}
		slices.SortFunc(d.Findings, func(a, b Finding) int { return cmp.Compare(a.Identity, b.Identity) })
		record.Designs = append(record.Designs, d)
	}
	slices.SortStableFunc(record.Designs, func(a, b Design) int { return cmp.Compare(a.Name, b.Name) })
	return record
}

// Find gives what was found in a design, nil when it is not recorded.
func (r *Record) Find(name string) *Design {
	at := slices.IndexFunc(r.Designs, func(d Design) bool { return d.Name == name })
	if at < 0 {
		return nil
	}
	return &r.Designs[at]
}

// Count gives how many findings there are in all.
func (r *Record) Count() int {
	n := 0
	for _, d := range r.Designs {
		n += len(d.Findings)
	}
	return n
}

// head is the first line of the file, up to the version of its form.
const (
	head    = "loudlint record "
	version = "1"
)

const (
	designWord    = "design"
	severityWidth = len("warning")
)

// Write writes the file. Its errors are those of w.
func (r *Record) Write(w io.Writer) error {
	b := bufio.NewWriter(w)
	_, _ = b.WriteString(head + version + "\n# Findings that are known, written by `loudlint record`. With `loudlint check --record` only others count.\n")
	for _, d := range r.Designs {
		_, _ = fmt.Fprintf(b, "\n%s %s\n", designWord, escaped(d.Name))
		for _, f := range d.Findings {
			_, _ = fmt.Fprintf(b, "%-*s %s\n", severityWidth, f.Severity, escaped(f.Identity))
		}
	}
	if err := b.Flush(); err != nil {
		return fmt.Errorf("write the record: %w", err)
	}
	return nil
}

// Is tells whether a text begins as a record does, whatever its version.
func Is(text []byte) bool {
	return strings.HasPrefix(strings.TrimPrefix(string(text[:min(len(text), 3+len(head))]), "\ufeff"), head)
}
