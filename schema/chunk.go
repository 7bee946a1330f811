package schema

import (
	"bytes"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/source"
)

// Large files are cut into pieces that are parsed apart, for two reasons: the
// HCL parser takes more than its share of time on a large text, because it
// keeps every token of it in one slice, and pieces can be parsed on several
// processors. What is more, a piece can be decoded and let go before the next is
// parsed: the syntax of a text takes fifty times the memory of the text itself,
// and the garbage collector walks all of it again and again.
//
// Cutting is a guess about where items begin, made by looking at quotes,
// comments and brackets only. Parsing proves it: the parser works from left to
// right, so when every piece ends at the end of a line and is without error,
// each piece is what the parser would have met there in the whole text. When
// anything is in doubt the file is parsed whole, which also keeps the parser's
// messages what they are.

// pieceBytes is how long a piece is at least. The benchmarks of this package
// show little difference from 2 to 16 KiB and a loss on both sides.
const pieceBytes = 8 << 10

// pieceKind says what a piece of a file is.
type pieceKind int

const (
	pieceItems pieceKind = iota // attributes and whole blocks
	pieceOpen                   // the line on which a large block opens
	pieceClose                  // the brace that closes it
)

// piece is a stretch of a file. The pieces of a file follow each other without
// a gap.
type piece struct {
	kind  pieceKind
	start hcl.Pos
	end   int  // byte after the last
	first bool // blocks that are read before all others seem to begin in it
}

// opening is a bracket that is open while a text is cut.
type opening struct {
	line  hcl.Pos // where its line begins
	after hcl.Pos // where the next line begins
	block bool    // it may open a block, and stands alone on its line
	split bool    // the block is cut open
}

// cutter looks for places where a text can be cut.
type cutter struct {
	text   []byte
	size   int // of a piece
	pieces []piece
	start  hcl.Pos // of the piece that grows
	first  bool    // of the piece that grows
	open   []opening
	inside int // how many of them open no block
}

// cut divides a text into pieces of about so many bytes, or gives nil when it
// holds something that it cannot judge.
func cut(text []byte, size int) []piece {
	c := &cutter{text: text, size: size, start: hcl.InitialPos}
	line := hcl.InitialPos
	plain := true // nothing on this line but what may stand before the brace of a block
	for i := 0; i < len(text); i++ {
		switch text[i] {
		case '\n':
			line = hcl.Pos{Line: line.Line + 1, Column: 1, Byte: i + 1}
			plain = true
			c.endLine(line)
		case '"':
			if i = closingQuote(text, i); i < 0 {
				return nil
			}
		case '/':
			if i+1 < len(text) && text[i+1] == '*' {
				return nil
			}
			if i+1 < len(text) && text[i+1] == '/' {
				i = beforeLineEnd(text, i)
			}
		case '#':
			i = beforeLineEnd(text, i)
		case '=':
			plain = false
		case '{', '[', '(':
			block := plain && text[i] == '{' && c.inside == 0
			if len(c.open) == 0 {
				c.first = c.first || readFirst(text[line.Byte:i])
			}
			c.open = append(c.open, opening{line: line, block: block})
			if !block {
				c.inside++
			}
			plain = false
		case '}', ']', ')':
			if !c.close(i, line) {
				return nil
			}
			plain = false
		}
	}
	if len(c.open) > 0 {
		return nil
	}
	return append(c.pieces, piece{pieceItems, c.start, len(text), c.first})
}

// readFirst tells whether the text before a brace opens a block that is read
// before all others, in capitals or not. It may say yes too often.
func readFirst(header []byte) bool {
	header = bytes.TrimLeft(header, " \t")
	for _, kind := range []string{"given", "use"} {
		if len(header) >= len(kind) && strings.EqualFold(string(header[:len(kind)]), kind) {
			return true
		}
	}
	return false
}

// closingQuote finds the quote that ends the text in quotes that begins at i,
// or gives -1 when the line ends first.
func closingQuote(text []byte, i int) int {
	for i++; i < len(text); i++ {
		switch text[i] {
		case '"':
			return i
		case '\\':
			if i+1 < len(text) && text[i+1] != '\n' {
				i++
			}
		case '\n':
			return -1
		}
	}
	return -1
}

// beforeLineEnd gives the last byte before the next end of line.
func beforeLineEnd(text []byte, i int) int {
	for i+1 < len(text) && text[i+1] != '\n' {
		i++
	}
	return i
}

// endLine ends the growing piece if it is large enough and an item may begin
// at next.
func (c *cutter) endLine(next hcl.Pos) {
	depth := len(c.open)
	if depth > 0 && c.open[depth-1].after.Byte == 0 {
		c.open[depth-1].after = next
	}
	if c.inside > 0 {
		return
	}
	size := c.size
	for _, o := range c.open {
		if !o.split {
			size += c.size // rather wait for the block to end
		}
	}
	if next.Byte-c.start.Byte < size {
		return
	}
	for i := range c.open {
		if o := &c.open[i]; !o.split {
			o.split = true
			c.add(pieceItems, o.line)
			c.add(pieceOpen, o.after)
		}
	}
	c.add(pieceItems, next)
}

// add ends the growing piece and begins the next.
func (c *cutter) add(kind pieceKind, next hcl.Pos) {
	if next.Byte > c.start.Byte {
		c.pieces = append(c.pieces, piece{kind, c.start, next.Byte, c.first})
	}
	c.start, c.first = next, false
}

// close meets a closing bracket at i. It tells whether it can be judged.
func (c *cutter) close(i int, line hcl.Pos) bool {
	if len(c.open) == 0 {
		return false
	}
	last := c.open[len(c.open)-1]
	c.open = c.open[:len(c.open)-1]
	if !last.block {
		c.inside--
	}
	if !last.split {
		return true
	}
	if c.text[i] != '}' || !blank(c.text[line.Byte:i]) || !endsLine(c.text[i+1:]) {
		return false
	}
	brace := hcl.Pos{Line: line.Line, Column: 1 + i - line.Byte, Byte: i}
	c.add(pieceItems, brace)
	c.add(pieceClose, hcl.Pos{Line: brace.Line, Column: brace.Column + 1, Byte: i + 1})
	return true
}

func blank(text []byte) bool {
	for _, b := range text {
		if b != ' ' && b != '\t' {
			return false
		}
	}
	return true
}

// endsLine tells that nothing but a comment follows on the line.
func endsLine(text []byte) bool {
	for i, b := range text {
		switch b {
		case ' ', '\t':
		case '\n', '#':
			return true
		case '\r':
			return i+1 < len(text) && text[i+1] == '\n'
		case '/':
			return i+1 < len(text) && text[i+1] == '/'
		default:
			return false
		}
	}
	return true
}

// parsePiece parses one piece; nil means that it has an error, or nothing in it
// that wants parsing.
func parsePiece(file *source.File, p piece) *hclsyntax.Body {
	text := file.Text[p.start.Byte:p.end:p.end]
	switch p.kind {
	case pieceClose:
		return nil
	case pieceOpen:
		text = append(text, '}') // a copy: the capacity ends with the piece
	case pieceItems:
	}
	if p.start.Byte > 0 && bytes.HasPrefix(text, []byte("\ufeff")) {
		return nil // the parser would overlook a byte order mark that is an error here
	}
	parsed, diags := hclsyntax.ParseConfig(text, file.Name, p.start)
	if diags.HasErrors() {
		return nil
	}
	body, _ := parsed.Body.(*hclsyntax.Body)
	return body
}

// assemble joins what pieces were parsed to, or gives nil when they do not come
// to what the text as a whole would have. The body itself has no range.
func assemble(pieces []piece, parsed []*hclsyntax.Body) *hclsyntax.Body {
	root := &hclsyntax.Body{Attributes: hclsyntax.Attributes{}, Blocks: hclsyntax.Blocks{}}
	var open []*hclsyntax.Block
	at := root
	for i, p := range pieces {
		part := parsed[i]
		if p.kind == pieceClose {
			block := open[len(open)-1]
			open = open[:len(open)-1]
			end := p.start
			end.Byte++
			end.Column++
			block.CloseBraceRange = hcl.Range{Filename: block.TypeRange.Filename, Start: p.start, End: end}
			block.Body.SrcRange = hcl.RangeBetween(block.OpenBraceRange, block.CloseBraceRange)
			block.Body.EndRange = hcl.Range{Filename: block.TypeRange.Filename, Start: end, End: end}
			if at = root; len(open) > 0 {
				at = open[len(open)-1].Body
			}
			continue
		}
		if part == nil {
			return nil
		}
		for name, a := range part.Attributes {
			if _, twice := at.Attributes[name]; twice {
				return nil
			}
			at.Attributes[name] = a
		}
		at.Blocks = append(at.Blocks, part.Blocks...)
		if p.kind == pieceOpen {
			if len(part.Blocks) != 1 || len(part.Attributes) > 0 || len(part.Blocks[0].Body.Attributes)+len(part.Blocks[0].Body.Blocks) > 0 {
				return nil
			}
			open = append(open, part.Blocks[0])
			at = part.Blocks[0].Body
		}
	}
	return root
}
