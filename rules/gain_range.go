package rules

import (
	"fmt"
	"math"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// GainRange asks whether levels fit together from every source to the
// amplifiers.
var GainRange = &check.Check{
	ID:      "gain-range",
	Asks:    "Can each source drive its amplifiers to rated output, with every control well inside its travel?",
	Summary: "A source is too weak for rated output, or so strong that a control sits at the bottom of its travel.",
	Why: "An input that gets 46 dB more than it needs distorts before its control can do anything, and the control has all of its effect in the last hair of its travel. " +
		"One that gets too little is turned fully up, hisses, and is still too quiet. Either is found on paper with two figures of two data sheets.",
	How: "At every input, subtracts its sensitivity (the level that gives rated output at full gain) from the level that arrives (of the source, or nominal of the output that sends), " +
		"less the pad and what summing resistors take. The difference is in hand: so far below fully up sits the control when the unit gives rated output. " +
		"A source that lacks something at its own input may have it lent by the inputs behind it. " +
		"Where both gain control and master are stated, says how far above or below rated output they leave the signal.",
	Basis: "common practice, no published source",
	Blind: "Levels are nominal ones: a shout, a whisper and how loud a recording was made are not seen. What source and input impedance make of the level is left out; " +
		"where source-loading passes that is below 0.9 dB, at microphones 1.6 dB. Levels inside a digital unit and at data inputs of paging desks are not known. " +
		"A control that is set so that a source stays below rated output may be meant so and is no finding.",
	Params: []check.Param{
		{Name: "least_in_hand", Doc: "how much a source is to have in hand, below which a note is given; with less than nothing it is a warning", Unit: check.Decibel, Default: 3, Low: 0, High: 30},
		{Name: "least_at_send", Doc: "the same where a unit's output comes in: its nominal level is fixed, so that nothing need be in hand", Unit: check.Decibel, Default: 0, Low: 0, High: 30},
		{Name: "most_in_hand", Doc: "how much may be in hand at an input, above which a warning is given", Unit: check.Decibel, Default: 30, Low: 5, High: 80},
		{Name: "error_lacking", Doc: "how much may be lacking for rated output, above which it is an error", Unit: check.Decibel, Default: 20, Low: 0, High: 80},
	},
	Severity: check.Error,
	Cautions: []string{"Set levels from the source on: the first control as high as it goes without distortion, the last one as low as is loud enough."},
	Failing: check.Example{
		Shows: "A player in an input that is set for a microphone.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Mic/line" {
    setting     = "mic"
    sensitivity = "-56 dBV"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" {
  into     = "Rack"
  input    = "Mic/line"
  channels = "mono"
  level    = "-10 dBV"
}
`,
	},
	Passing: check.Example{
		Shows: "With the pad of 30 dB 16 dB are in hand.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Mic/line" {
    setting     = "mic"
    sensitivity = "-56 dBV"
    pad         = "-30 dB"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" {
  into     = "Rack"
  input    = "Mic/line"
  channels = "mono"
  level    = "-10 dBV"
}
`,
	},
	Judge: check.Together(check.EachSource(gainOfSource), check.EachSend(gainOfSend)),
}

func gainOfSource(r *check.Report, src *analysis.Source) {
	r.NotAsked() // until a plug is found of which levels can be compared
	for _, f := range src.Feeds {
		if st := f.Stage(); st != nil {
			gainOfPlug(r, st)
		}
	}
}

func gainOfPlug(r *check.Report, st *analysis.Stage) {
	f, into := st.Feed, st.Into.Name()
	name := f.Source.Part.Name
	if !st.InHand.Known() {
		r.Open(fmt.Sprintf("How much gain %s needs at %s cannot be told.", name, into), st.InHand.Missing...).Key(atUnit("gain", f)).At(pluggedAt(f))
		return
	}
	if tooMuchInHand(r, st, name) {
		return
	}
	limit, way := r.Limit("least_in_hand"), analysis.GainWay{Stages: []*analysis.Stage{st}, InHand: st.InHand}
	if !quantity.AtLeast(float64(st.InHand.Value), limit.Value) {
		way = st.Through()
	}
	if !way.InHand.Known() {
		r.Open(fmt.Sprintf("%s has %s in hand at %s; whether the units behind it make up for that cannot be told.", name, st.InHand.Value, into), way.InHand.Missing...).
			Key(atUnit("gain", f)).At(pluggedAt(f)).Evidence(check.Of("in hand at "+into, st.InHand))
		return
	}
	inHand := float64(way.InHand.Value)
	var a *check.Answer
	switch {
	case !quantity.AtLeast(inHand, 0):
		severity := check.Warning
		if !quantity.AtMost(-inHand, r.Limit("error_lacking").Value) {
			severity = check.Error
		}
		a = r.Fail(severity, fmt.Sprintf("%s lacks %s %s: with its control fully up rated output is not reached.", name, -way.InHand.Value, whereInHand(way)))
		lackRemedies(a, st, way, limit)
	case !quantity.AtLeast(inHand, limit.Value):
		a = r.Fail(check.Note, fmt.Sprintf("%s has only %s in hand %s: its control sits almost fully up, and a quiet talker or recording stays quiet.", name, way.InHand.Value, whereInHand(way))).
			Remedy(check.Advice, "Take a source of a higher level, or an input of more gain.")
	default:
		if controlsAsSet(r, st, name) {
			return
		}
		a = r.Pass(fmt.Sprintf("%s has %s in hand %s: at rated output its control sits %s.", name, way.InHand.Value, whereInHand(way), belowFull(st.InHand.Value)))
	}
	gainEvidence(a, way, limit).Key(atUnit("gain", f)).At(pluggedAt(f))
}

// whereInHand says over which inputs a figure counts.
func whereInHand(way analysis.GainWay) string {
	if n := len(way.Stages); n > 1 {
		return "on its way to " + way.Stages[n-1].Into.Unit.Part.Name
	}
	return "at " + way.Stages[0].Into.Name()
}

// gainEvidence shows what is in hand at each input on the way.
func gainEvidence(a *check.Answer, way analysis.GainWay, limit check.Limit) *check.Answer {
	for _, st := range way.Stages {
		a.Evidence(check.Of("in hand at "+st.Into.Name(), st.InHand))
		for _, p := range st.InHand.From {
			a.See(readable(p.Span), p.Note)
		}
	}
	if len(way.Stages) > 1 {
		a.Evidence(check.Of("in hand over all of them", way.InHand))
	}
	return a.AtLeast(fmt.Sprintf("at least %s in hand", limit), limit.Value, "dB", limit).Assumed(way.InHand.Assumed...)
}

// tooMuchInHand answers for a signal that is too strong for an input.
func tooMuchInHand(r *check.Report, st *analysis.Stage, name string) bool {
	most, inHand := r.Limit("most_in_hand"), st.InHand.Value
	if quantity.AtMost(float64(inHand), most.Value) {
		return false
	}
	a := r.Fail(check.Warning, fmt.Sprintf("%s comes to %s with %s more than rated output needs: the input is likely to distort, and its control sits at the bottom of its travel.", name, st.Into.Name(), inHand)).
		Evidence(check.Of("in hand at "+st.Into.Name(), st.InHand)).
		AtMost(fmt.Sprintf("at most %s in hand", most), most.Value, "dB", most).Assumed(st.InHand.Assumed...)
	a.Key(stageKey("gain", st)).At(stagePlace(st))
	for _, p := range st.InHand.From {
		a.See(readable(p.Span), p.Note)
	}
	i := st.Into
	if loss := padFor(float64(inHand), r.Limit("least_in_hand").Value, most.Value); loss > 0 {
		pad := quantity.Gain(-math.Abs(float64(i.Part.Pad.V)) - loss)
		text := fmt.Sprintf("Switch in a pad of %s at %s, or its line position if that is as much: %s are then in hand.", -pad, i.Name(), inHand-quantity.Gain(loss))
		if i.Position() == analysis.AtLine || i.Part.Takes.V == "line" {
			text = fmt.Sprintf("Put a pad of %s before %s: %s are then in hand.", -pad, i.Name(), inHand-quantity.Gain(loss))
		}
		a.Remedy(check.Computed, text, setInput(i, i.Part.Pad.Span, "pad", strconv.Quote(pad.String())))
	}
	if st.Feed != nil {
		if to := inputInstead(st.Feed, inRange(r)); to != nil {
			a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free: %s are in hand there.", name, to.Name(), pluggedInstead(st.Feed, to).Stage().InHand.Value), plugInto(st.Feed, to))
		}
	}
	return true
}

// inRange tells of an input whether what a plug brings would be well inside its
// travel.
func inRange(r *check.Report) func(*analysis.Feed, *analysis.Input) bool {
	least, most := r.Limit("least_in_hand"), r.Limit("most_in_hand")
	return func(f *analysis.Feed, to *analysis.Input) bool {
		st := pluggedInstead(f, to).Stage()
		return st != nil && st.InHand.Known() && quantity.AtLeast(float64(st.InHand.Value), least.Value) && quantity.AtMost(float64(st.InHand.Value), most.Value)
	}
}

// padFor is the smallest usual pad with which what is in hand comes between two
// limits, 0 when none does. Common practice, no published source.
func padFor(inHandDB, leastDB, mostDB float64) float64 {
	for _, loss := range []float64{10, 20, 30, 40, 50, 60} {
		if left := inHandDB - loss; quantity.AtMost(left, mostDB) && quantity.AtLeast(left, leastDB) {
			return loss
		}
	}
	return 0
}

func lackRemedies(a *check.Answer, st *analysis.Stage, way analysis.GainWay, limit check.Limit) {
	i, lacking := st.Into, -float64(way.InHand.Value)
	if loss := math.Abs(float64(i.Part.Pad.V)); loss > 0 && quantity.AtLeast(loss-lacking, limit.Value) {
		a.Remedy(check.Computed, fmt.Sprintf("Switch the pad of %s off: %s are then in hand.", quantity.Gain(loss), quantity.Gain(loss-lacking)), setInput(i, i.Part.Pad.Span, "pad", strconv.Quote("0 dB")))
	}
	to := inputInstead(st.Feed, func(f *analysis.Feed, to *analysis.Input) bool {
		other := pluggedInstead(f, to).Stage()
		return other != nil && other.InHand.Known() && quantity.AtLeast(float64(other.InHand.Value), limit.Value) && quantity.AtMost(float64(other.InHand.Value), a.Limit("most_in_hand").Value)
	})
	if to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free: %s are in hand there.", st.Feed.Source.Part.Name, to.Name(), pluggedInstead(st.Feed, to).Stage().InHand.Value), plugInto(st.Feed, to))
	}
	a.Remedy(check.Advice, fmt.Sprintf("Put a pre-amplifier of %s or more before %s, or take a source of a higher level.", quantity.Gain(math.Ceil(lacking+limit.Value)), i.Name()))
}

// controlsAsSet answers for controls that are stated: beyond rated output the
// unit distorts at the nominal level already.
func controlsAsSet(r *check.Report, st *analysis.Stage, name string) bool {
	i, key, place := st.Into, stageKey("controls", st), stagePlace(st)
	if st.Knob.Set() {
		r.Open(fmt.Sprintf("Where %q leaves %s cannot be told.", st.Knob.V, name), i.Missing("setting of the gain control in dB", `trim = "-20 dB"`)).Key(key).At(place)
		return true
	}
	if !st.AsSet.Known() || quantity.AtMost(float64(st.AsSet.Value), 0) {
		return false
	}
	trim := i.Part.Trim.V - st.AsSet.Value
	a := r.Fail(check.Warning, fmt.Sprintf("As set, %s drives %s %s beyond its rated output: it distorts.", name, i.Unit.Part.Name, st.AsSet.Value)).
		Key(key).At(inside(&i.Unit.Part.Part, i.Part.Trim.Span)).
		Evidence(check.Of("in hand at "+i.Name(), st.InHand), check.Of("as set", st.AsSet)).
		Bound(check.Bound{Text: "at most 0 dB above rated output", Unit: "dB", AtMost: true, Basis: "rated output is the most the unit gives without distortion"})
	for _, p := range st.AsSet.From {
		a.See(readable(p.Span), p.Note)
	}
	a.Remedy(check.Proved, fmt.Sprintf("Turn the gain control of %s down to %s.", i.Name(), trim), setInput(i, i.Part.Trim.Span, "trim", strconv.Quote(trim.String())))
	return true
}

// belowFull says where a control sits at rated output.
func belowFull(inHand quantity.Gain) string {
	if quantity.AtMost(float64(inHand), 0) {
		return "fully up"
	}
	return inHand.String() + " below fully up"
}

func stagePlace(st *analysis.Stage) source.Span {
	if st.Feed != nil {
		return pluggedAt(st.Feed)
	}
	return linkedAt(st.Link)
}

func stageKey(key string, st *analysis.Stage) string {
	if st.Feed != nil {
		return atUnit(key, st.Feed)
	}
	return key
}

// gainOfSend answers for the outputs of one send: the one with least, or most, in
// hand stands for all.
func gainOfSend(r *check.Report, links []*analysis.Link) {
	var least, most *analysis.Stage
	var missing []analysis.Missing
	for _, l := range links {
		st := l.Stage()
		switch {
		case st == nil:
		case !st.InHand.Known():
			missing = analysis.MergeMissing(missing, st.InHand.Missing)
		default:
			if least == nil || st.InHand.Value < least.InHand.Value {
				least = st
			}
			if most == nil || st.InHand.Value > most.InHand.Value {
				most = st
			}
		}
	}
	send := links[0].Part.Send
	name := fmt.Sprintf("%s of %s", send.Name, links[0].From.Part.Name)
	switch {
	case len(missing) > 0:
		r.Open(fmt.Sprintf("How much gain %s needs at %s cannot be told.", name, links[0].Into.Unit.Part.Name), missing...).Key("gain").At(linkedAt(links[0]))
		return
	case least == nil:
		r.NotAsked()
		return
	case tooMuchInHand(r, most, name):
		return
	}
	limit, inHand := r.Limit("least_at_send"), least.InHand.Value
	way := analysis.GainWay{Stages: []*analysis.Stage{least}, InHand: least.InHand}
	switch {
	case !quantity.AtLeast(float64(inHand), 0):
		severity := check.Warning
		if !quantity.AtMost(-float64(inHand), r.Limit("error_lacking").Value) {
			severity = check.Error
		}
		a := r.Fail(severity, fmt.Sprintf("%s lacks %s at %s: its nominal level does not drive %s to rated output.", name, -inHand, least.Into.Name(), least.Into.Unit.Part.Name))
		gainEvidence(a, way, limit).Key("gain").At(linkedAt(least.Link))
		sendRemedies(a, least)
	case !quantity.AtLeast(float64(inHand), limit.Value):
		a := r.Fail(check.Note, fmt.Sprintf("%s has only %s in hand at %s.", name, inHand, least.Into.Name()))
		gainEvidence(a, way, limit).Key("gain").At(linkedAt(least.Link))
	case !controlsAsSet(r, least, name):
		gainEvidence(r.Pass(fmt.Sprintf("%s has %s in hand at %s: at rated output its control sits %s.", name, inHand, least.Into.Name(), belowFull(inHand))), way, limit).
			Key("gain").At(linkedAt(least.Link))
	}
}

// sendRemedies says what brings a send up to what its input needs.
func sendRemedies(a *check.Answer, st *analysis.Stage) {
	out, lacking := st.Link.Part.Output, -float64(st.InHand.Value)
	if down := -float64(out.Pad.V); quantity.AtLeast(down, lacking) {
		var edits []check.Edit
		if span := inside(&st.Link.From.Part.Part, out.Pad.Span); !span.IsZero() {
			edits = append(edits, check.Edit{Span: span, New: strconv.Quote("0 dB")})
		}
		a.Remedy(check.Computed, fmt.Sprintf("Turn the level control of %s up to 0 dB.", out.Name), edits...)
	}
	a.Remedy(check.Advice, fmt.Sprintf("See on the data sheet how far %s can go above its nominal level, or put a line amplifier of %s before %s.", out.Name, quantity.Gain(math.Ceil(lacking)), st.Into.Name()))
}
