package check

import (
	"math"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Report takes the answers of one check about one subject. Checks fill nothing
// by hand that follows from the check or the subject.
type Report struct {
	run      *Run
	subject  Subject
	answered bool
}

// Limit gives a parameter in force.
func (r *Report) Limit(name string) Limit { return r.run.Limits.Get(name) }

// System is the system the question is asked of.
func (r *Report) System() *analysis.System { return r.run.System }

// US tells that lengths and sizes are printed in US units.
func (r *Report) US() bool { return r.run.System.Design.System.US() }

// Pass answers that the subject holds, with a sentence that shows it.
func (r *Report) Pass(message string) *Answer { return r.answer(Pass, 0, message) }

// Fail answers that it does not.
func (r *Report) Fail(severity Severity, message string) *Answer {
	return r.answer(Fail, severity, message)
}

// Open answers that the design does not say enough.
func (r *Report) Open(message string, missing ...analysis.Missing) *Answer {
	a := r.answer(Open, 0, message)
	a.outcome.Missing = missing
	return a
}

// NotAsked says that the question does not arise for the subject: it gives no
// outcome, but not by forgetting.
func (r *Report) NotAsked() { r.answered = true }

func (r *Report) answer(v Verdict, s Severity, message string) *Answer {
	r.answered = true
	r.run.Outcomes = append(r.run.Outcomes, Outcome{
		Check: r.run.Check, Verdict: v, Severity: s, Subject: r.subject, Message: message, Primary: r.subject.Span,
	})
	return &Answer{outcome: &r.run.Outcomes[len(r.run.Outcomes)-1], check: r.run.Check, limits: r.run.Limits}
}

// Answer adds to an outcome. It is to be filled before the next answer is given.
type Answer struct {
	outcome *Outcome
	check   *Check
	limits  Limits
}

// Key tells the answer apart from others of this check about this subject.
func (a *Answer) Key(key string) *Answer { a.outcome.Key = key; return a }

// At sets the place a person would edit. A zero span changes nothing.
func (a *Answer) At(span source.Span) *Answer {
	if !span.IsZero() {
		a.outcome.Primary = span
	}
	return a
}

// See adds a place that matters. A zero span, or a place already there, adds
// nothing.
func (a *Answer) See(span source.Span, note string) *Answer {
	if span.IsZero() || span == a.outcome.Primary {
		return a
	}
	for _, p := range a.outcome.Related {
		if p.Span == span {
			return a
		}
	}
	a.outcome.Related = append(a.outcome.Related, schema.Place{Span: span, Note: note})
	return a
}

// Limit gives a parameter in force.
func (a *Answer) Limit(name string) Limit { return a.limits.Get(name) }

// Evidence adds figures.
func (a *Answer) Evidence(all ...Evidence) *Answer {
	a.outcome.Evidence = append(a.outcome.Evidence, all...)
	return a
}

// Caution adds what to mind on site.
func (a *Answer) Caution(all ...string) *Answer {
	a.outcome.Cautions = append(a.outcome.Cautions, all...)
	return a
}

// Assumed adds what was taken for granted.
func (a *Answer) Assumed(all ...string) *Answer {
	a.outcome.Assumed = append(a.outcome.Assumed, all...)
	return a
}

// AtMost says what the figure may be at most, by which limit in force.
func (a *Answer) AtMost(text string, number float64, unit string, l Limit) *Answer {
	a.outcome.Limit = &Bound{Text: text, Number: number, Unit: unit, AtMost: true, Basis: l.Basis(a.check), Origin: l.Origin}
	return a
}

// AtLeast says what the figure must be at least, by which limit in force.
func (a *Answer) AtLeast(text string, number float64, unit string, l Limit) *Answer {
	a.outcome.Limit = &Bound{Text: text, Number: number, Unit: unit, Basis: l.Basis(a.check), Origin: l.Origin}
	return a
}

// Bound says what the figure was held against when that is no parameter, such
// as a rating on a data sheet.
func (a *Answer) Bound(b Bound) *Answer { a.outcome.Limit = &b; return a }

// Remedy adds a change that clears the finding; best first.
func (a *Answer) Remedy(sure Certainty, text string, edits ...Edit) *Answer {
	a.outcome.Remedies = append(a.outcome.Remedies, Remedy{Text: text, Sure: sure, Edits: edits})
	return a
}

// Of makes evidence of a computed figure.
func Of[Q interface {
	~float64
	String() string
}](name string, f analysis.Figure[Q]) Evidence {
	return Evidence{Name: name, Value: f.Value.String(), Number: float64(f.Value), Unit: unitOf(any(f.Value)), Sum: f.Sum, From: f.From}
}

// Plainly makes evidence of a quantity without arithmetic of its own.
func Plainly[Q interface {
	~float64
	String() string
}](name string, q Q, from ...schema.Place) Evidence {
	return Evidence{Name: name, Value: q.String(), Number: float64(q), Unit: unitOf(any(q)), From: from}
}

// Stated makes evidence of what the design says in words.
func Stated(name, value string) Evidence {
	return Evidence{Name: name, Value: value, Number: math.NaN()}
}

// Number makes evidence of a bare number, with the unit it is in.
func Number(name string, value float64, unit string) Evidence {
	text := quantity.Significant(value, 4)
	if unit != "" {
		text += " " + unit
	}
	return Evidence{Name: name, Value: text, Number: value, Unit: unit}
}

func unitOf(q any) string {
	switch q.(type) {
	case quantity.Power:
		return "W"
	case quantity.Voltage:
		return "V"
	case quantity.Current:
		return "A"
	case quantity.Resistance:
		return "ohm"
	case quantity.Length:
		return "m"
	case quantity.FloorArea:
		return "m2"
	case quantity.CrossSection:
		return "mm2"
	case quantity.Frequency:
		return "Hz"
	case quantity.Duration:
		return "s"
	case quantity.Charge:
		return "Ah"
	case quantity.Temperature:
		return "°C"
	case quantity.Angle:
		return "deg"
	case quantity.Percent:
		return "%"
	case quantity.Gain, quantity.SoundPressureLevel:
		return "dB"
	case quantity.SoundLevel:
		return "dBA"
	}
	return ""
}
