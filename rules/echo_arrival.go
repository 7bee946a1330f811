package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// EchoArrival asks whether loudspeakers far away are heard as echoes.
var EchoArrival = &check.Check{
	ID:      "echo-arrival",
	Asks:    "Does the sound of every loudspeaker arrive early or softly enough not to be heard as an echo?",
	Summary: "The sound of a loudspeaker arrives so late and so loud that people hear an echo.",
	Why: "Sound takes 2.9 ms for each metre. A loudspeaker that is 17 m further away than the nearest comes 50 ms later; when it is hardly softer the ear takes it for a second talker, and neither is understood. " +
		"Long rows of horns that all look the same way are the usual case.",
	How: "Lists, at listeners all over the floor, the direct sound of each loudspeaker by its time and level, air and directivity included, and looks for one that comes more than after later than the first and is less than within below the sum of all that came before. " +
		"It fails where more of the floor than share hears one.",
	Basis: "up to 35 ms a delayed sound has to be 10 dB louder to be heard as an echo, from 50 ms on it is heard by itself: The Master Handbook of Acoustics, fig. 3-19, after Haas",
	Blind: "Echoes of walls are not in it, nor is reverberation, which covers some of them. A design does not say what a processor delays. Where places are assumed it is a note at most.",
	Params: []check.Param{
		{Name: "after", Doc: "delay from which a sound is heard by itself", Unit: check.Second, Default: 0.05, Low: 0.02, High: 0.5},
		{Name: "within", Doc: "how far below all earlier sound a late one may be and is still heard", Unit: check.Decibel, Default: 10, Low: 0, High: 30, Basis: "common practice, no published source"},
		{Name: "share", Doc: "share of the floor that may hear one", Unit: check.Percent, Default: 5, Low: 0, High: 100, Basis: "common practice, no published source"},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "Two horns at the ends of a yard, looking at each other.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "West" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    height      = "4 m"
    position    = ["0 m", "10 m"]
    aim         = "0 deg"
  }
  loudspeaker "East" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    height      = "4 m"
    position    = ["60 m", "10 m"]
    aim         = "180 deg"
  }
}
space "Yard" {
  length       = "60 m"
  width        = "20 m"
  outdoors     = true
  listeners    = "standing"
  wanted_level = "75 dBA"
}
`,
	},
	Passing: check.Example{
		Shows: "Both in the middle, back to back.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "West" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    height      = "4 m"
    position    = ["29 m", "10 m"]
    aim         = "180 deg"
  }
  loudspeaker "East" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    height      = "4 m"
    position    = ["31 m", "10 m"]
    aim         = "0 deg"
  }
}
space "Yard" {
  length       = "60 m"
  width        = "20 m"
  outdoors     = true
  listeners    = "standing"
  wanted_level = "75 dBA"
}
`,
	},
	Judge: check.EachSpace(echoArrival),
}

// speedOfSound is that at 20 °C, in m/s; a few degrees do not matter for a bound.
const speedOfSound = 343

func echoArrival(r *check.Report, space *schema.Space) {
	s := soundAsked(r, space)
	if s == nil || s.Count < 2 {
		r.NotAsked()
		return
	}
	after := r.Limit("after")
	way := quantity.Length(after.Value * speedOfSound)
	switch {
	case s.Floor.Area.Known() && float64(s.Reach()) < float64(way)*0.9:
		r.Pass(fmt.Sprintf("No way across %q is so long that sound would come %s ms late.", space.Name, quantity.Significant(1000*after.Value, 3))).
			AtMost(fmt.Sprintf("at most %s ms later, a way of %s more", quantity.Significant(1000*after.Value, 3), metres(r, way)), after.Value, "s", after)
		return
	case !s.Wanted.Known():
		r.Open(fmt.Sprintf("Whether echoes of loudspeakers disturb speech in %q cannot be told.", space.Name), s.Wanted.Missing...)
		return
	}
	l := s.Levels()
	if !l.Known() {
		r.Open(fmt.Sprintf("Whether echoes of loudspeakers disturb speech in %q cannot be told.", space.Name), l.Missing...)
		return
	}
	within, share := r.Limit("within"), r.Limit("share")
	late, ok := s.Late(after.Value, within.Value)
	if !ok {
		r.NotAsked() // all are switched off, which speech-level says
		return
	}
	var a *check.Answer
	if quantity.AtMost(float64(late.Share), share.Value) {
		a = r.Pass(fmt.Sprintf("Sound that comes more than %s ms late is soft enough over %s of %q.", quantity.Significant(1000*after.Value, 3), percentOf(100-float64(late.Share)), space.Name))
	} else {
		severity := check.Warning
		if !l.Placed {
			severity = check.Note
		}
		a = r.Fail(severity, fmt.Sprintf("%q comes %s ms after %q and %s, and %s of %q hears an echo.", late.Speaker.Name, quantity.Significant(1000*float64(late.After), 2), late.First.Name, softer(float64(late.Below)), percentOf(float64(late.Share)), space.Name))
		a.See(late.First.Run.Part.Header, "what comes first")
		echoRemedies(a, late, within.Value)
	}
	a.Assumed(l.Assumed...).AtMost(fmt.Sprintf("at most %s of the floor with sound over %s ms late and less than %s below what came before", share, quantity.Significant(1000*after.Value, 3), within), share.Value, "%", share)
	if late.Share > 0 {
		a.At(placeAt(late.Speaker)).Evidence(
			check.Number("floor that hears one", math.Round(float64(late.Share)), "%"),
			check.Stated("worst at", fmt.Sprintf("%s along, %s across", metres(r, quantity.Length(late.At.X)), metres(r, quantity.Length(late.At.Y)))),
			check.Number("delay there", math.Round(1000*float64(late.After)), "ms"),
			check.Number("below the sum of earlier sound", math.Round(10*float64(late.Below))/10, "dB"),
		)
	}
}

// percentOf prints a share of the floor without digits that mean nothing.
func percentOf(share float64) string { return quantity.Significant(math.Round(share), 3) + " %" }

// softer says how loud a late sound is against all before it.
func softer(dB float64) string {
	if dB < 0 {
		return fmt.Sprintf("is %s dB louder than all before it", tenth(-dB))
	}
	return fmt.Sprintf("is only %s dB softer than all before it", tenth(dB))
}

// placeAt is where the place of a loudspeaker stands.
func placeAt(s analysis.Speaker) source.Span {
	if at := inside(&s.Run.Part.Part, s.Run.Part.Position.Span); !at.IsZero() {
		return at
	}
	return s.Run.Part.Header
}

func echoRemedies(a *check.Answer, late analysis.Late, within float64) {
	over := within - float64(late.Below)
	a.Remedy(check.Computed, fmt.Sprintf("Let %q be %s dB softer there: turn it away, aim it down, or turn its tap down.", late.Speaker.Name, tenth(over)))
	a.Remedy(check.Computed, fmt.Sprintf("Delay the loudspeakers that are heard first there by some %s ms on an amplifier of their own: 10 to 20 ms after the far ones is usual.", quantity.Significant(1000*float64(late.After)+15, 2)))
	a.Remedy(check.Advice, "Use more, softer loudspeakers that look straight down or away from each other, so that each serves its own surroundings.")
}
