package rules

import (
	"fmt"
	"math"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// SpeechLevel asks whether speech is loud enough in each space, and nowhere too
// loud.
var SpeechLevel = &check.Check{
	ID:      "speech-level",
	Asks:    "Is speech loud enough over the noise in each space, and nowhere too loud?",
	Summary: "Announcements are softer than is wanted in a part of a space, or louder than ears should bear.",
	Why:     "An announcement that is not heard over the noise was not made; one that hurts is not listened to either. Both are settled by taps, numbers and places long before anybody hangs a loudspeaker.",
	How: "Takes the power that really reaches each loudspeaker, after cable and attenuators, and adds the direct sound of all of them and the reverberant field at listeners all over the floor, in octaves, A-weighted. " +
		"Average speech lies speech_below_full under the level at full output. What 95 % of the floor has is held against the level that is wanted: stated, or so far above the noise. " +
		"The level at full output at the loudest place is held against loudest.",
	Basis: "the level wanted is stated by the design; that average speech is 10 to 12 dB below full output is common practice, no published source",
	Blind: "Walls reflect only through a statistical field, nothing stands in the way, and nobody moves the volume control. Without a reverberation time only direct sound counts: where that is enough the answer is a pass, else it is open. " +
		"Where the design does not say where cabinets and columns hang they are taken to hang evenly along both long walls, and what rests on that is a note at most.",
	Params: []check.Param{
		{Name: "speech_below_full", Doc: "how far average speech lies below full output", Unit: check.Decibel, Default: float64(analysis.SpeechBelowFull), Low: 0, High: 25, Basis: "10 to 12 dB is common practice, no published source"},
		{Name: "loudest", Doc: "highest level at full output where people listen, in dB(A)", Unit: check.Decibel, Default: 110, Low: 70, High: 125, Basis: "110 dB(A) in newer editions of NFPA 72, from memory; older ones and others say 115 to 120"},
	},
	Severity: check.Error,
	Cautions: []string{"Hearing protection and warned people before any test at full output."},
	Failing: check.Example{
		Shows: "Speech 6 dB short of what the noise of a workshop asks.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Workshop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "W" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "1.5 W"
    quantity    = 6
    spacing     = "5 m"
    space       = "Workshop"
  }
}
space "Workshop" {
  length            = "15 m"
  width             = "10 m"
  height            = "4 m"
  listeners         = "standing"
  noise             = "70 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "0.8 s"
}
`,
	},
	Passing: check.Example{
		Shows: "The same loudspeakers on 6 W.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Workshop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "W" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 6
    spacing     = "5 m"
    space       = "Workshop"
  }
}
space "Workshop" {
  length            = "15 m"
  width             = "10 m"
  height            = "4 m"
  listeners         = "standing"
  noise             = "70 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "0.8 s"
}
`,
	},
	Judge: check.EachSpace(speechLevel),
}

// harmfulCaution is the same text for every space, so that it is shown once.
const harmfulCaution = "At full output average speech is louder than 85 dBA somewhere in it: hearing suffers from 8 hours a day of that, and from half as long with every 3 dB more (NIOSH publication 98-126, from memory). " +
	"Set the working level by ear and meter, and keep tests short."

func speechLevel(r *check.Report, space *schema.Space) {
	s := soundAsked(r, space)
	if s == nil {
		r.NotAsked()
		return
	}
	if !s.Wanted.Known() {
		r.Open(fmt.Sprintf("Whether speech is loud enough in %q cannot be told.", space.Name), s.Wanted.Missing...)
		return
	}
	l := s.Levels()
	switch {
	case !l.Known():
		r.Open(fmt.Sprintf("Whether speech is loud enough in %q cannot be told.", space.Name), l.Missing...)
	case l.Silent():
		r.Fail(check.Error, fmt.Sprintf("All loudspeakers in %q are switched off: their tap is 0 W.", space.Name)).
			Remedy(check.Advice, "Put them on a tap.")
	default:
		judgeLevel(r, s, l)
		tooLoud(r, s, l)
	}
}

// judgeLevel holds what 95 % of the floor has against what is wanted.
func judgeLevel(r *check.Report, s *analysis.Sound, l *analysis.Levels) {
	below := r.Limit("speech_below_full")
	speech := l.Fifth.Value - quantity.SoundLevel(below.Value)
	wanted := s.Wanted.Value
	message := fmt.Sprintf("Average speech reaches %s in %q over 95 %% of the floor; %s is wanted", levelText(speech), s.Space.Name, levelText(wanted))
	if l.Of != "" {
		message = fmt.Sprintf("Average speech reaches %s over 95 %% of the floor in the least supplied %q; %s is wanted", levelText(speech), s.Space.Name, levelText(wanted))
	}
	var a *check.Answer
	switch short := float64(wanted - speech); {
	case quantity.AtLeast(float64(speech), float64(wanted)):
		a = r.Pass(message + ".")
	case l.DirectOnly && !s.Open():
		missing := s.Reverberation.Missing
		if len(missing) == 0 {
			missing = s.VolumeMissing()
		}
		a = r.Open(message+". That is by direct sound alone: reverberation adds to it.", missing...)
	default:
		a = r.Fail(levelSeverity(s, l, below.Value), fmt.Sprintf("%s: %s dB short.", message, tenth(short)))
		levelRemedies(r, a, s, below.Value, short)
	}
	if !quantity.AtLeast(float64(speech), float64(wanted)) {
		a.At(wantedAt(s))
	}
	seeSound(a, l.From)
	a.Evidence(levelEvidence(s, l, below.Value)...).Assumed(l.Assumed...).Assumed(s.Wanted.Assumed...).
		Bound(check.Bound{Text: "at least " + levelText(wanted), Number: float64(wanted), Unit: "dBA", Basis: "stated for the space"})
	if float64(l.Most.Value)-below.Value > harmful {
		a.Caution(harmfulCaution)
	}
}

// levelSeverity: speech below the noise is an error, what rests on assumed places a
// note.
func levelSeverity(s *analysis.Sound, l *analysis.Levels, belowFull float64) check.Severity {
	switch {
	case placesAssumed(l):
		return check.Note
	case s.Noise.Known() && float64(l.Mean.Value)-belowFull < float64(s.Noise.Value):
		return check.Error
	}
	return check.Warning
}

// wantedAt is where the level wanted stands.
func wantedAt(s *analysis.Sound) source.Span {
	if s.Space.WantedLevel.Set() {
		return s.Space.WantedLevel.Span
	}
	return s.Space.WantedOverNoise.Span
}

// levelEvidence lists full output and average speech beside what they are held
// against.
func levelEvidence(s *analysis.Sound, l *analysis.Levels, belowFull float64) []check.Evidence {
	speech := func(f analysis.Figure[quantity.SoundLevel]) quantity.SoundLevel {
		return f.Value - quantity.SoundLevel(belowFull)
	}
	all := []check.Evidence{
		check.Of("at full output, 95 % of the floor", l.Fifth),
		{Name: "average speech, 95 % of the floor", Value: levelText(speech(l.Fifth)), Number: float64(speech(l.Fifth)), Unit: "dBA", Sum: fmt.Sprintf("%s − %s dB = %s", levelText(l.Fifth.Value), quantity.Significant(belowFull, 4), levelText(speech(l.Fifth)))},
		check.Stated("average speech, softest, mean and loudest place", fmt.Sprintf("%s, %s, %s", levelText(speech(l.Least)), levelText(speech(l.Mean)), levelText(speech(l.Most)))),
		check.Of("level wanted", s.Wanted),
	}
	if l.Of != "" {
		all = append(all, check.Stated("worked out for", l.Of))
	}
	return all
}

// tooLoud holds the loudest place against what ears bear.
func tooLoud(r *check.Report, s *analysis.Sound, l *analysis.Levels) {
	limit := r.Limit("loudest")
	if quantity.AtMost(float64(l.Most.Value), limit.Value) {
		return
	}
	a := r.Fail(check.Warning, fmt.Sprintf("At full output %s reach somebody's ears in %q.", levelText(l.Most.Value), s.Space.Name)).Key("loudest")
	a.Evidence(check.Of("at full output, loudest place", l.Most)).AtMost(fmt.Sprintf("at most %s A", limit), limit.Value, "dBA", limit).Assumed(l.Assumed...)
	a.Caution(harmfulCaution)
	over := float64(l.Most.Value) - limit.Value
	a.Remedy(check.Computed, fmt.Sprintf("Take %s dB off the loudspeakers nearest to people (%s times their watts), or hang them further away.", tenth(over), percent(math.Pow(10, -over/10))))
	seeSound(a, l.From)
}

// levelRemedies proposes taps, numbers and sensitivity, each worked out again.
func levelRemedies(r *check.Report, a *check.Answer, s *analysis.Sound, belowFull, short float64) {
	higherTaps(r, a, s, belowFull, short)
	moreOfThem(r, a, s, belowFull)
	a.Remedy(check.Computed, fmt.Sprintf("Choose loudspeakers that are %s dB more sensitive, in the same places and on the same taps.", tenth(short)))
}

// higherTaps puts every block of the space on the next tap that gives what is short.
func higherTaps(r *check.Report, a *check.Answer, s *analysis.Sound, belowFull, short float64) {
	change := analysis.Instead{}
	var edits []check.Edit
	var to string
	for _, part := range blocks(s.Runs) {
		run := runsOf(s.Runs, part)[0]
		tap, ok := nextTap(tapsOf(run), float64(part.Tap.V)*math.Pow(10, short/10))
		if !ok {
			return
		}
		change[part] = onTap(part, tap)
		edits = append(edits, setTap(run, tap, run.Tap.Marked)...)
		to = tap.Text
	}
	with := s.With(change)
	if !loudEnough(s, with, belowFull) {
		return
	}
	names := namesOfBlocks(blocks(s.Runs))
	text := fmt.Sprintf("Set %s to %s: average speech then reaches %s", names, to, levelText(with.Fifth.Value-quantity.SoundLevel(belowFull)))
	if len(change) > 1 {
		text = fmt.Sprintf("Set %s to taps of %s times the watts or the next above: average speech then reaches %s", names, percent(math.Pow(10, short/10)), levelText(with.Fifth.Value-quantity.SoundLevel(belowFull)))
	}
	f := fits(r.System(), change)
	if f.load != "" {
		text += "; " + f.load
	}
	if f.ok && staysEven(s, change) && quantity.AtMost(float64(with.Most.Value), r.Limit("loudest").Value) {
		a.Remedy(check.Proved, text+".", edits...)
		return
	}
	a.Remedy(check.Computed, text+". Look at the amplifier, the cable and what the loudspeakers can take first.")
}

// moreOfThem looks for the number of loudspeakers that gives what is short, where one
// block laid out evenly serves the space.
func moreOfThem(r *check.Report, a *check.Answer, s *analysis.Sound, belowFull float64) {
	parts := blocks(s.Runs)
	if len(parts) != 1 || len(s.Runs) != 1 || s.Space.Count() > 1 || parts[0].Position.Set() || s.Space.Layout.Set() {
		return
	}
	part := parts[0]
	most := 4 * part.Count()
	for n := part.Count() + 1; n <= most; n += max(1, n/8) {
		change := analysis.Instead{part: counting(part, n)}
		with := s.With(change)
		if !with.Known() || !loudEnough(s, with, belowFull) {
			continue
		}
		text := fmt.Sprintf("Hang %d of %q in place of %d, spread evenly: average speech then reaches %s", n, part.Name, part.Count(), levelText(with.Fifth.Value-quantity.SoundLevel(belowFull)))
		f := fits(r.System(), change)
		if f.load != "" {
			text += "; " + f.load
		}
		if f.ok && part.Spacing.Set() {
			a.Remedy(check.Proved, text+".", check.Write(&part.Part, part.Quantity.Span, "quantity", strconv.Itoa(n)))
			return
		}
		a.Remedy(check.Computed, text+". Look at the amplifier and the cable first.")
		return
	}
}
