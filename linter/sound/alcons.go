package sound

import "math"

// ArticulationLossPercent is the articulation loss of consonants after V. M. A.
// Peutz, J. Audio Eng. Soc. 19 (1971), 915 (from memory):
//
//	200·D²·T²·N/(V·Q) up to a distance of 3.16·Dc, 9·T beyond
//
// D is the distance in metres, T the reverberation time at 1 to 2 kHz, V the volume,
// Q the directivity factor, N the number of equal loudspeakers whose power makes
// reverberation over those that give the listener direct sound, and Dc is
// √(Q·V/(N·T))·0.057 m. far says that the second form was used.
//
// Its limits: it takes one loudspeaker type, an exponential decay and no noise
// (25 dB or more below speech); it makes a jump where its forms meet; it knows
// nothing of frequencies. It is a cross-check of a speech transmission index, not
// a second opinion.
func ArticulationLossPercent(distanceMetres, reverberationSeconds, volumeM3, q, n float64) (percent float64, far bool) {
	critical := 0.057 * math.Sqrt(q*volumeM3/(n*reverberationSeconds))
	if distanceMetres > 3.16*critical {
		return 9 * reverberationSeconds, true
	}
	return 200 * distanceMetres * distanceMetres * reverberationSeconds * reverberationSeconds * n / (volumeM3 * q), false
}

// ArticulationLossOfSTI is the articulation loss in per cent that goes with a speech
// transmission index: 170.5405·e^(−5.419·STI) (Farrel Becker's relation).
func ArticulationLossOfSTI(sti float64) float64 { return 170.5405 * math.Exp(-5.419*sti) }

// STIOfArticulationLoss is the inverse of ArticulationLossOfSTI.
func STIOfArticulationLoss(percent float64) float64 { return math.Log(170.5405/percent) / 5.419 }
