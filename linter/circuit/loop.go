package circuit

import "slices"

// LoopID numbers the rings and reverse returns of a network in the order they were added, from 0.
type LoopID int32

// loop is a ring or a reverse return. Its path is the chain of legs from the terminals to the node where it ends.
type loop struct {
	path    []Node // without node 0, rising
	leg     Leg    // closes it
	reverse bool
	first   int // index into path: where the return conductor of a reverse return begins
}

func (l *loop) far() Node { return l.path[len(l.path)-1] }

// Ring lays a leg of cable from the terminals to a node that is there already, so that what hangs on the way to it is fed
// from both ends. Only legs may lie on that way: which way round the current flows through an attenuator in a ring, and so
// what it turns down, is not determined. A network takes any number of rings, as long as they have no leg in common.
func (n *Network) Ring(far Node, closing Leg) LoopID {
	return n.addLoop("closing a ring", 0, far, closing, false)
}

// ReverseReturn makes the way from the terminals to a node one with a reverse return: the go conductor leads by first to
// far, where it ends; the return conductor begins at first and goes home from far.
//
// The legs between first and far hold both conductors, alike, and are told as ever for both together. The legs before
// first hold the go conductor alone and back the return conductor alone: their figures are those of one conductor, and
// their capacitance, having no other conductor beside it, is not read. So nothing may hang before first. What hangs at
// first, at far or between is two-core as ever.
//
// The voltage of a node before first is that of its go conductor against the other terminal.
func (n *Network) ReverseReturn(first, far Node, back Leg) LoopID {
	return n.addLoop("laying a reverse return", first, far, back, true)
}

// SetLoop replaces the cable that closes a ring, or the conductor that a reverse return goes home by.
func (n *Network) SetLoop(id LoopID, leg Leg) {
	const what = "replacing the end of a loop"
	if n.err == nil && (id < 0 || int(id) >= len(n.loops)) {
		n.fail(0, "%s: there is no such loop, the network has %d", what, len(n.loops))
	}
	if n.err == nil && n.legValid(what, n.loops[id].far(), leg) {
		n.loops[id].leg = leg
	}
}

func (n *Network) addLoop(what string, first, far Node, leg Leg, reverse bool) LoopID {
	if !n.ready(what, far, 0, 0) || !n.legValid(what, far, leg) {
		return none
	}
	path := n.loopPath(what, far)
	if path == nil {
		return none
	}
	l := loop{path: path, leg: leg, reverse: reverse}
	if reverse {
		for l.first < len(path) && path[l.first] != first {
			l.first++
		}
		if l.first == len(path) {
			n.fail(first, "%s: its first device does not lie on the way to its last", what)
			return none
		}
		if !n.nothingBefore(what, path[:l.first+1]) {
			return none
		}
	}
	for len(n.loopOf) < len(n.parent) {
		n.loopOf = append(n.loopOf, 0)
	}
	n.loops = append(n.loops, l)
	for _, node := range path {
		n.loopOf[node] = int32(len(n.loops))
	}
	return LoopID(len(n.loops) - 1)
}

// loopPath lists the nodes from the terminals to a node, which legs must lead to, of no other loop; nil when it cannot be.
func (n *Network) loopPath(what string, far Node) []Node {
	length := 0
	for node := far; node != 0; node = n.parent[node] {
		switch {
		case n.attenuator[node] >= 0:
			n.fail(node, "%s: an attenuator leads here, and none can lie in a loop", what)
			return nil
		case n.loopIndex(node) >= 0:
			n.fail(node, "%s: the leg that leads here belongs to another loop", what)
			return nil
		}
		length++
	}
	if length == 0 {
		n.fail(far, "%s: it ends where it begins", what)
		return nil
	}
	path := make([]Node, length)
	for node := far; node != 0; node = n.parent[node] {
		length--
		path[length] = node
	}
	return path
}

// nothingBefore makes sure that nothing hangs on a way but, behind the terminals, the next node of it.
func (n *Network) nothingBefore(what string, path []Node) bool {
	before := path[:len(path)-1]
	for i, parent := range n.parent {
		if k, found := slices.BinarySearch(before, parent); found && path[k+1] != Node(i) {
			n.fail(parent, "%s: something hangs before its first device, where there is no return conductor", what)
			return false
		}
	}
	for _, at := range n.loadNode {
		if _, found := slices.BinarySearch(before, at); found {
			n.fail(at, "%s: a load hangs before its first device, where there is no return conductor", what)
			return false
		}
	}
	return true
}

// loopIndex is the loop whose path a node lies on, -1 for none.
func (n *Network) loopIndex(node Node) int {
	if int(node) >= len(n.loopOf) {
		return -1
	}
	return int(n.loopOf[node]) - 1
}

// oneConductor tells that a node lies before the first device of a reverse return.
func (n *Network) oneConductor(node Node) bool {
	i := n.loopIndex(node)
	return i >= 0 && n.loops[i].reverse && node < n.loops[i].path[n.loops[i].first]
}

// Solving. Each node of a path has two figures more, kept in two arrays that change their meaning on the way: side is first
// the admittance of all that hangs at the node but for the path itself, then the part of a current or voltage from the far
// end that is passed on towards the terminals; amps is first what is seen through its leg from there, then its leg's
// current.

// foldAlong folds a node of a path into the one before it, as foldUp does for all others, and keeps what the path carries
// apart from what else hangs at a node.
func (s *Solution) foldAlong(node Node, omega float64) error {
	n := s.network
	index := n.loopOf[node] - 1
	l := &n.loops[index]
	if l.reverse && node <= l.path[l.first] { // what leads there is no leg of two conductors
		s.side[node] = s.admittance[node]
		s.admittance[node] += s.carried[index]
		return nil
	}
	halfCapacitance := complex(0, omega*n.legFarad[node]/2)
	s.side[node] = s.admittance[node] + halfCapacitance
	y := s.side[node] + s.carried[index]
	s.admittance[node] = y
	divider := 1 + n.legImpedance(node, omega)*y
	if !(normSquared(divider) > cancelled*cancelled) {
		return s.resonates(node)
	}
	s.volts[node] = reciprocal(divider)
	s.carried[index] = y * s.volts[node]
	parent := n.parent[node]
	s.admittance[parent] += halfCapacitance
	if parent == 0 {
		s.admittance[0] += s.carried[index]
	}
	return nil
}

// closeLoops finds the volts of every path and the currents of its legs, and adds what loops draw besides.
func (s *Solution) closeLoops(omega float64) (err error) {
	for i := range s.network.loops {
		l := &s.network.loops[i]
		if l.reverse {
			s.closing[i], err = s.closeReverse(l, omega)
		} else {
			s.closing[i], err = s.closeRing(l, omega)
		}
		if err != nil {
			return err
		}
		for _, node := range l.path {
			if !(normSquared(s.amps[node]) < beyondSense*beyondSense) { // NaN too
				return s.resonates(node)
			}
		}
	}
	return nil
}

// closeRing closes a ring by compensation. The tree as it is, with the closing leg open, leaves V0 at the far node. Seen
// from there with the source shorted it is an impedance Z: walking out from the terminals, w = u + z is what is seen
// through a leg z from a node behind which u was, and u = w/(1 + a·w) what is seen from its far end with a hanging there.
// Through a closing leg of impedance c flows I = (V − V0)/(Z + c). Of a current J that comes to a node from the far end,
// the part J/(1 + a·w) goes on towards the terminals and raises the node by w times that: added to the tree's solution
// this is the ring's, by superposition.
func (s *Solution) closeRing(l *loop, omega float64) (amps complex128, err error) {
	n := s.network
	source := complex(s.SourceVolts, 0)
	seen, open := complex128(0), source
	for _, node := range l.path {
		open *= s.volts[node]
		s.volts[node] = open
		seen += n.legImpedance(node, omega)
		divider := 1 + s.side[node]*seen
		if !(normSquared(divider) > cancelled*cancelled) {
			return 0, s.resonates(node)
		}
		s.amps[node], s.side[node] = seen, reciprocal(divider)
		seen *= s.side[node]
	}
	closing := l.leg.impedance(omega)
	if parts := normSquared(seen) + normSquared(closing); parts > 0 { // else all of it is one node
		around := seen + closing
		if !(normSquared(around) > cancelled*cancelled*parts) {
			return 0, s.resonates(l.far())
		}
		amps = (source - open) * reciprocal(around)
	}
	onward := amps
	for _, node := range slices.Backward(l.path) {
		onward *= s.side[node]
		flowing := s.admittance[node] * s.volts[node]
		s.volts[node] += s.amps[node] * onward
		s.amps[node] = flowing - onward
	}
	s.SourceAmps += amps - onward
	return amps, nil
}

// closeReverse solves a reverse return. Let I be the source's current and D = go current − I/2 in a leg. Between the first
// and the last device both conductors together carry I onward, so that D is the current of an ordinary line: the voltage
// between the conductors falls by z·D over a leg z of both, and D falls by what each device takes. D begins with I/2
// before the first device and ends with −I/2 behind the last: the devices are an ordinary line fed with half the current
// from each end. Kirchhoff's voltage law around go conductor, last device and return conductor, where the sum of z·D is
// V1 − Vn, gives the voltage of the source:
//
//	V = I·(home + back + sum of z / 4) + (V1 + Vn)/2
//
// All is worked out for I = 1 by the ladder method from both ends, added up, and scaled.
func (s *Solution) closeReverse(l *loop, omega float64) (amps complex128, err error) {
	n := s.network
	source := complex(s.SourceVolts, 0)
	home, chain := l.path[:l.first], l.path[l.first:]
	first := chain[0]
	if !(normSquared(s.admittance[first]) > 0) { // nothing draws current
		for _, node := range l.path {
			s.volts[node], s.amps[node] = source, 0
		}
		return 0, nil
	}
	series := l.leg.impedance(omega) + n.legImpedance(first, omega)
	for _, node := range home {
		series += n.legImpedance(node, omega)
	}
	// Fed with half an ampere from the near end; and what is seen from the far end.
	s.volts[first] = scaled(reciprocal(s.admittance[first]), 0.5)
	seen := s.side[first]
	for k, node := range chain[1:] {
		s.volts[node] *= s.volts[chain[k]]
		z := n.legImpedance(node, omega)
		series += scaled(z, 0.25)
		divider := 1 + z*seen
		if !(normSquared(divider) > cancelled*cancelled) {
			return 0, s.resonates(node)
		}
		ratio := reciprocal(divider)
		seen *= ratio
		hangs := s.side[node]
		s.amps[node], s.side[node] = seen, ratio
		seen += hangs
	}
	if !(normSquared(seen) > 0) {
		return 0, s.resonates(l.far())
	}
	// Fed with half an ampere from the far end: the difference of currents is D, the sum of volts what both feeds leave.
	far := scaled(reciprocal(seen), 0.5)
	for _, node := range slices.Backward(chain[1:]) {
		s.amps[node] = s.admittance[node]*s.volts[node] - s.amps[node]*far
		s.volts[node] += far
		far *= s.side[node]
	}
	s.volts[first] += far
	mean := scaled(s.volts[first]+s.volts[l.far()], 0.5)
	if !(normSquared(series+mean) > cancelled*cancelled*(normSquared(series)+normSquared(mean))) {
		return 0, s.resonates(l.far())
	}
	amps = source * reciprocal(series+mean)
	for _, node := range chain {
		s.volts[node] *= amps
		s.amps[node] = amps * (s.amps[node] + 0.5)
	}
	s.amps[first] = amps
	volts := source
	for _, node := range home {
		volts -= n.legImpedance(node, omega) * amps
		s.volts[node], s.amps[node] = volts, amps
	}
	s.SourceAmps += amps
	return amps, nil
}

// LoopAmps is the current in the end of a loop: away from the terminals in the leg that closes a ring, home to them in the
// return conductor of a reverse return. The current that charges the near half of the capacitance of a closing leg is not
// in it.
func (s *Solution) LoopAmps(id LoopID) complex128 { return s.closing[id] }

// LoopWatts is the real power lost in the end of a loop.
func (s *Solution) LoopWatts(id LoopID) float64 {
	return normSquared(s.closing[id]) * s.network.loops[id].leg.ROhm
}

// ReturnAmps is the current that comes back through the second conductor of a leg. Only a reverse return has it differ from
// LegAmps: between its first and its last device the current there is negative, for it flows on towards the last.
func (s *Solution) ReturnAmps(node Node) complex128 {
	i := s.network.loopIndex(node)
	if i < 0 || !s.network.loops[i].reverse {
		return s.LegAmps(node)
	}
	if l := &s.network.loops[i]; node <= l.path[l.first] {
		return 0
	}
	return s.amps[node] - s.closing[i]
}
