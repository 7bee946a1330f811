package textout

import (
	"bufio"
	"strconv"
	"strings"

	"loudlint/schema/source"
)

// Widths of a page, in columns.
const (
	defaultWidth = 96
	leastWidth   = 24
	// labelledWidth is the least width with a column of labels: below it too
	// little would be left for the text.
	labelledWidth = 60
	// textColumn is where the text of rows begins, after the widest label.
	textColumn = 13
	labelInset = 2
)

// page lays out rows of words. Write errors stick in the buffered writer and
// come out when it is flushed.
type page struct {
	w       *bufio.Writer
	palette Palette
	width   int
	words   []word // of the row being put together
}

// word is a piece of text that is not broken across lines.
type word struct {
	text  string
	tail  string // punctuation that follows without a space
	style Style
}

func newPage(w *bufio.Writer, o Options) *page {
	p := &page{w: w, palette: NewPalette(o.Colour), width: o.Width}
	if p.width <= 0 {
		p.width = defaultWidth
	}
	p.width = max(p.width, leastWidth)
	return p
}

func (p *page) write(text string)              { _, _ = p.w.WriteString(text) }
func (p *page) paint(style Style, text string) { p.write(p.palette.Paint(style, text)) }
func (p *page) line()                          { _ = p.w.WriteByte('\n') }
func (p *page) labelled() bool                 { return p.width >= labelledWidth }

// say adds running text to the row. It breaks between words, but neither
// between a number and its unit nor after the sign in front of a term.
func (p *page) say(text string) { p.styled(Plain, text) }

func (p *page) styled(style Style, text string) {
	text = Printable(text)
	start, end, last := -1, 0, ""
	for at := 0; at < len(text); {
		if text[at] == ' ' {
			at++
			continue
		}
		to := strings.IndexByte(text[at:], ' ')
		if to < 0 {
			to = len(text)
		} else {
			to += at
		}
		next := text[at:to]
		const longest = 40 // bytes that are kept together
		if start >= 0 && (to-start > longest || !together(last, next)) {
			p.words = append(p.words, word{text: text[start:end], style: style})
			start = -1
		}
		if start < 0 {
			start = at
		}
		end, last, at = to, next, to
	}
	if start >= 0 {
		p.words = append(p.words, word{text: text[start:end], style: style})
	}
}

func together(before, after string) bool {
	switch before {
	case "+", "=", "×", "−", "-", "/", "÷":
		return true
	}
	return after == "×" || endsInDigit(before) && isUnit(strings.TrimRight(after, ".,;:)?!\"'"))
}

func endsInDigit(text string) bool {
	return text != "" && text[len(text)-1] >= '0' && text[len(text)-1] <= '9'
}

func isUnit(text string) bool {
	switch text {
	case "W", "mW", "kW", "VA", "V", "mV", "A", "mA", "Ω", "ohm", "kohm", "kΩ", "m", "mm", "cm", "km", "ft", "in", "m²", "mm²", "m2", "mm2", "sq",
		"AWG", "Hz", "kHz", "s", "ms", "min", "h", "Ah", "dB", "dBA", "dBu", "dBV", "°C", "°F", "C", "F", "deg", "%":
		return true
	}
	return false
}

// whole adds text that is kept on one line where it fits on one.
func (p *page) whole(style Style, text string) {
	p.words = append(p.words, word{text: Printable(text), style: style})
}

// place adds file and line of the start of a span.
func (p *page) place(s source.Span) { p.whole(Place, placeOf(s)) }

// join puts punctuation right behind what was added last.
func (p *page) join(tail string) {
	if n := len(p.words); n > 0 {
		p.words[n-1].tail += tail
	}
}

// row ends the row being put together and writes it under a label; an empty
// label continues the row above.
func (p *page) row(label string) { p.entry(label, Label, labelInset) }

// sentence ends the row and writes it across the whole page.
func (p *page) sentence() { p.fill(0, 0, 0) }

// entry writes the words of the row with a label in a style.
func (p *page) entry(label string, style Style, inset int) {
	used := 0
	if label != "" {
		if inset > 0 && !p.labelled() {
			label += ":"
		}
		p.pad(inset)
		p.paint(style, label)
		used = inset + visibleWidth(label)
	}
	hang := textColumn
	if !p.labelled() {
		hang = inset + 2
	}
	start := hang
	if label != "" {
		start = max(hang, used+1)
	}
	p.fill(used, start, hang)
}

func (p *page) pad(columns int) {
	for range columns {
		_ = p.w.WriteByte(' ')
	}
}

// fill writes the words of the row from the start column onwards, wrapped, with
// a hanging indent, and empties the row. So many columns of the line are used
// already.
func (p *page) fill(used, start, hang int) {
	column, gap := start, start-used // gap is still to be written in front of the next word
	for _, w := range p.words {
		wide := visibleWidth(w.text) + len(w.tail)
		// A word too long for any line begins where it stands and is cut. A
		// place is copied and clicked, so it is never cut.
		long := hang+wide > p.width && w.style != Place
		room := column+wide <= p.width || long && column+widest <= p.width
		if !room && column > hang {
			p.line()
			column, gap = hang, hang
		}
		p.pad(gap)
		if long {
			column = p.chop(w, column, hang)
		} else {
			p.paint(w.style, w.text)
			column += wide - len(w.tail)
		}
		p.write(w.tail)
		column += len(w.tail) + 1
		gap = 1
	}
	p.line()
	p.words = p.words[:0]
}

// widest is how many columns a single character takes at most.
const widest = 2

// chop writes a word in pieces, each as much as the line holds, and gives the
// column after it.
func (p *page) chop(w word, column, hang int) int {
	from := 0
	for at := 0; at < len(w.text); {
		size, wide := cluster(w.text[at:])
		needed := wide
		if at+size == len(w.text) {
			needed += len(w.tail)
		}
		if column+needed > p.width && column > hang {
			p.paint(w.style, strings.Trim(w.text[from:at], " "))
			p.line()
			p.pad(hang)
			from, column = at, hang
		}
		at += size
		column += wide
	}
	p.paint(w.style, w.text[from:])
	return column
}

// heading writes a name at the left edge and what belongs to it at the right,
// joined by dots; where both do not fit on a line, on two.
func (p *page) heading(name string, style Style, right string) {
	name, right = Printable(name), Printable(right)
	if right == "" && visibleWidth(name) <= p.width {
		p.paint(style, name)
		p.line()
		return
	}
	dots := p.width - visibleWidth(name) - visibleWidth(right) - 2
	const fewest = 3
	if right == "" || dots < fewest {
		p.styled(style, name)
		p.fill(0, 0, labelInset)
		if right != "" {
			p.pad(labelInset)
			p.paint(Place, right)
			p.line()
		}
		return
	}
	p.paint(style, name)
	p.pad(1)
	var leader strings.Builder
	for column := p.width - visibleWidth(right) - 1 - dots; dots > 0; column, dots = column+1, dots-1 {
		leader.WriteByte(" ."[column%2]) // the dots of all headings stand below each other
	}
	p.paint(Label, leader.String())
	p.pad(1)
	p.paint(Place, right)
	p.line()
}

// placeOf writes file and line of the start of a span.
func placeOf(s source.Span) string {
	if s.IsZero() {
		return ""
	}
	return s.File.Name + ":" + strconv.Itoa(s.From().Line)
}
