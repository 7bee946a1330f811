package transfer

import (
	"slices"
	"strings"
	"unicode"

	"loudlint/linter/sheet"
	"loudlint/schema"
)

// key is what a column means.
type key int

// Keys of both kinds of table.
const (
	unknown key = iota
	keyLine
	keyAmplifier
	keyOutput
	keyDevice
	keyDesignation
	keyBehind
	keySpace
	keyModel
	keyTap
	keyTapFor
	keyImpedance
	keyLeg
	keySpacing
	keyCable
	keyHeight
	keyQuantity
	keyRemarks
	keyWorkedOut // figures that follow from the others
	keyRead
	keyFrequency
	keyInstrument
	keyAttenuators
	keyDisconnected
	keyResistance
	keyInsulation
	keyPolarity
	keyPriority
	keyStandby
	keyDate
	keySigned
)

// meaning is what people call a column.
type meaning struct {
	key   key
	names []string // as titles of schedules, lower case
}

// loudspeakerHeads are the columns of a table of loudspeakers.
var loudspeakerHeads = []meaning{
	{keyLine, []string{"line", "loudspeaker line", "circuit", "line name"}},
	{keyAmplifier, []string{"amplifier", "amp"}},
	{keyOutput, []string{"output", "amplifier output", "zone"}},
	{keyDevice, []string{"device", "kind", "kind of device"}},
	{keyDesignation, []string{"designation", "name", "loudspeaker", "tag", "id", "number", "no", "mark"}},
	{keyBehind, []string{"behind", "attenuator", "volume control", "branch"}},
	{keySpace, []string{"space", "room", "area", "location"}},
	{keyModel, []string{"model", "type", "loudspeaker model"}},
	{keyTap, []string{"tap", "tapping", "power tap", "tap setting"}},
	{keyTapFor, []string{"tap for", "tap voltage"}},
	{keyImpedance, []string{"impedance"}},
	{keyLeg, []string{"leg", "cable length", "length", "cable from the one before"}},
	{keySpacing, []string{"spacing"}},
	{keyCable, []string{"cable", "cable type"}},
	{keyHeight, []string{"height", "mounting height"}},
	{keyQuantity, []string{"quantity", "qty"}},
	{keyRemarks, []string{"remarks", "remark", "note", "notes", "comment", "comments"}},
	{keyWorkedOut, []string{"voltage"}},
	{keyWorkedOut, []string{"delivered"}},
	{keyWorkedOut, []string{"lost"}},
}

// testHeads are the columns of a test sheet.
var testHeads = []meaning{
	{keyLine, []string{"line", "circuit", "line name"}},
	{keyWorkedOut, []string{"amplifier"}},
	{keyWorkedOut, []string{"output"}},
	{keyWorkedOut, []string{"loudspeakers"}},
	{keyWorkedOut, []string{"load"}},
	{keyWorkedOut, []string{"expected at 1 khz"}},
	{keyWorkedOut, []string{"from"}},
	{keyWorkedOut, []string{"to"}},
	{keyWorkedOut, []string{"goes before"}},
	{keyAttenuators, []string{"attenuators", "controls"}},
	{keyRead, []string{"impedance read", "impedance", "reading", "measured", "measured impedance"}},
	{keyFrequency, []string{"frequency"}},
	{keyInstrument, []string{"instrument", "meter"}},
	{keyDisconnected, []string{"amplifier disconnected", "amplifier off"}},
	{keyResistance, []string{"dc resistance", "resistance"}},
	{keyInsulation, []string{"insulation", "insulation resistance"}},
	{keyPolarity, []string{"polarity"}},
	{keyPriority, []string{"priority heard", "priority"}},
	{keyStandby, []string{"on standby", "standby"}},
	{keyDate, []string{"date"}},
	{keySigned, []string{"signed", "tested by", "signature"}},
	{keyRemarks, []string{"remarks", "remark", "note", "notes", "comment", "comments"}},
}

// column is a column of a table as it was headed.
type column struct {
	key   key
	head  string // as written
	unit  string // stated in the head
	near  string // a known head, where this one is not known and nearly is one
	index int
}

// headed is a table found on a sheet.
type headed struct {
	sheet   *sheet.Sheet
	first   int // place of the row below the head
	columns []column
	test    bool // a test sheet
}

// find looks for the head of a table among the first rows of a sheet.
func find(s *sheet.Sheet) (*headed, bool) {
	const look = 30 // rows
	for i := range s.Rows {
		if i == look {
			break
		}
		line := read(s.Rows[i].Cells, loudspeakerHeads)
		test := read(s.Rows[i].Cells, testHeads)
		switch {
		case has(test, keyRead, keyResistance, keyInsulation) && has(test, keyLine) && !has(line, keyTap, keyLeg):
			return &headed{sheet: s, first: i + 1, columns: test, test: true}, true
		case has(line, keyTap, keyModel, keyLeg) && has(line, keyLine, keyDesignation):
			return &headed{sheet: s, first: i + 1, columns: line}, true
		}
	}
	return nil, false
}

// has tells that at least one of the keys is there.
func has(columns []column, keys ...key) bool {
	return slices.ContainsFunc(columns, func(c column) bool { return slices.Contains(keys, c.key) })
}

// read makes columns of a row of heads. A head that comes twice counts the first
// time.
func read(cells []sheet.Cell, known []meaning) []column {
	var columns []column
	seen := map[key]bool{}
	for i, cell := range cells {
		if cell.Text == "" {
			continue
		}
		c := column{head: cell.Text, index: i}
		title, unit := split(cell.Text)
		c.key, c.unit = lookUp(title, known), unit
		if c.key == unknown { // a unit without brackets: "Tap W"
			if words := strings.Fields(cell.Text); len(words) > 1 {
				last := len(words) - 1
				if k := lookUp(plain(strings.Join(words[:last], " ")), known); k != unknown && isUnit(words[last]) {
					c.key, c.unit = k, words[last]
				}
			}
		}
		if c.key == unknown {
			c.near = schema.Nearest(title, names(known))
		}
		if c.key != unknown && c.key != keyWorkedOut {
			if seen[c.key] {
				c.key = unknown
			}
			seen[c.key] = true
		}
		columns = append(columns, c)
	}
	return columns
}

// split parts a head such as "Tap (W)" into title and unit.
func split(head string) (title, unit string) {
	for _, brackets := range [...]string{"()", "[]"} {
		from, to := strings.LastIndexByte(head, brackets[0]), strings.LastIndexByte(head, brackets[1])
		if from >= 0 && to > from {
			return plain(head[:from] + " " + head[to+1:]), strings.TrimSpace(head[from+1 : to])
		}
	}
	return plain(head), ""
}

// plain writes a title as heads are compared: lower case, words of letters and
// digits parted by one space.
func plain(title string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(title), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	}), " ")
}

func lookUp(title string, known []meaning) key {
	for _, m := range known {
		if slices.Contains(m.names, title) {
			return m.key
		}
	}
	return unknown
}

func names(known []meaning) []string {
	var all []string
	for _, m := range known {
		all = append(all, m.names...)
	}
	return all
}

func isUnit(word string) bool {
	switch word {
	case "W", "kW", "mW", "V", "ohm", "Ω", "ohms", "kohm", "kΩ", "Mohm", "MΩ", "m", "ft", "cm", "mm", "Hz", "kHz":
		return true
	}
	return false
}
