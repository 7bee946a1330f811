package drawing

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// cell is one device of a line as it is drawn, or several equal ones in a row.
type cell struct {
	device schema.Device
	lines  []lettered
	marks  []mark
	leg    string // the cable that leads to it
	inside []cell // of an attenuator or a branch
	back   bool   // no device, but the way back to the amplifier
}

// wayBack is the cell at the end of a ring.
func (m *cellMaker) wayBack() cell {
	c := cell{back: true, leg: textout.Printable(m.line.Part.RingLeg.Text)}
	c.add(small, "back to the amplifier")
	return c
}

// lettered is a line of text under or beside a symbol.
type lettered struct {
	style style
	text  string
}

// longest is how wide a label may be, in pixels, before it is cut.
const longest = 190

// hangs tells that the device hangs below the line; the others lead a line of
// their own down.
func (c *cell) hangs() bool {
	switch c.device.(type) {
	case *schema.Attenuator, *schema.Branch:
		return false
	}
	return true
}

// labels is how wide the text of a cell is.
func (c *cell) labels() float64 {
	var wide float64
	for i, l := range c.lines {
		w := min(l.style.width(l.text), longest)
		if i == 0 {
			w += marksWidth(c.marks)
		}
		wide = max(wide, w)
	}
	return wide
}

const (
	cellGap = 12.0 // between the labels of neighbours
	dropAt  = 12.0 // where in its cell a line of its own leads down
	beside  = 14.0 // from there to the labels
)

// width is how much of the line a cell takes.
func (c *cell) width() float64 {
	leg := min(small.width(c.leg), longest) + cellGap
	if c.hangs() {
		return max(c.labels()+cellGap, leg, speakerWide+cellGap)
	}
	return max(dropAt+beside+c.labels()+cellGap/2, leg)
}

// cellMaker makes the cells of one line.
type cellMaker struct {
	step     check.Step
	found    *findings
	arrivals map[schema.Device]*arrival
	line     *analysis.Line
}

// arrival is what comes to the loudspeakers of a block.
type arrival struct {
	known     bool
	low, high float64 // volts
}

// newCellMaker reads off the line what arrives where.
func newCellMaker(l *analysis.Line, found *findings) *cellMaker {
	m := &cellMaker{step: check.Step{Kind: "line", Name: l.Part.Name}, found: found, arrivals: map[schema.Device]*arrival{}, line: l}
	devices := l.Devices()
	for i := range devices {
		d := &devices[i]
		if d.Run == nil || !d.Volts.Known() || d.Volts.Value <= 0 {
			continue
		}
		volts := float64(d.Volts.Value)
		if m.arrivals[d.Of] == nil {
			m.arrivals[d.Of] = &arrival{}
		}
		m.arrivals[d.Of].add(arrival{true, volts, volts})
	}
	return m
}

// cells makes the cells of a chain, equal neighbours as one. It calls itself for
// what braces enclose; the dialect bounds their nesting.
func (m *cellMaker) cells(devices []schema.Device, first bool) []cell {
	var all []cell
	for i := 0; i < len(devices); {
		key, next := m.key(devices[i]), i+1
		for next < len(devices) && key != "" && m.key(devices[next]) == key {
			next++
		}
		all = append(all, m.cell(devices[i:next], first && i == 0))
		i = next
	}
	return all
}

// key is what equal devices have in common, "" for one that stands alone.
func (m *cellMaker) key(device schema.Device) string {
	p := device.Common()
	own := fmt.Sprint(m.found.parts[at{m.step, p.Header}], p.Cable.V)
	switch v := device.(type) {
	case *schema.Loudspeaker:
		return fmt.Sprintf("%s|%s|%s|%s|%s", v.Model.V, tapText(v), v.SeriesResistance.Text, v.Polarity.V, own)
	case *schema.Attenuator, *schema.Branch:
		var b strings.Builder
		fmt.Fprintf(&b, "%T|%s{", device, own)
		if a, is := device.(*schema.Attenuator); is {
			fmt.Fprintf(&b, "%s|%s|%s|%s|", a.Model.V, a.Rating.Text, a.Override.V, a.Setting.Text)
		}
		for _, inner := range device.Inside() {
			key := m.key(inner)
			if key == "" {
				return ""
			}
			fmt.Fprintf(&b, "%s×%d;", key, inner.Common().Count())
		}
		return b.String() + "}"
	}
	return ""
}

// tapText writes how a loudspeaker is set.
func tapText(v *schema.Loudspeaker) string {
	switch {
	case v.Tap.Set() && v.TapFor.Set():
		return v.Tap.Text + " at " + v.TapFor.Text
	case v.Tap.Set():
		return v.Tap.Text
	case v.Impedance.Set():
		return v.Impedance.Text
	}
	return "tap?"
}

// cell makes one cell of equal neighbours.
func (m *cellMaker) cell(equal []schema.Device, first bool) cell {
	c := cell{device: equal[0]}
	a, b := equal[0].Common(), equal[len(equal)-1].Common()
	count := 0
	for _, d := range equal {
		count += d.Common().Count()
	}
	name := a.Name
	if old, is := c.device.(*schema.Existing); !is || old == nil {
		name = a.MemberName(0)
	} else {
		count = 1
	}
	if last := b.MemberName(b.Count() - 1); count > 1 {
		name += " … " + last
	}
	numbers := map[int]bool{}
	var found []int
	for _, d := range equal {
		for _, n := range m.found.parts[at{m.step, d.Common().Header}] {
			if !numbers[n] {
				numbers[n] = true
				found = append(found, n)
			}
		}
	}
	c.marks = m.found.marksOf(found)
	c.add(strong, name)
	m.says(&c, equal, count)
	c.leg = textout.Printable(m.legText(equal, first))
	c.inside = m.cells(c.device.Inside(), false)
	return c
}

// says adds what stands below the name.
func (m *cellMaker) says(c *cell, equal []schema.Device, count int) {
	switch v := c.device.(type) {
	case *schema.Loudspeaker:
		c.add(plain, times(count, tapText(v)))
		if volts := m.volts(equal); volts != "" {
			c.add(small, volts)
		}
	case *schema.Attenuator:
		var says []string
		if count > 1 {
			says = append(says, strconv.Itoa(count)+" of them")
		}
		if v.Rating.Set() {
			says = append(says, v.Rating.Text)
		}
		if v.Setting.Set() {
			says = append(says, "at "+v.Setting.Text)
		}
		if len(says) > 0 {
			c.add(plain, strings.Join(says, ", "))
		}
		if v.Override.Set() && v.Override.V != schema.OverrideNone {
			c.add(small, "lifted: "+v.Override.V)
		}
	case *schema.Branch:
		if count > 1 {
			c.add(plain, strconv.Itoa(count)+" of them")
		}
	case *schema.Existing:
		c.add(plain, "existing")
		switch {
		case v.Load.Set():
			c.add(small, v.Load.Text)
		case v.Impedance.Set():
			c.add(small, v.Impedance.Text)
		default:
			c.add(small, "load?")
		}
	case *schema.LineEnd:
		c.add(plain, "end of line")
		if v.Load.Set() {
			c.add(small, v.Load.Text)
		}
	}
}

func (c *cell) add(st style, text string) {
	c.lines = append(c.lines, lettered{st, textout.Printable(text)})
}

func times(count int, text string) string {
	if count == 1 {
		return text
	}
	return strconv.Itoa(count) + " × " + text
}

// add widens the span by another.
func (a *arrival) add(more arrival) {
	if a.known {
		more.low, more.high = min(more.low, a.low), max(more.high, a.high)
	}
	*a = more
}

// volts writes the span of what arrives at a block.
func (m *cellMaker) volts(equal []schema.Device) string {
	var all arrival
	for _, d := range equal {
		a := m.arrivals[d]
		if a == nil {
			return ""
		}
		all.add(*a)
	}
	high, low := strconv.FormatFloat(all.high, 'f', 1, 64), strconv.FormatFloat(all.low, 'f', 1, 64)
	if high == low {
		return high + " V"
	}
	return high + " … " + low + " V"
}

// legText writes the cable that leads to a cell, and that between its members.
func (m *cellMaker) legText(equal []schema.Device, first bool) string {
	part := m.line.Part
	var legs []string
	p := equal[0].Common()
	if first && part.HomeRun.Set() {
		legs = append(legs, part.HomeRun.Text)
	}
	if p.Leg.Set() {
		legs = append(legs, p.Leg.Text)
	}
	if p.Count() > 1 && p.Spacing.Set() {
		legs = append(legs, times(p.Count()-1, p.Spacing.Text))
	}
	for _, d := range equal[1:] {
		legs = append(legs, d.Common().Leg.Text)
	}
	text := joinLegs(legs)
	if p.Cable.Set() {
		text = strings.TrimPrefix(text+", "+p.Cable.Text, ", ")
	}
	return text
}

// joinLegs adds up lengths, equal neighbours counted together.
func joinLegs(legs []string) string {
	var terms []string
	for i := 0; i < len(legs); {
		next := i + 1
		for next < len(legs) && legs[next] == legs[i] {
			next++
		}
		if legs[i] != "" {
			terms = append(terms, times(next-i, legs[i]))
		}
		i = next
	}
	const few = 3
	if len(terms) > few {
		terms = append(terms[:few-1], "…")
	}
	return strings.Join(terms, " + ")
}

// Measures of a row of cells.
const (
	legRoom  = 15.0 // above the cable
	stub     = 9.0  // from the cable to a symbol
	pitch    = 12.0 // of the labels below it
	turnRoom = 20.0 // for the mark that says where a row goes on
)

// chains lays lines out.
type chains struct {
	sheet *sheet
	edge  float64 // rows turn here
	turns int     // marks used so far
}

// height is how high a row of these cells is, what they lead down not counted.
func height(cells []cell) float64 {
	var high float64
	for i := range cells {
		c := &cells[i]
		own := stub + speakerHigh + 2 + pitch*float64(len(c.lines)) + 6
		if !c.hangs() {
			own = max(stub+control+8, 6+pitch*float64(len(c.lines))+8)
		}
		high = max(high, own)
	}
	return legRoom + high
}

// draw lays a chain out from a point on, in rows, and gives how far it reaches.
// It calls itself for what braces enclose; the dialect bounds their nesting.
func (k *chains) draw(cells []cell, left, top float64) (right, bottom float64) {
	s := k.sheet
	high := height(cells)
	cable := top + legRoom
	x, from := left+4, left // where the next cell begins, and the cable of this row
	last := left            // what the cable of this row reaches so far
	taken := left           // by what cells of this row lead down
	bottom = top + high
	right = left
	for i := range cells {
		c := &cells[i]
		wide := c.width()
		start := x
		if len(c.inside) > 0 {
			start = max(x, taken)
		}
		need := wide
		if len(c.inside) > 0 {
			need = max(need, dropAt+4+c.inside[0].width()+turnRoom)
		}
		if i < len(cells)-1 {
			need += turnRoom
		}
		if start+need > k.edge && i > 0 { // goes on in the next row
			k.turns++
			s.wire("d-wire", from, cable, x+4, cable)
			k.turn(x+11, cable)
			right = max(right, x+turnRoom)
			top = bottom + 4
			cable, bottom = top+legRoom, top+high
			k.turn(left+7, cable)
			from, x, taken = left+14, left+turnRoom, left
			start = x
		}
		last = k.cell(c, start, cable)
		if len(c.inside) > 0 {
			drop := start + dropAt
			r, b := k.draw(c.inside, drop, top+high)
			k.drop(c, drop, cable, top+high+legRoom)
			taken, bottom, right = r+cellGap, max(bottom, b), max(right, r)
		}
		x = start + wide
		right = max(right, x)
	}
	s.wire("d-wire", from, cable, last, cable)
	return right, bottom
}

// drop draws the way down from a cell to the line it leads to.
func (k *chains) drop(c *cell, x, from, to float64) {
	if _, is := c.device.(*schema.Attenuator); is {
		k.sheet.wire("d-wire", x, from, x, from+stub)
		from += stub + control
	}
	k.sheet.wire("d-wire", x, from, x, to)
}

// turn draws the mark at which a row ends or goes on.
func (k *chains) turn(x, y float64) {
	k.sheet.circle("d-body", x, y, 7)
	k.sheet.takes(box{x - 7, y - 7, x + 7, y - 4.5})
	k.sheet.text(small, middle, x, y+3.2, strconv.Itoa(k.turns), "")
}

// cell draws one cell and gives where on the cable it is.
func (k *chains) cell(c *cell, x, cable float64) float64 {
	s := k.sheet
	if leg := small.cut(c.leg, longest); leg != "" {
		s.text(small, leftward, x+2, cable-4, leg, c.leg)
	}
	if !c.hangs() {
		at := x + dropAt
		s.tee(at, cable)
		if _, is := c.device.(*schema.Attenuator); is {
			s.attenuator(at, cable+stub+control/2)
		}
		y := cable + 6 + pitch*0.8
		for i, l := range c.lines {
			from := at + beside
			if i == 0 {
				s.marks(c.marks, from, y)
				from += marksWidth(c.marks)
			}
			s.text(l.style, leftward, from, y, l.style.cut(l.text, longest), l.text)
			y += pitch
		}
		return at
	}
	at := x + c.width()/2
	if c.back {
		s.path("d-solid", "M"+num(at+4)+" "+num(cable)+"l-9 -4v8z")
		s.takes(box{at - 5, cable - 3, at + 4, cable + 4})
		s.text(small, middle, at, cable+stub+pitch, c.lines[0].text, "")
		return at
	}
	s.wire("d-wire", at, cable, at, cable+stub)
	switch c.device.(type) {
	case *schema.Existing:
		s.existing(at, cable+stub)
	case *schema.LineEnd:
		s.resistor(at, cable+stub)
	default:
		s.speaker(at, cable+stub)
	}
	y := cable + stub + speakerHigh + 2 + pitch*0.85
	for i, l := range c.lines {
		text, marked := l.style.cut(l.text, longest), 0.0
		if i == 0 {
			marked = marksWidth(c.marks)
			s.marks(c.marks, at-(l.style.width(text)+marked)/2, y)
		}
		s.text(l.style, middle, at+marked/2, y, text, l.text)
		y += pitch
	}
	return at
}

// lineTitle writes what stands above a line.
func lineTitle(l *analysis.Line) string {
	var says []string
	if l.Loudspeakers > 0 {
		says = append(says, wording.Counted(l.Loudspeakers, "loudspeaker"))
	}
	if l.Load.Known() {
		says = append(says, l.Load.Value.String())
	} else {
		says = append(says, "load not known")
	}
	if l.Part.Cable.Set() {
		says = append(says, l.Part.Cable.Text)
	}
	if l.Part.Length.Set() {
		says = append(says, l.Part.Length.Text+" of cable")
	}
	if l.Part.Wiring.Set() {
		says = append(says, "in "+l.Part.Wiring.V)
	}
	if l.Part.RingLeg.Set() {
		says = append(says, "ring, "+l.Part.RingLeg.Text+" back to the amplifier")
	}
	if l.Part.Return.Set() {
		says = append(says, l.Part.Return.V+" return")
	}
	if l.Loss.Drop.Known() && l.Loss.Worst != "" {
		says = append(says, fmt.Sprintf("%s loses %.2f dB", l.Loss.Worst, float64(l.Loss.DB)))
	}
	return textout.Printable(strings.Join(says, " · "))
}

// drawnOn lists the headers of everything on a line.
func drawnOn(l *schema.Line, drawn map[at]bool) {
	step := check.Step{Kind: "line", Name: l.Name}
	drawn[at{step, source.Span{}}] = true
	for todo := [][]schema.Device{l.Devices}; len(todo) > 0; {
		devices := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, d := range devices {
			drawn[at{step, d.Common().Header}] = true
			if inside := d.Inside(); len(inside) > 0 {
				todo = append(todo, inside)
			}
		}
	}
}
