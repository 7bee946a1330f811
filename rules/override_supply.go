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
	"loudlint/schema/wording"
)

// OverrideSupply asks whether override relays get their current.
var OverrideSupply = &check.Check{
	ID:      "override-supply",
	Asks:    "Do the override relays of the attenuators get the current and the volts they need, and do they fail to the safe side?",
	Summary: "Override relays do not get what they need, or fail so that announcements stay turned down.",
	Why: "A relay that does not pull in leaves its attenuator where the guest has put it. The relays of a whole building add up to amperes, all at once, through thin conductors, " +
		"and nobody hears that the last floor is missing until the day it counts.",
	How: "Solves the conductors of the override along the legs of the line, with every relay a resistance of 24 V over its current and all of them acting at once, and compares the volts at the last relay with 24 V. " +
		"Adds up the relays of all lines that a supply or a unit feeds and compares them with what it has. Relays on one line have to act alike. " +
		"With emergency duty a relay has to be released to override: one that is energised does nothing when its supply fails or a conductor is cut.",
	Basis: "IEC 61810-1, operative range of relay coils: class 1 works from 80 %, class 2 from 85 % to 110 % of the rated coil voltage (from memory)",
	Blind: "All relays are counted at once, as in a call to every line. The supply counts with the volts that are stated: a lead-acid battery ends about 12 % lower. " +
		"What else hangs on the same terminals is not known. The current of relays that are held in counts in standby-battery. Contacts, fuses and diodes on the way are not counted.",
	Params: []check.Param{
		{Name: "error_share", Doc: "share of 24 V at the last relay below which it is an error", Unit: check.Percent, Default: 80, Low: 40, High: 100},
		{Name: "warning_share", Doc: "share of 24 V at the last relay below which a warning is given", Unit: check.Percent, Default: 85, Low: 40, High: 100},
		{Name: "highest_share", Doc: "share of 24 V that the supply may have at most", Unit: check.Percent, Default: 110, Low: 100, High: 200},
	},
	Severity: check.Error,
	Cautions: []string{"Measure the volts at the last relay with all relays of the line acting, not at the rack."},
	Failing: check.Example{
		Shows: "Forty relays of 25 mA at the end of 200 m: 17 V arrive.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 2 A"
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 0.75 mm2"
  home_run      = "130 m"
  override_from = "Rack"
  attenuator "Room" {
    quantity = 40
    spacing  = "2 m"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "Bed" {
      tap = "1 W"
      leg = "3 m"
    }
  }
}
`,
	},
	Passing: check.Example{
		Shows: "The same over a cable of its own, thick enough.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 2 A"
}
line "Floor" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "2 x 0.75 mm2"
  home_run       = "130 m"
  override_from  = "Rack"
  override_cable = "2 x 2.5 mm2"
  attenuator "Room" {
    quantity = 40
    spacing  = "2 m"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "Bed" {
      tap = "1 W"
      leg = "3 m"
    }
  }
}
`,
	},
	Judge: check.Together(check.EachLine(relaysOfLine), check.EachSupply(relaysOfSupply), check.EachUnit(relaysOfUnit)),
}

func relaysOfLine(r *check.Report, l *analysis.Line) {
	relays := r.System().Relays(l)
	if relays.Count == 0 {
		r.NotAsked()
		return
	}
	relayPolarity(r, l, &relays)
	if !relays.Volts.Known() {
		r.Open(fmt.Sprintf("How many volts arrive at the override relays of line %q cannot be told.", l.Part.Name), relays.Volts.Missing...).Key("volts")
		return
	}
	if highest := r.Limit("highest_share"); !quantity.AtMost(relays.Feed.Rail.V.Voltage, shareOfRelay(highest)) {
		r.NotAsked() // what feeds them is at fault, and is told so
		return
	}
	if relays.Volts.Value <= 0 { // relays that take nothing
		r.Pass(fmt.Sprintf("The override relays of line %q take no current.", l.Part.Name))
		return
	}
	grave, warning := r.Limit("error_share"), r.Limit("warning_share")
	share := 100 * float64(relays.Volts.Value/analysis.RelayVolts)
	limit, severity := warning, check.Severity(0)
	switch {
	case !quantity.AtLeast(share, grave.Value):
		limit, severity = grave, check.Error
	case !quantity.AtLeast(share, warning.Value):
		severity = check.Warning
	}
	where := "The override relay"
	if relays.Count > 1 {
		where = fmt.Sprintf("Of the %d override relays of line %q the one", relays.Count, l.Part.Name)
	}
	message := fmt.Sprintf("%s at %s gets %s of the %s it is made for (%s %%).", where, relays.At, relays.Volts.Value, analysis.RelayVolts, percentBeside(share, limit.Value))
	var answer *check.Answer
	if severity == 0 {
		answer = r.Pass(message)
	} else {
		answer = r.Fail(severity, message)
	}
	least := shareOfRelay(limit)
	answer.Key("volts").Evidence(check.Of("volts at "+relays.At, relays.Volts), check.Of("current they draw together", relays.Drawn), check.Of(fmt.Sprintf("current with %s at each", analysis.RelayVolts), relays.Current)).
		AtLeast(fmt.Sprintf("at least %s of %s, which is %s", limit, analysis.RelayVolts, least), limit.Value, "%", limit).
		At(relayCableAt(l)).Assumed(relays.Volts.Assumed...)
	if severity == 0 {
		return
	}
	answer.See(readable(relays.Feed.Rail.Span), "what feeds them")
	seeLoads(answer, relays.Current.From)
	wanted := analysis.RelayVolts * quantity.Voltage(max(warning.Value, grave.Value)/100)
	cable, volts, ok := l.SmallestOverride(relays, wanted)
	switch {
	case ok:
		answer.Remedy(check.Proved, fmt.Sprintf("Carry the override in a cable of its own, %s or thicker: %s then arrive.", cable, volts),
			check.Write(&l.Part.Part, l.Part.OverrideCable.Span, "override_cable", quoted(cable)))
	case !quantity.AtLeast(relays.Feed.Rail.V.Voltage, wanted):
		answer.Remedy(check.Advice, fmt.Sprintf("Feed the relays from a supply of %s; %s has %s.", analysis.RelayVolts, relays.Feed.Name(), relays.Feed.Rail.V.Voltage))
	}
	answer.Remedy(check.Advice, "Feed the relays of the far end from a supply of their own there, switched from the rack.")
}

// shareOfRelay is a share of the volts that a relay is made for.
func shareOfRelay(share check.Limit) quantity.Voltage {
	return analysis.RelayVolts * quantity.Voltage(share.Value/100)
}

// relayCableAt is where the cable that carries the relays' current is named.
func relayCableAt(l *analysis.Line) source.Span {
	if l.Part.OverrideCable.Set() {
		return inside(&l.Part.Part, l.Part.OverrideCable.Span)
	}
	return inside(&l.Part.Part, l.Part.Cable.Span)
}

// relayPolarity judges whether the relays of a line act alike, and with emergency
// duty whether they fail to the safe side.
func relayPolarity(r *check.Report, l *analysis.Line, relays *analysis.Relays) {
	if len(relays.Energised) > 0 && len(relays.Released) > 0 {
		answer := r.Fail(check.Error, fmt.Sprintf("On line %q the relays of %s are energised to override and those of %s are released: one switched pair cannot lift both.", l.Part.Name, blockNames(relays.Energised), blockNames(relays.Released))).
			Key("act alike").At(attenuatorAt(relays.Released[0], relays.Released[0].Part.Relay.Span))
		for _, a := range append(relays.Energised, relays.Released...) {
			answer.See(readable(a.Part.Relay.Span), a.Part.Name)
		}
		answer.Remedy(check.Advice, "Connect all relays of a line for the same action: most have a contact for each.")
	}
	if !r.System().Design.System.Emergency() {
		return
	}
	if n := len(relays.Energised); n > 0 {
		answer := r.Fail(check.Warning, fmt.Sprintf("The override relays of %s on line %q are energised to override: when their supply fails or a conductor is cut, an emergency announcement stays turned down.", blockNames(relays.Energised), l.Part.Name)).
			Key("fails to the safe side").At(attenuatorAt(relays.Energised[0], relays.Energised[0].Part.Relay.Span)).
			Bound(check.Bound{Text: "released to override", Basis: "common practice for emergency announcements, no published source"})
		var edits []check.Edit
		for _, a := range relays.Energised {
			edits = append(edits, setAttenuator(a, a.Part.Relay.Span, "relay", quoted(schema.RelayReleased)))
			answer.See(readable(a.Part.Relay.Span), a.Part.Name)
		}
		answer.Remedy(check.Computed, fmt.Sprintf("Hold the relays in and release them to override; the supply then gives %s all the time, from the battery too.", relays.Current.Value), edits...)
	}
	if len(relays.Unsaid) > 0 {
		var missing []analysis.Missing
		for _, a := range relays.Unsaid {
			missing = analysis.MergeMissing(missing, []analysis.Missing{a.Missing("what the override relay does for an announcement", "relay = "+quoted(schema.RelayReleased))})
		}
		r.Open(fmt.Sprintf("Whether the override relays of line %q fail to the safe side cannot be told.", l.Part.Name), missing...).Key("fails to the safe side")
	}
}

func relaysOfSupply(r *check.Report, p *analysis.Supply) {
	relaysOfFeed(r, &p.Part.Part, "supply "+quoted(p.Part.Name), p.Part.Relays)
}

func relaysOfUnit(r *check.Report, u *analysis.Unit) {
	relaysOfFeed(r, &u.Part.Part, u.Named(), u.Part.Relays)
}

// relaysOfFeed judges what feeds relays: whether it has the volts and the current
// for all of them.
func relaysOfFeed(r *check.Report, part *schema.Part, name string, rail schema.Value[quantity.Rail]) {
	if !rail.Set() {
		r.NotAsked()
		return
	}
	count, current, lines := r.System().RelaysFrom(part)
	if count == 0 {
		r.NotAsked()
		return
	}
	highest := r.Limit("highest_share")
	most := shareOfRelay(highest)
	at := inside(part, rail.Span)
	if !quantity.AtMost(rail.V.Voltage, most) {
		r.Fail(check.Error, fmt.Sprintf("%s gives %s to override relays made for %s.", wording.Capital(name), rail.V.Voltage, analysis.RelayVolts)).
			Key("volts").At(at).Evidence(check.Plainly("volts for relays", rail.V.Voltage)).
			AtMost(fmt.Sprintf("at most %s of %s, which is %s", highest, analysis.RelayVolts, most), highest.Value, "%", highest).
			Remedy(check.Advice, fmt.Sprintf("Feed the relays from %s.", analysis.RelayVolts))
	}
	if !current.Known() {
		r.Open(fmt.Sprintf("Whether %s has the current for its %s cannot be told.", name, wording.Counted(count, "override relay")), current.Missing...).Key("current").At(at)
		return
	}
	over := !quantity.AtMost(current.Value, rail.V.Current)
	message := fmt.Sprintf("%s has %s for override relays, and the %d it feeds on %s %s %s.", wording.Capital(name), rail.V.Current, count, wording.Counted(len(lines), "line"), verb(count, "takes", "take"), current.Value)
	var answer *check.Answer
	if over {
		answer = r.Fail(check.Error, message)
	} else {
		answer = r.Pass(message)
	}
	answer.Key("current").At(at).Evidence(check.Of("current of the relays", current), check.Plainly("current it has for relays", rail.V.Current)).
		Bound(check.Bound{Text: fmt.Sprintf("at most %s, what it has for relays", rail.V.Current), Number: float64(rail.V.Current), Unit: "A", AtMost: true, Basis: "what is stated of it (relays)"})
	if !over {
		return
	}
	seeLoads(answer, current.From)
	next := quantity.Rail{Voltage: rail.V.Voltage, Current: quantity.Current(math.Ceil(2*float64(current.Value)) / 2)}
	answer.Remedy(check.Proved, fmt.Sprintf("Give them a supply of %s or more.", next), check.Write(part, rail.Span, "relays", strconv.Quote(next.Exact())))
	answer.Remedy(check.Computed, "Divide the lines among several supplies, or let fewer relays act at once.")
}
