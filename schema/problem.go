package schema

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"loudlint/schema/source"
)

// Problem is one thing in the text that keeps it from being a design.
type Problem struct {
	Span     source.Span
	Found    string // what was found, as a sentence
	Expected string // what is expected instead, as a sentence; may be empty
	Nearest  string // nearest valid choice, as it would be written; may be empty
	Related  []Place
}

// Place is a span with what is to be seen there.
type Place struct {
	Span source.Span
	Note string
}

// String is the problem on one line, without the text it concerns.
func (p Problem) String() string {
	parts := []string{p.Found}
	if p.Expected != "" {
		parts = append(parts, p.Expected)
	}
	if p.Nearest != "" {
		parts = append(parts, "Did you mean "+strings.Join(strings.Fields(p.Nearest), " ")+"?")
	}
	return strings.Join(parts, " ")
}

func sortProblems(problems []Problem) []Problem {
	slices.SortStableFunc(problems, func(a, b Problem) int {
		return cmp.Or(source.Compare(a.Span, b.Span), cmp.Compare(a.Found, b.Found))
	})
	return slices.CompactFunc(problems, func(a, b Problem) bool { return a.Span == b.Span && a.Found == b.Found })
}

// mostCompared bounds the candidates that a wrong name is compared with, so that
// thousands of wrong names in a large design do not take forever.
const mostCompared = 5000

// nearest gives the candidate closest to name, or "" when none is close: at
// most a third of the letters may differ.
func nearest(name string, candidates []string) string {
	folded := fold(name)
	best, bestDistance := "", len(folded)/3+1
	if len(candidates) > mostCompared {
		candidates = candidates[:mostCompared]
	}
	for _, c := range candidates {
		if d := editDistance(folded, fold(c), bestDistance); d < bestDistance || d == bestDistance && best != "" && c < best {
			best, bestDistance = c, d
		}
	}
	if best == "" && len(folded) > 2 { // a word left out or added is no spelling mistake
		for _, c := range candidates {
			if f := fold(c); strings.HasPrefix(f, folded) || strings.HasSuffix(f, folded) || len(f) > 2 && (strings.HasPrefix(folded, f) || strings.HasSuffix(folded, f)) {
				return c
			}
		}
	}
	return best
}

// fold makes names comparable that differ only in case or spaces. Every device of
// a large design goes through it.
func fold(name string) string {
	plain := true
	for i := range len(name) {
		c := name[i]
		if c >= utf8.RuneSelf {
			return strings.ToLower(strings.Join(strings.Fields(name), ""))
		}
		plain = plain && c > ' ' && (c < 'A' || c > 'Z')
	}
	if plain {
		return name
	}
	var b strings.Builder
	b.Grow(len(name))
	for i := range len(name) {
		switch c := name[i]; {
		case c >= 'A' && c <= 'Z':
			b.WriteByte(c | 0x20)
		case c > ' ':
			b.WriteByte(c)
		}
	}
	return b.String()
}

// Alike tells that two names could not be told apart by people: they differ in
// case or spaces at most.
func Alike(a, b string) bool { return fold(a) == fold(b) }

// editDistance counts insertions, deletions, substitutions and swaps of
// neighbours between a and b (optimal string alignment); above limit it gives
// limit+1.
func editDistance(a, b string, limit int) int {
	ra, rb := []rune(a), []rune(b)
	if d := len(ra) - len(rb); d > limit || -d > limit || len(ra) > 200 || len(rb) > 200 {
		return limit + 1
	}
	before, last, row := make([]int, len(rb)+1), make([]int, len(rb)+1), make([]int, len(rb)+1)
	for j := range last {
		last[j] = j
	}
	for i := range ra {
		row[0] = i + 1
		for j := range rb {
			cost := 1
			if ra[i] == rb[j] {
				cost = 0
			}
			row[j+1] = min(last[j+1]+1, row[j]+1, last[j]+cost)
			if i > 0 && j > 0 && ra[i] == rb[j-1] && ra[i-1] == rb[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
		before, last, row = last, row, before
	}
	return min(last[len(rb)], limit+1)
}

// Nearest gives the candidate whose spelling is closest to name, or "" when
// none is close enough to be meant.
func Nearest(name string, candidates []string) string { return nearest(name, candidates) }
