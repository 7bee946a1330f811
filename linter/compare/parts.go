package compare

import (
	"loudlint/linter"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Part is a part that one of the designs has and the other has not, or has under
// another name.
type Part struct {
	Change Change
	Kind   string // as in check.Step
	Line   string // the line a device stands on: its name now, or before for a removed one
	Was    string // its name before; "" for an added one
	Is     string // its name now; "" for a removed one
	// Stated tells of a renamed part that it says so itself; otherwise it is known
	// by its content, which no other part has.
	Stated bool
	// Count is how many a device stands for; Devices, of a line that was added or
	// removed as a whole, how many stand on it, runs around them not counted.
	Count, Devices int
	Old, New       source.Span // its headers
}

// Change is what happened to a part.
type Change int

// Changes of parts.
const (
	Added Change = iota + 1
	Renamed
	Removed
)

// String gives "added", "renamed" or "removed".
func (c Change) String() string {
	switch c {
	case Added:
		return "added"
	case Renamed:
		return "renamed"
	case Removed:
		return "removed"
	}
	return "none"
}

// pairing is what is known of the parts of two designs.
type pairing struct {
	renames []linter.Rename
	changes []Part
}

// scope is where names are unique: the parts of one kind, devices of one line.
type scope struct{ kind, line string }

// pairParts pairs the parts of two designs. Devices are paired on lines that are;
// those of a line that was added or removed go with it.
func pairParts(before, now *schema.Design) *pairing {
	p := &pairing{}
	old, current := scopesOf(before), scopesOf(now)
	for _, kind := range []string{schema.KindAmplifier, schema.KindMixer} {
		p.pair(scope{kind: kind}, old[scope{kind: kind}], current[scope{kind: kind}])
	}
	p.lines(old, current)
	for _, kind := range []string{
		"group", schema.KindMicrophone, schema.KindMusic, schema.KindMessage, schema.KindTelephone, "mute_link",
		"space", "reading", "supply", "part",
	} {
		p.pair(scope{kind: kind}, old[scope{kind: kind}], current[scope{kind: kind}])
	}
	return p
}

func (p *pairing) lines(old, current map[scope][]schema.NamedPart) {
	first := len(p.changes)
	lines := p.pair(scope{kind: "line"}, old[scope{kind: "line"}], current[scope{kind: "line"}])
	for i := first; i < len(p.changes); i++ {
		switch c := &p.changes[i]; c.Change {
		case Added:
			c.Devices = devicesOn(current, c.Is)
		case Removed:
			c.Devices = devicesOn(old, c.Was)
		case Renamed:
		}
	}
	for _, line := range lines {
		for _, kind := range deviceKinds() {
			here := scope{kind, line.now.Part.Name}
			p.pair(here, old[scope{kind, line.old.Part.Name}], current[here])
		}
	}
}

func deviceKinds() []string {
	return []string{"loudspeaker", "attenuator", "branch", "existing", "line_end"}
}

func devicesOn(parts map[scope][]schema.NamedPart, line string) int {
	n := 0
	for _, kind := range deviceKinds() {
		for _, part := range parts[scope{kind, line}] {
			n += part.Count
		}
	}
	return n
}

func scopesOf(d *schema.Design) map[scope][]schema.NamedPart {
	all := map[scope][]schema.NamedPart{}
	for part := range d.Named() {
		s := scope{part.Kind, part.Line}
		all[s] = append(all[s], part)
	}
	return all
}

// couple is a part before and now.
type couple struct{ old, now schema.NamedPart }

// pair pairs the parts of a scope: by what a part says it was formerly called,
// then by name, then by content. What is left was removed or added.
func (p *pairing) pair(here scope, old, current []schema.NamedPart) []couple {
	m := &matching{old: old, current: current, oldTaken: make([]bool, len(old)), mate: make([]int, len(current))}
	for i := range m.mate {
		m.mate[i] = -1
	}
	m.byFormerName()
	stated := append([]int(nil), m.mate...)
	m.byName()
	m.byContent()
	var couples []couple
	for i, now := range current {
		at := m.mate[i]
		if at < 0 {
			p.changes = append(p.changes, Part{Change: Added, Kind: here.kind, Line: here.line, Is: now.Part.Name, Count: now.Count, New: now.Part.Header})
			continue
		}
		was := old[at]
		couples = append(couples, couple{was, now})
		if was.Part.Name != now.Part.Name {
			p.renames = append(p.renames, linter.Rename{Kind: here.kind, Line: here.line, Was: was.Part.Name, Is: now.Part.Name})
			p.changes = append(p.changes, Part{
				Change: Renamed, Kind: here.kind, Line: here.line, Was: was.Part.Name, Is: now.Part.Name,
				Stated: stated[i] >= 0, Count: now.Count, Old: was.Part.Header, New: now.Part.Header,
			})
		}
	}
	for i, was := range old {
		if !m.oldTaken[i] {
			p.changes = append(p.changes, Part{Change: Removed, Kind: here.kind, Line: was.Line, Was: was.Part.Name, Count: was.Count, Old: was.Part.Header})
		}
	}
	return couples
}

// matching finds for each current part the old one that it was.
type matching struct {
	old, current []schema.NamedPart
	oldTaken     []bool
	mate         []int // index in old, -1 for none
}

func (m *matching) take(now, was int) {
	m.mate[now] = was
	m.oldTaken[was] = true
}

// free lists the old parts that nothing is paired with, by a key.
func (m *matching) free(key func(schema.NamedPart) string) map[string][]int {
	all := map[string][]int{}
	for i, was := range m.old {
		if !m.oldTaken[i] {
			all[key(was)] = append(all[key(was)], i)
		}
	}
	return all
}

func nameOf(p schema.NamedPart) string { return p.Part.Name }

// byFormerName passes over what was said in the old design already: then the part
// had its present name there.
func (m *matching) byFormerName() {
	old := m.free(nameOf)
	for i, now := range m.current {
		former := now.Part.Formerly
		if !former.Set() || m.mate[i] >= 0 {
			continue
		}
		if same := old[now.Part.Name]; len(same) > 0 && m.old[same[0]].Part.Formerly.V == former.V {
			continue
		}
		if all := old[former.V]; len(all) > 0 && !m.oldTaken[all[0]] {
			m.take(i, all[0])
		}
	}
}

// byName pairs runs of one name in their order.
func (m *matching) byName() {
	old := m.free(nameOf)
	for i, now := range m.current {
		if all := old[now.Part.Name]; m.mate[i] < 0 && len(all) > 0 {
			m.take(i, all[0])
			old[now.Part.Name] = all[1:]
		}
	}
}

// byContent pairs a part with the one that said the same, if it is the only one
// on either side. A part that says nothing is known by its name alone.
func (m *matching) byContent() {
	content := func(p schema.NamedPart) string { return p.Part.Content() }
	old := m.free(content)
	if len(old) == 0 {
		return
	}
	current := map[string][]int{}
	for i, now := range m.current {
		if m.mate[i] < 0 {
			current[content(now)] = append(current[content(now)], i)
		}
	}
	for text, all := range current { // each entry stands for itself, whatever the order
		if was := old[text]; len(all) == 1 && len(was) == 1 && text != emptyContent {
			m.take(all[0], was[0])
		}
	}
}

// emptyContent is that of a part that says nothing.
const emptyContent = "{ } "
