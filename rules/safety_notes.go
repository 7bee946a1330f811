package rules

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// localRules ends every caution: the tool never has the last word on safety.
const localRules = "Local codes and the judgement of licensed people come before this list; it is no complete one."

// SafetyNotes raises the cautions that the contents of a design call for, and
// asks whether its safety block agrees with them.
var SafetyNotes = &check.Check{
	ID:      "safety-notes",
	Asks:    "Does what the design states about safe work agree with what it holds?",
	Summary: "What is stated about safe work contradicts what the design holds, or an emergency system leaves it open who answers for it.",
	Why: "Loudspeaker lines at 70 V and 100 V can give a dangerous shock at full output, mains is in every rack, loudspeakers hang over people's heads, " +
		"and an emergency system that does not work can cost lives. Each caution is tied to the part that calls for it.",
	How: "Looks at the voltage of the lines, the presence of mains equipment, heights, the level stated, and the duty; then compares with the safety block. " +
		"It fails only where that block contradicts what the contents need, or where emergency duty lacks a statement it needs.",
	Basis: "extra-low voltage ends at 50 V a.c. (IEC 61140); audio terminals above 71 V r.m.s. need instructions and marking, above 120 V r.m.s. no access " +
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
safety { line_terminals = "covered" }
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
	hearing(r, stated)
	emergency(r, s, stated)
}

// shock is about lines above extra-low voltage.
func shock(r *check.Report, s *analysis.System, stated *schema.Safety) {
	limit := r.Limit("touch_volts")
	var highest *analysis.Output
	for _, o := range s.Outputs {
		if o.Kind == analysis.ConstantVoltage && len(o.Lines) > 0 && (highest == nil || o.Volts.Value > highest.Volts.Value) {
			highest = o
		}
	}
	if highest == nil {
		r.Pass("No constant-voltage line is in the design.").Key("line voltage")
		return
	}
	volts := highest.Volts.Value
	fails := !quantity.AtMost(float64(volts), limit.Value)
	caution := fmt.Sprintf("The %s lines carry up to %s at full output%s. Cover the terminals, connect with the amplifier off, use cable insulated for the voltage, "+
		"and keep the lines apart from data and microphone cable.", highest.Part.Volts.Text, volts, shockClass(float64(volts)))
	place := highest.Lines[0].Part.Header
	switch {
	case fails && stated.LineTerminals.V == "open":
		r.Fail(check.Error, fmt.Sprintf("Line terminals stay open, and the lines carry %s.", volts)).Key("line voltage").
			At(stated.LineTerminals.Span).See(place, "a line that carries it").
			Evidence(check.Of("line voltage", highest.Volts)).
			AtMost(fmt.Sprintf("open terminals only up to %s", limit), limit.Value, "V", limit).
			Caution(caution).
			Remedy(check.Proved, "Cover the line terminals against touch.", check.Write(&stated.Part, stated.LineTerminals.Span, "line_terminals", `"covered"`))
	case fails:
		r.Pass(fmt.Sprintf("Lines carry %s; nothing stated contradicts covering their terminals.", volts)).Key("line voltage").
			At(place).See(readable(highest.Part.Volts.Span), "the line voltage").Caution(caution)
	default:
		r.Pass(fmt.Sprintf("Lines carry %s, which is extra-low voltage.", volts)).Key("line voltage").
			At(place).See(readable(highest.Part.Volts.Span), "the line voltage")
	}
}

// shockClass says what the product standard makes of an audio voltage.
func shockClass(volts float64) string {
	switch {
	case !quantity.AtMost(volts, 120):
		return ", which must not be accessible at all (class ES3 by IEC 62368-1, from memory)"
	case !quantity.AtMost(volts, 71):
		return ", which can give a shock (class ES2 by IEC 62368-1, from memory)"
	}
	return ", above extra-low voltage, though class ES1 by IEC 62368-1 (from memory)"
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
	for _, l := range s.Lines {
		for _, run := range l.Runs {
			part := run.Part
			space := s.Design.Space(part.Space.V)
			high := part.Height.Set() && part.Height.V > 2 || space != nil && space.Height.V > 2.2 || slices.Contains([]string{"ceiling", "pendant", "horn"}, part.Class.V)
			if !high {
				continue
			}
			caution := "Loudspeakers hang above people: use fixings made for the load with a second, independent safety line where they could fall, and work at height only with safe access and a second person."
			if stated.WorkAtHeight.Set() {
				caution += fmt.Sprintf(" The design states: %s.", stated.WorkAtHeight.V)
			}
			r.Pass("Work at height is part of the job.").Key("height").At(part.Header).Caution(caution)
			return
		}
	}
	r.Pass("Nothing in the design says that anyone works at height.").Key("height")
}

// hearing is about the highest level that is stated.
func hearing(r *check.Report, stated *schema.Safety) {
	limit := r.Limit("loudest")
	level := stated.HighestLevel
	switch {
	case level.Set() && !quantity.AtMost(float64(level.V), limit.Value):
		r.Fail(check.Error, fmt.Sprintf("People are to be exposed to %s.", level.Text)).Key("hearing").At(level.Span).
			Evidence(check.Plainly("highest level", level.V)).
			AtMost(fmt.Sprintf("at most %s A", limit), limit.Value, "dBA", limit).
			Caution("Levels above 85 dBA over a working day harm hearing; alarm levels are limited by local rules.").
			Remedy(check.Computed, fmt.Sprintf("Keep the highest level at or below %s A: lower taps, more loudspeakers closer to people, or a limiter.", limit))
	case level.Set() && level.V > 85:
		r.Pass(fmt.Sprintf("The highest level stated is %s.", level.Text)).Key("hearing").At(level.Span).
			Caution(fmt.Sprintf("%s harms hearing when it lasts; staff near loudspeakers need shorter exposure or protection. Warn people before tests at full level.", level.Text))
	default:
		r.Pass("No level that harms hearing is stated.").Key("hearing").
			Caution("Warn people before tests at full level, and begin with the controls turned down.", localRules)
	}
}

// emergency is about systems that people's lives may hang on.
func emergency(r *check.Report, s *analysis.System, stated *schema.Safety) {
	system := s.Design.System
	if !system.Duty.Set() {
		r.Open("Whether the system serves emergencies is not stated.", analysis.Missing{What: "duty of the system", Part: "the job", Where: dutyPlace(s), Write: `system "…" { duty = "announcements and music" }`}).
			Key("emergency duty")
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
