// Package wording owns how names and numbers are put into English sentences, so
// that the same thing reads the same in every message. It knows nothing of the
// dialect or the trade and may be imported by anything in the project.
package wording

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Counted counts things: "1 line", "3 lines".
func Counted(n int, noun string) string {
	if n != 1 {
		noun = Plural(noun)
	}
	return strconv.Itoa(n) + " " + noun
}

// Plural is the word for several things.
func Plural(noun string) string {
	switch {
	case noun == "music":
		return "music sources"
	case strings.HasSuffix(noun, "ch") || strings.HasSuffix(noun, "s"):
		return noun + "es"
	case strings.HasSuffix(noun, "ly"):
		return strings.TrimSuffix(noun, "y") + "ies"
	}
	return noun + "s"
}

// Listed joins with commas, and the last with a word: "W, mW or kW".
func Listed(all []string, word string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	last := len(all) - 1
	return strings.Join(all[:last], ", ") + " " + word + " " + all[last]
}

// WithArticle puts "a" or "an" before a name by its sound: an XLR 3, a DIN 5.
func WithArticle(name string) string {
	first, size := utf8.DecodeRuneInString(name)
	second, _ := utf8.DecodeRuneInString(name[size:])
	spelled := unicode.IsUpper(first) && (unicode.IsUpper(second) || unicode.IsDigit(second))
	switch {
	case spelled && strings.ContainsRune("AEFHILMNORSX", first),
		!spelled && strings.ContainsRune("aeiouAEIOU8", first):
		return "an " + name
	}
	return "a " + name
}

// Capital lets a sentence begin with a capital letter.
func Capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 || first == utf8.RuneError {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// OneLine brings a text to one line, with single spaces between its words.
func OneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// Sentence gives a text a capital letter, and a full stop where it has no other
// end.
func Sentence(text string) string {
	text = Capital(strings.TrimSpace(text))
	if text == "" || strings.HasSuffix(text, ".") || strings.HasSuffix(text, "?") || strings.HasSuffix(text, "!") {
		return text
	}
	return text + "."
}
