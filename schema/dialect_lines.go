package schema

import (
	"fmt"
	"strconv"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/quantity"
)

func placement[T any](at func(*T) *Placement) []attribute[T] {
	return joined([]attribute[T]{
		amount("leg", quantity.Lengths, func(t *T) *Value[quantity.Length] { return &at(t).Leg }, "length of the cable that leads to it from the device before", example("6 m")),
		name("cable", refCable, func(t *T) *Value[string] { return &at(t).Cable }, "cable of that leg and of what follows inside it", example("2 x 1.5 mm2")),
		amount("spacing", quantity.Lengths, func(t *T) *Value[quantity.Length] { return &at(t).Spacing }, "length of the cable between neighbours of a run", example("5 m")),
	}, numbering(1, MaxRun, func(t *T) *Numbering { return &at(t).Numbering }), formerly(func(t *T) *Part { return &at(t).Part }))
}

func loudspeakerData() []attribute[LoudspeakerData] {
	return []attribute[LoudspeakerData]{
		word("kind", []string{"ceiling", "wall", "column", "horn", "pendant", "garden"}, func(l *LoudspeakerData) *Value[string] { return &l.Class }, "what sort of loudspeaker it is; a cabinet is \"wall\""),
		amount("rated_power", quantity.Powers, func(l *LoudspeakerData) *Value[quantity.Power] { return &l.RatedPower }, "power it can take for long", example("10 W")),
		amounts("taps_100V", quantity.Powers, func(l *LoudspeakerData) *List[quantity.Power] { return &l.Taps100V }, "transformer settings on a 100 V line", example(`["6 W", "3 W"]`)),
		amounts("taps_70V", quantity.Powers, func(l *LoudspeakerData) *List[quantity.Power] { return &l.Taps70V }, "transformer settings on a 70 V line", example(`["3 W", "1.5 W"]`)),
		amounts("taps_25V", quantity.Powers, func(l *LoudspeakerData) *List[quantity.Power] { return &l.Taps25V }, "transformer settings on a 25 V line", example(`["2 W", "1 W"]`)),
		amount("impedance", quantity.Resistances, func(l *LoudspeakerData) *Value[quantity.Resistance] { return &l.Impedance }, "impedance without a transformer", example("8 ohm")),
		spectrum("impedance_at", quantity.Resistances, func(l *LoudspeakerData) *Spectrum[quantity.Resistance] { return &l.ImpedanceAt }, "impedance over frequency, without a transformer"),
		amount("sensitivity", quantity.SoundPressureLevels, func(l *LoudspeakerData) *Value[quantity.SoundPressureLevel] { return &l.Sensitivity }, "sound pressure level at 1 W and 1 m", example("90 dB")),
		spectrum("sensitivity_at", quantity.SoundPressureLevels, func(l *LoudspeakerData) *Spectrum[quantity.SoundPressureLevel] { return &l.SensitivityAt }, "the same over frequency"),
		coverage("coverage", func(l *LoudspeakerData) *Value[quantity.Angle] { return &l.Coverage }, "angle between the directions that are 6 dB down", "120 deg"),
		coverage("coverage_vertical", func(l *LoudspeakerData) *Value[quantity.Angle] { return &l.CoverageUp }, "the same upright, where it differs", "40 deg"),
		amount("coverage_at", quantity.Frequencies, func(l *LoudspeakerData) *Value[quantity.Frequency] { return &l.CoverageAt }, "frequency at which the coverage is stated", example("2 kHz")),
		fractions("directivity_factor", 1, 1000, func(l *LoudspeakerData) *Spectrum[float64] { return &l.DirectivityFactor }, "how much stronger it sounds along its axis than in all directions on the average (Q), single or per octave", example("8")),
		spectrum("rated_power_at", quantity.Powers, func(l *LoudspeakerData) *Spectrum[quantity.Power] { return &l.RatedPowerAt }, "power it can take in each octave, where that is less than in all"),
		amount("lowest_frequency", quantity.Frequencies, func(l *LoudspeakerData) *Value[quantity.Frequency] { return &l.LowestFrequency }, "lowest frequency its transformer and cone take at full power", example("120 Hz")),
		amount("exposure", quantity.Ingresses, func(l *LoudspeakerData) *Value[quantity.Ingress] { return &l.Exposure }, "degree of protection (IEC 60529)", example("IP34")),
	}
}

func attenuatorData() []attribute[AttenuatorData] {
	return []attribute[AttenuatorData]{
		amount("rating", quantity.Powers, func(a *AttenuatorData) *Value[quantity.Power] { return &a.Rating }, "load it can carry", example("36 W")),
		amount("insertion_loss", quantity.Gains, func(a *AttenuatorData) *Value[quantity.Gain] { return &a.InsertionLoss }, "what it loses when turned fully up", example("0.5 dB")),
		attenuation("lowest", func(a *AttenuatorData) *Value[Attenuation] { return &a.Lowest }, "how far it can be turned down"),
		word("override", []string{OverrideRelay, OverrideThird, OverrideNone}, func(a *AttenuatorData) *Value[string] { return &a.Override }, "what lifts it for an announcement"),
		word("relay", []string{RelayEnergised, RelayReleased}, func(a *AttenuatorData) *Value[string] { return &a.Relay }, "what its relay does for an announcement; a released one is held in all the time and overrides too when its supply fails"),
		amount("current", quantity.Currents, func(a *AttenuatorData) *Value[quantity.Current] { return &a.Current }, "what its relay takes", example("20 mA")),
		whole("cores", 2, 12, func(a *AttenuatorData) *Value[int] { return &a.Cores }, "conductors it needs, override included", example("4")),
		text("terminals", func(a *AttenuatorData) *Value[string] { return &a.Terminals }, "which terminal is which", example("1 in, 2 out, 3 common")),
		amount("exposure", quantity.Ingresses, func(a *AttenuatorData) *Value[quantity.Ingress] { return &a.Exposure }, "degree of protection (IEC 60529)", example("IP20")),
	}
}

// devices declares the devices that may stand in a chain, added in the order
// in which they are written.
func devices[T any](x *dialect, chain func(*T) *[]Device) []child[T] {
	return []child[T]{
		nested(func() *block[Loudspeaker] { return x.loudspeaker }, func(t *T, l *Loudspeaker) { *chain(t) = append(*chain(t), l) }),
		nested(func() *block[Attenuator] { return x.attenuator }, func(t *T, a *Attenuator) { *chain(t) = append(*chain(t), a) }),
		nested(func() *block[Branch] { return x.branch }, func(t *T, b *Branch) { *chain(t) = append(*chain(t), b) }),
		nested(func() *block[Existing] { return x.existing }, func(t *T, e *Existing) { *chain(t) = append(*chain(t), e) }),
		nested(func() *block[LineEnd] { return x.lineEnd }, func(t *T, e *LineEnd) { *chain(t) = append(*chain(t), e) }),
	}
}

func (x *dialect) declareLines() {
	// The chain's declarations refer to each other; the empty ones are there
	// before any child asks for a name.
	x.loudspeaker = &block[Loudspeaker]{name: "loudspeaker", label: labelName, doc: "One loudspeaker, or a run of equal ones."}
	x.attenuator = &block[Attenuator]{name: "attenuator", label: labelName, doc: "A volume control on the line. It encloses the devices it turns down; after its brace the chain goes on from its input."}
	x.branch = &block[Branch]{name: "branch", label: labelName, doc: "A tee with a chain of its own. Its leg leads to the tee; after its brace the line goes on from the tee."}
	x.existing = &block[Existing]{name: "existing", label: labelName, doc: "Old equipment that is not spelled out. With neither load nor impedance its load is unknown, never 0 W."}
	x.lineEnd = &block[LineEnd]{name: "line_end", label: labelName, doc: "A device at the end of a line that watches it."}

	x.loudspeaker.attributes = joined(
		[]attribute[Loudspeaker]{
			name("model", refModel, func(l *Loudspeaker) *Value[string] { return &l.Model }, "entry of a catalogue it is", example("house/ceiling-6")),
			amount("tap", quantity.Powers, func(l *Loudspeaker) *Value[quantity.Power] { return &l.Tap }, "transformer setting at the line's voltage", example("6 W")),
			amount("tap_for", quantity.Voltages, func(l *Loudspeaker) *Value[quantity.Voltage] { return &l.TapFor }, "voltage the tap is marked for, when not the line's", example("70 V")),
			amount("series_resistance", quantity.Resistances, func(l *Loudspeaker) *Value[quantity.Resistance] { return &l.SeriesResistance }, "resistor or protective part in series with it", example("1 ohm")),
			name("space", refSpace, func(l *Loudspeaker) *Value[string] { return &l.Space }, "the space it serves", example("Hall")),
			amounts("position", quantity.Lengths, func(l *Loudspeaker) *List[quantity.Length] { return &l.Position }, "where it hangs, along the length and the width of the space, and the height if not said otherwise; of a run, the first", between(2, 3), example(`["2 m", "0 m"]`)),
			amounts("to", quantity.Lengths, func(l *Loudspeaker) *List[quantity.Length] { return &l.To }, "position of the last of a run, the others evenly between", between(2, 3), example(`["16 m", "0 m"]`)),
			amount("height", quantity.Lengths, func(l *Loudspeaker) *Value[quantity.Length] { return &l.Height }, "height over the floor; of a ceiling loudspeaker that of the ceiling when left out", example("3 m")),
			amount("aim", quantity.Angles, func(l *Loudspeaker) *Value[quantity.Angle] { return &l.Aim }, "direction in plan: 0 along the length, 90 along the width", example("90 deg")),
			amount("tilt", quantity.Angles, func(l *Loudspeaker) *Value[quantity.Angle] { return &l.Tilt }, "down from level; straight down for ceiling and pendant loudspeakers when left out, else level", example("30 deg")),
			word("polarity", []string{"normal", "reversed"}, func(l *Loudspeaker) *Value[string] { return &l.Polarity }, "whether its conductors are swapped against the rest"),
		},
		lift(loudspeakerData(), func(l *Loudspeaker) *LoudspeakerData {
			if l.LoudspeakerData == nil {
				l.LoudspeakerData = &LoudspeakerData{}
			}
			return l.LoudspeakerData
		}),
		placement(func(l *Loudspeaker) *Placement { return &l.Placement }),
	)
	x.attenuator.attributes = joined(
		[]attribute[Attenuator]{
			name("model", refModel, func(a *Attenuator) *Value[string] { return &a.Model }, "entry of a catalogue it is", example("house/hall-36")),
			attenuation("setting", func(a *Attenuator) *Value[Attenuation] { return &a.Setting }, "how it is set; fully up when left out"),
			name("stands_in", refSpace, func(a *Attenuator) *Value[string] { return &a.StandsIn }, "the space it stands in itself, which need not be that of its loudspeakers", example("Bar")),
			text("wired", func(a *Attenuator) *Value[string] { return &a.Wired }, "which conductor is on which terminal, as it was found or is planned", example("1 line, 2 loudspeakers, 3 common")),
		},
		lift(attenuatorData(), func(a *Attenuator) *AttenuatorData { return &a.AttenuatorData }),
		placement(func(a *Attenuator) *Placement { return &a.Placement }),
	)
	x.attenuator.children = devices(x, func(a *Attenuator) *[]Device { return &a.Devices })
	x.branch.attributes = placement(func(b *Branch) *Placement { return &b.Placement })
	x.branch.children = devices(x, func(b *Branch) *[]Device { return &b.Devices })
	x.existing.attributes = joined([]attribute[Existing]{
		amount("load", quantity.Powers, func(e *Existing) *Value[quantity.Power] { return &e.Load }, "load of all of it together at the line's voltage", example("30 W")),
		amount("impedance", quantity.Resistances, func(e *Existing) *Value[quantity.Resistance] { return &e.Impedance }, "impedance of all of it together", example("250 ohm")),
	}, placement(func(e *Existing) *Placement { return &e.Placement }))
	x.lineEnd.attributes = joined([]attribute[LineEnd]{
		amount("load", quantity.Powers, func(e *LineEnd) *Value[quantity.Power] { return &e.Load }, "what it takes from the line", example("0.5 W")),
		text("watches", func(e *LineEnd) *Value[string] { return &e.Watches }, "how it watches the line", example("20 kHz tone")),
	}, placement(func(e *LineEnd) *Placement { return &e.Placement }))
	x.loudspeaker.seal()
	x.attenuator.seal()
	x.branch.seal()
	x.existing.seal()
	x.lineEnd.seal()
	for _, m := range []*map[string]string{&x.attenuator.notModelled, &x.branch.notModelled} {
		*m = notModelledOnLines()
	}

	x.line = (&block[Line]{
		name: "line", label: labelName,
		doc: "One loudspeaker circuit, written as it is walked: devices stand in the order the cable meets them.",
		attributes: joined([]attribute[Line]{
			name("amplifier", refAmplifier, func(l *Line) *Value[string] { return &l.Amplifier }, "the amplifier that feeds it", example("Rack")),
			name("output", refOutput, func(l *Line) *Value[string] { return &l.Output }, "the output of the amplifier it is on; where the amplifier states none, a voltage or an impedance says which", example("100 V")),
			name("like", refLine, func(l *Line) *Value[string] { return &l.Like }, "another line this one equals, except for what is written here", example("North")),
			name("cable", refCable, func(l *Line) *Value[string] { return &l.Cable }, "cable of the line: a size or an entry of a catalogue", example("2 x 2.5 mm2")),
			amount("home_run", quantity.Lengths, func(l *Line) *Value[quantity.Length] { return &l.HomeRun }, "length of the cable from the amplifier to the first device", example("40 m")),
			amount("length", quantity.Lengths, func(l *Line) *Value[quantity.Length] { return &l.Length }, "length of the whole line, when its legs are not known; the whole load then counts at the far end", example("120 m")),
			name("override_from", refUnit, func(l *Line) *Value[string] { return &l.OverrideFrom }, "the unit that switches the override of the attenuators", example("Matrix")),
			name("override_cable", refCable, func(l *Line) *Value[string] { return &l.OverrideCable }, "cable of its own that carries the override along the same way; without one its conductors are in the line's cable", example("2 x 0.75 mm2")),
			text("containment", func(l *Line) *Value[string] { return &l.Containment }, "what the cable lies in", example("conduit")),
			words("shared_with", []string{"mains", "data", "microphone", "other lines", "emergency lighting", "nothing"}, func(l *Line) *List[string] { return &l.SharedWith }, "what shares its containment"),
			word("separation", []string{"barrier", "equal insulation", "50 mm apart", "none"}, func(l *Line) *Value[string] { return &l.Separation }, "what keeps them apart"),
			word("wiring", []string{"parallel", "series"}, func(l *Line) *Value[string] { return &l.Wiring }, "how low-impedance loudspeakers are joined"),
			amount("ring_leg", quantity.Lengths, func(l *Line) *Value[quantity.Length] { return &l.RingLeg }, "length of the line's cable from the last device back to the amplifier: a ring, or the way home of a reverse return", example("60 m")),
			word("return", []string{"reverse"}, func(l *Line) *Value[string] { return &l.Return }, "\"reverse\" where the return conductor begins at the first device and comes home from the last, by the ring leg"),
			flag("monitored", func(l *Line) *Value[bool] { return &l.Monitored }, "whether the line is watched for faults"),
		}, formerly(func(l *Line) *Part { return &l.Part })),
		children:    devices(x, func(l *Line) *[]Device { return &l.Devices }),
		notModelled: notModelledOnLines(),
	}).seal()
}

// coverage declares the angle that a loudspeaker covers: some, and at most all round.
func coverage(name string, at func(*LoudspeakerData) *Value[quantity.Angle], doc, like string) attribute[LoudspeakerData] {
	const allRound = 360
	a := amount(name, quantity.Angles, at, doc, example(like))
	read := a.read
	a.read = func(d *decoder, to *LoudspeakerData, expr hclsyntax.Expression) {
		read(d, to, expr)
		if angle := at(to); angle.Set() && (angle.V <= 0 || angle.V > allRound) {
			d.refuse(angle.Span, fmt.Sprintf("No loudspeaker covers %s.", angle.Text), "Here stands an angle above 0 and up to 360 degrees, such as "+strconv.Quote(like)+".", "")
			*angle = Value[quantity.Angle]{}
		}
	}
	return a
}
