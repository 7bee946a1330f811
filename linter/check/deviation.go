package check

import (
	"slices"

	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Acceptance is the agreement by which a failure is accepted.
type Acceptance struct {
	Reason, By string
	Until      string      // the last day it holds; "" when it holds for good
	Place      source.Span // header of the deviation that says so
}

// Departure is a deviation with what it comes to: the engine works that out when
// all other checks have answered, and asks those checks about it that are made
// by EachDeviation.
type Departure struct {
	Part *schema.Deviation
	// Check is the one departed from; nil when there is none of that name, and
	// Nearest is what may have been meant.
	Check   *Check
	Nearest string
	// Absent is the part that is named and that the design does not have, nil when
	// it has what is named; NearestPart is what may have been meant.
	Absent      *schema.Addressed
	NearestPart string
	// Asked tells that the check was asked.
	Asked bool
	// Today is the day of the run; zero when it is not known, and nothing has
	// expired then.
	Today quantity.Date
	// Meets and Open count the failures and the open answers of the check about
	// the part that is named.
	Meets, Open int
	// Elsewhere are the subjects of other failures of the check, each once: the
	// first MostElsewhere of them.
	Elsewhere []string
}

// MostElsewhere bounds Departure.Elsewhere.
const MostElsewhere = 4

// Stated tells that the deviation says why and who accepted it.
func (d *Departure) Stated() bool { return d.Part.Reason.V != "" && d.Part.AcceptedBy.V != "" }

// Expired tells that its last day is over.
func (d *Departure) Expired() bool {
	return d.Part.Until.Set() && !d.Today.IsZero() && d.Part.Until.V.Before(d.Today)
}

// Holds tells that it accepts what it meets.
func (d *Departure) Holds() bool { return d.Stated() && !d.Expired() }

// Acceptance is what an accepted failure refers to.
func (d *Departure) Acceptance() *Acceptance {
	a := &Acceptance{Reason: d.Part.Reason.V, By: d.Part.AcceptedBy.V, Place: d.Part.Header}
	if d.Part.Until.Set() {
		a.Until = d.Part.Until.V.String()
	}
	return a
}

// Address writes the part the deviation names: line "South", loudspeaker "H".
func (d *Departure) Address() string {
	var s Subject
	for _, part := range d.Part.Parts() {
		s.Path = append(s.Path, Step{part.Kind, part.Name.V})
	}
	return s.String()
}

// Covers tells that a deviation for this address is about a subject. An address
// covers the part it names and what stands inside it, as braces do: a line covers
// its loudspeakers. Without an address it is about the job as a whole and covers
// no part: whoever adds a line later has agreed nothing about it.
func Covers(address []schema.Addressed, s Subject) bool {
	if len(address) == 0 {
		return len(s.Path) == 0
	}
	for _, part := range address {
		if !slices.ContainsFunc(s.Path, func(step Step) bool { return step.named(part) }) {
			return false
		}
	}
	return true
}

func (s Step) named(part schema.Addressed) bool {
	switch part.Kind {
	case schema.KindAmplifier, schema.KindMixer: // units have their names in common
		return (s.Kind == schema.KindAmplifier || s.Kind == schema.KindMixer) && s.Name == part.Name.V
	case "source":
		switch s.Kind {
		case schema.KindMicrophone, schema.KindMusic, schema.KindMessage, schema.KindTelephone:
			return s.Name == part.Name.V
		}
		return false
	case "loudspeaker", "attenuator":
		return s.Kind == part.Kind && schema.Alike(s.Name, part.Name.V)
	}
	return s.Kind == part.Kind && s.Name == part.Name.V
}

// EachDeviation asks the question of every deviation, when all other checks have
// answered.
func EachDeviation(judge func(*Report, *Departure)) Judge {
	return func(run *Run) {
		for _, d := range run.Departures {
			ask(run, DeviationSubject(d.Part), func(r *Report) { judge(r, d) })
		}
	}
}

// DeviationSubject is a deviation. Several may be from one check.
func DeviationSubject(d *schema.Deviation) Subject {
	return Subject{Path: []Step{{"deviation", d.Name}}, Span: d.Header}
}
