package schema

import (
	"bytes"
	"fmt"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/source"
)

// boundText refuses what the HCL parser must not see: it recurses once per
// bracket and per operator, and a Go stack overflow cannot be recovered from;
// numbers of many digits take it minutes. Nearly every file is judged by one
// look at its bytes. A file that holds something unusual is judged by the
// parser's own tokens instead, so that both always see the same text.
func boundText(file *source.File) (Problem, bool) {
	text := file.Text
	if len(text) > MaxFileBytes {
		return Problem{Span: source.Span{File: file}, Found: fmt.Sprintf("This file is %d bytes long.", len(text)), Expected: fmt.Sprintf("At most %d bytes are read.", MaxFileBytes)}, false
	}
	if p, ok := boundEncoding(file); !ok {
		return p, false
	}
	if at := loneReturn(text); at >= 0 {
		return Problem{
			Span:     source.Span{File: file, Start: int32(at), End: int32(at + 1)},
			Found:    "A line of this file ends in a way that only very old programs know.",
			Expected: "Save it with line endings of Windows or Unix; most editors offer both.",
		}, false
	}
	excess, sure := scanDepth(text)
	if !sure {
		excess = tokenDepth(text)
	}
	return excess.problem(file)
}

// boundEncoding refuses bytes that are no text.
func boundEncoding(file *source.File) (Problem, bool) {
	text := file.Text
	if !utf8.Valid(text) {
		at := invalidByte(text)
		p := Problem{
			Span:     source.Span{File: file, Start: int32(at), End: int32(at + 1)},
			Found:    fmt.Sprintf("This file is not saved as UTF-8: the byte %02X here is no letter of it.", text[at]),
			Expected: "Save it again as UTF-8; most editors ask for the encoding under \"Save as\".",
		}
		if bytes.HasPrefix(text, []byte{0xFF, 0xFE}) || bytes.HasPrefix(text, []byte{0xFE, 0xFF}) {
			p.Found = "This file is saved as UTF-16, which some editors call Unicode."
		}
		return p, false
	}
	if at := bytes.IndexByte(text, 0); at >= 0 {
		return Problem{
			Span:     source.Span{File: file, Start: int32(at), End: int32(at + 1)},
			Found:    "This file holds a zero byte, so it is no text file.",
			Expected: "A design is plain text, saved as UTF-8.",
		}, false
	}
	return Problem{}, true
}

// loneReturn finds a carriage return that no line feed follows. The parser takes
// it for a part of the line, so that a comment would swallow the rest of the
// file.
func loneReturn(text []byte) int {
	for from := 0; ; {
		n := bytes.IndexByte(text[from:], '\r')
		if n < 0 {
			return -1
		}
		if from += n; from+1 == len(text) || text[from+1] != '\n' {
			return from
		}
		from++
	}
}

func invalidByte(text []byte) int {
	for at := 0; at < len(text); {
		r, size := utf8.DecodeRune(text[at:])
		if r == utf8.RuneError && size == 1 {
			return at
		}
		at += size
	}
	return 0
}

// excess is what a text has too much of, and where.
type excess struct {
	kind excessKind
	at   int
}

type excessKind int

const (
	withinBounds excessKind = iota
	tooDeep
	tooManyOperators
	tooLongWord
)

func (e excess) problem(file *source.File) (Problem, bool) {
	p := Problem{Span: source.Span{File: file, Start: int32(e.at), End: int32(min(e.at+1, len(file.Text)))}}
	switch e.kind {
	case tooDeep:
		p.Found = fmt.Sprintf("More than %d brackets or braces are open here, one inside the other.", MaxNesting)
		p.Expected = "Somewhere above, one that was opened is not closed."
	case tooManyOperators:
		p.Found = fmt.Sprintf("This value has more than %d signs such as + and -.", MaxOperators)
		p.Expected = "A value is one number or one text in quotes."
	case tooLongWord:
		p.Found = fmt.Sprintf("This number or word is longer than %d characters.", MaxWordBytes)
		p.Expected = "Texts stand in quotes."
	default:
		return Problem{}, true
	}
	return p, false
}

// depthCounter follows brackets, and operators in each of them. It is strict
// where the parser is lenient: a bracket of the wrong kind closes nothing, so
// its depth is never less than the parser's.
type depthCounter struct {
	open      [MaxNesting]byte
	operators [MaxNesting + 1]int
	depth     int
}

func (c *depthCounter) enter(bracket byte) excessKind {
	if kind := c.operator(); kind != withinBounds { // a[0][0]… nests without nested brackets
		return kind
	}
	if c.depth == MaxNesting {
		return tooDeep
	}
	c.open[c.depth] = bracket
	c.depth++
	c.operators[c.depth] = 0
	return withinBounds
}

func (c *depthCounter) leave(bracket byte) {
	if c.depth > 0 && c.open[c.depth-1] == bracket {
		c.depth--
	}
}

func (c *depthCounter) operator() excessKind {
	if c.operators[c.depth]++; c.operators[c.depth] > MaxOperators {
		return tooManyOperators
	}
	return withinBounds
}

// newline ends a value, except inside brackets in which lines do not count.
func (c *depthCounter) newline() {
	if c.depth == 0 || c.open[c.depth-1] == '{' {
		c.operators[c.depth] = 0
	}
}

func (c *depthCounter) comma() { c.operators[c.depth] = 0 }

// scanDepth judges a text by its bytes. It is not sure of one that holds block
// comments, texts of several lines, templates beyond "${given.bay} m", or a
// text without its closing quote.
//
//nolint:gocognit // a scanner is one switch over what it meets
func scanDepth(text []byte) (e excess, sure bool) {
	var c depthCounter
	for i := 0; i < len(text); i++ {
		kind := withinBounds
		switch b := text[i]; b {
		case '"':
			end, templates, ok := scanQuoted(text, i)
			if !ok || templates > 0 && c.depth == MaxNesting {
				return excess{}, false
			}
			for range templates { // the opening of each counts as a sign, as for other brackets
				if c.operator() != withinBounds {
					return excess{}, false
				}
			}
			i = end
		case '#':
			i = lineEnd(text, i) - 1
		case '/':
			if i+1 < len(text) && text[i+1] == '*' {
				return excess{}, false
			}
			if i+1 < len(text) && text[i+1] == '/' {
				i = lineEnd(text, i) - 1
				continue
			}
			kind = c.operator()
		case '{', '[', '(':
			kind = c.enter(b)
		case '}':
			c.leave('{')
		case ']':
			c.leave('[')
		case ')':
			c.leave('(')
		case '\n':
			c.newline()
		case ',':
			c.comma()
		case '<':
			if i+1 < len(text) && text[i+1] == '<' {
				return excess{}, false
			}
			kind = c.operator()
		case '~':
			return excess{}, false
		case '+', '-', '*', '%', '!', '=', '>', '&', '|', '?', ':', '.', '^':
			kind = c.operator()
		default:
			end := i
			for end < len(text) && wordByte(text[end]) {
				end++
			}
			if end-i > MaxWordBytes {
				return excess{tooLongWord, i}, true
			}
			i = max(i, end-1)
		}
		if kind != withinBounds {
			return excess{kind, i}, true
		}
	}
	return excess{}, true
}

// wordByte tells bytes of which words and numbers are made. The sign in "1e-9"
// ends a word here and not for the parser, which bounds the digits no less.
func wordByte(b byte) bool {
	return b|0x20 >= 'a' && b|0x20 <= 'z' || b >= '0' && b <= '9' || b == '_' || b >= utf8.RuneSelf
}

// scanQuoted passes over a text in quotes that begins at i. It gives the place
// of the closing quote and how many templates stand in it.
func scanQuoted(text []byte, i int) (end, templates int, ok bool) {
	for i++; i < len(text); i++ {
		switch text[i] {
		case '"':
			return i, templates, true
		case '\\':
			i++
			if i < len(text) && (text[i] == '\n' || text[i] == '\r') {
				return 0, 0, false
			}
		case '\n', '\r':
			return 0, 0, false
		case '%':
			if i+1 < len(text) && (text[i+1] == '{' || text[i+1] == '%') {
				return 0, 0, false
			}
		case '$':
			if i+1 < len(text) && text[i+1] == '$' {
				return 0, 0, false
			}
			if i+1 < len(text) && text[i+1] == '{' {
				closed, plain := scanTemplate(text, i+2)
				if !plain {
					return 0, 0, false
				}
				i = closed
				templates++
			}
		}
	}
	return 0, 0, false
}

// scanTemplate passes over the rest of a template that holds nothing but a few
// names, numbers and signs of arithmetic.
func scanTemplate(text []byte, i int) (end int, plain bool) {
	for start := i; i < len(text) && i-start < MaxOperators; i++ {
		switch b := text[i]; {
		case b == '}':
			return i, true
		case b == '/':
			if i+1 < len(text) && (text[i+1] == '/' || text[i+1] == '*') {
				return 0, false
			}
		case b == ' ' || b == '_' || b == '.' || b == '+' || b == '-' || b == '*' || b >= '0' && b <= '9' || b|0x20 >= 'a' && b|0x20 <= 'z':
		default:
			return 0, false
		}
	}
	return 0, false
}

// lineEnd gives the place of the next line feed, or the end of the text.
func lineEnd(text []byte, from int) int {
	if n := bytes.IndexByte(text[from:], '\n'); n >= 0 {
		return from + n
	}
	return len(text)
}

// tokenDepth judges a text by the tokens the parser would see.
func tokenDepth(text []byte) excess {
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	var c depthCounter
	for _, t := range tokens {
		kind := withinBounds
		switch t.Type {
		case hclsyntax.TokenOBrace:
			kind = c.enter('{')
		case hclsyntax.TokenOBrack:
			kind = c.enter('[')
		case hclsyntax.TokenOParen:
			kind = c.enter('(')
		case hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateControl:
			kind = c.enter('$')
		case hclsyntax.TokenCBrace:
			c.leave('{')
		case hclsyntax.TokenCBrack:
			c.leave('[')
		case hclsyntax.TokenCParen:
			c.leave('(')
		case hclsyntax.TokenTemplateSeqEnd:
			c.leave('$')
		case hclsyntax.TokenNewline:
			c.newline()
		case hclsyntax.TokenComment:
			if bytes.HasSuffix(t.Bytes, []byte("\n")) {
				c.newline()
			}
		case hclsyntax.TokenComma:
			c.comma()
		case hclsyntax.TokenNumberLit, hclsyntax.TokenIdent:
			if len(t.Bytes) > MaxWordBytes {
				kind = tooLongWord
			}
		case hclsyntax.TokenOQuote, hclsyntax.TokenCQuote, hclsyntax.TokenOHeredoc, hclsyntax.TokenCHeredoc,
			hclsyntax.TokenQuotedLit, hclsyntax.TokenStringLit, hclsyntax.TokenQuotedNewline, hclsyntax.TokenInvalid, hclsyntax.TokenBadUTF8, hclsyntax.TokenEOF:
		default:
			kind = c.operator()
		}
		if kind != withinBounds {
			return excess{kind, t.Range.Start.Byte}
		}
	}
	return excess{}
}
