package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// SourceIsolation asks whether telephones and remote equipment are isolated.
var SourceIsolation = &check.Check{
	ID:      "source-isolation",
	Asks:    "Is each telephone, and each source or unit at the far end of a long lead, isolated from the system?",
	Summary: "A telephone, or equipment far away, is joined to the system without anything that isolates it.",
	Why: "A telephone system has an earth and a network of its own, which a public-address system must not touch; equipment on another mains circuit has another earth. " +
		"Joined by the shield of a lead, the two drive a current through it: hum, and in a fault worse than hum.",
	How: "For each telephone, looks for a transformer, an optical or wireless link at the source (isolation) or an isolated input. For other mains equipment, music, message stores and sends " +
		"between units, does the same where the lead is longer than the limit and not balanced at both ends.",
	Basis: "common practice, no published source",
	Blind: "Microphones have no earth of their own and are not asked. A lead of which the length is not stated is taken to stay in the rack. What the telephone company demands is not known here.",
	Params: []check.Param{
		{Name: "remote_lead", Doc: "length of lead beyond which equipment counts as far away, on another mains circuit", Unit: check.Metre, Default: 30, Low: 1, High: 1000},
	},
	Severity: check.Warning,
	Cautions: []string{"Connections to the public telephone network, and to equipment on another earth, are under rules of their own: local codes come first."},
	Failing: check.Example{
		Shows: "A page port of a telephone system straight into a line input.",
		Design: `amplifier "Rack" {
  input "Aux" {
    takes    = "line"
    isolated = false
  }
}
telephone "Page port" {
  into      = "Rack"
  input     = "Aux"
  isolation = "none"
}
`,
	},
	Passing: check.Example{
		Shows: "Through a transformer.",
		Design: `amplifier "Rack" {
  input "Aux" {
    takes    = "line"
    isolated = false
  }
}
telephone "Page port" {
  into      = "Rack"
  input     = "Aux"
  isolation = "transformer"
}
`,
	},
	Judge: check.Together(check.EachSource(isolationOfSource), check.EachSend(isolationOfSend)),
}

func isolationOfSource(r *check.Report, src *analysis.Source) {
	r.NotAsked() // until a plug is found that needs isolation
	telephone := src.Part.Kind == schema.KindTelephone
	if src.Part.Kind == schema.KindMicrophone {
		return
	}
	for _, f := range src.Feeds {
		if f.Into == nil || f.Into.Contact() || f.Part.SummedBy.V == "transformer" {
			continue
		}
		if !telephone && !remote(r, r.System().LeadOf(f)) {
			continue
		}
		isolationOfPlug(r, f, telephone)
	}
}

// remote tells that a lead is long and not known to be balanced at both ends.
func remote(r *check.Report, l *analysis.Lead) bool {
	return l != nil && !quantity.AtMost(float64(l.Length.V), r.Limit("remote_lead").Value) && l.Balance != analysis.Balanced
}

func isolationOfPlug(r *check.Report, f *analysis.Feed, telephone bool) {
	src, into := f.Source.Part, f.Into.Name()
	stated := src.Isolation.Set() && src.Isolation.V != "none"
	input := f.Into.Part != nil && f.Into.Part.Isolated.V
	key := atUnit("isolation", f)
	switch {
	case stated:
		r.Pass(fmt.Sprintf("%s is isolated (%s).", src.Name, src.Isolation.V)).Key(key).At(pluggedAt(f))
		return
	case input:
		r.Pass(fmt.Sprintf("%s is isolated.", wording.Capital(into))).Key(key).At(pluggedAt(f))
		return
	case !src.Isolation.Set():
		missing := f.Source.Missing("what isolates it", `isolation = "transformer"`)
		r.Open(fmt.Sprintf("Whether anything isolates %s from %s cannot be told.", src.Name, into), missing).Key(key).At(pluggedAt(f))
		return
	}
	says := fmt.Sprintf("%s is a telephone, and nothing isolates it from %s.", src.Name, into)
	if !telephone {
		says = fmt.Sprintf("%s is %s away, and nothing isolates it from %s.", src.Name, quantity.Format(f.Part.Lead.V, r.US()), into)
	}
	a := r.Fail(check.Warning, says).Key(key).At(pluggedAt(f)).At(inside(&src.Part, src.Isolation.Span))
	if f.Into.Part != nil {
		a.See(readable(f.Into.Part.Isolated.Span), into+" is not isolated")
	}
	if !telephone {
		isolationLimit(r, a, f.Part.Lead)
	}
	if to := inputInstead(f, func(_ *analysis.Feed, to *analysis.Input) bool {
		return to.Part.Isolated.V && alike(brings(f.Source), takesKind(to))
	}); to != nil {
		a.Remedy(check.Computed, fmt.Sprintf("Plug %s into %s, which is free and isolated.", src.Name, to.Name()), plugInto(f, to))
	}
	a.Remedy(check.Computed, "Order an isolating transformer for the lead, of the kind the telephone system asks for.", check.Write(&src.Part, src.Isolation.Span, "isolation", `"transformer"`))
}

func isolationLimit(r *check.Report, a *check.Answer, length schema.Value[quantity.Length]) {
	limit := r.Limit("remote_lead")
	a.Evidence(check.Plainly("length of the lead", length.V, schema.Place{Span: length.Span, Note: "the lead"})).
		AtMost(fmt.Sprintf("at most %s unbalanced without isolation", quantity.Format(quantity.Length(limit.Value), r.US())), limit.Value, "m", limit)
}

func isolationOfSend(r *check.Report, links []*analysis.Link) {
	r.NotAsked() // until a long lead is found
	l := links[0]
	if !remote(r, r.System().LeadOfLink(l)) || l.Part.Send.SummedBy.V == "transformer" {
		return
	}
	out, in := l.Part.Output, l.Into.Part
	name := fmt.Sprintf("%s of %s", out.Name, l.From.Part.Name)
	length := quantity.Format(l.Part.Send.Lead.V, r.US())
	switch {
	case out.Isolated.V || in != nil && in.Isolated.V:
		r.Pass(fmt.Sprintf("%s goes %s to %s, and is isolated.", name, length, l.Into.Name())).Key("isolation")
	case !out.Isolated.Set() || in == nil || !in.Isolated.Set():
		missing := l.MissingOfOutput("what isolates it", "isolated = true")
		r.Open(fmt.Sprintf("Whether anything isolates %s from %s, %s away, cannot be told.", name, l.Into.Name(), length), missing).Key("isolation")
	default:
		a := r.Fail(check.Warning, fmt.Sprintf("%s goes %s to %s, and nothing isolates the two.", name, length, l.Into.Name())).Key("isolation")
		isolationLimit(r, a, l.Part.Send.Lead)
		a.Remedy(check.Advice, "Order a line transformer for the lead, or make it balanced at both ends.")
	}
}
