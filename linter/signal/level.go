package signal

import "math"

// DBV gives a voltage (r.m.s., above 0) as a level in dB re 1 V.
func DBV(volts float64) float64 { return 20 * math.Log10(volts) }

// InHandDB is how much an input that gives rated output for a level of
// sensitivityDBV, at full gain, can turn a signal down before rated output is no
// longer reached; below 0 it is what is lacking. ChangeDB is what happens to the
// signal before the gain control: a pad of 20 dB is −20.
//
//	in hand = level + change − sensitivity
//
// That is what sensitivity means on a data sheet.
func InHandDB(levelDBV, changeDB, sensitivityDBV float64) float64 {
	return levelDBV + changeDB - sensitivityDBV
}

// InHandThroughDB is what is in hand at a source over a chain of inputs: at each,
// what is in hand there, from the source on. An input that lacks something passes
// that on to none: what is in hand before it cannot be given to it, as the output
// in between gives its rated level and no more. What is in hand behind it can be
// lent to the ones before it.
func InHandThroughDB(stagesDB []float64) float64 {
	if len(stagesDB) == 0 {
		return math.Inf(1)
	}
	total := stagesDB[0]
	for _, inHand := range stagesDB[1:] {
		total += max(0, inHand)
	}
	return total
}
