package cli

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
)

// Program is a command line as a whole.
type Program struct {
	Name     string
	Summary  string // what it does, as a sentence
	About    []string
	Commands []*Command
}

// Command is one command of a program.
type Command struct {
	Name      string
	Arguments string   // as the help shows them: "[DESIGN...]"; empty when it takes none
	Summary   string   // for the list of commands: begins with a verb, no full stop
	About     []string // paragraphs of its help page
	Flags     []*Flag
	Statuses  []Status
	Examples  []Example
	// Offer lists what an argument can be, for a shell that completes it; nil
	// for files and folders.
	Offer func() []Choice
	// Run does it and gives the exit status.
	Run func(arguments []string) int
}

// Status is an exit status and what it means.
type Status struct {
	Status int
	Means  string
}

// Example is a command line with what it does.
type Example struct{ Line, Does string }

// Choice is one of several words that may be written.
type Choice struct {
	Word string
	Says string // may be empty
}

// Flag is a flag of a command. It is written --name VALUE or --name=VALUE, or
// --name alone when it is a switch.
type Flag struct {
	Name  string
	Short string // the letter it may be written by: "o" for -o; empty for most
	Value string // what the help calls the value: "FILE"; empty for a switch
	Doc   string // a phrase without full stop
	// Offer lists what the value can be; nil for files and folders.
	Offer func() []Choice
	// Set takes the value, "" for a switch.
	Set func(text string) error
}

// CallError is a call that cannot be understood.
type CallError struct {
	Found string // what was found, as a sentence
	Hint  string // what may help, as a sentence; may be empty
}

// Error gives both sentences.
func (e *CallError) Error() string { return strings.TrimSpace(e.Found + " " + e.Hint) }

// Switch declares a flag without value.
func Switch(to *bool, name, doc string) *Flag {
	return &Flag{Name: name, Doc: doc, Set: func(string) error { *to = true; return nil }}
}

// Text declares a flag with any value but an empty one.
func Text(to *string, name, value, doc string) *Flag {
	return &Flag{Name: name, Value: value, Doc: doc, Set: func(text string) error {
		if text == "" {
			return &CallError{Found: fmt.Sprintf("--%s has an empty value.", name)}
		}
		*to = text
		return nil
	}}
}

// Texts declares a flag that may be given several times.
func Texts(to *[]string, name, value, doc string) *Flag {
	var one string
	f := Text(&one, name, value, doc+"; may be given several times")
	set := f.Set
	f.Set = func(text string) error {
		err := set(text)
		if err == nil {
			*to = append(*to, one)
		}
		return err
	}
	return f
}

// Word declares a flag whose value is one of a few words.
func Word(to *string, name, doc string, choices ...Choice) *Flag {
	words := wordsOf(choices)
	return &Flag{
		Name: name, Value: strings.Join(words, "|"), Doc: doc,
		Offer: func() []Choice { return choices },
		Set: func(text string) error {
			if !slices.Contains(words, text) {
				return Unknown(fmt.Sprintf("--%s cannot be %q.", name, text), text, words)
			}
			*to = text
			return nil
		},
	}
}

// Words declares a flag whose value is one of many words or several of them
// separated by commas; it may be given several times.
func Words(to *[]string, name, value, doc, thing string, offer func() []Choice) *Flag {
	return &Flag{
		Name: name, Value: value + "[," + value + "...]", Doc: doc, Offer: offer,
		Set: func(text string) error {
			words := wordsOf(offer())
			for word := range strings.SplitSeq(text, ",") {
				word = strings.TrimSpace(word)
				if !slices.Contains(words, word) {
					return Unknown(fmt.Sprintf("There is no %s %q.", thing, word), word, words)
				}
				*to = append(*to, word)
			}
			return nil
		},
	}
}

// Number declares a flag whose value is a whole number between two.
func Number(to *int, name, value, doc string, least, most int) *Flag {
	return &Flag{Name: name, Value: value, Doc: doc, Offer: func() []Choice { return nil }, Set: func(text string) error {
		n, err := strconv.Atoi(text)
		if err != nil || n < least || n > most {
			return &CallError{Found: fmt.Sprintf("--%s cannot be %q.", name, text), Hint: fmt.Sprintf("It is a whole number from %d to %d.", least, most)}
		}
		*to = n
		return nil
	}}
}

// Unknown is the problem of a word that is none of those known, with the
// nearest of them, or all when they are few and none is near.
func Unknown(found, word string, known []string) *CallError {
	const few = 8
	p := &CallError{Found: found}
	if near := schema.Nearest(word, known); near != "" {
		p.Hint = fmt.Sprintf("Did you mean %s?", near)
	} else if len(known) > 0 && len(known) <= few {
		p.Hint = fmt.Sprintf("It is one of %s.", strings.Join(known, ", "))
	}
	return p
}

func wordsOf(choices []Choice) []string {
	words := make([]string, len(choices))
	for i, c := range choices {
		words[i] = c.Word
	}
	return words
}

// Find gives the command of a name, or nil.
func (p *Program) Find(name string) *Command {
	for _, c := range p.Commands {
		if c.Name == name {
			return c
		}
	}
	return nil
}

func (p *Program) names() []string {
	names := make([]string, len(p.Commands))
	for i, c := range p.Commands {
		names[i] = c.Name
	}
	return names
}

// NoCommand is the problem of a name that is no command.
func (p *Program) NoCommand(name string) *CallError {
	if strings.HasPrefix(name, "-") {
		return &CallError{Found: fmt.Sprintf("%s stands where a command is expected.", name), Hint: fmt.Sprintf("Flags follow the command, as in %s %s %s.", p.Name, p.Commands[0].Name, name)}
	}
	if strings.ContainsAny(name, `/\.`) {
		return &CallError{Found: fmt.Sprintf("%s stands where a command is expected.", name), Hint: fmt.Sprintf("Did you mean %s %s %s?", p.Name, p.Commands[0].Name, name)}
	}
	problem := Unknown(fmt.Sprintf("There is no command %q.", name), name, p.names())
	return problem
}

// flag gives the flag of a command that a word such as "--output" or "-o" names,
// or nil.
func (c *Command) flag(word string) *Flag {
	for _, f := range c.Flags {
		if word == "--"+f.Name || f.Short != "" && word == "-"+f.Short {
			return f
		}
	}
	return nil
}

// words are what a flag may be written by: "--output" and, if it has one, "-o".
func (f *Flag) words() []string {
	words := []string{"--" + f.Name}
	if f.Short != "" {
		words = append(words, "-"+f.Short)
	}
	return words
}

func (c *Command) flagNames() []string {
	names := make([]string, len(c.Flags))
	for i, f := range c.Flags {
		names[i] = "--" + f.Name
	}
	return names
}
