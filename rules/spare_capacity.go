package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// SpareCapacity asks whether a power channel has room for what will be added.
var SpareCapacity = &check.Check{
	ID:      "spare-capacity",
	Asks:    "Has each power channel the room for growth that the job asks for?",
	Summary: "A power channel has less of its rated power free than the job wants kept for loudspeakers to come.",
	Why: "Buildings change: a wall is moved, a store becomes an office, a quiet room turns out too quiet. A client who asked for room to grow and pays for it should get it on every channel, " +
		"not only on the one that happens to be half empty.",
	How: "Compares the load of the constant-voltage outputs of each channel, as load-margin adds it up, with the rated power less the share wanted. " +
		"The share counts from the rating: 25 % of 240 W leaves 180 W for what is there now.",
	Basis: "common practice, no published source; shares from 20 to 50 % are asked for, and the job's own figure is to be set",
	Blind: "A channel on which nothing hangs is all spare and is not asked. Whether zones, cable and supply have room too is not asked: after adding, ask zone-load, cable-loss and standby-battery again.",
	Params: []check.Param{
		{Name: "wanted", Doc: "share of the rated power to be kept free", Unit: check.Percent, Default: 25, Low: 0, High: 95},
	},
	Severity: check.Warning,
	Off:      true,
	Failing: check.Example{
		Shows: "200 W of 240 W are taken where a quarter is to be free.",
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
	Passing: check.Example{
		Shows: "180 W are taken: a quarter is free.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 18
    tap      = "10 W"
  }
}
`,
	},
	Judge: check.EachChannel(spareCapacity),
}

func spareCapacity(r *check.Report, c *analysis.Channel) {
	if !c.CarriesLines() {
		r.NotAsked()
		return
	}
	if missing := analysis.MergeMissing(c.Load.Missing, c.Rated.Missing); len(missing) > 0 {
		r.Open(fmt.Sprintf("How much of %s is free cannot be told.", channelInside(c)), missing...)
		return
	}
	wanted := r.Limit("wanted")
	rated, load := float64(c.Rated.Value), float64(c.Load.Value)
	most := quantity.Power(below(rated, wanted))
	free := quantity.Power(max(rated-load, 0))
	share := 100 * float64(free) / rated
	says := fmt.Sprintf("%s is rated %s and its loudspeakers take %s: %s (%s %%) is free", channelName(c), c.Rated.Value, c.Load.Value, free, percentBeside(share, wanted.Value))
	var a *check.Answer
	if quantity.AtMost(load, float64(most)) {
		a = r.Pass(says + ".")
	} else {
		rating := standardRating(quantity.Power(load / min(1-wanted.Value/100, spare)))
		a = r.Fail(check.Warning, fmt.Sprintf("%s, and the job wants %s.", says, wanted)).
			Remedy(check.Proved, fmt.Sprintf("Fit an amplifier channel rated %s or more.", rating),
				check.Write(c.RatedPart(), c.Part.RatedPower.Span, "rated_power", `"`+rating.String()+`"`)).
			Remedy(check.Computed, fmt.Sprintf("Take %s off the channel: move loudspeakers to another one.", quantity.Power(load-float64(most))))
	}
	a.At(readable(c.Part.RatedPower.Span)).
		Evidence(check.Of("load", c.Load), check.Of("rated power", c.Rated), check.Number("free share of the rating", share, "%")).
		AtMost(fmt.Sprintf("at most %s (%s of %s to be free)", most, wanted, c.Rated.Value), float64(most), "W", wanted).
		See(wanted.Origin, "what the job wants").Assumed(assumedShare(c)...)
	seeLoads(a, c.Load.From)
}
