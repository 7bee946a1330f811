package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/supply"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// MainsLoad asks whether the units on a breaker take less than it carries.
var MainsLoad = &check.Check{
	ID:      "mains-load",
	Asks:    "Do the units on each breaker take less from the mains than it carries?",
	Summary: "The units on a breaker take more from the mains than it carries.",
	Why: "A breaker that carries too much trips while people speak, and the whole rack goes silent. Data sheets state what an amplifier takes at rated output, " +
		"which programme never asks for long, or at one eighth of it, which it does: sized by the first a circuit is far too large, sized by the idle figure far too small.",
	How: "Adds up what the units take at one eighth of rated output and at rated output, and divides by mains voltage and power factor. One eighth is worked out between the stated figures with no signal and at rated output: " +
		"by the root of the power, as in class B, or in proportion to it where the efficiency is beyond what class B can have. " +
		"Normal use at one eighth is held against the breaker less the margin, rated output against the breaker itself.",
	Basis: "one eighth of rated output is normal use: IEC 60065, as quoted in a forum",
	Blind: "What else is on the circuit, and the cable behind the breaker, are for the electrician. Units that two supplies feed count on both in full. " +
		"Switch-on surges are not computed: data sheets seldom state them. A supply with a battery and without a breaker is not asked.",
	Params: []check.Param{
		{Name: "margin", Doc: "what is to stay free of the breaker in normal use", Unit: check.Percent, Default: 20, Low: 0, High: 90, Basis: "load that lasts at most 80 % of the breaker: NEC 210.20(A), from memory; elsewhere common practice, no published source"},
		{Name: "power_factor", Doc: "power factor of the units' mains supplies", Unit: check.Plain, Default: 0.7, Low: 0.3, High: 1, Basis: "rectifiers without correction have 0.6 to 0.75, corrected supplies 0.9 and more: common practice, no published source"},
	},
	Severity: check.Error,
	Cautions: []string{inrushCaution},
	Failing: check.Example{
		Shows: "Three large amplifiers on a 6 A breaker.",
		Design: `system "Job" {
  mains = "230 V"
}
amplifier "A" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
amplifier "B" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
amplifier "C" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
supply "Rack" {
  feeds   = ["A", "B", "C"]
  breaker = "6 A"
}
`,
	},
	Passing: check.Example{
		Shows: "One of them alone.",
		Design: `system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
line "Hall" {
  amplifier = "A"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
supply "Rack" {
  feeds   = ["A"]
  breaker = "6 A"
}
`,
	},
	Judge: check.EachSupply(mainsLoad),
}

const inrushCaution = "Amplifiers draw many times their current for an instant when they are switched on: switch them on one after the other, or let an electrician choose a breaker that bears it."

// circuit turns watts into amperes of a mains circuit.
type circuit struct {
	volts  quantity.Voltage
	factor float64
}

func (c circuit) amps(p quantity.Power) quantity.Current {
	return quantity.Current(supply.MainsAmps(float64(p), float64(c.volts), c.factor))
}

func (c circuit) evidence(name string, p analysis.Figure[quantity.Power]) check.Evidence {
	e := check.Plainly(name, c.amps(p.Value), p.From...)
	watts := p.Value.String()
	if p.Sum != "" {
		watts = "(" + p.Sum + ")"
	}
	e.Sum = fmt.Sprintf("%s / (%s × %s) = %s", watts, c.volts, quantity.Significant(c.factor, 4), c.amps(p.Value))
	return e
}

func mainsLoad(r *check.Report, p *analysis.Supply) {
	breaker := p.Part.Breaker
	if !breaker.Set() && standsBy(p.Part) {
		r.NotAsked()
		return
	}
	system := r.System().Design.System
	full, normal := &p.Mains.Full, &p.Mains.NormalUse
	lacks := full.Missing
	if !system.Mains.Set() {
		lacks = analysis.MergeMissing(lacks, []analysis.Missing{{What: "mains voltage", Part: "the job", Where: dutyPlace(r.System()), Write: `system "…" { mains = "230 V" }`}})
	}
	if !breaker.Set() {
		lacks = analysis.MergeMissing(lacks, []analysis.Missing{{What: "rating of the breaker", Part: fmt.Sprintf("supply %q", p.Part.Name), Where: p.Part.Header, Write: `breaker = "16 A"`}})
	}
	if len(lacks) > 0 {
		openMains(r, p, analysis.MergeMissing(lacks, normal.Missing))
		return
	}
	margin := r.Limit("margin")
	c := circuit{system.Mains.V, r.Limit("power_factor").Value}
	most := quantity.Current(below(float64(breaker.V), margin))
	name := fmt.Sprintf("The units on supply %q", p.Part.Name)
	if !normal.Known() { // rated output is more than normal use
		if quantity.AtMost(c.amps(full.Value), most) {
			a := r.Pass(fmt.Sprintf("%s take %s at rated output, on a breaker of %s.", name, c.amps(full.Value), breaker.V))
			c.finish(a, p, most, margin, c.evidence("at rated output", *full))
			return
		}
		openMains(r, p, normal.Missing)
		return
	}
	says := fmt.Sprintf("%s take %s at one eighth of rated output and %s at rated output, on a breaker of %s", name, c.amps(normal.Value), c.amps(full.Value), breaker.V)
	var a *check.Answer
	switch {
	case !quantity.AtMost(c.amps(normal.Value), breaker.V):
		a = r.Fail(check.Error, says+": it trips in normal use.")
	case !quantity.AtMost(c.amps(normal.Value), most):
		a = r.Fail(check.Warning, fmt.Sprintf("%s: less than %s stays free in normal use.", says, margin))
	case !quantity.AtMost(c.amps(full.Value), breaker.V):
		a = r.Fail(graver(system.Emergency(), check.Note), says+": a tone that drives all of them fully can trip it.").
			Remedy(check.Advice, "Drive the amplifiers one after the other when testing with a tone; where alarm tones are given to all at once, spread the units over more circuits.")
	default:
		a = r.Pass(says + ".")
	}
	c.finish(a, p, most, margin, c.evidence("at one eighth of rated output", *normal), c.evidence("at rated output", *full))
	a.Assumed(normal.Assumed...)
	if over := float64(c.amps(normal.Value) - most); !quantity.AtMost(c.amps(normal.Value), most) {
		a.Remedy(check.Computed, fmt.Sprintf("Move units that take at least %s in normal use to another circuit.", quantity.Power(over*float64(c.volts)*c.factor))).
			Remedy(check.Advice, "Have an electrician fit a circuit for more; breaker and cable go together.")
	}
}

func openMains(r *check.Report, p *analysis.Supply, lacks []analysis.Missing) {
	r.Open(fmt.Sprintf("Whether the breaker of supply %q carries its units cannot be told.", p.Part.Name), lacks...)
}

// finish adds what every judged answer has.
func (c circuit) finish(a *check.Answer, p *analysis.Supply, most quantity.Current, margin check.Limit, evidence ...check.Evidence) {
	breaker := p.Part.Breaker
	a.At(breaker.Span).
		Evidence(append(evidence, check.Plainly("breaker", breaker.V))...).
		AtMost(fmt.Sprintf("at most %s in normal use (%s below %s), %s at rated output", most, margin, breaker.V, breaker.V), float64(most), "A", margin).
		Assumed(fmt.Sprintf("a power factor of %s", quantity.Significant(c.factor, 4)))
	for _, u := range p.Units {
		if u.Kind == schema.KindAmplifier {
			a.Caution(inrushCaution)
			break
		}
	}
	for _, e := range evidence {
		for _, place := range e.From {
			a.See(readable(place.Span), place.Note)
		}
	}
}
