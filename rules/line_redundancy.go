package rules

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/wording"
)

// LineRedundancy asks whether a space of an emergency system can still be spoken
// to when one line or amplifier fails.
var LineRedundancy = &check.Check{
	ID:      "line-redundancy",
	Asks:    "Does each space of an emergency system keep half its loudspeakers when one line fails?",
	Summary: "A space of an emergency system loses more than half its loudspeakers with one line or amplifier.",
	Why: "One cut cable or one dead amplifier must not leave people in a space without the announcement that tells them to go. Interleaved lines, A and B from two amplifiers, every second loudspeaker on each, " +
		"keep the space covered at a somewhat lower level.",
	How: "Only where the duty of the system includes emergencies. Counts the loudspeakers of each space by the amplifier they hang on: two lines of one amplifier fail together and count as one. " +
		"The largest share may be half of them, rounded up. Equal spaces written as one (alike) are filled in walking order.",
	Basis: redundancyBasis + "; codes for it differ in where they ask for interleaved lines",
	Blind: "A space with one loudspeaker has nothing to share out and passes. Amplifiers that a spare one takes over from, monitoring and what half the loudspeakers sound like are not looked at, " +
		"nor is which loudspeakers are on which line: every second one is meant. Old equipment that is not spelled out is not counted.",
	Severity: check.Warning,
	Cautions: []string{localRules},
	Failing: check.Example{
		Shows: "Both lines of the hall hang on one amplifier.",
		Design: `system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
space "Hall" { height = "4 m" }
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "B" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "Each line on an amplifier of its own.",
		Design: `system "Mill" { duty = "emergency" }
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Hall" { height = "4 m" }
line "A" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "B" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
`,
	},
	Judge: check.Together(check.EachJob(redundancyAsked), check.EachSpace(lineRedundancy)),
}

// redundancyAsked asks once what keeps the question from being put.
func redundancyAsked(r *check.Report, s *analysis.System) {
	if !s.Design.System.Duty.Set() || !s.Design.System.Emergency() {
		emergencyStated(r, s)
		return
	}
	var missing []analysis.Missing
	for _, run := range s.Unplaced() {
		missing = append(missing, analysis.Missing{
			What: "space that a loudspeaker serves", Part: fmt.Sprintf("loudspeaker %q", run.Part.Name), Where: run.Part.Header, Write: `space = "Hall"`,
		})
	}
	if len(missing) == 0 {
		r.NotAsked() // the spaces have answers of their own
		return
	}
	r.Open("Not every loudspeaker says which space it serves.", missing...).Key("spaces not stated")
}

func lineRedundancy(r *check.Report, space *schema.Space) {
	s := r.System()
	shares, total := s.Shares(space)
	if !s.Design.System.Emergency() || total == 0 {
		r.NotAsked()
		return
	}
	var missing []analysis.Missing
	largest := shares[0]
	for _, share := range shares {
		if share.Amplifier == nil && len(shares) > 1 {
			for _, l := range share.Lines {
				missing = append(missing, l.AmplifierMissing())
			}
		}
		if share.Count > largest.Count {
			largest = share
		}
	}
	allowed := total - keptAtLeast(space, total)
	switch {
	case total == space.Count():
		r.Pass(fmt.Sprintf("%s %s one loudspeaker: there is nothing to share out.", wording.Capital(spaceName(space)), verb(space.Count(), "has", "have each")))
	case largest.Count > allowed:
		redundancyFails(r, space, shares, largest, total)
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether the lines of %s fail apart cannot be told.", spaceName(space)), missing...)
	default:
		redundancyOfEach(r, space, shares, largest, total)
	}
}

// keptAtLeast is how many loudspeakers have to be left: half of those of each
// space, rounded down.
func keptAtLeast(space *schema.Space, total int) int {
	return total / space.Count() / 2 * space.Count()
}

// redundancyOfEach looks into the single spaces where one is written for several.
func redundancyOfEach(r *check.Report, space *schema.Space, shares []*analysis.SpaceShare, largest *analysis.SpaceShare, total int) {
	each := total / space.Count()
	if slices.Max(r.System().MostInOne(space, shares, total)) > each-each/2 {
		r.Open(fmt.Sprintf("Whether each of %s hangs on more than one amplifier cannot be told: shared out in walking order, some hang on one.", spaceName(space)),
			analysis.Missing{What: "which of the equal spaces each line serves", Part: fmt.Sprintf("space %q", space.Name), Where: space.Header, Write: "a space block for each group of rooms, instead of alike"})
		return
	}
	r.Pass(fmt.Sprintf("Whichever of them fails, %s %s %d of %d loudspeakers or more: %s.", spaceName(space), verb(space.Count(), "keeps", "keep"), total-largest.Count, total, sharesText(shares)))
}

func redundancyFails(r *check.Report, space *schema.Space, shares []*analysis.SpaceShare, largest *analysis.SpaceShare, total int) {
	left, kept := total-largest.Count, keptAtLeast(space, total)
	message := fmt.Sprintf("All %d loudspeakers of %s hang on %s: when it fails, none is left", total, spaceName(space), largest.Name())
	if left > 0 {
		message = fmt.Sprintf("When %s fails, %s %s %d of %d loudspeakers", largest.Name(), spaceName(space), verb(space.Count(), "keeps", "keep"), left, total)
	}
	if largest.Amplifier != nil && len(largest.Lines) > 1 {
		message += fmt.Sprintf("; its %d lines fail with it", len(largest.Lines))
	}
	a := r.Fail(check.Warning, message+".").
		Evidence(check.Evidence{Name: "loudspeakers left", Value: fmt.Sprintf("%d of %d", left, total), Number: float64(left), Sum: sharesText(shares)}).
		Bound(check.Bound{Text: fmt.Sprintf("at least %d of %d", kept, total), Number: float64(kept), Basis: redundancyBasis})
	for _, share := range shares {
		for _, l := range share.Lines {
			a.See(l.Part.Header, "a line that serves it")
		}
	}
	a.Remedy(check.Computed, fmt.Sprintf("Hang %s of it, every second one, on a line of another amplifier with a route of its own.", wording.Counted(kept-left, "more loudspeaker")))
}

// redundancyBasis is where the half comes from.
const redundancyBasis = "common practice of voice alarm, no published source"

// sharesText lists what hangs where: 6 on amplifier "A", 6 on amplifier "B".
func sharesText(shares []*analysis.SpaceShare) string {
	names := make([]string, len(shares))
	for i, s := range shares {
		names[i] = fmt.Sprintf("%d on %s", s.Count, s.Name())
	}
	return listed(names)
}

// spaceName names a space, or the equal ones it stands for, inside a sentence.
func spaceName(space *schema.Space) string {
	if n := space.Count(); n > 1 {
		return fmt.Sprintf("the %d spaces %q", n, space.Name)
	}
	return fmt.Sprintf("space %q", space.Name)
}
