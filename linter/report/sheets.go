package report

import (
	"fmt"
	"html/template"
	"math"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/drawing"
	"loudlint/linter/schedule"
	"loudlint/schema"
)

// sheet is the calculation of an amplifier or a line.
type sheet struct {
	ID       string
	Name     string
	Says     string
	Figures  []figure
	Runs     []run
	Pictures []template.HTML
	Notes    []string
}

// figure is one quantity with its arithmetic.
type figure struct{ Name, Value, Sum string }

// run is a block of loudspeakers with what it takes and receives.
type run struct {
	Name              string
	Count             int
	Each, EachSum     string
	Receives, Through string
}

// sheets makes the calculation sheets of all amplifiers and lines.
func (p *page) sheets(j *linter.Judged) {
	for i, a := range j.System.Amplifiers {
		p.Units = append(p.Units, unitSheet(j, a, i+1))
	}
	for i, l := range j.System.Lines {
		p.Lines = append(p.Lines, lineSheet(j, l, i+1))
	}
}

// add adds a figure: its value and arithmetic, or what keeps it from being
// known.
func add[Q fmt.Stringer](s *sheet, name string, f *analysis.Figure[Q]) {
	if f.Known() {
		s.Figures = append(s.Figures, figure{clean(name), clean(f.Value.String()), clean(f.Sum)})
	} else {
		s.Figures = append(s.Figures, figure{clean(name), "not known", clean("not stated: " + missingText(f.Missing))})
	}
	for _, a := range f.Assumed {
		s.note(a)
	}
}

// note adds what was taken for granted, once.
func (s *sheet) note(text string) {
	text = clean(strings.ToUpper(text[:1]) + text[1:] + ".")
	if !slices.Contains(s.Notes, text) {
		s.Notes = append(s.Notes, text)
	}
}

func missingText(all []analysis.Missing) string {
	const few = 3
	var texts []string
	for i, m := range all {
		if i == few {
			texts = append(texts, fmt.Sprintf("and %d more", len(all)-few))
			break
		}
		texts = append(texts, m.What+" of "+m.Part)
	}
	return strings.Join(texts, ", ")
}

func unitSheet(j *linter.Judged, a *analysis.Amplifier, number int) sheet {
	s := sheet{ID: fmt.Sprintf("amplifier-%d", number), Name: clean(a.Part.Name), Says: clean(a.Part.Model.V)}
	for _, c := range a.Channels {
		of := ""
		if !c.Part.Implied {
			of = " of " + c.Part.Name
		}
		add(&s, "rated power"+of, &c.Rated)
		if c.CarriesLines() {
			add(&s, "load"+of, &c.Load)
		}
	}
	for _, o := range a.Outputs {
		if len(o.Lines) == 0 {
			continue
		}
		of := " on " + o.Part.Name
		add(&s, "voltage"+of, &o.Volts)
		if c := o.Channel; c == nil || o.Load.Sum != c.Load.Sum || !o.Load.Known() { // else the channel's says it
			add(&s, "load"+of, &o.Load)
		}
		add(&s, "impedance"+of, &o.Impedance)
		if o.Kind == analysis.ConstantVoltage && o.Floor.Value > 0 {
			add(&s, "lowest impedance the rating implies"+of, &o.Floor)
		}
	}
	if slices.ContainsFunc(a.Channels, func(c *analysis.Channel) bool { return c.CarriesLines() }) {
		s.Pictures = append(s.Pictures, element(drawing.LoadsOf(j, a), s.ID+"-loads"))
	}
	var flat []string
	for i, o := range a.Outputs {
		if len(o.Lines) == 0 || !o.Impedance.Known() {
			continue
		}
		if !varies(o) {
			flat = append(flat, o.Part.Name)
			continue
		}
		s.Pictures = append(s.Pictures, element(drawing.ImpedanceOf(o), fmt.Sprintf("%s-output-%d", s.ID, i+1)))
	}
	if len(flat) > 0 {
		s.note("the impedance on " + strings.Join(flat, ", ") + " is the same at all frequencies, as far as the design says: taps are taken as resistances")
	}
	return s
}

// varies tells that the impedance of an output changes over frequency so much
// that it can be seen: one that does not is no picture.
func varies(o *analysis.Output) bool {
	const seen = 0.01
	low, high := math.Inf(1), 0.0
	for hz := 62.5; hz <= 16000; hz *= 2 {
		ohm, _ := o.ImpedanceAt(hz)
		low, high = min(low, float64(ohm)), max(high, float64(ohm))
	}
	return high > low*(1+seen)
}

func lineSheet(j *linter.Judged, l *analysis.Line, number int) sheet {
	s := sheet{ID: fmt.Sprintf("line-%d", number), Name: clean(l.Part.Name), Says: "no amplifier stated"}
	if l.Amplifier != nil {
		s.Says = l.Amplifier.Part.Name
		if l.Output != nil {
			s.Says += ", " + l.Output.Part.Name
		}
		s.Says = clean("on " + s.Says)
	}
	add(&s, "load", &l.Load)
	if l.Loss.Drop.Known() && l.Loss.Worst != "" {
		add(&s, "lost in the cable at "+l.Loss.Worst, &l.Loss.Drop)
		s.Figures = append(s.Figures, figure{Name: "the same as a level", Value: l.Loss.DB.String(), Sum: l.Loss.LevelSum()})
		cables := slices.Concat(l.Loss.Cables, l.Loss.Round)
		for i := range cables {
			c := &cables[i]
			name := "cable on the way: "
			if i >= len(l.Loss.Cables) {
				name = "cable the other way round: "
			}
			s.Figures = append(s.Figures, figure{clean(name + c.Kind), c.Loop().String(), clean(c.Sum(j.Design.System.US()))})
		}
	} else {
		add(&s, "lost in the cable", &l.Loss.Drop)
	}
	currents, _ := l.Currents()
	for i := range currents {
		c := &currents[i]
		add(&s, "current in "+c.Cable.Name, &c.Most)
		add(&s, "current that "+c.Cable.Name+" may carry", &c.Rating)
		if c.Rating.Known() {
			last := &s.Figures[len(s.Figures)-1]
			last.Sum = strings.TrimPrefix(last.Sum+"; "+clean(c.RatingBasis), "; ")
		}
	}
	for _, a := range l.Attenuators {
		add(&s, "load behind "+a.Part.Name, &a.Behind)
	}
	for _, r := range l.Runs {
		s.Runs = append(s.Runs, runOf(r))
	}
	s.Pictures = append(s.Pictures, element(drawing.Line(j, l), s.ID+"-walk"))
	if picture, _ := drawing.LevelsOf(j, l); picture != nil {
		s.Pictures = append(s.Pictures, element(picture, s.ID+"-levels"))
	}
	return s
}

func runOf(r *analysis.Run) run {
	one := run{Name: clean(runName(r)), Count: r.Count, Each: "not known", Receives: "not known"}
	if r.Each.Known() {
		one.Each, one.EachSum = clean(r.Each.Value.String()), clean(r.Each.Sum)
	}
	if f := r.Receives(); f.Known() {
		one.Receives, one.Through = clean(f.Value.String()), clean(f.Sum)
	}
	return one
}

func runName(r *analysis.Run) string {
	name := r.Part.MemberName(0)
	if n := r.Part.Count(); n > 1 {
		name += " … " + r.Part.MemberName(n-1)
	}
	return name
}

// table is a schedule on the page.
type table struct {
	ID, Title string
	Columns   []column
	Rows      []row
	Notes     []string
}

type column struct {
	Name   string
	Number bool
	Blank  bool // to be filled in by hand
}

// Class is the style of a column and its cells; empty for most.
func (c column) Class() string {
	switch {
	case c.Blank:
		return "blank"
	case c.Number:
		return "number"
	}
	return ""
}

type row struct {
	Cells []cell
	Total bool
}

type cell struct{ Text, Class string }

// tableOf takes over the columns of a schedule in which something stands.
func tableOf(t *schedule.Table) table {
	used := t.Used()
	out := table{ID: "schedule-" + string(t.Kind), Title: t.Title}
	for _, c := range used {
		kind := t.Columns[c].Kind
		out.Columns = append(out.Columns, column{clean(t.Columns[c].Name()), kind == schedule.Number, kind == schedule.Blank})
	}
	for i := range t.Rows {
		r := row{Total: t.Rows[i].Total}
		for k, c := range used {
			r.Cells = append(r.Cells, cell{clean(t.Columns[c].Show(t.Rows[i].Cells[c])), out.Columns[k].Class()})
		}
		out.Rows = append(out.Rows, r)
	}
	for _, n := range t.Notes {
		out.Notes = append(out.Notes, clean(n))
	}
	return out
}

// matrix shows, for parts of one kind, which check answered what.
type matrix struct {
	Name   string
	Checks []string
	Rows   []matrixRow
}

type matrixRow struct {
	Name  string
	Cells []mark
}

// mark is the gravest answer of a check about a part.
type mark struct {
	Letter string // "E", "W", "N", "O", "A", "P"; "" when it was not asked
	Word   string
}

// kinds are the parts that have a matrix, in order; rank gives the places of
// theirs in a design, nil where there is but one.
var kinds = []struct {
	name string
	of   []string
	rank func(*schema.Design) map[string]int
}{
	{"The job", []string{""}, nil},
	{"Amplifiers and mixers", []string{schema.KindAmplifier, schema.KindMixer}, func(d *schema.Design) map[string]int {
		return rankOf(d.Units, func(u *schema.Unit) string { return u.Name })
	}},
	{"Lines", []string{"line"}, func(d *schema.Design) map[string]int {
		return rankOf(d.Lines, func(l *schema.Line) string { return l.Name })
	}},
	{"Sources", []string{schema.KindMicrophone, schema.KindMusic, schema.KindMessage, schema.KindTelephone}, func(d *schema.Design) map[string]int {
		return rankOf(d.Sources, func(s *schema.Source) string { return s.Name })
	}},
	{"Spaces", []string{"space"}, func(d *schema.Design) map[string]int {
		return rankOf(d.Spaces, func(s *schema.Space) string { return s.Name })
	}},
}

// matricesOf sorts every answer to its outermost part.
func matricesOf(j *linter.Judged) []matrix {
	type key struct{ kind, name string }
	builds := make([]matrixBuild, len(kinds)+1)
	at := map[string]int{}
	for i, k := range kinds {
		builds[i].name = k.name
		for _, kind := range k.of {
			at[kind] = i
		}
	}
	builds[len(kinds)].name = "Others"
	for i := range j.Outcomes {
		o := &j.Outcomes[i]
		var k key
		if len(o.Subject.Path) > 0 {
			k = key{o.Subject.Path[0].Kind, o.Subject.Path[0].Name}
		}
		n, known := at[k.kind]
		if !known {
			n = len(kinds)
		}
		name := k.name
		switch {
		case k.kind == "":
			name = "the job"
		case !known:
			name = strings.ReplaceAll(k.kind, "_", " ") + " " + k.name
		}
		builds[n].put(clean(name), o)
	}
	var all []matrix
	for i := range builds {
		var rank map[string]int
		if i < len(kinds) && kinds[i].rank != nil {
			rank = kinds[i].rank(j.Design)
		}
		if len(builds[i].rows) > 0 {
			all = append(all, builds[i].matrix(rank))
		}
	}
	return all
}
