package analysis

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"

	"loudlint/linter/circuit"
	"loudlint/linter/conductor"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// NamedCable is a cable with the place where a line names it.
type NamedCable struct {
	Cable *schema.Cable
	Name  schema.Value[string]
	// Part is the line, or the device on it, that names the cable; Kind is what
	// that is.
	Part *schema.Part
	Kind string
	// Override tells that it is the line's cable for the override of its
	// attenuators alone.
	Override bool
}

// Owner writes the part that names the cable: `line "Hall"`.
func (n NamedCable) Owner() string { return named(n.Kind, n.Part.Name) }

// Missing is what the data of the cable lack. A size has no data: they would
// stand in a cable_model of its own.
func (n NamedCable) Missing(what, write string) Missing {
	if m := n.Cable.Model; m != nil && !schema.IsBuiltIn(m.Header.File) {
		return Missing{What: what, Part: named("cable_model", m.Name), Where: m.Header, Write: write}
	}
	return Missing{What: what, Part: named("cable", n.Cable.Name), Where: n.Name.Span, Write: "a cable_model with " + write}
}

// Cables gives the cables of the line where it names them, from the amplifier
// on, and what is lacking where cable is laid that nothing names. A line without
// devices has neither.
func (l *Line) Cables() ([]NamedCable, []Missing) {
	part, design := l.Part, l.reads.system.Design
	ofLine := part.HomeRun.Set() || part.Length.Set() || part.RingLeg.Set() // cable that only the line itself names
	var all []NamedCable
	type level struct {
		devices []schema.Device
		covered bool // a device further out names a cable for what is inside
	}
	for levels := []level{{devices: part.Devices}}; len(levels) > 0; {
		at := &levels[len(levels)-1]
		if len(at.devices) == 0 {
			levels = levels[:len(levels)-1]
			continue
		}
		device := at.devices[0]
		at.devices = at.devices[1:]
		p, covered := device.Common(), at.covered
		if cable := design.Cable(p.Cable.V); p.Cable.Set() && cable != nil {
			covered = true
			all = append(all, NamedCable{Cable: cable, Name: p.Cable, Part: &p.Part, Kind: schema.DeviceKind(device)})
		}
		ofLine = ofLine || !covered
		levels = append(levels, level{device.Inside(), covered})
	}
	switch cable := design.Cable(part.Cable.V); {
	case !ofLine || len(part.Devices) == 0:
		return all, nil
	case !part.Cable.Set() || cable == nil:
		return all, []Missing{l.CableMissing()}
	default:
		return slices.Insert(all, 0, NamedCable{Cable: cable, Name: part.Cable, Part: &part.Part, Kind: "line"}), nil
	}
}

// CableCurrent is the most that one cable of a line carries.
type CableCurrent struct {
	NamedCable // where it is named first
	// Most is what its leg with most current carries at full output: the highest
	// over 1 kHz and the frequencies at which loudspeakers state their
	// impedance. Least is the same where every leg is known. Where not, Most is
	// what the whole line takes with what is not known of its cable left out:
	// no leg carries more; and Least is what it takes if all of it hangs at the
	// far end of its length, 0 where nothing is known.
	Most, Least Figure[quantity.Current]
	// Leg says which leg that is: "to H 3", "back to the amplifier".
	Leg string
	// Bound tells that not every leg is known; Exact lists what is lacking.
	Bound bool
	Exact []Missing
	// Rating is what a conductor of it may carry, by the data sheet or a table,
	// in surroundings as warm as the conductors are stated to be.
	Rating Figure[quantity.Current]
	// RatingBasis is where the rating is from.
	RatingBasis string
}

// Currents works out what each cable of the line carries and may carry. With
// missing things nothing is known; without any and without currents, nothing
// hangs on the line.
func (l *Line) Currents() ([]CableCurrent, []Missing) {
	b := l.reads
	cables, lacking := l.Cables()
	lacking = MergeMissing(b.loadMissing(), lacking)
	if len(lacking) > 0 || b.net.Loads() == 0 {
		return nil, lacking
	}
	var all []CableCurrent
	for _, n := range cables {
		if !slices.ContainsFunc(all, func(c CableCurrent) bool { return c.Cable == n.Cable }) {
			c := CableCurrent{NamedCable: n}
			c.rate(b.system)
			all = append(all, c)
		}
	}
	if len(b.unsaid) == 0 && !b.how.lumped {
		return all, l.legCurrents(all)
	}
	return all, l.boundCurrents(all)
}

// frequencies are those at which a line is looked at.
func (b *builder) frequencies() []float64 {
	all := append([]float64{referenceHz}, b.curves...)
	slices.Sort(all)
	return slices.Compact(all)
}

// legCurrents reads the highest current of each cable off the solved line.
func (l *Line) legCurrents(all []CableCurrent) []Missing {
	b := l.reads
	most, at, err := b.cableAmps()
	if err != nil {
		return b.unsolved(err)
	}
	ways := ""
	if home, back, ok := b.feeds(); ok {
		ways = fmt.Sprintf(", %s of it by the home run and %s by the ring leg", quantity.Current(home), quantity.Current(back))
	}
	for i := range all {
		c := &all[i]
		for k := range b.cables {
			if b.cables[k].cable == c.Cable && at[k] > 0 && quantity.Current(most[k]) > c.Most.Value {
				c.Most.Value, c.Leg = quantity.Current(most[k]), b.towards(at[k])
			}
		}
		c.Most.From = l.Load.From
		c.Most.Sum = fmt.Sprintf("%s%s, and with its cable %s in the leg %s", l.takesText(), ways, c.Most.Value, c.Leg)
		c.Least = c.Most
	}
	return nil
}

// cableAmps solves the network and gives, for each cable, the highest current in
// a conductor of it and the node its leg leads to: 0 where none carries any, the
// number of nodes for the leg back to the amplifier.
func (b *builder) cableAmps() (most []float64, at []circuit.Node, err error) {
	most, at = make([]float64, len(b.cables)), make([]circuit.Node, len(b.cables))
	var solver circuit.Solver
	for _, hz := range b.frequencies() {
		solution, err := solver.Solve(b.net, hz, b.sourceVolts())
		if err != nil {
			return nil, nil, err
		}
		for node := circuit.Node(1); int(node) < b.net.Nodes(); node++ {
			if c := b.wayCable[node]; c != noCable {
				// Nodes that differ by rounding alone: the one nearer to the amplifier stays.
				amps := cmplx.Abs(solution.LegAmps(node))
				if b.loop.reverse {
					amps = max(amps, cmplx.Abs(solution.ReturnAmps(node)))
				}
				if amps > most[c]*(1+1e-9) {
					most[c], at[c] = amps, node
				}
			}
		}
		if c := b.loop.cable; b.loop.laid && c != noCable {
			if amps := cmplx.Abs(solution.LoopAmps(b.loop.id)); amps > most[c]*(1+1e-9) {
				most[c], at[c] = amps, circuit.Node(b.net.Nodes())
			}
		}
	}
	return most, at, nil
}

// towards names the first device that a leg leads to: "to H 3".
func (b *builder) towards(node circuit.Node) string {
	if int(node) == b.net.Nodes() {
		return "back to the amplifier"
	}
	best, name := circuit.Node(math.MaxInt32), ""
	for i := range b.places {
		p := &b.places[i]
		if p.node(p.count-1) < node {
			continue
		}
		k := 0
		if p.step > 0 && node > p.first {
			k = int((node - p.first) / p.step)
		}
		if p.node(k) < best {
			best, name = p.node(k), p.memberName(k)
		}
	}
	return "to " + name
}

// takesText writes what the line takes with no cable.
func (l *Line) takesText() string {
	volts := l.reads.sourceVolts()
	return fmt.Sprintf("the line takes %s / %s = %s", l.Load.Value, voltsText(volts), quantity.Current(float64(l.Load.Value)/volts))
}

// boundCurrents gives each cable what it carries at most, and the line's own
// what it carries at least.
func (l *Line) boundCurrents(all []CableCurrent) []Missing {
	if len(l.refused) > 0 {
		return l.refused
	}
	highest := 0.0
	for _, a := range l.admittance {
		highest = max(highest, cmplx.Abs(a.admittance))
	}
	b := l.reads
	exact := MergeMissing(l.Loss.Drop.Missing)
	switch {
	case len(exact) > 0:
	default:
		exact = []Missing{missing("length of each leg", "line", &l.Part.Part, `home_run = "20 m"`)}
	}
	var least []float64
	if b.how.lumped {
		if amps, _, err := b.cableAmps(); err == nil {
			least = amps
		}
	}
	for i := range all {
		c := &all[i]
		c.Bound, c.Exact = true, exact
		c.Most = Figure[quantity.Current]{
			Value: quantity.Current(highest * b.sourceVolts()), Sum: l.takesText(), From: l.Load.From,
			Assumed: []string{"each cable is taken to carry what the whole line takes, as not every leg is known; none carries more"},
		}
		for k, amps := range least {
			if b.cables[k].cable == c.Cable {
				c.Least.Value = quantity.Current(amps)
				c.Least.Sum = fmt.Sprintf("%s, and if all of it hangs %s %s", l.takesText(), l.AllAt(), c.Least.Value)
				c.Least.From = l.Load.From
				c.Least.Assumed = []string{fmt.Sprintf("the whole load is taken to hang %s; nearer to the amplifier it takes more", l.AllAt())}
			}
		}
	}
	return nil
}

// rate finds what a conductor of the cable may carry.
func (c *CableCurrent) rate(s *System) {
	if m := c.Cable.Model; m != nil && m.Current.Set() {
		factor, basis := conductor.WarmthFactor(s.TemperatureC)
		c.Rating = given(m.Current, m.Current.Text+" on the data sheet")
		c.RatingBasis = "data sheet of " + m.Name
		if factor < 1 {
			c.Rating.Value = quantity.Current(float64(m.Current.V) * factor)
			c.Rating.Sum = fmt.Sprintf("%s × %s = %s", m.Current.Text, quantity.Significant(factor, 4), c.Rating.Value)
			c.RatingBasis += fmt.Sprintf(", lowered for %s by %s", quantity.Temperature(s.TemperatureC), basis)
			c.Rating.Assumed = []string{fmt.Sprintf("the current on the data sheet of %s holds up to 30 °C", m.Name)}
		}
		return
	}
	most, ok := conductor.MostAmps(wireOf(c.Cable), s.TemperatureC)
	if !ok {
		c.Rating.Missing = []Missing{c.Missing("current a conductor of the cable may carry", `current = "3 A"`)}
		return
	}
	c.Rating = Figure[quantity.Current]{Value: quantity.Current(most.Amps)}
	c.RatingBasis = most.Table
	if most.Factor < 1 {
		c.Rating.Sum = fmt.Sprintf("%s × %s = %s", quantity.Current(most.Tabled), quantity.Significant(most.Factor, 4), c.Rating.Value)
		c.RatingBasis += "; " + most.FactorBasis
		c.Rating.Assumed = []string{"the surroundings are as warm as the conductors are stated to be"}
	}
	if most.Smaller != "" {
		c.Rating.Assumed = append(c.Rating.Assumed, fmt.Sprintf("%s may carry what %s may: the table has no row for it", c.Cable.Name, most.Smaller))
	}
}

// Frequencies between which the treble is compared.
const (
	trebleHz  = 10000
	againstHz = referenceHz
)

// mostSplits bounds over how many lines the load of one is tried.
const mostSplits = 8

// Treble is how much more the cable of a line takes away at 10 kHz than at
// 1 kHz.
type Treble struct {
	// Loss is the difference at the loudspeaker where it is largest; negative
	// where inductance and capacitance lift the treble.
	Loss quantity.Gain
	// Assumed lists what the figure takes for granted.
	Assumed []string
	// Missing lists what keeps it from being known.
	Missing []Missing
	// Worst names that loudspeaker; "" when nothing hangs on the line. WorstRun
	// is its block; nil for old equipment.
	Worst    string
	WorstRun *Run
	// Way says how far it is to it: "60 m of cable". LoadOhm is what hangs on the
	// line, its cable included, at 1 kHz.
	Way     string
	LoadOhm quantity.Resistance
	// Bound tells that Loss is the most that cable of the usual inductance and
	// capacitance, or the loop of a reverse return, could take; Unstated is what
	// would tell.
	Bound    bool
	Unstated []Missing
	// Lumped tells that only the total length is known, so that the whole load
	// counts in one place; see AllAt.
	Lumped bool
}

// Treble works out what the cable of the line takes of the treble.
func (l *Line) Treble() Treble {
	b := l.reads
	t := Treble{Missing: l.Loss.Drop.Missing, Lumped: l.Loss.Lumped, Assumed: l.Loss.Drop.Assumed}
	if len(t.Missing) > 0 || b.net.Loads() == 0 {
		return t
	}
	cables, _ := l.Cables()
	for _, n := range cables {
		t.Unstated = MergeMissing(t.Unstated, n.unstatedPair())
	}
	if len(t.Unstated) > 0 {
		t.Assumed = mergeTexts(t.Assumed, []string{"where a cable does not state them, its inductance is 0.33 to 0.69 µH and its capacitance 33 to 92 pF a metre"})
	}
	if b.loop.reverse {
		t.Unstated = MergeMissing(t.Unstated, []Missing{{
			What: "inductance of the loop that a reverse return makes (it depends on where its conductors lie)",
			Part: named("line", l.Part.Name), Where: l.Part.Header,
		}})
		t.Assumed = slices.DeleteFunc(slices.Clone(t.Assumed), func(text string) bool { return text == sideBySide })
		t.Assumed = append(t.Assumed, "the loop of the reverse return has at most the inductance of a circle of its length")
	}
	search := trebleSearch{b: b}
	if t.Bound = len(t.Unstated) > 0; t.Bound {
		search.corners(&t)
	} else {
		search.keepMost(b.net, &t)
	}
	search.name(&t)
	return t
}

// unstatedPair is what is not stated of the inductance and capacitance of a
// cable.
func (n NamedCable) unstatedPair() []Missing {
	m := n.Cable.Model
	if m != nil && m.Inductance.Set() && m.Capacitance.Set() {
		return nil
	}
	write := `inductance = "0.6 uH/m" and capacitance = "60 pF/m"`
	switch {
	case m != nil && m.Inductance.Set():
		write = `capacitance = "60 pF/m"`
	case m != nil && m.Capacitance.Set():
		write = `inductance = "0.6 uH/m"`
	}
	return []Missing{n.Missing("inductance and capacitance of the cable", write)}
}

// changed gives the line's network with other legs.
func (b *builder) changed(other func(c *cableFigures, leg circuit.Leg, metres float64) circuit.Leg) *circuit.Network {
	net := b.net.Copy()
	for node := circuit.Node(1); int(node) < net.Nodes(); node++ {
		if c := b.wayCable[node]; c != noCable {
			metres := b.wayMetres[node]
			leg := other(&b.cables[c], b.legOf(c, metres), metres)
			if b.loop.reverse && node <= b.first {
				leg = oneConductor(leg)
			}
			net.SetLeg(node, leg)
		}
	}
	if c, metres := b.loop.cable, b.loop.metres; b.loop.laid && c != noCable {
		leg := other(&b.cables[c], b.legOf(c, metres), metres)
		if b.loop.reverse {
			leg = oneConductor(leg)
		}
		net.SetLoop(b.loop.id, leg)
	}
	return net
}

// wideLoop is the most inductance that the loop of a reverse return may have
// besides that of its cable: a circle's of as much conductor.
func (b *builder) wideLoop() float64 {
	if !b.loop.reverse || b.loop.cable == noCable {
		return 0
	}
	metres := b.loop.metres
	for node := b.loop.far; node > 0; node = b.net.Parent(node) {
		metres += b.wayMetres[node]
	}
	return conductor.CircleHenry(metres, conductor.CrossSectionMM2(b.cables[b.loop.cable].wire))
}

// trebleSearch looks for the place that loses most treble, over several networks
// of one line.
type trebleSearch struct {
	b         *builder
	low, high circuit.Solver
	worst     *place
	member    int
}

// corners tries the ends of what two-core cable has of inductance and
// capacitance, and of what the loop of a reverse return adds. They work against
// each other, so that the most is not always lost with the most of all.
func (s *trebleSearch) corners(t *Treble) {
	span := conductor.TypicalPair()
	wide := s.b.wideLoop()
	for _, henry := range []float64{span.LeastHenry, span.MostHenry} {
		for _, farad := range []float64{span.LeastFarad, span.MostFarad} {
			net := s.b.changed(func(c *cableFigures, leg circuit.Leg, metres float64) circuit.Leg {
				m := c.cable.Model
				if m == nil || !m.Inductance.Set() {
					leg.LHenry = henry * metres
				}
				if m == nil || !m.Capacitance.Set() {
					leg.CFarad = farad * metres
				}
				return leg
			})
			s.keepMost(net, t)
			if wide > 0 {
				c := &s.b.cables[s.b.loop.cable]
				home := oneConductor(s.b.legOf(s.b.loop.cable, s.b.loop.metres))
				net.SetLoop(s.b.loop.id, circuit.Leg{ROhm: home.ROhm, LHenry: max(c.henry, henry)*s.b.loop.metres/2 + wide})
				s.keepMost(net, t)
			}
		}
	}
}

// keepMost compares a network at two frequencies and keeps the place that loses
// most, if that is more than was found before.
func (s *trebleSearch) keepMost(net *circuit.Network, t *Treble) {
	if len(t.Missing) > 0 {
		return
	}
	against, err := s.low.Solve(net, againstHz, 1)
	if err != nil {
		t.Missing = s.b.unsolved(err)
		return
	}
	at, err := s.high.Solve(net, trebleHz, 1)
	if err != nil {
		t.Missing = s.b.unsolved(err)
		return
	}
	if z, ok := against.InputImpedance(); ok {
		t.LoadOhm = quantity.Resistance(cmplx.Abs(z))
	}
	for i := range s.b.places {
		p := &s.b.places[i]
		members := p.count
		if p.step == 0 {
			members = 1 // all of a run on one node lose the same
		}
		for k := range members {
			lost, ok := at.CableLossDB(p.node(k))
			before, heard := against.CableLossDB(p.node(k))
			// Places that differ by rounding alone: the first of them stays.
			if ok && heard && (s.worst == nil || lost-before > float64(t.Loss)+1e-9) {
				t.Loss = quantity.Gain(lost - before)
				s.worst, s.member = p, k
			}
		}
	}
}

// name names the place that was found.
func (s *trebleSearch) name(t *Treble) {
	if s.worst != nil {
		t.Worst, t.WorstRun = s.worst.memberName(s.member), s.worst.run
		way, round := s.b.way(s.worst.node(s.member))
		t.Way = s.b.wayText(way, round, false)
	}
}

// TrebleSplit finds over how many lines of the same cable the load has to be
// split so that none loses more than limit of its treble. It is not ok when
// eight do not do. It goes by the inductance and capacitance that are stated.
//
// A part of the load has a multiple of its impedance. Ratios do not change when
// all impedances are multiplied: the cable is divided instead.
func (l *Line) TrebleSplit(limit quantity.Gain) (lines int, loss quantity.Gain, ok bool) {
	for n := 2; n <= mostSplits; n++ {
		var t Treble
		parts := float64(n)
		search := trebleSearch{b: l.reads}
		search.keepMost(l.reads.changed(func(_ *cableFigures, leg circuit.Leg, _ float64) circuit.Leg {
			return circuit.Leg{ROhm: leg.ROhm / parts, LHenry: leg.LHenry / parts, CFarad: leg.CFarad * parts}
		}), &t)
		if len(t.Missing) > 0 {
			return 0, 0, false
		}
		if quantity.AtMost(t.Loss, limit) {
			return n, t.Loss, true
		}
	}
	return 0, 0, false
}

// CableInstead finds in the catalogues of the design the smallest cable that can
// be laid in place of another and suits: it has as many conductors, with no more
// resistance, and where the other's data sheet promises something it promises as
// much. Nil when there is none.
func (s *System) CableInstead(old *schema.Cable, suits func(*schema.CableModel) bool) *schema.CableModel {
	var best *schema.CableModel
	for _, m := range s.Design.Catalogue.Cables {
		if suits(m) && s.asGood(old, m) && (best == nil || m.Size.V.Size < best.Size.V.Size) {
			best = m
		}
	}
	return best
}

// asGood tells that a cable can take the place of another.
func (s *System) asGood(old *schema.Cable, m *schema.CableModel) bool {
	instead := &schema.Cable{Name: m.Name, Model: m, Conductors: m.Size.V}
	if instead.Cores() < max(old.Cores(), 2) {
		return false
	}
	was, err := conductor.PerMetre(wireOf(old), s.TemperatureC)
	if err != nil {
		return false
	}
	is, err := conductor.PerMetre(wireOf(instead), s.TemperatureC)
	if err != nil || !quantity.AtMost(is.OhmPerMetre, was.OhmPerMetre) {
		return false
	}
	o := old.Model
	return o == nil || promises(m.Insulation, o.Insulation) && promises(m.Current, o.Current) && promises(m.FireResistant, o.FireResistant) &&
		(!o.Shield.Set() || m.Shield.Set())
}

// promises tells that a figure is at least another, if that one is stated.
func promises[Q ~float64](is, was schema.Value[Q]) bool {
	return !was.Set() || is.Set() && quantity.AtLeast(is.V, was.V)
}

// CableFor finds the smallest standard conductor above that of a cable which may
// carry its current at a share of its rating. With a thicker conductor the line
// takes more: at most what it would with no cable at all, and that is asked for.
// The cable is written as a design would.
func (l *Line) CableFor(c *CableCurrent, share float64) (cable string, most quantity.Current, ok bool) {
	again := *l
	again.Runs, again.Attenuators = nil, nil
	bare := build(l.reads.system, &again, wiring{lumped: l.reads.how.lumped, none: true})
	if b := l.reads; b.loop.laid && !b.loop.reverse && len(b.cables) == 1 {
		// How the current divides on a ring follows from its lengths: next to no cable, rather than none.
		bare.net = b.changed(func(_ *cableFigures, leg circuit.Leg, _ float64) circuit.Leg {
			return circuit.Leg{ROhm: leg.ROhm / 1e6}
		})
	}
	all, _, err := bare.cableAmps()
	if err != nil {
		return "", 0, false
	}
	carried := 0.0
	for k := range bare.cables {
		if bare.cables[k].cable == c.Cable {
			carried = max(carried, all[k])
		}
	}
	wire := wireOf(c.Cable)
	wire.Class, wire.Construction, wire.Coated = 0, conductor.NotSaid, false
	for {
		larger, standard := conductor.NextLarger(wire)
		if !standard {
			return "", 0, false
		}
		wire = larger
		rating, tabled := conductor.MostAmps(wire, l.reads.system.TemperatureC)
		if tabled && quantity.AtLeast(rating.Amps*share, carried) {
			return sizeText(c.Cable, wire), quantity.Current(rating.Amps), true
		}
	}
}

// Overriding is what the conductors of a line's override carry.
type Overriding int

// Kinds.
const (
	OverrideUnsaid Overriding = iota // no attenuator says what lifts it
	OverrideRelays                   // current for relays
	OverrideLine                     // on a third conductor, the announcement at the voltage of the line
)

// Override gives the cable of its own that carries the override of the line, and
// what that is. It is not ok where the override lies in the line's own cable.
func (l *Line) Override() (n NamedCable, carries Overriding, ok bool) {
	v := l.Part.OverrideCable
	cable := l.reads.system.Design.Cable(v.V)
	if !v.Set() || cable == nil {
		return n, OverrideUnsaid, false
	}
	for _, a := range l.Attenuators {
		switch a.Part.Override.V {
		case schema.OverrideThird:
			carries = OverrideLine
		case schema.OverrideRelay:
			carries = max(carries, OverrideRelays)
		}
	}
	return NamedCable{Cable: cable, Name: v, Part: &l.Part.Part, Kind: "line", Override: true}, carries, true
}

// OverrideReleases tells that cutting the override cable of the line lifts every
// attenuator: each that is lifted has a relay that is released for that.
func (l *Line) OverrideReleases() bool {
	for _, a := range l.Attenuators {
		if lifted, _ := a.Lifted(); lifted && (a.Part.Override.V != schema.OverrideRelay || a.Part.Relay.V != schema.RelayReleased) {
			return false
		}
	}
	return true
}
