package cli

import (
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/textout"
)

// WriteHelp writes the page about the program. Its errors are those of w.
func (p *Program) WriteHelp(w io.Writer, o textout.Options) error {
	commands := textout.Section{Title: "Commands"}
	for _, c := range p.Commands {
		commands.Rows = append(commands.Rows, textout.Row{Name: c.Name, Text: c.Summary})
	}
	return write(w, o, append([]string{p.Summary}, p.About...), []textout.Section{commands}, []string{
		fmt.Sprintf("%s help COMMAND, or %s COMMAND --help, says more about one.", p.Name, p.Name),
	})
}

// WriteHelp writes the page about a command. Its errors are those of w.
func (c *Command) WriteHelp(w io.Writer, program string, o textout.Options) error {
	call := program + " " + c.Name
	if len(c.Flags) > 0 {
		call += " [FLAGS]"
	}
	if c.Arguments != "" {
		call += " " + c.Arguments
	}
	var sections []textout.Section
	section := func(title string, rows []textout.Row) {
		if len(rows) > 0 {
			sections = append(sections, textout.Section{Title: title, Rows: rows})
		}
	}
	var flags, statuses, examples []textout.Row
	for _, f := range c.Flags {
		words := f.words()
		slices.Reverse(words) // the short one first, as people look for it
		flags = append(flags, textout.Row{Name: strings.TrimSpace(strings.Join(words, ", ") + " " + f.Value), Text: f.Doc})
	}
	for _, s := range c.Statuses {
		statuses = append(statuses, textout.Row{Name: strconv.Itoa(s.Status), Text: s.Means})
	}
	for _, e := range c.Examples {
		examples = append(examples, textout.Row{Name: e.Line, Text: e.Does})
	}
	section("Flags", flags)
	section("Exit status", statuses)
	section("Examples", examples)
	return write(w, o, append([]string{call}, c.About...), sections, nil)
}

// write puts a page together: paragraphs, sections, paragraphs.
func write(w io.Writer, o textout.Options, before []string, sections []textout.Section, after []string) error {
	if err := textout.WriteText(w, before, o); err != nil {
		return err
	}
	for _, s := range sections {
		if _, err := io.WriteString(w, "\n"); err != nil {
			return err
		}
		if err := textout.WriteSections(w, []textout.Section{s}, o); err != nil {
			return err
		}
	}
	if len(after) == 0 {
		return nil
	}
	if _, err := io.WriteString(w, "\n"); err != nil {
		return err
	}
	return textout.WriteText(w, after, o)
}
