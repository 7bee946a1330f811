package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// outputFigure is where the limits of an output come from.
const outputFigure = "the output's own figure, from its data sheet"

// ZoneLoad asks whether an output carries no more than it may by itself.
var ZoneLoad = &check.Check{
	ID:      "zone-load",
	Asks:    "Does each output stay within the highest load it may carry by itself?",
	Summary: "The loudspeakers on one output ask for more than that output may carry.",
	Why: "Zone switches, relays and terminals carry less than the power stage behind them. The amplifier as a whole can be well within its rating " +
		"while one zone burns a relay contact or trips its own protection.",
	How: "Adds up the real power each device on the output takes at its voltage, as load-margin does for the whole channel, " +
		"and compares the sum with highest_load of that output.",
	Basis: outputFigure,
	Blind: "Asked only of outputs with a highest_load. A data sheet that gives the limit of a zone in amperes or in ohms has to be turned into watts first: " +
		"volts × amperes, or volts² / ohms.",
	Cautions: []string{"What one zone gains when a line is moved, the other loses: look at paging zones before a line changes its output."},
	Severity: check.Error,
	Failing: check.Example{
		Shows: "80 W on a zone that may carry 60 W, though the amplifier has 160 W in hand.",
		Design: `amplifier "Rack" {
  rated_power = "240 W"
  output "Zone 1" {
    volts        = "100 V"
    highest_load = "60 W"
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 8
    tap      = "10 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "48 W on the same zone.",
		Design: `amplifier "Rack" {
  rated_power = "240 W"
  output "Zone 1" {
    volts        = "100 V"
    highest_load = "60 W"
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 8
    tap      = "6 W"
  }
}
`,
	},
	Judge: check.EachOutput(zoneLoad),
}

func zoneLoad(r *check.Report, o *analysis.Output) {
	highest := o.Part.HighestLoad
	if !highest.Set() || len(o.Lines) == 0 && o.Load.Known() {
		r.NotAsked()
		return
	}
	if !o.Load.Known() {
		r.Open(fmt.Sprintf("Whether %s carries more than its %s cannot be told.", outputName(o), highest.V), o.Load.Missing...)
		return
	}
	load := o.Load.Value
	var answer *check.Answer
	over := !quantity.AtMost(load, highest.V)
	if over {
		message := fmt.Sprintf("%s may carry %s and its loudspeakers take %s: %s too much", wording.Capital(outputName(o)), highest.V, load, load-highest.V)
		if c := o.Channel; c != nil && c.Rated.Known() && c.Load.Known() && c.Load.Value < c.Rated.Value {
			message += fmt.Sprintf(", though the amplifier has %s in hand", c.Rated.Value-c.Load.Value)
		}
		answer = r.Fail(check.Error, message+".")
	} else {
		answer = r.Pass(fmt.Sprintf("%s may carry %s and its loudspeakers take %s.", wording.Capital(outputName(o)), highest.V, load))
	}
	answer.Evidence(check.Of("load", o.Load), check.Plainly("highest load", highest.V), check.Number("share of the highest load", 100*float64(load/highest.V), "%")).
		Bound(check.Bound{Text: fmt.Sprintf("at most %s", highest.V), Number: float64(highest.V), Unit: "W", AtMost: true, Basis: outputFigure}).
		At(limitAt(o, highest.Span)).Assumed(o.Load.Assumed...)
	if !over {
		return
	}
	answer.See(readable(highest.Span), "highest load "+highest.Text)
	seeLoads(answer, o.Load.From)
	zoneLoadRemedies(answer, o)
}

// zoneLoadRemedies looks for a line that another output of the channel can take,
// and names the watts to take off.
func zoneLoadRemedies(answer *check.Answer, o *analysis.Output) {
	excess := o.Load.Value - o.Part.HighestLoad.V
	if l, to := movable(o, excess); l != nil {
		answer.Remedy(check.Proved, fmt.Sprintf("Put line %q (%s) on output %q, which then carries %s.", l.Part.Name, l.Load.Value, to.Part.Name, to.Load.Value+l.Load.Value), moveLine(l, to))
	}
	answer.Remedy(check.Computed, fmt.Sprintf("Take %s off this output: turn taps down (one step of 3 dB halves a tap) or move loudspeakers to another zone.", excess))
}

// movable finds the smallest line whose leaving clears an output, and an output of
// the same voltage and channel that has room for it.
func movable(o *analysis.Output, excess quantity.Power) (*analysis.Line, *analysis.Output) {
	if o.Channel == nil || len(o.Lines) < 2 {
		return nil, nil
	}
	var best *analysis.Line
	var to *analysis.Output
	for _, l := range o.Lines {
		if !l.Load.Known() || !quantity.AtLeast(l.Load.Value, excess) || best != nil && l.Load.Value >= best.Load.Value {
			continue
		}
		for _, other := range o.Channel.Outputs {
			if other != o && takes(other, o, l.Load.Value) {
				best, to = l, other
				break
			}
		}
	}
	return best, to
}

// takes tells that an output can carry a line of another one too, and that using
// it is not at odds with any output in use.
func takes(other, from *analysis.Output, load quantity.Power) bool {
	if other.Kind != from.Kind || other.Part.Volts.V != from.Part.Volts.V || !other.Load.Known() {
		return false
	}
	for _, o := range from.Amplifier.Outputs {
		if o != other && o.Loaded && (forbidden(o, other) || doubtful(o, other)) {
			return false
		}
	}
	return !other.Part.HighestLoad.Set() || quantity.AtMost(other.Load.Value+load, other.Part.HighestLoad.V)
}
