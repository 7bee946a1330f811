package analysis

import (
	"fmt"
	"math/cmplx"
	"slices"

	"loudlint/linter/circuit"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Rings and reverse returns. A ring's cable comes back from the last device of
// the line to the amplifier, which feeds it from both ends. With a reverse return
// only one conductor comes back: the go conductor meets the first device first,
// the return conductor begins there and goes home from the last. What a branch or
// an attenuator holds is wired there and back in either.

// sideBySide is assumed of a reverse return: it depends on where its conductors
// lie how much inductance its wide loop has.
const sideBySide = "the conductors of the reverse return are taken to lie side by side; apart, they have more inductance"

// loop is the end of a ring or of a reverse return, in the network of a line.
type loop struct {
	laid    bool
	reverse bool
	id      circuit.LoopID
	far     circuit.Node
	metres  float64
	cable   int32
}

// close lays the ring leg from the last device.
func (b *builder) close(end circuit.Node) {
	part := b.line.Part
	reverse := part.Return.V == "reverse"
	if reverse && !part.RingLeg.Set() {
		b.lacks(missing("length of the return conductor from the last device back to the amplifier", "line", &part.Part, `ring_leg = "60 m"`))
	}
	if !reverse && !part.RingLeg.Set() || end == 0 || reverse && b.first == 0 {
		return
	}
	b.loop = loop{laid: true, reverse: reverse, far: end, metres: float64(part.RingLeg.V), cable: noCable}
	if part.RingLeg.Set() {
		b.loop.cable = b.cable(part.Cable)
	}
	leg := b.legOf(b.loop.cable, b.loop.metres)
	if !reverse {
		b.loop.id = b.net.Ring(end, leg)
		return
	}
	b.assumed = append(b.assumed, sideBySide)
	if slices.ContainsFunc(part.Devices, func(d schema.Device) bool { return len(d.Inside()) > 0 }) {
		b.assumed = append(b.assumed, "what a branch or an attenuator holds has both its conductors from there")
	}
	b.loop.id = b.net.ReverseReturn(b.first, end, oneConductor(leg))
}

// oneConductor is the leg of a cable of which one conductor is used.
func oneConductor(leg circuit.Leg) circuit.Leg {
	return circuit.Leg{ROhm: leg.ROhm / 2, LHenry: leg.LHenry / 2}
}

// lumped hangs all loads where they lose most, when only the total length is
// known: no matter where they really hang, none loses more.
//
// On a tree that is the far end. On a ring of the perimeter p it is where a·(p − a)
// is highest: the middle, or the last device if that comes before it. With a
// reverse return the way there and back is as long from everywhere.
func (b *builder) lumped(at position) {
	part := b.line.Part
	length, back := part.Length.V, part.RingLeg.V
	switch {
	case part.Return.V == "reverse":
		if !part.RingLeg.Set() {
			b.lacks(missing("length of the return conductor from the last device back to the amplifier", "line", &part.Part, `ring_leg = "60 m"`))
		}
		at.node = b.leg(0, (length+back)/2, part.Cable)
	case part.RingLeg.Set():
		around := length + back
		length = min(length, around/2)
		at.node = b.leg(0, length, part.Cable)
		b.loop = loop{laid: true, far: at.node, metres: float64(around - length), cable: b.cable(part.Cable)}
		b.loop.id = b.net.Ring(at.node, b.legOf(b.loop.cable, b.loop.metres))
	default:
		at.node = b.leg(0, length, part.Cable)
	}
	b.chain(part.Devices, at)
}

// AllAt says where the whole load counts when only the total length of the line
// is known.
func (l *Line) AllAt() string {
	switch {
	case l.Part.Return.V == "reverse":
		return "at one place"
	case l.Part.RingLeg.Set():
		return "where the ring loses most"
	}
	return "at the far end"
}

// Looped tells that the cable comes back to the amplifier: as a ring, or as a
// reverse return.
func (l *Line) Looped() bool { return l.Part.RingLeg.Set() || l.Part.Return.V == "reverse" }

// Ring tells that the line is fed from both ends.
func (l *Line) Ring() bool { return l.Part.RingLeg.Set() && l.Part.Return.V != "reverse" }

// stretch is a length of one of the cables.
type stretch struct {
	cable      int32
	metres     float64
	conductors int // 2, or 1 of a reverse return
}

// stretches lists the cable from a node up to, and without, one that lies before
// it.
func (b *builder) stretches(node, until circuit.Node, conductors int) []stretch {
	var all []stretch
	for ; node > until; node = b.net.Parent(node) {
		if c := b.wayCable[node]; c != noCable {
			all = append(all, stretch{c, b.wayMetres[node], conductors})
		}
	}
	return all
}

// leaves is where the way to a node leaves the path of the loop.
func (b *builder) leaves(node circuit.Node) circuit.Node {
	on := b.loop.far
	for on != node { // parents have lower numbers
		if on > node {
			on = b.net.Parent(on)
		} else {
			node = b.net.Parent(node)
		}
	}
	return on
}

// way gives the cable to a node, by kind of cable in the order in which it is met
// from the amplifier; on a ring also that of the way round its other end. With a
// reverse return the one way has all of it, there and back.
func (b *builder) way(node circuit.Node) (way, round []CableUse) {
	switch at := b.leaves(node); {
	case !b.loop.laid:
		return b.uses(b.stretches(node, 0, 2)), nil
	case b.loop.reverse:
		all := slices.Concat(b.stretches(node, at, 2), b.closing(1), b.stretches(b.loop.far, 0, 1))
		return b.uses(all), nil
	default:
		inside, onward := b.stretches(node, at, 2), b.stretches(b.loop.far, at, 2)
		slices.Reverse(onward)
		return b.uses(b.stretches(node, 0, 2)), b.uses(slices.Concat(inside, onward, b.closing(2)))
	}
}

func (b *builder) closing(conductors int) []stretch {
	if b.loop.cable == noCable {
		return nil
	}
	return []stretch{{b.loop.cable, b.loop.metres, conductors}}
}

// uses adds up cable that is listed from the far end.
func (b *builder) uses(all []stretch) []CableUse {
	type kind struct {
		cable      int32
		conductors int
	}
	metres := map[kind]float64{}
	var met []kind
	for _, s := range slices.Backward(all) {
		k := kind{s.cable, s.conductors}
		if _, known := metres[k]; !known {
			met = append(met, k)
		}
		metres[k] += s.metres
	}
	uses := make([]CableUse, len(met))
	for i, k := range met {
		c := &b.cables[k.cable]
		uses[i] = CableUse{Metres: metres[k], Conductors: k.conductors, LoopOhm: metres[k] * c.ohm * float64(k.conductors) / 2, PerLength: c.perLength, Kind: c.kind}
	}
	return uses
}

// wayText writes how far it is to a place, with the ohms of the cable if asked:
// "60 m of cable one way and 80 m the other".
func (b *builder) wayText(way, round []CableUse, ohms bool) string {
	length := func(uses []CableUse, conductors int) (text string, ohm float64) {
		metres := 0.0
		for _, u := range uses {
			if u.Conductors == conductors {
				metres += u.Metres
				ohm += u.LoopOhm
			}
		}
		return quantity.Format(quantity.Length(roundMetres(metres)), b.system.Design.System.US()), ohm
	}
	add := func(text, format string, ohm float64) string {
		if !ohms {
			return text
		}
		return text + fmt.Sprintf(format, quantity.Resistance(ohm))
	}
	there, ohm := length(way, 2)
	switch {
	case b.loop.laid && b.loop.reverse:
		alone, aloneOhm := length(way, 1)
		text := add(alone+" of conductor there and on round the loop", ", %s", aloneOhm)
		if ohm > 0 {
			text += " and " + add(there+" of cable", ", %s there and back", ohm)
		}
		return text
	case len(round) > 0:
		other, otherOhm := length(round, 2)
		return add(there+" of cable one way", " (%s there and back)", ohm) + " and " + add(other+" the other", " (%s)", otherOhm)
	}
	return add(there+" of cable", ", %s there and back", ohm)
}

// feeds are the currents that go out by both ends of a ring at full output.
func (b *builder) feeds() (home, back float64, ok bool) {
	if !b.loop.laid || b.loop.reverse {
		return 0, 0, false
	}
	var solver circuit.Solver
	solution, err := solver.Solve(b.net, referenceHz, b.sourceVolts())
	if err != nil {
		return 0, 0, false
	}
	closing := solution.LoopAmps(b.loop.id)
	return cmplx.Abs(solution.SourceAmps - closing), cmplx.Abs(closing), true
}
