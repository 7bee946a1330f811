package compare

import (
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// Figure is a computed figure that moved.
type Figure struct {
	Subject check.Subject // the part, as it is called now
	Name    string        // "load"
	Unit    string        // of both numbers; "" for a count
	Before  Value
	Now     Value
	// Difference says how far it moved, such as "+12 W (+5 %)"; "" where one of
	// the two is not known or is not a number.
	Difference string
}

// Value is a figure of one of the designs.
type Value struct {
	Known  bool
	Text   string  // as printed, with unit; "not known" where it is not
	Number float64 // in the figure's unit; meaningless where it is not known
}

// measured is one figure of a part.
type measured struct {
	subject    check.Subject
	name, unit string
	value      Value
}

// moved lists the figures that two systems have in common and that are printed
// differently.
func moved(before, now *analysis.System, subjectBefore func(check.Subject) check.Subject) []Figure {
	type key struct {
		subject, name string
		nth           int // runs of one name
	}
	keyOf := func(seen map[key]int, s check.Subject, name string) key {
		k := key{subject: s.String(), name: name}
		k.nth = seen[k]
		seen[key{subject: k.subject, name: name}]++
		return k
	}
	old := map[key]measured{}
	seen := map[key]int{}
	for _, m := range figuresOf(before) {
		old[keyOf(seen, m.subject, m.name)] = m
	}
	var all []Figure
	seen = map[key]int{}
	for _, m := range figuresOf(now) {
		was, ok := old[keyOf(seen, subjectBefore(m.subject), m.name)]
		if !ok || was.value.Text == m.value.Text {
			continue
		}
		f := Figure{Subject: m.subject, Name: m.name, Unit: m.unit, Before: was.value, Now: m.value}
		if was.value.Known && m.value.Known {
			f.Difference = difference(was.value.Number, m.value.Number, m.unit)
		}
		all = append(all, f)
	}
	return all
}

// difference words how far a number moved.
func difference(before, now float64, unit string) string {
	const digits = 3
	sign := ""
	if now > before {
		sign = "+"
	}
	text := sign + quantity.Significant(now-before, digits)
	switch unit {
	case "":
		return text
	case "%":
		return text + " percentage points"
	case "dB", "dBA", "STI":
		return text + " " + unit
	}
	text += " " + unit
	if share := 100 * (now - before) / math.Abs(before); !math.IsInf(share, 0) && !math.IsNaN(share) {
		text += " (" + sign + quantity.Significant(share, digits) + " %)"
	}
	return text
}

// list collects figures of one part after the other.
type list struct {
	all     []measured
	subject check.Subject
}

// add adds a figure of the part.
func add[Q interface {
	~float64
	String() string
}](l *list, name, unit string, f analysis.Figure[Q]) {
	m := measured{subject: l.subject, name: name, unit: unit, value: Value{Text: "not known"}}
	if f.Known() && !math.IsNaN(float64(f.Value)) && !math.IsInf(float64(f.Value), 0) {
		m.value = Value{Known: true, Text: f.Value.String(), Number: float64(f.Value)}
	}
	l.all = append(l.all, m)
}

func (l *list) count(name string, n int) {
	l.all = append(l.all, measured{subject: l.subject, name: name, value: Value{Known: true, Text: quantity.Significant(float64(n), 12), Number: float64(n)}})
}

// figuresOf lists what is worked out of a system, part by part. A figure that the
// design merely states is no figure here.
func figuresOf(s *analysis.System) []measured {
	l := &list{}
	job(l, s)
	for _, c := range s.Channels {
		l.subject = check.ChannelSubject(c)
		add(l, "load", "W", c.Load)
		add(l, "rated power", "W", c.Rated)
	}
	for _, o := range s.Outputs {
		l.subject = check.OutputSubject(o)
		add(l, "load", "W", o.Load)
		add(l, "lowest impedance", "ohm", o.Impedance)
	}
	for _, line := range s.Lines {
		onLine(l, line)
	}
	for _, src := range s.Sources {
		l.subject = check.SourceSubject(src)
		for _, f := range src.Feeds {
			if st := f.Stage(); st != nil {
				add(l, "in hand at "+st.Into.Name(), "dB", st.InHand)
			}
		}
	}
	for _, heard := range s.Sounds() {
		inSpace(l, heard)
	}
	for _, p := range s.Supplies {
		onSupply(l, p)
	}
	return l.all
}

func job(l *list, s *analysis.System) {
	l.subject = check.JobSubject(s)
	loudspeakers := 0
	for _, line := range s.Lines {
		loudspeakers += line.Loudspeakers
	}
	l.count("amplifiers", len(s.Amplifiers))
	l.count("lines", len(s.Lines))
	l.count("loudspeakers", loudspeakers)
	l.count("sources", len(s.Sources))
	idle, use := s.Heat.Idle, s.Heat.NormalUse
	idle.Missing = analysis.MergeMissing(idle.Missing, s.Heat.Unknown)
	use.Missing = analysis.MergeMissing(use.Missing, s.Heat.Unknown)
	add(l, "heat without signal", "W", idle)
	add(l, "heat in normal use", "W", use)
}

func onLine(l *list, line *analysis.Line) {
	l.subject = check.LineSubject(line)
	l.count("loudspeakers", line.Loudspeakers)
	add(l, "load", "W", line.Load)
	add(l, "drop at the worst loudspeaker", "%", line.Loss.Drop)
	for _, r := range line.Runs {
		l.subject = check.RunSubject(r)
		l.count("quantity", r.Count)
		add(l, "load of one", "W", r.Each)
		add(l, "most that one receives", "W", r.Delivered)
	}
	for _, a := range line.Attenuators {
		l.subject = check.AttenuatorSubject(a)
		add(l, "load behind one", "W", a.Behind)
	}
}

func inSpace(l *list, heard *analysis.Sound) {
	l.subject = check.SpaceSubject(heard.Space)
	l.count("loudspeakers", heard.Count)
	levels := heard.Levels()
	for _, f := range []struct {
		name  string
		level analysis.Figure[quantity.SoundLevel]
	}{{"mean level at full output", levels.Mean}, {"least level at full output", levels.Least}} {
		f.level.Missing = analysis.MergeMissing(f.level.Missing, levels.Missing)
		add(l, f.name, "dBA", f.level)
	}
	speech := heard.Speech()
	sti := measured{subject: l.subject, name: "speech transmission index, mean", unit: "STI", value: Value{Text: "not known"}}
	if speech.Known() {
		sti.value = Value{Known: true, Text: quantity.Significant(speech.Mean, 2), Number: speech.Mean}
	}
	l.all = append(l.all, sti)
}

func onSupply(l *list, p *analysis.Supply) {
	l.subject = check.SupplySubject(p)
	add(l, "from the mains without signal", "W", p.Mains.Idle)
	add(l, "from the mains in normal use", "W", p.Mains.NormalUse)
	add(l, "from the mains at full output", "W", p.Mains.Full)
	if !p.Part.Battery.Set() && !p.Part.Capacity.Set() && !p.Part.Standby.Set() {
		return
	}
	const factor = 1 // neither for age nor for a high current: those are limits of a check
	battery := p.Standby(1, factor, factor)
	add(l, "from the battery while waiting", "A", battery.Waiting)
	add(l, "from the battery at full output", "A", battery.Announcing)
	add(l, "battery needed at full output, before ageing", "Ah", battery.Capacity)
}
