package rules

import (
	"fmt"
	"math"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// CoverageSpacing asks whether ceiling loudspeakers hang close enough together.
var CoverageSpacing = &check.Check{
	ID:      "coverage-spacing",
	Asks:    "Do the ceiling loudspeakers in each space hang close enough for their height and angle?",
	Summary: "Ceiling loudspeakers are so few for their height and angle that people between them hear the treble of none.",
	Why: "A ceiling loudspeaker covers a circle that grows with its height over the ears. Under a low ceiling the circle is small, and a rule of so many square metres for each leaves most of the floor outside: " +
		"there the consonants are missing, and turning up makes it loud under the loudspeakers only.",
	How: "Works out the circle at the height of the ears, 2 × height over the ears × tan(angle / 2), within which a loudspeaker is less than 6 dB down by angle, and how many of them the floor needs in an even grid. " +
		"Edge to edge, where circles touch, is the sparsest layout that guides to the trade name; minimum overlap (no gap) and centre to centre are named beside it. " +
		"Where all of them say where they hang, the place furthest from any decides: edge to edge it is half a diagonal of the grid away.",
	Basis: "geometry; edge to edge as the sparsest layout is a definition of installation guides, common practice without a published source",
	Blind: "Only loudspeakers of kind ceiling that hang in the ceiling are asked; mounting-fit speaks of the others. The angle counts as stated, whatever the frequency. Furniture and racks in the way are not in a design. In a space that only music reaches, sparse is a choice: a note.",
	Params: []check.Param{
		{Name: "note_spacing", Doc: "distance between neighbours, of the circle's diameter, above which a note is given", Unit: check.Percent, Default: 100, Low: 30, High: 1000},
		{Name: "warning_spacing", Doc: "distance between neighbours, of the circle's diameter, above which a warning is given", Unit: check.Percent, Default: 200, Low: 30, High: 1000, Basis: "twice as far as edge to edge, common practice, no published source"},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "One loudspeaker for 50 m² of office, by a rule of thumb.",
		Design: `line "Office" {
  output = "100 V"
  loudspeaker "O" {
    kind     = "ceiling"
    coverage = "90 deg"
    tap      = "6 W"
    space    = "Office"
  }
}
space "Office" {
  area      = "50 m2"
  height    = "2.7 m"
  listeners = "seated"
}
`,
	},
	Passing: check.Example{
		Shows: "Nine, as the low ceiling asks.",
		Design: `line "Office" {
  output = "100 V"
  loudspeaker "O" {
    kind     = "ceiling"
    coverage = "90 deg"
    tap      = "1.5 W"
    quantity = 9
    space    = "Office"
  }
}
space "Office" {
  area      = "50 m2"
  height    = "2.7 m"
  listeners = "seated"
}
`,
	},
	Judge: check.EachSpace(coverageSpacing),
}

func coverageSpacing(r *check.Report, space *schema.Space) {
	s := r.System().Sound(space)
	if s == nil || space.Outdoors.V {
		r.NotAsked()
		return
	}
	c := s.Coverage()
	switch {
	case c == nil:
		r.NotAsked()
		return
	case !c.Known():
		r.Open(fmt.Sprintf("Whether the ceiling loudspeakers cover %q cannot be told.", space.Name), c.Missing...)
		return
	}
	if math.IsInf(float64(c.Diameter.Value), 1) {
		r.Pass(fmt.Sprintf("%s in %q %s all round: the floor is covered.", wording.Capital(wording.Counted(c.Count, "ceiling loudspeaker")), space.Name, verb(c.Count, "sounds", "sound"))).
			At(coverageAt(c)).See(readable(c.Part.Coverage.Span), "coverage angle")
		return
	}
	limit, warning := r.Limit("note_spacing"), r.Limit("warning_spacing")
	severity := check.Severity(0)
	switch {
	case !c.Even(warning.Value / 100):
		severity, limit = check.Warning, warning
	case !c.Even(limit.Value / 100):
		severity = check.Note
	}
	if severity == check.Warning && !s.HearsSpeech() {
		severity = check.Note
	}
	columns, rows := c.Need(r.Limit("note_spacing").Value / 100)
	message := fmt.Sprintf("Each of %s in %q covers a circle of %s at the height of the ears", wording.Counted(c.Count, "ceiling loudspeaker"), space.Name, metres(r, c.Diameter.Value))
	if c.Count == 1 {
		message = fmt.Sprintf("The ceiling loudspeaker in %q covers a circle of %s at the height of the ears", space.Name, metres(r, c.Diameter.Value))
	}
	var a *check.Answer
	switch {
	case severity == 0:
		a = r.Pass(message + ", and the floor is covered.")
	case c.Over.Value <= 0:
		a = r.Fail(severity, fmt.Sprintf("%s in %q %s no higher than the ears.", wording.Capital(wording.Counted(c.Count, "ceiling loudspeaker")), space.Name, verb(c.Count, "hangs", "hang")))
	case c.Placed:
		a = r.Fail(severity, fmt.Sprintf("%s, and some place is %s from the nearest.", message, metres(r, c.Furthest)))
	default:
		a = r.Fail(severity, fmt.Sprintf("%s; the floor needs %d of them.", message, columns*rows))
	}
	a.At(coverageAt(c)).Evidence(
		check.Of("height over the ears", c.Over),
		check.Of("circle", c.Diameter),
		check.Of("floor", s.Floor.Area),
	).Evidence(neededEvidence(c)...).Assumed(c.Assumed...).AtMost(spacingText(r, c, limit), limit.Value, "%", limit)
	seeSound(a, c.Over.From)
	seeSound(a, c.Diameter.From)
	if severity != 0 {
		coverageRemedies(r, a, s, c, columns, rows)
	}
}

// neededEvidence lists how many the usual layouts need.
func neededEvidence(c *analysis.Coverage) []check.Evidence {
	if c.Over.Value <= 0 {
		return nil
	}
	return []check.Evidence{check.Stated("needed edge to edge, with minimum overlap, centre to centre", fmt.Sprintf("%d, %d, %d", c.Touching, c.Overlapping, c.Middle))}
}

// spacingText says how far apart they may be.
func spacingText(r *check.Report, c *analysis.Coverage, limit check.Limit) string {
	apart := float64(c.Diameter.Value) * limit.Value / 100
	if c.Placed {
		return fmt.Sprintf("no place further than %s from the nearest, half the diagonal where neighbours are %s of the circle apart", metres(r, quantity.Length(apart/math.Sqrt2)), limit)
	}
	return fmt.Sprintf("neighbours at most %s apart (%s of the circle)", metres(r, quantity.Length(apart)), limit)
}

// metres prints a length to a centimetre, in the units of the design.
func metres(r *check.Report, l quantity.Length) string {
	return quantity.Format(quantity.Length(math.Round(100*float64(l))/100), r.US())
}

// coverageAt is what a person would edit: the number of loudspeakers.
func coverageAt(c *analysis.Coverage) source.Span {
	if s := inside(&c.Part.Part, c.Part.Quantity.Span); !s.IsZero() {
		return s
	}
	return c.Part.Header
}

// coverageRemedies proposes more loudspeakers, on lower taps where the amplifier asks
// for that, or wider ones.
func coverageRemedies(r *check.Report, a *check.Answer, s *analysis.Sound, c *analysis.Coverage, columns, rows int) {
	need := columns * rows
	text := fmt.Sprintf("Hang %d of them evenly, %d × %d", need, columns, rows)
	if need > 4*c.Count+16 || c.Placed && c.Count >= need {
		text = "Spread them evenly over the floor, neighbours at most " + metres(r, c.Diameter.Value*quantity.Length(r.Limit("note_spacing").Value/100)) + " apart"
	}
	if !quantity.AtLeast(float64(c.Over.Value), 0.1) {
		a.Remedy(check.Advice, "Hang them above the ears, or choose another kind of loudspeaker.")
		return
	}
	if !withMore(r, a, s, c, need, text) {
		a.Remedy(check.Computed, text+". Their watts add to the load; lower taps make up for it.")
	}
	if angle := c.AngleFor(r.Limit("note_spacing").Value / 100); angle < 170 {
		a.Remedy(check.Computed, fmt.Sprintf("Choose loudspeakers that cover %s or more.", angle))
	}
}

// withMore writes the greater number where one block serves the space, on the highest
// tap that the amplifier holds and that keeps speech loud enough.
func withMore(r *check.Report, a *check.Answer, s *analysis.Sound, c *analysis.Coverage, need int, text string) bool {
	part := c.Part
	if len(s.Runs) != 1 || part.Position.Set() || s.Space.Layout.Set() || !part.Spacing.Set() || need <= c.Count {
		return false
	}
	run := s.Runs[0]
	all := need * s.Space.Count()
	taps := tapsOf(run)
	if len(taps) == 0 {
		taps = []schema.Value[quantity.Power]{part.Tap}
	}
	for _, tap := range taps {
		if !quantity.AtMost(tap.V, part.Tap.V) {
			continue
		}
		change := analysis.Instead{part: onTap(counting(part, all), tap)}
		f := fits(r.System(), change)
		if !f.ok || !stays(s, change) {
			continue
		}
		edits := []check.Edit{check.Write(&part.Part, part.Quantity.Span, "quantity", strconv.Itoa(all))}
		if !same(float64(tap.V), float64(part.Tap.V)) {
			edits = append(edits, setTap(run, tap, run.Tap.Marked)...)
			text += ", on " + tap.Text
		}
		if f.load != "" {
			text += ": " + f.load
		}
		a.Remedy(check.Proved, text+".", edits...)
		return true
	}
	return false
}
