package conductor

import "math"

// magneticConstant is µ0 in henry per metre, as it was defined until 2019 and still holds to ten digits.
const magneticConstant = 4e-7 * math.Pi

// Pair is what two-core cable without a data sheet has per metre of route, from the least to the most. Lamp cord has 0.1
// to 0.2 µH and 10 to 20 pF a foot (read in copies of an encyclopaedia's article "Speaker wire"); samples of 12 to 18 AWG
// measured 0.13 to 0.21 µH and 16 to 28 pF a foot (read: table in a loudspeaker's owner's manual). The span holds both.
// Screened cable can have more capacitance.
type Pair struct {
	LeastHenry, MostHenry float64
	LeastFarad, MostFarad float64
}

// TypicalPair gives the span.
func TypicalPair() Pair {
	return Pair{LeastHenry: 0.33e-6, MostHenry: 0.69e-6, LeastFarad: 33e-12, MostFarad: 92e-12}
}

// CircleHenry is the inductance of a circle made of some metres of one round conductor, μ0·R·(ln(8R/a) − 7/4) with R the
// circle's radius, a the conductor's and the current spread evenly over it: Grover, "Inductance Calculations", chapter 16,
// from memory. No plane loop of as much conductor encloses more, so that this is taken for the most that one may have. 0
// for a loop too short to be one.
func CircleHenry(metres, areaMM2 float64) float64 {
	radius, thickness := metres/(2*math.Pi), math.Sqrt(areaMM2/math.Pi)/1000
	if !(radius > thickness) {
		return 0
	}
	return magneticConstant * radius * (math.Log(8*radius/thickness) - 1.75)
}
