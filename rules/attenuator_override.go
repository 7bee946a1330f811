package rules

import (
	"fmt"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// AttenuatorOverride asks whether somebody can turn down what everybody has to
// hear.
var AttenuatorOverride = &check.Check{
	ID:      "attenuator-override",
	Asks:    "Is an announcement heard behind each attenuator of the lines it is meant for, however the attenuator stands?",
	Summary: "An attenuator can silence an announcement that is meant for its line.",
	Why: "A guest turns the music off, and the call that the building is to be left is off too. An attenuator on the line acts on everything the line carries; only an override that lifts it, " +
		"or a stop before the off position, lets announcements through. An override needs conductors of its own from the rack to every attenuator, and something that switches it.",
	How: "For every announcement that is meant for the line looks whether something lifts the attenuator, and else how far it can be turned down, with those outside it turned down too. " +
		"For every line with attenuators that are lifted counts the conductors of each cable between the amplifier and the attenuators against what they need, " +
		"and follows the announcements to the unit that switches the override: whether they come to it, and make it act by their contact or signal.",
	Basis: "common practice, no published source: speech set 10 dB over the noise is hardly understood once it is turned down by more than 6 dB",
	Blind: "A microphone without priority and without music on its line may be meant to be turned down: an attenuator that can silence it is a note. " +
		"Which conductor is joined to which terminal is not seen, nor whether the unit that is said to switch the override has terminals for it.",
	Params: []check.Param{
		{Name: "most_down", Doc: "how far an announcement may be turned down", Unit: check.Decibel, Default: 6, Low: 0, High: 60},
	},
	Severity: check.Error,
	Cautions: []string{"Try every attenuator in its lowest position with an announcement before the system is handed over."},
	Failing: check.Example{
		Shows: "A control in the bar can be turned off, and the desk then does not reach the bar.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  attenuator "Counter" {
    lowest   = "off"
    override = "none"
    loudspeaker "B" { tap = "6 W" }
  }
}
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
`,
	},
	Passing: check.Example{
		Shows: "A relay lifts the control, on two conductors more.",
		Design: `amplifier "Rack" {
  rated_power = "60 W"
  input "Mic" { triggers = ["contact"] }
}
line "Bar" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  override_from = "Rack"
  attenuator "Counter" {
    lowest   = "off"
    override = "24 V relay"
    loudspeaker "B" { tap = "6 W" }
  }
}
microphone "Desk" {
  into      = "Rack"
  input     = "Mic"
  connector = "DIN 5"
  trigger   = "contact"
  priority  = 1
}
`,
	},
	Judge: check.Together(check.EachAttenuator(attenuatorLifted), check.EachLine(overrideCarried)),
}

func attenuatorLifted(r *check.Report, a *analysis.Attenuator) {
	on, unsure := r.System().Announcements(a.Line)
	if len(on)+len(unsure) == 0 {
		r.NotAsked()
		return
	}
	lifted, stated := a.Lifted()
	if lifted {
		r.Pass(fmt.Sprintf("%s is lifted for announcements by its %s.", attenuatorName(a), a.Part.Override.V)).
			See(readable(a.Part.Override.Span), "its override")
		return
	}
	down, most := a.Down(), r.Limit("most_down")
	within := down.DB.Known() && !down.Off && quantity.AtMost(float64(down.DB.Value), most.Value)
	if within {
		r.Pass(fmt.Sprintf("%s turns announcements down by %s at most.", attenuatorName(a), down.DB.Value)).
			Evidence(check.Of("turned down by", down.DB)).AtMost("at most "+most.String(), most.Value, "dB", most)
		return
	}
	missing := down.DB.Missing
	if !stated {
		missing = analysis.MergeMissing([]analysis.Missing{a.Missing("what lifts the attenuator for announcements", `override = "24 V relay"`)}, missing)
	}
	if len(on) == 0 {
		for _, s := range unsure {
			missing = analysis.MergeMissing(missing, []analysis.Missing{s.MissingUnit()})
		}
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether attenuator %q can silence an announcement cannot be told.", a.Part.Name), missing...)
		return
	}
	attenuatorSilences(r, a, on, down, most)
}

// attenuatorSilences words the finding by what is left of the announcements, and
// who they are.
func attenuatorSilences(r *check.Report, a *analysis.Attenuator, on []analysis.Announcement, down analysis.Down, most check.Limit) {
	var first []analysis.Announcement
	for _, n := range on {
		if n.First {
			first = append(first, n)
		}
	}
	severity := check.Error
	switch {
	case len(first) == 0:
		severity = check.Note
	case !down.Off && !r.System().Design.System.Emergency():
		severity = check.Warning
	}
	if len(first) > 0 {
		on = first
	}
	are := verb(len(on), "is", "are")
	message := fmt.Sprintf("%s can be turned off and nothing lifts it: %s %s then not heard behind it.", attenuatorName(a), sourceNames(on), are)
	if !down.Off {
		message = fmt.Sprintf("%s can turn %s down by %s, and nothing lifts it.", attenuatorName(a), sourceNames(on), down.DB.Value)
	}
	lowest := a.Part.Lowest.Span
	answer := r.Fail(severity, message).At(attenuatorAt(a, lowest, a.Part.Setting.Span, a.Part.Override.Span, a.Part.Model.Span)).
		AtMost("at most "+most.String()+" down", most.Value, "dB", most).
		See(readable(lowest), "its lowest setting").See(readable(a.Part.Override.Span), "nothing lifts it")
	if !down.Off {
		answer.Evidence(check.Of("turned down by", down.DB))
		if down.Left.Known() && a.Behind.Value > 0 {
			answer.Evidence(check.Of(fmt.Sprintf("left of the %s behind it", a.Behind.Value), down.Left))
		}
		for _, p := range down.DB.From {
			answer.See(readable(p.Span), p.Note)
		}
	}
	for _, n := range on[:min(len(on), 6)] {
		answer.See(n.Source.Part.Header, "meant for line "+a.Line.Part.Name)
	}
	liftRemedies(r.System(), answer, a, most)
}

// liftRemedies names an attenuator with a relay, with the conductors it needs, and
// one that cannot be turned down as far.
func liftRemedies(s *analysis.System, answer *check.Answer, a *analysis.Attenuator, most check.Limit) {
	edits := []check.Edit{setAttenuator(a, a.Part.Override.Span, "override", quoted(schema.OverrideRelay))}
	if a.Part.Cores.Set() {
		edits = append(edits, setAttenuator(a, a.Part.Cores.Span, "cores", "4"))
	}
	text := "Fit an attenuator with a 24 V relay"
	line := lineOf(s, &a.Part.Part)
	all, unsaid := a.Line.OverrideCables(a)
	lacking := false
	for i := range all {
		lacking = lacking || all[i].Cable.Cores() > 0 && all[i].Cable.Cores() < all[i].Needs
	}
	switch {
	case lacking && line != nil && !line.OverrideCable.Set():
		two := coresBeside(a.Line, s, 2)
		text += fmt.Sprintf(", and lay two conductors more to it, as a cable of its own (%s) or by a cable with 4", two)
		edits = append(edits, check.Write(&line.Part, line.OverrideCable.Span, "override_cable", quoted(two)))
	case lacking || line == nil:
		edits = nil
	case len(all) > 0 && !unsaid:
		text += "; the cable has the conductors it needs"
	}
	answer.Remedy(check.Computed, text+".", edits...)
	answer.Remedy(check.Advice, fmt.Sprintf("Choose an attenuator that cannot be turned down by more than %s.", most))
}

// coresBeside is a cable of so many conductors, two at least, of the size of the
// line's cable.
func coresBeside(l *analysis.Line, s *analysis.System, cores int) string {
	c := quantity.Conductors{Size: 1.5}
	if cable := s.Design.Cable(l.Part.Cable.V); cable != nil && cable.Conductors.Size > 0 {
		c = cable.Conductors
	}
	c.Cores = max(cores, 2)
	return c.String()
}

func overrideCarried(r *check.Report, l *analysis.Line) {
	lifted := l.Lifted()
	if len(lifted) == 0 {
		r.NotAsked()
		return
	}
	cables, unsaid := l.OverrideCables(nil)
	holds := conductorsHold(r, l, cables, unsaid)
	on, _ := r.System().Announcements(l)
	holds = switchingHolds(r, l, on) && holds
	if !holds {
		return
	}
	needs := 0
	for i := range cables {
		needs = max(needs, cables[i].Needs)
	}
	message := fmt.Sprintf("The cable of line %q has the %d conductors that the override of its attenuators needs", l.Part.Name, needs)
	if len(cables) > 0 && cables[0].Apart {
		message = fmt.Sprintf("A cable of its own, %s, carries the override on line %q", cables[0].Names[0].V, l.Part.Name)
	}
	if u := r.System().OverrideUnit(l); u != nil {
		message += ", and " + u.Part.Name + " switches it"
	}
	r.Pass(message + ".")
}

// conductorsHold judges every cable on the way to attenuators that are lifted.
func conductorsHold(r *check.Report, l *analysis.Line, cables []analysis.OverrideCable, unsaid bool) bool {
	var missing []analysis.Missing
	if unsaid {
		missing = append(missing, l.CableMissing())
	}
	var lacking []analysis.OverrideCable
	for _, c := range cables {
		have := c.Cable.Cores()
		switch {
		case c.For == nil || have >= c.Needs:
		case have == 0:
			missing = analysis.MergeMissing(missing, []analysis.Missing{coresMissing(l, &c)})
		case have >= c.Least:
			missing = analysis.MergeMissing(missing, []analysis.Missing{c.For.Missing("conductors it needs, override included", fmt.Sprintf("cores = %d", have))})
		default:
			lacking = append(lacking, c)
		}
	}
	for i := range lacking {
		conductorsLack(r, l, &lacking[i])
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether the cable of line %q has the conductors for the override of its attenuators cannot be told.", l.Part.Name), missing...).Key("conductors not known")
	}
	return len(missing)+len(lacking) == 0
}

// coresMissing is that a cable does not say how many conductors it has.
func coresMissing(l *analysis.Line, c *analysis.OverrideCable) analysis.Missing {
	const what = "number of conductors of the cable"
	if m := c.Cable.Model; m != nil {
		return analysis.Missing{What: what, Part: "cable_model " + strconv.Quote(m.Name), Where: m.Header, Write: fmt.Sprintf("cores = %d", c.Needs)}
	}
	attribute := "cable"
	if c.Apart {
		attribute = "override_cable"
	}
	size := c.Cable.Conductors
	size.Cores = c.Needs
	return analysis.Missing{What: what, Part: "line " + strconv.Quote(l.Part.Name), Where: l.Part.Header, Write: fmt.Sprintf("%s = %q", attribute, size.String())}
}

// conductorsLack is the finding about one cable.
func conductorsLack(r *check.Report, l *analysis.Line, c *analysis.OverrideCable) {
	have := c.Cable.Cores()
	basis := fmt.Sprintf("what attenuator %q needs (cores)", c.For.Part.Name)
	if !c.For.Part.Cores.Set() {
		basis = "common practice, no published source: two for the line, and two for a relay or one for a third conductor"
	}
	text := fmt.Sprintf("at least %d conductors", c.Needs)
	message := fmt.Sprintf("The override of attenuator %q needs %d conductors, and the cable to it, %s, has %d.", c.For.Part.Name, c.Needs, c.Cable.Name, have)
	if c.Apart {
		message = fmt.Sprintf("The override of attenuator %q needs %d conductors beside the line, and the cable for it, %s, has %d.", c.For.Part.Name, c.Needs, c.Cable.Name, have)
	}
	answer := r.Fail(check.Error, message).Key("conductors of "+c.Cable.Name).At(c.Names[0].Span).
		Evidence(check.Number("conductors of "+c.Cable.Name, float64(have), "")).
		Bound(check.Bound{Text: text, Number: float64(c.Needs), Basis: basis, Origin: readable(c.For.Part.Cores.Span)}).
		See(c.For.Part.Header, "it has to be lifted")
	for _, v := range c.Names[1:] {
		answer.See(v.Span, "and here")
	}
	larger := c.Cable.Conductors
	larger.Cores = c.Needs
	var edits []check.Edit
	if c.Cable.Model == nil {
		for _, v := range c.Names {
			edits = append(edits, check.Edit{Span: v.Span, New: quoted(larger.String())})
		}
	}
	answer.Remedy(check.Computed, fmt.Sprintf("Use cable with %d conductors, %s.", c.Needs, larger), edits...)
	if line := lineOf(r.System(), &c.For.Part.Part); !c.Apart && line != nil {
		beside := coresBeside(l, r.System(), c.Needs-2)
		answer.Remedy(check.Computed, fmt.Sprintf("Lay a cable of its own for the override, %s, along the same way.", beside),
			check.Write(&line.Part, line.OverrideCable.Span, "override_cable", quoted(beside)))
	}
}

// switchingHolds judges whether the announcements that have to be heard make the
// unit switch.
func switchingHolds(r *check.Report, l *analysis.Line, on []analysis.Announcement) bool {
	s := r.System()
	unit := s.OverrideUnit(l)
	var first []*analysis.Source
	for _, n := range on {
		if n.First {
			first = append(first, n.Source)
		}
	}
	switch {
	case len(first) == 0:
		return true
	case unit == nil:
		r.Open(fmt.Sprintf("What switches the override of line %q is not stated.", l.Part.Name), l.OverrideUnitMissing()).Key("switching")
		return false
	}
	holds := true
	var missing []analysis.Missing
	var unsure []analysis.Announcement
	for _, src := range first {
		w := s.Switching(src, unit)
		switch {
		case w.Holds():
		case !w.Passes || w.At.Obstacle != analysis.NoObstacle:
			holds = false
			switchingFails(r, l, unit, &w)
		default:
			missing = analysis.MergeMissing(missing, w.At.Missing)
			unsure = append(unsure, analysis.Announcement{Source: src})
		}
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether %s %s %s switch the override of line %q cannot be told.", sourceNames(unsure), verb(len(unsure), "makes", "make"), unit.Part.Name, l.Part.Name), missing...).Key("switching")
	}
	return holds && len(missing) == 0
}

func switchingFails(r *check.Report, l *analysis.Line, unit *analysis.Unit, w *analysis.Switching) {
	name := w.Source.Part.Name
	reason := fmt.Sprintf("%s does not come to it", name)
	if w.Passes {
		into := w.At.By.Into.Name()
		switch w.At.Obstacle {
		case analysis.NothingTriggers:
			reason = fmt.Sprintf("%s has no trigger", into)
		case analysis.GivesNothing:
			reason = fmt.Sprintf("%s gives neither a contact nor a signal it could act on", name)
		case analysis.WantsContact:
			reason = fmt.Sprintf("%s acts on a contact, and %s gives its signal only", into, name)
		case analysis.PlugRefused:
			reason = fmt.Sprintf("%s acts on a contact, and %s plug does not go into it", into, wording.WithArticle(w.At.Plug))
		case analysis.PlugTooSmall:
			reason = fmt.Sprintf("%s acts on a contact, and %s plug has no contacts for it", into, wording.WithArticle(w.At.Plug))
		case analysis.NoObstacle, analysis.SharedInput, analysis.DoesNotMute, analysis.NotReceiving:
		}
	}
	answer := r.Fail(check.Error, fmt.Sprintf("%s does not make %s switch the override of line %q: %s.", name, unit.Part.Name, l.Part.Name, reason)).
		Key("switching by "+name).At(inside(&l.Part.Part, l.Part.OverrideFrom.Span)).
		See(w.Source.Part.Header, name).See(unit.Part.Header, "it switches the override")
	if !w.Passes {
		answer.Remedy(check.Advice, fmt.Sprintf("Take a contact of %s to %s on wires of its own (also), or let a unit that %s comes to switch the override.", name, unit.Part.Name, name))
		return
	}
	answer.Remedy(check.Advice, fmt.Sprintf("Bring %s in at an input of %s that acts on what it gives, or take its contact to the unit on wires of its own (also).", name, unit.Part.Name))
}
