package schema

import "loudlint/schema/quantity"

// Kinds of unit.
const (
	KindAmplifier = "amplifier"
	KindMixer     = "mixer"
)

// Unit is an amplifier or a mixer: something with inputs and outputs.
type Unit struct {
	Part
	Kind  string // KindAmplifier or KindMixer
	Model Value[string]
	UnitData
	Master    Value[quantity.Gain]
	Sends     []*Send
	Overrides []Override
	// ModelPart is the model the unit names, nil without one.
	ModelPart *UnitModel
}

// UnitData is what a data sheet says of a unit and a design may say too.
type UnitData struct {
	Class           Value[string] // kind: "mixer amplifier", …
	RatedPower      Value[quantity.Power]
	LowestImpedance Value[quantity.Resistance]
	HighPass        Value[quantity.Frequency]
	LowestFrequency Value[quantity.Frequency]
	WiringClass     Value[string]
	Routing         Value[string]
	MainsIdle       Value[quantity.Power]
	MainsFull       Value[quantity.Power]
	BatteryVolts    Value[quantity.Voltage]
	BatteryIdle     Value[quantity.Current]
	BatteryFull     Value[quantity.Current]
	Relays          Value[quantity.Rail]
	Exposure        Value[quantity.Ingress]
	Channels        []*Channel
	Outputs         []*Output
	Inputs          []*Input
}

// UnitModel is an entry of a catalogue.
type UnitModel struct {
	Part
	Kind string
	Note Value[string]
	UnitData
}

// Channel is a power stage of an amplifier. Power belongs to it.
type Channel struct {
	Part
	Numbering
	RatedPower Value[quantity.Power]
	// Implied tells that the channel was not written as a block: the amplifier
	// states one rated power, or none.
	Implied bool
}

// Output is a pair of terminals that leaves a unit.
type Output struct {
	Part
	Numbering
	Channel         Value[string]
	Volts           Value[quantity.Voltage] // constant-voltage output; 70 V means 100/√2 V
	LowestImpedance Value[quantity.Resistance]
	HighestLoad     Value[quantity.Power]
	RatedInto       Value[quantity.Resistance]
	Switched        Value[bool]
	Setting         Value[string] // "on", "off"
	NeverWith       List[string]
	WiringClass     Value[string]
	Level           Value[quantity.Level]
	Impedance       Value[quantity.Resistance]
	Balanced        Value[bool]
	Isolated        Value[bool]
	Pad             Value[quantity.Gain]
	// Implied tells that the output was not written as a block but follows from
	// the name a line uses for it, such as "70 V" or "8 ohm".
	Implied bool
}

// Input is a way into a unit.
type Input struct {
	Part
	Numbering
	Takes         Value[string] // "microphone", "line", "telephone", "contact", "paging desk"
	Channel       Value[string]
	Sensitivity   Value[quantity.Level]
	Impedance     Value[quantity.Resistance]
	Balanced      Value[bool]
	Isolated      Value[bool]
	Connectors    List[string]
	Triggers      List[string] // "contact", "signal"
	NeedsCores    Value[int]
	Mutes         Choice // inputs of the same unit
	MuteDepth     Value[string]
	MutesOn       Value[string] // "open", "closed"
	MutedByOthers Value[bool]
	Stereo        Value[string]
	Phantom       Value[string]
	OpensOutputs  Value[bool]
	Selects       Value[string]
	Setting       Value[string]
	Trim          Value[quantity.Gain]
	Pad           Value[quantity.Gain]
	// Implied tells that the input was not written as a block but follows from
	// the name a source or a send uses.
	Implied bool
}

// Send is an output of a unit wired to the input of another one.
type Send struct {
	Part // named after the output
	Numbering
	Into     Value[string]
	Input    Value[string]
	Lead     Value[quantity.Length]
	Channels Value[string] // "mono", "left", "right", "stereo"
	TiedWith List[string]
	SummedBy Value[string]
}
