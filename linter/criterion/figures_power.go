package criterion

import (
	"fmt"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Figures of amplifiers, their channels and outputs, and of supplies.

type (
	amplifier = *analysis.Amplifier
	channel   = *analysis.Channel
	output    = *analysis.Output
	power     = analysis.Figure[quantity.Power]
)

func amplifierFigures() []figure[amplifier] {
	unit := func(at func(u *schema.UnitData) schema.Value[quantity.Power]) func(a amplifier) (schema.Value[quantity.Power], *schema.Part, string) {
		return func(a amplifier) (schema.Value[quantity.Power], *schema.Part, string) {
			return at(&a.Part.UnitData), &a.Part.Part, "amplifier"
		}
	}
	return []figure[amplifier]{
		named("name", "its name", func(a amplifier) string { return a.Part.Name }),
		word("model", "the model it names", nil, lack{"model", `model = "…"`}, func(a amplifier) (schema.Value[string], *schema.Part, string) {
			return a.Part.Model, &a.Part.Part, "amplifier"
		}),
		word("kind", "what sort of amplifier it is", nil, lack{"kind of amplifier", `kind = "mixer amplifier"`}, func(a amplifier) (schema.Value[string], *schema.Part, string) {
			return a.Part.Class, &a.Part.Part, "amplifier"
		}),
		computed("load_w", "W", "what its loudspeakers take at nominal line voltage, on all its channels", func(_ *analysis.System, a amplifier) power { return loadOf(a.Channels) }),
		computed("rated_w", "W", "rated power of all its channels", func(_ *analysis.System, a amplifier) power { return ratedOf(a.Channels) }),
		computed("load_percent", "%", "its load, of its rated power", func(_ *analysis.System, a amplifier) analysis.Figure[quantity.Percent] {
			return loadShare(loadOf(a.Channels), ratedOf(a.Channels))
		}),
		count("channels", "its power channels", func(_ *analysis.System, a amplifier) int { return len(a.Channels) }),
		count("lines", "the lines on it", func(_ *analysis.System, a amplifier) int { return len(a.Lines) }),
		count("loudspeakers", "the loudspeakers on it", func(_ *analysis.System, a amplifier) int { return loudspeakersOn(a.Lines) }),
		stated("high_pass_hz", "Hz", "its high-pass", lack{"high-pass", `high_pass = "120 Hz"`}, func(a amplifier) (schema.Value[quantity.Frequency], *schema.Part, string) {
			return a.Part.HighPass, &a.Part.Part, "amplifier"
		}),
		stated("mains_idle_w", "W", "what it takes from the mains without signal", lack{"mains power without signal", `mains_idle = "20 W"`}, unit(func(u *schema.UnitData) schema.Value[quantity.Power] { return u.MainsIdle })),
		stated("mains_full_w", "W", "what it takes from the mains at full output", lack{"mains power at full output", `mains_full = "350 W"`}, unit(func(u *schema.UnitData) schema.Value[quantity.Power] { return u.MainsFull })),
	}
}

func channelFigures() []figure[channel] {
	return []figure[channel]{
		named("name", "its name", func(c channel) string { return c.Part.Name }),
		named("amplifier", "the amplifier it belongs to", func(c channel) string { return c.Amplifier.Part.Name }),
		computed("load_w", "W", "what the loudspeakers on it take at nominal line voltage", func(_ *analysis.System, c channel) power { return c.Load }),
		computed("rated_w", "W", "its rated power", func(_ *analysis.System, c channel) power { return c.Rated }),
		computed("load_percent", "%", "its load, of its rated power", func(_ *analysis.System, c channel) analysis.Figure[quantity.Percent] {
			return loadShare(c.Load, c.Rated)
		}),
		computed("in_hand_w", "W", "what its rated power leaves over its load; below 0 when that is too much", func(_ *analysis.System, c channel) power { return inHand(c.Load, c.Rated) }),
		computed("assumed_w", "W", "the part of its load that rests on parts marked as assumed", func(_ *analysis.System, c channel) power {
			return power{Value: c.AssumedLoad, Missing: c.Load.Missing}
		}),
		count("outputs", "the outputs on it", func(_ *analysis.System, c channel) int { return len(c.Outputs) }),
		count("lines", "the lines on it", func(_ *analysis.System, c channel) int { return len(linesOn(c)) }),
		count("loudspeakers", "the loudspeakers on it", func(_ *analysis.System, c channel) int { return loudspeakersOn(linesOn(c)) }),
	}
}

func outputFigures() []figure[output] {
	return []figure[output]{
		named("name", "its name", func(o output) string { return o.Part.Name }),
		named("amplifier", "the amplifier it belongs to", func(o output) string { return o.Amplifier.Part.Name }),
		computed("voltage_v", "V", "its voltage at rated power: the line voltage", func(_ *analysis.System, o output) analysis.Figure[quantity.Voltage] { return o.Volts }),
		fact("constant_voltage", "whether it feeds a line of constant voltage, such as 100 V", func(_ *analysis.System, o output) (bool, []analysis.Missing) { return constantVoltage(o) }),
		computed("load_w", "W", "what the loudspeakers on it take at that voltage", func(_ *analysis.System, o output) power { return o.Load }),
		stated("highest_load_w", "W", "the highest load it may have by its data sheet", lack{"highest load of the output", `highest_load = "120 W"`}, func(o output) (schema.Value[quantity.Power], *schema.Part, string) {
			return o.Part.HighestLoad, &o.Part.Part, "output"
		}),
		computed("impedance_ohm", "ohm", "the lowest impedance it sees, cables included", func(_ *analysis.System, o output) analysis.Figure[quantity.Resistance] { return o.Impedance }),
		computed("floor_ohm", "ohm", "the impedance at which a line output gives the rated power of its channel", func(_ *analysis.System, o output) analysis.Figure[quantity.Resistance] { return o.Floor }),
		stated("lowest_impedance_ohm", "ohm", "the lowest impedance it may see by its data sheet", lack{"lowest impedance of the output", `lowest_impedance = "4 ohm"`}, func(o output) (schema.Value[quantity.Resistance], *schema.Part, string) {
			return o.Part.LowestImpedance, &o.Part.Part, "output"
		}),
		count("lines", "the lines on it", func(_ *analysis.System, o output) int { return len(o.Lines) }),
		count("loudspeakers", "the loudspeakers on it", func(_ *analysis.System, o output) int { return loudspeakersOn(o.Lines) }),
	}
}

func supplyFigures() []figure[*analysis.Supply] {
	type supply = *analysis.Supply
	return []figure[supply]{
		named("name", "its name", func(s supply) string { return s.Part.Name }),
		count("units", "the amplifiers and mixers it feeds", func(_ *analysis.System, s supply) int { return len(s.Units) }),
		stated("breaker_a", "A", "rating of its breaker", lack{"rating of the breaker", `breaker = "16 A"`}, func(s supply) (schema.Value[quantity.Current], *schema.Part, string) {
			return s.Part.Breaker, &s.Part.Part, "supply"
		}),
		stated("battery_v", "V", "battery voltage", lack{"battery voltage", `battery = "24 V"`}, func(s supply) (schema.Value[quantity.Voltage], *schema.Part, string) {
			return s.Part.Battery, &s.Part.Part, "supply"
		}),
		stated("capacity_ah", "Ah", "battery capacity", lack{"capacity of the battery", `capacity = "65 Ah"`}, func(s supply) (schema.Value[quantity.Charge], *schema.Part, string) {
			return s.Part.Capacity, &s.Part.Part, "supply"
		}),
		stated("standby_h", "h", "how long it is to wait without mains", lack{"time the supply is to wait without mains", `standby = "24 h"`}, func(s supply) (schema.Value[quantity.Duration], *schema.Part, string) {
			return s.Part.Standby, &s.Part.Part, "supply"
		}),
		stated("announcement_min", "min", "how long it is to announce after that", lack{"time the supply is to announce after waiting", `announcement = "30 min"`}, func(s supply) (schema.Value[quantity.Duration], *schema.Part, string) {
			return s.Part.Announcement, &s.Part.Part, "supply"
		}),
		computed("mains_idle_w", "W", "what its units take from the mains without signal", func(_ *analysis.System, s supply) power { return s.Mains.Idle }),
		computed("mains_full_w", "W", "what its units take from the mains at rated output", func(_ *analysis.System, s supply) power { return s.Mains.Full }),
		computed("waiting_a", "A", "what its battery gives while nothing is announced", func(_ *analysis.System, s supply) analysis.Figure[quantity.Current] {
			return s.Standby(1, 1, 1).Waiting
		}),
		computed("announcing_a", "A", "what its battery gives with every loudspeaker at full output", func(_ *analysis.System, s supply) analysis.Figure[quantity.Current] {
			return s.Standby(1, 1, 1).Announcing
		}),
	}
}

// loadOf and ratedOf add up channels.
func loadOf(channels []channel) power {
	return total(channels, func(c channel) power { return c.Load })
}

func ratedOf(channels []channel) power {
	return total(channels, func(c channel) power { return c.Rated })
}

func total[T any](all []T, of func(T) power) power {
	var f power
	texts := make([]string, len(all))
	for i, one := range all {
		p := of(one)
		f.Missing = analysis.MergeMissing(f.Missing, p.Missing)
		f.Value += p.Value
		f.From = append(f.From, p.From...)
		f.Assumed = append(f.Assumed, p.Assumed...)
		texts[i] = p.Value.String()
		f.Sum = p.Sum
	}
	if len(all) > 1 && f.Known() {
		f.Sum = fmt.Sprintf("%s = %s", strings.Join(texts, " + "), f.Value)
	}
	return f
}

func loadShare(load, rated power) analysis.Figure[quantity.Percent] {
	f := ratio(load, rated, "")
	f.Sum = fmt.Sprintf("%s / %s = %s", load.Value, rated.Value, f.Value)
	return f
}

func inHand(load, rated power) power {
	f := power{Value: rated.Value - load.Value, Missing: analysis.MergeMissing(load.Missing, rated.Missing), From: load.From, Assumed: load.Assumed}
	f.Sum = fmt.Sprintf("%s − %s = %s", rated.Value, load.Value, f.Value)
	return f
}

func linesOn(c channel) []*analysis.Line {
	var all []*analysis.Line
	for _, o := range c.Outputs {
		all = append(all, o.Lines...)
	}
	return all
}

func loudspeakersOn(lines []*analysis.Line) int {
	n := 0
	for _, l := range lines {
		n += l.Loudspeakers
	}
	return n
}

// constantVoltage tells that an output is one of a line.
func constantVoltage(o output) (bool, []analysis.Missing) {
	if o.Kind == analysis.UnknownOutput {
		return false, []analysis.Missing{lack{"voltage of the output", `volts = "100 V"`}.in("output", &o.Part.Part)}
	}
	return o.Kind == analysis.ConstantVoltage, nil
}
