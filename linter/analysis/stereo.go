package analysis

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Channels is what an input does with left and right.
type Channels int

// What inputs do.
const (
	UnknownChannels Channels = iota
	OneChannel               // it takes one channel
	SumsInside               // it takes two and adds them properly
	KeepsBoth                // it takes two and keeps them apart
	TakesLeft                // it takes the left one of two
)

// Joining is what becomes of two channels at a plug or on a link.
type Joining int

// What becomes of them.
const (
	UnknownJoining  Joining = iota
	Summed                  // they become one properly
	KeptApart               // they stay two
	OneSide                 // one is left out
	Tied                    // two outputs are joined bare and drive each other
	Difference              // the input takes left minus right
	Unnamed                 // they meet one channel and nothing is named that sums them
	InputDoesNotSum         // the input is said to sum them and does not
)

// Joint is a place where two channels come to an input: a plug of a source, or
// a send.
type Joint struct {
	Feed *Feed // nil for a send
	Link *Link // nil for a plug
	Into *Input
	// By is how the design says that they become one.
	By      schema.Value[string]
	Joining Joining
	// Right tells for OneSide which side is left: right, not left.
	Right   bool
	Missing []Missing // for UnknownJoining
	// Outputs are those that a Tied joint joins, as far as the design knows
	// them; Paralleled is what their impedances come to.
	Outputs    []string
	Paralleled Figure[quantity.Resistance]
}

// Stereo is what becomes of the two channels of a source.
type Stereo struct {
	// Joints are its plugs, in the order of its feeds.
	Joints []Joint
	// Left and Right are lines it is meant for that get one side only, Whole
	// those that get both, added or one beside the other.
	Left, Right, Whole []*Line
	// Split are the links on which it is parted into left and right.
	Split []*Link
	// Elsewhere are sends whose own joint decides what becomes of it.
	Elsewhere []*Link
	// Missing is what keeps the way of its two channels from being known.
	Missing []Missing
}

// channelsOf tells what an input does with left and right. Of one of which that
// is not stated it is known that it takes one channel when it is made for speech,
// drives one power channel, or has no contacts for two.
func (s *System) channelsOf(i *Input) Channels {
	if i.Part == nil {
		return UnknownChannels
	}
	p := i.Part
	switch p.Stereo.V {
	case "summed inside":
		return SumsInside
	case "left and right kept":
		return KeepsBoth
	case "left only":
		return TakesLeft
	}
	switch {
	case p.Takes.V == "microphone", p.Takes.V == "telephone", p.Takes.V == "paging desk", p.Channel.Set():
		return OneChannel
	case !p.Connectors.Set() || len(p.Connectors.Items) == 0:
		return UnknownChannels
	}
	most := 2 // conductors that one channel takes
	if p.Balanced.V {
		most = 3
	}
	for _, c := range p.Connectors.Items {
		if n := s.Cores(c.V); n == 0 || n > most {
			return UnknownChannels
		}
	}
	return OneChannel
}

// TwoChannels tells that a source is stereo; stated is false when the design
// does not say.
func (s *Source) TwoChannels() (two, stated bool) {
	if s.Part.Channels.Set() {
		return s.Part.Channels.V == "stereo", true
	}
	for _, f := range s.Feeds {
		if f.Part.SummedBy.Set() {
			return true, true
		}
	}
	return false, s.Part.Announces() // speech is one channel
}

// settle works out what becomes of two channels at an input.
func (j *Joint) settle() {
	input := j.Into.Channels
	switch j.By.V {
	case "Y-lead":
		j.Joining = Tied
	case "pins 2 and 3":
		j.Joining = Difference
	case "left only", "right only":
		j.Joining, j.Right = OneSide, j.By.V == "right only"
	case "resistors", "transformer", "mono output":
		j.Joining = Summed
	case "input", "output":
		j.inside(input)
	default: // "nothing", or not stated
		switch input {
		case SumsInside:
			j.Joining = Summed
		case KeepsBoth:
			j.Joining = KeptApart
		case TakesLeft:
			j.Joining = OneSide
		case OneChannel:
			j.Joining = Unnamed
		case UnknownChannels:
			j.Missing = j.missing(!j.By.Set())
		}
	}
}

// inside holds what the design says of the unit against what the unit says
// of itself.
func (j *Joint) inside(input Channels) {
	switch {
	case input == SumsInside, input == KeepsBoth && j.By.V == "output":
		j.Joining = Summed
	case input == UnknownChannels:
		j.Missing = j.missing(false)
	default:
		j.Joining = InputDoesNotSum
	}
}

// missing is what a joint waits for: how the two become one, or else what the
// input does with them.
func (j *Joint) missing(way bool) []Missing {
	switch {
	case j.Into.Part == nil && j.Feed != nil:
		return j.Into.whichInput(j.Feed.Source)
	case j.Into.Part == nil:
		return []Missing{j.Link.MissingInput()}
	case way && j.Feed != nil:
		return []Missing{j.Feed.Missing("how left and right become one", `summed_by = "resistors"`)}
	case way:
		return []Missing{j.Link.Missing("how left and right become one", `summed_by = "resistors"`)}
	}
	return []Missing{j.Into.Missing("what it does with left and right", `stereo = "summed inside"`)}
}

// analyseStereo works out the joints of all sends, and follows the sources of
// two channels.
func (s *System) analyseStereo() {
	judged := map[*schema.Send]*Joint{}
	for _, u := range s.Units {
		for _, l := range u.Links {
			send := l.Part.Send
			tied := len(send.TiedWith.Items) > 0
			two := send.Channels.V == "stereo" || send.SummedBy.Set() && !send.Channels.Set()
			if !tied && !two || judged[send] != nil {
				continue
			}
			j := &Joint{Link: l, Into: l.Into, By: send.SummedBy}
			j.settle()
			if tied {
				j.tie()
			}
			judged[send] = j
			s.Joints = append(s.Joints, j)
		}
	}
	for _, src := range s.Sources {
		two, stated := src.TwoChannels()
		if two || !stated {
			src.Stereo = s.followStereo(src, judged)
		}
	}
}

// tie settles a joint of several outputs on one lead: nothing but resistors or a
// transformer keeps them from driving each other.
func (j *Joint) tie() {
	if j.By.V == "resistors" || j.By.V == "transformer" {
		j.Joining, j.Missing = Summed, nil
		return
	}
	j.Joining, j.Missing = Tied, nil
	j.Outputs = append(j.Outputs, j.Link.output())
	known := j.Link.Part.Output != nil && j.Link.Part.Output.Impedance.Set()
	var all []schema.Value[quantity.Resistance]
	if known {
		all = append(all, j.Link.Part.Output.Impedance)
	}
	for _, name := range j.Link.Part.Send.TiedWith.Items {
		j.Outputs = append(j.Outputs, name.V)
		o := j.Link.From.Part.Output(name.V)
		if o == nil || !o.Impedance.Set() {
			known = false
			continue
		}
		all = append(all, o.Impedance)
	}
	if known {
		j.Paralleled = paralleled(all)
	} else {
		j.Paralleled.Missing = []Missing{missing("impedance of the outputs", j.Link.From.Part.Kind, &j.Link.From.Part.Part, fmt.Sprintf("output %q { impedance = \"600 ohm\" }", j.Outputs[0]))}
	}
}

// output names the output a link leaves by.
func (l *Link) output() string {
	if l.Part.Output != nil {
		return l.Part.Output.Name
	}
	return l.Part.Send.Name
}

// paralleled is the impedance of several sources joined, 1 / (1/Z₁ + 1/Z₂ + …).
func paralleled(all []schema.Value[quantity.Resistance]) Figure[quantity.Resistance] {
	f := Figure[quantity.Resistance]{}
	sum := 0.0
	var parts []string
	for _, z := range all {
		sum += 1 / float64(z.V)
		parts = append(parts, "1 / "+z.Text)
		f.From = append(f.From, schema.Place{Span: z.Span, Note: "output of " + z.Text})
	}
	f.Value = quantity.Resistance(1 / sum)
	f.Sum = fmt.Sprintf("1 / (%s) = %s", strings.Join(parts, " + "), f.Value)
	return f
}

// sides of a signal on its way.
type sides int

const (
	whole sides = iota // one channel that holds both
	both               // two channels
	left
	right
)

// stereoWay follows the channels of one source.
type stereoWay struct {
	system *System
	source *Source
	judged map[*schema.Send]*Joint
	result *Stereo
	lines  map[int]*[4]bool // sides by which a line is reached
	seen   map[stereoStep]bool
	todo   []stereoStep
}

type stereoStep struct {
	at *Input
	as sides
}

func (s *System) followStereo(src *Source, judged map[*schema.Send]*Joint) *Stereo {
	w := &stereoWay{system: s, source: src, judged: judged, result: &Stereo{}, lines: map[int]*[4]bool{}, seen: map[stereoStep]bool{}}
	for _, f := range src.Feeds {
		if f.Into == nil || f.Into.Contact() {
			continue
		}
		j := Joint{Feed: f, Into: f.Into, By: f.Part.SummedBy}
		j.settle()
		if j.Joining == Tied {
			if z := src.Part.Impedance; z.Set() {
				j.Paralleled = paralleled([]schema.Value[quantity.Resistance]{z, z})
				j.Paralleled.From = j.Paralleled.From[:1]
			} else {
				j.Paralleled.Missing = []Missing{src.Missing("impedance", `impedance = "600 ohm"`)}
			}
		}
		w.enter(f.Into, j)
		w.result.Joints = append(w.result.Joints, j)
	}
	for len(w.todo) > 0 {
		next := w.todo[0]
		w.todo = w.todo[1:]
		w.leave(next)
	}
	for n, l := range s.Lines {
		by := w.lines[n]
		switch {
		case by == nil:
		case by[whole] || by[left] && by[right]:
			w.result.Whole = append(w.result.Whole, l)
		case by[left]:
			w.result.Left = append(w.result.Left, l)
		case by[right]:
			w.result.Right = append(w.result.Right, l)
		}
	}
	return w.result
}

// enter goes on behind a joint, unless the joint leaves nothing to follow.
func (w *stereoWay) enter(i *Input, j Joint) {
	switch j.Joining {
	case Summed:
		w.visit(i, whole)
	case KeptApart:
		w.visit(i, both)
	case OneSide:
		if j.Right {
			w.visit(i, right)
		} else {
			w.visit(i, left)
		}
	case UnknownJoining, Tied, Difference, Unnamed, InputDoesNotSum:
	}
}

func (w *stereoWay) visit(i *Input, as sides) {
	step := stereoStep{i, as}
	if !w.seen[step] && i.exits.leads {
		w.seen[step] = true
		w.todo = append(w.todo, step)
	}
}

func (w *stereoWay) leave(p stereoStep) {
	if p.as == both {
		w.linesOfBoth(p)
	}
	for _, n := range p.at.exits.lines {
		if p.as != both && w.source.heard.has(n) {
			w.mark(n, p.as)
		}
	}
	for _, l := range p.at.exits.links {
		if _, wanted := w.source.heard.common(w.system.reached(l.Into.exits)); !wanted {
			continue
		}
		if p.as != both {
			w.visit(l.Into, p.as)
			continue
		}
		w.part(l)
	}
}

// part sends two channels over a link.
func (w *stereoWay) part(l *Link) {
	send := l.Part.Send
	if j := w.judged[send]; j != nil {
		if j.Joining != Summed && j.Joining != KeptApart && j.Joining != OneSide {
			w.result.Elsewhere = append(w.result.Elsewhere, l)
		}
		w.enter(l.Into, *j)
		return
	}
	switch send.Channels.V {
	case "left":
		w.result.Split = append(w.result.Split, l)
		w.visit(l.Into, left)
	case "right":
		w.result.Split = append(w.result.Split, l)
		w.visit(l.Into, right)
	case "mono":
		w.visit(l.Into, whole)
	default:
		w.result.Missing = MergeMissing(w.result.Missing, []Missing{l.Missing("channels it carries", `channels = "mono"`)})
	}
}

// linesOfBoth puts two channels on the lines of an amplifier. On two power
// channels they stay apart; how they would leave by one is not known.
func (w *stereoWay) linesOfBoth(p stereoStep) {
	var on []*schema.Channel
	var lines []int
	for _, n := range p.at.exits.lines {
		if !w.source.heard.has(n) {
			continue
		}
		lines = append(lines, n)
		if c := w.system.Lines[n].Part.ChannelPart; !slices.Contains(on, c) {
			on = append(on, c)
		}
	}
	switch {
	case len(lines) == 0:
	case len(on) > 1:
		for _, n := range lines {
			w.mark(n, whole)
		}
	default:
		w.result.Missing = MergeMissing(w.result.Missing, []Missing{w.source.Missing("how left and right become one", `summed_by = "output"`)})
	}
}

func (w *stereoWay) mark(line int, as sides) {
	if w.lines[line] == nil {
		w.lines[line] = &[4]bool{}
	}
	w.lines[line][as] = true
}
