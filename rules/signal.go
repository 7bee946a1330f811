package rules

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// What the checks of inputs and the signal chain have in common.

// listed joins names as people say them; a long list is cut short.
func listed(names []string) string {
	const most = 6
	if len(names) > most {
		return fmt.Sprintf("%s and %d more", strings.Join(names[:most-1], ", "), len(names)-most+1)
	}
	return wording.Listed(names, "and")
}

// inside gives a span when it stands in the braces of a part, else no place.
func inside(part *schema.Part, span source.Span) source.Span {
	if span.File != nil && span.File == part.Body.File && span.Start > part.Body.Start && span.End < part.Body.End {
		return span
	}
	return source.Span{}
}

// readable gives a span unless it is in a file that is part of the program.
func readable(span source.Span) source.Span {
	if schema.IsBuiltIn(span.File) {
		return source.Span{}
	}
	return span
}

// pluggedAt is where a plug says into which input it goes.
func pluggedAt(f *analysis.Feed) source.Span {
	if s := inside(&f.Part.Part, f.Part.Input.Span); !s.IsZero() {
		return s
	}
	if s := inside(&f.Part.Part, f.Part.Into.Span); !s.IsZero() {
		return s
	}
	return f.Part.Header
}

// linkedAt is where a send says into which input it goes.
func linkedAt(l *analysis.Link) source.Span {
	if s := inside(&l.Part.Send.Part, l.Part.Send.Input.Span); !s.IsZero() {
		return s
	}
	return l.Part.Send.Header
}

// plugInto is the edit that moves a plug to another input of its unit.
func plugInto(f *analysis.Feed, input *analysis.Input) check.Edit {
	return check.Write(&f.Part.Part, f.Part.Input.Span, "input", strconv.Quote(input.Part.Name))
}

// free tells that nothing is plugged into an input that takes audio.
func free(i *analysis.Input) bool {
	return i.Part != nil && !i.Contact() && len(i.Feeds)+len(i.Links) == 0
}

// suits tells that an input is made for what a plug brings, as far as the design
// says: kind of source and connector.
func suits(f *analysis.Feed, i *analysis.Input) bool {
	if takes := i.Part.Takes; takes.Set() && (f.Into.Part == nil || takes.V != f.Into.Part.Takes.V) {
		switch f.Source.Part.Kind {
		case schema.KindMicrophone:
			if takes.V != "microphone" {
				return false
			}
		case schema.KindTelephone:
			if takes.V != "telephone" {
				return false
			}
		default:
			if takes.V != "line" {
				return false
			}
		}
	}
	plug, sockets := f.Part.Connector, i.Part.Connectors
	if !plug.Set() || !sockets.Set() {
		return true
	}
	for _, s := range sockets.Items {
		if analysis.Fits(plug.V, s.V) {
			return true
		}
	}
	return false
}

// setInput is the edit that lets an input say attribute = value: in its own
// braces, or in those of its unit where the model or nobody writes it.
func setInput(i *analysis.Input, old source.Span, attribute, value string) check.Edit {
	if i.Unit.Owns(&i.Part.Part) && !i.Part.Implied {
		return check.Write(&i.Part.Part, old, attribute, value)
	}
	e := check.Write(&i.Unit.Part.Part, source.Span{}, fmt.Sprintf("input %q { %s", i.Part.Name, attribute), value+" }")
	return e
}

// inputInstead finds a free input of the same unit to which a plug can go
// without changing who silences whom, and that is better by what is asked.
func inputInstead(f *analysis.Feed, better func(*analysis.Feed, *analysis.Input) bool) *analysis.Input {
	from := f.Into
	if two, stated := f.Source.TwoChannels(); from.Part == nil || two || !stated && f.Source.Stereo != nil {
		return nil
	}
	for _, to := range from.Unit.Inputs {
		if !free(to) || to == from || to.Part.Channel.V != from.Part.Channel.V || !suits(f, to) || !mutedAlike(from.Unit, from, to) || !mutesAlike(from, to) {
			continue
		}
		if better(f, to) {
			return to
		}
	}
	return nil
}

// pluggedInstead is a plug as it would be in another input.
func pluggedInstead(f *analysis.Feed, to *analysis.Input) *analysis.Feed {
	part := *f.Part
	part.InputPart = to.Part
	return &analysis.Feed{Source: f.Source, Part: &part, Into: to}
}

// atUnit tells answers about the plugs of a source apart by where they go.
func atUnit(key string, f *analysis.Feed) string {
	if f.Part == f.Source.Feeds[0].Part {
		return key
	}
	return key + " at " + f.Into.Unit.Part.Name
}
