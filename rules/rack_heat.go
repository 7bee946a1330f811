package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/supply"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// RackHeat says how much heat ventilation has to carry, and asks whether that is
// within what it can.
var RackHeat = &check.Check{
	ID:      "rack-heat",
	Asks:    "Can the ventilation carry the heat of the amplifiers and mixers?",
	Summary: "The amplifiers and mixers give off more heat than the ventilation is stated to carry.",
	Why: "What an amplifier takes from the mains and does not send to the loudspeakers stays in the rack, day and night. In a closed cupboard it shortens the life of everything " +
		"and trips thermal protection on the warmest day. Who plans the room needs the figure in watts or BTU/h.",
	How: "Heat is what the units take from the mains less what they give to the loudspeakers, with no signal and at one eighth of rated output. One eighth is worked out between the stated figures as in mains-load. " +
		"The air named carries that heat while it warms by 10 °C.",
	Basis: "one eighth of rated output is normal use: IEC 60065, as quoted in a forum; no limit is set without criteria: what a room carries depends on room and ventilation, which no design states, " +
		"so that any default would accuse correct ones",
	Blind: "All units of the design are added up, wherever they stand: with several racks, or a room shared with other equipment, share the figure out. Units of which mains figures are missing are left out, and named. " +
		"Cables, loudspeakers and sources give off next to nothing or state nothing. Where amplifiers drive less than their rating, less heat comes.",
	Params: []check.Param{
		{Name: "ventilation", Doc: "heat that the ventilation carries; 0 W sets no limit", Unit: check.Watt, Default: 0, Low: 0, High: 1e6},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "Criteria allow 100 W; the rack gives off 138 W.",
		Design: `amplifier "Rack" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
criteria {
  limit "rack-heat" { ventilation = "100 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same heat, 138 W, where criteria set no limit: the figure is told.",
		Design: `amplifier "Rack" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
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
	Judge: check.EachJob(rackHeat),
}

// airRise is by how much the air that carries the heat away warms, in kelvins: a
// usual figure, no published source.
const airRise = 10

func rackHeat(r *check.Report, s *analysis.System) {
	h := &s.Heat
	limit := r.Limit("ventilation")
	most := quantity.Power(limit.Value)
	limited := most > 0
	over := limited && !quantity.AtMost(h.NormalUse.Value, most)
	switch {
	case len(s.Design.Units) == 0, h.Units == 0 && !limited:
		r.NotAsked() // without figures and without a limit there is nothing to say
		return
	case limited && !over && len(h.Unknown) > 0:
		r.Open("Whether the ventilation carries the heat of all units cannot be told.", h.Unknown...).At(s.Design.Units[0].Header)
		return
	}
	says := fmt.Sprintf("%s %s off %s in normal use and %s with no signal", unitsNamed(h.Units, s), verb(h.Units, "gives", "give"), heatText(h.NormalUse.Value), heatText(h.Idle.Value))
	var a *check.Answer
	if over {
		a = r.Fail(check.Warning, fmt.Sprintf("%s; the ventilation carries %s.", says, most)).
			Remedy(check.Computed, fmt.Sprintf("Carry %s more away, or put units elsewhere that give off as much.", heatText(h.NormalUse.Value-most)))
	} else {
		a = r.Pass(says + ".")
	}
	a.At(s.Design.Units[0].Header).
		Evidence(check.Of("heat in normal use", h.NormalUse), check.Of("heat with no signal", h.Idle),
			check.Number("the same in normal use", math.Round(supply.BTUPerHour(float64(h.NormalUse.Value))), "BTU/h")).
		Assumed(h.NormalUse.Assumed...).
		Caution(fmt.Sprintf("Ventilation has to carry up to %s: %s. Leave the ways of the air free, more so in a closed cupboard.", heatText(h.NormalUse.Value), airText(h.NormalUse.Value, r.US())))
	if left := len(s.Design.Units) - h.Units; left > 0 {
		a.Assumed(fmt.Sprintf("%s %s left out, as the design does not say what they take from the mains", wording.Counted(left, "unit"), verb(left, "is", "are")))
	}
	if limited {
		a.AtMost(fmt.Sprintf("at most %s", most), float64(most), "W", limit).See(limit.Origin, "what the ventilation carries")
	}
	for _, p := range h.NormalUse.From {
		a.See(readable(p.Span), p.Note)
	}
}

// unitsNamed names one unit, and counts several.
func unitsNamed(n int, s *analysis.System) string {
	if n == 1 && len(s.Design.Units) == 1 {
		u := s.Design.Units[0]
		if u.Kind == schema.KindMixer {
			return fmt.Sprintf("Mixer %q", u.Name)
		}
		return fmt.Sprintf("Amplifier %q", u.Name)
	}
	return wording.Capital(wording.Counted(n, "unit"))
}

func heatText(p quantity.Power) string {
	return fmt.Sprintf("%s (%s BTU/h)", p, quantity.Significant(math.Round(supply.BTUPerHour(float64(p))), 6))
}

// airText is the air that carries the heat away.
func airText(p quantity.Power, us bool) string {
	flow := supply.AirFlow(float64(p), airRise)
	if us {
		return fmt.Sprintf("%s cubic feet a minute of air that warms by %d °F", quantity.Significant(supply.CubicFeetPerMinute(flow), 2), airRise*9/5)
	}
	return fmt.Sprintf("%s m³/h of air that warms by %d °C", quantity.Significant(flow, 2), airRise)
}
