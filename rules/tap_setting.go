package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// TapSetting asks whether a loudspeaker has the tap it is set to.
var TapSetting = &check.Check{
	ID:      "tap-setting",
	Asks:    "Does each loudspeaker have the tap it is set to, at the voltage of its line?",
	Summary: "A loudspeaker is set to a tap that its transformer does not have.",
	Why:     "On site somebody takes the next tap up or down. The level and the load are then not those of the design, and with the next one up the amplifier may be overloaded.",
	How: "Looks the tap up in the list of the loudspeaker for the voltage it is marked for. A tap within 2 % of one in the list is that one: data sheets round 0.625 W to 0.62 W. " +
		"Otherwise the neighbours are shown with what each changes.",
	Basis: "the loudspeaker's own list of taps, from its data sheet",
	Blind: "Asked only where a list of taps is stated, by the loudspeaker or by its model: \"twelve 5 W taps\" without one is complete, and this question does not arise. " +
		"Nor does it for loudspeakers without a transformer.",
	Severity: check.Error,
	Failing: check.Example{
		Shows: "A tap of 4 W, which the loudspeaker does not have.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    taps_100V = ["6 W", "3 W", "1.5 W"]
    tap       = "4 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "A tap it has.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    taps_100V = ["6 W", "3 W", "1.5 W"]
    tap       = "3 W"
  }
}
`,
	},
	Judge: check.EachRun(tapSetting),
}

func tapSetting(r *check.Report, s *analysis.Run) {
	tap, o := s.Part.Tap, s.Line.Output
	if !analysis.HasTaps(s.Part) || s.Tap.Direct || s.Tap.Off || !tap.Set() && o != nil && o.Kind == analysis.LowImpedance {
		r.NotAsked()
		return
	}
	if !tap.Set() || s.Tap.Marked == 0 {
		r.Open("Whether loudspeaker "+quoted(s.Part.Name)+" has the tap it is set to cannot be told.", analysis.MergeMissing(s.Each.Missing, s.Line.VoltsMissing())...)
		return
	}
	taps, stated := analysis.TapsAt(s.Part, s.Tap.Marked)
	if !stated {
		noTaps(r, s)
		return
	}
	if _, found := taps.Find(tap.V); found {
		r.Pass(runName(s) + " has the " + tap.Text + " tap for " + lineVolts(s.Tap.Marked) + " it is set to.")
		return
	}
	below, above := neighbours(taps.List, tap.V)
	answer := r.Fail(check.Error, fmt.Sprintf("%s is set to %s and has no such tap for %s; the nearest %s %s.",
		runName(s), tap.Text, lineVolts(s.Tap.Marked), verb(len(both(below, above)), "is", "are"), listed(described(both(below, above), tap.V)))).
		At(tap.Span).See(readable(taps.List.Span), "the taps it has for "+lineVolts(s.Tap.Marked))
	answer.Evidence(check.Plainly("tap wanted", tap.V))
	for _, t := range both(below, above) {
		e := check.Plainly("nearest tap", t.V)
		e.Sum = fmt.Sprintf("10 × lg(%s / %s) = %s", t.Text, tap.Text, change(t.V, tap.V)) + newLoad(s, t)
		answer.Evidence(e)
	}
	near, far := below, above
	if !near.Set() || far.Set() && float64(far.V/tap.V) < float64(tap.V/near.V) {
		near, far = far, near
	}
	for _, t := range both(near, far) {
		text := fmt.Sprintf("Set it to %s (%s%s).", t.Text, change(t.V, tap.V), newLoad(s, t))
		if o != nil && sameVoltage(s.Tap.Marked, o.Volts.Value) && room(s, t.V) {
			answer.Remedy(check.Proved, text, setTap(s, t, s.Tap.Marked)...)
		} else {
			answer.Remedy(check.Computed, text)
		}
	}
}

// noTaps judges a loudspeaker whose lists of taps are for other voltages.
func noTaps(r *check.Report, s *analysis.Run) {
	lists := analysis.TapLists(s.Part)
	volts := make([]string, len(lists))
	for i, t := range lists {
		volts[i] = lineVolts(t.Volts)
	}
	answer := r.Fail(check.Error, fmt.Sprintf("%s is set to %s for %s and has taps for %s only.", runName(s), s.Part.Tap.Text, lineVolts(s.Tap.Marked), listed(volts))).
		At(s.Part.Tap.Span).See(readable(s.Tap.MarkedFrom), lineVolts(s.Tap.Marked))
	for _, t := range lists {
		answer.See(readable(t.List.Span), "the taps it has for "+lineVolts(t.Volts))
		tap, found := t.Find(s.Part.Tap.V)
		if found {
			took := quantity.Power(float64(tap) * float64(s.Tap.Marked) / float64(t.Volts) * float64(s.Tap.Marked) / float64(t.Volts))
			e := check.Plainly("what its "+s.Part.Tap.Text+" tap for "+lineVolts(t.Volts)+" takes at "+lineVolts(s.Tap.Marked), took)
			e.Sum = fmt.Sprintf("%s × (%s / %s)² = %s (%s)", s.Part.Tap.Text, lineVolts(s.Tap.Marked), lineVolts(t.Volts), took, change(took, s.Part.Tap.V))
			answer.Evidence(e)
			answer.Remedy(check.Computed, fmt.Sprintf("If its tap for %s is meant, write tap_for = %q: it then counts with %s.", lineVolts(t.Volts), lineVolts(t.Volts), took))
		}
	}
	answer.Remedy(check.Advice, fmt.Sprintf("Choose a loudspeaker that has taps for %s.", lineVolts(s.Tap.Marked)))
}

// neighbours gives the taps of a list just below and just above a power.
func neighbours(list schema.List[quantity.Power], tap quantity.Power) (below, above schema.Value[quantity.Power]) {
	for _, t := range list.Items {
		if t.V < tap && (!below.Set() || t.V > below.V) {
			below = t
		}
		if t.V > tap && (!above.Set() || t.V < above.V) {
			above = t
		}
	}
	return below, above
}

func both(first, second schema.Value[quantity.Power]) []schema.Value[quantity.Power] {
	var all []schema.Value[quantity.Power]
	for _, t := range []schema.Value[quantity.Power]{first, second} {
		if t.Set() && t.V > 0 {
			all = append(all, t)
		}
	}
	return all
}

func described(taps []schema.Value[quantity.Power], wanted quantity.Power) []string {
	texts := make([]string, len(taps))
	for i, t := range taps {
		texts[i] = fmt.Sprintf("%s (%s)", t.Text, change(t.V, wanted))
	}
	return texts
}

// newLoad says what the channel, or else the line, carries when the loudspeakers
// of a block are on another tap.
func newLoad(s *analysis.Run, tap schema.Value[quantity.Power]) string {
	extra := (tap.V/s.Part.Tap.V - 1) * s.Each.Value * quantity.Power(s.Count)
	if c := s.Line.Channel; c != nil && c.Load.Known() && c.Rated.Known() && c.CarriesLines() {
		return fmt.Sprintf("; the amplifier then carries %s of %s", c.Load.Value+extra, c.Rated.Value)
	}
	if s.Line.Load.Known() {
		return fmt.Sprintf("; the line then takes %s", s.Line.Load.Value+extra)
	}
	return ""
}
