package schema

import (
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Value is one thing the design says: what it means, how it was written and
// where. The zero Value was not written at all.
type Value[T any] struct {
	V    T
	Text string // as written, without quotes and with templates filled in
	Span source.Span
}

// Set tells that the value was written, on the part itself or on its model.
func (v Value[T]) Set() bool { return v.Span.File != nil }

// Or gives the value, or what to use when it was not written.
func (v Value[T]) Or(otherwise T) T {
	if v.Set() {
		return v.V
	}
	return otherwise
}

// List is a bracketed list. An empty list that was written is Set.
type List[T any] struct {
	Items []Value[T]
	Span  source.Span
}

// Set tells that the list was written.
func (l List[T]) Set() bool { return l.Span.File != nil }

// Spectrum is a figure that is either single or given per frequency band.
type Spectrum[T any] struct {
	Single Value[T]
	Bands  []Band[T]
	Span   source.Span
}

// Band is one entry of a Spectrum.
type Band[T any] struct {
	Frequency Value[quantity.Frequency]
	Value     Value[T]
}

// Set tells that the spectrum was written.
func (s Spectrum[T]) Set() bool { return s.Span.File != nil }

// Choice is "all" or a list of names.
type Choice struct {
	All   bool
	Names []Value[string]
	Span  source.Span
}

// Set tells that the choice was written.
func (c Choice) Set() bool { return c.Span.File != nil }

// Attenuation is how far something is turned down: a level change of 0 dB or
// less, or off.
type Attenuation struct {
	Gain quantity.Gain
	Off  bool
}

// Part is what every named block has in common.
type Part struct {
	Name     string
	NameSpan source.Span // the label with its quotes
	Header   source.Span // block type and label: the place of findings about the part as a whole
	Body     source.Span // from the opening brace to the closing one: where a missing attribute would be written
	Formerly Value[string]
	Basis    Value[string] // "seen", "planned" or "assumed"
}

func (p *Part) part() *Part { return p }

// Assumed tells that the design calls the part assumed rather than planned or
// seen.
func (p *Part) Assumed() bool { return p.Basis.V == "assumed" }

// Override is a figure that a part states although its model states another.
type Override struct {
	Attribute   string
	Part, Model source.Span
}

// Numbering is what a run of equal parts adds to one: "H" with quantity 8 and
// first 3 is "H 3" to "H 10".
type Numbering struct {
	Quantity Value[int]
	First    Value[int]
}

// Count is the number of parts the run stands for, at least 1.
func (n Numbering) Count() int { return n.Quantity.Or(1) }

// Numbered tells that the parts have made names.
func (n Numbering) Numbered() bool { return n.Quantity.Set() }
