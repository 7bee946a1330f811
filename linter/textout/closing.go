package textout

import (
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// closing sums up all designs.
func (p *page) closing(r *linter.Result) {
	var all tally
	var unjudged int
	for _, d := range r.Designs {
		all = all.add(tallyOf(d))
		if !d.Understood() {
			unjudged++
		}
	}
	if len(r.Designs) > 1 {
		p.line()
		p.heading("In all", Head, wording.Counted(len(r.Designs), "design"))
		p.line()
		p.overview(r)
		p.line()
	} else if unjudged == 0 {
		p.heading("In all", Head, "")
		p.line()
	}
	if unjudged < len(r.Designs) {
		p.system(r)
		p.answers(r, all)
		p.off(r)
		p.recordAnew(r)
		p.explained(r)
		p.line()
	}
	p.lastWord(all, unjudged, len(r.Designs))
}

// overview sums up each design on a line of its own. On a narrow page, where
// columns do not fit, each is a sentence.
func (p *page) overview(r *linter.Result) {
	const widestName, space = 48, 9 // columns of the page
	wide := visibleWidth("design")
	var all tally
	for _, d := range r.Designs {
		wide = max(wide, min(visibleWidth(Printable(d.Name)), widestName))
		all = all.add(tallyOf(d))
	}
	columns := all.columns()
	if labelInset+wide+len(columns)*space > p.width {
		for _, d := range r.Designs {
			p.designLine(d)
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
	for _, d := range r.Designs {
		name := Printable(d.Name)
		p.pad(labelInset)
		p.paint(Place, name)
		if long := visibleWidth(name); long > wide {
			p.line()
			p.pad(labelInset + wide)
		} else {
			p.pad(wide - long)
		}
		if !d.Understood() {
			p.write("  " + unjudged(d))
			p.line()
			continue
		}
		t := tallyOf(d)
		for _, c := range columns {
			text, style := strconv.Itoa(c.of(t)), c.style
			if c.of(t) == 0 {
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
	of    func(tally) int
}

// columns are those of the overview: known and accepted findings have one where
// there are any.
func (t tally) columns() []column {
	all := []column{
		{"errors", Error, func(t tally) int { return t.errors }},
		{"warnings", Warning, func(t tally) int { return t.warnings }},
		{"notes", Note, func(t tally) int { return t.notes }},
	}
	if t.known > 0 {
		all = append(all, column{"known", Label, func(t tally) int { return t.known }})
	}
	if t.accepted > 0 {
		all = append(all, column{"accepted", Label, func(t tally) int { return t.accepted }})
	}
	return append(all,
		column{"open", Open, func(t tally) int { return t.open }},
		column{"passes", Pass, func(t tally) int { return t.pass }})
}

// unjudged says why a design was not judged.
func unjudged(d *linter.Judged) string {
	if d.Err != nil {
		return "could not be read"
	}
	return "not understood in " + wording.Counted(len(d.Problems), "place")
}

// designLine sums up one design among several.
func (p *page) designLine(d *linter.Judged) {
	p.whole(Place, d.Name)
	p.join(":")
	if d.Understood() {
		p.say(tallyOf(d).counts())
	} else {
		p.say(unjudged(d))
	}
	p.fill(0, labelInset, labelInset+2)
}

func (p *page) system(r *linter.Result) {
	var amplifiers, lines, loudspeakers, sources int
	for _, d := range r.Designs {
		if d.System == nil {
			continue
		}
		amplifiers += len(d.System.Amplifiers)
		lines += len(d.System.Lines)
		sources += len(d.System.Sources)
		for _, l := range d.System.Lines {
			loudspeakers += l.Loudspeakers
		}
	}
	p.say(strings.Join([]string{wording.Counted(amplifiers, "amplifier"), wording.Counted(lines, "line"), wording.Counted(loudspeakers, "loudspeaker"), wording.Counted(sources, "source")}, ", "))
	p.row("system")
}

func (p *page) answers(r *linter.Result, all tally) {
	asked := map[string]bool{}
	for _, d := range r.Designs {
		for i := range d.Outcomes {
			asked[d.Outcomes[i].Check.ID] = true
		}
	}
	if all.answers() == 0 {
		p.say("none")
	} else {
		p.say(strconv.Itoa(all.answers()) + " from " + wording.Counted(len(asked), "check") + ": " + all.counts())
	}
	p.row("answers")
}

// off names the checks that were not asked because they are turned off, where,
// when not everywhere, and what criteria turned them off.
func (p *page) off(r *linter.Result) {
	var judged int
	var ids []string
	in, by := map[string][]string{}, map[string][]string{}
	for _, d := range r.Designs {
		if !d.Understood() {
			continue
		}
		judged++
		for _, c := range d.Off {
			if in[c.ID] == nil {
				ids = append(ids, c.ID)
			}
			in[c.ID] = append(in[c.ID], d.Name)
		}
		for i := range d.InForce {
			f := &d.InForce[i]
			if !f.Off || f.Origin.IsZero() {
				continue
			}
			if set := check.SetAt(f.Origin); !slices.Contains(by[f.Check.ID], set) {
				by[f.Check.ID] = append(by[f.Check.ID], set)
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
func (p *page) explained(r *linter.Result) {
	var first *check.Outcome
	for _, d := range r.Designs {
		for i := range d.Outcomes {
			if o := &d.Outcomes[i]; o.Gates() && o.Check.Origin.IsZero() && (first == nil || o.Severity > first.Severity) {
				first = o
			}
		}
	}
	if first == nil {
		return
	}
	p.whole(Plain, "`loudlint explain "+first.Check.ID+"`")
	p.say("tells why it is asked and what it does not see")
	p.row("more")
}

// lastWord says what the result means and what it does not.
func (p *page) lastWord(all tally, unjudged, designs int) {
	if unjudged > 0 && designs > 1 {
		p.say("Not judged: " + wording.Counted(unjudged, "design") + ".")
	}
	if unjudged < designs {
		if all.findings() == 0 {
			p.say(all.cleanSentence())
		}
		p.say("This covers only what the checks ask; it does not replace local codes and licensed practice.")
	}
	if len(p.words) > 0 {
		p.sentence()
	}
}
