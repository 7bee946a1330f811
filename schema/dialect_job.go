package schema

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

func (x *dialect) declareSurroundings() {
	x.surface = (&block[Surface]{
		name: "surface", label: labelName,
		doc: "Part of what encloses a space, for computing its reverberation.",
		attributes: []attribute[Surface]{
			amount("area", quantity.FloorAreas, func(s *Surface) *Value[quantity.FloorArea] { return &s.Area }, "its area", example("63 m2"), required),
			text("material", func(s *Surface) *Value[string] { return &s.Material }, "what it is made of", example("painted plaster")),
			fractions("absorption", 0, 1, func(s *Surface) *Spectrum[float64] { return &s.Absorption }, "absorption coefficient, single or per frequency"),
		},
	}).seal()
	x.space = (&block[Space]{
		name: "space", label: labelName,
		doc: "Where people listen.",
		attributes: joined([]attribute[Space]{
			name("like", refSpace, func(s *Space) *Value[string] { return &s.Like }, "another space this one equals, except for what is written here", example("Classroom")),
			whole("alike", 1, 100000, func(s *Space) *Value[int] { return &s.Alike }, "how many equal spaces this is; devices are shared out in walking order", example("16")),
			amount("length", quantity.Lengths, func(s *Space) *Value[quantity.Length] { return &s.Length }, "length in plan", example("18 m")),
			amount("width", quantity.Lengths, func(s *Space) *Value[quantity.Length] { return &s.Width }, "width in plan", example("10 m")),
			amount("area", quantity.FloorAreas, func(s *Space) *Value[quantity.FloorArea] { return &s.Area }, "floor area, when length and width are not known", example("50 m2")),
			pairs("outline", 3, outlineWords, func(s *Space) *[]List[quantity.Length] { return &s.Outline }, "corners of a floor that is no rectangle"),
			amount("height", quantity.Lengths, func(s *Space) *Value[quantity.Length] { return &s.Height }, "floor to ceiling", example("2.7 m")),
			pairs("heights", 2, heightsWords, func(s *Space) *[]List[quantity.Length] { return &s.Heights }, "the same where the ceiling steps: how far along the length each part begins, and its height"),
			word("listeners", []string{"standing", "seated"}, func(s *Space) *Value[string] { return &s.Listeners }, "height of the ears: 1.5 m standing, 1.2 m seated; seated when left out"),
			noise("noise", func(s *Space) *Noise { return &s.Noise }, "noise while people listen"),
			amount("wanted_over_noise", quantity.Gains, func(s *Space) *Value[quantity.Gain] { return &s.WantedOverNoise }, "how far speech is to stand above the noise", example("10 dB")),
			amount("wanted_level", quantity.SoundLevels, func(s *Space) *Value[quantity.SoundLevel] { return &s.WantedLevel }, "level of speech that is wanted, whatever the noise", example("75 dBA")),
			amount("programme", quantity.SoundLevels, func(s *Space) *Value[quantity.SoundLevel] { return &s.Programme }, "level of other sound in the space, such as a house system", example("95 dBA")),
			name("muted_by", refMuteLink, func(s *Space) *Value[string] { return &s.MutedBy }, "the mute link that silences that sound", example("Fire panel")),
			spectrum("reverberation", quantity.Durations, func(s *Space) *Spectrum[quantity.Duration] { return &s.Reverberation }, "reverberation time, single or per octave", example("1.2 s")),
			flag("outdoors", func(s *Space) *Value[bool] { return &s.Outdoors }, "whether it is open to the sky"),
			flag("partly_open", func(s *Space) *Value[bool] { return &s.PartlyOpen }, "whether a side or part of the roof is open, such as a platform under a canopy"),
			amount("exposure", quantity.Ingresses, func(s *Space) *Value[quantity.Ingress] { return &s.Exposure }, "degree of protection that what stands in it needs (IEC 60529)", example("IP55")),
			text("ceiling", func(s *Space) *Value[string] { return &s.Ceiling }, "what the ceiling is", example("suspended")),
			flag("air_handling_void", func(s *Space) *Value[bool] { return &s.AirHandlingVoid }, "whether the void above the ceiling carries air for the building"),
			layout("layout", func(s *Space) *Value[Layout] { return &s.Layout }, "how loudspeakers without positions are laid out"),
			amount("temperature", quantity.Temperatures, func(s *Space) *Value[quantity.Temperature] { return &s.Temperature }, "air temperature", example("20 C")),
			amount("humidity", quantity.Percents, func(s *Space) *Value[quantity.Percent] { return &s.Humidity }, "relative humidity", example("50 %")),
		}, formerly(func(s *Space) *Part { return &s.Part })),
		children: []child[Space]{nested(func() *block[Surface] { return x.surface }, func(s *Space, f *Surface) { s.Surfaces = append(s.Surfaces, f) })},
	}).seal()
	x.reading = (&block[Reading]{
		name: "reading", label: labelName,
		doc: "What a meter said.",
		attributes: joined([]attribute[Reading]{
			name("line", refLine, func(r *Reading) *Value[string] { return &r.Line }, "the line that was measured", example("North")),
			name("at", refDevice, func(r *Reading) *Value[string] { return &r.At }, "the device where it was measured; at the amplifier when left out", example("Aisle 2 7")),
			name("beyond", refDevice, func(r *Reading) *Value[string] { return &r.Beyond }, "the device beyond which the line was opened and measured", example("Tee A")),
			name("space", refSpace, func(r *Reading) *Value[string] { return &r.Space }, "the space where a level was measured", example("Hall")),
			meterImpedance("impedance", func(r *Reading) *Value[Impedance] { return &r.Impedance }, "impedance or resistance shown; without a unit if none was noted"),
			amount("frequency", quantity.Frequencies, func(r *Reading) *Value[quantity.Frequency] { return &r.Frequency }, "frequency of the meter's tone", example("1 kHz")),
			word("instrument", []string{"impedance meter", "ohmmeter", "multimeter", "insulation tester", "level meter"}, func(r *Reading) *Value[string] { return &r.Instrument }, "what it was measured with"),
			word("attenuators", []string{"all fully up", "as found", "overridden"}, func(r *Reading) *Value[string] { return &r.Attenuators }, "how the attenuators stood"),
			flag("amplifier_disconnected", func(r *Reading) *Value[bool] { return &r.AmplifierDisconnected }, "whether the amplifier was taken off the line"),
			amount("volts", quantity.Voltages, func(r *Reading) *Value[quantity.Voltage] { return &r.Volts }, "signal voltage shown", example("0.8 V")),
			text("signal", func(r *Reading) *Value[string] { return &r.Signal }, "the signal at that time", example("1 kHz tone at rated output")),
			amount("earth", quantity.Resistances, func(r *Reading) *Value[quantity.Resistance] { return &r.Earth }, "resistance between the line and earth, with a meter", example("2 Mohm")),
			amount("insulation", quantity.Resistances, func(r *Reading) *Value[quantity.Resistance] { return &r.Insulation }, "insulation resistance, with an insulation tester", example("50 Mohm")),
			amount("level", quantity.SoundLevels, func(r *Reading) *Value[quantity.SoundLevel] { return &r.Level }, "sound level in the space", example("78 dBA")),
			text("date", func(r *Reading) *Value[string] { return &r.Date }, "when, as year-month-day", example("2026-05-04")),
		}, formerly(func(r *Reading) *Part { return &r.Part })),
	}).seal()
	x.supply = (&block[Supply]{
		name: "supply", label: labelName,
		doc: "Mains and standby power.",
		attributes: joined([]attribute[Supply]{
			names("feeds", refUnit, func(s *Supply) *List[string] { return &s.Feeds }, "the units it feeds", example(`["Matrix", "Amp A"]`)),
			amount("breaker", quantity.Currents, func(s *Supply) *Value[quantity.Current] { return &s.Breaker }, "rating of the breaker or fuse", example("16 A")),
			amount("battery", quantity.Voltages, func(s *Supply) *Value[quantity.Voltage] { return &s.Battery }, "battery voltage", example("24 V")),
			amount("capacity", quantity.Charges, func(s *Supply) *Value[quantity.Charge] { return &s.Capacity }, "battery capacity", example("65 Ah")),
			amount("standby", quantity.Durations, func(s *Supply) *Value[quantity.Duration] { return &s.Standby }, "how long it is to wait without mains", example("24 h")),
			amount("announcement", quantity.Durations, func(s *Supply) *Value[quantity.Duration] { return &s.Announcement }, "how long it is to announce after that", example("30 min")),
			number("ageing", 1, 3, func(s *Supply) *Value[float64] { return &s.Ageing }, "factor for an old battery", example("1.25")),
			amount("relays", quantity.Rails, func(s *Supply) *Value[quantity.Rail] { return &s.Relays }, "voltage and current it has for relays", example("24 V, 4 A")),
		}, formerly(func(s *Supply) *Part { return &s.Part })),
	}).seal()
	x.safety = (&block[Safety]{
		name: "safety", label: labelNone,
		doc: "What the design states about safe work. It adds to local codes and licensed practice and never replaces them.",
		attributes: []attribute[Safety]{
			word("line_terminals", []string{"covered", "open"}, func(s *Safety) *Value[string] { return &s.LineTerminals }, "whether the loudspeaker line terminals are covered against touch"),
			word("isolation", []string{"before work", "none"}, func(s *Safety) *Value[string] { return &s.Isolation }, "whether the equipment is made dead before work"),
			flag("mains_separated", func(s *Safety) *Value[bool] { return &s.MainsSeparated }, "whether line, microphone and mains wiring are kept apart"),
			flag("earthed", func(s *Safety) *Value[bool] { return &s.Earthed }, "whether the rack and class I equipment are earthed"),
			amount("highest_level", quantity.SoundLevels, func(s *Safety) *Value[quantity.SoundLevel] { return &s.HighestLevel }, "highest sound level people are exposed to", example("95 dBA")),
			text("work_at_height", func(s *Safety) *Value[string] { return &s.WorkAtHeight }, "how work at height is done", example("mobile platform, two people")),
			text("fitted_by", func(s *Safety) *Value[string] { return &s.FittedBy }, "who does the electrical work", example("licensed electrician")),
			text("local_rules", func(s *Safety) *Value[string] { return &s.LocalRules }, "which local rules were looked at", example("wiring rules of the country, current edition")),
			text("emergency_by", func(s *Safety) *Value[string] { return &s.EmergencyBy }, "who is responsible for the emergency function", example("fire engineer of the job")),
			text("emergency_rules", func(s *Safety) *Value[string] { return &s.EmergencyRules }, "rules the emergency function is built to", example("voice alarm rules of the country")),
		},
	}).seal()
	x.part = (&block[Item]{
		name: "part", label: labelName,
		doc: "Another thing to buy.",
		attributes: joined([]attribute[Item]{
			whole("quantity", 1, 100000, func(i *Item) *Value[int] { return &i.Quantity }, "how many; 1 when left out", example("2")),
			text("location", func(i *Item) *Value[string] { return &i.Location }, "where it goes", example("wall plate, bar")),
			text("note", func(i *Item) *Value[string] { return &i.Note }, "what to know about it", example("two 475 ohm resistors")),
		}, formerly(func(i *Item) *Part { return &i.Part })),
	}).seal()
}

// Address attributes name one part, one kind of part per attribute. See
// Design.Absent for names of what is not there.
func address[T any](at func(*T) *Address) []attribute[T] {
	return []attribute[T]{
		name("amplifier", refAmplifier, func(t *T) *Value[string] { return &at(t).Amplifier }, "the amplifier it is about", example("Rack"), later),
		name("mixer", refUnit, func(t *T) *Value[string] { return &at(t).Mixer }, "the mixer it is about", example("Matrix"), later),
		name("channel", refChannel, func(t *T) *Value[string] { return &at(t).Channel }, "the power channel of that amplifier", example("Channel 1"), later),
		name("output", refOutput, func(t *T) *Value[string] { return &at(t).Output }, "the output of that amplifier", example("Zone 1"), later),
		name("line", refLine, func(t *T) *Value[string] { return &at(t).Line }, "the line it is about", example("South"), later),
		name("loudspeaker", refDevice, func(t *T) *Value[string] { return &at(t).Loudspeaker }, "the loudspeaker of that line", example("Aisle 2 7"), later),
		name("attenuator", refDevice, func(t *T) *Value[string] { return &at(t).Attenuator }, "the attenuator of that line", example("Hall level"), later),
		name("source", refSource, func(t *T) *Value[string] { return &at(t).Source }, "the source it is about", example("Shift office"), later),
		name("mute_link", refMuteLink, func(t *T) *Value[string] { return &at(t).MuteLink }, "the mute link it is about", example("Fire panel"), later),
		name("space", refSpace, func(t *T) *Value[string] { return &at(t).Space }, "the space it is about", example("Hall"), later),
		name("supply", refSupply, func(t *T) *Value[string] { return &at(t).Supply }, "the supply it is about", example("Standby battery"), later),
		name("reading", refReading, func(t *T) *Value[string] { return &at(t).Reading }, "the reading it is about", example("North first fix"), later),
	}
}

func (x *dialect) declareAgreements() {
	x.deviation = (&block[Deviation]{
		name: "deviation", label: labelCheck,
		doc: "An agreed departure from a check; its label is the check. It covers the part it names and what stands inside that part; without one, the job as a whole and none of its parts. It accepts findings while it has a reason and somebody who accepted it, up to and on its last day.",
		attributes: joined(address(func(d *Deviation) *Address { return &d.Address }), []attribute[Deviation]{
			text("reason", func(d *Deviation) *Value[string] { return &d.Reason }, "why it is accepted", example("Accepted until phase 2")),
			text("accepted_by", func(d *Deviation) *Value[string] { return &d.AcceptedBy }, "who accepted it", example("Client's engineer")),
			amount("until", quantity.Dates, func(d *Deviation) *Value[quantity.Date] { return &d.Until }, "last day it is accepted; for good when left out", example("2027-06-30")),
		}),
	}).seal()
	x.limit = (&block[Limit]{
		name: "limit", label: labelCheck,
		doc: "Sets parameters of one check; its label is the check. Its attributes are the parameters of that check, and severity.",
	}).seal()
	x.criteria = (&block[Criteria]{
		name: "criteria", label: labelOptional,
		doc: "Limits for this job; may stand in a file of its own that is used by many.",
		children: []child[Criteria]{{
			name: "limit", doc: x.limit.doc,
			read: func(d *decoder, to *Criteria, b *hclsyntax.Block) {
				to.Limits = append(to.Limits, d.limit(x.limit, b))
			},
			describe: func() blockDescription { return x.limit.description() },
		}},
	}).seal()
	x.criterion = (&block[Criterion]{
		name: "criterion", label: labelName,
		doc: "A check of the consultant's own, over computed figures.",
		attributes: []attribute[Criterion]{
			word("each", []string{"amplifier", "channel", "output", "line", "loudspeaker", "attenuator", "source", "space", "supply", "system"}, func(c *Criterion) *Value[string] { return &c.Each }, "what it is asked of", required, example("line")),
			expression("when", func(c *Criterion) *Value[Expression] { return &c.When }, "which of these it is asked of; of all when left out", example(`voltage_v >= 70`)),
			expression("expect", func(c *Criterion) *Value[Expression] { return &c.Expect }, "what must hold, over computed figures", required, example("drop_percent <= 5")),
			message("message", func(c *Criterion) *Value[[]MessagePiece] { return &c.Message }, "what is said when it does not hold", example(`"${name} loses ${drop_percent} %"`)),
			word("severity", []string{"error", "warning", "note"}, func(c *Criterion) *Value[string] { return &c.Severity }, "how bad that is; a warning when left out", example("warning")),
		},
	}).seal()
}

func (x *dialect) declareModels() {
	x.amplifierModel = (&block[UnitModel]{
		name: "amplifier_model", label: labelName, doc: "Data sheet of an amplifier.",
		attributes: append(lift(unitData(), func(m *UnitModel) *UnitData { return &m.UnitData }), modelNote(func(m *UnitModel) *Value[string] { return &m.Note })),
		children:   x.modelParts(),
	}).seal()
	x.mixerModel = (&block[UnitModel]{
		name: "mixer_model", label: labelName, doc: "Data sheet of a mixer.",
		attributes: append(lift(unitData(), func(m *UnitModel) *UnitData { return &m.UnitData }), modelNote(func(m *UnitModel) *Value[string] { return &m.Note })),
		children:   x.modelParts(),
	}).seal()
	x.loudspeakerModel = (&block[LoudspeakerModel]{
		name: "loudspeaker_model", label: labelName, doc: "Data sheet of a loudspeaker.",
		attributes: append(lift(loudspeakerData(), func(m *LoudspeakerModel) *LoudspeakerData { return &m.LoudspeakerData }), modelNote(func(m *LoudspeakerModel) *Value[string] { return &m.Note })),
	}).seal()
	x.attenuatorModel = (&block[AttenuatorModel]{
		name: "attenuator_model", label: labelName, doc: "Data sheet of an attenuator.",
		attributes: append(lift(attenuatorData(), func(m *AttenuatorModel) *AttenuatorData { return &m.AttenuatorData }), modelNote(func(m *AttenuatorModel) *Value[string] { return &m.Note })),
	}).seal()
	x.microphoneModel = (&block[MicrophoneModel]{
		name: "microphone_model", label: labelName, doc: "Data sheet of a microphone or paging desk.",
		attributes: append(lift(sourceData(), func(m *MicrophoneModel) *SourceData { return &m.SourceData }),
			name("connector", refPlug, func(m *MicrophoneModel) *Value[string] { return &m.Fits }, "the plug it comes with", example("DIN 5")),
			modelNote(func(m *MicrophoneModel) *Value[string] { return &m.Note })),
	}).seal()
	x.cableModel = (&block[CableModel]{
		name: "cable_model", label: labelName, doc: "Data sheet of a cable.",
		attributes: []attribute[CableModel]{
			amount("size", quantity.ConductorSets, func(c *CableModel) *Value[quantity.Conductors] { return &c.Size }, "size of one conductor", example("1.5 mm2"), required),
			whole("class", 1, 6, func(c *CableModel) *Value[int] { return &c.Class }, "conductor class of IEC 60228: 1 solid, 2 stranded, 5 and 6 flexible", example("5")),
			flag("stranded", func(c *CableModel) *Value[bool] { return &c.Stranded }, "for gauge sizes: stranded rather than solid"),
			flag("tinned", func(c *CableModel) *Value[bool] { return &c.Tinned }, "whether the copper is coated with tin"),
			whole("cores", 1, 100, func(c *CableModel) *Value[int] { return &c.Cores }, "number of conductors", example("2")),
			text("shield", func(c *CableModel) *Value[string] { return &c.Shield }, "what shields it", example("foil")),
			amount("insulation", quantity.Voltages, func(c *CableModel) *Value[quantity.Voltage] { return &c.Insulation }, "voltage its insulation is rated for", example("300 V")),
			amount("current", quantity.Currents, func(c *CableModel) *Value[quantity.Current] { return &c.Current }, "current a conductor may carry", example("16 A")),
			text("marking", func(c *CableModel) *Value[string] { return &c.Marking }, "marking printed on it", example("CL3P")),
			amount("fire_resistant", quantity.Durations, func(c *CableModel) *Value[quantity.Duration] { return &c.FireResistant }, "how long it works in a fire", example("30 min")),
			amount("inductance", quantity.Inductances, func(c *CableModel) *Value[quantity.Inductance] { return &c.Inductance }, "inductance of the loop per length", example("0.6 uH/m")),
			amount("capacitance", quantity.Capacitances, func(c *CableModel) *Value[quantity.Capacitance] { return &c.Capacitance }, "capacitance between conductors per length", example("60 pF/m")),
			modelNote(func(c *CableModel) *Value[string] { return &c.Note }),
		},
	}).seal()
	x.connectorModel = (&block[ConnectorModel]{
		name: "connector_model", label: labelName, doc: "A plug: how many conductors it can carry.",
		attributes: []attribute[ConnectorModel]{
			whole("cores", 1, 100, func(c *ConnectorModel) *Value[int] { return &c.Cores }, "contacts it has", required, example("5")),
			text("use", func(c *ConnectorModel) *Value[string] { return &c.Use }, "what it is used for", example("microphone with contact")),
			modelNote(func(c *ConnectorModel) *Value[string] { return &c.Note }),
		},
	}).seal()
}

func (x *dialect) modelParts() []child[UnitModel] {
	var all []child[UnitModel]
	for _, c := range x.unitParts() {
		all = append(all, liftChild(c, func(m *UnitModel) *UnitData { return &m.UnitData }))
	}
	return all
}

func modelNote[T any](at func(*T) *Value[string]) attribute[T] {
	return text("note", at, "where the figures come from", example("data sheet, edition 3"))
}

// attenuation declares a level change of 0 dB or less, or "off".
func attenuation[T any](name string, at func(*T) *Value[Attenuation], doc string) attribute[T] {
	takes := "a loss such as \"-20 dB\", or \"off\""
	a := &attribute[T]{name: name, doc: doc, takes: takes, example: "\"off\""}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if t, plain := plainText(expr); plain && t == "off" {
			*at(to) = Value[Attenuation]{V: Attenuation{Off: true}, Text: t, Span: d.span(expr.Range())}
			return
		} else if plain && strings.EqualFold(t, "off") {
			d.permitted(Value[string]{Text: t, Span: d.span(expr.Range())}, []string{"off"})
			return
		}
		g, ok := readAmount(d, expr, quantity.Gains, takes)
		if ok && g.V > 0 {
			d.refuse(g.Span, fmt.Sprintf("%s would make it louder.", g.Text), "An attenuator only turns down: 0 dB or less.", strconv.Quote("-"+strings.TrimPrefix(g.Text, "+")))
			return
		}
		if ok {
			*at(to) = Value[Attenuation]{V: Attenuation{Gain: g.V}, Text: g.Text, Span: g.Span}
		}
	}
	return ofValue(a, at)
}

// meterImpedance declares the one figure that may stand without a unit.
func meterImpedance[T any](name string, at func(*T) *Value[Impedance], doc string) attribute[T] {
	takes := "an impedance, such as \"198 ohm\""
	a := &attribute[T]{name: name, doc: doc, takes: takes + "; or, if no unit was noted, the figure alone: \"1.21\"", example: "\"198 ohm\""}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if t, plain := plainText(expr); plain {
			if n, err := strconv.ParseFloat(t, 64); err == nil && n >= 0 && n < 1e9 && !strings.ContainsAny(t, "eExXpP_") {
				*at(to) = Value[Impedance]{V: Impedance{Number: n, Unitless: true}, Text: t, Span: d.span(expr.Range())}
				return
			}
		}
		if r, ok := readAmount(d, expr, quantity.Resistances, takes); ok {
			*at(to) = Value[Impedance]{V: Impedance{Ohm: r.V}, Text: r.Text, Span: r.Span}
		}
	}
	return ofValue(a, at)
}

// pairWords are the words about an attribute that is a list of pairs of lengths.
type pairWords struct {
	example string
	list    string // "a list of corners"
	each    string // "a list of two lengths, along and across"
	found   string // "This outline has %d corners."
	fewest  string // "A floor has at least three."
}

var (
	outlineWords = pairWords{
		example: `[["0 m", "0 m"], ["9 m", "0 m"], ["9 m", "7 m"]]`,
		list:    "a list of corners", each: "a list of two lengths, along and across",
		found: "This outline has %d corners.", fewest: "A floor has at least three.",
	}
	heightsWords = pairWords{
		example: `[["0 m", "3 m"], ["12 m", "6 m"]]`,
		list:    "a list of heights", each: "a list of two lengths, how far along and how high",
		found: "This list has %d heights.", fewest: "A ceiling that steps has at least two; a flat one is height.",
	}
)

// pairs declares a list of pairs of lengths.
func pairs[T any](name string, fewest int, words pairWords, at func(*T) *[]List[quantity.Length], doc string) attribute[T] {
	takes := words.list + ", such as " + words.example
	each := aFigure(quantity.Lengths)
	a := attribute[T]{name: name, doc: doc, takes: takes, example: words.example}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		items, span, ok := d.items(expr, takes)
		if !ok {
			return
		}
		if len(items) < fewest {
			d.refuse(span, fmt.Sprintf(words.found, len(items)), words.fewest, "")
			return
		}
		var all []List[quantity.Length]
		for _, item := range items {
			l, good := readAmounts(d, item, quantity.Lengths, words.each, each, 2, 2)
			ok = ok && good
			all = append(all, l)
		}
		if ok {
			*at(to) = all
		}
	}
	a.set = func(t *T) bool { return len(*at(t)) > 0 }
	a.inherit = func(to, from *T) (part, other source.Span, differs bool) {
		if len(*at(to)) == 0 {
			*at(to) = *at(from)
		}
		return part, other, false
	}
	return a
}

// noise declares a level in dBA, or levels in dB per octave.
func noise[T any](name string, at func(*T) *Noise, doc string) attribute[T] {
	const takes = "a sound level, such as \"58 dBA\", or one in dB per octave: { \"125 Hz\" = \"60 dB\", \"1 kHz\" = \"50 dB\" }"
	a := attribute[T]{name: name, doc: doc, takes: takes, example: "\"58 dBA\""}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if _, bands := expr.(*hclsyntax.ObjectConsExpr); !bands {
			if v, ok := readAmount(d, expr, quantity.SoundLevels, takes); ok {
				*at(to) = Noise{Single: v, Span: v.Span}
			}
			return
		}
		read := func(e hclsyntax.Expression) (Value[quantity.SoundPressureLevel], bool) {
			return readAmount(d, e, quantity.SoundPressureLevels, "a level in dB, such as \"50 dB\"")
		}
		if s, ok := readSpectrum(d, expr, takes, read); ok {
			*at(to) = Noise{Bands: s.Bands, Span: s.Span}
		}
	}
	a.set = func(t *T) bool { return at(t).Set() }
	a.inherit = func(to, from *T) (part, other source.Span, differs bool) {
		if !at(to).Set() {
			*at(to) = *at(from)
		}
		return part, other, false
	}
	return a
}

// maxLayout bounds the rows and the columns of a layout.
const maxLayout = 10000

// layout declares "square", "hexagonal", or rows and columns.
func layout[T any](name string, at func(*T) *Value[Layout], doc string) attribute[T] {
	words := []string{LayoutSquare, LayoutHexagonal}
	const takes = "\"square\", \"hexagonal\", or how many rows along the length and how many in each: \"3 x 6\""
	a := &attribute[T]{name: name, doc: doc, takes: takes, example: "\"3 x 6\""}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		v, ok := d.text(expr, takes)
		if !ok {
			return
		}
		l := Layout{Pattern: v.Text}
		if rows, columns, found := strings.Cut(strings.ReplaceAll(v.Text, "×", "x"), "x"); found && v.Text != "" && v.Text[0] >= '0' && v.Text[0] <= '9' {
			var bad [2]error
			l.Pattern = LayoutRows
			l.Rows, bad[0] = strconv.Atoi(strings.TrimSpace(rows))
			l.Columns, bad[1] = strconv.Atoi(strings.TrimSpace(columns))
			if bad[0] != nil || bad[1] != nil || l.Rows < 1 || l.Columns < 1 || l.Rows > maxLayout || l.Columns > maxLayout {
				d.refuse(v.Span, fmt.Sprintf("%q is no number of rows and of loudspeakers in each.", v.Text), "Here stands "+takes+".", "")
				return
			}
		} else if !d.permitted(v, words) {
			return
		}
		*at(to) = Value[Layout]{V: l, Text: v.Text, Span: v.Span}
	}
	return ofValue(a, at)
}

// limit reads a limit block, whose attributes only the checks know.
func (d *decoder) limit(b *block[Limit], hb *hclsyntax.Block) *Limit {
	l := &Limit{}
	b.decodeHeader(d, &l.Part, hb)
	for _, a := range d.inOrder(hb.Body.Attributes) {
		c, ok := d.evaluate(a.Expr, "a limit, such as \"10 %\"")
		if !ok {
			continue
		}
		v := Value[string]{Text: plainly(c), Span: d.span(a.Expr.Range())}
		v.V = v.Text
		if kind := kindOf(c); kind == "a list" || kind == "a group of values in braces" {
			d.refuse(v.Span, fmt.Sprintf("%s is %s.", quoteSource(v.Span), kind), "A limit is one figure, one word, or true or false.", "")
			continue
		}
		if !d.fitText(v, MaxTextBytes) {
			continue
		}
		l.Settings = append(l.Settings, Setting{Name: a.Name, NameSpan: d.span(a.NameRange), Value: v, Quoted: kindOf(c) == "a text"})
	}
	for _, inner := range hb.Body.Blocks {
		d.unknownBlock(inner, "limit", nil, nil, nil)
	}
	return l
}
