package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
)

// What the checks of cable and wiring have in common.

// codesFirst is said where wiring rules of a country are gone by.
const codesFirst = "Wiring rules are quoted from memory: the edition in force on site, local amendments and the authority there decide."

// wiringRulesMissing is what checks wait for that go by the rules of a country.
func wiringRulesMissing(s *analysis.System) analysis.Missing {
	return analysis.Missing{What: "wiring rules", Part: "the job", Where: dutyPlace(s), Write: `system "…" { wiring_rules = "Europe" }`}
}

// dutyMissing is what checks wait for that are asked of emergency systems only.
func dutyMissing(s *analysis.System) analysis.Missing {
	return analysis.Missing{What: "duty of the system", Part: "the job", Where: dutyPlace(s), Write: `system "…" { duty = "announcements and music" }`}
}

// allAt says what is taken for granted where only the total length of a line is
// known.
func allAt(l *analysis.Line) string {
	return fmt.Sprintf("only the total length is known, so that the whole load counts %s, which is more than will be lost", l.AllAt())
}

// wired are the lines that something stands on.
func wired(s *analysis.System) []*analysis.Line {
	var all []*analysis.Line
	for _, l := range s.Lines {
		if len(l.Part.Devices) > 0 {
			all = append(all, l)
		}
	}
	return all
}

// distinct gives one of each cable, where it is named first.
func distinct(cables []analysis.NamedCable) []analysis.NamedCable {
	var all []analysis.NamedCable
	for _, n := range cables {
		known := false
		for _, other := range all {
			known = known || other.Cable == n.Cable
		}
		if !known {
			all = append(all, n)
		}
	}
	return all
}

// aboutCable puts an answer to the place where a line names a cable, and tells it
// apart from those about other cables of the line.
func aboutCable(l *analysis.Line, n analysis.NamedCable, a *check.Answer) {
	switch {
	case n.Override:
		a.Key(overrideKey)
	case n.Kind != "line":
		a.Key(n.Owner())
	}
	if at := inside(&l.Part.Part, n.Name.Span); !at.IsZero() {
		a.At(at)
		return
	}
	a.See(n.Name.Span, "the cable")
}

// overrideKey tells answers about the override cable of a line from those about
// its own.
const overrideKey = "override cable"

// layInstead is the edits that put another cable wherever the line names this
// one: none where the line leans on what the old one takes.
func layInstead(l *analysis.Line, old analysis.NamedCable, cable string) []check.Edit {
	if old.Override {
		return []check.Edit{check.Write(old.Part, old.Name.Span, "override_cable", strconv.Quote(cable))}
	}
	if leansOnCable(l) {
		return nil
	}
	named, _ := l.Cables()
	var edits []check.Edit
	for _, n := range named {
		if n.Cable == old.Cable {
			edits = append(edits, check.Write(n.Part, n.Name.Span, "cable", strconv.Quote(cable)))
		}
	}
	return edits
}

// cableOf names a cable of a line inside a sentence: cable "2 x 1.5 mm2", and
// where only a device names it, that.
func cableOf(n analysis.NamedCable) string {
	text := "cable " + strconv.Quote(n.Cable.Name)
	if n.Override {
		return "override " + text
	}
	if n.Kind != "line" {
		text += " of " + n.Owner()
	}
	return text
}

// alternatives joins names with "or".
func alternatives(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " or " + names[len(names)-1]
}

// wiringClass is the wiring class marked at an output, or at its amplifier.
func wiringClass(o *analysis.Output) schema.Value[string] {
	if o.Part.WiringClass.Set() || o.Amplifier == nil {
		return o.Part.WiringClass
	}
	return o.Amplifier.Part.WiringClass
}

// containmentMissing is what checks wait for that depend on what a cable lies in.
func containmentMissing(l *analysis.Line, such string) analysis.Missing {
	return analysis.Missing{What: "containment of the line", Part: fmt.Sprintf("line %q", l.Part.Name), Where: l.Part.Header, Write: "containment = " + strconv.Quote(such)}
}
