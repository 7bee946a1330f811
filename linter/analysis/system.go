package analysis

import (
	"fmt"

	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// System is what a design computes to. It is read-only once Analyse returned
// it, and may be read from many goroutines. What is heard is worked out at the
// first question, once: most designs do not say enough, and it costs most.
type System struct {
	Design     *schema.Design
	Amplifiers []*Amplifier
	Channels   []*Channel // of all amplifiers
	Outputs    []*Output  // loudspeaker outputs of all amplifiers that are stated or used
	Lines      []*Line
	Sources    []*Source
	Units      []*Unit   // amplifiers and mixers as parts of the signal chain
	Loops      [][]*Unit // units whose signal comes back to them
	Joints     []*Joint  // sends on which two channels, or two outputs, come together
	Supplies   []*Supply
	// Heat is what all amplifiers and mixers together leave where they stand.
	Heat Heat
	// TemperatureC is the conductors' temperature in °C; 20 when not stated.
	TemperatureC float64

	exposures map[string]*Exposure // by the name of the space
	sounds    func() *soundings    // worked out when somebody asks
	workers   int
}

// Amplifier is an amplifier with what hangs on it.
type Amplifier struct {
	Part     *schema.Unit
	Channels []*Channel
	Outputs  []*Output
	Lines    []*Line
}

// Channel is a power channel with everything its outputs feed.
type Channel struct {
	Amplifier *Amplifier
	Part      *schema.Channel
	Outputs   []*Output
	// Rated is its rated power.
	Rated Figure[quantity.Power]
	// Load is the sum, over the constant-voltage outputs of the channel, of the
	// real power each device takes at nominal line voltage.
	Load Figure[quantity.Power]
	// AssumedLoad is the part of Load that rests on parts marked
	// basis = "assumed".
	AssumedLoad quantity.Power
}

// CarriesLines tells that something hangs, or may hang, on constant-voltage
// outputs of the channel.
func (c *Channel) CarriesLines() bool {
	for _, o := range c.Outputs {
		if o.Kind != LowImpedance && len(o.Lines) > 0 {
			return true
		}
	}
	return len(c.Amplifier.loose()) > 0
}

// RatedPart is the part in whose braces the rated power of the channel stands
// or would stand.
func (c *Channel) RatedPart() *schema.Part {
	if c.Part.Implied || c.Part.Body.File != c.Amplifier.Part.Body.File || len(c.Amplifier.Channels) == 1 {
		return &c.Amplifier.Part.Part
	}
	return &c.Part.Part
}

// OutputKind tells how an output feeds its loudspeakers.
type OutputKind int

// Kinds of output.
const (
	UnknownOutput   OutputKind = iota // the design does not say
	ConstantVoltage                   // a 100 V, 70 V, … line
	LowImpedance                      // loudspeakers in ohms
)

// Output is a loudspeaker output with its lines.
type Output struct {
	Amplifier *Amplifier
	Channel   *Channel // nil when the design does not say
	Part      *schema.Output
	Kind      OutputKind
	Lines     []*Line
	// Volts is its r.m.s. voltage at rated power: the line voltage, or for a
	// low-impedance output √(rated power × impedance it is rated into).
	Volts Figure[quantity.Voltage]
	// Load is the sum of the real power its devices take at that voltage.
	Load Figure[quantity.Power]
	// Impedance is the lowest magnitude of what the amplifier sees, cables
	// included, at 1 kHz and at every frequency for which a loudspeaker states
	// its impedance. AtHz is where it is lowest.
	Impedance Figure[quantity.Resistance]
	AtHz      float64
	// Floor is the impedance at which a constant-voltage output gives the rated
	// power of its channel: the lowest that its rating implies.
	Floor Figure[quantity.Resistance]
	// Loaded tells that at least one device hangs on it.
	Loaded bool
}

// Line is one loudspeaker circuit, solved.
type Line struct {
	Part      *schema.Line
	Amplifier *Amplifier // nil when not stated
	Output    *Output    // nil when not stated
	Channel   *Channel   // nil when not stated
	// Runs are the loudspeaker blocks of the line in walking order; a block
	// inside a run of attenuators or branches is one Run with all its members.
	Runs []*Run
	// Attenuators are the attenuator blocks in walking order.
	Attenuators []*Attenuator
	// Loudspeakers counts the loudspeakers that are spelled out.
	Loudspeakers int
	// Load is the real power its devices take at nominal voltage.
	Load Figure[quantity.Power]
	// AssumedLoad is the part of it that rests on assumed parts.
	AssumedLoad quantity.Power
	// Loss is what the cable takes away at the worst loudspeaker.
	Loss Loss

	sum        *sum
	admittance []atFrequency
	refused    []Missing // when the solver refuses the network
	reads      *builder  // the line as it is written
	sees       *builder  // the same as it takes most: cable that is not known is left out
}

// Loss is what the cable of a line takes away, at 1 kHz and full output.
type Loss struct {
	// Drop is how far the worst loudspeaker is below the voltage it would have
	// without cable, in per cent of that voltage.
	Drop Figure[quantity.Percent]
	// DB is the same as a level.
	DB quantity.Gain
	// Worst names the loudspeaker with the largest drop: "H 8".
	Worst string
	// WorstRun is its block; nil for old equipment that is not spelled out.
	WorstRun *Run
	// Volts is what arrives there, and Without what would without cable; 0 when
	// the output's voltage is not known.
	Volts, Without quantity.Voltage
	// CablePower is what the cable turns into heat, and SourcePower what the
	// amplifier gives; 0 when the output's voltage is not known.
	CablePower, SourcePower quantity.Power
	// CableShare is the one in per cent of the other.
	CableShare quantity.Percent
	// Lumped tells that only the total length is known, so that the whole load
	// counts in one place; see AllAt.
	Lumped bool
	// Cables are what the way to the worst loudspeaker is made of, from the
	// amplifier on. With a reverse return they are all its way there and back.
	Cables []CableUse
	// Round is the way to it round the other end of a ring; nil on other lines.
	Round []CableUse
}

// LevelSum is the arithmetic of DB: "20 × lg(1 / (1 − 0.112)) = 1.032 dB".
func (l *Loss) LevelSum() string {
	return fmt.Sprintf("20 × lg(1 / (1 − %s)) = %s", quantity.Significant(float64(l.Drop.Value)/100, 4), l.DB)
}

// CableUse is one kind of cable on the way to a loudspeaker.
type CableUse struct {
	// Metres is how much of it there is, and LoopOhm the resistance of its
	// conductors that the current takes: both, or one where a reverse return has
	// the other come back another way.
	Metres, LoopOhm float64
	Conductors      int
	// PerLength is the resistance of one conductor, such as "13.3 ohm/km", and
	// Kind says of what and by which table: "2 x 1.5 mm2, IEC 60228 class 5, 20 °C".
	PerLength, Kind string
}

// Loop is LoopOhm as a resistance.
func (u *CableUse) Loop() quantity.Resistance { return quantity.Resistance(u.LoopOhm) }

// Sum is the arithmetic of Loop, in the units of PerLength: "2 × 137 m × 7.98
// ohm/km = 2.187 ohm". Feet are decimal here, so that a calculator takes them.
func (u *CableUse) Sum(us bool) string {
	length := quantity.Significant(u.Metres, 4) + " m"
	if us {
		length = quantity.Significant(u.Metres/quantity.MetresPerFoot, 4) + " ft"
	}
	if u.Conductors == 2 {
		length = "2 × " + length
	}
	return fmt.Sprintf("%s × %s = %s", length, u.PerLength, u.Loop())
}

// Run is one loudspeaker block of a line with all its members.
type Run struct {
	Line *Line
	Part *schema.Loudspeaker
	// Count is how many loudspeakers it comes to on this line.
	Count int
	// Each is the real power one takes at the voltage of its output at rated
	// power.
	Each Figure[quantity.Power]
	// Tap says how each is connected.
	Tap Tap
	// Delivered is the most power one receives at full output, cable included
	// and attenuators fully up; MostAt names it. Receives gives the same with
	// its arithmetic.
	Delivered Figure[quantity.Power]
	MostAt    string
	// Behind are the attenuators it stands behind, outermost first.
	Behind []*Attenuator
	// Assumed tells that it, or what it stands in, is marked assumed.
	Assumed bool

	index     int // in Runs of the line
	load      *speakerLoad
	mostVolts float64 // at what receives most
}

// All is what all loudspeakers of the block take.
func (r *Run) All() Figure[quantity.Power] {
	if !r.Each.Known() {
		return r.Each
	}
	t := r.load.term
	t.count = r.Count
	all := sum{terms: []term{t}}
	return all.figure()
}

// Receives is Delivered with its arithmetic.
func (r *Run) Receives() Figure[quantity.Power] {
	f := r.Delivered
	if f.Known() && r.MostAt != "" {
		f.Sum = r.load.delivers(f.Value, quantity.Voltage(r.mostVolts))
	}
	return f
}

// Tap is how a loudspeaker is connected.
type Tap struct {
	// Direct tells that it is connected without a transformer.
	Direct bool
	// Off tells that its tap is 0 W: it is switched off.
	Off bool
	// Marked is the voltage its tap is marked for; 0 when Direct, Off or not
	// known.
	Marked quantity.Voltage
	// MarkedFrom is where that voltage comes from: tap_for, the line's output,
	// or the model's list of taps.
	MarkedFrom source.Span
}

// Attenuator is one attenuator block of a line.
type Attenuator struct {
	Line  *Line
	Part  *schema.Attenuator
	Count int
	// Behind is the real power of what one of them encloses, at nominal voltage.
	Behind Figure[quantity.Power]
	// Inside are the attenuators it stands behind, outermost first.
	Inside []*Attenuator

	sum     sum
	unknown []Missing
}
