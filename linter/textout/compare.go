package textout

import (
	"bufio"
	"cmp"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/compare"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// How many figures of the parts of one kind, and how many parts of one kind, are
// shown before the rest is counted: a change at the amplifier moves a figure of
// every loudspeaker.
const (
	mostFigures = 16
	mostParts   = 12
)

// WriteComparison writes what changed from one revision to another as a page for
// people: findings that are new, in full, those that are gone and those that are
// still there, the figures that moved, and the parts that came and went. Both
// designs were understood. Its errors are those of w.
func WriteComparison(w io.Writer, c *compare.Comparison, o Options) error {
	buffered := bufio.NewWriter(w)
	p := newPage(buffered, o)
	p.comparisonTitle(c)
	for _, g := range groupsOf(c.New, false) {
		p.heading(g.name(), Head, placeOf(g.place))
		p.line()
		for _, f := range g.findings {
			p.finding(f, g.place)
			p.line()
		}
	}
	p.goneFindings(c)
	p.stillThere("Still there", c, compare.Unchanged)
	p.stillThere("Less grave", c, compare.Changed)
	p.stillThere("Accepted since", c, compare.Accepted)
	p.movedFigures(c.Figures)
	p.parts(c.Parts)
	p.comparisonClosing(c)
	return buffered.Flush()
}

func (p *page) comparisonTitle(c *compare.Comparison) {
	name := c.New.Name
	if job := c.New.Design.System.Name; job != "" {
		name = job
	}
	p.heading(name, Head, "comparison")
	for _, side := range []struct {
		label, name string
		design      *schema.Design
	}{{"before", c.OldName, c.Old.Design}, {"now", c.NewName, c.New.Design}} {
		p.whole(Place, side.name)
		if v := side.design.System.Revision; v.Set() {
			p.join(",")
			p.say("revision " + v.V)
		}
		p.row(side.label)
	}
	p.paint(Label, strings.Repeat("_", p.width))
	p.line()
	p.line()
}

func (p *page) goneFindings(c *compare.Comparison) {
	n := c.Count(compare.Gone)
	if n == 0 {
		return
	}
	p.heading("Gone", Head, wording.Counted(n, "finding"))
	p.line()
	for _, f := range c.Findings {
		if f.State != compare.Gone {
			continue
		}
		p.brief(f.Old, "then at")
		switch {
		case f.New == nil:
			p.say("is not asked any more: the part, or the question, is gone")
		case f.New.Verdict == check.Open:
			p.say("cannot be judged any more:")
			p.say(f.New.Message)
		default:
			p.say(f.New.Message)
		}
		p.row("now")
	}
	p.line()
}

// brief writes a finding in a sentence, with its check and its place, in front of
// which a word may say when it was there.
func (p *page) brief(o *check.Outcome, when string) {
	p.say(strings.TrimSuffix(o.Message, "."))
	p.say("(" + o.Check.ID + " of " + o.Subject.String())
	if !o.Primary.IsZero() {
		p.join(",")
		p.say(when)
		p.place(o.Primary)
	}
	p.join(").")
	p.entry(o.Severity.String(), Label, labelInset)
}

// stillThere lists the findings in a state that do not count as new.
func (p *page) stillThere(title string, c *compare.Comparison, state compare.State) {
	var all []compare.Finding
	for _, f := range c.Findings {
		if f.State == state && !f.New.Gates() {
			all = append(all, f)
		}
	}
	if len(all) == 0 {
		return
	}
	p.heading(title, Head, wording.Counted(len(all), "finding"))
	p.line()
	for _, f := range all {
		p.brief(f.New, "")
		switch state {
		case compare.Changed:
			p.say(wording.WithArticle(f.New.Was.String()))
			p.row("before")
		case compare.Accepted:
			p.say(f.New.Accepted.By + ": " + f.New.Accepted.Reason)
			p.row("by")
		case compare.New, compare.Unchanged, compare.Gone:
		}
	}
	p.line()
}

// movedFigures writes figures below the part they belong to. Of many devices the
// first are shown.
func (p *page) movedFigures(all []compare.Figure) {
	if len(all) == 0 {
		return
	}
	p.heading("Figures that moved", Head, wording.Counted(len(all), "figure"))
	p.line()
	rest := restOf{most: mostFigures}
	last := ""
	for _, f := range all {
		if !rest.shows(kindOf(f.Subject)) {
			continue
		}
		if subject := f.Subject.String(); subject != last {
			last = subject
			p.styled(Place, subject)
			p.fill(0, labelInset, labelInset+2)
		}
		p.say(f.Name)
		p.join(":")
		p.say(figureChange(f))
		p.fill(0, labelInset+2, labelInset+4)
	}
	for _, kind := range rest.kinds {
		p.say("and " + wording.Counted(rest.left(kind), "more figure") + " of " + wording.Plural(kind) + " (--format lines shows all)")
		p.fill(0, labelInset, labelInset+2)
	}
	p.line()
}

// figureChange words how a figure moved: 246 W → 236 W (-10 W, -4.07 %).
func figureChange(f compare.Figure) string {
	text := f.Before.Text + " before, " + f.Now.Text + " now"
	if f.Difference != "" {
		text += ": " + f.Difference
	}
	return text
}

func kindOf(s check.Subject) string {
	if len(s.Path) == 0 {
		return "job"
	}
	return strings.ReplaceAll(s.Path[len(s.Path)-1].Kind, "_", " ")
}

func (p *page) parts(all []compare.Part) {
	if len(all) == 0 {
		return
	}
	p.heading("Parts", Head, wording.Counted(len(all), "change"))
	p.line()
	last := ""
	rest := restOf{most: mostParts}
	for _, part := range partsInOrder(all) {
		if !rest.shows(part.Change.String() + " " + strings.ReplaceAll(part.Kind, "_", " ")) {
			continue
		}
		p.say(partName(part))
		p.say(partDetail(part))
		if at := placeOfPart(part); !at.IsZero() && part.Change != compare.Removed {
			p.join(",")
			p.place(at)
		}
		p.row(unlessSame(part.Change.String(), last))
		last = part.Change.String()
	}
	for _, kind := range rest.kinds {
		change, thing, _ := strings.Cut(kind, " ")
		p.say("and " + wording.Counted(rest.left(kind), "more "+thing) + " " + change + " (--format lines shows all)")
		p.row("")
	}
	p.line()
}

// restOf counts what is not shown of things of several kinds, each of which is
// shown so many times at most.
type restOf struct {
	most  int
	seen  map[string]int
	kinds []string // of which some are not shown
}

// shows counts a thing and tells whether it is shown.
func (r *restOf) shows(kind string) bool {
	if r.seen == nil {
		r.seen = map[string]int{}
	}
	if r.seen[kind]++; r.seen[kind] == r.most+1 {
		r.kinds = append(r.kinds, kind)
	}
	return r.seen[kind] <= r.most
}

func (r *restOf) left(kind string) int { return r.seen[kind] - r.most }

// partsInOrder lists what was added, then what was renamed and removed.
func partsInOrder(all []compare.Part) []compare.Part {
	sorted := slices.Clone(all)
	slices.SortStableFunc(sorted, func(a, b compare.Part) int { return cmp.Compare(a.Change, b.Change) })
	return sorted
}

func partName(part compare.Part) string {
	s := check.Subject{}
	if part.Line != "" {
		s.Path = append(s.Path, check.Step{Kind: "line", Name: part.Line})
	}
	name := part.Is
	if part.Change == compare.Removed {
		name = part.Was
	}
	s.Path = append(s.Path, check.Step{Kind: part.Kind, Name: name})
	return s.String()
}

// partDetail says of a part what its name does not.
func partDetail(part compare.Part) string {
	switch {
	case part.Change == compare.Renamed && part.Stated:
		return "was \"" + part.Was + "\" (it says so)"
	case part.Change == compare.Renamed:
		return "was \"" + part.Was + "\" (by its content, which is the same)"
	case part.Kind == "line" && part.Devices > 0:
		return "with " + wording.Counted(part.Devices, "device")
	case part.Count > 1:
		return "× " + strconv.Itoa(part.Count)
	}
	return ""
}

func placeOfPart(part compare.Part) source.Span {
	if part.Change == compare.Removed {
		return part.Old
	}
	return part.New
}

func (p *page) comparisonClosing(c *compare.Comparison) {
	p.heading("In all", Head, "")
	p.line()
	var texts []string
	for _, state := range []compare.State{compare.New, compare.Changed, compare.Unchanged, compare.Accepted, compare.Gone} {
		if n := c.Count(state); n > 0 {
			texts = append(texts, strconv.Itoa(n)+" "+state.String())
		}
	}
	if len(texts) == 0 {
		texts = []string{"none in either"}
	}
	p.say(strings.Join(texts, ", "))
	p.row("findings")
	for _, side := range []struct {
		label string
		j     *linter.Judged
	}{{"before", c.Old}, {"now", c.New}} {
		p.say(answersOf(side.j))
		p.row(side.label)
	}
	p.line()
	p.say("This covers only what the checks ask and what is worked out; it does not replace local codes and licensed practice.")
	p.sentence()
}

// answersOf counts the answers of a design for themselves, whatever was known
// before.
func answersOf(j *linter.Judged) string {
	t := (&linter.Judged{Outcomes: withoutStates(j.Outcomes)}).Tally()
	return wording.Counted(t.Answers(), "answer") + ": " + countsOf(t)
}

func withoutStates(outcomes []check.Outcome) []check.Outcome {
	all := slices.Clone(outcomes)
	for i := range all {
		all[i].State = check.NotCompared
	}
	return all
}

// WriteComparisonLines writes what changed with one line for each thing:
//
//	file:line:column: new error: message [check] (subject)
//	file:line:column: figure: part: name: before and now
//	file:line:column: added: part
//
// A finding is "new", "changed", "unchanged", "accepted" or "gone"; one that is
// gone has its place in the old design. Errors are those of w.
func WriteComparisonLines(w io.Writer, c *compare.Comparison) error {
	b := bufio.NewWriter(w)
	for _, f := range c.Findings {
		o, design := f.New, c.NewName
		if f.State == compare.Gone {
			o, design = f.Old, c.OldName
		}
		linePlace(b, o.Primary, design)
		lineText(b, f.State.String(), " ", o.Severity.String(), ": ", o.Message, " [", o.Check.ID, "] (", o.Subject.String(), ")")
		_ = b.WriteByte('\n')
	}
	for _, f := range c.Figures {
		linePlace(b, f.Subject.Span, c.NewName)
		lineText(b, "figure: ", f.Subject.String(), ": ", f.Name, ": ", figureChange(f))
		_ = b.WriteByte('\n')
	}
	for _, part := range partsInOrder(c.Parts) {
		design := c.NewName
		if part.Change == compare.Removed {
			design = c.OldName
		}
		linePlace(b, placeOfPart(part), design)
		lineText(b, strings.TrimSpace(part.Change.String()+": "+partName(part)+" "+partDetail(part)))
		_ = b.WriteByte('\n')
	}
	return b.Flush()
}
