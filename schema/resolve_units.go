package schema

import (
	"fmt"
	"strconv"
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

// expandUnit completes a unit: its own blocks laid over those of its model,
// runs written out, each output and input with its channel.
func (r *resolver) expandUnit(u *Unit) {
	r.expandRuns(&u.UnitData)
	distinct(r, "channel of this unit", u.Channels)
	distinct(r, "output of this unit", u.Outputs)
	distinct(r, "input of this unit", u.Inputs)
	if u.ModelPart != nil {
		m := &u.ModelPart.UnitData
		u.Channels = lay(u, u.Channels, m.Channels, theDialect().channel, "channel")
		u.Outputs = lay(u, u.Outputs, m.Outputs, theDialect().output, "output")
		u.Inputs = lay(u, u.Inputs, m.Inputs, theDialect().input, "input")
	}
	if u.Kind == KindMixer {
		if u.RatedPower.Set() {
			r.refuse(u.RatedPower.Span, "A mixer has no rated power.", "A unit with a power stage is an amplifier.", "")
		}
	} else {
		r.unitChannels(u)
	}
	for _, o := range u.Outputs {
		r.outputChannel(u, o)
	}
	for _, i := range u.Inputs {
		if i.Channel.Set() && u.Channel(i.Channel.V) == nil {
			if matched := matchRun(u, i.Channel.V, i.Name, i.Numbering); matched != "" {
				i.Channel.V = matched
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
}](u *Unit, own, model []P, declared *block[T], what string) []P {
	out := make([]P, 0, len(model)+len(own))
	for _, m := range model {
		mine := find(own, m.part().Name)
		if mine == nil {
			one := *m // each unit has its own: names in it are followed per unit
			out = append(out, &one)
			continue
		}
		for _, o := range declared.inherit(mine, m, "quantity", "first") {
			o.Attribute = what + " " + strconv.Quote(mine.part().Name) + " " + o.Attribute
			u.Overrides = append(u.Overrides, o)
		}
		out = append(out, mine)
	}
	for _, o := range own {
		if find(model, o.part().Name) == nil {
			out = append(out, o)
		}
	}
	return out
}

// unitChannels gives an amplifier that writes no channel block the one it has.
func (r *resolver) unitChannels(u *Unit) {
	switch {
	case len(u.Channels) == 0:
		u.Channels = []*Channel{{Part: Part{Name: "Main", Header: u.Header, Body: u.Body}, RatedPower: u.RatedPower, Implied: true}}
	case u.RatedPower.Set() && len(u.Channels) == 1:
		if c := u.Channels[0]; !c.RatedPower.Set() {
			c.RatedPower = u.RatedPower
		} else if c.RatedPower.Text != u.RatedPower.Text {
			replaced := *c
			replaced.RatedPower = u.RatedPower
			u.Overrides = append(u.Overrides, Override{"rated_power", u.RatedPower.Span, c.RatedPower.Span})
			u.Channels[0] = &replaced
		}
	case u.RatedPower.Set():
		r.refuse(u.RatedPower.Span, fmt.Sprintf("This amplifier has %d power channels and one rated power.", len(u.Channels)), "Say it in each channel block.", fmt.Sprintf("channel %q { rated_power = %q }", u.Channels[0].Name, u.RatedPower.Text))
	}
}

// outputChannel finds the power channel of an output for loudspeakers.
func (r *resolver) outputChannel(u *Unit, o *Output) {
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
	if o.Channel.Set() {
		if u.Channel(o.Channel.V) != nil {
			return
		}
		if matched := matchRun(u, o.Channel.V, o.Name, o.Numbering); matched != "" {
			o.Channel.V = matched
			return
		}
		r.refuseName(o.Channel, "a channel of this amplifier", partNames(u.Channels))
		return
	}
	switch {
	case len(u.Channels) == 1:
		o.Channel.V = u.Channels[0].Name
	case u.Channel(o.Name) != nil:
		o.Channel.V = o.Name
	default:
		r.refuse(o.Header, fmt.Sprintf("The output %q does not say which of %d power channels is behind it.", o.Name, len(u.Channels)), "It needs channel = \"…\".", strconv.Quote(u.Channels[0].Name))
	}
}

// matchRun finds the channel that belongs one to one to a part of a run: the
// third output of a run whose channel is a run goes with the third channel.
func matchRun(u *Unit, base, member string, n Numbering) string {
	if !n.Numbered() {
		return ""
	}
	for i := range n.Count() {
		suffix := strconv.Itoa(n.First.Or(1) + i)
		if len(member) > len(suffix) && member[len(member)-len(suffix)-1:] == " "+suffix {
			index := 0
			for _, c := range u.Channels {
				if c.Numbered() && c.NameSpan.Text() == strconv.Quote(base) {
					if index == i {
						return c.Name
					}
					index++
				}
			}
		}
	}
	return ""
}

// outputOf finds the output a line is on. An amplifier that states no outputs
// has the one the line names: "70 V" or "8 ohm" say what it is.
func (r *resolver) outputOf(u *Unit, v Value[string]) *Output {
	if !v.Set() {
		var only *Output
		for _, o := range u.Outputs {
			if o.Channel.V != "" {
				if only != nil {
					return nil
				}
				only = o
			}
		}
		return only
	}
	if o := u.Output(v.V); o != nil {
		return o
	}
	stated := 0
	for _, o := range u.Outputs {
		if !o.Implied {
			stated++
		}
	}
	if stated > 0 {
		r.refuseName(v, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
		return nil
	}
	o := &Output{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true, LowestImpedance: u.LowestImpedance}
	if len(u.Channels) == 1 {
		o.Channel.V = u.Channels[0].Name
	} else if c := u.Channel(v.V); c != nil {
		o.Channel.V = c.Name
	}
	if volts, err := quantity.ParseVoltage(v.V); err == nil {
		o.Volts = Value[quantity.Voltage]{V: volts.Line(), Text: v.V, Span: v.Span}
	} else if ohm, err := quantity.ParseResistance(v.V); err == nil {
		into := Value[quantity.Resistance]{V: ohm, Text: v.V, Span: v.Span}
		o.RatedInto = into
		if !o.LowestImpedance.Set() {
			o.LowestImpedance = into
		}
	}
	u.Outputs = append(u.Outputs, o)
	return o
}

// inputOf finds the input something is wired to. A unit that states no inputs
// has the one that is named, and nothing is known of it.
func (r *resolver) inputOf(u *Unit, v Value[string]) *Input {
	if !v.Set() {
		if len(u.Inputs) == 1 && !u.Inputs[0].Implied {
			return u.Inputs[0]
		}
		return nil
	}
	if i := u.Input(v.V); i != nil {
		return i
	}
	stated := 0
	for _, i := range u.Inputs {
		if !i.Implied {
			stated++
		}
	}
	if stated > 0 && u.ModelPart != nil {
		r.refuseName(v, fmt.Sprintf("an input of %q", u.Name), partNames(u.Inputs))
		return nil
	}
	i := &Input{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true}
	u.Inputs = append(u.Inputs, i)
	return i
}

// unitNames refuses names inside a unit that refer to nothing in it. It runs
// last, when implied outputs and inputs are known.
func (r *resolver) unitNames(u *Unit) {
	for _, o := range u.Outputs {
		for _, n := range o.NeverWith.Items {
			if u.Output(n.V) == nil {
				r.refuseName(n, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
			}
		}
	}
	for _, i := range u.Inputs {
		for _, n := range i.Mutes.Names {
			if u.Input(n.V) == nil {
				r.refuseName(n, fmt.Sprintf("an input of %q", u.Name), partNames(u.Inputs))
			}
		}
	}
	for _, s := range u.Sends {
		for _, n := range s.TiedWith.Items {
			if u.Output(n.V) == nil && len(u.Outputs) > 0 && u.ModelPart != nil {
				r.refuseName(n, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
			}
		}
	}
}

// links writes out the sends of all units.
func (r *resolver) links() {
	for _, u := range r.design.Units {
		for _, s := range u.Sends {
			to := r.design.Unit(s.Into.V)
			if to == nil {
				continue // refused with the references
			}
			if to == u {
				r.refuse(s.Into.Span, fmt.Sprintf("%q sends into itself.", u.Name), "A send goes to another unit.", "")
				continue
			}
			for i := range s.Count() {
				link := &Link{Send: s, From: u, To: to}
				from := Value[string]{V: s.Name, Text: s.Name, Span: s.NameSpan}
				if s.Numbered() {
					from.V = NumberedName(s.Name, s.First.Or(1)+i)
				}
				link.Output = r.sendOutput(u, from)
				into := s.Input
				if run := runOf(to.Inputs, into.V); len(run) > 0 && to.Input(into.V) == nil {
					if i >= len(run) {
						r.refuse(s.NameSpan, fmt.Sprintf("This run has %d sends and %q has %d inputs called %q.", s.Count(), to.Name, len(run), into.V), "Each send needs an input of its own.", "")
						break
					}
					link.Input = run[i]
				} else {
					link.Input = r.inputOf(to, into)
				}
				r.design.Links = append(r.design.Links, link)
			}
		}
	}
}

// runOf gives the inputs a run called base was written out to.
func runOf(inputs []*Input, base string) []*Input {
	var run []*Input
	for _, i := range inputs {
		if i.Numbered() && i.NameSpan.Text() == strconv.Quote(base) {
			run = append(run, i)
		}
	}
	return run
}

func (r *resolver) sendOutput(u *Unit, v Value[string]) *Output {
	if o := u.Output(v.V); o != nil {
		return o
	}
	stated := 0
	for _, o := range u.Outputs {
		if !o.Implied {
			stated++
		}
	}
	if stated > 0 && u.ModelPart != nil {
		r.refuseName(v, fmt.Sprintf("an output of %q", u.Name), partNames(u.Outputs))
		return nil
	}
	o := &Output{Part: Part{Name: v.V, NameSpan: v.Span, Header: v.Span, Body: u.Body}, Implied: true}
	u.Outputs = append(u.Outputs, o)
	return o
}

// line follows the names of a line.
func (r *resolver) line(l *Line) {
	if !l.Amplifier.Set() {
		if l.Output.Set() && len(r.design.Units) == 0 { // a line drawn alone: its output says the voltage
			u := &Unit{Kind: KindAmplifier}
			l.OutputPart = r.outputOf(u, l.Output)
		}
		return
	}
	u := r.design.Unit(l.Amplifier.V)
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
	if l.ChannelPart = u.Channel(l.OutputPart.Channel.V); l.ChannelPart == nil && !l.OutputPart.Implied {
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
	u := r.design.Unit(into.V)
	if u == nil {
		if input.Set() && !into.Set() {
			r.refuse(input.Span, fmt.Sprintf("%q is an input, but of which unit?", input.V), "Into names the mixer or amplifier.", "")
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
