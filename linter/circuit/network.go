package circuit

import (
	"fmt"
	"maps"
	"math"
	"slices"
)

// Node is a place in the network. Node 0 is the amplifier's terminals; a node made later has a higher number than the
// node it hangs from.
type Node int32

// LoadID numbers the loads of a network in the order they were added, from 0.
type LoadID int32

// none is what a builder method returns once the network is in error.
const none = -1

// MaxNodes is the largest number of nodes, and of loads, that a network takes: it bounds memory to a few gigabytes.
const MaxNodes = 1 << 24

// Bounds of what is accepted. They lie far outside anything that can be built, and keep every product formed while solving
// far from overflow.
const (
	maxOhm         = 1e12
	minLoadOhm     = 1e-6
	maxLegOhm      = 1e9
	maxHenry       = 1e3
	maxFarad       = 1.0
	maxWatts       = 1e12
	maxVolts       = 1e6
	minSourceVolts = 1e-6
	maxHz          = 1e9
	maxInsertionDB = 60
	minSettingDB   = -200
)

// Leg is a length of two-core cable. Every figure is for the whole leg and for both conductors together: the resistance is
// the loop resistance, 2 × length × ohm per metre of one conductor.
type Leg struct {
	ROhm   float64
	LHenry float64
	CFarad float64 // half of it is placed across each end
}

// Attenuator is a transformer volume control on the line.
//
// With a = 10^(SettingDB/20) and b = 10^(−InsertionDB/20), V_out = a·b·V_in and I_in = a·I_out: a is an ideal
// autotransformer, which loses nothing; b is a voltage factor that turns the part 1 − b of the power into heat.
type Attenuator struct {
	SettingDB   float64 // as written on the dial, 0 or below: −6 is six decibels down
	InsertionDB float64 // loss at the 0 dB setting, 0 or above
	Off         bool    // nothing passes: no volts behind it, no current into it; SettingDB is then not read
}

// Load is what one loudspeaker, or anything else that draws current, is to the line. Exactly one of its three forms is
// given: PowerW with MarkedVolts, Ohm, or Curve.
type Load struct {
	// PowerW at MarkedVolts: a transformer tap, a resistance of MarkedVolts²/PowerW. On a line of another voltage the same
	// tap takes another power, P·(V/MarkedVolts)².
	PowerW      float64
	MarkedVolts float64

	Ohm float64

	// Curve is an impedance over frequency; CurveScale multiplies it, 0 standing for 1.
	Curve      *Curve
	CurveScale float64

	// SeriesOhm is a resistance between the node and the load itself. What it takes is counted apart from the load.
	SeriesOhm float64
}

// Run names what Chain added: the nodes First … Last and the loads FirstLoad … LastLoad, in walking order and without gaps.
type Run struct {
	First, Last         Node
	FirstLoad, LastLoad LoadID
}

// Error is a network that cannot be solved. Node is where it went wrong: for a part that was refused, the node it was to
// be added to; node 0 for a frequency or a source voltage.
type Error struct {
	Node    Node
	Problem string
}

func (e *Error) Error() string { return fmt.Sprintf("%s (node %d)", e.Problem, e.Node) }

// Network is a tree of legs, attenuators and loads, on which rings and reverse returns may be laid. Its builder methods keep the first error: after one they do nothing and
// return -1, so that a caller may build the whole network and ask Err, or Solve, once. A network is safe for any number of
// concurrent solvers while nobody changes it.
type Network struct {
	// By node. Entry 0 stands for the terminals and holds no leg.
	parent     []Node
	attenuator []int32 // index into attenuators of the one that leads here, or -1 for a leg
	legOhm     []float64
	legHenry   []float64
	legFarad   []float64

	attenuators []factors

	// By load.
	loadNode   []Node
	loadOhm    []float64 // the resistance, or with a curve the factor on it
	loadSeries []float64
	loadCurve  []int32 // index into curves, or -1
	loadString []int32 // index into strings, or -1

	curves     []*Curve
	curveIndex map[*Curve]int32
	strings    []Node // where each series string is connected

	loops  []loop
	loopOf []int32 // by node: one more than the index of the loop whose path it lies on; as long as needed

	err *Error
}

// factors are the voltage factors a and b of an attenuator.
type factors struct{ ratio, through float64 }

// New returns a network that holds node 0 alone. The capacity is the number of nodes to make room for; it is a hint.
func New(capacity int) *Network {
	capacity = min(max(capacity, 1), 1<<20)
	n := &Network{
		parent:     make([]Node, 0, capacity),
		attenuator: make([]int32, 0, capacity),
		legOhm:     make([]float64, 0, capacity),
		legHenry:   make([]float64, 0, capacity),
		legFarad:   make([]float64, 0, capacity),
		loadNode:   make([]Node, 0, capacity),
		loadOhm:    make([]float64, 0, capacity),
		loadSeries: make([]float64, 0, capacity),
		loadCurve:  make([]int32, 0, capacity),
		loadString: make([]int32, 0, capacity),
	}
	n.addNode(0, Leg{}, -1)
	return n
}

// Nodes is the number of nodes, the amplifier's terminals included.
func (n *Network) Nodes() int { return len(n.parent) }

// Loads is the number of loads; each part of a series string counts as one.
func (n *Network) Loads() int { return len(n.loadNode) }

// Parent is the node that a node hangs from; for node 0 it is node 0.
func (n *Network) Parent(node Node) Node { return n.parent[node] }

// LoadNode is the node that a load is connected to.
func (n *Network) LoadNode(id LoadID) Node { return n.loadNode[id] }

// Err is the first error met while building, or nil.
func (n *Network) Err() error {
	if n.err == nil {
		return nil // not n.err: a nil *Error in an error is not nil
	}
	return n.err
}

// Leg adds a leg of cable from a node and returns the node at its far end. A leg of no length (all zero) is allowed.
func (n *Network) Leg(from Node, leg Leg) Node {
	if !n.ready("adding a leg", from, 1, 0) || !n.legValid("adding a leg", from, leg) {
		return none
	}
	return n.addNode(from, leg, -1)
}

// SetLeg replaces the cable that leads to a node, so that another conductor can be tried without building anew.
func (n *Network) SetLeg(node Node, leg Leg) {
	const what = "replacing a leg"
	if !n.ready(what, node, 0, 0) || !n.legValid(what, node, leg) {
		return
	}
	if node == 0 || n.attenuator[node] >= 0 {
		n.fail(node, "%s: no leg of cable leads here", what)
		return
	}
	n.legOhm[node], n.legHenry[node], n.legFarad[node] = leg.ROhm, leg.LHenry, leg.CFarad
}

// Copy returns a network of its own: SetLeg, or anything that is added to one, leaves the other as it is. What never
// changes in a network is shared, so that a copy costs no more than its legs.
func (n *Network) Copy() *Network {
	c := *n
	c.legOhm, c.legHenry, c.legFarad = slices.Clone(n.legOhm), slices.Clone(n.legHenry), slices.Clone(n.legFarad)
	// Without room to spare, adding makes new arrays.
	c.parent, c.attenuator, c.attenuators = slices.Clip(n.parent), slices.Clip(n.attenuator), slices.Clip(n.attenuators)
	c.loadNode, c.loadOhm, c.loadSeries = slices.Clip(n.loadNode), slices.Clip(n.loadOhm), slices.Clip(n.loadSeries)
	c.loadCurve, c.loadString = slices.Clip(n.loadCurve), slices.Clip(n.loadString)
	c.curves, c.strings = slices.Clip(n.curves), slices.Clip(n.strings)
	c.loops, c.loopOf = slices.Clone(n.loops), slices.Clone(n.loopOf)
	c.curveIndex = maps.Clone(n.curveIndex)
	return &c
}

// Attenuator adds an attenuator whose input is at a node and returns the node at its output.
func (n *Network) Attenuator(from Node, a Attenuator) Node {
	const what = "adding an attenuator"
	if !n.ready(what, from, 1, 0) {
		return none
	}
	if !a.Off && !within(a.SettingDB, minSettingDB, 0) {
		n.fail(from, "%s: setting %g dB is not between %d and 0 dB", what, a.SettingDB, minSettingDB)
		return none
	}
	if !within(a.InsertionDB, 0, maxInsertionDB) {
		n.fail(from, "%s: insertion loss %g dB is not between 0 and %d dB", what, a.InsertionDB, maxInsertionDB)
		return none
	}
	f := factors{ratio: math.Pow(10, a.SettingDB/20), through: math.Pow(10, -a.InsertionDB/20)}
	if a.Off {
		f.ratio = 0
	}
	n.attenuators = append(n.attenuators, f)
	return n.addNode(from, Leg{}, int32(len(n.attenuators)-1))
}

// Load connects a load across a node. A node takes any number of them.
func (n *Network) Load(at Node, l Load) LoadID {
	const what = "connecting a load"
	if !n.ready(what, at, 0, 1) || !n.loadValid(what, at, l) {
		return none
	}
	return n.addLoad(at, l, -1)
}

// Series connects loads wired in series with each other across a node, as loudspeakers on a low-impedance output may be.
// It returns the first; the others follow in order. The cable between them is told as their SeriesOhm.
func (n *Network) Series(at Node, parts ...Load) LoadID {
	const what = "connecting a series string"
	if !n.ready(what, at, 0, len(parts)) {
		return none
	}
	if len(parts) == 0 {
		n.fail(at, "%s: it has no loads", what)
		return none
	}
	for _, l := range parts {
		if !n.loadValid(what, at, l) {
			return none
		}
	}
	first := LoadID(len(n.loadNode))
	n.strings = append(n.strings, at)
	for _, l := range parts {
		n.addLoad(at, l, int32(len(n.strings)-1))
	}
	return first
}

// Chain adds count equal sections, each a leg from the one before it with a load at its far end.
func (n *Network) Chain(from Node, count int, leg Leg, l Load) Run {
	const what = "adding a run"
	failed := Run{First: none, Last: none, FirstLoad: none, LastLoad: none}
	if n.err == nil && count < 1 {
		n.fail(from, "%s: %d sections; at least 1 is needed", what, count)
	}
	if !n.ready(what, from, count, count) || !n.legValid(what, from, leg) || !n.loadValid(what, from, l) {
		return failed
	}
	run := Run{First: Node(len(n.parent)), FirstLoad: LoadID(len(n.loadNode))}
	for range count {
		from = n.addNode(from, leg, -1)
		run.LastLoad = n.addLoad(from, l, -1)
	}
	run.Last = from
	return run
}

// ready tells whether parts may be added at a node, and records why not.
func (n *Network) ready(what string, at Node, nodes, loads int) bool {
	switch {
	case n.err != nil:
		return false
	case at < 0 || int(at) >= len(n.parent):
		n.fail(at, "%s: there is no such node, the network has %d", what, len(n.parent))
	case nodes+loads > 0 && n.oneConductor(at):
		n.fail(at, "%s: only the go conductor of a reverse return passes here", what)
	case nodes > MaxNodes-len(n.parent) || loads > MaxNodes-len(n.loadNode):
		n.fail(at, "%s: more than %d nodes or loads", what, MaxNodes)
	}
	return n.err == nil
}

// impedance of a leg, its capacitance apart.
func (l Leg) impedance(omega float64) complex128 { return complex(l.ROhm, omega*l.LHenry) }

func (n *Network) legImpedance(node Node, omega float64) complex128 {
	return complex(n.legOhm[node], omega*n.legHenry[node])
}

func (n *Network) legValid(what string, at Node, leg Leg) bool {
	switch {
	case !within(leg.ROhm, 0, maxLegOhm):
		n.fail(at, "%s: resistance %g ohm is not between 0 and %g ohm", what, leg.ROhm, maxLegOhm)
	case !within(leg.LHenry, 0, maxHenry):
		n.fail(at, "%s: inductance %g H is not between 0 and %g H", what, leg.LHenry, maxHenry)
	case !within(leg.CFarad, 0, maxFarad):
		n.fail(at, "%s: capacitance %g F is not between 0 and %g F", what, leg.CFarad, maxFarad)
	}
	return n.err == nil
}

func (n *Network) loadValid(what string, at Node, l Load) bool {
	forms := 0
	if !isZero(l.PowerW) || !isZero(l.MarkedVolts) {
		forms++
	}
	if !isZero(l.Ohm) {
		forms++
	}
	if l.Curve != nil {
		forms++
	}
	switch {
	case forms == 0:
		n.fail(at, "%s: its impedance is zero, a short circuit; or none was given", what)
	case forms > 1:
		n.fail(at, "%s: give one of power with voltage, resistance, and curve, not several", what)
	case !within(l.SeriesOhm, 0, maxOhm):
		n.fail(at, "%s: series resistance %g ohm is not between 0 and %g ohm", what, l.SeriesOhm, maxOhm)
	case l.Curve != nil:
		if scale := l.scale(); !within(scale*l.Curve.lowestOhm, minLoadOhm, maxOhm) ||
			!within(scale*l.Curve.highestOhm, minLoadOhm, maxOhm) {
			n.fail(at, "%s: curve times %g leaves the span of %g to %g ohm", what, scale, minLoadOhm, maxOhm)
		}
	case !isZero(l.CurveScale):
		n.fail(at, "%s: a factor for a curve, but no curve", what)
	case isZero(l.Ohm) && !(within(l.PowerW, 0, maxWatts) && l.PowerW > 0):
		n.fail(at, "%s: power %g W is not above 0 and up to %g W", what, l.PowerW, maxWatts)
	case isZero(l.Ohm) && !(within(l.MarkedVolts, 0, maxVolts) && l.MarkedVolts > 0):
		n.fail(at, "%s: marked voltage %g V is not above 0 and up to %g V", what, l.MarkedVolts, maxVolts)
	case !within(l.ohm(), minLoadOhm, maxOhm):
		n.fail(at, "%s: %g ohm is not between %g and %g ohm", what, l.ohm(), minLoadOhm, maxOhm)
	}
	return n.err == nil
}

// ohm is the resistance of a load without a curve: R = V²/P for a tap (the constant-voltage principle: full amplifier
// power at the line's nominal voltage; Sound System Design Reference Manual, chapter 7).
func (l Load) ohm() float64 {
	if !isZero(l.Ohm) {
		return l.Ohm
	}
	return l.MarkedVolts * l.MarkedVolts / l.PowerW
}

func (l Load) scale() float64 {
	if isZero(l.CurveScale) {
		return 1
	}
	return l.CurveScale
}

func (n *Network) addNode(parent Node, leg Leg, attenuator int32) Node {
	n.parent = append(n.parent, parent)
	n.attenuator = append(n.attenuator, attenuator)
	n.legOhm = append(n.legOhm, leg.ROhm)
	n.legHenry = append(n.legHenry, leg.LHenry)
	n.legFarad = append(n.legFarad, leg.CFarad)
	return Node(len(n.parent) - 1)
}

func (n *Network) addLoad(at Node, l Load, inString int32) LoadID {
	curve, value := int32(-1), l.ohm()
	if l.Curve != nil {
		curve, value = n.indexOf(l.Curve), l.scale()
	}
	n.loadNode = append(n.loadNode, at)
	n.loadOhm = append(n.loadOhm, value)
	n.loadSeries = append(n.loadSeries, l.SeriesOhm)
	n.loadCurve = append(n.loadCurve, curve)
	n.loadString = append(n.loadString, inString)
	return LoadID(len(n.loadNode) - 1)
}

// indexOf numbers the curves, so that each is read once per solution however many loads share it.
func (n *Network) indexOf(c *Curve) int32 {
	i, found := n.curveIndex[c]
	if !found {
		if n.curveIndex == nil {
			n.curveIndex = make(map[*Curve]int32)
		}
		i = int32(len(n.curves))
		n.curves = append(n.curves, c)
		n.curveIndex[c] = i
	}
	return i
}

func (n *Network) fail(at Node, format string, args ...any) {
	n.err = &Error{Node: at, Problem: fmt.Sprintf(format, args...)}
}

// within is false for NaN as well.
func within(x, low, high float64) bool { return x >= low && x <= high }

// isZero tells a figure that was left out. Such a figure is exactly zero, never a computed one; NaN is not zero.
func isZero(x float64) bool { return x == 0 }
