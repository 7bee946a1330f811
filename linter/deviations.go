package linter

import (
	"slices"

	"loudlint/linter/check"
	"loudlint/schema"
)

// depart marks the failures that deviations accept, and says what each deviation
// comes to. Of two that accept the same failure the first in the design counts;
// the other has met it all the same.
func depart(outcomes []check.Outcome, design *schema.Design, plan []asked, options Options) []*check.Departure {
	departures := make([]*check.Departure, len(design.Deviations))
	for i, part := range design.Deviations {
		d := &check.Departure{Part: part, Today: options.Date}
		departures[i] = d
		d.Check, d.Nearest = checkNamed(part.Name, options.Checks)
		d.Asked = slices.ContainsFunc(plan, func(a asked) bool { return a.check.ID == part.Name && !a.off })
		if absent, nearest, ok := design.Absent(&part.Address); ok {
			d.Absent, d.NearestPart = &absent, nearest
		}
		meet(d, outcomes)
	}
	return departures
}

// checkNamed finds a check, or the name nearest to that of none.
func checkNamed(id string, all []*check.Check) (named *check.Check, nearest string) {
	ids := make([]string, len(all))
	for i, c := range all {
		if c.ID == id {
			return c, ""
		}
		ids[i] = c.ID
	}
	return nil, schema.Nearest(id, ids)
}

// meet holds a deviation against the outcomes.
func meet(d *check.Departure, outcomes []check.Outcome) {
	address := d.Part.Parts()
	var acceptance *check.Acceptance
	if d.Holds() {
		acceptance = d.Acceptance()
	}
	for i := range outcomes {
		o := &outcomes[i]
		if o.Check.ID != d.Part.Name {
			continue
		}
		covered := check.Covers(address, o.Subject)
		switch {
		case o.Verdict == check.Open && covered:
			d.Open++
		case o.Verdict != check.Fail:
		case !covered:
			if len(d.Elsewhere) < check.MostElsewhere {
				if subject := o.Subject.String(); !slices.Contains(d.Elsewhere, subject) {
					d.Elsewhere = append(d.Elsewhere, subject)
				}
			}
		default:
			d.Meets++
			if o.Accepted == nil {
				o.Accepted = acceptance
			}
		}
	}
}
