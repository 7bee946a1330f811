package compare

import (
	"slices"

	"loudlint/linter"
	"loudlint/linter/check"
)

// Comparison is what changed from Old to New. The outcomes of New are marked with
// how they stand to those of Old.
type Comparison struct {
	Old, New *linter.Judged
	// OldName and NewName are what people call the two: "hall.pa.hcl at B".
	OldName, NewName string
	Findings         []Finding // in the order of the new design; gone ones at the end
	Figures          []Figure  // that moved, in the order of the new design
	Parts            []Part    // that were added, renamed and removed
}

// Finding is a finding of either design, or of both. One that was accepted by
// agreement is none that counts, and is here all the same.
type Finding struct {
	State State
	// Old and New are the outcomes, whatever their verdict; nil where the question
	// was not asked. Of a finding that is gone with its question, New is what the
	// check answers about the same part otherwise.
	Old, New *check.Outcome
}

// State is what became of a finding.
type State int

// States of findings.
const (
	New       State = iota + 1 // it was none before, or one that had been accepted
	Unchanged                  // as grave as before
	Changed                    // graver or less grave
	Accepted                   // accepted by agreement now
	Gone                       // none any more
)

// String gives "new", "unchanged", "changed", "accepted" or "gone".
func (s State) String() string {
	switch s {
	case New:
		return "new"
	case Unchanged:
		return "unchanged"
	case Changed:
		return "changed"
	case Accepted:
		return "accepted"
	case Gone:
		return "gone"
	}
	return "none"
}

// Compare compares two designs that were judged. It marks the outcomes of the new
// one.
func Compare(before, now *linter.Judged, oldName, newName string) *Comparison {
	c := &Comparison{Old: before, New: now, OldName: oldName, NewName: newName}
	pairing := pairParts(before.Design, now.Design)
	c.Parts = pairing.changes
	c.outcomes(pairing.renames)
	c.Figures = moved(before.System, now.System, linter.SubjectBefore(pairing.renames))
	return c
}

// Count gives how many findings are in a state.
func (c *Comparison) Count(s State) int {
	n := 0
	for _, f := range c.Findings {
		if f.State == s {
			n++
		}
	}
	return n
}

// outcomes pairs outcomes by their names of before.
func (c *Comparison) outcomes(renames []linter.Rename) {
	old := make(map[string]*check.Outcome, len(c.Old.Outcomes))
	for i := range c.Old.Outcomes {
		old[c.Old.Outcomes[i].Identity] = &c.Old.Outcomes[i]
	}
	c.New.Before = &linter.Before{From: c.OldName}
	answered := make(map[*check.Outcome]*check.Outcome, len(old))
	for i, id := range linter.Identities(c.New.Outcomes, renames) {
		o := &c.New.Outcomes[i]
		was := old[id]
		if was != nil {
			answered[was] = o
		}
		mark(o, was)
		if o.Verdict == check.Fail && (o.Accepted == nil || was == nil || was.Counts()) {
			c.Findings = append(c.Findings, Finding{State: stateOf(o), Old: was, New: o})
		}
	}
	asked := func(id string) bool {
		return slices.ContainsFunc(c.New.InForce, func(f linter.InForce) bool { return f.Check.ID == id && !f.Off })
	}
	otherwise := c.otherwise(linter.SubjectBefore(renames))
	for i := range c.Old.Outcomes {
		was := &c.Old.Outcomes[i]
		now := answered[was]
		if !was.Counts() || now != nil && now.Verdict == check.Fail || now == nil && !asked(was.Check.ID) {
			continue
		}
		gone := linter.Gone{Check: was.Check.ID, Identity: was.Identity, Severity: was.Severity, Then: was}
		if now != nil {
			gone.Now = now.Verdict
		}
		c.New.Before.Gone = append(c.New.Before.Gone, gone)
		if now == nil {
			now = otherwise[about(was.Check, was.Subject)]
		}
		c.Findings = append(c.Findings, Finding{State: Gone, Old: was, New: now})
	}
}

// otherwise gives what each check answers about each part where nothing fails: an
// open answer, or else the first. Parts go by their names of before.
func (c *Comparison) otherwise(before func(check.Subject) check.Subject) map[string]*check.Outcome {
	all := make(map[string]*check.Outcome, len(c.New.Outcomes))
	failed := map[string]bool{}
	for i := range c.New.Outcomes {
		o := &c.New.Outcomes[i]
		key := about(o.Check, before(o.Subject))
		switch known := all[key]; {
		case o.Verdict == check.Fail:
			failed[key] = true
		case known == nil || known.Verdict == check.Pass && o.Verdict == check.Open:
			all[key] = o
		}
	}
	for key := range failed {
		delete(all, key)
	}
	return all
}

func about(c *check.Check, s check.Subject) string { return c.ID + ": " + s.String() }

// mark says of an outcome how it stands to that of before.
func mark(o, was *check.Outcome) {
	if was != nil && was.Counts() {
		o.Was = was.Severity
	}
	failed := o.Verdict == check.Fail
	switch {
	case was == nil, failed && o.Counts() && o.Was == 0:
		o.State = check.New
	case was.Verdict == o.Verdict && was.Severity == o.Severity:
		o.State = check.Unchanged
	default:
		o.State = check.Changed
	}
}

func stateOf(o *check.Outcome) State {
	switch {
	case o.Accepted != nil:
		return Accepted
	case o.Was == 0:
		return New
	case o.Was == o.Severity:
		return Unchanged
	}
	return Changed
}
