package schema

import (
	"strconv"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Design is what the text says, with names followed, models filled in and
// "like" carried out. It is read-only once Read or Load has returned it.
type Design struct {
	// Name is the path the design was read from, as given.
	Name string
	// Files are all files read, in the order of their names; used ones too.
	Files []*source.File

	System     *System // never nil
	Units      []*Unit
	Lines      []*Line
	Groups     []*Group
	Sources    []*Source
	MuteLinks  []*MuteLink
	Spaces     []*Space
	Readings   []*Reading
	Supplies   []*Supply
	Safety     *Safety // nil when the design has no safety block
	Items      []*Item
	Deviations []*Deviation
	Criteria   []*Criteria  // of two settings the later one counts
	Criterions []*Criterion // each of a name of its own
	Catalogue  Catalogue
	Links      []*Link

	cables  map[string]*Cable
	units   map[string]*Unit
	lines   map[string]*Line
	spaces  map[string]*Space
	sources map[string]*Source
}

// Catalogue is every model the design can name: those of used files, its own,
// and those typical ones that it does name.
type Catalogue struct {
	Units        []*UnitModel
	Loudspeakers []*LoudspeakerModel
	Attenuators  []*AttenuatorModel
	Microphones  []*MicrophoneModel
	Cables       []*CableModel
	Connectors   []*ConnectorModel
}

func (c *Catalogue) add(more *Catalogue) {
	c.Units = append(c.Units, more.Units...)
	c.Loudspeakers = append(c.Loudspeakers, more.Loudspeakers...)
	c.Attenuators = append(c.Attenuators, more.Attenuators...)
	c.Microphones = append(c.Microphones, more.Microphones...)
	c.Cables = append(c.Cables, more.Cables...)
	c.Connectors = append(c.Connectors, more.Connectors...)
}

// Link is one output of a unit wired to one input of another: a Send with its
// run written out.
type Link struct {
	Send   *Send
	From   *Unit
	Output *Output
	To     *Unit
	Input  *Input // nil when the send does not say
}

// Cable is what the name of a cable means: a size, or an entry of a catalogue.
type Cable struct {
	Name       string
	Model      *CableModel // nil for a size
	Conductors quantity.Conductors
}

// Class is the conductor class of IEC 60228, 0 when it is not said.
func (c *Cable) Class() int {
	if c.Model != nil {
		return c.Model.Class.V
	}
	return 0
}

// Cores is the number of conductors, 0 when it is not said.
func (c *Cable) Cores() int {
	if c.Model != nil && c.Model.Cores.Set() {
		return c.Model.Cores.V
	}
	return c.Conductors.Cores
}

// Cable gives what a cable's name means, nil for a name no part of the design
// uses.
func (d *Design) Cable(name string) *Cable { return d.cables[name] }

// Unit finds an amplifier or mixer, nil when there is none of that name.
func (d *Design) Unit(name string) *Unit { return d.units[name] }

// Line finds a line, nil when there is none of that name.
func (d *Design) Line(name string) *Line { return d.lines[name] }

// Space finds a space, nil when there is none of that name.
func (d *Design) Space(name string) *Space { return d.spaces[name] }

// Source finds a source, nil when there is none of that name.
func (d *Design) Source(name string) *Source { return d.sources[name] }

// Output finds an output, nil when the unit has none of that name.
func (u *Unit) Output(name string) *Output { return find(u.Outputs, name) }

// Input finds an input, nil when the unit has none of that name.
func (u *Unit) Input(name string) *Input { return find(u.Inputs, name) }

// Channel finds a power channel, nil when the unit has none of that name.
func (u *Unit) Channel(name string) *Channel { return find(u.Channels, name) }

func find[T interface{ part() *Part }](all []T, name string) T {
	for _, t := range all {
		if t.part().Name == name {
			return t
		}
	}
	var none T
	return none
}

// NumberedName is the name of one part of a run: "H" and 3 make "H 3".
func NumberedName(base string, number int) string { return base + " " + strconv.Itoa(number) }

// MemberName is the name of the index-th (from 0) part of a run, or the plain
// name of a part that is no run.
func (p *Placement) MemberName(index int) string {
	if !p.Numbered() {
		return p.Name
	}
	return NumberedName(p.Name, p.First.Or(1)+index)
}
