package criterion

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// Prefix begins the id of every check that is made of a criterion, so that it is
// never that of another.
const Prefix = "criterion:"

// ID is the id of the check that is made of a criterion of this name: in lower
// case, with a hyphen for everything that is neither letter nor digit.
func ID(name string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(name) {
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r) && r != '.' {
			gap = true
			continue
		}
		if gap && b.Len() > 0 {
			b.WriteByte('-')
		}
		gap = false
		b.WriteRune(r)
	}
	return Prefix + b.String()
}

// Checks makes a check of each criterion. What is wrong with them is told at its
// place; with problems there are no checks.
func Checks(all []*schema.Criterion) ([]*check.Check, []schema.Problem) {
	if len(all) == 0 {
		return nil, nil
	}
	kinds := askers()
	var checks []*check.Check
	var problems []schema.Problem
	first := map[string]*schema.Criterion{}
	for _, c := range all {
		id := ID(c.Name)
		if before := first[id]; before != nil {
			problems = append(problems, schema.Problem{
				Span: c.NameSpan, Found: fmt.Sprintf("The name %q makes the same check as %q, %s.", c.Name, before.Name, id),
				Expected: "Names of criterions differ in letters or digits.", Related: []schema.Place{{Span: before.NameSpan, Note: "the first one"}},
			})
			continue
		}
		first[id] = c
		at := slices.IndexFunc(kinds, func(k asker) bool { return k.describe().Each == c.Each.V })
		if at < 0 {
			problems = append(problems, schema.Problem{Span: c.Each.Span, Found: fmt.Sprintf("%q cannot be asked.", c.Each.V)})
			continue
		}
		one, more := kinds[at].check(c)
		problems = append(problems, more...)
		if one != nil {
			checks = append(checks, one)
		}
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return checks, nil
}

// asked is a criterion that was found sound, for parts that are a T.
type asked[T any] struct {
	kind    kind[T]
	part    *schema.Criterion
	when    *program // nil: of every part
	expect  *program
	message []piece
	grave   check.Severity
	numbers []float64 // those that figures are compared with
}

type piece struct {
	text    string
	program *program // nil for a text
}

func (k kind[T]) check(c *schema.Criterion) (*check.Check, []schema.Problem) {
	a := &asked[T]{kind: k, part: c, grave: check.Warning}
	if s, ok := check.ParseSeverity(c.Severity.V); ok {
		a.grave = s
	}
	figures := k.describe().Figures
	var problems []schema.Problem
	condition := func(v *schema.Value[schema.Expression]) *program {
		p, more := compile(&v.V, k.each, figures)
		problems = append(problems, more...)
		switch {
		case p == nil:
			return nil
		case p.result.kind != Truth:
			problems = append(problems, schema.Problem{Span: v.Span, Found: fmt.Sprintf("%s neither holds nor fails by itself.", v.Text), Expected: "A condition compares, as in drop_percent <= 5, or names a figure that is true or false."})
		case len(p.figures) == 0:
			problems = append(problems, schema.Problem{Span: v.Span, Found: fmt.Sprintf("%s holds no figure: it is the same for every %s.", v.Text, k.each), Expected: fmt.Sprintf("`loudlint figures %s` lists those it has.", k.each)})
		}
		return p
	}
	if c.When.Set() {
		a.when = condition(&c.When)
	}
	a.expect = condition(&c.Expect)
	for _, m := range c.Message.V {
		p := piece{text: m.Text}
		if m.Expression != nil {
			var more []schema.Problem
			p.program, more = compile(m.Expression, k.each, figures)
			problems = append(problems, more...)
		}
		a.message = append(a.message, p)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	for i := range a.expect.steps {
		if s := &a.expect.steps[i]; s.Kind == schema.StepNumber {
			a.numbers = append(a.numbers, s.Number)
		}
	}
	at := fmt.Sprintf("%s:%d", c.Header.File.Name, c.Header.From().Line)
	how := "What is expected: " + wording.OneLine(c.Expect.Text) + "."
	if a.when != nil {
		how = "It is asked where " + wording.OneLine(c.When.Text) + ". " + how
	}
	return &check.Check{
		ID:       ID(c.Name),
		Asks:     fmt.Sprintf("Does each %s meet the criterion %q?", k.each, c.Name),
		Summary:  fmt.Sprintf("%s does not meet the criterion %q.", wording.Capital(wording.WithArticle(k.each)), c.Name),
		Why:      "The criteria of the job ask for it, at " + at + ".",
		How:      how,
		Basis:    check.SetAt(c.Header),
		Blind:    "It sees only the figures it names.",
		Severity: a.grave,
		Origin:   c.Header,
		Judge:    k.ask(a.judge),
	}, nil
}

// figuresOf reads figures of one part, each once.
type figuresOf[T any] struct {
	kind   *kind[T]
	system *analysis.System
	part   T
	read   map[int]*reading
	order  []int
}

func (f *figuresOf[T]) value(at int) value {
	r := f.read[at]
	if r == nil {
		one := f.kind.figures[at].of(f.system, f.part)
		r = &one
		f.read[at] = r
		f.order = append(f.order, at)
	}
	return r.value
}

// judge asks a criterion of one part.
func (a *asked[T]) judge(r *check.Report, part T) {
	f := &figuresOf[T]{kind: &a.kind, system: r.System(), part: part, read: map[int]*reading{}}
	name := title(a.kind.subject(r.System(), part))
	if a.when != nil {
		left := a.when.work(f.value)
		switch last := left[len(left)-1]; {
		case !last.known():
			a.open(r, f, fmt.Sprintf("Whether %q is asked of %s cannot be told", a.part.Name, lower(name)), last)
			return
		case !last.truth:
			r.NotAsked()
			return
		}
		f.order = nil // what the question hangs on is no evidence of the answer
	}
	left := a.expect.work(f.value)
	last := left[len(left)-1]
	if !last.known() {
		a.open(r, f, fmt.Sprintf("Whether %s meets %q cannot be told", lower(name), a.part.Name), last)
		return
	}
	for _, at := range a.expect.figures { // those read before belong to it too
		if !slices.Contains(f.order, at) {
			f.order = append(f.order, at)
		}
	}
	if last.truth {
		answer := r.Pass(fmt.Sprintf("%s meets %q: %s.", name, a.part.Name, f.said()))
		a.evidence(answer, f, left)
		return
	}
	answer := r.Fail(a.grave, a.worded(name, f, left))
	a.evidence(answer, f, left)
	answer.See(a.part.Expect.Span, fmt.Sprintf("what criterion %q expects", a.part.Name))
	for _, at := range f.order {
		for _, p := range f.read[at].evidence.From {
			answer.See(p.Span, p.Note)
		}
	}
}

func (a *asked[T]) open(r *check.Report, f *figuresOf[T], message string, v value) {
	if v.fault != "" {
		message += ": " + v.fault
	}
	answer := r.Open(message+".", v.missing...)
	for _, at := range f.order {
		if one := f.read[at]; one.known() {
			answer.Evidence(one.evidence)
		}
	}
	answer.See(a.part.Expect.Span, fmt.Sprintf("what criterion %q expects", a.part.Name))
}

// said lists the figures with their values: load_w is 48 W, drop_percent is 3 %.
func (f *figuresOf[T]) said() string {
	var all []string
	for _, at := range f.order {
		if r := f.read[at]; r.known() {
			all = append(all, fmt.Sprintf("%s is %s", f.kind.figures[at].Name, r.evidence.Value))
		}
	}
	return strings.Join(all, ", ")
}

// worded is what is said of a part that fails.
func (a *asked[T]) worded(name string, f *figuresOf[T], left []value) string {
	if len(a.message) == 0 {
		failed := a.failed(left)
		return fmt.Sprintf("%s does not meet %q: %s is expected; %s.", name, a.part.Name, wording.OneLine(failed.text), f.said())
	}
	order := slices.Clone(f.order)
	var b strings.Builder
	for _, p := range a.message {
		if p.program == nil {
			b.WriteString(p.text)
			continue
		}
		steps := p.program.work(f.value)
		b.WriteString(a.shown(p.program, steps[len(steps)-1]))
	}
	f.order = order // evidence is what was judged by
	text := strings.TrimSpace(b.String())
	if !strings.ContainsAny(text[max(0, len(text)-1):], ".!?") {
		text += "."
	}
	return text
}

// shown writes a result into a message, with as many digits as it takes to tell
// it from what it was held against.
func (a *asked[T]) shown(p *program, v value) string {
	switch {
	case !v.known():
		return "(not known)"
	case p.result.kind == Word:
		return v.text
	case p.result.kind == Truth:
		return strconv.FormatBool(v.truth)
	}
	digits := 4
	for ; digits < 9; digits++ {
		text := quantity.Significant(v.number, digits)
		if !slices.ContainsFunc(a.numbers, func(n float64) bool {
			return !same(n, v.number) && quantity.Significant(n, digits) == text
		}) {
			break
		}
	}
	return quantity.Significant(v.number, digits)
}

func same(a, b float64) bool { return quantity.AtMost(a, b) && quantity.AtLeast(a, b) }

// failed gives the first of the conditions joined by && that does not hold.
func (a *asked[T]) failed(left []value) *clause {
	for i := range a.expect.clauses {
		if v := &left[a.expect.clauses[i].last]; v.known() && !v.truth {
			return &a.expect.clauses[i]
		}
	}
	return &a.expect.clauses[0]
}

// evidence adds every figure that was judged by, and what it was held against.
func (a *asked[T]) evidence(answer *check.Answer, f *figuresOf[T], left []value) {
	for _, at := range f.order {
		if r := f.read[at]; r.known() {
			answer.Evidence(r.evidence).Assumed(r.assumed...)
		} else {
			answer.Evidence(check.Stated(f.kind.figures[at].Name, "not known"))
		}
	}
	c := a.failed(left)
	if len(a.expect.clauses) > 1 && left[len(left)-1].truth {
		answer.Evidence(check.Stated("expected", wording.OneLine(a.part.Expect.Text)))
		return
	}
	if c.left < 0 || !left[c.left].known() || !left[c.right].known() {
		answer.Evidence(check.Stated("expected", wording.OneLine(c.text)))
		return
	}
	a.bound(answer, c, left)
}

// bound says what a comparison held a figure against.
func (a *asked[T]) bound(answer *check.Answer, c *clause, left []value) {
	p := a.expect
	figure, against, sign := c.left, c.right, c.sign
	if !p.named(figure) && p.named(against) { // 5 >= drop_percent
		figure, against = against, figure
		sign = map[string]string{schema.SignLess: schema.SignGreater, schema.SignAtMost: schema.SignAtLeast, schema.SignGreater: schema.SignLess, schema.SignAtLeast: schema.SignAtMost}[sign]
	}
	u := p.steps[figure].unit
	symbol := u.symbol()
	worth := func(step int) string {
		return strings.TrimSpace(quantity.Significant(left[step].number, 6) + " " + symbol)
	}
	for _, step := range []int{figure, against} {
		s := &p.steps[step]
		if s.Kind == schema.StepFigure || !p.named(step) {
			continue
		}
		answer.Evidence(check.Evidence{
			Name: wording.OneLine(s.Span.Text()), Value: worth(step), Number: left[step].number, Unit: symbol,
			Sum: p.filled(step, left) + " = " + worth(step),
		})
	}
	words := map[string]string{schema.SignLess: "less than", schema.SignAtMost: "at most", schema.SignGreater: "more than", schema.SignAtLeast: "at least"}[sign]
	answer.Bound(check.Bound{
		Text:   fmt.Sprintf("%s %s (%s)", words, worth(against), wording.OneLine(c.text)),
		Number: left[against].number, Unit: symbol,
		AtMost: sign == schema.SignLess || sign == schema.SignAtMost,
		Basis:  check.SetAt(c.span), Origin: c.span,
	})
}

// filled writes what a step works out with values in place of figures.
func (p *program) filled(last int, left []value) string {
	whole := p.steps[last].Span
	var b strings.Builder
	at := whole.Start
	for i := p.steps[last].First; i <= last; i++ {
		s := &p.steps[i]
		amount := s.Kind == schema.StepNumber && s.Text != "" // it stands in quotes
		if s.Kind != schema.StepFigure && !s.Given && !amount || s.kind != Number {
			continue
		}
		b.Write(whole.File.Text[at:s.Span.Start])
		symbol := ""
		if s.unit != (unit{}) {
			symbol = " " + s.unit.symbol()
		}
		b.WriteString(quantity.Significant(left[i].number, 4) + symbol)
		at = s.Span.End
	}
	b.Write(whole.File.Text[at:whole.End])
	return wording.OneLine(b.String())
}

// named tells that a figure stands in what a step works out.
func (p *program) named(last int) bool {
	return slices.ContainsFunc(p.steps[p.steps[last].First:last+1], func(one step) bool { return one.Kind == schema.StepFigure })
}

// lower puts a title into the middle of a sentence.
func lower(title string) string { return strings.ToLower(title[:1]) + title[1:] }
