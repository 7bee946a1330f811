package textout

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// gap is one thing the design does not say, with everything that waits for it.
type gap struct {
	what    string
	places  []analysis.Missing // where it is missing, in the order of the design
	waits   []waiting          // in the order of the outcomes
	answers int                // outcomes that wait
	last    *check.Outcome     // the outcome counted last
}

// waiting counts the outcomes of one check.
type waiting struct {
	check    *check.Check
	outcomes int
}

// gapsOf collects what open outcomes wait for, that first for which most wait,
// and the open outcomes that name nothing.
func gapsOf(d *linter.Judged) (gaps []*gap, others []*check.Outcome) {
	byWhat := map[string]*gap{}
	seen := map[analysis.Missing]bool{}
	for i := range d.Outcomes {
		o := &d.Outcomes[i]
		if o.Verdict != check.Open {
			continue
		}
		if len(o.Missing) == 0 {
			others = append(others, o)
		}
		for _, m := range o.Missing {
			g := byWhat[m.What]
			if g == nil {
				g = &gap{what: m.What}
				byWhat[m.What] = g
				gaps = append(gaps, g)
			}
			if !seen[m] {
				seen[m] = true
				g.places = append(g.places, m)
			}
			g.wait(o)
		}
	}
	slices.SortStableFunc(gaps, func(a, b *gap) int { return cmp.Compare(b.answers, a.answers) })
	return gaps, others
}

// wait counts an outcome once, for however many places it waits.
func (g *gap) wait(o *check.Outcome) {
	if g.last == o {
		return
	}
	g.last = o
	g.answers++
	at := slices.IndexFunc(g.waits, func(w waiting) bool { return w.check == o.Check })
	if at < 0 {
		at = len(g.waits)
		g.waits = append(g.waits, waiting{check: o.Check})
	}
	g.waits[at].outcomes++
}

// open writes what could not be judged.
func (p *page) open(d *linter.Judged, answers int) {
	if answers == 0 {
		return
	}
	gaps, others := gapsOf(d)
	p.heading("Not judged yet", Open, strconv.Itoa(answers)+" open")
	p.line()
	worded := map[*check.Outcome]bool{}
	for _, g := range gaps {
		p.gap(g, worded)
		p.line()
	}
	shown := map[*check.Check]int{}
	for _, o := range others {
		if shown[o.Check]++; shown[o.Check] > mostAlike {
			continue
		}
		p.say(o.Message)
		p.entry("OPEN", Open, 0)
		p.written(o.Primary, o.Subject.Span)
		p.say(o.Check.ID + " of " + o.Subject.String())
		if place := placeOf(o.Subject.Span); place != "" {
			p.join(",")
			p.place(o.Subject.Span)
		}
		p.row("check")
		if shown[o.Check] == mostAlike {
			p.moreOpen(o.Check, others)
		}
		p.line()
	}
}

// moreOpen counts the open outcomes of a check that are not written out.
func (p *page) moreOpen(c *check.Check, others []*check.Outcome) {
	all := 0
	for _, o := range others {
		if o.Check == c {
			all++
		}
	}
	if all > mostAlike {
		p.say("and " + wording.Counted(all-mostAlike, "more answer") + " of " + c.ID)
		p.row("")
	}
}

// gap writes one missing thing. An answer that waits for it alone is written
// out, once: it may hold figures that say what the missing thing decides.
func (p *page) gap(g *gap, worded map[*check.Outcome]bool) {
	p.say("Not stated: " + g.what)
	p.join(",")
	p.say("for " + partsIn(g.places) + ".")
	p.entry("OPEN", Open, 0)

	switch {
	case g.answers == 1 && !worded[g.last]:
		worded[g.last] = true
		p.say(g.waits[0].check.ID + ": " + g.last.Message)
	case len(g.waits) == 1:
		p.say(wording.Counted(g.answers, "answer") + " of " + g.waits[0].check.ID)
	default:
		p.say(wording.Counted(g.answers, "answer") + ":")
		for i, w := range g.waits {
			if i > 0 {
				p.join(",")
			}
			p.say(strconv.Itoa(w.outcomes) + " of " + w.check.ID)
		}
	}
	p.row("waiting")
	p.forms(g)
}

// forms shows what would be written, each form once, and where.
func (p *page) forms(g *gap) {
	var forms []string
	where := map[string][]analysis.Missing{}
	for _, m := range g.places {
		if where[m.Write] == nil {
			forms = append(forms, m.Write)
		}
		where[m.Write] = append(where[m.Write], m)
	}
	most := mostPlaces
	if len(forms) > 1 {
		most /= 2
	}
	label := "write"
	for _, form := range forms[:min(len(forms), mostAlike)] {
		if form != "" {
			p.say("e.g.")
			p.whole(Plain, oneLine(form))
			p.say("in")
		} else if label == "write" { // nothing that could be written would tell
			label = "for"
		}
		all := where[form]
		for i, m := range all[:min(len(all), most)] {
			if i > 0 {
				p.join(",")
			}
			p.say(partOf(m))
			if !m.Where.IsZero() {
				p.say("at")
				p.place(m.Where)
			}
		}
		if more := len(all) - most; more > 0 {
			p.whole(Plain, "and "+strconv.Itoa(more)+" more")
		}
		p.row(label)
		label = ""
	}
	if more := len(forms) - mostAlike; more > 0 {
		p.say("and in " + wording.Counted(more, "more way"))
		p.row("")
	}
}

func partOf(m analysis.Missing) string {
	if m.Part == "" {
		return "the job"
	}
	return m.Part
}

// partsIn names one part, or counts several by kind.
func partsIn(places []analysis.Missing) string {
	type kind struct {
		name, first string
		parts       map[analysis.Missing]bool
	}
	var kinds []kind
	for _, m := range places {
		name, _, _ := strings.Cut(partOf(m), ` "`)
		at := slices.IndexFunc(kinds, func(k kind) bool { return k.name == name })
		if at < 0 {
			at = len(kinds)
			kinds = append(kinds, kind{name, partOf(m), map[analysis.Missing]bool{}})
		}
		kinds[at].parts[analysis.Missing{Part: m.Part, Where: m.Where}] = true
	}
	texts := make([]string, len(kinds))
	for i, k := range kinds {
		texts[i] = k.first
		if n := len(k.parts); n > 1 {
			texts[i] = wording.Counted(n, strings.ReplaceAll(k.name, "_", " "))
		}
	}
	if n := len(texts); n > 1 {
		return strings.Join(texts[:n-1], ", ") + " and " + texts[n-1]
	}
	return strings.Join(texts, "")
}
