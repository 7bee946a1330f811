package textout

import (
	"slices"
	"strconv"

	"loudlint/linter"
	"loudlint/linter/check"
)

// caution is what to mind on site, with the parts that call for it.
type caution struct {
	text   string
	parts  []check.Subject
	checks []*check.Check
}

// cautionsOf collects the cautions of all outcomes, whatever their verdict,
// each once, in the order of the outcomes.
func cautionsOf(d *linter.Judged) []*caution {
	var all []*caution
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
			c.parts = append(c.parts, o.Subject)
			if !slices.Contains(c.checks, o.Check) {
				c.checks = append(c.checks, o.Check)
			}
		}
	}
	return all
}

// cautions writes what to mind on site. It is no finding and counts as none.
func (p *page) cautions(d *linter.Judged) {
	all := cautionsOf(d)
	if len(all) == 0 {
		return
	}
	p.heading("Mind on site", Head, "")
	p.line()
	for _, c := range all {
		p.say(c.text)
		p.entry("CAUTION", Note, 0)
		p.parts(c.parts)
		for i, asks := range c.checks {
			if i > 0 {
				p.join(",")
			}
			p.say(asks.ID)
		}
		p.row("check")
		p.line()
	}
}

// parts lists the parts that call for a caution.
func (p *page) parts(all []check.Subject) {
	for i, s := range all[:min(len(all), mostPlaces)] {
		if i > 0 {
			p.join(",")
		}
		p.say(s.String())
		if !s.Span.IsZero() {
			p.say("at")
			p.place(s.Span)
		}
	}
	if more := len(all) - mostPlaces; more > 0 {
		p.whole(Plain, "and "+strconv.Itoa(more)+" more")
	}
	p.row("for")
}
