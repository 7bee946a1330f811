package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
)

// OversizedAmplifier asks whether a large amplifier with little on it would show
// a fault.
var OversizedAmplifier = &check.Check{
	ID:      "oversized-amplifier",
	Asks:    "Would a fault on the lines of each large power channel be noticed?",
	Summary: "A large power channel has so little on it that it feeds a fault without anybody noticing, and no meter has found its lines as designed.",
	Why: "Protection trips when the load comes near what the amplifier can drive. Where the loudspeakers take a tenth of that, a short at the far end of a thin cable, a unit on the wrong tap, " +
		"or one with its coil straight on the line is just a load: the line is quiet or hoarse, the cable and the loudspeaker get hot, and the amplifier looks healthy.",
	How: "Compares the rated power of the channel with the load of its constant-voltage outputs, as load-margin adds it up. The impedance that the rating implies is line voltage² / rated power: " +
		"whatever is above it, the amplifier drives. It passes when each line of the channel has a reading of its impedance that can be compared with the design and agrees with it; " +
		"a resistance, a number without a unit or frequency, a part of the line alone, or a figure that is off does not clear it.",
	Basis: "common practice, no published source",
	Blind: "Readings show what the line was on the day they were taken. " +
		"Amplifiers that watch their lines themselves are not known. A channel that also drives low-impedance loudspeakers is not asked.",
	Params: []check.Param{
		{Name: "smallest_rating", Doc: "rated power of a channel from which it is asked", Unit: check.Watt, Default: 100, Low: 1, High: 1e5},
		{Name: "times_load", Doc: "how many times its load a channel may be rated", Unit: check.Plain, Default: 10, Low: 1, High: 1000},
		{Name: "reading_lowest", Doc: "how far a reading may be below the predicted impedance to clear a line", Unit: check.Percent, Default: readingLowest, Low: 1, High: 90, Basis: "as in reading-agrees"},
		{Name: "reading_highest", Doc: "how far it may be above", Unit: check.Percent, Default: readingHighest, Low: 1, High: 900, Basis: "as in reading-agrees"},
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
	found := readingsOf(r, c)
	if len(found.unread) == 0 && len(found.good) > 0 {
		a := r.Pass(fmt.Sprintf("What hangs on %s has been measured (%s) and agrees with the design, so that a fault is not hidden.", channelInside(c), listedLines(found.read))).
			At(readable(c.Part.RatedPower.Span))
		for _, m := range found.good {
			a.See(m.Part.Header, fmt.Sprintf("shows %s where %s is predicted", m.Part.Impedance.Text, m.Impedance.Value))
		}
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
		a = r.Fail(check.Note, fmt.Sprintf("%s is rated %s, %s times the %s of its loudspeakers, and %s: it drives a fault without tripping.",
			channelName(c), c.Rated.Value, percentBeside(rated/load, times.Value), c.Load.Value, found.lacking())).
			Remedy(check.Advice, "Measure the impedance of each line before it is connected, and write what the meter says as a reading.")
		for _, m := range found.bad {
			a.See(m.Part.Header, "a reading that does not clear it")
		}
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

// channelReadings is what meters say about the lines of a channel.
type channelReadings struct {
	read, unread []*analysis.Line     // lines that were found as designed, and others
	good, bad    []*analysis.Measured // readings that show it, and that do not
	off          *analysis.Measured   // the first that can be compared and is off
}

// readingsOf holds the readings of the channel's lines against the design.
func readingsOf(r *check.Report, c *analysis.Channel) channelReadings {
	var all channelReadings
	for _, o := range c.Outputs {
		for _, l := range o.Lines {
			if len(l.Part.Devices) == 0 {
				continue
			}
			as := len(all.good)
			for _, part := range r.System().Design.Readings {
				if !part.Impedance.Set() || part.Line.V != l.Part.Name {
					continue
				}
				m := r.System().Measure(part)
				fits, agrees := agreesWith(r, m)
				if agrees {
					all.good = append(all.good, m)
					continue
				}
				all.bad = append(all.bad, m)
				if fits && all.off == nil {
					all.off = m
				}
			}
			if len(all.good) > as {
				all.read = append(all.read, l)
			} else {
				all.unread = append(all.unread, l)
			}
		}
	}
	return all
}

// agreesWith tells whether a reading of a whole line can be compared with the
// design, and whether it agrees.
func agreesWith(r *check.Report, m *analysis.Measured) (fits, agrees bool) {
	if m.Part.Beyond.Set() || m.Unfit() != analysis.Fit || !m.Impedance.Known() ||
		!quantity.AtLeast(m.Hz, readingLowestHz) || !quantity.AtMost(m.Hz, readingHighestHz) {
		return false, false
	}
	predicted, shown := float64(m.Impedance.Value), float64(m.Shown())
	return true, quantity.AtLeast(shown, below(predicted, r.Limit("reading_lowest"))) &&
		quantity.AtMost(shown, predicted*(1+r.Limit("reading_highest").Value/100))
}

// lacking says why the readings do not clear the channel.
func (c channelReadings) lacking() string {
	switch {
	case c.off != nil:
		return fmt.Sprintf("reading %q shows %s where %s is predicted", c.off.Part.Name, c.off.Part.Impedance.Text, c.off.Impedance.Value)
	case len(c.bad) > 0 && len(c.read) == 0:
		return "what was read on its lines cannot be held against the design"
	case len(c.read) > 0:
		return fmt.Sprintf("no impedance was read on %s", listedLines(c.unread))
	}
	return "no impedance was read on its lines"
}
