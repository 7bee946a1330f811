package textout

import (
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// mostNamed is how many missing things a message names before it counts the
// rest; the properties have them all.
const mostNamed = 3

// Told tells an outcome in a few sentences, for writers whose readers see it in a
// list of results. The first says it all; those that follow give the sums, the
// limit with its basis, what was assumed and the first remedy, or for an open
// outcome what is not stated.
func Told(o *check.Outcome) []string {
	lines := []string{wording.Sentence(o.Message)}
	switch o.Verdict {
	case check.Fail:
		lines = append(lines, reasons(o)...)
	case check.Open:
		lines = append(lines, notStated(o.Missing)...)
	case check.Pass:
	}
	return lines
}

func reasons(o *check.Outcome) []string {
	var lines []string
	for _, e := range o.Evidence {
		if e.Sum != "" {
			lines = append(lines, wording.Sentence(labelled(e.Name, e.Sum)))
		}
	}
	if b := o.Limit; b != nil {
		lines = append(lines, wording.Sentence("Limit: "+b.Says()))
	}
	for _, a := range o.Assumed {
		lines = append(lines, wording.Sentence("Assumed: "+a))
	}
	if len(o.Remedies) > 0 {
		lines = append(lines, wording.Sentence("Put right: "+o.Remedies[0].Text))
	}
	return lines
}

func notStated(all []analysis.Missing) []string {
	var lines []string
	for _, m := range all[:min(len(all), mostNamed)] {
		line := "Not stated: " + m.What
		if m.Part != "" {
			line += " of " + m.Part
		}
		if m.Write != "" {
			line += "; to be written as " + m.Write
		}
		lines = append(lines, wording.Sentence(line))
	}
	if more := len(all) - mostNamed; more > 0 {
		lines = append(lines, "Not stated: "+strconv.Itoa(more)+" more.")
	}
	return lines
}

func labelled(name, text string) string {
	if name == "" {
		return "Sum: " + text
	}
	return name + ": " + text
}
