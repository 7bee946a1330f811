package analysis

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Coverage is how the ceiling loudspeakers of a space cover its floor at the height
// of the ears.
type Coverage struct {
	Missing []Missing
	Assumed []string
	// Part is the block that covers least.
	Part *schema.Loudspeaker
	// Count is how many there are.
	Count int
	// Over is how high they hang over the ears, Diameter the circle that each covers.
	Over, Diameter Figure[quantity.Length]
	// Columns along and Rows across are what the floor needs for circles that touch,
	// Needed both multiplied. Overlapping is the number needed for circles without a
	// gap between them, Middle for circles that reach the middle of the next.
	Columns, Rows               int
	Needed, Overlapping, Middle int
	// Furthest is, where all of them say where they hang, how far the place furthest
	// from any of them is, and Widest how far it may be by touching circles.
	Furthest, Widest quantity.Length
	// Placed tells that Furthest is known.
	Placed bool
}

// Known tells that the geometry is known.
func (c *Coverage) Known() bool { return len(c.Missing) == 0 }

// Even tells that touching circles would cover the floor with what there is.
func (c *Coverage) Even() bool {
	if c.Placed {
		return quantity.AtMost(c.Furthest, c.Widest)
	}
	return c.Count >= c.Needed
}

// Coverage works out the circles of the ceiling loudspeakers; nil where the space
// has none.
func (s *Sound) Coverage() *Coverage {
	var runs []*Run
	for _, r := range s.Runs {
		if r.Part.Class.V == classCeiling && !r.Tap.Off {
			runs = append(runs, r)
		}
	}
	if len(runs) == 0 {
		return nil
	}
	c := &Coverage{Missing: s.Floor.Area.Missing, Assumed: s.Floor.Area.Assumed}
	ears, seated := s.Ears()
	c.Assumed = mergeTexts(c.Assumed, seated)
	least := math.Inf(1)
	for _, r := range runs {
		c.Count += r.Count
		if !r.Part.Coverage.Set() {
			c.Missing = MergeMissing(c.Missing, []Missing{missing("coverage angle", "loudspeaker", &r.Part.Part, `coverage = "120 deg"`)})
			continue
		}
		height, ok := s.hangs(r.Part)
		if !ok {
			c.Missing = MergeMissing(c.Missing, []Missing{s.ceilingMissing()})
			continue
		}
		angle := min(r.Part.Coverage.V, r.Part.CoverageUp.Or(r.Part.Coverage.V))
		over := height - ears
		diameter := sound.CoverageDiameterMetres(max(0, float64(over)), float64(angle))
		if c.Part == nil || diameter < least-1e-9 {
			least, c.Part = diameter, r.Part
			c.Over = Figure[quantity.Length]{Value: over, Sum: fmt.Sprintf("%s − %s = %s", height, ears, over), From: s.hangsFrom(r.Part)}
			c.Diameter = Figure[quantity.Length]{Value: quantity.Length(diameter), From: []schema.Place{{Span: r.Part.Coverage.Span, Note: "coverage angle"}},
				Sum: fmt.Sprintf("2 × %s × tan(%s / 2) = %s", over, angle, quantity.Length(diameter))}
		}
	}
	c.Count /= s.Space.Count()
	if !c.Known() {
		return c
	}
	length, width := float64(s.Floor.Length), float64(s.Floor.Width)
	need := func(density sound.Density) (columns, rows int) {
		spacing := sound.SpacingMetres(least, density, sound.Square)
		if math.IsInf(spacing, 1) {
			return 1, 1
		}
		if !(spacing > 0) {
			return math.MaxInt16, math.MaxInt16 // it hangs no higher than the ears
		}
		return sound.Needed(length, width, spacing, sound.Square)
	}
	c.Columns, c.Rows = need(sound.EdgeToEdge)
	c.Needed = c.Columns * c.Rows
	columns, rows := need(sound.MinimumOverlap)
	c.Overlapping = columns * rows
	columns, rows = need(sound.CentreToCentre)
	c.Middle = columns * rows
	c.furthest(s, runs, least)
	return c
}

// furthest finds the place on the floor that is furthest from any of them, where all
// say where they hang.
func (c *Coverage) furthest(s *Sound, runs []*Run, diameter float64) {
	if s.Space.Count() > 1 || slices.ContainsFunc(runs, func(r *Run) bool { return !r.Part.Position.Set() }) {
		return
	}
	var all []Speaker
	for _, r := range runs {
		for range r.Count {
			all = append(all, Speaker{Run: r})
		}
	}
	if missing, _ := s.place(all); len(missing) > 0 {
		return
	}
	// A twentieth of the circle is fine enough: it moves the figure by less than a
	// thirtieth.
	step := max(min(diameter, float64(s.Reach()))/20, float64(s.Reach())/200)
	far := 0.0
	for _, at := range (sound.Plane{Outline: s.Floor.Outline}).Grid(step) {
		nearest := math.Inf(1)
		for i := range all {
			nearest = min(nearest, math.Hypot(at.X-all[i].At.X, at.Y-all[i].At.Y))
		}
		far = max(far, nearest)
	}
	c.Placed, c.Furthest, c.Widest = true, quantity.Length(far), quantity.Length(diameter/math.Sqrt2)
}

// hangs is the height at which a ceiling loudspeaker hangs; under a ceiling that
// steps the lowest, where the design does not say under which part.
func (s *Sound) hangs(part *schema.Loudspeaker) (quantity.Length, bool) {
	switch {
	case len(part.Position.Items) > 2:
		return part.Position.Items[2].V, true
	case part.Height.Set():
		return part.Height.V, true
	case part.Position.Set():
		return s.Ceiling(float64(part.Position.Items[0].V))
	}
	lowest, ok := s.Ceiling(0)
	for _, step := range s.Space.Heights {
		lowest = min(lowest, step.Items[1].V)
	}
	return lowest, ok
}

func (s *Sound) hangsFrom(part *schema.Loudspeaker) []schema.Place {
	switch {
	case part.Height.Set():
		return []schema.Place{{Span: part.Height.Span, Note: "height of the loudspeakers"}}
	case s.Space.Height.Set():
		return []schema.Place{{Span: s.Space.Height.Span, Note: "height of the space"}}
	case len(s.Space.Heights) > 0:
		return []schema.Place{{Span: s.Space.Heights[0].Span, Note: "heights of the space"}}
	}
	return nil
}

// Spread is how unequal the loudspeakers of one class in a space are.
type Spread struct {
	// Class is what they are: "ceiling".
	Class   string
	Missing []Missing
	// Loudest and Softest are blocks that give most and least on their axes.
	Loudest, Softest *Run
	// LoudDB and SoftDB are what they give at 1 m, or, with only one sensitivity among
	// them that is not stated, their power in dB.
	LoudDB, SoftDB Figure[quantity.SoundPressureLevel]
	// Difference is the one less the other.
	Difference quantity.Gain
}

// Spreads compares the loudspeakers of a space with others of their class, those
// that are switched off left out. A class with one block only is equal in itself
// and is not in the list.
func (s *Sound) Spreads() []*Spread {
	var all []*Spread
	var classes []string
	groups := map[string][]*Run{}
	for _, r := range s.Runs {
		if r.Tap.Off {
			continue
		}
		class := r.Part.Class.V
		if groups[class] == nil {
			classes = append(classes, class)
		}
		groups[class] = append(groups[class], r)
	}
	for _, class := range classes {
		if runs := groups[class]; differing(runs) {
			all = append(all, compareRuns(class, runs))
		}
	}
	return all
}

// differing tells that runs are not all of one block.
func differing(runs []*Run) bool {
	return slices.ContainsFunc(runs, func(r *Run) bool { return r.Part != runs[0].Part })
}

func compareRuns(class string, runs []*Run) *Spread {
	spread := &Spread{Class: class}
	model := runs[0].Part.Model
	alike := true // all of one model, so that its sensitivity does not matter
	for _, r := range runs {
		alike = alike && model.Set() && r.Part.Model.V == model.V && r.Part.Sensitivity.V == runs[0].Part.Sensitivity.V
		spread.Missing = MergeMissing(spread.Missing, r.Each.Missing)
	}
	for _, r := range runs {
		if _, ok := sensitivityOf(r.Part); !ok && !alike {
			spread.Missing = MergeMissing(spread.Missing, []Missing{missing("sensitivity", "loudspeaker", &r.Part.Part, `sensitivity = "90 dB"`)})
		}
	}
	if len(spread.Missing) > 0 {
		return spread
	}
	for _, r := range runs {
		f := r.onAxis()
		if spread.Loudest == nil || float64(f.Value) > float64(spread.LoudDB.Value)+1e-9 {
			spread.Loudest, spread.LoudDB = r, f
		}
		if spread.Softest == nil || float64(f.Value) < float64(spread.SoftDB.Value)-1e-9 {
			spread.Softest, spread.SoftDB = r, f
		}
	}
	spread.Difference = quantity.Gain(spread.LoudDB.Value - spread.SoftDB.Value)
	return spread
}

// onAxis is what a loudspeaker of a block gives at 1 m on its axis at the power it
// takes at nominal voltage.
func (r *Run) onAxis() Figure[quantity.SoundPressureLevel] {
	sensitivity, known := sensitivityOf(r.Part)
	watts := float64(r.Each.Value)
	f := Figure[quantity.SoundPressureLevel]{
		Value: quantity.SoundPressureLevel(sound.OnAxisDB(sensitivity, watts).DBA()),
		From:  r.Each.From,
		Sum:   onAxisText(r.Part, watts),
	}
	if !known {
		f.Sum = fmt.Sprintf("10 lg %s = %s re 1 W", quantity.Significant(watts, 3), quantity.Gain(10*math.Log10(watts)))
	}
	return f
}
