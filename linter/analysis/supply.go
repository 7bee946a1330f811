package analysis

import (
	"fmt"
	"slices"
	"strconv"

	"loudlint/linter/supply"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Supply is mains or standby power with what it feeds.
type Supply struct {
	Part *schema.Supply
	// Units are the amplifiers and mixers it feeds, each once.
	Units []*schema.Unit
	// Relays is what override relays take from it.
	Relays RelayCurrents
	// Mains is what its units take from the mains.
	Mains Draw

	battery []drawn // what each unit takes from the battery, in A
}

// RelayCurrents is what the override relays of attenuators take from a supply.
type RelayCurrents struct {
	Count int
	// Waiting is taken while nothing is announced, Announcing meanwhile.
	Waiting, Announcing Figure[quantity.Current]
}

// Draw is power taken from the mains.
type Draw struct {
	// Idle is with no signal, NormalUse at one eighth of rated output, Full at
	// rated output.
	Idle, NormalUse, Full Figure[quantity.Power]
}

// Heat is what amplifiers and mixers leave in the room they stand in.
type Heat struct {
	// Idle is with no signal, NormalUse at one eighth of rated output: the sum
	// over those units of which the design says enough.
	Idle, NormalUse Figure[quantity.Power]
	// Units counts these units.
	Units int
	// Unknown lists what the design does not say of the others.
	Unknown []Missing
}

// Standby is the battery that a supply needs.
type Standby struct {
	// Waiting and Announcing are the currents the battery gives, override relays
	// included.
	Waiting, Announcing Figure[quantity.Current]
	Capacity            Figure[quantity.Charge]
	// Bare is the charge that is drawn, without any factor.
	Bare quantity.Charge
}

// drawn is what one unit takes, in amperes or in watts.
type drawn struct {
	unit       *schema.Unit
	idle, full drawnFigure
	law        supply.Law
	load       float64 // what hangs on it, as a share of its rated output
	assumed    []string
}

type drawnFigure struct {
	value float64
	at    source.Span
	lacks []Missing
}

// analyseSupply works out what each supply has to carry, and the heat.
func (s *System) analyseSupply() {
	forRelays := 0
	for _, part := range s.Design.Supplies {
		if part.Relays.Set() {
			forRelays++
		}
	}
	amplifiers := make(map[*schema.Unit]*Amplifier, len(s.Amplifiers))
	for _, a := range s.Amplifiers {
		amplifiers[a.Part] = a
	}
	for _, part := range s.Design.Supplies {
		p := &Supply{Part: part}
		var mains []drawn
		for _, name := range part.Feeds.Items {
			if u := s.Design.Unit(name.V); u != nil && !slices.Contains(p.Units, u) {
				p.Units = append(p.Units, u)
				p.battery = append(p.battery, fromBattery(u, amplifiers[u], part.Battery))
				mains = append(mains, fromMains(u))
			}
		}
		p.Relays = s.relayCurrents(p, part.Relays.Set() && forRelays == 1)
		p.Mains = Draw{
			Idle:      drawnAt[quantity.Power](mains, 0).figure(p.feedsMissing()),
			NormalUse: drawnAt[quantity.Power](mains, supply.NormalUse).figure(p.feedsMissing()),
			Full:      drawnAt[quantity.Power](mains, 1).figure(p.feedsMissing()),
		}
		s.Supplies = append(s.Supplies, p)
	}
	s.Heat = heatOf(s.Design.Units)
}

// Standby gives the battery a supply needs that waits and then announces as long
// as it says, with every amplifier at a share (0 to 1) of the power that the
// loudspeakers on it take at full output. For ageing and derating see
// supply.Battery.
func (p *Supply) Standby(share, ageing, derating float64) Standby {
	var s Standby
	s.Waiting = p.current(0, &p.Relays.Waiting)
	s.Announcing = p.current(share, &p.Relays.Announcing)
	part := p.Part
	f := &s.Capacity
	f.Missing = MergeMissing(s.Waiting.Missing, s.Announcing.Missing)
	f.Assumed = mergeTexts(s.Waiting.Assumed, s.Announcing.Assumed)
	if !part.Standby.Set() {
		f.Missing = append(f.Missing, missing("time the supply is to wait without mains", "supply", &part.Part, `standby = "24 h"`))
	}
	if !part.Announcement.Set() {
		f.Missing = append(f.Missing, missing("time the supply is to announce after waiting", "supply", &part.Part, `announcement = "30 min"`))
	}
	if !f.Known() {
		return s
	}
	const hour = 3600
	b := supply.Battery{
		StandbyHours: float64(part.Standby.V) / hour, StandbyAmps: float64(s.Waiting.Value),
		AnnouncementHours: float64(part.Announcement.V) / hour, AnnouncementAmps: float64(s.Announcing.Value),
		Derating: derating, Ageing: ageing,
	}
	c := b.Capacity()
	f.Value, s.Bare = quantity.Charge(c.AmpHours), quantity.Charge(b.Bare())
	for _, v := range []schema.Value[quantity.Duration]{part.Standby, part.Announcement} {
		f.From = append(f.From, schema.Place{Span: v.Span, Note: v.Text})
	}
	faster := ""
	if c.Derating > 1 {
		faster = quantity.Significant(c.Derating, 4) + " × "
	}
	f.Sum = fmt.Sprintf("%s × (%s × %s + %s%s × %s) = %s", quantity.Significant(ageing, 4), part.Standby.V, s.Waiting.Value, faster, part.Announcement.V, s.Announcing.Value, f.Value)
	if c.AtRate {
		f.Sum = fmt.Sprintf("20 h × %s = %s", s.Announcing.Value, f.Value)
	}
	return s
}

// current is what the battery gives at a share of full output.
func (p *Supply) current(share float64, relays *Figure[quantity.Current]) Figure[quantity.Current] {
	sum := drawnAt[quantity.Current](p.battery, share)
	if p.Relays.Count > 0 {
		sum.missing = MergeMissing(sum.missing, relays.Missing)
		sum.assumed = mergeTexts(sum.assumed, relays.Assumed)
		if relays.Value > 0 {
			sum.add(1, relays.Value, " for relays", relays.From...)
		}
	}
	return sum.figure(p.feedsMissing())
}

// feedsMissing: a supply that feeds nothing has nothing to carry as far as the
// design says.
func (p *Supply) feedsMissing() []Missing {
	if len(p.Units) > 0 {
		return nil
	}
	return []Missing{missing("units that the supply feeds", "supply", &p.Part.Part, `feeds = ["…"]`)}
}

// fromBattery is what a unit takes from a standby supply. An amplifier gives no
// more than the loudspeakers on it take.
func fromBattery(u *schema.Unit, amplifier *Amplifier, battery schema.Value[quantity.Voltage]) drawn {
	d := drawn{
		unit: u, load: amplifier.loadShare(),
		idle: drawnOf(u, u.BatteryIdle, "standby supply current with no signal", `battery_idle = "0.9 A"`),
		full: drawnOf(u, u.BatteryFull, "standby supply current at rated output", `battery_full = "28 A"`),
	}
	d.mixer()
	if d.load < 1 {
		d.assumed = append(d.assumed, "an amplifier at full output gives what the loudspeakers on it take, and draws the less")
	}
	volts := u.BatteryVolts
	if !volts.Set() {
		volts = battery
	}
	if rated := ratedOutput(u); rated > 0 && volts.Set() {
		d.law = supply.LawOf(rated, d.idle.value*float64(volts.V), d.full.value*float64(volts.V))
	}
	return d
}

// fromMains is what a unit takes from the mains. Circuits and ventilation have to
// do for the rating, whatever hangs on it today.
func fromMains(u *schema.Unit) drawn {
	const what, write = "power taken from the mains at rated output", `mains_full = "430 W"`
	d := drawn{
		unit: u, load: 1,
		idle: drawnOf(u, u.MainsIdle, "power taken from the mains with no signal", `mains_idle = "25 W"`),
		full: drawnOf(u, u.MainsFull, what, write),
	}
	d.mixer()
	if rated := ratedOutput(u); rated > 0 && u.MainsFull.Set() {
		if d.full.value < rated { // such a figure is mostly that of normal use
			d.full.lacks = []Missing{missing(what+" (what is stated is less than the output itself)", u.Kind, &u.Part, write)}
		}
		d.law = supply.LawOf(rated, d.idle.value, d.full.value)
	}
	return d
}

func drawnOf[Q ~float64](u *schema.Unit, v schema.Value[Q], what, write string) drawnFigure {
	f := drawnFigure{value: float64(v.V), at: v.Span}
	if !v.Set() {
		f.lacks = []Missing{missing(what, u.Kind, &u.Part, write)}
	}
	return f
}

// mixer lets one figure of a mixer stand for both: it has no power stage, so that
// what it takes hardly depends on the signal.
func (d *drawn) mixer() {
	if d.unit.Kind != schema.KindMixer {
		return
	}
	idle, full := d.idle.lacks == nil, d.full.lacks == nil
	switch {
	case idle && full:
		return
	case idle:
		d.full = d.idle
	case full:
		d.idle = d.full
	default:
		d.full.lacks = d.idle.lacks // one question is enough
		return
	}
	d.assumed = []string{"a mixer that states one figure takes the same with and without a signal"}
}

// loadShare is what the loudspeakers on an amplifier take, as a share of its rated
// output; 1 where that is not known, where they take more, and for no amplifier.
func (a *Amplifier) loadShare() float64 {
	if a == nil || len(a.Lines) == 0 {
		return 1
	}
	rated, load := 0.0, 0.0
	for _, c := range a.Channels {
		if !c.Rated.Known() {
			return 1
		}
		rated += float64(c.Rated.Value)
	}
	for _, l := range a.Lines {
		if !l.Load.Known() {
			return 1
		}
		load += float64(l.Load.Value)
	}
	if rated <= 0 {
		return 1
	}
	return min(1, load/rated)
}

// ratedOutput is the rated power of all channels of a unit in W, 0 when it has
// none or one is not stated.
func ratedOutput(u *schema.Unit) float64 {
	total := 0.0
	for _, c := range u.Channels {
		if !c.RatedPower.Set() {
			return 0
		}
		total += float64(c.RatedPower.V)
	}
	return total
}

// missing is what is lacking for the draw at a share of rated output.
func (d *drawn) missing(share float64) []Missing {
	switch {
	case share <= 0:
		return d.idle.lacks
	case share >= 1:
		return d.full.lacks
	}
	return MergeMissing(d.idle.lacks, d.full.lacks)
}

// at gives the draw at a share of the output it can have.
func (d *drawn) at(share float64) float64 {
	return d.law.At(share, d.idle.value, supply.Loaded(d.load, d.idle.value, d.full.value))
}

// assumes is what that draw takes for granted.
func (d *drawn) assumes(share float64) []string {
	switch {
	case share <= 0:
		return nil
	case share >= 1 || d.law == supply.WithPower || d.full.value <= d.idle.value:
		return d.assumed
	}
	return mergeTexts(d.assumed, []string{"what an amplifier takes rises with its output voltage, as in class B; a switching one takes less"})
}

// places are where the figures of that draw stand.
func (d *drawn) places(share float64) []schema.Place {
	var all []schema.Place
	if share < 1 && !d.idle.at.IsZero() {
		all = append(all, schema.Place{Span: d.idle.at, Note: "with no signal"})
	}
	if share > 0 && d.full.at != d.idle.at && !d.full.at.IsZero() {
		all = append(all, schema.Place{Span: d.full.at, Note: "at rated output"})
	}
	return all
}

// drawnAt adds up what units take at a share of rated output.
func drawnAt[Q printed](units []drawn, share float64) *addition[Q] {
	sum := &addition[Q]{}
	for i := range units {
		d := &units[i]
		sum.missing = MergeMissing(sum.missing, d.missing(share))
		sum.assumed = mergeTexts(sum.assumed, d.assumes(share))
		sum.add(1, Q(d.at(share)), "", d.places(share)...)
	}
	return sum
}

// heatOf adds up the heat of all units of which enough is known.
func heatOf(units []*schema.Unit) Heat {
	var h Heat
	var idle, normal addition[quantity.Power]
	for _, u := range units {
		d := fromMains(u)
		rated := ratedOutput(u)
		lacks := d.missing(supply.NormalUse)
		if u.Kind == schema.KindAmplifier && rated == 0 {
			lacks = MergeMissing(lacks, []Missing{missing("rated power", u.Kind, &u.Part, `rated_power = "240 W"`)})
		}
		if len(lacks) > 0 {
			h.Unknown = MergeMissing(h.Unknown, lacks)
			continue
		}
		h.Units++
		idle.add(1, quantity.Power(d.at(0)), "", d.places(0)...)
		heat := supply.Heat(d.at(supply.NormalUse), supply.NormalUse*rated)
		normal.add(1, quantity.Power(heat), "", d.places(supply.NormalUse)...)
		normal.assumed = mergeTexts(normal.assumed, d.assumes(supply.NormalUse))
	}
	h.Idle, h.NormalUse = idle.figure(nil), normal.figure(nil)
	return h
}

// relayCurrents adds up the override relays that a supply feeds: those of lines
// whose override comes from one of its units, and all where it is the only supply
// that states current for relays, but not those that another unit feeds itself.
//
// A relay that is energised to override takes its current while announcing, one
// that is released to override while waiting. Where the design does not say, the
// first is taken: most are wired so.
func (s *System) relayCurrents(p *Supply, all bool) RelayCurrents {
	var r RelayCurrents
	var waiting, announcing addition[quantity.Current]
	for _, l := range s.Lines {
		fed := slices.ContainsFunc(p.Units, func(u *schema.Unit) bool { return u.Name == l.Part.OverrideFrom.V })
		if !fed && (!all || s.feedsRelays(l.Part.OverrideFrom.V)) {
			continue
		}
		for _, a := range l.Attenuators {
			if a.Part.Override.V != schema.OverrideRelay {
				continue
			}
			r.Count += a.Count
			sum := &announcing
			switch {
			case a.Part.Relay.V == schema.RelayReleased:
				sum = &waiting
			case !a.Part.Relay.Set():
				sum.assumed = []string{"override relays are energised for announcements only, where the design does not say otherwise"}
			}
			if current := a.Part.Current; current.Set() {
				sum.add(a.Count, current.V, "", schema.Place{Span: current.Span, Note: "an override relay"})
			} else {
				sum.missing = MergeMissing(sum.missing, []Missing{missing("current of the override relay", "attenuator", &a.Part.Part, `current = "25 mA"`)})
			}
		}
	}
	r.Waiting, r.Announcing = waiting.figure(nil), announcing.figure(nil)
	return r
}

// feedsRelays tells that a unit has volts for override relays itself.
func (s *System) feedsRelays(unit string) bool {
	u := s.Design.Unit(unit)
	return u != nil && u.Relays.Set()
}

// printed is a quantity that prints itself.
type printed interface {
	~float64
	String() string
}

// addition is a sum of quantities in which equal ones are counted together.
type addition[Q printed] struct {
	addends []addend[Q]
	total   Q
	from    []schema.Place
	missing []Missing
	assumed []string
}

type addend[Q printed] struct {
	text  string // value and what it is for
	count int
}

func (s *addition[Q]) add(count int, value Q, what string, from ...schema.Place) {
	const most = 12
	s.total += Q(count) * value
	for _, p := range from {
		if len(s.from) < most && !slices.Contains(s.from, p) {
			s.from = append(s.from, p)
		}
	}
	text := value.String() + what
	for i := range s.addends {
		if s.addends[i].text == text {
			s.addends[i].count += count
			return
		}
	}
	s.addends = append(s.addends, addend[Q]{text, count})
}

// figure gives the sum with its arithmetic, as a person would write it. A single
// addend needs none.
func (s *addition[Q]) figure(more []Missing) Figure[Q] {
	f := Figure[Q]{Value: s.total, From: s.from, Assumed: s.assumed, Missing: MergeMissing(more, s.missing)}
	if len(s.addends) == 0 || len(s.addends) == 1 && s.addends[0].count == 1 {
		return f
	}
	written := make([]string, len(s.addends))
	for i, a := range s.addends {
		written[i] = a.text
		if a.count > 1 {
			written[i] = strconv.Itoa(a.count) + " × " + a.text
		}
	}
	f.Sum = terms(written) + " = " + s.total.String()
	return f
}
