package criterion

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// program is an expression that was found sound: its steps with every figure
// looked up and every number in the unit it is compared in.
type program struct {
	steps   []step
	figures []int // those it uses, each once, in the order of its steps
	clauses []clause
	result  measure
}

// step is one step of a program.
type step struct {
	schema.Step
	figure int  // place in the list of figures
	kind   Kind // of its result
	unit   unit // of its result
}

// clause is one of the conditions that && joins at the outermost level.
type clause struct {
	last  int // its last step
	left  int // last steps of what a comparison compares, -1 for others
	right int
	sign  string
	text  string
	span  source.Span
}

// measure is what a result is: a number in a unit, a word or a truth.
type measure struct {
	kind Kind
	unit unit
	// loose tells a number that has no unit of its own and takes that of what it
	// meets, or a text in quotes that may be a figure with its unit.
	loose bool
	says  []string // the words that a figure can be
	step  int      // the step that leaves it
}

// compiler checks one expression.
type compiler struct {
	of       string // the kind of part, as it is written: "line"
	figures  []Description
	stack    []measure
	program  program
	problems []schema.Problem
}

// compile checks an expression over figures of parts of a kind. What it comes to
// is in the program; with problems there is none.
func compile(e *schema.Expression, of string, figures []Description) (*program, []schema.Problem) {
	c := &compiler{of: of, figures: figures}
	c.program.steps = make([]step, len(e.Steps))
	for i := range e.Steps {
		c.program.steps[i].Step = e.Steps[i]
	}
	for i := range c.program.steps {
		left, ok := c.step(i)
		if !ok {
			return nil, c.problems
		}
		left.step = i
		c.program.steps[i].unit, c.program.steps[i].kind = left.unit, left.kind
		c.stack = append(c.stack, left)
	}
	c.program.result = c.stack[0]
	c.program.clauses = c.clauses()
	return &c.program, nil
}

func (c *compiler) refuse(span source.Span, found, expected, near string) (measure, bool) {
	c.problems = append(c.problems, schema.Problem{Span: span, Found: found, Expected: expected, Nearest: near})
	return measure{}, false
}

// text is what was written for the result of a step.
func (c *compiler) text(s measure) string { return c.program.steps[s.step].Span.Text() }

func (c *compiler) step(i int) (measure, bool) {
	s := &c.program.steps[i]
	first := len(c.stack) - s.Takes
	taken := c.stack[first:]
	c.stack = c.stack[:first]
	switch s.Kind {
	case schema.StepNumber:
		return measure{kind: Number, loose: true}, true
	case schema.StepText:
		return measure{kind: Word, loose: true}, true
	case schema.StepTruth:
		return measure{kind: Truth}, true
	case schema.StepFigure:
		return c.figure(s)
	case schema.StepChoose:
		return c.choose(s, taken)
	case schema.StepCall:
		return c.call(s, taken)
	case schema.StepSign:
	}
	return c.sign(s, taken)
}

// figure looks a figure up.
func (c *compiler) figure(s *step) (measure, bool) {
	at := slices.IndexFunc(c.figures, func(d Description) bool { return d.Name == s.Name })
	if at < 0 {
		return c.unknown(s)
	}
	s.figure = at
	if !slices.Contains(c.program.figures, at) {
		c.program.figures = append(c.program.figures, at)
	}
	d := &c.figures[at]
	left := measure{kind: d.Kind, says: d.Says}
	if d.Kind == Number {
		left.unit = unitOf(d.Unit)
	}
	return left, true
}

func (c *compiler) unknown(s *step) (measure, bool) {
	names := make([]string, len(c.figures))
	for i := range c.figures {
		names[i] = c.figures[i].Name
	}
	near := schema.Nearest(s.Name, names)
	expected := fmt.Sprintf("`loudlint figures %s` lists those it has.", c.of)
	if near == "" {
		var others []string
		for _, k := range Kinds() {
			if slices.ContainsFunc(k.Figures, func(d Description) bool { return d.Name == s.Name }) {
				others = append(others, wording.WithArticle(k.Each))
			}
		}
		if len(others) > 0 {
			expected = fmt.Sprintf("%s is a figure of %s. %s", s.Name, wording.Listed(others, "and"), expected)
		}
	}
	return c.refuse(s.Span, fmt.Sprintf("%s has no figure %q.", wording.Capital(wording.WithArticle(c.of)), s.Name), expected, near)
}

// choose checks a condition with two results.
func (c *compiler) choose(s *step, taken []measure) (measure, bool) {
	if taken[0].kind != Truth {
		return c.refuse(c.program.steps[taken[0].step].Span, fmt.Sprintf("%s is %s.", c.text(taken[0]), taken[0].means()), "Before ? stands a comparison, or a figure that is true or false.", "")
	}
	left, ok := c.together(s, "chosen between", taken[1:]...)
	return left, ok
}

// call checks min, max and abs.
func (c *compiler) call(s *step, taken []measure) (measure, bool) {
	for _, t := range taken {
		if t.kind == Truth || t.kind == Word && !t.loose {
			return c.refuse(c.program.steps[t.step].Span, fmt.Sprintf("%s is %s.", c.text(t), t.means()), s.Name+" takes numbers.", "")
		}
	}
	left, ok := c.together(s, "taken together", taken...)
	if ok && left.kind != Number {
		return c.needsFigure(s, taken)
	}
	if s.Name == schema.FunctionAbsolute && left.unit.scale == level {
		return c.refuse(s.Span, fmt.Sprintf("%s is a level.", c.text(taken[0])), "abs takes a difference, such as that of two levels.", "")
	}
	return left, ok
}

func (c *compiler) sign(s *step, taken []measure) (measure, bool) {
	switch s.Name {
	case schema.SignNot, schema.SignAnd, schema.SignOr:
		for _, t := range taken {
			if t.kind != Truth {
				return c.refuse(c.program.steps[t.step].Span, fmt.Sprintf("%s is %s.", c.text(t), t.means()), s.Name+" stands with comparisons, and with figures that are true or false.", "")
			}
		}
		return measure{kind: Truth}, true
	case schema.SignNegate:
		if taken[0].kind != Number {
			return c.notNumber(s, taken[0])
		}
		return measure{kind: Number, unit: taken[0].unit, loose: taken[0].loose}, true
	case schema.SignMultiply, schema.SignDivide:
		return c.product(s, taken[0], taken[1])
	case schema.SignAdd, schema.SignSubtract:
		return c.addition(s, taken[0], taken[1])
	case schema.SignEqual, schema.SignDiffers:
		if _, ok := c.together(s, "compared", taken...); !ok {
			return measure{}, false
		}
		return measure{kind: Truth}, true
	}
	for _, t := range taken {
		if t.kind == Truth && t.step > 0 && isComparison(c.program.steps[t.step].Name) {
			return c.refuse(s.Span, fmt.Sprintf("%s compares twice.", s.Span.Text()), "Each comparison stands by itself, joined by &&.", chained(c, taken, s))
		}
		if t.kind == Truth || t.kind == Word && !t.loose {
			return c.notNumber(s, t)
		}
	}
	left, ok := c.together(s, "compared", taken...)
	if ok && left.kind != Number {
		return c.needsFigure(s, taken)
	}
	return measure{kind: Truth}, ok
}

// chained writes 3 < x < 5 as two comparisons, where it is that.
func chained(c *compiler, taken []measure, s *step) string {
	inner := &c.program.steps[taken[0].step]
	if taken[0].kind != Truth || inner.Kind != schema.StepSign {
		return ""
	}
	middle := &c.program.steps[taken[0].step-1]
	return fmt.Sprintf("%s && %s %s %s", c.text(taken[0]), middle.Span.Text(), s.Name, c.text(taken[1]))
}

func isComparison(sign string) bool {
	return slices.Contains([]string{schema.SignLess, schema.SignAtMost, schema.SignGreater, schema.SignAtLeast}, sign)
}

func (c *compiler) notNumber(s *step, t measure) (measure, bool) {
	return c.refuse(c.program.steps[t.step].Span, fmt.Sprintf("%s is %s.", c.text(t), t.means()), signName(s.Name)+" stands with numbers.", "")
}

func (c *compiler) needsFigure(s *step, taken []measure) (measure, bool) {
	return c.refuse(s.Span, fmt.Sprintf("Nothing says what %s is measured in.", c.text(taken[0])), "A figure with its unit in quotes is compared with, added to or taken from a figure that has a name.", "")
}

func signName(sign string) string {
	if sign == schema.SignNegate {
		return "-"
	}
	return sign
}

// means says what a result is.
func (s measure) means() string {
	switch {
	case s.kind == Truth:
		return "true or false"
	case s.kind == Word && s.loose:
		return "a text"
	case s.kind == Word:
		return "a word"
	case s.loose:
		return "a number"
	}
	return s.unit.words()
}

// product multiplies or divides. Per cent count as plain numbers there, which is
// what 20 / 100 makes of 20 %; levels and the like take plain numbers only.
func (c *compiler) product(s *step, a, b measure) (measure, bool) {
	for _, t := range []measure{a, b} {
		if t.kind != Number {
			if t.kind == Word && t.loose {
				return c.refuse(c.program.steps[t.step].Span, fmt.Sprintf("%s is a text, which cannot be multiplied or divided.", c.text(t)), "Here stands the number without its unit and without quotes.", "")
			}
			return c.notNumber(s, t)
		}
	}
	plain := func(u unit) unit {
		if u.scale == percent {
			return unit{}
		}
		return u
	}
	if a.loose && b.loose {
		return measure{kind: Number, loose: true}, true
	}
	power := int8(1)
	if s.Name == schema.SignDivide {
		power = -1
	}
	ua, ub := plain(a.unit), plain(b.unit)
	switch {
	case b.loose || ub == unit{} && ua.scale != linear: // 2 × 3 dB, 10 % / 2
		return measure{kind: Number, unit: a.unit}, true
	case a.loose && power > 0:
		return measure{kind: Number, unit: b.unit}, true
	case ua.scale != linear && ua == ub && power < 0:
		return measure{kind: Number}, true
	case ua.scale != linear || ub.scale != linear:
		return c.refuse(s.Span, fmt.Sprintf("%s is %s and %s is %s: that product means nothing.", c.text(a), a.means(), c.text(b), b.means()), "", "")
	}
	left := measure{kind: Number, unit: ua.times(ub, power)}
	if !left.unit.fits() {
		return c.refuse(s.Span, fmt.Sprintf("%s is in a unit beyond any use.", s.Span.Text()), "", "")
	}
	return left, true
}

// addition adds or subtracts. Two levels have a difference, in decibels, and no
// sum; a level and decibels make a level.
func (c *compiler) addition(s *step, a, b measure) (measure, bool) {
	for _, t := range []measure{a, b} {
		if t.kind == Truth || t.kind == Word && !t.loose {
			return c.notNumber(s, t)
		}
	}
	switch {
	case a.unit.scale == level && b.unit.scale == gain:
		return measure{kind: Number, unit: a.unit}, true
	case a.unit.scale == gain && b.unit.scale == level && s.Name == schema.SignAdd:
		return measure{kind: Number, unit: b.unit}, true
	case a.unit.scale == level && b.kind == Word, b.unit.scale == level && a.kind == Word && s.Name == schema.SignAdd:
		text := b
		if a.kind == Word {
			text = a
		}
		return measure{kind: Number, unit: unitOf("dBA")}, c.amount(text, measure{kind: Number, unit: unitOf("dB"), step: text.step})
	case a.unit.scale == level && b.unit.scale == level:
		if s.Name == schema.SignAdd {
			return c.refuse(s.Span, fmt.Sprintf("%s adds two levels, which have no such sum.", s.Span.Text()), "Levels have a difference; decibels can be added to a level.", "")
		}
		return measure{kind: Number, unit: unitOf("dB")}, true
	}
	left, ok := c.together(s, map[string]string{schema.SignAdd: "added", schema.SignSubtract: "subtracted"}[s.Name], a, b)
	if ok && left.kind != Number {
		return c.needsFigure(s, []measure{a, b})
	}
	return left, ok
}

// together demands that results are of one kind and in one unit. What is loose
// takes the unit of what is not: a text in quotes becomes a number in it.
func (c *compiler) together(s *step, how string, all ...measure) (measure, bool) {
	lead := all[0]
	for _, t := range all[1:] {
		if lead.loose && !t.loose {
			lead = t
		}
	}
	for _, t := range all {
		switch {
		case t.loose && t.kind == Word && lead.kind == Number && !lead.loose:
			if !c.amount(t, lead) {
				return measure{}, false
			}
		case t.kind != lead.kind || !t.loose && !lead.loose && t.kind == Number && t.unit != lead.unit:
			a, b := all[0], t
			if t.step == a.step {
				b = lead
			}
			return c.refuse(s.Span, fmt.Sprintf("%s is %s and %s is %s: they cannot be %s.", c.text(a), a.means(), c.text(b), b.means(), how), "", "")
		case t.loose && t.kind == Word && lead.says != nil && !slices.Contains(lead.says, c.program.steps[t.step].Text):
			text := c.program.steps[t.step].Text
			near := schema.Nearest(text, lead.says)
			if near != "" {
				near = strconv.Quote(near)
			}
			return c.refuse(c.program.steps[t.step].Span, fmt.Sprintf("%s is never %q.", c.text(lead), text), fmt.Sprintf("It is one of %s.", quotedWords(lead.says)), near)
		}
	}
	return lead, true
}

// amount reads a text in quotes as a figure in the unit of another.
func (c *compiler) amount(t, lead measure) bool {
	s := &c.program.steps[t.step]
	k, ok := lead.unit.known()
	if !ok || k.parse == nil || s.Kind != schema.StepText {
		found := fmt.Sprintf("%s is %s and %s is a text: they cannot be compared.", c.text(lead), lead.means(), c.text(t))
		c.refuse(s.Span, found, "Here stands a number without quotes.", "")
		return false
	}
	number, err := k.parse(s.Text)
	if err != nil {
		c.refuse(s.Span, fmt.Sprintf("%s is %s: %v.", c.text(lead), k.unit.words(), err), fmt.Sprintf("Here stands a number, or a figure such as %q.", k.sample), "")
		return false
	}
	s.Kind, s.Number, s.unit, s.kind = schema.StepNumber, number, lead.unit, Number
	return true
}

// clauses takes the outermost conditions apart.
func (c *compiler) clauses() []clause {
	steps := c.program.steps
	var all []clause
	for todo := []int{len(steps) - 1}; len(todo) > 0; {
		last := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		s := &steps[last]
		if s.Kind == schema.StepSign && s.Name == schema.SignAnd {
			right := last - 1
			todo = append(todo, right, steps[right].First-1) // the left one is taken first
			continue
		}
		cl := clause{last: last, left: -1, right: -1, text: strings.TrimSpace(s.Span.Text()), span: s.Span}
		if s.Kind == schema.StepSign && isComparison(s.Name) {
			cl.right, cl.sign = last-1, s.Name
			cl.left = steps[cl.right].First - 1
		}
		all = append(all, cl)
	}
	return all
}

func quotedWords(all []string) string {
	quoted := make([]string, len(all))
	for i, w := range all {
		quoted[i] = strconv.Quote(w)
	}
	return strings.Join(quoted, ", ")
}
