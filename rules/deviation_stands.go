package rules

import (
	"fmt"
	"strings"

	"loudlint/linter/check"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// DeviationStands asks whether each agreed departure still holds.
var DeviationStands = &check.Check{
	ID:      "deviation-stands",
	Asks:    "Does each deviation say why, by whom and until when it is accepted, and does it still meet a finding?",
	Summary: "An agreed departure has expired, is not stated in full, names what is not there, or meets nothing.",
	Why: "A deviation takes a finding off the list. One without a reason, or that nobody answers for, hides a fault; one that has run out was never looked at again; " +
		"one that meets nothing any more will one day hide something that nobody agreed to.",
	How: "Holds each deviation against the findings of the check it names. It covers the part it names and what stands inside that: a line covers its loudspeakers, an amplifier its channels, outputs and inputs. " +
		"Without a part it is about the job as a whole and covers no part. It accepts findings only while it holds: with a reason, with accepted_by, and up to and on the day of until. " +
		"The day is that of the run, or the one given with --date.",
	Basis: "what the deviation itself says",
	Blind: "Whether the reason is a good one, and whether the person had the right to accept it. What a design leaves open cannot be accepted: it is no departure, and is still to be supplied. " +
		"A deviation from a check that is not asked, or is turned off, is not held against anything. Nothing has expired where a program that uses loudlint gives no day.",
	Severity:  check.Warning,
	NeverOpen: "what a deviation says, and what it meets, can always be seen",
	Last:      true,
	Failing: check.Example{
		Shows: "A deviation that nobody answers for: the finding it names counts as before.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
  }
}
deviation "load-margin" {
  amplifier = "Rack"
  reason    = "Replaced in phase 2"
}
`,
	},
	Passing: check.Example{
		Shows: "A deviation that holds, for as long as it says.",
		Design: `amplifier "Rack" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  length    = "20 m"
  loudspeaker "H" {
    quantity = 9
    tap      = "6 W"
  }
}
deviation "polarity" {
  reason      = "Marked on the drawings of the electrician"
  accepted_by = "Client's engineer"
  until       = "2099-06-30"
}
`,
	},
	Judge: check.EachDeviation(deviationStands),
}

func deviationStands(r *check.Report, d *check.Departure) {
	from := fmt.Sprintf("The deviation from %s for %s", d.Part.Name, d.Address())
	switch {
	case d.Check == nil:
		noSuchCheck(r, d)
	case d.Absent != nil:
		noSuchPart(r, d)
	case !d.Stated():
		deviationUnstated(r, d, from)
	case d.Expired():
		deviationExpired(r, d, from)
	case d.Meets == 0 && !d.Asked:
		r.NotAsked() // nothing was looked for
	case d.Meets == 0:
		deviationMeetsNothing(r, d, from)
	default:
		until := ""
		if d.Part.Until.Set() {
			until = " until " + d.Part.Until.V.String()
		}
		stating(r.Pass(fmt.Sprintf("%s accepts %s%s.", from, wording.Counted(d.Meets, "finding"), until)), d)
	}
}

// stating tells the answer apart by the part that is named, and shows what the
// deviation states.
func stating(a *check.Answer, d *check.Departure) *check.Answer {
	if len(d.Part.Parts()) > 0 {
		a.Key(d.Address())
	}
	if v := d.Part.Reason; v.V != "" {
		a.Evidence(check.Stated("reason", v.V))
	}
	if v := d.Part.AcceptedBy; v.V != "" {
		a.Evidence(check.Stated("accepted by", v.V))
	}
	return a
}

func noSuchCheck(r *check.Report, d *check.Departure) {
	a := stating(r.Fail(check.Warning, fmt.Sprintf("There is no check %q: this deviation accepts nothing.", d.Part.Name)), d).At(d.Part.NameSpan)
	if d.Nearest == "" {
		a.Remedy(check.Advice, "Name one of the checks that `loudlint checks` lists.")
		return
	}
	a.Remedy(check.Computed, fmt.Sprintf("Write %s if that is meant.", d.Nearest), check.Edit{Span: d.Part.NameSpan, New: `"` + d.Nearest + `"`})
}

func noSuchPart(r *check.Report, d *check.Departure) {
	kind := strings.ReplaceAll(d.Absent.Kind, "_", " ")
	named := d.Absent.Name
	a := stating(r.Fail(check.Warning, fmt.Sprintf("There is no %s %q: this deviation from %s accepts nothing.", kind, named.V, d.Part.Name)), d).At(named.Span)
	if d.NearestPart != "" {
		a.Remedy(check.Computed, fmt.Sprintf("Write %q if that is meant.", d.NearestPart), check.Edit{Span: named.Span, New: `"` + d.NearestPart + `"`})
	}
	takeOut(a, d)
}

func deviationUnstated(r *check.Report, d *check.Departure, from string) {
	lacks, write := "no reason and nobody who accepted it", `reason = "…" and accepted_by = "…"`
	switch {
	case d.Part.Reason.V != "":
		lacks, write = "nobody who accepted it", `accepted_by = "…"`
	case d.Part.AcceptedBy.V != "":
		lacks, write = "no reason", `reason = "…"`
	}
	stating(r.Fail(check.Warning, fmt.Sprintf("%s has %s, so it accepts nothing; %s.", from, lacks, stillCounted(d))), d).
		Remedy(check.Advice, fmt.Sprintf("Have it agreed and write %s, or take the deviation out.", write))
}

func deviationExpired(r *check.Report, d *check.Departure, from string) {
	a := stating(r.Fail(check.Warning, fmt.Sprintf("%s ended on %s; %s.", from, d.Part.Until.V, stillCounted(d))), d).
		At(d.Part.Until.Span).
		Evidence(check.Stated("day of this run", d.Today.String()))
	if d.Meets == 0 {
		takeOut(a, d)
		return
	}
	a.Remedy(check.Advice, "Put the finding right and take the deviation out, or have it agreed anew with a later date.")
}

// stillCounted says what a deviation that does not hold fails to accept.
func stillCounted(d *check.Departure) string {
	if d.Meets == 0 {
		return "nothing is found that it could accept"
	}
	return fmt.Sprintf("%s of %s %s as before", wording.Counted(d.Meets, "finding"), d.Part.Name, verb(d.Meets, "counts", "count"))
}

func deviationMeetsNothing(r *check.Report, d *check.Departure, from string) {
	if d.Open > 0 {
		stating(r.Fail(check.Note, fmt.Sprintf("%s accepts nothing yet: %s there cannot be judged, and what is open is no departure.", from, d.Part.Name)), d).
			Remedy(check.Advice, "Write what is missing first; whether anything has to be accepted is seen then.")
		return
	}
	a := stating(r.Fail(check.Warning, fmt.Sprintf("%s meets nothing: %s finds nothing there.", from, d.Part.Name)), d)
	switch {
	case len(d.Elsewhere) == 0:
	case len(d.Elsewhere) == check.MostElsewhere:
		a.Evidence(check.Stated("what it finds is about", listed(d.Elsewhere[:check.MostElsewhere-1])+" and others"))
	default:
		a.Evidence(check.Stated("what it finds is about", listed(d.Elsewhere)))
	}
	if len(d.Elsewhere) > 0 {
		a.Remedy(check.Advice, "Name the part that the finding is about, if one of these is meant; a run is named as a whole.")
	}
	takeOut(a, d)
}

// takeOut removes a deviation that nothing would be found without.
func takeOut(a *check.Answer, d *check.Departure) {
	block := source.Span{File: d.Part.Header.File, Start: d.Part.Header.Start, End: d.Part.Body.End}
	a.Remedy(check.Proved, "Take the deviation out.", check.Edit{Span: block})
}
