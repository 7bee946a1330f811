package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// LoudspeakerOverdriven asks whether a loudspeaker receives more than it is rated
// for.
var LoudspeakerOverdriven = &check.Check{
	ID:      "loudspeaker-overdriven",
	Asks:    "Does each loudspeaker receive at most its rated power at full output?",
	Summary: "A loudspeaker receives more power than it is rated for.",
	Why:     "At full output, which a long announcement or feedback reaches, its coil or transformer overheats. It fails months later, one after the other, and nobody knows why.",
	How: "Solves the line and takes the most that any loudspeaker of the block receives at full output of the amplifier, with its cable and with attenuators fully up, " +
		"and compares it with rated_power. Cable that is not stated is left out.",
	Basis: "the loudspeaker's own rating, from its data sheet",
	Blind: "Programme is rarely at full output for long; the rating is for continuous power. A tap from the loudspeaker's own list, on the voltage it is marked for, " +
		"passes without a rating: its maker provides it.",
	Severity: check.Error,
	Cautions: []string{"Less power is less level: look at the level wanted before a tap is turned down."},
	Failing: check.Example{
		Shows: "A 60 W amplifier drives one 8 ohm loudspeaker rated 30 W.",
		Design: `amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Bar room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "B" {
    impedance   = "8 ohm"
    rated_power = "30 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "The same with two in series, which share the power.",
		Design: `amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Bar room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "series"
  loudspeaker "B" {
    quantity    = 2
    impedance   = "8 ohm"
    rated_power = "30 W"
  }
}
`,
	},
	Judge: check.EachRun(loudspeakerOverdriven),
}

func loudspeakerOverdriven(r *check.Report, s *analysis.Run) {
	if s.Tap.Off {
		r.NotAsked()
		return
	}
	rated := s.Part.RatedPower
	var missing []analysis.Missing
	if !rated.Set() {
		if ownTap(s) {
			r.Pass(runName(s) + " is on a tap of its own for the voltage of the line.")
			return
		}
		missing = append(missing, ratedMissing(s))
	}
	if missing = analysis.MergeMissing(missing, s.Delivered.Missing); len(missing) > 0 {
		r.Open("Whether loudspeaker "+quoted(s.Part.Name)+" receives more than it is rated for cannot be told.", missing...)
		return
	}
	most := s.Delivered.Value
	if quantity.AtMost(most, rated.V) {
		r.Pass(runName(s) + " receives at most " + most.String() + " and is rated " + rated.Text + ".").Assumed(s.Delivered.Assumed...)
		return
	}
	name := "Loudspeaker " + quoted(s.MostAt)
	if s.Count > 1 {
		name += ", of " + wording.Counted(s.Count, "loudspeaker") + ","
	}
	answer := r.Fail(check.Error, fmt.Sprintf("%s receives %s at full output and is rated %s: %s too much.", name, most, rated.V, most-rated.V)).
		Evidence(check.Of("most power received", s.Receives()), check.Plainly("rated power", rated.V)).
		Bound(check.Bound{Text: fmt.Sprintf("at most %s", rated.V), Number: float64(rated.V), Unit: "W", AtMost: true, Basis: "the loudspeaker's own rating, from its data sheet"}).
		At(s.Part.Tap.Span).Assumed(s.Delivered.Assumed...)
	if !s.Part.Tap.Set() {
		answer.At(inside(&s.Part.Part, s.Part.Impedance.Span))
	}
	answer.See(readable(rated.Span), "rated "+rated.Text)
	if len(s.Line.Output.Volts.From) > 0 {
		answer.See(readable(s.Line.Output.Volts.From[0].Span), s.Line.Output.Volts.From[0].Note)
	}
	overdrivenRemedies(answer, s)
}

// ownTap tells that a loudspeaker is on a tap of its own list, and on the voltage
// that list is for.
func ownTap(s *analysis.Run) bool {
	o := s.Line.Output
	if o == nil || o.Kind != analysis.ConstantVoltage || !s.Part.Tap.Set() || !s.Each.Known() {
		return false
	}
	taps, stated := analysis.TapsAt(s.Part, o.Volts.Value)
	if !stated || !sameVoltage(s.Tap.Marked, o.Volts.Value) {
		return false
	}
	_, found := taps.Find(s.Part.Tap.V)
	return found
}

// ratedMissing is the rating of a loudspeaker that is not stated.
func ratedMissing(s *analysis.Run) analysis.Missing {
	return analysis.Missing{What: "rated power", Part: "loudspeaker " + quoted(s.Part.Name), Where: s.Part.Header, Write: `rated_power = "10 W"`}
}

func overdrivenRemedies(answer *check.Answer, s *analysis.Run) {
	rated := s.Part.RatedPower.V
	o := s.Line.Output
	switch {
	case s.Tap.Direct:
		answer.Remedy(check.Computed, fmt.Sprintf("Use a loudspeaker rated %s or more, or an output that gives less.", s.Delivered.Value))
	case o.Kind == analysis.ConstantVoltage:
		var best schema.Value[quantity.Power]
		if taps, stated := analysis.TapsAt(s.Part, o.Volts.Value); stated {
			for _, t := range taps.List.Items {
				if t.V > best.V && quantity.AtMost(t.V, rated) {
					best = t
				}
			}
		}
		switch {
		case best.Set() && room(s, best.V):
			answer.Remedy(check.Proved, fmt.Sprintf("Connect it to its %s tap for %s.", best.Text, lineVolts(o.Volts.Value)), setTap(s, best, o.Volts.Value)...)
		default:
			answer.Remedy(check.Computed, fmt.Sprintf("Connect it to a tap that takes at most %s at %s.", rated, lineVolts(o.Volts.Value)))
		}
	default:
		answer.Remedy(check.Advice, "Connect it to a constant-voltage output of the voltage its tap is marked for.")
	}
}
