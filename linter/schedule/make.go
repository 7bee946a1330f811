package schedule

import (
	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

// Kind is a kind of schedule, as it is called on the command line.
type Kind string

// Kinds of schedule.
const (
	Loudspeakers Kind = "loudspeakers"
	Lines        Kind = "lines"
	Amplifiers   Kind = "amplifiers"
	Cables       Kind = "cables"
	CableTotals  Kind = "cable-totals"
	Inputs       Kind = "inputs"
	Priorities   Kind = "priorities"
	Parts        Kind = "parts"
	TestSheet    Kind = "test-sheet"
)

// Described is a kind with what it holds.
type Described struct {
	Kind  Kind
	Title string // "Loudspeaker schedule"
	Says  string // for help: no full stop
	make  func(*maker) *Table
}

// Kinds lists the kinds in the order of a job: what is fitted, what feeds it,
// what is bought, what is tested.
func Kinds() []Described {
	return []Described{
		{Loudspeakers, "Loudspeaker schedule", "each device of each line in walking order, with tap, cable, watts delivered and dB lost", (*maker).loudspeakers},
		{Lines, "Line schedule", "each line with its load, impedance, cable and loss", (*maker).lines},
		{Amplifiers, "Amplifier loads", "each output and power channel with what hangs on it against its rating", (*maker).amplifiers},
		{Cables, "Cable schedule", "each length of cable with a number of its own for both ends", (*maker).cables},
		{CableTotals, "Cable totals", "cable to order by type, with an allowance for cutting", (*maker).totals},
		{Inputs, "Input schedule", "each input of each unit with what is plugged in", (*maker).inputs},
		{Priorities, "Priority schedule", "who silences whom on which lines", (*maker).priorities},
		{Parts, "Parts to order", "everything to buy, with quantities and spares; typical data are marked", (*maker).parts},
		{TestSheet, "Test sheet", "what a meter should show on each line, with columns to fill in and sign", (*maker).testSheet},
	}
}

// Options are what a schedule takes from outside the design.
type Options struct {
	// Tool names what makes it, with its version.
	Tool string
	// CuttingAllowance is what is added to lengths of cable for cutting and
	// termination.
	CuttingAllowance quantity.Percent
	// Drum is how much cable is on one drum; 0 is 100 m, or 1000 ft where the
	// design prints in US units.
	Drum quantity.Length
	// Spares is how many more loudspeakers and attenuators are ordered, rounded
	// up for each model.
	Spares quantity.Percent
	// Below and Above are how far a meter may be from the impedance expected.
	Below, Above quantity.Percent
}

// Usual are the options of somebody who says nothing. All are common practice
// without a published source; the tolerance is that of check reading-agrees,
// whose limits in force should be put in its place.
func Usual() Options {
	return Options{CuttingAllowance: 10, Spares: 5, Below: 25, Above: 20}
}

// Make makes a schedule of a system; nil for a kind there is none of.
func Make(s *analysis.System, kind Kind, o Options) *Table {
	for _, k := range Kinds() {
		if k.Kind != kind {
			continue
		}
		t := k.make(&maker{system: s, options: o, us: s.Design.System.US()})
		job := s.Design.System
		t.Kind, t.Title = kind, k.Title
		t.Head = Head{Job: job.Name, Reference: job.Reference.V, Revision: job.Revision.V, Design: s.Design.Name, Tool: o.Tool}
		return t
	}
	return nil
}

// maker makes one table.
type maker struct {
	system  *analysis.System
	options Options
	us      bool // lengths in feet
}

// lengthUnit is the unit of columns of lengths.
func (m *maker) lengthUnit() string {
	if m.us {
		return "ft"
	}
	return "m"
}

// length is a length in that unit.
func (m *maker) length(l quantity.Length) Cell {
	metres := float64(l)
	if m.us {
		metres /= quantity.MetresPerFoot
	}
	return number(metres, AsIs)
}

// known is a figure, or what stands where it is not known.
func known[Q ~float64](f *analysis.Figure[Q], decimals int) Cell {
	if !f.Known() {
		return text(NotStated)
	}
	return number(float64(f.Value), decimals)
}
