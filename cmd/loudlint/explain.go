package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter/check"
	"loudlint/linter/criterion"
	"loudlint/linter/textout"
	"loudlint/rules"
)

func explainCommand(p *Process) *cli.Command {
	var page pageFlags
	return &cli.Command{
		Name:      "explain",
		Arguments: "CHECK...",
		Summary:   "tell what a check asks, why, and what it does not see",
		About: []string{
			"Tells all there is to know about a check: what it asks and why, how the figure is computed, its limits and where they come from, " +
				"what it does not see, a design that fails and one that passes, and what to write to set its limits for a job.",
		},
		Flags:    page.declare(),
		Examples: []cli.Example{{Line: "loudlint explain load-margin", Does: "tell about one check"}},
		Offer:    offerChecks,
		Run: func(arguments []string) int {
			checks, err := checksNamed(arguments)
			if err != nil {
				return p.misunderstood(err, "checks")
			}
			return p.say(p.Out, func(w io.Writer) error { return textout.WriteExplanation(w, checks, p.page(page.colour, page.width)) })
		},
	}
}

// checksNamed gives the checks of some names, in the order of these.
func checksNamed(ids []string) ([]*check.Check, error) {
	if len(ids) == 0 {
		return nil, &cli.CallError{Found: "No check is named.", Hint: "A finding names its check, as in loudlint explain " + rules.All()[0].ID + "."}
	}
	all := rules.All()
	known := make([]string, len(all))
	for i, c := range all {
		known[i] = c.ID
	}
	var checks []*check.Check
	for _, id := range ids {
		at := slices.Index(known, id)
		if strings.HasPrefix(id, criterion.Prefix) {
			return nil, &cli.CallError{Found: fmt.Sprintf("%s is a criterion of a design.", id), Hint: fmt.Sprintf("loudlint criteria --only %s DESIGN shows it.", id)}
		}
		if at < 0 {
			return nil, cli.Unknown(fmt.Sprintf("There is no check %q.", id), id, known)
		}
		if !slices.Contains(checks, all[at]) {
			checks = append(checks, all[at])
		}
	}
	return checks, nil
}

// offerChecks lists the checks for a shell that completes their names.
func offerChecks() []cli.Choice {
	var choices []cli.Choice
	for _, c := range rules.All() {
		choices = append(choices, cli.Choice{Word: c.ID, Says: c.Asks})
	}
	return choices
}
