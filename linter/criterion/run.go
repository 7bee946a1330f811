package criterion

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// work carries out a program for one part. Every step is carried out, whatever
// the others come to; a condition that holds or fails by what is known does so
// although something else is not.
func (p *program) work(figures func(int) value) []value {
	left := make([]value, len(p.steps)) // by step, so that clauses can be read afterwards
	for i := range p.steps {
		s := &p.steps[i]
		switch s.Kind {
		case schema.StepNumber:
			left[i].number = s.Number
		case schema.StepText:
			left[i].text = s.Text
		case schema.StepTruth:
			left[i].truth = s.Truth
		case schema.StepFigure:
			left[i] = figures(s.figure)
		default:
			left[i] = p.join(i, left)
		}
	}
	return left
}

// taken gives the last steps of what a step takes; none takes more than there are
// steps.
func (p *program) taken(i int) []int {
	all := make([]int, p.steps[i].Takes)
	last := i - 1
	for k := len(all) - 1; k >= 0; k-- {
		all[k] = last
		last = p.steps[last].First - 1
	}
	return all
}

func (p *program) join(i int, left []value) value {
	s := &p.steps[i]
	taken := p.taken(i)
	a := &left[taken[0]]
	switch {
	case s.Kind == schema.StepChoose:
		return choose(a, &left[taken[1]], &left[taken[2]])
	case s.Kind == schema.StepCall:
		return call(s, taken, left)
	case s.Name == schema.SignNot:
		v := *a
		v.truth = !a.truth
		return v
	case s.Name == schema.SignNegate:
		v := *a
		v.number = -a.number
		return v
	}
	b := &left[taken[1]]
	switch s.Name {
	case schema.SignAnd:
		return both(a, b, false)
	case schema.SignOr:
		return both(a, b, true)
	}
	if v := unknown(a, b); !v.known() {
		return v
	}
	return p.sign(s, taken, a, b)
}

// both joins two conditions of which one decides alone when it comes to what
// decides.
func both(a, b *value, decides bool) value {
	for _, v := range []*value{a, b} {
		if v.known() && v.truth == decides {
			return value{truth: decides}
		}
	}
	if v := unknown(a, b); !v.known() {
		return v
	}
	return value{truth: !decides}
}

// choose takes one of two results.
func choose(condition, yes, no *value) value {
	switch {
	case condition.known() && condition.truth:
		return *yes
	case condition.known():
		return *no
	}
	return *condition
}

// unknown gathers what keeps values from being known.
func unknown(all ...*value) value {
	var v value
	for _, one := range all {
		if one.known() {
			continue
		}
		v.missing = analysis.MergeMissing(v.missing, one.missing)
		if v.fault == "" {
			v.fault = one.fault
		}
	}
	return v
}

func call(s *step, taken []int, left []value) value {
	all := make([]*value, len(taken))
	for k, t := range taken {
		all[k] = &left[t]
	}
	v := unknown(all...)
	if !v.known() {
		return v
	}
	v.number = all[0].number
	for _, one := range all {
		switch s.Name {
		case schema.FunctionLeast:
			v.number = min(v.number, one.number)
		case schema.FunctionMost:
			v.number = max(v.number, one.number)
		default:
			v.number = math.Abs(one.number)
		}
	}
	return v
}

// sign joins two values that are known.
func (p *program) sign(s *step, taken []int, a, b *value) value {
	var v value
	number := p.steps[taken[0]].kind == Number
	switch s.Name {
	case schema.SignAdd:
		v.number = a.number + b.number
	case schema.SignSubtract:
		v.number = a.number - b.number
	case schema.SignMultiply:
		v.number = a.number * b.number
	case schema.SignDivide:
		if b.number == 0 { // what is not there at all, such as no loudspeakers
			v.fault = fmt.Sprintf("%s cannot be worked out: %s is 0", s.Span.Text(), p.steps[taken[1]].Span.Text())
			return v
		}
		v.number = a.number / b.number
	case schema.SignLess:
		v.truth = !quantity.AtLeast(a.number, b.number)
	case schema.SignAtMost:
		v.truth = quantity.AtMost(a.number, b.number)
	case schema.SignGreater:
		v.truth = !quantity.AtMost(a.number, b.number)
	case schema.SignAtLeast:
		v.truth = quantity.AtLeast(a.number, b.number)
	case schema.SignEqual, schema.SignDiffers:
		equal := a.text == b.text && a.truth == b.truth
		if number {
			equal = quantity.AtMost(a.number, b.number) && quantity.AtLeast(a.number, b.number)
		}
		v.truth = equal == (s.Name == schema.SignEqual)
	}
	if math.IsNaN(v.number) || math.IsInf(v.number, 0) {
		v = value{fault: fmt.Sprintf("%s comes to a number beyond any use", s.Span.Text())}
	}
	return v
}
