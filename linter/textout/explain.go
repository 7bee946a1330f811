package textout

import (
	"bufio"
	"io"
	"strings"

	"loudlint/linter/check"
)

// WriteExplanation writes what there is to know about checks, for a person who
// has to decide whether to act on them. Its errors are those of w.
func WriteExplanation(w io.Writer, checks []*check.Check, o Options) error {
	b := bufio.NewWriter(w)
	p := newPage(b, o)
	for i, c := range checks {
		if i > 0 {
			p.line()
		}
		p.explanation(c)
	}
	return b.Flush()
}

func (p *page) explanation(c *check.Check) {
	p.heading(c.ID, Head, "")
	p.paint(Label, strings.Repeat("_", p.width))
	p.line()
	p.line()
	p.say(c.Asks)
	p.sentence()
	p.line()

	p.say(c.Summary)
	p.row("finding")
	p.say("at most")
	p.whole(markStyle(c.Severity.String()), c.Severity.String())
	if c.Off {
		p.join(";")
		p.say("it answers only where criteria set a limit or a severity of it")
	}
	p.row("severity")
	p.say(c.Why)
	p.row("why")
	p.say(c.How)
	p.row("how")
	for i := range c.Params {
		param := &c.Params[i]
		p.whole(Head, param.Written(param.Default))
		p.join(":")
		p.say(param.Explained())
		p.row(onlyFirst("limit", i))
	}
	p.say(c.Basis)
	p.row("basis")
	p.say(c.Blind)
	p.row("not seen")
	for i, caution := range c.Cautions {
		p.say(caution)
		p.row(onlyFirst("caution", i))
	}
	p.example("Fails", c.Failing)
	p.example("Passes", c.Passing)
	p.line()
	p.say("To set it for a job, write this into the design, or into a criteria file that it uses. " +
		`There, severity = "error", "warning", "note" or "off" changes that of all its findings.`)
	p.sentence()
	p.line()
	p.block(c.Criteria())
}

func (p *page) example(label string, e check.Example) {
	p.line()
	p.styled(Head, label)
	p.join(":")
	p.say(e.Shows)
	p.sentence()
	p.line()
	p.block(e.Design)
}

func onlyFirst(label string, i int) string {
	if i > 0 {
		return ""
	}
	return label
}
