package textout

import (
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// tally counts answers.
type tally struct {
	pass, errors, warnings, notes, known, accepted, open int
}

func tallyOf(d *linter.Judged) tally {
	var t tally
	for i := range d.Outcomes {
		switch o := &d.Outcomes[i]; o.Verdict {
		case check.Pass:
			t.pass++
		case check.Open:
			t.open++
		case check.Fail:
			switch {
			case o.Accepted != nil:
				t.accepted++
			case o.Known():
				t.known++
			case o.Severity == check.Error:
				t.errors++
			case o.Severity == check.Warning:
				t.warnings++
			default:
				t.notes++
			}
		}
	}
	return t
}

func (t tally) add(more tally) tally {
	return tally{t.pass + more.pass, t.errors + more.errors, t.warnings + more.warnings, t.notes + more.notes, t.known + more.known, t.accepted + more.accepted, t.open + more.open}
}

// findings counts those that nobody accepted and that were not known before.
func (t tally) findings() int { return t.errors + t.warnings + t.notes }
func (t tally) answers() int  { return t.findings() + t.known + t.accepted + t.pass + t.open }

// counts lists what is not zero, gravest first.
func (t tally) counts() string {
	var all []string
	for _, c := range []struct {
		n    int
		text string
	}{
		{t.errors, wording.Counted(t.errors, "error")},
		{t.warnings, wording.Counted(t.warnings, "warning")},
		{t.notes, wording.Counted(t.notes, "note")},
		{t.known, strconv.Itoa(t.known) + " known"},
		{t.accepted, strconv.Itoa(t.accepted) + " accepted"},
		{t.open, strconv.Itoa(t.open) + " open"},
		{t.pass, wording.Counted(t.pass, "pass")},
	} {
		if c.n > 0 {
			all = append(all, c.text)
		}
	}
	if len(all) == 0 {
		return "none"
	}
	return strings.Join(all, ", ")
}

// cleanSentence says of a design without findings what that means, and no more.
func (t tally) cleanSentence() string {
	var text string
	switch {
	case t.answers() == 0:
		return "No check had anything to ask, so nothing can be said."
	case t.known+t.accepted > 0:
		excepted := "accepted by agreement"
		if t.accepted == 0 {
			excepted = "known"
		} else if t.known > 0 {
			excepted = "known or accepted by agreement"
		}
		text = "Nothing fails that was not " + excepted + "; " + wording.Counted(t.pass, "answer") + " " + pick(t.pass, "passes", "pass")
	case t.pass == 0:
		text = "Nothing fails, but nothing could be judged either"
	case t.pass == 1:
		text = "1 answer passes, nothing fails"
	default:
		text = strconv.Itoa(t.pass) + " answers pass, nothing fails"
	}
	if t.open > 0 && t.pass+t.known+t.accepted > 0 {
		text += ", " + strconv.Itoa(t.open) + " cannot be given yet"
	}
	return text + "."
}

// pick chooses between the forms of a verb for one and for several.
func pick(n int, one, several string) string {
	if n == 1 {
		return one
	}
	return several
}
