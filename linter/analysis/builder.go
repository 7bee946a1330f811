package analysis

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"loudlint/linter/circuit"
	"loudlint/linter/conductor"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
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
	lumped bool                 // only the total length is known: all loads at the far end
	resize *conductor.Conductor // when solving again: the conductor of legs that use the line's own cable

	metres []float64 // per node: way from the amplifier
	ohms   []float64 // per node: loop resistance of that way
	places []place   // loads in the order of their nodes

	cables  map[string]cableFigures
	loads   map[*schema.Loudspeaker]*speakerLoad
	runs    map[*schema.Loudspeaker]*Run
	faders  map[*schema.Attenuator]*Attenuator
	curves  []float64 // frequencies at which some loudspeaker states its impedance
	terms   []term
	unknown []Missing // what keeps the load from being known
	unsaid  []Missing // what keeps the cable from being known
	assumed []string
	started bool // the first device of the line has been met
}

// place is where a device, or a run of them, lies in the network.
type place struct {
	first, last circuit.Node
	loads       circuit.LoadID // of the first node; the others follow
	run         *Run           // nil for what is no loudspeaker
	device      *schema.Placement
	in          []ordinal // the runs it stands inside, outermost first
}

// ordinal is which member of an enclosing run something stands in.
type ordinal struct {
	placement *schema.Placement
	index     int
}

// term is one summand of a load.
type term struct {
	text    string // "6 W", without the count
	watts   float64
	count   int
	ohm     string // the same as an impedance: "8 ohm"
	assumed bool
	from    source.Span
}

// cableFigures is one kind of cable per metre of route, both conductors.
type cableFigures struct {
	ohm, henry, farad float64
	basis             string
	assumed           bool
	bad               string // why it cannot be used
}

// speakerLoad is what one loudspeaker of a block is to the line.
type speakerLoad struct {
	load    circuit.Load
	watts   float64
	term    term
	tap     Tap
	missing []Missing
	assumed []string
}

// position is where the walk along the line stands.
type position struct {
	node    circuit.Node
	cable   schema.Value[string]
	behind  []*Attenuator
	in      []ordinal
	assumed bool
}

func newBuilder(s *System, l *Line) *builder {
	b := &builder{
		system: s, line: l, net: circuit.New(64),
		metres: []float64{0}, ohms: []float64{0},
		cables: map[string]cableFigures{}, loads: map[*schema.Loudspeaker]*speakerLoad{},
		runs: map[*schema.Loudspeaker]*Run{}, faders: map[*schema.Attenuator]*Attenuator{},
	}
	if l.Output != nil {
		b.kind = l.Output.Kind
		if b.kind == ConstantVoltage {
			b.volts = float64(l.Output.Part.Volts.V)
		}
	}
	return b
}

// walk puts the whole line into the network.
func (b *builder) walk() {
	part := b.line.Part
	start := position{cable: part.Cable, assumed: part.Assumed()}
	if b.lumped {
		start.node = b.leg(0, part.Length.V, part.Cable)
	}
	if part.Wiring.V == "series" {
		b.series(start)
		return
	}
	b.chain(part.Devices, start)
}

// chain walks devices in order and gives the place where the cable has got to.
// It calls itself for what braces enclose; the dialect bounds their nesting.
func (b *builder) chain(devices []schema.Device, at position) position {
	for _, device := range devices {
		p := device.Common()
		inner := at
		if p.Cable.Set() {
			inner.cable = p.Cable
		}
		inner.assumed = at.assumed || p.Assumed()
		switch v := device.(type) {
		case *schema.Loudspeaker:
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
	return at
}

// enclosing walks a branch or an attenuator, or a run of them.
func (b *builder) enclosing(p *schema.Placement, devices []schema.Device, at position, a *schema.Attenuator) circuit.Node {
	fader := b.fader(a, at)
	for i := range p.Count() {
		at.node = b.next(p, i, at)
		inside := at
		inside.in = at.in
		if p.Numbered() {
			inside.in = append(slices.Clip(slices.Clone(at.in)), ordinal{p, i})
		}
		if a != nil {
			fader.Count++
			inside.behind = append(slices.Clip(slices.Clone(at.behind)), fader)
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
// somebody turns it up.
func (b *builder) attenuator(a *schema.Attenuator, from circuit.Node) circuit.Node {
	node := b.net.Attenuator(from, circuit.Attenuator{InsertionDB: math.Abs(float64(a.InsertionLoss.V))})
	b.metres = append(b.metres, b.metres[from])
	b.ohms = append(b.ohms, b.ohms[from])
	return node
}

// next adds the cable to the i-th member of a device or run.
func (b *builder) next(p *schema.Placement, i int, at position) circuit.Node {
	if b.lumped {
		return at.node
	}
	if i > 0 {
		return b.leg(at.node, b.spacing(p), at.cable)
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
		b.lacks(missing("length of the leg that leads to it", "device", &p.Part, `leg = "6 m"`))
	}
	return node
}

func (b *builder) spacing(p *schema.Placement) quantity.Length {
	if !p.Spacing.Set() {
		b.lacks(missing("cable between neighbours of the run", "run", &p.Part, `spacing = "6 m"`))
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
	metres := float64(length)
	node := b.net.Leg(from, circuit.Leg{ROhm: c.ohm * metres, LHenry: c.henry * metres, CFarad: c.farad * metres})
	b.metres = append(b.metres, b.metres[from]+metres)
	b.ohms = append(b.ohms, b.ohms[from]+c.ohm*metres)
	return node
}

// cable gives the figures of a cable by its name. A line that names none lacks
// it.
func (b *builder) cable(v schema.Value[string]) cableFigures {
	if !v.Set() {
		b.lacks(missing("cable", "line", &b.line.Part.Part, `cable = "2 x 1.5 mm2"`))
		return cableFigures{}
	}
	key := v.V
	if b.resize != nil && v.Span == b.line.Part.Cable.Span {
		key = "\x00resized"
	}
	if c, ok := b.cables[key]; ok {
		return c
	}
	c := b.cableFigures(v, key)
	b.cables[key] = c
	if c.bad != "" {
		b.lacks(Missing{What: "cable that can be computed (" + c.bad + ")", Part: named("line", b.line.Part.Name), Where: v.Span, Write: `cable = "2 x 1.5 mm2"`})
	} else if c.assumed && !slices.Contains(b.assumed, c.basis) {
		b.assumed = append(b.assumed, c.basis)
	}
	return c
}

func (b *builder) cableFigures(v schema.Value[string], key string) cableFigures {
	cable := b.system.Design.Cable(v.V)
	wire := wireOf(cable)
	if key != v.V {
		wire = *b.resize
	}
	r, err := conductor.PerMetre(wire, b.system.TemperatureC)
	if err != nil {
		return cableFigures{bad: err.Error()}
	}
	c := cableFigures{ohm: conductor.LoopOhm(r.OhmPerMetre, 1), basis: r.Basis(), assumed: r.Assumed}
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
	run := b.run(part, at)
	count := part.Count()
	run.Count += count
	b.line.Loudspeakers += count
	if len(load.missing) == 0 {
		t := load.term
		t.count, t.assumed = count, run.Assumed
		b.terms = addTerm(b.terms, t)
		for _, f := range at.behind {
			f.terms = addTerm(f.terms, t)
		}
	} else {
		b.unknown = MergeMissing(b.unknown, load.missing)
		for _, f := range at.behind {
			f.unknown = MergeMissing(f.unknown, load.missing)
		}
	}
	node := b.next(&part.Placement, 0, at)
	known := len(load.missing) == 0
	p := place{first: node, last: node, run: run, device: &part.Placement, in: at.in}
	if known {
		p.loads = b.net.Load(node, load.load)
	}
	if count > 1 {
		node = b.members(part, at, node, count-1, load, known)
		if known {
			// The first member stands apart from the chain of the others.
			b.places = append(b.places, p)
			first := circuit.Node(int(node) - (count - 2))
			if b.lumped {
				first = node
			}
			p = place{first: first, last: node, loads: p.loads + 1, run: run, device: &part.Placement, in: append(slices.Clip(slices.Clone(at.in)), ordinal{&part.Placement, 1})}
		}
	}
	if known {
		b.places = append(b.places, p)
	}
	return node
}

// members adds the second and following loudspeakers of a run.
func (b *builder) members(part *schema.Loudspeaker, at position, from circuit.Node, count int, load *speakerLoad, known bool) circuit.Node {
	spacing := quantity.Length(0)
	if !b.lumped {
		spacing = b.spacing(&part.Placement)
	}
	c := cableFigures{}
	if !b.lumped {
		c = b.cable(at.cable)
	}
	metres := float64(spacing)
	if !known {
		return from
	}
	if b.lumped {
		for range count {
			b.net.Load(from, load.load)
		}
		return from
	}
	chain := b.net.Chain(from, count, circuit.Leg{ROhm: c.ohm * metres, LHenry: c.henry * metres, CFarad: c.farad * metres}, load.load)
	for i := range count {
		b.metres = append(b.metres, b.metres[from]+metres*float64(i+1))
		b.ohms = append(b.ohms, b.ohms[from]+c.ohm*metres*float64(i+1))
	}
	return chain.Last
}

func (b *builder) run(part *schema.Loudspeaker, at position) *Run {
	r := b.runs[part]
	if r == nil {
		load := b.loads[part]
		r = &Run{Line: b.line, Part: part, Tap: load.tap, Behind: slices.Clone(at.behind), Assumed: at.assumed}
		r.Each = Figure[quantity.Power]{Value: quantity.Power(load.watts), Missing: load.missing, Assumed: load.assumed, Sum: load.term.text}
		b.runs[part] = r
		b.line.Runs = append(b.line.Runs, r)
	}
	return r
}

// existing adds old equipment.
func (b *builder) existing(e *schema.Existing, at position) circuit.Node {
	node := b.next(&e.Placement, 0, at)
	t := term{count: 1, assumed: at.assumed}
	var load circuit.Load
	switch {
	case e.Load.Set() && b.kind == LowImpedance:
		b.unknown = MergeMissing(b.unknown, []Missing{missing("impedance of the existing equipment", "existing", &e.Part, `impedance = "8 ohm"`)})
		return node
	case e.Load.Set():
		volts := b.volts
		if volts == 0 {
			volts = 100 // any: the same voltage feeds it
		}
		load = circuit.Load{PowerW: float64(e.Load.V), MarkedVolts: volts}
		t.text, t.watts, t.from = e.Load.Text, float64(e.Load.V), e.Load.Span
		t.ohm = quantity.Resistance(volts * volts / float64(e.Load.V)).String()
	case e.Impedance.Set():
		load = circuit.Load{Ohm: float64(e.Impedance.V)}
		t.ohm, t.from = e.Impedance.Text, e.Impedance.Span
		if b.volts > 0 {
			t.watts = b.volts * b.volts / float64(e.Impedance.V)
			t.text = fmt.Sprintf("%s (%s at %s)", quantity.Power(t.watts), e.Impedance.Text, b.line.Output.Part.Volts.Text)
		}
	default:
		b.unknown = MergeMissing(b.unknown, []Missing{missing("load of the existing equipment", "existing", &e.Part, `load = "30 W"`)})
		return node
	}
	id := b.net.Load(node, load)
	b.terms = addTerm(b.terms, t)
	for _, f := range at.behind {
		f.terms = addTerm(f.terms, t)
	}
	b.places = append(b.places, place{first: node, last: node, loads: id, device: &e.Placement, in: at.in})
	return node
}

// lineEnd adds a monitoring device. What it takes is left out when not stated:
// such devices take next to nothing.
func (b *builder) lineEnd(e *schema.LineEnd, at position) circuit.Node {
	node := at.node
	if e.Leg.Set() {
		node = b.next(&e.Placement, 0, at)
	}
	if e.Load.Set() && b.kind != LowImpedance {
		volts := b.volts
		if volts == 0 {
			volts = 100
		}
		b.net.Load(node, circuit.Load{PowerW: float64(e.Load.V), MarkedVolts: volts})
		b.terms = addTerm(b.terms, term{text: e.Load.Text, watts: float64(e.Load.V), count: 1, from: e.Load.Span, assumed: at.assumed, ohm: quantity.Resistance(volts * volts / float64(e.Load.V)).String()})
	}
	return node
}

// series wires plain loudspeakers one after the other on a low-impedance
// output: their impedances and their cable add up.
func (b *builder) series(at position) {
	var parts []circuit.Load
	var placed []place
	for _, device := range b.line.Part.Devices {
		v, plain := device.(*schema.Loudspeaker)
		if !plain {
			b.unknown = append(b.unknown, missing("way the loudspeakers are joined (series is worked out for loudspeakers one after the other only)", "line", &b.line.Part.Part, `wiring = "parallel"`))
			return
		}
		load := b.loudspeaker(v)
		inner := at
		if v.Cable.Set() {
			inner.cable = v.Cable
		}
		inner.assumed = at.assumed || v.Assumed()
		run := b.run(v, inner)
		run.Count += v.Count()
		b.line.Loudspeakers += v.Count()
		if len(load.missing) > 0 {
			b.unknown = MergeMissing(b.unknown, load.missing)
			continue
		}
		t := load.term
		t.count, t.assumed = v.Count(), run.Assumed
		b.terms = addTerm(b.terms, t)
		for i := range v.Count() {
			b.seriesLeg(&v.Placement, i, inner)
			parts = append(parts, load.load)
			placed = append(placed, place{run: run, device: &v.Placement, in: append(slices.Clone(at.in), ordinal{&v.Placement, i})})
		}
	}
	if len(parts) == 0 {
		return
	}
	node := circuit.Node(b.net.Nodes() - 1) // behind all the cable: in a series circuit its place does not matter
	first := b.net.Series(node, parts...)
	for i := range placed {
		placed[i].first, placed[i].last, placed[i].loads = node, node, first+circuit.LoadID(i)
	}
	b.places = append(b.places, placed...)
}

// seriesLeg adds the cable to the next loudspeaker of a series circuit. One
// conductor carries the current on; the other comes back from the last one, so
// that both conductors of every leg are in the loop.
func (b *builder) seriesLeg(p *schema.Placement, i int, at position) {
	at.node = circuit.Node(b.net.Nodes() - 1)
	b.next(p, i, at)
}

// addTerm counts equal summands together: of one power, however it is written.
func addTerm(all []term, t term) []term {
	for i := range all {
		same := all[i].text == t.text || math.Abs(all[i].watts-t.watts) < 1e-9*t.watts && !strings.Contains(all[i].text+t.text, "(")
		if same && all[i].ohm == t.ohm && all[i].assumed == t.assumed {
			all[i].count += t.count
			return all
		}
	}
	return append(all, t)
}

// sumOf adds terms up.
func sumOf(all []term) (total, assumed float64) {
	for _, t := range all {
		total += float64(t.count) * t.watts
		if t.assumed {
			assumed += float64(t.count) * t.watts
		}
	}
	return total, assumed
}

// sumText writes the sum as a person would.
func sumText(all []term, total quantity.Power) string {
	if len(all) == 0 {
		return ""
	}
	written := make([]string, len(all))
	for i, t := range all {
		written[i] = strconv.Itoa(t.count) + " × " + t.text
	}
	return terms(written) + " = " + total.String()
}

func termPlaces(all []term) []schema.Place {
	const most = 12
	var places []schema.Place
	for _, t := range all {
		if len(places) < most && !t.from.IsZero() {
			places = append(places, schema.Place{Span: t.from, Note: strconv.Itoa(t.count) + " × " + t.text})
		}
	}
	return places
}

// placeOf finds the device at a node.
func (b *builder) placeOf(node circuit.Node) *place {
	i := sort.Search(len(b.places), func(i int) bool { return b.places[i].last >= node })
	if i < len(b.places) && b.places[i].first <= node {
		return &b.places[i]
	}
	return nil
}

// memberName names a device with the runs it stands inside: "Room 4, Bed".
func (p *place) memberName(offset int) string {
	var outer []string
	for _, o := range p.in {
		if o.placement == p.device {
			offset += o.index
			continue
		}
		outer = append(outer, o.placement.MemberName(o.index))
	}
	name := p.device.Name
	if p.run != nil {
		name = p.device.MemberName(offset)
	}
	return strings.Join(append(outer, name), ", ")
}
