package textout

import (
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// before writes how the findings of a design stand to what was known before: those
// that were known, one to a row, and those that are gone.
func (p *page) before(d *linter.Judged, known int) {
	b := d.Before
	if b == nil {
		return
	}
	if b.Unknown {
		p.say("Of this design nothing is known to " + b.From + ": all findings are new.")
		p.sentence()
		p.line()
	}
	if known > 0 {
		p.heading("Known to "+b.From, Head, wording.Counted(known, "finding"))
		p.line()
		for i := range d.Outcomes {
			if o := &d.Outcomes[i]; o.Counts() && o.Known() {
				p.say(strings.TrimSuffix(o.Message, "."))
				p.say("(" + o.Check.ID + " of " + o.Subject.String())
				p.join(",")
				p.place(o.Primary)
				p.join(").")
				p.entry(o.Severity.String(), Label, labelInset)
			}
		}
		p.line()
	}
	if len(b.Gone) == 0 {
		return
	}
	p.heading("Gone since "+b.From, Head, wording.Counted(len(b.Gone), "finding"))
	p.line()
	for _, g := range b.Gone {
		p.gone(&g)
	}
	p.line()
}

func (p *page) gone(g *linter.Gone) {
	p.say(g.Identity)
	switch g.Now {
	case check.Open:
		p.say("(cannot be judged any more)")
	case check.Pass, check.Fail:
	default:
		p.say("(is not asked any more: the part, or the question, is gone)")
	}
	p.entry(g.Severity.String(), Label, labelInset)
}

// graver says what a finding was before, when it was less grave.
func (p *page) graver(o *check.Outcome) {
	if o.State == check.Changed && o.Was != 0 {
		p.say(wording.WithArticle(o.Was.String()))
		p.row("before")
	}
}

// recordAnew says what to do about what is gone, where a record is in use.
func (p *Page) recordAnew() {
	var gone int
	var from []string
	for i := range p.sums {
		if s := &p.sums[i]; s.gone > 0 {
			gone += s.gone
			if !slices.Contains(from, s.before) {
				from = append(from, s.before)
			}
		}
	}
	if gone == 0 {
		return
	}
	p.say(strconv.Itoa(gone) + " known to " + strings.Join(from, ", ") + " " + pick(gone, "is", "are") + " found no more: write it anew with `loudlint record`, so that they count should they come back")
	p.row("gone")
}
