package schema

import "slices"

// Absent gives the first part that an address names and the design does not have,
// with the nearest name that it has, "" for none. Such an address is no problem of
// the text: a deviation may outlive the part it was agreed for, and that must not
// keep the rest from being judged.
func (d *Design) Absent(a *Address) (part Addressed, nearest string, absent bool) {
	for _, p := range a.Parts() {
		if there, known := d.knows(a, p); !there {
			return p, Nearest(p.Name.V, known()), true
		}
	}
	return Addressed{}, "", false
}

// knows tells whether a part of an address is there, and what parts of its kind
// are.
func (d *Design) knows(a *Address, p Addressed) (there bool, known func() []string) {
	name := p.Name.V
	among := func(names []string) (bool, func() []string) {
		return slices.Contains(names, name), func() []string { return names }
	}
	switch p.Kind {
	case KindAmplifier, KindMixer:
		return among(partNames(d.Units))
	case "channel", "output":
		owner := a.Amplifier
		if !owner.Set() {
			owner = a.Mixer
		}
		u := d.Unit(owner.V)
		switch {
		case u == nil: // told before, or not demanded
			return true, nil
		case p.Kind == "channel":
			return among(partNames(u.Channels))
		}
		return among(partNames(u.Outputs))
	case "line":
		return among(partNames(d.Lines))
	case "loudspeaker", "attenuator":
		return d.knowsDevice(a.Line, name)
	case "source":
		return among(partNames(d.Sources))
	case "mute_link":
		return among(partNames(d.MuteLinks))
	case "space":
		return among(partNames(d.Spaces))
	case "supply":
		return among(partNames(d.Supplies))
	case "reading":
		return among(partNames(d.Readings))
	}
	return true, nil
}

// knowsDevice looks on the line that is named, or on all of them.
func (d *Design) knowsDevice(line Value[string], name string) (there bool, known func() []string) {
	lines := d.Lines
	if l := d.Line(line.V); l != nil {
		lines = []*Line{l}
	}
	all := make([]*lineNames, len(lines))
	for i, l := range lines {
		if all[i] = namesOf(l); all[i].has(name) {
			return true, nil
		}
	}
	return false, func() []string {
		var names []string
		for _, n := range all {
			names = append(names, n.all()...)
		}
		return names
	}
}
