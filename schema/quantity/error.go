package quantity

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Error says why a text is not a quantity of the wanted dimension. Found and
// Expected are phrases that fit after those words; Hint is a phrase of its own
// and may be empty. None of them holds a line break or a control character.
type Error struct {
	Found    string // what stands there, the culprit quoted: `"6 V", which is a voltage`
	Expected string // what would be right: `a power such as "6 W"`
	Hint     string // the right form or the nearest valid one: `write "1.5 m" or "1500 m"`

	// Offset and Length mark the culprit in bytes of the text that was parsed.
	// Length is 0 where something is missing at Offset.
	Offset, Length int
}

// Error gives the whole message as one sentence on one line.
func (e *Error) Error() string {
	sentence := "found " + e.Found + "; expected " + e.Expected
	if e.Hint != "" {
		sentence += "; " + e.Hint
	}
	return sentence
}

// longestQuote bounds the culprit inside a message, in characters.
const longestQuote = 40

// quote shows a piece of the user's text inside a message: escaped, bounded, and
// in single quotes where it holds a double one.
func quote(text string) string {
	if utf8.RuneCountInString(text) > longestQuote {
		text = string([]rune(text)[:longestQuote]) + "…"
	}
	quoted := strconv.Quote(text)
	if strings.Contains(text, `"`) && !strings.Contains(text, "'") {
		return "'" + strings.ReplaceAll(quoted[1:len(quoted)-1], `\"`, `"`) + "'"
	}
	return quoted
}
