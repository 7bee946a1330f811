package drawing

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// chart is a pair of axes and what is drawn between them.
type chart struct {
	x, y  axis
	bars  []bar
	lines []stroke
	dots  []dot
}

// axis is one axis of a chart. Its lettered steps are round numbers, unless they
// are given.
type axis struct {
	label    string
	min, max float64
	log      bool   // equal ratios are equally long
	ticks    []tick // instead of round numbers
	names    bool   // the ticks name rows and have no marks
}

// tick is a place on an axis and how it is lettered.
type tick struct {
	at    float64
	label string
}

// dot is a point of a chart.
type dot struct{ x, y float64 }

// stroke is a line of a chart in the look of a class.
type stroke struct {
	class string
	dots  []dot
}

// bar is one bar of a chart, from 0 to its length. One that is over its limit has
// a notch at its end, so that it is told without colour.
type bar struct {
	long float64
	over bool
}

// share is where between its ends the axis has a value: 0 to 1.
func (a *axis) share(v float64) float64 {
	if a.log {
		return math.Log(v/a.min) / math.Log(a.max/a.min)
	}
	return (v - a.min) / (a.max - a.min)
}

// steps letters an axis of so many pixels: at most one step for each so many
// pixels, where the numbers are 1, 2 or 5 of a power of ten.
func (a *axis) steps(long, each float64) []tick {
	if a.ticks != nil {
		return slices.DeleteFunc(slices.Clone(a.ticks), func(t tick) bool { return t.at < a.min || t.at > a.max })
	}
	least := (a.max - a.min) * each / long
	if !(least > 0) || math.IsInf(least, 0) {
		return nil
	}
	power := math.Floor(math.Log10(least))
	step := math.Pow(10, power)
	for _, by := range [...]float64{2, 2.5, 2} { // to 2, to 5, to 10
		if step >= least {
			break
		}
		step *= by
	}
	decimals := max(0, -int(math.Floor(math.Log10(step*1.0001))))
	var all []tick
	first := math.Ceil(a.min/step - 1e-9)
	for i := range int(long/each) + 1 {
		at := (first + float64(i)) * step
		if at > a.max+step*1e-9 {
			break
		}
		all = append(all, tick{at, strconv.FormatFloat(at, 'f', decimals, 64)})
	}
	return all
}

// draw draws the chart into a box of the sheet.
func (c *chart) draw(s *sheet, b box) {
	const (
		gap     = 3.0 // between a text and what it belongs to
		mark    = 5.0 // from an axis to its ticks' labels
		eachX   = 56.0
		eachY   = 34.0
		between = 5.0 // from the field to its axes
	)
	// The field is what the axes and their lettering leave.
	field := box{b.left, b.top + 8, b.right - 2, b.bottom}
	if c.x.label != "" {
		field.bottom -= plain.px + gap
	}
	field.bottom -= small.px + gap + mark + between
	if c.y.label != "" {
		s.upright(plain, b.left+ascent*plain.px, 0.5*(field.top+field.bottom+plain.width(c.y.label)), c.y.label)
		field.left += plain.px + gap
	}
	ys, style := c.y.steps(field.bottom-field.top, eachY), small
	if c.y.names {
		style = plain
	}
	widest := 0.0
	for _, t := range ys {
		widest = max(widest, style.width(t.label))
	}
	field.left += widest + gap + between
	if !c.y.names {
		field.left += mark
	}
	xs := c.x.steps(field.right-field.left, eachX)
	if n := len(xs); n > 0 { // half of the last label may stand beyond the field
		field.right = min(field.right, b.right-small.width(xs[n-1].label)/2)
	}
	x := func(v float64) float64 { return field.left + c.x.share(v)*(field.right-field.left) }
	y := func(v float64) float64 { return field.bottom - c.y.share(v)*(field.bottom-field.top) }

	if c.x.label != "" { // below the middle of the field, if there is room
		shown := plain.cut(c.x.label, b.right-b.left)
		wide := plain.width(shown)
		from := min(0.5*(field.left+field.right-wide), b.right-wide)
		s.text(plain, leftward, max(from, b.left), b.bottom-descent*plain.px, shown, c.x.label)
	}
	under, beside := field.bottom+between, field.left-between
	for _, t := range xs {
		at := x(t.at)
		s.line("d-grid", at, field.top, at, field.bottom)
		s.line("d-ink", at, under, at, under+mark)
		s.text(small, middle, at, under+mark+gap+ascent*small.px, t.label, "")
	}
	s.line("d-ink", field.left, under, field.right, under)
	for _, t := range ys {
		at := y(t.at)
		s.line("d-grid", field.left, at, field.right, at)
		end := beside
		if !c.y.names {
			end -= mark
			s.line("d-ink", end, at, beside, at)
		}
		s.text(style, rightward, end-gap, at+0.5*(ascent-descent)*style.px, t.label, "")
	}
	if !c.y.names {
		s.line("d-ink", beside, field.bottom, beside, field.top)
	}
	for i, one := range c.bars {
		one.draw(s, x(0), x(one.long), y(float64(i)-0.32), y(float64(i)+0.32))
	}
	for _, one := range c.lines {
		var d strings.Builder
		by := "M"
		for _, p := range one.dots {
			d.WriteString(by + num(x(p.x)) + " " + num(y(p.y)))
			by = "L"
		}
		s.path(one.class, d.String())
	}
	for _, p := range c.dots {
		s.circle("d-dot", x(p.x), y(p.y), 2)
	}
}

func (b bar) draw(s *sheet, from, to, low, high float64) {
	class, notch := "d-bar", ""
	if b.over {
		class, notch = "d-over", "L"+num(to-5)+" "+num(0.5*(low+high))
	}
	s.path(class, "M"+num(from)+" "+num(low)+"L"+num(to)+" "+num(low)+notch+"L"+num(to)+" "+num(high)+"L"+num(from)+" "+num(high)+"Z")
}

// line draws one straight piece, over which a label may lie.
func (s *sheet) line(class string, x1, y1, x2, y2 float64) {
	s.path(class, "M"+num(x1)+" "+num(y1)+"L"+num(x2)+" "+num(y2))
}

// upright letters a text that reads upwards from a point.
func (s *sheet) upright(st style, x, y float64, text string) {
	s.things = append(s.things, thing{label, box{x - ascent*st.px, y - st.width(text), x + descent*st.px, y}, text})
	s.body.WriteString(`<text class="` + st.class + `" transform="translate(` + num(x) + " " + num(y) + `) rotate(-90)">` + safe(text) + "</text>\n")
}
