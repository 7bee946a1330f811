package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// MountingFit asks whether ceiling loudspeakers hang in a ceiling.
var MountingFit = &check.Check{
	ID:      "mounting-fit",
	Asks:    "Do loudspeakers of the ceiling type hang in a ceiling?",
	Summary: "A loudspeaker made for a ceiling is to hang on a wall, or where there is no ceiling.",
	Why: "A ceiling loudspeaker is made to be heard from below, a few metres away, with its back in a void. High on a wall it sounds across the room: much of its sound goes to the far wall and comes back as " +
		"reverberation, little to the people under it, and the unaided voice can be clearer. Its back stays open to touch and weather.",
	How: "Looks at loudspeakers of kind ceiling for what contradicts a ceiling: a tilt nearer to level than to straight down, a direction in plan (aim) without a tilt, a height well below that of the space, " +
		"or a space that is open to the sky.",
	Basis: "common practice, no published source",
	Blind: "What the design does not say is taken to be in order: a ceiling loudspeaker without height, tilt and aim hangs in the ceiling. Sloping ceilings, canopies and lowered parts of a ceiling are not in a design: " +
		"agree them with a deviation. Other types in a ceiling are not asked.",
	Params: []check.Param{
		{Name: "below_ceiling", Doc: "how far below the height of the space a ceiling loudspeaker may hang", Unit: check.Metre, Default: 1, Low: 0, High: 30},
	},
	Severity:  check.Note,
	NeverOpen: "a ceiling loudspeaker is taken to hang in a ceiling unless the design says otherwise",
	Failing: check.Example{
		Shows: "Ceiling loudspeakers look across the hall.",
		Design: `line "Hall" {
  output = "100 V"
  loudspeaker "H" {
    kind     = "ceiling"
    quantity = 6
    tap      = "6 W"
    height   = "5 m"
    tilt     = "10 deg"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "They hang at the height of the ceiling.",
		Design: `line "Hall" {
  output = "100 V"
  loudspeaker "H" {
    kind     = "ceiling"
    quantity = 6
    tap      = "6 W"
    height   = "3 m"
    space    = "Hall"
  }
}
space "Hall" { height = "3 m" }
`,
	},
	Judge: check.EachRun(mountingFit),
}

// straightDown is the tilt of a loudspeaker in a level ceiling, in degrees.
const straightDown = 90

func mountingFit(r *check.Report, run *analysis.Run) {
	part := run.Part
	if part.Class.V != "ceiling" {
		r.NotAsked()
		return
	}
	const advice = "Choose a wall loudspeaker or a column for this place, aimed at the people; if it does hang in a ceiling, write that instead."
	space := r.System().Design.Space(part.Space.V)
	name := runName(run)
	switch {
	case part.Tilt.Set() && part.Tilt.V < straightDown/2 && !same(float64(part.Tilt.V), straightDown/2):
		r.Fail(check.Note, fmt.Sprintf("%s is of the ceiling type and tilted %s down from level: it looks across the room like one on a wall.", name, part.Tilt.V)).
			At(part.Tilt.Span).See(readable(part.Class.Span), "the type").
			Evidence(check.Plainly("tilt", part.Tilt.V)).
			Bound(check.Bound{Text: fmt.Sprintf("at least %d deg, half way to straight down", straightDown/2), Number: straightDown / 2, Unit: "deg", Basis: "common practice, no published source"}).
			Remedy(check.Advice, advice)
	case part.Aim.Set() && !part.Tilt.Set():
		r.Fail(check.Note, fmt.Sprintf("%s is of the ceiling type and aimed in plan: one in a ceiling looks straight down.", name)).
			At(part.Aim.Span).See(readable(part.Class.Span), "the type").
			Remedy(check.Advice, advice)
	case space != nil && space.Outdoors.V:
		r.Fail(check.Note, fmt.Sprintf("%s is of the ceiling type, and %q is open to the sky: there is no ceiling.", name, space.Name)).
			At(modelAt(part)).See(space.Outdoors.Span, "open to the sky").
			Remedy(check.Advice, "Choose a loudspeaker made for outdoors, or write the space under the canopy as one of its own.")
	case space != nil && hangsLow(part, space, r.Limit("below_ceiling")):
		most := space.Height.V - quantity.Length(r.Limit("below_ceiling").Value)
		r.Fail(check.Note, fmt.Sprintf("%s is of the ceiling type and hangs at %s in %q, which is %s high: that is on a wall.", name, quantity.Format(part.Height.V, r.US()), space.Name, quantity.Format(space.Height.V, r.US()))).
			At(part.Height.Span).See(space.Height.Span, "height of the space").See(readable(part.Class.Span), "the type").
			Evidence(check.Plainly("height", part.Height.V), check.Plainly("height of the space", space.Height.V)).
			AtLeast(fmt.Sprintf("at least %s", quantity.Format(most, r.US())), float64(most), "m", r.Limit("below_ceiling")).
			Remedy(check.Advice, advice)
	default:
		r.Pass(fmt.Sprintf("%s is of the ceiling type, and nothing says that it hangs elsewhere.", name))
	}
}

// hangsLow tells that a loudspeaker hangs well below the ceiling of its space.
func hangsLow(part *schema.Loudspeaker, space *schema.Space, limit check.Limit) bool {
	return part.Height.Set() && space.Height.Set() && !quantity.AtLeast(float64(part.Height.V)+limit.Value, float64(space.Height.V))
}
