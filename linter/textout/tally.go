package textout

import (
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/schema/wording"
)

// countsOf lists what is not zero, gravest first.
func countsOf(t linter.Tally) string {
	var all []string
	for _, c := range []struct {
		n    int
		text string
	}{
		{t.Errors, wording.Counted(t.Errors, "error")},
		{t.Warnings, wording.Counted(t.Warnings, "warning")},
		{t.Notes, wording.Counted(t.Notes, "note")},
		{t.Known, strconv.Itoa(t.Known) + " known"},
		{t.Accepted, strconv.Itoa(t.Accepted) + " accepted"},
		{t.Open, strconv.Itoa(t.Open) + " open"},
		{t.Passes, wording.Counted(t.Passes, "pass")},
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
func cleanSentence(t linter.Tally) string {
	var text string
	switch {
	case t.Answers() == 0:
		return "No check had anything to ask, so nothing can be said."
	case t.Known+t.Accepted > 0:
		excepted := "accepted by agreement"
		if t.Accepted == 0 {
			excepted = "known"
		} else if t.Known > 0 {
			excepted = "known or accepted by agreement"
		}
		text = "Nothing fails that was not " + excepted + "; " + wording.Counted(t.Passes, "answer") + " " + pick(t.Passes, "passes", "pass")
	case t.Passes == 0:
		text = "Nothing fails, but nothing could be judged either"
	case t.Passes == 1:
		text = "1 answer passes, nothing fails"
	default:
		text = strconv.Itoa(t.Passes) + " answers pass, nothing fails"
	}
	if t.Open > 0 && t.Passes+t.Known+t.Accepted > 0 {
		text += ", " + strconv.Itoa(t.Open) + " cannot be given yet"
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
