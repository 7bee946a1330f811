package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// InputTaken asks whether two things are plugged into one audio input.
var InputTaken = &check.Check{
	ID:      "input-taken",
	Asks:    "Is each audio input used by one source or send only?",
	Summary: "Two sources or sends go into the same audio input.",
	Why: "A socket takes one plug. Two on a lead that was made for it drive each other's outputs instead of the input, neither can be set or silenced without the other, " +
		"and on site somebody pulls one of them out.",
	How: "Counts what the design plugs into each input: sources with their further places (also), and sends of other units. Left and right of one source or unit into an input for two channels " +
		"count once. Contact inputs and what a fire panel does (mute_link) take no audio input.",
	Basis: "common practice, no published source",
	Blind: "Sockets that a unit has twice for one input, and sources that are swapped by hand, are not known to the design. Whether paging desks on one data input may be chained is a matter of the unit: " +
		"two desks on one are a note.",
	Severity: check.Error,
	Failing: check.Example{
		Shows: "Two players on one input.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Aux 1" { takes = "line" }
  input "Aux 2" { takes = "line" }
}
music "Player" {
  into     = "Rack"
  input    = "Aux 1"
  channels = "mono"
}
music "Tuner" {
  into     = "Rack"
  input    = "Aux 1"
  channels = "mono"
}
`,
	},
	Passing: check.Example{
		Shows: "Each has its own.",
		Design: `amplifier "Rack" {
  rated_power = "120 W"
  input "Aux 1" { takes = "line" }
  input "Aux 2" { takes = "line" }
}
music "Player" {
  into     = "Rack"
  input    = "Aux 1"
  channels = "mono"
}
music "Tuner" {
  into     = "Rack"
  input    = "Aux 2"
  channels = "mono"
}
`,
	},
	Judge: check.EachInput(inputTaken),
}

// plugged is one thing in an input: a plug of a source, or a send.
type plugged struct {
	feed *analysis.Feed
	link *analysis.Link
}

func (p plugged) name() string {
	if p.feed != nil {
		return p.feed.Source.Part.Name
	}
	return "the send " + p.link.Part.Send.Name + " of " + p.link.From.Part.Name
}

func (p plugged) place() source.Span {
	if p.feed != nil {
		return pluggedAt(p.feed)
	}
	return linkedAt(p.link)
}

// side is "left" or "right" when it carries that one only.
func (p plugged) side() string {
	if p.link != nil {
		if c := p.link.Part.Send.Channels.V; c == "left" || c == "right" {
			return c
		}
		return ""
	}
	switch p.feed.Part.SummedBy.V {
	case "left only":
		return "left"
	case "right only":
		return "right"
	}
	return ""
}

// pairs tells that two things are left and right of the same source or unit.
func (p plugged) pairs(o plugged) bool {
	same := p.feed != nil && o.feed != nil && p.feed.Source == o.feed.Source || p.link != nil && o.link != nil && p.link.From == o.link.From
	return same && p.side() != "" && o.side() != "" && p.side() != o.side()
}

func inputTaken(r *check.Report, i *analysis.Input) {
	all := pluggedInto(i)
	switch {
	case i.Contact():
		r.NotAsked()
		return
	case i.Part == nil:
		inputNotSaid(r, i, all)
		return
	case len(all) == 1:
		r.Pass(fmt.Sprintf("%s has one plug.", i.Name()))
		return
	case len(all) == 2 && all[0].pairs(all[1]) && i.Channels != analysis.OneChannel:
		if i.Channels == analysis.UnknownChannels {
			r.Open(fmt.Sprintf("Whether %s takes left and right, or one plug only, cannot be told.", i.Name()), i.Missing("what it does with left and right", `stereo = "summed inside"`)).At(all[1].place())
			return
		}
		r.Pass(fmt.Sprintf("%s has left and right, which are a pair.", i.Name()))
		return
	}
	names := make([]string, len(all))
	for n, p := range all {
		names[n] = p.name()
	}
	severity, message := check.Error, fmt.Sprintf("%s go into %s: one input takes one plug.", wording.Capital(listed(names)), i.Name())
	if chained(i, all) {
		severity, message = check.Note, fmt.Sprintf("%s share %s: see on the data sheet that desks may be chained.", wording.Capital(listed(names)), i.Name())
	}
	last := all[len(all)-1]
	a := r.Fail(severity, message).At(last.place())
	for _, p := range all[:len(all)-1] {
		a.See(p.place(), "taken here by "+p.name())
	}
	if to := inputLike(i, last); len(all) == 2 && to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free and does what %s does.", last.name(), to.Name(), i.Part.Name), plugInto(last.feed, to))
		return
	}
	a.Remedy(check.Advice, fmt.Sprintf("Give each an input of its own; %s.", freeOnes(i)))
}

func pluggedInto(i *analysis.Input) []plugged {
	var all []plugged
	for _, f := range i.Feeds {
		all = append(all, plugged{feed: f})
	}
	for _, l := range i.Links {
		all = append(all, plugged{link: l})
	}
	return all
}

// chained tells that all are paging desks on an input for desks.
func chained(i *analysis.Input, all []plugged) bool {
	for _, p := range all {
		if p.feed == nil || p.feed.Source.Part.Kind != schema.KindMicrophone {
			return false
		}
	}
	return i.Part.Takes.V == "paging desk"
}

// inputNotSaid answers for what goes into a unit without saying by which input:
// alone in it, it can be in nobody's way.
func inputNotSaid(r *check.Report, i *analysis.Input, all []plugged) {
	users := 0
	for _, other := range i.Unit.Inputs {
		if !other.Contact() {
			users += len(other.Feeds) + len(other.Links)
		}
	}
	if users == 1 {
		r.Pass(fmt.Sprintf("%s is the only thing plugged into %s.", wording.Capital(all[0].name()), i.Unit.Part.Name))
		return
	}
	names := make([]string, len(all))
	var missing []analysis.Missing
	for n, p := range all {
		names[n] = p.name()
		if p.feed != nil {
			missing = append(missing, p.feed.MissingInput())
		} else {
			missing = append(missing, p.link.MissingInput())
		}
	}
	goes := "goes"
	if len(all) > 1 {
		goes = "go"
	}
	r.Open(fmt.Sprintf("By which input %s %s into %s is not said.", listed(names), goes, i.Unit.Part.Name), missing...).At(all[0].place())
}

// inputLike finds a free input that does what another one does: the same kind,
// the same connectors and channels, muting and muted alike.
func inputLike(i *analysis.Input, p plugged) *analysis.Input {
	if p.feed == nil {
		return nil
	}
	for _, to := range i.Unit.Inputs {
		if !free(to) || !suits(p.feed, to) || to.Part.Takes.V != i.Part.Takes.V || to.Channels != i.Channels || to.Part.Channel.V != i.Part.Channel.V {
			continue
		}
		if mutedAlike(i.Unit, i, to) && mutesAlike(i, to) {
			return to
		}
	}
	return nil
}

// mutesAlike tells that an input mutes all that another one mutes.
func mutesAlike(from, to *analysis.Input) bool {
	for _, i := range from.Unit.Inputs {
		if i == from || i == to {
			continue
		}
		was, _ := from.Mutes(i)
		if is, _ := to.Mutes(i); was && !is {
			return false
		}
	}
	return true
}

func freeOnes(i *analysis.Input) string {
	var names []string
	for _, to := range i.Unit.Inputs {
		if free(to) && to.Part.Takes.V == i.Part.Takes.V {
			names = append(names, to.Part.Name)
		}
	}
	if len(names) == 0 {
		return i.Unit.Part.Name + " has no free one of this kind, so that one with more inputs or a mixer before it is needed"
	}
	verb := "is"
	if len(names) > 1 {
		verb = "are"
	}
	return fmt.Sprintf("%s of %s %s free", listed(names), i.Unit.Part.Name, verb)
}
