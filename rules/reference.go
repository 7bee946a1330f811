package rules

import (
	"fmt"
	"strings"

	"loudlint/linter/check"
)

// reference is a page being written.
type reference struct{ strings.Builder }

// Reference gives the check reference, rules/README.md: all that the checks
// declare, in Markdown. A test keeps the file in step with it.
func Reference() string {
	var b reference
	b.WriteString(`# The checks

This page is made from what the checks declare; ` + "`go test ./rules -update`" + ` writes it. The same is told by
` + "`loudlint explain CHECK`" + `, and SARIF's rules carry it.

A check asks one question of each part it applies to. Its answer is *pass*, *fail* with a severity (*error* breaks
something or someone, *warning* should be put right before ordering, *note* is worth knowing), or *open*: the design does
not say enough. A figure exactly at its limit passes. "Common practice" is a fact of the trade for which no published
source is known.

Limits and severities are set for a job by ` + "`criteria`" + `, in the design or in a file that it uses. ` + "`severity`" + ` there is
` + "`\"error\"`, `\"warning\"`, `\"note\"` or `\"off\"`" + ` and holds for all findings of the check.
Checks of your own are criterions: what they can compare is in [linter/criterion/README.md](../linter/criterion/README.md).

What a check says replaces neither local codes nor licensed practice.
`)
	for _, g := range Groups() {
		if len(g.Checks) == 0 {
			continue
		}
		fmt.Fprintf(&b.Builder, "\n## %s\n\n| check | gravest | a finding means |\n| --- | --- | --- |\n", g.Title)
		for _, c := range g.Checks {
			severity := c.Severity.String()
			if c.Off {
				severity += ", off"
			}
			fmt.Fprintf(&b.Builder, "| [%s](#%s) | %s | %s |\n", c.ID, c.ID, severity, cell(c.Summary))
		}
	}
	for _, c := range All() {
		b.check(c)
	}
	return b.String()
}

func (b *reference) check(c *check.Check) {
	fmt.Fprintf(&b.Builder, "\n## %s\n\n*%s*\n\n%s\n", c.ID, c.Asks, c.Summary)
	if c.Off {
		b.WriteString("\nIt is off until criteria set a limit or a severity of it.\n")
	}
	b.paragraph("Why", c.Why)
	b.paragraph("How", c.How)
	b.paragraph("Basis", c.Basis)
	b.paragraph("Not seen", c.Blind)
	if len(c.Params) > 0 {
		b.WriteString("\n| limit | default | from | to | what it is |\n| --- | --- | --- | --- | --- |\n")
	}
	for i := range c.Params {
		p := &c.Params[i]
		doc := p.Doc
		if p.Basis != "" {
			doc += "; " + p.Basis
		}
		fmt.Fprintf(&b.Builder, "| `%s` | %s | %s | %s | %s |\n", p.Name, p.Unit.Format(p.Default), p.Unit.Format(p.Low), p.Unit.Format(p.High), cell(doc))
	}
	if len(c.Cautions) > 0 {
		b.WriteByte('\n')
	}
	for _, caution := range c.Cautions {
		fmt.Fprintf(&b.Builder, "- Caution: %s\n", caution)
	}
	b.example("Fails", c.Failing)
	b.example("Passes", c.Passing)
	fmt.Fprintf(&b.Builder, "\nSet for a job by:\n\n```hcl\n%s```\n", c.Criteria())
}

func (b *reference) paragraph(title, text string) {
	fmt.Fprintf(&b.Builder, "\n**%s:** %s\n", title, text)
}

func (b *reference) example(title string, e check.Example) {
	fmt.Fprintf(&b.Builder, "\n**%s:** %s\n\n```hcl\n%s\n```\n", title, e.Shows, strings.TrimRight(e.Design, "\n"))
}

// cell writes text that can stand in a table.
func cell(text string) string { return strings.ReplaceAll(text, "|", `\|`) }
