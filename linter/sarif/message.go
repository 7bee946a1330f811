package sarif

import (
	"strings"

	"loudlint/linter/check"
	"loudlint/linter/textout"
)

// messageOf is what a person reads in a list of results. Its first line says it
// all; the lines that follow tell why and what to do.
func messageOf(o *check.Outcome) string { return strings.Join(textout.Told(o), "\n") }

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
