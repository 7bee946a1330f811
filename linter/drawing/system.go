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
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Measures of the whole diagram.
const (
	margin     = 16.0
	usual      = 1060.0 // width that a diagram keeps to where it can
	leastWide  = 640.0  // width of a diagram with little in it
	leastLine  = 420.0  // width for lines, whatever stands before them
	track      = 7.0    // between two leads that run side by side
	portPitch  = 15.0   // between the inputs of a unit
	sourceHigh = 32.0
	portWide   = 110.0 // for the name of an input or output
	nameWide   = 170.0 // for the name of a unit or a source
)

// System draws the single-line diagram of the whole system: sources, mixers,
// amplifiers, and each line as it is walked, with the findings at their parts.
func System(j *linter.Judged) *Picture {
	d := newDiagram(j, true)
	return d.picture("Single-line diagram", "Sources on the left, then mixers and amplifiers, then each line in the order in which its cable meets the devices.")
}

// Overview draws the same with the lines as stubs.
func Overview(j *linter.Judged) *Picture {
	d := newDiagram(j, false)
	return d.picture("Overview", "Sources on the left, then mixers and amplifiers, then what each line comes to. Each line is drawn on its own sheet.")
}

// Line draws one line as it is walked.
func Line(j *linter.Judged, l *analysis.Line) *Picture {
	drawn := map[at]bool{}
	drawnOn(l.Part, drawn)
	d := &diagram{judged: j, found: find(j, drawn), whole: true}
	right, bottom := d.line(l, margin, margin-6, usual-margin)
	title := fmt.Sprintf("Line %q as it is walked", l.Part.Name)
	return d.sheet.picture(title, "The devices in the order in which the cable meets them. "+lineTitle(l)+".", max(right+margin, usual/2), bottom+margin/2)
}

// diagram is a single-line diagram in the making.
type diagram struct {
	sheet  sheet
	judged *linter.Judged
	found  *findings
	whole  bool // lines are drawn as they are walked

	right float64
	leads leads
	ports map[*analysis.Input]float64 // heights
	exits map[*analysis.Link]float64
}

// newDiagram finds out what is drawn, so that findings know their parts.
func newDiagram(j *linter.Judged, whole bool) *diagram {
	drawn := map[at]bool{}
	for _, u := range j.Design.Units {
		drawn[at{check.Step{Kind: u.Kind, Name: u.Name}, source.Span{}}] = true
	}
	for _, s := range j.Design.Sources {
		drawn[at{check.Step{Kind: s.Kind, Name: s.Name}, source.Span{}}] = true
	}
	for _, l := range j.Design.Lines {
		if whole {
			drawnOn(l, drawn)
		} else {
			drawn[at{check.Step{Kind: "line", Name: l.Name}, source.Span{}}] = true
		}
	}
	return &diagram{judged: j, whole: whole, found: find(j, drawn), ports: map[*analysis.Input]float64{}, exits: map[*analysis.Link]float64{}}
}

// unitBox is an amplifier or a mixer with what hangs on it.
type unitBox struct {
	unit   *analysis.Unit
	lines  []*analysis.Line
	name   string
	says   []string // below the name
	inputs []*analysis.Input
}

// picture lays the whole out, from right to left: what is on the left is placed
// where it leads to.
func (d *diagram) picture(what, desc string) *Picture {
	s := &d.sheet
	job := textout.Printable(d.judged.Design.System.Name)
	if job == "" {
		job = textout.Printable(d.judged.Design.Name)
	}
	marks := d.found.marks(at{})
	s.marks(marks, margin, margin+14)
	s.text(heading, leftward, margin+marksWidth(marks), margin+14, heading.cut(job, leastWide-2*margin-marksWidth(marks)), job)
	s.text(small, leftward, margin, margin+29, small.cut(textout.Printable(d.subtitle(what)), leastWide-2*margin), "")

	boxes := d.boxes()
	sourcesWide := d.sourcesWide()
	leadsLeft := margin + sourcesWide + sourceSize
	if len(d.judged.System.Sources) == 0 {
		leadsLeft = margin
	}
	unitsLeft := leadsLeft + track*float64(d.trackCount()+2)
	unitsWide := 0.0
	for _, b := range boxes {
		unitsWide = max(unitsWide, b.width(d))
	}
	linesLeft := unitsLeft + unitsWide + 26
	edge := max(usual-margin, linesLeft+leastLine)
	top := margin + 44
	for _, b := range boxes {
		top = d.unit(b, unitsLeft, unitsWide, linesLeft, top, edge) + 18
	}
	bottom := d.sources(margin, sourcesWide, margin+44)
	d.route(leadsLeft, unitsLeft)
	bottom = max(bottom, top)
	width := max(leastWide, d.right+margin)
	bottom = d.legend(bottom+10, width-2*margin)
	return s.picture(what+" of "+job, desc+" "+d.summary(), width, bottom)
}

func (d *diagram) subtitle(what string) string {
	says := []string{what}
	if v := d.judged.Design.System.Reference; v.Set() {
		says = append(says, "reference "+v.V)
	}
	if v := d.judged.Design.System.Revision; v.Set() {
		says = append(says, "revision "+v.V)
	}
	return strings.Join(append(says, "symbols after IEC 60617, from memory"), " · ")
}

func (d *diagram) summary() string {
	sys, loudspeakers := d.judged.System, 0
	for _, l := range sys.Lines {
		loudspeakers += l.Loudspeakers
	}
	return fmt.Sprintf("In all: %s, %s, %s, %s; %s marked at their parts.", wording.Counted(len(sys.Sources), "source"), wording.Counted(len(sys.Units), "unit"),
		wording.Counted(len(sys.Lines), "line"), wording.Counted(loudspeakers, "loudspeaker"), wording.Counted(len(d.found.all), "finding"))
}

// boxes makes the boxes of all units, mixers first, and one for lines of no
// stated amplifier.
func (d *diagram) boxes() []*unitBox {
	sys := d.judged.System
	var mixers, amplifiers []*unitBox
	for _, u := range sys.Units {
		b := &unitBox{unit: u, name: textout.Printable(u.Part.Name)}
		if u.Part.Model.Set() {
			b.says = append(b.says, textout.Printable(u.Part.Model.V))
		}
		for _, i := range u.Inputs {
			if len(i.Feeds)+len(i.Links) > 0 {
				b.inputs = append(b.inputs, i)
			}
		}
		if u.Part.Kind == schema.KindMixer {
			mixers = append(mixers, b)
		} else {
			amplifiers = append(amplifiers, b)
		}
	}
	for _, a := range sys.Amplifiers {
		at := slices.IndexFunc(amplifiers, func(b *unitBox) bool { return b.unit.Part == a.Part })
		if at < 0 {
			continue
		}
		b := amplifiers[at]
		b.lines = a.Lines
		for _, c := range a.Channels {
			b.says = append(b.says, channelText(c))
		}
	}
	all := slices.Concat(mixers, amplifiers)
	for _, m := range d.judged.Design.MuteLinks {
		if at := slices.IndexFunc(all, func(b *unitBox) bool { return b.unit.Part == m.UnitPart }); at >= 0 {
			all[at].says = append(all[at].says, textout.Printable("silenced by "+m.Name))
		}
	}
	var loose []*analysis.Line
	for _, l := range sys.Lines {
		if l.Amplifier == nil {
			loose = append(loose, l)
		}
	}
	if len(loose) > 0 {
		all = append(all, &unitBox{lines: loose, name: "amplifier not stated"})
	}
	return all
}

func channelText(c *analysis.Channel) string {
	rated, load := "? W", "? W"
	if c.Rated.Known() {
		rated = c.Rated.Value.String()
	}
	if c.Load.Known() {
		load = c.Load.Value.String()
	}
	text := load + " of " + rated
	if !c.CarriesLines() {
		text = rated
	}
	if !c.Part.Implied {
		text = c.Part.Name + ": " + text
	}
	return textout.Printable(text)
}

// title is how high the head of the box is.
func (b *unitBox) title() float64 { return 22 + pitch*float64(len(b.says)) + 6 }

// width is how wide the box has to be.
func (b *unitBox) width(d *diagram) float64 {
	wide := 22 + 2*8 + min(strong.width(b.name), nameWide)
	if b.unit != nil {
		wide += marksWidth(d.found.marks(b.at()))
	}
	for _, t := range b.says {
		wide = max(wide, min(small.width(t), nameWide)+2*8)
	}
	in, out := 0.0, 0.0
	for _, i := range b.inputs {
		in = max(in, min(plain.width(inputName(i)), portWide))
	}
	if b.unit != nil {
		for _, l := range b.unit.Links {
			in = max(in, min(plain.width(linkName(l)), portWide))
		}
	}
	for _, l := range b.lines {
		out = max(out, min(plain.width(outputName(l)), portWide))
	}
	return max(wide, in+out+2*7+14)
}

func (b *unitBox) at() at {
	return at{check.Step{Kind: b.unit.Part.Kind, Name: b.unit.Part.Name}, source.Span{}}
}

func inputName(i *analysis.Input) string {
	if i.Part == nil {
		return "input?"
	}
	return textout.Printable(i.Part.Name)
}

func linkName(l *analysis.Link) string {
	if l.Part.Output == nil {
		return textout.Printable(l.Part.Send.Name)
	}
	return textout.Printable(l.Part.Output.Name)
}

func outputName(l *analysis.Line) string {
	if l.Part.OutputPart == nil {
		return "output?"
	}
	return textout.Printable(l.Part.OutputPart.Name)
}

// unit draws a box and its lines and gives how far down they reach.
func (d *diagram) unit(b *unitBox, left, wide, linesLeft, top, edge float64) float64 {
	s := &d.sheet
	head := b.title()
	ports := top + head + portPitch
	inner := box{left, top, left + wide, 0}
	// Lines first: the box is as high as they are.
	y := top + max(0, head-20)
	if !d.whole {
		y = top + head
	}
	lineEnds := top
	for _, l := range b.lines {
		cable := d.cableOf(y)
		s.wire("d-wire", left+wide, cable, linesLeft, cable)
		s.text(plain, rightward, left+wide-7, cable+4, plain.cut(outputName(l), portWide), outputName(l))
		_, y = d.line(l, linesLeft, y, edge)
		lineEnds = cable + 14
		y += 8
	}
	portEnds := ports - portPitch
	port := func(name string) float64 {
		at := ports
		s.text(plain, leftward, left+7, at+4, plain.cut(name, portWide), name)
		portEnds = at + 12
		ports += portPitch
		return at
	}
	for _, i := range b.inputs {
		d.ports[i] = port(inputName(i))
	}
	if b.unit != nil {
		for _, l := range b.unit.Links {
			at := port(linkName(l))
			d.exits[l] = at
		}
	}
	inner.bottom = max(top+head, lineEnds, portEnds)
	class := "d-ink"
	if b.unit == nil {
		class = "d-dash"
	}
	s.rect(class, inner)
	x := left + 8
	if b.unit != nil {
		if b.unit.Part.Kind == schema.KindMixer {
			s.mixer(x, top+6)
		} else {
			s.amplifier(x, top+6)
		}
		x += 20
		marks := d.found.marks(b.at())
		s.marks(marks, x, top+17)
		x += marksWidth(marks)
	}
	s.text(strong, leftward, x, top+17, strong.cut(b.name, nameWide), b.name)
	for i, t := range b.says {
		s.text(small, leftward, left+8, top+22+pitch*float64(i)+pitch*0.7, small.cut(t, nameWide), t)
	}
	d.right = max(d.right, left+wide)
	return max(inner.bottom, y)
}

// lineHead is the room for what stands above a line, and stubHigh the height of
// one that is only a stub.
const (
	lineHead = 16.0
	stubHigh = 20.0
)

// cableOf gives how high the cable of a line lies that begins at a height.
func (d *diagram) cableOf(top float64) float64 {
	if d.whole {
		return top + lineHead + legRoom
	}
	return top + stubHigh/2
}

// line draws a line from a point on and gives how far it reaches.
func (d *diagram) line(l *analysis.Line, left, top, edge float64) (right, bottom float64) {
	s := &d.sheet
	place := at{check.Step{Kind: "line", Name: l.Part.Name}, source.Span{}}
	marks := d.found.marks(place)
	name := textout.Printable(l.Part.Name)
	shown := strong.cut(name, nameWide)
	from, baseline := left+4, top+12
	if !d.whole {
		cable := d.cableOf(top)
		s.wire("d-wire", left, cable, left+16, cable)
		s.speakerAside(left+16, cable)
		from, baseline = left+40, cable+4
	}
	s.marks(marks, from, baseline)
	x := from + marksWidth(marks)
	s.text(strong, leftward, x, baseline, shown, name)
	x += strong.width(shown) + 8
	says := small.cut(lineTitle(l), max(edge-x, 60))
	s.text(small, leftward, x, baseline, says, lineTitle(l))
	right = x + small.width(says)
	if !d.whole {
		d.right = max(d.right, right)
		return right, top + stubHigh
	}
	top += lineHead
	maker := newCellMaker(l, d.found)
	cells := maker.cells(l.Part.Devices, true)
	if l.Part.RingLeg.Set() {
		cells = append(cells, maker.wayBack())
	}
	k := &chains{sheet: s, edge: edge}
	r, bottom := k.draw(cells, left, top)
	right = max(right, r)
	d.right = max(d.right, right)
	return right, bottom
}

// sourceLabel is what stands beside a source.
func sourceLabel(src *analysis.Source) (name, says string) {
	words := []string{src.Part.Kind}
	if src.Part.Priority.Set() {
		words = append(words, "priority "+strconv.Itoa(src.Part.Priority.V))
	}
	return textout.Printable(src.Part.Name), textout.Printable(strings.Join(words, ", "))
}

// sourcesWide is how wide the labels of the sources are.
func (d *diagram) sourcesWide() float64 {
	wide := 0.0
	for _, src := range d.judged.System.Sources {
		name, says := sourceLabel(src)
		wide = max(wide, min(strong.width(name), nameWide)+marksWidth(d.found.marks(sourceAt(src))), small.width(says))
	}
	return wide + 6
}

func sourceAt(src *analysis.Source) at {
	return at{check.Step{Kind: src.Part.Kind, Name: src.Part.Name}, source.Span{}}
}

// sources draws the sources, each as near as may be to where it leads.
func (d *diagram) sources(left, wide, top float64) float64 {
	s := &d.sheet
	all := slices.Clone(d.judged.System.Sources)
	leadsTo := func(src *analysis.Source) float64 {
		for _, f := range src.Feeds {
			if y, ok := d.ports[f.Into]; ok {
				return y
			}
		}
		return math.Inf(1)
	}
	slices.SortStableFunc(all, func(a, b *analysis.Source) int {
		switch x, y := leadsTo(a), leadsTo(b); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	y := top
	for _, src := range all {
		if to := leadsTo(src); !math.IsInf(to, 1) {
			y = max(y, to-sourceHigh/2)
		}
		centre := y + sourceHigh/2
		name, says := sourceLabel(src)
		marks := d.found.marks(sourceAt(src))
		shown := strong.cut(name, nameWide)
		s.text(strong, rightward, left+wide-4, centre-1.5, shown, name)
		s.marks(marks, left+wide-4-strong.width(shown)-marksWidth(marks), centre-1.5)
		s.text(small, rightward, left+wide-4, centre+10, says, "")
		s.source(src.Part.Kind, left+wide+sourceSize/2, centre)
		for n, f := range src.Feeds {
			if port, ok := d.ports[f.Into]; ok {
				d.leads.add(f.Into, port, centre, n)
			}
		}
		y += sourceHigh
	}
	return y
}

// legend explains marks and ends the picture.
func (d *diagram) legend(top, wide float64) float64 {
	s := &d.sheet
	if len(d.found.all) == 0 {
		return top
	}
	y := top + 12
	s.text(strong, leftward, margin, y, "Findings", "")
	y += 4
	const longestLegend = 80
	for i, o := range d.found.all {
		y += 15
		if i == longestLegend {
			s.text(plain, leftward, margin, y, fmt.Sprintf("and %d more", len(d.found.all)-i), "")
			break
		}
		m := []mark{{o.Severity, strconv.Itoa(i + 1)}}
		s.marks(m, margin, y)
		text := textout.Printable(o.Severity.String() + ": " + o.Check.ID + " of " + o.Subject.String())
		from := margin + 30.0
		s.text(plain, leftward, from, y, plain.cut(text, wide-30), text)
	}
	return y + margin
}
