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

// atFrequency is what a line takes at one frequency.
type atFrequency struct {
	hz         float64
	admittance complex128
}

// ratedPower is the rated power of a channel.
func ratedPower(a *Amplifier, c *schema.Channel) Figure[quantity.Power] {
	if c.RatedPower.Set() {
		return given(c.RatedPower, "rated power "+c.RatedPower.Text)
	}
	part, kind := &c.Part, "channel"
	if c.Implied {
		part, kind = &a.Part.Part, "amplifier"
	}
	return Figure[quantity.Power]{Missing: []Missing{missing("rated power", kind, part, `rated_power = "240 W"`)}}
}

// classify tells what kind of output it is and its voltage at rated power.
func (o *Output) classify() {
	part := o.Part
	switch {
	case part.Volts.Set():
		o.Kind = ConstantVoltage
		o.Volts = given(part.Volts, part.Volts.Text+" line")
		o.Volts.Value = part.Volts.V
		if isSeventy(float64(part.Volts.V)) {
			o.Volts.Sum = fmt.Sprintf("100 V / √2 = %.2f V", float64(part.Volts.V))
		}
	case part.LowestImpedance.Set() || part.RatedInto.Set():
		o.Kind = LowImpedance
		o.Volts = o.lowImpedanceVolts()
	default:
		write := `volts = "100 V"`
		if part.Implied {
			o.Volts.Missing = []Missing{{What: "kind of output (a line voltage, or ohms)", Part: o.owner(), Where: part.Header, Write: `output = "100 V"`}}
			return
		}
		o.Volts.Missing = []Missing{{What: "kind of output (a line voltage, or ohms)", Part: o.owner(), Where: part.Header, Write: write}}
	}
}

func (o *Output) owner() string {
	if o.Amplifier == nil {
		return named("output", o.Part.Name)
	}
	return named("output", o.Part.Name) + " of " + named("amplifier", o.Amplifier.Part.Name)
}

// lowImpedanceVolts is √(rated power × impedance it is rated into).
func (o *Output) lowImpedanceVolts() Figure[quantity.Voltage] {
	f := Figure[quantity.Voltage]{}
	if o.Amplifier == nil {
		f.Missing = []Missing{{What: "amplifier", Part: o.owner(), Where: o.Part.Header, Write: `amplifier = "…"`}}
		return f
	}
	if o.Channel == nil {
		f.Missing = []Missing{{What: "power channel of the output", Part: o.owner(), Where: o.Part.Header, Write: `channel = "Main"`}}
		return f
	}
	if !o.Channel.Rated.Known() {
		f.Missing = o.Channel.Rated.Missing
		return f
	}
	into := o.Part.RatedInto
	if !into.Set() {
		into = o.Part.LowestImpedance
		f.Assumed = []string{fmt.Sprintf("the rated power of %s is stated into its lowest impedance, %s", o.owner(), into.Text)}
	}
	f.Value = quantity.Voltage(math.Sqrt(float64(o.Channel.Rated.Value) * float64(into.V)))
	f.From = append(slices.Clone(o.Channel.Rated.From), schema.Place{Span: into.Span, Note: "rated into " + into.Text})
	f.Sum = fmt.Sprintf("√(%s × %s) = %s", o.Channel.Rated.Value, into.Text, f.Value)
	return f
}

// solveLine works out one line.
func (s *System) solveLine(l *Line) {
	b := build(s, l, wiring{})
	if len(b.unsaid) > 0 && l.Part.Length.Set() {
		l.Runs, l.Attenuators, l.Loudspeakers = nil, nil, 0
		b = build(s, l, wiring{lumped: true})
	}
	l.reads = b
	l.sum = &b.sum
	l.Load = b.sum.figure()
	l.Load.Missing = b.loadMissing()
	_, l.AssumedLoad = b.sum.total()
	for _, r := range l.Runs {
		r.settle(b)
	}
	for _, a := range l.Attenuators {
		a.settle()
	}
	l.lose(b)
	l.take(b.cautious())
}

// cautious gives the line as it takes most: what is not known of its cable is
// left out.
func (b *builder) cautious() *builder {
	if !b.how.lumped {
		return b
	}
	again := *b.line
	again.Runs, again.Attenuators = nil, nil
	return build(b.system, &again, wiring{lumped: b.how.lumped, none: true})
}

// settle works out what the loudspeakers of a block take.
func (r *Run) settle(b *builder) {
	load := b.loads[r.Part]
	r.Each = Figure[quantity.Power]{Value: quantity.Power(load.watts), Missing: MergeMissing(load.missing, load.unfed)}
	if r.Each.Known() {
		r.Each.From = []schema.Place{{Span: load.term.from, Note: load.term.text}}
		r.Each.Sum = load.arithmetic
	}
}

// loadMissing is what keeps the watts of a line from being known.
func (b *builder) loadMissing() []Missing { return MergeMissing(b.unknown, b.line.VoltsMissing()) }

// VoltsMissing is what keeps the voltage at the amplifier from being known.
func (l *Line) VoltsMissing() []Missing {
	if l.Output == nil {
		return []Missing{l.outputMissing()}
	}
	return l.Output.Volts.Missing
}

// sourceVolts is the voltage at the amplifier at full output, 0 when it is not
// known.
func (b *builder) sourceVolts() float64 {
	if b.line.Output == nil || !b.line.Output.Volts.Known() {
		return 0
	}
	return float64(b.line.Output.Volts.Value)
}

// outputMissing is what a line lacks that is on no known output.
func (l *Line) outputMissing() Missing {
	if l.Amplifier == nil {
		return l.AmplifierMissing()
	}
	return missing("output, with its voltage or its ohms", "line", &l.Part.Part, `output = "100 V"`)
}

// AmplifierMissing is that the design does not say what feeds the line.
func (l *Line) AmplifierMissing() Missing {
	return missing("amplifier that feeds the line", "line", &l.Part.Part, `amplifier = "…"`)
}

// settle works out what one attenuator of a block carries.
func (a *Attenuator) settle() {
	a.Behind = a.sum.divided(a.Count).figure()
	a.Behind.Missing = a.unknown
}

// impedanceMissing is what keeps the network on the line from being known. What
// its loudspeakers are in ohms follows from the line's voltage, if not from how
// much of it there is.
func (b *builder) impedanceMissing() []Missing {
	if b.line.Output != nil && b.kind != UnknownOutput {
		return b.unknown
	}
	return MergeMissing(b.unknown, b.line.VoltsMissing())
}

// empty tells that nothing draws current; a network that refused what was to be
// added is not empty.
func (b *builder) empty() bool { return b.net.Loads() == 0 && b.net.Err() == nil }

// unsolved is what is lacking for a solution when the solver refuses.
func (b *builder) unsolved(err error) []Missing {
	return []Missing{{What: "network that can be solved (" + err.Error() + ")", Part: named("line", b.line.Part.Name), Where: b.line.Part.Header}}
}

// lose works out what the cable takes away.
func (l *Line) lose(b *builder) {
	loss := &l.Loss
	loss.Drop.Missing = MergeMissing(b.unsaid, b.impedanceMissing())
	loss.Drop.Assumed = b.assumed
	loss.Lumped = b.how.lumped && b.net.Loads() > 1
	if !loss.Drop.Known() || b.empty() {
		return
	}
	volts := b.sourceVolts()
	known := volts > 0
	if !known {
		volts = 1 // ratios do not depend on it
	}
	var solver circuit.Solver
	solution, err := solver.Solve(b.net, referenceHz, volts)
	if err != nil {
		loss.Drop.Missing = b.unsolved(err)
		return
	}
	if solution.SourceWatts > 0 {
		loss.CableShare = quantity.Percent(100 * solution.CableWatts / solution.SourceWatts)
	}
	if known {
		loss.CablePower, loss.SourcePower = quantity.Power(solution.CableWatts), quantity.Power(solution.SourceWatts)
	}
	b.worst(solution, known)
}

// worst reads off the loudspeaker that loses most, or what else somebody
// listens to; not what only watches the line.
func (b *builder) worst(solution *circuit.Solution, known bool) {
	loss := &b.line.Loss
	var worst *place
	var at int
	lowest := math.Inf(-1)
	if node, ok := solution.Worst(); ok {
		worst, at = b.placeOf(node)
	}
	if worst == nil {
		for i := range b.places {
			p := &b.places[i]
			for k := range p.count {
				if db, ok := solution.CableLossDB(p.node(k)); ok && db > lowest+1e-9 {
					lowest, worst, at = db, p, k
				}
			}
		}
	}
	if worst == nil {
		return
	}
	node := worst.node(at)
	db, ok := solution.CableLossDB(node)
	if !ok {
		return
	}
	ratio := math.Pow(10, -db/20)
	loss.DB = quantity.Gain(db)
	loss.Drop.Value = quantity.Percent(100 * (1 - ratio))
	loss.Worst, loss.WorstRun = worst.memberName(at), worst.run
	loss.Cables, loss.Round = b.way(node)
	if known {
		loss.Volts = quantity.Voltage(cmplx.Abs(solution.Volts(node)))
		loss.Without = loss.Volts / quantity.Voltage(ratio)
	}
	part := b.line.Part
	for _, v := range []schema.Value[quantity.Length]{part.HomeRun, part.Length} {
		if v.Set() {
			loss.Drop.From = append(loss.Drop.From, schema.Place{Span: v.Span, Note: v.Text + " of cable"})
		}
	}
	if part.RingLeg.Set() {
		loss.Drop.From = append(loss.Drop.From, schema.Place{Span: part.RingLeg.Span, Note: part.RingLeg.Text + " back to the amplifier"})
	}
	if part.Cable.Set() {
		loss.Drop.From = append(loss.Drop.From, schema.Place{Span: part.Cable.Span, Note: "cable " + part.Cable.Text})
	}
	loss.Drop.Sum = b.lossText(loss)
}

// placeOf finds what hangs at a node, and which of its run.
func (b *builder) placeOf(node circuit.Node) (*place, int) {
	for i := range b.places {
		p := &b.places[i]
		last := p.node(p.count - 1)
		if p.first <= node && node <= last {
			return p, int(node - p.first)
		}
	}
	return nil, 0
}

// node is where one of a run hangs.
func (p *place) node(k int) circuit.Node { return p.first + p.step*circuit.Node(k) }

// lossText writes how the loss comes about.
func (b *builder) lossText(loss *Loss) string {
	way := b.wayText(loss.Cables, loss.Round, true)
	switch {
	case loss.Volts == 0:
		return fmt.Sprintf("%s: %s less at %s", way, loss.Drop.Value, loss.Worst)
	case !same(float64(loss.Without), b.sourceVolts()):
		return fmt.Sprintf("%s: %s at %s instead of the %s behind its attenuator = %s less", way, loss.Volts, loss.Worst, loss.Without, loss.Drop.Value)
	}
	return fmt.Sprintf("%s: %s at the amplifier, %s at %s = %s less", way, voltsText(b.sourceVolts()), loss.Volts, loss.Worst, loss.Drop.Value)
}

// CountPast counts the loudspeakers that lose more than limit in the cable. It
// solves the line again, so that lines within the limit pay nothing for it.
func (l *Line) CountPast(limit quantity.Percent) int {
	var solver circuit.Solver
	solution, err := solver.Solve(l.reads.net, referenceHz, 1)
	if err != nil {
		return 0
	}
	past := 0
	for i := range l.reads.places {
		p := &l.reads.places[i]
		if p.run == nil {
			continue
		}
		for k := range p.count {
			db, ok := solution.CableLossDB(p.node(k))
			if ok && !quantity.AtMost(quantity.Percent(100*(1-math.Pow(10, -db/20))), limit) {
				past++
			}
		}
	}
	return past
}

// take works out what the line takes from the amplifier and what each block of
// loudspeakers receives at most.
func (l *Line) take(b *builder) {
	l.sees = b
	volts := b.sourceVolts()
	missing := l.VoltsMissing()
	for _, r := range l.Runs {
		r.Delivered = Figure[quantity.Power]{From: r.Each.From, Missing: MergeMissing(r.Each.Missing, missing)}
	}
	if b.empty() {
		return
	}
	if volts == 0 {
		volts = 1 // an impedance does not depend on it
	}
	var solver circuit.Solver
	solution, err := solver.Solve(b.net, referenceHz, volts)
	if err != nil {
		l.refused = b.unsolved(err)
		for _, r := range l.Runs {
			r.Delivered.Missing = MergeMissing(r.Delivered.Missing, l.refused)
		}
		return
	}
	l.admittance = []atFrequency{{referenceHz, solution.InputAdmittance}}
	if len(missing) == 0 {
		l.deliver(b, solution)
	}
	slices.Sort(b.curves)
	for _, hz := range slices.Compact(b.curves) {
		if again, err := solver.Solve(b.net, hz, volts); err == nil {
			l.admittance = append(l.admittance, atFrequency{hz, again.InputAdmittance})
		}
	}
}

// deliver reads off the most power each block receives.
func (l *Line) deliver(b *builder, solution *circuit.Solution) {
	type most struct {
		place *place
		k     int
	}
	best := make([]most, len(l.Runs))
	for i := range b.places {
		p := &b.places[i]
		if p.run == nil {
			continue
		}
		r := l.Runs[p.run.index] // b may have runs of its own
		members := p.count
		if p.step == 0 {
			members = 1 // all of a run on one node get the same
		}
		for k := range members {
			watts := quantity.Power(solution.LoadWatts(p.loads + circuit.LoadID(k)))
			if best[r.index].place == nil || watts > r.Delivered.Value*(1+1e-9) {
				r.Delivered.Value, best[r.index] = watts, most{p, k}
			}
		}
	}
	for i, m := range best {
		if m.place == nil {
			continue
		}
		r := l.Runs[i]
		r.MostAt = m.place.memberName(m.k)
		r.mostVolts = cmplx.Abs(solution.LoadVolts(m.place.loads + circuit.LoadID(m.k)))
		switch {
		case b.how.none:
			r.Delivered.Assumed = []string{"cable is left out of the power delivered, because not all of it is known"}
		case len(b.unsaid) > 0:
			r.Delivered.Assumed = []string{"cable that is not stated is left out of the power delivered"}
		}
	}
}

// roundMetres keeps printed lengths free of the last bits of a sum.
func roundMetres(metres float64) float64 { return math.Round(metres*1000) / 1000 }

// Resized is a line with a larger conductor.
type Resized struct {
	// Cable is written as a design would: "2 x 2.5 mm2".
	Cable string
	Drop  quantity.Percent
	DB    quantity.Gain
	// Throughout tells that it takes the place of every smaller cable of the
	// line, not only of the line's own.
	Throughout bool
}

// SmallestCable finds the smallest standard conductor with which the worst
// loudspeaker loses at most limit, by solving the line again with each: first in
// place of the line's own cable, then, where devices name cables of their own,
// throughout. It is not ok when even the largest does not do.
func (l *Line) SmallestCable(limit quantity.Percent) (Resized, bool) {
	if cable := l.reads.system.Design.Cable(l.Part.Cable.V); l.Part.Cable.Set() && cable != nil {
		if r, ok := l.resized(cable, false, limit); ok {
			return r, true
		}
	}
	var smallest *schema.Cable
	for _, c := range l.reads.cables {
		if c.bad == "" && (smallest == nil || conductor.CrossSectionMM2(c.wire) < conductor.CrossSectionMM2(wireOf(smallest))) {
			smallest = c.cable
		}
	}
	if smallest == nil || len(l.reads.cables) == 1 && l.Part.Cable.Set() {
		return Resized{}, false
	}
	return l.resized(smallest, true, limit)
}

// resized tries the conductors above that of a cable.
func (l *Line) resized(cable *schema.Cable, throughout bool, limit quantity.Percent) (Resized, bool) {
	wire := wireOf(cable)
	wire.Class, wire.Construction, wire.Coated = 0, conductor.NotSaid, false
	for {
		larger, ok := conductor.NextLarger(wire)
		if !ok {
			return Resized{}, false
		}
		wire = larger
		again := *l
		again.Runs, again.Attenuators, again.Loss = nil, nil, Loss{}
		again.lose(build(l.reads.system, &again, wiring{lumped: l.reads.how.lumped, resize: &wire, throughout: throughout}))
		if again.Loss.Drop.Known() && quantity.AtMost(again.Loss.Drop.Value, limit) {
			return Resized{Cable: sizeText(cable, wire), Drop: again.Loss.Drop.Value, DB: again.Loss.DB, Throughout: throughout}, true
		}
	}
}

// sizeText writes a conductor as a cable with as many cores as the old one.
func sizeText(old *schema.Cable, w conductor.Conductor) string {
	c := quantity.Conductors{Cores: old.Cores(), Size: quantity.CrossSection(w.AreaMM2), IsAWG: w.IsAWG, Gauge: w.AWG}
	if c.IsAWG {
		c.Size = quantity.AWG(c.Gauge)
	}
	return c.String()
}

// addLines puts the lines of an output together: an ideal source feeds each
// as if it were alone.
func (o *Output) addLines() {
	var all sum
	for _, l := range o.Lines {
		all.addAll(l.sum.terms)
		o.Load.Missing = MergeMissing(o.Load.Missing, l.Load.Missing)
		o.Load.Assumed = mergeTexts(o.Load.Assumed, l.Load.Assumed)
		o.Impedance.Missing = MergeMissing(o.Impedance.Missing, l.sees.impedanceMissing(), l.refused)
		if len(l.admittance) > 0 && (len(l.sees.unsaid) > 0 || l.sees.how.none) {
			o.Impedance.Assumed = mergeTexts(o.Impedance.Assumed, []string{"cable that is not fully stated is left out; it could only raise the impedance"})
		}
		if len(l.admittance) > 0 || len(l.reads.unknown) > 0 {
			o.Loaded = true
		}
		if o.Kind == LowImpedance && !l.Part.Wiring.Set() && l.Loudspeakers > 1 {
			o.Impedance.Assumed = mergeTexts(o.Impedance.Assumed, []string{fmt.Sprintf("the loudspeakers of line %q are wired in parallel", l.Part.Name)})
		}
	}
	if o.Amplifier != nil {
		for _, l := range o.Amplifier.loose() {
			o.Load.Missing = MergeMissing(o.Load.Missing, []Missing{l.outputMissing()})
			o.Impedance.Missing = MergeMissing(o.Impedance.Missing, []Missing{l.outputMissing()})
		}
	}
	missing, assumed := o.Load.Missing, o.Load.Assumed
	o.Load = all.figure()
	o.Load.Missing, o.Load.Assumed = missing, assumed
	o.impedance(&all)
	o.floor()
}

// floor is volts² / rated power.
func (o *Output) floor() {
	if o.Kind != ConstantVoltage || o.Channel == nil {
		return
	}
	rated := &o.Channel.Rated
	o.Floor = Figure[quantity.Resistance]{Missing: rated.Missing}
	if !rated.Known() || rated.Value <= 0 {
		return
	}
	volts := float64(o.Volts.Value)
	o.Floor.Value = quantity.Resistance(volts * volts / float64(rated.Value))
	o.Floor.From = slices.Concat(o.Volts.From, rated.From)
	o.Floor.Sum = fmt.Sprintf("(%s)² / %s = %s", voltsText(volts), rated.Value, o.Floor.Value)
}

// loose are lines on the amplifier of which the design does not say on which
// output.
func (a *Amplifier) loose() []*Line {
	var all []*Line
	for _, l := range a.Lines {
		if l.Output == nil {
			all = append(all, l)
		}
	}
	return all
}

// impedance finds the lowest magnitude of what the amplifier sees.
func (o *Output) impedance(all *sum) {
	frequencies := []float64{referenceHz}
	for _, l := range o.Lines {
		for _, a := range l.admittance {
			frequencies = append(frequencies, a.hz)
		}
	}
	slices.Sort(frequencies)
	lowest := math.Inf(1)
	for _, hz := range slices.Compact(frequencies) {
		var sum complex128
		for _, l := range o.Lines {
			sum += l.admittanceAt(hz)
		}
		if y := cmplx.Abs(sum); y > 0 && 1/y < lowest*(1-1e-9) {
			lowest, o.AtHz = 1/y, hz
		}
	}
	if math.IsInf(lowest, 1) {
		return
	}
	o.Impedance.Value = quantity.Resistance(lowest)
	o.Impedance.From = all.places()
	o.Impedance.Sum = o.impedanceText(all)
}

// admittanceAt is what the line takes at a frequency: solved there if one of
// its loudspeakers states an impedance for it, else again now.
func (l *Line) admittanceAt(hz float64) complex128 {
	for _, a := range l.admittance {
		if a.hz == hz { // both copied from the same list, never computed
			return a.admittance
		}
	}
	if len(l.admittance) == 0 {
		return 0
	}
	var solver circuit.Solver
	solution, err := solver.Solve(l.sees.net, hz, 1)
	if err != nil {
		return l.admittance[0].admittance
	}
	return solution.InputAdmittance
}

func (o *Output) impedanceText(all *sum) string {
	cable := "with cable"
	if len(o.Impedance.Assumed) > 0 && !slices.ContainsFunc(o.Lines, func(l *Line) bool { return len(l.sees.unsaid) == 0 && !l.sees.how.none }) {
		cable = "without cable"
	}
	if o.Kind == ConstantVoltage {
		volts := float64(o.Volts.Value)
		text := fmt.Sprintf("(%s)² / %s = %s", voltsText(volts), o.Load.Value, quantity.Resistance(volts*volts/float64(o.Load.Value)))
		if cable == "with cable" {
			text += fmt.Sprintf(", with cable %s", o.Impedance.Value)
		}
		return text
	}
	how := "in parallel"
	if len(o.Lines) == 1 && o.Lines[0].Part.Wiring.V == "series" {
		how = "in series"
	}
	text := fmt.Sprintf("%s %s, %s = %s", all.written(func(t *term) string { return t.ohm }), how, cable, o.Impedance.Value)
	if o.AtHz != referenceHz {
		text += " at " + quantity.Frequency(o.AtHz).String()
	}
	return text
}

// addLoads sums what the constant-voltage outputs of a channel carry.
func (c *Channel) addLoads() {
	var all sum
	var missing []Missing
	var assumed []string
	for _, o := range c.Outputs {
		switch o.Kind {
		case ConstantVoltage:
			for _, l := range o.Lines {
				all.addAll(l.sum.terms)
			}
			missing = MergeMissing(missing, o.Load.Missing)
			assumed = mergeTexts(assumed, o.Load.Assumed)
		case UnknownOutput:
			missing = MergeMissing(missing, o.Volts.Missing)
		case LowImpedance:
		}
	}
	for _, l := range c.Amplifier.loose() {
		missing = MergeMissing(missing, []Missing{l.outputMissing()})
	}
	_, c.AssumedLoad = all.total()
	c.Load = all.figure()
	c.Load.Missing, c.Load.Assumed = missing, assumed
}
