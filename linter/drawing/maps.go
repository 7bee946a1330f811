package drawing

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/sound"
	"loudlint/linter/textout"
	"loudlint/schema/source"
)

// Sizes of a map.
const (
	mapWide, mapHigh = 460.0, 320.0 // at most
	mapHead          = 30.0         // for its title
	legendHigh       = 12.0
	lineHigh         = 15.0 // of text
	// Points that are worked out are so many pixels apart, further where a map would
	// take more pairs of a point and a loudspeaker than this: 1,000 loudspeakers have
	// points some 7 pixels apart.
	nodeApart, nodeMost = 4.0, 16.0
	mapPairs            = 3e6
)

// shadeCount is how many shades there are, from light (least) to dark (most). They
// are evenly apart for the eye, and their order stays in grey.
const shadeCount = 9

// shadeClass is what the classes of shades begin with.
const shadeClass = "d-shade"

// MapStyle is the style sheet of maps, beside Style. Their shades are the same on a dark screen,
// and so is what is drawn on them.
const MapStyle = `.d-shade0{fill:#fef5c0}
.d-shade1{fill:#d5e6ae}
.d-shade2{fill:#a8d6a5}
.d-shade3{fill:#7ac6a3}
.d-shade4{fill:#4ab4a5}
.d-shade5{fill:#09a0a6}
.d-shade6{fill:#008aa4}
.d-shade7{fill:#00749b}
.d-shade8{fill:#225d8b}
.d-around{fill:#fff;fill-rule:evenodd}
.d-contour{fill:none;stroke:#16191d;stroke-width:.8}
.d-wall{fill:none;stroke:#16191d;stroke-width:3}
.d-chip{fill:#fff}
.d-height{font-size:9.5px;font-weight:bold;fill:#16191d;stroke:#fff;stroke-width:3px;stroke-linejoin:round;paint-order:stroke}
.d-speaker{fill:#fff;stroke:#16191d;stroke-width:1.2}
@media screen and (prefers-color-scheme:dark){
.d-around,.d-chip{fill:#14181c}
.d-wall{stroke:#e9edf1}
}
`

// Sound draws what is heard in each space that loudspeakers serve: the level at full
// output and the speech transmission index over its floor.
func Sound(j *linter.Judged) *Picture {
	all := j.System.Sounds()
	if len(all) == 0 {
		s := &sheet{}
		says := "The design has no space that loudspeakers serve."
		s.text(plain, leftward, margin, margin, says, "")
		return s.picture("What is heard in the spaces", says, 2*margin+plain.width(says), 2*margin)
	}
	drawn := map[at]bool{}
	for _, one := range all {
		drawn[spaceAt(one)] = true
	}
	found := find(j, drawn)
	s := &sheet{}
	var desc []string
	y := margin / 2
	for _, one := range all {
		m := mapping{sheet: s, us: j.Design.System.US(), sound: one}
		y = m.draw(y, found.marks(spaceAt(one))) + margin
		desc = append(desc, m.desc)
	}
	return s.picture("What is heard in the spaces", strings.Join(desc, " "), 3*margin+2*panelWide, y)
}

// Map is one map of a space and what is said under it.
type Map struct {
	// Picture is nil where none can be drawn; Says then tells why.
	*Picture

	Says []string
}

// MapsOf gives the maps of one space, of level and of speech transmission index, each
// as a picture of its own that describes what is said.
func MapsOf(j *linter.Judged, one *analysis.Sound) (level, speech Map) {
	alone := func(of func(*mapping, float64, float64) (float64, []string)) Map {
		m := mapping{sheet: &sheet{}, us: j.Design.System.US(), sound: one}
		end, says := of(&m, margin, 0)
		if m.title == "" {
			return Map{nil, says}
		}
		title := textout.Printable(m.title + " in space " + strconv.Quote(one.Space.Name))
		return Map{m.sheet.picture(title, title+": "+strings.Join(says, " "), 2*margin+mapWide, end+margin/2), says}
	}
	return alone((*mapping).level), alone((*mapping).speech)
}

func spaceAt(one *analysis.Sound) at {
	return at{check.Step{Kind: "space", Name: one.Space.Name}, source.Span{}}
}

// mapping draws the maps of one space.
type mapping struct {
	sheet *sheet
	us    bool
	sound *analysis.Sound
	desc  string
	title string // of the map that was drawn last

	scale   float64 // pixels per metre
	low     sound.Point
	box     box // of the floor on the sheet
	columns int
	rows    int
	outside int // loudspeakers beyond the floor
}

// draw draws the maps of the space from a height on the sheet, and gives where they
// end.
func (m *mapping) draw(y float64, marks []mark) float64 {
	s, space := m.sheet, m.sound.Space
	s.marks(marks, margin, y+14)
	from := margin + marksWidth(marks)
	title := textout.Printable("Space " + strconv.Quote(space.Name))
	s.text(strong, leftward, from, y+14, strong.cut(title, 2*panelWide+2*margin-from), title)
	m.desc = title + ":"
	y += 14
	under, says := m.level(margin, y)
	end := m.says(margin, under, says)
	under, says = m.speech(2*margin+panelWide, y)
	return max(end, m.says(2*margin+panelWide, under, says))
}

// level draws the map of levels, and gives where it ends and what is to be said.
func (m *mapping) level(x, y float64) (float64, []string) {
	levels := m.sound.Levels()
	switch {
	case m.sound.Floor.Outline == nil || !levels.Known():
		return y, []string{"No map of levels: " + lacking(levels.Missing) + "."}
	case levels.Silent():
		return y, []string{"No map of levels: all loudspeakers are switched off."}
	}
	figures := m.place(x, y).figures(m.sound.LevelsAt)
	end := m.relief(figures, levelScale(m.inside(figures)), "Level at full output in dBA")
	return end, m.levelTexts(levels)
}

// speech does so for the speech transmission index.
func (m *mapping) speech(x, y float64) (float64, []string) {
	speech := m.sound.Speech()
	switch {
	case m.sound.Floor.Outline == nil || !speech.Known():
		return y, []string{"No map of speech intelligibility: " + lacking(speech.Missing) + "."}
	case m.sound.Levels().Silent():
		return y, []string{"No map of speech intelligibility: all loudspeakers are switched off."}
	}
	figures := m.place(x, y).figures(m.sound.SpeechAt)
	end := m.relief(figures, speechScale(m.inside(figures)), "Speech transmission index (STI)")
	return end, m.speechTexts(speech)
}

// lacking words what is missing.
func lacking(missing []analysis.Missing) string {
	var all []string
	for _, one := range missing {
		if !slices.Contains(all, one.What) {
			all = append(all, one.What)
		}
	}
	if len(all) == 0 {
		return "not known"
	}
	return "the design does not state the " + strings.Join(all, ", the ")
}

// says letters lines of text and gives where they end. What is said is described too.
func (m *mapping) says(x, y float64, texts []string) float64 {
	for _, text := range texts {
		text = textout.Printable(text)
		for _, line := range plain.wrap(text, panelWide) {
			y += lineHigh
			m.sheet.text(plain, leftward, x, y, plain.cut(line, panelWide), line)
		}
		m.desc += " " + text
	}
	return y
}

// wrap breaks a text into lines of so many pixels, between words; a longer word is
// a line of its own.
func (s style) wrap(text string, px float64) []string {
	var lines []string
	line := ""
	for word := range strings.FieldsSeq(text) {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line != "" && s.width(longer) > px {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

func (m *mapping) levelTexts(l *analysis.Levels) []string {
	texts := []string{
		fmt.Sprintf("95 %% of the floor has %s or more, the mean is %s.", l.Fifth.Value, l.Mean.Value),
		fmt.Sprintf("Softest %s, loudest %s: a spread of %.1f dB. Average speech is %s lower.", l.Least.Value, l.Most.Value, float64(l.Spread), analysis.SpeechBelowFull),
	}
	if m.sound.Wanted.Known() {
		texts = append(texts, fmt.Sprintf("Wanted: speech of %s.", m.sound.Wanted.Value))
	}
	if m.outside > 0 {
		texts = append(texts, fmt.Sprintf("%d of the loudspeakers hang beyond the floor and are not drawn.", m.outside))
	}
	if l.Of != "" {
		texts = append(texts, "This is "+l.Of+".")
	}
	if l.DirectOnly {
		texts = append(texts, "Direct sound alone, without reverberation.")
	}
	for _, assumed := range l.Assumed {
		texts = append(texts, "Assumed: "+assumed+".")
	}
	return texts
}

// Index words a speech transmission index with its band and rating.
func Index(sti float64) string {
	return fmt.Sprintf("%.2f: band %s, %s", sti, sound.Letter(sti), sound.Rating(sti))
}

func (m *mapping) speechTexts(t *analysis.Speech) []string {
	texts := []string{
		fmt.Sprintf("95 %% of the floor has %.2f or more, the mean is %s. The least is %.2f.", t.Fifth, Index(t.Mean), t.Least),
		fmt.Sprintf("For average speech of %s over noise of %s.", t.Level.Value, m.sound.Noise.Value),
	}
	for _, doubt := range t.Doubts {
		texts = append(texts, "Doubtful: "+doubt+".")
	}
	return texts
}

// place finds where the floor lies on the sheet, under the title of its map.
func (m *mapping) place(x, y float64) *mapping {
	low, high := m.sound.Floor.Outline.Bounds()
	m.low = low
	m.scale = min(mapWide/(high.X-low.X), mapHigh/(high.Y-low.Y))
	top := y + mapHead
	m.box = box{x, top, x + m.scale*(high.X-low.X), top + m.scale*(high.Y-low.Y)}
	wide, deep := m.box.right-m.box.left, m.box.bottom-m.box.top
	apart := math.Sqrt(wide * deep * float64(len(m.sound.Levels().Speakers)) / mapPairs)
	apart = max(nodeApart, min(nodeMost, apart))
	m.columns = max(2, int(math.Ceil(wide/apart))+1)
	m.rows = max(2, int(math.Ceil(deep/apart))+1)
	return m
}

// on turns a place in the space into one on the sheet: the width grows upwards.
func (m *mapping) on(p sound.Point) (x, y float64) {
	return m.box.left + m.scale*(p.X-m.low.X), m.box.bottom - m.scale*(p.Y-m.low.Y)
}

// off is the inverse of on.
func (m *mapping) off(x, y float64) sound.Point {
	return sound.Point{X: m.low.X + (x-m.box.left)/m.scale, Y: m.low.Y + (m.box.bottom-y)/m.scale}
}

// node is a point of the lattice on the sheet.
func (m *mapping) node(i int) (x, y float64) {
	column, row := float64(i%m.columns)/float64(m.columns-1), float64(i/m.columns)/float64(m.rows-1)
	return m.box.left + column*(m.box.right-m.box.left), m.box.top + row*(m.box.bottom-m.box.top)
}

// figures asks for the figures at the points of the lattice.
func (m *mapping) figures(of func([]sound.Vector) []float64) []float64 {
	ears, _ := m.sound.Ears()
	places := make([]sound.Vector, m.columns*m.rows)
	for i := range places {
		p := m.off(m.node(i))
		places[i] = sound.Vector{X: p.X, Y: p.Y, Z: float64(ears)}
	}
	return of(places)
}

// inside gives the least and the greatest figure over the floor itself.
func (m *mapping) inside(figures []float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i, v := range figures {
		if !math.IsInf(v, 0) && !math.IsNaN(v) && m.sound.Floor.Outline.Contains(m.off(m.node(i))) {
			least, most = min(least, v), max(most, v)
		}
	}
	if least > most { // a floor thinner than the lattice
		least, most = figures[0], figures[0]
	}
	return least, most
}

// reading is how the figures of a map are read: from where on each shade is, what it
// is called, what stands on the contour line there, and how a single figure is
// written. Shades begin half of the last digit that is written below the round
// figure, so that a figure lies in the shade that its digits say.
type reading struct {
	levels []float64
	names  []string
	marks  []string
	format string
}

// levelScale shades in steps of a whole number of dB, few enough to be told apart.
func levelScale(least, most float64) reading {
	r := reading{format: "%.1f"}
	for _, step := range []float64{1, 2, 3, 5, 10, 20, 50} {
		if !r.divide(least, most, step, 0.1) {
			continue
		}
		for n := range r.levels {
			edge := math.Round(r.levels[n] + 0.05)
			r.marks = append(r.marks, fmt.Sprintf("%.0f", edge))
			r.names = append(r.names, fmt.Sprintf("%.0f–%.0f", edge, edge+step))
		}
		return r
	}
	r.levels, r.names, r.marks = []float64{least}, []string{""}, []string{""}
	return r
}

// speechScale shades by the bands of IEC 60268-16, by two or four where there are many.
func speechScale(least, most float64) reading {
	r := reading{format: "%.2f"}
	for _, step := range []float64{0.04, 0.08, 0.16} {
		if !r.divide(least, most, step, 0.01) {
			continue
		}
		for n := range r.levels {
			edge := r.levels[n] + 0.005
			mark := fmt.Sprintf("%.2f", edge)
			r.marks = append(r.marks, mark)
			if step < 0.05 {
				mark = sound.Letter(edge) + " " + mark
			}
			r.names = append(r.names, mark+"–")
		}
		return r
	}
	r.levels, r.names, r.marks = []float64{least}, []string{""}, []string{""}
	return r
}

// divide lays shades of one step, from the last round figure that is below all, of
// figures that are written to a digit; it is false when there would be too many.
func (r *reading) divide(least, most, step, digit float64) bool {
	first := math.Floor((math.Round(least/digit)*digit)/step + 1e-9)
	last := math.Floor((math.Round(most/digit)*digit)/step + 1e-9)
	if !(first <= last && last-first < shadeCount) {
		return false
	}
	for n := first; n <= last; n++ {
		r.levels = append(r.levels, n*step-digit/2)
	}
	return true
}

// shade is the class of the n-th of so many shades: two apart where there are few, so
// that an even field does not look like a steep one.
func shade(n, of int) string {
	if of > (shadeCount+1)/2 {
		return shadeClass + strconv.Itoa(n*(shadeCount-1)/(of-1))
	}
	return shadeClass + strconv.Itoa((shadeCount-1)/2-(of-1)+2*n)
}

// relief draws one map with its title, scale and legend, and gives where it ends.
func (m *mapping) relief(figures []float64, by reading, title string) float64 {
	s := m.sheet
	m.title = title
	s.text(plain, leftward, m.box.left, m.box.top-13, title, "")
	r := &relief{box: m.box, columns: m.columns, rows: m.rows, figures: figures}
	wall := m.wall()
	rings := r.contours(s, by.levels, func(n int) string { return shade(n, len(by.levels)) })
	// What lies outside the walls is covered, rather than cut off by an element whose
	// name would have to be one of its own on every page.
	s.path("d-around", "M"+num(m.box.left-1)+" "+num(m.box.top-1)+"H"+num(m.box.right+1)+"V"+num(m.box.bottom+1)+"H"+num(m.box.left-1)+"Z"+wall)
	class := "d-wall"
	if m.sound.Open() {
		class = "d-dash"
	}
	s.path(class, wall)
	taken := m.speakers()
	taken = m.heights(rings, by.marks, taken)
	m.numbers(r, taken, by.format)
	return m.legend(by)
}

// wall is the path along the outline.
func (m *mapping) wall() string {
	var d strings.Builder
	for i, p := range m.sound.Floor.Outline {
		x, y := m.on(p)
		by := "L"
		if i == 0 {
			by = "M"
		}
		d.WriteString(by + num(x) + " " + num(y))
	}
	return d.String() + "Z"
}

// speakers draws the loudspeakers: a circle for one that looks down, a wedge that
// points where another looks; without filling where nothing reaches it. It gives
// what room they take.
func (m *mapping) speakers() []box {
	all := m.sound.Levels().Speakers
	r := 4.0
	if len(all) > 100 {
		r = 2.5
	}
	var taken []box
	m.outside = 0
	for i := range all {
		one := &all[i]
		x, y := m.on(sound.Point{X: one.At.X, Y: one.At.Y})
		if x < m.box.left-2*r || x > m.box.right+2*r || y < m.box.top-2*r || y > m.box.bottom+2*r {
			m.outside++
			continue
		}
		class := "d-speaker"
		if one.Watts <= 0 {
			class = "d-ink"
		}
		level := math.Hypot(one.Aim.X, one.Aim.Y)
		if level < 0.3*one.Aim.Length() || level == 0 {
			m.sheet.circle(class, x, y, r)
		} else {
			// A point ahead and two behind.
			ux, uy := one.Aim.X/level, -one.Aim.Y/level
			m.sheet.path(class, "M"+num(x+1.6*r*ux)+" "+num(y+1.6*r*uy)+
				"L"+num(x-r*ux-r*uy)+" "+num(y-r*uy+r*ux)+"L"+num(x-r*ux+r*uy)+" "+num(y-r*uy-r*ux)+"Z")
		}
		b := box{x - 1.6*r, y - 1.6*r, x + 1.6*r, y + 1.6*r}
		m.sheet.takes(b)
		taken = append(taken, b)
	}
	return taken
}

// heights letters what contour lines stand for, once on each and more often on long
// ones, where there is room; it adds what room they take.
func (m *mapping) heights(rings [][]ring, marks []string, taken []box) []box {
	const every, least = 260.0, 60.0
	for n, some := range rings {
		half := onLine.width(marks[n])/2 + 1
		for _, one := range some {
			along, next := 0.0, least/2
			for i, p := range one {
				q := one[(i+1)%len(one)]
				if p.edge || q.edge {
					continue
				}
				along += math.Hypot(q.x-p.x, q.y-p.y)
				if along < next {
					continue
				}
				x, y := (p.x+q.x)/2, (p.y+q.y)/2
				place := box{x - half, y - 6, x + half, y + 6}
				if m.roomFor(place, taken) {
					m.sheet.text(onLine, middle, x, y+3.2, marks[n], "")
					taken = append(taken, place)
					next = along + every
				}
			}
		}
	}
	return taken
}

// numbers letters figures on the map, evenly, where there is room for them.
func (m *mapping) numbers(r *relief, taken []box, format string) {
	const apartX, apartY = 110.0, 72.0
	columns := max(1, int((m.box.right-m.box.left)/apartX))
	rows := max(1, int((m.box.bottom-m.box.top)/apartY))
	for row := range rows {
		for column := range columns {
			x := m.box.left + (float64(column)+0.5)/float64(columns)*(m.box.right-m.box.left)
			y := m.box.top + (float64(row)+0.5)/float64(rows)*(m.box.bottom-m.box.top)
			m.number(r, x, y, taken, format)
		}
	}
}

// number letters the figure at a place, or a little beside it.
func (m *mapping) number(r *relief, x, y float64, taken []box, format string) {
	const aside = 20.0
	for _, by := range [][2]float64{{0, 0}, {0, -aside}, {0, aside}, {aside, 0}, {-aside, 0}} {
		x, y := x+by[0], y+by[1]
		text := fmt.Sprintf(format, r.under(x, y))
		half := small.width(text)/2 + 2
		chip := box{x - half, y - 8, x + half, y + 6}
		if m.roomFor(chip, taken) {
			m.sheet.rect("d-chip", chip)
			m.sheet.text(small, middle, x, y+2.5, text, "")
			return
		}
	}
}

// roomFor tells that a box lies on the floor and on no loudspeaker.
func (m *mapping) roomFor(b box, taken []box) bool {
	for _, corner := range [][2]float64{{b.left, b.top}, {b.right, b.top}, {b.left, b.bottom}, {b.right, b.bottom}} {
		if !m.sound.Floor.Outline.Contains(m.off(corner[0], corner[1])) {
			return false
		}
	}
	return !slices.ContainsFunc(taken, b.overlaps)
}

// legend draws the scale of lengths and of shades under the map.
func (m *mapping) legend(by reading) float64 {
	s := m.sheet
	y := m.box.bottom + 14
	length, text := m.ruler()
	s.wire("d-ink", m.box.left, y-4, m.box.left, y, m.box.left+length, y, m.box.left+length, y-4)
	s.text(small, leftward, m.box.left+length+6, y+1, text, "")
	y += 12
	wide := mapWide / shadeCount
	for n := range by.levels {
		x := m.box.left + float64(n)*wide
		s.rect(shade(n, len(by.levels)), box{x, y, x + wide, y + legendHigh})
		s.text(small, leftward, x, y+legendHigh+11, by.names[n], "")
	}
	s.path("d-contour", "M"+num(m.box.left)+" "+num(y)+"h"+num(wide*float64(len(by.levels)))+"v"+num(legendHigh)+"h"+num(-wide*float64(len(by.levels)))+"z")
	return y + legendHigh + 14
}

// ruler is a round length and how long it is on the sheet.
func (m *mapping) ruler() (px float64, text string) {
	unit, per := "m", m.scale
	if m.us {
		unit, per = "ft", m.scale*metresPerFoot
	}
	length := 1.0
	for _, factor := range []float64{2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2} { // 2, 5, 10, 20 …
		if length*per >= 60 {
			break
		}
		length *= factor
	}
	return length * per, strconv.FormatFloat(length, 'f', -1, 64) + " " + unit
}
