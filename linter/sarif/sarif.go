package sarif

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"

	"loudlint/linter"
	"loudlint/linter/check"
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
	out    *stream
	tool   Tool
	common *rules
}

// Begin begins a log of designs of which these checks are asked.
func Begin(w io.Writer, checks []*check.Check, t Tool) *Log {
	l := &Log{out: newStream(w), tool: t, common: rulesOf(checks)}
	l.out.open("{")
	l.out.member("$schema", schemaURI)
	l.out.member("version", "2.1.0")
	l.out.list("runs")
	return l
}

// Design writes the run of one design.
func (l *Log) Design(j *linter.Judged) {
	rules := l.common.with(j.Own)
	l.out.item()
	l.out.open("{")
	l.out.member("tool", tool{Driver: toolComponent{
		Name: l.tool.Name, Version: l.tool.Version, InformationURI: l.tool.InformationURI, Language: language,
		Notifications: notificationDescriptors(), Rules: rules.descriptors,
	}})
	writeRun(l.out, j, rules, l.tool)
	l.out.close("}")
}

// End ends the log. Its error is the first of the writer.
func (l *Log) End() error {
	l.out.close("]")
	l.out.close("}")
	if err := l.out.flush(); err != nil {
		return fmt.Errorf("write SARIF: %w", err)
	}
	return nil
}

// stream writes JSON piece by piece, each on a line, so that a log of any size
// needs the memory of one result.
type stream struct {
	w       *bufio.Writer // keeps its first error until flush
	scratch bytes.Buffer
	encoder *json.Encoder
	err     error // of encoding
	more    bool  // the object or list that is open has something in it
}

func newStream(w io.Writer) *stream {
	s := &stream{w: bufio.NewWriter(w)}
	s.encoder = json.NewEncoder(&s.scratch)
	s.encoder.SetEscapeHTML(false) // the log is no part of a web page: "<" stays "<"
	return s
}

func (s *stream) open(bracket string) {
	_, _ = s.w.WriteString(bracket)
	s.more = false
}

func (s *stream) close(bracket string) {
	_, _ = s.w.WriteString("\n" + bracket)
	s.more = true
}

// item begins the next thing in the object or list that is open.
func (s *stream) item() {
	if s.more {
		_ = s.w.WriteByte(',')
	}
	_ = s.w.WriteByte('\n')
	s.more = true
}

func (s *stream) value(v any) {
	s.scratch.Reset()
	if err := s.encoder.Encode(v); err != nil && s.err == nil {
		s.err = err
	}
	_, _ = s.w.Write(bytes.TrimSuffix(s.scratch.Bytes(), []byte{'\n'}))
}

func (s *stream) member(name string, v any) {
	s.item()
	_, _ = s.w.WriteString(`"` + name + `":`)
	s.value(v)
}

// list opens a list that is a member.
func (s *stream) list(name string) {
	s.item()
	s.open(`"` + name + `":[`)
}

func (s *stream) flush() error {
	_ = s.w.WriteByte('\n')
	if s.err != nil {
		return s.err
	}
	return s.w.Flush()
}
