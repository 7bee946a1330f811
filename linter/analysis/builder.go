package analysis

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/circuit"
	"loudlint/linter/conductor"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// referenceHz is the frequency at which lines are solved unless another is
// asked for: impedance meters for loudspeaker lines use it.
const referenceHz = 1000

// builder puts one line into the terms of the circuit solver.
type builder struct {
	system *System
	line   *Line
	net    *circuit.Network
	volts  float64 // line voltage, 0 when not known
	kind   OutputKind
	how    wiring

	wayMetres []float64 // per node: the cable from the node before
	wayCable  []int32   // per node: which of cables that is, noCable for none
	places    []place   // what hangs on the line, in walking order
	controls  []control // its attenuators one by one, in walking order
	walked    []walked  // its loudspeakers, in walking order; kept where wiring.listen says so

	cables  []cableFigures
	cableAt map[string]int32
	loads   map[*schema.Loudspeaker]*speakerLoad
	runs    map[*schema.Loudspeaker]*Run
	faders  map[*schema.Attenuator]*Attenuator
	curves  []float64 // frequencies at which some loudspeaker states its impedance
	sum     sum
	unknown []Missing // what keeps the load from being known
	unsaid  []Missing // what keeps the cable from being known
	assumed []string
	// cableless tells that a leg is of no stated cable.
	cableless bool
	started   bool         // the first device of the line has been met
	first     circuit.Node // where it hangs
	loop      loop
}

// wiring is the cable a line is built with.
type wiring struct {
	lumped bool // only the total length is known: all loads at the far end
	none   bool // no cable at all
	// resize, when solving again, is the conductor of the line's own cable, or
	// of every cable.
	resize     *conductor.Conductor
	throughout bool
	// set, when a meter's reading is to be predicted, says how an attenuator
	// stands; without it all are fully up.
	set func(*schema.Attenuator) schema.Attenuation
	// listen keeps the order in which loudspeakers are met.
	listen bool
	// instead, when a change is tried, is what stands in the place of blocks.
	instead Instead
	// before, when a ring is measured where it is opened, are the devices that
	// its end leads to, through the amplifier's end and out again; closing is the
	// leg to there.
	before  []schema.Device
	closing schema.Value[quantity.Length]
}

const noCable = -1

// place is where a device, or a run of them, lies in the network.
type place struct {
	first  circuit.Node
	step   circuit.Node   // from one of the run to the next; 0 where all hang on one node
	count  int            // how many of a run
	loads  circuit.LoadID // of the first; the others follow
	run    *Run           // nil for what is no loudspeaker
	device *schema.Placement
	in     []ordinal // the runs it stands inside, outermost first
}

// control is one attenuator in the network: the node its input is at.
type control struct {
	of   *Attenuator
	node circuit.Node
	in   []ordinal // the runs it stands inside, its own included
}

// ordinal is which member of an enclosing run something stands in.
type ordinal struct {
	placement *schema.Placement
	index     int
}

// cableFigures is one kind of cable per metre of route, both conductors.
type cableFigures struct {
	cable             *schema.Cable
	wire              conductor.Conductor
	ohm, henry, farad float64
	perLength, kind   string // the resistance of one conductor, and what it is of
	assumed           string // what that takes for granted, "" when nothing
	bad               string // why it cannot be used
}

// speakerLoad is what one loudspeaker of a block is to the line.
type speakerLoad struct {
	load    circuit.Load
	idle    bool // takes nothing: a tap of 0 W
	watts   float64
	term    term
	tap     Tap
	missing []Missing // what keeps its impedance from being known
	unfed   []Missing // what keeps its watts from being known besides

	nominalOhm float64 // of one that is connected directly
	arithmetic string  // how watts come about, "" where they are the tap itself
}

// position is where the walk along the line stands.
type position struct {
	node    circuit.Node
	cable   schema.Value[string]
	behind  []*Attenuator
	in      []ordinal
	assumed bool
}

// build puts a line into the terms of the solver with the cable asked for.
func build(s *System, l *Line, how wiring) *builder {
	b := &builder{
		system: s, line: l, net: circuit.New(64), how: how,
		wayMetres: []float64{0}, wayCable: []int32{noCable},
		cableAt: map[string]int32{}, loads: map[*schema.Loudspeaker]*speakerLoad{},
		runs: map[*schema.Loudspeaker]*Run{}, faders: map[*schema.Attenuator]*Attenuator{},
	}
	if l.Output != nil {
		b.kind = l.Output.Kind
		if b.kind == ConstantVoltage {
			b.volts = float64(l.Output.Part.Volts.V)
		}
	}
	b.walk()
	return b
}

// walk puts the whole line into the network.
func (b *builder) walk() {
	part := b.line.Part
	start := position{cable: part.Cable, assumed: part.Assumed()}
	if part.Wiring.V == "series" {
		b.inSeries(start)
		return
	}
	if b.how.lumped {
		b.lumped(start)
		return
	}
	if part.Return.V == "reverse" {
		// The first device may hang at the amplifier's terminals, its return conductor does not.
		start.node = b.reached(b.net.Leg(0, circuit.Leg{}), 0, 0, noCable)
	}
	b.started = len(b.how.before) > 0 // the home run comes later then
	end := b.chain(part.Devices, start)
	if len(b.how.before) > 0 {
		start.node = b.leg(end, b.how.closing.V, part.Cable)
		b.started = false
		b.chain(b.how.before, start)
		return
	}
	b.close(end)
}

// chain walks devices in order and gives its last node. It calls itself for what
// braces enclose; the dialect bounds their nesting.
func (b *builder) chain(devices []schema.Device, at position) circuit.Node {
	for _, device := range devices {
		p := device.Common()
		inner := at
		if p.Cable.Set() {
			inner.cable = p.Cable
		}
		inner.assumed = at.assumed || p.Assumed()
		switch v := device.(type) {
		case *schema.Loudspeaker:
			if with := b.how.instead[v]; with != nil {
				v = with
			}
			at.node = b.loudspeakers(v, inner)
		case *schema.Attenuator:
			at.node = b.enclosing(p, v.Devices, inner, v)
		case *schema.Branch:
			at.node = b.enclosing(p, v.Devices, inner, nil)
		case *schema.Existing:
			at.node = b.existing(v, inner)
		case *schema.LineEnd:
			at.node = b.lineEnd(v, inner)
		}
	}
	return at.node
}

// enclosing walks a branch or an attenuator, or a run of them.
func (b *builder) enclosing(p *schema.Placement, devices []schema.Device, at position, a *schema.Attenuator) circuit.Node {
	fader, kind := b.fader(a, at), "branch"
	if a != nil {
		kind = "attenuator"
	}
	for i := range p.Count() {
		at.node = b.next(kind, p, i, at)
		inside := at
		inside.in = at.in
		if p.Numbered() {
			inside.in = append(slices.Clip(slices.Clone(at.in)), ordinal{p, i})
		}
		if a != nil {
			fader.Count++
			inside.behind = append(slices.Clip(slices.Clone(at.behind)), fader)
			b.controls = append(b.controls, control{of: fader, node: at.node, in: inside.in})
			inside.node = b.attenuator(a, at.node)
		}
		b.chain(devices, inside)
	}
	return at.node
}

func (b *builder) fader(a *schema.Attenuator, at position) *Attenuator {
	if a == nil {
		return nil
	}
	f := b.faders[a]
	if f == nil {
		f = &Attenuator{Line: b.line, Part: a, Inside: slices.Clone(at.behind)}
		b.faders[a] = f
		b.line.Attenuators = append(b.line.Attenuators, f)
	}
	return f
}

// attenuator adds an attenuator that is fully up: limits must hold whenever
// somebody turns it up. Only for a reading does it stand as it was found.
func (b *builder) attenuator(a *schema.Attenuator, from circuit.Node) circuit.Node {
	control := circuit.Attenuator{InsertionDB: math.Abs(float64(a.InsertionLoss.V))}
	if b.how.set != nil {
		stands := b.how.set(a)
		control.SettingDB, control.Off = -math.Abs(float64(stands.Gain)), stands.Off
	}
	node := b.net.Attenuator(from, control)
	return b.reached(node, from, 0, noCable)
}

// reached notes the cable that leads to a node. Where the network refused it,
// the walk stays where it was: solving says what is wrong.
func (b *builder) reached(node, from circuit.Node, metres float64, cable int32) circuit.Node {
	if node < 0 {
		return from
	}
	b.wayMetres = append(b.wayMetres, metres)
	b.wayCable = append(b.wayCable, cable)
	return node
}

// next adds the cable to the i-th member of a device or run.
func (b *builder) next(kind string, p *schema.Placement, i int, at position) circuit.Node {
	if b.how.lumped {
		return at.node
	}
	if i > 0 {
		return b.leg(at.node, b.spacing(kind, p), at.cable)
	}
	node := at.node
	first := !b.started
	b.started = true
	home := b.line.Part.HomeRun
	if first && home.Set() {
		node = b.leg(node, home.V, b.line.Part.Cable)
	}
	switch {
	case p.Leg.Set():
		node = b.leg(node, p.Leg.V, at.cable)
	case first && !home.Set():
		b.lacks(missing("length of the home run", "line", &b.line.Part.Part, `home_run = "20 m"`))
	case !first:
		b.lacks(missing("length of the leg that leads to it", kind, &p.Part, `leg = "6 m"`))
	}
	if first {
		b.first = node
	}
	return node
}

func (b *builder) spacing(kind string, p *schema.Placement) quantity.Length {
	if !p.Spacing.Set() {
		b.lacks(missing("cable between neighbours of the run", kind, &p.Part, `spacing = "6 m"`))
	}
	return p.Spacing.V
}

func (b *builder) lacks(m Missing) {
	if len(b.unsaid) < 64 && !slices.Contains(b.unsaid, m) {
		b.unsaid = append(b.unsaid, m)
	}
}

// leg adds a length of cable.
func (b *builder) leg(from circuit.Node, length quantity.Length, cable schema.Value[string]) circuit.Node {
	c := b.cable(cable)
	leg := b.legOf(c, float64(length))
	if b.line.Part.Return.V == "reverse" && b.first == 0 && !b.how.lumped {
		leg = oneConductor(leg)
	}
	return b.reached(b.net.Leg(from, leg), from, float64(length), c)
}

// legOf gives what a length of one of the cables is to the network.
func (b *builder) legOf(cable int32, metres float64) circuit.Leg {
	if cable == noCable || b.how.none {
		return circuit.Leg{}
	}
	c := &b.cables[cable]
	return circuit.Leg{ROhm: c.ohm * metres, LHenry: c.henry * metres, CFarad: c.farad * metres}
}

// cable gives the index of a cable by its name. A line that names none lacks it.
func (b *builder) cable(v schema.Value[string]) int32 {
	if !v.Set() {
		if !b.cableless {
			b.cableless = true
			b.lacks(b.line.CableMissing())
		}
		return noCable
	}
	key := v.V
	resized := b.how.resize != nil && (b.how.throughout || v.Span == b.line.Part.Cable.Span)
	if resized {
		key = "resized " + key
	}
	if i, ok := b.cableAt[key]; ok {
		return i
	}
	cable := b.system.Design.Cable(v.V)
	wire := wireOf(cable)
	if resized && conductor.CrossSectionMM2(wire) < conductor.CrossSectionMM2(*b.how.resize) {
		wire = *b.how.resize
	}
	c := b.system.cableFigures(cable, wire)
	i := int32(len(b.cables))
	b.cableAt[key] = i
	b.cables = append(b.cables, c)
	switch {
	case c.bad != "":
		b.lacks(Missing{What: "cable that can be computed (" + c.bad + ")", Part: named("line", b.line.Part.Name), Where: v.Span, Write: `cable = "2 x 1.5 mm2"`})
	case c.assumed != "":
		b.assumed = append(b.assumed, c.assumed)
	}
	return i
}

// cableFigures gives the figures of a cable, made with a conductor.
func (s *System) cableFigures(cable *schema.Cable, wire conductor.Conductor) cableFigures {
	r, err := conductor.PerMetre(wire, s.TemperatureC)
	if err != nil {
		return cableFigures{cable: cable, wire: wire, bad: err.Error()}
	}
	c := cableFigures{cable: cable, wire: wire, ohm: conductor.LoopOhm(r.OhmPerMetre, 1)}
	perLength, unit, celsius := r.OhmPerMetre*1000, "ohm/km", quantity.Temperature(s.TemperatureC)
	if s.Design.System.US() {
		perLength, unit = r.OhmPerMetre*1000*quantity.MetresPerFoot, "ohm/1000 ft"
	}
	var kind string
	switch {
	case wire.IsAWG && wire.Construction == conductor.Stranded:
		kind = "stranded copper, ASTM B258"
	case wire.IsAWG:
		kind = "solid copper, ASTM B258"
		if r.Assumed {
			c.assumed = fmt.Sprintf("the conductors of %q are solid; stranded ones have up to 2 %% more resistance", cable.Name)
		}
	default:
		class := wire.Class
		if r.Assumed {
			class = 5
			c.assumed = fmt.Sprintf("the conductors of %q are flexible (IEC 60228 class 5), which have the highest resistance", cable.Name)
		}
		kind = "IEC 60228 class " + strconv.Itoa(class)
	}
	if wire.Coated {
		kind += ", tinned"
	}
	c.perLength = quantity.Significant(perLength, 4) + " " + unit
	c.kind = fmt.Sprintf("%s, %s, %s", cable.Name, kind, quantity.Format(celsius, s.Design.System.US()))
	if cable.Model != nil {
		c.henry, c.farad = float64(cable.Model.Inductance.V), float64(cable.Model.Capacitance.V)
	}
	return c
}

// wireOf gives the conductor of a cable.
func wireOf(c *schema.Cable) conductor.Conductor {
	w := conductor.Conductor{AreaMM2: float64(c.Conductors.Size), IsAWG: c.Conductors.IsAWG, AWG: c.Conductors.Gauge}
	if w.IsAWG {
		w.AreaMM2 = 0
	} else {
		w.Class = c.Class()
	}
	if c.Model != nil {
		w.Coated = c.Model.Tinned.V
		if w.IsAWG && c.Model.Stranded.Set() {
			w.Construction = conductor.Solid
			if c.Model.Stranded.V {
				w.Construction = conductor.Stranded
			}
		}
	}
	return w
}

// loudspeakers adds a block of loudspeakers and gives its last node.
func (b *builder) loudspeakers(part *schema.Loudspeaker, at position) circuit.Node {
	load := b.loudspeaker(part)
	count := part.Count()
	run := b.met(part, load, count, at)
	node := b.next("loudspeaker", &part.Placement, 0, at)
	p := place{first: node, count: 1, run: run, device: &part.Placement, in: at.in}
	draws := len(load.missing) == 0 && !load.idle
	b.heard(run, count, draws)
	if draws {
		p.loads = b.net.Load(node, load.load)
		b.places = append(b.places, p)
	}
	if count == 1 {
		return node
	}
	// The first member stands apart from the chain of the others.
	p.count = count - 1
	p.in = append(slices.Clip(slices.Clone(at.in)), ordinal{&part.Placement, 1})
	if b.how.lumped {
		if draws {
			p.loads = circuit.LoadID(b.net.Loads())
			for range p.count {
				b.net.Load(node, load.load)
			}
			b.places = append(b.places, p)
		}
		return node
	}
	spacing, cable := b.spacing("loudspeaker", &part.Placement), b.cable(at.cable)
	if !draws { // nothing hangs there, and the cable goes on all the same
		for range p.count {
			node = b.leg(node, spacing, at.cable)
		}
		return node
	}
	chain := b.net.Chain(node, p.count, b.legOf(cable, float64(spacing)), load.load)
	if chain.Last < 0 {
		return node
	}
	p.first, p.step, p.loads = chain.First, 1, chain.FirstLoad
	b.places = append(b.places, p)
	for range p.count {
		b.wayMetres = append(b.wayMetres, float64(spacing))
		b.wayCable = append(b.wayCable, cable)
	}
	return chain.Last
}

// heard keeps a block in the order in which the walk meets loudspeakers.
func (b *builder) heard(r *Run, count int, draws bool) {
	if b.how.listen {
		b.walked = append(b.walked, walked{run: r.index, count: count, draws: draws})
	}
}

// met counts loudspeakers of a block and adds what they take to the sums.
func (b *builder) met(part *schema.Loudspeaker, load *speakerLoad, count int, at position) *Run {
	r := b.runs[part]
	if r == nil {
		r = &Run{Line: b.line, Part: part, Tap: load.tap, Behind: slices.Clone(at.behind), Assumed: at.assumed, index: len(b.line.Runs), load: load}
		b.runs[part] = r
		b.line.Runs = append(b.line.Runs, r)
	}
	r.Count += count
	b.line.Loudspeakers += count
	if len(load.missing) > 0 {
		b.unknown = MergeMissing(b.unknown, load.missing)
		at.lacksBehind(load.missing)
		return r
	}
	at.lacksBehind(load.unfed)
	t := load.term
	t.count, t.assumed = count, at.assumed
	b.takes(t, at)
	return r
}

// takes adds a summand to the load of the line and of the attenuators before it.
func (b *builder) takes(t term, at position) {
	b.sum.add(t)
	for _, f := range at.behind {
		f.sum.add(t)
	}
}

// lacksLoad notes what keeps the load of the line, and of the attenuators before
// it, from being known.
func (b *builder) lacksLoad(m Missing, at position) {
	b.unknown = MergeMissing(b.unknown, []Missing{m})
	at.lacksBehind([]Missing{m})
}

// lacksBehind notes what keeps the load of the attenuators before a place from
// being known.
func (at *position) lacksBehind(missing []Missing) {
	if len(missing) == 0 {
		return
	}
	for _, f := range at.behind {
		f.unknown = MergeMissing(f.unknown, missing)
	}
}

// existing adds old equipment.
func (b *builder) existing(e *schema.Existing, at position) circuit.Node {
	node := b.next("existing", &e.Placement, 0, at)
	t := term{count: 1, assumed: at.assumed}
	var load circuit.Load
	switch {
	case e.Load.Set() && b.kind == LowImpedance:
		b.lacksLoad(missing("impedance of the existing equipment", "existing", &e.Part, `impedance = "8 ohm"`), at)
		return node
	case e.Load.Set():
		t, load = b.wattsAt(e.Load, at)
		if t.watts <= 0 {
			return node
		}
	case e.Impedance.Set():
		load = circuit.Load{Ohm: float64(e.Impedance.V)}
		t.ohm, t.from = e.Impedance.Text, e.Impedance.Span
		if volts := b.sourceVolts(); volts > 0 {
			t.watts = volts * volts / float64(e.Impedance.V)
			t.text = fmt.Sprintf("%s (%s at %s)", quantity.Power(t.watts), e.Impedance.Text, voltsText(volts))
		}
		at.lacksBehind(b.line.VoltsMissing())
	default:
		b.lacksLoad(missing("load of the existing equipment", "existing", &e.Part, `load = "30 W"`), at)
		return node
	}
	b.takes(t, at)
	b.places = append(b.places, place{first: node, count: 1, loads: b.net.Load(node, load), device: &e.Placement, in: at.in})
	return node
}

// wattsAt gives something that is stated as a power at the line's voltage.
func (b *builder) wattsAt(v schema.Value[quantity.Power], at position) (term, circuit.Load) {
	volts := b.volts
	if volts <= 0 {
		volts = 100 // any: nothing is worked out while the line's voltage is not known
	}
	watts := float64(v.V)
	t := term{text: v.Text, watts: watts, count: 1, from: v.Span, assumed: at.assumed}
	if watts > 0 {
		t.ohm = quantity.Resistance(volts * volts / watts).String()
	}
	return t, circuit.Load{PowerW: watts, MarkedVolts: volts}
}

// lineEnd adds a monitoring device. What it takes is left out when not stated:
// such devices take next to nothing.
func (b *builder) lineEnd(e *schema.LineEnd, at position) circuit.Node {
	node := at.node
	if e.Leg.Set() {
		node = b.next("line_end", &e.Placement, 0, at)
	}
	if e.Load.Set() && e.Load.V > 0 && b.kind != LowImpedance {
		t, load := b.wattsAt(e.Load, at)
		b.takes(t, at)
		b.net.Load(node, load)
	}
	return node
}

// inSeries wires a whole line in series.
func (b *builder) inSeries(at position) {
	part := b.line.Part
	if b.how.lumped {
		at.node = b.leg(0, part.Length.V, part.Cable)
	}
	if part.RingLeg.Set() || part.Return.Set() {
		b.lacks(Missing{
			What: "cable that can be computed (how the conductors of a ring join loudspeakers in series is not said)",
			Part: named("line", part.Name), Where: part.Header, Write: `wiring = "parallel"`,
		})
	}
	b.series(at)
}

// series wires plain loudspeakers one after the other on a low-impedance
// output: their impedances and their cable add up.
func (b *builder) series(at position) {
	const joined = "way the loudspeakers are joined"
	if b.kind == ConstantVoltage {
		b.unknown = append(b.unknown, missing(joined+" (loudspeakers on a constant-voltage line are in parallel)", "line", &b.line.Part.Part, `wiring = "parallel"`))
		return
	}
	var total float64
	for _, device := range b.line.Part.Devices {
		v, plain := device.(*schema.Loudspeaker)
		if !plain {
			b.unknown = append(b.unknown, missing(joined+" (series is worked out for loudspeakers one after the other only)", "line", &b.line.Part.Part, `wiring = "parallel"`))
			return
		}
		if with := b.how.instead[v]; with != nil {
			v = with
		}
		if load := b.loudspeaker(v); len(load.missing) == 0 && !load.idle {
			total += float64(v.Count()) * load.ohm()
		}
	}
	var parts []circuit.Load
	var placed []place
	for _, device := range b.line.Part.Devices {
		v, plain := device.(*schema.Loudspeaker)
		if !plain {
			continue
		}
		if with := b.how.instead[v]; with != nil {
			v = with
		}
		inner := at
		if v.Cable.Set() {
			inner.cable = v.Cable
		}
		inner.assumed = at.assumed || v.Assumed()
		load := b.loudspeaker(v)
		if volts := b.sourceVolts(); volts > 0 && len(load.missing) == 0 && !load.idle {
			// All carry the same current, volts / total.
			load.watts = volts * volts / total / total * load.ohm()
			load.term.watts = load.watts
			load.term.text = fmt.Sprintf("%s (%s of %s in series across %s)", quantity.Power(load.watts), load.term.ohm, quantity.Resistance(total), voltsText(volts))
		}
		run := b.met(v, load, v.Count(), inner)
		b.heard(run, v.Count(), len(load.missing) == 0 && !load.idle)
		for i := range v.Count() {
			// One conductor carries the current on; the other comes back from
			// the last one, so that both conductors of every leg are in the loop.
			inner.node = circuit.Node(b.net.Nodes() - 1)
			b.next("loudspeaker", &v.Placement, i, inner)
			if len(load.missing) == 0 && !load.idle {
				parts = append(parts, load.load)
				placed = append(placed, place{count: 1, run: run, device: &v.Placement, in: append(slices.Clone(at.in), ordinal{&v.Placement, i})})
			}
		}
	}
	if len(parts) == 0 {
		return
	}
	node := circuit.Node(b.net.Nodes() - 1) // behind all the cable: in a series circuit its place does not matter
	first := b.net.Series(node, parts...)
	for i := range placed {
		placed[i].first, placed[i].loads = node, first+circuit.LoadID(i)
	}
	b.places = append(b.places, placed...)
}

// memberName names a device with the runs it stands inside: "Room 4, Bed".
func (p *place) memberName(offset int) string {
	var name strings.Builder
	for _, o := range p.in {
		if o.placement == p.device {
			offset += o.index
			continue
		}
		name.WriteString(o.placement.MemberName(o.index))
		name.WriteString(", ")
	}
	last := p.device.Name
	if p.run != nil {
		last = p.device.MemberName(offset)
	}
	if name.Len() == 0 {
		return last
	}
	return name.String() + last
}
