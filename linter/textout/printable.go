package textout

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
	"golang.org/x/text/width"
)

// Printable makes a text that came from a design safe to print on one line of a
// terminal: whatever could move the cursor, colour, reorder or hide text is
// shown as its code point, such as <U+202E>; line breaks and tabs become
// spaces. Every text of a design goes through it.
func Printable(text string) string {
	if printsAsIs(text) {
		return text
	}
	var b strings.Builder
	for len(text) > 0 {
		r, size := utf8.DecodeRuneInString(text)
		switch {
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&b, "<byte %02X>", text[0])
		case r == '\n' || r == '\r' || r == '\t':
			b.WriteByte(' ')
		case showable(r):
			b.WriteRune(r)
		default:
			fmt.Fprintf(&b, "<U+%04X>", r)
		}
		text = text[size:]
	}
	return b.String()
}

func printsAsIs(text string) bool {
	for i := range len(text) {
		if text[i] < ' ' || text[i] > '~' {
			return strings.IndexFunc(text, func(r rune) bool { return !showable(r) }) < 0 && utf8.ValidString(text)
		}
	}
	return true
}

// showable tells that a character stands for itself. Of the format characters
// only the two joiners do: names in several scripts need them and they reorder
// nothing.
func showable(r rune) bool {
	const zeroWidthNonJoiner, zeroWidthJoiner = '\u200c', '\u200d'
	return unicode.IsPrint(r) || unicode.Is(unicode.Zs, r) || r == zeroWidthNonJoiner || r == zeroWidthJoiner
}

// visibleWidth counts the columns a printable text takes on a terminal.
func visibleWidth(text string) int {
	if isASCII(text) {
		return len(text)
	}
	columns := 0
	for len(text) > 0 {
		size, wide := cluster(text)
		columns += wide
		text = text[size:]
	}
	return columns
}

// cluster measures what a reader sees as the first character of a text that is
// not empty: its bytes, and the columns it takes. Characters of East Asian
// scripts and emoji take two (Unicode Standard Annex 11).
func cluster(text string) (size, columns int) {
	if text[0] < utf8.RuneSelf && (len(text) == 1 || text[1] < utf8.RuneSelf) {
		return 1, 1
	}
	size, _, err := textseg.ScanGraphemeClusters([]byte(front(text, 256)), true)
	if err != nil || size == 0 {
		_, size = utf8.DecodeRuneInString(text)
	}
	columns = 1
	for _, r := range text[:size] {
		const emojiStyle = '\ufe0f'
		if k := width.LookupRune(r).Kind(); k == width.EastAsianWide || k == width.EastAsianFullwidth || r == emojiStyle {
			columns = 2
		}
	}
	return size, columns
}

// front gives at most so many bytes of the front of a text, to the end of a
// character. It keeps measuring linear where a text is one endless cluster.
func front(text string, most int) string {
	if len(text) <= most {
		return text
	}
	for !utf8.RuneStart(text[most]) {
		most--
	}
	return text[:most]
}

func isASCII(text string) bool {
	for i := range len(text) {
		if text[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// shorten cuts a printable text to a number of columns and marks the cut.
func shorten(text string, columns int) string {
	if visibleWidth(text) <= columns {
		return text
	}
	const mark = "..."
	at, used := 0, len(mark)
	for at < len(text) {
		size, wide := cluster(text[at:])
		if used+wide > columns {
			break
		}
		at, used = at+size, used+wide
	}
	return strings.TrimRight(text[:at], " ") + mark
}
