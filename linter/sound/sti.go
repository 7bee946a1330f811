package sound

import "math"

// ModulationCount is the number of modulation frequencies.
const ModulationCount = 14

// ModulationHz are the modulation frequencies of IEC 60268-16, annex A.
func ModulationHz() [ModulationCount]float64 {
	return [...]float64{0.63, 0.80, 1.00, 1.25, 1.60, 2.00, 2.50, 3.15, 4.00, 5.00, 6.30, 8.00, 10.0, 12.5}
}

// MTF is a modulation transfer function: what is left of the modulation of speech,
// 0 to 1, in each octave at each modulation frequency.
type MTF [BandCount][ModulationCount]float64

// Transmission is a speech transmission index with what it is made of.
type Transmission struct {
	STI float64 // 0 to 1
	MTI Bands   // modulation transfer index of each octave
}

// ReverberantMTF is that of sound that decays exponentially, without direct sound:
//
//	m(F) = 1/√(1 + (2π·F·T/13.8)²)
//
// IEC 60268-16; T in seconds for each octave.
func ReverberantMTF(reverberation Bands) MTF {
	return DirectAndReverberantMTF(Flat(0), Flat(1), reverberation)
}

// DirectAndReverberantMTF is that of a direct sound followed at once by an
// exponential decay, of these energies (in any unit):
//
//	m(F) = |D + R/(1 + j·2π·F·T/13.8)|/(D + R)
//
// T. Houtgast, H. J. M. Steeneken and R. Plomp, Acustica 46 (1980), 60 (from memory).
// With neither it is 0.
func DirectAndReverberantMTF(direct, reverberant, reverberation Bands) MTF {
	var m MTF
	for k := range m {
		for f, hz := range ModulationHz() {
			m[k][f] = modulation(direct[k], 0, reverberant[k], 0, turns(hz, reverberation[k]), direct[k]+reverberant[k])
		}
	}
	return m
}

// turns is 2π·F·T/13.8, rounded as the standard has it.
func turns(hz, reverberationSeconds float64) float64 {
	return 2 * math.Pi * hz * reverberationSeconds / 13.8
}

// modulation is |d + r/(1 + j·x)|/energy for complex d and r.
func modulation(dRe, dIm, rRe, rIm, x, energy float64) float64 {
	if !(energy > 0) {
		return 0
	}
	y := 1 / (1 + x*x)
	re := dRe + (rRe+rIm*x)*y
	im := dIm + (rIm-rRe*x)*y
	return math.Sqrt(re*re+im*im) / energy
}

// WithNoise is m · S/(S + N) for the levels of speech and noise in each octave.
func (m MTF) WithNoise(speechDB, noiseDB Bands) MTF {
	for k := range m {
		scale(&m[k], share(fromDB(speechDB[k]), fromDB(noiseDB[k])))
	}
	return m
}

// WithHearing takes off what a listener's ear does: it is masked by the octave
// below, and does not hear what is below its threshold:
//
//	m · I/(I + Iam + Irt)
//
// IEC 60268-16:2020, annex A. totalDB is the level of everything heard in each
// octave, speech and noise. Iam is the intensity of the octave below times
// 10^(a/10), a = 0.5·L − 65 below 63 dB, 1.8·L − 146.9 up to 67 dB, 0.5·L − 59.8 up
// to 100 dB and −10 above; Irt is that of the reception threshold.
func (m MTF) WithHearing(totalDB Bands) MTF {
	threshold := Bands{46, 27, 12, 6.5, 7.5, 8, 12}
	for k := range m {
		lost := fromDB(threshold[k])
		if k > 0 {
			lost += fromDB(totalDB[k-1] + maskingDB(totalDB[k-1]))
		}
		scale(&m[k], share(fromDB(totalDB[k]), lost))
	}
	return m
}

func maskingDB(levelDB float64) float64 {
	switch {
	case levelDB < 63:
		return 0.5*levelDB - 65
	case levelDB < 67:
		return 1.8*levelDB - 146.9
	case levelDB < 100:
		return 0.5*levelDB - 59.8
	}
	return -10
}

// share is part/(part + rest), 0 of nothing.
func share(part, rest float64) float64 {
	if !(part > 0) {
		return 0
	}
	return part / (part + rest)
}

func scale(octave *[ModulationCount]float64, by float64) {
	for f := range octave {
		octave[f] *= by
	}
}

// Transmission is the speech transmission index after IEC 60268-16:2020, annex A,
// male speech:
//
//	SNR = 10 lg(m/(1 − m)) within ±15 dB, TI = (SNR + 15)/30, MTI = mean of 14 TI
//	STI = Σ α·MTI(k) − Σ β·√(MTI(k)·MTI(k+1)), at most 1
func (m MTF) Transmission() Transmission {
	alpha := Bands{0.085, 0.127, 0.230, 0.233, 0.309, 0.224, 0.173}
	beta := [BandCount - 1]float64{0.085, 0.078, 0.065, 0.011, 0.047, 0.095}
	var t Transmission
	for k := range m {
		for _, v := range m[k] {
			t.MTI[k] += transmissionIndex(v) / ModulationCount
		}
		t.STI += alpha[k] * t.MTI[k]
	}
	for k, b := range beta {
		t.STI -= b * math.Sqrt(t.MTI[k]*t.MTI[k+1])
	}
	t.STI = max(0, min(1, t.STI))
	return t
}

func transmissionIndex(m float64) float64 {
	switch {
	case !(m > 0):
		return 0
	case m >= 1:
		return 1
	}
	return (max(-15, min(15, toDB(m/(1-m)))) + 15) / 30
}

// Letter is the qualification band of a speech transmission index, A+ (best) to U,
// after IEC 60268-16:2011 and 2020, annex F.
func Letter(sti float64) string {
	letters := [...]string{"A+", "A", "B", "C", "D", "E", "F", "G", "H", "I", "J"}
	for i, letter := range letters {
		// Edges at 0.76, 0.72 … 0.36. A figure one part in 10⁹ below an edge is on it.
		if sti >= (0.76-0.04*float64(i))*(1-1e-9) {
			return letter
		}
	}
	return "U"
}

// Rating is the word for a speech transmission index: bad below 0.30, poor below
// 0.45, fair below 0.60, good below 0.75, else excellent (IEC 60268-16:1998).
func Rating(sti float64) string {
	words := [...]struct {
		from float64
		word string
	}{{0.75, "excellent"}, {0.60, "good"}, {0.45, "fair"}, {0.30, "poor"}}
	for _, w := range words {
		if sti >= w.from*(1-1e-9) {
			return w.word
		}
	}
	return "bad"
}
