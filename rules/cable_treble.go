package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// CableTreble asks how much of the treble the cable of a line takes away.
var CableTreble = &check.Check{
	ID:      "cable-treble",
	Asks:    "Does the cable of each line leave the treble as loud as the rest?",
	Summary: "A long, heavily loaded cable takes away treble, and speech with it.",
	Why: "Consonants are between 2 and 8 kHz: without them announcements are loud and not understood. The inductance of a cable stands in the way of high frequencies, " +
		"the more so the longer it is and the more hangs on it; capacitance makes them take current of their own. Thicker copper does not help.",
	How: "Solves the line at 10 kHz and at 1 kHz with the inductance and capacitance of its cables, and finds the loudspeaker where the loss grows most between the two. " +
		"Where a cable does not state them, the most that usual two-core cable could take is worked out (0.33 to 0.69 µH/m, 33 to 92 pF/m): within the limit it passes, beyond it the answer is open.",
	Basis: "common practice, no published source: 3 dB is where a change is heard by everybody",
	Blind: "Transformers of loudspeakers and amplifiers lose treble of their own, and a loudspeaker is taken to be as many ohms at 10 kHz as at 1 kHz unless it states otherwise. " +
		"Resistance is that at direct current: the skin effect adds less than 0.06 dB up to 2.5 mm². Screened cable that states no capacitance can have more than is taken. " +
		"With only the total length of a line known, its whole load counts where most is lost. " +
		"The loop of a reverse return is taken to have at most the inductance of a circle of as much conductor: within the limit it passes, beyond it the answer is open.",
	Params: []check.Param{
		{Name: "most_loss", Doc: "loss at 10 kHz beyond that at 1 kHz above which a warning is given", Unit: check.Decibel, Default: 3, Low: 0.1, High: 20},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "400 W into 4 ohm at the end of 150 m of thick cable.",
		Design: `amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
cable_model "own/2 x 6 mm2" {
  size        = "6 mm2"
  cores       = 2
  inductance  = "0.6 uH/m"
  capacitance = "70 pF/m"
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "own/2 x 6 mm2"
  home_run  = "150 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same power at 100 V.",
		Design: `amplifier "Stage" { rated_power = "800 W" }
cable_model "own/2 x 6 mm2" {
  size        = "6 mm2"
  cores       = 2
  inductance  = "0.6 uH/m"
  capacitance = "70 pF/m"
}
line "Left" {
  amplifier = "Stage"
  output    = "100 V"
  cable     = "own/2 x 6 mm2"
  home_run  = "150 m"
  loudspeaker "L" { tap = "400 W" }
}
`,
	},
	Judge: check.EachLine(cableTreble),
}

func cableTreble(r *check.Report, l *analysis.Line) {
	if len(l.Part.Devices) == 0 {
		r.NotAsked()
		return
	}
	t := l.Treble()
	switch {
	case len(t.Missing) > 0:
		r.Open(fmt.Sprintf("What the cable of line %q takes of the treble cannot be told.", l.Part.Name), t.Missing...)
		return
	case t.Worst == "":
		r.NotAsked()
		return
	}
	limit := r.Limit("most_loss")
	loss := quantity.Gain(math.Round(1000*max(0, float64(t.Loss))) / 1000)
	within := quantity.AtMost(float64(t.Loss), limit.Value)
	most := ""
	if t.Bound {
		most = "at most "
	}
	message := fmt.Sprintf("The cable of line %q takes %s%s more at 10 kHz than at 1 kHz at %q, where it takes most.", l.Part.Name, most, loss, t.Worst)
	var a *check.Answer
	switch {
	case loss < 0.01:
		a = r.Pass(fmt.Sprintf("The cable of line %q takes no more at 10 kHz than at 1 kHz.", l.Part.Name))
	case within:
		a = r.Pass(message)
	case t.Bound:
		a = r.Open(message, t.Unstated...)
	default:
		a = r.Fail(check.Warning, message)
	}
	evidence := check.Plainly("treble lost", loss)
	evidence.Sum = fmt.Sprintf("%s to %s, with %s on the line: %s more lost at 10 kHz than at 1 kHz", t.Way, t.Worst, t.LoadOhm, loss)
	a.Evidence(evidence).
		AtMost(fmt.Sprintf("at most %s at 10 kHz against 1 kHz", limit), limit.Value, "dB", limit).
		At(inside(&l.Part.Part, l.Part.Cable.Span)).Assumed(t.Assumed...)
	if t.Lumped {
		a.Assumed(allAt(l))
	}
	if within || t.Bound {
		return
	}
	if t.WorstRun != nil {
		a.See(t.WorstRun.Part.Header, "the worst place: "+t.Worst)
	}
	cableTrebleRemedies(a, l, limit)
}

func cableTrebleRemedies(a *check.Answer, l *analysis.Line, limit check.Limit) {
	if lines, loss, ok := l.TrebleSplit(quantity.Gain(limit.Value)); ok {
		a.Remedy(check.Computed, fmt.Sprintf("Share the load out over %d lines of the same cable, each with a home run of its own: %s is then lost.", lines, loss))
	}
	if l.Output != nil && l.Output.Kind == analysis.LowImpedance {
		a.Remedy(check.Advice, "Feed these loudspeakers from a constant-voltage line, which is many times as many ohms.")
	} else {
		a.Remedy(check.Advice, "Feed the line from its middle, or lay cable of less inductance: four cores with opposite ones joined have about half as much.")
	}
}
