package textout

import (
	"strconv"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// What the page sums up, for writers of other forms.

// Scope says how far a result goes. It stands in every form that has a place for
// it.
const Scope = "This covers only what the checks ask; it does not replace local codes and licensed practice."

// Counts lists the answers of a design, gravest first: "7 errors, 3 open".
func Counts(d *linter.Judged) string { return countsOf(d.Tally()) }

// Verdict says in one sentence what a result comes to.
func Verdict(d *linter.Judged) string {
	t := d.Tally()
	switch n := t.Findings(); {
	case n == 0:
		return cleanSentence(t)
	case t.Errors > 0:
		return "It does not hold: " + wording.Counted(n, "finding") + ", " + wording.Counted(t.Errors, "error") + " among them."
	default:
		return "It holds with reservations: " + wording.Counted(n, "finding") + ", none of them an error."
	}
}

// OpenPoint is one thing the design does not say.
type OpenPoint struct {
	What    string   // "length of the home run"
	For     string   // the parts it is missing for
	Write   []string // what would be written, each form once
	Answers int      // that wait for it
	Checks  []string // whose answers these are
}

// OpenPoints gives what open answers wait for, that first for which most wait,
// and the open answers that name nothing.
func OpenPoints(d *linter.Judged) ([]OpenPoint, []*check.Outcome) {
	gaps, others := gapsOf(d)
	all := make([]OpenPoint, len(gaps))
	for i, g := range gaps {
		p := OpenPoint{What: g.what, For: partsIn(g.places), Answers: g.answers}
		seen := map[string]bool{}
		for _, m := range g.places {
			if m.Write != "" && !seen[m.Write] && len(seen) < mostAlike {
				seen[m.Write] = true
				p.Write = append(p.Write, m.Write)
			}
		}
		for _, w := range g.waits {
			p.Checks = append(p.Checks, strconv.Itoa(w.outcomes)+" of "+w.check.ID)
		}
		all[i] = p
	}
	return all, others
}

// Cautions gives what to mind on site, each once.
func Cautions(d *linter.Judged) []string {
	all, _ := cautionsOf(d)
	texts := make([]string, len(all))
	for i, c := range all {
		texts[i] = c.text
	}
	return texts
}
