package criterion

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Figures of lines and of what hangs on them.

type (
	line        = *analysis.Line
	loudspeaker = *analysis.Run
	attenuator  = *analysis.Attenuator
)

func lineFigures() []figure[line] {
	return []figure[line]{
		named("name", "its name", func(l line) string { return l.Part.Name }),
		word("amplifier", "the amplifier it hangs on", nil, lack{"amplifier that feeds the line", `amplifier = "…"`}, func(l line) (schema.Value[string], *schema.Part, string) {
			return l.Part.Amplifier, &l.Part.Part, "line"
		}),
		word("output", "the output it hangs on", nil, lack{"output, with its voltage or its ohms", `output = "100 V"`}, func(l line) (schema.Value[string], *schema.Part, string) { return l.Part.Output, &l.Part.Part, "line" }),
		computed("voltage_v", "V", "its voltage at full output: the line voltage", func(_ *analysis.System, l line) analysis.Figure[quantity.Voltage] {
			if l.Output == nil {
				return analysis.Figure[quantity.Voltage]{Missing: l.VoltsMissing()}
			}
			return l.Output.Volts
		}),
		fact("constant_voltage", "whether it is a line of constant voltage, such as 100 V", func(_ *analysis.System, l line) (bool, []analysis.Missing) {
			if l.Output == nil {
				return false, l.VoltsMissing()
			}
			return constantVoltage(l.Output)
		}),
		computed("load_w", "W", "what its loudspeakers take at nominal voltage", func(_ *analysis.System, l line) power { return l.Load }),
		computed("assumed_w", "W", "the part of its load that rests on parts marked as assumed", func(_ *analysis.System, l line) power {
			return power{Value: l.AssumedLoad, Missing: l.Load.Missing}
		}),
		count("loudspeakers", "the loudspeakers on it that are spelled out", func(_ *analysis.System, l line) int { return l.Loudspeakers }),
		count("attenuators", "the attenuators on it", func(_ *analysis.System, l line) int {
			n := 0
			for _, a := range l.Attenuators {
				n += a.Count
			}
			return n
		}),
		count("sources", "the sources that are heard on it", sourcesOn),
		computed("drop_percent", "%", "how far its worst loudspeaker is below the voltage it would have without cable", func(_ *analysis.System, l line) analysis.Figure[quantity.Percent] { return l.Loss.Drop }),
		computed("loss_db", "dB", "the same as a level", func(_ *analysis.System, l line) analysis.Figure[quantity.Gain] {
			return ofDrop(l, l.Loss.DB, fmt.Sprintf("20 × lg(1 / (1 − %s)) = %s", quantity.Significant(float64(l.Loss.Drop.Value)/100, 4), l.Loss.DB))
		}),
		computed("cable_loss_w", "W", "what its cable turns into heat at full output", func(_ *analysis.System, l line) power {
			f := ofDrop(l, l.Loss.CablePower, "")
			f.Missing = analysis.MergeMissing(f.Missing, l.VoltsMissing())
			return f
		}),
		computed("cable_m", "m", "the cable laid for it, the home run included", func(_ *analysis.System, l line) analysis.Figure[quantity.Length] { return l.CableLaid() }),
		computed("current_a", "A", "the most current that a leg of it carries at full output", func(_ *analysis.System, l line) analysis.Figure[quantity.Current] { return mostCurrent(l) }),
		computed("treble_loss_db", "dB", "what its cable takes of 10 kHz more than of 1 kHz, where that is most", func(_ *analysis.System, l line) analysis.Figure[quantity.Gain] {
			t := l.Treble()
			f := analysis.Figure[quantity.Gain]{Value: t.Loss, Missing: t.Missing, Assumed: t.Assumed}
			if t.Bound {
				f.Missing = analysis.MergeMissing(f.Missing, t.Unstated)
			}
			return f
		}),
		word("cable", "its cable, as it is written", nil, lack{"cable", `cable = "2 x 1.5 mm2"`}, func(l line) (schema.Value[string], *schema.Part, string) { return l.Part.Cable, &l.Part.Part, "line" }),
		{Description{Name: "conductor_mm2", Doc: "size of a conductor of its cable", Kind: Number, Unit: "mm2"}, func(s *analysis.System, l line) reading {
			cable := s.Design.Cable(l.Part.Cable.V)
			if cable == nil {
				return lack{"cable", `cable = "2 x 1.5 mm2"`}.of("line", &l.Part.Part)
			}
			return numbered(float64(cable.Conductors.Size), check.Plainly("conductor_mm2", cable.Conductors.Size, schema.Place{Span: l.Part.Cable.Span, Note: l.Part.Cable.Text}), nil)
		}},
		ofCable("insulation_v", "V", "voltage that the insulation of its cable is rated for", lack{"insulation voltage of the cable", `insulation = "300 V"`}, func(m *schema.CableModel) schema.Value[quantity.Voltage] { return m.Insulation }),
		ofCable("fire_resistant_min", "min", "how long its cable works in a fire", lack{"fire resistance of the cable", `fire_resistant = "30 min"`}, func(m *schema.CableModel) schema.Value[quantity.Duration] { return m.FireResistant }),
		flag("monitored", "whether it is watched for faults", lack{"whether the line is monitored", `monitored = true`}, func(l line) (schema.Value[bool], *schema.Part, string) { return l.Part.Monitored, &l.Part.Part, "line" }),
	}
}

func ofDrop[Q printed](l line, q Q, sum string) analysis.Figure[Q] {
	return analysis.Figure[Q]{Value: q, Sum: sum, From: l.Loss.Drop.From, Assumed: l.Loss.Drop.Assumed, Missing: l.Loss.Drop.Missing}
}

// ofCable declares a figure that the model of the line's cable states.
func ofCable[Q printed](name, unit, doc string, lacks lack, of func(*schema.CableModel) schema.Value[Q]) figure[line] {
	return figure[line]{Description{Name: name, Doc: doc, Kind: Number, Unit: unit}, func(s *analysis.System, l line) reading {
		cable := s.Design.Cable(l.Part.Cable.V)
		switch {
		case cable == nil:
			return lack{"cable", `cable = "2 x 1.5 mm2"`}.of("line", &l.Part.Part)
		case cable.Model == nil:
			return lack{lacks.what, `cable_model "…" { ` + lacks.write + ` }`}.of("line", &l.Part.Part)
		}
		v := of(cable.Model)
		if !v.Set() {
			return lacks.of("cable_model", &cable.Model.Part)
		}
		return numbered(per(float64(v.V), unit), check.Plainly(name, v.V, schema.Place{Span: v.Span, Note: v.Text}), nil)
	}}
}

func sourcesOn(s *analysis.System, l line) int {
	n := 0
	for _, src := range s.Sources {
		for _, on := range src.Lines {
			if on == l {
				n++
			}
		}
	}
	return n
}

// mostCurrent is known where every leg is.
func mostCurrent(l line) analysis.Figure[quantity.Current] {
	cables, missing := l.Currents()
	f := analysis.Figure[quantity.Current]{Missing: missing}
	for i := range cables {
		c := &cables[i]
		if c.Bound {
			f.Missing = analysis.MergeMissing(f.Missing, c.Exact)
		}
		if !c.Most.Known() {
			f.Missing = analysis.MergeMissing(f.Missing, c.Most.Missing)
		}
		if c.Most.Value > f.Value {
			f.Value, f.Sum, f.From, f.Assumed = c.Most.Value, c.Most.Sum, c.Most.From, c.Most.Assumed
		}
	}
	return f
}

func loudspeakerFigures() []figure[loudspeaker] {
	part := func(r loudspeaker) *schema.Part { return &r.Part.Part }
	return []figure[loudspeaker]{
		named("name", "its name", func(r loudspeaker) string { return r.Part.Name }),
		named("line", "the line it hangs on", func(r loudspeaker) string { return r.Line.Part.Name }),
		word("space", "the space it serves", nil, lack{"space that the loudspeaker serves", `space = "…"`}, func(r loudspeaker) (schema.Value[string], *schema.Part, string) {
			return r.Part.Space, part(r), "loudspeaker"
		}),
		word("model", "the model it names", nil, lack{"model", `model = "…"`}, func(r loudspeaker) (schema.Value[string], *schema.Part, string) {
			return r.Part.Model, part(r), "loudspeaker"
		}),
		word("kind", "what sort of loudspeaker it is", schema.WordsOf("loudspeaker", "kind"), lack{"kind of loudspeaker", `kind = "ceiling"`}, func(r loudspeaker) (schema.Value[string], *schema.Part, string) {
			return r.Part.Class, part(r), "loudspeaker"
		}),
		count("quantity", "how many there are of it on its line", func(_ *analysis.System, r loudspeaker) int { return r.Count }),
		stated("tap_w", "W", "its tap", lack{"tap", `tap = "6 W"`}, func(r loudspeaker) (schema.Value[quantity.Power], *schema.Part, string) {
			return r.Part.Tap, part(r), "loudspeaker"
		}),
		computed("load_w", "W", "what one takes at the voltage of its output", func(_ *analysis.System, r loudspeaker) power { return r.Each }),
		computed("all_w", "W", "what all of the block take", func(_ *analysis.System, r loudspeaker) power { return r.All() }),
		computed("receives_w", "W", "the most that one receives at full output, after its cable", func(_ *analysis.System, r loudspeaker) power { return r.Receives() }),
		stated("rated_w", "W", "its rated power", lack{"rated power", `rated_power = "10 W"`}, func(r loudspeaker) (schema.Value[quantity.Power], *schema.Part, string) {
			return r.Part.RatedPower, part(r), "loudspeaker"
		}),
		stated("sensitivity_db", "dB", "its sensitivity, 1 W at 1 m", lack{"sensitivity", `sensitivity = "92 dB"`}, func(r loudspeaker) (schema.Value[quantity.SoundPressureLevel], *schema.Part, string) {
			return r.Part.Sensitivity, part(r), "loudspeaker"
		}),
		stated("coverage_deg", "deg", "its angle of coverage", lack{"angle of coverage", `coverage = "90 deg"`}, func(r loudspeaker) (schema.Value[quantity.Angle], *schema.Part, string) {
			return r.Part.Coverage, part(r), "loudspeaker"
		}),
		stated("lowest_frequency_hz", "Hz", "the lowest frequency it takes", lack{"lowest frequency it takes", `lowest_frequency = "120 Hz"`}, func(r loudspeaker) (schema.Value[quantity.Frequency], *schema.Part, string) {
			return r.Part.LowestFrequency, part(r), "loudspeaker"
		}),
		count("attenuators", "the attenuators it stands behind", func(_ *analysis.System, r loudspeaker) int { return len(r.Behind) }),
		fact("assumed", "whether it is marked as assumed", func(_ *analysis.System, r loudspeaker) (bool, []analysis.Missing) { return r.Assumed, nil }),
	}
}

func attenuatorFigures() []figure[attenuator] {
	part := func(a attenuator) *schema.Part { return &a.Part.Part }
	return []figure[attenuator]{
		named("name", "its name", func(a attenuator) string { return a.Part.Name }),
		named("line", "the line it stands on", func(a attenuator) string { return a.Line.Part.Name }),
		word("model", "the model it names", nil, lack{"model", `model = "…"`}, func(a attenuator) (schema.Value[string], *schema.Part, string) {
			return a.Part.Model, part(a), "attenuator"
		}),
		count("quantity", "how many there are of it", func(_ *analysis.System, a attenuator) int { return a.Count }),
		stated("rating_w", "W", "its rating", lack{"rating of the attenuator", `rating = "36 W"`}, func(a attenuator) (schema.Value[quantity.Power], *schema.Part, string) {
			return a.Part.Rating, part(a), "attenuator"
		}),
		computed("behind_w", "W", "what stands behind one of it takes", func(_ *analysis.System, a attenuator) power { return a.Behind }),
		word("override", "what lifts it for an announcement", schema.WordsOf("attenuator", "override"), lack{"override", `override = "24 V relay"`}, func(a attenuator) (schema.Value[string], *schema.Part, string) {
			return a.Part.Override, part(a), "attenuator"
		}),
		fact("lifted", "whether something lifts it for an announcement", func(_ *analysis.System, a attenuator) (bool, []analysis.Missing) {
			lifted, said := a.Lifted()
			if !said {
				return false, []analysis.Missing{lack{"override", `override = "24 V relay"`}.in("attenuator", part(a))}
			}
			return lifted, nil
		}),
		fact("to_off", "whether it can be turned off altogether", func(_ *analysis.System, a attenuator) (bool, []analysis.Missing) {
			if !a.Part.Lowest.Set() {
				return false, []analysis.Missing{a.Missing("how far the attenuator can be turned down", `lowest = "-20 dB"`)}
			}
			return a.Part.Lowest.V.Off, nil
		}),
		count("inside", "the attenuators it stands behind", func(_ *analysis.System, a attenuator) int { return len(a.Inside) }),
	}
}
