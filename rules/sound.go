package rules

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// What the checks of sound have in common.

// soundAsked gives what is heard in a space when speech there is a question at all:
// loudspeakers serve it, and it wants a level or may hear announcements.
func soundAsked(r *check.Report, space *schema.Space) *analysis.Sound {
	s := r.System().Sound(space)
	if s == nil || s.Wanted.Known() || space.WantedOverNoise.Set() || s.HearsSpeech() {
		return s
	}
	return nil
}

// placesAssumed tells that the design does not say where some loudspeakers hang, and
// that they are none of those that hang evenly in a ceiling: a figure that rests on
// them is worth a note.
func placesAssumed(l *analysis.Levels) bool {
	for i := range l.Speakers {
		part := l.Speakers[i].Run.Part
		if !part.Position.Set() && !slices.Contains([]string{"ceiling", "pendant"}, part.Class.V) {
			return true
		}
	}
	return false
}

// tenth prints a level or a difference of levels to a tenth.
func tenth(dB float64) string { return quantity.Significant(math.Round(10*dB)/10, 5) }

// levelText prints a level to a tenth.
func levelText(level quantity.SoundLevel) string { return tenth(float64(level)) + " dBA" }

// blocks gives the loudspeaker blocks of runs, each once, in order.
func blocks(runs []*analysis.Run) []*schema.Loudspeaker {
	var all []*schema.Loudspeaker
	for _, r := range runs {
		if !slices.Contains(all, r.Part) {
			all = append(all, r.Part)
		}
	}
	return all
}

// runsOf gives the runs of one block: several where like lines share it.
func runsOf(runs []*analysis.Run, part *schema.Loudspeaker) []*analysis.Run {
	var all []*analysis.Run
	for _, r := range runs {
		if r.Part == part {
			all = append(all, r)
		}
	}
	return all
}

// tapsOf gives the taps of a block at the voltage it is on.
func tapsOf(r *analysis.Run) []schema.Value[quantity.Power] {
	if r.Tap.Direct || r.Tap.Marked == 0 || r.Line.Output == nil || !sameVoltage(r.Tap.Marked, r.Line.Output.Volts.Value) {
		return nil
	}
	list, ok := analysis.TapsAt(r.Part, r.Tap.Marked)
	if !ok {
		return nil
	}
	return list.List.Items
}

// nextTap gives the smallest tap of so many watts or more.
func nextTap(taps []schema.Value[quantity.Power], least float64) (schema.Value[quantity.Power], bool) {
	var found schema.Value[quantity.Power]
	for _, t := range taps {
		if quantity.AtLeast(float64(t.V), least) && (!found.Set() || t.V < found.V) {
			found = t
		}
	}
	return found, found.Set()
}

// onTap is a block on another tap.
func onTap(part *schema.Loudspeaker, tap schema.Value[quantity.Power]) *schema.Loudspeaker {
	with := *part
	with.Tap = tap
	return &with
}

// counting is a block with another number of loudspeakers.
func counting(part *schema.Loudspeaker, n int) *schema.Loudspeaker {
	with := *part
	with.Quantity.V = n
	with.Quantity.Text = strconv.Itoa(n)
	if !with.Quantity.Set() {
		with.Quantity.Span = part.Header
	}
	return &with
}

// fit is what a change of blocks asks of the lines.
type fit struct {
	// ok tells that loads, outputs, attenuators, ratings and cables hold it, as far
	// as they are known and known to be in order.
	ok bool
	// load says what the channels then carry: "the channel then carries 48 W of 120 W".
	load string
}

// fits works out whether the system holds a change.
func fits(s *analysis.System, change analysis.Instead) fit {
	more := map[*analysis.Channel]quantity.Power{}
	outputs := map[*analysis.Output]quantity.Power{}
	f := fit{ok: true}
	for _, c := range s.Change(change) {
		if c.Line.Channel == nil || c.Line.Output == nil {
			f.ok = false
			continue
		}
		more[c.Line.Channel] += c.More
		outputs[c.Line.Output] += c.More
		if limit := CableLoss.Params[0].Default; c.More > 0 && (!c.Drop.Known() || !quantity.AtMost(float64(c.Drop.Value), limit)) {
			f.ok = false
		}
		f.ok = f.ok && attenuatorsHold(c.Line, change)
	}
	total := quantity.Power(0)
	for _, c := range s.Channels {
		extra, touched := more[c]
		if !touched {
			continue
		}
		total += extra
		load := float64(c.Load.Value + extra)
		if !c.Load.Known() || !c.Rated.Known() || extra > 0 && !quantity.AtMost(load, spare*float64(c.Rated.Value)) {
			f.ok = false
		}
		if c.Load.Known() && c.Rated.Known() {
			f.load = fmt.Sprintf("%s then carries %s of %s", channelInside(c), quantity.Power(load), c.Rated.Value)
		}
	}
	for _, o := range s.Outputs {
		if h := o.Part.HighestLoad; h.Set() && outputs[o] > 0 && !quantity.AtMost(float64(o.Load.Value+outputs[o]), float64(h.V)) {
			f.ok = false
		}
	}
	// What mains and batteries make of a larger load is not worked out here.
	f.ok = f.ok && (total <= 0 || len(s.Supplies) == 0)
	for part, with := range change {
		if part.RatedPower.Set() && !quantity.AtMost(with.Tap.V, part.RatedPower.V) {
			f.ok = false
		}
	}
	return f
}

// attenuatorsHold tells that the attenuators before changed blocks carry them.
func attenuatorsHold(l *analysis.Line, change analysis.Instead) bool {
	for _, a := range l.Attenuators {
		extra := 0.0
		for _, r := range l.Runs {
			if with := change[r.Part]; with != nil && slices.Contains(r.Behind, a) {
				extra += float64(with.Tap.V)*float64(with.Count()) - float64(r.Part.Tap.V)*float64(r.Part.Count())
			}
		}
		if extra > 0 && a.Part.Rating.Set() && !quantity.AtMost(float64(a.Behind.Value)+extra, float64(a.Part.Rating.V)) {
			return false
		}
	}
	return true
}

// loudEnough tells that a space holds its wanted level in a changed field, as far
// as one is wanted and the field is known.
func loudEnough(s *analysis.Sound, l *analysis.Levels, belowFull float64) bool {
	return !s.Wanted.Known() || !l.Known() || quantity.AtLeast(float64(l.Fifth.Value)-belowFull, float64(s.Wanted.Value))
}

// stays tells that a change leaves a space as loud as is wanted, if it is so now.
func stays(s *analysis.Sound, change analysis.Instead) bool {
	below := float64(analysis.SpeechBelowFull)
	return !s.Wanted.Known() || !loudEnough(s, s.Levels(), below) || loudEnough(s, s.With(change), below)
}

// staysEven tells that a change of taps leaves loudspeakers of one kind as even as
// level-spread asks, or as they are.
func staysEven(s *analysis.Sound, change analysis.Instead) bool {
	for part := range change {
		class := part.Class.V
		now := max(float64(s.DifferenceWith(class, nil)), LevelSpread.Params[0].Default)
		if !quantity.AtMost(float64(s.DifferenceWith(class, change)), now) {
			return false
		}
	}
	return true
}

// seeSound points to what a figure of sound came from.
func seeSound(a *check.Answer, from []schema.Place) {
	for _, p := range from {
		a.See(readable(p.Span), p.Note)
	}
}

// namesOfBlocks names blocks inside a sentence: "H" and "K".
func namesOfBlocks(all []*schema.Loudspeaker) string {
	names := make([]string, len(all))
	for i, part := range all {
		names[i] = strconv.Quote(part.Name)
	}
	return listed(names)
}
