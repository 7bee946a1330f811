package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// Unfed asks whether anything that is named is left without use.
var Unfed = &check.Check{
	ID:      "unfed",
	Asks:    "Does every line, unit, source and space that the design names take part in it?",
	Summary: "A part is named but nothing reaches it, or it leads nowhere.",
	Why: "A line without loudspeakers, an amplifier without a line, a player that is plugged in nowhere or a space no loudspeaker serves " +
		"is mostly a slip of the pen: the part was moved, renamed or forgotten, and it is ordered and never heard.",
	How: "Looks for lines without devices, amplifiers without lines or sends, mixers that nothing enters or leaves, sources from which no line can be reached, " +
		"and spaces that no loudspeaker, microphone or reading names.",
	Basis:    "common practice, no published source",
	Blind:    "Outputs and inputs may be spare on purpose and models in a catalogue are there to choose from: neither is asked.",
	Severity: check.Warning,
	Failing: check.Example{
		Shows: "A line that has an amplifier but no loudspeaker.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
}
`,
	},
	Passing: check.Example{
		Shows: "A line with a loudspeaker, and an amplifier that feeds it.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { tap = "10 W" }
}
`,
	},
	Judge: check.Together(check.EachLine(unfedLine), check.EachUnit(unfedUnit), check.EachSource(unfedSource), check.EachSpace(unfedSpace)),
}

func unfedLine(r *check.Report, l *analysis.Line) {
	switch {
	case len(l.Part.Devices) == 0:
		r.Fail(check.Warning, fmt.Sprintf("Line %q has no loudspeaker on it.", l.Part.Name)).
			Remedy(check.Advice, "Write what stands on it, or take the line out.")
	case l.Amplifier == nil:
		r.Open(fmt.Sprintf("Which amplifier feeds line %q is not stated.", l.Part.Name), l.AmplifierMissing())
	default:
		r.Pass(fmt.Sprintf("Line %q is fed by %q.", l.Part.Name, l.Amplifier.Part.Name))
	}
}

func unfedUnit(r *check.Report, u *analysis.Unit) {
	name := u.Part.Name
	entered := false
	for _, i := range u.Inputs {
		entered = entered || len(i.Feeds) > 0 || len(i.Links) > 0
	}
	left := len(u.Links) > 0
	for _, a := range r.System().Amplifiers {
		left = left || a.Part == u.Part && len(a.Lines) > 0
	}
	switch {
	case !left && u.Part.Kind == schema.KindAmplifier:
		r.Fail(check.Warning, fmt.Sprintf("Amplifier %q feeds no line and no other unit.", name)).
			Remedy(check.Advice, fmt.Sprintf("Let a line say amplifier = %q, or take the amplifier out.", name))
	case !left:
		r.Fail(check.Warning, fmt.Sprintf("Mixer %q sends to no other unit.", name)).
			Remedy(check.Advice, "Write a send in it for each output that is wired, or take the mixer out.")
	case !entered && u.Part.Kind == schema.KindMixer:
		r.Fail(check.Warning, fmt.Sprintf("Nothing is plugged into mixer %q.", name)).
			Remedy(check.Advice, fmt.Sprintf("Let a source say into = %q, or take the mixer out.", name))
	case !entered:
		r.NotAsked() // a design of loudspeaker lines alone is a design
	default:
		r.Pass(fmt.Sprintf("%s %q is fed and feeds.", wording.Capital(u.Part.Kind), name))
	}
}

func unfedSource(r *check.Report, s *analysis.Source) {
	switch {
	case !s.Connected():
		r.Open(fmt.Sprintf("Where %q is plugged in is not stated.", s.Part.Name), s.MissingUnit())
	case len(s.Lines) == 0 && len(s.DeadEnds) > 0:
		end := s.DeadEnds[0]
		a := r.Fail(check.Warning, fmt.Sprintf("%q goes into %s, and from there no line can be reached.", s.Part.Name, end.Name()))
		a.See(end.Unit.Part.Header, "the way ends here").
			Remedy(check.Advice, fmt.Sprintf("Write the send that leads on from %q, or the line that hangs on it.", end.Unit.Part.Name))
	case len(s.Lines) == 0:
		r.Fail(check.Warning, fmt.Sprintf("%q reaches no line.", s.Part.Name)).
			Remedy(check.Advice, "Write the lines that its unit feeds, or take the source out.")
	default:
		r.Pass(fmt.Sprintf("%q reaches %s.", s.Part.Name, wording.Counted(len(s.Lines), "line")))
	}
}

func unfedSpace(r *check.Report, s *schema.Space) {
	serving := r.System().Serving(s.Name)
	switch {
	case serving > 0:
		r.Pass(fmt.Sprintf("Space %q is served by %s.", s.Name, wording.Counted(serving, "loudspeaker")))
	case r.System().Mentions(s.Name):
		r.Pass(fmt.Sprintf("Space %q is where a microphone stands, an attenuator hangs or a level was measured.", s.Name))
	default:
		r.Fail(check.Warning, fmt.Sprintf("No loudspeaker serves space %q, and nothing else names it.", s.Name)).
			Remedy(check.Advice, fmt.Sprintf("Let the loudspeakers in it say space = %q, or take the space out.", s.Name))
	}
}
