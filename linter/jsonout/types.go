package jsonout

import (
	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/internal/jsonstream"
	"loudlint/schema"
	"loudlint/schema/source"
)

// These are the objects of the form. schema.json says what each member means.

type program struct {
	Name    string `json:"name"`
	Version string `json:"version,omitempty"`
}

type summary struct {
	Designs   int    `json:"designs"`
	NotJudged int    `json:"notJudged"`
	Counts    counts `json:"counts"`
	Size      size   `json:"size"`
}

func (s *summary) meet(j *linter.Judged) {
	s.Designs++
	if !j.Understood() {
		s.NotJudged++
		return
	}
	s.Counts = counts(linter.Tally(s.Counts).Plus(j.Tally()))
	s.Size = size(linter.Size(s.Size).Plus(j.Size()))
}

type counts struct {
	Errors   int `json:"errors"`
	Warnings int `json:"warnings"`
	Notes    int `json:"notes"`
	Known    int `json:"known"`
	Accepted int `json:"accepted"`
	Open     int `json:"open"`
	Passes   int `json:"passes"`
}

type size struct {
	Amplifiers   int `json:"amplifiers"`
	Lines        int `json:"lines"`
	Loudspeakers int `json:"loudspeakers"`
	Sources      int `json:"sources"`
}

type system struct {
	Name      string `json:"name,omitempty"`
	Reference string `json:"reference,omitempty"`
	Revision  string `json:"revision,omitempty"`
}

func systemOf(j *linter.Judged) system {
	if j.Design == nil {
		return system{}
	}
	s := j.Design.System
	return system{Name: s.Name, Reference: s.Reference.V, Revision: s.Revision.V}
}

func filesOf(j *linter.Judged) []string {
	if j.Design == nil {
		return []string{}
	}
	names := make([]string, len(j.Design.Files))
	for i, f := range j.Design.Files {
		names[i] = f.Name
	}
	return names
}

type compared struct {
	From    string `json:"from"`
	Unknown bool   `json:"unknown,omitempty"`
}

type outcome struct {
	ID            string         `json:"id"`
	Check         string         `json:"check"`
	State         string         `json:"state"`
	Severity      string         `json:"severity,omitempty"`
	SeverityPlace *place         `json:"severityPlace,omitempty"`
	Part          part           `json:"part"`
	Key           string         `json:"key,omitempty"`
	Message       string         `json:"message"`
	Place         *place         `json:"place,omitempty"`
	Figures       []figure       `json:"figures,omitempty"`
	Limit         *limit         `json:"limit,omitempty"`
	Assumed       []string       `json:"assumed,omitempty"`
	Remedies      []remedy       `json:"remedies,omitempty"`
	Missing       []missing      `json:"missing,omitempty"`
	Related       []noted        `json:"related,omitempty"`
	Cautions      []string       `json:"cautions,omitempty"`
	Accepted      *accepted      `json:"accepted,omitempty"`
	Compared      *comparedState `json:"compared,omitempty"`
}

type comparedState struct {
	State string `json:"state"`
	Was   string `json:"was,omitempty"`
}

type part struct {
	Text string `json:"text"`
	Path []step `json:"path"`
}

type step struct {
	Kind string `json:"kind"`
	Name string `json:"name,omitempty"`
}

// place is where something stands.
type place struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Byte   int    `json:"byte"`
	Bytes  int    `json:"bytes"`
}

func placeOf(s source.Span) *place {
	if s.IsZero() {
		return nil
	}
	from := s.From()
	return &place{File: s.File.Name, Line: from.Line, Column: from.Column, Byte: int(s.Start), Bytes: int(s.End - s.Start)}
}

type noted struct {
	Note  string `json:"note,omitempty"`
	Place *place `json:"place,omitempty"`
}

func notedOf(all []schema.Place) []noted {
	list := make([]noted, len(all))
	for i, p := range all {
		list[i] = noted{p.Note, placeOf(p.Span)}
	}
	return list
}

type figure struct {
	Name   string            `json:"name"`
	Text   string            `json:"text"`
	Number jsonstream.Number `json:"number,omitzero"`
	Unit   string            `json:"unit,omitempty"`
	Sum    string            `json:"sum,omitempty"`
	From   []noted           `json:"from,omitempty"`
}

type limit struct {
	Text     string            `json:"text"`
	Number   jsonstream.Number `json:"number,omitzero"`
	Unit     string            `json:"unit,omitempty"`
	Relation string            `json:"relation"`
	Basis    string            `json:"basis,omitempty"`
	Place    *place            `json:"place,omitempty"`
}

type remedy struct {
	Text  string `json:"text"`
	Sure  string `json:"sure,omitempty"`
	Edits []edit `json:"edits,omitempty"`
}

type edit struct {
	Place *place `json:"place"`
	New   string `json:"new"`
}

type missing struct {
	What  string `json:"what"`
	Part  string `json:"part,omitempty"`
	Write string `json:"write,omitempty"`
	Place *place `json:"place,omitempty"`
}

type accepted struct {
	Reason string `json:"reason"`
	By     string `json:"by"`
	Until  string `json:"until,omitempty"`
	Place  *place `json:"place,omitempty"`
}

func outcomeOf(o *check.Outcome) outcome {
	one := outcome{
		ID: o.Identity, Check: o.Check.ID, State: stateOfOutcome(o), SeverityPlace: placeOf(o.SeverityOrigin), Part: partOf(o.Subject), Key: o.Key,
		Message: o.Message, Place: placeOf(o.Primary), Assumed: o.Assumed, Related: notedOf(o.Related), Cautions: o.Cautions,
	}
	if o.Verdict == check.Fail {
		one.Severity = severityOf(o.Severity)
	}
	if o.State != check.NotCompared {
		one.Compared = &comparedState{State: o.State.String(), Was: severityOf(o.Was)}
	}
	for _, e := range o.Evidence {
		one.Figures = append(one.Figures, figure{e.Name, e.Value, jsonstream.Number(e.Number), e.Unit, e.Sum, notedOf(e.From)})
	}
	if b := o.Limit; b != nil {
		one.Limit = &limit{b.Text, jsonstream.Number(b.Number), b.Unit, b.Relation(), b.Basis, placeOf(b.Origin)}
	}
	for _, r := range o.Remedies {
		one.Remedies = append(one.Remedies, remedyOf(&r))
	}
	for _, m := range o.Missing {
		one.Missing = append(one.Missing, missing{m.What, m.Part, m.Write, placeOf(m.Where)})
	}
	if a := o.Accepted; a != nil {
		one.Accepted = &accepted{a.Reason, a.By, a.Until, placeOf(a.Place)}
	}
	return one
}

func remedyOf(r *check.Remedy) remedy {
	one := remedy{Text: r.Text, Sure: r.Sure.String()}
	for _, e := range r.Edits {
		if e.Span.IsZero() {
			return remedy{Text: r.Text, Sure: r.Sure.String()} // half of a change is none
		}
		one.Edits = append(one.Edits, edit{placeOf(e.Span), e.New})
	}
	return one
}

// stateOfOutcome is the verdict, where a fail that need not be dealt with has a
// word of its own.
func stateOfOutcome(o *check.Outcome) string {
	switch {
	case o.Verdict == check.Fail && o.Accepted != nil:
		return "accepted"
	case o.Known():
		return "known"
	}
	return o.Verdict.String()
}

// severityOf gives "" where there is none.
func severityOf(s check.Severity) string {
	if s == 0 {
		return ""
	}
	return s.String()
}

func partOf(s check.Subject) part {
	p := part{Text: s.String(), Path: make([]step, len(s.Path))}
	for i, one := range s.Path {
		p.Path[i] = step{one.Kind, one.Name}
	}
	return p
}

type gone struct {
	ID       string `json:"id"`
	Check    string `json:"check"`
	Severity string `json:"severity,omitempty"`
	Now      string `json:"now,omitempty"`
}

func goneOf(g *linter.Gone) gone {
	one := gone{ID: g.Identity, Check: g.Check, Severity: severityOf(g.Severity)}
	if g.Now != 0 {
		one.Now = g.Now.String()
	}
	return one
}

type criterion struct {
	Check    string  `json:"check"`
	Asked    bool    `json:"asked"`
	Severity string  `json:"severity,omitempty"`
	Place    *place  `json:"place,omitempty"`
	Limits   []bound `json:"limits"`
}

type bound struct {
	Name  string `json:"name"`
	Text  string `json:"text"`
	Value any    `json:"value,omitempty"` // a number, or true or false of a switch
	Unit  string `json:"unit,omitempty"`
	Place *place `json:"place,omitempty"`
}

func criterionOf(f *linter.InForce) criterion {
	one := criterion{Check: f.Check.ID, Asked: !f.Off, Severity: severityOf(f.Severity), Place: placeOf(f.Origin), Limits: make([]bound, len(f.Check.Params))}
	for i := range f.Check.Params {
		p := &f.Check.Params[i]
		l := f.Limits.Get(p.Name)
		one.Limits[i] = bound{Name: p.Name, Text: l.String(), Unit: string(p.Unit), Place: placeOf(l.Origin)}
		if p.Unit == check.Switch {
			one.Limits[i].Value, one.Limits[i].Unit = l.On(), ""
		} else if value := jsonstream.Number(l.Value); !value.IsZero() {
			one.Limits[i].Value = value
		}
	}
	return one
}

type problem struct {
	Text     string  `json:"text"`
	Found    string  `json:"found"`
	Expected string  `json:"expected,omitempty"`
	Nearest  string  `json:"nearest,omitempty"`
	Place    *place  `json:"place,omitempty"`
	Related  []noted `json:"related,omitempty"`
}

func problemOf(p *schema.Problem) problem {
	return problem{p.String(), p.Found, p.Expected, p.Nearest, placeOf(p.Span), notedOf(p.Related)}
}
