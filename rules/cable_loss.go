package rules

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// CableLoss asks how far the worst loudspeaker of a line is below the voltage of
// the amplifier.
var CableLoss = &check.Check{
	ID:      "cable-loss",
	Asks:    "How much of the voltage does the cable of each line take away at its worst loudspeaker?",
	Summary: "The cable takes away too much on the way to the worst loudspeaker of a line.",
	Why: "What is lost in the cable is bought twice: as amplifier power and as a quiet far end. The last loudspeakers of a long line play softer than the first, " +
		"and no control at the rack can put that right.",
	How: "Solves the line as it is walked, with the resistance of both conductors of every leg, and finds the loudspeaker with the lowest voltage against what it would have without cable. " +
		"A line whose cable comes back to the amplifier is solved as the ring it is, fed from both ends; one with a reverse return with its two conductors apart. " +
		"The limits are volts lost in per cent; the same is shown as a level in decibels at the loudspeaker and as watts turned into heat in the cable. " +
		"20 × lg(1 / (1 − drop)) makes decibels of a drop: 10 % is 0.92 dB, 20 % is 1.94 dB.",
	Basis: "common practice, no published source; 5 or 10 % of the load impedance, 10 % of the voltage, 0.5 and 1 dB are in use",
	Blind: "Attenuators count as fully up and their own loss does not count as cable loss. Joints and terminals are taken to have no resistance. " +
		"With only the total length of a line known, its whole load counts where most is lost, which is more than it will lose.",
	Params: []check.Param{
		{Name: "warning_drop", Doc: "voltage lost at the worst loudspeaker above which a warning is given", Unit: check.Percent, Default: 10, Low: 0.1, High: 90},
		{Name: "error_drop", Doc: "voltage lost at the worst loudspeaker above which it is an error", Unit: check.Percent, Default: 20, Low: 0.1, High: 90},
	},
	Severity: check.Error,
	Cautions: []string{"Measure the route, not the plan: drops, risers and slack at each loudspeaker are cable too."},
	Failing: check.Example{
		Shows: "120 W at the end of 150 m of 0.5 mm² cable.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2"
  home_run  = "150 m"
  loudspeaker "Horn" { tap = "120 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same through 1.5 mm².",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "150 m"
  loudspeaker "Horn" { tap = "120 W" }
}
`,
	},
	Judge: check.EachLine(cableLoss),
}

func cableLoss(r *check.Report, l *analysis.Line) {
	loss := &l.Loss
	if len(l.Part.Devices) == 0 || loss.Drop.Known() && loss.Worst == "" {
		r.NotAsked()
		return
	}
	if !loss.Drop.Known() {
		r.Open(fmt.Sprintf("What the cable of line %q takes away cannot be told.", l.Part.Name), loss.Drop.Missing...)
		return
	}
	warning, grave := r.Limit("warning_drop"), r.Limit("error_drop")
	drop := float64(loss.Drop.Value)
	limit, severity := warning, check.Severity(0)
	switch {
	case !quantity.AtMost(drop, grave.Value):
		limit, severity = grave, check.Error
	case !quantity.AtMost(drop, warning.Value):
		severity = check.Warning
	}
	worst := fmt.Sprintf("%q, the worst loudspeaker", loss.Worst)
	switch {
	case loss.Lumped:
		worst = "its loudspeakers, all counted " + l.AllAt()
	case loss.WorstRun == nil:
		worst = fmt.Sprintf("%q, the worst place", loss.Worst)
	}
	message := fmt.Sprintf("The cable of line %q takes %s %% of the voltage (%s dB) from %s", l.Part.Name, percentBeside(drop, limit.Value), percent(float64(loss.DB)), worst)
	var answer *check.Answer
	if severity == 0 {
		answer = r.Pass(message + ".")
	} else {
		answer = r.Fail(severity, message+othersPast(l, limit)+".")
	}
	answer.Evidence(cableEvidence(loss, r.US())...).
		AtMost(fmt.Sprintf("at most %s of the voltage, which is %s dB at the loudspeaker", limit, percent(dropDB(limit.Value))), limit.Value, "%", limit).
		At(inside(&l.Part.Part, l.Part.Cable.Span)).Assumed(loss.Drop.Assumed...)
	if loss.Lumped {
		answer.Assumed(allAt(l))
	}
	if severity == 0 {
		return
	}
	for _, p := range loss.Drop.From {
		answer.See(p.Span, p.Note)
	}
	if loss.WorstRun != nil && !loss.Lumped {
		answer.See(loss.WorstRun.Part.Header, "the worst: "+loss.Worst)
	}
	cableRemedies(answer, l, warning)
}

// othersPast counts the other loudspeakers that are past the limit too.
func othersPast(l *analysis.Line, limit check.Limit) string {
	if l.Loss.Lumped {
		return "" // all alike
	}
	past := l.CountPast(quantity.Percent(limit.Value))
	if l.Loss.WorstRun != nil {
		past--
	}
	if past < 1 {
		return ""
	}
	return fmt.Sprintf("; %s more than %s too", wording.Counted(past, "other")+verb(past, " loses", " lose"), limit)
}

func cableEvidence(loss *analysis.Loss, us bool) []check.Evidence {
	all := []check.Evidence{check.Of("voltage lost", loss.Drop)}
	level := check.Plainly("level lost", loss.DB)
	level.Sum = loss.LevelSum()
	all = append(all, level)
	heat := check.Plainly("share of the amplifier's power lost in the cable", loss.CableShare)
	if loss.SourcePower > 0 {
		heat = check.Plainly("power lost in the cable", loss.CablePower)
		heat.Sum = fmt.Sprintf("%s of the %s that the amplifier gives = %s", loss.CablePower, loss.SourcePower, loss.CableShare)
	}
	all = append(all, heat)
	cables := slices.Concat(loss.Cables, loss.Round)
	for i := range cables {
		c := &cables[i]
		name := "cable, both conductors"
		switch {
		case c.Conductors == 1:
			name = "conductor there and on round the loop"
		case i >= len(loss.Cables):
			name = "cable the other way round, both conductors"
		}
		e := check.Plainly(name, quantity.Resistance(c.LoopOhm))
		e.Sum = fmt.Sprintf("%s (%s)", c.Sum(us), c.Kind)
		all = append(all, e)
	}
	return all
}

// dropDB makes decibels of a drop in per cent.
func dropDB(drop float64) float64 { return -20 * math.Log10(1-drop/100) }

// cableRemedies names the conductor that would do, found by solving the line
// again, or what to do when none does.
func cableRemedies(answer *check.Answer, l *analysis.Line, warning check.Limit) {
	larger, ok := l.SmallestCable(quantity.Percent(min(warning.Value, answer.Limit("error_drop").Value)))
	lost := fmt.Sprintf("%s %% (%s dB) is then lost at the worst loudspeaker", percent(float64(larger.Drop)), percent(float64(larger.DB)))
	switch {
	case ok && larger.Throughout:
		answer.Remedy(check.Computed, fmt.Sprintf("Use %s or thicker for every leg of the line: %s.", larger.Cable, lost))
	case ok && !leansOnCable(l):
		answer.Remedy(check.Proved, fmt.Sprintf("Use %s for the line: %s.", larger.Cable, lost),
			check.Write(&l.Part.Part, l.Part.Cable.Span, "cable", strconv.Quote(larger.Cable)))
	case ok:
		answer.Remedy(check.Computed, fmt.Sprintf("Use %s for the line: %s. Look at the ratings first: without the loss of the old cable a loudspeaker or the output may get too much.", larger.Cable, lost))
	}
	switch {
	case l.Output != nil && l.Output.Kind == analysis.LowImpedance:
		answer.Remedy(check.Advice, "Feed these loudspeakers from a constant-voltage line: at 100 V the same power takes a fraction of the current.")
	case !ok && l.Looped():
		answer.Remedy(check.Advice, "No standard conductor does it: split the line in two, or turn taps down so that less current flows.")
	case !ok:
		answer.Remedy(check.Advice, "No standard conductor does it: split the line in two, feed it from its middle, or turn taps down so that less current flows.")
	case l.Looped():
		answer.Remedy(check.Advice, "Split the line in two.")
	default:
		answer.Remedy(check.Advice, "Split the line in two, or feed it from its middle.")
	}
}

// leansOnCable tells that a loudspeaker or the output is within its limits only,
// or perhaps only, because of what the cable takes.
func leansOnCable(l *analysis.Line) bool {
	for _, s := range l.Runs {
		if s.Part.RatedPower.Set() && !quantity.AtMost(s.Each.Value, s.Part.RatedPower.V) {
			return true
		}
	}
	o := l.Output
	if o == nil || !o.Part.LowestImpedance.Set() {
		return false
	}
	if o.Kind == analysis.ConstantVoltage {
		return !quantity.AtLeast(float64(o.Volts.Value)*float64(o.Volts.Value)/float64(o.Load.Value), float64(o.Part.LowestImpedance.V))
	}
	u := equalUnits(o)
	return u.count == 0 || !quantity.AtLeast(float64(u.ohm)/float64(u.count), float64(o.Part.LowestImpedance.V))
}
