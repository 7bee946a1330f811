package linter

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"loudlint/linter/check"
	"loudlint/schema"
)

// Rename is a part that had another name before.
type Rename struct {
	Kind string // as in check.Step
	Line string // the line that a device stands on, by its name now; "" for other parts
	Was  string
	Is   string
}

// Identities names outcomes, in their order, by what they are about, never by
// where they stand or what number they found: check, subject and key, and an
// ordinal where these are equal. With renames the names are those of before.
func Identities(outcomes []check.Outcome, renames []Rename) []string {
	before := SubjectBefore(renames)
	seen := make(map[string]int, len(outcomes))
	all := make([]string, len(outcomes))
	for i := range outcomes {
		o := &outcomes[i]
		id := o.Check.ID + ": " + before(o.Subject).String()
		if o.Key != "" {
			id += ", " + keyBefore(o.Key, renames)
		}
		seen[id]++
		if n := seen[id]; n > 1 {
			id += " (" + strconv.Itoa(n) + ")"
		}
		all[i] = id
	}
	return all
}

// SubjectBefore gives a function that says of a subject what it was called before
// parts were renamed.
func SubjectBefore(renames []Rename) func(check.Subject) check.Subject {
	if len(renames) == 0 {
		return func(s check.Subject) check.Subject { return s }
	}
	was := make(map[Rename]string, len(renames)) // by everything but Was
	for _, r := range renames {
		key := r
		key.Was = ""
		was[key] = r.Was
	}
	return func(s check.Subject) check.Subject {
		before := check.Subject{Span: s.Span, Path: make([]check.Step, len(s.Path))}
		line := ""
		for i, step := range s.Path {
			name, renamed := was[Rename{Kind: step.Kind, Line: line, Is: step.Name}]
			if step.Kind == "line" {
				line = step.Name
			}
			if renamed {
				step.Name = name
			}
			before.Path[i] = step
		}
		return before
	}
}

// keyBefore puts old names into a key, which is made of words and names.
func keyBefore(key string, renames []Rename) string {
	for _, r := range renames {
		key = replaceName(key, r.Is, r.Was)
	}
	return key
}

// replaceName replaces a name where it stands by itself, not as a piece of
// another word.
func replaceName(text, name, with string) string {
	if name == "" {
		return text
	}
	var b strings.Builder
	for rest := text; ; {
		at := strings.Index(rest, name)
		if at < 0 {
			b.WriteString(rest)
			return b.String()
		}
		before, _ := utf8.DecodeLastRuneInString(rest[:at])
		after, _ := utf8.DecodeRuneInString(rest[at+len(name):])
		b.WriteString(rest[:at])
		if inWord(before) || inWord(after) {
			b.WriteString(name)
		} else {
			b.WriteString(with)
		}
		rest = rest[at+len(name):]
	}
}

func inWord(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// Formerly lists the parts of a design that say what they were called before.
func Formerly(d *schema.Design) []Rename {
	var all []Rename
	add := func(kind, line string, p *schema.Part) {
		if p.Formerly.Set() && p.Formerly.V != p.Name {
			all = append(all, Rename{Kind: kind, Line: line, Was: p.Formerly.V, Is: p.Name})
		}
	}
	for part := range d.Named() {
		add(part.Kind, part.Line, part.Part)
	}
	return all
}
