package analysis

import (
	"fmt"
	"math/cmplx"
	"slices"
	"strings"

	"loudlint/linter/circuit"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// What a meter should show, by the design.

// Unfit is why a meter's figure cannot be held against a predicted impedance.
type Unfit int

// Reasons.
const (
	Fit             Unfit = iota
	NoUnit                // only the number on the display was noted
	DirectCurrent         // a resistance meter sees the copper of the windings
	NotAnImpedance        // the instrument measures something else
	NoFrequency           // whether it was an impedance at all is not said
	AmplifierOnLine       // the amplifier's output is in parallel with the line
)

// Measured is the part of a line that a meter was on, and what the design makes
// of it.
type Measured struct {
	Part *schema.Reading
	Line *Line // nil when the reading does not say
	Hz   float64
	// Where says which part it is, inside a sentence: `line "House" beyond "Tee A"`.
	Where string
	// Impedance is the magnitude of what the meter should show at Hz, cable
	// included, attenuators as they stood.
	Impedance Figure[quantity.Resistance]
	// Volts is the line voltage: 0 where the output is no constant-voltage one,
	// and a load in watts means nothing.
	Volts quantity.Voltage
	// Load is what the part asks for at that voltage: Volts² / Impedance.
	Load quantity.Power
	// Kinds are the loudspeaker blocks of the part, in walking order.
	Kinds []Kind
	// Loudspeakers counts them all; old equipment with a quantity counts too.
	Loudspeakers int
	// Unsure names the attenuators of which it is not known how they stood; they
	// count as fully up, which gives the lowest impedance.
	Unsure []*schema.Attenuator
	// Attenuated are all attenuators of the part with the watts behind one.
	Attenuated []*Attenuator
	// Plain is the first loudspeaker that is connected without a transformer and
	// of which only a nominal impedance is stated; nil without one.
	Plain *schema.Loudspeaker

	built *builder
}

// Kind is a block of equal loudspeakers in the part that was measured.
type Kind struct {
	Part   *schema.Loudspeaker
	Count  int
	Each   quantity.Power   // at the line's voltage, attenuators fully up
	Marked quantity.Voltage // 0 when connected directly
}

// Unfit tells whether the figure of a reading is an impedance that can be held
// against the design.
func (m *Measured) Unfit() Unfit {
	p := m.Part
	switch {
	case p.Impedance.V.Unitless:
		return NoUnit
	case p.Instrument.V == "ohmmeter" || p.Instrument.V == "multimeter":
		return DirectCurrent
	case p.Instrument.V == "insulation tester" || p.Instrument.V == "level meter":
		return NotAnImpedance
	case !p.Frequency.Set():
		return NoFrequency
	case p.AmplifierDisconnected.Set() && !p.AmplifierDisconnected.V:
		return AmplifierOnLine
	}
	return Fit
}

// Shown is the impedance that was noted, with the unit that was noted.
func (m *Measured) Shown() quantity.Resistance { return m.Part.Impedance.V.Ohm }

// Implies is the load that an impedance asks for at the line's voltage, V²/Z;
// 0 where there is none.
func (m *Measured) Implies(z quantity.Resistance) quantity.Power {
	if m.Volts <= 0 || z <= 0 {
		return 0
	}
	return quantity.Power(float64(m.Volts) * float64(m.Volts) / float64(z))
}

// At is the impedance of a load at the line's voltage.
func (m *Measured) At(load quantity.Power) quantity.Resistance {
	return quantity.Resistance(float64(m.Volts) * float64(m.Volts) / float64(load))
}

// Measure works out what a reading should show. Without `at` and `beyond` the
// meter is at the amplifier's end of the whole line. With `at` it is at that
// device and sees the whole line from there, the amplifier's end open. With
// `beyond` the line was opened behind a device and the meter sees only what comes
// after it: what the braces of a branch or an attenuator hold, or the rest of the
// chain behind any other device. A ring that is opened is seen whole: the rest of
// it, and through the ring leg and the amplifier's end all that comes before.
func (s *System) Measure(part *schema.Reading) *Measured {
	m := &Measured{Part: part, Hz: float64(part.Frequency.Or(referenceHz))}
	for _, l := range s.Lines {
		if part.Line.Set() && l.Part.Name == part.Line.V {
			m.Line = l
		}
	}
	if m.Line == nil {
		m.Where = "the line"
		m.Impedance.Missing = []Missing{missing("line that was measured", "reading", &part.Part, `line = "…"`)}
		return m
	}
	m.Where = named("line", m.Line.Part.Name)
	line := *m.Line.Part
	how := wiring{none: m.Line.reads.how.lumped, set: m.stands}
	if part.Beyond.Set() {
		m.Where += fmt.Sprintf(" beyond %q", part.Beyond.V)
		rest, before, found := beyond(line.Devices, part.Beyond.V)
		if !found {
			m.Impedance.Missing = []Missing{{What: "device of the line at which the meter was", Part: named("reading", part.Name), Where: part.Header, Write: `beyond = "…"`}}
			return m
		}
		line.Devices = rest
		if len(before) > 0 && m.Line.Ring() {
			m.Where += ", round the ring,"
			how.before, how.closing = before, line.RingLeg
		} else {
			line.HomeRun = schema.Value[quantity.Length]{}
		}
		line.RingLeg, line.Return = schema.Value[quantity.Length]{}, schema.Value[string]{}
	}
	again := Line{Part: &line, Amplifier: m.Line.Amplifier, Output: m.Line.Output, Channel: m.Line.Channel}
	b := build(s, &again, how)
	m.built = b
	m.count(b)
	m.predict(b)
	return m
}

// stands says how an attenuator stood, as far as the reading tells.
func (m *Measured) stands(a *schema.Attenuator) schema.Attenuation {
	how := m.Part.Attenuators
	switch {
	case how.V == "all fully up",
		how.V == "overridden" && a.Override.Set() && a.Override.V != schema.OverrideNone:
		return schema.Attenuation{}
	case how.Set() && a.Setting.Set():
		return a.Setting.V
	}
	if !slices.Contains(m.Unsure, a) {
		m.Unsure = append(m.Unsure, a)
	}
	return schema.Attenuation{}
}

// count notes what hangs on the part.
func (m *Measured) count(b *builder) {
	if b.kind == ConstantVoltage {
		m.Volts = quantity.Voltage(b.sourceVolts())
	}
	m.Attenuated = b.line.Attenuators
	for _, a := range m.Attenuated {
		a.settle()
	}
	for _, r := range b.line.Runs {
		m.Loudspeakers += r.Count
		if len(r.load.missing) > 0 || r.load.idle {
			continue
		}
		m.Kinds = append(m.Kinds, Kind{Part: r.Part, Count: r.Count, Each: quantity.Power(r.load.watts), Marked: r.load.tap.Marked})
		if r.load.tap.Direct && r.load.load.Curve == nil && m.Plain == nil {
			m.Plain = r.Part
		}
	}
	m.Loudspeakers += old(b.line.Part.Devices)
}

// old counts old equipment that says how many there are. It calls itself for
// what braces enclose; the dialect bounds their nesting.
func old(devices []schema.Device) int {
	n := 0
	for _, d := range devices {
		if e, ok := d.(*schema.Existing); ok {
			if e.Quantity.Set() {
				n += e.Count()
			}
			continue
		}
		n += d.Common().Count() * old(d.Inside())
	}
	return n
}

// predict works out the impedance.
func (m *Measured) predict(b *builder) {
	f := &m.Impedance
	if f.Missing = b.impedanceMissing(); !f.Known() {
		return
	}
	if b.empty() {
		f.Missing = []Missing{missing("loudspeakers on the part that was measured", "line", &b.line.Part.Part, `loudspeaker "…" { tap = "6 W" }`)}
		return
	}
	var at circuit.Node
	if m.Part.At.Set() && !m.Part.Beyond.Set() {
		m.Where += fmt.Sprintf(" at %q", m.Part.At.V)
		node, found := b.nodeOf(m.Part.At.V)
		if !found {
			f.Assumed = append(f.Assumed, fmt.Sprintf("the cable between the amplifier and %q makes no difference to the reading", m.Part.At.V))
		}
		at = node
	}
	z, seen, err := b.seenFrom(at, m.Hz)
	if err != nil {
		f.Missing = b.unsolved(err)
		return
	}
	if !seen {
		f.Missing = []Missing{missing("loudspeakers that an attenuator lets be seen", "line", &b.line.Part.Part, `setting = "0 dB"`)}
		return
	}
	f.Value = quantity.Resistance(cmplx.Abs(z))
	f.From = b.sum.places()
	f.Assumed = append(f.Assumed, b.assumed...)
	if len(b.how.before) > 0 {
		f.Assumed = append(f.Assumed, "both ends of the ring were connected to each other at the amplifier")
	}
	if b.how.none || len(b.unsaid) > 0 {
		f.Assumed = append(f.Assumed, "cable that is not stated is left out of the predicted impedance")
	}
	m.Load = m.Implies(f.Value)
	f.Sum = m.arithmetic(b)
}

// arithmetic writes how the impedance comes about.
func (m *Measured) arithmetic(b *builder) string {
	load, _ := b.sum.total()
	if m.Volts <= 0 || load <= 0 {
		return ""
	}
	plain := m.At(load)
	text := fmt.Sprintf("(%s)² / %s = %s", voltsText(float64(m.Volts)), load, plain)
	if plain.String() != m.Impedance.Value.String() {
		with := "with cable"
		if len(m.Attenuated) > 0 {
			with = "with cable, and attenuators as they stood,"
		}
		text += fmt.Sprintf("; %s %s", with, m.Impedance.Value)
	}
	return text
}

// nodeOf finds a device, or one of a run, by its name.
func (b *builder) nodeOf(name string) (circuit.Node, bool) {
	for i := range b.places {
		p := &b.places[i]
		if p.device.Name == name {
			return p.first, true
		}
		if !strings.HasPrefix(name, p.device.Name) {
			continue
		}
		for k := range p.count {
			if full := p.memberName(k); full == name || strings.HasSuffix(full, ", "+name) {
				return p.node(k), true
			}
		}
	}
	for _, c := range b.controls {
		full := c.of.Part.Name
		for _, o := range c.in {
			if o.placement == &c.of.Part.Placement {
				full = o.placement.MemberName(o.index)
			}
		}
		if full == name || c.of.Part.Name == name {
			return c.node, true
		}
	}
	return 0, false
}

// seenFrom is the impedance between the conductors at a node with nothing
// connected at the amplifier's end. The solver always has a source there, which
// is a short circuit to a meter elsewhere. With Z11 what the source sees, h the
// share of its voltage that comes to the node, and Zs the impedance at the node
// with the source shorted, the open-circuit impedance is Zs + h²·Z11: it follows
// from the two-port equations with Z12 = Z21 (reciprocity, any book on circuits).
// The insertion loss of attenuators, which is not reciprocal, is small enough to
// ignore. It is not ok where nothing is seen: attenuators are off.
func (b *builder) seenFrom(node circuit.Node, hz float64) (ohm complex128, ok bool, err error) {
	var solver circuit.Solver
	solution, err := solver.Solve(b.net, hz, 1)
	if err != nil {
		return 0, false, err
	}
	z11, ok := solution.InputImpedance()
	if !ok || node == 0 {
		return z11, ok, nil
	}
	share := solution.Volts(node)
	if cmplx.Abs(share) < 1e-9 {
		return 0, false, nil
	}
	const probeOhm = 1
	b.net.Load(node, circuit.Load{Ohm: probeOhm})
	loaded, err := solver.Solve(b.net, hz, 1)
	if err != nil {
		return 0, false, err
	}
	shorted := probeOhm * (share/loaded.Volts(node) - 1)
	return shorted + share*share*z11, true, nil
}

// beyond gives what comes after a device, and what comes before, with the device,
// on a chain that no braces enclose. It calls itself for what braces enclose; the
// dialect bounds their nesting.
func beyond(devices []schema.Device, name string) (rest, before []schema.Device, found bool) {
	for i, d := range devices {
		p, inside := d.Common(), d.Inside()
		member := memberOf(p, name)
		switch {
		case len(inside) > 0 && (p.Name == name || member >= 0):
			return inside, nil, true
		case len(inside) > 0:
			if rest, _, found := beyond(inside, name); found {
				return rest, nil, true
			}
		case p.Name == name:
			return devices[i+1:], devices[:i+1], true
		case member >= 0:
			rest, before = devices[i+1:], devices[:i+1]
			if first, left, ok := parted(d, member); ok {
				rest = append([]schema.Device{left}, rest...)
				before = append(slices.Clone(devices[:i]), first)
			}
			return rest, before, true
		}
	}
	return nil, nil, false
}

// parted is a run of loudspeakers up to a member, and without those.
func parted(d schema.Device, member int) (first, rest schema.Device, ok bool) {
	v, ok := d.(*schema.Loudspeaker)
	left := d.Common().Count() - member - 1
	if !ok || left < 1 {
		return nil, nil, false
	}
	f, r := *v, *v
	f.Quantity.V, r.Quantity.V = member+1, left
	r.First.V, r.First.Span = r.First.Or(1)+member+1, r.Quantity.Span
	r.Leg = r.Spacing
	return &f, &r, true
}

// BreakAfter finds the loudspeaker behind which a plain chain would have to be
// broken for the meter to see a load. It is not ok where the line has branches or
// attenuators, comes back to the amplifier, or has no such place.
func (m *Measured) BreakAfter(load quantity.Power) (name string, ok bool) {
	if m.built == nil || len(m.Attenuated) > 0 || m.Line.Looped() {
		return "", false
	}
	for _, d := range m.built.line.Part.Devices {
		if _, plain := d.(*schema.Loudspeaker); !plain {
			return "", false
		}
	}
	var sum quantity.Power
	best := load // nothing connected at all
	for i := range m.built.places {
		p := &m.built.places[i]
		each := quantity.Power(p.run.load.watts)
		for k := range p.count {
			sum += each
			if off := max(sum-load, load-sum); off < best {
				best, name = off, p.memberName(k)
			}
		}
	}
	return name, name != "" && sum > load && best <= 0.1*load
}

// Beside is another reading of the same output, for what they come to together.
type Beside struct {
	Readings []*Measured
	// AsOhms and AsKilohms are all their figures in parallel, with what has no
	// unit read as the one or as the other.
	AsOhms, AsKilohms quantity.Resistance
	Sum               string
}

// Together puts the readings of whole lines of one output in parallel, when every
// line of it has just one.
func (s *System) Together(m *Measured) (Beside, bool) {
	var all Beside
	if m.Line == nil || m.Line.Output == nil || len(m.Line.Output.Lines) < 2 {
		return all, false
	}
	for _, l := range m.Line.Output.Lines {
		var of []*Measured
		for _, r := range s.Design.Readings {
			if r.Line.V == l.Part.Name && r.Impedance.Set() && !r.At.Set() && !r.Beyond.Set() {
				of = append(of, s.Measure(r))
			}
		}
		if len(of) != 1 {
			return all, false
		}
		all.Readings = append(all.Readings, of[0])
	}
	var ohms, kilohms float64
	var texts []string
	for _, r := range all.Readings {
		v := r.Part.Impedance.V
		low, high := float64(v.Ohm), float64(v.Ohm)
		if v.Unitless {
			low, high = v.Number, 1000*v.Number
		}
		if low <= 0 {
			return all, false
		}
		ohms += 1 / low
		kilohms += 1 / high
		texts = append(texts, "1 / "+r.Part.Impedance.Text)
	}
	all.AsOhms, all.AsKilohms = quantity.Resistance(1/ohms), quantity.Resistance(1/kilohms)
	all.Sum = "1 / (" + terms(texts) + ")"
	return all, true
}

// VoltsAt is what a signal voltmeter should show where the reading was taken, with
// a steady tone at the amplifier's rated output.
func (m *Measured) VoltsAt() Figure[quantity.Voltage] {
	var f Figure[quantity.Voltage]
	if m.Line == nil {
		f.Missing = m.Impedance.Missing
		return f
	}
	if f.Missing = MergeMissing(m.Impedance.Missing, m.Line.VoltsMissing()); !f.Known() {
		return f
	}
	f.Assumed = m.Impedance.Assumed
	b := build(m.built.system, &Line{Part: m.Line.Part, Amplifier: m.Line.Amplifier, Output: m.Line.Output, Channel: m.Line.Channel},
		wiring{none: m.Line.reads.how.lumped, set: m.stands})
	volts := b.sourceVolts()
	f.Value = quantity.Voltage(volts)
	if node, found := b.nodeOf(m.Part.At.V); found && m.Part.At.Set() {
		var solver circuit.Solver
		solution, err := solver.Solve(b.net, m.Hz, volts)
		if err != nil {
			f.Missing = b.unsolved(err)
			return f
		}
		f.Value = quantity.Voltage(cmplx.Abs(solution.Volts(node)))
	}
	return f
}

// memberOf is which of a run has a name, -1 for none.
func memberOf(p *schema.Placement, name string) int {
	if !p.Numbered() || !strings.HasPrefix(name, p.Name) {
		return -1
	}
	for i := range p.Count() {
		if p.MemberName(i) == name {
			return i
		}
	}
	return -1
}
