package rules

import (
	"fmt"

	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// EarthReading asks whether a line is isolated from earth.
var EarthReading = &check.Check{
	ID:      "earth-reading",
	Asks:    "Is each line that was measured isolated from earth?",
	Summary: "A reading shows a conductor of a line connected to earth, or poor insulation.",
	Why: "One earthed conductor makes hum, and turns the next earth fault into a short circuit; it also puts the whole line voltage between the other conductor and anything earthed that a person touches. " +
		"Poor insulation is where the next fault will be, mostly water in a joint.",
	How:   "Holds the resistance between the line and earth, and the insulation resistance, against limits.",
	Basis: "IEC 60364-6, table of insulation resistances, from memory: 1 Mohm for circuits up to 500 V, tested at 500 V DC; 0.5 Mohm for extra-low voltage, tested at 250 V DC",
	Blind: "Which conductor, and where, a single figure does not tell. Some amplifiers earth one side of their output, or a centre tap: a reading with the amplifier on the line is left open. " +
		"A multimeter tests with a few volts and misses what only 500 V would show.",
	Params: []check.Param{
		{Name: "earthed", Doc: "resistance to earth below which a conductor counts as connected to earth", Unit: check.Ohm, Default: 1000, Low: 1, High: 1e6, Basis: "common practice, no published source"},
		{Name: "insulation", Doc: "lowest resistance to earth of a sound line", Unit: check.Ohm, Default: 1e6, Low: 1000, High: 1e9},
	},
	Severity: check.Error,
	Cautions: []string{
		"Disconnect amplifiers, electronics and line monitoring before an insulation test: its voltage destroys them.",
		"Discharge the line after an insulation test; follow the local code and leave tests on installed circuits to those licensed for them.",
	},
	Failing: check.Example{
		Shows: "Nothing but 0.4 ohm between the line and earth.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "C" {
    quantity = 10
    tap      = "6 W"
  }
}
reading "Shop to earth" {
  line                   = "Shop"
  earth                  = "0.4 ohm"
  instrument             = "multimeter"
  amplifier_disconnected = true
}
`,
	},
	Passing: check.Example{
		Shows: "20 Mohm at the insulation tester.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "C" {
    quantity = 10
    spacing  = "5 m"
    tap      = "6 W"
  }
}
reading "Shop to earth" {
  line                   = "Shop"
  insulation             = "20 Mohm"
  instrument             = "insulation tester"
  amplifier_disconnected = true
}
`,
	},
	Judge: check.EachReading(earthReading),
}

func earthReading(r *check.Report, part *schema.Reading) {
	if !part.Earth.Set() && !part.Insulation.Set() {
		r.NotAsked()
		return
	}
	if part.Earth.Set() {
		toEarth(r, part, part.Earth, "earth", "to earth")
	}
	if part.Insulation.Set() {
		toEarth(r, part, part.Insulation, "insulation", "of insulation")
	}
}

// toEarth judges one figure of a reading.
func toEarth(r *check.Report, part *schema.Reading, v schema.Value[quantity.Resistance], key, what string) {
	message := fmt.Sprintf("Reading %q shows %s %s", part.Name, v.Text, what)
	if part.Line.Set() {
		message += fmt.Sprintf(" for line %q", part.Line.V)
	}
	connected := part.AmplifierDisconnected.Set() && !part.AmplifierDisconnected.V
	earthed, floor := r.Limit("earthed"), r.Limit("insulation")
	ohm := float64(v.V)
	limit := floor
	var a *check.Answer
	switch {
	case quantity.AtLeast(ohm, floor.Value):
		a = r.Pass(message + ".")
	case connected:
		r.Open(message+" with the amplifier on the line, which may earth one side of its output itself.",
			readingLacks(part, "reading with the amplifier disconnected", "amplifier_disconnected = true")).Key(key).At(v.Span)
		return
	case !quantity.AtLeast(ohm, earthed.Value):
		limit = earthed
		a = r.Fail(check.Error, message+": a conductor is connected to earth.")
		a.Remedy(check.Advice, "Open the line in halves and measure each conductor to earth, until the joint or the loudspeaker is found: a bare strand in a metal box, a clamp through the cover, water in a fitting.")
	default:
		a = r.Fail(check.Warning, message+": the insulation is poor.")
		a.Remedy(check.Advice, "Open the line in halves and measure each, until the part is found; look for water in joints and damaged covers first.")
	}
	if a := a.Key(key).At(v.Span); !part.AmplifierDisconnected.Set() {
		a.Assumed("the amplifier was disconnected")
	}
	least := quantity.Resistance(limit.Value)
	a.Evidence(check.Plainly("resistance to earth", v.V)).AtLeast("at least "+least.String(), limit.Value, "ohm", limit)
	if !quantity.AtLeast(ohm, floor.Value) && !part.AmplifierDisconnected.Set() {
		a.Remedy(check.Advice, "Take the amplifier off the line and measure again, if it was still connected: some amplifiers earth one side of their output.")
	}
}
