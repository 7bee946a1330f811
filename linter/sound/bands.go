package sound

import "math"

// BandCount is the number of octave bands.
const BandCount = 7

// Bands holds one figure for each octave band from 125 Hz to 8 kHz.
type Bands [BandCount]float64

// NominalHz is what each octave band is called.
func NominalHz() [BandCount]int { return [...]int{125, 250, 500, 1000, 2000, 4000, 8000} }

// CentreHz is the exact mid-band frequency of band k: 1000 Hz · 10^(0.3·(k − 3)),
// as IEC 61260-1 has it for the base-ten series.
func CentreHz(k int) float64 { return 1000 * math.Pow(10, 0.3*float64(k-3)) }

// Flat gives every band the same figure.
func Flat(v float64) Bands {
	var b Bands
	for k := range b {
		b[k] = v
	}
	return b
}

// Plus adds band by band.
func (b Bands) Plus(other Bands) Bands {
	for k := range b {
		b[k] += other[k]
	}
	return b
}

// Shift adds the same to every band.
func (b Bands) Shift(dB float64) Bands { return b.Plus(Flat(dB)) }

// TotalDB is the energy sum of levels in bands: 10 lg Σ 10^(L/10).
func (b Bands) TotalDB() float64 {
	sum := 0.0
	for _, level := range b {
		sum += fromDB(level)
	}
	return toDB(sum)
}

// DBA is the A-weighted energy sum of levels in bands.
func (b Bands) DBA() float64 { return b.Plus(AWeightingDB()).TotalDB() }

// Energy turns levels into energies: 10^(L/10).
func (b Bands) Energy() Bands {
	for k, level := range b {
		b[k] = fromDB(level)
	}
	return b
}

// Levels turns energies into levels: 10 lg E; an energy of 0 is -Inf.
func (b Bands) Levels() Bands {
	for k, energy := range b {
		b[k] = toDB(energy)
	}
	return b
}

// EnergySumDB adds levels as energies: 10 lg Σ 10^(L/10). Of none it is -Inf.
func EnergySumDB(levelsDB ...float64) float64 {
	sum := 0.0
	for _, level := range levelsDB {
		sum += fromDB(level)
	}
	return toDB(sum)
}

// Over adds two spectra band by band as energies.
func Over(a, b Bands) Bands {
	for k := range a {
		a[k] = EnergySumDB(a[k], b[k])
	}
	return a
}

// AWeightingDB is the A-weighting at the exact mid-band frequencies:
//
//	R(f) = f4²·f⁴ / ((f² + f1²)·√((f² + f2²)·(f² + f3²))·(f² + f4²))
//	A(f) = 20 lg R(f) − 20 lg R(1000 Hz)
//
// IEC 61672-1, annex E (pole frequencies from memory).
func AWeightingDB() Bands {
	var b Bands
	for k := range b {
		b[k] = aWeightDB(CentreHz(k))
	}
	return b
}

func aWeightDB(hz float64) float64 { return 20 * math.Log10(aResponse(hz)/aResponse(1000)) }

func aResponse(hz float64) float64 {
	const f1, f2, f3, f4 = 20.598997, 107.65265, 737.86223, 12194.217
	f := hz * hz
	return f4 * f4 * f * f / ((f + f1*f1) * math.Sqrt((f+f2*f2)*(f+f3*f3)) * (f + f4*f4))
}

// SpeechDB is the long-term spectrum of male speech, with an A-weighted sum of
// levelDBA. Shape: IEC 60268-16:2020, male speech, −2.5, 0.5, 0, −6, −12, −18,
// −24 dB re the 500 Hz octave.
func SpeechDB(levelDBA float64) Bands {
	shape := Bands{-2.5, 0.5, 0, -6, -12, -18, -24}
	return shape.Shift(levelDBA - shape.DBA())
}

// OnAxisDB is how loud a loudspeaker is on its axis at 1 m, in each octave, when
// speech is played at a power:
//
//	L(k) = sensitivity(k) + 10 lg P + speech(k)
//
// where the A-weighted sum of speech(k) is 0 dB. With one sensitivity for all
// octaves the A-weighted level is therefore S + 10 lg P, which is how the trade
// reckons (common practice, no published source): a sensitivity is taken as the
// A-weighted level of speech at 1 W and 1 m. Power of 0 gives -Inf.
func OnAxisDB(sensitivityDB Bands, watts float64) Bands {
	return sensitivityDB.Plus(SpeechDB(toDB(watts)))
}

// NoiseDB is a spectrum with an A-weighted sum of levelDBA for a noise of which
// nothing else is known: it falls 5 dB with each octave, as the noise of people
// and ventilation roughly does (common practice, no published source).
func NoiseDB(levelDBA float64) Bands {
	shape := Bands{15, 10, 5, 0, -5, -10, -15}
	return shape.Shift(levelDBA - shape.DBA())
}

func toDB(ratio float64) float64 { return 10 * math.Log10(ratio) }

// fromDB is 10^(dB/10). It is asked for every listener many times, and an exponential
// takes an eighth of the time of a power.
func fromDB(dB float64) float64 { return math.Exp(dB * (math.Ln10 / 10)) }
