package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// ExposureRating asks whether loudspeakers stand dust and water where they hang.
var ExposureRating = &check.Check{
	ID:      "exposure-rating",
	Asks:    "Do the loudspeakers in each space stand the dust and water there?",
	Summary: "Loudspeakers are less protected against dust or water than the space they hang in needs.",
	Why:     "Water in a loudspeaker on a constant-voltage line ends in corrosion, then in a short or an earth fault that takes the whole line down, mostly in the weather in which announcements matter.",
	How: "Holds the degree of protection of each loudspeaker against the one the space states, digit by digit (IEC 60529). In a space that is open to the sky and states none, the digit for water is held against outdoor_water. " +
		"Water digits 7 to 9 (immersion, hot jets) do not stand for 5 and 6 (jets), unless the data sheet states both.",
	Basis: "IEC 60529, from memory; what a place needs is for the designer to state",
	Blind: "Indoor spaces that state no exposure are not asked. Sun, salt, frost, chemicals, ball impact and explosive atmospheres are not in an IP code. " +
		"The design does not say where attenuators, amplifiers and mixers are: attenuators of loudspeakers in such a space are a caution, and the others are left to the person who plans the rack room.",
	Params: []check.Param{
		{Name: "outdoor_water", Doc: "lowest digit for water under the open sky, where the space states no exposure", Unit: check.Plain, Default: 3, Low: 0, High: 6, Basis: "3 is rain up to 60° from the vertical: IEC 60529, from memory"},
	},
	Severity: check.Error,
	Failing: check.Example{
		Shows: "Ceiling loudspeakers of IP21 in a wash hall that needs IP65.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Wash hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "W" {
    quantity = 4
    tap      = "6 W"
    exposure = "IP21"
    space    = "Wash hall"
  }
}
space "Wash hall" { exposure = "IP65" }
`,
	},
	Passing: check.Example{
		Shows: "Horns of IP66 there.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Wash hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "W" {
    quantity = 4
    tap      = "6 W"
    exposure = "IP66"
    space    = "Wash hall"
  }
}
space "Wash hall" { exposure = "IP65" }
`,
	},
	Judge: check.EachSpace(exposureRating),
}

// kindHung is the loudspeakers of one model, or one block without a model, in a
// space.
type kindHung struct {
	name  string // `model "house/horn-15"` or `loudspeaker "H"`
	key   string
	part  *schema.Loudspeaker // the first block
	count int
}

func exposureRating(r *check.Report, space *schema.Space) {
	e := r.System().Exposure(space)
	if e == nil {
		r.NotAsked()
		return
	}
	limit := r.Limit("outdoor_water")
	needs := quantity.Ingress{Solids: quantity.Unstated, Water: int(limit.Value)}
	if space.Exposure.Set() {
		needs = space.Exposure.V
	}
	var missing []analysis.Missing
	judged, failed := 0, false
	for _, k := range kindsHung(e) {
		has := k.part.Exposure
		if !has.Set() {
			missing = append(missing, analysis.Missing{What: "degree of protection", Part: k.name, Where: k.part.Header, Write: fmt.Sprintf("exposure = %q", needs)})
			continue
		}
		switch analysis.Protects(has.V, needs) {
		case analysis.Protected:
			judged += k.count
		case analysis.Untold:
			missing = append(missing, analysis.Missing{What: fmt.Sprintf("degree of protection that tells of %s (%s does not)", needs, has.V), Part: k.name, Where: k.part.Header, Write: fmt.Sprintf("exposure = %q", needs)})
		case analysis.Unprotected:
			failed = true
			unprotected(r, space, k, needs, limit)
		}
	}
	caution := attenuatorCaution(space, e, needs)
	switch {
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether all loudspeakers in %q stand %s cannot be told.", space.Name, placeText(space)), missing...).Caution(caution...)
	case !failed:
		a := r.Pass(fmt.Sprintf("%s in %q %s at least %s.", wording.Capital(wording.Counted(judged, "loudspeaker")), space.Name, verb(judged, "is", "are"), needs)).At(askedAt(space)).Caution(caution...)
		protectionLimit(a, space, needs, limit)
	}
}

func unprotected(r *check.Report, space *schema.Space, k *kindHung, needs quantity.Ingress, limit check.Limit) {
	severity := check.Warning
	if space.Exposure.Set() {
		severity = check.Error
	}
	has := k.part.Exposure
	a := r.Fail(severity, fmt.Sprintf("%s in %q (%s) %s %s; %s needs at least %s.", wording.Capital(wording.Counted(k.count, "loudspeaker")), space.Name, k.name, verb(k.count, "is", "are"), has.V, placeText(space), needs)).
		Key(k.key).At(hungAt(k.part)).See(askedAt(space), "what the space is").See(readable(has.Span), "what the data sheet says")
	protectionLimit(a, space, needs, limit)
	a.Remedy(check.Computed, fmt.Sprintf("Choose a loudspeaker of %s or better there, or hang it where it stays dry.", needs))
}

func protectionLimit(a *check.Answer, space *schema.Space, needs quantity.Ingress, limit check.Limit) {
	text := fmt.Sprintf("at least %s", needs)
	if space.Exposure.Set() {
		a.Bound(check.Bound{Text: text, Number: float64(max(needs.Water, 0)), Basis: "as the space states; the digits by IEC 60529"})
		return
	}
	a.AtLeast(text, limit.Value, "", limit)
}

func placeText(space *schema.Space) string {
	if space.Exposure.Set() {
		return "the place"
	}
	return "the open sky"
}

// askedAt is what calls for protection.
func askedAt(space *schema.Space) source.Span {
	if space.Exposure.Set() {
		return space.Exposure.Span
	}
	return space.Outdoors.Span
}

// hungAt is where the choice of a loudspeaker stands.
func hungAt(part *schema.Loudspeaker) source.Span {
	if s := inside(&part.Part, part.Exposure.Span); !s.IsZero() {
		return s
	}
	return modelAt(part)
}

// modelAt is where a loudspeaker says which it is: its model, or its first line.
func modelAt(part *schema.Loudspeaker) source.Span {
	if s := inside(&part.Part, part.Model.Span); !s.IsZero() {
		return s
	}
	return part.Header
}

// kindsHung counts loudspeakers of one model and one degree of protection
// together.
func kindsHung(e *analysis.Exposure) []*kindHung {
	var all []*kindHung
	for _, b := range e.Loudspeakers {
		k := &kindHung{name: fmt.Sprintf("loudspeaker %q of line %q", b.Part.Name, b.Line.Part.Name), part: b.Part, count: b.Count}
		if b.Part.Model.Set() {
			k.name = fmt.Sprintf("model %q", b.Part.Model.V)
		}
		k.key = k.name
		before := -1
		for i, other := range all {
			if other.name == k.name && other.part.Exposure.V == b.Part.Exposure.V && other.part.Exposure.Set() == b.Part.Exposure.Set() {
				before = i
			}
		}
		if before >= 0 {
			all[before].count += b.Count
		} else {
			all = append(all, k)
		}
	}
	return all
}

// attenuatorCaution: an attenuator may hang indoors beside the door, so that it
// is no finding.
func attenuatorCaution(space *schema.Space, e *analysis.Exposure, needs quantity.Ingress) []string {
	var names []string
	for _, a := range e.Attenuators {
		if a.Exposure.Set() && analysis.Protects(a.Exposure.V, needs) == analysis.Protected {
			continue
		}
		has := "no degree stated"
		if a.Exposure.Set() {
			has = a.Exposure.V.String()
		}
		names = append(names, fmt.Sprintf("%q (%s)", a.Name, has))
	}
	if len(names) == 0 {
		return nil
	}
	return []string{fmt.Sprintf("Hang attenuators of %q that are not %s elsewhere, where it is dry: %s.", space.Name, needs, listed(names))}
}
