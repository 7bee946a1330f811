package sound

import "math"

// FeedbackMarginDB is how far a system is kept below the gain at which it begins to
// ring: 6 dB (common practice: D. Davis and C. Davis, Sound System Engineering; from
// memory).
const FeedbackMarginDB = 6

// GainDistances are the distances that decide about feedback, in metres.
type GainDistances struct {
	TalkerToMicrophone      float64 // Ds
	LoudspeakerToMicrophone float64 // D1
	LoudspeakerToListener   float64 // D2
	TalkerToListener        float64 // D0
	// Within, where above 0, is the critical distance: beyond it the level falls no
	// more, so that longer distances count as this long.
	Within float64
}

// PotentialGainDB is how much louder a listener can hear a talker with the system
// than without, before it rings:
//
//	PAG = 20 lg(D1·D0/(D2·Ds)) − 10 lg NOM − margin
//
// NOM is the number of open microphones. D. Davis and C. Davis, Sound System
// Engineering (from memory). It takes loudspeaker and microphone as equally
// sensitive in all directions.
func PotentialGainDB(d GainDistances, openMicrophones int, marginDB float64) float64 {
	return 20*math.Log10(d.within(d.LoudspeakerToMicrophone)*d.within(d.TalkerToListener)/
		(d.within(d.LoudspeakerToListener)*d.within(d.TalkerToMicrophone))) - OpenMicrophonesDB(openMicrophones) - marginDB
}

func (d GainDistances) within(metres float64) float64 {
	if d.Within > 0 {
		return min(metres, d.Within)
	}
	return metres
}

// NeededGainDB is the gain by which the furthest listener hears a talker as loud as
// one stands at equivalentMetres: NAG = 20 lg(D0/EAD). Source as PotentialGainDB.
func NeededGainDB(talkerToListenerMetres, equivalentMetres float64) float64 {
	return 20 * math.Log10(talkerToListenerMetres/equivalentMetres)
}

// OpenMicrophonesDB is what open microphones cost of the gain: 10 lg NOM.
func OpenMicrophonesDB(openMicrophones int) float64 { return toDB(float64(max(1, openMicrophones))) }

// GainFromLevelsDB is how loud, at most, a listener can hear a talker over the system: its
// loudspeakers may give the microphone what the talker gives it, less open
// microphones and margin, and give the listener as much more (or less) as the field
// has it:
//
//	L(listener) = L(talker at the microphone) − 10 lg NOM − margin + field(listener) − field(microphone)
//
// It is PotentialGainDB before distances are put in, and holds in any field.
func GainFromLevelsDB(talkerAtMicrophoneDB, fieldAtListenerDB, fieldAtMicrophoneDB float64, openMicrophones int, marginDB float64) float64 {
	return talkerAtMicrophoneDB - OpenMicrophonesDB(openMicrophones) - marginDB + fieldAtListenerDB - fieldAtMicrophoneDB
}
