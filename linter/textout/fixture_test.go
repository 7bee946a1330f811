package textout

import (
	"cmp"
	"fmt"
	"slices"
	"testing"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// pier is an invented design with one of each part. The checks of these tests
// do not compute: they answer what a test needs, in the manner of real ones.
const pier = `system "Pier end pavilion" {
  reference    = "PP-07"
  revision     = "B"
  wiring_rules = "Europe"
}
amplifier "Rack" {
  rated_power = "120 W"
  output "100 V" {
    volts = "100 V"
  }
  input "Desk" {
    takes = "microphone"
  }
}
line "Deck" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  loudspeaker "Post" {
    quantity = 8
    tap      = "15 W"
    spacing  = "9 m"
  }
  loudspeaker "Door" {
    leg = "3 m"
    tap = "7.5 W"
  }
}
line "Café" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Ceiling" {
    quantity = 4
    tap      = "3 W"
  }
}
microphone "Box office" {
  into  = "Rack"
  input = "Desk"
}
space "Deck" {
  length = "40 m"
  width  = "12 m"
}
`

// read makes a design of texts by file name; they must be without problem.
func read(t testing.TB, name string, texts map[string]string) *schema.Design {
	t.Helper()
	design, problems := schema.Read(name, files(texts), schema.Options{Workers: 1})
	if len(problems) > 0 {
		t.Fatalf("the design of the test is wrong: %s: %v", placeOf(problems[0].Span), problems[0])
	}
	return design
}

func files(texts map[string]string) []*source.File {
	var all []*source.File
	for name, text := range texts {
		all = append(all, source.NewFile(name, []byte(text)))
	}
	return all
}

// judge asks checks of a design in the way of the engine, of a system that holds
// its parts without any figure.
func judge(design *schema.Design, checks ...*check.Check) *linter.Judged {
	j := &linter.Judged{Name: design.Name, Design: design, System: systemOf(design)}
	for _, c := range checks {
		if c.Off {
			j.Off = append(j.Off, c)
			continue
		}
		run := &check.Run{Check: c, System: j.System, Limits: check.DefaultLimits(c)}
		c.Judge(run)
		j.Outcomes = append(j.Outcomes, run.Outcomes...)
	}
	slices.SortStableFunc(j.Outcomes, func(a, b check.Outcome) int {
		return cmp.Or(source.Compare(a.Primary, b.Primary), cmp.Compare(a.Check.ID, b.Check.ID), cmp.Compare(a.Message, b.Message))
	})
	return j
}

func systemOf(design *schema.Design) *analysis.System {
	s := &analysis.System{Design: design}
	for _, u := range design.Units {
		a := &analysis.Amplifier{Part: u}
		s.Amplifiers = append(s.Amplifiers, a)
		for _, c := range u.Channels {
			s.Channels = append(s.Channels, &analysis.Channel{Amplifier: a, Part: c})
		}
	}
	for _, l := range design.Lines {
		line := &analysis.Line{Part: l}
		for _, device := range l.Devices {
			if loudspeaker, ok := device.(*schema.Loudspeaker); ok {
				line.Runs = append(line.Runs, &analysis.Run{Line: line, Part: loudspeaker, Count: loudspeaker.Count()})
				line.Loudspeakers += loudspeaker.Count()
			}
		}
		s.Lines = append(s.Lines, line)
	}
	for _, p := range design.Sources {
		s.Sources = append(s.Sources, &analysis.Source{Part: p})
	}
	return s
}

func resultOf(designs ...*linter.Judged) *linter.Result { return &linter.Result{Designs: designs} }

// Checks that answer in the manner of real ones.

func loadCheck() *check.Check {
	c := &check.Check{ID: "load-margin", Basis: "common practice, no published source", Params: []check.Param{{Name: "spare", Unit: check.Percent, Default: 10, High: 100}}}
	c.Judge = check.EachAmplifier(func(r *check.Report, a *analysis.Amplifier) {
		rated := a.Part.RatedPower
		r.Fail(check.Error, fmt.Sprintf("The loudspeakers on amplifier \"%s\" take 139.5 W, and it gives 120 W.", a.Part.Name)).
			At(rated.Span).
			Evidence(check.Evidence{Name: "load", Value: "139.5 W", Sum: "8 × 15 W + 1 × 7.5 W + 4 × 3 W = 139.5 W"}, check.Plainly("rated power", rated.V)).
			AtMost("at most 108 W (10 % below 120 W)", 108, "W", r.Limit("spare")).
			Assumed(`The existing loudspeakers behind the kiosk take nothing while they are switched off`).
			Remedy(check.Computed, "Use an amplifier rated 155 W or more.").
			Remedy(check.Proved, "Set the eight loudspeakers on the deck to 10 W.", check.Edit{Span: tapOf(r, 0).Span, New: `"10 W"`}).
			Remedy(check.Advice, "Feed the two lines from amplifiers of their own.").
			See(r.System().Lines[0].Part.Header, "107.5 W of it")
	})
	return c
}

func tapOf(r *check.Report, run int) schema.Value[quantity.Power] {
	return r.System().Lines[0].Runs[run].Part.Tap
}

func tapCheck() *check.Check {
	c := &check.Check{ID: "tap-setting"}
	c.Judge = check.EachRun(func(r *check.Report, s *analysis.Run) {
		if s.Part.Name != "Door" {
			r.Pass(fmt.Sprintf("%s has a tap of %s.", s.Part.Name, s.Part.Tap.V))
			return
		}
		r.Fail(check.Warning, "Door is set to 7.5 W, and its model has taps of 6 W, 3 W and 1.5 W.").At(s.Part.Tap.Span).
			Remedy(check.Proved, "Set it to 6 W, 1.0 dB less.", check.Edit{Span: s.Part.Tap.Span, New: `"6 W"`})
	})
	return c
}

func lossCheck() *check.Check {
	c := &check.Check{ID: "cable-loss", Basis: "common practice, no published source"}
	c.Judge = check.EachLine(func(r *check.Report, l *analysis.Line) {
		if l.Part.HomeRun.Set() {
			r.Pass(fmt.Sprintf("Line %q loses 3.1 %% at its worst loudspeaker, of 10 %% permitted.", l.Part.Name))
			return
		}
		r.Open(fmt.Sprintf("The loss of line \"%s\" is not known.", l.Part.Name), missingOn(l, "length of the home run", `home_run = "20 m"`), missingOn(l, "cable", `cable = "2 x 1.5 mm2"`))
	})
	return c
}

func missingOn(l *analysis.Line, what, write string) analysis.Missing {
	return analysis.Missing{What: what, Part: fmt.Sprintf("line \"%s\"", l.Part.Name), Where: l.Part.Header, Write: write}
}

func priorityCheck() *check.Check {
	c := &check.Check{ID: "priority-wired"}
	c.Judge = check.EachSource(func(r *check.Report, s *analysis.Source) {
		r.Open(fmt.Sprintf("Whether %s silences the music cannot be told: its way crosses two units.", s.Part.Name)).At(s.Part.Into.Span)
	})
	return c
}

func safetyCheck() *check.Check {
	c := &check.Check{ID: "safety-notes"}
	c.Judge = check.EachJob(func(r *check.Report, _ *analysis.System) {
		r.Fail(check.Note, "A 100 V line can give a shock: isolate the amplifier before work on its lines, and cover its terminals.")
	})
	return c
}

// cautionCheck passes for each line, with cautions.
func cautionCheck() *check.Check {
	return &check.Check{ID: "line-monitor", Judge: check.EachLine(func(r *check.Report, l *analysis.Line) {
		r.Pass("Line \"" + l.Part.Name + "\" is watched.").Caution("A line of this kind can give a shock while the amplifier is on: isolate it before work on the line.")
	})}
}

func spareCheck() *check.Check {
	return &check.Check{ID: "spare-capacity", Off: true}
}
