package textout

import (
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
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
		p.heading("In all", Head, count(len(r.Designs), "design"))
		p.line()
		for _, d := range r.Designs {
			p.designLine(d)
		}
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

// designLine sums up one design among several.
func (p *page) designLine(d *linter.Judged) {
	p.whole(Place, d.Name)
	p.join(":")
	switch {
	case d.Err != nil:
		p.say("could not be read")
	case len(d.Problems) > 0:
		p.say("not understood in " + count(len(d.Problems), "place"))
	default:
		p.say(tallyOf(d).counts())
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
	p.say(strings.Join([]string{count(amplifiers, "amplifier"), count(lines, "line"), count(loudspeakers, "loudspeaker"), count(sources, "source")}, ", "))
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
		p.say(strconv.Itoa(all.answers()) + " from " + count(len(asked), "check") + ": " + all.counts())
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
		listed += " and " + count(more, others)
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
		p.say("Not judged: " + count(unjudged, "design") + ".")
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
