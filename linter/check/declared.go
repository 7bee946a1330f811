package check

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/schema/quantity"
)

// Written gives the parameter as criteria would set it to a value:
// warning_margin = "10 %".
func (p *Param) Written(value float64) string { return p.written(p.Unit.Format(value)) }

// Exactly does the same with as many digits as the value has, so that it is the
// same when it is read again.
func (p *Param) Exactly(value float64) string {
	text := p.Unit.Format(value)
	if again, err := p.Unit.Parse(text, p.Unit != Plain && p.Unit != Switch); err == nil && quantity.AtMost(again, value) && quantity.AtLeast(again, value) {
		return p.written(text)
	}
	return p.written(strings.TrimSpace(strconv.FormatFloat(value, 'f', -1, 64) + " " + string(p.Unit)))
}

func (p *Param) written(text string) string {
	if p.Unit != Plain && p.Unit != Switch {
		text = `"` + text + `"`
	}
	return p.Name + " = " + text
}

// Explained gives what the parameter is, what it may be set to and, when it is
// not the check's, where its default comes from: a phrase without full stop.
func (p *Param) Explained() string {
	text := p.Doc
	if p.Unit != Switch {
		text += fmt.Sprintf("; from %s to %s", p.Unit.Format(p.Low), p.Unit.Format(p.High))
	}
	if p.Basis != "" {
		text += "; " + p.Basis
	}
	return text
}

// Criteria gives the block of a design or criteria file that sets the check's
// parameters, filled with what holds without it. A check without parameters can
// only be given a severity.
func (c *Check) Criteria() string {
	var b strings.Builder
	fmt.Fprintf(&b, "criteria {\n  limit %q {\n", c.ID)
	width := 0
	for i := range c.Params {
		width = max(width, len(c.Params[i].Name))
	}
	for i := range c.Params {
		name, value, _ := strings.Cut(c.Params[i].Written(c.Params[i].Default), " = ")
		fmt.Fprintf(&b, "    %-*s = %s\n", width, name, value)
	}
	if len(c.Params) == 0 {
		fmt.Fprintf(&b, "    severity = %q\n", c.Severity)
	}
	b.WriteString("  }\n}\n")
	return b.String()
}
