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
}

// parting is one output at which lines may be parted.
type parting struct {
	unit   *Unit
	output *schema.Output
	first  bool // of the unit the source is plugged into
	sure   bool
}

// Selecting works out which lines of a source can be chosen without others: those
// that leave a unit by different outputs, where the unit routes or switches each
// output by itself. Of a line to which several ways lead the one over the fewest
// units counts.
func (s *System) Selecting(src *Source) *Selecting {
	sel := &Selecting{Keys: src.Part.Selects.Set()}
	for _, f := range src.Feeds {
		if f.Into != nil && f.Into.Part != nil && (f.Into.Part.Takes.V == "paging desk" || f.Into.Part.Selects.Set()) {
			sel.Keys = true
		}
	}
	ways := s.partings(src)
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
	alongside(src, sel, ways)
	if len(perhaps) == len(sel.Destinations) {
		return sel
	}
	for _, l := range src.Lines {
		for _, p := range ways[l] {
			if counts(p, false, true) && !p.sure {
				sel.Missing = MergeMissing(sel.Missing, []Missing{missing("routing", p.unit.Part.Kind, &p.unit.Part.Part, `routing = "one programme, lines switched"`)})
			}
		}
	}
	return sel
}

// alongside finds the lines that get what a source sends to its own.
func alongside(src *Source, sel *Selecting, ways map[*Line][]parting) {
	if len(src.Besides) == 0 {
		return
	}
	shares := func(perhaps bool) []*Line {
		var all []*Line
		for _, group := range together(slices.Concat(src.Lines, src.Besides), ways, func(p parting) bool { return p.sure || perhaps }) {
			if !slices.Contains(src.Lines, group[0]) {
				continue // none of its own: they would come first
			}
			for _, l := range group {
				if slices.Contains(src.Besides, l) {
					all = append(all, l)
				}
			}
		}
		return all
	}
	sel.Along = shares(true)
	if len(shares(false)) == len(sel.Along) {
		return
	}
	for _, l := range slices.Concat(src.Lines, src.Besides) {
		for _, p := range ways[l] {
			if !p.sure {
				sel.AlongMissing = MergeMissing(sel.AlongMissing, []Missing{missing("routing", p.unit.Part.Kind, &p.unit.Part.Part, `routing = "one programme, lines switched"`)})
			}
		}
	}
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
			return append(slices.Clone(v.way), parting{u, o, v.first, stated})
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
