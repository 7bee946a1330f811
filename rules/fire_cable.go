package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// FireCable asks whether the lines of an emergency system go on working in a fire.
var FireCable = &check.Check{
	ID:      "fire-cable",
	Asks:    "Does the cable of each line of an emergency system go on working in a fire for long enough?",
	Summary: "A line of an emergency system is laid in cable that a fire may cut off too soon.",
	Why: "An announcement that tells people to leave has to reach them while it burns elsewhere in the building. Plain cable shorts within minutes in a fire, " +
		"and takes with it every loudspeaker of its line, in rooms that are not burning too.",
	How: "Only where the duty of the system includes emergencies. Compares how long each cable of a line is stated to work in a fire with the time wanted. " +
		"A cable of its own for the override of attenuators has to work as long, unless all its relays are released for an announcement: cut, it lifts them.",
	Basis: "30 min: the standard grade of fire-resistant cable in BS 5839 (EN 50200 class PH 30), from memory; its enhanced grade is 120 min, and other codes ask for other times",
	Blind: "Fixings, joints, boxes and loudspeakers have to last as long and are not looked at. Where local rules accept another protection (a route outside the fire area, enclosure, lines interleaved), agree it and state it as a deviation.",
	Params: []check.Param{
		{Name: "least_time", Doc: "how long the cable has to work in a fire", Unit: check.Minute, Default: 30, Low: 1, High: 240},
	},
	Severity: check.Error,
	Cautions: []string{localRules},
	Failing: check.Example{
		Shows: "An emergency line in cable for which no fire resistance is stated.",
		Design: `system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/2 x 1.5 mm2" {
  size       = "1.5 mm2"
  cores      = 2
  insulation = "500 V"
}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/2 x 1.5 mm2"
  loudspeaker "A" { tap = "6 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same line in cable that works for 30 min in a fire.",
		Design: `system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/2 x 1.5 mm2 fire" {
  size           = "1.5 mm2"
  cores          = 2
  insulation     = "500 V"
  fire_resistant = "30 min"
}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/2 x 1.5 mm2 fire"
  loudspeaker "A" { tap = "6 W" }
}
`,
	},
	Judge: check.Together(check.EachJob(emergencyStated), check.EachLine(fireCable), check.EachLine(fireOverride)),
}

// emergencyStated asks once whether the question arises.
func emergencyStated(r *check.Report, s *analysis.System) {
	if s.Design.System.Duty.Set() || len(wired(s)) == 0 {
		r.NotAsked()
		return
	}
	r.Open("Whether the system serves emergencies is not stated.", dutyMissing(s)).Key("duty")
}

func fireCable(r *check.Report, l *analysis.Line) {
	if !r.System().Design.System.Emergency() || len(l.Part.Devices) == 0 {
		r.NotAsked()
		return
	}
	cables, missing := l.Cables()
	fireAnswers(r, l, distinct(cables), missing, "cable")
}

// fireOverride judges a cable that carries the override of a line alone. Without
// the announcement's override the attenuators stay as they are.
func fireOverride(r *check.Report, l *analysis.Line) {
	n, carries, ok := l.Override()
	switch {
	case !ok || carries == analysis.OverrideUnsaid || !r.System().Design.System.Emergency() || len(l.Part.Devices) == 0:
		r.NotAsked()
	case l.OverrideReleases():
		aboutCable(l, n, r.Pass(fmt.Sprintf("The override cable of emergency line %q need not last: where it is cut, its relays release and lift their attenuators.", l.Part.Name)))
	default:
		fireAnswers(r, l, []analysis.NamedCable{n}, nil, "override cable")
	}
}

// fireAnswers judges cables of a line.
func fireAnswers(r *check.Report, l *analysis.Line, cables []analysis.NamedCable, missing []analysis.Missing, which string) {
	limit := r.Limit("least_time")
	wanted := quantity.Duration(limit.Value * 60)
	fails := false
	for _, n := range cables {
		switch m := n.Cable.Model; {
		case m == nil:
			missing = analysis.MergeMissing(missing, []analysis.Missing{n.Missing("fire resistance of the cable", fmt.Sprintf("fire_resistant = %q", wanted))})
		case !m.FireResistant.Set():
			fails = true
			a := r.Fail(check.Warning, fmt.Sprintf("The data of %s on emergency line %q state no fire resistance; %s are wanted.", cableOf(n), l.Part.Name, wanted))
			fireRemedies(r, a, l, n, wanted, limit)
		case !quantity.AtLeast(m.FireResistant.V, wanted):
			fails = true
			lasts := m.FireResistant
			a := r.Fail(check.Error, fmt.Sprintf("On emergency line %q, %s works for %s in a fire; %s are wanted.", l.Part.Name, cableOf(n), lasts.V, wanted)).
				Evidence(check.Plainly("works in a fire for", lasts.V, schema.Place{Span: readable(lasts.Span), Note: "fire resistance " + lasts.Text}))
			a.See(readable(lasts.Span), "its fire resistance")
			fireRemedies(r, a, l, n, wanted, limit)
		}
	}
	var a *check.Answer
	switch {
	case fails:
		return
	case len(missing) > 0:
		a = r.Open(fmt.Sprintf("Whether the %s of emergency line %q goes on working in a fire cannot be told.", which, l.Part.Name), missing...)
	default:
		a = r.Pass(fmt.Sprintf("The %s of emergency line %q works in a fire for %s or longer.", which, l.Part.Name, wanted)).
			AtLeast("at least "+wanted.String(), limit.Value, "min", limit)
	}
	if which != "cable" {
		a.Key(overrideKey)
	}
}

func fireRemedies(r *check.Report, a *check.Answer, l *analysis.Line, n analysis.NamedCable, wanted quantity.Duration, limit check.Limit) {
	aboutCable(l, n, a)
	a.AtLeast("at least "+wanted.String(), limit.Value, "min", limit).
		See(r.System().Design.System.Duty.Span, "the duty")
	instead := r.System().CableInstead(n.Cable, func(m *schema.CableModel) bool {
		return m.FireResistant.Set() && quantity.AtLeast(m.FireResistant.V, wanted)
	})
	if instead != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Lay %q of the catalogue, which works for %s in a fire.", instead.Name, instead.FireResistant.V), layInstead(l, n, instead.Name)...)
		return
	}
	a.Remedy(check.Advice, fmt.Sprintf("Lay cable that is stated to work for %s or longer in a fire, with fixings that hold as long, and write fire_resistant in its cable_model.", wanted))
}
