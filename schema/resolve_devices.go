package schema

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// chainOf calls visit for every device of a line, with how many of it its runs
// and those around it come to. It stops when visit says so. Order is that of
// each chain; what a device encloses comes after the rest of its chain.
func chainOf(l *Line, visit func(device Device, times int) bool) {
	type open struct {
		chain []Device
		times int
	}
	todo := []open{{l.Devices, 1}}
	for len(todo) > 0 {
		o := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, device := range o.chain {
			times := o.times * device.Common().Count()
			if !visit(device, times) {
				return
			}
			if inside := device.Inside(); len(inside) > 0 {
				todo = append(todo, open{inside, times})
			}
		}
	}
}

// devices looks at the devices of all lines: their names, their number, and how
// they are shared out over equal spaces.
func (r *resolver) devices() {
	sharing := r.alikeSpaces()
	counts := make(map[*Line]*lineCount, len(r.design.Lines))
	total := 0
	for _, shared := range []bool{false, true} { // a line like another comes after it
		for _, l := range r.design.Lines {
			if r.sharing[l] != shared {
				continue
			}
			var c *lineCount
			if shared {
				c = counts[r.lines[l.Like.V]]
			} else {
				c = r.countLine(l, total, sharing)
			}
			counts[l] = c
			if total <= MaxDevices && total+c.devices > MaxDevices {
				over := l.Header
				if c.over != nil {
					over = c.over.Header
				}
				r.refuse(over, fmt.Sprintf("Here the design comes to more than %d devices.", MaxDevices), "Check the quantities: those of a run inside a run multiply.", "")
			}
			total += c.devices
			for i := range c.shares {
				sharing[c.shares[i].space].add(c.shares[i])
			}
		}
	}
	for _, s := range r.design.Spaces {
		if all := sharing[s.Name]; all != nil {
			r.shareOut(s, all)
		}
	}
}

// lineCount is what the devices of a line come to.
type lineCount struct {
	devices int
	over    *Placement // the device that is one too many for the design
	shares  []share
}

// share is a loudspeaker, or a run, that serves equal spaces.
type share struct {
	space string
	count int
	part  *Part
}

// shares are all that serve the same equal spaces. A part is there once, even
// where several lines have it.
type shares struct {
	count  int
	parts  []*Part
	counts map[*Part]int
}

func (s *shares) add(one share) {
	s.count += one.count
	if s.counts[one.part] == 0 {
		s.parts = append(s.parts, one.part)
	}
	s.counts[one.part] += one.count
}

// alikeSpaces gives the spaces that stand for several equal ones.
func (r *resolver) alikeSpaces() map[string]*shares {
	all := map[string]*shares{}
	for _, s := range r.design.Spaces {
		if s.Count() > 1 {
			all[s.Name] = &shares{counts: map[*Part]int{}}
		}
	}
	return all
}

// countLine checks and counts the devices of a line. There are `before` devices on
// other lines.
func (r *resolver) countLine(l *Line, before int, sharing map[string]*shares) *lineCount {
	c := &lineCount{}
	names := lineNames{single: make(map[string]*Placement, len(l.Devices)), runs: map[string][]*Placement{}}
	chainOf(l, func(device Device, times int) bool {
		p := device.Common()
		c.devices = min(c.devices+times, MaxDevices+1) // no more need be known
		if c.over == nil && before+c.devices > MaxDevices {
			c.over = p
		}
		r.runSpacing(p)
		r.takeName(l, &names, p)
		if s, ok := device.(*Loudspeaker); ok && len(sharing) > 0 && sharing[s.Space.V] != nil {
			c.shares = append(c.shares, share{s.Space.V, times, &s.Part})
		}
		return times <= MaxDevices
	})
	r.runsApart(l, &names)
	return c
}

// shareOut refuses loudspeakers that cannot be shared out evenly over equal
// spaces.
func (r *resolver) shareOut(s *Space, all *shares) {
	rooms := s.Count()
	if all.count%rooms == 0 || r.partial || !r.sound(&s.Part) || slices.ContainsFunc(all.parts, func(p *Part) bool { return !r.sound(p) }) {
		return
	}
	const most = 5
	var related []Place
	for _, p := range all.parts[:min(len(all.parts), most)] {
		related = append(related, Place{p.Header, fmt.Sprintf("%d of them", all.counts[p])})
	}
	below := all.count / rooms * rooms
	expected := fmt.Sprintf("%d or %d could be shared out.", below, below+rooms)
	if below == 0 {
		expected = fmt.Sprintf("%d could be shared out.", rooms)
	}
	r.problem(Problem{
		Span:     s.Alike.Span,
		Found:    fmt.Sprintf("%q stands for %d equal spaces, and the loudspeakers that serve it are %d: that is no whole number for each.", s.Name, rooms, all.count),
		Expected: expected + " Spaces that differ are blocks of their own.",
		Related:  related,
	})
}

func (r *resolver) runSpacing(p *Placement) {
	switch {
	case p.Spacing.Set() && p.Count() == 1 && r.sound(&p.Part):
		r.refuse(p.Spacing.Span, "One device has no neighbours to be spaced from.", "spacing stands beside quantity; the cable that leads to a device is its leg.", "")
	case p.First.Set() && !p.Quantity.Set() && r.sound(&p.Part):
		r.refuse(p.First.Span, "This is no run.", "first stands beside quantity: it is the number of the first one.", "")
	}
}

// lineNames are the names on one line, folded: those of single devices, and those
// of runs, which make names with numbers.
type lineNames struct {
	single map[string]*Placement
	runs   map[string][]*Placement
}

func (r *resolver) takeName(l *Line, names *lineNames, p *Placement) {
	if p.Name == "" { // refused already
		return
	}
	key := fold(p.Name)
	if before := names.single[key]; before != nil {
		r.secondDevice(l, before, p)
		return
	}
	if !p.Numbered() {
		if runs := names.runs[key]; len(runs) > 0 {
			r.secondDevice(l, runs[0], p)
			return
		}
		names.single[key] = p
		return
	}
	names.runs[key] = append(names.runs[key], p)
}

func (r *resolver) secondDevice(l *Line, before, p *Placement) {
	found := fmt.Sprintf("A second device on the line %q is called %q.", l.Name, p.Name)
	if before.Name != p.Name {
		found = fmt.Sprintf("On the line %q, the name %q differs from %q only in capitals or spaces.", l.Name, p.Name, before.Name)
	}
	r.problem(Problem{Span: p.NameSpan, Found: found, Expected: "Each device on a line has a name of its own. A run that goes on says first = the next number.", Related: []Place{{before.NameSpan, "the first one"}}})
}

// runsApart refuses runs of one name that share a number, and written names that a
// run makes too: "H 3" beside eight "H".
func (r *resolver) runsApart(l *Line, names *lineNames) {
	for _, runs := range names.runs {
		slices.SortStableFunc(runs, func(a, b *Placement) int { return a.First.Or(1) - b.First.Or(1) })
		for i := 1; i < len(runs); i++ {
			a, b := runs[i-1], runs[i]
			if last := a.First.Or(1) + a.Count() - 1; b.First.Or(1) <= last {
				if b.NameSpan.Start < a.NameSpan.Start {
					a, b = b, a
				}
				r.problem(Problem{
					Span:     b.NameSpan,
					Found:    fmt.Sprintf("A second run on the line %q makes the name %q.", l.Name, NumberedName(runs[i].Name, runs[i].First.Or(1))),
					Expected: "A run that goes on says first = the next number.",
					Nearest:  fmt.Sprintf("first = %d", last+1),
					Related:  []Place{{a.NameSpan, "the first run"}},
				})
			}
		}
	}
	for _, p := range names.single {
		if run := names.making(p.Name); run != nil {
			r.problem(Problem{Span: p.NameSpan, Found: fmt.Sprintf("The run %q already makes a device called %q.", run.Name, p.Name), Expected: "Give this one another name, or let the run begin at another number with first.", Related: []Place{{run.NameSpan, "the run"}}})
		}
	}
}

// making gives the run that makes a name, nil when none does. Spaces do not
// matter, as they do not for people.
func (n *lineNames) making(name string) *Placement {
	digits := strings.TrimRight(name, "0123456789")
	cuts := []int{len(digits), strings.LastIndexByte(name, ' ') + 1}
	for _, at := range cuts {
		base, number := fold(name[:at]), name[at:]
		value, err := strconv.Atoi(number)
		if err != nil || strconv.Itoa(value) != number {
			continue
		}
		runs := n.runs[base]
		i, found := slices.BinarySearchFunc(runs, value, func(p *Placement, v int) int {
			switch first := p.First.Or(1); {
			case v < first:
				return 1
			case v >= first+p.Count():
				return -1
			}
			return 0
		})
		if found {
			return runs[i]
		}
	}
	return nil
}

// namesOf gives the names on a line. They were checked before.
func namesOf(l *Line) *lineNames {
	names := &lineNames{single: map[string]*Placement{}, runs: map[string][]*Placement{}}
	chainOf(l, func(device Device, _ int) bool {
		p := device.Common()
		if key := fold(p.Name); p.Numbered() {
			names.runs[key] = append(names.runs[key], p)
		} else {
			names.single[key] = p
		}
		return true
	})
	for _, runs := range names.runs {
		slices.SortStableFunc(runs, func(a, b *Placement) int { return a.First.Or(1) - b.First.Or(1) })
	}
	return names
}

// has tells that a name is that of a device, of a run or of one of its members. A
// device inside a run may be named with the member that encloses it: "Room 3
// Bed".
func (n *lineNames) has(name string) bool {
	const most = 8 // members around a device that are looked for
	for range most {
		key := fold(name)
		if n.single[key] != nil || len(n.runs[key]) > 0 || n.making(name) != nil {
			return true
		}
		rest := n.behindMember(name)
		if rest == "" {
			return false
		}
		name = rest
	}
	return false
}

// behindMember gives what follows the shortest member of a run that a name
// begins with, "" when it begins with none.
func (n *lineNames) behindMember(name string) string {
	for at := range len(name) {
		if name[at] == ' ' && n.making(name[:at]) != nil {
			return strings.TrimSpace(name[at:])
		}
	}
	return ""
}

func (n *lineNames) all() []string {
	var names []string
	for _, p := range n.single {
		names = append(names, p.Name)
	}
	for _, runs := range n.runs {
		for _, p := range runs {
			names = append(names, p.MemberName(0), p.MemberName(p.Count()-1))
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// addresses refuses readings of devices that are not there, and deviations about
// a part of no unit.
func (r *resolver) addresses() {
	known := map[*Line]*lineNames{}
	names := func(l *Line) *lineNames {
		if known[l] == nil {
			known[l] = namesOf(l)
		}
		return known[l]
	}
	for _, m := range r.design.Readings {
		for _, device := range []Value[string]{m.At, m.Beyond} {
			r.deviceOn(m.Line, device, names)
		}
	}
	for _, d := range r.design.Deviations {
		r.insideUnit(&d.Address)
	}
}

// deviceOn refuses a device that is not on the line, or on none when no line is
// named.
func (r *resolver) deviceOn(line, device Value[string], names func(*Line) *lineNames) {
	if !device.Set() || r.full() {
		return
	}
	if line.Set() {
		if l := r.lines[line.V]; l != nil && !names(l).has(device.V) {
			r.refuseNameOutOf(device, fmt.Sprintf("a device on the line %q", l.Name), names(l).all)
		}
		return
	}
	if !r.partial && !slices.ContainsFunc(r.design.Lines, func(l *Line) bool { return names(l).has(device.V) }) {
		r.refuse(device.Span, fmt.Sprintf("No line has a device called %q.", device.V), "", "")
	}
}

// insideUnit refuses a channel or output without the unit it belongs to.
func (r *resolver) insideUnit(a *Address) {
	if a.Amplifier.Set() || a.Mixer.Set() {
		return
	}
	for _, v := range []Value[string]{a.Channel, a.Output} {
		if v.Set() {
			r.refuse(v.Span, fmt.Sprintf("%q is a part of a unit, but of which?", v.V), "Beside it stands amplifier, or mixer, with the name of the unit.", "")
		}
	}
}

// limitsOnce refuses a second limit for the same check in one criteria block.
func (r *resolver) limitsOnce() {
	for _, c := range r.design.Criteria {
		first := map[string]*Limit{}
		for _, l := range c.Limits {
			if before := first[l.Name]; before != nil && l.Name != "" {
				r.problem(Problem{Span: l.NameSpan, Found: fmt.Sprintf("A second limit for %q stands in the same criteria.", l.Name), Expected: "All settings of a check stand in one limit block.", Related: []Place{{before.NameSpan, "the first one"}}})
				continue
			}
			first[l.Name] = l
		}
	}
}
