package cli

import (
	"embed"
	"fmt"
	"slices"
	"strings"
)

// What a shell completes is decided here, not in its script: a script hands over
// the words typed so far and shows what it gets.

//go:embed scripts
var scripts embed.FS

// Shells names the shells that have a script.
func Shells() []Choice {
	return []Choice{{"bash", "GNU Bash"}, {"fish", "fish"}, {"zsh", "Z shell"}}
}

// Script gives the text that teaches a shell to complete this program.
func Script(shell string) (string, error) {
	text, err := scripts.ReadFile("scripts/loudlint." + shell)
	if err != nil {
		return "", Unknown(fmt.Sprintf("There is no completion for the shell %q.", shell), shell, wordsOf(Shells()))
	}
	return string(text), nil
}

// Offer gives what could stand for the last of the words that follow the
// program's name, and whether files and folders could.
func (p *Program) Offer(words []string) (choices []Choice, files bool) {
	if len(words) == 0 {
		return nil, false
	}
	words = joined(words)
	typed := words[len(words)-1]
	if len(words) == 1 {
		for _, c := range p.Commands {
			choices = append(choices, Choice{c.Name, c.Summary})
		}
		return beginning(choices, typed), false
	}
	c := p.Find(words[0])
	if c == nil {
		return nil, false
	}
	if slices.Contains(words[1:len(words)-1], "--") {
		return c.offerArgument(typed)
	}
	if name, value, ok := strings.Cut(typed, "="); ok && strings.HasPrefix(name, "-") {
		choices, files = offerValue(c.flag(name), value)
		for i := range choices {
			choices[i].Word = name + "=" + choices[i].Word
		}
		return choices, files
	}
	if before := words[len(words)-2]; len(words) > 2 && strings.HasPrefix(before, "-") && !strings.Contains(before, "=") {
		if f := c.flag(before); f != nil && f.Value != "" {
			return offerValue(f, typed)
		}
	}
	if strings.HasPrefix(typed, "-") {
		for _, f := range c.Flags {
			for _, word := range f.words() {
				choices = append(choices, Choice{word, f.Doc})
			}
		}
		return beginning(append(choices, Choice{"--help", "say what " + c.Name + " does"}), typed), false
	}
	return c.offerArgument(typed)
}

func (c *Command) offerArgument(typed string) ([]Choice, bool) {
	switch {
	case c.Arguments == "":
		return nil, false
	case c.Offer == nil:
		return nil, true
	}
	return beginning(c.Offer(), typed), false
}

// offerValue completes the last word of a list, too.
func offerValue(f *Flag, typed string) ([]Choice, bool) {
	switch {
	case f == nil || f.Value == "":
		return nil, false
	case f.Offer == nil:
		return nil, true
	}
	before, last := "", typed
	if at := strings.LastIndexByte(typed, ','); at >= 0 && strings.Contains(f.Value, ",") {
		before, last = typed[:at+1], typed[at+1:]
	}
	choices := beginning(f.Offer(), last)
	for i := range choices {
		choices[i].Word = before + choices[i].Word
	}
	return choices, false
}

func beginning(all []Choice, typed string) []Choice {
	var some []Choice
	for _, c := range all {
		if strings.HasPrefix(c.Word, typed) {
			some = append(some, c)
		}
	}
	return some
}

// joined undoes how bash splits words at "=": --format = li is --format li, as
// far as completing goes.
func joined(words []string) []string {
	var all []string
	for i, w := range words {
		if w == "=" && i > 0 && strings.HasPrefix(words[i-1], "-") {
			if i == len(words)-1 {
				all = append(all, "")
			}
			continue
		}
		all = append(all, w)
	}
	return all
}
