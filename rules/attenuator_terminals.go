package rules

import (
	"fmt"
	"slices"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
)

// AttenuatorTerminals asks whether it is known which terminal of an attenuator is
// which.
var AttenuatorTerminals = &check.Check{
	ID:      "attenuator-terminals",
	Asks:    "Does the design say which terminal of each attenuator is which, and is every conductor on its own?",
	Summary: "The conductors of an attenuator are on the wrong terminals.",
	Why: "A wall attenuator is a transformer with taps. With its input and output exchanged it does not turn down, it steps the line up: at 6 dB down the loudspeakers get twice the voltage, and the line " +
		"carries four times the load. With output and common exchanged it comes near to a short circuit towards fully up. The terminals look alike, and nobody hears it while the control stands fully up.",
	How: "Looks for a map of terminals (terminals) that names in, out and common, once for the job. Where a design also says which conductor is on which terminal (wired), compares the two, " +
		"and works out what an exchange does to the load by the ratio of turns.",
	Basis: "the ideal transformer: load goes with the square of the ratio of turns",
	Blind: "Only what is written is compared; what was joined on site is found by the test that is shown with this answer. " +
		"Maps are understood by the words in, line, out, loudspeakers, common, relay, override and priority. The two conductors of a relay may be exchanged.",
	Severity: check.Error,
	Failing: check.Example{
		Shows: "The line on the output, the loudspeakers on the input.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 loudspeakers, 2 line, 3 common"
    loudspeaker "B" { tap = "6 W" }
  }
}
`,
	},
	Passing: check.Example{
		Shows: "A map of terminals, and conductors by it.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 line, 2 loudspeakers, 3 common"
    loudspeaker "B" { tap = "6 W" }
  }
}
`,
	},
	Judge: check.Together(check.EachJob(terminalsKnown), check.EachAttenuator(terminalsRight)),
}

// terminalsTest belongs into the sheet of tests: an exchange shows in no drawing.
const terminalsTest = "Before the amplifier is connected, measure the impedance of the line at 1 kHz with every attenuator fully up: it has to be what the loudspeakers come to. " +
	"Then turn each attenuator down by itself: it has to rise or stay. Where it falls, input and output of that attenuator are exchanged; where it is far too low fully up, output and common."

func terminalsKnown(r *check.Report, s *analysis.System) {
	missing, blocks, all := s.TerminalsMissing()
	switch {
	case len(all) == 0:
		r.NotAsked()
	case blocks > 0:
		r.Open(fmt.Sprintf("Which terminal is in, which out and which common is not stated for %s: exchanged, an attenuator steps the line up.", blocksOf(blocks, len(all))), missing...).
			Key("map").Caution(terminalsTest)
	default:
		r.Pass(fmt.Sprintf("The terminals of %s are stated.", blocksOf(len(all), len(all)))).Key("map").Caution(terminalsTest)
	}
}

// blocksOf counts attenuators as they are written.
func blocksOf(n, of int) string {
	switch {
	case of == 1:
		return "the attenuator of the design"
	case n == of:
		return fmt.Sprintf("the %d attenuators of the design", n)
	}
	return fmt.Sprintf("%d of the %d attenuators of the design", n, of)
}

// downDB is the step at which an exchange is shown: half the turns, nearly.
const downDB = 6

func terminalsRight(r *check.Report, a *analysis.Attenuator) {
	if !a.Part.Wired.Set() || len(a.Part.Terminals.Text) == 0 {
		r.NotAsked() // without a map the job is asked for it
		return
	}
	w := a.Wiring()
	if len(w.Wrong) == 0 && len(w.Unclear)+len(w.Lacks) > 0 {
		r.Open(fmt.Sprintf("Whether the conductors of attenuator %q are on their terminals cannot be told.", a.Part.Name), a.Missing("terminals of the attenuator", `terminals = "1 in, 2 out, 3 common"`)).Key("wired")
		return
	}
	if len(w.Wrong) == 0 {
		r.Pass(fmt.Sprintf("The conductors of attenuator %q are on their terminals.", a.Part.Name)).Key("wired")
		return
	}
	texts := make([]string, len(w.Wrong))
	for i, t := range w.Wrong {
		texts[i] = fmt.Sprintf("%s on terminal %s", t.Role, t.Name)
	}
	message := fmt.Sprintf("Attenuator %q is wired wrongly: %s, against its map of terminals", a.Part.Name, listed(texts))
	reversed, transposed := a.Reversed(downDB), a.Transposed(downDB/2)
	var evidence []check.Evidence
	switch {
	case w.Exchanged(analysis.RoleIn, analysis.RoleOut):
		message += "; turned down it steps the line up"
		if reversed.Known() {
			evidence = append(evidence, check.Of(fmt.Sprintf("load it puts on the line at %d dB down", downDB), reversed))
		}
	case w.Exchanged(analysis.RoleOut, analysis.RoleCommon):
		message += "; towards fully up it comes near to a short circuit"
		if transposed.Known() {
			evidence = append(evidence, check.Of(fmt.Sprintf("load it puts on the line at %d dB down", downDB/2), transposed))
		}
	}
	answer := r.Fail(check.Error, message+".").Key("wired").At(attenuatorAt(a, a.Part.Wired.Span)).
		See(readable(a.Part.Terminals.Span), "its map of terminals").Evidence(evidence...)
	if right := rightWiring(&w); right != "" {
		answer.Remedy(check.Proved, "Connect it by its map: "+right+".", setAttenuator(a, a.Part.Wired.Span, "wired", quoted(right)))
	}
}

// rightWiring writes the conductors as they belong, for the terminals that are in
// use. It is empty when the conductors there are do not fit those terminals.
func rightWiring(w *analysis.Wiring) string {
	roles := map[analysis.Role]int{}
	for _, t := range w.Is {
		roles[t.Role]++
	}
	var texts []string
	for _, t := range w.Right {
		if slices.ContainsFunc(w.Is, func(is analysis.Terminal) bool { return is.Name == t.Name }) {
			roles[t.Role]--
			texts = append(texts, t.Name+" "+t.Role.String())
		}
	}
	for _, left := range roles {
		if left != 0 {
			return ""
		}
	}
	return strings.Join(texts, ", ")
}
