package sarif

import (
	"fmt"
	"io"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/internal/jsonstream"
)

const (
	// schemaURI is where the standard's schema is published.
	schemaURI = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	// language is that of all texts.
	language = "en-GB"
)

// Tool is what a result does not know about the program and its call.
type Tool struct {
	Name    string
	Version string // left out when empty
	// InformationURI is an absolute URI where people read about the program;
	// left out when empty.
	InformationURI string
	// Folder is the absolute path, with forward slashes, of the folder that
	// relative names start from. Absolute names below it are written relative to
	// it. Empty when it is not known.
	Folder string
	// ExitCode is what the process ends with; left out when nil, as it has to be
	// when a design is written before the last one was judged.
	ExitCode *int
}

// Write writes a result as one SARIF log. Its errors are those of w.
func Write(w io.Writer, r *linter.Result, t Tool) error {
	l := Begin(w, r.Checks, t)
	for _, j := range r.Designs {
		l.Design(j)
	}
	return l.End()
}

// Log is a SARIF log that is written design by design, each as a run.
type Log struct {
	out    *jsonstream.Writer
	tool   Tool
	common *rules
}

// Begin begins a log of designs of which these checks are asked.
func Begin(w io.Writer, checks []*check.Check, t Tool) *Log {
	l := &Log{out: jsonstream.New(w), tool: t, common: rulesOf(checks)}
	l.out.Open("{")
	l.out.Member("$schema", schemaURI)
	l.out.Member("version", "2.1.0")
	l.out.List("runs")
	return l
}

// Design writes the run of one design.
func (l *Log) Design(j *linter.Judged) {
	rules := l.common.with(j.Own)
	l.out.Item()
	l.out.Open("{")
	l.out.Member("tool", tool{Driver: toolComponent{
		Name: l.tool.Name, Version: l.tool.Version, InformationURI: l.tool.InformationURI, Language: language,
		Notifications: notificationDescriptors(), Rules: rules.descriptors,
	}})
	writeRun(l.out, j, rules, l.tool)
	l.out.Close("}")
}

// End ends the log. Its error is the first of the writer.
func (l *Log) End() error {
	l.out.Close("]")
	l.out.Close("}")
	if err := l.out.Flush(); err != nil {
		return fmt.Errorf("write SARIF: %w", err)
	}
	return nil
}
