package review

import (
	"cmp"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Verdict is what is recommended to the reviewer.
type Verdict int

// Verdicts.
const (
	Accept Verdict = iota + 1
	// AcceptWithComments: what is not met is less grave than the gate.
	AcceptWithComments
	// NotYet: nothing as grave as the gate, but not everything could be judged.
	NotYet
	Return
)

// String gives the verdict as it is recommended.
func (v Verdict) String() string {
	switch v {
	case Accept:
		return "accept"
	case AcceptWithComments:
		return "accept with comments"
	case NotYet:
		return "cannot be judged yet"
	case Return:
		return "return with comments"
	}
	return "none"
}

// Options of a review.
type Options struct {
	// Gate is the least severity that keeps a design from being accepted.
	Gate check.Severity
	// Only are the checks that were asked; nil when all were.
	Only []string
}

// Review is what a reviewer answers. It is read-only.
type Review struct {
	Judged  *linter.Judged
	Verdict Verdict
	// Reason says in one sentence why.
	Reason string
	// Criteria are what the criteria name, in the order in which they stand:
	// criterions, and checks of which they set a limit or the severity. Others are
	// the checks they do not name, as far as anything was asked.
	Criteria, Others []*Row
	// Comments are what is not met, numbered from 1: what the criteria name first.
	Comments []Comment
	// Supply is what is still to be supplied, and Unnamed are open answers that
	// name nothing.
	Supply  []Document
	Unnamed []*check.Outcome
	// Own are limits that the design sets although it is held against a
	// specification.
	Own []Setting
	// Off are checks that were not asked.
	Off  []Setting
	Only []string
}

// Row is one criterion with the answers about all parts it applies to. Each list
// holds answers that are equal in all but their part once.
type Row struct {
	Check *check.Check
	// Name is what people call it: the criterion's name, or the check.
	Name string
	// Expects is what is expected, or asked.
	Expects string
	// At is where the criteria name it; zero for one they do not name.
	At source.Span

	NotMet, Open, Agreed, Met []Group
}

// Group is answers that are equal in all but their part, in the order of the
// design.
type Group []*check.Outcome

// Comment is what the reviewer writes about a criterion that is not met.
type Comment struct {
	Number int
	*Row
}

// Setting is something that criteria set.
type Setting struct {
	Check *check.Check
	What  string // "warning_drop 12 %, in place of 10 %"; "off"
	At    source.Span
}

// Count gives how many answers groups hold.
func Count(groups []Group) int {
	n := 0
	for _, g := range groups {
		n += len(g)
	}
	return n
}

// Of makes the review of a design that could be judged.
func Of(j *linter.Judged, o Options) *Review {
	r := &Review{Judged: j, Only: o.Only}
	rows := map[*check.Check]*Row{}
	for i := range j.InForce {
		f := &j.InForce[i]
		if f.Off {
			r.Off = append(r.Off, Setting{f.Check, "off", f.Origin})
			continue
		}
		row := rowOf(f, j)
		rows[f.Check] = row
		if row.At.IsZero() {
			r.Others = append(r.Others, row)
		} else {
			r.Criteria = append(r.Criteria, row)
		}
		r.own(f)
	}
	slices.SortStableFunc(r.Criteria, func(a, b *Row) int { return source.Compare(a.At, b.At) })
	fold(j.Outcomes, rows)
	r.Others = slices.DeleteFunc(r.Others, func(row *Row) bool { return row.asked() == 0 })
	for _, row := range r.Rows() {
		if len(row.NotMet) > 0 {
			gravestFirst(row.NotMet)
			r.Comments = append(r.Comments, Comment{Number: len(r.Comments) + 1, Row: row})
		}
	}
	r.Supply, r.Unnamed = supplyOf(j)
	r.decide(o.Gate)
	return r
}

// Rows gives what the criteria name, then the others.
func (r *Review) Rows() []*Row { return slices.Concat(r.Criteria, r.Others) }

// gravestFirst orders groups of findings, which in each are as grave as the first.
func gravestFirst(groups []Group) {
	slices.SortStableFunc(groups, func(a, b Group) int { return cmp.Compare(b[0].Severity, a[0].Severity) })
}

func (row *Row) asked() int {
	return Count(row.NotMet) + Count(row.Open) + Count(row.Agreed) + Count(row.Met)
}

// rowOf makes the row of a check, without its answers.
func rowOf(f *linter.InForce, j *linter.Judged) *Row {
	row := &Row{Check: f.Check, Name: nameOf(f.Check, j), Expects: f.Check.Asks}
	if own := f.Check.Origin; !own.IsZero() {
		row.Expects = expectsOf(f.Check, j)
		if reviewers(own, j) {
			row.At = own
		}
	}
	var set []string
	for i := range f.Check.Params {
		l := f.Limits.Get(f.Check.Params[i].Name)
		if !reviewers(l.Origin, j) {
			continue
		}
		set = append(set, l.Param.Name+" "+l.String())
		if row.At.IsZero() || source.Compare(l.Origin, row.At) < 0 {
			row.At = l.Origin
		}
	}
	if reviewers(f.Origin, j) {
		set = append(set, "severity "+f.Severity.String())
		if row.At.IsZero() || source.Compare(f.Origin, row.At) < 0 {
			row.At = f.Origin
		}
	}
	if len(set) > 0 {
		row.Expects += " (" + strings.Join(set, ", ") + ")"
	}
	return row
}

// nameOf gives what people call a check: a criterion goes by its own name.
func nameOf(c *check.Check, j *linter.Judged) string {
	if own := criterionOf(c, j); own != nil {
		return own.Name
	}
	return c.ID
}

// expectsOf writes what a criterion expects, and of what it is asked.
func expectsOf(c *check.Check, j *linter.Judged) string {
	own := criterionOf(c, j)
	if own == nil {
		return c.How
	}
	text := wording.OneLine(own.Expect.Text)
	if own.When.Set() {
		text += ", where " + wording.OneLine(own.When.Text)
	}
	return text
}

// criterionOf finds the criterion that a check is made of, nil for a check of the
// program's own.
func criterionOf(c *check.Check, j *linter.Judged) *schema.Criterion {
	if c.Origin.IsZero() {
		return nil
	}
	all := j.Design.Criterions
	if j.Held != nil {
		all = slices.Concat(all, j.Held.Criterions)
	}
	for _, own := range all {
		if own.Header == c.Origin {
			return own
		}
	}
	return nil
}

// reviewers tells that a place is in the criteria of the review: in those the
// design is held against, or where it is held against none, in its own.
func reviewers(at source.Span, j *linter.Judged) bool {
	return !at.IsZero() && (j.Held == nil || slices.Contains(j.Held.Files, at.File))
}

// own notes what the design itself sets for a check, while it is held against
// the criteria of somebody else.
func (r *Review) own(f *linter.InForce) {
	for i := range f.Check.Params {
		l := f.Limits.Get(f.Check.Params[i].Name)
		if l.Origin.IsZero() || reviewers(l.Origin, r.Judged) {
			continue
		}
		r.Own = append(r.Own, Setting{f.Check, l.Param.Name + " " + l.String() + ", in place of " + l.Param.Unit.Format(l.Param.Default), l.Origin})
	}
	if !f.Origin.IsZero() && !reviewers(f.Origin, r.Judged) {
		r.Own = append(r.Own, Setting{f.Check, "every finding of it is " + wording.WithArticle(f.Severity.String()), f.Origin})
	}
}

// decide says what is recommended, and why.
func (r *Review) decide(gate check.Severity) {
	var failed, errors, open, agreed, met int
	grave := false
	for _, row := range r.Rows() {
		for _, g := range row.NotMet {
			failed += len(g)
			if g[0].Severity == check.Error {
				errors += len(g)
			}
			grave = grave || g[0].Severity >= gate
		}
		open += Count(row.Open)
		agreed += Count(row.Agreed)
		met += Count(row.Met)
	}
	comments := wording.Counted(len(r.Comments), "comment")
	if len(r.Comments) < failed {
		comments += " on " + wording.Counted(failed, "finding")
	}
	var because []string
	switch {
	case grave:
		r.Verdict = Return
		because = append(because, comments+", no error among them")
		if errors > 0 {
			because[0] = comments + ", " + wording.Counted(errors, "error") + " among them"
		}
	case failed+open+agreed+met == 0:
		r.Verdict, r.Reason = NotYet, "nothing was asked of any part."
		return
	case open > 0:
		r.Verdict = NotYet
		because = append(because, "nothing judged so far is as grave as "+wording.WithArticle(gate.String()))
		if failed > 0 {
			because = append(because, comments)
		}
	case failed > 0:
		r.Verdict = AcceptWithComments
		because = append(because, comments+", none as grave as "+wording.WithArticle(gate.String()))
	default:
		r.Verdict = Accept
		because = append(because, wording.Counted(met, "answer")+" met")
	}
	if open > 0 {
		because = append(because, wording.Counted(open, "answer")+" cannot be given yet")
	}
	if agreed > 0 {
		because = append(because, wording.Counted(agreed, "finding")+" departed from by an agreement that the design states")
	}
	if len(r.Only) > 0 {
		because = append(because, "only "+wording.Listed(r.Only, "and")+" asked")
	}
	r.Reason = strings.Join(because, "; ") + "."
}
