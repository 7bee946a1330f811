package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// OversizedAmplifier asks whether a large amplifier with little on it would show
// a fault.
var OversizedAmplifier = &check.Check{
	ID:      "oversized-amplifier",
	Asks:    "Would a fault on the lines of each large power channel be noticed?",
	Summary: "A large power channel has so little on it that it feeds a fault without anybody noticing, and no meter's reading of its lines is there.",
	Why: "Protection trips when the load comes near what the amplifier can drive. Where the loudspeakers take a tenth of that, a short at the far end of a thin cable, a unit on the wrong tap, " +
		"or one with its coil straight on the line is just a load: the line is quiet or hoarse, the cable and the loudspeaker get hot, and the amplifier looks healthy.",
	How: "Compares the rated power of the channel with the load of its constant-voltage outputs, as load-margin adds it up. The impedance that the rating implies is line voltage² / rated power: " +
		"whatever is above it, the amplifier drives.",
	Basis: "common practice, no published source",
	Blind: "Any reading of impedance on a line of the channel clears it; whether that reading agrees with the design is not asked here. " +
		"Amplifiers that watch their lines themselves are not known. A channel that also drives low-impedance loudspeakers is not asked.",
	Params: []check.Param{
		{Name: "smallest_rating", Doc: "rated power of a channel from which it is asked", Unit: check.Watt, Default: 100, Low: 1, High: 1e5},
		{Name: "times_load", Doc: "how many times its load a channel may be rated", Unit: check.Plain, Default: 10, Low: 1, High: 1000},
	},
	Severity: check.Note,
	Cautions: []string{"Measure a line with the amplifier disconnected: an impedance meter on terminals that are driven reads nonsense and can be destroyed."},
	Failing: check.Example{
		Shows: "A 480 W amplifier with 36 W on it.",
		Design: `amplifier "Rack" { rated_power = "480 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 6
    tap      = "6 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "The same, and the line has been measured.",
		Design: `amplifier "Rack" { rated_power = "480 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 6
    tap      = "6 W"
  }
}
reading "Before handing over" {
  line      = "Hall"
  impedance = "270 ohm"
  frequency = "1 kHz"
}
`,
	},
	Judge: check.EachChannel(oversizedAmplifier),
}

func oversizedAmplifier(r *check.Report, c *analysis.Channel) {
	smallest, times := r.Limit("smallest_rating"), r.Limit("times_load")
	if !c.CarriesLines() || drivesLowImpedance(c) {
		r.NotAsked()
		return
	}
	if c.Rated.Known() && c.Rated.Value < quantity.Power(smallest.Value) && !same(float64(c.Rated.Value), smallest.Value) {
		r.Pass(fmt.Sprintf("%s is rated %s, below %s: a fault on its lines loads it enough to be noticed.", channelName(c), c.Rated.Value, quantity.Power(smallest.Value))).
			At(readable(c.Part.RatedPower.Span))
		return
	}
	if reading := measured(r.System(), c); reading != nil {
		r.Pass(fmt.Sprintf("The impedance of line %q has been measured, so that a fault is not hidden.", reading.Line.V)).
			At(readable(c.Part.RatedPower.Span)).See(reading.Header, "the reading")
		return
	}
	if missing := analysis.MergeMissing(c.Load.Missing, c.Rated.Missing); len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether %s is too large for its load to show a fault cannot be told.", channelInside(c)), missing...)
		return
	}
	load, rated := float64(c.Load.Value), float64(c.Rated.Value)
	if load <= 0 {
		r.NotAsked() // nothing hangs there yet, or all is turned off
		return
	}
	most := quantity.Power(times.Value * load)
	ratio := check.Number("rated power over load", rated/load, "times")
	var a *check.Answer
	if quantity.AtMost(rated, float64(most)) {
		a = r.Pass(fmt.Sprintf("%s is rated %s, %s times the %s of its loudspeakers.", channelName(c), c.Rated.Value, percentBeside(rated/load, times.Value), c.Load.Value))
	} else {
		a = r.Fail(check.Note, fmt.Sprintf("%s is rated %s, %s times the %s of its loudspeakers, and no impedance was read on its lines: it drives a fault without tripping.",
			channelName(c), c.Rated.Value, percentBeside(rated/load, times.Value), c.Load.Value)).
			Remedy(check.Advice, "Measure the impedance of each line before it is connected, and write what the meter says as a reading.")
		if rating := standardRating(quantity.Power(load / spare)); rating < quantity.Power(smallest.Value) || quantity.AtMost(float64(rating), float64(most)) {
			a.Remedy(check.Proved, fmt.Sprintf("Fit an amplifier channel of about %s, which trips when a fault is added to this load.", rating),
				check.Write(c.RatedPart(), c.Part.RatedPower.Span, "rated_power", `"`+rating.String()+`"`))
		}
	}
	a.At(readable(c.Part.RatedPower.Span)).
		Evidence(check.Of("rated power", c.Rated), check.Of("load", c.Load), ratio).
		Evidence(impliedFloors(c)...).
		AtMost(fmt.Sprintf("at most %s (%s × %s)", most, times, c.Load.Value), float64(most), "W", times).
		Assumed(assumedShare(c)...)
	seeLoads(a, c.Load.From)
}

// drivesLowImpedance tells that loudspeakers in ohms hang on the channel too.
func drivesLowImpedance(c *analysis.Channel) bool {
	for _, o := range c.Outputs {
		if o.Kind == analysis.LowImpedance && len(o.Lines) > 0 {
			return true
		}
	}
	return false
}

// measured gives a reading of impedance on a line of the channel, nil when there
// is none.
func measured(s *analysis.System, c *analysis.Channel) *schema.Reading {
	for _, reading := range s.Design.Readings {
		if !reading.Impedance.Set() {
			continue
		}
		for _, o := range c.Outputs {
			for _, l := range o.Lines {
				if l.Part.Name == reading.Line.V {
					return reading
				}
			}
		}
	}
	return nil
}
