package analysis

import (
	"fmt"
	"math"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Role is what a terminal of an attenuator is for.
type Role int

// Roles.
const (
	NoRole     Role = iota // not understood
	RoleIn                 // from the line
	RoleOut                // to the loudspeakers
	RoleCommon             // shared by both
	RoleLifts              // relay, or conductor of the override
)

// String names the conductor that belongs on it, as a design writes it.
func (r Role) String() string {
	switch r {
	case RoleIn:
		return "line"
	case RoleOut:
		return "loudspeakers"
	case RoleCommon:
		return "common"
	case RoleLifts:
		return "override"
	case NoRole:
	}
	return "not understood"
}

// Terminal is one terminal of an attenuator.
type Terminal struct {
	Name string // "1"
	Role Role
}

// ReadTerminals reads a map of terminals such as "1 in, 2 out, 3 common" or
// "1 line, 2 loudspeakers, 3 common, 4 and 5 relay". What it does not understand
// has NoRole.
func ReadTerminals(text string) []Terminal {
	var all []Terminal
	for _, part := range strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == ';' }) {
		words := strings.FieldsFunc(part, func(r rune) bool { return r == ' ' || r == '\t' || r == '=' || r == ':' })
		if len(words) == 0 {
			continue
		}
		names, rest := words[:1], words[1:]
		if roleOf(words[:1]) != NoRole { // "in 1": the name comes last
			names, rest = words[len(words)-1:], words[:len(words)-1]
		}
		if len(rest) > 1 && (rest[0] == "and" || rest[0] == "&" || rest[0] == "+") {
			names, rest = []string{names[0], rest[1]}, rest[2:]
		}
		for _, name := range names {
			all = append(all, Terminal{Name: name, Role: roleOf(rest)})
		}
	}
	return all
}

// roleOf finds what words say. A priority line in is of the override, a line out
// an output: the order of the questions matters.
func roleOf(words []string) Role {
	says := func(wanted ...string) bool {
		for _, w := range words {
			for _, word := range wanted {
				if strings.EqualFold(strings.Trim(w, "()."), word) {
					return true
				}
			}
		}
		return false
	}
	switch {
	case says("relay", "override", "priority", "coil"):
		return RoleLifts
	case says("common", "com", "return"):
		return RoleCommon
	case says("out", "output", "loudspeaker", "loudspeakers", "speaker", "speakers"):
		return RoleOut
	case says("in", "input", "line"):
		return RoleIn
	}
	return NoRole
}

// Wiring compares how an attenuator is wired with what its terminals are for.
type Wiring struct {
	// Right is the map that was stated, and Is what is connected.
	Right, Is []Terminal
	// Wrong are the terminals with a conductor that belongs on another one.
	Wrong []Terminal
	// Lacks are the roles among in, out and common that the map does not name.
	Lacks []Role
	// Unclear are terminals that are wired and not in the map, or not understood.
	Unclear []Terminal
}

// Mapped reads the map of an attenuator's terminals and tells whether it names
// all it has to: in, out and common.
func (a *Attenuator) Mapped() (terminals []Terminal, lacks []Role) {
	terminals = ReadTerminals(a.Part.Terminals.V)
	for _, r := range []Role{RoleIn, RoleOut, RoleCommon} {
		if nameOf(terminals, r) == "" {
			lacks = append(lacks, r)
		}
	}
	return terminals, lacks
}

// Wiring compares the conductors of an attenuator with its map of terminals.
func (a *Attenuator) Wiring() Wiring {
	var w Wiring
	w.Right, w.Lacks = a.Mapped()
	w.Is = ReadTerminals(a.Part.Wired.V)
	for _, t := range w.Is {
		right := NoRole
		for _, r := range w.Right {
			if r.Name == t.Name {
				right = r.Role
			}
		}
		switch {
		case right == NoRole || t.Role == NoRole:
			w.Unclear = append(w.Unclear, t)
		case right != t.Role:
			w.Wrong = append(w.Wrong, t)
		}
	}
	return w
}

// Exchanged tells that the conductors of two roles are on each other's terminals.
func (w *Wiring) Exchanged(a, b Role) bool {
	on := func(conductor, terminal Role) bool {
		name := nameOf(w.Right, terminal)
		for _, t := range w.Is {
			if t.Role == conductor && t.Name == name {
				return true
			}
		}
		return false
	}
	return on(a, b) && on(b, a)
}

func nameOf(all []Terminal, r Role) string {
	for _, t := range all {
		if t.Role == r {
			return t.Name
		}
	}
	return ""
}

// Reversed is the load an attenuator puts on the line when its input and output
// are exchanged and it stands down by stepDB. An autotransformer of ratio
// a = 10^(−stepDB/20) that is fed at its tap raises the voltage to 1/a and draws
// the load behind it (1/a)² times: P·10^(stepDB/10). It follows from the ideal
// transformer, V₁/V₂ = I₂/I₁, of any book on circuits.
func (a *Attenuator) Reversed(stepDB float64) Figure[quantity.Power] {
	return a.exchanged(math.Pow(10, stepDB/10), fmt.Sprintf("10^(%s/10)", quantity.Significant(stepDB, 4)))
}

// Transposed is the same with its output and common exchanged. The line then lies
// across the turns between input and tap, 1 − a of them, and the loudspeakers
// across the turns between tap and common, a of them: P·(a/(1 − a))². It grows
// without bound towards fully up.
func (a *Attenuator) Transposed(stepDB float64) Figure[quantity.Power] {
	ratio := math.Pow(10, -stepDB/20)
	text := quantity.Significant(ratio, 3)
	return a.exchanged(ratio*ratio/((1-ratio)*(1-ratio)), fmt.Sprintf("(%s / (1 − %s))²", text, text))
}

func (a *Attenuator) exchanged(times float64, text string) Figure[quantity.Power] {
	f := Figure[quantity.Power]{From: a.Behind.From, Missing: a.Behind.Missing}
	if !f.Known() {
		return f
	}
	f.Value = a.Behind.Value * quantity.Power(times)
	f.Sum = fmt.Sprintf("%s × %s = %s", a.Behind.Value, text, f.Value)
	return f
}

// TerminalsMissing lists what the design does not say of the terminals of its
// attenuators, once for each model or block, and counts the blocks.
func (s *System) TerminalsMissing() (missing []Missing, blocks int, all []*Attenuator) {
	seen := map[*schema.Attenuator]bool{}
	told := map[Missing]bool{}
	for _, l := range s.Lines {
		for _, a := range l.Attenuators {
			if seen[a.Part] { // lines that are like another share their devices
				continue
			}
			seen[a.Part] = true
			all = append(all, a)
			if _, lacks := a.Mapped(); len(lacks) > 0 {
				blocks++
				m := a.Missing("terminals of the attenuator", `terminals = "1 in, 2 out, 3 common"`)
				if !told[m] { // a design may have very many
					told[m] = true
					missing = append(missing, m)
				}
			}
		}
	}
	return missing, blocks, all
}
