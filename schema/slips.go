package schema

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/source"
)

// explainSyntax says what is wrong with a text that was refused before or by
// the parser. The parser gives up at its first error; this finds the usual
// slips of people who never programmed, all of them, and mends them in a copy.
// The copy is parsed, so that the rest of the file is checked too; its places
// are turned back into those of the text as it was written.
//
// A body that comes back nil tells that the text could not be mended: then
// nothing may be concluded from what the file seems not to hold.
func explainSyntax(file *source.File, refused Problem) syntax {
	s := syntax{file: file, problems: []Problem{refused}, partial: true}
	if _, ok := boundEncoding(file); !ok || len(file.Text) > MaxFileBytes {
		return s
	}
	m := newMender(file)
	m.read()
	for range maxMendings {
		s.mended = mend(file.Text, slices.Clone(m.edits))
		if m.hopeless {
			break
		}
		copied := source.NewFile(file.Name, s.mended.text)
		if _, ok := boundText(copied); !ok {
			break
		}
		parsed, diags := hclsyntax.ParseConfig(copied.Text, file.Name, hcl.InitialPos)
		if !diags.HasErrors() {
			s.body, _ = parsed.Body.(*hclsyntax.Body)
			break
		}
		if !m.spoil(s.mended, diags) {
			break
		}
	}
	if len(m.problems) > 0 {
		s.problems = m.problems
	}
	s.partial = m.partial || s.body == nil
	return s
}

// maxMendings bounds how often a text is mended and parsed again.
const maxMendings = 8

// mender goes through a text once, item by item, and notes what is wrong and
// how the parser could read it all the same.
type mender struct {
	file     *source.File
	text     []byte
	scan     slipScanner
	line     []slipToken // of the line being read
	at       int         // the next one of them
	open     []openBlock
	values   []slipToken // where values stand, as far as they seem sound
	missing  int         // closing braces that the file lacks as a whole
	surplus  int         // closing braces that it has too many
	closed   int         // how far in the last block that was closed stands
	problems []Problem
	edits    []edit
	name     string // of the value read last
	kind     string // of the block that begins, where its word says it otherwise
	spoilt   bool   // the value being read makes no sense
	partial  bool   // names may be missing from the copy
	hopeless bool   // the copy would not be what was meant
}

// openBlock is a block whose closing brace has not come yet.
type openBlock struct {
	kind    string
	header  slipToken // from its first word to its brace
	brace   int       // byte after the opening brace
	inset   int       // how far in its line begins
	oneLine bool      // something follows the brace on its line
	inside  []slipToken
	nested  bool // of a block on one line: a block stands inside
	written map[string]slipToken
}

func newMender(file *source.File) *mender {
	return &mender{file: file, text: file.Text, scan: slipScanner{text: file.Text}}
}

func (m *mender) span(start, end int) source.Span {
	start = min(start, len(m.text))
	return source.Span{File: m.file, Start: int32(start), End: int32(min(max(start, end), len(m.text)))}
}

func (m *mender) say(start, end int, found, expected, nearest string) {
	m.problems = append(m.problems, Problem{Span: m.span(start, end), Found: found, Expected: expected, Nearest: nearest})
}

func (m *mender) replace(start, end int, with string) {
	m.edits = append(m.edits, edit{start: start, end: end, with: with})
}

func (m *mender) words(t slipToken) string { return seen(m.text[t.start:t.end]) }

// seen gives a piece of a text without the characters nobody sees.
func seen(text []byte) string {
	return strings.Map(func(r rune) rune {
		switch oddSpace(r) {
		case oddBlank:
			return ' '
		case oddNothing:
			return -1
		default:
			return r
		}
	}, string(text))
}

func (m *mender) token(i int) slipToken { return m.line[min(i, len(m.line)-1)] }

func (m *mender) is(i int, signs ...string) bool {
	t := m.token(i)
	return t.kind == slipSign && slices.Contains(signs, string(m.text[t.start:t.end]))
}

// equals tells that a sign stands for "=", as it is or as other notations have
// it.
func (m *mender) equals(i int) bool { return m.is(i, "=", ":", "==", ":=", "=>", "->") }

// ends tells that nothing more stands on the line.
func (m *mender) ends(i int) bool {
	k := m.token(i).kind
	return k == slipNewline || k == slipEnd || k == slipComment
}

func (m *mender) remark(i int) bool { return m.is(i, "--", ";") }

func (m *mender) top() *openBlock {
	if len(m.open) == 0 {
		return nil
	}
	return &m.open[len(m.open)-1]
}

func (m *mender) oneLine() bool { return len(m.open) > 0 && m.top().oneLine }

func (m *mender) vocabulary() *vocabulary {
	if len(m.open) == 0 {
		return vocabularies()[""]
	}
	return vocabularies()[m.top().kind]
}

func (m *mender) nextLine() {
	m.line = m.scan.line(m.line[:0])
	m.at = 0
}

// cut ends token i at a place and reads the rest of the line from there again.
func (m *mender) cut(i, end int) {
	m.line[i].end = end
	m.scan.at = end
	m.line = m.scan.line(m.line[:i+1])
}

// inset gives how far in the line begins that a place is on.
func (m *mender) inset(at int) int {
	start := at
	for start > 0 && m.text[start-1] != '\n' && m.text[start-1] != '\r' {
		start--
	}
	for at = start; at < len(m.text) && (m.text[at] == ' ' || m.text[at] == '\t'); at++ {
	}
	return at - start
}

// read goes through the whole text.
func (m *mender) read() {
	m.balance()
	m.scan.at = 0
	m.nextLine()
	for len(m.problems) < MaxProblems {
		switch t := m.token(m.at); t.kind {
		case slipEnd:
			m.endOfFile()
			return
		case slipNewline:
			m.nextLine()
		case slipComment:
			m.at++
		default:
			m.item()
		}
	}
	m.hopeless = true
}

// balance counts braces, and deals with what can be told without knowing what
// stands where: characters nobody sees, and faults inside of quotes.
//
//nolint:gocognit // a scanner is one switch over what it meets
func (m *mender) balance() {
	var odd []slipToken
	var returns []int
	opened, closed := 0, 0
	for at := 0; at < len(m.text); {
		r, size := utf8.DecodeRune(m.text[at:])
		if oddSpace(r) == notOdd && r != '\r' {
			at += max(1, size)
			continue
		}
		if r == '\r' {
			if at+1 == len(m.text) || m.text[at+1] != '\n' {
				returns = append(returns, at)
				m.replace(at, at+1, "\n")
			}
		} else {
			odd = append(odd, slipToken{start: at, end: at + size})
		}
		at += size
	}
	if len(returns) > 0 {
		found := "A line of this file ends in a way that only very old programs know."
		if n := len(returns); n > 1 {
			found = fmt.Sprintf("%d lines of this file end in a way that only very old programs know.", n)
		}
		m.say(returns[0], returns[0]+1, found, "Save it with line endings of Windows or Unix; most editors offer both.", "")
	}
	next := 0
	outside := []slipToken{}
	for {
		m.nextLine()
		for i, t := range m.line {
			for next < len(odd) && odd[next].start < t.end {
				if quoted := (t.kind == slipText || t.kind == slipOddText || t.kind == slipComment) && odd[next].start >= t.start; !quoted {
					outside = append(outside, odd[next])
				}
				next++
			}
			switch {
			case m.is(i, "{"):
				opened++
			case m.is(i, "}"):
				closed++
			case t.kind == slipOpenText:
				content := strings.TrimSpace(string(m.text[t.start:t.end]))
				if strings.HasSuffix(content, "{") {
					opened++
				}
				if strings.HasSuffix(content, "}") {
					closed++
				}
			case t.kind == slipComment && t.broken:
				m.say(t.start, t.start+2, "This comment does not end.", "A comment of one line begins with #; one of several lines ends with */.", "")
				m.replace(t.start, t.start+2, "# ")
			case t.kind == slipText && t.escape > 0:
				m.say(t.escape, t.escape+1, "A backslash stands in this text.", "Paths are written with /. A backslash itself is written twice.", "")
				m.replace(t.escape, t.escape+1, `\\`)
			case t.kind == slipText && t.broken:
				m.say(t.template, t.template+2, fmt.Sprintf("%q opens a template that does not end before the text does.", m.text[t.template:t.template+2]), "A template ends with a brace.", "${given.bay}")
				m.replace(t.template, t.template+1, strings.Repeat(string(m.text[t.template]), 2))
			}
		}
		if m.token(len(m.line)).kind == slipEnd {
			break
		}
	}
	m.missing, m.surplus = max(0, opened-closed), max(0, closed-opened)
	m.unseen(outside)
}

// unseen reports, once, all characters outside of quotes that look like a space
// or like nothing.
func (m *mender) unseen(odd []slipToken) {
	if len(odd) == 0 {
		return
	}
	const most = 5
	var related []Place
	for i, t := range odd {
		r, _ := utf8.DecodeRune(m.text[t.start:])
		with := ""
		if oddSpace(r) == oddBlank {
			with = " "
		}
		m.replace(t.start, t.end, with)
		if i > 0 && i <= most {
			related = append(related, Place{m.span(t.start, t.end), "here too"})
		}
	}
	r, _ := utf8.DecodeRune(m.text[odd[0].start:])
	found := fmt.Sprintf("An invisible character stands here (U+%04X).", r)
	if oddSpace(r) == oddBlank {
		found = fmt.Sprintf("What looks like a space here is another character (U+%04X).", r)
	}
	if more := len(odd) - 1; more > 0 {
		found = strings.TrimSuffix(found, ".") + fmt.Sprintf(", and in %d more places.", more)
	}
	p := Problem{Span: m.span(odd[0].start, odd[0].end), Found: found, Expected: "Word processors and web pages put such characters in. Type a space instead, or remove it.", Related: related}
	m.problems = append(m.problems, p)
}

// item reads what begins at the next token: a value, the first line of a block,
// a closing brace, or something else.
func (m *mender) item() {
	t := m.token(m.at)
	switch {
	case m.is(m.at, "}"):
		m.closeBrace()
	case m.is(m.at, ",") || m.is(m.at, ";") && (m.ends(m.at+1) || m.is(m.at+1, "}")):
		m.say(t.start, t.end, fmt.Sprintf("A %s stands here.", signName(m.words(t))), "Each value, and each block, begins on a line of its own; nothing else parts them.", "")
		m.replace(t.start, t.end, "")
		m.at++
	case m.remark(m.at), m.is(m.at, "'", "’", "*", "•", "·", "<!", "%", "//") && !m.bullet():
		m.comment()
	case m.bullet():
		m.say(t.start, t.end, fmt.Sprintf("%q stands before a name.", m.words(t)), "Values and blocks begin with a word.", "")
		m.replace(t.start, t.end, "")
		m.at++
	case t.kind == slipWord:
		m.wordItem()
	case (t.kind == slipText || t.kind == slipOddText) && m.quotedName():
	default:
		m.stray()
	}
}

func signName(sign string) string {
	switch sign {
	case ",":
		return "comma"
	case ";":
		return "semicolon"
	}
	return "sign"
}

// bullet tells a dash or star before an item, as in lists people write.
func (m *mender) bullet() bool {
	return m.is(m.at, "-", "–", "—", "*", "•", "·", "+", "@") && m.token(m.at+1).kind == slipWord && (m.equals(m.at+2) || m.brace(m.at+1) > 0)
}

// comment turns the rest of the line into a comment.
func (m *mender) comment() {
	t := m.token(m.at)
	m.say(t.start, t.end, fmt.Sprintf("%q begins no comment.", m.words(t)), "A comment begins with #.", "# "+m.restOfLine(t.end))
	m.replace(t.start, t.end, "#")
	m.skipLine()
}

func (m *mender) restOfLine(from int) string {
	m.scan.at = from
	return strings.TrimSpace(seen(m.text[from:m.scan.endOfLine()]))
}

// skipLine goes to the line ending.
func (m *mender) skipLine() {
	m.at = len(m.line) - 1
	m.scan.at = m.line[m.at].end
}

// quotedName reads an item whose name stands in quotes.
func (m *mender) quotedName() bool {
	t := m.token(m.at)
	name := strings.Trim(m.words(t), "\"“”„«»‘’'`´ ")
	if name == "" || wordLength([]byte(name)) != len(name) || !(m.equals(m.at+1) || m.brace(m.at) > 0) {
		return false
	}
	_, first := utf8.DecodeRune(m.text[t.start:])
	_, last := utf8.DecodeLastRune(m.text[:t.end])
	m.say(t.start, t.end, fmt.Sprintf("%s stands in quotes.", name), "Only texts, figures with a unit, and names that you give stand in quotes.", name)
	m.replace(t.start, t.start+first, "")
	m.replace(t.end-last, t.end, "")
	m.line[m.at] = slipToken{kind: slipWord, start: t.start + first, end: t.end - last}
	m.wordItem()
	return true
}

// brace finds the opening brace of a header that begins with token i; 0 when
// none comes before an equals sign or the end of the line.
func (m *mender) brace(i int) int {
	for i++; !m.ends(i) && !m.equals(i) && !m.is(i, "[", "(", "}", ",") && !m.remark(i); i++ {
		if m.is(i, "{") {
			return i
		}
		if t := m.token(i); t.kind == slipOpenText {
			if strings.HasSuffix(strings.TrimRight(string(m.text[t.start:t.end]), " \t{"), "\"") || strings.HasSuffix(strings.TrimRight(string(m.text[t.start:t.end]), " \t"), "{") {
				return i
			}
			return 0
		}
	}
	return 0
}

// wordItem reads an item that begins with a word.
func (m *mender) wordItem() {
	first := m.at
	name := m.words(m.token(first))
	v := m.vocabulary()
	block, isBlock := knownBlock(name)
	isBlock = isBlock && (v.holds(block) || !v.says(name))
	run := first + 1 // the first token that is no word
	for m.token(run).kind == slipWord {
		run++
	}
	if m.brace(first) > 0 && m.spacedBlock(run) {
		return
	}
	switch {
	case m.equals(first+1) && isBlock && m.equalsBeforeHeader(first):
		m.header()
	case m.equals(first + 1):
		m.attribute()
	case m.is(first+1, "{") && !isBlock && anyAttribute(name):
		m.missingEquals()
	case m.brace(first) > 0 && (isBlock || !v.says(name) || v.free):
		m.header()
	case m.equals(run):
		m.spacedName(run)
	case isBlock && (m.braceNext() || m.token(first+1).kind == slipText || m.token(first+1).kind == slipOpenText || m.token(first+1).kind == slipWord || m.token(first+1).kind == slipNumber):
		m.header()
	case v.says(name) || anyAttribute(name):
		m.missingEquals()
	case m.braceNext():
		m.header()
	case m.token(first+1).kind == slipText && m.ends(first+2):
		m.missingEquals()
	default:
		m.stray()
	}
}

// spacedBlock reads a block whose kind was written with a space: mute link.
func (m *mender) spacedBlock(run int) bool {
	if run < m.at+2 {
		return false
	}
	first, second := m.token(m.at), m.token(m.at+1)
	kind, known := knownBlock(m.words(first) + "_" + m.words(second))
	if !known {
		return false
	}
	m.say(first.start, second.end, fmt.Sprintf("A space stands inside %s %s.", m.words(first), m.words(second)), "The kind of a block is one word; _ stands for the space.", kind)
	m.replace(first.end, second.start, "_")
	m.line = slices.Delete(m.line, m.at+1, m.at+2)
	m.line[m.at].end = second.end
	m.kind = kind
	m.header()
	return true
}

// equalsBeforeHeader tells a header with an equals sign in it: line = "North" {.
func (m *mender) equalsBeforeHeader(first int) bool {
	k := m.token(first + 2).kind
	return m.is(first+2, "{") && m.vocabulary().holds(m.words(m.token(first))) || (k == slipText || k == slipOddText) && m.is(first+3, "{")
}

// braceNext tells that the next thing after this line is an opening brace.
func (m *mender) braceNext() bool {
	s := slipScanner{text: m.text, at: m.line[len(m.line)-1].end}
	for {
		switch t := s.next(); t.kind {
		case slipNewline, slipComment:
		case slipSign:
			return string(m.text[t.start:t.end]) == "{"
		default:
			return false
		}
	}
}

// spacedName reads a value whose name was written with spaces or dashes.
func (m *mender) spacedName(equals int) {
	first, last := m.token(m.at), m.token(equals-1)
	parts := []string{}
	for i := m.at; i < equals; i++ {
		parts = append(parts, m.words(m.token(i)))
	}
	joined := strings.Join(parts, "_")
	v := m.vocabulary()
	near := ""
	if v != nil {
		near = nearest(joined, slices.Sorted(mapKeys(v.attributes)))
	}
	if near == "" && anyAttribute(joined) {
		near = joined
	}
	if near == "" { // rather the value of the first word without its equals sign
		m.missingEquals()
		return
	}
	m.say(first.start, last.end, fmt.Sprintf("A space stands inside the name %s.", strings.Join(parts, " ")), "Names of values are one word; _ stands for the space.", near)
	m.replace(first.start, last.end, near)
	m.line[m.at] = slipToken{kind: slipWord, start: first.start, end: last.end}
	m.line = append(m.line[:m.at+1], m.line[equals:]...)
	m.finishAttribute(first, near)
}

func mapKeys(m map[string]string) func(yield func(string) bool) {
	return func(yield func(string) bool) {
		for k := range m {
			if !yield(k) {
				return
			}
		}
	}
}

// attribute reads name, equals sign and value.
func (m *mender) attribute() {
	name := m.token(m.at)
	m.finishAttribute(name, m.words(name))
}

// finishAttribute reads on from the name, which is the next token.
func (m *mender) finishAttribute(at slipToken, name string) {
	sign := m.token(m.at + 1)
	m.at += 2
	if m.is(m.at-1, "=") {
		m.statement(at, name)
		return
	}
	said := len(m.problems)
	m.say(sign.start, sign.end, fmt.Sprintf("%q stands between %s and its value.", m.words(sign), name), "Between a name and its value stands =.", "")
	m.replace(sign.start, sign.end, "=")
	from := m.token(m.at).start
	m.statement(at, name)
	m.rightForm(said, name, from)
}

// rightForm completes a problem about a value with what should stand there.
// Where its text is wrong too, the right form of that is known by now.
func (m *mender) rightForm(said int, name string, from int) {
	value := ""
	if len(m.values) > 0 && m.values[len(m.values)-1].start == from {
		v := m.values[len(m.values)-1]
		value = strings.TrimSpace(seen(m.text[v.start:v.end]))
	}
	if len(m.problems) > said+1 && int(m.problems[said+1].Span.Start) == from {
		value = m.problems[said+1].Nearest
	}
	if value != "" {
		m.problems[said].Nearest = name + " = " + value
	}
}

// missingEquals reads a value that follows its name at once.
func (m *mender) missingEquals() {
	name := m.token(m.at)
	m.at++
	if m.ends(m.at) || m.is(m.at, "}") {
		m.noValue(name, " =")
		m.endItem(name.start, name.end)
		return
	}
	from, said := m.token(m.at).start, len(m.problems)
	m.say(name.start, name.end, fmt.Sprintf("No equals sign stands between %s and its value.", m.words(name)), "Between a name and its value stands =.", "")
	m.replace(name.end, name.end, " =")
	m.statement(name, m.words(name))
	m.rightForm(said, m.words(name), from)
}

func (m *mender) noValue(name slipToken, before string) {
	m.say(name.start, name.end, fmt.Sprintf("%s has no value.", m.words(name)), "What is not known is left out altogether: remove the line, or write the value.", "")
	at := m.token(m.at - 1).end
	m.edits = append(m.edits, edit{start: at, end: at, with: before + " 0", spoiled: true})
}

// statement reads the value of a name, and what follows it on the line.
func (m *mender) statement(at slipToken, name string) {
	if m.ends(m.at) || m.is(m.at, "}") {
		m.noValue(slipToken{start: at.start, end: at.end}, "")
		m.endItem(at.start, at.end)
		return
	}
	start := m.token(m.at).start
	m.name = name
	end := m.value(name, 0)
	m.values = append(m.values, slipToken{start: start, end: end})
	if m.spoilt {
		m.spoilt = false
		m.spoilValue(start, end)
	}
	if b := m.top(); b == nil || b.written != nil {
		written := m.writtenHere()
		if before, twice := written[name]; twice {
			m.problems = append(m.problems, Problem{
				Span: m.span(at.start, at.end), Found: fmt.Sprintf("%s stands here a second time.", name),
				Expected: "Each value of a block is written once.", Related: []Place{{m.span(before.start, before.end), "the first time"}},
			})
			m.replace(at.start, end, "")
		} else {
			written[name] = at
		}
	}
	m.endItem(at.start, end)
}

// writtenHere gives the names of values written so far in the innermost block.
func (m *mender) writtenHere() map[string]slipToken {
	if b := m.top(); b != nil {
		return b.written
	}
	return map[string]slipToken{} // a value outside any block is refused whatever it is
}

// endItem looks at what follows an item, which stands from start to end, on its
// line.
func (m *mender) endItem(start, end int) {
	if m.oneLine() {
		m.top().inside = append(m.top().inside, slipToken{start: start, end: end})
	}
	m.follow(start, end)
}

func (m *mender) follow(start, end int) {
	if m.at == 0 {
		return // the item ended on a line before
	}
	for m.token(m.at).kind == slipComment {
		m.at++
	}
	t := m.token(m.at)
	switch {
	case t.kind == slipEnd || t.kind == slipNewline:
		if m.oneLine() {
			m.beginsBesideBrace()
		}
	case m.is(m.at, "}"):
		if !m.oneLine() && len(m.open) > 0 {
			b := m.top()
			m.say(t.start, t.end, fmt.Sprintf("The closing brace of this %s stands on a line with something else.", b.kind), "The closing brace of a block over several lines stands on a line of its own.", "")
			m.replace(t.start, t.start, "\n")
		}
	case m.is(m.at, ","):
		m.afterComma(start, end)
	case m.is(m.at, ";"):
		m.afterSemicolon(start, end)
	case m.is(m.at, "--"):
		m.comment()
	case m.is(m.at, ")", "]"):
		m.say(t.start, t.end, fmt.Sprintf("%s closes nothing.", m.words(t)), "Each closing bracket has an opening one before it.", "")
		m.replace(t.start, t.end, "")
		m.at++
		m.follow(start, end)
	case m.oneLine():
		m.replace(end, t.start, "\n") // said when the block is closed
	default:
		m.say(t.start, t.end, "Something more stands on this line.", "Each value, and each block, begins on a line of its own.", "")
		m.replace(t.start, t.start, "\n")
	}
}

func (m *mender) afterComma(start, end int) {
	t, next := m.token(m.at), m.token(m.at+1)
	statement := strings.TrimSpace(seen(m.text[start:end]))
	switch {
	case m.ends(m.at+1) || m.is(m.at+1, "}"):
		b := m.top()
		switch {
		case strings.Contains(statement, "\n"):
			m.say(t.start, t.end, "A comma stands after a brace.", "Blocks stand one below the other, without commas.", "")
		case b == nil || len(b.inside) < 2: // else the comma goes with the rest of the line
			m.say(t.start, t.end, "A comma stands after the value.", "Values stand one below the other, without commas.", statement)
		}
		m.replace(t.start, t.end, "")
		m.at++
		m.follow(start, end)
	case (next.kind == slipText || next.kind == slipNumber) && !m.equals(m.at+2) && len(m.values) > 0 && m.sound(m.at+1):
		m.looseList(start, end)
	default:
		if !m.oneLine() {
			m.say(t.start, t.end, "A comma stands between two values.", "Values stand one below the other, without commas.", statement+"\n"+m.restOfLine(t.end))
			m.scan.at = m.line[len(m.line)-1].end
		}
		m.replace(t.start, t.end, "\n")
		m.at++
	}
}

// sound tells that a value begins at token i that the parser can read.
func (m *mender) sound(i int) bool {
	_, ok := m.expression(i)
	return ok
}

func (m *mender) afterSemicolon(start, end int) {
	t := m.token(m.at)
	switch {
	case m.ends(m.at+1) || m.is(m.at+1, "}"):
		m.say(t.start, t.end, "A semicolon stands after the value.", "A value ends with its line.", strings.TrimSpace(seen(m.text[start:end])))
		m.replace(t.start, t.end, "")
		m.at++
		m.follow(start, end)
	case m.token(m.at+1).kind == slipWord && (m.equals(m.at+2) || m.brace(m.at+1) > 0):
		if !m.oneLine() {
			m.say(t.start, t.end, "A semicolon stands between two values.", "Values stand one below the other.", strings.TrimSpace(seen(m.text[start:end]))+"\n"+m.restOfLine(t.end))
			m.scan.at = m.line[len(m.line)-1].end
		}
		m.replace(t.start, t.end, "\n")
		m.at++
	default:
		m.comment()
	}
}

// looseList reads the rest of a list that was written without brackets. What
// was read so far is its first item.
func (m *mender) looseList(start, end int) {
	first := &m.values[len(m.values)-1]
	for m.is(m.at, ",") && (m.token(m.at+1).kind == slipText || m.token(m.at+1).kind == slipNumber) && m.sound(m.at+1) {
		next, _ := m.expression(m.at + 1)
		m.at = next
		end = m.line[next-1].end
	}
	if m.takesList(m.name) {
		m.say(first.start, end, "Several values stand here without brackets.", "A list stands in square brackets.", "["+seen(m.text[first.start:end])+"]")
		m.replace(first.start, first.start, "[")
		m.replace(end, end, "]")
	} else {
		m.say(first.start, end, fmt.Sprintf("%s has several values.", m.name), m.expectedOf(m.name), seen(m.text[first.start:first.end]))
		m.spoilValue(first.start, end)
	}
	first.end = end
	if b := m.top(); b != nil && b.oneLine && len(b.inside) > 0 {
		b.inside[len(b.inside)-1].end = end
	}
	m.follow(start, end)
}

// beginsBesideBrace says that a block of several lines begins beside its brace.
func (m *mender) beginsBesideBrace() {
	b := m.top()
	b.oneLine = false
	if len(b.inside) == 0 {
		return
	}
	if last := b.inside[len(b.inside)-1].end; len(b.inside) == 1 && m.missing > 0 && m.endsHere(b.inset) {
		m.say(b.header.start, b.header.end, fmt.Sprintf("This %s is not closed.", b.kind), "A block on one line ends with a } on that line.", strings.TrimSpace(seen(m.text[b.header.start:last]))+" }")
		m.replace(last, last, " }")
		m.open = m.open[:len(m.open)-1]
		m.missing--
		return
	}
	first := b.inside[0]
	m.say(first.start, first.end, "The first value of this block stands on the line of its opening brace.", "Nothing but a comment stands after the opening brace of a block over several lines.", "")
	m.replace(b.brace, b.brace, "\n")
	b.inside = nil
}

// endsHere tells that what comes after this line stands so far out that it is no
// part of a block that begins as far in as said.
func (m *mender) endsHere(inset int) bool {
	s := slipScanner{text: m.text, at: m.line[len(m.line)-1].end}
	for {
		t := s.next()
		if t.kind == slipNewline || t.kind == slipComment {
			continue
		}
		next := m.inset(t.start)
		closes := t.kind == slipSign && string(m.text[t.start:t.end]) == "}"
		return t.kind == slipEnd || next < inset || next == inset && !closes
	}
}

// header reads the first line of a block.
func (m *mender) header() {
	first := m.token(m.at)
	kind := m.words(first)
	if known, ok := knownBlock(kind); ok {
		kind = known
	}
	if m.kind != "" {
		kind, m.kind = m.kind, ""
	}
	m.closeForgotten(kind, first)
	if m.oneLine() {
		m.top().nested = true
	}
	m.at++
	if m.equals(m.at) {
		sign := m.token(m.at)
		next := m.token(m.at + 1)
		m.say(sign.start, sign.end, fmt.Sprintf("An equals sign stands after %s, which begins a block.", kind), "A block begins with its kind, its name in quotes, and a brace.", tidy(kind+" "+strings.TrimSuffix(m.words(next), "{")+" {"))
		m.replace(sign.start, sign.end, "")
		m.at++
	}
	m.labels(kind)
	end := m.token(m.at - 1).end
	assumed := false // the brace
	b := openBlock{kind: kind, header: slipToken{start: first.start, end: end}, inset: m.inset(first.start), written: map[string]slipToken{}}
	switch {
	case m.is(m.at, "{"):
		b.brace = m.token(m.at).end
		m.at++
	case m.ends(m.at) && m.braceNext():
		m.replace(end, end, " {")
		for !m.is(m.at, "{") {
			if m.at++; m.at >= len(m.line) {
				m.nextLine()
			}
		}
		t := m.token(m.at)
		m.say(t.start, t.end, fmt.Sprintf("The opening brace of this %s stands on a line of its own.", kind), "It stands at the end of the first line.", seen(m.text[first.start:end])+" {")
		m.replace(t.start, t.end, "")
		b.brace = t.end
		m.at++
	default:
		m.say(first.start, end, fmt.Sprintf("This %s has no opening brace.", kind), "It stands at the end of the first line.", seen(m.text[first.start:end])+" {")
		m.replace(end, end, " {\n")
		b.brace = end
		assumed = true
		if m.surplus > 0 {
			m.surplus--
		} else {
			m.missing++
		}
	}
	m.open = append(m.open, b)
	for m.token(m.at).kind == slipComment && m.token(m.at+1).kind != slipNewline && m.token(m.at+1).kind != slipEnd {
		m.at++
	}
	switch {
	case m.remark(m.at):
		m.comment()
	case !m.ends(m.at):
		m.top().oneLine = !assumed
	}
}

// labels reads what stands between the kind of a block and its brace.
func (m *mender) labels(kind string) {
	from := m.at
	for i := m.at; ; i++ {
		if t := m.token(i); t.kind == slipOpenText {
			m.closeText(i, "{")
			continue
		}
		if m.ends(i) || m.is(i, "{", "}") || m.remark(i) || i > from && m.beginsItem(i) {
			m.at = i
			break
		}
	}
	if m.at == from {
		return
	}
	t := m.token(from)
	switch all := m.line[from:m.at]; {
	case len(all) == 1 && t.kind == slipOpenText:
		name := quoted(strings.TrimSpace(m.words(t)[1:]))
		m.say(t.start, t.end, "This name has no closing quote.", "The name of a block stands between two straight quotes.", name)
		m.replace(t.end, t.end, `"`)
	case len(all) == 1 && t.kind == slipText:
		if t.template > 0 && !t.broken {
			m.templateInName(t, kind)
		}
	case len(all) == 1 && t.kind == slipOddText:
		m.oddQuotes(t)
	case allOf(all, slipText):
		// said by the decoder
	default:
		last := m.token(m.at - 1)
		written := strings.TrimRight(strings.Join(strings.Fields(seen(m.text[t.start:last.end])), " "), " :")
		name := strings.NewReplacer(`"`, "", "“", "", "”", "").Replace(written)
		found := fmt.Sprintf("The name %s stands without quotes.", written)
		if name != written {
			found = fmt.Sprintf("The quotes round the name %s are not right.", name)
		}
		m.say(t.start, last.end, found, "The name of a block stands between two straight quotes.", quoted(name))
		m.replace(t.start, last.end, quoted(name))
	}
}

func allOf(tokens []slipToken, kind slipKind) bool {
	return !slices.ContainsFunc(tokens, func(t slipToken) bool { return t.kind != kind })
}

func (m *mender) templateInName(t slipToken, kind string) {
	m.say(t.template, t.template+2, fmt.Sprintf("A name of a %s holds %q.", kind, m.text[t.template:t.template+2]), "Names are plain: other blocks refer to them by the same text. Write the name out.", "")
	m.replace(t.start, t.end, strings.NewReplacer("${", "$${", "%{", "%%{").Replace(string(m.text[t.start:t.end])))
	m.partial = true // nobody knows what the name is, so nobody can tell who refers to it
}

// closeForgotten closes blocks before the header of a block that cannot stand in
// them, where the file lacks closing braces.
func (m *mender) closeForgotten(kind string, first slipToken) {
	if m.missing == 0 || len(m.open) == 0 || m.vocabulary() == nil || m.vocabulary().holds(kind) {
		return
	}
	if _, known := knownBlock(kind); !known {
		return
	}
	for depth := range slices.Backward(m.open) {
		outer := ""
		if depth > 0 {
			outer = m.open[depth-1].kind
		}
		if vocabularies()[outer].holds(kind) && len(m.open)-depth <= m.missing {
			for len(m.open) > depth {
				m.notClosed(first.start, m.headerEnd(), "}\n")
			}
			return
		}
	}
}

// headerEnd gives the end of the next token but for those that are no part of a
// header.
func (m *mender) headerEnd() int {
	i := m.at
	for !m.ends(i+1) && !m.is(i+1, "{") {
		i++
	}
	return m.token(i).end
}

// notClosed says that the innermost block is not closed and closes it before
// what stands from at to end, if anything does.
func (m *mender) notClosed(at, end int, with string) {
	b := m.top()
	m.say(b.header.start, b.header.end, fmt.Sprintf("This %s is not closed.", b.kind), "It ends with a } on a line of its own.", "")
	if end > at {
		m.problems[len(m.problems)-1].Related = []Place{{m.span(at, end), "its } seems to be missing before this"}}
	}
	m.replace(at, at, with)
	m.open = m.open[:len(m.open)-1]
	m.missing = max(0, m.missing-1)
}

// closeBrace reads a closing brace.
func (m *mender) closeBrace() {
	t := m.token(m.at)
	inset := m.inset(t.start)
	ownLine := m.at == 0
	if ownLine && m.missing > 0 { // a brace as far in as an outer block closes that one
		for depth := len(m.open) - 2; depth >= 0 && m.open[len(m.open)-1].inset != inset; depth-- {
			if m.open[depth].inset == inset && len(m.open)-1-depth <= m.missing {
				for len(m.open)-1 > depth {
					m.notClosed(t.start, t.end, "}\n")
				}
			}
		}
	}
	if len(m.open) == 0 || ownLine && m.surplus > 0 && m.top().inset != inset && m.closed == inset {
		m.say(t.start, t.end, "This brace closes nothing.", "Remove it, or write the first line of the block that it closes.", "")
		m.replace(t.start, t.end, "")
		m.surplus = max(0, m.surplus-1)
		m.at++
		return
	}
	b := m.open[len(m.open)-1]
	m.open = m.open[:len(m.open)-1]
	m.closed = b.inset
	m.at++
	if b.oneLine && (len(b.inside) > 1 || b.nested && len(b.inside) > 0) {
		m.spread(b, t)
	}
	m.endItem(b.header.start, t.end)
}

// spread says that a block on one line says too much, and how it is written.
func (m *mender) spread(b openBlock, closing slipToken) {
	lines := []string{strings.TrimSpace(seen(m.text[b.header.start:b.brace]))}
	for _, i := range b.inside {
		lines = append(lines, "  "+strings.TrimSpace(seen(m.text[i.start:i.end])))
	}
	lines = append(lines, "}")
	at := b.inside[min(1, len(b.inside)-1)]
	found := "A second value stands in a block on one line."
	if len(b.inside) == 1 {
		found = "A block stands in a block on one line."
	}
	m.say(at.start, at.end, found, "A block on one line holds one value. One that holds more is written over several lines.", strings.Join(lines, "\n"))
	m.replace(b.brace, b.brace, "\n")
	m.replace(closing.start, closing.start, "\n")
}

// endOfFile closes what is still open.
func (m *mender) endOfFile() {
	for len(m.open) > 0 {
		m.notClosed(len(m.text), len(m.text), "\n}")
	}
}

// stray says that a line makes no sense at all.
func (m *mender) stray() {
	t := m.token(m.at)
	depth, end := 0, t.end
	for ; !m.ends(m.at); m.at++ {
		if m.is(m.at, "{") {
			depth++
		} else if m.is(m.at, "}") {
			if depth == 0 && m.oneLine() {
				break
			}
			depth--
		}
		end = m.token(m.at).end
	}
	m.say(t.start, end, "This is neither a value nor the first line of a block.", `A value is written tap = "6 W", the first line of a block line "North" {, and a comment begins with #.`, "")
	if depth != 0 {
		m.hopeless = true
		for ; depth > 0; depth-- {
			m.open = append(m.open, openBlock{kind: "block", header: slipToken{start: t.start, end: end}, brace: end, inset: m.inset(t.start), written: map[string]slipToken{}})
		}
	}
	m.replace(t.start, end, "")
}

// spoil says that the parser refused what seemed sound, in words of our own, and
// takes the values concerned out of the way. It tells whether that can help.
func (m *mender) spoil(copied *mended, diags hcl.Diagnostics) bool {
	helped := false
	for _, d := range diags {
		if d.Severity != hcl.DiagError || d.Subject == nil {
			continue
		}
		start, end := copied.written(d.Subject.Start.Byte, d.Subject.End.Byte)
		i := slices.IndexFunc(m.values, func(v slipToken) bool { return v.start <= start && start <= v.end })
		if i < 0 {
			continue
		}
		v := m.values[i]
		if slices.ContainsFunc(m.edits, func(e edit) bool { return e.spoiled && e.start == v.start && e.end == v.end }) {
			continue
		}
		if !slices.ContainsFunc(m.problems, func(p Problem) bool { return int(p.Span.Start) < v.end && v.start < int(p.Span.End) }) {
			m.unreadable(start, max(end, start+1), "")
		}
		m.spoilValue(v.start, v.end)
		helped = true
	}
	if !helped {
		m.hopeless = true
		if d := firstError(diags); d != nil && len(m.problems) == 0 {
			start, end := copied.written(d.Subject.Start.Byte, d.Subject.End.Byte)
			m.say(start, end, "From here on this file cannot be read.", `A value is written tap = "6 W", the first line of a block line "North" {, and each block ends with }.`, "")
		}
	}
	return helped
}

func firstError(diags hcl.Diagnostics) *hcl.Diagnostic {
	i := slices.IndexFunc(diags, func(d *hcl.Diagnostic) bool { return d.Severity == hcl.DiagError && d.Subject != nil })
	if i < 0 {
		return nil
	}
	return diags[i]
}

func (m *mender) spoilValue(start, end int) {
	m.edits = slices.DeleteFunc(m.edits, func(e edit) bool { return e.start >= start && e.end <= end })
	m.edits = append(m.edits, edit{start: start, end: end, with: "0", spoiled: true})
}

// unreadable says that a value cannot be read.
func (m *mender) unreadable(start, end int, name string) {
	m.say(start, end, fmt.Sprintf("%s cannot be read here.", quoteSource(m.span(start, end))), m.expectedOf(name), "")
}

// pattern is a regular expression that is made when it is first needed: making
// those of this package would take longer than reading a small design without
// slips.
func pattern(text string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(text) })
}

var attachedUnit = pattern(`^([-+]?[0-9]+(?:[./][0-9]+)?)(\pL+)$`)

// tidy gives a text as it would be written: single spaces, and one before a
// unit.
func tidy(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	return attachedUnit().ReplaceAllString(text, "$1 $2")
}

// sortEdits is the order in which edits are carried out.
func sortEdits(a, b edit) int {
	return cmp.Or(cmp.Compare(a.start, b.start), cmp.Compare(a.end, b.end))
}
