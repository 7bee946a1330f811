package analysis

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"loudlint/linter/signal"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Driving is a source, or an output of a unit, with the inputs it drives.
type Driving struct {
	// Source is nil for an output; Links are then those that leave by it.
	Source *Source
	Links  []*Link
	// Inputs are those wired straight to it, one beside the other.
	Inputs []*Input
	// Own is the impedance it has itself, Load that of the inputs together.
	Own, Load Figure[quantity.Resistance]
	// LoadingDB is the level that Load takes from it.
	LoadingDB quantity.Gain
	// Microphone tells that it gives microphone level.
	Microphone bool
	// Apart are the units of the inputs when several share it and nothing says
	// that they are switched together or isolated: one without power may load it.
	Apart []*Unit
}

// microphoneLevelDBV parts microphone level from line level: microphones give
// 5 to 50 mV at most ("Commonly used voltage and audio levels").
const microphoneLevelDBV = -26

// MicrophoneLevel tells that a source gives microphone level, as far as the
// design says; a microphone of no stated level does.
func (s *Source) MicrophoneLevel() bool {
	if levelDBV, ok := s.Part.Level.V.DBV(); ok && s.Part.Level.Set() {
		return levelDBV < microphoneLevelDBV
	}
	return s.Part.Kind == schema.KindMicrophone
}

// Driving gives what a source has to drive; nil when it drives no audio input.
// Left and right of a source are two outputs: the one that drives more counts.
func (s *System) Driving(src *Source) *Driving {
	var sides [2][]*Feed
	for _, f := range src.Feeds {
		if f.Into == nil || f.Into.Contact() || f.Into.Part != nil && f.Into.Part.Takes.V == "paging desk" {
			continue
		}
		if f.Part.SummedBy.V != "right only" {
			sides[0] = append(sides[0], f)
		}
		if f.Part.SummedBy.V != "left only" {
			sides[1] = append(sides[1], f)
		}
	}
	var most *Driving
	for _, feeds := range sides {
		if len(feeds) == 0 {
			continue
		}
		d := &Driving{Source: src, Microphone: src.MicrophoneLevel()}
		d.Own = ownImpedance(src.Part.Impedance, "impedance of "+src.Part.Name, src.Missing("impedance", `impedance = "200 ohm"`))
		var through []bool
		for _, f := range feeds {
			d.Inputs = append(d.Inputs, f.Into)
			through = append(through, f.Part.SummedBy.V == "resistors")
			if f.Into.Part == nil {
				d.Load.Missing = append(d.Load.Missing, f.MissingInput())
			}
		}
		d.together(through)
		s.apart(d)
		if most == nil || most.Load.Known() && (!d.Load.Known() || d.Load.Value < most.Load.Value) {
			most = d
		}
	}
	return most
}

// DrivingOutputs gives what each output that goes to other units has to drive.
func (s *System) DrivingOutputs(u *Unit) []*Driving {
	var all []*Driving
	byOutput := map[*schema.Output]*Driving{}
	for _, l := range u.Links {
		out := l.Part.Output
		if out == nil || l.Into.Contact() || len(l.Part.Send.TiedWith.Items) > 0 {
			continue
		}
		d := byOutput[out]
		if d == nil {
			d = &Driving{Own: ownImpedance(out.Impedance, "impedance of "+out.Name, l.MissingOfOutput("impedance", `impedance = "100 ohm"`))}
			byOutput[out] = d
			all = append(all, d)
		}
		d.Links = append(d.Links, l)
		d.Inputs = append(d.Inputs, l.Into)
		if l.Into.Part == nil {
			d.Load.Missing = append(d.Load.Missing, l.MissingInput())
		}
	}
	for _, d := range all {
		through := make([]bool, len(d.Links))
		for n, l := range d.Links {
			through[n] = l.Part.Send.SummedBy.V == "resistors"
		}
		d.together(through)
		s.apart(d)
	}
	return all
}

// ownImpedance is the impedance of a source or output.
func ownImpedance(z schema.Value[quantity.Resistance], note string, lacks Missing) Figure[quantity.Resistance] {
	if !z.Set() {
		return Figure[quantity.Resistance]{Missing: []Missing{lacks}}
	}
	return given(z, note)
}

// together works out the impedance of all inputs; through tells which of them
// are driven through summing resistors.
func (d *Driving) together(through []bool) {
	var ohms []float64
	var parts []string
	f := &d.Load
	for n, i := range d.Inputs {
		switch {
		case i.Part == nil: // which one it is, is missing
		case !i.Part.Impedance.Set():
			write := `impedance = "20 kohm"`
			if i.Part.Takes.V == "microphone" {
				write = `impedance = "2 kohm"`
			}
			f.Missing = append(f.Missing, i.Missing("impedance", write))
		default:
			z := i.Part.Impedance
			f.From = append(f.From, schema.Place{Span: z.Span, Note: "impedance of " + i.Name()})
			ohm, text := float64(z.V), z.V.String()
			if through[n] {
				ohm = signal.Combiner{Legs: 2, LegOhm: typicalLeg, ShuntOhm: ohm}.LoadOhm()
				text = quantity.Resistance(ohm).String()
				f.Assumed = append(f.Assumed, fmt.Sprintf("the summing resistors before %s are of about %d ohm each", i.Name(), typicalLeg))
			}
			ohms = append(ohms, ohm)
			parts = append(parts, "1 / "+text)
		}
	}
	if !f.Known() {
		f.Value = quantity.Resistance(math.Inf(1))
		return
	}
	f.Value = quantity.Resistance(signal.Parallel(ohms...))
	if len(ohms) > 1 {
		f.Sum = fmt.Sprintf("1 / (%s) = %s", strings.Join(parts, " + "), f.Value)
	}
	if d.Own.Known() {
		d.LoadingDB = quantity.Gain(signal.LoadingDB(float64(d.Own.Value), float64(f.Value)))
	}
}

// apart finds the units that share what drives them and may be without power
// while others run.
func (s *System) apart(d *Driving) {
	var units []*Unit
	for _, i := range d.Inputs {
		if !slices.Contains(units, i.Unit) && (i.Part == nil || !i.Part.Isolated.V) {
			units = append(units, i.Unit)
		}
	}
	if len(units) < 2 {
		return
	}
	for _, supply := range s.Supplies {
		if !slices.ContainsFunc(units, func(u *Unit) bool { return !slices.Contains(supply.Units, u.Part) }) {
			return
		}
	}
	d.Apart = units
}
