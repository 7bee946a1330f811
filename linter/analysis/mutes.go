package analysis

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// MuteLink is what a fire panel does to the audio.
type MuteLink struct {
	Part *schema.MuteLink
	// Input is where it is wired, nil when the unit is not stated. Its own Part is
	// nil when only the unit is known.
	Input *Input
	// Silences is what it does to each source it is said to silence.
	Silences []Silencing
	// Contact is whether the state of its contact in alarm is the one that the
	// terminals silence on.
	Contact ContactMatch
	// FailsSafe tells that a cut or unplugged link silences too: the contact
	// opens in alarm. It means nothing where the contact is not stated.
	FailsSafe bool
	// Mains tells that it is said to act on the supply instead of the audio.
	Mains schema.Value[string]
	// LooseJoint is a joint that can come off unnoticed.
	LooseJoint bool
	// Relying are the spaces whose level counts on it.
	Relying []*Relying
	// Talks are the sources whose talk contact is wired to the same terminals.
	Talks []*Source
}

// ContactMatch tells how the contact of a mute link meets its terminals.
type ContactMatch int

// Matches.
const (
	ContactUntold   ContactMatch = iota // not enough is stated
	ContactMatches                      // alarm silences
	ContactOpposite                     // alarm lets the sound through, and all else silences
)

// SequenceStep is one thing that happens, or is known, when an alarm comes; Says
// is empty where the design does not say.
type SequenceStep struct{ What, Says string }

// Sequence is what happens in alarm, in the order in which it does: what a fire
// authority asks for in writing.
func (m *MuteLink) Sequence() []SequenceStep {
	terminals, holds := "", ""
	switch {
	case m.Input != nil && m.Input.Part != nil:
		terminals = m.Input.Name()
	case m.Input != nil:
		terminals = m.Input.Unit.Part.Name
	}
	if m.Part.Latching.Set() {
		holds = map[bool]string{true: "yes", false: "no"}[m.Part.Latching.V]
	}
	silenced := strings.Join(m.Named(), ", ")
	if m.Part.Mutes.All {
		silenced = strings.TrimSuffix("all sources: "+silenced, ": ")
	}
	return []SequenceStep{
		{"trigger", m.Part.Name},
		{"contact", m.Part.Contact.V},
		{"terminals", terminals},
		{"silenced", silenced},
		{"holds until reset", holds},
		{"restored by", m.Part.RestoredBy.V},
		{"tested", m.Part.Tested.V},
	}
}

// Named gives the names of the sources the link is to silence: of all that are
// heard somewhere, where it says "all".
func (m *MuteLink) Named() []string {
	var names []string
	if m.Part.Mutes.All {
		for _, c := range m.Silences {
			names = append(names, c.Of.Part.Name)
		}
		return names
	}
	for _, n := range m.Part.Mutes.Names {
		names = append(names, n.V)
	}
	return names
}

// Relying is a space with a programme of its own that speech has to overcome.
type Relying struct {
	Space *schema.Space
	// Needed is the level speech has to reach while the programme goes on, and
	// Muted while it is silenced; the second is not known without a noise level.
	Needed, Muted Figure[quantity.SoundLevel]
}

// MuteLinks gives what each mute link does.
func (s *System) MuteLinks() []*MuteLink {
	var all []*MuteLink
	for _, part := range s.Design.MuteLinks {
		m := &MuteLink{Part: part, FailsSafe: part.Contact.V == opensInAlarm, LooseJoint: saysOneOf(part.Joint.V, looseWords)}
		switch {
		case saysOneOf(part.Input.V, []string{"mains"}): // nobody calls audio terminals so
			m.Mains = part.Input
		case saysOneOf(part.Joint.V, mainsWords):
			m.Mains = part.Joint
		}
		for _, u := range s.Units {
			if u.Part == part.UnitPart {
				m.Input = u.terminals(part.InputPart)
			}
		}
		m.match()
		m.Silences = s.silences(m)
		m.talks()
		for _, space := range s.Design.Spaces {
			if space.MutedBy.V != part.Name {
				continue
			}
			if r := RelyingIn(space); r != nil {
				m.Relying = append(m.Relying, r)
			}
		}
		all = append(all, m)
	}
	return all
}

const opensInAlarm = "opens in alarm"

// Words by which a design says how a link is joined, or that it acts on the
// supply: the text is free, so that only what is plain counts.
var (
	looseWords = []string{"push-in", "push in", "push-fit", "plug", "unclamped", "loose", "wheels", "mobile rack"}
	mainsWords = []string{"cuts mains", "cuts the mains", "cuts power", "cuts the power", "switches mains", "switches the mains", "mains of the", "mains relay", "contactor"}
)

func saysOneOf(text string, words []string) bool {
	text = strings.ToLower(text)
	for _, w := range words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}

// terminals gives the input a link is wired to; one without a Part when only the
// unit is known. Unlike a plug it takes no input.
func (u *Unit) terminals(part *schema.Input) *Input {
	for _, i := range u.Inputs {
		if part != nil && i.Part == part {
			return i
		}
	}
	return &Input{Unit: u, exits: &exits{unit: u}}
}

// talks finds the talk contacts on the terminals of the link: all that go to a
// pair that only switches, and of what is plugged into an audio input those that
// are stated to give a contact there.
func (m *MuteLink) talks() {
	i := m.Input
	if i == nil || i.Part == nil || !i.Accepts("contact") {
		return
	}
	for _, f := range i.Feeds {
		gives := f.Source.Part.Trigger
		if (gives.V == "contact" || i.Contact() && !gives.Set()) && !slices.Contains(m.Talks, f.Source) {
			m.Talks = append(m.Talks, f.Source)
		}
	}
}

// match compares what the contact does in alarm with what the terminals silence
// on.
func (m *MuteLink) match() {
	if m.Input == nil || m.Input.Part == nil || !m.Part.Contact.Set() || !m.Input.Part.MutesOn.Set() {
		return
	}
	m.Contact = ContactOpposite
	if (m.Input.Part.MutesOn.V == "open") == m.FailsSafe {
		m.Contact = ContactMatches
	}
}

// silences follows every source the link is to silence: its contact comes to the
// terminals on wires of its own, as a talk contact would.
func (s *System) silences(m *MuteLink) []Silencing {
	if m.Input == nil || !m.Part.Mutes.Set() {
		return nil
	}
	named := map[string]bool{}
	for _, n := range m.Part.Mutes.Names {
		named[n.V] = true
	}
	part := &schema.Source{Part: m.Part.Part, Kind: kindMuteLink}
	part.Trigger = schema.Value[string]{V: "contact", Span: m.Part.Header}
	part.Feed = schema.Feed{Part: m.Part.Part, Into: m.Part.Into, Input: m.Part.Input, Connector: schema.Value[string]{V: "screw terminals", Span: m.Part.Header}}
	by := &Source{Part: part}
	feed := &Feed{Source: by, Part: &part.Feed, Into: m.Input}
	if m.Input.Part == nil {
		m.Input.Feeds = []*Feed{feed} // it is what does not say where
	}
	var all []Silencing
	for _, of := range s.Sources {
		if len(of.Lines) == 0 || !m.Part.Mutes.All && !named[of.Part.Name] {
			continue // heard nowhere, or not meant
		}
		c := Silencing{By: by, Of: of, Rank: Before, Lines: of.Lines}
		walk := silencing{system: s, by: by, of: of, arrivals: map[*Unit][]Arrival{m.Input.Unit: {{Into: m.Input, Feed: feed}}}, shared: of.heard}
		walk.follow(&c)
		for n, l := range s.Lines {
			if walk.still.has(n) {
				c.Still = append(c.Still, l)
			}
		}
		all = append(all, c)
	}
	return all
}

// kindMuteLink is the kind of block that says what a fire panel mutes.
const kindMuteLink = "mute_link"

// RelyingIn gives what a programme in a space asks of speech; nil where there is
// none, or speech is not wanted above the noise.
func RelyingIn(space *schema.Space) *Relying {
	if !space.Programme.Set() || !space.WantedOverNoise.Set() {
		return nil
	}
	r := &Relying{Space: space}
	noise, _ := noiseOf(space)
	level := func(of quantity.SoundLevel, at source.Span, note string) Figure[quantity.SoundLevel] {
		sum := of + quantity.SoundLevel(space.WantedOverNoise.V)
		return Figure[quantity.SoundLevel]{
			Value: sum, Sum: fmt.Sprintf("%s + %s = %s", of, space.WantedOverNoise.V, sum),
			From: []schema.Place{{Span: at, Note: note}, {Span: space.WantedOverNoise.Span, Note: "how far speech is to stand above"}},
		}
	}
	r.Needed = level(space.Programme.V, space.Programme.Span, "the programme")
	if noise.Known() && noise.Value > space.Programme.V {
		r.Needed = level(noise.Value, space.Noise.Span, "the noise")
		r.Needed.Assumed = noise.Assumed
	}
	if noise.Known() {
		r.Muted = level(noise.Value, space.Noise.Span, "the noise")
		r.Muted.Assumed = noise.Assumed
	} else {
		r.Muted.Missing = noise.Missing
	}
	return r
}
