package sarif

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
)

// mostMissing is how many missing things a message names before it counts the
// rest; the properties have them all.
const mostMissing = 3

// messageOf is what a person reads in a list of results. Its first line says it
// all; the lines that follow tell why and what to do.
func messageOf(o *check.Outcome) string {
	lines := []string{sentence(o.Message)}
	switch o.Verdict {
	case check.Fail:
		lines = append(lines, reasons(o)...)
	case check.Open:
		lines = append(lines, notStated(o.Missing)...)
	case check.Pass:
	}
	return strings.Join(lines, "\n")
}

func reasons(o *check.Outcome) []string {
	var lines []string
	for _, e := range o.Evidence {
		if e.Sum != "" {
			lines = append(lines, sentence(labelled(e.Name, e.Sum)))
		}
	}
	if b := o.Limit; b != nil {
		text := b.Text
		if b.Basis != "" {
			text += "; " + b.Basis
		}
		lines = append(lines, sentence("Limit: "+text))
	}
	for _, a := range o.Assumed {
		lines = append(lines, sentence("Assumed: "+a))
	}
	if len(o.Remedies) > 0 {
		lines = append(lines, sentence("Put right: "+o.Remedies[0].Text))
	}
	return lines
}

func notStated(all []analysis.Missing) []string {
	var lines []string
	for _, m := range all[:min(len(all), mostMissing)] {
		line := "Not stated: " + m.What
		if m.Part != "" {
			line += " of " + m.Part
		}
		if m.Write != "" {
			line += "; to be written as " + m.Write
		}
		lines = append(lines, sentence(line))
	}
	if more := len(all) - mostMissing; more > 0 {
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

// sentence gives a text a capital letter and a full stop where it has none.
func sentence(text string) string {
	text = strings.TrimSpace(text)
	if text == "" {
		return text
	}
	if first, size := utf8.DecodeRuneInString(text); unicode.IsLower(first) {
		text = string(unicode.ToUpper(first)) + text[size:]
	}
	if strings.HasSuffix(text, ".") || strings.HasSuffix(text, "?") || strings.HasSuffix(text, "!") {
		return text
	}
	return text + "."
}

// escaped keeps a text from being taken for more than text: braces would be
// placeholders (3.11.5), and brackets followed by a parenthesis a link (3.11.6).
func escaped(text string) string {
	if strings.ContainsAny(text, "{}") {
		text = strings.NewReplacer("{", "{{", "}", "}}").Replace(text)
	}
	if strings.Contains(text, "](") {
		text = strings.NewReplacer("[", `\[`, "]", `\]`).Replace(text)
	}
	return text
}
