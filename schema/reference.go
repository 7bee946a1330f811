package schema

import (
	"fmt"
	"slices"
	"strings"
)

// refKind is the kind of part that a name refers to.
type refKind int

const (
	refNone refKind = iota // looked up nowhere
	refUnit
	refAmplifier
	refLine
	refLineOrGroup
	refSource
	refMuteLink
	refSpace
	refSupply
	refReading
	refKinds // how many there are

	// The others are looked up where it is known what they belong to.
	refOutput
	refInput
	refChannel
	refDevice
	refModel
	refCable
	refPlug
)

func (k refKind) describe() string {
	switch k {
	case refUnit:
		return "an amplifier or mixer"
	case refAmplifier:
		return "an amplifier"
	case refLine:
		return "a line"
	case refLineOrGroup:
		return "a line or group"
	case refSource:
		return "a source"
	case refMuteLink:
		return "a mute link"
	case refSpace:
		return "a space"
	case refSupply:
		return "a supply"
	case refReading:
		return "a reading"
	case refOutput:
		return "an output"
	case refInput:
		return "an input"
	case refChannel:
		return "a power channel"
	case refDevice:
		return "a device on the line"
	case refModel:
		return "a model in a catalogue"
	case refPlug:
		return "a plug"
	default:
		return "something"
	}
}

func (k refKind) describePlural() string {
	switch k {
	case refUnit:
		return "amplifiers or mixers"
	case refLine:
		return "lines"
	case refLineOrGroup:
		return "lines or groups"
	case refSource:
		return "sources"
	case refOutput:
		return "outputs of the same unit"
	case refInput:
		return "inputs of the same unit"
	case refPlug:
		return "plugs"
	default:
		return "parts"
	}
}

// reference is a name that was read and has to exist.
type reference struct {
	kind  refKind
	value Value[string]
}

func (d *decoder) refer(kind refKind, v Value[string]) {
	if kind != refNone && kind < refKinds {
		d.refs = append(d.refs, reference{kind, v})
	}
}

// nameTable is every name of one kind.
type nameTable struct {
	known map[string]bool
	names []string
}

// checkReferences refuses names that nothing has. Devices of a large design
// name the same few spaces over and over: known names cost one lookup.
func (r *resolver) checkReferences(all [][]reference) {
	var tables [refKinds]nameTable
	add := func(kind refKind, p *Part) {
		t := &tables[kind]
		if t.known == nil {
			t.known = map[string]bool{}
		}
		if p.Name == "" { // refused
			return
		}
		t.known[p.Name] = true
		t.names = append(t.names, p.Name)
	}
	d := r.design
	for _, u := range d.Units {
		add(refUnit, &u.Part)
		if u.Kind == KindAmplifier {
			add(refAmplifier, &u.Part)
		}
	}
	for _, l := range d.Lines {
		add(refLine, &l.Part)
		add(refLineOrGroup, &l.Part)
	}
	for _, g := range d.Groups {
		add(refLineOrGroup, &g.Part)
	}
	for _, s := range d.Sources {
		add(refSource, &s.Part)
	}
	for _, m := range d.MuteLinks {
		add(refMuteLink, &m.Part)
	}
	for _, s := range d.Spaces {
		add(refSpace, &s.Part)
	}
	for _, s := range d.Supplies {
		add(refSupply, &s.Part)
	}
	for _, s := range d.Readings {
		add(refReading, &s.Part)
	}
	for _, refs := range all {
		for _, ref := range refs {
			if t := &tables[ref.kind]; !t.known[ref.value.V] {
				r.refuseName(ref.value, ref.kind.describe(), t.names)
			}
		}
	}
}

// hint is what is said beside a name that refers to nothing.
type hint struct{ expected, nearest string }

// refuseName words a name that refers to nothing.
func (r *resolver) refuseName(v Value[string], what string, candidates []string) {
	r.refuseNameOutOf(v, what, func() []string { return candidates })
}

// refuseNameOutOf does the same. In a large design one wrong name may stand in
// thousands of places: what could be meant is looked up once.
func (r *resolver) refuseNameOutOf(v Value[string], what string, candidates func() []string) {
	if r.partial || r.full() { // the name may be one that could not be read
		return
	}
	key := what + "\x00" + v.V
	h, known := r.hints[key]
	if !known && len(r.hints) < MaxProblems { // nobody reads more of them
		h = newHint(v.V, what, candidates())
		if r.hints == nil {
			r.hints = map[string]hint{}
		}
		r.hints[key] = h
	}
	r.refuse(v.Span, fmt.Sprintf("%q is not the name of %s.", v.V, what), h.expected, h.nearest)
}

func newHint(name, what string, candidates []string) hint {
	near := nearest(name, candidates)
	switch {
	case len(candidates) == 0:
		return hint{expected: fmt.Sprintf("The design has no %s.", strings.TrimPrefix(strings.TrimPrefix(what, "an "), "a "))}
	case near != "" && Alike(near, name):
		return hint{"One that differs only in capitals or spaces is there.", quoted(near)}
	case near != "":
		return hint{someOf(candidates), quoted(near)}
	}
	return hint{expected: someOf(candidates)}
}

// someOf says what names there are: up to seven, or six and how many more.
func someOf(all []string) string {
	const most = 6
	if len(all) > most+1 {
		return fmt.Sprintf("There are %s and %d more.", quotedList(all[:most]), len(all)-most)
	}
	unique := slices.Compact(slices.Clone(all))
	if len(unique) == 1 {
		return fmt.Sprintf("There is %q.", unique[0])
	}
	return "There are " + quotedList(unique) + "."
}
