package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/conductor"
	"loudlint/schema"
)

// WireClass asks, under US rules, whether the marking of a cable suits the class
// of the output and the place the cable lies in.
var WireClass = &check.Check{
	ID:      "wire-class",
	Asks:    "Under US rules, does the marking of each cable suit the class of its amplifier's output and the void it passes?",
	Summary: "Cable of a loudspeaker line is marked for less than its circuit or its way needs, or the amplifier bears no class.",
	Why: "In the United States the class marked at an amplifier's output, not its voltage or its watts, decides how its lines are wired: Class 2 and 3 as cable of that marking, " +
		"Class 1 with the methods of power wiring, which mostly means conduit. Smoke of cable in a void that carries air goes to every room. An inspector who finds it wrong has it pulled out.",
	How: "Only where wiring_rules is \"US\". Compares the class of each line's output with the marking of its cables by the order of substitution of NEC (2020) Table 725.154(A), and asks for plenum cable (or a metal raceway) " +
		"where a space the line serves has a void that carries air. An output without a class counts as Class 1, the strictest, and the amplifier has a warning that says so. " +
		"Whether the void carries air is asked only where it matters: behind suspended ceilings and ceiling loudspeakers, when the cable is no plenum cable. " +
		"A cable of its own for the override of attenuators is judged like the line's where it carries a third conductor; for relays it has to be of Class 2 at least, and fit for the void.",
	Basis: "NEC (2020) 640.9(C), 725.46, 725.130, 725.135, 725.154 and 300.22(C), from memory",
	Blind: "The class of what feeds relays is not known, and that circuits of Class 1 and of Class 2 or 3 may not share a cable or raceway is not looked at. Risers, cable of limited use (X), splices and their boxes, supports, abandoned cable and the insulation of Class 1 conductors (600 V) are not looked at; nor are voids of spaces that the line only passes through, " +
		"and whether a raceway is of metal. Canada has markings of its own (FT4, FT6) and is not judged.",
	Severity: check.Error,
	Cautions: []string{codesFirst},
	Failing: check.Example{
		Shows: "Class 2 cable on a Class 3 output.",
		Design: `system "Clinic" { wiring_rules = "US" }
amplifier "Amp" {
  rated_power  = "120 W"
  wiring_class = "Class 3"
}
cable_model "own/16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL2"
}
line "Exam rooms" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/16-2"
  loudspeaker "E" { tap = "2 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "Class 3 cable on it.",
		Design: `system "Clinic" { wiring_rules = "US" }
amplifier "Amp" {
  rated_power  = "120 W"
  wiring_class = "Class 3"
}
cable_model "own/16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL3"
}
line "Exam rooms" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/16-2"
  loudspeaker "E" { tap = "2 W" }
}
`,
	},
	Judge: check.Together(check.EachJob(wireClassRules), check.EachAmplifier(wireClassStated), check.EachLine(wireClass), check.EachLine(overrideClass)),
}

func underUSRules(s *analysis.System) bool { return s.Design.System.WiringRules.V == "US" }

// wireClassRules asks once whose rules apply.
func wireClassRules(r *check.Report, s *analysis.System) {
	if s.Design.System.WiringRules.Set() || len(wired(s)) == 0 {
		r.NotAsked()
		return
	}
	r.Open("Whether the cable has to bear a marking is not stated: it depends on whose wiring rules apply.", wiringRulesMissing(s)).Key("wiring rules")
}

// wireClassStated asks whether the outputs in use say their class.
func wireClassStated(r *check.Report, amp *analysis.Amplifier) {
	if !underUSRules(r.System()) {
		r.NotAsked()
		return
	}
	var unmarked, marked []string
	for _, o := range amp.Outputs {
		switch class := wiringClass(o); {
		case len(o.Lines) == 0:
		case !class.Set():
			unmarked = append(unmarked, o.Part.Name)
		default:
			marked = append(marked, fmt.Sprintf("%s is %s", o.Part.Name, class.V))
		}
	}
	switch {
	case len(unmarked) > 0:
		r.Fail(check.Warning, fmt.Sprintf("Nothing says which wiring class %s of amplifier %q %s marked for. Unmarked counts as Class 1: its lines are then wired as power is, mostly in conduit, and CL2 and CL3 cable may not be used.",
			listed(unmarked), amp.Part.Name, verb(len(unmarked), "is", "are"))).Key("class not stated").Caution(codesFirst).
			Remedy(check.Advice, `Read the class at its loudspeaker terminals or ask its maker, and write it: wiring_class = "Class 3". Where it bears none, wire the lines by the methods of Class 1 and write that.`)
	case len(marked) > 0:
		r.Pass(fmt.Sprintf("The outputs of amplifier %q in use bear their class: %s.", amp.Part.Name, listed(marked))).Caution(codesFirst)
	default:
		r.NotAsked()
	}
}

// wireClass judges the cable of one line.
func wireClass(r *check.Report, l *analysis.Line) {
	if !underUSRules(r.System()) || len(l.Part.Devices) == 0 {
		r.NotAsked()
		return
	}
	w := newWireNeeds(r.System(), l)
	cables, missing := l.Cables()
	if w.class == 0 {
		w.unmarked(r, cables)
		return
	}
	missing, fails := w.judge(r, distinct(cables), missing)
	switch {
	case fails:
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether the cable of line %q suits its circuit cannot be told.", l.Part.Name), missing...)
	case w.class == 1:
		r.Pass(fmt.Sprintf("Line %q is Class 1 and its cable is power wiring.", l.Part.Name))
	default:
		r.Pass(fmt.Sprintf("Line %q is Class %d%s, and its cable is marked for that.", l.Part.Name, w.class, w.through()))
	}
}

// overrideClass judges a cable that carries the override of a line alone. On a
// third conductor that is the line's own circuit. Relays are a circuit of their
// own, of which no class is stated: what is judged is the least that cable of such
// circuits has to be, and the void.
func overrideClass(r *check.Report, l *analysis.Line) {
	n, carries, ok := l.Override()
	if !ok || carries == analysis.OverrideUnsaid || !underUSRules(r.System()) || len(l.Part.Devices) == 0 {
		r.NotAsked()
		return
	}
	w := newWireNeeds(r.System(), l)
	circuit := "the circuit of the line"
	if carries == analysis.OverrideRelays {
		volts, _ := relayVolts(r.System(), l)
		w.class, w.marked, circuit = 2, schema.Value[string]{}, fmt.Sprintf("relays at %s", volts)
	}
	if w.class == 0 {
		w.forbidden(r, []analysis.NamedCable{n})
		r.NotAsked() // the amplifier is warned
		return
	}
	switch missing, fails := w.judge(r, []analysis.NamedCable{n}, nil); {
	case fails:
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether the override cable of line %q suits its circuit cannot be told.", l.Part.Name), missing...).Key(overrideKey)
	default:
		r.Pass(fmt.Sprintf("The override cable of line %q is marked for %s%s.", l.Part.Name, circuit, w.through())).Key(overrideKey)
	}
}

// judge fails the cables that do not suit, and adds what is not known of others.
func (w *wireNeeds) judge(r *check.Report, cables []analysis.NamedCable, missing []analysis.Missing) (lacks []analysis.Missing, fails bool) {
	for _, n := range cables {
		marking, known := markingOf(n)
		switch {
		case !known && w.class == 1 && w.raceway:
			// Conductors in a raceway: the wiring method is stated, if not their type.
		case !known && w.class == 1 && !w.line.Part.Containment.Set():
			missing = analysis.MergeMissing(missing, []analysis.Missing{containmentMissing(w.line, "conduit")})
		case !known:
			missing = analysis.MergeMissing(missing, []analysis.Missing{n.Missing("US marking of the cable", `marking = "`+w.least(false)+`"`)})
		case !marking.Serves(w.class, w.air, w.raceway):
			fails = true
			w.fail(r, n)
		case !w.air && !marking.Serves(w.class, true, w.raceway):
			missing = analysis.MergeMissing(missing, w.voids) // it matters whether there is one
		}
	}
	return missing, fails
}

// wireNeeds is what the cable of a line has to be.
type wireNeeds struct {
	line    *analysis.Line
	class   int // 0: not stated
	marked  schema.Value[string]
	raceway bool
	air     bool // a space it serves has a void that carries air
	airIn   *schema.Space
	voids   []analysis.Missing // spaces whose void may carry air
}

func newWireNeeds(s *analysis.System, l *analysis.Line) *wireNeeds {
	w := &wireNeeds{line: l, raceway: raceway(l.Part.Containment.V)}
	if l.Output != nil {
		w.marked = wiringClass(l.Output)
		w.class = map[string]int{"Class 1": 1, "Class 2": 2, "Class 3": 3}[w.marked.V]
	}
	for _, run := range l.Runs {
		space := s.Design.Space(run.Part.Space.V)
		hidden := run.Part.Class.V == "ceiling"
		switch {
		case space == nil:
			if hidden {
				w.voids = analysis.MergeMissing(w.voids, []analysis.Missing{{What: voidMissing, Part: fmt.Sprintf("line %q", l.Part.Name), Where: l.Part.Header, Write: `space "…" { air_handling_void = false } and space = "…" in its loudspeakers`}})
			}
		case space.AirHandlingVoid.V:
			w.air, w.airIn = true, space
		case !space.AirHandlingVoid.Set() && (hidden || suspended(space)):
			w.voids = analysis.MergeMissing(w.voids, []analysis.Missing{{What: voidMissing, Part: fmt.Sprintf("space %q", space.Name), Where: space.Header, Write: "air_handling_void = false"}})
		}
	}
	return w
}

const voidMissing = "whether the void above the ceiling carries air for the building"

// suspended tells that a ceiling has a void above it.
func suspended(space *schema.Space) bool {
	text := strings.ToLower(space.Ceiling.V)
	for _, word := range []string{"suspended", "drop", "false", "tile", "grid"} {
		if strings.Contains(text, word) {
			return true
		}
	}
	return false
}

// markingOf gives what the marking of a cable stands for, when it bears one that
// is known.
func markingOf(n analysis.NamedCable) (conductor.Marking, bool) {
	if n.Cable.Model == nil {
		return conductor.Marking{}, false
	}
	return conductor.ParseMarking(n.Cable.Model.Marking.V)
}

// through says that the way passes a void that carries air.
func (w *wireNeeds) through() string {
	if !w.air {
		return ""
	}
	return fmt.Sprintf(" and passes the void above %q, which carries air", w.airIn.Name)
}

// least is the marking that would do, and with substitutes what else.
func (w *wireNeeds) least(substitutes bool) string {
	if w.class == 1 {
		if substitutes {
			return "power wiring, such as THHN in conduit or MC"
		}
		return "THHN"
	}
	names := []string{fmt.Sprintf("CL%d", w.class), "CM"}
	if w.class == 2 {
		names = []string{"CL2", "CL3", "CM"}
	}
	if w.air && !w.raceway {
		for i := range names {
			names[i] += "P"
		}
	}
	if !substitutes {
		return names[0]
	}
	return alternatives(names)
}

// unmarked judges a line whose output bears no class: the amplifier is warned,
// and only what is wrong for every class is said here.
func (w *wireNeeds) unmarked(r *check.Report, cables []analysis.NamedCable) {
	if w.line.Output == nil || w.line.Amplifier == nil {
		r.Open(fmt.Sprintf("Which wiring class line %q has cannot be told.", w.line.Part.Name), w.line.VoltsMissing()...)
		return
	}
	if !w.forbidden(r, distinct(cables)) {
		r.NotAsked() // the amplifier is warned
	}
}

// forbidden fails the cables that may not lie where they do whatever the class of
// their circuit.
func (w *wireNeeds) forbidden(r *check.Report, cables []analysis.NamedCable) bool {
	fails := false
	for _, n := range cables {
		if marking, known := markingOf(n); known && w.air && !marking.Serves(2, true, w.raceway) {
			fails = true
			a := r.Fail(check.Error, fmt.Sprintf("Line %q passes the void above %q, which carries air, and %s is marked %s: whatever the class of its output, it may not lie there without a metal raceway.",
				w.line.Part.Name, w.airIn.Name, cableOf(n), n.Cable.Model.Marking.V))
			w.places(a, n)
			a.Remedy(check.Advice, "Lay cable marked for plenums, or put it in a metal raceway, once the class of the output is known.")
		}
	}
	return fails
}

// fail says what is wrong with a cable and what would do.
func (w *wireNeeds) fail(r *check.Report, n analysis.NamedCable) {
	marking, _ := markingOf(n)
	mark := n.Cable.Model.Marking.V
	var message string
	switch {
	case w.class == 1 && marking.Class() != 1:
		message = fmt.Sprintf("Line %q hangs on a Class 1 output, which is wired as power is, and its %s is marked %s, for circuits of limited power only", w.line.Part.Name, cableOf(n), mark)
	case !marking.Serves(w.class, false, true):
		message = fmt.Sprintf("Line %q hangs on a Class %d output, and its %s is marked %s, which serves no more than Class %d", w.line.Part.Name, w.class, cableOf(n), mark, marking.Class())
		if w.air && !marking.Serves(2, true, w.raceway) {
			message += fmt.Sprintf("; nor may it lie in the void above %q, which carries air", w.airIn.Name)
		}
	case !marking.Serves(w.class, false, w.raceway):
		message = fmt.Sprintf("The %s of line %q is marked %s: single conductors, which need a raceway, and none is stated", cableOf(n), w.line.Part.Name, mark)
	default:
		message = fmt.Sprintf("Line %q passes the void above %q, which carries air, and its %s is marked %s, which may not lie there without a metal raceway", w.line.Part.Name, w.airIn.Name, cableOf(n), mark)
	}
	a := r.Fail(check.Error, message+".")
	w.places(a, n)
	a.Evidence(check.Evidence{Name: "marking", Value: mark}).
		Bound(check.Bound{Text: w.least(true), Basis: "NEC (2020) 725.154 and 300.22(C), from memory"})
	w.remedies(r, a, n)
}

func (w *wireNeeds) places(a *check.Answer, n analysis.NamedCable) {
	a.Caution(codesFirst)
	aboutCable(w.line, n, a)
	a.See(readable(n.Cable.Model.Marking.Span), "the marking").See(readable(w.marked.Span), "the class of the output")
	if w.airIn != nil {
		a.See(w.airIn.AirHandlingVoid.Span, "the void that carries air")
	}
}

func (w *wireNeeds) remedies(r *check.Report, a *check.Answer, n analysis.NamedCable) {
	instead := r.System().CableInstead(n.Cable, func(m *schema.CableModel) bool {
		marking, known := conductor.ParseMarking(m.Marking.V)
		return known && marking.Serves(w.class, w.air, w.raceway)
	})
	switch {
	case instead != nil:
		a.Remedy(check.Computed, fmt.Sprintf("Lay %q of the catalogue, which is marked %s.", instead.Name, instead.Marking.V), layInstead(w.line, n, instead.Name)...)
	case w.class == 1:
		a.Remedy(check.Advice, "Wire the line with the methods of power wiring, such as THHN in conduit, or choose an amplifier whose outputs are marked Class 2 or 3.")
	default:
		a.Remedy(check.Advice, "Lay cable marked "+w.least(true)+".")
	}
	if w.air && !w.raceway {
		if marking, _ := markingOf(n); marking.Serves(w.class, true, true) {
			a.Remedy(check.Proved, "Put it in a metal raceway all the way.", check.Write(&w.line.Part.Part, w.line.Part.Containment.Span, "containment", strconv.Quote("metal conduit")))
		}
	}
}
