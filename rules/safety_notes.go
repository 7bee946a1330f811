package rules

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// localRules ends every caution: the tool never has the last word on safety.
const localRules = "Local codes and the judgement of licensed people come before this list; it is no complete one."

// SafetyNotes raises the cautions that the contents of a design call for, and
// asks whether its safety block agrees with them.
var SafetyNotes = &check.Check{
	ID:      "safety-notes",
	Asks:    "Does what the design states about safe work agree with what it holds?",
	Summary: "What is stated about safe work contradicts what the design holds or leaves out what it calls for, or an emergency system leaves it open who answers for it.",
	Why: "Loudspeaker lines at 70 V and 100 V can give a dangerous shock at full output, mains is in every rack, loudspeakers hang over people's heads, " +
		"and an emergency system that does not work can cost lives. Each caution is tied to the part that calls for it.",
	How: "Looks at the voltage of the loudspeaker outputs at full output (for a low-impedance one the square root of rated power times impedance), the presence of mains " +
		"equipment, heights, the levels wanted, and the duty; then compares with the safety block. It fails where that block contradicts what the contents need, where it is " +
		"written and leaves out something they call for (a note), and where emergency duty lacks a statement it needs. A design without the block states nothing: it gets the cautions.",
	Basis: "extra-low voltage ends at 50 V a.c. (IEC 61140), touch in dry places at 25 V a.c. (IEC 60364-4-41); audio terminals above 71 V r.m.s. need instructions and marking, above 120 V r.m.s. no access " +
		"(IEC 62368-1 Annex E, from memory; IEC 60065 9.1.1.1 names 120 V for professional apparatus); the rest is common practice, no published source",
	Blind: "It knows what the text holds, not the site. It does not judge wiring rules, fixings, fire stopping or the competence of anyone. " + localRules,
	Params: []check.Param{
		{Name: "touch_volts", Doc: "line voltage above which open terminals fail", Unit: check.Volt, Default: 50, Low: 12, High: 120, Basis: "limit of extra-low voltage, 50 V a.c., IEC 61140"},
		{Name: "loudest", Doc: "highest stated sound level, in dB(A)", Unit: check.Decibel, Default: 110, Low: 70, High: 120, Basis: "110 dB(A) in newer editions of NFPA 72, from memory; older ones and others say 115 to 120"},
	},
	Severity: check.Error,
	Cautions: []string{localRules},
	Failing: check.Example{
		Shows: "A 100 V line whose terminals stay open.",
		Design: `system "Hall" { duty = "announcements" }
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { line_terminals = "open" }
`,
	},
	Passing: check.Example{
		Shows: "The same line with covered terminals.",
		Design: `system "Hall" { duty = "announcements" }
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
`,
	},
	Judge: check.EachJob(safetyNotes),
}

func safetyNotes(r *check.Report, s *analysis.System) {
	stated := s.Design.Safety
	if stated == nil {
		stated = &schema.Safety{}
	}
	shock(r, s, stated)
	mains(r, s, stated)
	height(r, s, stated)
	hearing(r, s, stated)
	emergency(r, s, stated)
	omissions(r, s)
}

// shock is about what the loudspeaker terminals carry at full output.
func shock(r *check.Report, s *analysis.System, stated *schema.Safety) {
	limit := r.Limit("touch_volts")
	carrying := terminals(s)
	unknownVolts(r, s, stated)
	if len(carrying) == 0 {
		if len(s.Lines) == 0 {
			r.Pass("No loudspeaker line is in the design.").Key("line voltage")
		}
		return
	}
	highest := carrying[0]
	caution := func(o terminal) string {
		return fmt.Sprintf("%s at full output: %s", wording.Capital(carries(o)), shockClassOf(float64(o.Volts.Value)).care)
	}
	for i, o := range carrying[1:] {
		if class := shockClassOf(float64(o.Volts.Value)); class != shockClassOf(float64(carrying[i].Volts.Value)) {
			r.Pass(fmt.Sprintf("On another output %s.", carries(o))).Key("line voltage, " + class.name).At(o.line.Part.Header).Caution(caution(o))
		}
	}
	volts := highest.Volts.Value
	place := highest.line.Part.Header
	var answer *check.Answer
	switch {
	case quantity.AtMost(float64(volts), limit.Value):
		answer = r.Pass(fmt.Sprintf("%s, which is at most the %s up to which terminals may stay open.", wording.Capital(carries(highest)), limit)).At(place)
	case stated.LineTerminals.V == "open":
		answer = r.Fail(check.Error, fmt.Sprintf("Line terminals stay open, and %s.", carries(highest))).
			At(stated.LineTerminals.Span).See(place, "a line that carries it").
			Evidence(check.Of("line voltage", highest.Volts)).
			AtMost(fmt.Sprintf("open terminals only up to %s", limit), limit.Value, "V", limit).
			Remedy(check.Proved, "Cover the line terminals against touch.", check.Write(&stated.Part, stated.LineTerminals.Span, "line_terminals", `"covered"`))
	default:
		answer = r.Pass(fmt.Sprintf("%s; nothing stated contradicts covering the terminals.", wording.Capital(carries(highest)))).At(place)
	}
	answer.Key("line voltage").See(readable(highest.Part.Volts.Span), "the line voltage").Caution(caution(highest))
}

// unknownVolts is about lines of which the design does not say what they carry.
// Covered terminals are right whatever it is.
func unknownVolts(r *check.Report, s *analysis.System, stated *schema.Safety) {
	lines, missing := voltless(s)
	if len(lines) == 0 {
		return
	}
	caution := "As long as it is not known what a line carries, take it that it can give a shock: cover the terminals, connect with the amplifier off."
	if stated.LineTerminals.V == "covered" {
		r.Pass(fmt.Sprintf("What %s %s is not known; the terminals are covered, which is right at any voltage.", listedLines(lines), verb(len(lines), "carries", "carry"))).
			Key("line voltage, not known").At(stated.LineTerminals.Span).Caution(caution)
		return
	}
	r.Open(fmt.Sprintf("What the terminals of %s carry at full output cannot be told, and so neither whether they may stay open.", listedLines(lines)), missing...).
		Key("line voltage, not known").At(lines[0].Part.Header).Caution(caution)
}

// voltless are the lines whose voltage is not known, and what it waits for.
func voltless(s *analysis.System) (lines []*analysis.Line, missing []analysis.Missing) {
	for _, l := range s.Lines {
		if lacks := l.VoltsMissing(); len(lacks) > 0 {
			lines, missing = append(lines, l), analysis.MergeMissing(missing, lacks)
		}
	}
	return lines, missing
}

// terminal is an output whose voltage is known, with the first line on it.
type terminal struct {
	*analysis.Output
	line *analysis.Line
}

// terminals are the outputs of known voltage on which a line hangs, the highest
// voltage first. A line may name the output alone, without an amplifier.
func terminals(s *analysis.System) []terminal {
	var all []terminal
	seen := map[*analysis.Output]bool{}
	for _, l := range s.Lines {
		if o := l.Output; o != nil && !seen[o] && o.Volts.Known() && o.Volts.Value > 0 {
			seen[o] = true
			all = append(all, terminal{o, l})
		}
	}
	slices.SortStableFunc(all, func(a, b terminal) int { return cmp.Compare(b.Volts.Value, a.Volts.Value) })
	return all
}

// carries says what an output carries at full output.
func carries(o terminal) string {
	if o.Kind == analysis.LowImpedance {
		return fmt.Sprintf("output %q of %s carries %s", o.Part.Name, o.Amplifier.Part.Name, o.Volts.Value)
	}
	return fmt.Sprintf("the lines carry %s", o.Volts.Value)
}

// shockClass is what an audio voltage asks for.
type shockClass struct {
	name  string
	above float64 // r.m.s. volts
	care  string
}

// The limits: IEC 62368-1 Annex E for ES1 to ES3, from memory; extra-low voltage
// and touch in dry places, IEC 61140 and IEC 60364-4-41.
var shockClasses = []shockClass{
	{"not accessible", 120, "class ES3 by IEC 62368-1 (above 120 V, from memory), which must not be accessible at all. Enclose every terminal, use cable for low-voltage mains, " +
		"connect only with the amplifier dead, and keep these lines apart from every other circuit."},
	{"shock", 71, "class ES2 by IEC 62368-1 (above 71 V up to 120 V, from memory), which can give a shock. Cover the terminals, connect with the amplifier off, " +
		"use cable insulated for the voltage, and keep the lines apart from data and microphone cable."},
	{"above extra-low voltage", 50, "above extra-low voltage (50 V, IEC 61140), though class ES1 by IEC 62368-1 (up to 71 V, from memory). Cover the terminals, connect with the amplifier off, " +
		"use cable insulated for the voltage, and keep the lines apart from data and microphone cable."},
	{"extra-low voltage", 25, "extra-low voltage (up to 50 V, IEC 61140), but more than the 25 V that may be touched in dry places (IEC 60364-4-41). Connect with the amplifier off."},
	{"touch", 0, "up to the 25 V that may be touched in dry places (IEC 60364-4-41); in wet places less is allowed. A short can still heat cable and connectors."},
}

func shockClassOf(volts float64) shockClass {
	for _, c := range shockClasses[:len(shockClasses)-1] {
		if !quantity.AtMost(volts, c.above) {
			return c
		}
	}
	return shockClasses[len(shockClasses)-1]
}

// mains is about isolation, earthing and separation.
func mains(r *check.Report, s *analysis.System, stated *schema.Safety) {
	if len(s.Design.Units) == 0 {
		r.Pass("No mains equipment is in the design.").Key("mains")
		return
	}
	caution := "Make amplifiers and mixers dead, and secure them against being switched on, before working on them or on the lines; earth racks and class I equipment; " +
		"keep mains wiring apart. Mains work is for licensed people."
	for _, c := range []struct {
		value       source.Span
		key         string
		contradicts bool
		says, cure  string
		attribute   string
		write       string
	}{
		{stated.Isolation.Span, "isolation", stated.Isolation.V == "none", "Work is to be done without isolation.", "Make the equipment dead before work.", "isolation", `"before work"`},
		{stated.Earthed.Span, "earthing", stated.Earthed.Set() && !stated.Earthed.V, "Racks and class I equipment are stated as not earthed.", "Earth them.", "earthed", "true"},
		{stated.MainsSeparated.Span, "separation", stated.MainsSeparated.Set() && !stated.MainsSeparated.V, "Line, microphone and mains wiring are stated as not kept apart.", "Keep them apart, or separate them by a barrier that local rules accept.", "mains_separated", "true"},
	} {
		if c.contradicts {
			r.Fail(check.Error, c.says).Key(c.key).At(c.value).See(s.Design.Units[0].Header, "mains equipment").Caution(caution).
				Remedy(check.Proved, c.cure, check.Write(&stated.Part, c.value, c.attribute, c.write))
		} else {
			r.Pass("Nothing stated contradicts " + c.key + " of mains equipment.").Key(c.key).At(s.Design.Units[0].Header).Caution(caution)
		}
	}
}

// height is about loudspeakers over people's heads.
func height(r *check.Report, s *analysis.System, stated *schema.Safety) {
	part := overhead(s)
	if part == nil {
		r.Pass("Nothing in the design says that anyone works at height.").Key("height")
		return
	}
	caution := "Loudspeakers hang above people: use fixings made for the load with a second, independent safety line where they could fall, and work at height only with safe access and a second person."
	if stated.WorkAtHeight.Set() {
		caution += fmt.Sprintf(" The design states: %s.", stated.WorkAtHeight.V)
	}
	r.Pass("Work at height is part of the job.").Key("height").At(part.Header).Caution(caution)
}

// overhead is the first loudspeaker that hangs above people, nil for none.
func overhead(s *analysis.System) *schema.Loudspeaker {
	for _, l := range s.Lines {
		for _, run := range l.Runs {
			part := run.Part
			space := s.Design.Space(part.Space.V)
			if part.Height.Set() && part.Height.V > 2 || space != nil && space.Height.V > 2.2 || slices.Contains([]string{"ceiling", "pendant", "horn"}, part.Class.V) {
				return part
			}
		}
	}
	return nil
}

// harmful is the level above which hearing suffers over a working day, in dBA:
// the upper action value of EU directive 2003/10/EC and the recommended limit
// of NIOSH 98-126, both from memory.
const harmful = 85

// hearing is about the highest level that is stated.
func hearing(r *check.Report, s *analysis.System, stated *schema.Safety) {
	limit := r.Limit("loudest")
	level := stated.HighestLevel
	loudest, of := loudestWanted(s)
	caution := fmt.Sprintf("Levels above %d dBA over a working day harm hearing; alarm levels are limited by local rules.", harmful)
	switch {
	case level.Set() && !quantity.AtMost(float64(level.V), limit.Value):
		r.Fail(check.Error, fmt.Sprintf("People are to be exposed to %s.", level.Text)).Key("hearing").At(level.Span).
			Evidence(check.Plainly("highest level", level.V)).
			AtMost(fmt.Sprintf("at most %s A", limit), limit.Value, "dBA", limit).
			Caution(caution).
			Remedy(check.Computed, fmt.Sprintf("Keep the highest level at or below %s A: lower taps, more loudspeakers closer to people, or a limiter.", limit))
	case level.Set() && loudest.Set() && !quantity.AtMost(float64(loudest.V), float64(level.V)):
		r.Fail(check.Error, fmt.Sprintf("The highest level is stated as %s, and %s asks for %s.", level.Text, of, loudest.Text)).Key("hearing").At(level.Span).See(loudest.Span, "the level in that space").
			Evidence(check.Plainly("highest level stated", level.V), check.Plainly("level in the space", loudest.V)).
			Caution(caution).
			Remedy(check.Advice, "Find out which of the two holds, and state the higher one as the highest level, or ask for less.")
	case level.Set() && level.V > harmful:
		r.Pass(fmt.Sprintf("The highest level stated is %s.", level.Text)).Key("hearing").At(level.Span).
			Caution(fmt.Sprintf("%s harms hearing when it lasts; staff near loudspeakers need shorter exposure or protection. Warn people before tests at full level.", level.Text))
	default:
		r.Pass("No level that harms hearing is stated.").Key("hearing").
			Caution("Warn people before tests at full level, and begin with the controls turned down.", localRules)
	}
}

// loudestWanted is the highest level that a space asks for or has, unset where
// none does, and the space.
func loudestWanted(s *analysis.System) (schema.Value[quantity.SoundLevel], string) {
	var loudest schema.Value[quantity.SoundLevel]
	var of string
	for _, space := range s.Design.Spaces {
		for _, level := range []schema.Value[quantity.SoundLevel]{space.WantedLevel, space.Programme} {
			if level.Set() && (!loudest.Set() || level.V > loudest.V) {
				loudest, of = level, fmt.Sprintf("space %q", space.Name)
			}
		}
	}
	return loudest, of
}

// omissions are what a safety block leaves out although the design calls for
// it. Without the block nothing is stated, and the cautions say what to mind.
func omissions(r *check.Report, s *analysis.System) {
	stated := s.Design.Safety
	if stated == nil {
		return
	}
	limit := r.Limit("touch_volts")
	var absent, lines []string
	leavesOut := func(out bool, what, line string) {
		if out {
			absent, lines = append(absent, what), append(lines, line)
		}
	}
	carrying := terminals(s)
	leavesOut(len(carrying) > 0 && !quantity.AtMost(float64(carrying[0].Volts.Value), limit.Value) && !stated.LineTerminals.Set(), "the line terminals", `line_terminals = "covered"`)
	if len(s.Design.Units) > 0 {
		leavesOut(!stated.Isolation.Set(), "isolation before work", `isolation = "before work"`)
		leavesOut(!stated.Earthed.Set(), "earthing", "earthed = true")
		leavesOut(!stated.MainsSeparated.Set(), "separation from mains wiring", "mains_separated = true")
	}
	leavesOut(overhead(s) != nil && !stated.WorkAtHeight.Set(), "work at height", `work_at_height = "mobile platform, two people"`)
	loudest, _ := loudestWanted(s)
	leavesOut(loudest.Set() && loudest.V > harmful && !stated.HighestLevel.Set(), "the highest level", fmt.Sprintf("highest_level = %q", loudest.Text))
	if _, missing := voltless(s); len(absent) == 0 && len(missing) > 0 && !stated.LineTerminals.Set() {
		r.Open("Whether the safety block has to speak of the line terminals cannot be told.", missing...).Key("omissions").At(stated.Header)
		return
	}
	if len(absent) == 0 {
		r.Pass("The safety block speaks of all that the design calls for.").Key("omissions").At(stated.Header)
		return
	}
	r.Fail(check.Note, fmt.Sprintf("The safety block leaves out %s, which this design calls for.", listed(absent))).Key("omissions").At(stated.Header).
		Remedy(check.Advice, fmt.Sprintf("Write what holds on this job, such as %s.", strings.Join(lines, ", ")))
}

// emergency is about systems that people's lives may hang on.
func emergency(r *check.Report, s *analysis.System, stated *schema.Safety) {
	system := s.Design.System
	if !system.Duty.Set() {
		r.Open("Whether the system serves emergencies is not stated.", analysis.Missing{What: "duty of the system", Part: "the job", Where: dutyPlace(s), Write: `system "…" { duty = "announcements and music" }`}).
			Key("emergency duty")
		return
	}
	if named := namedForEmergency(stated); !system.Emergency() && named.Set() {
		r.Fail(check.Warning, fmt.Sprintf("The duty is %s, and the safety block speaks of an emergency function (%s).", system.Duty.V, named.Text)).Key("emergency duty").
			At(named.Span).See(system.Duty.Span, "the duty").
			Remedy(check.Advice, "Find out whether lives rest on the system: then state the duty as emergency, otherwise leave that statement out.")
		return
	}
	if !system.Emergency() {
		r.Pass(fmt.Sprintf("The duty is %s: no emergency function rests on it.", system.Duty.V)).Key("emergency duty").At(system.Duty.Span)
		return
	}
	caution := "This design serves emergencies. It needs design, installation, test and approval by people licensed for it, under the codes in force there; nothing said here shows that it complies."
	absent := missingStatements(stated)
	if len(absent) == 0 {
		r.Pass(fmt.Sprintf("Emergency duty: %s answers for it, built to %s.", stated.EmergencyBy.V, stated.EmergencyRules.V)).Key("emergency duty").At(system.Duty.Span).Caution(caution)
		return
	}
	for _, a := range absent {
		answer := r.Fail(check.Error, a.says).Key("emergency duty, " + a.attribute).At(system.Duty.Span).Caution(caution)
		if s.Design.Safety != nil {
			answer.At(stated.Header).See(system.Duty.Span, "the duty")
		}
		answer.Remedy(check.Advice, fmt.Sprintf("Write it in the safety block: %s = \"…\".", a.attribute))
	}
}

// namedForEmergency is the first statement about an emergency function.
func namedForEmergency(stated *schema.Safety) schema.Value[string] {
	if stated.EmergencyBy.Set() {
		return stated.EmergencyBy
	}
	return stated.EmergencyRules
}

type statement struct{ attribute, says string }

func missingStatements(stated *schema.Safety) []statement {
	var absent []statement
	if !stated.EmergencyBy.Set() {
		absent = append(absent, statement{"emergency_by", "The system has emergency duty, and nobody is named who answers for it."})
	}
	if !stated.EmergencyRules.Set() {
		absent = append(absent, statement{"emergency_rules", "The system has emergency duty, and the rules it is built to are not named."})
	}
	return absent
}

// dutyPlace is where the duty would be written.
func dutyPlace(s *analysis.System) source.Span {
	if !s.Design.System.Header.IsZero() {
		return s.Design.System.Header
	}
	if len(s.Design.Files) > 0 {
		return source.Span{File: s.Design.Files[0]}
	}
	return source.Span{}
}
