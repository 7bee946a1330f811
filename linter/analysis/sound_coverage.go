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
	// Over is how high they hang over the ears, Diameter the circle that each covers;
	// +Inf from 180° on.
	Over, Diameter Figure[quantity.Length]
	// Touching is the number that the floor needs for circles that touch, Overlapping
	// for circles without a gap between them, Middle for circles that reach the middle
	// of the next.
	Touching, Overlapping, Middle int
	// Furthest is how far the place furthest from any of them is; where they do not
	// all say where they hang, in the best even grid of so many.
	Furthest quantity.Length
	// Placed tells that all of them say where they hang.
	Placed bool

	length, width float64 // of the floor
}

// Known tells that the geometry is known.
func (c *Coverage) Known() bool { return len(c.Missing) == 0 }

// Need is how many loudspeakers the floor needs when neighbours may be so far apart,
// as a share of the circle's diameter: columns along and rows across.
func (c *Coverage) Need(share float64) (columns, rows int) {
	spacing := share * float64(c.Diameter.Value)
	switch {
	case math.IsInf(spacing, 1):
		return 1, 1
	case !(spacing > 0): // it hangs no higher than the ears
		return math.MaxInt16, math.MaxInt16
	}
	return sound.Needed(c.length, c.width, spacing, sound.Square)
}

// Even tells that no place is further from the nearest of them than half the
// diagonal of a square grid whose spacing is that share of the circle's diameter.
func (c *Coverage) Even(share float64) bool {
	columns, rows := c.Need(share)
	return c.Count >= columns*rows && !c.Placed || quantity.AtMost(float64(c.Furthest), share*float64(c.Diameter.Value)/math.Sqrt2)
}

// AngleFor is the coverage angle with which as many as there are would do.
func (c *Coverage) AngleFor(share float64) quantity.Angle {
	radius := float64(c.Furthest) / share / math.Sqrt2
	return quantity.Angle(math.Ceil(2 * math.Atan(radius/float64(c.Over.Value)) * 180 / math.Pi))
}

// halfDiagonal is half the diagonal of a cell in the best even grid of n over a
// rectangle.
func halfDiagonal(length, width float64, n int) float64 {
	best := math.Inf(1)
	for rows := 1; rows <= n; rows++ {
		best = min(best, math.Hypot(length/float64(n/rows), width/float64(rows))/2)
	}
	return best
}

// looksDown tells that a ceiling loudspeaker hangs in a ceiling, as far as the design
// says: not tilted nearer to level, nor more than a metre below it. One on a wall
// covers no circle on the floor.
func (s *Sound) looksDown(part *schema.Loudspeaker) bool {
	if part.Tilt.Set() && part.Tilt.V < 45 {
		return false
	}
	ceiling, known := s.Ceiling(0)
	if part.Position.Set() {
		ceiling, known = s.Ceiling(float64(part.Position.Items[0].V))
	}
	height, stated := s.hangs(part)
	return !known || !stated || len(s.Space.Heights) > 0 && !part.Position.Set() || height+1 >= ceiling
}

// Coverage works out the circles of the ceiling loudspeakers; nil where none hangs in
// the ceiling of the space.
func (s *Sound) Coverage() *Coverage {
	var runs []*Run
	for _, r := range s.Runs {
		if r.Part.Class.V == classCeiling && !r.Tap.Off && s.looksDown(r.Part) {
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
			c.Diameter = Figure[quantity.Length]{Value: quantity.Length(diameter), From: []schema.Place{{Span: r.Part.Coverage.Span, Note: "coverage angle"}}}
			if !math.IsInf(diameter, 1) {
				c.Diameter.Sum = fmt.Sprintf("2 × %s × tan(%s / 2) = %s", over, angle, quantity.Length(diameter))
			}
		}
	}
	c.Count /= s.Space.Count()
	if !c.Known() {
		return c
	}
	c.length, c.width = float64(s.Floor.Length), float64(s.Floor.Width)
	need := func(density sound.Density) int {
		columns, rows := c.Need(sound.SpacingMetres(1, density, sound.Square))
		return columns * rows
	}
	c.Touching, c.Overlapping, c.Middle = need(sound.EdgeToEdge), need(sound.MinimumOverlap), need(sound.CentreToCentre)
	c.Furthest = quantity.Length(halfDiagonal(c.length, c.width, max(1, c.Count)))
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
	c.Placed, c.Furthest = true, quantity.Length(far)
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
	spread.Loudest, spread.Softest = runs[0], runs[0]
	loud := onAxisDB(runs[0].Part, float64(runs[0].Each.Value))
	soft := loud
	for _, r := range runs[1:] {
		level := onAxisDB(r.Part, float64(r.Each.Value))
		if level > loud+1e-9 {
			spread.Loudest, loud = r, level
		}
		if level < soft-1e-9 {
			spread.Softest, soft = r, level
		}
	}
	spread.LoudDB, spread.SoftDB = spread.Loudest.onAxis(), spread.Softest.onAxis()
	spread.Difference = quantity.Gain(spread.LoudDB.Value - spread.SoftDB.Value)
	return spread
}

// onAxis is what a loudspeaker of a block gives at 1 m on its axis at the power it
// takes at nominal voltage.
func (r *Run) onAxis() Figure[quantity.SoundPressureLevel] {
	_, known := sensitivityOf(r.Part)
	watts := float64(r.Each.Value)
	f := Figure[quantity.SoundPressureLevel]{
		Value: quantity.SoundPressureLevel(onAxisDB(r.Part, watts)),
		From:  r.Each.From,
		Sum:   onAxisText(r.Part, watts),
	}
	if !known {
		f.Sum = fmt.Sprintf("10 lg %s = %s re 1 W", quantity.Significant(watts, 3), quantity.Gain(10*math.Log10(watts)))
	}
	return f
}

// onAxisDB is the A-weighted level of speech at a power, at 1 m on the axis: with one
// sensitivity for all octaves that is the sensitivity + 10 lg P.
func onAxisDB(part *schema.Loudspeaker, watts float64) float64 {
	if !part.SensitivityAt.Set() {
		return float64(part.Sensitivity.V) + 10*math.Log10(watts)
	}
	sensitivity, _ := sensitivityOf(part)
	return sound.OnAxisDB(sensitivity, watts).DBA()
}

// DifferenceWith is the difference between the loudest and the softest of a class
// when blocks are on other taps; 0 where it cannot be told.
func (s *Sound) DifferenceWith(class string, change Instead) quantity.Gain {
	low, high := math.Inf(1), math.Inf(-1)
	for _, r := range s.Runs {
		if r.Part.Class.V != class || r.Tap.Off || !r.Each.Known() {
			continue
		}
		level := onAxisDB(r.Part, float64(r.Each.Value))
		if with := change[r.Part]; with != nil && with.Tap.V > 0 && r.Part.Tap.V > 0 {
			level += 10 * math.Log10(float64(with.Tap.V/r.Part.Tap.V))
		}
		low, high = min(low, level), max(high, level)
	}
	return quantity.Gain(max(0, high-low))
}
