// Package circuit solves the network on one amplifier output: cable, loudspeakers and attenuators wired as a tree, with
// rings and reverse returns laid on it.
//
// It owns the electrical model of a loudspeaker line and its exact solution at one frequency: input impedance, volts at
// every node, current in every leg, watts in every load, watts lost on the way. Numbers go in and numbers come out, in SI
// units; volts and amperes are r.m.s., phases are relative to the source. It knows nothing of designs, files, units of
// people, limits or wording, and imports nothing of the project. linter/analysis is its user; anything else that needs a
// line solved may import it too.
//
// # Model
//
// Node 0 is the amplifier's terminals, an ideal voltage source. Every other node is made by a two-port that leads to it
// from a node that exists already:
//
//   - a leg of cable, a series R + jωL with half of its capacitance across each end (the pi form of a short line; a good
//     model while the cable is much shorter than the wavelength, which at 20 kHz is above 10 km);
//   - an attenuator, an ideal autotransformer with a loss: V_out = a·b·V_in and I_in = a·I_out.
//
// Loads hang across nodes, any number on each: a transformer tap (V²/P ohm), a resistance, an impedance curve, each with an
// optional resistance in series, or a string of loads wired in series.
//
// # Method
//
// Because a node is always made after the node it hangs from, parents have lower numbers than their children. One pass
// over the nodes from the last to the first folds the admittance of each into its parent; one pass from the first to the
// last multiplies the voltage ratios out. Both are loops over arrays: time and memory are linear in the number of nodes
// and loads, and no depth of the tree can exhaust a stack. This is the ladder method of the textbooks, exact for linear
// loads.
//
// A ring (a line fed from both ends) is solved on its tree: with the closing leg open, then adding the answer to the
// current that closing it drives through the far end (compensation theorem). A reverse return (the return conductor begins
// at the first device and comes home from the last) is, between its devices, an ordinary line fed with half the current from
// each end; two passes over the tree and one equation for the current solve it. The derivations stand beside closeRing and
// closeReverse. Both walk the path from the terminals to the far end and back once more: still linear, whatever hangs on
// the way.
//
// # What is not covered
//
// Loads are linear and the source has no impedance of its own (a first leg can stand for one). Conductors have their
// direct-current resistance at every frequency; skin effect, by the Bessel formula of a round wire, moves a line loss of
// 10 % by less than 0.06 dB up to 2.5 mm² and 10 kHz.
//
// A ring closes at the terminals, whose voltage is given; one that closes elsewhere is not taken, nor are two with a leg in
// common or one with an attenuator in it. Both conductors of a ring's legs are taken to be alike, as in a cable, so that
// the currents in them are. In a reverse return they are not, and what the conductors enclose is a wide loop, of which the
// inductance depends on where they lie; legs count with the inductance of their cable alone.
package circuit
