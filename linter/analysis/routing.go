package analysis

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/schema"
)

// Selecting is what can be chosen between a source and its lines.
type Selecting struct {
	// Keys tells that a desk chooses, in the unit it is plugged into; otherwise
	// somebody sets switches or a matrix.
	Keys bool
	// Destinations are its lines, those together that nothing parts.
	Destinations [][]*Line
	// Later are the destinations that there would be if the keys reached the
	// units behind the first one too.
	Later [][]*Line
	// Always are lines of its own that hear what it sends to another destination
	// too, such as on an output that is not switched beside some that are.
	Always []*Line
	// AlwaysMissing is what the design does not say of lines that may do so.
	AlwaysMissing []Missing
	// Along are lines it reaches besides its own and that nothing parts from one
	// of them, be it keys, switches or a matrix.
	Along []*Line
	// AlongMissing is what the design does not say and the rest of the lines
	// besides its own might be parted by.
	AlongMissing []Missing
	// At are the units in which its lines are parted.
	At []*Unit
	// Missing is what the design does not say and more lines might be parted by.
	Missing []Missing

	lines []*Line // its own
	ways  map[*Line][]parting
}

// parting is one output at which lines may be parted.
type parting struct {
	unit   *Unit
	output *schema.Output
	into   *Input
	first  bool // of the unit the source is plugged into
	sure   bool
}

// Selecting works out which lines of a source can be chosen without others: those
// that leave a unit by different outputs, where the unit routes or switches each
// output by itself. Of a line to which several ways lead the one over the fewest
// units counts.
func (s *System) Selecting(src *Source) *Selecting {
	ways := s.partings(src)
	sel := &Selecting{Keys: src.Part.Selects.Set(), lines: src.Lines, ways: ways}
	for _, f := range src.Feeds {
		if f.Into != nil && f.Into.Part != nil && (f.Into.Part.Takes.V == "paging desk" || f.Into.Part.Selects.Set()) {
			sel.Keys = true
		}
	}
	counts := func(p parting, later, perhaps bool) bool {
		return (p.first || later || !sel.Keys) && (p.sure || perhaps)
	}
	sel.Destinations = together(src.Lines, ways, func(p parting) bool { return counts(p, false, false) })
	sel.Later = together(src.Lines, ways, func(p parting) bool { return counts(p, true, false) })
	perhaps := together(src.Lines, ways, func(p parting) bool { return counts(p, false, true) })
	for _, l := range src.Lines {
		for _, p := range ways[l] {
			if counts(p, false, false) && !slices.Contains(sel.At, p.unit) {
				sel.At = append(sel.At, p.unit)
			}
		}
	}
	sel.Along, sel.AlongMissing = heardToo(src.Besides, src.Lines, ways, func(parting) bool { return true })
	if len(sel.Destinations) > 1 {
		sel.Always, sel.AlwaysMissing = heardToo(src.Lines, src.Lines, ways, func(p parting) bool { return counts(p, false, true) })
	}
	if len(perhaps) == len(sel.Destinations) {
		return sel
	}
	for _, l := range src.Lines {
		for _, p := range ways[l] {
			if counts(p, false, true) && !p.sure {
				sel.Missing = MergeMissing(sel.Missing, []Missing{p.unit.routingMissing()})
			}
		}
	}
	return sel
}

// heardToo finds those of some lines that surely hear what is sent to others, and
// what the design does not say of those that may. Of the outputs on the way only
// those that count keep a line apart.
func heardToo(some, others []*Line, ways map[*Line][]parting, counts func(parting) bool) (all []*Line, unsaid []Missing) {
	if len(some) == 0 {
		return nil, nil
	}
	every := func(parting) bool { return true }
	to := together(others, ways, every)
	for _, group := range together(some, ways, every) {
		hears := func(perhaps bool) bool {
			return slices.ContainsFunc(to, func(other []*Line) bool {
				return other[0] != group[0] && heardWith(ways[group[0]], ways[other[0]], func(p parting) bool { return counts(p) && (p.sure || perhaps) })
			})
		}
		switch {
		case hears(true):
			all = append(all, group...)
		case hears(false):
			for _, p := range ways[group[0]] {
				if !p.sure && counts(p) {
					unsaid = MergeMissing(unsaid, []Missing{p.unit.routingMissing()})
				}
			}
		}
	}
	return all, unsaid
}

// heardWith tells that one line hears what is sent to another: each output that
// counts on its way is on the way of the other too, and so lets it through.
func heardWith(line, other []parting, counts func(parting) bool) bool {
	for _, p := range line {
		if counts(p) && !slices.ContainsFunc(other, func(o parting) bool { return o.output == p.output }) {
			return false
		}
	}
	return true
}

func (u *Unit) routingMissing() Missing {
	return missing("routing", u.Part.Kind, &u.Part.Part, `routing = "one programme, lines switched"`)
}

// SwitchedOff is an output that can be switched off while a source is to be heard
// behind it, and that does not open for it as far as is said.
type SwitchedOff struct {
	Unit   *Unit
	Output *schema.Output
	// Into is the input by which the source comes to the unit.
	Into *Input
	// Left tells that it is left switched off.
	Left bool
	// Unsaid tells that the design does not say whether the input opens it.
	Unsaid bool
	Lines  []*Line
}

// SwitchedOff gives the outputs on the way of the source to its lines that can be
// switched off and that neither the keys of a desk nor its input opens.
func (sel *Selecting) SwitchedOff() []*SwitchedOff {
	var all []*SwitchedOff
	for _, l := range sel.lines {
		for _, p := range sel.ways[l] {
			if !p.sure || sel.Keys && p.first || p.unit.Part.Routing.V != "one programme, lines switched" && !p.output.Switched.V {
				continue
			}
			opens := schema.Value[bool]{}
			if p.into.Part != nil {
				opens = p.into.Part.OpensOutputs
			}
			if opens.V {
				continue
			}
			n := slices.IndexFunc(all, func(o *SwitchedOff) bool { return o.Output == p.output })
			if n < 0 {
				n = len(all)
				all = append(all, &SwitchedOff{Unit: p.unit, Output: p.output, Into: p.into, Left: p.output.Setting.V == "off", Unsaid: !opens.Set()})
			}
			all[n].Lines = append(all[n].Lines, l)
		}
	}
	return all
}

// TurnedOff is how many loudspeakers of a line stand behind attenuators that are set
// to off and that nothing lifts; unsaid are those of which it is not said whether
// something does.
func (l *Line) TurnedOff() (off int, by, unsaid []*Attenuator) {
	for _, run := range l.Runs {
		var first, doubtful *Attenuator
		for _, a := range run.Behind {
			lifted, stated := a.Lifted()
			switch {
			case !a.Part.Setting.V.Off || lifted:
			case stated:
				first = a
			default:
				doubtful = a
			}
		}
		switch {
		case first != nil:
			off += run.Count
			if !slices.Contains(by, first) {
				by = append(by, first)
			}
		case doubtful != nil && !slices.Contains(unsaid, doubtful):
			unsaid = append(unsaid, doubtful)
		}
	}
	return off, by, unsaid
}

// partings gives, for every line a source reaches, the outputs on its way at
// which it may be parted from others.
func (s *System) partings(src *Source) map[*Line][]parting {
	type visit struct {
		at    *Input
		way   []parting
		first bool
	}
	ways := map[*Line][]parting{}
	seen := map[*Input]bool{}
	var todo []visit
	for _, f := range src.Feeds {
		if f.Into != nil && !f.Into.Contact() && !seen[f.Into] {
			seen[f.Into] = true
			todo = append(todo, visit{at: f.Into, first: true})
		}
	}
	for len(todo) > 0 {
		v := todo[0]
		todo = todo[1:]
		u := v.at.Unit
		leave := func(o *schema.Output) []parting {
			parts, stated := u.parts(o)
			if !parts && stated {
				return v.way
			}
			return append(slices.Clone(v.way), parting{u, o, v.at, v.first, stated})
		}
		for _, n := range v.at.exits.lines {
			if l := s.Lines[n]; ways[l] == nil {
				ways[l] = append([]parting{}, leave(l.Part.OutputPart)...)
			}
		}
		for _, k := range v.at.exits.links {
			if !seen[k.Into] && k.Into.exits.leads {
				seen[k.Into] = true
				todo = append(todo, visit{at: k.Into, way: leave(k.Part.Output)})
			}
		}
	}
	return ways
}

// parts tells whether the unit can send to one output what it does not send to
// others; stated is false where the design does not say.
func (u *Unit) parts(o *schema.Output) (parts, stated bool) {
	if o == nil {
		return false, true
	}
	switch u.Part.Routing.V {
	case "any input to any output":
		return true, true
	case "one programme, lines switched":
		return !o.Switched.Set() || o.Switched.V, true
	}
	if o.Switched.Set() {
		return o.Switched.V, true
	}
	return false, u.Part.Routing.Set()
}

// together puts lines together that no parting that counts tells apart.
func together(lines []*Line, ways map[*Line][]parting, counts func(parting) bool) [][]*Line {
	var all [][]*Line
	at := map[string]int{}
	for _, l := range lines {
		var key strings.Builder
		for _, p := range ways[l] {
			if counts(p) {
				fmt.Fprintf(&key, "%d %q ", p.unit.order, p.output.Name)
			}
		}
		n, ok := at[key.String()]
		if !ok {
			n = len(all)
			at[key.String()] = n
			all = append(all, nil)
		}
		all[n] = append(all[n], l)
	}
	return all
}

// Returning gives the links of a loop that lead back to a unit that stands
// before theirs in the design.
func Returning(loop []*Unit) []*Link {
	var all []*Link
	for _, u := range loop {
		for _, l := range u.Links {
			if slices.Contains(loop, l.Into.Unit) && l.Into.Unit.order < u.order {
				all = append(all, l)
			}
		}
	}
	return all
}
