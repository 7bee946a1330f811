package textout

import (
	"bufio"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/review"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// WriteReview writes the answer to who handed in a design as a page for people:
// what is recommended, the matrix of criteria, numbered comments, departures by
// agreement, what could not be judged, what is still to be supplied, and by what
// figures the rest is met: folded, or with Options.Passes each. Its errors are
// those of w.
func WriteReview(w io.Writer, r *review.Review, o Options) error {
	buffered := bufio.NewWriter(w)
	p := newPage(buffered, o)
	p.title(r.Judged)
	p.styled(Head, "Recommended: "+r.Verdict.String()+":")
	p.say(r.Reason)
	p.sentence()
	p.line()
	p.reviewMatrix(r)
	if len(r.Comments) > 0 {
		p.heading("Comments", Head, wording.Counted(len(r.Comments), "comment"))
		p.line()
		for i := range r.Comments {
			p.comment(&r.Comments[i])
		}
	}
	p.reviewAgreed(r)
	p.reviewOpen(r)
	p.reviewSupply(r)
	p.reviewMet(r, o.Passes)
	p.reviewSettings(r)
	p.say(review.Scope)
	p.sentence()
	return buffered.Flush()
}

func (p *page) reviewMatrix(r *review.Review) {
	if len(r.Criteria) > 0 {
		p.heading("What the criteria ask", Head, wording.Counted(len(r.Criteria), "row"))
		p.line()
		p.rows(review.Matrix(r.Criteria))
	}
	met, others := review.Throughout(r.Others)
	if len(others) > 0 {
		p.heading("What the criteria do not name, and loudlint asks", Head, wording.Counted(len(others), "row"))
		p.line()
		p.rows(review.Matrix(others))
	}
	if len(met) > 0 {
		names := make([]string, len(met))
		for i, row := range met {
			names[i] = row.Name
		}
		p.say("Met throughout, though no criteria name them: " + strings.Join(names, ", ") + ".")
		p.sentence()
		p.line()
	}
}

// comment writes why a criterion is not met, in full by the example of a few
// groups of parts, and of each other in a sentence.
func (p *page) comment(c *review.Comment) {
	p.heading(strconv.Itoa(c.Number)+"  "+c.Name, Head, wording.Counted(review.Count(c.NotMet), "finding"))
	p.line()
	for i, g := range c.NotMet {
		if i < review.MostInFull {
			p.finding(g[0], source.Span{})
			p.likewise(g)
			p.line()
			continue
		}
		p.say(g[0].Message)
		if at := g[0].Primary; !at.IsZero() {
			p.place(at)
		}
		p.row(g[0].Severity.String())
		p.likewise(g)
	}
	if len(c.NotMet) > review.MostInFull {
		p.line()
	}
}

// likewise names the parts of a group when it has several.
func (p *page) likewise(group review.Group) {
	if len(group) == 1 {
		return
	}
	label := "same of"
	for _, text := range review.Shown(group[1:]) {
		p.say(text)
		p.row(label)
		label = ""
	}
}

func (p *page) reviewAgreed(r *review.Review) {
	rows := r.Rows()
	n := 0
	for _, row := range rows {
		n += review.Count(row.Agreed)
	}
	if n == 0 {
		return
	}
	p.heading("Departed from by agreement", Head, wording.Counted(n, "finding"))
	p.line()
	p.say(review.Agreements)
	p.sentence()
	p.line()
	for _, row := range rows {
		for _, g := range row.Agreed {
			p.acceptedFinding(g[0])
			p.likewise(g)
			p.line()
		}
	}
}

// reviewOpen says of which parts which criteria could not be judged; what it
// takes stands among what is to be supplied.
func (p *page) reviewOpen(r *review.Review) {
	rows := r.Rows()
	n := 0
	for _, row := range rows {
		n += review.Count(row.Open)
	}
	if n == 0 {
		return
	}
	p.heading("Cannot be judged yet", Open, strconv.Itoa(n)+" open")
	p.line()
	for _, row := range rows {
		if len(row.Open) == 0 {
			continue
		}
		p.say(row.Name)
		p.join(":")
		for i, text := range review.Parts(slices.Concat(row.Open...), mostPlaces) {
			if i == mostPlaces {
				p.say("and more")
				break
			}
			if i > 0 {
				p.join(";")
			}
			p.say(text)
		}
		p.fill(0, labelInset, 2*labelInset)
	}
	p.line()
}

func (p *page) reviewSupply(r *review.Review) {
	if len(r.Supply)+len(r.Unnamed) == 0 {
		return
	}
	n := len(r.Unnamed)
	for _, d := range r.Supply {
		n += len(d.Items)
	}
	p.heading("Still to be supplied", Head, wording.Counted(n, "thing"))
	p.line()
	for _, d := range r.Supply {
		p.styled(Head, d.Title)
		p.fill(0, labelInset, 2*labelInset)
		for i := range d.Items {
			p.item(&d.Items[i])
		}
		p.line()
	}
	for _, o := range r.Unnamed {
		p.say(o.Message)
		p.entry("OPEN", Open, 0)
	}
	if len(r.Unnamed) > 0 {
		p.line()
	}
}

// item writes one thing that is not stated, as a row of its own.
func (p *page) item(i *review.Item) {
	p.pad(2 * labelInset)
	p.say("- " + i.What)
	if i.Write != "" {
		p.join(",")
		p.say("e.g.")
		p.whole(Plain, oneLine(i.Write))
	}
	p.join(",")
	p.say("for")
	for n, text := range i.For[:min(len(i.For), mostPlaces)] {
		if n > 0 {
			p.join(",")
		}
		p.say(text)
		if at := i.Places[n]; !at.IsZero() {
			p.say("at")
			p.place(at)
		}
	}
	if more := len(i.For) - mostPlaces; more > 0 {
		p.say("and " + strconv.Itoa(more) + " more")
	}
	p.join(";")
	p.say(wording.Counted(i.Answers, "answer") + " of " + strings.Join(i.Rows, ", ") + " " + pick(i.Answers, "waits", "wait"))
	p.fill(2*labelInset, 2*labelInset, 3*labelInset)
}

// reviewMet writes by what figures criteria are met; of what the criteria do not
// name only when each is asked for.
func (p *page) reviewMet(r *review.Review, each bool) {
	rows := r.Criteria
	if each {
		rows = r.Rows()
	}
	rows = slices.DeleteFunc(slices.Clone(rows), func(row *review.Row) bool { return len(row.Met) == 0 })
	if len(rows) == 0 {
		return
	}
	p.heading("Met", Pass, "")
	p.line()
	for _, row := range rows {
		p.styled(Head, row.Name)
		p.fill(0, labelInset, 2*labelInset)
		for _, text := range review.MetBy(row, each, mostPlaces, review.MostNames) {
			p.say(text)
			p.fill(0, 2*labelInset, 3*labelInset)
		}
	}
	p.line()
}

// reviewSettings says what else decides about the answers.
func (p *page) reviewSettings(r *review.Review) {
	if len(r.Own)+len(r.Off)+len(r.Only) == 0 {
		return
	}
	p.heading("What was asked", Head, "")
	p.line()
	label := "own limit"
	for _, s := range r.Own {
		p.say(s.Check.ID + ": " + s.What)
		p.settingAt(s.At)
		p.row(label)
		label = ""
	}
	label = "off"
	for _, s := range r.Off {
		p.say(s.Check.ID)
		p.settingAt(s.At)
		p.row(label)
		label = ""
	}
	if len(r.Only) > 0 {
		p.say(strings.Join(r.Only, ", "))
		p.row("only")
	}
	p.line()
}

func (p *page) settingAt(at source.Span) {
	if !at.IsZero() {
		p.join(",")
		p.place(at)
	}
}
