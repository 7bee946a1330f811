package circuit

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"
)

// Where inductance and capacitance cancel to less than this part, what remains is rounding: the network is a resonance
// without loss, which no cable is. Resistance alone never comes near.
const cancelled = 1e-9

// Several resonances that just miss that mark multiply. Beyond this many volts, or siemens, an answer means nothing.
const beyondSense = 1e30

// A node is silent when what should reach it is lower than this part of the source: it hangs behind an attenuator that is
// off, or behind a pile of them.
const silent = 1e-100

// Solver holds the buffers of a solution, so that solving again costs no memory. A solver serves one goroutine at a time.
type Solver struct {
	solution Solution
}

// Solution is a solved network at one frequency. Volts and amperes are r.m.s. values; the source's phase is 0.
//
// It belongs to the Solver that made it, holds until that solver solves again, and reads the network it was made from,
// which must not be changed before. Its methods panic, like a slice, on a node or load that the network does not have.
type Solution struct {
	FrequencyHz float64
	SourceVolts float64

	// InputAdmittance, in siemens, is what the amplifier sees. It is 0 when nothing draws current.
	InputAdmittance complex128
	SourceAmps      complex128

	// Real power: SourceWatts = TotalLoadWatts + SeriesWatts + CableWatts + AttenuatorWatts.
	SourceWatts     float64
	TotalLoadWatts  float64 // in the loads themselves
	SeriesWatts     float64 // in the resistances in series with loads
	CableWatts      float64 // in the legs
	AttenuatorWatts float64 // the insertion loss of attenuators

	network    *Network
	volts      []complex128
	admittance []complex128 // of all that hangs on a node, the near half of the capacitance of its own leg included
	gain       []float64    // volts a node would have, per volt of the source, if cable had no impedance
	curveOhm   []complex128
	stringOhm  []complex128
	worst      Node

	// Of a network with loops, by node of their paths and by loop; see loop.go.
	side, amps       []complex128
	carried, closing []complex128
}

// Solve computes a network at a frequency (0 Hz is direct current) fed with sourceVolts volts r.m.s.
//
// The error is an *Error: the network's own first error, a frequency or voltage out of range, or a short circuit, which a
// network of positive resistances can only be where inductance and capacitance cancel without any loss.
func (s *Solver) Solve(n *Network, frequencyHz, sourceVolts float64) (*Solution, error) {
	if n.err != nil {
		return nil, n.err
	}
	if !within(frequencyHz, 0, maxHz) {
		return nil, &Error{0, fmt.Sprintf("solving a network: frequency %g Hz is not between 0 and %g Hz", frequencyHz, maxHz)}
	}
	if !within(sourceVolts, minSourceVolts, maxVolts) {
		return nil, &Error{0, fmt.Sprintf("solving a network: source of %g V is not between %g and %g V", sourceVolts, minSourceVolts, maxVolts)}
	}
	sol := &s.solution
	*sol = Solution{
		FrequencyHz: frequencyHz,
		SourceVolts: sourceVolts,
		network:     n,
		volts:       resize(sol.volts, len(n.parent)),
		admittance:  resize(sol.admittance, len(n.parent)),
		gain:        resize(sol.gain, len(n.parent)),
		curveOhm:    resize(sol.curveOhm, len(n.curves)),
		stringOhm:   resize(sol.stringOhm, len(n.strings)),
		worst:       none,
		side:        sol.side,
		amps:        sol.amps,
		carried:     resize(sol.carried, len(n.loops)),
		closing:     resize(sol.closing, len(n.loops)),
	}
	if len(n.loops) > 0 {
		sol.side, sol.amps = resize(sol.side, len(n.loopOf)), resize(sol.amps, len(n.loopOf))
		clear(sol.carried)
	}
	if err := sol.connectLoads(); err != nil {
		return nil, err
	}
	if err := sol.foldUp(); err != nil {
		return nil, err
	}
	sol.volts[0] = complex(sourceVolts, 0)
	if err := sol.closeLoops(2 * math.Pi * frequencyHz); err != nil {
		return nil, err
	}
	if err := sol.multiplyOut(); err != nil {
		return nil, err
	}
	sol.addUpLoads()
	return sol, nil
}

// connectLoads sums the admittances of the loads of each node.
func (s *Solution) connectLoads() error {
	n := s.network
	for i, c := range n.curves {
		s.curveOhm[i] = c.At(s.FrequencyHz)
	}
	clear(s.admittance)
	clear(s.stringOhm)
	for i, at := range n.loadNode {
		switch {
		case n.loadString[i] >= 0:
			s.stringOhm[n.loadString[i]] += s.loadOhm(LoadID(i)) + complex(n.loadSeries[i], 0)
		case n.loadCurve[i] < 0:
			s.admittance[at] += complex(1/(n.loadOhm[i]+n.loadSeries[i]), 0)
		default:
			s.admittance[at] += reciprocal(s.loadOhm(LoadID(i)) + complex(n.loadSeries[i], 0))
		}
	}
	for i, at := range n.strings {
		if normSquared(s.stringOhm[i]) < minLoadOhm*minLoadOhm {
			return &Error{at, fmt.Sprintf("solving a network: a series string is a short circuit at %g Hz", s.FrequencyHz)}
		}
		s.admittance[at] += reciprocal(s.stringOhm[i])
	}
	for i := range n.loops {
		if l := &n.loops[i]; !l.reverse {
			halfCapacitance := complex(0, math.Pi*s.FrequencyHz*l.leg.CFarad)
			s.admittance[l.far()] += halfCapacitance
			s.admittance[0] += halfCapacitance
		}
	}
	return nil
}

// foldUp carries every node's admittance to its parent, children first, and leaves in volts the ratio of a node's voltage
// to its parent's.
//
// Leg of impedance z before an admittance y: the ratio is 1/(1+z·y) and the admittance seen y/(1+z·y).
// Attenuator before y: the ratio is a·b and the admittance seen a²·b·y, from V_out = a·b·V_in and I_in = a·I_out.
func (s *Solution) foldUp() error {
	n := s.network
	omega := 2 * math.Pi * s.FrequencyHz
	for i := len(n.parent) - 1; i > 0; i-- {
		if i < len(n.loopOf) && n.loopOf[i] > 0 {
			if err := s.foldAlong(Node(i), omega); err != nil {
				return err
			}
			continue
		}
		y, parent := s.admittance[i], n.parent[i]
		if a := n.attenuator[i]; a >= 0 {
			f := n.attenuators[a]
			s.volts[i] = complex(f.ratio*f.through, 0)
			s.admittance[parent] += scaled(y, f.ratio*f.ratio*f.through)
			continue
		}
		halfCapacitance := complex(0, omega*n.legFarad[i]/2)
		y += halfCapacitance
		s.admittance[i] = y
		divider := 1 + n.legImpedance(Node(i), omega)*y
		if !(normSquared(divider) > cancelled*cancelled) {
			return s.resonates(Node(i))
		}
		ratio := reciprocal(divider)
		s.volts[i] = ratio
		s.admittance[parent] += y*ratio + halfCapacitance
	}
	return nil
}

func (s *Solution) resonates(node Node) error {
	return &Error{node, fmt.Sprintf("solving a network: the leg that leads here resonates without loss at %g Hz, a short circuit", s.FrequencyHz)}
}

// multiplyOut turns ratios into volts, parents first, and adds up what is lost on the way.
func (s *Solution) multiplyOut() error {
	n := s.network
	s.gain[0] = 1
	for i := range n.parent {
		passed := 1.0
		if i > 0 {
			parent := n.parent[i]
			if n.loopIndex(Node(i)) < 0 {
				s.volts[i] *= s.volts[parent]
			}
			if a := n.attenuator[i]; a >= 0 {
				passed = n.attenuators[a].ratio * n.attenuators[a].through
			}
			s.gain[i] = s.gain[parent] * passed
		}
		y, v := s.admittance[i], s.volts[i]
		// Written so that NaN fails too.
		if !(normSquared(v) < beyondSense*beyondSense && normSquared(y) < beyondSense*beyondSense) {
			return &Error{Node(i), fmt.Sprintf("solving a network: it resonates without loss at %g Hz", s.FrequencyHz)}
		}
		if i == 0 {
			continue
		}
		if n.attenuator[i] < 0 {
			s.CableWatts += s.LossWatts(Node(i))
		} else {
			s.AttenuatorWatts += s.LossWatts(Node(i))
		}
	}
	s.InputAdmittance = s.admittance[0]
	s.SourceAmps += s.admittance[0] * s.volts[0]
	if len(n.loops) > 0 {
		s.InputAdmittance = scaled(s.SourceAmps, 1/s.SourceVolts)
	}
	for i := range n.loops {
		s.CableWatts += s.LoopWatts(LoopID(i))
	}
	s.SourceWatts = real(s.SourceAmps) * s.SourceVolts
	return nil
}

// addUpLoads adds the power of the loads and finds the load node that has lost most in the cable.
func (s *Solution) addUpLoads() {
	n := s.network
	worst := math.Inf(1)
	for i, at := range n.loadNode {
		var amps2, ohm float64
		if n.loadCurve[i] < 0 && n.loadString[i] < 0 {
			ohm = n.loadOhm[i]
			total := ohm + n.loadSeries[i]
			amps2 = normSquared(s.volts[at]) / (total * total)
		} else {
			ohm = real(s.loadOhm(LoadID(i)))
			amps2 = normSquared(s.LoadAmps(LoadID(i)))
		}
		s.TotalLoadWatts += amps2 * ohm
		s.SeriesWatts += amps2 * n.loadSeries[i]

		if gain := s.gain[at]; gain >= silent {
			// Nodes that differ by rounding alone must not change places between machines: the first of them stays.
			if got := normSquared(s.volts[at]) / (gain * gain); got < worst*(1-1e-9) || s.worst == none {
				worst, s.worst = got, at
			}
		}
	}
}

// InputImpedance is what the amplifier sees, in ohms. It is not ok when nothing draws current: the line is then open.
func (s *Solution) InputImpedance() (ohm complex128, ok bool) {
	if !(normSquared(s.InputAdmittance) > 0) {
		return 0, false
	}
	return reciprocal(s.InputAdmittance), true
}

// Volts is the voltage at a node.
func (s *Solution) Volts(node Node) complex128 { return s.volts[node] }

// LossDB is how far a node lies below the source, attenuators included: 20·lg(V_source/V). It is not ok where no voltage
// arrives.
func (s *Solution) LossDB(node Node) (lossDB float64, ok bool) {
	if s.gain[node] < silent {
		return 0, false
	}
	return s.decibels(node, 1)
}

// CableLossDB is how far a node lies below the voltage it would have if cable had no impedance: what the cable alone
// costs, whatever the attenuators before it are set to. It is not ok where no voltage would arrive anyway. It is negative
// where cable inductance and capacitance raise the voltage.
func (s *Solution) CableLossDB(node Node) (lossDB float64, ok bool) {
	if s.gain[node] < silent {
		return 0, false
	}
	return s.decibels(node, s.gain[node])
}

func (s *Solution) decibels(node Node, gain float64) (float64, bool) {
	v := cmplx.Abs(s.volts[node])
	if !(v > 0) {
		return 0, false
	}
	return 20 * math.Log10(s.SourceVolts*gain/v), true
}

// Worst is the node with a load that has lost most in the cable, by CableLossDB. It is not ok when there is no load, or
// none that a voltage reaches. Of nodes that are equal within one part in 10⁹ it is the one whose load was added first.
func (s *Solution) Worst() (node Node, ok bool) { return s.worst, s.worst != none }

// LegAmps is the current that leaves a node's parent towards it: the current in the conductors of a leg, or into an
// attenuator. The current that charges the near half of a leg's own capacitance is not in it. In a ring it is negative,
// against the phase of the source, where current comes round from the far end. In a reverse return it is that of the go
// conductor; see ReturnAmps.
func (s *Solution) LegAmps(node Node) complex128 {
	if s.network.loopIndex(node) >= 0 {
		return s.amps[node]
	}
	amps := s.admittance[node] * s.volts[node]
	if a := s.network.attenuator[node]; a >= 0 {
		return scaled(amps, s.network.attenuators[a].ratio)
	}
	return amps
}

// LossWatts is the real power lost in what leads to a node: |I|²·R in a leg, half of R being in each conductor; in an attenuator Re(V_in·I_in*) −
// Re(V_out·I_out*), which is (1/b − 1) times the power it passes on.
func (s *Solution) LossWatts(node Node) float64 {
	n := s.network
	if a := n.attenuator[node]; a >= 0 {
		return (1/n.attenuators[a].through - 1) * real(s.admittance[node]) * normSquared(s.volts[node])
	}
	if i := n.loopIndex(node); i < 0 || !n.loops[i].reverse || node <= n.loops[i].path[n.loops[i].first] {
		return normSquared(s.LegAmps(node)) * n.legOhm[node]
	}
	return (normSquared(s.amps[node]) + normSquared(s.ReturnAmps(node))) * n.legOhm[node] / 2
}

// LoadVolts is the voltage across a load itself, without its series resistance.
func (s *Solution) LoadVolts(id LoadID) complex128 { return s.LoadAmps(id) * s.loadOhm(id) }

// LoadAmps is the current in a load.
func (s *Solution) LoadAmps(id LoadID) complex128 {
	n := s.network
	var total complex128
	if inString := n.loadString[id]; inString >= 0 {
		total = s.stringOhm[inString]
	} else {
		total = s.loadOhm(id) + complex(n.loadSeries[id], 0)
	}
	return s.volts[n.loadNode[id]] * reciprocal(total)
}

// LoadWatts is the real power in a load itself, |I|²·Re(Z), without its series resistance.
func (s *Solution) LoadWatts(id LoadID) float64 {
	return normSquared(s.LoadAmps(id)) * real(s.loadOhm(id))
}

// loadOhm is the impedance of a load itself, without its series resistance.
func (s *Solution) loadOhm(id LoadID) complex128 {
	n := s.network
	if curve := n.loadCurve[id]; curve >= 0 {
		return scaled(s.curveOhm[curve], n.loadOhm[id])
	}
	return complex(n.loadOhm[id], 0)
}

// reciprocal is 1/z. Go's own complex division guards against overflow and infinities that the bounds of the network keep
// out, at several times the cost.
func reciprocal(z complex128) complex128 {
	norm := normSquared(z)
	return complex(real(z)/norm, -imag(z)/norm)
}

func scaled(z complex128, factor float64) complex128 { return complex(factor*real(z), factor*imag(z)) }

func normSquared(z complex128) float64 { return real(z)*real(z) + imag(z)*imag(z) }

func resize[T any](buffer []T, length int) []T {
	return slices.Grow(buffer[:0], length)[:length]
}
