package schema

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/source"
)

// decoder turns the syntax of one file into parts, and keeps what is wrong
// with it.
type decoder struct {
	file     *source.File
	mended   *mended // the text that was parsed, where it is not the file's own
	given    *givenNames
	problems []Problem
	refs     []reference
	ordered  []*hclsyntax.Attribute // see inOrder
}

func (d *decoder) span(r hcl.Range) source.Span {
	start, end := r.Start.Byte, r.End.Byte
	if d.mended != nil {
		start, end = d.mended.written(start, end)
	}
	return source.Span{File: d.file, Start: int32(start), End: int32(end)}
}

// full tells that no more problems are kept, so that none need be worded.
func (d *decoder) full() bool { return len(d.problems) >= MaxProblems }

func (d *decoder) problem(p Problem) {
	if !d.full() {
		d.problems = append(d.problems, p)
	}
}

// inOrder gives attributes as they are written, so that what comes of them never
// hangs on the order of a map. The slice serves until the next call.
func (d *decoder) inOrder(attributes hclsyntax.Attributes) []*hclsyntax.Attribute {
	d.ordered = d.ordered[:0]
	for _, a := range attributes {
		d.ordered = append(d.ordered, a)
	}
	slices.SortFunc(d.ordered, func(a, b *hclsyntax.Attribute) int {
		return a.NameRange.Start.Byte - b.NameRange.Start.Byte
	})
	return d.ordered
}

func (d *decoder) refuse(span source.Span, found, expected, nearest string) {
	d.problem(Problem{Span: span, Found: found, Expected: expected, Nearest: nearest})
}

// spoilt tells a value that could not be read, which was said already.
func (d *decoder) spoilt(expr hclsyntax.Expression) bool {
	return d.mended != nil && d.mended.spoiled(expr.Range().Start.Byte)
}

// text reads an expression as text.
func (d *decoder) text(expr hclsyntax.Expression, what string) (Value[string], bool) {
	v := Value[string]{Span: d.span(expr.Range())}
	if t, ok := plainText(expr); ok {
		v.Text = t
	} else if t, ok := d.filledText(expr); ok {
		v.Text = t
	} else {
		c, ok := d.evaluate(expr, what)
		if !ok {
			return v, false
		}
		if c.Type() != cty.String {
			d.refuse(v.Span, fmt.Sprintf("%s is %s.", quoteSource(v.Span), kindOf(c)), fmt.Sprintf("Here stands %s, in straight quotes.", what), strconv.Quote(plainly(c)))
			return v, false
		}
		v.Text = c.AsString()
	}
	if !d.fitText(v, MaxTextBytes) {
		return v, false
	}
	v.V = v.Text
	return v, true
}

// plainText gives the text of a quoted literal without any template in it, the
// form nearly every attribute has, without evaluating anything.
func plainText(expr hclsyntax.Expression) (string, bool) {
	t, ok := expr.(*hclsyntax.TemplateExpr)
	if !ok {
		return "", false
	}
	if len(t.Parts) == 0 {
		return "", true
	}
	if len(t.Parts) != 1 {
		return "", false
	}
	l, ok := t.Parts[0].(*hclsyntax.LiteralValueExpr)
	if !ok || l.Val.Type() != cty.String {
		return "", false
	}
	return l.Val.AsString(), true
}

// filledText gives the text of a template in which nothing but given values
// stands, the other form that thousands of attributes may have, without working
// it out anew each time.
func (d *decoder) filledText(expr hclsyntax.Expression) (string, bool) {
	t, ok := expr.(*hclsyntax.TemplateExpr)
	if !ok || d.given == nil || len(t.Parts) > MaxTemplateParts/2 {
		return "", false
	}
	var b strings.Builder
	for _, part := range t.Parts {
		switch p := part.(type) {
		case *hclsyntax.LiteralValueExpr:
			if p.Val.Type() != cty.String {
				return "", false
			}
			b.WriteString(p.Val.AsString())
		case *hclsyntax.ScopeTraversalExpr:
			if p.Traversal.RootName() != "given" || len(p.Traversal) != 2 {
				return "", false
			}
			attr, ok := p.Traversal[1].(hcl.TraverseAttr)
			text, known := d.given.texts[attr.Name]
			if !ok || !known {
				return "", false
			}
			b.WriteString(text)
		default:
			return "", false
		}
	}
	return cty.NormalizeString(b.String()), true
}

// fitText refuses texts that are too long or hold characters that would do
// something to a screen or a table instead of being read.
func (d *decoder) fitText(v Value[string], limit int) bool {
	if len(v.Text) > limit {
		d.refuse(v.Span, fmt.Sprintf("This text is %d bytes long.", len(v.Text)), fmt.Sprintf("At most %d bytes can stand here.", limit), "")
		return false
	}
	for i, r := range v.Text {
		switch {
		case r == utf8.RuneError && strings.HasPrefix(v.Text[i:], string(utf8.RuneError)) == false:
			d.refuse(v.Span, "This text holds bytes that are not UTF-8.", "Save the file as UTF-8.", "")
			return false
		case unicode.IsControl(r):
			d.refuse(v.Span, fmt.Sprintf("This text holds the control character U+%04X.", r), "Names and texts hold printable characters only, on one line.", "")
			return false
		case isDirectional(r):
			d.refuse(v.Span, fmt.Sprintf("This text holds the invisible character U+%04X, which changes the direction of writing.", r), "Remove it.", "")
			return false
		}
	}
	return true
}

// isDirectional tells characters that reorder what is shown (Unicode Standard
// Annex 9, explicit directional formatting) or hide in it.
func isDirectional(r rune) bool {
	return r >= 0x202A && r <= 0x202E || r >= 0x2066 && r <= 0x2069 || r == 0x200E || r == 0x200F || r == 0x061C || r == 0x200B || r == 0xFEFF
}

// evaluate works out an expression that is not plain text. Only literals,
// templates, arithmetic and given.x are part of the dialect.
func (d *decoder) evaluate(expr hclsyntax.Expression, what string) (cty.Value, bool) {
	if !d.admit(expr, what) {
		return cty.NilVal, false
	}
	v, diags := expr.Value(d.given.context)
	span := d.span(expr.Range())
	if diags.HasErrors() {
		d.refuse(span, fmt.Sprintf("%s cannot be worked out.", quoteSource(span)), "Numbers are joined by + - * / and texts by a template such as \"${given.bay} m\".", "")
		return cty.NilVal, false
	}
	switch {
	case !v.IsWhollyKnown(): // uses a given value that was refused already
		return cty.NilVal, false
	case v.IsNull():
		d.refuse(span, fmt.Sprintf("%s has no value.", quoteSource(span)), fmt.Sprintf("Here stands %s; what is not known is left out.", what), "")
		return cty.NilVal, false
	case v.Type() == cty.Number:
		if f, _ := v.AsBigFloat().Float64(); math.IsInf(f, 0) || math.Abs(f) > 1e15 {
			d.refuse(span, fmt.Sprintf("%s comes to a number without end or beyond any use.", quoteSource(span)), "Check for a division by zero.", "")
			return cty.NilVal, false
		}
	}
	return v, true
}

// admit walks an expression and refuses whatever is not part of the dialect,
// at its place.
func (d *decoder) admit(expr hclsyntax.Expression, what string) bool {
	todo := []hclsyntax.Expression{expr}
	for parts := 0; len(todo) > 0; {
		e := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if parts++; parts > MaxTemplateParts {
			d.refuse(d.span(expr.Range()), "This value is made of too many pieces.", fmt.Sprintf("At most %d can be joined.", MaxTemplateParts), "")
			return false
		}
		switch e := e.(type) {
		case *hclsyntax.LiteralValueExpr:
		case *hclsyntax.TemplateExpr:
			todo = append(todo, e.Parts...)
		case *hclsyntax.TemplateWrapExpr:
			todo = append(todo, e.Wrapped)
		case *hclsyntax.ParenthesesExpr:
			todo = append(todo, e.Expression)
		case *hclsyntax.UnaryOpExpr:
			todo = append(todo, e.Val)
		case *hclsyntax.BinaryOpExpr:
			todo = append(todo, e.LHS, e.RHS)
		case *hclsyntax.ScopeTraversalExpr:
			if !d.admitName(e, what) {
				return false
			}
		default:
			span := d.span(e.Range())
			d.refuse(span, fmt.Sprintf("%s is not something a design can hold.", quoteSource(span)), fmt.Sprintf("Here stands %s. There are no functions, loops or conditions.", what), "")
			return false
		}
	}
	return true
}

// admitName lets given.x through and explains every other bare word.
func (d *decoder) admitName(e *hclsyntax.ScopeTraversalExpr, what string) bool {
	span := d.span(e.Range())
	written := span.Text()
	if e.Traversal.RootName() != "given" {
		if word := strings.ToLower(written); word == "yes" || word == "on" {
			d.refuse(span, fmt.Sprintf("%s is not a value.", quoteSource(span)), "What holds is true, what does not hold is false; both without quotes.", "true")
		} else if word == "no" || word == "off" {
			d.refuse(span, fmt.Sprintf("%s is not a value.", quoteSource(span)), "What holds is true, what does not hold is false; both without quotes.", "false")
		} else {
			d.refuse(span, fmt.Sprintf("%s stands without quotes.", quoteSource(span)), fmt.Sprintf("Here stands %s, in straight quotes.", what), strconv.Quote(written))
		}
		return false
	}
	if len(e.Traversal) == 2 {
		if attr, ok := e.Traversal[1].(hcl.TraverseAttr); ok {
			if d.given.has(attr.Name) {
				return true
			}
			if before, after, cut := strings.Cut(attr.Name, "-"); cut && d.given.has(before) {
				d.refuse(span, fmt.Sprintf("%s reads as one name, %q.", quoteSource(span), attr.Name), "Put spaces round a minus.", fmt.Sprintf("given.%s - %s", before, after))
				return false
			}
			near := nearest(attr.Name, d.given.all)
			if near != "" {
				near = "given." + near
			}
			d.refuse(span, fmt.Sprintf("The given blocks hold no %q.", attr.Name), "A name after \"given.\" is one that a given block sets.", near)
			return false
		}
	}
	d.refuse(span, fmt.Sprintf("%s is not a name of a given value.", quoteSource(span)), "A given value is written given.name.", "")
	return false
}

// number reads an expression as a plain number.
func (d *decoder) number(expr hclsyntax.Expression, what string) (Value[float64], bool) {
	v := Value[float64]{Span: d.span(expr.Range())}
	c, ok := d.evaluate(expr, what)
	if !ok {
		return v, false
	}
	if c.Type() != cty.Number {
		near := ""
		if c.Type() == cty.String {
			if _, err := strconv.ParseFloat(c.AsString(), 64); err == nil {
				near = c.AsString()
			}
		}
		d.refuse(v.Span, fmt.Sprintf("%s is %s.", quoteSource(v.Span), kindOf(c)), fmt.Sprintf("Here stands %s, without quotes.", what), near)
		return v, false
	}
	v.V, _ = c.AsBigFloat().Float64()
	v.Text = plainly(c)
	return v, true
}

// whole reads an expression as a whole number from low to high.
func (d *decoder) whole(expr hclsyntax.Expression, what string, low, high int) (Value[int], bool) {
	f, ok := d.number(expr, what)
	v := Value[int]{Text: f.Text, Span: f.Span}
	if !ok {
		return v, false
	}
	if f.V != math.Trunc(f.V) || f.V < float64(low) || f.V > float64(high) {
		d.refuse(f.Span, fmt.Sprintf("%s is out of range.", f.Text), fmt.Sprintf("Here stands %s: a whole number from %d to %d.", what, low, high), "")
		return v, false
	}
	v.V = int(f.V)
	return v, true
}

// flag reads true or false.
func (d *decoder) flag(expr hclsyntax.Expression) (Value[bool], bool) {
	v := Value[bool]{Span: d.span(expr.Range())}
	c, ok := d.evaluate(expr, "true or false")
	if !ok {
		return v, false
	}
	if c.Type() != cty.Bool {
		near := ""
		if c.Type() == cty.String {
			switch strings.ToLower(c.AsString()) {
			case "true", "yes", "on":
				near = "true"
			case "false", "no", "off":
				near = "false"
			}
		}
		d.refuse(v.Span, fmt.Sprintf("%s is %s.", quoteSource(v.Span), kindOf(c)), "Here stands true or false, without quotes.", near)
		return v, false
	}
	v.V = c.True()
	v.Text = strconv.FormatBool(v.V)
	return v, true
}

// items gives the expressions of a bracketed list.
func (d *decoder) items(expr hclsyntax.Expression, what string) ([]hclsyntax.Expression, source.Span, bool) {
	span := d.span(expr.Range())
	list, ok := expr.(*hclsyntax.TupleConsExpr)
	if !ok {
		near := ""
		if _, plain := plainText(expr); plain {
			near = "[" + span.Text() + "]"
		}
		d.refuse(span, fmt.Sprintf("%s is not a list.", quoteSource(span)), fmt.Sprintf("Here stands a list in brackets: %s.", what), near)
		return nil, span, false
	}
	return list.Exprs, span, true
}

// name decodes a label or the text of a name: never empty, no template.
func (d *decoder) fitName(v Value[string]) bool {
	switch {
	case strings.TrimSpace(v.Text) == "":
		d.refuse(v.Span, "This name is empty.", "Give the part the name it has on site.", "")
		return false
	case strings.TrimSpace(v.Text) != v.Text:
		d.refuse(v.Span, "This name begins or ends with a space.", "Nobody sees such a space, and other names would not match it.", strconv.Quote(strings.TrimSpace(v.Text)))
		return false
	}
	return d.fitText(v, MaxNameBytes)
}

func quoteSource(span source.Span) string {
	text := span.Text()
	if i := strings.IndexByte(text, '\n'); i >= 0 {
		text = text[:i] + " …"
	}
	if utf8.RuneCountInString(text) > 60 {
		text = string([]rune(text)[:57]) + " …"
	}
	return text
}

func kindOf(v cty.Value) string {
	switch v.Type() {
	case cty.String:
		return "a text"
	case cty.Number:
		return "a bare number"
	case cty.Bool:
		return "true or false"
	}
	if v.Type().IsTupleType() {
		return "a list"
	}
	return "a group of values in braces"
}

// plainly writes a value as a person would.
func plainly(v cty.Value) string {
	switch {
	case v.IsNull():
		return ""
	case v.Type() == cty.String:
		return v.AsString()
	case v.Type() == cty.Number:
		return v.AsBigFloat().Text('f', -1)
	case v.Type() == cty.Bool:
		return strconv.FormatBool(v.True())
	}
	return ""
}
