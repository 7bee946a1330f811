package rules

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// ImpedanceFloor asks whether an amplifier output sees no less impedance than it
// may.
var ImpedanceFloor = &check.Check{
	ID:      "impedance-floor",
	Asks:    "Is the impedance on each output at or above the lowest it allows?",
	Summary: "An amplifier output sees less impedance than it may work into.",
	Why: "Loudspeakers in parallel divide their impedance. Below the lowest one allowed the output has to give more current than it can: " +
		"it runs hot, shuts down at the loudest moment, or fails.",
	How: "Solves the network on the output with its cable, at 1 kHz and at every frequency for which a loudspeaker states an impedance, " +
		"takes the lowest magnitude found and compares it with lowest_impedance. Cable that is not fully stated is left out, because it could only help.",
	Basis: outputFigure,
	Blind: "A constant-voltage output without a figure of its own is not asked: its rating implies volts² / watts, which says the same as the watts that load-margin compares and shows beside them. " +
		"A nominal impedance hides dips of the real one: state impedance_at where they are known.",
	Severity: check.Error,
	Cautions: []string{"Unequal loudspeakers in series share the power unequally: the one of higher impedance takes more."},
	Failing: check.Example{
		Shows: "Three 8 ohm loudspeakers in parallel on an output for 4 ohm or more.",
		Design: `amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "Bar room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity  = 3
    impedance = "8 ohm"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "Two of them are exactly 4 ohm.",
		Design: `amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "Bar room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity  = 2
    impedance = "8 ohm"
  }
}
`,
	},
	Judge: check.Together(check.EachOutput(impedanceFloor), check.EachLine(impedanceOfLine)),
}

func impedanceFloor(r *check.Report, o *analysis.Output) {
	floor := o.Part.LowestImpedance
	if o.Kind == analysis.ConstantVoltage && !floor.Set() || !o.Loaded {
		r.NotAsked()
		return
	}
	missing := o.Impedance.Missing
	if o.Kind != analysis.UnknownOutput && !floor.Set() {
		missing = append(slices.Clip(missing), analysis.Missing{
			What: "lowest impedance allowed", Part: outputName(o), Where: o.Part.Header, Write: `lowest_impedance = "4 ohm"`,
		})
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether %s sees enough impedance cannot be told.", outputName(o)), missing...)
		return
	}
	sees := o.Impedance.Value
	at := ""
	if math.Abs(o.AtHz-1000) > 0.5 {
		at = " at " + quantity.Frequency(o.AtHz).String()
	}
	var answer *check.Answer
	low := !quantity.AtLeast(sees, floor.V)
	if low {
		answer = r.Fail(check.Error, fmt.Sprintf("%s needs at least %s and sees %s%s: it has to give more current than it may.", wording.Capital(outputName(o)), floor.V, sees, at))
	} else {
		answer = r.Pass(fmt.Sprintf("%s needs at least %s and sees %s%s.", wording.Capital(outputName(o)), floor.V, sees, at))
	}
	answer.Evidence(check.Of("lowest impedance of the load", o.Impedance), check.Plainly("lowest impedance allowed", floor.V)).
		Bound(check.Bound{Text: fmt.Sprintf("at least %s", floor.V), Number: float64(floor.V), Unit: "ohm", Basis: outputFigure}).
		At(limitAt(o, floor.Span)).Assumed(o.Impedance.Assumed...)
	if o.Part.Implied && floor.Span == o.Part.RatedInto.Span {
		answer.Assumed(fmt.Sprintf("an output called %s allows no less than that", floor.Text))
	}
	if !low {
		return
	}
	answer.See(readable(floor.Span), "lowest impedance "+floor.Text)
	seeLoads(answer, o.Impedance.From)
	impedanceRemedies(answer, o)
}

// impedanceOfLine answers for a line that is on no output of which an impedance
// could be told.
func impedanceOfLine(r *check.Report, l *analysis.Line) {
	alone := l.Amplifier == nil && l.Output != nil && l.Output.Kind != analysis.ConstantVoltage
	if l.Output != nil && !alone || len(l.Part.Devices) == 0 {
		r.NotAsked()
		return
	}
	r.Open(fmt.Sprintf("Whether line %q has enough impedance for its output cannot be told.", l.Part.Name), l.Load.Missing...)
}

func impedanceRemedies(answer *check.Answer, o *analysis.Output) {
	floor := float64(o.Part.LowestImpedance.V)
	if o.Kind == analysis.ConstantVoltage {
		most := quantity.Power(float64(o.Volts.Value) * float64(o.Volts.Value) / floor)
		answer.Remedy(check.Computed, fmt.Sprintf("Take %s off this output: at %s its loudspeakers may take (%s)² / %s = %s.",
			o.Load.Value-most, lineVolts(o.Volts.Value), lineVolts(o.Volts.Value), o.Part.LowestImpedance.V, most))
		return
	}
	if l := pair(o); l != nil {
		ohm := 2 * equalUnits(o).ohm
		answer.Remedy(check.Proved, fmt.Sprintf("Wire the two in series: %s.", ohm), check.Write(&l.Part.Part, l.Part.Wiring.Span, "wiring", `"series"`))
	}
	if u := equalUnits(o); u.count > 0 {
		if fit := int(float64(u.ohm)/floor + 1e-9); fit > 0 {
			answer.Remedy(check.Computed, fmt.Sprintf("Connect at most %s of %s in parallel to this output; %d are connected.", wording.Counted(fit, "loudspeaker"), u.ohm, u.count))
		}
		if inSeries := grouped(u, floor); inSeries > 1 {
			groups := u.count / inSeries
			answer.Remedy(check.Computed, fmt.Sprintf("Wire them as %d groups of %d in series, the groups in parallel: %s.", groups, inSeries, u.ohm*quantity.Resistance(inSeries)/quantity.Resistance(groups)))
		}
	}
	answer.Remedy(check.Advice, "Use loudspeakers with line transformers on a constant-voltage output, where watts add up and not impedances.")
}

// units are the loudspeakers of an output when all are equal and in parallel.
type units struct {
	ohm   quantity.Resistance
	count int
}

// equalUnits gives the loudspeakers on an output; a count of 0 when they differ or
// are not all in parallel and without transformer.
func equalUnits(o *analysis.Output) units {
	var u units
	for _, l := range o.Lines {
		for _, s := range l.Runs {
			if !s.Tap.Direct || !s.Part.Impedance.Set() || s.Part.SeriesResistance.Set() || u.count > 0 && s.Part.Impedance.V != u.ohm || l.Part.Wiring.V == "series" {
				return units{}
			}
			u.ohm, u.count = s.Part.Impedance.V, u.count+s.Count
		}
		if hasMore(l) {
			return units{}
		}
	}
	return u
}

// hasMore tells that a line carries other devices than loudspeakers.
func hasMore(l *analysis.Line) bool {
	for _, d := range l.Part.Devices {
		if _, plain := d.(*schema.Loudspeaker); !plain {
			return true
		}
	}
	return false
}

// pair gives the line of an output that carries just two loudspeakers, which in
// series are enough.
func pair(o *analysis.Output) *analysis.Line {
	u := equalUnits(o)
	if len(o.Lines) != 1 || u.count != 2 || !quantity.AtLeast(2*u.ohm, o.Part.LowestImpedance.V) {
		return nil
	}
	return o.Lines[0]
}

// grouped gives how many in series make equal groups that in parallel are enough;
// 0 when no grouping but all in series does.
func grouped(u units, floor float64) int {
	for inSeries := 2; inSeries < u.count; inSeries++ {
		if u.count%inSeries == 0 && quantity.AtLeast(float64(u.ohm)*float64(inSeries*inSeries)/float64(u.count), floor) {
			return inSeries
		}
	}
	return 0
}
