package linter

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"loudlint/linter/check"
	"loudlint/linter/criterion"
	"loudlint/schema"
	"loudlint/schema/source"
)

// InForce is one check with what holds for a design.
type InForce struct {
	Check  *check.Check
	Limits check.Limits
	// Severity is what criteria set for all its findings; 0 when each has its own.
	Severity check.Severity
	// Off tells that it is not asked.
	Off bool
	// Origin is where criteria set the severity or turned the check off; zero
	// when they did not.
	Origin source.Span
}

func inForce(plan []asked) []InForce {
	all := make([]InForce, len(plan))
	for i, p := range plan {
		all[i] = InForce{Check: p.check, Limits: p.limits, Severity: p.severity, Off: p.off, Origin: p.setAt}
	}
	return all
}

// LimitsInForce gives what holds for the checks in a design, without asking
// them. With problems nothing holds.
func LimitsInForce(design *schema.Design, options Options) ([]InForce, []schema.Problem) {
	own, problems := ownChecks(design, options)
	if len(problems) > 0 {
		return nil, problems
	}
	options.Checks = slices.Concat(options.Checks, own)
	plan, problems := planOf(design, options)
	if len(problems) > 0 {
		return nil, problems
	}
	return inForce(plan), nil
}

// SpecificationProblems tells what is wrong with a specification, before any
// design is held against it. Limits of criterions that only a design may have
// are not told.
func SpecificationProblems(options Options) []schema.Problem {
	alone := *options.Specification
	alone.Criteria = nil
	own, problems := criterion.Checks(alone.Criterions)
	options.Checks = slices.Concat(options.Checks, own)
	for _, c := range options.Specification.Criteria {
		known := *c
		known.Limits = slices.DeleteFunc(slices.Clone(c.Limits), func(l *schema.Limit) bool {
			return strings.HasPrefix(l.Name, criterion.Prefix) && !slices.ContainsFunc(own, func(o *check.Check) bool { return o.ID == l.Name })
		})
		alone.Criteria = append(alone.Criteria, &known)
	}
	options.Specification = &alone
	_, more := planOf(&schema.Design{}, options)
	return append(problems, more...)
}

// ownChecks makes checks of the criterions of a design, and over them those of
// the specification it is held against.
func ownChecks(design *schema.Design, options Options) ([]*check.Check, []schema.Problem) {
	all := design.Criterions
	if options.Specification != nil {
		all = schema.LayCriterions(all, options.Specification.Criterions)
	}
	return criterion.Checks(all)
}

// planOf applies the criteria of a design to the checks, and over them those of
// the specification it is held against. Of two settings of one parameter the
// later one counts.
func planOf(design *schema.Design, options Options) ([]asked, []schema.Problem) {
	var plan []asked
	for _, c := range options.Checks {
		if options.Only != nil && !slices.Contains(options.Only, c.ID) {
			continue
		}
		plan = append(plan, asked{check: c, limits: check.DefaultLimits(c), off: c.Off})
	}
	all := design.Criteria
	if options.Specification != nil {
		all = slices.Concat(all, options.Specification.Criteria)
	}
	return plan, applyCriteria(plan, options.Checks, all)
}

func applyCriteria(plan []asked, all []*check.Check, criteria []*schema.Criteria) []schema.Problem {
	var problems []schema.Problem
	for _, c := range criteria {
		for _, limit := range c.Limits {
			problems = append(problems, applyLimit(plan, all, limit)...)
		}
	}
	return problems
}

func applyLimit(plan []asked, all []*check.Check, limit *schema.Limit) []schema.Problem {
	c, nearest := checkNamed(limit.Name, all)
	if c == nil {
		return []schema.Problem{{Span: limit.NameSpan, Found: fmt.Sprintf("There is no check %q.", limit.Name), Expected: "`loudlint checks` lists them.", Nearest: quotedOr(nearest)}}
	}
	at := slices.IndexFunc(plan, func(a asked) bool { return a.check == c })
	var problems []schema.Problem
	for _, s := range severityLast(limit.Settings) {
		if s.Name == "severity" {
			severity, ok := check.ParseSeverity(s.Value.V)
			if !ok && s.Value.V != "off" {
				problems = append(problems, schema.Problem{Span: s.Value.Span, Found: fmt.Sprintf("%q is no severity.", s.Value.V), Expected: `Severity is "error", "warning", "note" or "off".`, Nearest: quotedOr(schema.Nearest(s.Value.V, []string{"error", "warning", "note", "off"}))})
			} else if at >= 0 {
				plan[at].severity, plan[at].off, plan[at].setAt = severity, !ok, s.Value.Span
			}
			continue
		}
		param := paramOf(c, s.Name)
		if param == nil {
			problems = append(problems, unknownParam(c, s))
			continue
		}
		value, err := param.Unit.Parse(s.Value.V, s.Quoted)
		if err != nil {
			problems = append(problems, schema.Problem{Span: s.Value.Span, Found: fmt.Sprintf("%s of %s: %v.", s.Name, c.ID, err), Expected: fmt.Sprintf("It is written like its default: %s.", param.Written(param.Default))})
			continue
		}
		if !(value >= param.Low && value <= param.High) {
			problems = append(problems, schema.Problem{Span: s.Value.Span, Found: fmt.Sprintf("%s of %s cannot be %s.", s.Name, c.ID, s.Value.V), Expected: fmt.Sprintf("It lies between %s and %s.", param.Unit.Format(param.Low), param.Unit.Format(param.High))})
			continue
		}
		if at >= 0 {
			if plan[at].off {
				plan[at].off, plan[at].setAt = false, source.Span{}
			}
			plan[at].limits = plan[at].limits.With(check.Limit{Param: param, Value: value, Origin: s.Value.Span})
		}
	}
	return problems
}

// severityLast puts the severity behind the parameters: a check that is off stays
// off, whatever else the same block sets.
func severityLast(settings []schema.Setting) []schema.Setting {
	sorted := slices.Clone(settings)
	slices.SortStableFunc(sorted, func(a, b schema.Setting) int {
		return cmp.Compare(strings.Count(a.Name, "severity"), strings.Count(b.Name, "severity"))
	})
	return sorted
}

func paramOf(c *check.Check, name string) *check.Param {
	for i := range c.Params {
		if c.Params[i].Name == name {
			return &c.Params[i]
		}
	}
	return nil
}

func unknownParam(c *check.Check, s schema.Setting) schema.Problem {
	names := []string{"severity"}
	for _, p := range c.Params {
		names = append(names, p.Name)
	}
	return schema.Problem{Span: s.NameSpan, Found: fmt.Sprintf("%s has no parameter %q.", c.ID, s.Name), Expected: fmt.Sprintf("It has: %s.", strings.Join(names, ", ")), Nearest: schema.Nearest(s.Name, names)}
}

func quotedOr(text string) string {
	if text == "" {
		return ""
	}
	return `"` + text + `"`
}
