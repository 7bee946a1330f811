package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/signal"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// Polarity asks whether all loudspeakers move the same way.
var Polarity = &check.Check{
	ID:      "polarity",
	Asks:    "Are all loudspeakers that are heard together to be connected the same way round?",
	Summary: "Loudspeakers that are heard together are connected the other way round, or nothing says how to connect them.",
	Why: "Two loudspeakers of opposite polarity cancel where both are heard: the middle of the aisle, or the overlap of two ceiling loudspeakers, is thin and far too quiet, and no more power cures it. " +
		"It does not matter which conductor goes to which terminal, only that it is the same everywhere; a line in the cable schedule is enough.",
	How: "Looks for a convention in the system (polarity) once for the job, and for loudspeakers that are stated as reversed while others in the same space are not. " +
		"The figure is what two signals of opposite polarity leave of their sum, 20·lg((1 − r) / (1 + r)), r being their ratio.",
	Basis: "how signals add is circuit theory; that one convention is to be written down is common practice, no published source",
	Blind: "Only what is stated is seen: a conductor that was swapped on site, a transformer wound the other way round, or an amplifier that inverts is found by listening or with a polarity tester. " +
		"Where loudspeakers name no space, those of one line count as heard together.",
	Severity:  check.Error,
	NeverOpen: "a convention, or a reversal, is stated or it is not",
	Cautions:  []string{"Test the polarity of each loudspeaker after connecting: transformers and cables can be reversed inside, where no colour shows it."},
	Failing: check.Example{
		Shows: "Nothing says which conductor goes where.",
		Design: `line "Hall" {
  output = "100 V"
  loudspeaker "H" {
    quantity = 6
    tap      = "6 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "One line says it.",
		Design: `system "Hall" { polarity = "brown to +, blue to -" }
line "Hall" {
  output = "100 V"
  loudspeaker "H" {
    quantity = 6
    tap      = "6 W"
  }
}
`,
	},
	Judge: check.Together(check.EachJob(polarityOfJob), check.EachPlace(polarityOfPlace)),
}

func polarityOfJob(r *check.Report, s *analysis.System) {
	count := 0
	system := s.Design.System
	place := system.Header
	for _, l := range s.Lines {
		count += l.Loudspeakers
		if place.IsZero() && len(l.Runs) > 0 {
			place = l.Runs[0].Part.Header
		}
	}
	switch {
	case count < 2:
		r.NotAsked()
	case system.Polarity.Set():
		r.Pass(fmt.Sprintf("The convention is stated: %s.", system.Polarity.V)).Key("convention").At(system.Polarity.Span)
	default:
		a := r.Fail(check.Note, fmt.Sprintf("Nothing says how %s are to be connected the same way round.", wording.Counted(count, "loudspeaker"))).
			Key("convention").At(place)
		text := `State one convention for the job, such as polarity = "brown to +, blue to -", and put it into the cable schedule.`
		if system.Header.IsZero() {
			a.Remedy(check.Advice, text)
		} else {
			a.Remedy(check.Advice, text, check.Write(&system.Part, system.Polarity.Span, "polarity", `"brown to +, blue to -"`))
		}
	}
}

func polarityOfPlace(r *check.Report, p *analysis.Place) {
	stated, reversed, normal := false, 0, 0
	var against *schema.Loudspeaker
	for _, run := range p.Runs {
		stated = stated || run.Part.Polarity.Set()
		if run.Part.Polarity.V == "reversed" {
			reversed += run.Count
			continue
		}
		normal += run.Count
		if against == nil {
			against = run.Part
		}
	}
	switch {
	case !stated:
		r.NotAsked()
		return
	case reversed == 0:
		r.Pass(fmt.Sprintf("No loudspeaker %s is stated as reversed.", placeIn(p)))
		return
	case normal == 0:
		r.Pass(fmt.Sprintf("All loudspeakers %s are connected the same way round.", placeIn(p)))
		return
	}
	seen := map[*schema.Loudspeaker]bool{}
	for _, run := range p.Runs {
		part := run.Part
		if part.Polarity.V != "reversed" || seen[part] {
			continue
		}
		seen[part] = true
		r.Fail(check.Error, fmt.Sprintf("%s of line %q is stated as reversed against %s %s: they cancel where both are heard.", runName(run), run.Line.Part.Name, wording.Counted(normal, "loudspeaker"), placeIn(p))).
			Key(run.Line.Part.Name+", "+part.Name).
			At(part.Polarity.Span).
			See(against.Header, "connected the other way round").
			Evidence(opposite(3), opposite(6)).
			Remedy(check.Proved, "Swap its two conductors.", check.Write(&part.Part, part.Polarity.Span, "polarity", `"normal"`))
	}
}

// opposite is what is left where both arrive so far apart in level.
func opposite(differenceDB float64) check.Evidence {
	return check.Number(fmt.Sprintf("change where one arrives %g dB below the other", differenceDB), math.Round(10*signal.OppositeDB(differenceDB))/10, "dB")
}

// placeIn says where a place is.
func placeIn(p *analysis.Place) string {
	if p.Space != nil {
		return "in " + quoted(p.Space.Name)
	}
	return "on line " + quoted(p.Line.Part.Name)
}
