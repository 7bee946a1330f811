package textout

import (
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// sum is what the closing needs of a design.
type sum struct {
	name       string
	understood bool
	unjudged   string // why it was not judged
	tally      linter.Tally
	size       linter.Size
	asked      []string // checks that answered, by their ids
	off        []off
	before     string // what it was held against; "" when nothing is gone
	gone       int
}

// off is a check that was not asked, with what turned it off, "" when it is off
// unless criteria turn it on.
type off struct{ id, by string }

func sumOf(d *linter.Judged) sum {
	s := sum{name: d.Name, understood: d.Understood(), tally: d.Tally(), size: d.Size()}
	if !s.understood {
		s.unjudged = unjudged(d)
		return s
	}
	seen := map[*check.Check]bool{}
	for i := range d.Outcomes {
		if c := d.Outcomes[i].Check; !seen[c] {
			seen[c] = true
			s.asked = append(s.asked, c.ID)
		}
	}
	for _, c := range d.Off {
		one := off{id: c.ID}
		for i := range d.InForce {
			if f := &d.InForce[i]; f.Check == c && f.Off && !f.Origin.IsZero() {
				one.by = check.SetAt(f.Origin)
			}
		}
		s.off = append(s.off, one)
	}
	if d.Before != nil && len(d.Before.Gone) > 0 {
		s.before, s.gone = d.Before.From, len(d.Before.Gone)
	}
	return s
}

// gravest is the check of the first of the gravest findings that a built-in check
// explains.
type gravest struct {
	severity check.Severity
	check    string
}

func (g *gravest) meet(d *linter.Judged) {
	for i := range d.Outcomes {
		if o := &d.Outcomes[i]; o.Gates() && o.Check.Origin.IsZero() && (g.check == "" || o.Severity > g.severity) {
			*g = gravest{o.Severity, o.Check.ID}
		}
	}
}

// closing sums up all designs.
func (p *Page) closing() {
	var all linter.Tally
	var size linter.Size
	asked := map[string]bool{}
	unjudged := 0
	for i := range p.sums {
		s := &p.sums[i]
		all, size = all.Plus(s.tally), size.Plus(s.size)
		for _, id := range s.asked {
			asked[id] = true
		}
		if !s.understood {
			unjudged++
		}
	}
	if len(p.sums) > 1 {
		p.line()
		p.heading("In all", Head, wording.Counted(len(p.sums), "design"))
		p.line()
		p.overview(all)
		p.line()
	} else if unjudged == 0 {
		p.heading("In all", Head, "")
		p.line()
	}
	if unjudged < len(p.sums) {
		p.say(strings.Join([]string{wording.Counted(size.Amplifiers, "amplifier"), wording.Counted(size.Lines, "line"), wording.Counted(size.Loudspeakers, "loudspeaker"), wording.Counted(size.Sources, "source")}, ", "))
		p.row("system")
		p.answers(all, len(asked))
		p.off()
		p.recordAnew()
		p.explained()
		p.line()
	}
	p.lastWord(all, unjudged, len(p.sums))
}

// overview sums up each design on a line of its own. On a narrow page, where
// columns do not fit, each is a sentence.
func (p *Page) overview(all linter.Tally) {
	const widestName, space = 48, 9 // columns of the page
	wide := visibleWidth("design")
	for i := range p.sums {
		wide = max(wide, min(visibleWidth(Printable(p.sums[i].name)), widestName))
	}
	columns := columnsOf(all)
	if labelInset+wide+len(columns)*space > p.width {
		for i := range p.sums {
			p.designLine(&p.sums[i])
		}
		return
	}
	p.pad(labelInset)
	p.paint(Label, "design")
	p.pad(wide - len("design"))
	for _, c := range columns {
		p.pad(space - len(c.head))
		p.paint(Label, c.head)
	}
	p.line()
	for i := range p.sums {
		s := &p.sums[i]
		name := Printable(s.name)
		p.pad(labelInset)
		p.paint(Place, name)
		if long := visibleWidth(name); long > wide {
			p.line()
			p.pad(labelInset + wide)
		} else {
			p.pad(wide - long)
		}
		if !s.understood {
			p.write("  " + s.unjudged)
			p.line()
			continue
		}
		for _, c := range columns {
			n := c.of(s.tally)
			text, style := strconv.Itoa(n), c.style
			if n == 0 {
				text, style = "-", Label
			}
			p.pad(space - len(text))
			p.paint(style, text)
		}
		p.line()
	}
}

// column is one of the overview.
type column struct {
	head  string
	style Style
	of    func(linter.Tally) int
}

// columnsOf gives those of the overview: known and accepted findings have one
// where there are any.
func columnsOf(all linter.Tally) []column {
	columns := []column{
		{"errors", Error, func(t linter.Tally) int { return t.Errors }},
		{"warnings", Warning, func(t linter.Tally) int { return t.Warnings }},
		{"notes", Note, func(t linter.Tally) int { return t.Notes }},
	}
	if all.Known > 0 {
		columns = append(columns, column{"known", Label, func(t linter.Tally) int { return t.Known }})
	}
	if all.Accepted > 0 {
		columns = append(columns, column{"accepted", Label, func(t linter.Tally) int { return t.Accepted }})
	}
	return append(columns,
		column{"open", Open, func(t linter.Tally) int { return t.Open }},
		column{"passes", Pass, func(t linter.Tally) int { return t.Passes }})
}

// unjudged says why a design was not judged.
func unjudged(d *linter.Judged) string {
	if d.Err != nil {
		return "could not be read"
	}
	return "not understood in " + wording.Counted(len(d.Problems), "place")
}

// designLine sums up one design among several.
func (p *Page) designLine(s *sum) {
	p.whole(Place, s.name)
	p.join(":")
	if s.understood {
		p.say(countsOf(s.tally))
	} else {
		p.say(s.unjudged)
	}
	p.fill(0, labelInset, labelInset+2)
}

func (p *Page) answers(all linter.Tally, checks int) {
	if all.Answers() == 0 {
		p.say("none")
	} else {
		p.say(strconv.Itoa(all.Answers()) + " from " + wording.Counted(checks, "check") + ": " + countsOf(all))
	}
	p.row("answers")
}

// off names the checks that were not asked because they are turned off, where,
// when not everywhere, and what criteria turned them off.
func (p *Page) off() {
	var judged int
	var ids []string
	in, by := map[string][]string{}, map[string][]string{}
	for i := range p.sums {
		s := &p.sums[i]
		if s.understood {
			judged++
		}
		for _, o := range s.off {
			if in[o.id] == nil {
				ids = append(ids, o.id)
			}
			in[o.id] = append(in[o.id], s.name)
			if o.by != "" && !slices.Contains(by[o.id], o.by) {
				by[o.id] = append(by[o.id], o.by)
			}
		}
	}
	for i, id := range ids {
		if i > 0 {
			p.join(",")
		}
		p.say(id)
		var notes []string
		if names := in[id]; len(names) < judged {
			notes = append(notes, "in "+someOf(names, "more design"))
		}
		if sets := by[id]; len(sets) > 0 {
			notes = append(notes, someOf(sets, "more"))
		}
		if len(notes) > 0 {
			p.say("(" + strings.Join(notes, "; ") + ")")
		}
	}
	if len(ids) > 0 {
		p.row("off")
	}
}

// someOf lists the first names and counts the others.
func someOf(names []string, others string) string {
	listed := strings.Join(names[:min(len(names), mostPlaces)], ", ")
	if more := len(names) - mostPlaces; more > 0 {
		listed += " and " + wording.Counted(more, others)
	}
	return listed
}

// explained says where to read about a check, by the example of the gravest
// finding.
func (p *Page) explained() {
	if p.gravest.check == "" {
		return
	}
	p.whole(Plain, "`loudlint explain "+p.gravest.check+"`")
	p.say("tells why it is asked and what it does not see")
	p.row("more")
}

// lastWord says what the result means and what it does not.
func (p *Page) lastWord(all linter.Tally, unjudged, designs int) {
	if unjudged > 0 && designs > 1 {
		p.say("Not judged: " + wording.Counted(unjudged, "design") + ".")
	}
	if unjudged < designs {
		if all.Findings() == 0 {
			p.say(cleanSentence(all))
		}
		p.say(Scope)
	}
	if len(p.words) > 0 {
		p.sentence()
	}
}
