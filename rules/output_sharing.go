package rules

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/source"
)

// OutputSharing asks whether outputs are in use together that must not be.
var OutputSharing = &check.Check{
	ID:      "output-sharing",
	Asks:    "Are no outputs of an amplifier in use together that must not be?",
	Summary: "Outputs of one amplifier are in use at once that must not be loaded together.",
	Why: "The 100 V, 70 V and low-impedance terminals of many amplifiers belong to one power stage and one transformer. Each is made for the full power alone; " +
		"loaded together they overload the stage, and neither gives what it should.",
	How: "Takes the outputs that carry lines and looks for one that another must never be used with (never_with, stated at either of the two). " +
		"Where neither says anything, a constant-voltage and a low-impedance output of one power channel at once are worth a warning.",
	Basis: "never_with from the data sheet; without it common practice, no published source",
	Blind: "Two constant-voltage outputs of different voltage on one channel pass where nothing is stated: their watts add up, and load-margin judges the sum. " +
		"An empty never_with says that an output may be used with any other.",
	Severity: check.Error,
	Failing: check.Example{
		Shows: "100 V and 8 ohm terminals of an amplifier that allows only one of them.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  output "Line" {
    volts      = "100 V"
    never_with = ["Direct"]
  }
  output "Direct" { lowest_impedance = "8 ohm" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Direct"
  loudspeaker "S" { impedance = "8 ohm" }
}
`,
	},
	Passing: check.Example{
		Shows: "Two zones of one amplifier, which may be used together.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "S" { tap = "30 W" }
}
`,
	},
	Judge: check.EachAmplifier(outputSharing),
}

func outputSharing(r *check.Report, a *analysis.Amplifier) {
	var used []*analysis.Output
	var missing []analysis.Missing
	for _, o := range a.Outputs {
		if o.Loaded {
			used = append(used, o)
		}
	}
	for _, l := range a.Lines {
		if l.Output == nil {
			missing = analysis.MergeMissing(missing, l.VoltsMissing())
		}
	}
	if len(used)+len(missing) < 2 {
		r.NotAsked()
		return
	}
	failed := false
	for _, group := range atOdds(used, forbidden) {
		failed = true
		sharing(r, group, check.Error, "must not be in use together").
			Remedy(check.Advice, "Use one of them, and move the lines of the others to it or to an amplifier of their own.")
	}
	for _, group := range atOdds(used, doubtful) {
		failed = true
		sharing(r, group, check.Warning, "are in use together, and most amplifiers allow only one of them at a time").
			Remedy(check.Advice, "Look at the data sheet. If both may be used, write never_with = [] at one of them; if not, give the low-impedance loudspeakers an amplifier of their own.")
	}
	if failed {
		return
	}
	for i, o := range used {
		for _, other := range used[:i] {
			if o.Kind == analysis.UnknownOutput && unstated(o, other) {
				missing = analysis.MergeMissing(missing, o.Volts.Missing)
			}
			if other.Kind == analysis.UnknownOutput && unstated(o, other) {
				missing = analysis.MergeMissing(missing, other.Volts.Missing)
			}
		}
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether amplifier %q has outputs in use together that must not be cannot be told.", a.Part.Name), missing...)
		return
	}
	r.Pass(fmt.Sprintf("The %d outputs of amplifier %q that are in use may be used together.", len(used), a.Part.Name))
}

// forbidden tells that one of two outputs says it must not be used with the other.
func forbidden(a, b *analysis.Output) bool {
	for _, pair := range [2][2]*analysis.Output{{a, b}, {b, a}} {
		for _, n := range pair[0].Part.NeverWith.Items {
			if n.V == pair[1].Part.Name {
				return true
			}
		}
	}
	return false
}

// unstated tells that neither of two outputs of one channel says what it must not
// be used with.
func unstated(a, b *analysis.Output) bool {
	return a.Channel == b.Channel && !a.Part.NeverWith.Set() && !b.Part.NeverWith.Set()
}

// doubtful tells that two outputs are a line and a low-impedance output of one
// channel, of which nothing is stated.
func doubtful(a, b *analysis.Output) bool {
	return unstated(a, b) &&
		(a.Kind == analysis.ConstantVoltage && b.Kind == analysis.LowImpedance || a.Kind == analysis.LowImpedance && b.Kind == analysis.ConstantVoltage)
}

// atOdds puts outputs together that are at odds, directly or through others.
func atOdds(used []*analysis.Output, odds func(a, b *analysis.Output) bool) [][]*analysis.Output {
	var groups [][]*analysis.Output
	seen := map[*analysis.Output]bool{}
	for _, first := range used {
		if seen[first] {
			continue
		}
		group := []*analysis.Output{first}
		seen[first] = true
		for next := 0; next < len(group); next++ {
			for _, o := range used {
				if !seen[o] && odds(group[next], o) {
					seen[o] = true
					group = append(group, o)
				}
			}
		}
		if len(group) > 1 {
			groups = append(groups, group)
		}
	}
	return groups
}

// sharing answers for outputs that are in use together.
func sharing(r *check.Report, group []*analysis.Output, severity check.Severity, what string) *check.Answer {
	names := make([]string, len(group))
	for i, o := range group {
		names[i] = quoted(o.Part.Name)
	}
	answer := r.Fail(severity, fmt.Sprintf("The outputs %s of amplifier %q %s.", listed(names), group[0].Amplifier.Part.Name, what)).Key("outputs with " + group[0].Part.Name)
	answer.At(onOutput(group[len(group)-1].Lines[0]))
	for _, o := range slices.Backward(group) {
		for _, l := range o.Lines {
			answer.See(onOutput(l), "line "+quoted(l.Part.Name)+" on output "+quoted(o.Part.Name))
		}
	}
	for _, o := range group {
		answer.See(readable(o.Part.NeverWith.Span), "what must not be used with "+quoted(o.Part.Name))
		if o.Load.Known() {
			answer.Evidence(check.Of("load on output "+quoted(o.Part.Name), o.Load))
		}
	}
	return answer
}

// onOutput is where a line says which output it is on.
func onOutput(l *analysis.Line) source.Span {
	if at := inside(&l.Part.Part, l.Part.Output.Span); !at.IsZero() {
		return at
	}
	return l.Part.Header
}
