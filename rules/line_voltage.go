package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// LineVoltage asks whether a loudspeaker is on the voltage that its tap is marked
// for.
var LineVoltage = &check.Check{
	ID:      "line-voltage",
	Asks:    "Is each loudspeaker on the voltage its tap is marked for, and with a transformer exactly where there is a line?",
	Summary: "A loudspeaker is on another voltage than its tap is marked for, or without the transformer the line needs.",
	Why: "The power a tap takes goes with the square of the voltage. A 70 V tap on a 100 V line takes twice its marking and overloads amplifier and loudspeaker; " +
		"on a 25 V line it takes an eighth and is hardly heard. A loudspeaker without a transformer is next to a short circuit on a line and silences everything on it.",
	How: "Takes the voltage the tap is marked for from tap_for, else from the line, and works out tap × (line voltage / marked voltage)² and the same in decibels; " +
		"for a loudspeaker without a transformer, (line voltage)² / impedance.",
	Basis: "the marking of the tap and the voltage of the output, which have to be the same within 2 %",
	Blind: "A tap without tap_for is taken to be marked for the voltage of its line. A loudspeaker connected without a transformer passes where it is rated for what it then takes: " +
		"some are made of high impedance.",
	Severity: check.Error,
	Cautions: []string{"Loudspeakers of several markings look alike from below: read the tap on one of each batch before the ceiling is closed."},
	Failing: check.Example{
		Shows: "A tap marked for 70 V on a 100 V line takes 12 W instead of 6 W.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    tap     = "6 W"
    tap_for = "70 V"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "The same tap on a 70 V line.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    tap     = "6 W"
    tap_for = "70 V"
  }
}
`,
	},
	Judge: check.EachRun(lineVoltage),
}

func lineVoltage(r *check.Report, s *analysis.Run) {
	o := s.Line.Output
	switch {
	case s.Tap.Off:
		r.NotAsked()
	case !s.Each.Known() || o == nil || o.Kind == analysis.UnknownOutput:
		r.Open("Whether loudspeaker "+quoted(s.Part.Name)+" is on the right voltage cannot be told.", analysis.MergeMissing(s.Each.Missing, s.Line.VoltsMissing())...)
	case s.Tap.Direct && o.Kind == analysis.ConstantVoltage:
		withoutTransformer(r, s)
	case s.Tap.Direct:
		r.Pass(runName(s) + " has no transformer and needs none on a low-impedance output.")
	case sameVoltage(o.Volts.Value, s.Tap.Marked):
		r.Pass(runName(s) + " is on a tap for " + lineVolts(s.Tap.Marked) + ", which is what the line carries.")
	default:
		wrongVoltage(r, s)
	}
}

// highImpedance is from where on a loudspeaker without a transformer is believed
// to be made for a line: coils are below 100 ohm. Common practice, no published
// source.
const highImpedance = 100

// withoutTransformer judges a loudspeaker straight across a constant-voltage line.
func withoutTransformer(r *check.Report, s *analysis.Run) {
	volts, rated := s.Line.Output.Volts.Value, s.Part.RatedPower
	if rated.Set() && quantity.AtMost(s.Each.Value, rated.V) {
		r.Pass(fmt.Sprintf("%s takes %s straight from the line and is rated %s.", runName(s), s.Each.Value, rated.V))
		return
	}
	ohm := s.Part.Impedance
	if !rated.Set() && ohm.Set() && ohm.V >= highImpedance {
		r.Open("Whether loudspeaker "+quoted(s.Part.Name)+" may be connected to the line without a transformer cannot be told.", ratedMissing(s))
		return
	}
	message := fmt.Sprintf("%s has no transformer and is connected straight across %s: it asks for %s", runName(s), lineVolts(volts), s.Each.Value)
	if c := s.Line.Channel; c != nil && c.Rated.Known() && s.Each.Value > c.Rated.Value {
		message += fmt.Sprintf(" of an amplifier of %s and silences the whole line", c.Rated.Value)
	}
	answer := r.Fail(check.Error, message+".").
		Evidence(check.Of("power it asks for", s.Each)).At(ohm.Span)
	answer.See(readable(s.Line.Output.Volts.From[0].Span), lineVolts(volts)+" line")
	seeLoads(answer, s.Each.From)
	answer.Remedy(check.Advice, fmt.Sprintf("Give it a line transformer for %s, and write the tap it is set to: tap = \"…\".", lineVolts(volts)))
	if c := s.Line.Channel; c != nil && c.Rated.Known() && c.Load.Known() {
		rest := c.Load.Value - s.Each.Value*quantity.Power(s.Count)
		if free := c.Rated.Value - rest; free > 0 {
			answer.Remedy(check.Computed, fmt.Sprintf("Choose a tap of at most %s for it: the others already take %s of %s.", quantity.Power(float64(free)/float64(s.Count)), rest, c.Rated.Value))
		}
	}
}

// wrongVoltage judges a tap on another voltage than it is marked for.
func wrongVoltage(r *check.Report, s *analysis.Run) {
	o := s.Line.Output
	volts, marked, tap := o.Volts.Value, s.Tap.Marked, s.Part.Tap
	severity := check.Error
	if o.Kind == analysis.ConstantVoltage && lineVolts(volts) == "70.7 V" && quantity.AtMost(math.Abs(float64(marked-100)), 0.5) {
		severity = check.Note // usual where a loudspeaker has no taps for 70 V
	}
	where := "the line carries " + lineVolts(volts)
	if o.Kind == analysis.LowImpedance {
		where = fmt.Sprintf("the output is for loudspeakers without transformers and gives %s", volts)
	}
	how := "less"
	if s.Each.Value > tap.V {
		how = "more"
	}
	decibels := 10 * math.Log10(float64(s.Each.Value)/float64(tap.V))
	answer := r.Fail(severity, fmt.Sprintf("%s is on its %s tap for %s and %s: it takes %s, %s dB %s than marked.", runName(s), tap.Text, lineVolts(marked), where, s.Each.Value, quantity.Significant(math.Abs(decibels), 3), how))
	level := check.Number("level against the marking", decibels, "dB")
	level.Sum = fmt.Sprintf("10 × lg(%s / %s) = %s dB", s.Each.Value, tap.Text, quantity.Significant(decibels, 3))
	answer.Evidence(check.Of("power it takes", s.Each), level).
		Bound(check.Bound{Text: fmt.Sprintf("the voltage of the line, %s, within 2 %%", lineVolts(volts)), Number: float64(volts), Unit: "V", Basis: "the marking of the tap"}).
		At(s.Part.TapFor.Span).See(tap.Span, "tap of "+tap.Text)
	if len(o.Volts.From) > 0 {
		answer.See(readable(o.Volts.From[0].Span), o.Volts.From[0].Note)
	}
	voltageRemedies(answer, s)
}

func voltageRemedies(answer *check.Answer, s *analysis.Run) {
	o, tap := s.Line.Output, s.Part.Tap
	if o.Kind == analysis.LowImpedance {
		answer.Remedy(check.Advice, "Connect it to a constant-voltage output, or bypass the transformer and state the impedance of the loudspeaker itself.")
		return
	}
	volts := lineVolts(o.Volts.Value)
	taps, stated := analysis.TapsAt(s.Part, o.Volts.Value)
	if !stated {
		if analysis.HasTaps(s.Part) {
			answer.Remedy(check.Advice, fmt.Sprintf("Its transformer has no taps for %s: choose a loudspeaker that has, or the tap that comes nearest to the power wanted.", volts))
			return
		}
		answer.Remedy(check.Advice, fmt.Sprintf("Connect it to the terminals of its transformer that are marked for %s, and write tap_for = %q.", volts, volts))
		return
	}
	near := taps.List.Items[0]
	for _, t := range taps.List.Items {
		if math.Abs(math.Log(float64(t.V/tap.V))) < math.Abs(math.Log(float64(near.V/tap.V))) {
			near = t
		}
	}
	text := fmt.Sprintf("Connect it to its %s tap for %s.", near.Text, volts)
	if room(s, near.V) {
		answer.Remedy(check.Proved, text, setTap(s, near, o.Volts.Value)...)
		return
	}
	answer.Remedy(check.Computed, text+fmt.Sprintf(" It then takes %s%s: look at the load of the amplifier and at its own rating.", near.Text, each(s)))
}
