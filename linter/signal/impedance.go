package signal

import "math"

// Parallel is the impedance of several inputs, or several outputs, wired
// together: 1 / (1/Z₁ + 1/Z₂ + …), circuit theory. Of none it is infinite.
func Parallel(ohms ...float64) float64 {
	sum := 0.0
	for _, z := range ohms {
		sum += 1 / z
	}
	return 1 / sum
}

// LoadingDB is the level a source loses by the impedance it drives, against none:
// 20·lg(Z / (Z + Zs)), the voltage divider of circuit theory.
func LoadingDB(sourceOhm, loadOhm float64) float64 {
	return 20 * math.Log10(loadOhm/(loadOhm+sourceOhm))
}

// Combiner is a passive sum: a resistor in each leg, all legs joined at an input.
// The outputs that drive it count as having no impedance of their own.
type Combiner struct {
	Legs     int
	LegOhm   float64
	ShuntOhm float64 // the input's impedance; infinite for none
}

// junction is what one leg drives: the input and, through their legs, the outputs
// of all others.
func (c Combiner) junction() float64 {
	return 1 / (float64(c.Legs-1)/c.LegOhm + 1/c.ShuntOhm)
}

// OneDB is the level at the input against that of a leg when the other legs are
// silent. Superposition, with the other outputs as shorts.
func (c Combiner) OneDB() float64 { return LoadingDB(c.LegOhm, c.junction()) }

// UnlikeDB is the level when all legs carry signals of equal level that have
// nothing in common: powers add. Left and right of music lie between that and
// the sum of signals that are alike, 10·lg(legs) higher.
func (c Combiner) UnlikeDB() float64 { return c.OneDB() + 10*math.Log10(float64(c.Legs)) }

// LoadOhm is what an output sees through its leg while the others are silent.
func (c Combiner) LoadOhm() float64 { return c.LegOhm + c.junction() }
