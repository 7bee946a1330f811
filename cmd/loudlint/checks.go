package main

import (
	"io"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter/textout"
	"loudlint/rules"
)

func checksCommand(p *Process) *cli.Command {
	var page pageFlags
	return &cli.Command{
		Name:    "checks",
		Summary: "list the checks",
		About: []string{
			"Lists every check by what it is about: its name, the gravest severity of its findings, and what a finding means. A check that is off answers only where criteria set a limit or a severity of it.",
		},
		Flags: page.declare(),
		Run: func([]string) int {
			return p.say(p.Out, func(w io.Writer) error {
				return textout.WriteSections(w, checkSections(), p.page(page.colour, page.width))
			})
		},
	}
}

func checkSections() []textout.Section {
	var sections []textout.Section
	for _, g := range rules.Groups() {
		s := textout.Section{Title: g.Title}
		for _, c := range g.Checks {
			row := textout.Row{Name: c.ID, Mark: c.Severity.String(), Text: c.Summary}
			if c.Off {
				row.Mark = "off"
			}
			s.Rows = append(s.Rows, row)
		}
		sections = append(sections, s)
	}
	return sections
}
