package rules

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// PriorityWired asks whether each announcement silences what it stands above.
var PriorityWired = &check.Check{
	ID:      "priority-wired",
	Asks:    "Does each announcement really silence the sources below it on the lines they share?",
	Summary: "An announcement does not silence what plays on the same line.",
	Why: "Nobody notices on paper that the desk is on an input that mutes nothing, or that its plug leaves the talk contact behind. " +
		"On site the first page is spoken under the music, and the cure is another input, another plug or another unit.",
	How: "Follows each source from its plug through every unit and link to its lines. For each announcement (microphone, message, telephone) and each source below it " +
		"on a line both are meant for, looks at the first unit where they meet: does the announcement's input mute the other's, is that one set to be muted, " +
		"does the input react to what the announcement gives (a contact through its own plug, or its signal), and has the plug a contact for it. " +
		"A source that silences one it stands below, on any line, fails too (mark X of the matrix): music always, an announcement when the other does not silence it in turn; when each silences the other, a note says that the unit decides (mark =). " +
		"Through a link only the signal arrives. Priority 1 is the highest; an announcement stands above music where either priority is not written.",
	Basis: "common practice, no published source",
	Blind: "How fast an input mutes, how loud a signal must be to trigger it, and what firmware or a rotary switch inside a unit changes are not seen. " +
		"Whether a desk can choose lines is not asked here, nor what a fire panel mutes. An output of which the power channel is not known is taken to carry every input of its unit.",
	Params: []check.Param{
		{Name: "mute_depth", Doc: "how far at least an announcement turns the other source down, where it does not switch it off", Unit: check.Decibel, Default: 10, Low: 0, High: 80},
	},
	Severity: check.Error,
	Cautions: []string{
		"Try every desk against every source on site before handover: a mute that was never heard working is not known to work.",
		"Where announcements are part of an emergency system, local codes and the licensed designer decide what must silence what.",
	},
	Failing: check.Example{
		Shows: "The desk has a talk contact, but a three-pin plug leaves it behind.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Mic 1" {
    takes       = "microphone"
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5
    mutes       = ["Aux"]
    mute_depth  = "full"
  }
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" {
  into      = "Rack"
  input     = "Mic 1"
  connector = "XLR 3"
  trigger   = "contact"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
`,
	},
	Passing: check.Example{
		Shows: "With the five-pin plug the contact arrives.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Mic 1" {
    takes       = "microphone"
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5
    mutes       = ["Aux"]
    mute_depth  = "full"
  }
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" {
  into      = "Rack"
  input     = "Mic 1"
  connector = "DIN 5"
  trigger   = "contact"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
`,
	},
	Judge: check.Together(check.EachSource(priorityWired), check.EachSource(priorityTurned)),
}

// failing is one cause for which an announcement does not silence some others.
type failing struct {
	mute    analysis.Mute // of the first
	of      []analysis.Silencing
	inputs  []*analysis.Input // where the others come in
	shallow bool              // it turns them down too little
}

func priorityWired(r *check.Report, by *analysis.Source) {
	if !by.Part.Announces() {
		r.NotAsked()
		return
	}
	var fails []failing
	var unsure, unranked, equal, silenced []analysis.Silencing
	limit := r.Limit("mute_depth")
	for _, c := range r.System().Silencings(by) {
		switch {
		case c.Rank == analysis.Unranked && by.Part.Priority.Set():
			unranked = append(unranked, c)
		case c.Rank == analysis.Equal && !c.Of.Part.Announces() && c.State == analysis.Heard:
			equal = append(equal, c)
		case c.Rank != analysis.Before:
		case c.State == analysis.Heard:
			fails = addFailing(fails, c, c.Mutes[0], false)
		case c.State == analysis.Unsure:
			unsure = append(unsure, c)
		default:
			if m := shallowest(c.Mutes); m != nil && !quantity.AtLeast(m.DepthDB, limit.Value) {
				fails = addFailing(fails, c, *m, true)
			} else {
				silenced = append(silenced, c)
			}
		}
	}
	for _, f := range fails {
		priorityFails(r, by, f, limit)
	}
	if len(equal) > 0 {
		c := equal[0]
		r.Fail(check.Note, fmt.Sprintf("%s and %s have the same priority (%d): the music goes on under the announcement.", by.Part.Name, others(equal), by.Part.Priority.V)).
			Key("equal priority").At(inside(&by.Part.Part, by.Part.Priority.Span)).
			See(c.Of.Part.Priority.Span, "priority of "+c.Of.Part.Name).
			Remedy(check.Advice, "Give the music a number of its own, larger than that of the announcements it is to make way for.")
	}
	if len(unsure) > 0 {
		var missing []analysis.Missing
		var assumed []string
		for _, c := range unsure {
			missing = analysis.MergeMissing(missing, c.Missing)
			assumed = addTexts(assumed, c.Assumed...)
		}
		r.Open(fmt.Sprintf("Whether %s silences %s cannot be told.", by.Part.Name, others(unsure)), missing...).
			Key("not known").Assumed(assumed...)
	}
	if len(unranked) > 0 {
		var missing []analysis.Missing
		for _, c := range unranked {
			missing = analysis.MergeMissing(missing, c.Missing)
		}
		r.Open(fmt.Sprintf("Which goes first, %s or %s, is not said.", by.Part.Name, others(unranked)), missing...).Key("order")
	}
	if len(fails)+len(equal)+len(unsure)+len(unranked) == 0 {
		priorityPasses(r, by, silenced)
	}
}

// priorityTurned asks the other way round: whether a source silences one that
// stands above it.
func priorityTurned(r *check.Report, by *analysis.Source) {
	var over, mutual []analysis.Silencing
	for _, c := range r.System().Silencings(by) {
		switch wrongly, inTurn := r.System().Wrongly(&c); {
		case inTurn:
			mutual = append(mutual, c)
		case wrongly:
			over = append(over, c)
		}
	}
	if len(over)+len(mutual) == 0 {
		r.NotAsked()
		return
	}
	if len(over) > 0 {
		m := &over[0].Silent[0]
		where := ""
		if quiet := over[0].Quiet(); len(over) == 1 && len(quiet) < len(over[0].Lines) {
			where = " on " + listedLines(quiet)
		}
		a := r.Fail(check.Error, fmt.Sprintf("%s silences %s%s, which %s above it: %s mutes %s.", by.Part.Name, others(over), where, verb(len(over), "stands", "stand"), m.By.Into.Name(), m.Of.Part.Name)).
			Key("above")
		turnedFigures(a, by, over)
		if edits, ok := deaf(over); ok {
			a.Remedy(check.Computed, fmt.Sprintf("Set %s of %s not to be muted by others.", m.Of.Part.Name, m.Unit.Part.Name), edits...)
		}
		a.Remedy(check.Advice, fmt.Sprintf("Bring %s in by an input that mutes only what stands below it, or take %s out of what %s mutes.", by.Part.Name, m.Of.Part.Name, m.By.Into.Name()))
	}
	if len(mutual) > 0 {
		a := r.Fail(check.Note, fmt.Sprintf("%s and %s silence each other: which of them is heard when both speak, the unit decides, not the priorities.", by.Part.Name, others(mutual))).
			Key("each other")
		turnedFigures(a, by, mutual)
		a.Remedy(check.Advice, "See on the data sheet which input of the unit goes first, and plug the higher priority in there.")
	}
}

// turnedFigures shows where one source silences others, and by what they stand
// above it.
func turnedFigures(a *check.Answer, by *analysis.Source, all []analysis.Silencing) {
	m := &all[0].Silent[0]
	a.At(priorityPlace(by, m)).See(readable(m.By.Into.Part.Mutes.Span), "what "+m.By.Into.Name()+" mutes").
		See(by.Part.Priority.Span, "priority of "+by.Part.Name)
	for _, c := range all[:min(len(all), 6)] {
		a.See(c.Of.Part.Priority.Span, "priority of "+c.Of.Part.Name).Assumed(c.Assumed...).Assumed(c.Silent[0].Assumed...)
	}
}

// deaf sets the inputs of sources not to be muted by others, where nothing that
// stands above them comes to that unit and the design itself describes it.
func deaf(over []analysis.Silencing) ([]check.Edit, bool) {
	var edits []check.Edit
	for _, c := range over {
		for _, m := range c.Silent {
			if m.Of.Part == nil || !m.Unit.Owns(&m.Of.Part.Part) || c.Of.Part.Priority.V != 1 {
				return nil, false
			}
			edit := setInput(m.Of, m.Of.Part.MutedByOthers.Span, "muted_by_others", "false")
			if !slices.Contains(edits, edit) {
				edits = append(edits, edit)
			}
		}
	}
	return edits, true
}

func priorityPasses(r *check.Report, by *analysis.Source, silenced []analysis.Silencing) {
	if len(silenced) == 0 {
		if len(by.Lines) == 0 {
			r.NotAsked()
			return
		}
		r.Pass(fmt.Sprintf("No source that stands below %s is heard on its lines.", by.Part.Name))
		return
	}
	var assumed []string
	for _, c := range silenced {
		assumed = addTexts(assumed, c.Assumed...)
		for _, m := range c.Mutes {
			assumed = addTexts(assumed, m.Assumed...)
		}
	}
	a := r.Pass(fmt.Sprintf("%s silences %s.", by.Part.Name, others(silenced))).Assumed(assumed...)
	for _, m := range silenced[0].Mutes {
		if m.By.Into.Part != nil {
			a.See(readable(m.By.Into.Part.Mutes.Span), "what "+m.By.Into.Name()+" mutes")
		}
	}
}

func addFailing(all []failing, c analysis.Silencing, m analysis.Mute, shallow bool) []failing {
	at := slices.IndexFunc(all, func(f failing) bool {
		return f.shallow == shallow && f.mute.Obstacle == m.Obstacle && f.mute.By == m.By && (m.Obstacle != analysis.SharedInput || f.mute.Of == m.Of)
	})
	if at < 0 {
		at = len(all)
		all = append(all, failing{mute: m, shallow: shallow})
	}
	f := &all[at]
	f.of = append(f.of, c)
	if !slices.Contains(f.inputs, m.Of) {
		f.inputs = append(f.inputs, m.Of)
	}
	return all
}

func shallowest(all []analysis.Mute) *analysis.Mute {
	var least *analysis.Mute
	for i := range all {
		if least == nil || all[i].DepthDB < least.DepthDB {
			least = &all[i]
		}
	}
	return least
}

func others(all []analysis.Silencing) string {
	names := make([]string, len(all))
	for i, c := range all {
		names[i] = c.Of.Part.Name
	}
	return listed(names)
}

func addTexts(all []string, more ...string) []string {
	for _, t := range more {
		if !slices.Contains(all, t) {
			all = append(all, t)
		}
	}
	return all
}

// inputNames lists inputs of one unit.
func inputNames(all []*analysis.Input) string {
	var names []string
	for _, i := range all {
		names = append(names, i.Part.Name)
	}
	return listed(names)
}

// causes are the obstacles in few words, for the key of an outcome.
func (f *failing) cause() string {
	if f.shallow {
		return "depth"
	}
	switch f.mute.Obstacle {
	case analysis.SharedInput:
		return "same input"
	case analysis.DoesNotMute:
		return "input mutes nothing of it"
	case analysis.NotReceiving:
		return "not set to be muted"
	case analysis.NothingTriggers, analysis.GivesNothing, analysis.WantsContact:
		return "trigger"
	case analysis.PlugRefused, analysis.PlugTooSmall:
		return "plug"
	case analysis.NoObstacle:
	}
	return "other"
}

// reason says as half a sentence what the cause is.
func (f *failing) reason(by *analysis.Source) string {
	m, into := &f.mute, f.mute.By.Into.Name()
	through := ""
	if m.By.Feed == nil {
		through = ", which it reaches through a link,"
	}
	switch m.Obstacle {
	case analysis.SharedInput:
		return "both come in by " + into + ", and no input silences itself"
	case analysis.DoesNotMute:
		return fmt.Sprintf("%s%s does not mute %s%s", into, through, inputNames(f.inputs), waiting(f.inputs))
	case analysis.NotReceiving:
		verb := "is"
		if len(f.inputs) > 1 {
			verb = "are"
		}
		return fmt.Sprintf("%s of %s %s set not to be muted by others", inputNames(f.inputs), m.Unit.Part.Name, verb)
	case analysis.NothingTriggers:
		return fmt.Sprintf("nothing makes %s%s mute: it has no trigger", into, through)
	case analysis.GivesNothing:
		return fmt.Sprintf("%s gives neither a contact nor a signal that could make %s mute", by.Part.Name, into)
	case analysis.WantsContact:
		return fmt.Sprintf("%s%s mutes by a contact, and %s gives its signal only", into, through, by.Part.Name)
	case analysis.PlugRefused:
		return fmt.Sprintf("%s mutes by a contact, and %s plug does not go into it", into, wording.WithArticle(m.Plug))
	case analysis.PlugTooSmall:
		return fmt.Sprintf("%s mutes by a contact, and %s plug has no contacts for it", into, wording.WithArticle(m.Plug))
	case analysis.NoObstacle:
	}
	return "the units between them do not provide for it"
}

// waiting says that inputs are set to be muted: half of the pair is there.
func waiting(inputs []*analysis.Input) string {
	for _, i := range inputs {
		if !i.Part.MutedByOthers.V {
			return ""
		}
	}
	if len(inputs) > 1 {
		return ", which are set to be muted by others"
	}
	return ", which is set to be muted by others"
}

func priorityFails(r *check.Report, by *analysis.Source, f failing, limit check.Limit) {
	m := &f.mute
	if f.shallow {
		priorityShallow(r, by, f, limit)
		return
	}
	where := ""
	if still := f.of[0].Still; len(f.of) == 1 && len(still) < len(f.of[0].Lines) {
		names := make([]string, len(still))
		for i, l := range still {
			names[i] = l.Part.Name
		}
		where = " on " + listed(names)
	}
	a := r.Fail(check.Error, fmt.Sprintf("%s does not silence %s%s: %s.", by.Part.Name, others(f.of), where, f.reason(by))).
		Key(f.cause() + " at " + m.Unit.Part.Name).At(priorityPlace(by, m))
	var assumed []string
	for _, c := range f.of {
		assumed = addTexts(assumed, c.Assumed...)
	}
	a.Assumed(assumed...)
	if m.Obstacle == analysis.PlugTooSmall {
		basis := fmt.Sprintf("what %s needs for its contact (needs_cores)", m.By.Into.Name())
		if !m.By.Into.Part.NeedsCores.Set() {
			basis = "common practice, no published source: a contact has a conductor beside the two of an unbalanced signal"
		}
		a.Evidence(check.Number("contacts of "+m.Plug, float64(m.Cores), "")).
			Bound(check.Bound{Text: fmt.Sprintf("at least %d contacts", m.Needs), Number: float64(m.Needs), Basis: basis, Origin: readable(m.By.Into.Part.NeedsCores.Span)})
	}
	if m.By.Into.Part != nil {
		a.See(readable(m.By.Into.Part.Mutes.Span), "what "+m.By.Into.Name()+" mutes")
	}
	for _, c := range f.of[:min(len(f.of), 6)] {
		a.See(c.Of.Part.Header, c.Of.Part.Name+", which goes on")
	}
	priorityRemedies(r, a, by, f)
}

func priorityShallow(r *check.Report, by *analysis.Source, f failing, limit check.Limit) {
	m := &f.mute
	r.Fail(check.Warning, fmt.Sprintf("%s turns %s down by %s only: that is what %s does to others.", by.Part.Name, others(f.of), quantity.Gain(m.DepthDB), m.By.Into.Name())).
		Key("depth at "+m.Unit.Part.Name).At(priorityPlace(by, m)).
		Evidence(check.Plainly("turned down by", quantity.Gain(m.DepthDB), schema.Place{Span: readable(m.By.Into.Part.MuteDepth.Span), Note: "mute depth of " + m.By.Into.Name()})).
		AtLeast("at least "+limit.String(), limit.Value, "dB", limit).
		See(readable(m.By.Into.Part.MuteDepth.Span), "mute depth of "+m.By.Into.Name()).
		Remedy(check.Computed, fmt.Sprintf("Set %s to turn others down by %s or more, or off.", m.By.Into.Name(), limit), depthEdit(m)...)
}

// depthEdit makes a mute full where the unit's own braces say how deep it is.
func depthEdit(m *analysis.Mute) []check.Edit {
	span := inside(&m.Unit.Part.Part, m.By.Into.Part.MuteDepth.Span)
	if span.IsZero() {
		return nil
	}
	return []check.Edit{{Span: span, New: `"full"`}}
}

// priorityPlace is the tightest thing a person would change.
func priorityPlace(by *analysis.Source, m *analysis.Mute) source.Span {
	unit, f := &m.Unit.Part.Part, m.By.Feed
	switch m.Obstacle {
	case analysis.NotReceiving:
		if s := inside(unit, m.Of.Part.MutedByOthers.Span); !s.IsZero() {
			return s
		}
	case analysis.PlugRefused, analysis.PlugTooSmall:
		if s := inside(&f.Part.Part, f.Part.Connector.Span); !s.IsZero() {
			return s
		}
	case analysis.GivesNothing, analysis.WantsContact:
		if s := inside(&by.Part.Part, by.Part.Trigger.Span); !s.IsZero() {
			return s
		}
	case analysis.NoObstacle, analysis.SharedInput, analysis.DoesNotMute, analysis.NothingTriggers:
	}
	if f != nil {
		return pluggedAt(f)
	}
	return by.Part.Header
}

func priorityRemedies(r *check.Report, a *check.Answer, by *analysis.Source, f failing) {
	m := &f.mute
	if m.By.Feed == nil {
		a.Remedy(check.Advice, fmt.Sprintf("Take the talk contact to %s on wires of its own, as a second place %s goes to (also), or bring %s in at a unit %s passes first.", m.Unit.Part.Name, by.Part.Name, others(f.of), by.Part.Name))
		return
	}
	switch m.Obstacle {
	case analysis.NotReceiving:
		edits, _ := receive(f)
		a.Remedy(check.Computed, fmt.Sprintf("Set %s of %s to be muted by others.", inputNames(f.inputs), m.Unit.Part.Name), edits...)
		return
	case analysis.PlugRefused, analysis.PlugTooSmall:
		if plug := plugThatCarries(r.System(), by, f); plug != "" {
			a.Remedy(check.Computed, fmt.Sprintf("Fit %s plug: %s takes it, and with %d contacts it carries the talk contact too.", wording.WithArticle(plug), m.By.Into.Name(), r.System().Cores(plug)),
				check.Write(&m.By.Feed.Part.Part, m.By.Feed.Part.Connector.Span, "connector", strconv.Quote(plug)))
			return
		}
	case analysis.NoObstacle, analysis.SharedInput, analysis.DoesNotMute, analysis.NothingTriggers, analysis.GivesNothing, analysis.WantsContact:
	}
	if to := inputThatMutes(r.System(), by, f); to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which mutes %s.", by.Part.Name, to.Name(), inputNames(f.inputs)), plugInto(m.By.Feed, to))
	}
	turned := func(c analysis.Silencing) bool { return r.System().SilencesInTurn(&c) } // they would silence each other
	if edits := muteToo(f); len(edits) > 0 && !slices.ContainsFunc(f.of, turned) {
		a.Remedy(check.Advice, fmt.Sprintf("Where that can be set on the unit, let %s mute %s too.", m.By.Into.Name(), inputNames(f.inputs)), edits...)
	}
	switch m.Obstacle {
	case analysis.WantsContact, analysis.GivesNothing:
		a.Remedy(check.Advice, fmt.Sprintf("Use a microphone or source with a talk contact for %s, and a plug that carries it.", by.Part.Name))
	case analysis.SharedInput:
		a.Remedy(check.Advice, "Bring each of them in by an input of its own.")
	case analysis.NoObstacle, analysis.DoesNotMute, analysis.NotReceiving, analysis.NothingTriggers, analysis.PlugRefused, analysis.PlugTooSmall:
		a.Remedy(check.Advice, fmt.Sprintf("Choose a unit in place of %s that lets an announcement silence %s.", m.Unit.Part.Name, others(f.of)))
	}
}

// plugThatCarries finds the connector with the fewest contacts, among those the
// input takes, with which the announcement silences the others.
func plugThatCarries(s *analysis.System, by *analysis.Source, f failing) string {
	feed := f.mute.By.Feed
	best, fewest := "", math.MaxInt
	for _, c := range feed.Into.Part.Connectors.Items {
		part := *feed.Part
		part.Connector = c
		if cores := s.Cores(c.V); cores < fewest && silencesAll(s, by, analysis.Arrival{Into: feed.Into, Feed: &analysis.Feed{Source: by, Part: &part, Into: feed.Into}}, f.inputs) {
			best, fewest = c.V, cores
		}
	}
	return best
}

func silencesAll(s *analysis.System, by *analysis.Source, a analysis.Arrival, inputs []*analysis.Input) bool {
	for _, of := range inputs {
		m := s.Try(by, a, of)
		if m.State() != analysis.Silenced {
			return false
		}
	}
	return true
}

// inputThatMutes finds a free input of the unit from which the announcement
// silences the others, those it silences today too, and by which it is still
// silenced by whatever stands above it.
func inputThatMutes(s *analysis.System, by *analysis.Source, f failing) *analysis.Input {
	feed, unit := f.mute.By.Feed, f.mute.Unit
	if two, _ := by.TwoChannels(); two {
		return nil
	}
	wanted := slices.Clone(f.inputs)
	if f.mute.Obstacle == analysis.SharedInput {
		wanted = []*analysis.Input{feed.Into}
	}
	for _, i := range unit.Inputs {
		if silencesAll(s, by, f.mute.By, []*analysis.Input{i}) && len(i.Feeds)+len(i.Links) > 0 {
			wanted = append(wanted, i)
		}
	}
	for _, to := range unit.Inputs {
		if free(to) && suits(feed, to) && mutedAlike(unit, feed.Into, to) &&
			silencesAll(s, by, analysis.Arrival{Into: to, Feed: feed}, wanted) {
			return to
		}
	}
	return nil
}

// mutedAlike tells that whatever mutes one input mutes the other one too.
func mutedAlike(u *analysis.Unit, from, to *analysis.Input) bool {
	for _, i := range u.Inputs {
		if i == from || i == to || len(i.Feeds)+len(i.Links) == 0 {
			continue
		}
		was, _ := i.Mutes(from)
		if is, _ := i.Mutes(to); was && !is {
			return false
		}
	}
	return true
}

// receive sets those inputs to be muted that are set not to be. It fails where
// that is not written in the unit's own braces.
func receive(f failing) ([]check.Edit, bool) {
	var edits []check.Edit
	for _, i := range f.inputs {
		if received := i.Part.MutedByOthers; received.Set() && !received.V {
			span := inside(&f.mute.Unit.Part.Part, received.Span)
			if span.IsZero() {
				return nil, false
			}
			edits = append(edits, check.Edit{Span: span, New: "true"})
		}
	}
	return edits, true
}

// muteToo adds inputs to the list of what an input mutes, and the other half of
// each pair. It needs a unit that is described by the design itself: what a model
// says cannot be set.
func muteToo(f failing) []check.Edit {
	m := &f.mute
	if m.Obstacle != analysis.DoesNotMute || m.Unit.Part.ModelPart != nil {
		return nil
	}
	span := inside(&m.Unit.Part.Part, m.By.Into.Part.Mutes.Span)
	edits, ok := receive(f)
	if span.IsZero() || !ok {
		return nil
	}
	var list []string
	for _, n := range m.By.Into.Part.Mutes.Names {
		list = append(list, strconv.Quote(n.V))
	}
	for _, of := range f.inputs {
		list = append(list, strconv.Quote(of.Part.Name))
	}
	return append(edits, check.Edit{Span: span, New: "[" + strings.Join(list, ", ") + "]"})
}
