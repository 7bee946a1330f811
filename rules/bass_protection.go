package rules

import (
	"fmt"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// BassProtection asks whether the bass that transformers cannot take is cut.
var BassProtection = &check.Check{
	ID:      "bass-protection",
	Asks:    "Is the bass cut where the transformers and cones on each amplifier cannot take it?",
	Summary: "Bass reaches loudspeakers whose transformers cannot take it at full power.",
	Why: "The flux in a transformer grows with voltage over frequency. Below its lowest frequency the core saturates, its impedance falls to that of bare copper, and a line full of such transformers is close to a short: " +
		"the amplifier distorts or its protection trips, mostly on the one loud bass note. Horns lose the air that holds their diaphragm as well.",
	How: "Takes, for every line, the sources meant for it and the units on their way, and compares the highest high-pass on that way (high_pass, or the lowest frequency a unit delivers at all) " +
		"with the lowest frequency each loudspeaker states.",
	Basis: "flux in a core is voltage over frequency (induction law); that the cut is to be at or above the lowest frequency stated is common practice, no published source",
	Blind: "Low-impedance outputs, and loudspeakers connected directly, have no transformer and are not asked, nor are amplifiers to which no source is drawn. Old equipment that is not spelled out is left out. " +
		"Capacitors in series with single loudspeakers are not in the design; how steep the high-pass is, and how loud the music ever gets, are not asked. " +
		"A tap marked for a higher voltage than the line's leaves more room than is counted. Of several ways of a source the one over the fewest units counts.",
	Severity: check.Warning,
	Cautions: []string{"A high-pass on an amplifier cuts the bass of every loudspeaker on it: give loudspeakers that can take more one of their own."},
	Failing: check.Example{
		Shows: "Music down to 50 Hz on transformers that begin at 120 Hz.",
		Design: `amplifier "Rack" {
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 20
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
music "Player" { into = "Rack" }
`,
	},
	Passing: check.Example{
		Shows: "The amplifier's high-pass is set to 120 Hz.",
		Design: `amplifier "Rack" {
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
  high_pass        = "120 Hz"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 20
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
music "Player" { into = "Rack" }
`,
	},
	Judge: check.EachAmplifier(bassProtection),
}

func bassProtection(r *check.Report, amp *analysis.Amplifier) {
	music, speech := r.System().Bass(amp)
	if music.All+speech.All == 0 {
		r.NotAsked()
		return
	}
	bassOf(r, amp, &music, "music", check.Warning, true)
	bassOf(r, amp, &speech, "speech", check.Note, music.All == 0)
}

// bassOf answers for one kind of programme. alone tells that the amplifier may
// be set for the loudspeakers it reaches without taking bass from music.
func bassOf(r *check.Report, amp *analysis.Amplifier, b *analysis.Bass, programme string, severity check.Severity, alone bool) {
	var a *check.Answer
	switch {
	case b.All == 0:
		return
	case b.Short > 0:
		a = r.Fail(severity, fmt.Sprintf("%s reaches %s on %s down to %s, and %s of line %s %s %s at the lowest.",
			wording.Capital(programme), wording.Counted(b.Short, "loudspeaker"), amplifierName(amp), b.Cut.V, quoted(b.WorstRun.Part.Name), quoted(b.WorstRun.Line.Part.Name), verb(b.WorstRun.Count, "takes", "take"), b.Needs.V)).
			See(b.Source.Part.Header, "where the "+programme+" comes from")
		bassRemedies(a, amp, b, alone)
		if len(b.Missing) > 0 {
			a.Assumed("loudspeakers and ways of which the design does not say enough are left out")
		}
	case len(b.Missing) > 0:
		r.Open(fmt.Sprintf("Whether bass of the %s on %s is cut where its loudspeakers cannot take it is not known.", programme, amplifierName(amp)), b.Missing...).Key(programme)
		return
	default:
		a = r.Pass(fmt.Sprintf("%s reaches %s on %s down to %s, and none needs a cut above %s.", wording.Capital(programme), wording.Counted(b.All, "loudspeaker"), amplifierName(amp), b.Cut.V, b.Needs.V))
	}
	a.Key(programme).
		At(inside(&amp.Part.Part, amp.Part.HighPass.Span)).
		See(readable(b.Needs.Span), "lowest frequency the loudspeaker takes").
		See(readable(b.Cut.Span), "where the bass is cut").
		Evidence(check.Plainly("bass goes down to", b.Cut.V, schema.Place{Span: b.Cut.Span, Note: "where the bass is cut"}),
			check.Plainly("lowest frequency the loudspeaker takes", b.Needs.V, schema.Place{Span: b.Needs.Span, Note: "lowest frequency the loudspeaker takes"})).
		Bound(check.Bound{Text: "at least " + b.Needs.V.String(), Number: float64(b.Needs.V), Unit: "Hz", Basis: "as the loudspeaker states"})
}

func amplifierName(a *analysis.Amplifier) string { return "amplifier " + quoted(a.Part.Name) }

func bassRemedies(a *check.Answer, amp *analysis.Amplifier, b *analysis.Bass, alone bool) {
	if alone {
		a.Remedy(check.Proved, fmt.Sprintf("Set a high-pass of %s or higher on amplifier %q, or put one before it.", b.Needs.V, amp.Part.Name),
			check.Write(&amp.Part.Part, amp.Part.HighPass.Span, "high_pass", strconv.Quote(b.Needs.V.String())))
	} else {
		a.Remedy(check.Advice, fmt.Sprintf("Give these loudspeakers an amplifier of their own with a high-pass of %s, or a capacitor each as their maker says: here it would take the bass from the music.", b.Needs.V))
	}
	a.Remedy(check.Computed, fmt.Sprintf("Choose loudspeakers that take %s at full power.", b.Cut.V))
}
