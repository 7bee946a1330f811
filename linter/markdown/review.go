package markdown

import (
	"bufio"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/check"
	"loudlint/linter/review"
	"loudlint/linter/schedule"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Options of a page.
type Options struct {
	// Passes shows the figures of each part that meets what is asked.
	Passes bool
}

// mostRows is how many answers that meet a criterion with figures of their own are
// written out before they are summed up.
const mostRows = 4

// WriteReview writes the answer to who handed in a design. Its errors are those
// of w.
func WriteReview(w io.Writer, r *review.Review, o Options) error {
	p := &page{w: bufio.NewWriter(w)}
	p.head(r)
	p.matrices(r)
	if len(r.Comments) > 0 {
		p.heading(2, "Comments")
		for i := range r.Comments {
			p.comment(&r.Comments[i])
		}
	}
	p.agreed(r)
	p.open(r)
	p.supply(r)
	p.met(r, o.Passes)
	p.settings(r)
	p.paragraph("---")
	p.put(review.Scope, "\n")
	return p.w.Flush()
}

// page puts Markdown together. Write errors stick in the buffered writer and come
// out when it is flushed.
type page struct {
	w     *bufio.Writer
	apart bool // the last line is empty
}

func (p *page) put(parts ...string) {
	for _, part := range parts {
		_, _ = p.w.WriteString(part)
	}
	p.apart = false
}

// space sets what follows apart by an empty line.
func (p *page) space() {
	if !p.apart {
		p.put("\n")
		p.apart = true
	}
}

func (p *page) heading(level int, text string) {
	p.space()
	p.put(strings.Repeat("#", level), " ", escape(text), "\n")
	p.space()
}

// paragraph writes Markdown apart from what stands around it.
func (p *page) paragraph(parts ...string) {
	p.space()
	p.put(parts...)
	p.put("\n")
	p.space()
}

// point writes a point of a list, its name in bold and a text that is Markdown.
func (p *page) point(name, text string) {
	p.put("- **", name, ":** ", text, "\n")
}

func (p *page) head(r *review.Review) {
	job := r.Judged.Design.System
	name := job.Name
	if name == "" {
		name = r.Judged.Name
	}
	p.put("# Review of ", escape(name), "\n\n")
	p.point("Design", code(r.Judged.Name))
	if job.Reference.Set() {
		p.point("Reference", escape(job.Reference.V))
	}
	if job.Revision.Set() {
		p.point("Revision", escape(job.Revision.V))
	}
	if r.Judged.Held != nil {
		var names []string
		for _, f := range r.Judged.Held.Named {
			names = append(names, code(f.Name))
		}
		p.point("Held against", strings.Join(names, ", "))
	}
	p.paragraph("**Recommended: ", r.Verdict.String(), ".** ", escape(wording.Capital(r.Reason)))
}

func (p *page) matrices(r *review.Review) {
	if len(r.Criteria) > 0 {
		p.heading(2, "What the criteria ask")
		p.table(review.Matrix(r.Criteria))
	}
	met, others := review.Throughout(r.Others)
	if len(met)+len(others) > 0 {
		p.heading(2, "What the criteria do not name, and loudlint asks")
	}
	if len(others) > 0 {
		p.table(review.Matrix(others))
	}
	if len(met) > 0 {
		names := make([]string, len(met))
		for i, row := range met {
			names[i] = row.Name
		}
		p.paragraph("Met throughout: ", escape(strings.Join(names, ", ")), ".")
	}
}

// table writes a table; what is counted stands at the right.
func (p *page) table(t *schedule.Table) {
	for i := range t.Columns {
		p.put("| ", escape(t.Columns[i].Name()), " ")
	}
	p.put("|\n")
	for i := range t.Columns {
		if t.Columns[i].Kind == schedule.Number {
			p.put("| ---: ")
		} else {
			p.put("| --- ")
		}
	}
	p.put("|\n")
	for i := range t.Rows {
		for c := range t.Columns {
			text := t.Columns[c].Show(t.Rows[i].Cells[c])
			if text == "-" {
				text = "" // nothing to count
			}
			p.put("| ", escape(text), " ")
		}
		p.put("|\n")
	}
}

// comment writes why a criterion is not met, in full by the example of a few
// groups of parts, and of each other in a sentence.
func (p *page) comment(c *review.Comment) {
	p.heading(3, strconv.Itoa(c.Number)+". "+c.Name)
	for i, g := range c.NotMet {
		o := g[0]
		if i < review.MostInFull {
			p.paragraph("**", wording.Capital(o.Severity.String()), ".** ", escape(o.Message))
			p.details(o)
			p.likewise(g)
			continue
		}
		if i == review.MostInFull {
			p.paragraph("Further:")
		}
		p.put("- ", wording.Capital(o.Severity.String()), ": ", escape(o.Message))
		if !o.Primary.IsZero() {
			p.put(" (", placeOf(o.Primary), ")")
		}
		if len(g) > 1 {
			p.put(" The same of ", escape(partsIn(g[1:])), ".")
		}
		p.put("\n")
	}
}

// details writes what stands behind a finding.
func (p *page) details(o *check.Outcome) {
	p.point("Part", escape(o.Subject.String()))
	if !o.Primary.IsZero() {
		p.point("Place", placeOf(o.Primary))
	}
	p.figures(o)
	for _, a := range o.Assumed {
		p.point("Assumed", escape(a))
	}
	for i := range o.Remedies {
		name := "Put right"
		if i > 0 {
			name = "Or"
		}
		r := &o.Remedies[i]
		text := strings.TrimSuffix(r.Text, ".")
		if sure := r.Sure.Says(); sure != "" {
			text += " (" + sure + ")"
		}
		p.point(name, escape(text+"."))
	}
}

// figures writes what was compared, with its arithmetic, and with what.
func (p *page) figures(o *check.Outcome) {
	for i := range o.Evidence {
		e := &o.Evidence[i]
		name, text := "Figure", e.Value
		if e.Sum != "" {
			name, text = "Sum", e.Sum
		}
		if e.Name != "" {
			text = e.Name + ": " + text
		}
		p.point(name, escape(text))
	}
	if o.Limit != nil {
		p.point("Limit", escape(o.Limit.Says()))
	}
}

func (p *page) likewise(group review.Group) {
	if len(group) == 1 {
		return
	}
	p.point("The same of", escape(partsIn(group[1:])))
}

func partsIn(group review.Group) string { return strings.Join(review.Shown(group), "; ") }

func (p *page) agreed(r *review.Review) {
	var some bool
	for _, row := range r.Rows() {
		for _, g := range row.Agreed {
			if !some {
				p.heading(2, "Departed from by agreement")
				p.paragraph(review.Agreements)
				some = true
			}
			p.agreement(row, g)
		}
	}
}

func (p *page) agreement(row *review.Row, g review.Group) {
	o := g[0]
	p.heading(3, row.Name+": "+o.Subject.String())
	p.paragraph(escapeFirst(o.Message))
	p.point("Reason", escape(o.Accepted.Reason))
	by := o.Accepted.By
	if o.Accepted.Until != "" {
		by += ", until " + o.Accepted.Until
	}
	p.point("By", escape(by)+", "+placeOf(o.Accepted.Place))
	p.figures(o)
	p.likewise(g)
}

// open says of which parts which criteria could not be judged; what it takes
// stands among what is to be supplied.
func (p *page) open(r *review.Review) {
	var some bool
	for _, row := range r.Rows() {
		if len(row.Open) == 0 {
			continue
		}
		if !some {
			p.heading(2, "Cannot be judged yet")
			some = true
		}
		p.point(escape(row.Name), escape(partsIn(slices.Concat(row.Open...))))
	}
}

func (p *page) supply(r *review.Review) {
	if len(r.Supply)+len(r.Unnamed) == 0 {
		return
	}
	p.heading(2, "Still to be supplied")
	for _, d := range r.Supply {
		p.paragraph("**", escape(d.Title), "**")
		for n := range d.Items {
			p.item(&d.Items[n])
		}
	}
	if len(r.Unnamed) > 0 {
		p.paragraph("**Other**")
	}
	for _, o := range r.Unnamed {
		p.put("- ", escapeFirst(o.Message), "\n")
	}
}

func (p *page) item(i *review.Item) {
	p.put("- ", escapeFirst(i.What))
	if i.Write != "" {
		p.put(", e.g. ", code(i.Write))
	}
	text := strings.Join(i.For[:min(len(i.For), review.MostNames)], ", ")
	if more := len(i.For) - review.MostNames; more > 0 {
		text += " and " + strconv.Itoa(more) + " more"
	}
	wait := " wait"
	if i.Answers == 1 {
		wait = " waits"
	}
	p.put(", for ", escape(text), "; ", wording.Counted(i.Answers, "answer"), " of ", escape(strings.Join(i.Rows, ", ")), wait, "\n")
}

// met writes by what figures criteria are met; of what the criteria do not name
// only when each is asked for.
func (p *page) met(r *review.Review, each bool) {
	rows := r.Criteria
	if each {
		rows = r.Rows()
	}
	var some bool
	for _, row := range rows {
		if len(row.Met) == 0 {
			continue
		}
		if !some {
			p.heading(2, "Met")
			some = true
		}
		p.put("- **", escape(row.Name), "**\n")
		for _, line := range review.MetBy(row, each, mostRows, review.MostNames) {
			p.put("  - ", escapeFirst(line), "\n")
		}
	}
}

// settings says what else decides about the answers.
func (p *page) settings(r *review.Review) {
	if len(r.Own)+len(r.Off)+len(r.Only) == 0 {
		return
	}
	p.heading(2, "What was asked")
	for _, s := range r.Own {
		p.point("Set by the design itself", escape(s.Check.ID+": "+s.What)+", "+placeOf(s.At))
	}
	for _, s := range r.Off {
		text := escape(s.Check.ID)
		if !s.At.IsZero() {
			text += ", " + placeOf(s.At)
		}
		p.point("Not asked", text)
	}
	if len(r.Only) > 0 {
		p.point("Only", escape(strings.Join(r.Only, ", ")))
	}
}

// placeOf writes file and line of the start of a span.
func placeOf(s source.Span) string {
	if s.IsZero() {
		return ""
	}
	return code(s.File.Name + ":" + strconv.Itoa(s.From().Line))
}
