package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// LevelReading asks whether levels measured in a space are even and what is
// wanted.
var LevelReading = &check.Check{
	ID:      "level-reading",
	Asks:    "Are the levels measured in each space even, and as loud as is wanted?",
	Summary: "Levels measured in a space differ too much from place to place, or are below the level that is wanted.",
	Why: "People set a system where they stand. When the level steps up and down from seat to seat it is too loud at one and not understood at the other, " +
		"and a tap, a polarity or a dead loudspeaker is behind it.",
	How: "Compares the readings of one space that were taken with the same signal, in the order in which they are written. Seated: each may be so far from the middle between the loudest and the softest. " +
		"Elsewhere: from each to the next so much. Where the space states the level it wants, or noise and what is wanted over it, the softest reading of a stated signal is held against that.",
	Basis: "common practice, no published source",
	Blind: "Where in the space a reading was taken is not known, nor whether the walk covers it. Whether the signal stood as loud as an announcement will is for the person who measured.",
	Params: []check.Param{
		{Name: "seated", Doc: "how far a level may be from the middle of the walk where people sit", Unit: check.Decibel, Default: 1.5, Low: 0.5, High: 10},
		{Name: "step", Doc: "how far a level may be from the one before it elsewhere", Unit: check.Decibel, Default: 3, Low: 0.5, High: 20},
	},
	Severity: check.Warning,
	Cautions: []string{"Wear hearing protection during long tests at full level, and warn the people in the building."},
	Failing: check.Example{
		Shows: "Seats of a hall between 70 and 76 dBA.",
		Design: `space "Hall" { height = "5 m" }
reading "Front seats" {
  space  = "Hall"
  level  = "76 dBA"
  signal = "pink noise"
}
reading "Back seats" {
  space  = "Hall"
  level  = "70 dBA"
  signal = "pink noise"
}
`,
	},
	Passing: check.Example{
		Shows: "The same seats within 2 dB.",
		Design: `space "Hall" { height = "5 m" }
reading "Front seats" {
  space  = "Hall"
  level  = "75 dBA"
  signal = "pink noise"
}
reading "Back seats" {
  space  = "Hall"
  level  = "73 dBA"
  signal = "pink noise"
}
`,
	},
	Judge: check.Together(check.EachSpace(levelReading), check.EachReading(levelPlace)),
}

// levelPlace asks for the space of a level.
func levelPlace(r *check.Report, part *schema.Reading) {
	if !part.Level.Set() || part.Space.Set() {
		r.NotAsked()
		return
	}
	r.Open(fmt.Sprintf("Reading %q shows %s, but not where.", part.Name, part.Level.Text), readingLacks(part, "space in which the level was measured", `space = "…"`)).At(part.Level.Span)
}

// walk is the levels of a space with one signal, in the order of writing.
type walk struct {
	signal string
	all    []*schema.Reading
}

// walks groups the levels of a space by their signal.
func walks(s *analysis.System, space *schema.Space) []walk {
	var all []walk
	for _, m := range s.Design.Readings {
		if !m.Level.Set() || m.Space.V != space.Name {
			continue
		}
		found := false
		for i := range all {
			if all[i].signal == m.Signal.V {
				all[i].all, found = append(all[i].all, m), true
			}
		}
		if !found {
			all = append(all, walk{m.Signal.V, []*schema.Reading{m}})
		}
	}
	return all
}

func levelReading(r *check.Report, space *schema.Space) {
	all := walks(r.System(), space)
	if len(all) == 0 {
		r.NotAsked()
		return
	}
	wanted := analysis.WantedLevel(space)
	for _, w := range all {
		if len(w.all) > 1 {
			even(r, space, w)
		}
		switch {
		case wanted.Known():
			loud(r, space, w, wanted)
		case len(w.all) == 1:
			r.Open(fmt.Sprintf("Reading %q shows %s in space %q, with nothing to hold it against.", w.all[0].Name, w.all[0].Level.Text, space.Name),
				analysis.Missing{What: "second level in the space, or the level wanted", Part: "space " + quoted(space.Name), Where: space.Header, Write: `wanted_level = "75 dBA"`}).
				Key("level " + w.signal).At(w.all[0].Level.Span)
		}
	}
}

// even compares the levels of a walk with each other.
func even(r *check.Report, space *schema.Space, w walk) {
	soft, loudest := w.all[0], w.all[0]
	stepFrom, stepTo := w.all[0], w.all[1]
	for i, m := range w.all {
		if m.Level.V < soft.Level.V {
			soft = m
		}
		if m.Level.V > loudest.Level.V {
			loudest = m
		}
		if i > 0 && step(w.all[i-1], m) > step(stepFrom, stepTo) {
			stepFrom, stepTo = w.all[i-1], m
		}
	}
	limit, at := r.Limit("seated"), soft
	off := float64(loudest.Level.V-soft.Level.V) / 2
	message := fmt.Sprintf("The levels measured in space %q run from %s (%q) to %s (%q), %s dB either side of the middle", space.Name, soft.Level.Text, soft.Name, loudest.Level.Text, loudest.Name, percent(off))
	if space.Listeners.V == "standing" {
		limit, at, off = r.Limit("step"), stepTo, step(stepFrom, stepTo)
		message = fmt.Sprintf("The levels measured in space %q step by at most %s dB, from %s (%q) to %s (%q)", space.Name, percent(off), stepFrom.Level.Text, stepFrom.Name, stepTo.Level.Text, stepTo.Name)
	}
	var a *check.Answer
	if quantity.AtMost(off, limit.Value) {
		a = r.Pass(message + ".")
	} else {
		a = r.Fail(check.Warning, message+".")
		a.Remedy(check.Advice, "Listen at the softest place for a loudspeaker that is dead, on the wrong tap, or in reversed polarity to its neighbour.")
		a.Remedy(check.Computed, fmt.Sprintf("Move taps: one step of 3 dB (half or twice the watts) where the level is off brings the %s dB down.", percent(off)))
	}
	a.Key("walk "+w.signal).At(at.Level.Span).Evidence(check.Number("difference", off, "dB")).
		AtMost("at most "+limit.String(), limit.Value, "dB", limit)
	for _, m := range w.all {
		a.See(m.Level.Span, m.Name)
	}
	if !space.Listeners.Set() {
		a.Assumed(fmt.Sprintf("people sit in space %q", space.Name))
	}
	if w.signal == "" {
		a.Assumed("all levels were measured with the same signal")
	}
}

func step(a, b *schema.Reading) float64 { return math.Abs(float64(b.Level.V - a.Level.V)) }

// loud holds the softest level against what is wanted.
func loud(r *check.Report, space *schema.Space, w walk, level analysis.Figure[quantity.SoundLevel]) {
	wanted := level.Value
	soft := w.all[0]
	for _, m := range w.all {
		if m.Level.V < soft.Level.V {
			soft = m
		}
	}
	message := fmt.Sprintf("The softest level measured in space %q is %s (%q); %s is wanted", space.Name, soft.Level.Text, soft.Name, wanted)
	evidence := []check.Evidence{check.Plainly("softest level", soft.Level.V), {Name: "level wanted", Value: wanted.String(), Number: float64(wanted), Unit: "dBA", Sum: level.Sum}}
	var a *check.Answer
	switch {
	case w.signal == "":
		a = r.Open(message+", but with which signal it was measured is not said.", readingLacks(soft, "signal while the level was measured", `signal = "speech at the level of announcements"`))
	case quantity.AtLeast(float64(soft.Level.V), float64(wanted)):
		a = r.Pass(message + ".")
	default:
		short := quantity.Gain(wanted - soft.Level.V)
		a = r.Fail(check.Warning, fmt.Sprintf("%s: %s short.", message, short))
		a.Remedy(check.Computed, fmt.Sprintf("Raise the level there by %s: at the amplifier if it has so much in hand, else with taps of %s times the watts.", short, percent(math.Pow(10, float64(short)/10))))
	}
	a.Key("level " + w.signal).At(soft.Level.Span).Evidence(evidence...).Assumed(level.Assumed...)
	if w.signal != "" {
		a.Bound(check.Bound{Text: "at least " + wanted.String(), Number: float64(wanted), Unit: "dBA", Basis: "stated for the space"})
	}
}
