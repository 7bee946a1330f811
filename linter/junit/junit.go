package junit

import (
	"bufio"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// Options is what a result does not know about its call.
type Options struct {
	Name    string // of the program
	Version string // of the program; left out when empty
	// Gate is the least severity that is a failure; with 0 no finding is one.
	Gate check.Severity
}

// Write writes a result. Its errors are those of w.
func Write(w io.Writer, r *linter.Result, o Options) error {
	s := Begin(w, o)
	for _, j := range r.Designs {
		s.Design(j)
	}
	return s.End()
}

// Suites are written design by design, each as a suite.
type Suites struct {
	w       *bufio.Writer // keeps its first error until it is flushed
	options Options
}

// Begin begins with the first suite.
func Begin(w io.Writer, o Options) *Suites {
	s := &Suites{bufio.NewWriter(w), o}
	s.put(xml.Header)
	s.open(0, "testsuites", attribute{"name", o.Name})
	return s
}

// End ends the last one. Its error is the first of the writer.
func (s *Suites) End() error {
	s.close(0, "testsuites")
	if err := s.w.Flush(); err != nil {
		return fmt.Errorf("write JUnit XML: %w", err)
	}
	return nil
}

// testcase is one line that a service shows.
type testcase struct {
	check string
	name  string
	file  string
	line  int
	// result is "failure", "error" or "skipped"; empty for a case that passes.
	result  string
	kind    string // of a failure or error
	message string
	more    []string // lines that follow the message
	out     []string // lines for who looks closer
}

// Design writes the suite of one design.
func (s *Suites) Design(j *linter.Judged) {
	var cases []testcase
	if j.Understood() {
		cases = make([]testcase, 0, len(j.Outcomes)+len(j.Off))
		for i := range j.Outcomes {
			cases = append(cases, s.caseOf(&j.Outcomes[i], j))
		}
		for i := range j.InForce {
			if f := &j.InForce[i]; f.Off {
				cases = append(cases, offCase(f))
			}
		}
	} else {
		cases = []testcase{notJudged(j)}
	}
	count := map[string]int{}
	for i := range cases {
		count[cases[i].result]++
	}
	s.open(1, "testsuite",
		attribute{"name", j.Name},
		attribute{"tests", strconv.Itoa(len(cases))},
		attribute{"failures", strconv.Itoa(count["failure"])},
		attribute{"errors", strconv.Itoa(count["error"])},
		attribute{"skipped", strconv.Itoa(count["skipped"])})
	s.properties(j)
	for i := range cases {
		s.testcase(&cases[i], classOf(j.Name))
	}
	if j.Understood() {
		var mind []string
		for _, c := range textout.Cautions(j) {
			mind = append(mind, "Mind on site: "+c)
		}
		s.text(2, "system-out", append(mind, textout.Scope))
	}
	s.close(1, "testsuite")
}

// classOf is what cases of a design have in front of their check.
func classOf(design string) string {
	name := strings.TrimSuffix(design, schema.Ending)
	if name == "" || name == "." {
		return "design" // the current folder has no name
	}
	return name
}

func (s *Suites) caseOf(o *check.Outcome, j *linter.Judged) testcase {
	c := testcase{check: o.Check.ID, name: strings.TrimPrefix(o.Identity, o.Check.ID+": "), file: j.Name, line: 1}
	if !o.Primary.IsZero() {
		c.file, c.line = o.Primary.File.Name, o.Primary.From().Line
	}
	if o.Verdict == check.Pass {
		return c
	}
	told := textout.Told(o)
	c.message, c.more = told[0], slices.Concat(told[1:], []string{fmt.Sprintf("At %s:%d.", c.file, c.line)})
	switch {
	case o.Verdict == check.Open:
		c.result = "skipped"
		c.message = "open: " + c.message
	case o.Accepted != nil:
		c.result = "skipped"
		agreed := "accepted by " + o.Accepted.By
		if o.Accepted.Until != "" {
			agreed += " until " + o.Accepted.Until
		}
		c.message = agreed + ": " + o.Accepted.Reason
		c.more = append([]string{otherwise(o)}, c.more...)
	case o.Known():
		c.result = "skipped"
		c.message = "known to " + j.Before.From
		c.more = append([]string{otherwise(o)}, c.more...)
	case s.options.Gate == 0 || o.Severity < s.options.Gate:
		c.out = append([]string{otherwise(o) + " It does not reach the gate."}, c.more...)
		c.message, c.more = "", nil
	default:
		c.result, c.kind = "failure", o.Severity.String()
	}
	return c
}

// otherwise tells a finding that is no failure with its severity.
func otherwise(o *check.Outcome) string {
	return wording.Sentence(o.Severity.String() + ": " + o.Message)
}

func offCase(f *linter.InForce) testcase {
	c := testcase{check: f.Check.ID, name: "not asked", result: "skipped", message: "off unless criteria turn it on"}
	if !f.Origin.IsZero() {
		c.message = "turned off, " + check.SetAt(f.Origin)
		c.file, c.line = f.Origin.File.Name, f.Origin.From().Line
	}
	return c
}

// notJudged is the one case of a design that could not be judged.
func notJudged(j *linter.Judged) testcase {
	c := testcase{check: "design", name: "it can be judged", file: j.Name, line: 1, result: "error"}
	if j.Err != nil {
		c.kind, c.message = "design-not-read", wording.Sentence(j.Err.Error())
		return c
	}
	c.kind = "design-not-understood"
	c.message = "The text is not understood in " + wording.Counted(len(j.Problems), "place") + "."
	for i := range j.Problems {
		p := &j.Problems[i]
		text := wording.Sentence(p.String())
		if !p.Span.IsZero() {
			from := p.Span.From()
			text = fmt.Sprintf("%s:%d:%d: %s", p.Span.File.Name, from.Line, from.Column, text)
			if i == 0 {
				c.file, c.line = p.Span.File.Name, from.Line
			}
		}
		c.more = append(c.more, text)
	}
	return c
}

func (s *Suites) properties(j *linter.Judged) {
	var all []attribute
	add := func(name, value string) {
		if value != "" {
			all = append(all, attribute{name, value})
		}
	}
	if d := j.Design; d != nil {
		add("system", d.System.Name)
		add("reference", d.System.Reference.V)
		add("revision", d.System.Revision.V)
	}
	if j.Held != nil {
		for _, f := range j.Held.Named {
			add("held against", f.Name)
		}
	}
	if j.Understood() {
		add("answers", textout.Counts(j))
	}
	add("version", s.options.Version)
	if len(all) == 0 {
		return
	}
	s.open(2, "properties")
	for _, p := range all {
		s.empty(3, "property", attribute{"name", p.name}, attribute{"value", p.value})
	}
	s.close(2, "properties")
}

func (s *Suites) testcase(c *testcase, class string) {
	all := []attribute{{"name", c.name}, {"classname", class + "." + c.check}}
	if c.file != "" {
		all = append(all, attribute{"file", c.file}, attribute{"line", strconv.Itoa(c.line)})
	}
	if c.result == "" && len(c.out) == 0 {
		s.empty(2, "testcase", all...)
		return
	}
	s.open(2, "testcase", all...)
	if c.result != "" {
		told := []attribute{{"message", c.message}}
		if c.kind != "" {
			told = append(told, attribute{"type", c.kind})
		}
		s.text(3, c.result, c.more, told...)
	}
	if len(c.out) > 0 {
		s.text(3, "system-out", c.out)
	}
	s.close(2, "testcase")
}
