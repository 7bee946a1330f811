package schema

import (
	"fmt"
	"strings"
)

// badExpression says that what stands where a criterion wants a condition is
// none, and how it would be written where that is clear.
func (m *mender) badExpression(start, end int, written string) {
	near, expected := rewritten(written), "Figures are compared with <, <=, >, >=, == and !=, and joined by && (and), || (or) and ! (not); a number stands in the unit that the name of the figure ends in, or with its unit in quotes."
	if near == written {
		near = ""
	}
	m.say(start, end, fmt.Sprintf("%s cannot be read as a condition.", quoteSource(m.span(start, end))), expected, near)
	m.spoilt = true
}

var (
	wordAnd    = pattern(`\b(?i:and)\b`)
	wordOr     = pattern(`\b(?i:or)\b`)
	wordNot    = pattern(`\b(?i:not)\b\s*`)
	oneEquals  = pattern(`([^<>=!])=([^<>=]|$)`)
	bareAmount = pattern(`([0-9.]+) ?(%|(?:k?W|k?V|m?A|ohm|m|ft|mm2|k?Hz|dBA?|s|min|h|Ah)\b)`)
)

// rewritten puts signs in place of words and of other signs, outside quotes.
func rewritten(written string) string {
	parts := strings.Split(written, `"`)
	for i := 0; i < len(parts); i += 2 {
		p := strings.NewReplacer("=<", "<=", "=>", ">=", "≤", "<=", "≥", ">=", "≠", "!=", "<>", "!=").Replace(parts[i])
		p = wordAnd().ReplaceAllString(p, "&&")
		p = wordOr().ReplaceAllString(p, "||")
		p = wordNot().ReplaceAllString(p, "!")
		p = oneEquals().ReplaceAllString(p, "$1==$2")
		parts[i] = bareAmount().ReplaceAllString(p, `"$1 $2"`)
	}
	return strings.Join(parts, `"`)
}

// closesBelow tells that a text begins with a bracket that is closed on a later
// line, with nothing between that ends a block.
func closesBelow(text []byte) bool {
	depth, lines, quoted := 0, 0, false
	for _, b := range text[:min(len(text), MaxTextBytes)] {
		switch {
		case b == '"':
			quoted = !quoted
		case b == '\n':
			lines++
			quoted = false
		case quoted:
		case b == '(':
			depth++
		case b == ')':
			if depth--; depth == 0 {
				return lines > 0
			}
		case b == '{', b == '}', b == '#':
			return false
		}
	}
	return false
}

// condition passes over one that stands on several lines, in brackets that are
// closed. What else may be wrong inside, the parser tells.
func (m *mender) condition() int {
	start, end := m.token(m.at).start, m.conditionEnd()
	if written := seen(m.text[start:end]); rewritten(written) != written {
		m.badExpression(start, end, written)
	}
	return end
}

func (m *mender) conditionEnd() int {
	last := m.token(m.at).end
	for depth := 0; ; {
		t := m.token(m.at)
		switch {
		case t.kind == slipNewline && depth > 0:
			m.nextLine()
			continue
		case m.ends(m.at), depth == 0 && m.is(m.at, "}"):
			return last
		case m.is(m.at, "("):
			depth++
		case m.is(m.at, ")"):
			depth--
		}
		last = t.end
		m.at++
	}
}
