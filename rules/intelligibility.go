package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Intelligibility asks whether speech is understood in each space.
var Intelligibility = &check.Check{
	ID:      "intelligibility",
	Asks:    "Is speech understood in each space?",
	Summary: "The predicted speech transmission index of a space is below what announcements ask.",
	Why: "Loud is not clear. In a space that rings, or over noise, every syllable runs into the next, and turning up raises the reverberation as much as the speech: " +
		"people hear that something is said and not what.",
	How: "Predicts the speech transmission index (STI) by IEC 60268-16 at listeners all over the floor from reverberation time, direct and reverberant sound of every loudspeaker with its arrival time, noise, masking and threshold in each octave. " +
		"Speech is taken as loud as is wanted, or 15 dB over the noise, as far as the amplifier has it. The mean over the floor is held against mean, what 95 % of the floor has against low. " +
		"Peutz's articulation loss of consonants stands beside it as a cross-check: it knows neither noise nor octaves, and one loudspeaker type only. " +
		"A reverberation time that is not stated follows from surfaces, by Sabine, or Eyring above a mean absorption of 0.2; one that states a material and no absorption takes it from a small table: " + materials() + ".",
	Basis: "about 0.50 is the usual demand on voice alarm and announcements, IEC 60268-16 annex G, from memory; 0.45 is where \"fair\" begins, IEC 60268-16:1998",
	Blind: "In the open, and where a side is open, no diffuse field builds up, and the answer is open until somebody measures. Where the reverberation is doubtful (very absorbent, very flat, very small), or places are assumed, a low figure is a note. " +
		"Echoes from single walls, distortion and the talker are not in it.",
	Params: []check.Param{
		{Name: "mean", Doc: "lowest mean of the speech transmission index over the floor", Unit: check.Plain, Default: 0.5, Low: 0.2, High: 0.9, Basis: "about 0.50 for voice alarm and announcements: IEC 60268-16 annex G, from memory"},
		{Name: "low", Doc: "lowest index that 95 % of the floor is to have", Unit: check.Plain, Default: 0.45, Low: 0.2, High: 0.9, Basis: "\"fair\" begins at 0.45: IEC 60268-16:1998"},
	},
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "A hall that rings for 3 s.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "6 m"
    space       = "Hall"
  }
}
space "Hall" {
  length            = "24 m"
  width             = "12 m"
  height            = "7 m"
  noise             = "50 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "3 s"
}
`,
	},
	Passing: check.Example{
		Shows: "The same hall with an absorbing ceiling.",
		Design: `amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "6 m"
    space       = "Hall"
  }
}
space "Hall" {
  length            = "24 m"
  width             = "12 m"
  height            = "7 m"
  noise             = "50 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "0.9 s"
}
`,
	},
	Judge: check.EachSpace(intelligibility),
}

func intelligibility(r *check.Report, space *schema.Space) {
	s := soundAsked(r, space)
	if s == nil {
		r.NotAsked()
		return
	}
	t := s.Speech()
	if !t.Known() {
		r.Open(fmt.Sprintf("Whether speech is understood in %q cannot be told.", space.Name), t.Missing...)
		return
	}
	if s.Levels().Silent() {
		r.NotAsked() // speech-level says so
		return
	}
	mean, low := r.Limit("mean"), r.Limit("low")
	limit, failed := mean, !quantity.AtLeast(t.Mean, mean.Value)
	if !failed && !quantity.AtLeast(t.Fifth, low.Value) {
		limit, failed = low, true
	}
	message := fmt.Sprintf("The speech transmission index in %q is %s on the average, %s, and at least %s over 95 %% of the floor", space.Name, index(t.Mean), sound.Rating(t.Mean), index(t.Fifth))
	var a *check.Answer
	if failed {
		severity := check.Warning
		if len(t.Doubts) > 0 || placesAssumed(s.Levels()) {
			severity = check.Note
		}
		a = r.Fail(severity, message+".")
	} else {
		a = r.Pass(message + ".")
	}
	a.At(s.Space.Reverberation.Span).Evidence(speechEvidence(s, t)...).Assumed(s.Noise.Assumed...).Assumed(t.Assumed...).Assumed(t.Doubts...).
		AtLeast(fmt.Sprintf("at least %s", limit), limit.Value, "", limit)
	seeSound(a, s.Reverberation.From)
	seeSound(a, t.Level.From)
	if failed {
		clearer(a, s, t, mean.Value, low.Value)
	}
}

// materials lists the materials whose absorption is known.
func materials() string {
	var names []string
	for _, m := range sound.Materials() {
		names = append(names, strconv.Quote(m.Name))
	}
	return strings.Join(names, ", ")
}

// index prints a speech transmission index.
func index(sti float64) string { return quantity.Significant(sti, 2) }

func speechEvidence(s *analysis.Sound, t *analysis.Speech) []check.Evidence {
	return []check.Evidence{
		{Name: "speech transmission index, mean", Value: fmt.Sprintf("%s (%s, %s)", index(t.Mean), sound.Letter(t.Mean), sound.Rating(t.Mean)), Number: t.Mean},
		{Name: "over 95 % of the floor at least", Value: fmt.Sprintf("%s (%s, %s)", index(t.Fifth), sound.Letter(t.Fifth), sound.Rating(t.Fifth)), Number: t.Fifth},
		check.Of("level of the speech", t.Level),
		check.Of("noise", s.Noise),
		check.Of("reverberation time", s.Reverberation),
		check.Of("articulation loss of consonants (Peutz), cross-check", t.ArticulationLoss),
	}
}

// clearer proposes a reverberation time with which it would do, and what else helps.
func clearer(a *check.Answer, s *analysis.Sound, t *analysis.Speech, mean, low float64) {
	switch over := float64(t.Level.Value - s.Noise.Value); {
	case over < 0:
		a.Remedy(check.Advice, fmt.Sprintf("Raise speech over the noise, or lower the noise: it lies %s dB below it, and up to 15 dB above tell.", tenth(-over)))
	case over < 12:
		a.Remedy(check.Advice, fmt.Sprintf("Raise speech over the noise, or lower the noise: it stands %s dB above it, and up to 15 dB tell.", tenth(over)))
	}
	if decay, ok := s.DecayFor(mean, low); ok && decay < s.Reverberation.Value {
		a.Remedy(check.Computed, fmt.Sprintf("Bring the reverberation time down from %s s to %s s with absorbing surfaces.", quantity.Significant(float64(s.Reverberation.Value), 2), quantity.Significant(float64(decay), 2)))
	}
	a.Remedy(check.Advice, "Bring loudspeakers nearer to people, and choose ones that keep their sound off walls and ceiling, such as columns; more of the same adds as much reverberation as speech.")
}
