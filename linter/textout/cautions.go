package textout

import (
	"slices"
	"strconv"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/source"
)

// caution is what to mind on site, with the places that call for it.
type caution struct {
	text   string
	places []source.Span
}

// cautionsOf collects the cautions of all outcomes, whatever their verdict,
// each once, in the order of the outcomes, and the checks that raise them.
func cautionsOf(d *linter.Judged) ([]*caution, []*check.Check) {
	var all []*caution
	var checks []*check.Check
	byText := map[string]*caution{}
	for i := range d.Outcomes {
		o := &d.Outcomes[i]
		for _, text := range o.Cautions {
			c := byText[text]
			if c == nil {
				c = &caution{text: text}
				byText[text] = c
				all = append(all, c)
			}
			// What the whole job calls for needs no place.
			if o.Primary != o.Subject.Span || len(o.Subject.Path) > 0 {
				c.places = append(c.places, o.Primary)
			}
			if !slices.Contains(checks, o.Check) {
				checks = append(checks, o.Check)
			}
		}
	}
	for _, c := range all {
		slices.SortFunc(c.places, source.Compare)
		c.places = slices.Compact(c.places)
	}
	return all, checks
}

// cautions writes what to mind on site. It is no finding and counts as none.
func (p *page) cautions(d *linter.Judged) {
	all, checks := cautionsOf(d)
	if len(all) == 0 {
		return
	}
	p.heading("Mind on site", Head, "")
	p.line()
	for _, c := range all {
		p.say(c.text)
		p.row("mind")
		p.because(c.places)
	}
	for i, asks := range checks {
		if i > 0 {
			p.join(",")
		}
		p.say(asks.ID)
	}
	p.row("check")
	p.line()
}

// because lists the places that call for a caution.
func (p *page) because(all []source.Span) {
	if len(all) == 0 {
		return
	}
	for i, s := range all[:min(len(all), mostPlaces)] {
		if i > 0 {
			p.join(",")
		}
		p.whole(Plain, Printable(s.Text()))
		p.say("at")
		p.place(s)
	}
	if more := len(all) - mostPlaces; more > 0 {
		p.whole(Plain, "and "+strconv.Itoa(more)+" more")
	}
	p.row("for")
}
