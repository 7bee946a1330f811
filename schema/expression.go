package schema

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/source"
)

// Expression is what a criterion says about figures, as steps that are carried
// out one after the other: each takes the results of steps before it and leaves
// one of its own, the last step the result of the whole. So it can be checked and
// worked out without recursion, in time and memory that its length bounds. Which
// figures there are, and what can be compared, is not known here.
type Expression struct{ Steps []Step }

// StepKind says what a step does.
type StepKind int

// Kinds of step.
const (
	StepFigure StepKind = iota + 1 // leaves the figure of Name
	StepNumber                     // leaves Number
	StepText                       // leaves Text
	StepTruth                      // leaves Truth
	StepSign                       // takes one or two results and joins them by the sign Name
	StepChoose                     // takes a condition and two results, and leaves one of them
	StepCall                       // takes Takes results and leaves what the function Name makes of them
)

// Signs of a StepSign. Negate and Not take one result, the others two.
const (
	SignNegate       = "negate"
	SignNot          = "!"
	SignAdd          = "+"
	SignSubtract     = "-"
	SignMultiply     = "*"
	SignDivide       = "/"
	SignEqual        = "=="
	SignDiffers      = "!="
	SignLess         = "<"
	SignAtMost       = "<="
	SignGreater      = ">"
	SignAtLeast      = ">="
	SignAnd          = "&&"
	SignOr           = "||"
	FunctionLeast    = "min"
	FunctionMost     = "max"
	FunctionAbsolute = "abs"
)

// Step is one step of an Expression.
type Step struct {
	Kind   StepKind
	Name   string // of a figure, a function or a sign
	Number float64
	Text   string
	Truth  bool
	Takes  int         // how many results before it
	First  int         // the step at which what it takes begins; itself when it takes nothing
	Span   source.Span // of what it works out, with all that it takes
	Given  bool        // a number or text that a given block sets
}

// MessagePiece is a text, or an expression whose result is put in its place.
type MessagePiece struct {
	Text       string
	Expression *Expression
}

// expression declares what is worked out for each part that is judged.
func expression[T any](name string, at func(*T) *Value[Expression], doc string, options ...option) attribute[T] {
	o := gather(options)
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: takesExpression, example: orText(o.example, "…")}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		span := d.span(expr.Range())
		if t, plain := plainText(expr); plain {
			d.refuse(span, "This condition stands in quotes.", "Figures and signs stand without quotes; only words and figures with their unit have them.", t)
			return
		}
		if e, ok := d.expression(expr); ok {
			*at(to) = Value[Expression]{V: e, Text: span.Text(), Span: span}
		}
	}
	return ofValue(a, at)
}

const takesExpression = "a condition over computed figures"

// message declares a text into which figures are put.
func message[T any](name string, at func(*T) *Value[[]MessagePiece], doc string, options ...option) attribute[T] {
	o := gather(options)
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: "a text into which figures may be put", example: o.example}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		span := d.span(expr.Range())
		if pieces, ok := d.message(expr); ok {
			*at(to) = Value[[]MessagePiece]{V: pieces, Text: strings.Trim(span.Text(), `"`), Span: span}
		}
	}
	return ofValue(a, at)
}

func (d *decoder) message(expr hclsyntax.Expression) ([]MessagePiece, bool) {
	span := d.span(expr.Range())
	parts := []hclsyntax.Expression{expr}
	switch t := expr.(type) {
	case *hclsyntax.TemplateExpr:
		parts = t.Parts
	case *hclsyntax.TemplateWrapExpr:
		parts[0] = t.Wrapped
	default:
		d.refuse(span, fmt.Sprintf("%s stands without quotes.", quoteSource(span)), "A message is a text in straight quotes; ${load_w} in it puts a figure in its place.", "")
		return nil, false
	}
	if len(parts) > MaxTemplateParts {
		d.refuse(span, "This text is made of too many pieces.", fmt.Sprintf("At most %d can be joined.", MaxTemplateParts), "")
		return nil, false
	}
	var pieces []MessagePiece
	for _, part := range parts {
		if l, ok := part.(*hclsyntax.LiteralValueExpr); ok && l.Val.Type() == cty.String {
			v := Value[string]{Text: l.Val.AsString(), Span: span}
			if !d.fitText(v, MaxTextBytes) {
				return nil, false
			}
			pieces = append(pieces, MessagePiece{Text: v.Text})
			continue
		}
		e, ok := d.expression(part)
		if !ok {
			return nil, false
		}
		pieces = append(pieces, MessagePiece{Expression: &e})
	}
	return pieces, true
}

// expression turns syntax into steps. The syntax was bounded before it was
// parsed; here a stack of our own walks it.
func (d *decoder) expression(expr hclsyntax.Expression) (Expression, bool) {
	type visit struct {
		expr  hclsyntax.Expression
		parts []hclsyntax.Expression
		next  int
		step  Step
	}
	var e Expression
	open := func(expr hclsyntax.Expression) (visit, bool) {
		step, parts, ok := d.step(expr)
		step.First, step.Takes = len(e.Steps), len(parts)
		return visit{expr: expr, parts: parts, step: step}, ok
	}
	first, ok := open(expr)
	for way := []visit{first}; ok && len(way) > 0; {
		v := &way[len(way)-1]
		if v.next < len(v.parts) {
			var inner visit
			inner, ok = open(v.parts[v.next])
			v.next++
			way = append(way, inner)
			continue
		}
		if len(e.Steps) == MaxExpressionSteps {
			d.refuse(d.span(expr.Range()), fmt.Sprintf("This condition has more than %d figures, numbers and signs.", MaxExpressionSteps), "Write several criterions: each then says by itself what is not met.", "")
			return e, false
		}
		e.Steps = append(e.Steps, v.step)
		way = way[:len(way)-1]
	}
	return e, ok
}

// step gives what one piece of syntax does, and the pieces whose results it
// takes.
func (d *decoder) step(expr hclsyntax.Expression) (Step, []hclsyntax.Expression, bool) {
	span := d.span(expr.Range())
	s := Step{Span: span}
	switch e := bare(expr).(type) {
	case *hclsyntax.LiteralValueExpr:
		return s, nil, d.constant(&s, e.Val)
	case *hclsyntax.TemplateExpr:
		v, ok := d.text(e, "a word, or a figure with its unit")
		s.Kind, s.Text = StepText, v.V
		_, plain := plainText(e)
		s.Given = !plain
		return s, nil, ok
	case *hclsyntax.TemplateWrapExpr:
		d.refuse(span, fmt.Sprintf("%s stands in quotes.", quoteSource(span)), "Figures and given values stand without quotes here.", strings.TrimSpace(d.source(e.Wrapped.Range())))
		return s, nil, false
	case *hclsyntax.ScopeTraversalExpr:
		return s, nil, d.figure(&s, e)
	case *hclsyntax.UnaryOpExpr:
		s.Kind, s.Name = StepSign, SignNegate
		if e.Op == hclsyntax.OpLogicalNot {
			s.Name = SignNot
		}
		return s, []hclsyntax.Expression{e.Val}, true
	case *hclsyntax.BinaryOpExpr:
		s.Kind, s.Name = StepSign, signOf(e.Op)
		if s.Name == "" {
			break
		}
		return s, []hclsyntax.Expression{e.LHS, e.RHS}, true
	case *hclsyntax.ConditionalExpr:
		s.Kind = StepChoose
		return s, []hclsyntax.Expression{e.Condition, e.TrueResult, e.FalseResult}, true
	case *hclsyntax.FunctionCallExpr:
		return s, e.Args, d.call(&s, e)
	}
	d.refuse(span, fmt.Sprintf("%s is not something a condition can hold.", quoteSource(span)), "It holds figures, numbers, words in quotes, + - * /, comparisons, && || !, a condition with ? and :, min, max and abs.", "")
	return s, nil, false
}

// bare takes the parentheses off.
func bare(expr hclsyntax.Expression) hclsyntax.Expression {
	for {
		p, ok := expr.(*hclsyntax.ParenthesesExpr)
		if !ok {
			return expr
		}
		expr = p.Expression
	}
}

func signOf(op *hclsyntax.Operation) string {
	switch op {
	case hclsyntax.OpAdd:
		return SignAdd
	case hclsyntax.OpSubtract:
		return SignSubtract
	case hclsyntax.OpMultiply:
		return SignMultiply
	case hclsyntax.OpDivide:
		return SignDivide
	case hclsyntax.OpEqual:
		return SignEqual
	case hclsyntax.OpNotEqual:
		return SignDiffers
	case hclsyntax.OpLessThan:
		return SignLess
	case hclsyntax.OpLessThanOrEqual:
		return SignAtMost
	case hclsyntax.OpGreaterThan:
		return SignGreater
	case hclsyntax.OpGreaterThanOrEqual:
		return SignAtLeast
	case hclsyntax.OpLogicalAnd:
		return SignAnd
	case hclsyntax.OpLogicalOr:
		return SignOr
	}
	return ""
}

// constant makes a step of a value that is known.
func (d *decoder) constant(s *Step, v cty.Value) bool {
	switch {
	case !v.IsWhollyKnown(): // a given value that was refused already
		return false
	case v.IsNull():
		d.refuse(s.Span, fmt.Sprintf("%s has no value.", quoteSource(s.Span)), "A figure that is not known leaves the criterion open by itself.", "")
		return false
	case v.Type() == cty.Number:
		if !usable(v) {
			d.refuse(s.Span, fmt.Sprintf("%s is a number beyond any use.", quoteSource(s.Span)), "", "")
			return false
		}
		s.Kind = StepNumber
		s.Number, _ = v.AsBigFloat().Float64()
	case v.Type() == cty.Bool:
		s.Kind, s.Truth = StepTruth, v.True()
	default:
		s.Kind, s.Text = StepText, v.AsString()
	}
	return true
}

// figure makes a step of the name of a figure, or of a given value.
func (d *decoder) figure(s *Step, e *hclsyntax.ScopeTraversalExpr) bool {
	root := e.Traversal.RootName()
	if root == "given" && len(e.Traversal) == 2 {
		attr, ok := e.Traversal[1].(hcl.TraverseAttr)
		if !ok || !d.admitGiven(s.Span, attr.Name, false) {
			return false
		}
		s.Given = true
		return d.constant(s, d.given.context.Variables["given"].GetAttr(attr.Name))
	}
	if len(e.Traversal) != 1 {
		d.refuse(s.Span, fmt.Sprintf("%s is not the name of a figure.", quoteSource(s.Span)), "A figure has one name, such as load_w; a given value is written given.name.", "")
		return false
	}
	s.Kind, s.Name = StepFigure, root
	return true
}

func (d *decoder) call(s *Step, e *hclsyntax.FunctionCallExpr) bool {
	functions := []string{FunctionLeast, FunctionMost, FunctionAbsolute}
	s.Kind, s.Name = StepCall, e.Name
	switch {
	case !slices.Contains(functions, e.Name):
		d.refuse(d.span(e.NameRange), fmt.Sprintf("There is no function %q.", e.Name), "There are min, max and abs.", nearest(e.Name, functions))
		return false
	case e.ExpandFinal || len(e.Args) == 0 || e.Name == FunctionAbsolute && len(e.Args) != 1:
		d.refuse(s.Span, fmt.Sprintf("%s cannot be worked out.", quoteSource(s.Span)), "min and max take numbers parted by commas, abs takes one.", "")
		return false
	}
	return true
}

// Text writes the block so that it can stand in another file: what it takes from
// given blocks is filled in.
func (c *Criterion) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "criterion %s {\n", literal(c.Name))
	line := func(name, value string) {
		if value != "" {
			fmt.Fprintf(&b, "  %-8s = %s\n", name, value)
		}
	}
	line("each", quoted(c.Each.V))
	line("when", filled(c.When.Span, &c.When.V))
	line("expect", filled(c.Expect.Span, &c.Expect.V))
	var all []*Expression
	for i := range c.Message.V {
		if e := c.Message.V[i].Expression; e != nil {
			all = append(all, e)
		}
	}
	line("message", filled(c.Message.Span, all...))
	if c.Severity.Set() {
		line("severity", quoted(c.Severity.V))
	}
	b.WriteString("}")
	return b.String()
}

// filled gives a stretch of a file with the given values of its expressions
// written out.
func filled(span source.Span, all ...*Expression) string {
	if span.File == nil {
		return ""
	}
	var b strings.Builder
	at := span.Start
	for _, e := range all {
		for i := range e.Steps {
			s := &e.Steps[i]
			if !s.Given {
				continue
			}
			text := span.File.Text
			if from, to := s.Span.Start-2, s.Span.End+1; len(e.Steps) == 1 && from >= span.Start && to <= span.End && string(text[from:from+2]) == "${" && text[to-1] == '}' {
				b.Write(text[at:from]) // alone in a text: it becomes a part of it
				written := literal(s.Text)
				if s.Kind == StepNumber {
					written = literal(strconv.FormatFloat(s.Number, 'f', -1, 64))
				}
				b.WriteString(written[1 : len(written)-1])
				at = to
				continue
			}
			b.Write(text[at:s.Span.Start])
			switch s.Kind {
			case StepNumber:
				b.WriteString(strconv.FormatFloat(s.Number, 'f', -1, 64))
			case StepTruth:
				b.WriteString(strconv.FormatBool(s.Truth))
			default:
				b.WriteString(literal(s.Text))
			}
			at = s.Span.End
		}
	}
	b.Write(span.File.Text[at:span.End])
	return b.String()
}

// literal writes a text so that it is read as itself.
func literal(text string) string {
	return strings.NewReplacer("${", "$${", "%{", "%%{").Replace(quoted(text))
}
