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
)

// What the checks of loading and cable have in common.

// outputName names a loudspeaker output inside a sentence.
func outputName(o *analysis.Output) string {
	if o.Part.Implied {
		return fmt.Sprintf("the %s output of amplifier %q", o.Part.Name, o.Amplifier.Part.Name)
	}
	return fmt.Sprintf("output %q of amplifier %q", o.Part.Name, o.Amplifier.Part.Name)
}

// runName names the loudspeakers of a block at the beginning of a sentence; what
// follows is in the singular.
func runName(s *analysis.Run) string {
	if s.Count == 1 {
		return "Loudspeaker " + strconv.Quote(s.Part.Name)
	}
	return "Each of the " + strconv.Itoa(s.Count) + " loudspeakers " + strconv.Quote(s.Part.Name)
}

// lineVolts prints a line voltage as the trade says it: 70.7 V, not 70.71 V.
func lineVolts(v quantity.Voltage) string {
	if math.Abs(float64(v)-100/math.Sqrt2) < 0.01 {
		return "70.7 V"
	}
	return v.String()
}

// change prints how much louder or quieter another power is: "+2.2 dB".
func change(watts, from quantity.Power) string {
	return fmt.Sprintf("%+.1f dB", 10*math.Log10(float64(watts)/float64(from)))
}

// spare is the part of a rating that a remedy fills at most: the strictest limit
// in common use, so that it brings no finding about the load.
const spare = 0.75

// room tells that each loudspeaker of a block may take so many watts, as far as
// the amplifier, the output, the attenuators, the cable and the loudspeaker are
// known.
func room(s *analysis.Run, each quantity.Power) bool {
	extra := float64(each-s.Each.Value) * float64(s.Count)
	if s.Part.RatedPower.Set() && !quantity.AtMost(each, s.Part.RatedPower.V) {
		return false
	}
	if extra <= 0 {
		return true
	}
	c, l := s.Line.Channel, s.Line
	if c == nil || l.Output == nil || !c.Rated.Known() || !c.Load.Known() || !quantity.AtMost(float64(c.Load.Value)+extra, spare*float64(c.Rated.Value)) {
		return false
	}
	if h := l.Output.Part.HighestLoad; h.Set() && !quantity.AtMost(float64(l.Output.Load.Value)+extra, float64(h.V)) {
		return false
	}
	for _, a := range s.Behind {
		if a.Part.Rating.Set() && !quantity.AtMost(float64(a.Behind.Value)+extra/float64(max(a.Count, 1)), float64(a.Part.Rating.V)) {
			return false
		}
	}
	if drop := float64(l.Loss.Drop.Value); l.Loss.Drop.Known() && l.Load.Value > 0 && drop*(1+extra/float64(l.Load.Value)) > CableLoss.Params[0].Default {
		return false
	}
	return true
}

// setTap is the edit that puts the loudspeakers of a block on a tap, and says for
// which voltage it is marked where the design says one by itself.
func setTap(s *analysis.Run, tap schema.Value[quantity.Power], marked quantity.Voltage) []check.Edit {
	edits := []check.Edit{check.Write(&s.Part.Part, s.Part.Tap.Span, "tap", strconv.Quote(tap.Text))}
	if s.Part.TapFor.Set() && !quantity.AtMost(math.Abs(float64(s.Part.TapFor.V.Line()-marked)), 0.01) {
		edits = append(edits, check.Write(&s.Part.Part, s.Part.TapFor.Span, "tap_for", strconv.Quote(lineVolts(marked))))
	}
	return edits
}

// moveLine is the edit that puts a line on another output of its amplifier.
func moveLine(l *analysis.Line, to *analysis.Output) check.Edit {
	return check.Write(&l.Part.Part, l.Part.Output.Span, "output", strconv.Quote(to.Part.Name))
}

// limitAt is where a figure of an output stands: in the braces of its amplifier,
// else nowhere that one would edit for this amplifier alone.
func limitAt(o *analysis.Output, span source.Span) source.Span {
	return inside(&o.Amplifier.Part.Part, span)
}

// seeLoads points to the inputs of a sum.
func seeLoads(a *check.Answer, from []schema.Place) {
	for _, p := range from {
		a.See(p.Span, p.Note)
	}
}

// sameVoltage tells that two line voltages are the same, within 2 %: transformers
// and data sheets are not more exact.
func sameVoltage(a, b quantity.Voltage) bool {
	return b > 0 && quantity.AtMost(math.Abs(float64(a/b)-1), 0.02)
}

func quoted(name string) string { return strconv.Quote(name) }

// each says that a figure holds for every loudspeaker of a block.
func each(s *analysis.Run) string {
	if s.Count == 1 {
		return ""
	}
	return " each"
}

// percentBeside prints a percentage with three digits, or with as many as it takes
// to tell it from a limit.
func percentBeside(value, limit float64) string {
	text := percent(value)
	for digits := 4; digits < 8 && text == percent(limit) && !same(value, limit); digits++ {
		text = quantity.Significant(value, digits)
	}
	return text
}

func same(a, b float64) bool { return quantity.AtMost(a, b) && quantity.AtLeast(a, b) }
