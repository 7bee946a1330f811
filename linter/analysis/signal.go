package analysis

import (
	"math/bits"
	"slices"

	"loudlint/schema"
)

// Source is a source with the ways it takes.
type Source struct {
	Part *schema.Source
	// Feeds are its plugs: the first one, then those of its also blocks.
	Feeds []*Feed
	// Lines are the lines on which it is meant to be heard and to which a way
	// leads: those it names, or all it reaches when it names none.
	Lines []*Line
	// Unreached are lines it names to which no way leads.
	Unreached []*Line
	// Besides are lines it does not name and to which a way leads.
	Besides []*Line
	// DeadEnds are inputs it comes to from which no line can be reached, the
	// first one of each way.
	DeadEnds []*Input
	// Stereo is what becomes of its two channels; nil when it has one.
	Stereo *Stereo

	heard lineSet // Lines as a set
	order int     // its place among the sources
}

// Feed is a plug of a source in a unit.
type Feed struct {
	Source *Source
	Part   *schema.Feed
	// Into is where it is plugged in, nil when the unit is not stated.
	Into *Input
}

// Unit is an amplifier or a mixer as a part of the signal chain.
type Unit struct {
	Part *schema.Unit
	// Inputs are those of the part in their order; then one without a Part when
	// something enters and the design does not say by which input.
	Inputs []*Input
	// Links are what it sends to other units.
	Links []*Link

	exits map[string]*exits // by power channel; "" is everything that leaves it
	order int               // its place among the units
	loose bool              // something leaves it that is behind no known channel
}

// Input is a way into a unit.
type Input struct {
	Unit *Unit
	// Part is nil when the design does not say which input it is.
	Part *schema.Input
	// Feeds and Links are what is plugged into it.
	Feeds []*Feed
	Links []*Link
	// Channels is what it does with left and right.
	Channels Channels

	exits *exits
}

// Link is one output of a unit wired to an input of another.
type Link struct {
	Part *schema.Link
	From *Unit
	Into *Input
}

// exits are the ways out of a unit that some of its inputs have in common.
type exits struct {
	unit  *Unit
	links []*Link
	lines []int // places in System.Lines
	// leads tells that a line can be reached, perhaps through other units.
	leads bool
	// reach is every line that can be reached; nil until somebody asked.
	reach lineSet

	into []*exits // those from which a link leads here
	// For finding loops (Tarjan 1972): order of visit from 1, and the lowest
	// one that can be reached.
	visited, lowest int
	open            bool
}

// Contact tells that the input is a pair of terminals that only switches: audio
// neither enters nor takes it.
func (i *Input) Contact() bool { return i.Part != nil && i.Part.Takes.V == "contact" }

// Name is the input with its unit as people say it: "Mic 1 of Rack".
func (i *Input) Name() string {
	if i.Part == nil {
		return "an input of " + i.Unit.Part.Name
	}
	return i.Part.Name + " of " + i.Unit.Part.Name
}

// Missing is what the design does not say about the input.
func (i *Input) Missing(what, write string) Missing {
	part := named("input", i.Part.Name) + " of " + named(i.Unit.Part.Kind, i.Unit.Part.Name)
	if i.Unit.Owns(&i.Part.Part) {
		return Missing{What: what, Part: part, Where: i.Part.Header, Write: write}
	}
	return Missing{What: what, Part: part, Where: i.Unit.Part.Header, Write: named("input", i.Part.Name) + " { " + write + " }"}
}

// Owns tells that an input or output is written in the braces of the unit, not
// in its model and not only named elsewhere.
func (u *Unit) Owns(part *schema.Part) bool {
	body := u.Part.Body
	return part.Header.File != nil && part.Header.File == body.File && part.Header.Start > body.Start && part.Header.End < body.End
}

// Named writes the unit as it is referred to: amplifier "Rack".
func (u *Unit) Named() string { return named(u.Part.Kind, u.Part.Name) }

// Named writes the source as it is referred to: microphone "Desk".
func (s *Source) Named() string { return named(s.Part.Kind, s.Part.Name) }

// Missing is what the design does not say about the source.
func (s *Source) Missing(what, write string) Missing {
	return missing(what, s.Part.Kind, &s.Part.Part, write)
}

// MissingUnit is that the design does not say where the source is plugged in.
func (s *Source) MissingUnit() Missing { return s.Missing("unit it is plugged into", `into = "…"`) }

// Connected tells that the design says of at least one plug where it goes.
func (s *Source) Connected() bool {
	for _, f := range s.Feeds {
		if f.Into != nil {
			return true
		}
	}
	return false
}

// analyseSignal follows every source to every line.
func (s *System) analyseSignal() {
	units, inputs := s.signalUnits()
	s.signalLinks(units, inputs)
	s.signalLines(units)
	all := s.settleInputs()
	s.findLoops(all)
	follow(all)
	lines := map[string]int{}
	for i, l := range s.Lines {
		lines[l.Part.Name] = i
	}
	groups := map[string]*schema.Group{}
	for _, g := range s.Design.Groups {
		groups[g.Name] = g
	}
	for _, source := range s.Sources {
		s.findLines(source, lines, groups)
		findDeadEnds(source)
	}
	s.analyseStereo()
}

// signalUnits makes the units with their inputs, and the sources.
func (s *System) signalUnits() (map[*schema.Unit]*Unit, map[*schema.Input]*Input) {
	units := map[*schema.Unit]*Unit{}
	inputs := map[*schema.Input]*Input{}
	for n, part := range s.Design.Units {
		u := &Unit{Part: part, exits: map[string]*exits{}, order: n}
		u.exits[""] = &exits{unit: u}
		for _, c := range part.Channels {
			u.exits[c.Name] = &exits{unit: u}
		}
		for _, i := range part.Inputs {
			in := &Input{Unit: u, Part: i}
			inputs[i] = in
			u.Inputs = append(u.Inputs, in)
		}
		units[part] = u
		s.Units = append(s.Units, u)
	}
	for n, part := range s.Design.Sources {
		source := &Source{Part: part, order: n}
		parts := append([]*schema.Feed{&part.Feed}, part.Also...)
		for _, p := range parts {
			f := &Feed{Source: source, Part: p}
			if u := units[p.UnitPart]; u != nil {
				f.Into = u.input(inputs[p.InputPart])
				f.Into.Feeds = append(f.Into.Feeds, f)
			}
			source.Feeds = append(source.Feeds, f)
		}
		s.Sources = append(s.Sources, source)
	}
	return units, inputs
}

// input gives an input of the unit: the one that is known, or the one that
// stands for all of which the design does not say which they are.
func (u *Unit) input(known *Input) *Input {
	if known != nil {
		return known
	}
	if n := len(u.Inputs); n > 0 && u.Inputs[n-1].Part == nil {
		return u.Inputs[n-1]
	}
	i := &Input{Unit: u}
	u.Inputs = append(u.Inputs, i)
	return i
}

func (s *System) signalLinks(units map[*schema.Unit]*Unit, inputs map[*schema.Input]*Input) {
	for _, part := range s.Design.Links {
		from, to := units[part.From], units[part.To]
		l := &Link{Part: part, From: from, Into: to.input(inputs[part.Input])}
		l.Into.Links = append(l.Into.Links, l)
		from.Links = append(from.Links, l)
		channel := ""
		if part.Output != nil {
			channel = part.Output.Channel.V
		}
		from.leave(channel, func(e *exits) { e.links = append(e.links, l) })
	}
}

func (s *System) signalLines(units map[*schema.Unit]*Unit) {
	for n, l := range s.Lines {
		u := units[l.Part.AmplifierPart]
		if u == nil {
			continue
		}
		channel := ""
		if l.Part.ChannelPart != nil {
			channel = l.Part.ChannelPart.Name
		}
		u.leave(channel, func(e *exits) { e.lines = append(e.lines, n) })
	}
}

// leave adds something that leaves the unit behind a power channel. What is
// behind no known channel may carry every input.
func (u *Unit) leave(channel string, add func(*exits)) {
	add(u.exits[""])
	if e := u.exits[channel]; channel != "" && e != nil {
		add(e)
		return
	}
	u.loose = true
	for _, c := range u.Part.Channels {
		add(u.exits[c.Name])
	}
}

// settleInputs says for every input how it leaves its unit: an input with a
// channel drives that channel alone, contacts drive nothing, every other input
// may reach every output. It gives all exits in the order of the design.
func (s *System) settleInputs() []*exits {
	var all []*exits
	for _, u := range s.Units {
		none := &exits{unit: u}
		for _, i := range u.Inputs {
			i.Channels = s.channelsOf(i)
			i.exits = u.exits[""]
			switch {
			case i.Contact():
				i.exits = none
			case i.Part != nil && i.Part.Channel.V != "" && u.exits[i.Part.Channel.V] != nil:
				i.exits = u.exits[i.Part.Channel.V]
			}
		}
		all = append(all, u.exits[""])
		for _, c := range u.Part.Channels {
			all = append(all, u.exits[c.Name])
		}
	}
	for _, e := range all {
		for _, l := range e.links {
			next := l.Into.exits
			next.into = append(next.into, e)
		}
	}
	return all
}

// follow marks the exits from which a line can be reached, backwards from the
// lines.
func follow(all []*exits) {
	var todo []*exits
	for _, e := range all {
		if len(e.lines) > 0 {
			e.leads = true
			todo = append(todo, e)
		}
	}
	for len(todo) > 0 {
		e := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, before := range e.into {
			if !before.leads {
				before.leads = true
				todo = append(todo, before)
			}
		}
	}
}

// reached gives the lines that can be reached from an input. Each way is
// followed once, so that loops end.
func (s *System) reached(from *exits) lineSet {
	if from.reach != nil {
		return from.reach
	}
	set := newLineSet(len(s.Lines))
	seen := map[*exits]bool{from: true}
	todo := []*exits{from}
	for len(todo) > 0 {
		e := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, n := range e.lines {
			set.add(n)
		}
		for _, l := range e.links {
			if next := l.Into.exits; next.leads && !seen[next] {
				seen[next] = true
				todo = append(todo, next)
			}
		}
	}
	from.reach = set
	return set
}

// findLines works out where the source is heard, and where it should be and is
// not.
func (s *System) findLines(src *Source, lines map[string]int, groups map[string]*schema.Group) {
	reach := newLineSet(len(s.Lines))
	for _, f := range src.Feeds {
		if f.Into != nil {
			reach.join(s.reached(f.Into.exits))
		}
	}
	named := newLineSet(len(s.Lines))
	for _, name := range src.Part.Lines.Names {
		if n, ok := lines[name.V]; ok {
			named.add(n)
		} else if g := groups[name.V]; g != nil {
			for _, in := range g.Lines.Items {
				if n, ok := lines[in.V]; ok {
					named.add(n)
				}
			}
		}
	}
	src.heard = newLineSet(len(s.Lines))
	stated := src.Part.Lines.Set()
	for n, l := range s.Lines {
		wanted := !stated || src.Part.Lines.All || named.has(n)
		switch {
		case wanted && reach.has(n):
			src.heard.add(n)
			src.Lines = append(src.Lines, l)
		case wanted && stated:
			src.Unreached = append(src.Unreached, l)
		case !wanted && reach.has(n):
			src.Besides = append(src.Besides, l)
		}
	}
}

// findDeadEnds finds the inputs from which the source gets nowhere.
func findDeadEnds(src *Source) {
	seen := map[*Input]bool{}
	var todo []*Input
	visit := func(i *Input) {
		if seen[i] || i.Contact() {
			return
		}
		seen[i] = true
		if !i.exits.leads {
			src.DeadEnds = append(src.DeadEnds, i)
			return
		}
		todo = append(todo, i)
	}
	for _, f := range src.Feeds {
		if f.Into != nil {
			visit(f.Into)
		}
	}
	for len(todo) > 0 {
		i := todo[0]
		todo = todo[1:]
		for _, l := range i.exits.links {
			visit(l.Into)
		}
	}
}

// Step is one input on the way of a source, and how it gets in: by a plug of
// the source, or by a link from the unit before.
type Step struct {
	Into *Input
	Feed *Feed
	Link *Link
}

// Way gives the steps of a source to a line, over the fewest units; nil when
// none leads there. The last step is the amplifier of the line.
func (s *System) Way(src *Source, line *Line) []Step {
	type visit struct {
		step Step
		from *visit
	}
	var todo []*visit
	seen := map[*Input]bool{}
	add := func(step Step, from *visit) {
		if !seen[step.Into] {
			seen[step.Into] = true
			todo = append(todo, &visit{step, from})
		}
	}
	for _, f := range src.Feeds {
		if f.Into != nil {
			add(Step{Into: f.Into, Feed: f}, nil)
		}
	}
	for len(todo) > 0 {
		v := todo[0]
		todo = todo[1:]
		for _, n := range v.step.Into.exits.lines {
			if s.Lines[n] != line {
				continue
			}
			var way []Step
			for ; v != nil; v = v.from {
				way = append(way, v.step)
			}
			slices.Reverse(way)
			return way
		}
		for _, l := range v.step.Into.exits.links {
			add(Step{Into: l.Into, Link: l}, v)
		}
	}
	return nil
}

// findLoops finds units whose signal comes back to them: strongly connected
// exits, after R. Tarjan, "Depth-first search and linear graph algorithms",
// SIAM J. Comput. 1 (1972), with a stack of our own instead of recursion.
func (s *System) findLoops(all []*exits) {
	type frame struct {
		at   *exits
		next int // link to look at
	}
	count := 0
	var stack []*exits
	var work []frame
	enter := func(e *exits) {
		count++
		e.visited, e.lowest, e.open = count, count, true
		stack = append(stack, e)
		work = append(work, frame{at: e})
	}
	for _, root := range all {
		if root.visited != 0 {
			continue
		}
		enter(root)
		for len(work) > 0 {
			f := &work[len(work)-1]
			e := f.at
			if f.next < len(e.links) {
				to := e.links[f.next].Into.exits
				f.next++
				switch {
				case to.visited == 0:
					enter(to)
				case to.open:
					e.lowest = min(e.lowest, to.visited)
				}
				continue
			}
			work = work[:len(work)-1]
			if len(work) > 0 {
				before := work[len(work)-1].at
				before.lowest = min(before.lowest, e.lowest)
			}
			if e.lowest != e.visited {
				continue
			}
			var loop []*exits
			for {
				last := stack[len(stack)-1]
				stack = stack[:len(stack)-1]
				last.open = false
				loop = append(loop, last)
				if last == e {
					break
				}
			}
			if len(loop) > 1 {
				s.addLoop(loop)
			}
		}
	}
}

// addLoop keeps the units of a loop in the order of the design.
func (s *System) addLoop(loop []*exits) {
	units := make([]*Unit, len(loop))
	for i, e := range loop {
		units[i] = e.unit
	}
	slices.SortFunc(units, func(a, b *Unit) int { return a.order - b.order })
	s.Loops = append(s.Loops, slices.Compact(units))
}

// lineSet is a set of lines by their places in System.Lines.
type lineSet []uint64

func newLineSet(n int) lineSet { return make(lineSet, (n+63)/64) }

func (s lineSet) add(n int)      { s[n/64] |= 1 << (n % 64) }
func (s lineSet) has(n int) bool { return s[n/64]&(1<<(n%64)) != 0 }

func (s lineSet) join(other lineSet) {
	for i := range other {
		s[i] |= other[i]
	}
}

func (s lineSet) common(other lineSet) (lineSet, bool) {
	both, some := make(lineSet, len(s)), false
	for i := range s {
		both[i] = s[i] & other[i]
		some = some || both[i] != 0
	}
	return both, some
}

func (s lineSet) count() int {
	n := 0
	for _, w := range s {
		n += bits.OnesCount64(w)
	}
	return n
}
