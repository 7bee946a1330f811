package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

// MonoSum asks how left and right become one.
var MonoSum = &check.Check{
	ID:      "mono-sum",
	Asks:    "Are left and right properly made into one wherever two channels meet a path of one?",
	Summary: "Left and right, or two outputs, come together in a way that harms them, or one of the two is lost.",
	Why: "A loudspeaker line carries one channel and most music comes in two. An output has a low impedance, so two outputs wired together drive each other " +
		"instead of the input: they run into their current limit, distort, or cancel what the two channels do not have in common. " +
		"That the same lead worked with another player proves nothing. Left and right on the two hot pins of a balanced input leave their difference only, without voices and bass; " +
		"one side alone leaves half of the programme.",
	How: "Takes every plug of a stereo source, and every send that carries two channels or has another output tied to it, and compares what the design names as summing " +
		"(resistors, a transformer, the input, the unit's output, the player's mono output) with what the input does with two channels. " +
		"Where an input keeps left and right apart, follows both to the lines. Two outputs tied together are shown with their impedance in parallel, 1 / (1/Z1 + 1/Z2).",
	Basis: "common practice, no published source; how impedances in parallel add is circuit theory",
	Blind: "What an input does with two channels is taken from its stereo attribute; without it an input counts as one channel when it is made for speech, drives one power channel, " +
		"or has no contacts for two, and otherwise the answer is open. Phase between the two channels of a recording is not seen: some recordings lose level when summed, however well that is done.",
	Severity: check.Error,
	Cautions: []string{"A summing lead with resistors is a part to order or to make: put it on the list of parts and label it, or somebody replaces it with a plain one."},
	Failing: check.Example{
		Shows: "The two main outputs of a mixer are wired together.",
		Design: `mixer "Desk" {
  output "Main left" { impedance = "600 ohm" }
  output "Main right" { impedance = "600 ohm" }
  send "Main left" {
    into      = "Amp"
    input     = "Line in"
    tied_with = ["Main right"]
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { takes = "line" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "Resistors stand between them.",
		Design: `mixer "Desk" {
  output "Main left" { impedance = "600 ohm" }
  output "Main right" { impedance = "600 ohm" }
  send "Main left" {
    into      = "Amp"
    input     = "Line in"
    tied_with = ["Main right"]
    summed_by = "resistors"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { takes = "line" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
`,
	},
	Judge: check.Together(check.EachSource(monoSumSource), check.EachJoint(monoSumSend)),
}

// summingPart is what to order where nothing sums.
const summingPart = "a summing lead or box: a resistor in each leg (about 500 ohm is usual; common practice, no published source), or a transformer"

func monoSumSource(r *check.Report, src *analysis.Source) {
	two, stated := src.TwoChannels()
	if src.Stereo == nil || len(src.Stereo.Joints) == 0 {
		r.NotAsked() // one channel, or not plugged in
		return
	}
	if !two && !stated {
		monoOrStereo(r, src)
		return
	}
	answered := false
	for i := range src.Stereo.Joints {
		j := &src.Stereo.Joints[i]
		if j.Joining == analysis.OneSide && otherSideTaken(src.Stereo, j) {
			continue
		}
		if monoSumJoint(r, j, src.Part.Name, &j.Feed.Part.Part, i) {
			answered = true
		}
	}
	if monoSumWay(r, src) {
		answered = true
	}
	switch {
	case answered:
	case len(src.Stereo.Elsewhere) > 0:
		r.NotAsked() // the send on which they come together is asked
	default:
		r.Pass(fmt.Sprintf("%s is stereo: %s.", src.Part.Name, summedHow(src)))
	}
}

// monoOrStereo answers for a music source of which the design does not say how
// many channels it has: that does not matter only where inputs add two.
func monoOrStereo(r *check.Report, src *analysis.Source) {
	for i := range src.Stereo.Joints {
		if src.Stereo.Joints[i].Joining != analysis.Summed {
			r.Open(fmt.Sprintf("Whether left and right of %s need summing cannot be told.", src.Part.Name), src.Missing("channels", `channels = "stereo"`)).Key("channels")
			return
		}
	}
	r.Pass(fmt.Sprintf("Whether %s is stereo is not said and does not matter: %s.", src.Part.Name, summedHow(src)))
}

// otherSideTaken tells that another plug of the source takes the side that this
// one leaves out.
func otherSideTaken(s *analysis.Stereo, j *analysis.Joint) bool {
	for i := range s.Joints {
		if o := &s.Joints[i]; o.Joining == analysis.OneSide && o.Right != j.Right {
			return true
		}
	}
	return false
}

// summedHow says what a source's first plug does about it.
func summedHow(src *analysis.Source) string {
	j := &src.Stereo.Joints[0]
	into := j.Into.Name()
	switch {
	case j.Joining == analysis.KeptApart && len(src.Stereo.Left)+len(src.Stereo.Right) > 0:
		return into + " keeps left and right apart, and each has lines of its own"
	case j.Joining == analysis.KeptApart:
		return into + " keeps left and right apart, and both reach every line"
	case j.Joining == analysis.OneSide:
		return "left and right have inputs of their own"
	case j.By.V == "resistors":
		return "resistors sum left and right on the way to " + into
	case j.By.V == "transformer":
		return "a transformer sums left and right on the way to " + into
	case j.By.V == "mono output":
		return "its own mono output goes to " + into
	case j.By.V == "output":
		return j.Into.Unit.Part.Name + " sums left and right at its outputs"
	}
	return into + " sums left and right"
}

// monoSumJoint answers for one plug or send that is not in order, and tells
// whether it did.
func monoSumJoint(r *check.Report, j *analysis.Joint, name string, part *schema.Part, nth int) bool {
	into := j.Into.Name()
	var a *check.Answer
	sure, remedy := check.Advice, "Order "+summingPart+"."
	switch j.Joining {
	case analysis.Summed, analysis.KeptApart:
		return false
	case analysis.UnknownJoining:
		r.Open(fmt.Sprintf("How left and right of %s become one at %s cannot be told.", name, into), j.Missing...).Key(jointKey(j, nth)).At(jointPlace(j, part))
		return true
	case analysis.Tied:
		a = r.Fail(check.Error, fmt.Sprintf("%s goes to %s by a bare Y-lead, left and right wired together: each output drives the other%s.", name, into, parallelWords(j)))
		remedy = "Replace the Y-lead by " + summingPart + "."
	case analysis.Difference:
		a = r.Fail(check.Error, fmt.Sprintf("%s has left and right on pins 2 and 3 of %s: the input takes their difference, and what both have in common, voices and bass, is gone.", name, into))
		remedy = "Put " + summingPart + " before the input, with its output on pin 2."
	case analysis.OneSide:
		side, lost := "left", "right"
		if j.Right {
			side, lost = lost, side
		}
		a = r.Fail(check.Warning, fmt.Sprintf("Only the %s side of %s goes into %s: what is on the %s is lost.", side, name, into, lost))
	case analysis.Unnamed:
		a = r.Fail(check.Warning, fmt.Sprintf("%s brings two channels and %s takes one: nothing is named that sums left and right.", name, into))
	case analysis.InputDoesNotSum:
		a = r.Fail(check.Warning, fmt.Sprintf("%s is to be summed by %s (summed_by = %q), and %s %s.", name, into, j.By.V, into, doesInstead(j.Into)))
		if j.Into.Part != nil {
			a.See(readable(j.Into.Part.Stereo.Span), "what the input does with left and right")
		}
	}
	a.Key(jointKey(j, nth)).At(jointPlace(j, part))
	if j.Paralleled.Known() && j.Joining == analysis.Tied {
		a.Evidence(check.Of("outputs in parallel", j.Paralleled))
	}
	a.Remedy(sure, remedy, check.Write(part, j.By.Span, "summed_by", strconv.Quote("resistors")))
	if mono := monoOutput(j); mono != "" {
		a.Remedy(check.Advice, fmt.Sprintf("Take the output %q of %s, which carries both already.", mono, j.Link.From.Part.Name))
	}
	return true
}

// jointKey tells the plugs of a source apart by where they go.
func jointKey(j *analysis.Joint, nth int) string {
	if nth == 0 {
		return "summing"
	}
	return "summing at " + j.Into.Unit.Part.Name
}

func jointPlace(j *analysis.Joint, part *schema.Part) source.Span {
	if s := inside(part, j.By.Span); !s.IsZero() {
		return s
	}
	if j.Feed != nil {
		return pluggedAt(j.Feed)
	}
	return linkedAt(j.Link)
}

// parallelWords says what two outputs come to: ", two 600 ohm outputs make
// 300 ohm and current circulates between them".
func parallelWords(j *analysis.Joint) string {
	if !j.Paralleled.Known() {
		return ""
	}
	return fmt.Sprintf(" (together they are %s, and current circulates between them)", j.Paralleled.Value)
}

func doesInstead(i *analysis.Input) string {
	switch i.Channels {
	case analysis.KeepsBoth:
		return "keeps left and right apart"
	case analysis.TakesLeft:
		return "takes the left one of two"
	case analysis.OneChannel, analysis.SumsInside, analysis.UnknownChannels:
	}
	return "takes one channel"
}

// monoOutput finds an output of the sending unit that is called mono.
func monoOutput(j *analysis.Joint) string {
	if j.Link == nil {
		return ""
	}
	for _, o := range j.Link.From.Part.Outputs {
		if strings.Contains(strings.ToLower(o.Name), "mono") {
			return o.Name
		}
	}
	return ""
}

// monoSumWay answers for what becomes of left and right behind an input that
// keeps them apart.
func monoSumWay(r *check.Report, src *analysis.Source) bool {
	st := src.Stereo
	if len(st.Missing) > 0 {
		r.Open(fmt.Sprintf("Whether left and right of %s both reach its lines cannot be told.", src.Part.Name), st.Missing...).Key("way")
		return true
	}
	lost, side, other := st.Left, "left", "right"
	if len(st.Right) > 0 {
		lost, side, other = st.Right, "right", "left"
	}
	if len(st.Split) == 0 || len(lost) == 0 || len(st.Left) > 0 && len(st.Right) > 0 {
		return false
	}
	names := make([]string, len(lost))
	for i, l := range lost {
		names[i] = l.Part.Name
	}
	a := r.Fail(check.Warning, fmt.Sprintf("Only the %s side of %s reaches %s, and no line gets the %s one.", side, src.Part.Name, listed(names), other)).
		Key("one side").At(pluggedAt(src.Feeds[0]))
	for _, l := range st.Split {
		a.See(linkedAt(l), fmt.Sprintf("%s carries the %s side", l.Part.Send.Name, l.Part.Send.Channels.V))
	}
	a.Remedy(check.Advice, fmt.Sprintf("Let the output that feeds %s carry both, summed (channels = \"mono\"), where the unit can do that.", listed(names)), monoSends(st.Split)...)
	return true
}

func monoSends(all []*analysis.Link) []check.Edit {
	var edits []check.Edit
	seen := map[*schema.Send]bool{}
	for _, l := range all {
		if send := l.Part.Send; !seen[send] {
			seen[send] = true
			edits = append(edits, check.Write(&send.Part, send.Channels.Span, "channels", strconv.Quote("mono")))
		}
	}
	return edits
}

func monoSumSend(r *check.Report, j *analysis.Joint) {
	send := j.Link.Part.Send
	name := fmt.Sprintf("%s of %s", send.Name, j.Link.From.Part.Name)
	if j.Joining == analysis.Tied && len(j.Outputs) > 1 {
		tiedOutputs(r, j)
		return
	}
	if monoSumJoint(r, j, name, &send.Part, 0) {
		return
	}
	switch {
	case len(send.TiedWith.Items) > 0:
		r.Pass(fmt.Sprintf("%s and %s come together through %s.", name, tiedNames(j), byWhat(j.By.V)))
	case j.Joining == analysis.KeptApart:
		r.Pass(fmt.Sprintf("%s carries two channels, and %s keeps them apart.", name, j.Into.Name()))
	case j.By.V == "resistors" || j.By.V == "transformer":
		r.Pass(fmt.Sprintf("%s carries two channels, and %s sums them on the way to %s.", name, byWhat(j.By.V), j.Into.Name()))
	default:
		r.Pass(fmt.Sprintf("%s carries two channels, and they are summed at %s.", name, j.Into.Name()))
	}
}

func byWhat(way string) string {
	if way == "transformer" {
		return "a transformer"
	}
	return way
}

func tiedNames(j *analysis.Joint) string {
	var names []string
	for _, n := range j.Link.Part.Send.TiedWith.Items {
		names = append(names, n.V)
	}
	return listed(names)
}

func tiedOutputs(r *check.Report, j *analysis.Joint) {
	send := j.Link.Part.Send
	place := inside(&send.Part, send.TiedWith.Span)
	a := r.Fail(check.Error, fmt.Sprintf("%s of %s are tied to one lead into %s: each drives the low impedance of the other%s.", listed(j.Outputs), j.Link.From.Part.Name, j.Into.Name(), tiedWords(j))).
		Key("tied").At(place)
	if j.Paralleled.Known() {
		a.Evidence(check.Of("outputs in parallel", j.Paralleled))
		for _, p := range j.Paralleled.From {
			a.See(readable(p.Span), p.Note)
		}
	}
	if mono := monoOutput(j); mono != "" {
		a.Remedy(check.Advice, fmt.Sprintf("Take the output %q of %s, which carries both already.", mono, j.Link.From.Part.Name))
	} else {
		a.Remedy(check.Advice, fmt.Sprintf("Take one of them alone and set the channels of %s to the centre.", j.Link.From.Part.Name))
	}
	a.Remedy(check.Advice, "Put "+summingPart+" between them.", check.Write(&send.Part, send.SummedBy.Span, "summed_by", strconv.Quote("resistors")))
}

func tiedWords(j *analysis.Joint) string {
	if !j.Paralleled.Known() {
		return ""
	}
	return fmt.Sprintf(", together they are %s, and current circulates between them", j.Paralleled.Value)
}
