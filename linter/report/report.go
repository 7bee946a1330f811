package report

import (
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"fmt"
	"html/template"
	"io"
	"strconv"
	"strings"
	"sync"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/drawing"
	"loudlint/linter/schedule"
	"loudlint/linter/textout"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Options of a report.
type Options struct {
	// Tool names what makes it, with its version.
	Tool string
	// Date is the day the report is of; "" leaves it out.
	Date string
	// Schedules are what the schedules take from outside the design.
	Schedules schedule.Options
}

//go:embed page.html
var pageText string

//go:embed page.css
var pageStyle string

// pageTemplate reads the page at first use.
var pageTemplate = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("page").Parse(pageText))
})

// Write writes the report of a design that could be judged. Its errors are those
// of w.
func Write(w io.Writer, j *linter.Judged, o Options) error {
	return pageTemplate().Execute(w, pageOf(j, o))
}

// page is all that stands in a report, in its order.
type page struct {
	Style    template.CSS
	Title    string
	Subtitle string
	Facts    []fact
	Files    []file
	Verdict  string
	Counts   string
	Overview template.HTML
	Findings []finding
	Accepted []finding
	Open     []textout.OpenPoint
	Unnamed  []string // open answers that name nothing missing
	Cautions []string
	Matrices []matrix
	Units    []sheet
	Lines    []sheet
	Spaces   []sheet
	Unmapped string // what is said where maps are left out
	Tables   []table
	Limits   []limit
	Off      string
}

// fact is a row of the cover.
type fact struct{ Name, Says string }

// file is a file that was read, with its digest.
type file struct{ Name, Digest string }

// finding is one failed answer.
type finding struct {
	Number   int
	Severity string
	Message  string
	Check    string
	Subject  string
	Place    string
	Written  string
	Figures  []figure
	Limit    string
	Basis    string
	Assumed  []string
	Remedies []remedy
	Known    bool
	Reason   string // why it was accepted
	By       string
	Until    string
}

// remedy is a change that clears a finding.
type remedy struct{ Text, Sure string }

// limit is a parameter in force.
type limit struct {
	Check, What, Value, Basis string
	Set                       bool // by criteria
}

func pageOf(j *linter.Judged, o Options) *page {
	job := j.Design.System
	p := &page{
		Style:    template.CSS(pageStyle + drawing.Style + drawing.MapStyle), //nolint:gosec // both are ours and fixed
		Title:    clean(job.Name),
		Verdict:  textout.Verdict(j),
		Counts:   textout.Counts(j),
		Overview: element(drawing.Overview(j), "overview"),
		Matrices: matricesOf(j),
	}
	if p.Title == "" {
		p.Title = clean(j.Name)
	}
	var subtitle []string
	for _, v := range []schema.Value[string]{job.Reference, job.Revision} {
		if v.Set() {
			subtitle = append(subtitle, clean(v.V))
		}
	}
	p.Subtitle = strings.Join(subtitle, ", revision ")
	p.cover(j, o)
	for i, f := range drawing.Findings(j) {
		p.Findings = append(p.Findings, findingOf(f, i+1))
	}
	for i := range j.Outcomes {
		if f := &j.Outcomes[i]; f.Accepted != nil {
			p.Accepted = append(p.Accepted, findingOf(f, 0))
		}
	}
	var others []*check.Outcome
	p.Open, others = textout.OpenPoints(j)
	for i := range p.Open {
		point := &p.Open[i]
		point.What, point.For = clean(point.What), clean(point.For)
	}
	for _, other := range others {
		p.Unnamed = append(p.Unnamed, clean(other.Message))
	}
	for _, c := range textout.Cautions(j) {
		p.Cautions = append(p.Cautions, clean(c))
	}
	p.sheets(j)
	p.sounds(j, mapBytes)
	for _, k := range schedule.Kinds() {
		if t := schedule.Make(j.System, k.Kind, o.Schedules); t != nil {
			p.Tables = append(p.Tables, tableOf(t.Fold()))
		}
	}
	p.limits(j)
	return p
}

// cover says what was looked at, by what, and by which measure.
func (p *page) cover(j *linter.Judged, o Options) {
	job := j.Design.System
	add := func(name, says string) {
		if says == "" {
			says = "not stated"
		}
		p.Facts = append(p.Facts, fact{name, clean(says)})
	}
	add("Job", job.Name)
	add("Reference", job.Reference.V)
	add("Revision", job.Revision.V)
	add("Duty", job.Duty.V)
	add("Wiring rules", job.WiringRules.V)
	add("Design", j.Name)
	add("Criteria", criteriaText(j))
	add("Checks asked", strconv.Itoa(len(j.InForce)+len(j.Own)-len(j.Off)))
	add("Made by", o.Tool)
	if o.Date != "" {
		add("Date", o.Date)
	} else if len(j.Design.Deviations) > 0 {
		add("Date", "none was given, so deviations count as not expired")
	}
	for _, f := range j.Design.Files {
		p.Files = append(p.Files, fileOf(f))
	}
	if j.Held != nil {
		for _, f := range j.Held.Files {
			p.Files = append(p.Files, fileOf(f))
		}
	}
}

// criteriaText says by whose limits the design was judged.
func criteriaText(j *linter.Judged) string {
	set := 0
	for _, f := range j.InForce {
		for _, param := range f.Check.Params {
			if !f.Limits.Get(param.Name).Origin.IsZero() {
				set++
			}
		}
	}
	text := "the checks' own limits"
	if set > 0 {
		text = fmt.Sprintf("%d limits set for the job, the others as the checks have them", set)
		if set == 1 {
			text = "1 limit set for the job, the others as the checks have them"
		}
	}
	if n := len(j.Own); n > 0 {
		text += fmt.Sprintf("; %d criterions of the job's own", n)
	}
	return text
}

// fileOf gives the digest of a file as it lies on the disk.
func fileOf(f *source.File) file {
	h := sha256.New()
	if f.BOM {
		h.Write([]byte(source.BOM))
	}
	h.Write(f.Text)
	return file{clean(f.Name), hex.EncodeToString(h.Sum(nil))}
}

func findingOf(o *check.Outcome, number int) finding {
	f := finding{
		Number: number, Severity: o.Severity.String(), Message: clean(o.Message), Check: o.Check.ID, Subject: clean(o.Subject.String()), Known: o.Known(),
		Place: placeOf(o.Primary),
	}
	if !o.Primary.IsZero() {
		f.Written = clean(strings.TrimSpace(o.Primary.File.Line(o.Primary.From().Line)))
	}
	for _, e := range o.Evidence {
		f.Figures = append(f.Figures, figure{Name: clean(e.Name), Value: clean(e.Value), Sum: clean(e.Sum)})
	}
	if o.Limit != nil {
		f.Limit, f.Basis = clean(o.Limit.Text), clean(o.Limit.Basis)
	}
	for _, a := range o.Assumed {
		f.Assumed = append(f.Assumed, clean(a))
	}
	for _, r := range o.Remedies {
		one := remedy{Text: strings.TrimSuffix(clean(r.Text), "."), Sure: r.Sure.Says()}
		f.Remedies = append(f.Remedies, one)
	}
	if a := o.Accepted; a != nil {
		f.Reason, f.By, f.Until, f.Place = clean(a.Reason), clean(a.By), clean(a.Until), placeOf(a.Place)
	}
	return f
}

func placeOf(s source.Span) string {
	if s.IsZero() {
		return ""
	}
	return clean(s.File.Name) + ":" + strconv.Itoa(s.From().Line)
}

// limits lists every limit in force with where it comes from.
func (p *page) limits(j *linter.Judged) {
	for _, f := range j.InForce {
		if f.Off {
			continue
		}
		for _, param := range f.Check.Params {
			l := f.Limits.Get(param.Name)
			p.Limits = append(p.Limits, limit{f.Check.ID, clean(param.Doc), clean(l.String()), clean(l.Basis(f.Check)), !l.Origin.IsZero()})
		}
	}
	var off []string
	for _, c := range j.Off {
		off = append(off, c.ID)
	}
	p.Off = strings.Join(off, ", ")
}

// clean makes a text of the design fit to be read: nothing in it hides or
// reorders what stands beside it.
func clean(text string) string { return textout.Printable(text) }

// element puts a picture on the page.
func element(p *drawing.Picture, id string) template.HTML {
	if p == nil {
		return ""
	}
	return template.HTML(p.Element(id)) //nolint:gosec // a picture escapes all that it letters
}
