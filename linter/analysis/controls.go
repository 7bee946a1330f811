package analysis

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"
	"strings"

	"loudlint/linter/circuit"
	"loudlint/linter/conductor"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// What stands on a line to control it: attenuators, what lifts them for
// announcements, and devices that watch the line.

// RelayVolts is the voltage the override relays of attenuators are made for.
const RelayVolts quantity.Voltage = 24

// Lifted tells whether something lifts the attenuator for announcements; stated
// is false where the design does not say.
func (a *Attenuator) Lifted() (lifted, stated bool) {
	v := a.Part.Override
	return v.Set() && v.V != schema.OverrideNone, v.Set()
}

// Missing is what the design does not say about the attenuator. What its model
// should say is missing there.
func (a *Attenuator) Missing(what, write string) Missing {
	if m := a.Part.ModelPart; m != nil && !schema.IsBuiltIn(m.Header.File) {
		return missing(what, "attenuator_model", &m.Part, write)
	}
	return missing(what, "attenuator", &a.Part.Part, write)
}

// Down is how far announcements are turned down behind an attenuator that is
// turned down as far as it goes.
type Down struct {
	Off bool // nothing is left
	// DB is in decibels, above 0; attenuators outside it that nothing lifts are
	// counted as turned down too.
	DB Figure[quantity.Gain]
	// Left is what the loudspeakers behind one of it then still take.
	Left Figure[quantity.Power]
}

// Down works out how far an attenuator that nothing lifts turns announcements
// down.
func (a *Attenuator) Down() Down {
	var d Down
	var texts []string
	for _, one := range append(slices.Clone(a.Inside), a) {
		lowest := one.Part.Lowest
		lifted, stated := one.Lifted()
		switch {
		case one == a && !lowest.Set() && one.Part.Setting.V.Off:
			d.Off = true // it goes as far as it is set
			d.DB.From = []schema.Place{{Span: one.Part.Setting.Span, Note: "how it is set"}}
			return d
		case one == a && !lowest.Set():
			d.DB.Missing = []Missing{a.Missing("how far the attenuator can be turned down", `lowest = "-20 dB"`)}
			return d
		case one == a && lowest.V.Off:
			d.Off = true
			d.DB.From = []schema.Place{{Span: lowest.Span, Note: "lowest setting"}}
			return d
		case one != a && (lifted || !stated || !lowest.Set() || lowest.V.Off):
			continue // asked of that one itself
		}
		down := quantity.Gain(math.Abs(float64(lowest.V.Gain)))
		d.DB.Value += down
		d.DB.From = append(d.DB.From, schema.Place{Span: lowest.Span, Note: "lowest setting of " + one.Part.Name})
		texts = append(texts, down.String())
	}
	if len(texts) > 1 {
		d.DB.Sum = strings.Join(texts, " + ") + " = " + d.DB.Value.String()
	}
	if !a.Behind.Known() {
		d.Left.Missing = a.Behind.Missing
		return d
	}
	d.Left.Value = a.Behind.Value * quantity.Power(math.Pow(10, -float64(d.DB.Value)/10))
	d.Left.Sum = fmt.Sprintf("%s × 10^(−%s/10) = %s", a.Behind.Value, quantity.Significant(float64(d.DB.Value), 4), d.Left.Value)
	return d
}

// Announcement is a source that is meant to be heard on a line and is no music.
type Announcement struct {
	Source *Source
	// First tells that it is to be heard before something else: it goes before
	// another source of the line, the design gives it a priority, or the duty of
	// the job is emergency. A microphone for a room of its own is not.
	First bool
}

// Announcements gives what is announced on a line, and the sources that may
// announce on it: the design does not say where they are plugged in.
func (s *System) Announcements(l *Line) (on []Announcement, unsure []*Source) {
	n := slices.Index(s.Lines, l)
	var heard []*Source
	for _, src := range s.Sources {
		switch {
		case src.heard.has(n):
			heard = append(heard, src)
		case src.Part.Announces() && !src.Connected() && (!src.Part.Lines.Set() || slices.Contains(src.Unreached, l)):
			unsure = append(unsure, src)
		}
	}
	emergency := s.Design.System.Emergency()
	for _, src := range heard {
		if !src.Part.Announces() {
			continue
		}
		first := emergency || src.Part.Priority.Set()
		for _, of := range heard {
			if first {
				break
			}
			if of != src {
				r, _, _ := rank(src, of)
				first = r == Before
			}
		}
		on = append(on, Announcement{Source: src, First: first})
	}
	return on, unsure
}

// OverrideUnit is the unit that switches the override of a line, nil when the
// design does not say.
func (s *System) OverrideUnit(l *Line) *Unit {
	for _, u := range s.Units {
		if l.Part.OverrideFrom.Set() && u.Part.Name == l.Part.OverrideFrom.V {
			return u
		}
	}
	return nil
}

// OverrideUnitMissing is that the design does not say what switches the override.
func (l *Line) OverrideUnitMissing() Missing {
	unit := "…"
	if l.Part.Amplifier.Set() {
		unit = l.Part.Amplifier.V
	}
	return missing("unit that switches the override", "line", &l.Part.Part, fmt.Sprintf("override_from = %q", unit))
}

// CableMissing is that the line names no cable. With attenuators that are lifted
// it is one with conductors for that.
func (l *Line) CableMissing() Missing {
	cores := ofTheLine
	for todo := [][]schema.Device{l.Part.Devices}; len(todo) > 0 && !l.Part.OverrideCable.Set(); {
		devices := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, device := range devices {
			if inside := device.Inside(); len(inside) > 0 {
				todo = append(todo, inside)
			}
			if part, ok := device.(*schema.Attenuator); ok {
				a := Attenuator{Part: part}
				if lifted, _ := a.Lifted(); lifted {
					_, usual, _ := a.Conductors()
					cores = max(cores, usual)
				}
			}
		}
	}
	return missing("cable", "line", &l.Part.Part, fmt.Sprintf(`cable = "%d x 1.5 mm2"`, cores))
}

// Switching is whether an announcement makes a unit switch the override.
type Switching struct {
	Source *Source
	// Passes tells that it comes to the unit at all.
	Passes bool
	// At is the input at which it does most, with what keeps it from switching
	// and what is not said.
	At Mute
}

// Holds tells that the announcement switches the override, as far as is said.
func (w *Switching) Holds() bool {
	return w.Passes && w.At.Obstacle == NoObstacle && len(w.At.Missing) == 0
}

// Switching works out whether a source makes a unit switch: as it makes it
// silence others, by a contact or by its own signal.
func (s *System) Switching(src *Source, u *Unit) Switching {
	w := silencing{system: s, by: src}
	r := Switching{Source: src}
	for _, a := range s.arrivals(src, nil) {
		if a.Into.Unit != u {
			continue
		}
		m := Mute{Unit: u, By: a, Of: a.Into}
		if a.Into.Part == nil {
			m.Missing = a.Into.whichInput(src)
		} else {
			w.triggers(&m)
		}
		if !r.Passes || better(&m, &r.At) {
			r.At = m
		}
		r.Passes = true
	}
	return r
}

// Lifted gives the attenuator blocks of a line that something lifts.
func (l *Line) Lifted() []*Attenuator {
	var all []*Attenuator
	for _, a := range l.Attenuators {
		if lifted, _ := a.Lifted(); lifted {
			all = append(all, a)
		}
	}
	return all
}

// Conductors is how many an attenuator needs: two for the line, two for a relay
// and one for a third conductor. Where the design does not say, relays may do
// with one that they share with the line; least is the number below which none
// works.
func (a *Attenuator) Conductors() (least, usual int, stated bool) {
	const third, relay = ofTheLine + 1, ofTheLine + 2
	lifted, _ := a.Lifted()
	switch {
	case !lifted:
		return relay, relay, false // as it would be with a relay
	case a.Part.Cores.Set():
		return max(a.Part.Cores.V, third), max(a.Part.Cores.V, third), true
	case a.Part.Override.V == schema.OverrideRelay:
		return third, relay, false
	}
	return third, third, false
}

// OverrideCable is a cable that has to carry the override of attenuators.
type OverrideCable struct {
	Cable *schema.Cable
	// Names are the places that name it.
	Names []schema.Value[string]
	// Needs is how many conductors it has to have: for the line and the override,
	// or, where it is a cable for the override alone, for that.
	Needs int
	// Least is what Needs comes to where attenuators of which not enough is said
	// need as few as any.
	Least int
	// For is the attenuator that needs most.
	For *Attenuator
	// Apart tells that it carries the override alone.
	Apart bool
}

// ofTheLine is how many conductors the line itself takes.
const ofTheLine = 2

// OverrideCables gives the cables that lie between the amplifier and attenuators
// that are lifted, and whether part of the way has a cable that is not stated.
// With also, an attenuator that nothing lifts counts as lifted by a relay.
func (l *Line) OverrideCables(also *Attenuator) (all []OverrideCable, unsaid bool) {
	design := l.reads.system.Design
	w := overrideWalk{design: design, lifted: map[*schema.Attenuator]*Attenuator{}, at: map[string]int{}, noted: map[source.Span]bool{}}
	for _, a := range l.Attenuators {
		if lifted, _ := a.Lifted(); lifted || a == also {
			w.lifted[a.Part] = a
		}
	}
	if len(w.lifted) == 0 {
		return nil, false
	}
	if apart := l.Part.OverrideCable; apart.Set() {
		c := OverrideCable{Cable: design.Cable(apart.V), Names: []schema.Value[string]{apart}, Apart: true}
		for _, a := range l.Attenuators {
			if w.lifted[a.Part] != nil {
				c.carry(wanted{}.with(a), ofTheLine)
			}
		}
		return []OverrideCable{c}, false
	}
	need := w.chain(l.Part.Devices, l.Part.Cable, true)
	if first := l.Part.Devices[0].Common(); l.Part.HomeRun.Set() || !first.Leg.Set() {
		w.lay(l.Part.Cable, need)
	}
	for i := range w.all {
		slices.SortFunc(w.all[i].Names, func(a, b schema.Value[string]) int { return source.Compare(a.Span, b.Span) })
	}
	slices.SortFunc(w.all, func(a, b OverrideCable) int { return source.Compare(a.Names[0].Span, b.Names[0].Span) })
	return w.all, w.unsaid
}

// wanted is how many conductors are needed from a place of the line on.
type wanted struct {
	least, usual int
	by           *Attenuator // the one that needs most; nil where nothing is lifted
}

// with raises it to what an attenuator needs.
func (w wanted) with(a *Attenuator) wanted {
	least, usual, _ := a.Conductors()
	return w.or(wanted{least, usual, a})
}

// or gives the larger of two.
func (w wanted) or(other wanted) wanted {
	least := max(w.least, other.least)
	if other.usual > w.usual {
		w = other
	}
	w.least = least
	return w
}

// carry raises what a cable has to have, less what other cables carry.
func (c *OverrideCable) carry(need wanted, elsewhere int) {
	c.Least = max(c.Least, need.least-elsewhere)
	if need.usual-elsewhere > c.Needs {
		c.Needs, c.For = need.usual-elsewhere, need.by
	}
}

// overrideWalk finds the cables on the way to attenuators that are lifted.
type overrideWalk struct {
	design *schema.Design
	lifted map[*schema.Attenuator]*Attenuator
	all    []OverrideCable
	at     map[string]int // places in all, by the name of the cable
	noted  map[source.Span]bool
	unsaid bool
}

// chain walks devices from the far end, since a leg has to carry what anything
// behind it needs, and gives what the chain needs. It calls itself for what braces
// enclose; the dialect bounds their nesting. Outermost is the line itself, whose
// first device may be reached by the home run alone.
func (w *overrideWalk) chain(devices []schema.Device, cable schema.Value[string], outermost bool) wanted {
	var need wanted
	for i, device := range slices.Backward(devices) {
		p := device.Common()
		inner := cable
		if p.Cable.Set() {
			inner = p.Cable
		}
		if inside := device.Inside(); len(inside) > 0 {
			need = need.or(w.chain(inside, inner, false))
		}
		if part, ok := device.(*schema.Attenuator); ok && w.lifted[part] != nil {
			need = need.with(w.lifted[part])
		}
		if i > 0 || !outermost || p.Leg.Set() || p.Spacing.Set() {
			w.lay(inner, need)
		}
	}
	return need
}

// lay notes what a leg of a cable has to carry.
func (w *overrideWalk) lay(cable schema.Value[string], need wanted) {
	if need.by == nil {
		return
	}
	if !cable.Set() {
		w.unsaid = true
		return
	}
	i, known := w.at[cable.V]
	if !known {
		i = len(w.all)
		w.at[cable.V] = i
		w.all = append(w.all, OverrideCable{Cable: w.design.Cable(cable.V)})
	}
	c := &w.all[i]
	c.carry(need, 0)
	if !w.noted[cable.Span] {
		w.noted[cable.Span] = true
		c.Names = append(c.Names, cable)
	}
}

// RelayFeed is what the override relays of a line are fed from: a supply, or a
// unit that has volts for them itself.
type RelayFeed struct {
	Supply *schema.Supply
	Unit   *schema.Unit
	Rail   schema.Value[quantity.Rail]
	// Assumed is set where the design does not say it and nothing else could.
	Assumed []string
}

// Name is the supply or unit as it is called.
func (f *RelayFeed) Name() string {
	if f.Unit != nil {
		return f.Unit.Name
	}
	return f.Supply.Name
}

// Named is the supply or unit as it is referred to.
func (f *RelayFeed) Named() string {
	if f.Unit != nil {
		return named(f.Unit.Kind, f.Unit.Name)
	}
	return named("supply", f.Supply.Name)
}

// Part is the supply or unit.
func (f *RelayFeed) Part() *schema.Part {
	if f.Unit != nil {
		return &f.Unit.Part
	}
	return &f.Supply.Part
}

// RelayFeed finds what feeds the override relays of a line: the unit that
// switches them, where it has volts for relays; else a supply that feeds that
// unit; else the only part of the design that has volts for relays.
func (s *System) RelayFeed(l *Line) (RelayFeed, []Missing) {
	switches := s.Design.Unit(l.Part.OverrideFrom.V)
	var all []RelayFeed
	for _, u := range s.Design.Units {
		if u.Relays.Set() {
			f := RelayFeed{Unit: u, Rail: u.Relays}
			if u == switches {
				return f, nil
			}
			all = append(all, f)
		}
	}
	var feeds *schema.Supply // feeds the unit and does not say what it has for relays
	for _, p := range s.Design.Supplies {
		fed := switches != nil && slices.ContainsFunc(p.Feeds.Items, func(v schema.Value[string]) bool { return v.V == switches.Name })
		switch {
		case p.Relays.Set() && fed:
			return RelayFeed{Supply: p, Rail: p.Relays}, nil
		case p.Relays.Set():
			all = append(all, RelayFeed{Supply: p, Rail: p.Relays})
		case fed && feeds == nil:
			feeds = p
		}
	}
	const what = "volts and current for the override relays"
	switch {
	case len(all) == 1:
		all[0].Assumed = []string{fmt.Sprintf("the override relays are fed from %s, the only part that states volts and current for them", all[0].Named())}
		return all[0], nil
	case feeds != nil:
		return RelayFeed{}, []Missing{missing(what, "supply", &feeds.Part, `relays = "24 V, 1 A"`)}
	case switches != nil:
		return RelayFeed{}, []Missing{missing(what, switches.Kind, &switches.Part, `relays = "24 V, 1 A"`)}
	}
	return RelayFeed{}, []Missing{l.OverrideUnitMissing()}
}

// RelaysFrom gives how many override relays are fed from a part, what they take
// all at once, and the lines they are on.
func (s *System) RelaysFrom(part *schema.Part) (count int, current Figure[quantity.Current], lines []*Line) {
	var sum addition[quantity.Current]
	for _, l := range s.Lines {
		if l.relays() == 0 {
			continue
		}
		if f, missing := s.RelayFeed(l); len(missing) == 0 && f.Part() == part {
			count += l.addRelays(&sum)
			lines = append(lines, l)
		}
	}
	return count, sum.figure(nil), lines
}

// relays counts the override relays of the line.
func (l *Line) relays() int {
	n := 0
	for _, a := range l.Attenuators {
		if a.Part.Override.V == schema.OverrideRelay {
			n += a.Count
		}
	}
	return n
}

// addRelays adds what the relays of the line take to a sum, and counts them.
func (l *Line) addRelays(sum *addition[quantity.Current]) int {
	for _, a := range l.Attenuators {
		current := a.Part.Current
		switch {
		case a.Part.Override.V != schema.OverrideRelay:
		case !current.Set():
			sum.missing = MergeMissing(sum.missing, []Missing{a.Missing("current of the override relay", `current = "25 mA"`)})
		default:
			sum.add(a.Count, current.V, "", schema.Place{Span: current.Span, Note: "an override relay"})
		}
	}
	return l.relays()
}

// Relays is what the override relays of a line come to when all act at once.
type Relays struct {
	Count int
	// Current is what they take with the volts they are made for.
	Current Figure[quantity.Current]
	// Drawn is what they take with the volts that arrive: less.
	Drawn Figure[quantity.Current]
	// Feed is what they are fed from; its Rail is not set while that is not
	// known.
	Feed RelayFeed
	// Volts is what arrives at the relay with the least, and At names it.
	Volts Figure[quantity.Voltage]
	At    string
	// Apart tells that a cable of its own carries their current.
	Apart bool
	// Energised, Released and Unsaid are the attenuator blocks by what their
	// relays do for an announcement.
	Energised, Released, Unsaid []*Attenuator
}

// Relays works out the override relays of a line: their current follows the
// conductors of the override along the legs of the line.
//
// A relay is its coil, a resistance of 24 V over its current: at less than 24 V
// it takes less. A sum of constant currents along the line, as it is done by
// hand, gives a little less voltage.
func (s *System) Relays(l *Line) Relays {
	var sum addition[quantity.Current]
	r := Relays{Count: l.addRelays(&sum), Apart: l.Part.OverrideCable.Set()}
	r.Current = sum.figure(nil)
	for _, a := range l.Attenuators {
		switch {
		case a.Part.Override.V != schema.OverrideRelay:
		case a.Part.Relay.V == schema.RelayEnergised:
			r.Energised = append(r.Energised, a)
		case a.Part.Relay.V == schema.RelayReleased:
			r.Released = append(r.Released, a)
		default:
			r.Unsaid = append(r.Unsaid, a)
		}
	}
	if r.Count == 0 {
		return r
	}
	feed, lacks := s.RelayFeed(l)
	if len(lacks) == 0 {
		r.Feed = feed
	}
	r.Volts.Missing = MergeMissing(r.Current.Missing, lacks, l.reads.unsaid)
	if r.Volts.Known() {
		r.Volts.Assumed = mergeTexts(feed.Assumed, slices.DeleteFunc(slices.Clone(l.reads.assumed), func(text string) bool { return text == sideBySide }))
		if l.reads.loop.laid {
			r.Volts.Assumed = append(r.Volts.Assumed, "the override conductors are fed from the home run alone, not from the ring leg too")
		}
		l.relayVolts(&r, nil)
	}
	return r
}

// relayVolts solves the conductors of the override of a line, as they are or with
// others instead.
func (l *Line) relayVolts(r *Relays, instead *conductor.Conductor) {
	b := l.reads
	ohm, bad := l.overrideOhmPerMetre(instead)
	if len(bad) > 0 {
		r.Volts.Missing = bad
		return
	}
	net := circuit.New(b.net.Nodes())
	for node := circuit.Node(1); int(node) < b.net.Nodes(); node++ {
		var leg circuit.Leg
		if c := b.wayCable[node]; c != noCable {
			leg.ROhm = ohm[c] * b.wayMetres[node]
		}
		net.Leg(b.net.Parent(node), leg)
	}
	for _, c := range b.controls {
		if c.of.Part.Override.V == schema.OverrideRelay && c.of.Part.Current.V > 0 {
			net.Load(c.node, circuit.Load{Ohm: float64(RelayVolts) / float64(c.of.Part.Current.V)})
		}
	}
	var solver circuit.Solver
	solution, err := solver.Solve(net, 0, float64(r.Feed.Rail.V.Voltage))
	if err != nil {
		r.Volts.Missing = b.unsolved(err)
		return
	}
	lowest, at := math.Inf(1), -1
	for i, c := range b.controls {
		if volts := cmplx.Abs(solution.Volts(c.node)); c.of.Part.Override.V == schema.OverrideRelay && volts < lowest*(1-1e-9) {
			lowest, at = volts, i
		}
	}
	if at < 0 {
		return
	}
	r.Volts.Value, r.At = quantity.Voltage(lowest), b.controls[at].name()
	r.Volts.From = []schema.Place{{Span: r.Feed.Rail.Span, Note: r.Feed.Rail.Text + " for relays"}}
	r.Volts.Sum = l.relaySum(r, solution, b.controls[at].node, ohm)
	if seen, draws := solution.InputImpedance(); draws {
		r.Drawn.Value = quantity.Current(float64(r.Feed.Rail.V.Voltage) / real(seen))
		r.Drawn.Sum = fmt.Sprintf("%s / %s that %s sees = %s", r.Feed.Rail.V.Voltage, quantity.Resistance(real(seen)), r.Feed.Name(), r.Drawn.Value)
		r.Drawn.From = r.Current.From
	}
}

// relaySum shows how the volts at a relay come about: what the cable loses as far
// as all of the current flows, and what it loses beyond.
func (l *Line) relaySum(r *Relays, solution *circuit.Solution, far circuit.Node, ohm []float64) string {
	b := l.reads
	var way []circuit.Node
	for node := far; node > 0; node = b.net.Parent(node) {
		if c := b.wayCable[node]; c != noCable && ohm[c]*b.wayMetres[node] > 0 {
			way = append(way, node)
		}
	}
	us := b.system.Design.System.US()
	length := func(metres float64) string { return quantity.Format(quantity.Length(roundMetres(metres)), us) }
	sum := fmt.Sprintf("%s at %s", r.Feed.Rail.V.Voltage, r.Feed.Name())
	if len(way) > 0 {
		amps := cmplx.Abs(solution.LegAmps(way[len(way)-1]))
		metres, loop, beyond, next := 0.0, 0.0, 0.0, 0
		for i, node := range slices.Backward(way) {
			if !same(cmplx.Abs(solution.LegAmps(node)), amps) {
				next = i + 1
				break
			}
			metres += b.wayMetres[node]
			loop += ohm[b.wayCable[node]] * b.wayMetres[node]
		}
		sum += fmt.Sprintf(" − %s × %s along %s of cable, there and back", quantity.Current(amps), quantity.Resistance(loop), length(metres))
		for _, node := range way[:next] {
			beyond += b.wayMetres[node]
		}
		if lost := float64(r.Feed.Rail.V.Voltage) - amps*loop - float64(r.Volts.Value); next > 0 {
			sum += fmt.Sprintf(" − %s along %s more with less current", quantity.Voltage(lost), length(beyond))
		}
	}
	return fmt.Sprintf("%s = %s at %s", sum, r.Volts.Value, r.At)
}

// overrideOhmPerMetre is the resistance of the override conductors, there and
// back, for each kind of cable of the line.
func (l *Line) overrideOhmPerMetre(instead *conductor.Conductor) ([]float64, []Missing) {
	b := l.reads
	ohm := make([]float64, len(b.cables))
	for i := range b.cables {
		c := b.cables[i].cable
		if v := l.Part.OverrideCable; v.Set() {
			c = b.system.Design.Cable(v.V)
		}
		wire := wireOf(c)
		if instead != nil {
			wire = *instead
		}
		figures := b.system.cableFigures(c, wire)
		if figures.bad != "" {
			return nil, []Missing{{What: "cable that can be computed (" + figures.bad + ")", Part: named("line", l.Part.Name), Where: l.Part.Header, Write: `override_cable = "2 x 1.5 mm2"`}}
		}
		ohm[i] = figures.ohm
	}
	return ohm, nil
}

// SmallestOverride finds the smallest standard conductor with which the override
// relays of a line get at least so many volts, as a cable of its own for them.
// It is not ok when even the largest does not do.
func (l *Line) SmallestOverride(r Relays, least quantity.Voltage) (cable string, volts quantity.Voltage, ok bool) {
	var smallest *schema.Cable
	if v := l.Part.OverrideCable; v.Set() {
		smallest = l.reads.system.Design.Cable(v.V)
	} else {
		for i := range l.reads.cables {
			if c := &l.reads.cables[i]; smallest == nil || conductor.CrossSectionMM2(c.wire) < conductor.CrossSectionMM2(wireOf(smallest)) {
				smallest = c.cable
			}
		}
	}
	if smallest == nil || !r.Volts.Known() {
		return "", 0, false
	}
	wire := wireOf(smallest)
	wire.Class, wire.Construction, wire.Coated = 0, conductor.NotSaid, false
	for {
		larger, more := conductor.NextLarger(wire)
		if !more {
			return "", 0, false
		}
		wire = larger
		again := r
		l.relayVolts(&again, &wire)
		if again.Volts.Known() && quantity.AtLeast(again.Volts.Value, least) {
			two := *smallest
			two.Model, two.Conductors.Cores = nil, 2
			return sizeText(&two, wire), again.Volts.Value, true
		}
	}
}

// name names one attenuator with the runs it stands inside: "Suite 2, Bed 1".
func (c *control) name() string {
	var names []string
	for _, o := range c.in {
		names = append(names, o.placement.MemberName(o.index))
	}
	if p := &c.of.Part.Placement; !p.Numbered() {
		names = append(names, p.Name)
	}
	return strings.Join(names, ", ")
}

// Watch is how the end-of-line devices of a line watch it.
type Watch struct {
	// Ends are the devices that can see the line.
	Ends []*schema.LineEnd
	// Behind are those that stand behind an attenuator, with the outermost one.
	Behind []EndBehind
	// Unwatched are branches beyond whose tee no device stands, and what comes on
	// a chain after the last device.
	Unwatched []Stretch
	// Attenuators counts the attenuator blocks: no device sees behind them.
	Attenuators int
	// AtFirst tells that a device hangs where the first device of the line does.
	AtFirst bool
}

// EndBehind is an end-of-line device behind an attenuator.
type EndBehind struct {
	End        *schema.LineEnd
	Attenuator *schema.Attenuator
}

// Stretch is a part of a line whose cable no end-of-line device watches.
type Stretch struct {
	Name  string // of the branch, or of the first device of the stretch
	After string // the device after which it lies; "" for a branch
	At    source.Span
}

// Watch works out what the end-of-line devices of a line see. A device watches
// the cable from the amplifier to itself: whatever opens or short-circuits there
// shows. Where a tee branches off, only a device of its own watches the branch.
func (l *Line) Watch() Watch {
	var w Watch
	w.chain(l.Part.Devices, nil)
	w.AtFirst = endAtFirst(l.Part.Devices)
	slices.SortFunc(w.Unwatched, func(a, b Stretch) int { return source.Compare(a.At, b.At) })
	return w
}

// endAtFirst tells that an end-of-line device is the first of a line, or hangs
// beside the first.
func endAtFirst(devices []schema.Device) bool {
	for i, device := range devices[:min(len(devices), 2)] {
		if _, end := device.(*schema.LineEnd); end {
			return i == 0 || devices[0].Common().Count() == 1 && !device.Common().Leg.Set()
		}
	}
	return false
}

// chain looks at devices in order and tells whether a device watches the chain.
// It calls itself for what braces enclose; the dialect bounds their nesting.
func (w *Watch) chain(devices []schema.Device, behind *schema.Attenuator) bool {
	last := -1
	seen := make([]bool, len(devices))
	for i, device := range devices {
		switch v := device.(type) {
		case *schema.LineEnd:
			if behind != nil {
				w.Behind = append(w.Behind, EndBehind{v, behind})
				continue
			}
			w.Ends = append(w.Ends, v)
			last, seen[i] = i, true
		case *schema.Attenuator:
			w.Attenuators++
			outermost := behind
			if outermost == nil {
				outermost = v
			}
			w.chain(v.Devices, outermost)
		case *schema.Branch:
			if w.chain(v.Devices, behind) {
				last, seen[i] = i, true
			}
		}
	}
	if behind != nil {
		return false // nothing is seen there
	}
	if last < 0 {
		return false
	}
	w.unwatched(devices, seen, last)
	return true
}

// unwatched notes what a watched chain has beside and after the way that is
// watched.
func (w *Watch) unwatched(devices []schema.Device, seen []bool, last int) {
	for i, device := range devices {
		p := device.Common()
		_, branch := device.(*schema.Branch)
		_, end := device.(*schema.LineEnd)
		switch {
		case branch && !seen[i]:
			w.Unwatched = append(w.Unwatched, Stretch{Name: p.Name, At: p.Header})
		case i > last && !branch && !end:
			w.Unwatched = append(w.Unwatched, Stretch{Name: p.Name, After: devices[last].Common().Name, At: p.Header})
			return // one stretch, however long
		}
	}
}
