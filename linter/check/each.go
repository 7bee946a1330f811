package check

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/schema"
)

// Subjects of the parts of a system. The loops over parts are here; a check
// judges one.

// expect makes room for the answers about n subjects: outcomes are large, and a
// list that grows is copied again and again.
func (run *Run) expect(n int) { run.Outcomes = slices.Grow(run.Outcomes, n) }

func ask(run *Run, s Subject, judge func(*Report)) {
	r := &Report{run: run, subject: s}
	judge(r)
	if !r.answered {
		panic(fmt.Sprintf("check %s: no answer for %s", run.Check.ID, s))
	}
}

// EachJob asks the question once of the whole system.
func EachJob(judge func(*Report, *analysis.System)) Judge {
	return func(run *Run) {
		ask(run, JobSubject(run.System), func(r *Report) { judge(r, run.System) })
	}
}

// EachAmplifier asks it of every amplifier.
func EachAmplifier(judge func(*Report, *analysis.Amplifier)) Judge {
	return func(run *Run) {
		for _, a := range run.System.Amplifiers {
			ask(run, AmplifierSubject(a), func(r *Report) { judge(r, a) })
		}
	}
}

// EachChannel asks it of every power channel.
func EachChannel(judge func(*Report, *analysis.Channel)) Judge {
	return func(run *Run) {
		for _, c := range run.System.Channels {
			ask(run, ChannelSubject(c), func(r *Report) { judge(r, c) })
		}
	}
}

// EachOutput asks it of every loudspeaker output.
func EachOutput(judge func(*Report, *analysis.Output)) Judge {
	return func(run *Run) {
		for _, o := range run.System.Outputs {
			ask(run, OutputSubject(o), func(r *Report) { judge(r, o) })
		}
	}
}

// EachLine asks it of every line.
func EachLine(judge func(*Report, *analysis.Line)) Judge {
	return func(run *Run) {
		run.expect(len(run.System.Lines))
		for _, l := range run.System.Lines {
			ask(run, LineSubject(l), func(r *Report) { judge(r, l) })
		}
	}
}

// EachRun asks it of every loudspeaker block of every line.
func EachRun(judge func(*Report, *analysis.Run)) Judge {
	return func(run *Run) {
		total := 0
		for _, l := range run.System.Lines {
			total += len(l.Runs)
		}
		run.expect(total)
		for _, l := range run.System.Lines {
			for _, s := range l.Runs {
				ask(run, RunSubject(s), func(r *Report) { judge(r, s) })
			}
		}
	}
}

// EachAttenuator asks it of every attenuator block of every line.
func EachAttenuator(judge func(*Report, *analysis.Attenuator)) Judge {
	return func(run *Run) {
		for _, l := range run.System.Lines {
			for _, a := range l.Attenuators {
				ask(run, AttenuatorSubject(a), func(r *Report) { judge(r, a) })
			}
		}
	}
}

// EachSource asks it of every source.
func EachSource(judge func(*Report, *analysis.Source)) Judge {
	return func(run *Run) {
		for _, s := range run.System.Sources {
			ask(run, SourceSubject(s), func(r *Report) { judge(r, s) })
		}
	}
}

// EachInput asks it of every input of an amplifier or mixer that something is
// plugged into. The input without a Part stands for all of which the design does
// not say which they are.
func EachInput(judge func(*Report, *analysis.Input)) Judge {
	return func(run *Run) {
		for _, u := range run.System.Units {
			for _, i := range u.Inputs {
				if len(i.Feeds)+len(i.Links) > 0 {
					ask(run, InputSubject(i), func(r *Report) { judge(r, i) })
				}
			}
		}
	}
}

// EachSend asks it of every send, with the links that its run comes to.
func EachSend(judge func(*Report, []*analysis.Link)) Judge {
	return func(run *Run) {
		for _, u := range run.System.Units {
			for first := 0; first < len(u.Links); {
				next := first + 1
				for next < len(u.Links) && u.Links[next].Part.Send == u.Links[first].Part.Send {
					next++
				}
				links := u.Links[first:next]
				ask(run, LinkSubject(links[0]), func(r *Report) { judge(r, links) })
				first = next
			}
		}
	}
}

// EachMuteLink asks it of every link to a fire panel.
func EachMuteLink(judge func(*Report, *analysis.MuteLink)) Judge {
	return func(run *Run) {
		for _, m := range run.System.MuteLinks() {
			ask(run, MuteLinkSubject(m), func(r *Report) { judge(r, m) })
		}
	}
}

// EachJoint asks it of every send on which two channels, or two outputs, come
// together.
func EachJoint(judge func(*Report, *analysis.Joint)) Judge {
	return func(run *Run) {
		for _, j := range run.System.Joints {
			ask(run, LinkSubject(j.Link), func(r *Report) { judge(r, j) })
		}
	}
}

// Together asks one question of parts of several kinds.
func Together(all ...Judge) Judge {
	return func(run *Run) {
		for _, judge := range all {
			judge(run)
		}
	}
}

// EachUnit asks it of every amplifier and mixer.
func EachUnit(judge func(*Report, *analysis.Unit)) Judge {
	return func(run *Run) {
		for _, u := range run.System.Units {
			ask(run, UnitSubject(u.Part), func(r *Report) { judge(r, u) })
		}
	}
}

// EachSpace asks it of every space.
func EachSpace(judge func(*Report, *schema.Space)) Judge {
	return func(run *Run) {
		for _, s := range run.System.Design.Spaces {
			ask(run, SpaceSubject(s), func(r *Report) { judge(r, s) })
		}
	}
}

// EachPlace asks it of every place where loudspeakers are heard together: a space
// or, where they name none, a line.
func EachPlace(judge func(*Report, *analysis.Place)) Judge {
	return func(run *Run) {
		for _, p := range run.System.Places() {
			ask(run, PlaceSubject(p), func(r *Report) { judge(r, p) })
		}
	}
}

// EachReading asks it of every reading of a meter.
func EachReading(judge func(*Report, *schema.Reading)) Judge {
	return func(run *Run) {
		for _, m := range run.System.Design.Readings {
			ask(run, ReadingSubject(m), func(r *Report) { judge(r, m) })
		}
	}
}

// EachSupply asks it of every supply.
func EachSupply(judge func(*Report, *analysis.Supply)) Judge {
	return func(run *Run) {
		for _, s := range run.System.Supplies {
			ask(run, SupplySubject(s), func(r *Report) { judge(r, s) })
		}
	}
}

// JobSubject is the job as a whole.
func JobSubject(s *analysis.System) Subject { return Subject{Span: s.Design.System.Header} }

// AmplifierSubject is an amplifier.
func AmplifierSubject(a *analysis.Amplifier) Subject {
	return Subject{Path: []Step{{schema.KindAmplifier, a.Part.Name}}, Span: a.Part.Header}
}

// UnitSubject is an amplifier or mixer.
func UnitSubject(u *schema.Unit) Subject {
	return Subject{Path: []Step{{u.Kind, u.Name}}, Span: u.Header}
}

// SpaceSubject is a space.
func SpaceSubject(s *schema.Space) Subject {
	return Subject{Path: []Step{{"space", s.Name}}, Span: s.Header}
}

// PlaceSubject is a space, or a line.
func PlaceSubject(p *analysis.Place) Subject {
	if p.Space != nil {
		return SpaceSubject(p.Space)
	}
	return LineSubject(p.Line)
}

// ReadingSubject is a reading of a meter.
func ReadingSubject(m *schema.Reading) Subject {
	return Subject{Path: []Step{{"reading", m.Name}}, Span: m.Header}
}

// SupplySubject is mains or standby power.
func SupplySubject(s *analysis.Supply) Subject {
	return Subject{Path: []Step{{"supply", s.Part.Name}}, Span: s.Part.Header}
}

// ChannelSubject is a power channel.
func ChannelSubject(c *analysis.Channel) Subject {
	s := AmplifierSubject(c.Amplifier)
	if !c.Part.Implied {
		s.Path = append(s.Path, Step{"channel", c.Part.Name})
	}
	return s
}

// OutputSubject is a loudspeaker output.
func OutputSubject(o *analysis.Output) Subject {
	s := AmplifierSubject(o.Amplifier)
	s.Path = append(s.Path, Step{"output", o.Part.Name})
	return s
}

// LineSubject is a line.
func LineSubject(l *analysis.Line) Subject {
	return Subject{Path: []Step{{"line", l.Part.Name}}, Span: l.Part.Header}
}

// RunSubject is a loudspeaker block on a line.
func RunSubject(s *analysis.Run) Subject {
	path := make([]Step, 0, 2+len(s.Behind))
	path = append(path, Step{"line", s.Line.Part.Name})
	for _, a := range s.Behind {
		path = append(path, Step{"attenuator", a.Part.Name})
	}
	return Subject{Path: append(path, Step{"loudspeaker", s.Part.Name}), Span: s.Part.Header}
}

// AttenuatorSubject is an attenuator block on a line.
func AttenuatorSubject(a *analysis.Attenuator) Subject {
	subject := LineSubject(a.Line)
	for _, outer := range a.Inside {
		subject.Path = append(subject.Path, Step{"attenuator", outer.Part.Name})
	}
	subject.Path = append(subject.Path, Step{"attenuator", a.Part.Name})
	subject.Span = a.Part.Header
	return subject
}

// SourceSubject is a source.
func SourceSubject(s *analysis.Source) Subject {
	return Subject{Path: []Step{{s.Part.Kind, s.Part.Name}}, Span: s.Part.Header}
}

// MuteLinkSubject is a link to a fire panel.
func MuteLinkSubject(m *analysis.MuteLink) Subject {
	return Subject{Path: []Step{{"mute_link", m.Part.Name}}, Span: m.Part.Header}
}

// InputSubject is an input of an amplifier or mixer. Its place is the unit where
// the input is not written in its braces.
func InputSubject(i *analysis.Input) Subject {
	s := UnitSubject(i.Unit.Part)
	if i.Part == nil {
		return s
	}
	s.Path = append(s.Path, Step{"input", i.Part.Name})
	if i.Unit.Owns(&i.Part.Part) {
		s.Span = i.Part.Header
	}
	return s
}

// LinkSubject is an output of a unit wired to the next one.
func LinkSubject(l *analysis.Link) Subject {
	s := UnitSubject(l.From.Part)
	s.Path = append(s.Path, Step{"send", l.Part.Send.Name})
	s.Span = l.Part.Send.Header
	return s
}
