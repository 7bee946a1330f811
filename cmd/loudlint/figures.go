package main

import (
	"fmt"
	"io"
	"slices"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter/criterion"
	"loudlint/linter/textout"
)

func figuresCommand(p *Process) *cli.Command {
	var page pageFlags
	return &cli.Command{
		Name:      "figures",
		Arguments: "[PART...]",
		Summary:   "list the figures that a criterion can compare",
		About: []string{
			"Lists, for each kind of part that a criterion can be asked of, the figures that its condition and message can name, with what each is. " +
				"Names of numbers end in their unit; beside one stands a number in that unit, or a figure with its unit in quotes.",
		},
		Flags:    page.declare(),
		Examples: []cli.Example{{Line: "loudlint figures line space", Does: "list those of lines and spaces"}},
		Offer:    offerAsked,
		Run: func(arguments []string) int {
			sections, err := figureSections(arguments)
			if err != nil {
				return p.misunderstood(err, "figures")
			}
			return p.say(p.Out, func(w io.Writer) error {
				return textout.WriteSections(w, sections, p.page(page.colour, page.width))
			})
		},
	}
}

func offerAsked() []cli.Choice {
	var choices []cli.Choice
	for _, k := range criterion.Kinds() {
		choices = append(choices, cli.Choice{Word: k.Each, Says: k.Doc})
	}
	return choices
}

// figureSections lists the figures of the kinds that are named, or of all.
func figureSections(named []string) ([]textout.Section, error) {
	kinds := criterion.Kinds()
	var known []string
	for _, k := range kinds {
		known = append(known, k.Each)
	}
	for _, word := range named {
		if !slices.Contains(known, word) {
			return nil, cli.Unknown(fmt.Sprintf("A criterion is never asked of %q.", word), word, known)
		}
	}
	var sections []textout.Section
	for _, k := range kinds {
		if len(named) > 0 && !slices.Contains(named, k.Each) {
			continue
		}
		s := textout.Section{Title: fmt.Sprintf("each = %q", k.Each)}
		for _, d := range k.Figures {
			s.Rows = append(s.Rows, textout.Row{Name: d.Name, Text: d.Explained()})
		}
		sections = append(sections, s)
	}
	return sections, nil
}
