package drawing

import (
	"bytes"
	"html"
	"io"
	"math"
	"strconv"
	"strings"

	"loudlint/linter/textout"
)

// metresPerFoot is the international foot. Quantities are no business of a writer.
const metresPerFoot = 0.3048

// Picture is a finished picture.
type Picture struct {
	// Title names it, and Desc says in words what it shows.
	Title, Desc string
	// Width and Height are its size in CSS pixels.
	Width, Height float64

	body   []byte
	things []thing
}

// kind is what lies at a place of a picture.
type kind int

const (
	label  kind = iota // lettering: nothing may lie on it
	symbol             // a symbol: no label may lie on it
	wire               // a line: no label may lie on it
)

// thing is what lies where, kept so that tests can measure it.
type thing struct {
	kind kind
	box  box
	text string
}

// box is a rectangle; y grows downwards.
type box struct{ left, top, right, bottom float64 }

// overlaps tells that two boxes share more than an edge.
func (b box) overlaps(o box) bool {
	const touch = 0.05
	return b.left < o.right-touch && o.left < b.right-touch && b.top < o.bottom-touch && o.top < b.bottom-touch
}

// Write writes the picture as a file of its own.
func (p *Picture) Write(w io.Writer) error {
	var b bytes.Buffer
	b.WriteString(`<?xml version="1.0" encoding="UTF-8"?>` + "\n")
	p.open(&b, "d")
	b.WriteString("<style>\n" + Style)
	if bytes.Contains(p.body, []byte(shadeClass)) {
		b.WriteString(MapStyle)
	}
	b.WriteString("</style>\n")
	b.Write(p.body)
	b.WriteString("</svg>\n")
	_, err := w.Write(b.Bytes())
	return err
}

// Element gives the picture as an element of an HTML page that holds Style, and MapStyle for a map. The
// id is one of its own on that page.
func (p *Picture) Element(id string) string {
	var b bytes.Buffer
	p.open(&b, id)
	b.Write(p.body)
	b.WriteString("</svg>")
	return b.String()
}

func (p *Picture) open(b *bytes.Buffer, id string) {
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" class="d-picture" viewBox="0 0 ` + num(p.Width) + " " + num(p.Height) +
		`" width="` + num(p.Width) + `" height="` + num(p.Height) + `" role="img" aria-labelledby="` + id + `-t ` + id + `-d">` + "\n")
	b.WriteString(`<title id="` + id + `-t">` + safe(p.Title) + "</title>\n")
	b.WriteString(`<desc id="` + id + `-d">` + safe(p.Desc) + "</desc>\n")
	b.WriteString(`<rect class="d-paper" width="100%" height="100%"/>` + "\n")
}

// Style is the style sheet of all pictures; maps have MapStyle besides. A dark screen turns them dark; paper
// is light. Light and dark colours keep their order in grey.
const Style = `.d-picture{font-family:Helvetica,Arial,"Liberation Sans",sans-serif}
.d-h{font-size:15px;font-weight:bold;fill:#16191d}
.d-b{font-size:11px;font-weight:bold;fill:#16191d}
.d-t{font-size:11px;fill:#16191d}
.d-s{font-size:9.5px;fill:#454c54}
.d-paper{fill:#fff}
.d-ink{fill:none;stroke:#16191d;stroke-width:1.2}
.d-wire{fill:none;stroke:#16191d;stroke-width:1.6}
.d-lead{fill:none;stroke:#5b6570;stroke-width:1.1}
.d-dash{fill:none;stroke:#454c54;stroke-width:1.2;stroke-dasharray:4 3}
.d-box{fill:#eef1f4;stroke:#16191d;stroke-width:1.2}
.d-solid{fill:#16191d}
.d-body{fill:#fff;stroke:#16191d;stroke-width:1.2}
.d-grid{fill:none;stroke:#d5dae0;stroke-width:.7}
.d-bar{fill:#4a7fb5}
.d-over{fill:#b3261e}
.d-line{fill:none;stroke:#1f5f99;stroke-width:1.5}
.d-dot{fill:#1f5f99}
.d-limit{fill:none;stroke:#b3261e;stroke-width:1.5;stroke-dasharray:6 3}
.d-rating{fill:none;stroke:#16191d;stroke-width:1.5}
.d-error{fill:#b3261e}
.d-warning{fill:#8a5a00}
.d-note{fill:#2b5d8a}
.d-on{fill:#fff;font-size:8.5px;font-weight:bold}
@media screen and (prefers-color-scheme:dark){
.d-h,.d-b,.d-t{fill:#e9edf1}
.d-s{fill:#b4bdc6}
.d-paper{fill:#14181c}
.d-ink,.d-wire,.d-rating{stroke:#e9edf1}
.d-lead,.d-dash{stroke:#9aa4ae}
.d-box{fill:#232a31;stroke:#e9edf1}
.d-solid{fill:#e9edf1}
.d-body{fill:#14181c;stroke:#e9edf1}
.d-grid{stroke:#343c44}
.d-bar{fill:#5f94c9}
.d-over,.d-error{fill:#f28b82}
.d-line{stroke:#8ab8e6}
.d-dot{fill:#8ab8e6}
.d-limit{stroke:#f28b82}
.d-warning{fill:#e0b050}
.d-note{fill:#8ab8e6}
.d-on{fill:#14181c}
}
`

// sheet is a picture in the making.
type sheet struct {
	body   bytes.Buffer
	things []thing
}

// picture ends the drawing.
func (s *sheet) picture(title, desc string, width, height float64) *Picture {
	return &Picture{Title: title, Desc: desc, Width: math.Ceil(width), Height: math.Ceil(height), body: s.body.Bytes(), things: s.things}
}

// align is where the given point of a text lies in it.
type align int

const (
	leftward  align = iota // at its beginning
	middle                 // in its middle
	rightward              // at its end
)

// text letters a text on a base line. Whatever it was cut from is its tooltip.
func (s *sheet) text(st style, at align, x, baseline float64, text, whole string) {
	if text == "" {
		return
	}
	wide := st.width(text)
	b := box{x, baseline - ascent*st.px, x + wide, baseline + descent*st.px}
	anchor := ""
	switch at {
	case middle:
		b.left, b.right = x-wide/2, x+wide/2
		anchor = ` text-anchor="middle"`
	case rightward:
		b.left, b.right = x-wide, x
		anchor = ` text-anchor="end"`
	case leftward:
	}
	s.things = append(s.things, thing{label, b, text})
	s.body.WriteString(`<text class="` + st.class + `" x="` + num(x) + `" y="` + num(baseline) + `"` + anchor + ">" + safe(text))
	if whole != "" && whole != text {
		s.body.WriteString("<title>" + safe(whole) + "</title>")
	}
	s.body.WriteString("</text>\n")
}

// path draws a path of a class from SVG path data.
func (s *sheet) path(class, data string) {
	s.body.WriteString(`<path class="` + class + `" d="` + data + `"/>` + "\n")
}

// wire draws straight pieces through points, x and y by turns.
func (s *sheet) wire(class string, xy ...float64) {
	var d strings.Builder
	for i := 0; i+1 < len(xy); i += 2 {
		if i == 0 {
			d.WriteByte('M')
		} else {
			d.WriteByte('L')
			s.things = append(s.things, thing{wire, box{min(xy[i-2], xy[i]) - 0.5, min(xy[i-1], xy[i+1]) - 0.5, max(xy[i-2], xy[i]) + 0.5, max(xy[i-1], xy[i+1]) + 0.5}, ""})
		}
		d.WriteString(num(xy[i]) + " " + num(xy[i+1]))
	}
	s.path(class, d.String())
}

// rect draws a rectangle.
func (s *sheet) rect(class string, b box) {
	s.body.WriteString(`<rect class="` + class + `" x="` + num(b.left) + `" y="` + num(b.top) + `" width="` + num(b.right-b.left) + `" height="` + num(b.bottom-b.top) + `"/>` + "\n")
}

// circle draws a circle.
func (s *sheet) circle(class string, x, y, r float64) {
	s.body.WriteString(`<circle class="` + class + `" cx="` + num(x) + `" cy="` + num(y) + `" r="` + num(r) + `"/>` + "\n")
}

// takes keeps a place for a symbol.
func (s *sheet) takes(b box) { s.things = append(s.things, thing{symbol, b, ""}) }

// num writes a coordinate with as many digits as can be seen.
func num(v float64) string {
	const most = 1e7
	if math.IsNaN(v) || math.Abs(v) > most {
		v = 0 // nothing that can be drawn lies there
	}
	text := strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64)
	if text == "-0" {
		return "0"
	}
	return text
}

// safe makes a text fit to stand in SVG and HTML: nothing of it is markup, and
// nothing in it reorders or hides what stands beside it.
func safe(text string) string { return html.EscapeString(textout.Printable(text)) }
