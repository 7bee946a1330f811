package drawing

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
	plotfont "gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/textout"
	"loudlint/schema/source"
)

// Sizes of a chart.
const (
	panelWide = 500.0
	panelHigh = 230.0
	panelHead = 20.0 // for its title
)

// panel is one chart of a picture.
type panel struct {
	title string
	says  string // beside the title, smaller
	marks []mark
	plot  *plot.Plot
	high  float64
}

// lettering is the face of a chart's text.
func lettering(px float64) plotfont.Font {
	return plotfont.Font{Typeface: "Liberation", Variant: "Sans", Size: vg.Points(px)}
}

// newPlot makes an empty chart that looks as all do.
func newPlot(x, y string) *plot.Plot {
	p := plot.New()
	p.BackgroundColor = nil
	for _, a := range []*plot.Axis{&p.X, &p.Y} {
		a.Color, a.Tick.Color = ink("d-ink"), ink("d-ink")
		a.Label.TextStyle.Color, a.Tick.Label.Color = ink("d-t"), ink("d-s")
		a.Label.TextStyle.Font, a.Tick.Label.Font = lettering(plain.px), lettering(small.px)
		a.Label.Padding = 3
	}
	p.X.Label.Text, p.Y.Label.Text = x, y
	grid := plotter.NewGrid()
	grid.Horizontal.Color, grid.Vertical.Color = ink("d-grid"), ink("d-grid")
	p.Add(grid)
	return p
}

// stroke makes a line of a chart.
func stroke(class ink, points plotter.XYs) *plotter.Line {
	return &plotter.Line{XYs: points, LineStyle: draw.LineStyle{Color: class, Width: 1}}
}

// grid puts charts side by side, and below them what could not be drawn.
func grid(title, desc string, panels []panel, columns int, missing []string) *Picture {
	s := &sheet{}
	columns = max(1, min(columns, len(panels)))
	y, high := margin/2, 0.0
	for i, p := range panels {
		x := margin + float64(i%columns)*(panelWide+margin)
		if i%columns == 0 && i > 0 {
			y += high + panelHead + margin
			high = 0
		}
		s.marks(p.marks, x, y+14)
		from, end := x+marksWidth(p.marks), x+panelWide
		room := end - from - small.width(p.says) - 8
		shown := strong.cut(p.title, room)
		s.text(strong, leftward, from, y+14, shown, p.title)
		s.text(small, rightward, end, y+14, p.says, "")
		p.plot.Draw(draw.Canvas{Canvas: newCanvas(s, x, y+panelHead, p.high), Rectangle: vg.Rectangle{Max: vg.Point{X: vg.Points(panelWide), Y: vg.Points(p.high)}}})
		high = max(high, p.high)
	}
	if len(panels) > 0 {
		y += high + panelHead + margin
	}
	wide := margin + float64(columns)*(panelWide+margin)
	for _, text := range missing {
		text = textout.Printable(text)
		y += 15
		s.text(plain, leftward, margin, y, plain.cut(text, wide-2*margin), text)
	}
	return s.picture(title, desc, wide, y+margin/2)
}

// inForce gives a limit in force, in its unit; not ok where the check is not
// asked.
func inForce(j *linter.Judged, id, param string) (float64, bool) {
	for _, f := range j.InForce {
		if f.Check.ID != id || f.Off {
			continue
		}
		for _, p := range f.Check.Params {
			if p.Name == param {
				return f.Limits.Get(param).Value, true
			}
		}
	}
	return 0, false
}

// Loads draws what hangs on each power channel as a bar, against its rating and
// the limit in force.
func Loads(j *linter.Judged) *Picture { return loads(j, j.System.Channels) }

// LoadsOf draws the same for one amplifier.
func LoadsOf(j *linter.Judged, a *analysis.Amplifier) *Picture { return loads(j, a.Channels) }

func loads(j *linter.Judged, channels []*analysis.Channel) *Picture {
	const rowHigh, rest = 19.0, 52.0
	percent := 100.0
	if margin, ok := inForce(j, "load-margin", "warning_margin"); ok {
		percent -= margin
	}
	var bars bars
	var names, missing []string
	most := 100.0
	var desc strings.Builder
	desc.WriteString("Load of each power channel as a share of its rating.")
	for _, c := range channels {
		if !c.CarriesLines() {
			continue
		}
		name := c.Amplifier.Part.Name
		if !c.Part.Implied {
			name += ", " + c.Part.Name
		}
		if !c.Load.Known() || !c.Rated.Known() || c.Rated.Value <= 0 {
			missing = append(missing, name+": load or rating is not known.")
			continue
		}
		share := 100 * float64(c.Load.Value) / float64(c.Rated.Value)
		text := fmt.Sprintf("%s of %s", c.Load.Value, c.Rated.Value)
		const nameRoom = 200.0
		names = append(names, plain.cut(textout.Printable(name), nameRoom)+": "+text)
		bars = append(bars, bar{share: share, over: share > percent+1e-9})
		most = max(most, share)
		fmt.Fprintf(&desc, " %s: %s, %.0f %%.", textout.Printable(name), text, share)
	}
	// The first channel stands on top.
	for i := range len(names) / 2 {
		k := len(names) - 1 - i
		names[i], names[k], bars[i], bars[k] = names[k], names[i], bars[k], bars[i]
	}
	if len(bars) == 0 {
		return grid("Load of the power channels", "No channel has a load and a rating that are known.", nil, 1, append(missing, "No channel has a load and a rating that are known."))
	}
	p := newPlot("share of the rating in %", "")
	p.Add(bars)
	p.NominalY(names...)
	p.Y.Padding, p.Y.Tick.Label.Font = 0, lettering(plain.px)
	p.Y.Min, p.Y.Max = -0.6, float64(len(bars))-0.4
	p.X.Min, p.X.Max = 0, most*1.08
	p.X.Padding = 0
	rating := plotter.XYs{{X: 100, Y: p.Y.Min}, {X: 100, Y: p.Y.Max}}
	p.Add(stroke("d-rating", rating))
	if percent < 100 {
		p.Add(stroke("d-limit", plotter.XYs{{X: percent, Y: p.Y.Min}, {X: percent, Y: p.Y.Max}}))
		p.X.Label.Text += fmt.Sprintf("; dashed: limit in force, %s %%; full line: rating", trimmed(percent))
	} else {
		p.X.Label.Text += "; full line: rating"
	}
	return grid("Load of the power channels", desc.String(), []panel{{title: "Load of the power channels", plot: p, high: rest + rowHigh*float64(len(bars))}}, 1, missing)
}

// trimmed prints a number with one decimal place, or none.
func trimmed(v float64) string { return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64) }

// bar is one bar of a chart.
type bar struct {
	share float64
	over  bool
}

// bars are drawn across a chart, the first at height 0. One that is over its
// limit has a notch at its end, so that it is told without colour.
type bars []bar

// Plot draws them.
func (b bars) Plot(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	const half = 0.32
	for i, one := range b {
		low, high, middle := y(float64(i)-half), y(float64(i)+half), y(float64(i))
		from, to := x(0), x(one.share)
		path := vg.Path{}
		path.Move(vg.Point{X: from, Y: low})
		path.Line(vg.Point{X: to, Y: low})
		class := ink("d-bar")
		if one.over {
			class = "d-over"
			path.Line(vg.Point{X: to - 5, Y: middle})
		}
		path.Line(vg.Point{X: to, Y: high})
		path.Line(vg.Point{X: from, Y: high})
		path.Close()
		c.SetColor(class)
		c.Fill(path)
	}
}

// Levels draws, for every line, what is lost in the cable at each loudspeaker
// against how far along the cable it hangs, with the limit in force.
func Levels(j *linter.Judged) *Picture {
	drawn := map[at]bool{}
	for _, l := range j.System.Lines {
		drawn[lineAt(l)] = true
	}
	found := find(j, drawn)
	var panels []panel
	var missing []string
	for _, l := range j.System.Lines {
		p, why := levelPanel(j, l)
		if p == nil {
			missing = append(missing, why)
			continue
		}
		p.marks = found.marks(lineAt(l))
		panels = append(panels, *p)
	}
	if len(panels)+len(missing) == 0 {
		missing = []string{"The design has no lines."}
	}
	return grid("Level along the lines", "Decibels lost in the cable at each loudspeaker, against the cable from the amplifier.", panels, 2, missing)
}

// LevelsOf draws the same for one line; nil with the reason where its losses are
// not known.
func LevelsOf(j *linter.Judged, l *analysis.Line) (*Picture, string) {
	p, why := levelPanel(j, l)
	if p == nil {
		return nil, why
	}
	return grid("Level along line "+strconv.Quote(l.Part.Name), fmt.Sprintf("Decibels lost in the cable at each loudspeaker. The worst is %s with %.2f dB.", l.Loss.Worst, float64(l.Loss.DB)), []panel{*p}, 1, nil), ""
}

func lineAt(l *analysis.Line) at {
	return at{check.Step{Kind: "line", Name: l.Part.Name}, source.Span{}}
}

func levelPanel(j *linter.Judged, l *analysis.Line) (*panel, string) {
	paths, ok := along(l)
	if !ok {
		return nil, fmt.Sprintf("The losses along line %q are not known.", l.Part.Name)
	}
	unit, scale := "m", 1.0
	if j.Design.System.US() {
		unit, scale = "ft", 1/metresPerFoot
	}
	p := newPlot("cable from the amplifier in "+unit, "lost in dB")
	far, worst := 0.0, 0.0
	var points plotter.XYs
	for _, way := range paths {
		for i := range way {
			way[i].X *= scale
			far, worst = max(far, way[i].X), max(worst, way[i].Y)
		}
		p.Add(stroke("d-line", way))
		points = append(points, way[1:]...)
	}
	p.Add(&plotter.Scatter{XYs: points, GlyphStyle: draw.GlyphStyle{Color: ink("d-dot"), Radius: 2, Shape: draw.CircleGlyph{}}})
	p.X.Min, p.X.Max = 0, max(far, 1)
	p.Y.Min, p.Y.Max = 0, max(worst*1.1, 0.1)
	says := ""
	if percent, ok := inForce(j, "cable-loss", "warning_drop"); ok && percent < 100 {
		db := -20 * math.Log10(1-percent/100)
		p.Add(stroke("d-limit", plotter.XYs{{X: 0, Y: db}, {X: p.X.Max, Y: db}}))
		says = fmt.Sprintf("dashed: limit in force, %s %% or %.2f dB", trimmed(percent), db)
		p.Y.Max = max(p.Y.Max, db*1.2)
	}
	return &panel{title: textout.Printable("Line " + strconv.Quote(l.Part.Name)), says: says, plot: p, high: panelHigh}, ""
}

// along gives the ways along a line: each begins with the point it comes from,
// the amplifier or a loudspeaker before a tee, and goes on from loudspeaker to
// loudspeaker. X is metres of cable, Y decibels lost.
func along(l *analysis.Line) ([]plotter.XYs, bool) {
	if !l.Loss.Drop.Known() || l.Loss.Lumped || l.Loudspeakers == 0 || l.Part.Wiring.V == "series" {
		return nil, false
	}
	devices := l.Devices()
	type node struct {
		metres float64
		last   plotter.XY // the loudspeaker before, or the amplifier
		way    int        // the way that ends there; -1 when a new one has to begin
	}
	nodes := map[string]node{"": {way: -1}}
	var ways []plotter.XYs
	for i := range devices {
		d := &devices[i]
		from := nodes[d.From]
		n := node{metres: from.metres, last: from.last, way: from.way}
		for k := range d.Legs {
			if !d.Legs[k].Length.Known() {
				return nil, false
			}
			n.metres += float64(d.Legs[k].Length.Value)
		}
		if d.Run != nil && d.Loss.Known() && d.Volts.Value > 0 {
			to := plotter.XY{X: n.metres, Y: float64(d.Loss.Value)}
			if n.way < 0 || ways[n.way][len(ways[n.way])-1] != n.last {
				n.way = len(ways)
				ways = append(ways, plotter.XYs{n.last})
			}
			ways[n.way] = append(ways[n.way], to)
			n.last = to
		}
		nodes[d.Name] = n
	}
	return ways, len(ways) > 0
}

// Impedance draws the impedance of every loudspeaker output over frequency, with
// the lowest that it may have.
func Impedance(j *linter.Judged) *Picture {
	var panels []panel
	var missing []string
	for _, o := range j.System.Outputs {
		if len(o.Lines) == 0 {
			continue
		}
		p := impedancePanel(o)
		if p == nil {
			missing = append(missing, fmt.Sprintf("The impedance on %s is not known.", outputTitle(o)))
			continue
		}
		panels = append(panels, *p)
	}
	if len(panels)+len(missing) == 0 {
		missing = []string{"No line hangs on an output."}
	}
	return grid("Impedance of the outputs", "What the amplifier sees over frequency, cables included. Taps are taken as resistances.", panels, 2, missing)
}

// ImpedanceOf draws the same for one output; nil where it is not known.
func ImpedanceOf(o *analysis.Output) *Picture {
	p := impedancePanel(o)
	if p == nil {
		return nil
	}
	return grid("Impedance on "+outputTitle(o), "What the amplifier sees over frequency: "+o.Impedance.Sum+".", []panel{*p}, 1, nil)
}

func outputTitle(o *analysis.Output) string {
	return fmt.Sprintf("output %q of %q", o.Part.Name, o.Amplifier.Part.Name)
}

// octaves are those between which a chart over frequency is drawn.
var octaves = plot.ConstantTicks{
	{Value: 63, Label: "63"},
	{Value: 125, Label: "125"},
	{Value: 250, Label: "250"},
	{Value: 500, Label: "500"},
	{Value: 1000, Label: "1 k"},
	{Value: 2000, Label: "2 k"},
	{Value: 4000, Label: "4 k"},
	{Value: 8000, Label: "8 k"},
	{Value: 16000, Label: "16 k"},
}

func impedancePanel(o *analysis.Output) *panel {
	if o.Amplifier == nil {
		return nil
	}
	const perOctave, steps = 6, 48 // eight octaves from 63 Hz
	points := make(plotter.XYs, 0, steps+1)
	highest := 0.0
	for i := range steps + 1 {
		hz := 62.5 * math.Exp2(float64(i)/perOctave)
		ohm, ok := o.ImpedanceAt(hz)
		if !ok {
			return nil
		}
		points = append(points, plotter.XY{X: hz, Y: float64(ohm)})
		highest = max(highest, float64(ohm))
	}
	p := newPlot("frequency in Hz", "ohm")
	p.X.Scale, p.X.Tick.Marker = plot.LogScale{}, octaves
	p.Add(stroke("d-line", points))
	p.X.Min, p.X.Max = 62.5, 16000
	p.Y.Min, p.Y.Max = 0, highest*1.15
	low, says, ok := lowest(o)
	if ok {
		p.Add(stroke("d-limit", plotter.XYs{{X: p.X.Min, Y: low}, {X: p.X.Max, Y: low}}))
		p.Y.Max = max(p.Y.Max, low*1.25)
	}
	return &panel{title: textout.Printable("O" + outputTitle(o)[1:]), says: says, plot: p, high: panelHigh}
}

// lowest is the least impedance an output may have.
func lowest(o *analysis.Output) (float64, string, bool) {
	switch v := o.Part.LowestImpedance; {
	case v.Set():
		return float64(v.V), textout.Printable("dashed: lowest by the data sheet, " + v.Text), true
	case o.Kind == analysis.ConstantVoltage && o.Floor.Known() && o.Floor.Value > 0:
		return float64(o.Floor.Value), "dashed: lowest that the rating implies, " + o.Floor.Value.String(), true
	}
	return 0, "", false
}
