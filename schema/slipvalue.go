package schema

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// This file reads the value of a name: what stands after its equals sign, in a
// list or in a table of figures.

// value reads one value and gives where it ends.
func (m *mender) value(name string, depth int) int {
	switch {
	case depth < MaxNesting && m.is(m.at, "["):
		return m.list(name, depth)
	case depth < MaxNesting && m.is(m.at, "{"):
		return m.table(name, depth)
	case m.takes(name) == takesExpression && m.is(m.at, "(") && closesBelow(m.text[m.token(m.at).start:]):
		return m.condition()
	}
	return m.plainValue(name, "")
}

// plainValue reads a value that is neither a list nor a table. Of a text without
// its closing quote, the given signs at its end belong to what encloses it.
func (m *mender) plainValue(name, enclosing string) int {
	first := m.at
	end, ok := m.expression(first)
	if !ok || !m.valueEnds(end) && !(strings.Contains(enclosing, "]") && m.nextText(end)) {
		return m.mendText(name, enclosing)
	}
	m.at = end
	for _, t := range m.line[first:end] {
		m.spoilt = m.spoilt || t.broken // said already
	}
	return m.line[end-1].end
}

// nextText tells that token i is a text that follows another one in a list, with
// nothing but space between.
func (m *mender) nextText(i int) bool {
	before, t := m.token(i-1), m.token(i)
	return before.kind == slipText && (t.kind == slipText || t.kind == slipOddText) && before.end < t.start
}

// expression finds the end of what is a value for the parser.
func (m *mender) expression(i int) (end int, ok bool) {
	for {
		for m.is(i, "-", "!") {
			i++
		}
		if i, ok = m.operand(i); !ok {
			return i, false
		}
		if !m.is(i, "+", "-", "*", "/", "%", "==", "!=", "<", ">", "<=", ">=", "&&", "||", "?", ":") {
			return i, true
		}
		i++
	}
}

func (m *mender) operand(i int) (end int, ok bool) {
	switch t := m.token(i); {
	case t.kind == slipText, t.kind == slipNumber:
		return i + 1, true
	case t.kind == slipWord:
		i++
	case m.is(i, "(", "[", "{"):
		return m.closing(i)
	default:
		return i, false
	}
	for {
		switch k := m.token(i + 1).kind; {
		case m.is(i, ".") && (k == slipWord || k == slipNumber):
			i += 2
		case m.is(i, "[", "("):
			if i, ok = m.closing(i); !ok {
				return i, false
			}
		default:
			return i, true
		}
	}
}

// closing finds the end of a bracket on its line.
func (m *mender) closing(i int) (end int, ok bool) {
	for depth := 0; !m.ends(i); i++ {
		switch {
		case m.is(i, "(", "[", "{"):
			depth++
		case m.is(i, ")", "]", "}"):
			if depth--; depth == 0 {
				return i + 1, true
			}
		}
	}
	return i, false
}

// valueEnds tells that a value can end before token i.
func (m *mender) valueEnds(i int) bool {
	return m.ends(i) || m.remark(i) || m.is(i, "{", "}", "]", ")") || m.is(i, ",") && !m.digitComma(i) || m.beginsItem(i)
}

// digitComma tells a comma inside a number, as in 7,5.
func (m *mender) digitComma(i int) bool {
	before, comma, after := m.token(i-1), m.token(i), m.token(i+1)
	return before.kind == slipNumber && after.kind == slipNumber && before.end == comma.start && comma.end == after.start
}

// beginsItem tells a word that begins the next value or part.
func (m *mender) beginsItem(i int) bool {
	if m.token(i).kind != slipWord {
		return false
	}
	if m.equals(i + 1) {
		return true
	}
	_, known := knownBlock(m.words(m.token(i)))
	return known && m.brace(i) > 0
}

// extent finds the end of what somebody seems to have meant as one value.
func (m *mender) extent(i int, enclosing string) int {
	depth := 0
	for first := i; !m.ends(i) && !m.remark(i); i++ {
		switch {
		case m.token(i).kind == slipOpenText:
			m.closeText(i, enclosing)
		case m.is(i, "(", "[", "{"):
			depth++
		case m.is(i, ")", "]", "}"):
			if depth == 0 {
				return i
			}
			depth--
		case depth == 0 && (m.is(i, ",") && !m.digitComma(i) || i > first && m.beginsItem(i)):
			return i
		}
	}
	return i
}

// closeText decides where a text without its closing quote ends: before signs
// that belong to what encloses it, and before a comment.
func (m *mender) closeText(i int, enclosing string) {
	t := m.token(i)
	from, end := t.start+1, t.end
	for _, mark := range []string{" # ", " // "} {
		if n := strings.Index(string(m.text[from:end]), mark); n >= 0 {
			end = from + n
		}
	}
	enclosing += ","
	if m.oneLine() {
		enclosing += "}"
	}
	for end > from && strings.ContainsRune(" \t"+enclosing, rune(m.text[end-1])) {
		end--
	}
	m.cut(i, end)
}

var (
	inchMark  = pattern(`([0-9]) ?(?:"|″|”|'')`)
	footMark  = pattern(`([0-9]) ?(?:'|′|’)`)
	oddCloser = pattern(`["“”„″«»]+$`)
	pointed   = pattern(`^([-+]?[0-9]+),([0-9]{1,2}|[0-9]{4,})([^0-9,].*)?$`)
)

// mendText reads what should have been a text in straight quotes and says what
// is wrong with it.
func (m *mender) mendText(name, enclosing string) int {
	first := m.at
	m.at = m.extent(first, enclosing)
	if m.at == first {
		return m.noText(name)
	}
	tokens := m.line[first:m.at]
	start, end := tokens[0].start, tokens[len(tokens)-1].end
	written := seen(m.text[start:end])
	quotes := strings.Count(written, `"`)
	opens := strings.HasPrefix(written, `"`)
	switch {
	case m.takes(name) == takesExpression:
		m.badExpression(start, end, written)
	case len(tokens) == 1 && tokens[0].kind == slipOddText:
		m.oddQuotes(tokens[0])
	case len(tokens) >= 2 && quotes == 2 && tokens[0].kind == slipText && tokens[1].kind == slipWord:
		outside := strings.TrimSpace(seen(m.text[tokens[1].start:end]))
		content := tidy(strings.Trim(m.words(tokens[0]), `"`) + " " + outside)
		m.say(tokens[1].start, end, fmt.Sprintf("%s stands outside the quotes.", outside), m.expectedOf(name), quoted(content))
		m.replace(tokens[0].end-1, tokens[0].end, "")
		m.replace(end, end, `"`)
	case m.mendInches(name, start, end, written, quotes, opens):
	case quotes == 1 && opens:
		content := strings.TrimSpace(written[1:])
		if plain := oddCloser().ReplaceAllString(content, ""); plain != content {
			m.say(start, end, "The closing quote of this text is a curly one.", "Texts stand in straight quotes. Word processors curl them: write designs in a plain text editor.", quoted(plain))
			m.replace(start, end, quoted(plain))
			break
		}
		m.say(start, end, "This text has no closing quote.", "A text ends with a straight quote, on the line where it begins.", quoted(content))
		m.replace(end, end, `"`)
	case quotes == 1 && strings.HasSuffix(written, `"`):
		content := tidy(strings.TrimSuffix(written, `"`))
		m.say(start, end, "This text has no opening quote.", "A text begins with a straight quote.", quoted(content))
		m.replace(start, start, `"`)
	case allOf(tokens, slipText) && enclosing == "" && m.takesList(name):
		list := "[" + strings.ReplaceAll(written, `" "`, `", "`) + "]"
		m.say(tokens[1].start, end, "A second text stands here.", "Several texts stand in square brackets, parted by commas.", list)
		m.replace(start, end, list)
	case allOf(tokens, slipText) && enclosing == "":
		m.say(tokens[1].start, end, "A second text stands here.", m.expectedOf(name), "")
		m.spoilt = true
	case opens && quotes >= 3 && strings.HasSuffix(written, `"`):
		content := strings.ReplaceAll(written[1:len(written)-1], `"`, "'")
		m.say(start, end, "Quotes stand inside this text, where they end it.", "Inside a text stand single quotes.", quoted(content))
		m.replace(start, end, quoted(content))
	case quotes > 0 || strings.ContainsAny(written, "“”„«»") || !balanced(written) || strings.HasPrefix(written, "(") || strings.Contains(written, "${") || strings.ContainsRune("+-*/!<>=&|?:", rune(written[len(written)-1])):
		m.unreadable(start, end, name)
		m.spoilt = true
	case m.mendGiven(first, tokens, written):
	default:
		m.bareText(name, start, end, written)
	}
	return end
}

// noText says that something stands where a value should that can be none.
func (m *mender) noText(name string) int {
	t := m.token(m.at)
	if m.ends(m.at) || m.is(m.at, "}", "]", ",") || m.remark(m.at) {
		m.say(t.start, t.end, "Here a value is missing.", m.expectedOf(name), "")
	} else {
		m.unreadable(t.start, t.end, name)
		m.at++
	}
	m.spoilt = true
	return max(t.start, m.lineStart())
}

// lineStart gives where the first token of the line stands.
func (m *mender) lineStart() int { return m.line[0].start }

// balanced tells that each bracket has its other half.
func balanced(text string) bool {
	for _, pair := range []string{"()", "[]", "{}"} {
		if strings.Count(text, pair[:1]) != strings.Count(text, pair[1:]) {
			return false
		}
	}
	return true
}

var leadingNumber = pattern(`^-?[0-9]+(?:\.[0-9]+)?`)

// bareText says that a text stands without quotes.
func (m *mender) bareText(name string, start, end int, written string) {
	if takes := m.takes(name); strings.HasPrefix(takes, "true") || strings.HasPrefix(takes, "a whole number") || strings.HasPrefix(takes, "a number") && !strings.Contains(takes, "{") {
		kind := "a number"
		if strings.HasPrefix(takes, "true") {
			kind = "true or false"
		}
		m.say(start, end, fmt.Sprintf("%s is not %s.", quoteSource(m.span(start, end)), kind), m.expectedOf(name), leadingNumber().FindString(written))
		m.spoilt = true
		return
	}
	content := tidy(written)
	if parts := pointed().FindStringSubmatch(content); parts != nil {
		content = tidy(parts[1] + "." + parts[2] + parts[3])
	}
	m.say(start, end, fmt.Sprintf("%s stands without quotes.", quoteSource(m.span(start, end))), m.expectedQuoted(name), quoted(content))
	if strings.ContainsAny(written, `\`) || strings.Contains(written, ",") {
		m.replace(start, end, quoted(content))
		return
	}
	m.replace(start, start, `"`)
	m.replace(end, end, `"`)
}

// mendInches deals with feet and inches written with marks. Inside quotes an
// inch mark ends the text; without quotes it begins one.
func (m *mender) mendInches(name string, start, end int, written string, quotes int, opens bool) bool {
	inner := written
	if opens {
		inner = inner[1:]
		if quotes >= 3 {
			inner = strings.TrimSuffix(inner, `"`)
		}
	}
	marked := inchMark().MatchString(inner) || !opens && footMark().MatchString(inner)
	if !marked || opens && quotes == 1 || !opens && quotes == 1 && !m.takesLength(name) && !footMark().MatchString(inner) {
		return false
	}
	content := inchMark().ReplaceAllString(inner, "$1 in ")
	content = tidy(footMark().ReplaceAllString(content, "$1 ft "))
	if strings.Contains(content, `"`) {
		return false
	}
	found := fmt.Sprintf("%s stands without quotes, and its marks for feet and inches cannot stand in a text.", written)
	if opens {
		found = "An inch mark stands inside this text, where it ends it."
	}
	m.say(start, end, found, "Inches are written in, and feet ft.", quoted(content))
	m.replace(start, end, quoted(content))
	return true
}

// mendGiven deals with a unit after a given number: given.bay m.
func (m *mender) mendGiven(first int, tokens []slipToken, written string) bool {
	if m.words(tokens[0]) != "given" {
		return false
	}
	middle, ok := m.expression(first)
	if !ok || middle >= first+len(tokens) || m.token(middle).kind != slipWord {
		return false
	}
	from, to, end := tokens[0].start, m.token(middle-1).end, tokens[len(tokens)-1].end
	content := "${" + strings.TrimSpace(seen(m.text[from:to])) + "} " + strings.TrimSpace(seen(m.text[to:end]))
	m.say(from, end, fmt.Sprintf("%s stands without quotes.", written), "A given number is put into a text with a template, and its unit after it.", quoted(content))
	m.replace(from, from, `"${`)
	m.replace(to, to, `}`)
	m.replace(end, end, `"`)
	return true
}

// oddQuotes says that a text stands in quotes of another kind.
func (m *mender) oddQuotes(t slipToken) {
	open, first := utf8.DecodeRune(m.text[t.start:])
	_, last := utf8.DecodeLastRune(m.text[:t.end])
	content := strings.TrimSpace(seen(m.text[t.start+first : t.end-last]))
	kind, expected := "curly quotes", "Texts stand in straight quotes. Word processors curl them: write designs in a plain text editor."
	switch open {
	case '\'', '`', '´':
		kind, expected = "single quotes", "Texts stand in straight double quotes."
	case '«', '»':
		kind, expected = "angled quotes", "Texts stand in straight double quotes."
	}
	m.say(t.start, t.end, fmt.Sprintf("%s stands in %s.", quoteSource(m.span(t.start, t.end)), kind), expected, quoted(content))
	if strings.ContainsAny(content, `"\`) {
		m.replace(t.start, t.end, quoted(content))
		return
	}
	m.replace(t.start, t.start+first, `"`)
	m.replace(t.end-last, t.end, `"`)
}

// takes words what a value of the innermost block takes, as far as that is
// known.
func (m *mender) takes(name string) string {
	if v := m.vocabulary(); v != nil {
		return v.attributes[name]
	}
	return ""
}

func (m *mender) takesList(name string) bool {
	takes := m.takes(name)
	return takes == "" || strings.Contains(takes, "list")
}

// takesLength tells that a value is a length, or may be one.
func (m *mender) takesLength(name string) bool {
	takes := m.takes(name)
	return takes == "" || strings.HasPrefix(takes, "a length")
}

// expectedOf words what should stand as a value of the innermost block.
func (m *mender) expectedOf(name string) string {
	if takes := m.takes(name); takes != "" {
		return fmt.Sprintf("Here stands %s.", takes)
	}
	return "Here stands a number, true or false, or a text in straight quotes."
}

// expectedQuoted words the same for a text that lacks its quotes.
func (m *mender) expectedQuoted(name string) string {
	takes := m.takes(name)
	if takes == "" || strings.ContainsAny(takes, "[{") {
		return "Texts, and figures with their unit, stand in straight quotes."
	}
	return fmt.Sprintf("Here stands %s, in straight quotes.", takes)
}

// quoted writes a text as it stands in a design.
func quoted(text string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`).Replace(text) + `"`
}

// list reads a list in square brackets.
func (m *mender) list(name string, depth int) int {
	opening := m.token(m.at)
	m.at++
	last, parted := opening.end, true
	for {
		t := m.token(m.at)
		switch {
		case t.kind == slipNewline:
			m.nextLine()
		case t.kind == slipComment:
			m.at++
		case m.is(m.at, "--"):
			m.comment()
		case m.is(m.at, "]"):
			m.at++
			return t.end
		case t.kind == slipEnd || m.is(m.at, "}", ")") || m.beginsItem(m.at):
			m.say(opening.start, opening.end, "This list is not closed.", "A list ends with ].", seen(m.text[opening.start:last])+"]")
			m.replace(last, last, "]")
			return last
		case m.is(m.at, ",", ";"):
			if parted || m.is(m.at, ";") {
				m.say(t.start, t.end, fmt.Sprintf("A %s stands here.", signName(m.words(t))), "Between two values of a list stands one comma.", "")
				with := ","
				if parted {
					with = ""
				}
				m.replace(t.start, t.end, with)
			}
			parted = true
			m.at++
		default:
			if !parted {
				m.say(t.start, t.end, "No comma stands before this value.", "The values of a list are parted by commas.", "")
				m.replace(last, last, ",")
			}
			if depth < MaxNesting && m.is(m.at, "[", "{") {
				last = m.value(name, depth+1)
			} else {
				last = m.plainValue(name, "]")
			}
			parted = false
		}
	}
}

// table reads figures for several frequencies, in braces.
func (m *mender) table(name string, depth int) int {
	opening := m.token(m.at)
	m.at++
	last := opening.end
	for {
		t := m.token(m.at)
		switch {
		case t.kind == slipNewline:
			m.nextLine()
		case t.kind == slipComment, m.is(m.at, ","):
			m.at++
		case m.is(m.at, "}"):
			m.at++
			return t.end
		case t.kind == slipEnd || t.kind == slipWord && m.at == 0 && (m.vocabulary().says(m.words(t)) || m.beginsItem(0) && !m.equals(1)):
			m.say(opening.start, opening.end, "These braces are not closed.", "Figures for several frequencies end with }.", "")
			m.replace(last, last, "}")
			m.missing = max(0, m.missing-1)
			return last
		default:
			last = m.entry(name, depth)
		}
	}
}

// entry reads one frequency and its figure.
func (m *mender) entry(name string, depth int) int {
	first := m.at
	i := first
	for !m.ends(i) && !m.equals(i) && !m.is(i, ",", "}") {
		i++
	}
	t := m.token(first)
	if !m.equals(i) || i == first {
		end := max(t.end, m.token(max(first, i-1)).end)
		m.say(t.start, end, fmt.Sprintf("%s has no figure beside it.", quoteSource(m.span(t.start, end))), `Between these braces stand frequencies with their figures, such as "1 kHz" = "50 dBA".`, "")
		m.spoilt = true
		m.at = max(first+1, i)
		return end
	}
	key := m.line[first:i]
	switch written := seen(m.text[t.start:key[len(key)-1].end]); {
	case len(key) == 1 && t.kind == slipOddText:
		m.oddQuotes(t)
	case len(key) > 1 && !strings.Contains(written, `"`):
		m.bareText("", t.start, key[len(key)-1].end, written)
	case len(key) > 1:
		m.unreadable(t.start, key[len(key)-1].end, name)
		m.spoilt = true
	}
	if sign := m.token(i); !m.is(i, "=", ":") {
		m.say(sign.start, sign.end, fmt.Sprintf("%q stands between a frequency and its figure.", m.words(sign)), "Between them stands =.", "")
		m.replace(sign.start, sign.end, "=")
	}
	m.at = i + 1
	if depth < MaxNesting && m.is(m.at, "[", "{") {
		return m.value(name, depth+1)
	}
	return m.plainValue(name, "}")
}
