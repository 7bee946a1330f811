package analysis

import (
	"math"
	"strconv"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// term is one summand of a load.
type term struct {
	text    string // "6 W", without the count
	watts   float64
	count   int
	ohm     string // the same as an impedance: "8 ohm"
	assumed bool
	from    source.Span
}

// sum is a sum of loads in which equal summands are counted together.
type sum struct {
	terms []term
	index map[termKey]int // once there are more than a few
}

// termKey is what makes two summands equal: one power, however it is written,
// unless it has an explanation of its own.
type termKey struct {
	watts     float64
	ohm       string
	explained string
	assumed   bool
}

func (t *term) key() termKey {
	k := termKey{watts: t.watts, ohm: t.ohm, assumed: t.assumed}
	if strings.Contains(t.text, "(") {
		k.watts, k.explained = 0, t.text
	}
	return k
}

// few is how many summands are looked through one by one.
const few = 16

func (s *sum) add(t term) {
	key := t.key()
	if s.index == nil {
		for i := range s.terms {
			if s.terms[i].key() == key {
				s.terms[i].count += t.count
				return
			}
		}
	} else if i, ok := s.index[key]; ok {
		s.terms[i].count += t.count
		return
	}
	s.terms = append(s.terms, t)
	if s.index != nil {
		s.index[key] = len(s.terms) - 1
	} else if len(s.terms) > few {
		s.index = make(map[termKey]int, 2*few)
		for i := range s.terms {
			s.index[s.terms[i].key()] = i
		}
	}
}

func (s *sum) addAll(more []term) {
	for _, t := range more {
		s.add(t)
	}
}

// total adds up, and says how much of it is assumed.
func (s *sum) total() (total, assumed quantity.Power) {
	for i := range s.terms {
		watts := quantity.Power(float64(s.terms[i].count) * s.terms[i].watts)
		total += watts
		if s.terms[i].assumed {
			assumed += watts
		}
	}
	return total, assumed
}

// figure gives the sum with its arithmetic, as a person would write it.
func (s *sum) figure() Figure[quantity.Power] {
	total, _ := s.total()
	f := Figure[quantity.Power]{Value: total, From: s.places()}
	if len(s.terms) > 0 {
		f.Sum = s.written(func(t *term) string { return t.text }) + " = " + total.String()
	}
	return f
}

// written joins the summands, each with its count.
func (s *sum) written(text func(*term) string) string {
	written := make([]string, len(s.terms))
	for i := range s.terms {
		written[i] = strconv.Itoa(s.terms[i].count) + " × " + text(&s.terms[i])
	}
	return terms(written)
}

func (s *sum) places() []schema.Place {
	const most = 12
	var places []schema.Place
	for i := range s.terms {
		t := &s.terms[i]
		if len(places) == most {
			break
		}
		if t.from.IsZero() {
			continue
		}
		text := t.text
		if text == "" {
			text = t.ohm
		}
		places = append(places, schema.Place{Span: t.from, Note: strconv.Itoa(t.count) + " × " + text})
	}
	return places
}

// divided gives the sum of one of n equal parts.
func (s *sum) divided(n int) *sum {
	each := &sum{terms: make([]term, len(s.terms))}
	copy(each.terms, s.terms)
	for i := range each.terms {
		each.terms[i].count /= max(n, 1)
	}
	return each
}

// same tells that two powers are equal but for rounding.
func same(a, b float64) bool { return math.Abs(a-b) <= 1e-9*math.Abs(b) }
