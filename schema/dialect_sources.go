package schema

import "loudlint/schema/quantity"

func sourceData() []attribute[SourceData] {
	return []attribute[SourceData]{
		amount("level", quantity.Levels, func(s *SourceData) *Value[quantity.Level] { return &s.Level }, "nominal level with its reference", example("-10 dBV")),
		amount("impedance", quantity.Resistances, func(s *SourceData) *Value[quantity.Resistance] { return &s.Impedance }, "source impedance", example("200 ohm")),
		flag("balanced", func(s *SourceData) *Value[bool] { return &s.Balanced }, "whether it is balanced"),
		word("trigger", []string{"contact", "signal", "none"}, func(s *SourceData) *Value[string] { return &s.Trigger }, "what it gives to silence others: a contact, its own signal, nothing"),
		text("phantom", func(s *SourceData) *Value[string] { return &s.Phantom }, "phantom power it needs", example("none")),
		word("isolation", []string{"transformer", "optical", "wireless", "none"}, func(s *SourceData) *Value[string] { return &s.Isolation }, "what isolates it"),
		whole("selects", 0, MaxUnitRun, func(s *SourceData) *Value[int] { return &s.Selects }, "how many destinations it can choose", example("16")),
		amount("exposure", quantity.Ingresses, func(s *SourceData) *Value[quantity.Ingress] { return &s.Exposure }, "degree of protection (IEC 60529)", example("IP54")),
	}
}

func feed[T any](at func(*T) *Feed, refs bool) []attribute[T] {
	options := []option{}
	if refs {
		options = append(options, required)
	}
	return []attribute[T]{
		name("into", refUnit, func(t *T) *Value[string] { return &at(t).Into }, "the mixer or amplifier it goes to", append(options, example("Rack"))...),
		name("input", refInput, func(t *T) *Value[string] { return &at(t).Input }, "the input it goes to", example("Mic 1")),
		name("connector", refPlug, func(t *T) *Value[string] { return &at(t).Connector }, "the plug at the unit", example("DIN 5")),
		amount("lead", quantity.Lengths, func(t *T) *Value[quantity.Length] { return &at(t).Lead }, "length of the lead", example("8 m")),
		word("summed_by", summingWays(), func(t *T) *Value[string] { return &at(t).SummedBy }, "how left and right become one"),
	}
}

func (x *dialect) declareSources() {
	x.also = (&block[Feed]{
		name: "also", label: labelNone,
		doc:        "A second place the same source goes to.",
		attributes: feed(func(f *Feed) *Feed { return f }, true),
	}).seal()
	also := []child[Source]{nested(func() *block[Feed] { return x.also }, func(s *Source, f *Feed) { s.Also = append(s.Also, f) })}
	source := func(kind, doc string) *block[Source] {
		return (&block[Source]{
			name: kind, label: labelName, doc: doc, children: also,
			attributes: joined(
				[]attribute[Source]{name("model", refModel, func(s *Source) *Value[string] { return &s.Model }, "entry of a catalogue it is", example("house/desk"))},
				feed(func(s *Source) *Feed { return &s.Feed }, false),
				lift(sourceData(), func(s *Source) *SourceData { return &s.SourceData }),
				[]attribute[Source]{
					whole("priority", 1, 99, func(s *Source) *Value[int] { return &s.Priority }, "1 is the highest; equal numbers do not silence each other", example("1")),
					word("channels", []string{"mono", "stereo"}, func(s *Source) *Value[string] { return &s.Channels }, "how many channels it has"),
					name("stands_in", refSpace, func(s *Source) *Value[string] { return &s.StandsIn }, "the space it stands in", example("Office")),
					amounts("position", quantity.Lengths, func(s *Source) *List[quantity.Length] { return &s.Position }, "where it stands there, along the length and the width of the space, and how high", between(2, 3), example(`["2 m", "4 m"]`)),
					amount("talker_distance", quantity.Lengths, func(s *Source) *Value[quantity.Length] { return &s.TalkerDistance }, "from the talker's mouth to the microphone", example("30 cm")),
					choice("lines", refLineOrGroup, func(s *Source) *Choice { return &s.Lines }, "where it must be heard; everything it reaches when left out"),
					flag("selectable", func(s *Source) *Value[bool] { return &s.Selectable }, "whether it can reach some of its lines without the others"),
					text("started_by", func(s *Source) *Value[string] { return &s.StartedBy }, "what starts it", example("clock contact")),
				},
				formerly(func(s *Source) *Part { return &s.Part }),
			),
		}).seal()
	}
	x.microphone = source(KindMicrophone, "A microphone or paging desk.")
	x.music = source(KindMusic, "A music player, tuner or other background source.")
	x.message = source(KindMessage, "A store of spoken messages, chimes or bells.")
	x.telephone = source(KindTelephone, "A page port of a telephone system.")
	x.muteLink = (&block[MuteLink]{
		name: "mute_link", label: labelName,
		doc: "What a fire panel does to the audio. It sits on trigger terminals and takes no audio input.",
		attributes: joined([]attribute[MuteLink]{
			name("into", refUnit, func(m *MuteLink) *Value[string] { return &m.Into }, "the unit it acts on", example("Rack")),
			name("input", refInput, func(m *MuteLink) *Value[string] { return &m.Input }, "the terminals it is wired to", example("Fire mute")),
			word("contact", []string{"opens in alarm", "closes in alarm"}, func(m *MuteLink) *Value[string] { return &m.Contact }, "what the panel's contact does"),
			choice("mutes", refSource, func(m *MuteLink) *Choice { return &m.Mutes }, "sources it silences"),
			flag("latching", func(m *MuteLink) *Value[bool] { return &m.Latching }, "whether silence holds until it is reset"),
			text("restored_by", func(m *MuteLink) *Value[string] { return &m.RestoredBy }, "what brings the sound back", example("panel reset")),
			text("joint", func(m *MuteLink) *Value[string] { return &m.Joint }, "how the link is joined to the unit", example("fixed box, clamped")),
			flag("monitored", func(m *MuteLink) *Value[bool] { return &m.Monitored }, "whether the link is watched for faults"),
			text("tested", func(m *MuteLink) *Value[string] { return &m.Tested }, "when and how it was tested", example("with the panel, at handover")),
		}, formerly(func(m *MuteLink) *Part { return &m.Part })),
	}).seal()
	x.group = (&block[Group]{
		name: "group", label: labelName,
		doc: "A name for a list of lines.",
		attributes: []attribute[Group]{
			names("lines", refLine, func(g *Group) *List[string] { return &g.Lines }, "the lines", required, example(`["Floor 1", "Floor 2"]`)),
			text("formerly", func(g *Group) *Value[string] { return &g.Formerly }, "the name it had before", example("Old name")),
		},
	}).seal()
}
