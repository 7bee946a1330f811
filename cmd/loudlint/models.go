package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter/textout"
	"loudlint/schema"
)

func modelsCommand(p *Process) *cli.Command {
	var kind string
	var page pageFlags
	return &cli.Command{
		Name:      "models",
		Arguments: "[MODEL | WORD...]",
		Summary:   "list the typical models, or show one to copy",
		About: []string{
			"Lists the models every design can use without a catalogue: amplifiers, mixers, loudspeakers, attenuators, microphones, cables and connectors. " +
				"Their figures are invented and typical of a class of device, of no maker: good for a first look, not for an order.",
			"Words behind it leave only the models in whose line all of them stand. The whole name of a model shows it as a block, ready for a catalogue of your own.",
		},
		Flags: append([]*cli.Flag{
			cli.Word(&kind, "kind", "list only one kind of model", kindsOfModels()...),
		}, page.declare()...),
		Examples: []cli.Example{
			{Line: "loudlint models ceiling", Does: "list those for ceilings"},
			{Line: "loudlint models typical/mixer-amp-60", Does: "show one to copy"},
		},
		Offer: offerModels,
		Run: func(arguments []string) int {
			catalogue, err := schema.Typical()
			if err != nil {
				return p.failed(err)
			}
			models := catalogue.Models()
			if len(arguments) == 1 {
				if at := slices.IndexFunc(models, func(m schema.Model) bool { return m.Name == arguments[0] }); at >= 0 {
					return p.say(p.Out, func(w io.Writer) error {
						_, err := io.WriteString(w, toCopy(models[at]))
						return err
					})
				}
			}
			found := matching(models, kind, arguments)
			if len(found) == 0 {
				return p.misunderstood(noModel(models, arguments), "models")
			}
			return p.say(p.Out, func(w io.Writer) error {
				return textout.WriteSections(w, modelSections(found), p.page(page.colour, page.width))
			})
		},
	}
}

// modelEnding ends the names of blocks that state models.
const modelEnding = "_model"

// kindsOfModels lists the kinds, in the order of the catalogue.
func kindsOfModels() []cli.Choice {
	kinds := []cli.Choice{}
	for _, kind := range []string{"amplifier", "mixer", "loudspeaker", "attenuator", "microphone", "cable", "connector"} {
		kinds = append(kinds, cli.Choice{Word: kind})
	}
	return kinds
}

// toCopy gives the block of a model as it can stand in a file of one's own:
// under another name, since those of typical models are taken.
func toCopy(m schema.Model) string {
	return "# The figures are invented: put in those of the data sheet.\n" +
		strings.Replace(m.Block, `"`+m.Name+`"`, `"`+schema.OwnName(m.Name)+`"`, 1) + "\n"
}

func matching(models []schema.Model, kind string, words []string) []schema.Model {
	return slices.DeleteFunc(slices.Clone(models), func(m schema.Model) bool {
		if kind != "" && m.Kind != kind+modelEnding {
			return true
		}
		line := strings.ToLower(m.Name + " " + m.Class + " " + m.Summary)
		return slices.ContainsFunc(words, func(word string) bool { return !strings.Contains(line, strings.ToLower(word)) })
	})
}

func modelSections(models []schema.Model) []textout.Section {
	var sections []textout.Section
	for _, m := range models {
		title := strings.TrimSuffix(m.Kind, modelEnding)
		title = strings.ToUpper(title[:1]) + title[1:] + "s"
		if n := len(sections); n == 0 || sections[n-1].Title != title {
			sections = append(sections, textout.Section{Title: title})
		}
		last := &sections[len(sections)-1]
		last.Rows = append(last.Rows, textout.Row{Name: m.Name, Text: m.Summary})
	}
	return sections
}

func noModel(models []schema.Model, words []string) error {
	names := make([]string, len(models))
	for i, m := range models {
		names[i] = m.Name
	}
	return cli.Unknown(fmt.Sprintf("There is no typical model for %q.", strings.Join(words, " ")), strings.Join(words, "-"), names)
}

// offerModels lists the models for a shell that completes their names.
func offerModels() []cli.Choice {
	catalogue, err := schema.Typical()
	if err != nil {
		return nil
	}
	var choices []cli.Choice
	for _, m := range catalogue.Models() {
		choices = append(choices, cli.Choice{Word: m.Name, Says: m.Summary})
	}
	return choices
}
