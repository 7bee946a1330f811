package signal

import "math"

// OppositeDB is the level of two alike signals that arrive in opposite polarity,
// against what they make in the same one: 20·lg((1 − r) / (1 + r)) with
// r = 10^(−d/20), d being how many dB one is below the other. Phasors of equal
// frequency add as vectors (circuit theory). For d = 0 it is −∞.
func OppositeDB(differenceDB float64) float64 {
	r := math.Pow(10, -math.Abs(differenceDB)/20)
	return 20 * math.Log10((1-r)/(1+r))
}
