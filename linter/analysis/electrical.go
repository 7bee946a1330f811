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
	b := newBuilder(s, l)
	b.walk()
	if len(b.unsaid) > 0 && l.Part.Length.Set() {
		l.Runs, l.Attenuators, l.Loudspeakers = nil, nil, 0
		b = newBuilder(s, l)
		b.lumped = true
		b.walk()
	}
	l.terms = b.terms
	total, assumed := sumOf(b.terms)
	l.AssumedLoad = quantity.Power(assumed)
	l.Load = Figure[quantity.Power]{Value: quantity.Power(total), Missing: b.loadMissing(), From: termPlaces(b.terms)}
	l.Load.Sum = sumText(b.terms, l.Load.Value)
	for _, r := range l.Runs {
		r.All = r.Each
		r.All.Value = r.Each.Value * quantity.Power(r.Count)
		if r.Each.Known() {
			r.All.Sum = sumText([]term{{text: r.Each.Sum, count: r.Count}}, r.All.Value)
			r.Each.From = []schema.Place{{Span: b.loads[r.Part].term.from, Note: r.Each.Sum}}
			r.Each.Sum = ""
		}
	}
	for _, a := range l.Attenuators {
		a.settle()
	}
	l.reads = b
	l.solve(b)
}

// loadMissing is what keeps the watts of a line from being known.
func (b *builder) loadMissing() []Missing {
	all := b.unknown
	if b.kind == UnknownOutput && b.line.Output != nil {
		all = MergeMissing(all, b.line.Output.Volts.Missing)
	}
	if b.kind == LowImpedance {
		all = MergeMissing(all, b.line.Output.Volts.Missing)
	}
	if b.line.Output == nil {
		all = MergeMissing(all, []Missing{outputMissing(b.line)})
	}
	return all
}

func outputMissing(l *Line) Missing {
	if l.Amplifier == nil {
		return missing("amplifier and output", "line", &l.Part.Part, `amplifier = "…"`)
	}
	return missing("output", "line", &l.Part.Part, `output = "100 V"`)
}

// settle works out what one attenuator of a block carries.
func (a *Attenuator) settle() {
	each := slices.Clone(a.terms)
	for i := range each {
		each[i].count /= max(a.Count, 1)
	}
	total, _ := sumOf(each)
	a.Behind = Figure[quantity.Power]{Value: quantity.Power(total), Missing: a.unknown, From: termPlaces(each)}
	a.Behind.Sum = sumText(each, a.Behind.Value)
}

// solve runs the circuit solver and reads off what the checks need.
func (l *Line) solve(b *builder) {
	volts := b.volts
	if volts == 0 && l.Output != nil && l.Output.Volts.Known() {
		volts = float64(l.Output.Volts.Value)
	}
	known := volts > 0
	if !known {
		volts = 1 // ratios do not depend on it
	}
	cable := MergeMissing(b.unsaid, b.unknown, b.voltageMissing())
	l.Loss.Drop.Missing = cable
	l.Loss.Drop.Assumed = b.assumed
	l.Loss.Lumped = b.lumped
	if len(b.unknown) > 0 && len(b.places) == 0 || b.net.Loads() == 0 {
		return
	}
	var solver circuit.Solver
	solution, err := solver.Solve(b.net, referenceHz, volts)
	if err != nil {
		l.Loss.Drop.Missing = append(cable, Missing{What: "network that can be solved (" + err.Error() + ")", Part: named("line", l.Part.Name), Where: l.Part.Header, Write: ""})
		return
	}
	l.admittance = []atFrequency{{referenceHz, solution.InputAdmittance}}
	if known {
		l.Loss.CablePower = quantity.Power(solution.CableWatts)
		b.delivered(solution)
	}
	b.worst(solution, known)
	slices.Sort(b.curves)
	for _, hz := range slices.Compact(b.curves) {
		if again, err := solver.Solve(b.net, hz, volts); err == nil {
			l.admittance = append(l.admittance, atFrequency{hz, again.InputAdmittance})
		}
	}
}

// voltageMissing: loss is a ratio, but a tap's impedance depends on the line's
// voltage.
func (b *builder) voltageMissing() []Missing {
	switch {
	case b.line.Output == nil:
		return []Missing{outputMissing(b.line)}
	case b.kind == UnknownOutput:
		return b.line.Output.Volts.Missing
	}
	return nil
}

// delivered reads off the most power each block receives.
func (b *builder) delivered(solution *circuit.Solution) {
	for i := range b.places {
		p := &b.places[i]
		if p.run == nil {
			continue
		}
		count := int(p.last-p.first) + 1
		if b.lumped {
			count = 1 // all members of a run hang on one node and get the same
		}
		for k := range count {
			watts := quantity.Power(solution.LoadWatts(p.loads + circuit.LoadID(k)))
			if p.run.MostAt == "" || watts > p.run.Delivered.Value*(1+1e-9) {
				p.run.Delivered.Value, p.run.MostAt = watts, p.memberName(k)
			}
		}
	}
	for _, r := range b.line.Runs {
		r.Delivered.Missing = r.Each.Missing
		r.Delivered.From = r.Each.From
		if len(b.unsaid) > 0 {
			r.Delivered.Assumed = []string{"cable loss is left out, because the cable is not fully stated"}
		}
	}
}

// worst reads off the loudspeaker that loses most.
func (b *builder) worst(solution *circuit.Solution, known bool) {
	loss := &b.line.Loss
	node, ok := solution.Worst()
	if !ok {
		return
	}
	db, ok := solution.CableLossDB(node)
	if !ok {
		return
	}
	ratio := math.Pow(10, -db/20)
	loss.DB = quantity.Gain(db)
	loss.Drop.Value = quantity.Percent(100 * (1 - ratio))
	loss.LoopOhm, loss.Metres = b.ohms[node], b.metres[node]
	if p := b.placeOf(node); p != nil {
		loss.Worst, loss.WorstRun = p.memberName(int(node-p.first)), p.run
	}
	if known {
		loss.Volts = quantity.Voltage(cmplx.Abs(solution.Volts(node)))
	}
	part := b.line.Part
	for _, v := range []schema.Value[quantity.Length]{part.HomeRun, part.Length} {
		if v.Set() {
			loss.Drop.From = append(loss.Drop.From, schema.Place{Span: v.Span, Note: v.Text + " of cable"})
		}
	}
	if part.Cable.Set() {
		loss.Drop.From = append(loss.Drop.From, schema.Place{Span: part.Cable.Span, Note: "cable " + part.Cable.Text})
		loss.Cables = append(loss.Cables, part.Cable)
	}
	loss.Drop.Sum = b.lossText(loss)
}

// lossText writes how the loss comes about.
func (b *builder) lossText(loss *Loss) string {
	us := b.system.Design.System.US()
	way := fmt.Sprintf("%s of cable, %s loop", quantity.Format(quantity.Length(roundMetres(loss.Metres)), us), quantity.Resistance(loss.LoopOhm))
	if loss.Volts > 0 {
		return fmt.Sprintf("%s: %s at the amplifier, %s at %s = %s less", way, voltsText(float64(b.line.Output.Volts.Value)), loss.Volts, loss.Worst, loss.Drop.Value)
	}
	return fmt.Sprintf("%s: %s less at %s", way, loss.Drop.Value, loss.Worst)
}

// roundMetres keeps printed lengths free of the last bits of a sum.
func roundMetres(metres float64) float64 { return math.Round(metres*1000) / 1000 }

// Resized is a line with a larger conductor.
type Resized struct {
	// Cable is written as a design would: "2 x 2.5 mm2".
	Cable string
	Drop  quantity.Percent
	DB    quantity.Gain
}

// SmallestCable finds the smallest standard conductor, not smaller than the
// line's own, with which the worst loudspeaker loses at most limit, by solving
// the line again with each. It is not ok when even the largest does not do, or
// when the line names no cable of its own.
func (l *Line) SmallestCable(limit quantity.Percent) (Resized, bool) {
	cable := l.reads.system.Design.Cable(l.Part.Cable.V)
	if !l.Part.Cable.Set() || cable == nil {
		return Resized{}, false
	}
	wire := wireOf(cable)
	wire.Class, wire.Construction, wire.Coated = 0, conductor.NotSaid, false
	for {
		larger, ok := conductor.NextLarger(wire)
		if !ok {
			return Resized{}, false
		}
		wire = larger
		again := *l
		again.Runs, again.Attenuators = nil, nil
		again.Loss = Loss{}
		b := newBuilder(l.reads.system, &again)
		b.lumped, b.resize = l.reads.lumped, &wire
		b.walk()
		again.solve(b)
		if quantity.AtMost(again.Loss.Drop.Value, limit) {
			return Resized{Cable: sizeText(cable, wire), Drop: again.Loss.Drop.Value, DB: again.Loss.DB}, true
		}
	}
}

// sizeText writes a conductor as a cable with the cores the line's own has.
func sizeText(old *schema.Cable, w conductor.Conductor) string {
	c := quantity.Conductors{Cores: old.Cores(), Size: quantity.CrossSection(w.AreaMM2), IsAWG: w.IsAWG, Gauge: w.AWG}
	if c.Cores == 0 {
		c.Cores = 2
	}
	if c.IsAWG {
		c.Size = quantity.AWG(c.Gauge)
	}
	return c.String()
}

// solveOutput puts the lines of an output together: an ideal source feeds each
// as if it were alone.
func (s *System) solveOutput(o *Output) {
	var all []term
	for _, l := range o.Lines {
		all = mergeTerms(all, l.terms)
		o.Load.Missing = MergeMissing(o.Load.Missing, l.Load.Missing)
		o.Impedance.Missing = MergeMissing(o.Impedance.Missing, l.reads.unknown, l.reads.voltageMissing())
		if len(l.reads.unsaid) > 0 && len(l.admittance) > 0 {
			o.Impedance.Assumed = mergeTexts(o.Impedance.Assumed, []string{"cable that is not stated is left out; it could only raise the impedance"})
		}
		if len(l.admittance) > 0 || len(l.reads.unknown) > 0 {
			o.Loaded = true
		}
		if o.Kind == LowImpedance && !l.Part.Wiring.Set() && l.Loudspeakers > 1 {
			o.Impedance.Assumed = mergeTexts(o.Impedance.Assumed, []string{fmt.Sprintf("the loudspeakers of line %q are wired in parallel", l.Part.Name)})
		}
	}
	total, _ := sumOf(all)
	o.Load.Value, o.Load.From = quantity.Power(total), termPlaces(all)
	o.Load.Sum = sumText(all, o.Load.Value)
	o.impedance(all)
}

func mergeTerms(all []term, more []term) []term {
	for _, t := range more {
		all = addTerm(all, t)
	}
	return all
}

// impedance finds the lowest magnitude of what the amplifier sees.
func (o *Output) impedance(all []term) {
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
	o.Impedance.From = termPlaces(all)
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
	solution, err := solver.Solve(l.reads.net, hz, 1)
	if err != nil {
		return l.admittance[0].admittance
	}
	return solution.InputAdmittance
}

func (o *Output) impedanceText(all []term) string {
	if o.Kind == ConstantVoltage {
		return fmt.Sprintf("(%s)² / %s = %s without cable, %s with it", voltsText(float64(o.Volts.Value)), o.Load.Value, quantity.Resistance(float64(o.Volts.Value)*float64(o.Volts.Value)/float64(o.Load.Value)), o.Impedance.Value)
	}
	how := "in parallel"
	if len(o.Lines) == 1 && o.Lines[0].Part.Wiring.V == "series" {
		how = "in series"
	}
	written := make([]string, len(all))
	for i, t := range all {
		written[i] = fmt.Sprintf("%d × %s", t.count, t.ohm)
	}
	text := fmt.Sprintf("%s %s, with cable = %s", terms(written), how, o.Impedance.Value)
	if o.AtHz != referenceHz {
		text += " at " + quantity.Frequency(o.AtHz).String()
	}
	return text
}

// addLoads sums what the constant-voltage outputs of a channel carry.
func (c *Channel) addLoads() {
	var all []term
	for _, o := range c.Outputs {
		switch o.Kind {
		case ConstantVoltage:
			for _, l := range o.Lines {
				all = mergeTerms(all, l.terms)
			}
			c.Load.Missing = MergeMissing(c.Load.Missing, o.Load.Missing)
		case UnknownOutput:
			c.Load.Missing = MergeMissing(c.Load.Missing, o.Volts.Missing)
		case LowImpedance:
		}
	}
	for _, l := range c.loose {
		c.Load.Missing = MergeMissing(c.Load.Missing, []Missing{outputMissing(l)})
	}
	total, assumed := sumOf(all)
	c.Load.Value, c.AssumedLoad = quantity.Power(total), quantity.Power(assumed)
	c.Load.From = termPlaces(all)
	c.Load.Sum = sumText(all, c.Load.Value)
}
