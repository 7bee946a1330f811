package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// RouteSeparation asks whether the cable of a line is kept apart from what shares
// its way.
var RouteSeparation = &check.Check{
	ID:      "route-separation",
	Asks:    "Is the cable of each line kept apart from mains, data, microphone and emergency lighting cable on its way?",
	Summary: "A loudspeaker line shares its containment with wiring it has to be kept apart from.",
	Why: "A fault between a mains conductor and a loudspeaker line puts mains on terminals, volume controls and transformers that people touch. " +
		"A line at full output beside microphone cable makes the system howl or hum, and beside data cable it disturbs the data. Pulling cable anew afterwards costs more than a second conduit.",
	How: "Reads what shares the containment of each line and what separates it. Mains: under US rules a barrier is needed, or 50 mm where the cables lie in the open, and thicker insulation is no help; " +
		"elsewhere a barrier, or insulation of both for the highest voltage present, which is seen too where the cable states its insulation and the job its mains voltage. " +
		"Data beside lines above 50 V: the same, or Class 2 and 3 wiring under US rules. Microphone cable: a barrier or 50 mm. Emergency lighting: a barrier.",
	Basis: "US: NEC 725.136 and 700.10(B), from memory; elsewhere Band I and Band II as in BS 7671 528.1 and BS 5266, from memory; microphone cable: common practice, no published source",
	Blind: "It knows what the design says of the way, not the way itself: crossings, ceiling voids and racks are to be looked at on site. What a line shares with other loudspeaker lines is not judged. " +
		"Where nothing is said of a line, the safety block counts (mains_separated), and without it the job has one open answer.",
	Severity: check.Error,
	Cautions: []string{codesFirst},
	Failing: check.Example{
		Shows: "A line pulled into the conduit of the lighting circuit.",
		Design: `system "Yard" { wiring_rules = "Europe" }
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  containment = "conduit"
  shared_with = ["mains"]
  separation  = "none"
  loudspeaker "H" { tap = "10 W" }
}
`,
	},
	Passing: check.Example{
		Shows: "The same way in trunking with a dividing wall.",
		Design: `system "Yard" { wiring_rules = "Europe" }
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  containment = "trunking"
  shared_with = ["mains"]
  separation  = "barrier"
  loudspeaker "H" { tap = "10 W" }
}
`,
	},
	Judge: check.Together(check.EachLine(routeSeparation), check.EachJob(routesUnsaid)),
}

// routesUnsaid is about the lines that say nothing of their way.
func routesUnsaid(r *check.Report, s *analysis.System) {
	silent := 0
	for _, l := range wired(s) {
		if !l.Part.SharedWith.Set() {
			silent++
		}
	}
	switch apart := mainsSeparated(s); {
	case silent == 0:
		r.NotAsked() // the lines have answers of their own
	case apart.Set() && apart.V:
		r.Pass("Line, microphone and mains wiring are stated to be kept apart.").Key("kept apart").At(apart.Span)
	case apart.Set():
		r.NotAsked() // safety-notes fails
	case silent == len(wired(s)) && !s.Design.System.WiringRules.Set():
		r.Open("What has to be kept apart from loudspeaker lines depends on whose wiring rules apply.", wiringRulesMissing(s)).Key("not stated")
	default:
		r.Open(fmt.Sprintf("Whether mains, data or microphone cable shares the way of %s is not stated.", wording.Counted(silent, "line")), analysis.Missing{
			What: "what shares the way of the lines", Part: "the job", Where: dutyPlace(s), Write: "safety { mains_separated = true }",
		}).Key("not stated")
	}
}

func mainsSeparated(s *analysis.System) schema.Value[bool] {
	if s.Design.Safety == nil {
		return schema.Value[bool]{}
	}
	return s.Design.Safety.MainsSeparated
}

// sharedWay is one kind of wiring that shares the way of a line.
type sharedWay struct {
	line *analysis.Line
	with string
	at   source.Span // the word in the list
	us   bool
	// ruled tells that the job says whose wiring rules it goes by.
	ruled bool
}

// ruling is what is to be said of a sharing.
type ruling struct {
	verdict  check.Verdict
	severity check.Severity
	message  string
	missing  []analysis.Missing
	// helps are the separations that would do, best first.
	helps []string
}

func routeSeparation(r *check.Report, l *analysis.Line) {
	part := l.Part
	if !part.SharedWith.Set() || len(part.Devices) == 0 {
		r.NotAsked() // the job is asked, once
		return
	}
	rules := r.System().Design.System.WiringRules
	answered := false
	for _, item := range part.SharedWith.Items {
		s := sharedWay{line: l, with: item.V, at: item.Span, us: rules.V == "US", ruled: rules.Set()}
		what := s.rule(r.System())
		if what.verdict == check.Pass || what.verdict == 0 {
			continue
		}
		answered = true
		if what.verdict == check.Open {
			r.Open(what.message, what.missing...).Key(s.with).At(inside(&part.Part, s.at))
			continue
		}
		a := r.Fail(what.severity, what.message).Key(s.with).At(inside(&part.Part, s.at)).
			See(part.Separation.Span, "what separates them").See(part.Containment.Span, "what they lie in").Caution(codesFirst)
		s.remedies(a, what.helps)
	}
	if answered {
		return
	}
	message := fmt.Sprintf("What shares the way of line %q with it is kept apart: %s.", part.Name, separationText(part))
	if with := sharedNames(part); len(with) == 0 {
		message = fmt.Sprintf("Nothing that has to be kept apart shares the way of line %q.", part.Name)
	}
	r.Pass(message).At(inside(&part.Part, part.SharedWith.Span))
}

func separationText(part *schema.Line) string {
	if part.Separation.Set() {
		return part.Separation.V
	}
	return "by the insulation and the class of its cable"
}

// sharedNames lists what shares the way and could have to be kept apart.
func sharedNames(part *schema.Line) []string {
	var all []string
	for _, item := range part.SharedWith.Items {
		if item.V != "nothing" && item.V != "other lines" {
			all = append(all, item.V)
		}
	}
	return all
}

// rule judges what shares the way; no verdict where there is nothing to judge.
func (s *sharedWay) rule(system *analysis.System) ruling {
	switch s.with {
	case "mains":
		return s.mains(system)
	case "data":
		return s.data()
	case "microphone":
		return s.microphone()
	case "emergency lighting":
		return s.emergencyLighting()
	}
	return ruling{}
}

func (s *sharedWay) separated(by string) bool { return s.line.Part.Separation.V == by }

// enclosed tells that the cable lies in something in which nothing keeps a
// distance, and whether that can be told.
func (s *sharedWay) enclosed() (enclosed, stated bool) {
	c := s.line.Part.Containment
	return raceway(c.V) || strings.Contains(strings.ToLower(c.V), "tray"), c.Set()
}

// raceway tells that a containment is a tube or channel that encloses cable.
func raceway(containment string) bool {
	text := strings.ToLower(containment)
	for _, word := range []string{"conduit", "raceway", "trunking", "wireway", "tubing", "emt", "duct", "pipe", "channel"} {
		if strings.Contains(text, word) {
			return true
		}
	}
	return false
}

// distance judges a separation by 50 mm: it is none in a conduit.
func (s *sharedWay) distance(severity check.Severity, helps ...string) ruling {
	enclosed, stated := s.enclosed()
	switch {
	case !stated:
		return ruling{verdict: check.Open, message: fmt.Sprintf("Line %q is said to keep 50 mm from %s cable; whether it can, depends on what it lies in.", s.line.Part.Name, s.with),
			missing: []analysis.Missing{containmentMissing(s.line, "ceiling void")}}
	case enclosed:
		return ruling{verdict: check.Fail, severity: severity, helps: helps,
			message: fmt.Sprintf("Line %q is said to keep 50 mm from %s cable, and both lie in one %s, where nothing keeps them there.", s.line.Part.Name, s.with, s.line.Part.Containment.V)}
	}
	return ruling{verdict: check.Pass}
}

// mains judges mains in the same containment.
func (s *sharedWay) mains(system *analysis.System) ruling {
	name := strconv.Quote(s.line.Part.Name)
	if s.us {
		switch {
		case s.separated("barrier"):
			return ruling{verdict: check.Pass}
		case s.separated("50 mm apart"):
			return s.distance(check.Error, "barrier")
		case s.separated("equal insulation"):
			return ruling{verdict: check.Fail, severity: check.Error, helps: []string{"barrier"},
				message: "Line " + name + " shares its containment with mains, and under US rules thicker insulation is not enough to keep it apart (NEC 725.136)."}
		}
		return ruling{verdict: check.Fail, severity: check.Error, helps: []string{"barrier"},
			message: "Line " + name + " shares its containment with mains, which US rules do not permit without a barrier (NEC 725.136)."}
	}
	insulated, tooLow := s.insulatedFor(system)
	helps := []string{"barrier", "equal insulation"}
	if tooLow != "" {
		helps = helps[:1]
	}
	switch {
	case s.separated("barrier"):
		return ruling{verdict: check.Pass}
	case s.separated("equal insulation") && tooLow != "":
		return ruling{verdict: check.Fail, severity: check.Warning, helps: helps,
			message: "Line " + name + " is said to be insulated as mains beside it is, and " + tooLow + "."}
	case (s.separated("equal insulation") || insulated || s.separated("50 mm apart")) && !s.ruled:
		return ruling{verdict: check.Open, missing: []analysis.Missing{wiringRulesMissing(system)},
			message: "Line " + name + " shares its way with mains; whether what keeps them apart is enough, depends on whose wiring rules apply."}
	case s.separated("equal insulation") || insulated:
		return ruling{verdict: check.Pass}
	case s.separated("50 mm apart"):
		return s.distance(check.Warning, helps...)
	case s.ruled:
		return ruling{verdict: check.Fail, severity: check.Warning, helps: helps,
			message: "Line " + name + " shares its containment with mains, and nothing keeps them apart: no barrier, and no insulation of both for the highest voltage."}
	}
	return ruling{verdict: check.Fail, severity: check.Warning, helps: []string{"barrier"},
		message: "Line " + name + " shares its containment with mains, and nothing keeps them apart; under US rules that is an error."}
}

// insulatedFor tells that all cable of the line states insulation for the mains
// voltage, or which of it states less.
func (s *sharedWay) insulatedFor(system *analysis.System) (insulated bool, tooLow string) {
	mains := system.Design.System.Mains
	cables, missing := s.line.Cables()
	if !mains.Set() {
		return false, ""
	}
	insulated = len(cables) > 0 && len(missing) == 0
	for _, n := range cables {
		m := n.Cable.Model
		switch {
		case m == nil || !m.Insulation.Set():
			insulated = false
		case !quantity.AtLeast(m.Insulation.V, mains.V):
			return false, fmt.Sprintf("its %s is insulated for %s against %s of mains", cableOf(n), m.Insulation.V, mains.V)
		}
	}
	return insulated, ""
}

// data judges data cable in the same containment.
func (s *sharedWay) data() ruling {
	name := strconv.Quote(s.line.Part.Name)
	o := s.line.Output
	class := ""
	if o != nil {
		class = wiringClass(o).V
	}
	switch {
	case s.separated("barrier"), s.separated("equal insulation"):
		return ruling{verdict: check.Pass}
	case o != nil && o.Volts.Known() && quantity.AtMost(float64(o.Volts.Value), extraLowVolts):
		return ruling{verdict: check.Pass}
	case s.us && (class == "Class 2" || class == "Class 3"):
		return ruling{verdict: check.Pass}
	case s.separated("50 mm apart"):
		return s.distance(check.Warning, "barrier")
	case o == nil || !o.Volts.Known():
		return ruling{verdict: check.Open, missing: s.line.VoltsMissing(),
			message: "Line " + name + " shares its way with data cable; whether it has to be kept apart, depends on its voltage."}
	}
	return ruling{verdict: check.Fail, severity: check.Warning, helps: []string{"barrier", "equal insulation"},
		message: fmt.Sprintf("Line %s carries %s, above extra-low voltage, and shares its containment with data cable with nothing to keep them apart.", name, o.Volts.Value)}
}

// extraLowVolts is where extra-low voltage ends: 50 V a.c., IEC 61140.
const extraLowVolts = 50

// microphone judges microphone cable in the same containment: that signal is
// thousands of times smaller.
func (s *sharedWay) microphone() ruling {
	switch {
	case s.separated("barrier"):
		return ruling{verdict: check.Pass}
	case s.separated("50 mm apart"):
		return s.distance(check.Warning, "barrier")
	}
	message := fmt.Sprintf("Line %q shares its containment with microphone cable, whose signal is thousands of times smaller: it can hum, crackle or howl.", s.line.Part.Name)
	if s.separated("equal insulation") {
		message = fmt.Sprintf("Line %q shares its containment with microphone cable; insulation keeps no signal out of it: it can hum, crackle or howl.", s.line.Part.Name)
	}
	return ruling{verdict: check.Fail, severity: check.Warning, helps: []string{"barrier"}, message: message}
}

// emergencyLighting judges circuits that have to go on in a fire.
func (s *sharedWay) emergencyLighting() ruling {
	if s.separated("barrier") {
		return ruling{verdict: check.Pass}
	}
	severity, rule := check.Warning, "which is to be kept apart from all other wiring (BS 5266)"
	if s.us {
		severity, rule = check.Error, "which US rules keep independent of all other wiring (NEC 700.10(B))"
	}
	return ruling{verdict: check.Fail, severity: severity, helps: []string{"barrier"},
		message: fmt.Sprintf("Line %q shares its containment with emergency lighting, %s.", s.line.Part.Name, rule)}
}

// remedies names a way of its own, and what would separate them where they are.
func (s *sharedWay) remedies(a *check.Answer, helps []string) {
	part := s.line.Part
	rest := []string{}
	for _, item := range part.SharedWith.Items {
		if item.V != s.with && item.V != "nothing" {
			rest = append(rest, strconv.Quote(item.V))
		}
	}
	if len(rest) == 0 {
		rest = []string{`"nothing"`}
	}
	a.Remedy(check.Proved, fmt.Sprintf("Give the line a way of its own, away from %s.", s.with),
		check.Write(&part.Part, part.SharedWith.Span, "shared_with", "["+strings.Join(rest, ", ")+"]"))
	if enclosed := raceway(part.Containment.V) && !strings.Contains(strings.ToLower(part.Containment.V), "trunking"); enclosed {
		return // nothing divides a conduit
	}
	for _, help := range helps {
		text := "Put a barrier between them, in trunking or a tray with a dividing wall."
		if help == "equal insulation" {
			text = "Insulate both for the highest voltage present, and say so."
		}
		a.Remedy(check.Proved, text, check.Write(&part.Part, part.Separation.Span, "separation", strconv.Quote(help)))
	}
}
