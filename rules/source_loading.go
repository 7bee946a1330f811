package rules

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// SourceLoading asks whether a source can drive all inputs that are wired to it.
var SourceLoading = &check.Check{
	ID:      "source-loading",
	Asks:    "Are the inputs wired to each source or output high enough in impedance for it, all together?",
	Summary: "A source or output drives inputs whose impedance together is too low for it, or inputs of units that may be switched off.",
	Why: "Inputs in parallel add up to a lower impedance. Below about ten times that of the source its level falls with every input that is plugged in, and its bass and distortion suffer. " +
		"An input without power is no longer what its data sheet says: it can load the source so that all the others distort, and nobody looks for the fault in the room that is switched off.",
	How: "Works out 1 / (1/Z1 + 1/Z2 + …) of all inputs wired straight to a source (into and also) or to one output (its sends), and compares with its own impedance. " +
		"Left and right of a source count as two outputs. Where several units share one, says so unless their inputs are isolated or one supply feeds all of them.",
	Basis: "common practice, no published source: ten times the source's impedance, so that 0.8 dB is lost",
	Blind: "Impedances are taken as resistances at mid-band. What an input comes to without power is on no data sheet. A telephone is matched to its input on purpose and is not asked; " +
		"neither is one source alone of which the impedance is not stated, nor a source whose one lead ends in summing resistors, which are made to be driven.",
	Params: []check.Param{
		{Name: "least_ratio", Doc: "how many times its own impedance a source of line level has to see at least", Unit: check.Plain, Default: 10, Low: 1, High: 100},
		{Name: "microphone_ratio", Doc: "the same for a microphone", Unit: check.Plain, Default: 5, Low: 1, High: 100, Basis: "five times the rated impedance of a microphone, IEC 61938, from memory"},
	},
	Severity: check.Warning,
	Cautions: []string{"Switch off each unit in turn and listen to the others before handover."},
	Failing: check.Example{
		Shows: "One source of 600 ohm straight into three mixers of 10 kohm: 3.3 kohm is 5.6 times.",
		Design: `music "Portable rack" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux"
  also {
    into  = "Mixer 2"
    input = "Aux"
  }
  also {
    into  = "Mixer 3"
    input = "Aux"
  }
}
mixer "Mixer 1" {
  input "Aux" { impedance = "10 kohm" }
}
mixer "Mixer 2" {
  input "Aux" { impedance = "10 kohm" }
}
mixer "Mixer 3" {
  input "Aux" { impedance = "10 kohm" }
}
`,
	},
	Passing: check.Example{
		Shows: "One mixer alone: 16.7 times.",
		Design: `music "Portable rack" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux"
}
mixer "Mixer 1" {
  input "Aux" { impedance = "10 kohm" }
}
`,
	},
	Judge: check.Together(check.EachSource(loadingOfSource), check.EachUnit(loadingOfOutputs)),
}

func loadingOfSource(r *check.Report, src *analysis.Source) {
	d := r.System().Driving(src)
	if d == nil || onlyThroughResistors(src) || matched(d) {
		r.NotAsked()
		return
	}
	sourceLoading(r, d, src.Part.Name, "loading", pluggedAt(src.Feeds[0]))
}

func onlyThroughResistors(src *analysis.Source) bool {
	audio := 0
	for _, f := range src.Feeds {
		if f.Into != nil && !f.Into.Contact() {
			audio++
			if f.Part.SummedBy.V != "resistors" {
				return false
			}
		}
	}
	return audio == 1
}

// matched tells that a telephone line ends in its input.
func matched(d *analysis.Driving) bool {
	for _, i := range d.Inputs {
		if i.Part != nil && i.Part.Takes.V == telephoneLevel {
			return true
		}
	}
	return false
}

func loadingOfOutputs(r *check.Report, u *analysis.Unit) {
	r.NotAsked() // until an output is found of which an impedance is known
	for _, d := range r.System().DrivingOutputs(u) {
		if matched(d) || len(d.Inputs) == 1 && d.Links[0].Part.Send.SummedBy.V == "resistors" {
			continue
		}
		out := d.Links[0].Part.Output
		sourceLoading(r, d, fmt.Sprintf("%s of %s", out.Name, u.Part.Name), "output "+out.Name, linkedAt(d.Links[0]))
	}
}

func sourceLoading(r *check.Report, d *analysis.Driving, name, key string, place source.Span) {
	missing := analysis.MergeMissing(d.Own.Missing, d.Load.Missing)
	switch {
	case len(d.Inputs) == 1 && !d.Own.Known():
		r.NotAsked()
		return
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether %s can drive %s cannot be told.", name, drivenInputs(d)), missing...).Key(key).At(place)
		return
	}
	limit := r.Limit("least_ratio")
	if d.Microphone {
		limit = r.Limit("microphone_ratio")
	}
	own, load := float64(d.Own.Value), float64(d.Load.Value)
	ratio := load / own
	if own == 0 {
		ratio = math.Inf(1)
	}
	fails := !quantity.AtLeast(ratio, limit.Value)
	var a *check.Answer
	switch {
	case fails:
		a = r.Fail(check.Warning, fmt.Sprintf("%s has %s and sees %s at %s: %s times its own impedance, and %s is lost.", name, d.Own.Value, d.Load.Value, drivenInputs(d), percent(ratio), -d.LoadingDB)).
			Key(key).At(place)
	case len(d.Apart) > 0:
		unitsApart(r, d, name, key, place)
		return
	default:
		a = r.Pass(fmt.Sprintf("%s has %s and sees %s at %s.", name, d.Own.Value, d.Load.Value, drivenInputs(d))).Key(key).At(place)
	}
	loadingEvidence(a, d, ratio, limit)
	if !fails {
		return
	}
	if len(d.Inputs) == 1 {
		a.Remedy(check.Computed, fmt.Sprintf("Take an input of %s or more, or put a transformer or line amplifier before it.", quantity.Resistance(own*limit.Value)))
		return
	}
	a.Remedy(check.Computed, fmt.Sprintf("Put a distribution amplifier between %s and the %d inputs: each then has an output of its own, switched off or not.", name, len(d.Inputs)))
	a.Remedy(check.Computed, fmt.Sprintf("Bring the inputs to %s or more each, by transformers or other inputs.", quantity.Resistance(own*limit.Value*float64(len(d.Inputs)))))
}

func loadingEvidence(a *check.Answer, d *analysis.Driving, ratio float64, limit check.Limit) {
	of := check.Number("times its own impedance", ratio, "")
	of.Sum = fmt.Sprintf("%s / %s = %s", d.Load.Value, d.Own.Value, percent(ratio))
	a.Evidence(check.Of("own impedance", d.Own), check.Of("all inputs together", d.Load), of).
		AtLeast(fmt.Sprintf("at least %s times its own impedance, %s", limit, quantity.Resistance(limit.Value*float64(d.Own.Value))), limit.Value, "", limit).
		Assumed(d.Load.Assumed...)
	for _, p := range slices.Concat(d.Own.From, d.Load.From) {
		a.See(readable(p.Span), p.Note)
	}
}

// unitsApart answers for units that share a source with nothing between them.
func unitsApart(r *check.Report, d *analysis.Driving, name, key string, place source.Span) {
	names := make([]string, len(d.Apart))
	for n, u := range d.Apart {
		names[n] = u.Part.Name
	}
	a := r.Fail(check.Note, fmt.Sprintf("%s goes straight into %s: with one of them switched off its input may load the others' signal.", name, listed(names))).Key(key + ", switched off").At(place)
	limit := r.Limit("least_ratio")
	if d.Microphone {
		limit = r.Limit("microphone_ratio")
	}
	loadingEvidence(a, d, float64(d.Load.Value)/float64(d.Own.Value), limit)
	a.Assumed("all of them have power").
		Remedy(check.Advice, "Put a distribution amplifier or transformers between them, or see that one switch turns all of them on and off.")
	if s := supplyOfAll(d); s != "" {
		a.Remedy(check.Advice, "Where one supply feeds them, write it into the design: "+s+".")
	}
}

func supplyOfAll(d *analysis.Driving) string {
	names := make([]string, len(d.Apart))
	for n, u := range d.Apart {
		names[n] = strconv.Quote(u.Part.Name)
	}
	if len(names) > 6 {
		return ""
	}
	return fmt.Sprintf("supply \"Rack mains\" { feeds = [%s] }", strings.Join(names, ", "))
}

func drivenInputs(d *analysis.Driving) string {
	names := make([]string, len(d.Inputs))
	for n, i := range d.Inputs {
		names[n] = i.Name()
	}
	return listed(names)
}
