package rules

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// AttenuatorRating asks whether an attenuator carries what it encloses.
var AttenuatorRating = &check.Check{
	ID:      "attenuator-rating",
	Asks:    "Does each attenuator carry what stands behind it?",
	Summary: "An attenuator has more behind it than it is rated for.",
	Why: "An attenuator is a transformer. With more watts behind it than it is made for its core saturates: bass turns to noise, it grows hot, and the amplifier sees a load that falls " +
		"where the music is loudest.",
	How:   "Adds up what every loudspeaker inside the attenuator's braces takes at nominal line voltage, those behind further attenuators inside it too, and compares the sum with the rating.",
	Basis: "the rating on the attenuator's data sheet, which it may reach",
	Blind: "Settings do not count: somebody will turn it fully up. A rating that is stated at another line voltage than the line's is not recalculated. " +
		"What an attenuator takes itself is not added.",
	Severity: check.Error,
	Cautions: []string{"Turning a tap up behind an attenuator adds its watts to what the attenuator carries."},
	Failing: check.Example{
		Shows: "Three loudspeakers of 6 W behind a 12 W attenuator.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    rating = "12 W"
    loudspeaker "B" {
      quantity = 3
      tap      = "6 W"
    }
  }
}
`,
	},
	Passing: check.Example{
		Shows: "Two of them: exactly its rating.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    rating = "12 W"
    loudspeaker "B" {
      quantity = 2
      tap      = "6 W"
    }
  }
}
`,
	},
	Judge: check.EachAttenuator(attenuatorRatingHolds),
}

func attenuatorRatingHolds(r *check.Report, a *analysis.Attenuator) {
	rating, behind := a.Part.Rating, a.Behind
	missing := behind.Missing
	if !rating.Set() {
		missing = analysis.MergeMissing(missing, []analysis.Missing{a.Missing("rating of the attenuator", `rating = "36 W"`)})
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether attenuator %q carries what stands behind it cannot be told.", a.Part.Name), missing...)
		return
	}
	over := !quantity.AtMost(behind.Value, rating.V)
	var answer *check.Answer
	if over {
		answer = r.Fail(check.Error, fmt.Sprintf("%s is rated %s and has %s behind it%s: %s too much.", attenuatorName(a), rating.Text, behind.Value, nestedToo(a), behind.Value-rating.V)).
			At(attenuatorAt(a, rating.Span, a.Part.Model.Span))
		seeLoads(answer, behind.From)
		answer.See(readable(rating.Span), "rating "+rating.Text)
	} else {
		answer = r.Pass(fmt.Sprintf("%s is rated %s and has %s behind it%s.", attenuatorName(a), rating.Text, behind.Value, nestedToo(a)))
	}
	answer.Evidence(check.Of("behind it", behind), check.Plainly("rating", rating.V)).
		Bound(check.Bound{Text: "at most " + rating.Text + ", its rating", Number: float64(rating.V), Unit: "W", AtMost: true, Basis: "the rating on its data sheet, which it may reach"})
	if !over {
		return
	}
	if m := attenuatorModel(r.System(), a, behind.Value); m != nil {
		answer.Remedy(check.Proved, fmt.Sprintf("Fit %s, which is rated %s.", m.Name, m.Rating.Text), setAttenuator(a, a.Part.Model.Span, "model", quoted(m.Name)))
	} else {
		next := attenuatorRating(behind.Value)
		answer.Remedy(check.Proved, fmt.Sprintf("Fit an attenuator rated %s or more.", next), setAttenuator(a, rating.Span, "rating", quoted(next.String())))
	}
	answer.Remedy(check.Computed, fmt.Sprintf("Take %s off it: turn taps down, or put part of the loudspeakers behind an attenuator of their own.", behind.Value-rating.V))
}

// nestedToo says that what stands behind further attenuators is counted.
func nestedToo(a *analysis.Attenuator) string {
	if slices.ContainsFunc(a.Line.Attenuators, func(inner *analysis.Attenuator) bool { return slices.Contains(inner.Inside, a) }) {
		return ", counting what stands behind the attenuators inside it"
	}
	return ""
}
