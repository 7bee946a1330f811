package textout

import (
	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// accepted writes the findings that were accepted by agreement: what is found,
// why that is accepted, and by whom. How each would be put right is left out.
func (p *page) accepted(d *linter.Judged, findings int) {
	if findings == 0 {
		return
	}
	p.heading("Accepted by agreement", Head, wording.Counted(findings, "finding"))
	p.line()
	for i := range d.Outcomes {
		if o := &d.Outcomes[i]; o.Accepted != nil {
			p.acceptedFinding(o)
			p.line()
		}
	}
}

func (p *page) acceptedFinding(o *check.Outcome) {
	p.say(o.Message)
	p.entry("ACCEPTED", Pass, 0)
	if !o.Primary.IsZero() {
		p.place(o.Primary)
		p.row("at")
	}
	p.say(o.Accepted.Reason)
	p.row("reason")
	p.say(o.Accepted.By)
	if o.Accepted.Until != "" {
		p.join(",")
		p.say("until " + o.Accepted.Until)
	}
	p.join(",")
	p.place(o.Accepted.Place)
	p.row("by")
	p.say(o.Check.ID + " of " + o.Subject.String() + ", otherwise")
	p.say(wording.WithArticle(o.Severity.String()))
	p.row("check")
}
