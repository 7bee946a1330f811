package analysis

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"loudlint/linter/signal"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Stage is one input on the way of a signal, with what is in hand there.
type Stage struct {
	Into *Input
	// Feed or Link is what comes in: a plug of a source, or a send.
	Feed *Feed
	Link *Link
	// InHand is how far the input can turn the signal down, from full gain,
	// before rated output is no longer reached; below 0 dB it is what is lacking.
	// Pads and what sums two channels are counted; trim and master are not.
	InHand Figure[quantity.Gain]
	// AsSet is what is left in hand with trim and master as they are set: above
	// 0 dB the signal drives the unit beyond rated output. It is known only
	// where the design states both.
	AsSet Figure[quantity.Gain]
	// Knob is a position of a control that is not in dB, so that nothing can be
	// reckoned with it; not Set otherwise.
	Knob schema.Value[string]
}

// Stage works out what is in hand where a source is plugged in; nil where no
// audio level can be compared: at contacts, and at data inputs of paging desks.
func (f *Feed) Stage() *Stage {
	if f.Into == nil || f.Into.noLevel() {
		return nil
	}
	src := f.Source.Part
	st := &Stage{Into: f.Into, Feed: f}
	write := `level = "-10 dBV"`
	if src.Kind == schema.KindMicrophone {
		write = `level = "-54 dBV"`
	}
	st.work(src.Level, func(what, form string) Missing {
		if form == "" {
			form = write
		}
		return f.Source.Missing(what, form)
	}, "level of "+src.Name, f.Part.SummedBy.V == "resistors", schema.Value[quantity.Gain]{}, f.Into.whichInput(f.Source))
	return st
}

// Stage works out what is in hand where a send comes in; nil where no audio
// level can be compared.
func (l *Link) Stage() *Stage {
	if l.Into.noLevel() || l.Part.Output == nil {
		return nil
	}
	st := &Stage{Into: l.Into, Link: l}
	var which []Missing
	if l.Into.Part == nil {
		which = []Missing{l.MissingInput()}
	}
	out := l.Part.Output
	st.work(out.Level, func(what, form string) Missing {
		if form == "" {
			form = `level = "0 dBV"`
		}
		return l.MissingOfOutput(what, form)
	}, "level of "+out.Name+" of "+l.From.Part.Name, l.Part.Send.SummedBy.V == "resistors", out.Pad, which)
	return st
}

// MissingOfOutput is what the design does not say about the output of the link.
func (l *Link) MissingOfOutput(what, write string) Missing {
	out := l.Part.Output
	m := Missing{What: what, Part: named("output", out.Name) + " of " + l.From.Named(), Where: out.Header, Write: write}
	if !l.From.Owns(&out.Part) || out.Implied {
		m.Where, m.Write = l.From.Part.Header, named("output", out.Name)+" { "+write+" }"
	}
	return m
}

// noLevel tells that no audio level is compared at the input.
func (i *Input) noLevel() bool {
	return i.Contact() || i.Part != nil && i.Part.Takes.V == "paging desk" && !i.Part.Sensitivity.Set()
}

// typicalLeg is the resistor in each leg of a summing lead: 475 ohm, note "Why
// Not Wye", value from memory.
const typicalLeg = 475

func (st *Stage) work(level schema.Value[quantity.Level], lacks func(what, write string) Missing, of string, resistors bool, pad schema.Value[quantity.Gain], which []Missing) {
	f := &st.InHand
	levelDBV, referenced := level.V.DBV()
	switch {
	case !level.Set():
		f.Missing = append(f.Missing, lacks("nominal level", ""))
	case !referenced:
		f.Missing = append(f.Missing, lacks("reference of the level (dBV, dBu or volts)", fmt.Sprintf("level = \"%s dBu\"", quantity.Significant(level.V.Value, 4))))
	}
	f.Missing = MergeMissing(f.Missing, which)
	if st.Into.Part != nil {
		f.Missing = append(f.Missing, st.Into.missingSensitivity()...)
	}
	if len(f.Missing) > 0 {
		return
	}
	i := st.Into.Part
	sensitivityDBV, _ := i.Sensitivity.V.DBV()
	f.From = append(f.From, schema.Place{Span: level.Span, Note: of}, schema.Place{Span: i.Sensitivity.Span, Note: "sensitivity of " + st.Into.Name()})
	change := 0.0
	terms := levelText(level.V, levelDBV)
	subtract := func(dB float64, what string, at source.Span) {
		if dB == 0 {
			return
		}
		change += dB
		sign := "−"
		if dB > 0 {
			sign = "+"
		}
		terms += fmt.Sprintf(" %s %s (%s)", sign, quantity.Gain(math.Abs(dB)), what)
		if !at.IsZero() {
			f.From = append(f.From, schema.Place{Span: at, Note: what})
		}
	}
	subtract(float64(pad.V), "level control of the output", pad.Span)
	if resistors {
		c := signal.Combiner{Legs: 2, LegOhm: typicalLeg, ShuntOhm: math.Inf(1)}
		if i.Impedance.Set() {
			c.ShuntOhm = float64(i.Impedance.V)
		}
		subtract(c.UnlikeDB(), "in summing resistors", source.Span{})
		f.Assumed = append(f.Assumed, fmt.Sprintf("the summing resistors are of about %d ohm each, and left and right have little in common", typicalLeg))
	}
	subtract(-math.Abs(float64(i.Pad.V)), "pad", i.Pad.Span) // a loss, whichever sign it is written with
	f.Value = quantity.Gain(signal.InHandDB(levelDBV, change, sensitivityDBV))
	f.Sum = fmt.Sprintf("%s − (%s) = %s", terms, levelText(i.Sensitivity.V, sensitivityDBV), f.Value)
	st.controls()
}

// controls works out what is left with trim and master as they are set.
func (st *Stage) controls() {
	i, master := st.Into.Part, st.Into.Unit.Part.Master
	st.AsSet = Figure[quantity.Gain]{From: st.InHand.From}
	if !i.Trim.Set() {
		st.AsSet.Missing = append(st.AsSet.Missing, st.Into.Missing("setting of the gain control", `trim = "-20 dB"`))
	}
	if !master.Set() {
		st.AsSet.Missing = append(st.AsSet.Missing, missing("setting of the master control", st.Into.Unit.Part.Kind, &st.Into.Unit.Part.Part, `master = "-6 dB"`))
	}
	if st.AsSet.Known() {
		st.AsSet.Value = st.InHand.Value + i.Trim.V + master.V
		st.AsSet.Sum = fmt.Sprintf("%s %s (gain control) %s (master) = %s", st.InHand.Value, signed(i.Trim.V), signed(master.V), st.AsSet.Value)
		st.AsSet.From = append(append([]schema.Place{}, st.InHand.From...), schema.Place{Span: i.Trim.Span, Note: "gain control"}, schema.Place{Span: master.Span, Note: "master"})
	}
	if st.Into.Position() == UnknownPosition {
		st.Knob = i.Setting
	}
}

// signed writes a gain as a term of a sum.
func signed(g quantity.Gain) string {
	if g < 0 {
		return "− " + (-g).String()
	}
	return "+ " + g.String()
}

// levelText writes a level as it was written, with its dBV where it is in
// another unit.
func levelText(l quantity.Level, levelDBV float64) string {
	if l.Unit == quantity.DBV {
		return l.String()
	}
	return fmt.Sprintf("%s, %s dBV", l, quantity.Significant(levelDBV, 4))
}

// Position is where the mic/line switch of an input stands.
type Position int

// Positions.
const (
	NoPosition      Position = iota // not stated
	AtMicrophone                    // at microphone
	AtLine                          // at line
	UnknownPosition                 // something else, such as a place of a knob
)

// Position reads the position of the input's switch.
func (i *Input) Position() Position {
	if i.Part == nil || !i.Part.Setting.Set() {
		return NoPosition
	}
	text := strings.ToLower(i.Part.Setting.V)
	microphone, line := strings.Contains(text, "mic"), strings.Contains(text, "line")
	switch {
	case microphone && !line:
		return AtMicrophone
	case line && !microphone:
		return AtLine
	}
	return UnknownPosition
}

// missingSensitivity is what is not said about the sensitivity. Where a switch
// stands at another position than the input was made for, the figure of a model
// is not that of the switch: it has to be stated beside the setting, or the pad
// that the switch puts in.
func (i *Input) missingSensitivity() []Missing {
	p := i.Part
	write := `sensitivity = "-56 dBV"`
	if takes := p.Takes.V; takes == "line" || takes == "telephone" || i.Position() == AtLine {
		write = `sensitivity = "-12 dBV"`
	}
	switched := i.Position() == AtLine && p.Takes.V == "microphone" || i.Position() == AtMicrophone && p.Takes.V == "line"
	switch {
	case !p.Sensitivity.Set():
		return []Missing{i.Missing("sensitivity", write)}
	case !p.Sensitivity.V.Referenced():
		return []Missing{i.Missing("reference of the sensitivity (dBV, dBu or volts)", write)}
	case switched && !p.Pad.Set() && !within(p.Body, p.Sensitivity.Span):
		return []Missing{i.Missing("sensitivity with its switch at "+map[Position]string{AtLine: "line", AtMicrophone: "mic"}[i.Position()], write)}
	}
	return nil
}

// within tells that a span stands in another.
func within(outer, inner source.Span) bool {
	return inner.File != nil && inner.File == outer.File && inner.Start >= outer.Start && inner.End <= outer.End
}

// GainWay is the way on which a source has the least in hand.
type GainWay struct {
	// Stages are its inputs from the source on.
	Stages []*Stage
	// InHand is what is in hand over all of them.
	InHand Figure[quantity.Gain]
}

// Through follows a source from its plug to the amplifiers of its lines, and gives
// the way on which it has the least in hand. Each input is passed once. Of a
// source that reaches no line it gives the plug alone.
func (st *Stage) Through() GainWay {
	type visit struct {
		stage *Stage
		from  *visit
	}
	seen := map[*Input]bool{st.Into: true}
	todo := []*visit{{stage: st}}
	var least *GainWay
	for len(todo) > 0 {
		v := todo[0]
		todo = todo[1:]
		if slices.ContainsFunc(v.stage.Into.exits.lines, st.Feed.Source.heard.has) {
			var stages []*Stage
			for at := v; at != nil; at = at.from {
				stages = append(stages, at.stage)
			}
			slices.Reverse(stages)
			if way := gainWay(stages); least == nil || way.less(least) {
				least = &way
			}
		}
		for _, l := range v.stage.Into.exits.links {
			if next := l.Stage(); next != nil && !seen[l.Into] {
				seen[l.Into] = true
				todo = append(todo, &visit{next, v})
			}
		}
	}
	if least == nil {
		return gainWay([]*Stage{st})
	}
	return *least
}

// less orders ways: one of which not everything is known before any other, then
// by what is in hand.
func (w *GainWay) less(than *GainWay) bool {
	if w.InHand.Known() != than.InHand.Known() {
		return !w.InHand.Known()
	}
	return w.InHand.Value < than.InHand.Value
}

func gainWay(stages []*Stage) GainWay {
	w := GainWay{Stages: stages}
	inHand := make([]float64, len(stages))
	var terms []string
	for n, st := range stages {
		w.InHand.Missing = MergeMissing(w.InHand.Missing, st.InHand.Missing)
		w.InHand.Assumed = mergeTexts(w.InHand.Assumed, st.InHand.Assumed)
		w.InHand.From = append(w.InHand.From, st.InHand.From...)
		inHand[n] = float64(st.InHand.Value)
		if n == 0 || inHand[n] > 0 {
			terms = append(terms, fmt.Sprintf("%s (%s)", st.InHand.Value, st.Into.Name()))
		}
	}
	w.InHand.Value = quantity.Gain(signal.InHandThroughDB(inHand))
	w.InHand.Sum = fmt.Sprintf("%s = %s", strings.Join(terms, " + "), w.InHand.Value)
	return w
}
