package rules

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// MuteLink asks whether a fire panel silences the sound, and keeps it silent,
// whatever happens to the link.
var MuteLink = &check.Check{
	ID:      "mute-link",
	Asks:    "Does the link to the fire panel silence what it is meant to, to the safe side, and until it is reset?",
	Summary: "The link to the fire panel does not silence the sound as it has to, or nothing silences a programme that an alarm has to overcome.",
	Why: "An alarm that has to be heard over a house system at 95 dBA would have to reach 110 dBA. Silencing the programme is what makes it audible, and often the level counts on it; " +
		"a link that one tug at a plug disables unnoticed, or that lets the music back in before anyone has reset the panel, is worse than none: people trust it.",
	How: "For each mute_link, follows the sources it is to silence from its terminals on, as a talk contact is followed. Compares what the contact does in alarm with what the terminals silence on, " +
		"and looks whether a talk contact is on the same terminals, whether a cut link silences too (opens in alarm) or is watched (monitored), whether silence holds until reset (latching), and whether it acts on the audio instead of the mains. " +
		"For each space with a programme of its own and speech wanted over the noise, works out the level that speech needs with the programme on and with it silenced. " +
		"The sequence (trigger, contact, what is silenced, latching, restoration, test) is shown with the answer, for whoever asks for it in writing.",
	Basis: "common practice, no published source; NFPA 72 lets the level be judged against the noise that is left when a programme is silenced, as an electrical forum reads it",
	Blind: "Whether the panel and its relay are approved for the purpose, and how fast it acts, is not seen. The text of joint is read for plain words only (plug, push-fit, mains and the like). " +
		"That a link acts before the amplifier follows from its terminals: they are inputs of a unit. The louder of noise and programme stands for both.",
	Params: []check.Param{
		{Name: "loudest", Doc: "level in dB(A) that an announcement may need at most while a programme goes on", Unit: check.Decibel, Default: 110, Low: 70, High: 120, Basis: "110 dB(A) in newer editions of NFPA 72, from memory; older ones and others say 115 to 120"},
	},
	Severity: check.Error,
	Cautions: []string{
		"Test the link with the panel itself and with the cable pulled, write down when, and repeat it with every test of the panel.",
		"What a fire panel may silence, and who may connect to it, is for the authority and the licensed fire-alarm firm to say: local codes come first.",
	},
	Failing: check.Example{
		Shows: "A link that a lost plug disables.",
		Design: `amplifier "Rack" {
  input "Aux" { takes = "line" }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Aux"]
    mutes_on = "closed"
  }
}
music "Player" {
  into  = "Rack"
  input = "Aux"
}
mute_link "Fire panel" {
  into        = "Rack"
  input       = "Fire mute"
  contact     = "closes in alarm"
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  joint       = "push-in plug"
  tested      = "with the panel, at handover"
}
`,
	},
	Passing: check.Example{
		Shows: "One that opens in alarm: without its cable the music is silent too.",
		Design: `amplifier "Rack" {
  input "Aux" { takes = "line" }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Aux"]
    mutes_on = "open"
  }
}
music "Player" {
  into  = "Rack"
  input = "Aux"
}
mute_link "Fire panel" {
  into        = "Rack"
  input       = "Fire mute"
  contact     = "opens in alarm"
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  joint       = "fixed box, clamped"
  tested      = "with the panel, at handover"
}
`,
	},
	Judge: check.Together(check.EachMuteLink(muteLink), check.EachSpace(programmeMuted)),
}

// muteSeverity is graver where lives, or a level, hang on the link.
func muteSeverity(r *check.Report, m *analysis.MuteLink) check.Severity {
	if r.System().Design.System.Emergency() || len(m.Relying) > 0 {
		return check.Error
	}
	return check.Warning
}

func muteLink(r *check.Report, m *analysis.MuteLink) {
	answered := false
	for _, question := range []func(*check.Report, *analysis.MuteLink) *check.Answer{muteByMains, muteOpposite, muteShared, muteUnsafe, muteUnlatched, muteIncomplete, muteOwnMessage} {
		if a := question(r, m); a != nil {
			sequence(a, m)
			answered = true
		}
	}
	missing := muteUnsaid(m)
	switch {
	case len(missing) > 0:
		sequence(r.Open(fmt.Sprintf("What %s does in alarm is not written down in full.", m.Part.Name), missing...).Key("sequence"), m)
	case !answered:
		lost := "so does a lost link"
		if !m.FailsSafe {
			lost = "the link is watched"
		}
		sequence(r.Pass(fmt.Sprintf("%s silences %s until reset, and %s.", m.Part.Name, mutedNames(m), lost)), m)
	}
}

// sequence shows what happens, in the order in which it happens.
func sequence(a *check.Answer, m *analysis.MuteLink) {
	for _, step := range m.Sequence() {
		if step.Says != "" {
			a.Evidence(check.Stated(step.What, step.Says))
		}
	}
	for _, relying := range m.Relying {
		spaceLevels(a, relying)
	}
}

func spaceLevels(a *check.Answer, relying *analysis.Relying) {
	a.Evidence(check.Of("speech needs in "+relying.Space.Name+" with the programme on", relying.Needed))
	if relying.Muted.Known() {
		a.Evidence(check.Of("and with it silenced", relying.Muted)).Assumed(relying.Muted.Assumed...)
	}
}

// mutedNames is what the link is said to silence.
func mutedNames(m *analysis.MuteLink) string {
	names := m.Named()
	if m.Part.Mutes.All && len(names) == 0 {
		return "all sources"
	}
	return listed(names)
}

func muteByMains(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if !m.Mains.Set() {
		return nil
	}
	return r.Fail(muteSeverity(r, m), fmt.Sprintf("%s acts on the supply (%s): cutting mains silences announcements too, takes time to come back, and thumps.", m.Part.Name, m.Mains.V)).
		Key("mains").At(m.Mains.Span).
		Remedy(check.Advice, "Silence the audio before the amplifier instead, at mute terminals of the mixer, processor or amplifier, and leave the mains on.")
}

// muteOpposite answers for terminals that silence on the wrong state.
func muteOpposite(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if m.Contact != analysis.ContactOpposite {
		return nil
	}
	i := m.Input
	a := r.Fail(check.Error, fmt.Sprintf("%s %s, and %s silences while its terminals are %s: the alarm lets the sound through.", m.Part.Name, m.Part.Contact.V, i.Name(), i.Part.MutesOn.V)).
		Key("contact").At(m.Part.Contact.Span).See(readable(i.Part.MutesOn.Span), "what "+i.Name()+" silences on")
	other := "opens in alarm"
	if m.FailsSafe {
		other = "closes in alarm"
	}
	if m.FailsSafe {
		a.Remedy(check.Advice, fmt.Sprintf("Set %s to silence while it is open, where it can be set, or put a relay between.", i.Name()), setInput(i, i.Part.MutesOn.Span, "mutes_on", strconv.Quote("open")))
	} else {
		a.Remedy(check.Computed, fmt.Sprintf("Use the contact of the panel that %s.", other), check.Write(&m.Part.Part, m.Part.Contact.Span, "contact", strconv.Quote(other)))
	}
	return a
}

// muteShared answers for terminals on which a talk contact is too.
func muteShared(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if len(m.Talks) == 0 || m.Mains.Set() {
		return nil
	}
	names := make([]string, len(m.Talks))
	for n, s := range m.Talks {
		names[n] = s.Part.Name
	}
	i := m.Input
	severity, why := check.Warning, "what the one does cannot be told from the other, and a fault of either takes both along"
	if m.FailsSafe {
		severity, why = check.Error, "while somebody talks, that contact keeps them closed, and the alarm silences nothing"
	}
	a := r.Fail(severity, fmt.Sprintf("%s and the talk contact of %s are wired to the same terminals, %s: %s.", m.Part.Name, listed(names), i.Name(), why)).
		Key("terminals").At(m.Part.Input.Span)
	for _, f := range i.Feeds {
		if slices.Contains(m.Talks, f.Source) {
			a.See(pluggedAt(f), "the talk contact of "+f.Source.Part.Name)
		}
	}
	if to := freeTerminals(r.System(), m); to != nil {
		return a.Remedy(check.Computed, fmt.Sprintf("Wire the link to %s, which is free and silences the same.", to.Name()),
			check.Write(&m.Part.Part, m.Part.Input.Span, "input", strconv.Quote(to.Part.Name)))
	}
	return a.Remedy(check.Advice, "Give the link a pair of terminals of its own, or a relay for each unit.")
}

// freeTerminals finds terminals of the same unit that nothing is wired to and
// that silence all the link's own do, on the same state.
func freeTerminals(s *analysis.System, m *analysis.MuteLink) *analysis.Input {
	for _, to := range m.Input.Unit.Inputs {
		taken := len(to.Feeds)+len(to.Links) > 0
		for _, other := range s.MuteLinks() {
			taken = taken || other.Input == to
		}
		if !taken && to.Contact() && mutesAlike(m.Input, to) && to.Part.MutesOn.V == m.Input.Part.MutesOn.V {
			return to
		}
	}
	return nil
}

// muteUnsafe answers for a link that does nothing when it is cut, and nobody
// notices.
func muteUnsafe(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if !m.Part.Contact.Set() || m.FailsSafe || m.Part.Monitored.V {
		return nil
	}
	says, at := "a cut cable", m.Part.Contact.Span
	if m.LooseJoint {
		says = fmt.Sprintf("one tug at its joint (%s)", m.Part.Joint.V)
	}
	a := r.Fail(muteSeverity(r, m), fmt.Sprintf("%s %s, and nothing watches the link: %s disables it unnoticed.", m.Part.Name, m.Part.Contact.V, says)).
		Key("fail-safe").At(at).See(m.Part.Joint.Span, "its joint").See(m.Part.Monitored.Span, "not watched")
	var edits []check.Edit
	edits = append(edits, check.Write(&m.Part.Part, m.Part.Contact.Span, "contact", strconv.Quote("opens in alarm")))
	if i := m.Input; i != nil && i.Part != nil && i.Part.MutesOn.V == "closed" {
		edits = append(edits, setInput(i, i.Part.MutesOn.Span, "mutes_on", strconv.Quote("open")))
	}
	a.Remedy(check.Computed, "Use a contact that opens in alarm, on terminals that silence while open: a lost link then silences too.", edits...)
	a.Remedy(check.Computed, "Have the link watched, by the panel or by the unit, with a fault signal.", check.Write(&m.Part.Part, m.Part.Monitored.Span, "monitored", "true"))
	if m.LooseJoint {
		a.Remedy(check.Advice, "Join it in a fixed box with a strain relief.")
	}
	return a
}

func muteUnlatched(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if !m.Part.Latching.Set() || m.Part.Latching.V {
		return nil
	}
	return r.Fail(muteSeverity(r, m), fmt.Sprintf("%s does not hold: the sound comes back by itself as soon as the contact does.", m.Part.Name)).
		Key("latching").At(m.Part.Latching.Span).
		Remedy(check.Computed, "Let silence hold until somebody resets it, at the panel or at a latching relay.", check.Write(&m.Part.Part, m.Part.Latching.Span, "latching", "true"))
}

// muteIncomplete answers for sources that go on in alarm.
func muteIncomplete(r *check.Report, m *analysis.MuteLink) *check.Answer {
	var heard []analysis.Silencing
	for _, c := range m.Silences {
		if c.State == analysis.Heard {
			heard = append(heard, c)
		}
	}
	if len(heard) == 0 || m.Mains.Set() {
		return nil
	}
	i := m.Input
	var reasons []string
	bySaying := map[string][]analysis.Silencing{}
	for _, c := range heard {
		why := fmt.Sprintf("the way to %s does not pass %s", listedLines(c.Still), i.Unit.Part.Name)
		if len(c.Mutes) > 0 {
			f := failing{mute: c.Mutes[0], inputs: []*analysis.Input{c.Mutes[0].Of}}
			why = f.reason(c.By)
		}
		if bySaying[why] == nil {
			reasons = append(reasons, why)
		}
		bySaying[why] = append(bySaying[why], c)
	}
	clauses := make([]string, len(reasons))
	for n, why := range reasons {
		clauses[n] = fmt.Sprintf("%s: %s", others(bySaying[why]), why)
	}
	a := r.Fail(muteSeverity(r, m), fmt.Sprintf("%s does not silence %s.", m.Part.Name, strings.Join(clauses, "; nor "))).Key("silenced").At(m.Part.Mutes.Span)
	if i.Part != nil {
		a.See(readable(i.Part.Mutes.Span), "what "+i.Name()+" mutes")
	}
	for _, c := range heard[:min(len(heard), 4)] {
		a.See(c.Of.Part.Header, c.Of.Part.Name+", which goes on")
	}
	return a.Remedy(check.Advice, "Wire the contact to terminals that silence them too, in the last unit that all of them pass, or to a relay for each unit.")
}

// muteOwnMessage answers for a link that silences what is to speak in an
// emergency.
func muteOwnMessage(r *check.Report, m *analysis.MuteLink) *check.Answer {
	if !r.System().Design.System.Emergency() || len(m.Silences) == 0 {
		return nil
	}
	announces := false
	for _, s := range r.System().Sources {
		if !s.Part.Announces() || len(s.Lines) == 0 {
			continue
		}
		announces = true
		if !silencedBy(m, s) {
			return nil
		}
	}
	if !announces {
		return nil
	}
	return r.Fail(check.Warning, fmt.Sprintf("The system has emergency duty, and %s silences all of its announcements.", m.Part.Name)).Key("announcements").At(m.Part.Mutes.Span).
		See(r.System().Design.System.Duty.Span, "the duty").
		Remedy(check.Advice, "Name the sources to silence, and leave out the microphone and the messages for the emergency.")
}

func silencedBy(m *analysis.MuteLink, s *analysis.Source) bool {
	for _, c := range m.Silences {
		if c.Of == s {
			return true
		}
	}
	return false
}

// muteUnsaid lists what is missing in the sequence.
func muteUnsaid(m *analysis.MuteLink) []analysis.Missing {
	part := m.Part
	lacks := func(what, write string) analysis.Missing {
		return analysis.Missing{What: what, Part: fmt.Sprintf("mute_link %q", part.Name), Where: part.Header, Write: write}
	}
	var all []analysis.Missing
	if m.Input == nil {
		all = append(all, lacks("unit it acts on", `into = "Rack"`))
	} else if m.Input.Part == nil && !m.Mains.Set() {
		all = append(all, lacks("input it goes to", `input = "Fire mute"`))
	}
	if !part.Contact.Set() {
		all = append(all, lacks("what the contact does in alarm", `contact = "opens in alarm"`))
	}
	if !part.Mutes.Set() {
		all = append(all, lacks("sources it silences", `mutes = "all"`))
	}
	if !part.Latching.Set() {
		all = append(all, lacks("whether silence holds until reset", "latching = true"))
	}
	if !part.RestoredBy.Set() {
		all = append(all, lacks("what brings the sound back", `restored_by = "panel reset"`))
	}
	if !part.Tested.Set() {
		all = append(all, lacks("test of the link", `tested = "with the panel, at handover"`))
	}
	if i := m.Input; i != nil && i.Part != nil && part.Contact.Set() && m.Contact == analysis.ContactUntold && !m.Mains.Set() {
		all = append(all, i.Missing("state of the contact that silences", `mutes_on = "open"`))
	}
	for _, c := range m.Silences {
		if c.State == analysis.Unsure && !m.Mains.Set() {
			all = analysis.MergeMissing(all, c.Missing)
		}
	}
	return all
}

// programmeMuted asks, of a space with a programme of its own, whether speech
// could be heard over it, or what silences it.
func programmeMuted(r *check.Report, space *schema.Space) {
	relying := analysis.RelyingIn(space)
	if relying == nil {
		r.NotAsked()
		return
	}
	emergency, limit := r.System().Design.System.Emergency(), r.Limit("loudest")
	key, place := "programme", inside(&space.Part, space.Programme.Span)
	margin := quantity.AtMost(float64(relying.Needed.Value), limit.Value)
	var a *check.Answer
	switch {
	case space.MutedBy.Set():
		a = r.Pass(fmt.Sprintf("The level in %s counts on %s, which silences the programme.", space.Name, space.MutedBy.V)).Key(key).At(place)
	case emergency:
		a = r.Fail(check.Error, fmt.Sprintf("In %s speech needs %s while the programme is on, and nothing in the design silences it in an emergency.", space.Name, relying.Needed.Value)).Key(key).At(place)
	case !margin:
		a = r.Fail(check.Warning, fmt.Sprintf("In %s speech needs %s while the programme is on, and nothing in the design silences it.", space.Name, relying.Needed.Value)).Key(key).At(place)
	default:
		a = r.Pass(fmt.Sprintf("In %s speech needs %s over the programme.", space.Name, relying.Needed.Value)).Key(key).At(place)
	}
	spaceLevels(a, relying)
	a.AtMost(fmt.Sprintf("at most %s while people listen", quantity.SoundLevel(limit.Value)), limit.Value, "dBA", limit)
	for _, p := range relying.Needed.From {
		a.See(readable(p.Span), p.Note)
	}
	if space.MutedBy.Set() || !emergency && margin {
		return
	}
	text := "Have the fire panel silence it, with a mute_link on the programme's mixer, processor or amplifier, and write in the space which (muted_by)"
	if relying.Muted.Known() {
		text += fmt.Sprintf(": %s are then enough", relying.Muted.Value)
	}
	a.Remedy(check.Computed, text+".")
}
