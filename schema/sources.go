package schema

import "loudlint/schema/quantity"

// Kinds of source.
const (
	KindMicrophone = "microphone"
	KindMusic      = "music"
	KindMessage    = "message"
	KindTelephone  = "telephone"
)

// Source is a microphone, music, a stored message or a telephone.
type Source struct {
	Part
	Kind  string
	Model Value[string]
	SourceData
	Feed
	Also           []*Feed
	Priority       Value[int] // 1 is the highest
	Channels       Value[string]
	StandsIn       Value[string]
	Position       List[quantity.Length]
	TalkerDistance Value[quantity.Length]
	Lines          Choice
	Selectable     Value[bool]
	StartedBy      Value[string]
	Overrides      []Override
	ModelPart      *MicrophoneModel
}

// Announces tells that the source is speech meant to be heard over music:
// everything but music.
func (s *Source) Announces() bool { return s.Kind != KindMusic }

// Feed is where a source goes and how it gets there.
type Feed struct {
	Part      // of the `also` block; the source itself for its first feed
	Into      Value[string]
	Input     Value[string]
	Connector Value[string]
	Lead      Value[quantity.Length]
	SummedBy  Value[string]

	// UnitPart and InputPart are what the names refer to; nil where the source
	// does not say.
	UnitPart  *Unit
	InputPart *Input
}

// SourceData is what a data sheet says of a source.
type SourceData struct {
	Level     Value[quantity.Level]
	Impedance Value[quantity.Resistance]
	Balanced  Value[bool]
	Trigger   Value[string] // "contact", "signal", "none"
	Phantom   Value[string]
	Isolation Value[string]
	Selects   Value[int]
	Exposure  Value[quantity.Ingress]
	Fits      Value[string] // the connector the model comes with
}

// MicrophoneModel is an entry of a catalogue.
type MicrophoneModel struct {
	Part
	Note Value[string]
	SourceData
}

// MuteLink is what a fire panel does to the audio. It sits on trigger
// terminals and takes no audio input.
type MuteLink struct {
	Part
	Into       Value[string]
	Input      Value[string]
	Contact    Value[string] // "opens in alarm", "closes in alarm"
	Mutes      Choice        // sources
	Latching   Value[bool]
	RestoredBy Value[string]
	Joint      Value[string]
	Monitored  Value[bool]
	Tested     Value[string]

	UnitPart  *Unit
	InputPart *Input
}

// Group names a list of lines.
type Group struct {
	Part
	Lines List[string]
}
