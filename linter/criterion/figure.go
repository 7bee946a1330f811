package criterion

import (
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Kind tells numbers, words and truths apart.
type Kind int

// Kinds of figure.
const (
	Number Kind = iota + 1
	Word
	Truth
)

// Description is what there is to know about a figure before it is worked out.
type Description struct {
	Name string // in lower case with underscores; a number's ends in its unit
	Doc  string // a phrase without full stop
	Kind Kind
	Unit string   // of a number, as it is printed; empty for a count or a factor
	Says []string // what a Word can be, where only some words can stand
}

// figure is a named figure of parts that are a T.
type figure[T any] struct {
	Description
	of func(s *analysis.System, part T) reading
}

// reading is a figure of one part: its value with how it came about, or what
// keeps it from being known.
type reading struct {
	value
	evidence check.Evidence
	assumed  []string
}

// value is what a step leaves behind.
type value struct {
	number float64
	text   string
	truth  bool
	// missing and fault keep it from being known: what the design does not say,
	// or why it cannot be worked out, as a clause.
	missing []analysis.Missing
	fault   string
}

func (v *value) known() bool { return len(v.missing) == 0 && v.fault == "" }

// printed is what every quantity can do.
type printed interface {
	~float64
	String() string
}

// computed declares a figure that the analysis has with its arithmetic.
func computed[T any, Q printed](name, unit, doc string, of func(s *analysis.System, part T) analysis.Figure[Q]) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Number, Unit: unit}, func(s *analysis.System, part T) reading {
		f := of(s, part)
		if !f.Known() {
			return reading{value: value{missing: f.Missing}}
		}
		return numbered(float64(f.Value), check.Of(name, f), f.Assumed)
	}}
}

// stated declares a figure that the design says or leaves out. Where gives the
// value, the part in whose braces it would stand, and the name of its kind.
func stated[T any, Q printed](name, unit, doc string, lacks lack, where func(part T) (schema.Value[Q], *schema.Part, string)) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Number, Unit: unit}, func(_ *analysis.System, part T) reading {
		v, at, kind := where(part)
		if !v.Set() {
			return lacks.of(kind, at)
		}
		return numbered(per(float64(v.V), unit), check.Plainly(name, v.V, schema.Place{Span: v.Span, Note: v.Text}), nil)
	}}
}

// per brings a duration into the unit of its figure; other quantities are in
// theirs.
func per(number float64, unit string) float64 {
	switch unit {
	case "min":
		return number / 60
	case "h":
		return number / 3600
	}
	return number
}

// count declares a number without unit that is always known.
func count[T any](name, doc string, of func(s *analysis.System, part T) int) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Number}, func(s *analysis.System, part T) reading {
		n := of(s, part)
		return numbered(float64(n), check.Number(name, float64(n), ""), nil)
	}}
}

// word declares a text that the design says or leaves out.
func word[T any](name, doc string, says []string, lacks lack, where func(part T) (schema.Value[string], *schema.Part, string)) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Word, Says: says}, func(_ *analysis.System, part T) reading {
		v, at, kind := where(part)
		if !v.Set() {
			return lacks.of(kind, at)
		}
		r := worded(name, v.V)
		r.evidence.From = []schema.Place{{Span: v.Span, Note: name}}
		return r
	}}
}

// name declares the name of something, which is always known.
func named[T any](name, doc string, of func(part T) string) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Word}, func(_ *analysis.System, part T) reading {
		return worded(name, of(part))
	}}
}

// flag declares a truth that the design says or leaves out.
func flag[T any](name, doc string, lacks lack, where func(part T) (schema.Value[bool], *schema.Part, string)) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Truth}, func(_ *analysis.System, part T) reading {
		v, at, kind := where(part)
		if !v.Set() {
			return lacks.of(kind, at)
		}
		return truth(name, v.V)
	}}
}

// fact declares a truth that follows from the design.
func fact[T any](name, doc string, of func(s *analysis.System, part T) (holds bool, missing []analysis.Missing)) figure[T] {
	return figure[T]{Description{Name: name, Doc: doc, Kind: Truth}, func(s *analysis.System, part T) reading {
		holds, missing := of(s, part)
		if len(missing) > 0 {
			return reading{value: value{missing: missing}}
		}
		return truth(name, holds)
	}}
}

func numbered(number float64, e check.Evidence, assumed []string) reading {
	if math.IsNaN(number) || math.IsInf(number, 0) {
		return reading{value: value{fault: e.Name + " comes to no number"}, evidence: e}
	}
	return reading{value: value{number: number}, evidence: e, assumed: assumed}
}

func worded(name, text string) reading {
	return reading{value: value{text: text}, evidence: check.Stated(name, `"`+text+`"`)}
}

func truth(name string, holds bool) reading {
	said := "false"
	if holds {
		said = "true"
	}
	return reading{value: value{truth: holds}, evidence: check.Stated(name, said)}
}

// lack is what is missing where a design leaves something out: what it is and
// how it would be written.
type lack struct{ what, write string }

func (l lack) of(kind string, at *schema.Part) reading {
	return reading{value: value{missing: []analysis.Missing{l.in(kind, at)}}}
}

func (l lack) in(kind string, at *schema.Part) analysis.Missing {
	return analysis.Missing{What: l.what, Part: check.Step{Kind: kind, Name: at.Name}.String(), Where: at.Header, Write: l.write}
}

// ratio makes per cent of two figures.
func ratio[A, B ~float64](part analysis.Figure[A], whole analysis.Figure[B], sum string) analysis.Figure[quantity.Percent] {
	f := analysis.Figure[quantity.Percent]{Missing: analysis.MergeMissing(part.Missing, whole.Missing), From: part.From, Assumed: part.Assumed}
	if f.Known() {
		f.Value = quantity.Percent(100 * float64(part.Value) / float64(whole.Value))
		f.Sum = sum
	}
	return f
}
