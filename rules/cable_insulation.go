package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// CableInsulation asks whether the cable of a line is insulated for its voltage.
var CableInsulation = &check.Check{
	ID:      "cable-insulation",
	Asks:    "Is the cable of each line insulated for the voltage of the line?",
	Summary: "A line carries more volts than the insulation of its cable is rated for.",
	Why: "A 100 V line carries what its name says at full output, which is more than bell wire, data and microphone cable are made for. " +
		"Where the insulation gives way, people can touch the line, and the amplifier drives into a fault to earth or into the core beside it.",
	How: "Compares the voltage the insulation of each cable of a line is rated for with the voltage of the line at rated power, both r.m.s.; as high as that passes. " +
		"A cable of its own for the override of attenuators carries the line's voltage too where they have a third conductor, and what relays are fed with where they have relays. " +
		"Where the insulation of cable on constant-voltage lines is not stated, the job has one open answer.",
	Basis: "data sheet of the cable; extra-low voltage ends at 50 V a.c. (IEC 61140), and above it cable is insulated for the voltage",
	Blind: "What shares the cable's containment can ask for more: that is route-separation. Peaks of music, the voltage an amplifier gives with no load, and old or damaged insulation are not looked at. " +
		"Of low-impedance lines only cable that states its insulation is judged.",
	Severity: check.Error,
	Cautions: []string{"Where local rules ask for a test of the insulation resistance, make it with amplifiers and loudspeakers off the line."},
	Failing: check.Example{
		Shows: "Bell wire for 60 V on a 100 V line.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
cable_model "own/bell wire" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "60 V"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/bell wire"
  loudspeaker "H" { tap = "6 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "Cable for 300 V on the same line.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
cable_model "own/2 x 1.5 mm2" {
  size       = "1.5 mm2"
  cores      = 2
  insulation = "300 V"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/2 x 1.5 mm2"
  loudspeaker "H" { tap = "6 W" }
}
`,
	},
	Judge: check.Together(check.EachLine(cableInsulation), check.EachLine(overrideInsulation), check.EachJob(insulationUnstated)),
}

func cableInsulation(r *check.Report, l *analysis.Line) {
	cables, _ := l.Cables()
	var stated []analysis.NamedCable
	for _, n := range distinct(cables) {
		if m := n.Cable.Model; m != nil && m.Insulation.Set() {
			stated = append(stated, n)
		}
	}
	if len(stated) == 0 {
		r.NotAsked() // the job is asked, once
		return
	}
	if l.Output == nil || !l.Output.Volts.Known() {
		r.Open(fmt.Sprintf("Whether the cable of line %q is insulated for its voltage cannot be told.", l.Part.Name), l.VoltsMissing()...)
		return
	}
	lowest, fails := stated[0], false
	for _, n := range stated {
		if n.Cable.Model.Insulation.V < lowest.Cable.Model.Insulation.V {
			lowest = n
		}
		if !quantity.AtMost(l.Output.Volts.Value, n.Cable.Model.Insulation.V) {
			fails = true
			insulationFails(r, l, n)
		}
	}
	if !fails {
		insulationFigures(r.Pass(insulationText(l, lowest)), l, lowest)
	}
}

// overrideInsulation judges a cable that carries the override of a line alone.
func overrideInsulation(r *check.Report, l *analysis.Line) {
	n, carries, ok := l.Override()
	switch {
	case !ok || carries == analysis.OverrideUnsaid || n.Cable.Model == nil || !n.Cable.Model.Insulation.Set():
		r.NotAsked() // where it matters, the job is asked, once
	case carries == analysis.OverrideRelays:
		volts, feed := relayVolts(r.System(), l)
		rated := n.Cable.Model.Insulation
		text := fmt.Sprintf("The relays of line %q are fed with %s, and the insulation of %s is rated %s.", l.Part.Name, volts, cableOf(n), rated.V)
		var a *check.Answer
		if quantity.AtMost(volts, rated.V) {
			a = r.Pass(text).Caution("Where conductors for relays share containment or a box with the line, they are insulated for the line's voltage or kept apart from it.")
		} else {
			a = r.Fail(check.Error, text)
			a.Remedy(check.Computed, fmt.Sprintf("Lay cable whose insulation is rated %s or more for the override; 300 V is common.", volts))
		}
		a.Evidence(check.Plainly("volts for relays", volts, feed...), check.Plainly("insulation", rated.V, schema.Place{Span: readable(rated.Span), Note: "insulation " + rated.Text})).
			Bound(check.Bound{Text: fmt.Sprintf("at most %s on its conductors", rated.V), Number: float64(rated.V), Unit: "V", AtMost: true, Basis: "data sheet of " + n.Cable.Model.Name})
		aboutCable(l, n, a)
	case l.Output == nil || !l.Output.Volts.Known():
		r.Open(fmt.Sprintf("Whether the override cable of line %q is insulated for its voltage cannot be told.", l.Part.Name), l.VoltsMissing()...).Key(overrideKey)
	case !quantity.AtMost(l.Output.Volts.Value, n.Cable.Model.Insulation.V):
		insulationFails(r, l, n)
	default:
		insulationFigures(r.Pass(insulationText(l, n)), l, n)
	}
}

// relayVolts is what the override relays of a line are fed with, as far as stated;
// else what relays are made for.
func relayVolts(s *analysis.System, l *analysis.Line) (quantity.Voltage, []schema.Place) {
	feed, lacks := s.RelayFeed(l)
	if len(lacks) > 0 {
		return analysis.RelayVolts, nil
	}
	return feed.Rail.V.Voltage, []schema.Place{{Span: readable(feed.Rail.Span), Note: feed.Rail.Text + " for relays"}}
}

func insulationText(l *analysis.Line, n analysis.NamedCable) string {
	return fmt.Sprintf("Line %q carries %s, and the insulation of %s is rated %s.", l.Part.Name, l.Output.Volts.Value, cableOf(n), n.Cable.Model.Insulation.V)
}

// insulationFigures shows what was compared.
func insulationFigures(a *check.Answer, l *analysis.Line, n analysis.NamedCable) {
	rated := n.Cable.Model.Insulation
	a.Evidence(check.Of("line voltage", l.Output.Volts), check.Plainly("insulation", rated.V, schema.Place{Span: readable(rated.Span), Note: "insulation " + rated.Text})).
		Bound(check.Bound{Text: fmt.Sprintf("at most %s on the line", rated.V), Number: float64(rated.V), Unit: "V", AtMost: true, Basis: "data sheet of " + n.Cable.Model.Name})
	aboutCable(l, n, a)
}

func insulationFails(r *check.Report, l *analysis.Line, n analysis.NamedCable) {
	volts := l.Output.Volts.Value
	a := r.Fail(check.Error, insulationText(l, n))
	insulationFigures(a, l, n)
	a.See(readable(n.Cable.Model.Insulation.Span), "the insulation").See(readable(l.Output.Part.Volts.Span), "the line voltage")
	instead := r.System().CableInstead(n.Cable, func(m *schema.CableModel) bool {
		return m.Insulation.Set() && quantity.AtLeast(m.Insulation.V, volts)
	})
	if instead != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Lay %q of the catalogue, which is insulated for %s.", instead.Name, instead.Insulation.V), layInstead(l, n, instead.Name)...)
		return
	}
	a.Remedy(check.Computed, fmt.Sprintf("Lay cable whose insulation is rated %s or more; 300 V is common.", volts))
}

// insulationUnstated asks once for the job where cable on constant-voltage lines
// does not say its insulation.
func insulationUnstated(r *check.Report, s *analysis.System) {
	var missing []analysis.Missing
	seen := map[*schema.Cable]bool{}
	for _, l := range s.Lines {
		if l.Output == nil || l.Output.Kind == analysis.LowImpedance {
			continue
		}
		cables, lacking := l.Cables()
		missing = analysis.MergeMissing(missing, lacking)
		if n, carries, ok := l.Override(); ok && carries == analysis.OverrideLine {
			cables = append(cables, n)
		}
		for _, n := range cables {
			if m := n.Cable.Model; (m == nil || !m.Insulation.Set()) && !seen[n.Cable] {
				seen[n.Cable] = true
				missing = append(missing, n.Missing("insulation voltage of the cable", `insulation = "300 V"`))
			}
		}
	}
	if len(missing) == 0 {
		r.NotAsked() // every line has an answer of its own
		return
	}
	r.Open("Not all cable says which voltage its insulation is rated for.", missing...).Key("insulation not stated")
}
