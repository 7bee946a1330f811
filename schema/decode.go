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
	dialect  *dialect
	mended   *mended // the text that was parsed, where it is not the file's own
	given    *givenNames
	problems []Problem
	refs     []reference
	flawed   []source.Span          // headers of blocks in which something was refused
	ordered  []*hclsyntax.Attribute // see inOrder
}

func (d *decoder) span(r hcl.Range) source.Span {
	start, end := r.Start.Byte, r.End.Byte
	if d.mended != nil {
		start, end = d.mended.written(start, end)
	}
	return source.Span{File: d.file, Start: int32(start), End: int32(end)}
}

// source gives what was parsed in a range: the text of the file, or what was put
// in its place.
func (d *decoder) source(r hcl.Range) string {
	text := d.file.Text
	if d.mended != nil {
		text = d.mended.text
	}
	return string(text[r.Start.Byte:r.End.Byte])
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
			d.refuse(v.Span, fmt.Sprintf("%s stands without quotes.", quoteSource(v.Span)), fmt.Sprintf("Here stands %s, in straight quotes.", what), quoted(tidy(v.Span.Text())))
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
	for _, r := range v.Text {
		switch {
		case r == '\n' || r == '\r':
			d.refuse(v.Span, "This text goes over several lines.", "A text stands on one line, in straight quotes.", "")
			return false
		case r == '\t':
			d.refuse(v.Span, "This text holds a tab.", "Words are parted by spaces.", "")
			return false
		case unicode.IsControl(r):
			d.refuse(v.Span, fmt.Sprintf("This text holds the control character U+%04X.", r), "Texts hold printable characters only.", "")
			return false
		case hides(r):
			d.refuse(v.Span, fmt.Sprintf("This text holds the invisible character U+%04X.", r), "Remove it: nobody could see how this text differs from another.", "")
			return false
		}
	}
	return true
}

// hides tells characters that nobody sees or that reorder what is shown: the
// format characters of Unicode but for the two joiners, which several scripts
// need.
func hides(r rune) bool {
	const zeroWidthNonJoiner, zeroWidthJoiner = '\u200c', '\u200d'
	return r >= utf8.RuneSelf && r != zeroWidthNonJoiner && r != zeroWidthJoiner && unicode.Is(unicode.Cf, r)
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
		if !usable(v) {
			d.refuse(span, fmt.Sprintf("%s comes to a number without end or beyond any use.", quoteSource(span)), "Check for a division by zero.", "")
			return cty.NilVal, false
		}
	}
	return v, true
}

// usable tells that a number is of a size that something can have. Numbers with
// exponents of many digits would take forever to write out.
func usable(v cty.Value) bool {
	const smallest, largest = 1e-15, 1e15
	f, _ := v.AsBigFloat().Float64()
	return v.AsBigFloat().Sign() == 0 || math.Abs(f) >= smallest && math.Abs(f) <= largest
}

// admit walks an expression and refuses whatever is not part of the dialect,
// at its place. Nothing is worked out before: a text of digits in a sum, or a
// number with a large exponent, could take forever.
func (d *decoder) admit(expr hclsyntax.Expression, what string) bool {
	type open struct {
		expr hclsyntax.Expression
		sum  bool // it is computed with
	}
	todo := []open{{expr: expr}}
	for parts := 0; len(todo) > 0; {
		o := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if parts++; parts > MaxTemplateParts {
			d.refuse(d.span(expr.Range()), "This value is made of too many pieces.", fmt.Sprintf("At most %d can be joined.", MaxTemplateParts), "")
			return false
		}
		fit := true
		switch e := o.expr.(type) {
		case *hclsyntax.LiteralValueExpr:
			if e.Val.Type() == cty.Number && !usable(e.Val) {
				d.refuse(d.span(e.Range()), fmt.Sprintf("%s is a number beyond any use.", quoteSource(d.span(e.Range()))), fmt.Sprintf("Here stands %s.", what), "")
				return false
			}
		case *hclsyntax.TemplateExpr:
			if o.sum {
				d.refuse(d.span(e.Range()), fmt.Sprintf("%s is a text, which cannot be computed with.", quoteSource(d.span(e.Range()))), "Numbers in a sum stand without quotes and without units.", "")
				return false
			}
			for _, part := range e.Parts {
				todo = append(todo, open{part, false})
			}
		case *hclsyntax.TemplateWrapExpr:
			todo = append(todo, open{e.Wrapped, o.sum})
		case *hclsyntax.ParenthesesExpr:
			todo = append(todo, open{e.Expression, o.sum})
		case *hclsyntax.UnaryOpExpr:
			fit = e.Op == hclsyntax.OpNegate
			todo = append(todo, open{e.Val, true})
		case *hclsyntax.BinaryOpExpr:
			fit = e.Op == hclsyntax.OpAdd || e.Op == hclsyntax.OpSubtract || e.Op == hclsyntax.OpMultiply || e.Op == hclsyntax.OpDivide || e.Op == hclsyntax.OpModulo
			todo = append(todo, open{e.LHS, true}, open{e.RHS, true})
		case *hclsyntax.ScopeTraversalExpr:
			if !d.admitName(e, expr, o.sum, what) {
				return false
			}
		case *hclsyntax.TupleConsExpr, *hclsyntax.ObjectConsExpr:
			span := d.span(o.expr.Range())
			kind := "a list"
			if _, table := e.(*hclsyntax.ObjectConsExpr); table {
				kind = "a group of values in braces"
			}
			d.refuse(span, fmt.Sprintf("%s is %s.", quoteSource(span), kind), fmt.Sprintf("Here stands %s.", what), "")
			return false
		default:
			fit = false
		}
		if !fit {
			span := d.span(o.expr.Range())
			d.refuse(span, fmt.Sprintf("%s is not something a design can hold.", quoteSource(span)), fmt.Sprintf("Here stands %s. There are no functions, loops or conditions.", what), "")
			return false
		}
	}
	return true
}

// admitName lets given.x through and explains every other bare word. The whole
// expression is what was meant as one text when it is no template.
func (d *decoder) admitName(e *hclsyntax.ScopeTraversalExpr, whole hclsyntax.Expression, sum bool, what string) bool {
	span := d.span(e.Range())
	if e.Traversal.RootName() != "given" {
		d.refuseBareWord(span, whole, what)
		return false
	}
	if len(e.Traversal) == 2 {
		if attr, ok := e.Traversal[1].(hcl.TraverseAttr); ok {
			return d.admitGiven(span, attr.Name, sum)
		}
	}
	d.refuse(span, fmt.Sprintf("%s is not a name of a given value.", quoteSource(span)), "A given value is written given.name.", "")
	return false
}

func (d *decoder) refuseBareWord(span source.Span, whole hclsyntax.Expression, what string) {
	switch whole.(type) {
	case *hclsyntax.TemplateExpr, *hclsyntax.TemplateWrapExpr:
		d.refuse(span, fmt.Sprintf("%s is not a given value.", quoteSource(span)), "Only given values can stand in a template: ${given.name}.", "")
		return
	}
	span = d.span(whole.Range())
	truth := map[string]string{"yes": "true", "on": "true", "no": "false", "off": "false", "true": "true", "false": "false"}
	if value := truth[strings.ToLower(span.Text())]; value != "" && what == trueOrFalse {
		d.refuse(span, fmt.Sprintf("%s is not a value.", quoteSource(span)), "What holds is true, what does not hold is false; both in small letters, without quotes.", value)
		return
	}
	if what == trueOrFalse {
		d.refuse(span, fmt.Sprintf("%s is not true or false.", quoteSource(span)), "Here stands true or false, without quotes.", "")
		return
	}
	d.refuse(span, fmt.Sprintf("%s stands without quotes.", quoteSource(span)), fmt.Sprintf("Here stands %s, in straight quotes.", what), quoted(tidy(span.Text())))
}

func (d *decoder) admitGiven(span source.Span, name string, sum bool) bool {
	if d.given.has(name) {
		if text, is := d.given.text(name); is && sum {
			d.refuse(span, fmt.Sprintf("given.%s is %q, which cannot be computed with.", name, text), "Numbers in a sum have no quotes and no units where they are set.", "")
			return false
		}
		return true
	}
	if before, after, cut := strings.Cut(name, "-"); cut && d.given.has(before) {
		d.refuse(span, fmt.Sprintf("%s reads as one name, %q.", quoteSource(span), name), "Put spaces round a minus.", fmt.Sprintf("given.%s - %s", before, after))
		return false
	}
	near := nearest(name, d.given.all)
	if near != "" {
		near = "given." + near
	}
	d.refuse(span, fmt.Sprintf("The given blocks hold no %q.", name), "A name after \"given.\" is one that a given block sets.", near)
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
	if f.V != math.Trunc(f.V) {
		d.refuse(f.Span, fmt.Sprintf("%s is no whole number.", f.Text), fmt.Sprintf("Here stands %s.", what), "")
		return v, false
	}
	if f.V < float64(low) || f.V > float64(high) {
		d.refuse(f.Span, fmt.Sprintf("%s is out of range.", f.Text), fmt.Sprintf("Here stands %s.", what), "")
		return v, false
	}
	v.V = int(f.V)
	return v, true
}

// trueOrFalse words what a flag takes.
const trueOrFalse = "true or false"

// flag reads true or false.
func (d *decoder) flag(expr hclsyntax.Expression) (Value[bool], bool) {
	v := Value[bool]{Span: d.span(expr.Range())}
	c, ok := d.evaluate(expr, trueOrFalse)
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
		d.refuse(span, fmt.Sprintf("%s is not a list.", quoteSource(span)), fmt.Sprintf("Here stands %s, in square brackets.", what), near)
		return nil, span, false
	}
	return list.Exprs, span, true
}

// fitName refuses texts that cannot be a name.
func (d *decoder) fitName(v Value[string]) bool {
	switch trimmed := strings.TrimSpace(v.Text); {
	case trimmed == "":
		d.refuse(v.Span, "This name is empty.", "Here stands the name that the thing has on site or in its papers.", "")
		return false
	case trimmed != v.Text:
		d.refuse(v.Span, "This name begins or ends with a space.", "Nobody sees such a space, and other names would not match it.", quoted(trimmed))
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
