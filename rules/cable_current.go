package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// CableCurrent asks whether the conductors of a line carry no more current than
// they may.
var CableCurrent = &check.Check{
	ID:      "cable-current",
	Asks:    "Does every leg of each line carry no more current than its conductors may?",
	Summary: "A cable carries more current at full output than its conductors may for long.",
	Why: "A conductor that carries too much gets hot enough to harm its insulation, and behind that is fire. At 100 V or 70 V the currents are small; " +
		"at 4 or 8 ohm a few hundred watts are many amperes, and thin cable is what lies about on site.",
	How: "Solves the line at full output and takes the highest current in any leg of each cable, on a ring fed from both ends, with a reverse return in either conductor. It may be what the data sheet of the cable says, else what a table says " +
		"for its size: IEC 60364-5-52 and BS 7671 for mm², the National Electrical Code for gauges. Above 30 °C conductors of a stated temperature may carry less. " +
		"Where not every leg is known, each cable is taken to carry what the whole line takes. Past it is a warning, since speech and music on average take far less than full output; far past it is an error.",
	Basis: "data sheet of the cable, else IEC 60364-5-52 Table B.52.2 (method C, two loaded, copper, PVC), BS 7671 Tables 4D2A and 4F3A below 1.5 mm², " +
		"NEC Tables 310.16 (60 °C), 402.5 and 725.144 for gauges; all from memory",
	Blind: "Full output is a steady tone at rated power: attention signals come near it, speech and music do not. " +
		"Cable in thermal insulation, on reels, or bundled with other loaded cables may carry less than the tables say. " +
		"Fuses and what an amplifier gives into a short are not looked at, nor is what the current costs in volts: that is cable-loss.",
	Params: []check.Param{
		{Name: "warning_share", Doc: "share of what a conductor may carry above which a warning is given", Unit: check.Percent, Default: 100, Low: 10, High: 400},
		{Name: "error_share", Doc: "share of it above which it is an error", Unit: check.Percent, Default: 200, Low: 10, High: 400, Basis: "common practice, no published source: loud music at one eighth of full power takes a good third of its current"},
	},
	Severity: check.Error,
	Cautions: []string{"Cable that has run hot once is not to be trusted again: look at its insulation before it is used on."},
	Failing: check.Example{
		Shows: "700 W into 4 ohm is 13 A, and 0.5 mm² may carry 3 A.",
		Design: `amplifier "Stage" {
  rated_power = "700 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 0.5 mm2"
  home_run  = "2 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same loudspeaker on 2.5 mm².",
		Design: `amplifier "Stage" {
  rated_power = "700 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 2.5 mm2"
  home_run  = "2 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
`,
	},
	Judge: check.EachLine(cableCurrent),
}

func cableCurrent(r *check.Report, l *analysis.Line) {
	currents, missing := l.Currents()
	if len(missing) > 0 && len(l.Part.Devices) > 0 {
		r.Open(fmt.Sprintf("What current the cable of line %q carries cannot be told.", l.Part.Name), missing...)
		return
	}
	if len(currents) == 0 {
		r.NotAsked()
		return
	}
	warning, grave := r.Limit("warning_share"), r.Limit("error_share")
	least := min(warning.Value, grave.Value)
	var worst *analysis.CableCurrent
	fails := false
	for i := range currents {
		c := &currents[i]
		switch {
		case !c.Rating.Known():
			missing = analysis.MergeMissing(missing, c.Rating.Missing)
		case !quantity.AtMost(used(c, c.Least), grave.Value):
			fails = true
			cableCurrentFails(r, l, c, check.Error, grave)
		case !quantity.AtMost(used(c, c.Least), warning.Value):
			fails = true
			cableCurrentFails(r, l, c, check.Warning, warning)
		case !quantity.AtMost(used(c, c.Most), least):
			missing = analysis.MergeMissing(missing, c.Exact)
		case worst == nil || used(c, c.Most) > used(worst, worst.Most)*(1+1e-9):
			worst = c
		}
	}
	switch {
	case fails:
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether the cable of line %q may carry its current cannot be told.", l.Part.Name), missing...)
	default:
		currentFigures(r.Pass(currentText(l, worst, worst.Most, "at most ")), l, worst, worst.Most, warning)
	}
}

// used is a current in per cent of what the cable may carry.
func used(c *analysis.CableCurrent, current analysis.Figure[quantity.Current]) float64 {
	return 100 * float64(current.Value) / float64(c.Rating.Value)
}

func cableCurrentFails(r *check.Report, l *analysis.Line, c *analysis.CableCurrent, severity check.Severity, limit check.Limit) {
	a := r.Fail(severity, currentText(l, c, c.Least, "at least "))
	currentFigures(a, l, c, c.Least, limit)
	for _, p := range c.Least.From {
		a.See(p.Span, p.Note)
	}
	cableCurrentRemedies(a, l, c)
}

func currentText(l *analysis.Line, c *analysis.CableCurrent, current analysis.Figure[quantity.Current], bound string) string {
	if !c.Bound {
		bound = ""
	}
	return fmt.Sprintf("On line %q, %s carries %s%s at full output; its conductors may carry %s.", l.Part.Name, cableOf(c.NamedCable), bound, current.Value, c.Rating.Value)
}

// currentFigures shows what was compared.
func currentFigures(a *check.Answer, l *analysis.Line, c *analysis.CableCurrent, current analysis.Figure[quantity.Current], limit check.Limit) {
	most := quantity.Current(float64(c.Rating.Value) * limit.Value / 100)
	text := fmt.Sprintf("at most %s", most)
	if limit.Value < 100 || limit.Value > 100 {
		text += fmt.Sprintf(" (%s of %s)", limit, c.Rating.Value)
	}
	a.Evidence(check.Of("current", current), check.Of("current it may carry", c.Rating), check.Number("share of what it may carry", used(c, current), "%")).
		Bound(check.Bound{Text: text, Number: float64(most), Unit: "A", AtMost: true, Basis: currentBasis(c, limit), Origin: limit.Origin}).
		Assumed(current.Assumed...).Assumed(c.Rating.Assumed...)
	aboutCable(l, c.NamedCable, a)
}

// currentBasis says where the rating comes from, and where the share of it does
// when it is not the whole.
func currentBasis(c *analysis.CableCurrent, limit check.Limit) string {
	if limit.Origin.IsZero() && limit.Param.Basis == "" {
		return c.RatingBasis
	}
	return c.RatingBasis + "; " + limit.Basis(nil)
}

// cableCurrentRemedies names the conductor that may carry it.
func cableCurrentRemedies(a *check.Answer, l *analysis.Line, c *analysis.CableCurrent) {
	size, most, ok := l.CableFor(c, min(a.Limit("warning_share").Value, a.Limit("error_share").Value)/100)
	switch edits := layInstead(l, c.NamedCable, size); {
	case ok && len(edits) > 0:
		a.Remedy(check.Proved, fmt.Sprintf("Lay %s: its conductors may carry %s.", size, most), edits...)
	case ok:
		a.Remedy(check.Computed, fmt.Sprintf("Lay %s: its conductors may carry %s. Look at the ratings first: without the loss of the old cable a loudspeaker or the output may get too much.", size, most))
	}
	if l.Output.Kind == analysis.LowImpedance {
		a.Remedy(check.Advice, "Feed these loudspeakers from a constant-voltage line: at 100 V the same power takes a fraction of the current.")
	} else {
		a.Remedy(check.Advice, fmt.Sprintf("Split line %q in two, each with a home run of its own.", l.Part.Name))
	}
}
