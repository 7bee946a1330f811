package linter

import (
	"slices"
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
	before, names := SubjectBefore(renames), oldNamesOf(renames)
	seen := make(map[string]int, len(outcomes))
	all := make([]string, len(outcomes))
	for i := range outcomes {
		o := &outcomes[i]
		id := o.Check.ID + ": " + before(o.Subject).String()
		if o.Key != "" {
			id += ", " + names.in(o.Key)
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

// Renamed puts what parts were called into a text, where their names stand in it
// by themselves.
func Renamed(text string, renames []Rename) string { return oldNamesOf(renames).in(text) }

// oldNames puts old names into texts.
type oldNames struct {
	was     map[string]string // by the name now
	lengths []int             // of those, in bytes, longest first
}

func oldNamesOf(renames []Rename) *oldNames {
	n := &oldNames{was: make(map[string]string, len(renames))}
	for _, r := range renames {
		if r.Is == "" {
			continue
		}
		n.was[r.Is] = r.Was
		if !slices.Contains(n.lengths, len(r.Is)) {
			n.lengths = append(n.lengths, len(r.Is))
		}
	}
	slices.SortFunc(n.lengths, func(a, b int) int { return b - a })
	return n
}

// in puts old names into a key, which is made of words and names: all at once, for
// one part may have got the name of another. A name counts where it stands by
// itself, not as a piece of another word; of two that begin at one place the
// longer one does.
func (n *oldNames) in(key string) string {
	var b strings.Builder
	last := ' '
	for rest := key; rest != ""; {
		size, text := n.at(rest)
		if size == 0 || inWord(last) {
			_, size = utf8.DecodeRuneInString(rest)
			text = rest[:size]
		}
		b.WriteString(text)
		last, _ = utf8.DecodeLastRuneInString(rest[:size])
		rest = rest[size:]
	}
	return b.String()
}

// at gives the length of the name that a text begins with, and the old one; 0
// when it begins with none.
func (n *oldNames) at(text string) (size int, was string) {
	for _, size := range n.lengths {
		if size > len(text) {
			continue
		}
		if was, ok := n.was[text[:size]]; ok {
			if after, _ := utf8.DecodeRuneInString(text[size:]); !inWord(after) {
				return size, was
			}
		}
	}
	return 0, ""
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
