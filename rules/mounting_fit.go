package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/sound"
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
		"or a space that is open to the sky. A loudspeaker of any kind is looked at where it is placed in a closed space: one that hangs beyond its walls or over its ceiling was measured or typed wrongly.",
	Basis: "common practice, no published source",
	Blind: "What the design does not say is taken to be in order: a ceiling loudspeaker without height, tilt and aim hangs in the ceiling. Sloping ceilings, canopies and lowered parts of a ceiling are not in a design: " +
		"agree them with a deviation. Other types get an answer only where they hang beyond walls or ceiling.",
	Params: []check.Param{
		{Name: "below_ceiling", Doc: "how far below the height of the space a ceiling loudspeaker may hang", Unit: check.Metre, Default: 1, Low: 0, High: 30},
		{Name: "beyond_walls", Doc: "how far beyond the walls or over the ceiling of its space a loudspeaker may be placed", Unit: check.Metre, Default: 0.5, Low: 0, High: 30},
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
	if hangsBeyond(r, run) {
		return
	}
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

// hangsBeyond answers for a loudspeaker that is placed outside the space it serves.
func hangsBeyond(r *check.Report, run *analysis.Run) bool {
	part, limit := run.Part, r.Limit("beyond_walls")
	space := r.System().Design.Space(part.Space.V)
	if space == nil || !part.Position.Set() || space.Outdoors.V || space.PartlyOpen.V {
		return false
	}
	floor := analysis.FloorOf(space)
	for _, ends := range []schema.List[quantity.Length]{part.Position, part.To} {
		if !ends.Set() {
			continue
		}
		at := sound.Point{X: float64(ends.Items[0].V), Y: float64(ends.Items[1].V)}
		if beyond := quantity.Length(floor.Outline.BeyondMetres(at)); floor.Outline != nil && !floor.Square && !quantity.AtMost(float64(beyond), limit.Value) {
			r.Fail(check.Note, fmt.Sprintf("%s hangs %s beyond the walls of %q.", runName(run), metres(r, beyond), space.Name)).
				At(ends.Span).See(space.Header, "the space").Evidence(check.Plainly("beyond the walls", beyond)).
				AtMost(fmt.Sprintf("at most %s", limit), limit.Value, "m", limit).
				Remedy(check.Advice, "Measure its place along the length and the width of the space it serves, from the first corner of the floor; name the space it hangs in.")
			return true
		}
		height := part.Height
		if len(ends.Items) > 2 {
			height = ends.Items[2]
		}
		if height.Set() && space.Height.Set() && !quantity.AtMost(float64(height.V-space.Height.V), limit.Value) {
			r.Fail(check.Note, fmt.Sprintf("%s hangs at %s in %q, which is %s high: over its ceiling.", runName(run), metres(r, height.V), space.Name, metres(r, space.Height.V))).
				At(height.Span).See(space.Height.Span, "height of the space").
				Evidence(check.Plainly("height", height.V), check.Plainly("height of the space", space.Height.V)).
				AtMost(fmt.Sprintf("at most %s over it", limit), limit.Value, "m", limit).
				Remedy(check.Advice, "Heights are measured from the floor of the space: put right the one or the other.")
			return true
		}
	}
	return false
}
