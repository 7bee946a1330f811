package rules

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// LoadMargin asks whether the load of a power channel is far enough below its
// rating.
var LoadMargin = &check.Check{
	ID:      "load-margin",
	Asks:    "Is the connected load of each power channel far enough below its rated power?",
	Summary: "The loudspeakers on a power channel ask for too much of its rated power.",
	Why: "On a constant-voltage line every tap takes its watts at full output. Above the rating the amplifier runs hot, limits or trips, " +
		"and close below it nothing is left for the losses of transformers, for one more loudspeaker, or for a higher tap where a room turns out too quiet.",
	How: "Adds up the real power each device on the constant-voltage outputs of the channel takes at nominal line voltage: a tap marked for another voltage " +
		"counts tap × (line voltage / marked voltage)², old equipment counts what is stated. Cable loss is not added: it lowers the draw.",
	Basis: "common practice, no published source; limits of 75 to 100 % of the rating are in use",
	Blind: "Channels with low-impedance outputs only are judged by impedance-floor. Whether all outputs are ever driven fully at once is not asked: the sum of all is taken. " +
		"Transformer losses (about 1 dB) are left to the margin.",
	Params: []check.Param{
		{Name: "warning_margin", Doc: "margin below the rating under which a warning is given", Unit: check.Percent, Default: 10, Low: 0, High: 90},
		{Name: "note_margin", Doc: "margin below the rating under which a note is given", Unit: check.Percent, Default: 15, Low: 0, High: 90},
	},
	Severity: check.Error,
	Cautions: []string{"Turning a tap up to cure a quiet room adds its watts to this sum at once: 3 dB more doubles them."},
	Failing: check.Example{
		Shows: "250 W of taps on a 240 W amplifier.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "200 W of taps leave 17 % in hand.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
`,
	},
	Judge: check.EachChannel(loadMargin),
}

func loadMargin(r *check.Report, c *analysis.Channel) {
	if !c.CarriesLines() {
		r.NotAsked()
		return
	}
	if missing := analysis.MergeMissing(c.Load.Missing, c.Rated.Missing); len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether the load of %s is below its rating cannot be told.", channelName(c)), missing...)
		return
	}
	rated, load := float64(c.Rated.Value), float64(c.Load.Value)
	warning, note := r.Limit("warning_margin"), r.Limit("note_margin")
	share := 100 * load / rated
	evidence := []check.Evidence{check.Of("load", c.Load), check.Of("rated power", c.Rated), check.Number("share of the rating", share, "%")}

	strictest := note // criteria may set a warning above the margin for a note
	if warning.Value > note.Value {
		strictest = warning
	}
	limit := warning
	var answer *check.Answer
	switch {
	case !quantity.AtMost(load, rated):
		answer = r.Fail(check.Error, fmt.Sprintf("%s is rated %s and its loudspeakers take %s: %s too much (%s %%).", channelName(c), c.Rated.Value, c.Load.Value, quantity.Power(load-rated), percent(share)))
	case !quantity.AtMost(load, below(rated, warning)):
		answer = r.Fail(check.Warning, fmt.Sprintf("%s is rated %s and its loudspeakers take %s: %s.", channelName(c), c.Rated.Value, c.Load.Value, inHand("only ", share, warning)))
	case !quantity.AtMost(load, below(rated, note)):
		limit = note
		answer = r.Fail(check.Note, fmt.Sprintf("%s is rated %s and its loudspeakers take %s: %s.", channelName(c), c.Rated.Value, c.Load.Value, inHand("", share, note)))
	default:
		limit = strictest
		answer = r.Pass(fmt.Sprintf("%s is rated %s and its loudspeakers take %s: %s.", channelName(c), c.Rated.Value, c.Load.Value, inHand("", share, strictest)))
	}
	most := quantity.Power(below(rated, limit))
	answer.Evidence(append(evidence, impliedFloors(c)...)...).
		AtMost(fmt.Sprintf("at most %s (%s below %s)", most, limit, c.Rated.Value), float64(most), "W", limit).
		At(readable(c.Part.RatedPower.Span)).Assumed(assumedShare(c)...)
	for _, p := range c.Load.From {
		answer.See(p.Span, p.Note)
	}
	if quantity.AtMost(load, below(rated, strictest)) {
		return
	}
	if quantity.AtMost(load, rated) { // somebody may think of turning taps up
		answer.Evidence(check.Evidence{Name: "load with every tap one step of 3 dB up", Value: quantity.Power(2 * load).String(), Number: 2 * load, Unit: "W", Sum: fmt.Sprintf("2 × %s = %s", c.Load.Value, 2*c.Load.Value)})
	}
	loadMarginRemedies(answer, c, limit)
}

// impliedFloors gives the lowest impedance that the rating implies at each line
// voltage in use: the same limit as seen by somebody with a meter or a test load.
func impliedFloors(c *analysis.Channel) []check.Evidence {
	var all []check.Evidence
	for _, o := range c.Outputs {
		if o.Kind != analysis.ConstantVoltage || !o.Loaded || o.Floor.Value <= 0 {
			continue
		}
		name := "lowest impedance that the rating implies at " + lineVolts(o.Volts.Value)
		if !slices.ContainsFunc(all, func(e check.Evidence) bool { return e.Name == name }) {
			all = append(all, check.Of(name, o.Floor))
		}
	}
	return all
}

// loadMarginRemedies names the rating that would do and the watts to take off.
func loadMarginRemedies(answer *check.Answer, c *analysis.Channel, limit check.Limit) {
	rated, load := float64(c.Rated.Value), float64(c.Load.Value)
	// Aim for the margin that leaves no finding at all, not for the next limit.
	kept := max(limit.Value, answer.Limit("note_margin").Value)
	need := quantity.Power(load / (1 - kept/100))
	rating := standardRating(need)
	answer.Remedy(check.Proved, fmt.Sprintf("Fit an amplifier channel rated %s or more; the load asks for at least %s.", rating, need),
		check.Write(c.RatedPart(), c.Part.RatedPower.Span, "rated_power", `"`+rating.String()+`"`))
	answer.Remedy(check.Computed, fmt.Sprintf("Take %s off the channel: turn taps down (one step of 3 dB halves a tap) or move loudspeakers to another channel.", quantity.Power(load-below(rated, check.Limit{Value: kept}))))
}

// below is what is left of a rating when a margin in per cent is kept.
func below(rated float64, margin check.Limit) float64 { return rated * (1 - margin.Value/100) }

// inHand says how much of a rating is left beside a share of it in per cent.
func inHand(only string, share float64, margin check.Limit) string {
	if quantity.AtLeast(share, 100) {
		return "nothing in hand"
	}
	return only + percentBeside(100-share, margin.Value) + " % in hand"
}

// assumedShare says how much of a load rests on parts that are only assumed.
func assumedShare(c *analysis.Channel) []string {
	if c.AssumedLoad == 0 {
		return nil
	}
	return []string{fmt.Sprintf("%s of the load belongs to parts that are marked as assumed", c.AssumedLoad)}
}
