package analysis

import (
	"math"
	"math/cmplx"

	"loudlint/linter/circuit"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Device is one device of a line, as somebody who walks along the cable meets
// it: each member of a run by itself.
type Device struct {
	// Kind is the name of its block: "loudspeaker", "attenuator", "branch",
	// "existing" or "line_end".
	Kind string
	Of   schema.Device
	// Index is which of its run it is, from 0.
	Index int
	// Name is the device with the runs it stands inside: "Room 4, Bed".
	Name string
	// Within names the attenuator or branch in whose braces it stands; "" for
	// none.
	Within string
	// From names what the cable that leads to it comes from, "" for the
	// amplifier: the device before it, or the tee or the attenuator where its
	// braces begin.
	From string
	// Legs is the cable that leads to it: none where nothing is laid, two where a
	// home run and a leg of its own meet at the first device.
	Legs []LaidCable
	// Run is its block of loudspeakers, and Attenuator that of attenuators; nil
	// for others.
	Run        *Run
	Attenuator *Attenuator
	// Volts, Watts and Loss are what arrives at a loudspeaker, or at existing
	// equipment, at full output and 1 kHz with attenuators fully up, and what the
	// cable takes on the way. Of other devices they mean nothing.
	Volts Figure[quantity.Voltage]
	Watts Figure[quantity.Power]
	Loss  Figure[quantity.Gain]
}

// LaidCable is a length of one cable on a line.
type LaidCable struct {
	// Cable is what is laid, nil where the design names none.
	Cable *schema.Cable
	// Length is how much.
	Length Figure[quantity.Length]
	// HomeRun tells that it is the one from the amplifier to the first device.
	HomeRun bool
}

// deviceWalk makes the devices of a line in walking order.
type deviceWalk struct {
	line     *Line
	lumped   bool // only the total length of the line is known
	all      []Device
	started  bool
	runs     map[*schema.Loudspeaker]*Run
	controls map[*schema.Attenuator]*Attenuator
}

// along is where the walk stands.
type along struct {
	from   string // the device before
	within string
	prefix string // runs it stands inside: "Room 4, "
	cable  schema.Value[string]
}

// Devices gives the devices of the line one by one in walking order, those of
// runs written out.
func (l *Line) Devices() []Device {
	w := deviceWalk{
		line: l, lumped: l.reads.how.lumped,
		runs: make(map[*schema.Loudspeaker]*Run, len(l.Runs)), controls: make(map[*schema.Attenuator]*Attenuator, len(l.Attenuators)),
		all: make([]Device, 0, l.Loudspeakers),
	}
	for _, r := range l.Runs {
		w.runs[r.Part] = r
	}
	for _, a := range l.Attenuators {
		w.controls[a.Part] = a
	}
	w.chain(l.Part.Devices, along{cable: l.Part.Cable})
	l.arrives(w.all)
	return w.all
}

// chain walks devices. It calls itself for what braces enclose; the dialect
// bounds their nesting.
func (w *deviceWalk) chain(devices []schema.Device, at along) {
	for _, device := range devices {
		p := device.Common()
		cable := at.cable
		if p.Cable.Set() {
			cable = p.Cable
		}
		count := p.Count()
		if _, old := device.(*schema.Existing); old {
			count = 1 // its quantity only says how many units its load is of
		}
		for i := range count {
			d := Device{Kind: schema.DeviceKind(device), Of: device, Index: i, Name: at.prefix + p.MemberName(i), Within: at.within, From: at.from}
			if _, old := device.(*schema.Existing); old {
				d.Name = at.prefix + p.Name
			}
			d.Legs = w.laid(&d, p, i, cable)
			switch v := device.(type) {
			case *schema.Loudspeaker:
				d.Run = w.runs[v]
			case *schema.Attenuator:
				d.Attenuator = w.controls[v]
			}
			w.all = append(w.all, d)
			if inside := device.Inside(); len(inside) > 0 {
				inner := along{from: d.Name, within: d.Name, prefix: at.prefix, cable: cable}
				if p.Numbered() {
					inner.prefix += p.MemberName(i) + ", "
				}
				w.chain(inside, inner)
			}
			at.from = d.Name
		}
	}
}

// laid is the cable that leads to a device.
func (w *deviceWalk) laid(d *Device, p *schema.Placement, i int, cable schema.Value[string]) []LaidCable {
	part, design := w.line.Part, w.line.reads.system.Design
	if _, end := d.Of.(*schema.LineEnd); w.lumped || end && !p.Leg.Set() {
		return nil // a device that watches the line sits at the one before
	}
	first := !w.started
	w.started = true
	leg := LaidCable{Cable: design.Cable(cable.V)}
	if !cable.Set() {
		leg.Cable = nil
	}
	length := func(v schema.Value[quantity.Length], what, write string) LaidCable {
		l := leg
		l.Length = given(v, what)
		if !v.Set() {
			l.Length.Missing = []Missing{missing(what, d.Kind, &p.Part, write)}
		}
		return l
	}
	if i > 0 {
		return []LaidCable{length(p.Spacing, "cable between neighbours of the run", `spacing = "6 m"`)}
	}
	var all []LaidCable
	switch {
	case first && part.HomeRun.Set():
		home := LaidCable{Length: given(part.HomeRun, "home run"), HomeRun: true}
		if part.Cable.Set() {
			home.Cable = design.Cable(part.Cable.V)
		}
		all = append(all, home)
		if !p.Leg.Set() {
			return all
		}
	case first && !p.Leg.Set():
		leg.HomeRun = true
		leg.Length.Missing = []Missing{missing("length of the home run", "line", &part.Part, `home_run = "20 m"`)}
		return []LaidCable{leg}
	}
	one := length(p.Leg, "length of the leg that leads to it", `leg = "6 m"`)
	one.HomeRun = first && len(all) == 0
	return append(all, one)
}

// arrives fills in what comes to each device that takes something.
func (l *Line) arrives(all []Device) {
	b := l.reads
	lacks := MergeMissing(l.Loss.Drop.Missing, l.VoltsMissing())
	var solution *circuit.Solution
	if len(lacks) == 0 && !b.empty() {
		var solver circuit.Solver
		var err error
		if solution, err = solver.Solve(b.net, referenceHz, b.sourceVolts()); err != nil {
			lacks = b.unsolved(err)
		}
	}
	next, k := 0, 0 // the place that is met next, and which of its run
	for i := range all {
		d := &all[i]
		if d.Kind != "loudspeaker" && d.Kind != "existing" {
			continue
		}
		if d.Run != nil && d.Run.load.idle {
			continue // it takes nothing
		}
		own := lacks
		if d.Run != nil {
			own = MergeMissing(d.Run.Each.Missing, lacks)
		}
		d.Volts.Missing, d.Watts.Missing, d.Loss.Missing = own, own, own
		if next == len(b.places) || b.places[next].device != d.Of.Common() || len(own) > 0 {
			if next < len(b.places) && b.places[next].device == d.Of.Common() {
				next, k = b.after(next, k)
			}
			continue
		}
		p := &b.places[next]
		node, load := p.node(k), p.loads+circuit.LoadID(k)
		d.Volts.Value = quantity.Voltage(cmplx.Abs(solution.LoadVolts(load)))
		d.Watts.Value = quantity.Power(solution.LoadWatts(load))
		if db, ok := solution.CableLossDB(node); ok {
			d.Loss.Value = quantity.Gain(math.Max(db, 0))
		}
		d.Watts.Assumed, d.Volts.Assumed, d.Loss.Assumed = l.Loss.Drop.Assumed, l.Loss.Drop.Assumed, l.Loss.Drop.Assumed
		next, k = b.after(next, k)
	}
}

// after gives the place that follows one of a run.
func (b *builder) after(at, k int) (next, of int) {
	if k+1 < b.places[at].count {
		return at, k + 1
	}
	return at + 1, 0
}

// Closing is the cable of a ring from its last device back to the amplifier;
// not ok where the line is none.
func (l *Line) Closing() (leg LaidCable, from string, ok bool) {
	if !l.Part.RingLeg.Set() || len(l.Part.Devices) == 0 {
		return LaidCable{}, "", false
	}
	leg.Length = given(l.Part.RingLeg, "cable back to the amplifier")
	if l.Part.Cable.Set() {
		leg.Cable = l.reads.system.Design.Cable(l.Part.Cable.V)
	}
	last := l.Part.Devices[len(l.Part.Devices)-1].Common()
	return leg, last.MemberName(last.Count() - 1), true
}

// Whole is the cable of a line of which only the total length is stated; not ok
// for others.
func (l *Line) Whole() (LaidCable, bool) {
	if !l.reads.how.lumped {
		return LaidCable{}, false
	}
	whole := LaidCable{Length: given(l.Part.Length, "total length")}
	if l.Part.Cable.Set() {
		whole.Cable = l.reads.system.Design.Cable(l.Part.Cable.V)
	}
	return whole, true
}

// OverrideWay is how long a cable is that goes with the line from the amplifier
// to every attenuator that is lifted for announcements: each leg on the way to
// one counts once.
func (l *Line) OverrideWay() Figure[quantity.Length] {
	var f Figure[quantity.Length]
	devices := l.Devices()
	at := make(map[string]int, len(devices))
	for i := range devices {
		at[devices[i].Name] = i
	}
	counted := make([]bool, len(devices))
	for i := range devices {
		if a := devices[i].Attenuator; a == nil {
			continue
		} else if lifted, _ := a.Lifted(); !lifted {
			continue
		}
		for k, ok := i, true; ok && !counted[k]; k, ok = at[devices[k].From] {
			counted[k] = true
			for _, leg := range devices[k].Legs {
				f.Missing = MergeMissing(f.Missing, leg.Length.Missing)
				f.Value += leg.Length.Value
			}
			if devices[k].From == "" {
				break
			}
		}
	}
	if l.reads.how.lumped {
		f.Value = l.Part.Length.V // as far as the line itself
	}
	return f
}

// Expected is what a meter should show at the amplifier's end of the line, at
// 1 kHz, the amplifier disconnected and attenuators fully up.
func (s *System) Expected(l *Line) *Measured {
	at := l.Part.Header
	return s.Measure(&schema.Reading{
		Part:        l.Part.Part,
		Line:        schema.Value[string]{V: l.Part.Name, Text: l.Part.Name, Span: at},
		Frequency:   schema.Value[quantity.Frequency]{V: referenceHz, Text: "1 kHz", Span: at},
		Attenuators: schema.Value[string]{V: "all fully up", Text: "all fully up", Span: at},
	})
}
