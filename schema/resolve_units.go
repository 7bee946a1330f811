package schema

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"loudlint/schema/quantity"
)

var (
	unitDataAttributes        = sync.OnceValue(unitData)
	sourceDataAttributes      = sync.OnceValue(sourceData)
	attenuatorDataAttributes  = sync.OnceValue(attenuatorData)
	loudspeakerDataAttributes = sync.OnceValue(loudspeakerData)
)

// expandRuns writes out the runs of a unit's channels, outputs and inputs.
func (*resolver) expandRuns(u *UnitData) {
	u.Channels = expand(u.Channels, func(c *Channel) *Numbering { return &c.Numbering })
	u.Outputs = expand(u.Outputs, func(o *Output) *Numbering { return &o.Numbering })
	u.Inputs = expand(u.Inputs, func(i *Input) *Numbering { return &i.Numbering })
	for _, o := range u.Outputs {
		if o.Volts.Set() {
			o.Volts.V = o.Volts.V.Line()
		}
	}
}

// expand writes out runs: each part of one gets a copy with its made name. A
// part keeps its numbering, so that others can be matched to it one to one.
func expand[T any, P interface {
	*T
	part() *Part
}](all []P, numbering func(*T) *Numbering) []P {
	var out []P
	for _, p := range all {
		n := *numbering(p)
		if !n.Numbered() {
			out = append(out, p)
			continue
		}
		for i := range n.Count() {
			c := new(T)
			*c = *p
			P(c).part().Name = NumberedName(p.part().Name, n.First.Or(1)+i)
			out = append(out, c)
		}
	}
	return out
}

// boundUnits refuses runs inside units that come to too many parts, before they
// are written out. It also refuses first without a quantity.
func (r *resolver) boundUnits() bool {
	models := map[string]int{}
	for _, m := range r.design.Catalogue.Units {
		models[m.Name] = r.countParts(&m.UnitData)
	}
	total := 0
	for _, count := range models {
		total += count
	}
	for _, u := range r.design.Units {
		total += r.countParts(&u.UnitData) + models[u.Model.V]
		for _, s := range u.Sends {
			r.firstOfRun(&s.Part, s.Numbering)
			total += s.Count()
		}
		if total > MaxUnitParts {
			r.refuse(u.Header, fmt.Sprintf("With this unit the design comes to more than %d channels, outputs, inputs and sends.", MaxUnitParts), "Check the quantities.", "")
			return false
		}
	}
	return total <= MaxUnitParts
}

func (r *resolver) countParts(u *UnitData) int {
	total := 0
	for _, c := range u.Channels {
		r.firstOfRun(&c.Part, c.Numbering)
		total += c.Count()
	}
	for _, o := range u.Outputs {
		r.firstOfRun(&o.Part, o.Numbering)
		total += o.Count()
	}
	for _, i := range u.Inputs {
		r.firstOfRun(&i.Part, i.Numbering)
		total += i.Count()
	}
	return total
}

func (r *resolver) firstOfRun(p *Part, n Numbering) {
	if n.First.Set() && !n.Quantity.Set() && r.sound(p) {
		r.refuse(n.First.Span, "This is no run.", "first stands beside quantity: it is the number of the first one.", "")
	}
}

// expandUnit completes a unit: its own blocks laid over those of its model,
// runs written out, each output and input with its channel.
func (r *resolver) expandUnit(u *Unit) {
	r.expandRuns(&u.UnitData)
	distinct(r, "channel of this unit", u.Channels)
	distinct(r, "output of this unit", u.Outputs)
	distinct(r, "input of this unit", u.Inputs)
	if u.ModelPart != nil {
		m := &u.ModelPart.UnitData
		u.Channels = lay(r, u, u.Channels, m.Channels, theDialect().channel, "channel")
		u.Outputs = lay(r, u, u.Outputs, m.Outputs, theDialect().output, "output")
		u.Inputs = lay(r, u, u.Inputs, m.Inputs, theDialect().input, "input")
	}
	if u.Kind == KindMixer {
		if u.RatedPower.Set() {
			r.refuse(u.RatedPower.Span, "A mixer has no rated power.", "A unit with a power stage is an amplifier.", "")
		}
	} else {
		r.unitChannels(u)
	}
	channels, runs := byName(u.Channels), runsOf(u.Channels)
	for _, o := range u.Outputs {
		r.outputChannel(u, o, channels, runs)
	}
	for _, i := range u.Inputs {
		if i.Channel.Set() && channels[i.Channel.V] == nil {
			if matched := memberLike(runs[i.Channel.V], i.Name, i.Numbering); matched != nil {
				i.Channel.V = matched.Name
			} else {
				r.refuseName(i.Channel, "a channel of this unit", partNames(u.Channels))
			}
		}
	}
}

// lay puts the blocks a part writes over those of its model: by name, attribute
// by attribute.
func lay[T any, P interface {
	*T
	part() *Part
	Numbered() bool
}](r *resolver, u *Unit, own, model []P, declared *block[T], what string) []P {
	out := make([]P, 0, len(model)+len(own))
	mine, theirs := byName(own), byName(model)
	runs := map[string]bool{}
	for _, m := range model {
		if m.Numbered() {
			runs[runBase(m.part().Name)] = true
		}
		o := mine[m.part().Name]
		if o == nil {
			one := *m // each unit has its own: names in it are followed per unit
			out = append(out, &one)
			continue
		}
		for _, over := range declared.inherit(o, m) {
			if over.Attribute == "quantity" || over.Attribute == "first" {
				continue
			}
			over.Attribute = what + " " + strconv.Quote(o.part().Name) + " " + over.Attribute
			u.Overrides = append(u.Overrides, over)
		}
		out = append(out, o)
	}
	for _, o := range own {
		p := o.part()
		if theirs[p.Name] != nil {
			continue
		}
		if runs[p.Name] {
			r.refuse(p.NameSpan, fmt.Sprintf("The model has no %s %q but a run of that name.", what, p.Name), fmt.Sprintf("Name the ones that are meant, such as %q, or the whole run with its quantity.", firstOfBase(model, p.Name)), "")
		}
		out = append(out, o)
	}
	return out
}

// runBase gives the name of a run of which a made name is a member.
func runBase(member string) string {
	return member[:max(strings.LastIndexByte(member, ' '), 0)]
}

func firstOfBase[T interface{ part() *Part }](all []T, base string) string {
	i := slices.IndexFunc(all, func(t T) bool { return runBase(t.part().Name) == base })
	return all[max(i, 0)].part().Name
}

// unitChannels gives an amplifier that writes no channel block the one it has. A
// rated power beside a single channel is that channel's; what the part itself
// says counts, wherever it says it.
func (r *resolver) unitChannels(u *Unit) {
	switch {
	case len(u.Channels) == 0:
		u.Channels = []*Channel{{Part: Part{Name: "Main", Header: u.Header, Body: u.Body}, RatedPower: u.RatedPower, Implied: true}}
	case !u.RatedPower.Set():
	case len(u.Channels) > 1:
		r.refuse(u.RatedPower.Span, fmt.Sprintf("This amplifier has %d power channels and one rated power.", len(u.Channels)), "Say it in each channel block.", fmt.Sprintf("channel %q { rated_power = %q }", u.Channels[0].Name, u.RatedPower.Text))
	default:
		one := *u.Channels[0]
		u.Channels[0] = &one
		fromModel := u.ModelPart != nil && u.RatedPower.Span == u.ModelPart.RatedPower.Span
		switch {
		case !one.RatedPower.Set() || one.RatedPower.Text == u.RatedPower.Text:
			one.RatedPower = u.RatedPower
		case fromModel:
			u.Overrides = append(u.Overrides, Override{"channel " + strconv.Quote(one.Name) + " rated_power", one.RatedPower.Span, u.RatedPower.Span})
			u.RatedPower = one.RatedPower
		default:
			u.Overrides = append(u.Overrides, Override{"rated_power", u.RatedPower.Span, one.RatedPower.Span})
			one.RatedPower = u.RatedPower
		}
	}
}

// outputChannel finds the power channel of an output for loudspeakers.
func (r *resolver) outputChannel(u *Unit, o *Output, channels map[string]*Channel, runs map[string][]*Channel) {
	if !o.Volts.Set() && !o.LowestImpedance.Set() && !o.RatedInto.Set() && !o.HighestLoad.Set() && !o.Channel.Set() {
		return // an output for the next unit
	}
	if u.Kind == KindMixer {
		if o.Volts.Set() || o.HighestLoad.Set() {
			r.refuse(o.Header, fmt.Sprintf("The mixer's output %q feeds loudspeakers.", o.Name), "A unit that drives loudspeaker lines is an amplifier.", "")
		}
		return
	}
	if !o.LowestImpedance.Set() && u.LowestImpedance.Set() {
		o.LowestImpedance = u.LowestImpedance
	}
	switch {
	case o.Channel.Set() && channels[o.Channel.V] != nil:
	case o.Channel.Set():
		if matched := memberLike(runs[o.Channel.V], o.Name, o.Numbering); matched != nil {
			o.Channel.V = matched.Name
			return
		}
		r.refuseName(o.Channel, "a channel of this amplifier", partNames(u.Channels))
	case len(u.Channels) == 1:
		o.Channel.V = u.Channels[0].Name
	case channels[o.Name] != nil:
		o.Channel.V = o.Name
	case r.sound(&o.Part):
		r.refuse(o.Header, fmt.Sprintf("The output %q does not say which of %d power channels is behind it.", o.Name, len(u.Channels)), "It needs a channel.", fmt.Sprintf("channel = %q", u.Channels[0].Name))
	}
}

// memberLike finds what belongs one to one to a member of a run: the third output
// of a run whose channel is a run goes with the third channel.
func memberLike[T any](run []T, member string, n Numbering) (one T) {
	number, err := strconv.Atoi(member[strings.LastIndexByte(member, ' ')+1:])
	index := number - n.First.Or(1)
	if err != nil || !n.Numbered() || index < 0 || index >= len(run) {
		return one
	}
	return run[index]
}

// runsOf gives the parts that runs were written out to, by the name of the run.
func runsOf[T interface {
	part() *Part
	Numbered() bool
}](all []T) map[string][]T {
	runs := map[string][]T{}
	for _, t := range all {
		if t.Numbered() {
			base := runBase(t.part().Name)
			runs[base] = append(runs[base], t)
		}
	}
	return runs
}

// unitParts finds the parts of a unit by name, and tells what is known of them.
type unitParts struct {
	channels map[string]*Channel
	outputs  map[string]*Output
	inputs   map[string]*Input
	folded   map[string]*Input   // by folded name
	runs     map[string][]*Input // inputs that were written as runs
	// statedOutputs and statedInputs tell that the unit or its model writes some.
	// Inputs may be more than those only where there is no model.
	statedOutputs, statedInputs bool
	only                        *Output // the one stated output for loudspeakers, nil when there are several
}

// parts gives the index of a unit, which is complete once its runs are written
// out and grows with what lines, sources and sends imply.
func (r *resolver) parts(u *Unit) *unitParts {
	if p := r.index[u]; p != nil {
		return p
	}
	p := &unitParts{
		channels: byName(u.Channels), outputs: byName(u.Outputs), inputs: byName(u.Inputs), folded: map[string]*Input{}, runs: runsOf(u.Inputs),
		statedOutputs: len(u.Outputs) > 0, statedInputs: len(u.Inputs) > 0,
	}
	for _, i := range u.Inputs {
		p.folded[fold(i.Name)] = i
	}
	lines := 0
	for _, o := range u.Outputs {
		if o.Channel.V != "" {
			lines++
			p.only = o
		}
	}
	if lines != 1 {
		p.only = nil
	}
	if r.index == nil {
		r.index = map[*Unit]*unitParts{}
	}
	r.index[u] = p
	return p
}

// outputOf finds the output a line is on. An amplifier that states no outputs
// has the one the line names: "70 V" or "8 ohm" say what it is.
func (r *resolver) outputOf(u *Unit, v Value[string]) *Output {
	parts := r.parts(u)
	if !v.Set() {
		return parts.only
	}
	if o := parts.outputs[v.V]; o != nil {
		return o
	}
	if parts.statedOutputs {
		r.refuseName(v, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
		return nil
	}
	o := &Output{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true, LowestImpedance: u.LowestImpedance}
	if len(u.Channels) == 1 {
		o.Channel.V = u.Channels[0].Name
	} else if c := parts.channels[v.V]; c != nil {
		o.Channel.V = c.Name
	}
	if volts, err := quantity.ParseVoltage(v.V); err == nil {
		o.Volts = Value[quantity.Voltage]{V: volts.Line(), Text: v.V, Span: v.Span}
		for _, before := range u.Outputs { // "70V" is "70 V"
			if before.Volts.Set() && before.Volts.V == o.Volts.V { // both read from text
				parts.outputs[v.V] = before
				return before
			}
		}
	} else if ohm, err := quantity.ParseResistance(v.V); err == nil {
		into := Value[quantity.Resistance]{V: ohm, Text: v.V, Span: v.Span}
		o.RatedInto = into
		if !o.LowestImpedance.Set() {
			o.LowestImpedance = into
		}
	}
	u.Outputs = append(u.Outputs, o)
	parts.outputs[v.V] = o
	return o
}

// inputOf finds the input something is wired to. A unit without a model may have
// more inputs than it states, of which nothing is known.
func (r *resolver) inputOf(u *Unit, v Value[string]) *Input {
	parts := r.parts(u)
	if !v.Set() {
		if parts.statedInputs && len(parts.inputs) == 1 {
			return u.Inputs[0]
		}
		return nil
	}
	if i := parts.inputs[v.V]; i != nil {
		return i
	}
	if parts.statedInputs && (u.ModelPart != nil || parts.folded[fold(v.V)] != nil) {
		r.refuseName(v, fmt.Sprintf("an input of %q", u.Name), partNames(u.Inputs))
		return nil
	}
	i := &Input{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true}
	u.Inputs = append(u.Inputs, i)
	parts.inputs[v.V] = i
	return i
}

// unitNames refuses names inside a unit that refer to nothing in it. It runs
// last, when implied outputs and inputs are known.
func (r *resolver) unitNames(u *Unit) {
	parts := r.parts(u)
	for _, o := range u.Outputs {
		for _, n := range o.NeverWith.Items {
			if parts.outputs[n.V] == nil {
				r.refuseName(n, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
			}
		}
	}
	for _, s := range u.Sends {
		for _, n := range s.TiedWith.Items {
			if parts.outputs[n.V] == nil && u.ModelPart != nil && parts.statedOutputs {
				r.refuseName(n, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
			}
		}
	}
	for _, i := range u.Inputs {
		for _, n := range i.Mutes.Names {
			if parts.inputs[n.V] == nil && (u.ModelPart != nil || parts.folded[fold(n.V)] != nil) {
				r.refuseName(n, fmt.Sprintf("an input of %q", u.Name), partNames(u.Inputs))
			}
		}
	}
}

// links writes out the sends of all units.
func (r *resolver) links() {
	for _, u := range r.design.Units {
		for _, s := range u.Sends {
			switch to := r.units[s.Into.V]; {
			case to == nil || !s.Into.Set(): // refused with the references
			case to == u:
				r.refuse(s.Into.Span, fmt.Sprintf("%q sends into itself.", u.Name), "A send goes to another unit.", "")
			default:
				r.linksOf(u, s, to)
			}
		}
	}
}

// linksOf writes out one send. A run of sends goes one to one to the inputs of the
// run it names, or, where no inputs are known, to inputs numbered from 1.
func (r *resolver) linksOf(u *Unit, s *Send, to *Unit) {
	parts := r.parts(to)
	var run []*Input
	if parts.inputs[s.Input.V] == nil {
		run = parts.runs[s.Input.V]
	}
	if len(run) > 0 && s.Count() > len(run) {
		r.refuse(s.NameSpan, fmt.Sprintf("This run has %d sends and %q has %d inputs called %q.", s.Count(), to.Name, len(run), s.Input.V), "Each send needs an input of its own.", "")
		return
	}
	numbered := len(run) == 0 && s.Count() > 1 && s.Input.Set() && parts.inputs[s.Input.V] == nil && !parts.statedInputs
	for i := range s.Count() {
		link := &Link{Send: s, From: u, To: to}
		from := Value[string]{V: s.Name, Text: s.Name, Span: s.NameSpan}
		if s.Numbered() {
			from.V = NumberedName(s.Name, s.First.Or(1)+i)
		}
		if link.Output = r.sendOutput(u, from); link.Output == nil {
			return // said once
		}
		into := s.Input
		if numbered {
			into.V = NumberedName(into.V, i+1)
		}
		if len(run) > 0 {
			link.Input = run[i]
		} else if link.Input = r.inputOf(to, into); link.Input == nil && into.Set() {
			return // said once
		}
		r.design.Links = append(r.design.Links, link)
	}
}

func (r *resolver) sendOutput(u *Unit, v Value[string]) *Output {
	parts := r.parts(u)
	if o := parts.outputs[v.V]; o != nil {
		return o
	}
	if parts.statedOutputs && u.ModelPart != nil {
		r.refuseName(v, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
		return nil
	}
	o := &Output{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true}
	u.Outputs = append(u.Outputs, o)
	parts.outputs[v.V] = o
	return o
}

// line follows the names of a line. One without an amplifier still says by its
// output what voltage it has.
func (r *resolver) line(l *Line) {
	if !l.Amplifier.Set() {
		if l.Output.Set() {
			l.OutputPart = (&resolver{}).outputOf(&Unit{Kind: KindAmplifier}, l.Output)
		}
		return
	}
	u := r.units[l.Amplifier.V]
	if u == nil || u.Kind != KindAmplifier {
		return // refused with the references
	}
	l.AmplifierPart = u
	if l.OutputPart = r.outputOf(u, l.Output); l.OutputPart == nil {
		if !l.Output.Set() && len(u.Channels) == 1 {
			l.ChannelPart = u.Channels[0]
		}
		return
	}
	if l.ChannelPart = r.parts(u).channels[l.OutputPart.Channel.V]; l.ChannelPart == nil && !l.OutputPart.Implied && r.sound(&l.OutputPart.Part) {
		r.refuse(l.Output.Span, fmt.Sprintf("The output %q of %q is not for loudspeakers.", l.OutputPart.Name, u.Name), "A line is on an output with a line voltage or a lowest impedance.", "")
	}
}

// source follows the names of a source and of its feeds.
func (r *resolver) source(s *Source) {
	s.Feed.Part = s.Part
	s.UnitPart, s.InputPart = r.feed(s.Into, s.Input, false)
	for _, also := range s.Also {
		also.UnitPart, also.InputPart = r.feed(also.Into, also.Input, false)
	}
}

func (r *resolver) feed(into, input Value[string], contact bool) (*Unit, *Input) {
	u := r.units[into.V]
	if u == nil {
		if input.Set() && !into.Set() {
			r.refuse(input.Span, fmt.Sprintf("%q is an input, but of which unit?", input.V), "Beside it stands into, with the name of the mixer or amplifier.", "")
		}
		return nil, nil
	}
	if contact && !input.Set() {
		return u, nil
	}
	return u, r.inputOf(u, input)
}

func partNames[T interface{ part() *Part }](all []T) []string {
	names := make([]string, len(all))
	for i, t := range all {
		names[i] = t.part().Name
	}
	return names
}
