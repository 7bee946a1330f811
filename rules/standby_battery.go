package rules

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// StandbyBattery asks whether a battery lasts as long as it is asked to.
var StandbyBattery = &check.Check{
	ID:      "standby-battery",
	Asks:    "Does each standby battery last through the waiting and the announcing that the design asks of it?",
	Summary: "A standby battery is too small for the time it has to wait and then announce.",
	Why: "A battery is bought by its ampere hours, and most of them go into waiting: an amplifier that takes 1 A with no signal takes 24 Ah in a day. " +
		"A battery also gives less when it is emptied fast, and less every year. One that is just enough when new fails in the power cut it was bought for.",
	How: "C = ageing × (T1 × I1 + D × T2 × I2). T1 and T2 are the times of waiting and announcing that the design states, I1 the currents of the units it feeds with no signal, " +
		"I2 those while announcing; override relays count in the one or the other by what they do for an announcement. D is 1 if C / 20 h is at least I2, else the derating. " +
		"I2 is worked out twice: with every amplifier at full output into the loudspeakers that hang on it (at its rating where they are not known), and with speech. Battery volts are held against what the units ask for.",
	Basis: "BS 5839-1:2025 Annex E, as read in a trade guide; under US wiring rules a margin of 20 % and no other factor (NFPA 72 10.6.7, as read in study pages)",
	Blind: "Which times of standby the law asks for is not known here: they are taken as stated. The charger, temperature, batteries in strings, and the voltage at the end of discharge are not judged. " +
		"The factors are those of valve-regulated lead-acid batteries. Sources, desks and panels are not counted: they state no current. " +
		"Units asking for a voltage within 20 % of the battery's are taken to suit it.",
	Params: []check.Param{
		{Name: "ageing", Doc: "factor for an old battery, where the supply states none", Unit: check.Plain, Default: 1.25, Low: 1, High: 3, Basis: "BS 5839-1:2025 Annex E, as read in a trade guide"},
		{Name: "derating", Doc: "factor D on the announcement when it empties the battery faster than in 20 h", Unit: check.Plain, Default: 1.75, Low: 1, High: 3, Basis: "BS 5839-1:2025 Annex E, as read in a trade guide, or the figure of the battery's maker"},
		{Name: "speech_share", Doc: "average output while speech is announced, of full output", Unit: check.Percent, Default: 12.5, Low: 0.1, High: 100, Basis: "one eighth of rated output is normal use: IEC 60065, as quoted in a forum"},
	},
	Severity: check.Error,
	Cautions: []string{batteryCaution},
	Failing: check.Example{
		Shows: "A day of waiting and half an hour of announcing need 68 Ah; 40 Ah are fitted.",
		Design: `amplifier "Rack" {
  rated_power  = "360 W"
  battery_idle = "1.8 A"
  battery_full = "22 A"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
supply "Standby" {
  feeds        = ["Rack"]
  battery      = "24 V"
  capacity     = "40 Ah"
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
`,
	},
	Passing: check.Example{
		Shows: "The same with 80 Ah.",
		Design: `amplifier "Rack" {
  rated_power  = "360 W"
  battery_idle = "1.8 A"
  battery_full = "22 A"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
supply "Standby" {
  feeds        = ["Rack"]
  battery      = "24 V"
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
`,
	},
	Judge: check.EachSupply(standbyBattery),
}

const batteryCaution = "Batteries burn and explode when shorted and give off gas when charged: insulated tools, a fuse close to the battery, ventilation, and the tests and replacement that local codes ask for."

// battery is a supply's battery with what it needs.
type battery struct {
	*analysis.Supply
	full, speech analysis.Standby
	ageing       float64
	derating     check.Limit
	american     bool // by NFPA 72
}

func standbyBattery(r *check.Report, p *analysis.Supply) {
	if !standsBy(p.Part) {
		r.NotAsked()
		return
	}
	if mismatched(r, p) {
		return
	}
	b := batteryOf(r, p)
	need := &b.full.Capacity
	lacks := analysis.MergeMissing(need.Missing, b.speech.Capacity.Missing)
	fitted := p.Part.Capacity
	if len(lacks) > 0 || !fitted.Set() {
		b.open(r, lacks)
		return
	}
	times := fmt.Sprintf("%s of waiting and %s of announcing", p.Part.Standby.V, p.Part.Announcement.V)
	asks := fmt.Sprintf("%s need %s at full output and %s with speech", times, need.Value, b.speech.Capacity.Value)
	if need.Value == b.speech.Capacity.Value {
		asks = fmt.Sprintf("%s need %s", times, need.Value)
	}
	name := fmt.Sprintf("Supply %q has %s", p.Part.Name, fitted.V)
	emergency := r.System().Design.System.Emergency()
	bound := need.Value
	var a *check.Answer
	switch {
	case quantity.AtLeast(fitted.V, need.Value):
		a = r.Pass(fmt.Sprintf("%s; %s.", name, asks))
	case !quantity.AtLeast(fitted.V, b.speech.Bare):
		bound = b.speech.Capacity.Value
		a = r.Fail(check.Error, fmt.Sprintf("%s, and %s draw %s even with speech alone and a battery that is new; %s.", name, times, b.speech.Bare, asks))
	case !quantity.AtLeast(fitted.V, b.speech.Capacity.Value):
		bound = b.speech.Capacity.Value
		a = r.Fail(graver(emergency, check.Warning), fmt.Sprintf("%s: too little even for speech; %s.", name, asks))
	default:
		a = r.Fail(graver(emergency, check.Note), fmt.Sprintf("%s: enough for speech, not for full output; %s.", name, asks))
	}
	a.At(fitted.Span).Caution(batteryCaution).
		Evidence(check.Of("waiting", b.full.Waiting), check.Of("announcing at full output", b.full.Announcing), check.Of("announcing speech", b.speech.Announcing),
			check.Of("capacity for full output", *need), check.Of("capacity for speech", b.speech.Capacity), check.Plainly("fitted", fitted.V)).
		Assumed(b.speech.Capacity.Assumed...).Assumed(b.assumed()...)
	b.limit(a, bound)
	for _, f := range [][]schema.Place{need.From, b.full.Waiting.From, b.full.Announcing.From} {
		for _, place := range f {
			a.See(readable(place.Span), place.Note)
		}
	}
	if quantity.AtLeast(fitted.V, need.Value) {
		return
	}
	b.remedies(a)
}

// standsBy tells that a supply is meant to go on without mains.
func standsBy(p *schema.Supply) bool {
	return p.Battery.Set() || p.Capacity.Set() || p.Standby.Set() || p.Announcement.Set()
}

// graver is one step graver where lives hang on it.
func graver(emergency bool, s check.Severity) check.Severity {
	if emergency {
		return s + 1
	}
	return s
}

func batteryOf(r *check.Report, p *analysis.Supply) *battery {
	b := &battery{Supply: p, derating: r.Limit("derating")}
	ageing := r.Limit("ageing")
	b.ageing = ageing.Value
	derating := b.derating.Value
	if r.System().Design.System.WiringRules.V == "US" && ageing.Origin.IsZero() && b.derating.Origin.IsZero() {
		b.american, b.ageing, derating = true, 1.2, 1
	}
	if p.Part.Ageing.Set() {
		b.ageing = p.Part.Ageing.V
	}
	b.full = p.Standby(1, b.ageing, derating)
	b.speech = p.Standby(r.Limit("speech_share").Value/100, b.ageing, derating)
	return b
}

// assumed says where the factor for age comes from when the design does not
// state it.
func (b *battery) assumed() []string {
	if b.Part.Ageing.Set() {
		return nil
	}
	return []string{fmt.Sprintf("a factor of %s for age, as the supply states none", quantity.Significant(b.ageing, 4))}
}

func (b *battery) limit(a *check.Answer, least quantity.Charge) {
	text := fmt.Sprintf("at least %s", least)
	if b.american {
		a.Bound(check.Bound{Text: text, Number: float64(least), Unit: "Ah", Basis: "NFPA 72 10.6.7, as read in study pages: 20 % margin unless the supply states its own, no other factor"})
		return
	}
	a.AtLeast(text, float64(least), "Ah", b.derating)
}

// open says what is missing, and what is known already.
func (b *battery) open(r *check.Report, lacks []analysis.Missing) {
	message := fmt.Sprintf("Whether the battery of supply %q lasts cannot be told.", b.Part.Name)
	if len(lacks) == 0 {
		message = fmt.Sprintf("Supply %q needs %s at full output and %s with speech; what is fitted is not stated.", b.Part.Name, b.full.Capacity.Value, b.speech.Capacity.Value)
	}
	if !b.Part.Capacity.Set() {
		write := "80 Ah"
		if len(lacks) == 0 {
			write = batterySize(b.full.Capacity.Value).String()
		}
		lacks = append(slices.Clone(lacks), analysis.Missing{What: "capacity of the battery", Part: fmt.Sprintf("supply %q", b.Part.Name), Where: b.Part.Header, Write: fmt.Sprintf("capacity = %q", write)})
	}
	r.Open(message, lacks...).Caution(batteryCaution)
}

// mismatched answers when units ask for another voltage than the battery has:
// ampere hours say nothing then.
func mismatched(r *check.Report, p *analysis.Supply) bool {
	const within = 0.2
	volts := p.Part.Battery
	var names []string
	var wanted []schema.Value[quantity.Voltage]
	if !volts.Set() {
		return false
	}
	for _, u := range p.Units {
		if u.BatteryVolts.Set() && math.Abs(float64(u.BatteryVolts.V-volts.V)) > within*float64(max(volts.V, u.BatteryVolts.V)) {
			names = append(names, fmt.Sprintf("%q for %s", u.Name, u.BatteryVolts.V))
			wanted = append(wanted, u.BatteryVolts)
		}
	}
	if len(names) == 0 {
		return false
	}
	a := r.Fail(check.Error, fmt.Sprintf("Supply %q has a battery of %s, and of the units it feeds %s %s.", p.Part.Name, volts.V, verb(len(names), "one asks for another voltage:", "some ask for another voltage:"), listed(names))).
		Key("voltage").At(volts.Span).Caution(batteryCaution).
		Evidence(check.Plainly("battery", volts.V))
	alike := len(wanted) == len(p.Units)
	for _, v := range wanted {
		a.See(readable(v.Span), "what the unit asks for")
		alike = alike && v.V == wanted[0].V
	}
	if alike {
		a.Remedy(check.Proved, fmt.Sprintf("Fit a battery of %s.", wanted[0].V), check.Write(&p.Part.Part, volts.Span, "battery", `"`+wanted[0].V.String()+`"`))
	} else {
		a.Remedy(check.Advice, "Feed these units from a battery of their own voltage.")
	}
	return true
}

// remedies name the battery that would do, and what saves most.
func (b *battery) remedies(a *check.Answer) {
	need := b.full.Capacity.Value
	size := batterySize(need)
	a.Remedy(check.Proved, fmt.Sprintf("Fit %s or more; the design asks for at least %s.", size, need), check.Write(&b.Part.Part, b.Part.Capacity.Span, "capacity", `"`+size.String()+`"`))
	if hours := float64(b.Part.Standby.V) / 3600; hours >= 1 {
		a.Remedy(check.Computed, fmt.Sprintf("Let units sleep while nothing is announced: every 0.1 A less in waiting saves %s.", quantity.Charge(0.1*b.ageing*hours)))
	}
	a.Remedy(check.Advice, "Measure the current with the announcement that will be given, and write that as battery_full.")
}

// batterySize rounds a capacity up to a size batteries are sold in, or strings of
// them: usual sizes, no published source.
func batterySize(need quantity.Charge) quantity.Charge {
	for _, size := range []quantity.Charge{1.2, 2.1, 3.2, 4, 5, 7, 9, 12, 17, 24, 38, 45, 65, 80, 100, 120, 150, 200, 250, 300, 400, 500} {
		if quantity.AtLeast(size, need) {
			return size
		}
	}
	return quantity.Charge(math.Ceil(float64(need)/100-1e-9) * 100)
}
