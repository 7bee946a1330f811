package rules

import (
	"fmt"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// LineMonitor asks whether end-of-line devices see the line they watch.
var LineMonitor = &check.Check{
	ID:      "line-monitor",
	Asks:    "Do the end-of-line devices of each line see the whole of it, and none through an attenuator?",
	Summary: "An end-of-line device stands where it cannot watch its line, or leaves part of it unwatched.",
	Why: "A device at the end of a line tells that the cable is whole from the amplifier to itself. Behind an attenuator it reports a fault whenever somebody turns the music down, or is deaf to real ones. " +
		"A tee without a device of its own can be cut off, loudspeakers and all, and the line still shows as sound.",
	How: "Looks where the devices stand in the chain of the line. Every leg on the way from the amplifier to a device is watched; a branch is watched when a device stands in it, and a chain as far as its last device. " +
		"On a ring a device is reached both ways, so that one break does not show; with a reverse return it takes one at the first loudspeaker and one at the last.",
	Basis: "how an end-of-line device works: it sees the conductors between the amplifier and itself; common practice, no published source",
	Blind: "A line without such a device is not asked: whether it has to be watched, and how an amplifier watches it by impedance, is not judged here. " +
		"What stands behind attenuators is watched by none; that is said and is no finding. The watching signal itself is not followed.",
	NeverOpen: "where devices stand is what a line is written in; there is nothing that could be left out",
	Severity:  check.Error,
	Cautions:  []string{"Open the line behind the last device, and each branch, and see that the fault is reported."},
	Failing: check.Example{
		Shows: "The device watches the main run; the yard can be cut off unnoticed.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Ground" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "6 W" }
  branch "Yard tee" {
    loudspeaker "Y" { tap = "10 W" }
  }
  loudspeaker "H" { tap = "6 W" }
  line_end "Far end" { watches = "20 kHz tone" }
}
`,
	},
	Passing: check.Example{
		Shows: "One chain, the device at its end.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Ground" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "6 W" }
  loudspeaker "Y" { tap = "10 W" }
  loudspeaker "H" { tap = "6 W" }
  line_end "Far end" { watches = "20 kHz tone" }
}
`,
	},
	Judge: check.EachLine(lineMonitor),
}

func lineMonitor(r *check.Report, l *analysis.Line) {
	w := l.Watch()
	if len(w.Ends)+len(w.Behind) == 0 {
		r.NotAsked()
		return
	}
	for _, b := range w.Behind {
		answer := r.Fail(check.Error, fmt.Sprintf("End-of-line device %q on line %q stands behind attenuator %q: turned down, the attenuator hides the line from it.", b.End.Name, l.Part.Name, b.Attenuator.Name)).
			Key("behind an attenuator: "+b.End.Name).At(b.End.Header).See(b.Attenuator.Header, "the attenuator")
		answer.Remedy(check.Computed, fmt.Sprintf("Place %q at the end of the cable before or beside the attenuator, where the line goes on from its input.", b.End.Name), endOutside(l, b)...)
	}
	if len(w.Unwatched) > 0 {
		unwatched(r, l, &w)
	}
	looped := watchedRound(r, l, &w)
	if len(w.Behind)+len(w.Unwatched) > 0 || looped {
		return
	}
	message := fmt.Sprintf("%s %s line %q to its far end", wording.Capital(endNames(w.Ends)), verb(len(w.Ends), "watches", "watch"), l.Part.Name)
	if w.Attenuators > 0 {
		message += fmt.Sprintf(", except what stands behind %s, which no such device sees", verb(w.Attenuators, "its attenuator", "its attenuators"))
	}
	r.Pass(message + ".")
}

// watchedRound is the finding about a line whose cable comes back to the
// amplifier, and tells whether there is one.
func watchedRound(r *check.Report, l *analysis.Line, w *analysis.Watch) bool {
	var message, remedy string
	switch {
	case len(w.Ends) == 0:
		return false
	case l.Ring():
		message = fmt.Sprintf("Line %q is a ring, and %s %s the amplifier both ways round: one break of the cable does not show, and the next cuts off what lies between.",
			l.Part.Name, endNames(w.Ends), verb(len(w.Ends), "sees", "see"))
		remedy = "Feed the line from one end and watch at the other, joined only when a fault is found, or have the amplifier watch each end by itself."
	case l.Looped() && !w.AtFirst:
		message = fmt.Sprintf("On line %q %s %s the go conductor from the amplifier and the return conductor home: where that is open before the last loudspeaker, those before the break are lost, and it does not show.",
			l.Part.Name, endNames(w.Ends), verb(len(w.Ends), "sees", "see"))
		remedy = "Hang a second device beside the first loudspeaker, where the return conductor begins: between them the two see all of both conductors."
	default:
		return false
	}
	r.Fail(check.Warning, message).Key("comes back").At(w.Ends[0].Header).See(l.Part.RingLeg.Span, "the cable back to the amplifier").See(l.Part.Return.Span, "the reverse return").
		Remedy(check.Advice, remedy)
	return true
}

// unwatched is the finding about branches, and stretches, without a device.
func unwatched(r *check.Report, l *analysis.Line, w *analysis.Watch) {
	texts := make([]string, len(w.Unwatched))
	for i, u := range w.Unwatched {
		texts[i] = fmt.Sprintf("branch %q", u.Name)
		if u.After != "" {
			texts[i] = fmt.Sprintf("what comes after %q, from %q on", u.After, u.Name)
		}
	}
	answer := r.Fail(check.Warning, fmt.Sprintf("%s %s not watch %s of line %q.", wording.Capital(endNames(w.Ends)), verb(len(w.Ends), "does", "do"), listed(texts), l.Part.Name)).
		Key("unwatched").At(w.Unwatched[0].At)
	for i, u := range w.Unwatched {
		answer.See(u.At, texts[i])
	}
	for _, e := range w.Ends {
		answer.See(e.Header, "watches the way from the amplifier to itself")
	}
	answer.Remedy(check.Advice, "Give each branch an end-of-line device of its own, or lay the line as one chain with the device at its far end.")
}

// endNames names end-of-line devices.
func endNames(ends []*schema.LineEnd) string {
	names := make([]string, len(ends))
	for i, e := range ends {
		names[i] = quoted(e.Name)
	}
	return verb(len(ends), "end-of-line device ", "end-of-line devices ") + listed(names)
}

// endOutside moves an end-of-line device to the end of its line, where that can be
// written: something else has to stay behind the attenuator, and the line has to
// be one chain.
func endOutside(l *analysis.Line, b analysis.EndBehind) []check.Edit {
	if inside(&l.Part.Part, b.End.Header).IsZero() {
		return nil
	}
	for _, device := range l.Part.Devices {
		if _, branch := device.(*schema.Branch); branch {
			return nil
		}
	}
	alone := len(b.Attenuator.Devices) == 1
	direct := false
	for _, device := range b.Attenuator.Devices {
		direct = direct || device == schema.Device(b.End)
	}
	if alone || !direct {
		return nil
	}
	from := b.End.Header
	from.End = b.End.Body.End
	to := l.Part.Body
	to.Start, to.End = to.End-1, to.End-1
	return []check.Edit{{Span: from, New: ""}, {Span: to, New: "  " + strings.TrimSpace(from.Text()) + "\n"}}
}
