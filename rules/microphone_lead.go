package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// MicrophoneLead asks whether leads are short enough for the way they carry
// their signal.
var MicrophoneLead = &check.Check{
	ID:      "microphone-lead",
	Asks:    "Is each microphone and line lead short enough for how it carries its signal?",
	Summary: "A lead is too long to be unbalanced, or so long that its capacitance takes the treble.",
	Why: "An unbalanced lead picks up hum along its whole length, and no control takes that away again. A long lead is a capacitor across the source: " +
		"from a source of high impedance it leaves speech dull.",
	How: "A lead is unbalanced when one of its ends is, or when its plug has too few contacts to be balanced; then its length is compared with a limit. " +
		"Where the impedance of the source is stated, works out where the lead has taken 3 dB of the treble: 1 / (2π × impedance × capacitance × length). " +
		"1 dB is taken at half of that frequency (0.509 of it).",
	Basis: "common practice, no published source: unbalanced leads of a few metres, 5 to 10 m",
	Blind: "What cable the lead is of is not in the design: its capacitance is a limit that criteria can set. How it is laid, beside mains or dimmers, is for route-separation. " +
		"A lead without a stated length is not asked.",
	Params: []check.Param{
		{Name: "longest_unbalanced", Doc: "longest unbalanced lead", Unit: check.Metre, Default: 10, Low: 0.5, High: 200},
		{Name: "longest_unknown", Doc: "longest lead of a source of which the impedance is not stated", Unit: check.Metre, Default: 100, Low: 1, High: 2000, Basis: "common practice, no published source: balanced leads of 100 m and more are in use"},
		{Name: "least_corner", Doc: "lowest frequency at which the lead may have taken 3 dB", Unit: check.Hertz, Default: 20000, Low: 1000, High: 200000, Basis: "common practice, no published source: 1 dB is then lost at 10 kHz"},
		{Name: "picofarad_per_metre", Doc: "capacitance between the conductors of the lead, in pF per metre", Unit: check.Plain, Default: 100, Low: 10, High: 1000, Basis: "about 100 pF/m, page \"Cable and treble damping\""},
	},
	Severity: check.Warning,
	Cautions: []string{"Keep microphone and line leads away from mains, dimmers and loudspeaker lines."},
	Failing: check.Example{
		Shows: "25 m on a jack plug with two contacts.",
		Design: `amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
}
microphone "Lectern" {
  into      = "Rack"
  input     = "Mic 1"
  connector = "6.35 mm jack 2-pole"
  lead      = "25 m"
}
`,
	},
	Passing: check.Example{
		Shows: "4 m of it.",
		Design: `amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
}
microphone "Lectern" {
  into      = "Rack"
  input     = "Mic 1"
  connector = "6.35 mm jack 2-pole"
  lead      = "4 m"
}
`,
	},
	Judge: check.Together(check.EachSource(leadsOfSource), check.EachSend(leadOfSend)),
}

func leadsOfSource(r *check.Report, src *analysis.Source) {
	r.NotAsked() // until a lead is found of which the length is stated
	for _, f := range src.Feeds {
		if l := r.System().LeadOf(f); l != nil {
			microphoneLead(r, l, src.Part.Name, atUnit("lead", f), inside(&f.Part.Part, f.Part.Lead.Span))
		}
	}
}

func leadOfSend(r *check.Report, links []*analysis.Link) {
	l := r.System().LeadOfLink(links[0])
	if l == nil {
		r.NotAsked()
		return
	}
	send := links[0].Part.Send
	microphoneLead(r, l, fmt.Sprintf("%s of %s", send.Name, links[0].From.Part.Name), "lead", inside(&send.Part, send.Lead.Span))
}

func microphoneLead(r *check.Report, l *analysis.Lead, name, key string, place source.Span) {
	length := quantity.Format(l.Length.V, r.US())
	unbalanced, unknown, corner := r.Limit("longest_unbalanced"), r.Limit("longest_unknown"), r.Limit("least_corner")
	each := quantity.Capacitance(r.Limit("picofarad_per_metre").Value * 1e-12)
	treble := l.Corner(each)
	tooLong := !quantity.AtMost(float64(l.Length.V), unbalanced.Value)
	measured := check.Plainly("length of the lead", l.Length.V)
	switch {
	case tooLong && l.Balance == analysis.Unbalanced:
		a := r.Fail(check.Warning, fmt.Sprintf("The lead of %s is %s long and unbalanced: it picks up hum.", name, length)).Key(key).At(place).
			Evidence(measured).
			AtMost(fmt.Sprintf("at most %s unbalanced", quantity.Format(quantity.Length(unbalanced.Value), r.US())), unbalanced.Value, "m", unbalanced)
		for _, p := range l.Why {
			a.See(readable(p.Span), p.Note)
		}
		a.Remedy(check.Advice, fmt.Sprintf("Make it balanced at both ends, with a transformer at the source where it has no balanced output, or keep it at %s or below.", quantity.Format(quantity.Length(unbalanced.Value), r.US())))
	case treble.Known() && !quantity.AtLeast(float64(treble.Value), corner.Value):
		longest := l.Longest(each, quantity.Frequency(corner.Value))
		r.Fail(check.Warning, fmt.Sprintf("The lead of %s is %s long: with %s of source impedance it has taken 3 dB of the treble at %s.", name, length, l.Own.Value, treble.Value)).Key(key).At(place).
			Evidence(measured, check.Of("3 dB are taken at", treble)).
			AtLeast(fmt.Sprintf("at least %s", quantity.Frequency(corner.Value)), corner.Value, "Hz", corner).
			Assumed(fmt.Sprintf("the lead has %s between its conductors", quantity.Format(each, r.US()))).
			See(readable(l.Own.From[0].Span), l.Own.From[0].Note).
			Remedy(check.Computed, fmt.Sprintf("Keep it at %s or below, or drive it from a lower impedance: a line amplifier or transformer at the source.", quantity.Format(longest, r.US())))
	case tooLong && l.Balance == analysis.UnknownBalance:
		r.Open(fmt.Sprintf("Whether the lead of %s, %s long, is balanced cannot be told.", name, length), l.Missing...).Key(key).At(place)
	case !treble.Known() && !quantity.AtMost(float64(l.Length.V), unknown.Value):
		r.Open(fmt.Sprintf("How much of the treble the lead of %s takes, %s long, cannot be told.", name, length), treble.Missing...).Key(key).At(place)
	default:
		a := r.Pass(fmt.Sprintf("The lead of %s is %s long.", name, length)).Key(key).At(place).Evidence(measured)
		if treble.Known() {
			a.Evidence(check.Of("3 dB are taken at", treble)).Assumed(fmt.Sprintf("the lead has %s between its conductors", quantity.Format(each, r.US())))
		}
	}
}
