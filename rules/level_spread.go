package rules

import (
	"fmt"
	"math"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// LevelSpread asks whether loudspeakers of one kind in a space are equally loud.
var LevelSpread = &check.Check{
	ID:      "level-spread",
	Asks:    "Are loudspeakers of one kind in a space equally loud?",
	Summary: "Loudspeakers of one kind in one space differ in level by more than one tap step.",
	Why: "People hear a step in level as a fault, and set the system where they stand. Two loudspeakers of another make play softer at the same watts, because watts are not loudness: " +
		"3 dB of sensitivity are worth as much as twice the power.",
	How: "For each kind (ceiling, wall, horn and so on) in a space compares what its blocks give at 1 m on their axes: sensitivity + 10 lg of the watts each takes at the voltage of its line, attenuators fully up. " +
		"Of one model the sensitivity need not be known.",
	Basis: "one step of a transformer is 10 lg 2 = 3.01 dB; that one step is still taken as even is common practice, no published source",
	Blind: "That a loudspeaker hangs closer to people, or serves a corner that is to be softer, is not known: agree it with a deviation. Loudspeakers that are switched off do not count, nor does loss in the cable, which cable-loss asks for.",
	Params: []check.Param{
		{Name: "difference", Doc: "greatest difference of level between loudspeakers of one kind in a space", Unit: check.Decibel, Default: 3.1, Low: 0.1, High: 30},
	},
	Severity: check.Warning,
	Cautions: []string{"A higher tap adds its watts to the load of the amplifier."},
	Failing: check.Example{
		Shows: "Two new loudspeakers that are 6 dB less sensitive, on the same tap.",
		Design: `line "Office" {
  output = "100 V"
  loudspeaker "Old" {
    kind        = "ceiling"
    sensitivity = "93 dB"
    tap         = "3 W"
    quantity    = 4
    space       = "Office"
  }
  loudspeaker "New" {
    kind        = "ceiling"
    sensitivity = "87 dB"
    tap         = "3 W"
    quantity    = 2
    space       = "Office"
  }
}
space "Office" { height = "2.7 m" }
`,
	},
	Passing: check.Example{
		Shows: "The new ones two taps higher.",
		Design: `line "Office" {
  output = "100 V"
  loudspeaker "Old" {
    kind        = "ceiling"
    sensitivity = "93 dB"
    tap         = "3 W"
    quantity    = 4
    space       = "Office"
  }
  loudspeaker "New" {
    kind        = "ceiling"
    sensitivity = "87 dB"
    tap         = "12 W"
    quantity    = 2
    space       = "Office"
  }
}
space "Office" { height = "2.7 m" }
`,
	},
	Judge: check.EachSpace(levelSpread),
}

func levelSpread(r *check.Report, space *schema.Space) {
	s := r.System().Sound(space)
	if s == nil {
		r.NotAsked()
		return
	}
	all := s.Spreads()
	if len(all) == 0 {
		r.NotAsked()
		return
	}
	for _, spread := range all {
		judgeSpread(r, s, spread)
	}
}

func judgeSpread(r *check.Report, s *analysis.Sound, spread *analysis.Spread) {
	kind := spread.Class
	if kind == "" {
		kind = "kind not stated"
	}
	if len(spread.Missing) > 0 {
		r.Open(fmt.Sprintf("Whether the loudspeakers (%s) in %q are equally loud cannot be told.", kind, s.Space.Name), spread.Missing...).Key(kind)
		return
	}
	limit := r.Limit("difference")
	difference := float64(spread.Difference)
	soft, loudest := spread.Softest, spread.Loudest
	var a *check.Answer
	if quantity.AtMost(difference, limit.Value) {
		a = r.Pass(fmt.Sprintf("The loudspeakers (%s) in %q differ by %s dB at most.", kind, s.Space.Name, tenth(difference)))
	} else {
		a = r.Fail(check.Warning, fmt.Sprintf("%q %s %s dB softer than %q in %q.", soft.Part.Name, verb(soft.Count, "is", "are"), tenth(difference), loudest.Part.Name, s.Space.Name))
	}
	a.Key(kind).At(tapAt(soft)).See(tapAt(loudest), "the louder ones").
		Evidence(check.Of(quoted(soft.Part.Name)+" at 1 m", spread.SoftDB), check.Of(quoted(loudest.Part.Name)+" at 1 m", spread.LoudDB), check.Plainly("difference", quantity.Gain(difference))).
		AtMost("at most "+limit.String(), limit.Value, "dB", limit)
	if quantity.AtMost(difference, limit.Value) {
		return
	}
	for _, step := range []struct {
		run  *analysis.Run
		sign float64
	}{{soft, 1}, {loudest, -1}} {
		tapSteps(r, a, s, step.run, step.sign*difference)
	}
}

// tapAt is where the tap of a block stands.
func tapAt(run *analysis.Run) source.Span {
	if at := inside(&run.Part.Part, run.Part.Tap.Span); !at.IsZero() {
		return at
	}
	return run.Part.Header
}

// tapSteps lists what each tap of a block would change and what the load would be,
// and writes the one that makes it even. change is what is short, in dB; negative
// for what is too much.
func tapSteps(r *check.Report, a *check.Answer, s *analysis.Sound, run *analysis.Run, change float64) {
	limit := r.Limit("difference").Value
	taps := tapsOf(run)
	var best schema.Value[quantity.Power]
	off := limit
	for _, tap := range taps {
		by := 10 * math.Log10(float64(tap.V/run.Part.Tap.V))
		if by*change <= 0 || tap.V <= 0 {
			continue
		}
		with := analysis.Instead{run.Part: onTap(run.Part, tap)}
		a.Evidence(check.Stated(fmt.Sprintf("%q on %s", run.Part.Name, tap.Text), fmt.Sprintf("%+.1f dB%s", by, withLoad(fits(r.System(), with)))))
		if left := math.Abs(change - by); quantity.AtMost(left, off) {
			off, best = left, tap
		}
	}
	if !best.Set() {
		if change > 0 {
			a.Remedy(check.Computed, fmt.Sprintf("Choose loudspeakers in place of %q that are %s dB more sensitive, or taps of %s times the watts.", run.Part.Name, tenth(change), percent(math.Pow(10, change/10))))
		}
		return
	}
	with := analysis.Instead{run.Part: onTap(run.Part, best)}
	f := fits(r.System(), with)
	text := fmt.Sprintf("Set %q to %s (%+.1f dB)%s", run.Part.Name, best.Text, 10*math.Log10(float64(best.V/run.Part.Tap.V)), withLoad(f))
	if f.ok && stays(s, with) && quantity.AtMost(float64(s.DifferenceWith(run.Part.Class.V, with)), limit) {
		a.Remedy(check.Proved, text+".", setTap(run, best, run.Tap.Marked)...)
		return
	}
	a.Remedy(check.Computed, text+". Look at the amplifier, and at the others of the kind, first.")
}

func withLoad(f fit) string {
	if f.load == "" {
		return ""
	}
	return "; " + f.load
}
