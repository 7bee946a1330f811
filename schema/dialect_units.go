package schema

import "loudlint/schema/quantity"

func unitData() []attribute[UnitData] {
	return []attribute[UnitData]{
		text("kind", func(u *UnitData) *Value[string] { return &u.Class }, "what sort of unit it is", example("mixer amplifier")),
		amount("rated_power", quantity.Powers, func(u *UnitData) *Value[quantity.Power] { return &u.RatedPower }, "rated power of an amplifier with one power channel; with several, each channel block says its own", example("240 W")),
		amount("lowest_impedance", quantity.Resistances, func(u *UnitData) *Value[quantity.Resistance] { return &u.LowestImpedance }, "lowest load impedance allowed on its outputs, where no output says its own", example("4 ohm")),
		amount("high_pass", quantity.Frequencies, func(u *UnitData) *Value[quantity.Frequency] { return &u.HighPass }, "frequency below which it cuts the bass", example("100 Hz")),
		amount("lowest_frequency", quantity.Frequencies, func(u *UnitData) *Value[quantity.Frequency] { return &u.LowestFrequency }, "lowest frequency it delivers at rated power", example("60 Hz")),
		word("wiring_class", []string{"Class 1", "Class 2", "Class 3"}, func(u *UnitData) *Value[string] { return &u.WiringClass }, "wiring class marked at its loudspeaker outputs (US rules)", example("Class 3")),
		word("routing", []string{"one programme, all lines", "one programme, lines switched", "any input to any output", "fixed"}, func(u *UnitData) *Value[string] { return &u.Routing }, "which inputs can reach which outputs"),
		amount("mains_idle", quantity.Powers, func(u *UnitData) *Value[quantity.Power] { return &u.MainsIdle }, "taken from the mains with no signal", example("25 W")),
		amount("mains_full", quantity.Powers, func(u *UnitData) *Value[quantity.Power] { return &u.MainsFull }, "taken from the mains at rated output", example("430 W")),
		amount("battery_volts", quantity.Voltages, func(u *UnitData) *Value[quantity.Voltage] { return &u.BatteryVolts }, "standby supply voltage", example("24 V")),
		amount("battery_idle", quantity.Currents, func(u *UnitData) *Value[quantity.Current] { return &u.BatteryIdle }, "standby supply current with no signal", example("0.9 A")),
		amount("battery_full", quantity.Currents, func(u *UnitData) *Value[quantity.Current] { return &u.BatteryFull }, "standby supply current at rated output", example("28 A")),
		amount("relays", quantity.Rails, func(u *UnitData) *Value[quantity.Rail] { return &u.Relays }, "voltage and current it gives for the override relays of attenuators", example("24 V, 0.5 A")),
		amount("exposure", quantity.Ingresses, func(u *UnitData) *Value[quantity.Ingress] { return &u.Exposure }, "degree of protection (IEC 60529)", example("IP20")),
	}
}

func (x *dialect) unitParts() []child[UnitData] {
	return []child[UnitData]{
		nested(func() *block[Channel] { return x.channel }, func(u *UnitData, c *Channel) { u.Channels = append(u.Channels, c) }),
		nested(func() *block[Output] { return x.output }, func(u *UnitData, o *Output) { u.Outputs = append(u.Outputs, o) }),
		nested(func() *block[Input] { return x.input }, func(u *UnitData, i *Input) { u.Inputs = append(u.Inputs, i) }),
	}
}

func (x *dialect) declareUnits() {
	x.channel = (&block[Channel]{
		name: "channel", label: labelName,
		doc: "A power stage of an amplifier. Load is judged per channel, whatever number of outputs share it.",
		attributes: joined(numbering(1, MaxUnitRun, func(c *Channel) *Numbering { return &c.Numbering }), []attribute[Channel]{
			amount("rated_power", quantity.Powers, func(c *Channel) *Value[quantity.Power] { return &c.RatedPower }, "rated power of the channel", example("120 W")),
		}),
	}).seal()
	x.output = (&block[Output]{
		name: "output", label: labelName,
		doc: "A pair of terminals that leaves a unit: for loudspeakers, or for the next unit.",
		attributes: joined(numbering(1, MaxUnitRun, func(o *Output) *Numbering { return &o.Numbering }), []attribute[Output]{
			name("channel", refChannel, func(o *Output) *Value[string] { return &o.Channel }, "the power channel behind it; for runs of equal length, one to one", example("Main")),
			amount("volts", quantity.Voltages, func(o *Output) *Value[quantity.Voltage] { return &o.Volts }, "line voltage at rated power; 70 V means 100/√2 V", example("100 V")),
			amount("lowest_impedance", quantity.Resistances, func(o *Output) *Value[quantity.Resistance] { return &o.LowestImpedance }, "lowest load impedance allowed", example("8 ohm")),
			amount("highest_load", quantity.Powers, func(o *Output) *Value[quantity.Power] { return &o.HighestLoad }, "highest load allowed on this output alone", example("60 W")),
			amount("rated_into", quantity.Resistances, func(o *Output) *Value[quantity.Resistance] { return &o.RatedInto }, "load impedance at which the rated power is stated", example("8 ohm")),
			flag("switched", func(o *Output) *Value[bool] { return &o.Switched }, "whether it can be switched on and off by itself"),
			word("setting", []string{"on", "off"}, func(o *Output) *Value[string] { return &o.Setting }, "how it is left switched; on when left out"),
			names("never_with", refOutput, func(o *Output) *List[string] { return &o.NeverWith }, "outputs of the same unit that must not be loaded at the same time"),
			word("wiring_class", []string{"Class 1", "Class 2", "Class 3"}, func(o *Output) *Value[string] { return &o.WiringClass }, "wiring class marked at it (US rules)", example("Class 3")),
			amount("level", quantity.Levels, func(o *Output) *Value[quantity.Level] { return &o.Level }, "nominal signal level of an output for the next unit", example("0 dBV")),
			amount("impedance", quantity.Resistances, func(o *Output) *Value[quantity.Resistance] { return &o.Impedance }, "source impedance", example("100 ohm")),
			flag("balanced", func(o *Output) *Value[bool] { return &o.Balanced }, "whether it is balanced"),
			flag("isolated", func(o *Output) *Value[bool] { return &o.Isolated }, "whether it is isolated by a transformer or otherwise"),
			amount("pad", quantity.Gains, func(o *Output) *Value[quantity.Gain] { return &o.Pad }, "how its level control is set", example("-6 dB")),
		}),
	}).seal()
	x.input = (&block[Input]{
		name: "input", label: labelName,
		doc: "A way into a unit: audio, or contacts that only switch.",
		attributes: joined(numbering(1, MaxUnitRun, func(i *Input) *Numbering { return &i.Numbering }), []attribute[Input]{
			word("takes", []string{"microphone", "line", "telephone", "paging desk", "contact"}, func(i *Input) *Value[string] { return &i.Takes }, "what it is made for; a contact input takes no audio"),
			name("channel", refChannel, func(i *Input) *Value[string] { return &i.Channel }, "the power channel it drives, where each channel has its own input", example("Channel 1")),
			amount("sensitivity", quantity.Levels, func(i *Input) *Value[quantity.Level] { return &i.Sensitivity }, "level that gives rated output at full gain", example("-56 dBV")),
			amount("impedance", quantity.Resistances, func(i *Input) *Value[quantity.Resistance] { return &i.Impedance }, "input impedance", example("22 kohm")),
			flag("balanced", func(i *Input) *Value[bool] { return &i.Balanced }, "whether it is balanced"),
			flag("isolated", func(i *Input) *Value[bool] { return &i.Isolated }, "whether it is isolated by a transformer or otherwise"),
			names("connectors", refPlug, func(i *Input) *List[string] { return &i.Connectors }, "what plugs into it", example(`["DIN 5", "XLR 3"]`)),
			words("triggers", []string{"contact", "signal"}, func(i *Input) *List[string] { return &i.Triggers }, "what makes it silence others: a closing contact, its own signal; an empty list for nothing"),
			whole("needs_cores", 1, 40, func(i *Input) *Value[int] { return &i.NeedsCores }, "contacts a plug must have to carry the trigger contact too", example("5")),
			choice("mutes", refInput, func(i *Input) *Choice { return &i.Mutes }, "inputs of the same unit it silences"),
			text("mute_depth", func(i *Input) *Value[string] { return &i.MuteDepth }, "how far it turns them down: \"full\" or in dB", example("full")),
			word("mutes_on", []string{"open", "closed"}, func(i *Input) *Value[string] { return &i.MutesOn }, "which state of a contact input silences"),
			flag("muted_by_others", func(i *Input) *Value[bool] { return &i.MutedByOthers }, "false where it is set so that no other input silences it"),
			word("stereo", []string{"summed inside", "left and right kept", "left only"}, func(i *Input) *Value[string] { return &i.Stereo }, "what a two-channel input does with left and right"),
			text("phantom", func(i *Input) *Value[string] { return &i.Phantom }, "phantom power it gives", example("48 V")),
			flag("opens_outputs", func(i *Input) *Value[bool] { return &i.OpensOutputs }, "whether an announcement at it is heard on switched outputs that are off, too"),
			text("selects", func(i *Input) *Value[string] { return &i.Selects }, "what a paging desk on it can choose", example("each output")),
			text("setting", func(i *Input) *Value[string] { return &i.Setting }, "position of its mic/line switch", example("line")),
			amount("trim", quantity.Gains, func(i *Input) *Value[quantity.Gain] { return &i.Trim }, "how its gain control is set", example("-20 dB")),
			amount("pad", quantity.Gains, func(i *Input) *Value[quantity.Gain] { return &i.Pad }, "loss of a pad that is switched in", example("-20 dB")),
		}),
	}).seal()
	x.send = (&block[Send]{
		name: "send", label: labelName,
		doc: "One of the unit's outputs wired to the input of another unit; named after the output.",
		attributes: joined(numbering(1, MaxUnitRun, func(s *Send) *Numbering { return &s.Numbering }), []attribute[Send]{
			name("into", refUnit, func(s *Send) *Value[string] { return &s.Into }, "the unit it goes to", example("South amp"), required),
			name("input", refInput, func(s *Send) *Value[string] { return &s.Input }, "the input it goes to; for a run, the run's name", example("Line in")),
			amount("lead", quantity.Lengths, func(s *Send) *Value[quantity.Length] { return &s.Lead }, "length of the lead", example("2 m")),
			word("channels", []string{"mono", "left", "right", "stereo"}, func(s *Send) *Value[string] { return &s.Channels }, "what it carries"),
			names("tied_with", refOutput, func(s *Send) *List[string] { return &s.TiedWith }, "other outputs of the unit joined to the same lead", example(`["Main right"]`)),
			word("summed_by", summingWays(), func(s *Send) *Value[string] { return &s.SummedBy }, "how two channels become one on the way"),
		}),
	}).seal()

	lifted := func() []attribute[Unit] { return lift(unitData(), func(u *Unit) *UnitData { return &u.UnitData }) }
	own := []attribute[Unit]{
		name("model", refModel, func(u *Unit) *Value[string] { return &u.Model }, "entry of a catalogue it is", example("house/mixer-240")),
		amount("master", quantity.Gains, func(u *Unit) *Value[quantity.Gain] { return &u.Master }, "how its master control is set", example("-6 dB")),
	}
	children := func() []child[Unit] {
		var all []child[Unit]
		for _, c := range x.unitParts() {
			all = append(all, liftChild(c, func(u *Unit) *UnitData { return &u.UnitData }))
		}
		return append(all, nested(func() *block[Send] { return x.send }, func(u *Unit, s *Send) { u.Sends = append(u.Sends, s) }))
	}
	part := formerly(func(u *Unit) *Part { return &u.Part })
	x.amplifier = (&block[Unit]{
		name: "amplifier", label: labelName,
		doc:        "An amplifier. Everything its model may say it may say itself, and then its own word counts.",
		attributes: joined(own, lifted(), part), children: children(),
	}).seal()
	x.mixer = (&block[Unit]{
		name: "mixer", label: labelName,
		doc:        "A mixer, matrix or pre-amplifier: inputs and outputs without power.",
		attributes: joined(own, lifted(), part), children: children(),
	}).seal()
}

func liftChild[T, C any](c child[C], piece func(*T) *C) child[T] {
	return child[T]{name: c.name, doc: c.doc, describe: c.describe, read: func(d *decoder, to *T, b *hclBlock) { c.read(d, piece(to), b) }}
}

// summingWays are the ways two channels become one.
func summingWays() []string {
	return []string{"input", "output", "resistors", "transformer", "Y-lead", "left only", "right only", "mono output", "pins 2 and 3", "nothing"}
}
