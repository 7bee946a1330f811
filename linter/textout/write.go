package textout

import (
	"bufio"
	"cmp"
	"io"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Options of the text.
type Options struct {
	Passes bool // show what passes too
	Colour bool
	Width  int // of the page in columns; 0 means 96
}

// How much of a list is shown before the rest is counted.
const (
	mostPlaces  = 4
	mostAssumed = 4
	mostAlike   = 4
)

// Write writes a result as a page for people. Its errors are those of w.
func Write(w io.Writer, r *linter.Result, o Options) error {
	p := Begin(w, o, len(r.Designs))
	for _, d := range r.Designs {
		p.Design(d)
	}
	return p.End()
}

// Page is a page for people that is written design by design. It keeps of each
// only what the closing needs.
type Page struct {
	page
	options Options
	designs int // that are to come
	sums    []sum
	gravest gravest
}

// Begin begins a page of so many designs.
func Begin(w io.Writer, o Options, designs int) *Page {
	return &Page{page: *newPage(bufio.NewWriter(w), o), options: o, designs: designs}
}

// Design writes one design.
func (p *Page) Design(d *linter.Judged) {
	if len(p.sums) > 0 {
		p.line()
	}
	p.title(d)
	if d.Understood() {
		p.judged(d, p.options, p.designs > 1)
	} else {
		p.notUnderstood(d)
	}
	p.sums = append(p.sums, sumOf(d))
	p.gravest.meet(d)
}

// End sums all designs up. Its error is the first of the writer.
func (p *Page) End() error {
	p.closing()
	return p.w.Flush()
}

// title heads a design: its job, and a rule below.
func (p *page) title(d *linter.Judged) {
	switch {
	case d.Design == nil || d.Design.System.Name == "":
		p.heading(d.Name, Head, "")
	default:
		p.heading(d.Design.System.Name, Head, d.Name)
	}
	if d.Design != nil {
		var marks []string
		if v := d.Design.System.Reference; v.Set() {
			marks = append(marks, "reference "+v.V)
		}
		if v := d.Design.System.Revision; v.Set() {
			marks = append(marks, "revision "+v.V)
		}
		if n := len(d.Design.Files); n > 1 {
			marks = append(marks, wording.Counted(n, "file"))
		}
		if d.Held != nil {
			var names []string
			for _, f := range d.Held.Named {
				names = append(names, f.Name)
			}
			marks = append(marks, "held against "+strings.Join(names, " and "))
		}
		if len(marks) > 0 {
			p.say(strings.Join(marks, ", "))
			p.sentence()
		}
	}
	p.paint(Label, strings.Repeat("_", p.width))
	p.line()
	p.line()
}

// ended gives a sentence its full stop, unless it is a question.
func ended(text string) string {
	if strings.HasSuffix(text, "?") {
		return text
	}
	return text + "."
}

func (p *page) notUnderstood(d *linter.Judged) {
	if d.Err != nil {
		p.say("Nothing was judged: " + ended(d.Err.Error()))
		p.sentence()
		p.line()
		return
	}
	p.say("Nothing was judged: the text is not understood in " + wording.Counted(len(d.Problems), "place") + ".")
	p.sentence()
	p.line()
	p.problems(d.Problems)
}

// judged writes the findings of a design part by part, then what stays open and
// what to mind on site.
func (p *page) judged(d *linter.Judged, o Options, several bool) {
	t := d.Tally()
	for _, g := range groupsOf(d, o.Passes) {
		p.heading(g.name(), Head, placeOf(g.place))
		p.line()
		for _, f := range g.findings {
			p.finding(f, g.place)
			p.line()
		}
		for _, o := range g.passes {
			p.say(strings.TrimSuffix(o.Message, "."))
			p.say("(" + checkOf(o) + setLimit(o.Limit) + ").")
			p.entry("pass", Pass, labelInset)
		}
		if len(g.passes) > 0 {
			p.line()
		}
	}
	p.before(d, t.Known)
	p.accepted(d, t.Accepted)
	p.open(d, t.Open)
	p.cautions(d)
	if several && t.Findings() == 0 {
		p.say(cleanSentence(t))
		p.sentence()
		p.line()
	}
}

// setLimit tells of the limit that something was held against when criteria set
// it.
func setLimit(b *check.Bound) string {
	if b == nil || b.Origin.IsZero() {
		return ""
	}
	return "; " + b.Text + ", " + check.SetAt(b.Origin)
}

// group is a part of the system with what was found about it and the parts
// inside it.
type group struct {
	step     check.Step // zero for the job as a whole
	place    source.Span
	rank     int // amplifiers, lines, sources, spaces, others, the job
	index    int // within the design
	findings []*check.Outcome
	passes   []*check.Outcome
}

func (g *group) name() string {
	if g.rank == rankJob {
		return "The job"
	}
	kind := strings.ReplaceAll(g.step.Kind, "_", " ")
	if kind == "" {
		kind = "part"
	}
	return check.Step{Kind: strings.ToUpper(kind[:1]) + kind[1:], Name: g.step.Name}.String()
}

const (
	rankUnit = iota
	rankLine
	rankSource
	rankSpace
	rankOther
	rankJob
)

// groupsOf sorts the outcomes of a design to its parts: those with findings
// first, each list in the order of the design, findings gravest first.
func groupsOf(d *linter.Judged, passes bool) []*group {
	known := partsOf(d.Design)
	groups := map[check.Step]*group{}
	var all []*group
	for i := range d.Outcomes {
		o := &d.Outcomes[i]
		if !o.Gates() && (o.Verdict != check.Pass || !passes) {
			continue
		}
		var step check.Step
		if len(o.Subject.Path) > 0 {
			step = o.Subject.Path[0]
		}
		g := groups[step]
		if g == nil {
			g = groupOf(o, step, known)
			groups[step] = g
			all = append(all, g)
		}
		if o.Verdict == check.Fail {
			g.findings = append(g.findings, o)
		} else {
			g.passes = append(g.passes, o)
		}
	}
	for _, g := range all {
		slices.SortStableFunc(g.findings, func(a, b *check.Outcome) int { return cmp.Compare(b.Severity, a.Severity) })
	}
	slices.SortStableFunc(all, func(a, b *group) int {
		return cmp.Or(
			cmp.Compare(min(1, len(b.findings)), min(1, len(a.findings))),
			cmp.Compare(a.rank, b.rank),
			cmp.Compare(a.index, b.index),
			source.Compare(a.place, b.place),
		)
	})
	return all
}

func groupOf(o *check.Outcome, step check.Step, known map[check.Step]group) *group {
	if len(o.Subject.Path) == 0 {
		return &group{rank: rankJob, place: o.Subject.Span}
	}
	if g, ok := known[step]; ok {
		return &g
	}
	g := &group{step: step, rank: rankOther, place: o.Primary}
	if len(o.Subject.Path) == 1 {
		g.place = o.Subject.Span
	}
	return g
}

// partsOf lists the parts that findings are grouped by, with their headers.
func partsOf(d *schema.Design) map[check.Step]group {
	parts := make(map[check.Step]group, len(d.Units)+len(d.Lines)+len(d.Sources)+len(d.Spaces))
	add := func(kind string, part *schema.Part, rank, index int) {
		step := check.Step{Kind: kind, Name: part.Name}
		parts[step] = group{step: step, place: part.Header, rank: rank, index: index}
	}
	for i, u := range d.Units {
		add(u.Kind, &u.Part, rankUnit, i)
	}
	for i, l := range d.Lines {
		add("line", &l.Part, rankLine, i)
	}
	for i, s := range d.Sources {
		add(s.Kind, &s.Part, rankSource, i)
	}
	for i, s := range d.Spaces {
		add("space", &s.Part, rankSpace, i)
	}
	return parts
}

// finding writes one failed outcome; above is the place its heading shows.
func (p *page) finding(o *check.Outcome, above source.Span) {
	p.say(o.Message)
	p.entry(strings.ToUpper(o.Severity.String()), styleOf(o.Severity), 0)
	p.written(o.Primary, above)
	p.graver(o)
	p.evidence(o.Evidence)
	if o.Limit != nil {
		p.say(o.Limit.Says())
		p.row("limit")
	}
	if !o.SeverityOrigin.IsZero() {
		p.say(o.Severity.String())
		p.join(";")
		p.say(check.SetAt(o.SeverityOrigin))
		p.row("severity")
	}
	p.assumed(o.Assumed)
	for i := range o.Remedies {
		p.remedy(&o.Remedies[i], i, o.Primary)
	}
	p.related(o.Related)
	p.say(checkOf(o))
	p.row("check")
}

func styleOf(s check.Severity) Style {
	switch s {
	case check.Error:
		return Error
	case check.Warning:
		return Warning
	case check.Note:
		return Note
	}
	return Plain
}

func (p *page) evidence(all []check.Evidence) {
	last := ""
	for i := range all {
		label, figure := "figure", all[i].Value
		if all[i].Sum != "" {
			label, figure = "sum", all[i].Sum
		}
		if all[i].Name != "" {
			p.say(all[i].Name)
			p.join(":")
		}
		p.say(figure)
		p.row(unlessSame(label, last))
		last = label
	}
}

func unlessSame(label, last string) string {
	if label == last {
		return ""
	}
	return label
}

func (p *page) assumed(all []string) {
	label := "assumed"
	for _, text := range all[:min(len(all), mostAssumed)] {
		p.say(text)
		p.row(label)
		label = ""
	}
	if more := len(all) - mostAssumed; more > 0 {
		p.say("and " + wording.Counted(more, "more assumption"))
		p.row("")
	}
}

// remedy writes a way to put a finding right; the first is the best. The place
// of the finding itself is not shown again.
func (p *page) remedy(r *check.Remedy, index int, at source.Span) {
	label := "put right"
	if index > 0 {
		label = "or"
	}
	p.say(strings.TrimSuffix(r.Text, "."))
	if sure := r.Sure.Says(); sure != "" {
		p.say("(" + sure + ").")
	} else {
		p.join(".")
	}
	p.row(label)
	if len(r.Edits) > mostAlike {
		return
	}
	label = "write"
	for _, e := range r.Edits {
		p.edit(e, label, at)
		label = ""
	}
}

// edit shows a change of the design's text, each line of it on a row.
func (p *page) edit(e check.Edit, label string, at source.Span) {
	lines := strings.Split(strings.TrimSpace(e.New), "\n")
	for _, line := range lines[:len(lines)-1] {
		p.whole(Plain, oneLine(line))
		p.row(label)
		label = ""
	}
	last := oneLine(lines[len(lines)-1])
	if last == "" {
		last = "nothing"
	}
	p.whole(Plain, last)
	switch before := e.Span.Text(); {
	case strings.Contains(before, "\n"):
		p.say("in place of what stands there")
	case before != "":
		p.say("in place of")
		p.whole(Plain, oneLine(before))
	}
	if !sameLine(e.Span, at) {
		p.join(",")
		p.place(e.Span)
	}
	p.row(label)
}

// oneLine brings a piece of a design to one line that is not too long to read.
func oneLine(text string) string {
	const longest = 60
	return shorten(Printable(wording.OneLine(text)), longest)
}

// written shows what stands at the place of a finding, unless the heading
// shows that place already.
func (p *page) written(at, above source.Span) {
	if at.IsZero() || sameLine(at, above) {
		return
	}
	p.place(at)
	p.join(":")
	p.whole(Plain, oneLine(at.File.Line(at.From().Line)))
	p.row("at")
}

// sameLine tells that two spans are shown as the same place.
func sameLine(a, b source.Span) bool { return a.File == b.File && a.From().Line == b.From().Line }

func (p *page) related(all []schema.Place) {
	label := "see"
	for _, r := range all[:min(len(all), mostPlaces)] {
		p.place(r.Span)
		if r.Note != "" {
			p.join(":")
			p.say(r.Note)
		}
		p.row(label)
		label = ""
	}
	if more := len(all) - mostPlaces; more > 0 {
		p.say("and " + wording.Counted(more, "more place"))
		p.row("")
	}
}

// checkOf names the check and what it was asked of, as far as the heading does
// not say it.
func checkOf(o *check.Outcome) string {
	if len(o.Subject.Path) < 2 {
		return o.Check.ID
	}
	return o.Check.ID + " of " + check.Subject{Path: o.Subject.Path[1:]}.String()
}
