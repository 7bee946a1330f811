package cli

import (
	"errors"
	"fmt"
	"strings"
)

// ErrHelp says that help was asked for and nothing else is to be done.
var ErrHelp = errors.New("help was asked for")

// Parse sets the flags of a command from the words behind its name, and gives
// those that are none: flags and arguments may be mixed, and behind "--" every
// word is an argument. The error is ErrHelp or a *CallError.
func (c *Command) Parse(words []string) ([]string, error) {
	var arguments []string
	for len(words) > 0 {
		word := words[0]
		words = words[1:]
		switch {
		case word == "--":
			return c.admit(append(arguments, words...))
		case word == "--help" || word == "-h":
			return nil, ErrHelp
		case word == "-" || !strings.HasPrefix(word, "-"):
			arguments = append(arguments, word)
		default:
			rest, err := c.set(word, words)
			if err != nil {
				return nil, err
			}
			words = rest
		}
	}
	return c.admit(arguments)
}

func (c *Command) admit(arguments []string) ([]string, error) {
	if c.Arguments == "" && len(arguments) > 0 {
		return nil, &CallError{Found: fmt.Sprintf("%s takes no arguments, and there is %q.", c.Name, arguments[0])}
	}
	return arguments, nil
}

// set sets the flag that a word begins, and gives the words that follow.
func (c *Command) set(word string, rest []string) ([]string, error) {
	name, value, joined := strings.Cut(word, "=")
	f := c.flag(name)
	switch {
	case f == nil:
		known := append(c.flagNames(), "--help")
		return nil, Unknown(fmt.Sprintf("%s has no flag %s.", c.Name, name), "--"+strings.TrimLeft(name, "-"), known)
	case f.Value == "" && joined:
		return nil, &CallError{Found: fmt.Sprintf("%s takes no value.", name), Hint: fmt.Sprintf("Write %s alone, or leave it out.", name)}
	case f.Value != "" && !joined:
		if len(rest) == 0 || strings.HasPrefix(rest[0], "--") {
			return nil, &CallError{Found: fmt.Sprintf("%s has no value.", name), Hint: fmt.Sprintf("It is written %s %s.", name, f.Value)}
		}
		value, rest = rest[0], rest[1:]
	}
	return rest, f.Set(value)
}
