package resulttest

import (
	"errors"
	"math"
	"math/rand/v2"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Any puts together a result of any texts, places and figures, the same for the same
// seed. All texts are among those given.
func Any(seed uint64, texts []string, files []*source.File) *linter.Result {
	g := &generator{rand.New(rand.NewPCG(seed, 1)), texts, files}
	return g.result()
}

type generator struct {
	*rand.Rand
	texts []string
	files []*source.File
}

func (g *generator) either() bool            { return g.IntN(2) == 0 }
func (g *generator) text() string            { return g.texts[g.IntN(len(g.texts))] }
func (g *generator) few(most int) []struct{} { return make([]struct{}, g.IntN(most+1)) }

func (g *generator) number() float64 {
	return []float64{0, -1, 1e-320, 240, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN(), g.NormFloat64()}[g.IntN(9)]
}

// span is any piece of a file, or no place.
func (g *generator) span() source.Span {
	if g.IntN(5) == 0 {
		return source.Span{}
	}
	f := g.files[g.IntN(len(g.files))]
	start := g.IntN(len(f.Text) + 1)
	end := start + g.IntN(len(f.Text)-start+1)
	return source.Span{File: f, Start: int32(start), End: int32(end)}
}

func (g *generator) places() []schema.Place {
	var all []schema.Place
	for range g.few(3) {
		all = append(all, schema.Place{Span: g.span(), Note: g.text()})
	}
	return all
}

func (g *generator) check(id string) *check.Check {
	c := &check.Check{ID: id, Asks: g.text(), Summary: g.text(), Why: g.text(), How: g.text(), Basis: g.text(), Blind: g.text(), Severity: check.Severity(1 + g.IntN(3)), Off: g.either()}
	for range g.few(2) {
		c.Params = append(c.Params, check.Param{Name: g.text(), Doc: g.text(), Unit: []check.Unit{check.Percent, check.Switch, check.Plain}[g.IntN(3)], Default: g.number(), Low: g.number(), High: g.number(), Basis: g.text()})
		c.Cautions = append(c.Cautions, g.text())
	}
	return c
}

func (g *generator) outcome(c *check.Check) check.Outcome {
	o := check.Outcome{
		Check: c, Verdict: check.Verdict(1 + g.IntN(3)), Severity: check.Severity(g.IntN(4)), Key: g.text(), Message: g.text(),
		Primary: g.span(), Related: g.places(), Identity: g.text(),
	}
	for range g.few(3) {
		o.Subject.Path = append(o.Subject.Path, check.Step{Kind: g.text(), Name: g.text()})
		o.Evidence = append(o.Evidence, check.Evidence{Name: g.text(), Value: g.text(), Number: g.number(), Unit: g.text(), Sum: g.text(), From: g.places()})
		o.Missing = append(o.Missing, analysis.Missing{What: g.text(), Part: g.text(), Where: g.span(), Write: g.text()})
		o.Assumed = append(o.Assumed, g.text())
		r := check.Remedy{Text: g.text(), Sure: check.Certainty(g.IntN(4))}
		for range g.few(3) {
			r.Edits = append(r.Edits, check.Edit{Span: g.span(), New: g.text()})
		}
		o.Remedies = append(o.Remedies, r)
	}
	if g.either() {
		o.Limit = &check.Bound{Text: g.text(), Number: g.number(), Unit: g.text(), AtMost: g.either(), Basis: g.text(), Origin: g.span()}
	}
	return o
}

// agree has some findings accepted, now and then.
func (g *generator) agree(j *linter.Judged) {
	if g.either() {
		return
	}
	j.Design.Deviations = []*schema.Deviation{{}}
	for i := range j.Outcomes {
		if o := &j.Outcomes[i]; o.Verdict == check.Fail && g.either() {
			o.Accepted = &check.Acceptance{Reason: g.text(), By: g.text(), Until: g.text(), Place: g.span()}
		}
	}
}

// compare holds a design against something that was known of it, now and then.
func (g *generator) compare(j *linter.Judged, checks []*check.Check) {
	if g.either() {
		return
	}
	j.Before = &linter.Before{From: g.text(), Unknown: g.either()}
	for i := range j.Outcomes {
		j.Outcomes[i].State = check.State(1 + g.IntN(3))
	}
	for range g.few(3) {
		gone := linter.Gone{Check: checks[g.IntN(2)].ID, Identity: g.text(), Severity: check.Severity(g.IntN(4)), Now: check.Verdict(g.IntN(4))}
		if g.either() {
			then := g.outcome(checks[0])
			gone.Then = &then
		}
		j.Before.Gone = append(j.Before.Gone, gone)
	}
}

func (g *generator) result() *linter.Result {
	r := &linter.Result{Checks: []*check.Check{g.check("a"), g.check("b-c")}}
	for range g.few(3) {
		j := &linter.Judged{Name: g.text()}
		switch g.IntN(4) {
		case 0:
			j.Err = errors.New(g.text())
		case 1:
			j.Problems = []schema.Problem{{Span: g.span(), Found: g.text(), Expected: g.text(), Nearest: g.text(), Related: g.places()}}
		default:
			j.Design = &schema.Design{Name: j.Name, System: &schema.System{}, Files: g.files[:g.IntN(len(g.files)+1)]}
			for range g.few(4) {
				j.Outcomes = append(j.Outcomes, g.outcome(r.Checks[g.IntN(2)]))
			}
			g.agree(j)
			g.compare(j, r.Checks)
			for _, c := range r.Checks {
				j.InForce = append(j.InForce, linter.InForce{Check: c, Limits: check.DefaultLimits(c), Severity: check.Severity(g.IntN(4)), Off: g.either(), Origin: g.span()})
			}
		}
		r.Designs = append(r.Designs, j)
	}
	return r
}
