package analysis

import (
	"slices"
	"strings"

	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Figure is one computed quantity with its arithmetic.
type Figure[Q any] struct {
	Value Q
	// Sum is the arithmetic as a person would write it, the result included:
	// "8 × 6 W + 1 × 3 W = 51 W".
	Sum string
	// From are the places of the inputs that made it.
	From []schema.Place
	// Assumed lists what the design does not say and the figure takes for
	// granted, each as a sentence without its full stop.
	Assumed []string
	// Missing lists what keeps the figure from being known. With any, Value
	// means nothing.
	Missing []Missing
}

// Known tells that the figure could be worked out.
func (f *Figure[Q]) Known() bool { return len(f.Missing) == 0 }

// Missing is something the design does not say and a figure needs.
type Missing struct {
	// What is the thing in words that fit after "not stated:", in the singular
	// and without the name of the part: "tap". Missing things of one What are
	// shown together.
	What string
	// Part is the part it belongs to: `loudspeaker "H"`.
	Part string
	// Where is the header of the part in whose braces it would be written.
	Where source.Span
	// Write is what would be written there: `tap = "6 W"`.
	Write string
}

// missing makes a Missing for an attribute of a part.
func missing(what, kind string, part *schema.Part, write string) Missing {
	return Missing{What: what, Part: named(kind, part.Name), Where: part.Header, Write: write}
}

// named writes a part as it is referred to: kind and name.
func named(kind, name string) string {
	if name == "" {
		return kind
	}
	return kind + ` "` + name + `"`
}

// MergeMissing puts lists together without repeating.
func MergeMissing(lists ...[]Missing) []Missing {
	var all []Missing
	for _, l := range lists {
		for _, m := range l {
			if !slices.Contains(all, m) {
				all = append(all, m)
			}
		}
	}
	return all
}

func mergeTexts(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		for _, t := range l {
			if !slices.Contains(all, t) {
				all = append(all, t)
			}
		}
	}
	return all
}

// given makes a figure of something that is written.
func given[Q any](v schema.Value[Q], note string) Figure[Q] {
	return Figure[Q]{Value: v.V, From: []schema.Place{{Span: v.Span, Note: note}}}
}

// terms joins the terms of a sum; more than a line of them is cut short.
func terms(all []string) string {
	const most = 12
	if len(all) > most {
		return strings.Join(all[:most-1], " + ") + " + … (" + wording.Counted(len(all)-most+1, "more term") + ")"
	}
	return strings.Join(all, " + ")
}
