package transfer

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/schema/quantity"
)

// readings reads a filled-in test sheet: each figure becomes a reading.
func (c *converter) readings(h *headed) {
	for _, r := range c.rows(h) {
		line, col := r.at(keyLine)
		if line == "" {
			r.rest()
			if notes := r.all(); len(notes) > 0 {
				r.refuse(nil, "This row names no line.", "It is kept as a comment.")
				c.readouts = append(c.readouts, &block{kind: commentsOnly, comments: append(notes, r.notes[len(r.notes)-1])})
			}
			continue
		}
		line = r.name(line, col)
		if d := c.options.Design; d != nil && d.Line(line) == nil {
			var known []string
			for _, l := range d.Lines {
				known = append(known, l.Name)
			}
			r.refuse(col, fmt.Sprintf("The design has no line %q.", line), fmt.Sprintf("It has %q.", known))
			r.rest()
			c.readouts = append(c.readouts, &block{kind: commentsOnly, comments: r.all()})
			continue
		}
		r.formulas()
		c.reading(r, line)
	}
}

// commentsOnly is the kind of a block of which only the comments are written.
const commentsOnly = ""

// reading makes the blocks of one row.
func (c *converter) reading(r *row, line string) {
	var made []*block
	add := func(what string) *block {
		b := &block{kind: "reading", name: c.readingName(line, what)}
		b.set("line", line)
		made = append(made, b)
		return b
	}
	z := r.meterFigure()
	read := z != ""
	if read {
		b := add("impedance")
		b.set("impedance", z)
		b.set("frequency", amount(r, keyFrequency, quantity.Frequencies))
		b.set("instrument", r.instrument())
		b.set("attenuators", r.word(keyAttenuators, attenuators))
	}
	if z := amount(r, keyResistance, quantity.Resistances); z != "" {
		b := add("DC resistance")
		b.set("impedance", z)
		b.set("instrument", "multimeter")
	}
	if z := amount(r, keyInsulation, quantity.Resistances); z != "" {
		b := add("insulation")
		b.set("insulation", z)
		b.set("instrument", "insulation tester")
	}
	disconnected, date := r.yes(keyDisconnected), r.date()
	for _, b := range made {
		if disconnected != "" {
			b.bare("amplifier_disconnected", disconnected)
		}
		b.set("date", date)
	}
	r.rest()
	others := []key{keyPolarity, keyPriority, keyStandby, keySigned, keyRemarks}
	if !read { // they are of the impedance
		others = append(others, keyFrequency, keyInstrument)
	}
	for _, k := range others {
		text, col := r.at(k)
		if text != "" && !(k == keyStandby && text == "none stated") {
			r.notes = append(r.notes, oneLine(col.head)+": "+text)
		}
	}
	switch {
	case len(made) > 0:
		made[0].comments = r.notes
		c.measured = append(c.measured, line)
	case len(r.notes) > 0:
		made = append(made, &block{kind: commentsOnly, comments: append([]string{fmt.Sprintf("line %s:", quote(line))}, r.notes...)})
	}
	c.readouts = append(c.readouts, made...)
}

// readingName names a reading after the line and what was measured.
func (c *converter) readingName(line, what string) string {
	name := line + ", " + what
	taken := func(n string) bool {
		if slices.ContainsFunc(c.readouts, func(b *block) bool { return b.name == n }) {
			return true
		}
		if d := c.options.Design; d != nil {
			for _, r := range d.Readings {
				if r.Name == n {
					return true
				}
			}
		}
		return false
	}
	full := name
	for n := 2; taken(full); n++ {
		full = fmt.Sprintf("%s, %d", name, n)
	}
	return full
}

// meterFigure is what an impedance meter showed. It alone may have no unit.
func (r *row) meterFigure() string {
	text, col := r.at(keyRead)
	if text == "" || col.unit != "" || !number().MatchString(text) {
		return amount(r, keyRead, quantity.Resistances)
	}
	return text
}

// What a test sheet may say by words, and what people write for it.
var (
	instruments = map[string][]string{
		"impedance meter":   {"impedance meter", "impedance bridge", "z meter"},
		"multimeter":        {"multimeter", "dmm"},
		"ohmmeter":          {"ohmmeter", "ohm meter"},
		"insulation tester": {"insulation tester"},
		"level meter":       {"level meter"},
	}
	attenuators = map[string][]string{
		"all fully up": {"all fully up", "fully up", "up", "max", "full"},
		"as found":     {"as found"},
		"overridden":   {"overridden", "override"},
		"":             {"none", "no attenuators"},
	}
)

// word reads one of a few words; others are kept as a comment.
func (r *row) word(k key, known map[string][]string) string {
	text, col := r.at(k)
	if text == "" {
		return ""
	}
	said := plain(text)
	var expected []string
	for word, names := range known {
		if slices.Contains(names, said) {
			return word
		}
		if word != "" {
			expected = append(expected, word)
		}
	}
	slices.Sort(expected)
	r.refuse(col, fmt.Sprintf("%q is not understood.", text), "It is one of: "+strings.Join(expected, ", ")+".")
	return ""
}

// instrument reads what it was measured with. People write its make and number
// there, which the dialect has no place for: such a text stays as a comment, and
// the kind of instrument is taken from it if it names one, and only one.
func (r *row) instrument() string {
	text, col := r.at(keyInstrument)
	if text == "" {
		return ""
	}
	said := " " + plain(text) + " "
	var kinds []string
	for kind, names := range instruments {
		if slices.Contains(names, strings.TrimSpace(said)) {
			return kind
		}
		if slices.ContainsFunc(names, func(n string) bool { return strings.Contains(said, " "+n+" ") }) {
			kinds = append(kinds, kind)
		}
	}
	r.notes = append(r.notes, oneLine(col.head)+": "+text)
	if len(kinds) == 1 {
		return kinds[0]
	}
	return ""
}

// yes reads a tick or its absence.
func (r *row) yes(k key) string {
	text, col := r.at(k)
	switch strings.ToLower(text) {
	case "":
		return ""
	case "yes", "y", "x", "true", "1", "ok", "done", "✓", "✔":
		return "true"
	case "no", "n", "false", "0":
		return "false"
	}
	r.refuse(col, fmt.Sprintf("%q is not understood.", text), "It is yes or no.")
	return ""
}

// date reads a day: as year-month-day, or as a spreadsheet counts days.
func (r *row) date() string {
	text, col := r.at(keyDate)
	if text == "" {
		return ""
	}
	if day, ok := r.c.book.Date(text); ok {
		return day
	}
	if _, err := quantity.ParseDate(text); err != nil {
		r.refuse(col, sentence(err), "")
		return ""
	}
	return text
}
