package markdown

import (
	"strings"

	"loudlint/linter/textout"
	"loudlint/schema/wording"
)

// special are the characters that a backslash takes the meaning from, wherever
// they stand. Pipes part the cells of a table; the at sign and a dollar make
// links and formulas in some dialects of Markdown.
const special = "\\`*_[]<>|~&@$#"

// escape makes a text stand for itself, in one line, behind other text.
func escape(text string) string { return escaped(text, false) }

// escapeFirst makes it stand for itself where a line or the point of a list
// begins with it.
func escapeFirst(text string) string { return escaped(text, true) }

func escaped(text string, first bool) string {
	text = wording.OneLine(textout.Printable(text))
	var b strings.Builder
	for i := range len(text) {
		c := text[i]
		if strings.IndexByte(special, c) >= 0 || first && opens(text, i) || links(text, i) {
			b.WriteByte('\\')
		}
		b.WriteByte(c)
	}
	return b.String()
}

// opens tells that a character at the beginning would open a list or a rule.
func opens(text string, at int) bool {
	switch text[at] {
	case '+', '-', '=':
		return at == 0
	case '.', ')':
		return at > 0 && strings.Trim(text[:at], "0123456789") == ""
	}
	return false
}

// links tells that a character is the one without which no address is found in
// running text: the colon of http:// and the first stop of www.
func links(text string, at int) bool {
	switch text[at] {
	case ':':
		return strings.HasPrefix(text[at:], "://") || strings.HasPrefix(strings.ToLower(text[max(0, at-6):]), "mailto:") || strings.HasPrefix(strings.ToLower(text[max(0, at-4):]), "xmpp:")
	case '.':
		return at >= 3 && strings.EqualFold(text[at-3:at], "www")
	}
	return false
}

// code sets a piece of a design as it is written. It is not for cells of tables,
// in which a pipe would part it.
func code(text string) string {
	text = wording.OneLine(textout.Printable(text))
	if text == "" {
		return ""
	}
	longest, now := 0, 0
	for i := range len(text) {
		if text[i] != '`' {
			now = 0
			continue
		}
		now++
		longest = max(longest, now)
	}
	fence := strings.Repeat("`", longest+1)
	if longest > 0 {
		text = " " + text + " "
	}
	return fence + text + fence
}
