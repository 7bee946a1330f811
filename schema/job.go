package schema

import (
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// System is the job as a whole. A design without a system block has one with
// an empty Header.
type System struct {
	Part
	Reference            Value[string]
	Revision             Value[string]
	Duty                 Value[string]
	Mains                Value[quantity.Voltage]
	WiringRules          Value[string]
	ConductorTemperature Value[quantity.Temperature]
	Units                Value[string]
	Polarity             Value[string]
}

// Emergency tells that the duty includes emergency announcements.
func (s *System) Emergency() bool {
	return s.Duty.V == "emergency" || s.Duty.V == "emergency, announcements and music"
}

// US tells that results are printed in US units.
func (s *System) US() bool { return s.Units.V == "US" }

// Space is where people listen.
type Space struct {
	Part
	Like            Value[string]
	Alike           Value[int]
	Length          Value[quantity.Length]
	Width           Value[quantity.Length]
	Area            Value[quantity.FloorArea]
	Outline         []List[quantity.Length]
	Height          Value[quantity.Length]
	Heights         []List[quantity.Length] // where each begins along the length, and the height from there on
	Listeners       Value[string]           // "standing", "seated"
	Noise           Noise
	WantedOverNoise Value[quantity.Gain]
	WantedLevel     Value[quantity.SoundLevel]
	Programme       Value[quantity.SoundLevel]
	MutedBy         Value[string]
	Reverberation   Spectrum[quantity.Duration]
	Surfaces        []*Surface
	Outdoors        Value[bool]
	PartlyOpen      Value[bool]
	Exposure        Value[quantity.Ingress]
	Ceiling         Value[string]
	AirHandlingVoid Value[bool]
	Layout          Value[Layout]
	Temperature     Value[quantity.Temperature]
	Humidity        Value[quantity.Percent]
}

// Noise is a level in dBA, or one in dB for each octave.
type Noise struct {
	Single Value[quantity.SoundLevel]
	Bands  []Band[quantity.SoundPressureLevel]
	Span   source.Span
}

// Set tells that the noise was written.
func (n Noise) Set() bool { return n.Span.File != nil }

// Patterns of a layout.
const (
	LayoutSquare    = "square"    // an even grid
	LayoutHexagonal = "hexagonal" // every second row moved by half a spacing
	LayoutRows      = "rows"      // so many rows of so many
)

// Layout is how loudspeakers without positions are laid out in a space.
type Layout struct {
	Pattern string // LayoutSquare, LayoutHexagonal or LayoutRows
	// Rows along the length with Columns loudspeakers in each, of LayoutRows.
	Rows, Columns int
}

// Count is how many equal spaces the block stands for.
func (s *Space) Count() int { return s.Alike.Or(1) }

// Surface is part of what encloses a space.
type Surface struct {
	Part
	Area       Value[quantity.FloorArea]
	Material   Value[string]
	Absorption Spectrum[float64]
}

// Reading is what a meter said.
type Reading struct {
	Part
	Line                  Value[string]
	At                    Value[string]
	Beyond                Value[string]
	Space                 Value[string]
	Impedance             Value[Impedance]
	Frequency             Value[quantity.Frequency]
	Instrument            Value[string]
	Attenuators           Value[string]
	AmplifierDisconnected Value[bool]
	Volts                 Value[quantity.Voltage]
	Signal                Value[string]
	Earth                 Value[quantity.Resistance]
	Insulation            Value[quantity.Resistance]
	Level                 Value[quantity.SoundLevel]
	Date                  Value[string]
}

// Impedance is a meter's figure. It alone may stand without a unit, because
// people write down what the display showed.
type Impedance struct {
	Ohm      quantity.Resistance // meaningless when Unitless
	Number   float64             // what was written when Unitless
	Unitless bool
}

// Supply is mains and standby power.
type Supply struct {
	Part
	Feeds        List[string]
	Breaker      Value[quantity.Current]
	Battery      Value[quantity.Voltage]
	Capacity     Value[quantity.Charge]
	Standby      Value[quantity.Duration]
	Announcement Value[quantity.Duration]
	Ageing       Value[float64]
	Relays       Value[quantity.Rail]
}

// Safety is what the design states about safe work.
type Safety struct {
	Part
	LineTerminals  Value[string] // "covered", "open"
	Isolation      Value[string] // "before work", "none"
	MainsSeparated Value[bool]
	Earthed        Value[bool]
	HighestLevel   Value[quantity.SoundLevel]
	WorkAtHeight   Value[string]
	FittedBy       Value[string]
	LocalRules     Value[string]
	EmergencyBy    Value[string]
	EmergencyRules Value[string]
}

// Item is another thing to buy.
type Item struct {
	Part
	Quantity Value[int]
	Location Value[string]
	Note     Value[string]
}

// Address names one part of the system with ordinary attributes.
type Address struct {
	Amplifier   Value[string]
	Mixer       Value[string]
	Channel     Value[string]
	Output      Value[string]
	Line        Value[string]
	Loudspeaker Value[string]
	Attenuator  Value[string]
	Source      Value[string]
	MuteLink    Value[string]
	Space       Value[string]
	Supply      Value[string]
	Reading     Value[string]
}

// Addressed is one attribute of an Address: the kind of part and its name.
type Addressed struct {
	Kind string // "amplifier", "line", … "source" stands for every kind of source
	Name Value[string]
}

// Parts lists what an address names, from the outside in; nothing for the job as
// a whole.
func (a *Address) Parts() []Addressed {
	var named []Addressed
	for _, part := range []Addressed{
		{KindAmplifier, a.Amplifier}, {KindMixer, a.Mixer}, {"channel", a.Channel}, {"output", a.Output},
		{"line", a.Line}, {"attenuator", a.Attenuator}, {"loudspeaker", a.Loudspeaker},
		{"source", a.Source}, {"mute_link", a.MuteLink}, {"space", a.Space}, {"supply", a.Supply}, {"reading", a.Reading},
	} {
		if part.Name.Set() {
			named = append(named, part)
		}
	}
	return named
}

// Deviation is an agreed departure from a check; its label is the check.
// Whether that check exists, and whether the departure has a reason, is for those
// to say who judge.
type Deviation struct {
	Part
	Address
	Reason     Value[string]
	AcceptedBy Value[string]
	Until      Value[quantity.Date] // the last day it holds
}

// Criteria is a set of limits for a job.
type Criteria struct {
	Part
	Limits []*Limit
}

// Limit sets parameters of one check; its label is the check. Which settings
// exist is known to the checks, not to the dialect.
type Limit struct {
	Part
	Settings []Setting
}

// Setting is one attribute of a Limit as it was written.
type Setting struct {
	Name     string
	NameSpan source.Span
	Value    Value[string] // the text; a number or true/false in its written form
	Quoted   bool          // a text in quotes, as opposed to a bare number or true/false
}

// Criterion is a check of the consultant's own.
type Criterion struct {
	Part
	Each     Value[string]
	When     Value[Expression] // a part of which it does not hold is not asked
	Expect   Value[Expression]
	Message  Value[[]MessagePiece]
	Severity Value[string]
}

// Use brings another file.
type Use struct {
	Part
	File Value[string]
}
