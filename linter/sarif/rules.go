package sarif

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/internal/jsonstream"
	"loudlint/schema/wording"
)

// rules are the descriptors of the checks of a result, and where each stands.
type rules struct {
	descriptors []reportingDescriptor
	indexes     map[*check.Check]int
}

func rulesOf(checks []*check.Check) *rules {
	r := &rules{descriptors: make([]reportingDescriptor, len(checks)), indexes: make(map[*check.Check]int, len(checks))}
	for i, c := range checks {
		r.descriptors[i] = descriptorOf(c)
		r.indexes[c] = i
	}
	return r
}

// with adds the checks of one design's own.
func (r *rules) with(own []*check.Check) *rules {
	if len(own) == 0 {
		return r
	}
	all := &rules{descriptors: slices.Clone(r.descriptors), indexes: maps.Clone(r.indexes)}
	for _, c := range own {
		all.indexes[c] = len(all.descriptors)
		all.descriptors = append(all.descriptors, descriptorOf(c))
	}
	return all
}

// index gives the place of a check among the rules, nil when it is not there.
func (r *rules) index(c *check.Check) *int {
	if i, ok := r.indexes[c]; ok {
		return &i
	}
	return nil
}

// named gives the place of a check of that id among the rules, nil when it is not
// there.
func (r *rules) named(id string) *int {
	for i := range r.descriptors {
		if r.descriptors[i].ID == id {
			return &i
		}
	}
	return nil
}

func descriptorOf(c *check.Check) reportingDescriptor {
	d := reportingDescriptor{
		ID:                   c.ID,
		ShortDescription:     &message{Text: escaped(wording.Sentence(c.Summary))},
		FullDescription:      &message{Text: escaped(strings.TrimSpace(wording.Sentence(c.Why) + " " + wording.Sentence(c.How)))},
		Help:                 &message{Text: escaped(helpOf(c, plainText)), Markdown: escaped(helpOf(c, markdown))},
		DefaultConfiguration: &reportingConfiguration{Level: c.Severity.String()},
		Properties:           &ruleProperties{Asks: c.Asks, Basis: c.Basis, Blind: c.Blind, Cautions: c.Cautions},
	}
	if c.Off {
		d.DefaultConfiguration.Enabled = new(bool)
	}
	if len(c.Params) > 0 {
		d.DefaultConfiguration.Parameters = make(map[string]any, len(c.Params))
	}
	for _, p := range c.Params {
		one := parameterOf(p)
		d.DefaultConfiguration.Parameters[p.Name] = one.Default
		d.Properties.Parameters = append(d.Properties.Parameters, one)
	}
	return d
}

func parameterOf(p check.Param) parameter {
	one := parameter{Name: p.Name, Description: p.Doc, Unit: string(p.Unit), Basis: p.Basis}
	if p.Unit == check.Switch {
		one.Default = p.Default >= 0.5
		return one
	}
	low, high := jsonstream.Number(p.Low), jsonstream.Number(p.High)
	one.Default, one.Low, one.High = jsonstream.Number(p.Default), &low, &high
	return one
}

// overrides tells what criteria changed for a design: which checks they turned
// off or on, what severity all findings of a check have, and its parameters.
func (r *rules) overrides(j *linter.Judged) []configurationOverride {
	var all []configurationOverride
	for _, f := range j.InForce {
		o := configurationOverride{
			Configuration: reportingConfiguration{Parameters: changedParameters(f)},
			Descriptor:    reportingDescriptorReference{ID: f.Check.ID, Index: r.index(f.Check)},
		}
		if f.Off != f.Check.Off {
			enabled := !f.Off
			o.Configuration.Enabled = &enabled
		}
		if f.Severity != 0 {
			o.Configuration.Level = f.Severity.String()
		}
		if o.Configuration.Enabled != nil || o.Configuration.Level != "" || len(o.Configuration.Parameters) > 0 {
			all = append(all, o)
		}
	}
	return all
}

func changedParameters(f linter.InForce) map[string]any {
	changed := map[string]any{}
	for i := range f.Check.Params {
		p := &f.Check.Params[i]
		switch l := f.Limits.Get(p.Name); {
		case l.Origin.IsZero():
		case p.Unit == check.Switch:
			changed[p.Name] = l.On()
		default:
			changed[p.Name] = jsonstream.Number(l.Value)
		}
	}
	return changed
}

// markup is how a help text is written.
type markup int

const (
	plainText markup = iota
	markdown
)

func (m markup) title(text string) string {
	if m == markdown {
		return "**" + text + "**\n\n"
	}
	return text + ":\n"
}

func (m markup) code(text string) string {
	if m == markdown {
		return "`" + text + "`"
	}
	return text
}

// helpOf tells everything about a check that its descriptions do not.
func helpOf(c *check.Check, m markup) string {
	var sections []string
	section := func(title string, lines ...string) {
		if text := strings.TrimSpace(strings.Join(lines, "")); text != "" {
			sections = append(sections, m.title(title)+text)
		}
	}
	section("What is asked", c.Asks)
	section("Where the limits come from", wording.Sentence(c.Basis))
	section("What is not seen", wording.Sentence(c.Blind))
	section("Limits that criteria can set", items(c.Params, func(p check.Param) string { return paramHelp(p, m) })...)
	section("Mind", items(c.Cautions, wording.Sentence)...)
	return strings.Join(sections, "\n\n")
}

func paramHelp(p check.Param, m markup) string {
	text := fmt.Sprintf("%s: %s; %s unless set", m.code(p.Name), p.Doc, p.Unit.Format(p.Default))
	if p.Unit != check.Switch {
		text += fmt.Sprintf(", %s to %s", p.Unit.Format(p.Low), p.Unit.Format(p.High))
	}
	if p.Basis != "" {
		text += "; " + p.Basis
	}
	return text + "."
}

func items[T any](all []T, text func(T) string) []string {
	lines := make([]string, len(all))
	for i, one := range all {
		lines[i] = "- " + text(one) + "\n"
	}
	return lines
}
