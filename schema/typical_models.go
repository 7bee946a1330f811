package schema

import (
	"fmt"
	"strings"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Model is an entry of a catalogue as a list shows it.
type Model struct {
	Name    string
	Kind    string // the block that states it: "loudspeaker_model"
	Class   string // what sort of thing it is: "ceiling", "mixer amplifier", "cable"
	Summary string // its main figures on one line
	Block   string // its text as written, ready to be copied into a file
}

// Models lists a catalogue: by kind, and within a kind in the order in which the
// models stand in it.
func (c *Catalogue) Models() []Model {
	x := theDialect()
	var all []Model
	add := func(p *Part, kind, class, summary string) {
		block := source.Span{File: p.Header.File, Start: p.Header.Start, End: p.Body.End}
		all = append(all, Model{Name: p.Name, Kind: kind, Class: class, Summary: summary, Block: block.Text()})
	}
	for _, m := range c.Units {
		kind := x.mixerModel.name
		if m.Kind == KindAmplifier {
			kind = x.amplifierModel.name
		}
		add(&m.Part, kind, orText(m.Class.V, m.Kind), m.summary())
	}
	for _, m := range c.Loudspeakers {
		add(&m.Part, x.loudspeakerModel.name, orText(m.Class.V, "loudspeaker"), m.summary())
	}
	for _, m := range c.Attenuators {
		add(&m.Part, x.attenuatorModel.name, "attenuator", m.summary())
	}
	for _, m := range c.Microphones {
		add(&m.Part, x.microphoneModel.name, "microphone", m.summary())
	}
	for _, m := range c.Cables {
		add(&m.Part, x.cableModel.name, "cable", m.summary())
	}
	for _, m := range c.Connectors {
		add(&m.Part, x.connectorModel.name, "connector", m.summary())
	}
	return all
}

// phrases joins what is known into one line.
type phrases []string

// add puts a phrase to the line unless it is empty.
func (p *phrases) add(phrase string) {
	if phrase != "" {
		*p = append(*p, phrase)
	}
}

func (p *phrases) line() string { return strings.Join(*p, ", ") }

// tally counts equal things in the order in which they were first met.
type tally struct {
	things []string
	counts map[string]int
}

func (t *tally) add(thing string, count int) {
	if t.counts == nil {
		t.counts = map[string]int{}
	}
	if t.counts[thing] == 0 {
		t.things = append(t.things, thing)
	}
	t.counts[thing] += count
}

// blocks calls do for each block of a model once, with the number of parts it
// stands for. A catalogue that a design has read has its runs written out: their
// parts stand side by side and share a header.
func blocks[T interface{ part() *Part }](all []T, numbering func(T) Numbering, do func(t T, count int)) {
	var last source.Span
	for _, t := range all {
		if header := t.part().Header; header != last {
			last = header
			do(t, numbering(t).Count())
		}
	}
}

func (m *UnitModel) summary() string {
	var line phrases
	channels := 0
	var powers tally
	blocks(m.Channels, func(c *Channel) Numbering { return c.Numbering }, func(c *Channel, count int) {
		channels += count
		powers.add(orText(c.RatedPower.Text, m.RatedPower.Text), count)
	})
	if channels == 0 && m.Kind == KindAmplifier {
		channels = 1
		powers.add(m.RatedPower.Text, 1)
	}
	for _, p := range powers.things {
		if n := powers.counts[p]; n > 1 && p != "" {
			p = fmt.Sprintf("%d × %s", n, p)
		}
		line.add(p)
	}

	var forLines tally
	forUnits, alternatives := 0, false
	zones := map[string]bool{}
	blocks(m.Outputs, func(o *Output) Numbering { return o.Numbering }, func(o *Output, count int) {
		what := orText(orText(o.Volts.Text, o.LowestImpedance.Text), o.RatedInto.Text)
		if what == "" {
			forUnits += count
			return
		}
		forLines.add(what, count)
		zones[what] = zones[what] || o.Switched.V
		alternatives = alternatives || len(o.NeverWith.Items) > 0
	})
	var outputs []string
	for _, what := range forLines.things {
		switch n := forLines.counts[what]; {
		case n == 1 || n == channels:
		case zones[what]:
			what = fmt.Sprintf("%d zones of %s", n, what)
		default:
			what = fmt.Sprintf("%d outputs of %s", n, what)
		}
		outputs = append(outputs, what)
	}
	word := "and"
	if alternatives {
		word = "or"
	}
	line.add(wording.Listed(outputs, word))

	inputs := 0
	blocks(m.Inputs, func(i *Input) Numbering { return i.Numbering }, func(i *Input, count int) {
		if i.Takes.V != "contact" {
			inputs += count
		}
	})
	line.add(counted(inputs, "input"))
	if m.Kind == KindMixer {
		line.add(counted(forUnits, "output"))
		line.add(m.Routing.Text)
	}
	if m.BatteryVolts.Set() {
		line.add(m.BatteryVolts.Text + " standby")
	}
	return line.line()
}

func (m *LoudspeakerModel) summary() string {
	var line phrases
	line.add(m.Class.Text)
	line.add(m.RatedPower.Text)
	var taps []string
	for _, at := range []struct {
		volts string
		list  List[quantity.Power]
	}{{"100 V", m.Taps100V}, {"70 V", m.Taps70V}, {"25 V", m.Taps25V}} {
		// Those for 70 V follow from those for 100 V.
		if len(at.list.Items) > 0 && (at.volts != "70 V" || !m.Taps100V.Set()) {
			taps = append(taps, tapsOf(at.list)+" at "+at.volts)
		}
	}
	switch {
	case len(taps) > 0:
		line.add("taps " + wording.Listed(taps, "or"))
	case m.Impedance.Set():
		line.add(m.Impedance.Text + ", no transformer")
	}
	line.add(m.Sensitivity.Text)
	line.add(m.Exposure.Text)
	return line.line()
}

// tapsOf writes taps with their unit once: "6/3/1.5/0.75 W".
func tapsOf(taps List[quantity.Power]) string {
	figures := make([]string, len(taps.Items))
	for i, t := range taps.Items {
		figures[i] = quantity.Significant(float64(t.V), 3)
	}
	return strings.Join(figures, "/") + " W"
}

func (m *AttenuatorModel) summary() string {
	var line phrases
	line.add(m.Rating.Text)
	if m.Lowest.Set() {
		line.add("down to " + m.Lowest.Text)
	}
	switch m.Override.V {
	case "":
	case "none":
		line.add("no override")
	default:
		override := "override by " + m.Override.V
		if m.Current.Set() {
			override += " of " + m.Current.Text
		}
		line.add(override)
	}
	line.add(counted(m.Cores.V, "core"))
	return line.line()
}

func (m *MicrophoneModel) summary() string {
	var line phrases
	line.add(m.Level.Text)
	line.add(m.Fits.Text)
	switch m.Trigger.V {
	case "contact":
		line.add("contact")
	case "signal", "none":
		line.add("no contact")
	}
	if m.Selects.Set() {
		line.add("selects " + m.Selects.Text)
	}
	if m.Balanced.Set() && !m.Balanced.V {
		line.add("unbalanced")
	}
	if m.Phantom.Set() && m.Phantom.V != "none" {
		line.add("needs phantom " + m.Phantom.Text)
	}
	return line.line()
}

func (m *CableModel) summary() string {
	var line phrases
	conductors := m.Size.V
	if m.Cores.Set() {
		conductors.Cores = m.Cores.V
	}
	line.add(conductors.String())
	if m.Class.Set() {
		line.add("class " + m.Class.Text)
	}
	if m.Stranded.Set() {
		if m.Stranded.V {
			line.add("stranded")
		} else {
			line.add("solid")
		}
	}
	if m.Shield.Set() && m.Shield.V != "none" {
		line.add("shield " + m.Shield.Text)
	}
	line.add(m.Marking.Text)
	if m.FireResistant.Set() {
		line.add(m.FireResistant.Text + " in a fire")
	}
	return line.line()
}

func (m *ConnectorModel) summary() string {
	var line phrases
	line.add(counted(m.Cores.V, "contact"))
	line.add(m.Use.Text)
	return line.line()
}

// counted writes a number with its noun, and nothing for 0.
func counted(n int, noun string) string {
	if n == 0 {
		return ""
	}
	return wording.Counted(n, noun)
}
