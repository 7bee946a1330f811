package transfer

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// block is a block of the dialect being written.
type block struct {
	kind, name string
	attributes []attribute
	comments   []string // what could not be understood, and what is to be told
	children   []*block
}

// attribute is one line of a block; the value is written as it will stand.
type attribute struct{ name, value string }

func (b *block) set(name, value string) {
	if value != "" {
		b.attributes = append(b.attributes, attribute{name, quote(value)})
	}
}

func (b *block) bare(name, value string) { b.attributes = append(b.attributes, attribute{name, value}) }

func (b *block) comment(text string) { b.comments = append(b.comments, text) }

// write adds the block to a text, aligned as a design is usually written. It
// calls itself for what is inside; rows are bounded, and so is their nesting.
func (b *block) write(w *strings.Builder, depth int) {
	indent := strings.Repeat("  ", depth)
	if b.kind == commentsOnly {
		for _, c := range b.comments {
			fmt.Fprintf(w, "%s# %s\n", indent, oneLine(c))
		}
		return
	}
	fmt.Fprintf(w, "%s%s %s {", indent, b.kind, quote(b.name))
	if len(b.attributes)+len(b.comments)+len(b.children) == 0 {
		w.WriteString("}\n")
		return
	}
	w.WriteByte('\n')
	widest := 0
	for _, a := range b.attributes {
		widest = max(widest, len(a.name))
	}
	for _, a := range b.attributes {
		fmt.Fprintf(w, "%s  %-*s = %s\n", indent, widest, a.name, a.value)
	}
	for _, c := range b.comments {
		fmt.Fprintf(w, "%s  # %s\n", indent, oneLine(c))
	}
	for _, c := range b.children {
		c.write(w, depth+1)
	}
	fmt.Fprintf(w, "%s}\n", indent)
}

// quote writes a text as a literal of the dialect: nothing in it is a template.
func quote(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case (r == '$' || r == '%') && strings.HasPrefix(text[i+1:], "{"):
			b.WriteRune(r)
			b.WriteRune(r)
		case r == utf8.RuneError && size == 1:
			b.WriteRune(utf8.RuneError)
		case r < ' ' || r == 0x7f:
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
		i += size
	}
	b.WriteByte('"')
	return b.String()
}

// oneLine makes a text fit for a comment: on one line, with nothing that moves a
// cursor or ends the line.
func oneLine(text string) string {
	return strings.Join(strings.FieldsFunc(strings.ToValidUTF8(text, "\ufffd"), func(r rune) bool {
		return unicode.IsSpace(r) || unicode.IsControl(r) || r == '\u2028' || r == '\u2029'
	}), " ")
}
