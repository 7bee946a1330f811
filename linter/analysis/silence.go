package analysis

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Rank says how one source stands to another.
type Rank int

// Ranks.
const (
	Before   Rank = iota + 1 // it is to silence the other one
	Equal                    // neither is to silence the other
	After                    // the other one is to silence it
	Unranked                 // the design does not say
)

// State says what a source does to another one.
type State int

// States.
const (
	Silenced State = iota + 1 // the other one is silent on every line they share
	Heard                     // the other one is heard on at least one of them
	Unsure                    // the design does not say enough
)

// Silencing is what one source does to another one on the lines both are meant
// for.
type Silencing struct {
	By, Of *Source
	Rank   Rank
	Lines  []*Line
	State  State
	// Still are those of Lines on which the other one is, or may be, still
	// heard.
	Still []*Line
	// Mutes are the places that made the state: where the other one is
	// silenced, or the first units where they meet on the ways by which it is
	// still heard, or those of which not enough is said.
	Mutes []Mute
	// Silent are the places where the other one is silenced, whatever the state:
	// it may go on by another way, or on another line.
	Silent []Mute
	// Missing is what an unsure state, or Unranked, waits for.
	Missing []Missing
	// Assumed is what the rank takes for granted.
	Assumed []string
}

// Quiet are the lines on which the other one is surely silenced.
func (c *Silencing) Quiet() []*Line {
	var all []*Line
	for _, l := range c.Lines {
		if !slices.Contains(c.Still, l) {
			all = append(all, l)
		}
	}
	return all
}

// TurnsDown tells that on a line the other one is turned down, and not switched off.
func (s *System) TurnsDown(c *Silencing, l *Line) bool {
	n := slices.Index(s.Lines, l)
	return slices.ContainsFunc(c.Silent, func(m Mute) bool {
		return !math.IsInf(m.DepthDB, 1) && s.reached(m.Of.exits).has(n)
	})
}

// Wrongly tells that a source silences one that stands above it on a line: music any,
// an announcement one that does not silence it in turn; then inTurn is true.
func (s *System) Wrongly(c *Silencing) (wrongly, inTurn bool) {
	if c.Rank != After || len(c.Quiet()) == 0 {
		return false, false
	}
	if c.By.Part.Announces() && s.SilencesInTurn(c) {
		return false, true
	}
	return true, false
}

// SilencesInTurn tells that the other one silences this one.
func (s *System) SilencesInTurn(c *Silencing) bool {
	return slices.ContainsFunc(s.Silencings(c.Of), func(turned Silencing) bool { return turned.Of == c.By && turned.State == Silenced })
}

// Obstacle is what keeps a source from silencing another one in a unit.
type Obstacle int

// Obstacles, the one that is farthest from a mute first.
const (
	NoObstacle      Obstacle = iota
	SharedInput              // both come in by the same input
	DoesNotMute              // its input does not mute the other one's
	NotReceiving             // the other one's input is set not to be muted
	NothingTriggers          // its input reacts to nothing
	GivesNothing             // it gives neither contact nor signal
	WantsContact             // its input reacts to a contact and it gives a signal only
	PlugRefused              // its plug does not go into the input
	PlugTooSmall             // its plug has too few contacts for the contact
)

// Mute is what a source does to another one in one unit.
type Mute struct {
	Unit     *Unit
	By       Arrival
	Of       *Input // where the other one comes in
	Obstacle Obstacle
	// Missing is what keeps the answer from being known; empty with an Obstacle.
	Missing []Missing
	// DepthDB is how far the other one is turned down; +Inf when it is off.
	DepthDB float64
	Assumed []string
	// Plug is the connector a contact comes through, with its contacts and those
	// it needs; 0 where not known or not asked.
	Plug         string
	Cores, Needs int
}

// Arrival is an input that a source comes to.
type Arrival struct {
	Into *Input
	// Feed is its own plug there; nil when it comes through a link, on which
	// nothing but the signal itself arrives.
	Feed *Feed
}

// State is what the place comes to.
func (m *Mute) State() State {
	switch {
	case m.Obstacle != NoObstacle:
		return Heard
	case len(m.Missing) > 0:
		return Unsure
	}
	return Silenced
}

// Priorities gives, for every announcement, what it does to every other source
// that shares a line with it.
func (s *System) Priorities() []Silencing {
	var all []Silencing
	for _, by := range s.Sources {
		if by.Part.Announces() {
			all = append(all, s.Silencings(by)...)
		}
	}
	return all
}

// Silencings gives what one source does to every other that is meant for a line
// it is meant for, in the order of the design. A source of which the design
// does not say where it goes may share a line with any.
func (s *System) Silencings(by *Source) []Silencing {
	arrivals := map[*Unit][]Arrival{}
	for _, a := range s.arrivals(by, nil) {
		arrivals[a.Into.Unit] = append(arrivals[a.Into.Unit], a)
	}
	var all []Silencing
	for _, of := range s.Sources {
		if of == by {
			continue
		}
		c := Silencing{By: by, Of: of}
		c.Rank, c.Assumed, c.Missing = rank(by, of)
		shared, some := by.heard.common(of.heard)
		switch {
		case some:
			for n, l := range s.Lines {
				if shared.has(n) {
					c.Lines = append(c.Lines, l)
				}
			}
			walk := silencing{system: s, by: by, of: of, arrivals: arrivals, shared: shared}
			walk.follow(&c)
			for n, l := range s.Lines {
				if walk.still.has(n) {
					c.Still = append(c.Still, l)
				}
			}
		case !by.Connected() || !of.Connected():
			c.State = Unsure
			for _, src := range []*Source{by, of} {
				if !src.Connected() {
					c.Missing = append(c.Missing, src.MissingUnit())
				}
			}
		default:
			continue
		}
		all = append(all, c)
	}
	return all
}

// rank compares two sources. Announcements stand above music where priorities
// are not written: that is what paging means.
func rank(by, of *Source) (Rank, []string, []Missing) {
	a, b := by.Part, of.Part
	if a.Priority.Set() && b.Priority.Set() {
		switch {
		case a.Priority.V < b.Priority.V:
			return Before, nil, nil
		case a.Priority.V > b.Priority.V:
			return After, nil, nil
		}
		return Equal, nil, nil
	}
	const usual = "announcements come before music where priorities are not written"
	switch {
	case a.Announces() && !b.Announces():
		return Before, []string{usual}, nil
	case !a.Announces() && b.Announces():
		return After, []string{usual}, nil
	case !a.Priority.Set() && !b.Priority.Set():
		return Equal, nil, nil
	}
	unsaid := of
	if b.Priority.Set() {
		unsaid = by
	}
	return Unranked, nil, []Missing{unsaid.Missing("priority", "priority = 2")}
}

// arrivals gives every input a source comes to, nearest first, when nothing
// passes one of them (nil: all are passed). Each input is followed once.
func (*System) arrivals(src *Source, without *Input) []Arrival {
	var all []Arrival
	seen := map[*Input]bool{}
	var todo []*Input
	visit := func(i *Input, f *Feed) {
		if f != nil || !i.Contact() { // a contact comes on its own wires, never through a link
			all = append(all, Arrival{Into: i, Feed: f})
		}
		if !seen[i] {
			seen[i] = true
			todo = append(todo, i)
		}
	}
	for _, f := range src.Feeds {
		if f.Into != nil {
			visit(f.Into, f)
		}
	}
	linked := map[*Input]bool{}
	for len(todo) > 0 {
		i := todo[0]
		todo = todo[1:]
		if i == without {
			continue
		}
		for _, l := range i.exits.links {
			if !linked[l.Into] {
				linked[l.Into] = true
				visit(l.Into, nil)
			}
		}
	}
	return all
}

// silencing follows a source through the chain while another one speaks.
type silencing struct {
	system   *System
	by, of   *Source
	arrivals map[*Unit][]Arrival // of by
	shared   lineSet

	still lineSet // of shared

	// Where of comes through links: at all, and without passing one input. Nil
	// until asked.
	comes, comesWithout map[*Input]bool
	without             *Input
}

// passing is a source that comes to an input.
type passing struct {
	at   *Input
	link bool
	met  *Mute // the first place on its way that did not silence it, or of which not enough is said
}

// follow fills in the state: it goes the ways of the other source first as far
// as nothing silences it, then also where something may.
func (w *silencing) follow(c *Silencing) {
	w.still = newLineSet(len(w.system.Lines))
	seen := map[*Input]bool{}
	var silent, met []Mute
	var perhaps []passing
	run := func(todo []passing) {
		for len(todo) > 0 {
			p := todo[0]
			todo = todo[1:]
			switch best := w.best(p); {
			case best == nil:
			case best.State() == Silenced:
				silent = append(silent, *best)
				continue
			case best.State() == Unsure && (p.met == nil || p.met.State() != Unsure):
				perhaps = append(perhaps, passing{p.at, p.link, best})
				continue
			case p.met == nil:
				p.met = best
			}
			todo = w.out(p, seen, todo, &met)
		}
	}
	var start []passing
	for _, f := range w.of.Feeds {
		if f.Into != nil && !seen[f.Into] && f.Into.exits.leads {
			seen[f.Into] = true
			start = append(start, passing{at: f.Into})
		}
	}
	run(start)
	defer func() { c.Silent = distinctMutes(silent) }()
	if w.still.count() > 0 {
		c.State, c.Mutes = Heard, distinctMutes(met)
		return
	}
	var beyond []passing
	for _, p := range perhaps {
		beyond = w.out(p, seen, beyond, &met)
	}
	run(beyond)
	if w.still.count() == 0 {
		c.State, c.Mutes = Silenced, distinctMutes(silent)
		return
	}
	c.State, c.Mutes = Unsure, distinctMutes(met)
	for _, m := range c.Mutes {
		c.Missing = MergeMissing(c.Missing, m.Missing)
	}
}

// out lets a source leave a unit: it marks the shared lines it is then on, and
// adds the inputs it comes to next.
func (w *silencing) out(p passing, seen map[*Input]bool, todo []passing, met *[]Mute) []passing {
	heard := false
	for _, n := range p.at.exits.lines {
		if w.shared.has(n) {
			heard = true
			w.still.add(n)
		}
	}
	if heard && p.met != nil {
		*met = append(*met, *p.met)
	}
	for _, l := range p.at.exits.links {
		if l.Into.exits.leads && !seen[l.Into] {
			seen[l.Into] = true
			todo = append(todo, passing{l.Into, true, p.met})
		}
	}
	return todo
}

// best gives the most the announcement does, in the unit of an input, to what
// comes in there: nil when it does not come to that unit in a way that matters.
func (w *silencing) best(p passing) *Mute {
	var best *Mute
	for _, a := range w.arrivals[p.at.Unit] {
		if a.Into == p.at && a.Feed == nil && p.link && len(p.at.Links) == 1 {
			continue // they came together: they met before
		}
		if mutes, stated := a.Into.Mutes(p.at); !mutes && !stated && a.Feed == nil && w.alsoComes(a.Into, p.at) {
			continue // what comes that way too is not silenced there
		}
		m := w.mute(a, p.at)
		state := m.State()
		if state != Silenced && !a.Into.Contact() && !meet(a.Into, p.at) {
			continue // through channels of their own
		}
		if state == Unsure && a.Feed == nil && w.alsoComes(a.Into, p.at) {
			continue
		}
		if best == nil || better(&m, best) {
			best = &m
		}
	}
	return best
}

// better orders by state, then by how much is lacking.
func better(a, b *Mute) bool {
	order := map[State]int{Silenced: 2, Unsure: 1, Heard: 0}
	if x, y := order[a.State()], order[b.State()]; x != y {
		return x > y
	}
	if a.State() == Silenced {
		return a.DepthDB > b.DepthDB
	}
	return a.Obstacle > b.Obstacle
}

// meet tells that two inputs of a unit can leave it together.
func meet(a, b *Input) bool {
	all := a.Unit.exits[""]
	return a.exits == b.exits || a.exits == all || b.exits == all || a.Unit.loose
}

// alsoComes tells that the other source comes to an input through a link, on a
// way that does not pass another input.
func (w *silencing) alsoComes(i, without *Input) bool {
	if w.comes == nil {
		w.comes = w.links(nil)
	}
	if !w.comes[i] || len(without.exits.links) == 0 {
		return w.comes[i]
	}
	if w.without != without {
		w.without, w.comesWithout = without, w.links(without)
	}
	return w.comesWithout[i]
}

// links gives the inputs to which the other source comes through links, when
// nothing passes one of them.
func (w *silencing) links(without *Input) map[*Input]bool {
	comes := map[*Input]bool{}
	for _, a := range w.system.arrivals(w.of, without) {
		if a.Feed == nil {
			comes[a.Into] = true
		}
	}
	return comes
}

func distinctMutes(all []Mute) []Mute {
	var out []Mute
	for _, m := range all {
		if !slices.ContainsFunc(out, func(o Mute) bool { return o.By == m.By && o.Of == m.Of }) {
			out = append(out, m)
		}
	}
	return out
}

// Try works out what the source would do to what comes in by an input if it came
// to another one of that unit, or with another plug.
func (s *System) Try(by *Source, arrival Arrival, of *Input) Mute {
	w := silencing{system: s, by: by}
	return w.mute(arrival, of)
}

// mute works out what the announcement does at one of its inputs to what comes
// in by another one.
func (w *silencing) mute(a Arrival, of *Input) Mute {
	m := Mute{Unit: of.Unit, By: a, Of: of, DepthDB: math.Inf(1)}
	if a.Into.Part == nil || of.Part == nil {
		m.Missing = MergeMissing(a.Into.whichInput(w.by), of.whichInput(w.of))
		return m
	}
	if a.Into == of {
		m.Obstacle = SharedInput
		return m
	}
	m.sends()
	if of.Part.MutedByOthers.Set() && !of.Part.MutedByOthers.V && m.Obstacle == NoObstacle {
		m.Obstacle = NotReceiving
	}
	if m.Obstacle == NoObstacle {
		w.triggers(&m)
	}
	if m.Obstacle != NoObstacle {
		m.Missing = nil
		w.elsewhere(&m)
		return m
	}
	m.depth()
	return m
}

// whichInput is what is not said when something goes into a unit.
func (i *Input) whichInput(src *Source) []Missing {
	if i.Part != nil {
		return nil
	}
	var all []Missing
	for _, f := range i.Feeds {
		if f.Source == src {
			all = append(all, f.MissingInput())
		}
	}
	if len(all) > 0 {
		return all
	}
	for _, l := range i.Links {
		all = append(all, l.MissingInput())
	}
	return all
}

// Missing is what the design does not say about a plug.
func (f *Feed) Missing(what, write string) Missing {
	m := f.Source.Missing(what, write)
	m.Where = f.Part.Header
	return m
}

// MissingInput is that the design does not say into which input it goes.
func (f *Feed) MissingInput() Missing {
	write := `input = "Aux 1"`
	switch f.Source.Part.Kind {
	case schema.KindMicrophone:
		write = `input = "Mic 1"`
	case schema.KindTelephone:
		write = `input = "Tel"`
	case kindMuteLink:
		write = `input = "Fire mute"`
	}
	return f.Missing("input it goes to", write)
}

// MissingInput is that the design does not say into which input it goes.
func (l *Link) MissingInput() Missing { return l.Missing("input it goes to", `input = "Line in"`) }

// Missing is what the design does not say about a link.
func (l *Link) Missing(what, write string) Missing {
	return Missing{What: what, Part: l.Named(), Where: l.Part.Send.Header, Write: write}
}

// Named writes the link as it is referred to: send "Main left" of mixer "Desk".
func (l *Link) Named() string {
	return named("send", l.Part.Send.Name) + " of " + l.From.Named()
}

// Mutes tells whether the design says that an input silences another one of its
// unit; stated is false where it says nothing about it.
func (i *Input) Mutes(of *Input) (mutes, stated bool) {
	if i.Part == nil || of.Part == nil || i == of {
		return false, i == of
	}
	if i.Part.Mutes.Set() {
		return i.Part.Mutes.All || slices.ContainsFunc(i.Part.Mutes.Names, func(n schema.Value[string]) bool { return n.V == of.Part.Name }), true
	}
	return false, i.Part.Triggers.Set() && len(i.Part.Triggers.Items) == 0
}

func (m *Mute) sends() {
	mutes, stated := m.By.Into.Mutes(m.Of)
	switch {
	case mutes:
	case stated:
		m.Obstacle = DoesNotMute
	default:
		m.Missing = append(m.Missing, m.By.Into.Missing("which inputs it mutes", fmt.Sprintf("mutes = [%q]", m.Of.Part.Name)))
	}
}

// Accepts tells whether an input reacts to a trigger, "contact" or "signal".
func (i *Input) Accepts(trigger string) bool {
	return i.Contact() && trigger == "contact" || slices.ContainsFunc(i.Part.Triggers.Items, func(t schema.Value[string]) bool { return t.V == trigger })
}

// triggers asks whether what the announcement gives is what its input reacts to.
func (w *silencing) triggers(m *Mute) {
	i, gives := m.By.Into, w.by.Part.Trigger
	switch {
	case gives.V == "none":
		m.Obstacle = GivesNothing
	case !i.Contact() && !i.Part.Triggers.Set():
		m.Missing = append(m.Missing, i.Missing("what makes it silence others", `triggers = ["contact"]`))
	case i.Accepts("signal"):
		if !gives.Set() {
			m.Assumed = append(m.Assumed, fmt.Sprintf("%s triggers %s with its own signal: its trigger is not stated", w.by.Part.Name, i.Name()))
		}
	case !i.Accepts("contact"):
		m.Obstacle = NothingTriggers
	case gives.V == "signal":
		m.Obstacle = WantsContact
	case m.By.Feed == nil:
		m.Missing = append(m.Missing, w.separateContact(i))
	default:
		if !i.Contact() {
			w.plug(m)
		}
		if !gives.Set() && m.Obstacle == NoObstacle {
			m.Missing = append(m.Missing, w.by.Missing("what it gives to silence others", `trigger = "contact"`))
		}
	}
}

// elsewhere takes back an obstacle met through a link when a contact, wired
// separately, could silence at another input of the unit.
func (w *silencing) elsewhere(m *Mute) {
	gives := w.by.Part.Trigger
	if m.By.Feed != nil || m.Obstacle == SharedInput || m.Obstacle == NotReceiving || gives.Set() && gives.V != "contact" {
		return
	}
	for _, i := range m.Unit.Inputs {
		if mutes, _ := i.Mutes(m.Of); mutes && i.Accepts("contact") {
			m.Obstacle = NoObstacle
			m.Missing = []Missing{w.separateContact(i)}
			return
		}
	}
}

// separateContact is what is not said when the contact would have to reach a
// unit on wires of its own. A design says it with a second place the source goes
// to: contact terminals.
func (w *silencing) separateContact(i *Input) Missing {
	write := fmt.Sprintf("also { into = %q, input = %q }", i.Unit.Part.Name, i.Part.Name)
	if !i.Contact() {
		write = fmt.Sprintf(`also { into = %q, input = "…" }, the input one with takes = "contact"`, i.Unit.Part.Name)
	}
	return w.by.Missing("whether its contact is wired to a later unit too", write)
}

// leastCores is how many conductors carry a contact beside an unbalanced
// signal: the contact has one of its own and shares the other.
const leastCores = 3

// plug asks whether the connector carries the contact.
func (w *silencing) plug(m *Mute) {
	i, f := m.By.Into, m.By.Feed
	sockets := i.Part.Connectors
	m.Needs = i.Part.NeedsCores.V
	plug := f.Part.Connector.V
	switch {
	case f.Part.Connector.Set():
	case len(sockets.Items) == 1:
		plug = sockets.Items[0].V
		m.Assumed = append(m.Assumed, fmt.Sprintf("%s has the one connector that %s takes, %s", w.by.Part.Name, i.Name(), plug))
	default:
		m.Missing = append(m.Missing, f.Missing("connector at the unit", `connector = "DIN 5"`))
		return
	}
	m.Plug = plug
	socket := plug
	if sockets.Set() {
		at := slices.IndexFunc(sockets.Items, func(s schema.Value[string]) bool { return Fits(plug, s.V) })
		if at < 0 {
			m.Obstacle = PlugRefused
			return
		}
		socket = sockets.Items[at].V
	} else {
		m.Assumed = append(m.Assumed, fmt.Sprintf("%s has a socket for the %s plug", i.Name(), plug))
	}
	m.Cores = w.system.Cores(plug)
	if c := w.system.Cores(socket); c > 0 && (m.Cores == 0 || c < m.Cores) {
		m.Cores = c
	}
	switch {
	case m.Cores == 0:
		m.Missing = append(m.Missing, Missing{What: "contacts of a connector", Part: named("connector", plug), Where: f.Part.Header, Write: fmt.Sprintf("connector_model %q { cores = 5 }", plug)})
	case m.Needs > 0:
		if m.Cores < m.Needs {
			m.Obstacle = PlugTooSmall
		}
	case m.Cores < leastCores:
		m.Obstacle, m.Needs = PlugTooSmall, leastCores
	case m.Cores == leastCores:
		m.Missing = append(m.Missing, i.Missing("contacts a plug needs for its contact", "needs_cores = 5"))
	default:
		m.Assumed = append(m.Assumed, fmt.Sprintf("the talk contact has its place among the %d contacts of the connector, %s", m.Cores, plug))
	}
}

// Cores is how many conductors a connector carries, 0 when that is not known.
func (s *System) Cores(connector string) int {
	if c := s.Design.Connector(connector); c != nil {
		return c.Cores.V
	}
	return 0
}

// Fits tells that a plug goes into a socket. Terminals of any kind take bare
// wires, so that one set of them is as good as another.
func Fits(plug, socket string) bool {
	a, b := strings.Join(strings.Fields(plug), " "), strings.Join(strings.Fields(socket), " ")
	const bare = "terminals"
	return strings.EqualFold(a, b) || strings.Contains(strings.ToLower(a), bare) && strings.Contains(strings.ToLower(b), bare)
}

// depth reads how far the input turns others down.
func (m *Mute) depth() {
	v := m.By.Into.Part.MuteDepth
	switch {
	case !v.Set():
		if len(m.Missing) == 0 {
			m.Assumed = append(m.Assumed, m.By.Into.Name()+" turns others off: its mute_depth is not stated")
		}
	case strings.EqualFold(v.V, "full"):
	default:
		gain, err := quantity.ParseGain(v.V)
		if err != nil {
			m.Missing = append(m.Missing, m.By.Into.Missing("mute depth in dB", `mute_depth = "full"`))
			return
		}
		m.DepthDB = math.Abs(float64(gain))
	}
}
