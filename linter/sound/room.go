package sound

import "math"

// sabine is 24·ln 10/c at 343 m/s, in s/m: T = sabine·V/A.
const sabine = 0.161

// Room is what the reverberant field needs to know of an enclosed space.
type Room struct {
	VolumeM3 float64
	// SurfaceM2 is the area of everything that bounds it. 0 is not known: then the
	// loss at the first reflection is left out, which errs on the reverberant side.
	SurfaceM2 float64
	// Reverberation is the reverberation time of each octave in seconds, air and all.
	Reverberation Bands
	Theory        Theory
}

// Theory is how the reverberant field is spread over a room.
type Theory int

const (
	// Revised lets the reverberant sound of each loudspeaker begin when its direct
	// sound arrives, so that less is left of it further away:
	//
	//	E = W·(4/A)·e^(−13.8·r/(c·T))
	//
	// M. Barron and L.-J. Lee, "Energy relations in concert auditoriums I",
	// J. Acoust. Soc. Am. 84 (1988), 618: 31200·T/V·e^(−0.04·r/T) re the direct
	// sound at 10 m (from memory). Close to a loudspeaker and in small rooms it
	// comes to the same as Uniform.
	Revised Theory = iota
	// Uniform is as loud everywhere:
	//
	//	E = W·4/R, R = A/(1 − A/S)
	//
	// H. F. Hopkins and N. R. Stryker, Proc. IRE 36 (1948), 315 (from memory):
	// L = Lw + 10 lg(Q/(4·π·r²) + 4/R).
	Uniform
)

// AbsorptionM2 is the equivalent absorption area of each octave: A = 0.161·V/T
// (Sabine).
func (r Room) AbsorptionM2() Bands {
	var b Bands
	for k, t := range r.Reverberation {
		b[k] = sabine * r.VolumeM3 / t
	}
	return b
}

// ConstantM2 is the room constant of each octave, R = A/(1 − A/S), or A where the
// surface is not known. It is +Inf where the room absorbs as much as it has surface.
func (r Room) ConstantM2() Bands {
	b := r.AbsorptionM2()
	for k, a := range b {
		b[k] = RoomConstantM2(a, r.SurfaceM2)
	}
	return b
}

// RoomConstantM2 is R = S·ā/(1 − ā) for an absorption A = S·ā; A itself where the
// surface is 0 (not known), +Inf from ā = 1 on.
func RoomConstantM2(absorptionM2, surfaceM2 float64) float64 {
	switch {
	case surfaceM2 <= 0:
		return absorptionM2
	case absorptionM2 >= surfaceM2:
		return math.Inf(1)
	}
	return absorptionM2 / (1 - absorptionM2/surfaceM2)
}

// CriticalDistanceMetres is where direct and reverberant sound are equally loud on
// the axis of a loudspeaker: √(Q·R/(16·π)) = 0.141·√(Q·R).
func CriticalDistanceMetres(q, roomConstantM2 float64) float64 {
	return math.Sqrt(q * roomConstantM2 / (16 * math.Pi))
}

// SchroederHz is the frequency above which a room has enough modes to be treated
// as a diffuse field: 2000·√(T/V) (M. R. Schroeder 1962; from memory).
func SchroederHz(reverberationSeconds, volumeM3 float64) float64 {
	return 2000 * math.Sqrt(reverberationSeconds/volumeM3)
}

// Surface is one kind of surface in a room.
type Surface struct {
	AreaM2     float64
	Absorption Bands // absorption coefficients, 0 to 1
}

// MeanAbsorption is ā = Σ S·α/Σ S in each octave.
func MeanAbsorption(surfaces []Surface) (mean Bands, surfaceM2 float64) {
	for _, s := range surfaces {
		surfaceM2 += s.AreaM2
		for k, a := range s.Absorption {
			mean[k] += s.AreaM2 * a
		}
	}
	for k := range mean {
		mean[k] /= surfaceM2
	}
	return mean, surfaceM2
}

// SabineSeconds is the reverberation time after Sabine with the air's share:
// T = 0.161·V/(S·ā + 4·m·V).
func SabineSeconds(volumeM3 float64, surfaces []Surface, air Air) Bands {
	return reverberation(volumeM3, surfaces, air, func(mean float64) float64 { return mean })
}

// EyringSeconds is the reverberation time after Eyring with the air's share:
// T = 0.161·V/(−S·ln(1 − ā) + 4·m·V) (C. F. Eyring 1930; IEC 60050-801). It is the
// truer one where a room absorbs much, and 0 where it absorbs all.
func EyringSeconds(volumeM3 float64, surfaces []Surface, air Air) Bands {
	return reverberation(volumeM3, surfaces, air, func(mean float64) float64 { return -math.Log1p(-min(mean, 1)) })
}

func reverberation(volumeM3 float64, surfaces []Surface, air Air, exponent func(mean float64) float64) Bands {
	mean, surfaceM2 := MeanAbsorption(surfaces)
	m := air.IntensityPerMetre()
	for k := range mean {
		mean[k] = sabine * volumeM3 / (surfaceM2*exponent(mean[k]) + 4*m[k]*volumeM3)
	}
	return mean
}

// Doubt is a reason why a diffuse field is not what a room has.
type Doubt int

const (
	// TooAbsorbent is a mean absorption above 0.5 at 500 Hz to 2 kHz: hardly
	// anything is reflected often enough to become diffuse.
	TooAbsorbent Doubt = iota + 1
	// TooFlat is a room that is more than 5 times as long or wide as high: sound
	// decays with distance and in two dimensions.
	TooFlat
	// TooSmall is a room whose Schroeder frequency is above the 250 Hz octave.
	TooSmall
)

// Doubts says why a diffuse field is doubtful in a room with sides of these
// lengths. The bounds are common practice, without a published source, except
// SchroederHz.
func (r Room) Doubts(lengthMetres, widthMetres, heightMetres float64) []Doubt {
	var doubts []Doubt
	if r.SurfaceM2 > 0 {
		a := r.AbsorptionM2()
		if (a[2]+a[3]+a[4])/3 > 0.5*r.SurfaceM2 {
			doubts = append(doubts, TooAbsorbent)
		}
	}
	if max(lengthMetres, widthMetres) > 5*heightMetres {
		doubts = append(doubts, TooFlat)
	}
	if SchroederHz(r.Reverberation[1], r.VolumeM3) > CentreHz(1) {
		doubts = append(doubts, TooSmall)
	}
	return doubts
}
