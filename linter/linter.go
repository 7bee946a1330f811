package linter

import (
	"cmp"
	"fmt"
	"iter"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/parallel"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Options of a run.
type Options struct {
	// Checks are asked, in this order.
	Checks []*check.Check
	// Workers bounds goroutines; 0 means as many as there are processors. The
	// result is the same for any number.
	Workers int
	// Folders are places outside a design's folder where used files may lie.
	Folders []string
	// Only names the checks to ask; nil asks all.
	Only []string
	// Specification counts over the criteria of every design; nil when there is
	// none.
	Specification *schema.Specification
	// Date is the day on which deviations are looked at; without one none has
	// expired.
	Date quantity.Date
}

// Result is what a run found in all designs, in the order they were named.
type Result struct {
	Checks  []*check.Check
	Designs []*Judged
}

// Judged is one design with its outcomes, or with what keeps it from being
// judged.
type Judged struct {
	Name string
	// Err says that files could not be read; Problems, that the text is no
	// design. With either, nothing else is set.
	Err      error
	Problems []schema.Problem

	Design *schema.Design
	System *analysis.System
	// Held is the specification it was held against; nil when there was none.
	Held *schema.Specification
	// Own are the checks made of criterions, which are asked after those of the
	// result.
	Own      []*check.Check
	Outcomes []check.Outcome
	// InForce is what holds for each check that was to be asked.
	InForce []InForce
	// Off are checks that criteria turned off, or that answer only when
	// criteria turn them on.
	Off []*check.Check
	// Before is what was known of the design before; nil when nothing was
	// compared.
	Before *Before
}

// Understood tells that the design could be judged.
func (j *Judged) Understood() bool { return j.Err == nil && len(j.Problems) == 0 }

// Gravest is the gravest severity among the findings of the design that have to be
// dealt with, 0 when there is none: those that nobody accepted and that were not
// known before.
func (j *Judged) Gravest() check.Severity {
	var gravest check.Severity
	for i := range j.Outcomes {
		if o := &j.Outcomes[i]; o.Gates() {
			gravest = max(gravest, o.Severity)
		}
	}
	return gravest
}

// Gravest is the gravest severity among the findings of all designs that have to
// be dealt with.
func (r *Result) Gravest() check.Severity {
	var gravest check.Severity
	for _, d := range r.Designs {
		gravest = max(gravest, d.Gravest())
	}
	return gravest
}

// Understood tells that every design could be judged.
func (r *Result) Understood() bool {
	return !slices.ContainsFunc(r.Designs, func(j *Judged) bool { return !j.Understood() })
}

// Check reads and judges the designs at the given paths, several at once, and
// keeps them all.
func Check(paths []string, options Options) *Result {
	return &Result{Checks: options.Checks, Designs: slices.AppendSeq(make([]*Judged, 0, len(paths)), Each(paths, options))}
}

// Each reads and judges the designs at the given paths, several at once, and
// hands them out in that order. It keeps parallel.MostAlive(options.Workers) of
// them at most, so that hundreds need the memory of a few. Designs that may still
// be asked for are judged ahead; leaving the loop early ends that.
func Each(paths []string, options Options) iter.Seq[*Judged] {
	workers := parallel.Workers(options.Workers)
	// Several designs share out the processors among them better than the parts
	// of one do.
	options.Workers = max(1, workers/max(1, len(paths)))
	return func(yield func(*Judged) bool) {
		for _, j := range parallel.InOrder(len(paths), workers, func(i int) *Judged { return read(paths[i], options) }) {
			if !yield(j) {
				return
			}
		}
	}
}

// read reads and judges one design. A mistake of the program that one design
// brings out must not hide what is found in the others.
func read(path string, options Options) (j *Judged) {
	defer func() {
		if mistake := recover(); mistake != nil {
			j = &Judged{Name: path, Err: fmt.Errorf("judge the design %s: a mistake in loudlint itself, please report it with the design: %v", path, mistake)}
		}
	}()
	design, problems, err := schema.Load(path, schema.Options{Folders: options.Folders, Workers: options.Workers})
	if err != nil || len(problems) > 0 {
		return &Judged{Name: path, Err: err, Problems: problems}
	}
	return Judge(design, options)
}

// Judge works out a design and asks the checks of it.
func Judge(design *schema.Design, options Options) *Judged {
	j := &Judged{Name: design.Name, Design: design}
	own, problems := ownChecks(design, options)
	options.Checks = slices.Concat(options.Checks, own)
	var plan []asked
	if len(problems) == 0 {
		plan, problems = planOf(design, options)
	}
	if len(problems) > 0 {
		j.Problems = problems
		j.Design = nil
		return j
	}
	j.Held, j.Own = options.Specification, own
	j.InForce = inForce(plan)
	j.System = analysis.Analyse(design, options.Workers)
	runs := make([]*check.Run, 0, len(plan))
	var last []asked
	for _, p := range plan {
		switch {
		case p.off:
			j.Off = append(j.Off, p.check)
		case p.check.Last:
			last = append(last, p)
		default:
			runs = append(runs, &check.Run{Check: p.check, System: j.System, Limits: p.limits})
		}
	}
	parallel.Do(len(runs), options.Workers, func(i int) { runs[i].Check.Judge(runs[i]) })
	total := 0
	for _, r := range runs {
		total += len(r.Outcomes)
	}
	j.Outcomes = make([]check.Outcome, 0, total) // outcomes are large: growing would copy them again and again
	for i, p := range asking(plan) {
		j.Outcomes = append(j.Outcomes, p.graded(runs[i].Outcomes)...)
	}
	departures := depart(j.Outcomes, design, plan, options)
	for _, p := range last {
		run := &check.Run{Check: p.check, System: j.System, Limits: p.limits, Departures: departures}
		p.check.Judge(run)
		j.Outcomes = append(j.Outcomes, p.graded(run.Outcomes)...)
	}
	j.Outcomes = order(j.Outcomes)
	for i, id := range Identities(j.Outcomes, nil) {
		j.Outcomes[i].Identity = id
	}
	return j
}

// asked is one check with the limits in force for a design.
type asked struct {
	check    *check.Check
	limits   check.Limits
	severity check.Severity // 0: as the check says
	off      bool
	setAt    source.Span // where criteria set severity or off
}

// asking gives those that are asked at once.
func asking(plan []asked) []asked {
	return slices.DeleteFunc(slices.Clone(plan), func(a asked) bool { return a.off || a.check.Last })
}

// graded gives failures the severity that criteria set.
func (a asked) graded(outcomes []check.Outcome) []check.Outcome {
	for i := range outcomes {
		if o := &outcomes[i]; o.Verdict == check.Fail && a.severity != 0 {
			o.Severity, o.SeverityOrigin = a.severity, a.setAt
		}
	}
	return outcomes
}

// order puts outcomes into the one order in which everything is written: by
// place, then check, then subject, then text.
//
// Places are sorted, not outcomes, which are large, and each subject is written
// once: a large design has tens of thousands of outcomes.
func order(all []check.Outcome) []check.Outcome {
	subjects := make([]string, len(all))
	places := make([]int, len(all))
	for i := range all {
		subjects[i], places[i] = all[i].Subject.String(), i
	}
	slices.SortFunc(places, func(i, j int) int {
		a, b := &all[i], &all[j]
		if c := source.Compare(a.Primary, b.Primary); c != 0 {
			return c
		}
		return cmp.Or(
			cmp.Compare(a.Check.ID, b.Check.ID),
			cmp.Compare(subjects[i], subjects[j]),
			cmp.Compare(a.Key, b.Key),
			cmp.Compare(a.Message, b.Message),
			cmp.Compare(i, j),
		)
	})
	ordered := make([]check.Outcome, len(all))
	for n, i := range places {
		ordered[n] = all[i]
	}
	return ordered
}
