package rules

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// InputFit asks whether each plug goes into an input that is made for it.
var InputFit = &check.Check{
	ID:      "input-fit",
	Asks:    "Is each source plugged into an input that suits it in level, connector, balance and phantom power?",
	Summary: "A source goes into an input that is not made for it.",
	Why: "A microphone in a line input is not heard, a player in a microphone input distorts, a condenser microphone without phantom power is silent, " +
		"and a plug that does not go in is found out on a ladder. All of it stands on the data sheets.",
	How: "For each plug, compares the kind of source with what the input takes, with its mic/line position and its pad; the plug with the connectors of the input; " +
		"the phantom power needed with what is given. Where the level of the source and the sensitivity of the input are stated, gain-range compares these and the kind is not asked. " +
		"Names of connectors are compared without regard to capitals and spaces; terminals of any kind take bare wires, one plug of a pair goes into the pair, and jacks of one size go into each other.",
	Basis: "common practice, no published source",
	Blind: "How a lead is wired inside is not seen: an adapter is a part of its own and is written by the connector that it ends in. A connector that is not stated is not asked about. " +
		"Whether phantom power can be switched off is not known to the design.",
	Severity: check.Error,
	Cautions: []string{"Switch phantom power only with the input turned down, and off before anything that is no microphone is plugged in."},
	Failing: check.Example{
		Shows: "A condenser microphone in an input without phantom power.",
		Design: `amplifier "Rack" {
  input "Mic 1" {
    takes   = "microphone"
    phantom = "none"
  }
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 1"
  phantom = "48 V"
}
`,
	},
	Passing: check.Example{
		Shows: "In one that gives it.",
		Design: `amplifier "Rack" {
  input "Mic 1" {
    takes   = "microphone"
    phantom = "48 V"
  }
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 1"
  phantom = "48 V"
}
`,
	},
	Judge: check.Together(check.EachSource(inputFit), check.EachSend(inputFitSend)),
}

func inputFit(r *check.Report, src *analysis.Source) {
	r.NotAsked() // until a plug is found of which something can be compared
	for _, f := range src.Feeds {
		if f.Into == nil || f.Into.Part == nil || f.Into.Contact() {
			continue
		}
		// Each answers for itself and tells whether it asked, and whether it found
		// something.
		asked, answered := false, false
		for _, question := range []func(*check.Report, *analysis.Feed) (bool, bool){kindFits, plugFits, balanceFits, phantomFits} {
			a, found := question(r, f)
			asked, answered = asked || a, answered || found
		}
		if asked && !answered {
			r.Pass(fmt.Sprintf("%s suits %s.", f.Into.Name(), f.Source.Part.Name)).Key(atUnit("fit", f)).At(pluggedAt(f))
		}
	}
}

// Kinds of signal.
const (
	microphoneLevel = "microphone"
	lineLevel       = "line"
	telephoneLevel  = "telephone"
	deskData        = "paging desk"
)

// brings is the kind of signal a source gives.
func brings(src *analysis.Source) string {
	switch {
	case src.Part.Kind == schema.KindTelephone:
		return telephoneLevel
	case src.MicrophoneLevel():
		return microphoneLevel
	}
	return lineLevel
}

// takesKind is the kind of signal an input is set for, "" when that is not said. A
// pad of 20 dB makes a microphone input one for line level; common practice, no
// published source.
func takesKind(i *analysis.Input) string {
	const linePad = 20
	padded := math.Abs(float64(i.Part.Pad.V)) >= linePad
	switch kind := i.Part.Takes.V; {
	case i.Position() == analysis.AtLine, kind == microphoneLevel && padded:
		return lineLevel
	case i.Position() == analysis.AtMicrophone && !padded:
		return microphoneLevel
	case i.Position() == analysis.AtMicrophone:
		return lineLevel
	default:
		return kind
	}
}

// levelsKnown tells that gain-range compares figures.
func levelsKnown(f *analysis.Feed) bool {
	st := f.Stage()
	return st != nil && st.InHand.Known()
}

func kindFits(r *check.Report, f *analysis.Feed) (asked, found bool) {
	has, wants := brings(f.Source), takesKind(f.Into)
	name, into := f.Source.Part.Name, f.Into.Name()
	switch {
	case wants == "":
		return false, false
	case wants == deskData:
		if f.Source.Part.Kind == schema.KindMicrophone {
			return true, false
		}
		r.Fail(check.Error, fmt.Sprintf("%s is an input for a paging desk: %s is none.", into, name)).Key(atUnit("kind", f)).At(pluggedAt(f)).
			See(readable(f.Into.Part.Takes.Span), "what "+into+" takes").
			Remedy(check.Advice, fmt.Sprintf("Plug %s into an input for line level.", name))
		return true, true
	case levelsKnown(f) || alike(has, wants):
		return true, false
	}
	says := map[string]string{
		microphoneLevel: name + " gives microphone level, and %s is set for line level: it will hardly be heard.",
		lineLevel:       name + " gives line level, and %s is set for a microphone: it will distort.",
		telephoneLevel:  name + " gives the level of a telephone, and %s is set for a microphone: it will distort.",
	}[has]
	if wants == telephoneLevel {
		says = name + " is no telephone, and %s is an input for one."
	}
	a := r.Fail(check.Warning, fmt.Sprintf(says, into)).Key(atUnit("kind", f)).At(pluggedAt(f)).
		See(readable(f.Into.Part.Takes.Span), "what "+into+" takes").See(readable(f.Into.Part.Setting.Span), "its position").See(readable(f.Into.Part.Pad.Span), "its pad")
	if !f.Source.Part.Level.Set() {
		a.Assumed(fmt.Sprintf("%s gives the level that is usual for its kind: none is stated", name))
	}
	kindRemedies(a, f, has, wants)
	return true, true
}

// alike tells that an input of one kind does for a source of another: telephones
// give about line level.
func alike(has, wants string) bool {
	return has == wants || has == telephoneLevel && wants == lineLevel
}

func kindRemedies(a *check.Answer, f *analysis.Feed, has, wants string) {
	name, i := f.Source.Part.Name, f.Into
	if to := inputInstead(f, func(_ *analysis.Feed, to *analysis.Input) bool {
		return takesKind(to) != "" && alike(has, takesKind(to))
	}); to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free and takes %s level.", name, to.Name(), takesKind(to)), plugInto(f, to))
	}
	switch {
	case has == microphoneLevel && i.Part.Pad.Set() && i.Position() != analysis.AtLine:
		a.Remedy(check.Computed, "Switch the pad off.", setInput(i, i.Part.Pad.Span, "pad", strconv.Quote("0 dB")))
	case has == microphoneLevel && i.Part.Takes.V == microphoneLevel:
		a.Remedy(check.Computed, fmt.Sprintf("Set %s to microphone.", i.Name()), setInput(i, i.Part.Setting.Span, "setting", strconv.Quote("mic")))
	case has == microphoneLevel:
		a.Remedy(check.Advice, fmt.Sprintf("Put a microphone pre-amplifier before %s.", i.Name()))
	case wants == microphoneLevel:
		a.Remedy(check.Advice, fmt.Sprintf("Set %s to line where it has such a position, or switch in a pad of 20 to 30 dB.", i.Name()), setInput(i, i.Part.Setting.Span, "setting", strconv.Quote("line")))
	default:
		a.Remedy(check.Advice, fmt.Sprintf("Plug %s into an input for line level.", name))
	}
}

func plugFits(r *check.Report, f *analysis.Feed) (asked, found bool) {
	plug, sockets := f.Part.Connector, f.Into.Part.Connectors
	if !plug.Set() || !sockets.Set() || len(sockets.Items) == 0 {
		return false, false
	}
	names := make([]string, len(sockets.Items))
	for n, s := range sockets.Items {
		if goesInto(plug.V, s.V) {
			return true, false
		}
		names[n] = s.V
	}
	a := r.Fail(check.Warning, fmt.Sprintf("%s has %s plug, and %s takes %s.", f.Source.Part.Name, wording.WithArticle(plug.V), f.Into.Name(), listed(names))).
		Key(atUnit("plug", f)).At(inside(&f.Part.Part, plug.Span)).See(readable(sockets.Span), "what "+f.Into.Name()+" takes")
	var edits []check.Edit
	text := fmt.Sprintf("Order an adapter, or the lead with %s plug.", wording.WithArticle(names[0]))
	if len(names) == 1 {
		edits = append(edits, check.Write(&f.Part.Part, plug.Span, "connector", strconv.Quote(names[0])))
	}
	a.Remedy(check.Advice, text, edits...)
	return true, true
}

// goesInto tells that a plug goes into a socket, by their names.
func goesInto(plug, socket string) bool {
	a, b := strings.Fields(strings.ToLower(plug)), strings.Fields(strings.ToLower(socket))
	switch {
	case analysis.Fits(plug, socket):
		return true
	case len(a) == 0 || len(b) == 0:
		return false
	case b[len(b)-1] == "pair" && slices.Equal(a, b[:len(b)-1]): // one of two
		return true
	}
	if jackA, jackB := slices.Index(a, "jack"), slices.Index(b, "jack"); jackA > 0 && jackB > 0 { // whatever number of poles
		return slices.Equal(a[:jackA], b[:jackB])
	}
	pins, holes := dinPins(a), dinPins(b)
	return pins > 0 && pins <= holes // those it has are on the same circle
}

// dinPins gives the pins of a round connector such as "DIN 5", 0 for any other.
func dinPins(words []string) int {
	if len(words) != 2 || words[0] != "din" {
		return 0
	}
	pins, err := strconv.Atoi(words[1])
	if err != nil {
		return 0
	}
	return pins
}

// balanceFits asks about a balanced microphone in an input that is not.
func balanceFits(r *check.Report, f *analysis.Feed) (asked, found bool) {
	balanced, input := f.Source.Part.Balanced, f.Into.Part.Balanced
	if !balanced.Set() || !input.Set() {
		return false, false
	}
	if !balanced.V || input.V || brings(f.Source) != microphoneLevel {
		return true, false
	}
	r.Fail(check.Note, fmt.Sprintf("%s is balanced and %s is not: the lead picks up hum, and one of its two conductors has to be earthed at the plug.", f.Source.Part.Name, f.Into.Name())).
		Key(atUnit("balance", f)).At(pluggedAt(f)).See(readable(balanced.Span), "balanced").See(readable(input.Span), "not balanced").
		Remedy(check.Advice, fmt.Sprintf("Keep the lead short, or put a transformer before %s.", f.Into.Name()))
	return true, true
}

func phantomFits(r *check.Report, f *analysis.Feed) (asked, found bool) {
	needs, gives := f.Source.Part.Phantom, f.Into.Part.Phantom
	name, into := f.Source.Part.Name, f.Into.Name()
	key := atUnit("phantom", f)
	if !needs.Set() || without(needs.V) {
		return phantomHarms(r, f)
	}
	switch {
	case !gives.Set():
		r.Open(fmt.Sprintf("Whether %s gives %s the phantom power it needs (%s) cannot be told.", into, name, needs.V), f.Into.Missing("phantom power it gives", fmt.Sprintf("phantom = %q", needs.V))).Key(key).At(pluggedAt(f))
		return true, true
	case phantomDoes(needs.V, gives.V):
		return true, false
	case !without(gives.V) && (len(voltsIn(needs.V)) == 0 || len(voltsIn(gives.V)) == 0):
		phantomUntold(r, f, key)
		return true, true
	}
	says := fmt.Sprintf("%s needs phantom power of %s, and %s gives %s.", name, needs.V, into, gives.V)
	if without(gives.V) {
		says = fmt.Sprintf("%s needs phantom power of %s, and %s gives none: it stays silent.", name, needs.V, into)
		if len(voltsIn(needs.V)) == 0 {
			says = fmt.Sprintf("%s needs phantom power (%s), and %s gives none: it stays silent.", name, needs.V, into)
		}
	}
	a := r.Fail(check.Error, says).Key(key).At(pluggedAt(f)).See(readable(gives.Span), "phantom power of "+into).See(readable(needs.Span), "what "+name+" needs")
	if to := inputInstead(f, func(f *analysis.Feed, to *analysis.Input) bool {
		return to.Part.Phantom.Set() && phantomDoes(needs.V, to.Part.Phantom.V) && (takesKind(to) == "" || alike(brings(f.Source), takesKind(to)))
	}); to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free and gives it.", name, to.Name()), plugInto(f, to))
	}
	supply := "a phantom supply of " + needs.V
	if len(voltsIn(needs.V)) == 0 {
		supply = "the phantom supply that " + name + " needs"
	}
	a.Remedy(check.Advice, fmt.Sprintf("Put %s into the lead, or take a microphone that needs none.", supply))
	return true, true
}

// phantomUntold answers where phantom power is needed and given, and one of the
// two does not say how many volts.
func phantomUntold(r *check.Report, f *analysis.Feed, key string) {
	needs, gives := f.Source.Part.Phantom, f.Into.Part.Phantom
	var lacks []analysis.Missing
	if len(voltsIn(needs.V)) == 0 {
		lacks = append(lacks, f.Source.Missing("volts of phantom power it needs", `phantom = "48 V"`))
	}
	if len(voltsIn(gives.V)) == 0 {
		lacks = append(lacks, f.Into.Missing("volts of phantom power it gives", `phantom = "48 V"`))
	}
	r.Open(fmt.Sprintf("Whether the phantom power of %s (%s) suits %s (%s) cannot be told.", f.Into.Name(), gives.V, f.Source.Part.Name, needs.V), lacks...).
		Key(key).At(pluggedAt(f))
}

// phantomHarms asks about sources that phantom power can harm: those that are not
// balanced put it across their output.
func phantomHarms(r *check.Report, f *analysis.Feed) (asked, found bool) {
	gives, balanced := f.Into.Part.Phantom, f.Source.Part.Balanced
	if !gives.Set() || without(gives.V) || !balanced.Set() || balanced.V {
		return gives.Set(), false
	}
	r.Fail(check.Note, fmt.Sprintf("%s is unbalanced and %s gives phantom power (%s): see that it is switched off there.", f.Source.Part.Name, f.Into.Name(), gives.V)).
		Key(atUnit("phantom", f)).At(pluggedAt(f)).See(readable(gives.Span), "phantom power of "+f.Into.Name()).
		Remedy(check.Advice, fmt.Sprintf("Switch the phantom power of %s off for good, or put a transformer into the lead.", f.Into.Name()), setInput(f.Into, gives.Span, "phantom", strconv.Quote("none")))
	return true, true
}

func without(phantom string) bool {
	return slices.Contains([]string{"none", "no", "off", "0 v"}, strings.ToLower(strings.TrimSpace(phantom)))
}

// phantomDoes compares what is needed, "48 V" or "12 to 52 V", with what is
// given. Of texts without figures only equal ones do.
func phantomDoes(needs, gives string) bool {
	a, b := voltsIn(needs), voltsIn(gives)
	if len(a) == 0 || len(b) == 0 {
		return strings.EqualFold(strings.TrimSpace(needs), strings.TrimSpace(gives))
	}
	return slices.Max(b) >= slices.Min(a) && slices.Min(b) <= slices.Max(a)
}

// voltsIn gives the figures in a text.
func voltsIn(text string) []float64 {
	var all []float64
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r != '.' && (r < '0' || r > '9') }) {
		if v, err := strconv.ParseFloat(word, 64); err == nil {
			all = append(all, v)
		}
	}
	return all
}

// inputFitSend asks whether an output of line level goes into an input for it.
func inputFitSend(r *check.Report, links []*analysis.Link) {
	asked := false
	for _, l := range links {
		if l.Into.Part == nil || l.Into.Contact() {
			continue
		}
		wants, st := takesKind(l.Into), l.Stage()
		if wants == "" {
			continue
		}
		asked = true
		if wants == lineLevel || st != nil && st.InHand.Known() {
			continue
		}
		r.Fail(check.Warning, fmt.Sprintf("%s of %s gives line level, and %s is set for a %s.", l.Part.Send.Name, l.From.Part.Name, l.Into.Name(), wants)).
			Key("kind").At(linkedAt(l)).See(readable(l.Into.Part.Takes.Span), "what "+l.Into.Name()+" takes").
			Remedy(check.Advice, fmt.Sprintf("Send it into an input for line level, or set %s to line with a pad of 20 to 30 dB.", l.Into.Name()))
		return
	}
	if !asked {
		r.NotAsked()
		return
	}
	r.Pass(fmt.Sprintf("%s suits %s of %s.", wording.Capital(links[0].Into.Name()), links[0].Part.Send.Name, links[0].From.Part.Name)).At(linkedAt(links[0]))
}
