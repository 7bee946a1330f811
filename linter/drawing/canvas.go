package drawing

import (
	"image"
	"image/color"
	"math"
	"strings"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// ink is a colour that the plotting library hands through to the canvas, which
// draws with its class: what that looks like is the style sheet's.
type ink string

// RGBA gives black: nothing mixes inks.
func (ink) RGBA() (r, g, b, a uint32) { return color.Black.RGBA() }

// canvas lets the plotting library draw on a sheet. The library's own writer of
// SVG fixes colours at every element and cannot follow light and dark.
type canvas struct {
	sheet     *sheet
	left, top float64 // of the panel on the sheet
	high      float64 // of the panel: the library's y grows upwards
	states    []state
}

// state is what Push keeps.
type state struct {
	class string
	wide  vg.Length
	// m is the transform: x' = m0·x + m2·y + m4, y' = m1·x + m3·y + m5.
	m [6]float64
}

func newCanvas(s *sheet, left, top, high float64) *canvas {
	return &canvas{sheet: s, left: left, top: top, high: high, states: []state{{class: "d-ink", wide: 1, m: [6]float64{1, 0, 0, 1, 0, 0}}}}
}

func (c *canvas) now() *state { return &c.states[len(c.states)-1] }

// at turns a point of the library into one of the sheet.
func (c *canvas) at(p vg.Point) (x, y float64) {
	m, px, py := c.now().m, p.X.Points(), p.Y.Points()
	return c.left + m[0]*px + m[2]*py + m[4], c.top + c.high - (m[1]*px + m[3]*py + m[5])
}

func (c *canvas) SetLineWidth(w vg.Length) { c.now().wide = w }

// SetLineDash does nothing: dashes belong to classes.
func (*canvas) SetLineDash([]vg.Length, vg.Length) {}

func (c *canvas) SetColor(by color.Color) {
	c.now().class = "d-ink"
	if class, is := by.(ink); is {
		c.now().class = string(class)
	}
}

func (c *canvas) Rotate(rad float64) {
	sin, cos := math.Sincos(rad)
	m := c.now().m
	c.now().m = [6]float64{m[0]*cos + m[2]*sin, m[1]*cos + m[3]*sin, m[2]*cos - m[0]*sin, m[3]*cos - m[1]*sin, m[4], m[5]}
}

func (c *canvas) Translate(by vg.Point) {
	m, x, y := &c.now().m, by.X.Points(), by.Y.Points()
	m[4] += m[0]*x + m[2]*y
	m[5] += m[1]*x + m[3]*y
}

func (c *canvas) Scale(x, y float64) {
	m := &c.now().m
	m[0], m[1], m[2], m[3] = m[0]*x, m[1]*x, m[2]*y, m[3]*y
}

func (c *canvas) Push() { c.states = append(c.states, *c.now()) }

func (c *canvas) Pop() { c.states = c.states[:len(c.states)-1] }

func (c *canvas) Stroke(p vg.Path) {
	if c.now().wide > 0 {
		c.sheet.path(c.now().class, c.data(p))
	}
}

func (c *canvas) Fill(p vg.Path) { c.sheet.path(c.now().class, c.data(p)) }

// data writes a path. Arcs are those of whole circles: nothing else is drawn here.
func (c *canvas) data(p vg.Path) string {
	var d strings.Builder
	point := func(by string, at vg.Point) {
		x, y := c.at(at)
		d.WriteString(by + num(x) + " " + num(y))
	}
	for i := range p {
		step := &p[i]
		switch step.Type {
		case vg.MoveComp:
			point("M", step.Pos)
		case vg.LineComp:
			point("L", step.Pos)
		case vg.CurveComp:
			by := "Q"
			if len(step.Control) == 2 {
				by = "C"
			}
			for _, at := range step.Control {
				point(by, at)
				by = " "
			}
			point(" ", step.Pos)
		case vg.ArcComp:
			r := step.Radius
			arc := "A" + num(r.Points()) + " " + num(r.Points()) + " 0 1 0 "
			point("M", vg.Point{X: step.Pos.X - r, Y: step.Pos.Y})
			point(arc, vg.Point{X: step.Pos.X + r, Y: step.Pos.Y})
			point(arc, vg.Point{X: step.Pos.X - r, Y: step.Pos.Y})
		case vg.CloseComp:
			d.WriteByte('Z')
		}
	}
	return d.String()
}

// FillString letters a text. Text that is turned is turned by a quarter.
func (c *canvas) FillString(face font.Face, pt vg.Point, text string) {
	st := plain
	if face.Font.Size.Points() < plain.px {
		st = small
	}
	x, y := c.at(pt)
	if m := c.now().m; math.Abs(m[1]) > 0.5 {
		c.sheet.upright(st, x, y, text)
		return
	}
	c.sheet.text(st, leftward, x, y, text, "")
}

// DrawImage does nothing: no chart holds an image.
func (*canvas) DrawImage(vg.Rectangle, image.Image) {}

// upright letters a text that reads upwards from a point.
func (s *sheet) upright(st style, x, y float64, text string) {
	s.things = append(s.things, thing{label, box{x - ascent*st.px, y - st.width(text), x + descent*st.px, y}, text})
	s.body.WriteString(`<text class="` + st.class + `" transform="translate(` + num(x) + " " + num(y) + `) rotate(-90)">` + safe(text) + "</text>\n")
}
