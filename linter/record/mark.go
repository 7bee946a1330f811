package record

import (
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
)

// Mark says of each outcome of a result whether its finding was known, and lists
// what was known and is found no more. Designs are looked up by the name the
// function gives them. A part that says what it was formerly called keeps what is
// known of it. What from says names the record to people.
func (r *Record) Mark(result *linter.Result, from string, name func(design string) string) {
	for _, j := range result.Designs {
		if j.Understood() {
			mark(j, r.Find(name(j.Name)), from, result.Checks)
		}
	}
}

func mark(j *linter.Judged, d *Design, from string, checks []*check.Check) {
	j.Before = &linter.Before{From: from, Unknown: d == nil}
	if d == nil {
		d = &Design{}
	}
	known := make(map[string]*recorded, len(d.Findings))
	all := make([]recorded, len(d.Findings))
	for i, f := range d.Findings {
		all[i].Finding = f
		known[f.Identity] = &all[i]
	}
	match(j.Outcomes, known, nil)
	if renames := linter.Formerly(j.Design); len(renames) > 0 {
		match(j.Outcomes, known, linter.Identities(j.Outcomes, renames))
	}
	for i := range j.Outcomes {
		j.Outcomes[i].State = stateOf(&j.Outcomes[i])
	}
	for i := range all {
		if r := &all[i]; r.now == nil || r.now.Verdict != check.Fail {
			if gone, ok := goneOf(j, r, checks); ok {
				j.Before.Gone = append(j.Before.Gone, gone)
			}
		}
	}
}

// recorded is a finding that is known, with the outcome of now.
type recorded struct {
	Finding
	now *check.Outcome
}

// match finds the outcomes of findings by their names, or by those they had
// before. Names of now come first: a new part may have the name that another had.
func match(outcomes []check.Outcome, known map[string]*recorded, before []string) {
	for i := range outcomes {
		o := &outcomes[i]
		id := o.Identity
		if before != nil {
			id = before[i]
		}
		if r := known[id]; r != nil && r.now == nil && o.Was == 0 {
			r.now, o.Was = o, r.Severity
		}
	}
}

func stateOf(o *check.Outcome) check.State {
	failed := o.Verdict == check.Fail
	switch {
	case failed && o.Was == 0:
		return check.New
	case failed && o.Was == o.Severity, !failed && o.Was == 0:
		return check.Unchanged
	}
	return check.Changed
}

// goneOf tells what has become of a finding that is none any more. Of a check
// that was not asked nothing can be told; one that exists no more finds nothing.
func goneOf(j *linter.Judged, r *recorded, checks []*check.Check) (linter.Gone, bool) {
	id, _, _ := strings.Cut(r.Identity, ": ")
	gone := linter.Gone{Check: id, Identity: r.Identity, Severity: r.Severity}
	if r.now != nil {
		gone.Now = r.now.Verdict
		return gone, true
	}
	exists := slices.ContainsFunc(slices.Concat(checks, j.Own), func(c *check.Check) bool { return c.ID == id })
	asked := slices.ContainsFunc(j.InForce, func(f linter.InForce) bool { return f.Check.ID == id && !f.Off })
	return gone, asked || !exists
}
