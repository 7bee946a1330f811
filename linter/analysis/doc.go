// Package analysis turns a design into a system: every figure that follows from
// the text, worked out once, each with a trace of what made it.
//
// It owns the step from what is written (schema.Design) to what follows
// (System): loads, impedances, volts and watts at every loudspeaker, cable loss,
// the way of every source to every line, and what is heard in every space. The
// physics itself is in linter/circuit, linter/conductor and linter/sound; here the design is put into their terms.
// It holds no limits, no wording of findings and no judgement: those are in
// rules. linter/check, linter, rules and the writers may import it; it imports
// schema and the packages of pure computation.
//
// A figure that cannot be known says what is missing and where that would be
// written. Nothing is guessed: where a computation goes on with an assumption,
// the figure lists it.
package analysis
