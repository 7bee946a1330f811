package check

import (
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Verdict is the answer to a check's question.
type Verdict int

// Verdicts. Silence is never a pass.
const (
	Pass Verdict = iota + 1
	Fail
	Open // the design does not say enough to judge
)

// String gives "pass", "fail" or "open", the words SARIF uses too.
func (v Verdict) String() string {
	switch v {
	case Pass:
		return "pass"
	case Fail:
		return "fail"
	case Open:
		return "open"
	}
	return "none"
}

// Outcome is the answer of one check for one subject. It is data: writers make
// their texts of it and compute nothing.
type Outcome struct {
	Check    *Check
	Verdict  Verdict
	Severity Severity // of a fail; 0 otherwise
	// SeverityOrigin is where criteria set the severity; zero when the check gave
	// it. The engine sets it.
	SeverityOrigin source.Span
	Subject        Subject
	// Key tells apart several answers of one check about one subject; it never
	// holds a number that can change.
	Key string
	// Message is a sentence with the figures, in the trade's words.
	Message string
	// Evidence are the figures that were compared, each with its arithmetic.
	Evidence []Evidence
	// Limit is what they were held against; nil where there is none.
	Limit *Bound
	// Primary is the tightest thing a person would edit.
	Primary source.Span
	// Related are other places that matter, in the order of reading.
	Related []schema.Place
	// Remedies are changes that clear a finding, best first.
	Remedies []Remedy
	// Missing is what an open outcome waits for.
	Missing []analysis.Missing
	// Cautions are what to mind on site because of what the design holds. They
	// are no findings and are shown whatever the verdict.
	Cautions []string
	// Assumed lists what was taken for granted, each a sentence without its
	// full stop.
	Assumed []string
	// Accepted is the agreement by which a fail is accepted; nil when there is
	// none. The engine sets it.
	Accepted *Acceptance
	// State is how it stands to what was known before, where anything was. Was is
	// the severity that the finding had then, 0 when there was none.
	State State
	Was   Severity
	// Identity names the outcome across revisions: check, path of the subject,
	// key, and an ordinal where these are equal. The engine sets it.
	Identity string
}

// Counts tells that the outcome is a finding that has to be dealt with: a fail
// that nobody accepted.
func (o *Outcome) Counts() bool { return o.Verdict == Fail && o.Accepted == nil }

// Known tells that the finding was known before and was as grave.
func (o *Outcome) Known() bool {
	return o.State != NotCompared && o.Verdict == Fail && o.Was >= o.Severity
}

// Gates tells that the outcome is a finding that has to be dealt with now: one
// that nobody accepted and that was not known before.
func (o *Outcome) Gates() bool { return o.Counts() && !o.Known() }

// State is how an outcome stands to what was known before.
type State int

// States.
const (
	NotCompared State = iota
	New               // a finding that was none before, or another answer that was not given
	Unchanged         // the same answer as before
	Changed           // another answer, or another severity
)

// String gives "new", "unchanged" or "changed".
func (s State) String() string {
	switch s {
	case New:
		return "new"
	case Unchanged:
		return "unchanged"
	case Changed:
		return "changed"
	case NotCompared:
	}
	return "not compared"
}

// Subject is the part of the system an outcome is about.
type Subject struct {
	// Path leads from the outermost part to the subject, such as amplifier
	// "Rack", channel "Main". It is empty for the job as a whole.
	Path []Step
	// Span is the header of the part.
	Span source.Span
}

// Step is one part of a subject's path.
type Step struct {
	Kind string // "amplifier", "channel", "output", "line", "loudspeaker", …
	Name string
}

// String writes a step as it is read: amplifier "Rack".
func (s Step) String() string {
	if s.Name == "" {
		return s.Kind
	}
	return s.Kind + ` "` + s.Name + `"`
}

// String writes the path from the outside in.
func (s Subject) String() string {
	if len(s.Path) == 0 {
		return "the job"
	}
	var b strings.Builder
	for i, p := range s.Path {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(p.Kind)
		if p.Name != "" {
			b.WriteString(` "`)
			b.WriteString(p.Name)
			b.WriteByte('"')
		}
	}
	return b.String()
}

// Evidence is one figure of an outcome.
type Evidence struct {
	Name   string  // "load"
	Value  string  // as printed, with unit: "51 W"
	Number float64 // the same as a number in Unit; not a number where it is words
	Unit   string
	Sum    string         // the arithmetic, "" when there is none
	From   []schema.Place // the inputs that made it
}

// Bound is what a figure was held against.
type Bound struct {
	Text   string  // "at most 216 W (90 % of 240 W)"
	Number float64 // the figure itself, in Unit
	Unit   string
	AtMost bool        // the figure may be at most this; otherwise at least
	Basis  string      // where the limit comes from
	Origin source.Span // where criteria set it; zero for a default
}

// Relation is how the figure stands to the limit: "at most" or "at least" it.
func (b *Bound) Relation() string {
	if b.AtMost {
		return "at most"
	}
	return "at least"
}

// Says gives the limit with its basis, as far as there is one.
func (b *Bound) Says() string {
	if b.Basis == "" {
		return b.Text
	}
	return b.Text + "; " + b.Basis
}

// Remedy is a change that clears a finding.
type Remedy struct {
	// Text is a sentence that begins with a verb and names the target figure.
	Text string
	// Sure says what it rests on.
	Sure Certainty
	// Edits make the change in the design's text; nil when it cannot be written
	// as one. A test applies them and demands that the finding is gone and none
	// has come.
	Edits []Edit
}

// Edit replaces what stands in a span, or inserts at an empty one.
type Edit struct {
	Span source.Span
	New  string
}

// Write makes the edit that lets a part say attribute = value: the value that
// stands in its own braces is replaced; one that comes from elsewhere (a model,
// another line) or from nowhere is written after the opening brace.
func Write(part *schema.Part, old source.Span, attribute, value string) Edit {
	body := part.Body
	if old.File == body.File && old.File != nil && old.Start > body.Start && old.End < body.End {
		return Edit{Span: old, New: value}
	}
	line := "\n  " + attribute + " = " + value
	if text := body.Text(); !strings.Contains(text, "\n") { // one line holds one attribute: spread it out
		inner := strings.TrimSpace(strings.TrimSuffix(strings.TrimPrefix(text, "{"), "}"))
		if inner != "" {
			inner = "\n  " + inner
		}
		return Edit{Span: body, New: "{" + line + inner + "\n}"}
	}
	return Edit{Span: source.Span{File: body.File, Start: body.Start + 1, End: body.Start + 1}, New: line}
}

// Certainty is what a remedy rests on.
type Certainty int

// Certainties.
const (
	Advice   Certainty = iota + 1 // usual practice; look at the case
	Computed                      // the target figure follows from the figures shown
	Proved                        // the changed design was computed again
)

// String gives "advice", "computed" or "proved".
func (c Certainty) String() string {
	switch c {
	case Advice:
		return "advice"
	case Computed:
		return "computed"
	case Proved:
		return "proved"
	}
	return ""
}

// Says puts a certainty behind a remedy: "proved: the design was worked out again
// with it".
func (c Certainty) Says() string {
	switch c {
	case Advice:
		return "usual practice: look at the case"
	case Computed:
		return "follows from the figures above"
	case Proved:
		return "proved: the design was worked out again with it"
	}
	return ""
}
