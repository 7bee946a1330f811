package rules

import (
	"fmt"
	"math"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// FeedbackMargin asks whether a microphone that stands among its loudspeakers can be
// turned up as far as is wanted.
var FeedbackMargin = &check.Check{
	ID:      "feedback-margin",
	Asks:    "Can each microphone that stands among its own loudspeakers be turned up as far as is wanted before it rings?",
	Summary: "A microphone in a space that it feeds would ring, or be near it, before listeners hear the level that is wanted.",
	Why: "A microphone hears its own loudspeakers. When they are as loud there as the talker the system howls, and from a few decibels below that it colours every word. " +
		"No equipment buys back what a microphone half a metre too far from the mouth costs.",
	How: "Takes the level of a talker at the microphone from the distance, and what the loudspeakers give there and to the listeners at the same gain: with the level that is wanted at the listeners, the talker is to be louder at the microphone than they are by margin. " +
		"That is potential against needed acoustic gain, in the field of the space in place of distances. Each doubling of the microphones that are open at once costs 3 dB.",
	Basis: "6 dB is common practice: D. Davis and C. Davis, Sound System Engineering, from memory",
	Blind: "The directivity of the microphone, a filter against feedback and a desk that silences the loudspeakers beside it all help and are not in a design: agree them with a deviation. " +
		"Microphones that are open only while a key is held count alone. Where microphone or loudspeakers have no stated place it is a note at most.",
	Params: []check.Param{
		{Name: "margin", Doc: "how far the gain is to stay below that at which it rings", Unit: check.Decibel, Default: 6, Low: 0, High: 20},
		{Name: "talker", Doc: "level of a talker at 1 m, in dB(A)", Unit: check.Decibel, Default: 66, Low: 50, High: 90, Basis: "a raised voice is 66 dB(A) at 1 m: ISO 9921, from memory"},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "A speaker half a metre from the lectern microphone, in a hall of which it feeds the loudspeakers.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    space       = "Hall"
    position    = ["2 m", "5 m"]
    to          = ["16 m", "5 m"]
  }
}
microphone "Lectern" {
  into            = "Rack"
  stands_in       = "Hall"
  position        = ["2 m", "5 m"]
  talker_distance = "50 cm"
}
space "Hall" {
  length        = "18 m"
  width         = "10 m"
  height        = "4 m"
  noise         = "50 dBA"
  wanted_level  = "70 dBA"
  reverberation = "1 s"
}
`,
	},
	Passing: check.Example{
		Shows: "The microphone at 15 cm.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    space       = "Hall"
    position    = ["2 m", "5 m"]
    to          = ["16 m", "5 m"]
  }
}
microphone "Lectern" {
  into            = "Rack"
  stands_in       = "Hall"
  position        = ["2 m", "5 m"]
  talker_distance = "15 cm"
}
space "Hall" {
  length        = "18 m"
  width         = "10 m"
  height        = "4 m"
  noise         = "50 dBA"
  wanted_level  = "70 dBA"
  reverberation = "1 s"
}
`,
	},
	Judge: check.EachSource(feedbackMargin),
}

func feedbackMargin(r *check.Report, src *analysis.Source) {
	f := r.System().Feedback(src)
	if f == nil {
		r.NotAsked()
		return
	}
	name := wording.Capital(src.Part.Name)
	if !f.Known() {
		r.Open(fmt.Sprintf("Whether %s rings in %q cannot be told.", src.Part.Name, f.Sound.Space.Name), f.Missing...)
		return
	}
	if f.Sound.Levels().Silent() {
		r.NotAsked()
		return
	}
	limit, talker := r.Limit("margin"), r.Limit("talker")
	margin := f.Margin(talker.Value)
	left := float64(margin.Value)
	var a *check.Answer
	switch {
	case quantity.AtLeast(left, limit.Value):
		a = r.Pass(fmt.Sprintf("%s stays %s dB below ringing in %q with the level that is wanted.", name, tenth(left), f.Sound.Space.Name))
	case left < 0:
		a = r.Fail(feedbackSeverity(f), fmt.Sprintf("%s rings in %q %s dB before listeners hear the level that is wanted.", name, f.Sound.Space.Name, tenth(-left)))
	default:
		a = r.Fail(feedbackSeverity(f), fmt.Sprintf("%s is only %s dB below ringing in %q with the level that is wanted.", name, tenth(left), f.Sound.Space.Name))
	}
	distance := src.Part.TalkerDistance
	a.At(inside(&src.Part.Part, distance.Span)).Evidence(
		check.Of("margin to ringing", margin),
		check.Of("gain needed, from the talker at the microphone to the level wanted", f.Needed(talker.Value)),
		check.Of("gain at which it rings", f.Potential()),
		check.Of("loudspeakers at the microphone, full output", f.AtMicrophone),
		check.Of("loudspeakers at the listeners, full output", f.AtListeners),
		check.Of("level wanted", f.Sound.Wanted),
		check.Number("microphones open at once", float64(f.Open), ""),
	).Assumed(f.Assumed...).AtLeast("at least "+limit.String()+" below ringing", limit.Value, "dB", limit)
	seeSound(a, f.AtMicrophone.From)
	if !quantity.AtLeast(left, limit.Value) {
		feedbackRemedies(a, f, talker.Value, limit.Value, left)
	}
}

func feedbackSeverity(f *analysis.Feedback) check.Severity {
	if f.Placed {
		return check.Warning
	}
	return check.Note
}

func feedbackRemedies(a *check.Answer, f *analysis.Feedback, talker, limit, left float64) {
	part := f.Microphone.Part
	if near := f.Nearer(talker, limit); near >= 0.03 {
		text := strconv.Itoa(int(math.Round(100*float64(near)))) + " cm"
		a.Remedy(check.Proved, fmt.Sprintf("Let people talk from %s: halving the distance is worth 6 dB.", text), check.Write(&part.Part, part.TalkerDistance.Span, "talker_distance", strconv.Quote(text)))
	}
	a.Remedy(check.Computed, fmt.Sprintf("Make the loudspeakers %s dB softer at the microphone than they are: leave out or turn down those next to it, or put it where fewer are.", tenth(limit-left)))
	a.Remedy(check.Advice, "Use a microphone that hears only its front, with the loudspeakers behind it, or a desk that silences the loudspeakers beside it while somebody talks.")
}
