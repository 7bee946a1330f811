package schema

import "loudlint/schema/quantity"

// Line is one loudspeaker circuit, its devices in the order in which the cable
// meets them.
type Line struct {
	Part
	Like         Value[string]
	Amplifier    Value[string]
	Output       Value[string]
	Cable        Value[string]
	HomeRun      Value[quantity.Length]
	Length       Value[quantity.Length]
	OverrideFrom Value[string]
	// OverrideCable is a cable of its own for the override of the attenuators;
	// without one its conductors are in the line's cable.
	OverrideCable Value[string]
	Containment   Value[string]
	SharedWith    List[string]
	Separation    Value[string]
	Wiring        Value[string] // "parallel", "series"
	RingLeg       Value[quantity.Length]
	Return        Value[string] // "reverse"
	Monitored     Value[bool]
	Devices       []Device

	// AmplifierPart and OutputPart are what the names refer to; nil where the
	// line does not say. ChannelPart is the power channel of the output.
	AmplifierPart *Unit
	OutputPart    *Output
	ChannelPart   *Channel
}

// Device is something on a line: *Loudspeaker, *Attenuator, *Branch, *Existing
// or *LineEnd.
type Device interface {
	Common() *Placement
	Inside() []Device
}

// Placement is what every device on a line has in common.
type Placement struct {
	Part
	Numbering
	Leg     Value[quantity.Length] // the cable that leads to the device
	Cable   Value[string]          // of that leg, and the default inside
	Spacing Value[quantity.Length] // cable between neighbours of a run
}

// Common gives the placement of a device.
func (p *Placement) Common() *Placement { return p }

// Inside gives the devices a device encloses: none, unless it is an
// attenuator or a branch.
func (*Placement) Inside() []Device { return nil }

// Loudspeaker is one loudspeaker, or a run of equal ones.
type Loudspeaker struct {
	Placement
	Model Value[string]
	// LoudspeakerData is what the model says with what the part says laid over
	// it. It is shared with the model where the part adds nothing: never nil,
	// never written to.
	*LoudspeakerData
	Tap              Value[quantity.Power]
	TapFor           Value[quantity.Voltage]
	SeriesResistance Value[quantity.Resistance]
	Space            Value[string]
	Position         List[quantity.Length] // along, across, and the height if it is said here
	To               List[quantity.Length]
	Height           Value[quantity.Length]
	Aim              Value[quantity.Angle]
	Tilt             Value[quantity.Angle]
	Polarity         Value[string] // "normal", "reversed"
	Overrides        []Override
	ModelPart        *LoudspeakerModel
}

// LoudspeakerData is what a data sheet says of a loudspeaker and a design may
// say too.
type LoudspeakerData struct {
	Class         Value[string] // kind: "ceiling", "wall", "column", "horn", "pendant", …
	RatedPower    Value[quantity.Power]
	Taps100V      List[quantity.Power]
	Taps70V       List[quantity.Power]
	Taps25V       List[quantity.Power]
	Impedance     Value[quantity.Resistance] // bypass terminals, transformer not in use
	ImpedanceAt   Spectrum[quantity.Resistance]
	Sensitivity   Value[quantity.SoundPressureLevel] // 1 W, 1 m
	SensitivityAt Spectrum[quantity.SoundPressureLevel]
	Coverage      Value[quantity.Angle]
	CoverageUp    Value[quantity.Angle] // vertically, where it differs
	CoverageAt    Value[quantity.Frequency]
	// DirectivityFactor is Q, a number without dimension; RatedPowerAt what it
	// takes in one octave at a time.
	DirectivityFactor Spectrum[float64]
	RatedPowerAt      Spectrum[quantity.Power]
	LowestFrequency   Value[quantity.Frequency]
	Exposure          Value[quantity.Ingress]
}

// LoudspeakerModel is an entry of a catalogue.
type LoudspeakerModel struct {
	Part
	Note Value[string]
	LoudspeakerData
}

// Attenuator encloses the devices it turns down.
type Attenuator struct {
	Placement
	Model Value[string]
	AttenuatorData
	Setting   Value[Attenuation]
	StandsIn  Value[string] // a space
	Wired     Value[string] // which conductor is on which terminal
	Devices   []Device
	Overrides []Override
	ModelPart *AttenuatorModel
}

// Inside gives the devices behind the attenuator.
func (a *Attenuator) Inside() []Device { return a.Devices }

// What lifts an attenuator for an announcement, besides nothing at all.
const (
	OverrideRelay = "24 V relay"
	OverrideThird = "third conductor"
	OverrideNone  = "none"
)

// What the relay of an attenuator does for an announcement. A released one is
// held in all the time, and lifts the attenuator too when its supply fails or a
// conductor is cut.
const (
	RelayEnergised = "energised to override"
	RelayReleased  = "released to override"
)

// AttenuatorData is what a data sheet says of an attenuator.
type AttenuatorData struct {
	Rating        Value[quantity.Power]
	InsertionLoss Value[quantity.Gain]
	Lowest        Value[Attenuation]
	Override      Value[string]
	Relay         Value[string] // RelayEnergised, RelayReleased
	Current       Value[quantity.Current]
	Cores         Value[int]
	Terminals     Value[string]
	Exposure      Value[quantity.Ingress]
}

// AttenuatorModel is an entry of a catalogue.
type AttenuatorModel struct {
	Part
	Note Value[string]
	AttenuatorData
}

// Branch is a tee with a chain of its own. Its leg leads to the tee.
type Branch struct {
	Placement
	Devices []Device
}

// Inside gives the devices on the branch.
func (b *Branch) Inside() []Device { return b.Devices }

// Existing is old equipment on the line that is not spelled out.
type Existing struct {
	Placement
	Load      Value[quantity.Power]
	Impedance Value[quantity.Resistance]
}

// LineEnd is an end-of-line monitoring device.
type LineEnd struct {
	Placement
	Load    Value[quantity.Power]
	Watches Value[string]
}

// CableModel is an entry of a catalogue.
type CableModel struct {
	Part
	Note          Value[string]
	Size          Value[quantity.Conductors]
	Class         Value[int] // IEC 60228
	Stranded      Value[bool]
	Tinned        Value[bool]
	Cores         Value[int]
	Shield        Value[string]
	Insulation    Value[quantity.Voltage]
	Current       Value[quantity.Current]
	Marking       Value[string]
	FireResistant Value[quantity.Duration]
	Inductance    Value[quantity.Inductance]
	Capacitance   Value[quantity.Capacitance]
}

// ConnectorModel is an entry of a catalogue.
type ConnectorModel struct {
	Part
	Note  Value[string]
	Cores Value[int] // contacts that can carry a conductor
	Use   Value[string]
}
