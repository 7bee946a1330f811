package schema

import (
	"bytes"
	"strings"
	"unicode"
	"unicode/utf8"
)

// The parser's own scanner is no help with a text that has slips in it: after a
// missing quote it takes everything up to the next quote, lines away, for text.
// This one goes line by line, as the dialect does, and knows what people type
// by mistake.

type slipKind int

const (
	slipEnd     slipKind = iota // end of the file
	slipNewline                 // end of a line
	slipComment
	slipWord
	slipNumber
	slipText     // a text in straight quotes
	slipOpenText // a straight quote without another one on its line; up to the end of the line
	slipOddText  // a text in quotes of another kind
	slipSign     // anything else
)

// slipToken is a piece of a line.
type slipToken struct {
	kind       slipKind
	start, end int
	escape     int  // of a text: a backslash before something it cannot stand before; 0 for none
	template   int  // of a text: the first template in it; 0 for none
	broken     bool // of a text: its template does not end; of a comment: it does not end
}

// slipScanner makes tokens of one line after the other.
type slipScanner struct {
	text []byte
	at   int
}

// line appends the tokens up to the end of the line that the scanner stands
// on; the last is a slipNewline or the slipEnd.
func (s *slipScanner) line(tokens []slipToken) []slipToken {
	for {
		t := s.next()
		tokens = append(tokens, t)
		if t.kind == slipNewline || t.kind == slipEnd {
			return tokens
		}
	}
}

func (s *slipScanner) next() slipToken {
	s.skipSpace()
	text, at := s.text, s.at
	if at >= len(text) {
		return slipToken{kind: slipEnd, start: len(text), end: len(text)}
	}
	t := slipToken{kind: slipSign, start: at}
	switch r, size := utf8.DecodeRune(text[at:]); {
	case r == '\n' || r == '\r':
		t.kind, t.end = slipNewline, at+1
		if bytes.HasPrefix(text[at:], []byte("\r\n")) {
			t.end++
		}
	case r == '#' || s.has("//"):
		t.kind, t.end = slipComment, s.endOfLine()
	case s.has("/*"):
		t.kind, t.end, t.broken = slipComment, s.endOfLine(), true
		if n := bytes.Index(text[at+2:], []byte("*/")); n >= 0 {
			t.end, t.broken = at+2+n+2, false
		}
	case r == '"' && at > 0 && digits(text[at-1:at]) == 1: // 8" without quotes
		t.end = at + 1
	case r == '"':
		t = s.straightText()
	case s.has("<<"):
		t.end = at + 2
		if end := s.severalLines(); end > 0 {
			t.kind, t.end = slipText, end
		}
	case r >= '0' && r <= '9':
		t.kind, t.end = slipNumber, at+digits(text[at:])
		if t.end+1 < len(text) && text[t.end] == '.' && digits(text[t.end+1:]) > 0 {
			t.end += 1 + digits(text[t.end+1:])
		}
	case wordBegins(r):
		t.kind, t.end = slipWord, at+wordLength(text[at:])
	case s.opensOddText(r):
		t = s.oddText(r, size)
	default:
		t.end = at + size
		for _, sign := range []string{"==", "=>", ":=", "->", "--", "&&", "||", "!=", "<=", ">="} {
			if s.has(sign) {
				t.end = at + len(sign)
			}
		}
	}
	s.at = t.end
	return t
}

func (s *slipScanner) has(prefix string) bool {
	return len(s.text)-s.at >= len(prefix) && string(s.text[s.at:s.at+len(prefix)]) == prefix
}

func (s *slipScanner) skipSpace() {
	for s.at < len(s.text) {
		r, size := utf8.DecodeRune(s.text[s.at:])
		if r != ' ' && r != '\t' && oddSpace(r) == notOdd {
			return
		}
		s.at += size
	}
}

// endOfLine gives the place where the line ends, before its line ending.
func (s *slipScanner) endOfLine() int {
	if n := bytes.IndexAny(s.text[s.at:], "\r\n"); n >= 0 {
		return s.at + n
	}
	return len(s.text)
}

// straightText reads a text in straight quotes.
func (s *slipScanner) straightText() slipToken {
	text, end := s.text, s.endOfLine()
	t := slipToken{kind: slipOpenText, start: s.at, end: end}
	inside := []byte{'"'} // what is open: a text, or a template in it
	for i := s.at + 1; i < end; i++ {
		c := text[i]
		if inside[len(inside)-1] != '"' {
			switch c {
			case '"', '{':
				inside = append(inside, c)
			case '}':
				inside = inside[:len(inside)-1]
			}
			continue
		}
		switch {
		case c == '"':
			if inside = inside[:len(inside)-1]; len(inside) == 0 {
				t.kind, t.end = slipText, i+1
				return t
			}
		case c == '\\':
			if i+1 < end && !strings.ContainsRune(`nrt"\uU`, rune(text[i+1])) && t.escape == 0 {
				t.escape = i
			}
			i++
		case (c == '$' || c == '%') && i+2 < end && text[i+1] == c && text[i+2] == '{':
			i += 2
		case (c == '$' || c == '%') && i+1 < end && text[i+1] == '{':
			if t.template == 0 {
				t.template = i
			}
			inside = append(inside, '{')
			i++
		}
	}
	// A template without an end would take the closing quote with it.
	if n := bytes.IndexByte(text[s.at+1:end], '"'); n >= 0 && t.template > 0 && t.template < s.at+1+n {
		t.kind, t.end, t.broken = slipText, s.at+1+n+1, true
	}
	return t
}

// severalLines gives the end of a text that goes over several lines, from a
// mark such as <<END to the line that holds END alone; 0 when it is none.
func (s *slipScanner) severalLines() int {
	end := s.endOfLine()
	mark := bytes.TrimPrefix(s.text[s.at+2:end], []byte("-"))
	if len(mark) == 0 || wordLength(mark) != len(mark) {
		return 0
	}
	for at := end; at < len(s.text); {
		from := at + 1
		next := bytes.IndexByte(s.text[from:], '\n')
		if next < 0 {
			return 0
		}
		if at = from + next; bytes.Equal(bytes.TrimSpace(s.text[from:at]), mark) {
			return from + len(bytes.TrimRight(s.text[from:at], "\r"))
		}
	}
	return 0
}

// closers are quotes of other kinds, each with what may close it.
func closers(open rune) string {
	switch open {
	case '“', '”', '„', '‟', '«', '»', '″':
		return "“”„‟«»″\""
	case '‘', '’', '‚', '‛', '\'', '`', '´':
		return "‘’‚‛'`´"
	}
	return ""
}

// opensOddText tells quotes from the marks for feet, inches and what is left
// out, which follow a letter or digit.
func (s *slipScanner) opensOddText(r rune) bool {
	if closers(r) == "" {
		return false
	}
	before, _ := utf8.DecodeLastRune(s.text[:s.at])
	return r == '“' || r == '„' || r == '‘' || r == '«' || !unicode.IsLetter(before) && !unicode.IsDigit(before)
}

func (s *slipScanner) oddText(r rune, size int) slipToken {
	end := s.endOfLine()
	t := slipToken{kind: slipSign, start: s.at, end: s.at + size}
	if n := bytes.IndexAny(s.text[t.end:end], closers(r)); n >= 0 {
		_, size = utf8.DecodeRune(s.text[t.end+n:])
		t.kind, t.end = slipOddText, t.end+n+size
	}
	return t
}

func digits(text []byte) int {
	n := 0
	for n < len(text) && text[n] >= '0' && text[n] <= '9' {
		n++
	}
	return n
}

func wordBegins(r rune) bool { return r == '_' || unicode.IsLetter(r) }

// wordLength counts the bytes of a word. Characters that nobody sees do not
// part it.
func wordLength(text []byte) int {
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRune(text[i:])
		goesOn := wordBegins(r) || unicode.In(r, unicode.Nd, unicode.Mn, unicode.Mc, unicode.Pc) || oddSpace(r) == oddNothing
		if r == '-' {
			goesOn = i+1 == len(text) || text[i+1] != '-'
		}
		if !goesOn {
			return i
		}
		i += size
	}
	return len(text)
}

// oddness tells characters that look like a space, or like nothing, from all
// others.
type oddness int

const (
	notOdd oddness = iota
	oddBlank
	oddNothing
)

func oddSpace(r rune) oddness {
	switch {
	case r < utf8.RuneSelf:
		if r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0x7F {
			return oddNothing
		}
		return notOdd
	case unicode.Is(unicode.Zs, r), r == '\u2028', r == '\u2029', r == '\u0085':
		return oddBlank
	case unicode.In(r, unicode.Cf, unicode.Cc):
		return oddNothing
	}
	return notOdd
}
