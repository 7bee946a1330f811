package main

import (
	"io"

	"loudlint/cmd/loudlint/internal/cli"
)

func helpCommand(p *Process, program *cli.Program) *cli.Command {
	return &cli.Command{
		Name:      "help",
		Arguments: "[COMMAND]",
		Summary:   "say what there is, or more about one command",
		About:     []string{"Says which commands there are, or what one of them does, its flags and its exit status."},
		Offer: func() []cli.Choice {
			var choices []cli.Choice
			for _, c := range program.Commands {
				choices = append(choices, cli.Choice{Word: c.Name, Says: c.Summary})
			}
			return choices
		},
		Run: func(arguments []string) int {
			page := p.page("auto", 0)
			switch len(arguments) {
			case 0:
				return p.say(p.Out, func(w io.Writer) error { return program.WriteHelp(w, page) })
			case 1:
				c := program.Find(arguments[0])
				if c == nil {
					return p.misunderstood(program.NoCommand(arguments[0]), "help")
				}
				return p.say(p.Out, func(w io.Writer) error { return c.WriteHelp(w, name, page) })
			}
			return p.misunderstood(&cli.CallError{Found: "help takes one command at a time."}, "help")
		},
	}
}
