package schema

import (
	"sync"

	"loudlint/schema/quantity"
)

// dialect is every block there is. It is built once and never changed.
type dialect struct {
	system      *block[System]
	given       *block[Given]
	use         *block[Use]
	amplifier   *block[Unit]
	mixer       *block[Unit]
	channel     *block[Channel]
	output      *block[Output]
	input       *block[Input]
	send        *block[Send]
	line        *block[Line]
	loudspeaker *block[Loudspeaker]
	attenuator  *block[Attenuator]
	branch      *block[Branch]
	existing    *block[Existing]
	lineEnd     *block[LineEnd]
	microphone  *block[Source]
	music       *block[Source]
	message     *block[Source]
	telephone   *block[Source]
	also        *block[Feed]
	muteLink    *block[MuteLink]
	group       *block[Group]
	space       *block[Space]
	surface     *block[Surface]
	reading     *block[Reading]
	supply      *block[Supply]
	safety      *block[Safety]
	part        *block[Item]
	deviation   *block[Deviation]
	criteria    *block[Criteria]
	limit       *block[Limit]
	criterion   *block[Criterion]

	amplifierModel   *block[UnitModel]
	mixerModel       *block[UnitModel]
	loudspeakerModel *block[LoudspeakerModel]
	attenuatorModel  *block[AttenuatorModel]
	microphoneModel  *block[MicrophoneModel]
	cableModel       *block[CableModel]
	connectorModel   *block[ConnectorModel]

	top  []topBlock // in the order of the reference
	tops []string

	descriptions func() []blockDescription // made at first use
}

// topBlock is a block that stands on the outermost level of a file.
type topBlock struct {
	child[fragment]
	catalogue bool // may stand in a file that is used
}

// theDialect builds the declarations at first use: their closures are cheap,
// but nothing is worth doing before the arguments are read.
var theDialect = sync.OnceValue(newDialect)

func newDialect() *dialect {
	x := &dialect{}
	x.descriptions = sync.OnceValue(x.describe)
	x.declareJob()
	x.declareUnits()
	x.declareLines()
	x.declareSources()
	x.declareSurroundings()
	x.declareAgreements()
	x.declareModels()

	put := func(c child[fragment]) { x.top = append(x.top, topBlock{child: c}) }
	share := func(c child[fragment]) { x.top = append(x.top, topBlock{child: c, catalogue: true}) }
	put(nested(func() *block[System] { return x.system }, func(f *fragment, v *System) { f.systems = append(f.systems, v) }))
	share(nested(func() *block[Use] { return x.use }, func(f *fragment, v *Use) { f.uses = append(f.uses, v) }))
	share(nested(func() *block[Given] { return x.given }, func(*fragment, *Given) {}))
	put(nested(func() *block[Unit] { return x.amplifier }, func(f *fragment, v *Unit) { v.Kind = KindAmplifier; f.units = append(f.units, v) }))
	put(nested(func() *block[Unit] { return x.mixer }, func(f *fragment, v *Unit) { v.Kind = KindMixer; f.units = append(f.units, v) }))
	put(nested(func() *block[Line] { return x.line }, func(f *fragment, v *Line) { f.lines = append(f.lines, v) }))
	put(nested(func() *block[Group] { return x.group }, func(f *fragment, v *Group) { f.groups = append(f.groups, v) }))
	for _, s := range []struct {
		kind  string
		block func() *block[Source]
	}{
		{KindMicrophone, func() *block[Source] { return x.microphone }},
		{KindMusic, func() *block[Source] { return x.music }},
		{KindMessage, func() *block[Source] { return x.message }},
		{KindTelephone, func() *block[Source] { return x.telephone }},
	} {
		put(nested(s.block, func(f *fragment, v *Source) { v.Kind = s.kind; f.sources = append(f.sources, v) }))
	}
	put(nested(func() *block[MuteLink] { return x.muteLink }, func(f *fragment, v *MuteLink) { f.muteLinks = append(f.muteLinks, v) }))
	put(nested(func() *block[Space] { return x.space }, func(f *fragment, v *Space) { f.spaces = append(f.spaces, v) }))
	put(nested(func() *block[Reading] { return x.reading }, func(f *fragment, v *Reading) { f.readings = append(f.readings, v) }))
	put(nested(func() *block[Supply] { return x.supply }, func(f *fragment, v *Supply) { f.supplies = append(f.supplies, v) }))
	put(nested(func() *block[Safety] { return x.safety }, func(f *fragment, v *Safety) { f.safety = append(f.safety, v) }))
	put(nested(func() *block[Item] { return x.part }, func(f *fragment, v *Item) { f.items = append(f.items, v) }))
	put(nested(func() *block[Deviation] { return x.deviation }, func(f *fragment, v *Deviation) { f.deviations = append(f.deviations, v) }))
	share(nested(func() *block[Criteria] { return x.criteria }, func(f *fragment, v *Criteria) { f.criteria = append(f.criteria, v) }))
	share(nested(func() *block[Criterion] { return x.criterion }, func(f *fragment, v *Criterion) { f.criterions = append(f.criterions, v) }))
	share(nested(func() *block[UnitModel] { return x.amplifierModel }, func(f *fragment, v *UnitModel) {
		v.Kind = KindAmplifier
		f.catalogue.Units = append(f.catalogue.Units, v)
	}))
	share(nested(func() *block[UnitModel] { return x.mixerModel }, func(f *fragment, v *UnitModel) { v.Kind = KindMixer; f.catalogue.Units = append(f.catalogue.Units, v) }))
	share(nested(func() *block[LoudspeakerModel] { return x.loudspeakerModel }, func(f *fragment, v *LoudspeakerModel) {
		f.catalogue.Loudspeakers = append(f.catalogue.Loudspeakers, v)
	}))
	share(nested(func() *block[AttenuatorModel] { return x.attenuatorModel }, func(f *fragment, v *AttenuatorModel) {
		f.catalogue.Attenuators = append(f.catalogue.Attenuators, v)
	}))
	share(nested(func() *block[MicrophoneModel] { return x.microphoneModel }, func(f *fragment, v *MicrophoneModel) {
		f.catalogue.Microphones = append(f.catalogue.Microphones, v)
	}))
	share(nested(func() *block[CableModel] { return x.cableModel }, func(f *fragment, v *CableModel) { f.catalogue.Cables = append(f.catalogue.Cables, v) }))
	share(nested(func() *block[ConnectorModel] { return x.connectorModel }, func(f *fragment, v *ConnectorModel) {
		f.catalogue.Connectors = append(f.catalogue.Connectors, v)
	}))
	for _, t := range x.top {
		x.tops = append(x.tops, t.name)
	}
	return x
}

// What people look for and the dialect does not hold, with the reason.
func notModelledOnLines() map[string]string {
	return map[string]string{
		"selector":    "A programme selector on a wall switches whole lines by hand; which line then feeds the loudspeaker cannot be computed. Write one line per programme.",
		"transformer": "A step-down transformer on a line is not computed: its own losses would be guessed. Write what stands behind it as a line of its own.",
		"booster":     "A booster fed from a loudspeaker line is not computed. Feed it from an output of the mixer or amplifier, with a send.",
	}
}

func formerly[T any](part func(*T) *Part) []attribute[T] {
	return []attribute[T]{
		text("formerly", func(t *T) *Value[string] { return &part(t).Formerly }, "the name this part had before it was renamed, so that comparison and records follow it", example("Old name")),
		word("basis", []string{"seen", "planned", "assumed"}, func(t *T) *Value[string] { return &part(t).Basis }, "how sure this is: seen on site, planned, or only assumed", example("seen")),
	}
}

func numbering[T any](low, high int, at func(*T) *Numbering) []attribute[T] {
	return []attribute[T]{
		whole("quantity", low, high, func(t *T) *Value[int] { return &at(t).Quantity }, "how many equal ones there are; they are named with the numbers from first up", example("8")),
		whole("first", 0, MaxRun, func(t *T) *Value[int] { return &at(t).First }, "the number of the first one of a run; 1 when left out", example("1")),
	}
}

func joined[T any](groups ...[]attribute[T]) []attribute[T] {
	var all []attribute[T]
	for _, g := range groups {
		all = append(all, g...)
	}
	return all
}

// Given is a block of numbers and texts used elsewhere as given.x. Its values
// are read before anything else, in parse order, so nothing is kept here.
type Given struct{ Part }

func (x *dialect) declareJob() {
	x.system = (&block[System]{
		name: "system", label: labelName,
		doc: "The job as a whole. A design has one, or none.",
		attributes: []attribute[System]{
			text("reference", func(s *System) *Value[string] { return &s.Reference }, "the number the job goes by", example("KW-31")),
			text("revision", func(s *System) *Value[string] { return &s.Revision }, "which issue of the design this is", example("C")),
			word("duty", []string{"announcements", "music", "announcements and music", "emergency", "emergency, announcements and music"}, func(s *System) *Value[string] { return &s.Duty }, "what the system is for"),
			amount("mains", quantity.Voltages, func(s *System) *Value[quantity.Voltage] { return &s.Mains }, "mains voltage on site", example("230 V")),
			word("wiring_rules", []string{"US", "Canada", "Europe", "UK", "Australia", "New Zealand", "Japan", "other"}, func(s *System) *Value[string] { return &s.WiringRules }, "whose wiring rules apply; there is no default", example("Europe")),
			amount("conductor_temperature", quantity.Temperatures, func(s *System) *Value[quantity.Temperature] { return &s.ConductorTemperature }, "temperature of the conductors in use; 20 °C when left out", example("30 C")),
			word("units", []string{"metric", "US"}, func(s *System) *Value[string] { return &s.Units }, "units of printed results"),
			text("polarity", func(s *System) *Value[string] { return &s.Polarity }, "which conductor goes to which terminal, the same everywhere", example("brown to +, blue to -")),
			text("formerly", func(s *System) *Value[string] { return &s.Formerly }, "the name the job had before", example("Old name")),
		},
	}).seal()
	x.given = (&block[Given]{
		name: "given", label: labelNone,
		doc: "Numbers and texts used below as given.x, put into a text with a template: \"${given.bay} m\". Names are free.",
	}).seal()
	x.use = (&block[Use]{
		name: "use", label: labelNone,
		doc: "Brings another file: a catalogue of models, or criteria.",
		attributes: []attribute[Use]{
			fileName("file", func(u *Use) *Value[string] { return &u.File }, "path of the file, from the folder of this one, with forward slashes", example("catalogue.pa.hcl"), required),
		},
	}).seal()
}
