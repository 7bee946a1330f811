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
	Asks:    "Do the loudspeakers, attenuators and microphones in each space stand the dust and water there?",
	Summary: "Something is less protected against dust or water than the space it stands in needs.",
	Why:     "Water in a loudspeaker or an attenuator on a constant-voltage line ends in corrosion, then in a short or an earth fault that takes the whole line down, mostly in the weather in which announcements matter.",
	How: "Holds the degree of protection of each loudspeaker, and of each attenuator and source that says that it stands there (stands_in), against the one the space states, digit by digit (IEC 60529). In a space that is open to the sky and states none, the digit for water is held against outdoor_water. " +
		"Water digits 7 to 9 (immersion, hot jets) do not stand for 5 and 6 (jets), unless the data sheet states both.",
	Basis: "IEC 60529, from memory; what a place needs is for the designer to state",
	Blind: "Indoor spaces that state no exposure are not asked. Sun, salt, frost, chemicals, ball impact and explosive atmospheres are not in an IP code. " +
		"Where amplifiers and mixers are no design says: they are left to the person who plans the rack room. An attenuator that does not say where it stands is asked for that, unless it would stand the place of its loudspeakers.",
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

// kindExposed is the parts of one model, or one block without a model, in a
// space.
type kindExposed struct {
	*analysis.Exposed // the first block
	name              string
	count             int
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
	var judged, untold []*kindExposed
	failed := false
	for _, k := range kindsExposed(e) {
		lacks := analysis.Missing{What: "degree of protection", Part: k.name, Where: k.Part.Header, Write: fmt.Sprintf("exposure = %q", needs)}
		switch {
		case !k.Degree.Set():
			missing, untold = append(missing, lacks), append(untold, k)
		case analysis.Protects(k.Degree.V, needs) == analysis.Untold:
			lacks.What = fmt.Sprintf("degree of protection that tells of %s (%s does not)", needs, k.Degree.V)
			missing, untold = append(missing, lacks), append(untold, k)
		case analysis.Protects(k.Degree.V, needs) == analysis.Unprotected:
			failed = true
			unprotected(r, space, k, needs, limit)
		default:
			judged = append(judged, k)
		}
	}
	unplaced(r, space, e, needs)
	switch {
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether %s in %q %s %s cannot be told.", countedKinds(untold), space.Name, verb(countOf(untold), "stands", "stand"), placeText(space)), missing...)
	case !failed && len(judged) > 0:
		a := r.Pass(fmt.Sprintf("%s in %q %s at least %s.", wording.Capital(countedKinds(judged)), space.Name, verb(countOf(judged), "is", "are"), needs)).At(askedAt(space))
		protectionLimit(a, space, needs, limit)
	}
}

// unplaced asks where attenuators stand that would not stand the place of their
// loudspeakers: many hang inside beside the door.
func unplaced(r *check.Report, space *schema.Space, e *analysis.Exposure, needs quantity.Ingress) {
	var missing []analysis.Missing
	var names []string
	for _, a := range e.Unplaced {
		has := a.Part.Exposure
		if has.Set() && analysis.Protects(has.V, needs) == analysis.Protected {
			continue
		}
		degree := "no degree of protection stated"
		if has.Set() {
			degree = has.V.String()
		}
		names = append(names, fmt.Sprintf("%q (%s)", a.Part.Name, degree))
		missing = append(missing, analysis.Missing{What: "space that the attenuator stands in", Part: "attenuator " + quoted(a.Part.Name), Where: a.Part.Header, Write: fmt.Sprintf("stands_in = %q", space.Name)})
	}
	if len(missing) > 0 {
		r.Open(fmt.Sprintf("Whether the %s of loudspeakers in %q %s in it too is not stated, and %s needs at least %s: %s.", verb(len(names), "attenuator", "attenuators"), space.Name, verb(len(names), "stands", "stand"), placeText(space), needs, listed(names)), missing...).
			Key("attenuators")
	}
}

func countOf(all []*kindExposed) int {
	n := 0
	for _, k := range all {
		n += k.count
	}
	return n
}

// countedKinds counts what is there by kind: "2 loudspeakers and 1 microphone".
func countedKinds(all []*kindExposed) string {
	counts := map[string]int{}
	var kinds []string
	for _, k := range all {
		if counts[k.Kind] == 0 {
			kinds = append(kinds, k.Kind)
		}
		counts[k.Kind] += k.count
	}
	for i, kind := range kinds {
		kinds[i] = countedKind(counts[kind], kind)
	}
	return listed(kinds)
}

// countedKind counts parts of a kind by what they are called.
func countedKind(n int, kind string) string {
	switch kind {
	case schema.KindMusic:
		kind = "music source"
	case schema.KindMessage:
		kind = "store of messages"
		if n > 1 {
			return fmt.Sprintf("%d stores of messages", n)
		}
	}
	return wording.Counted(n, kind)
}

func unprotected(r *check.Report, space *schema.Space, k *kindExposed, needs quantity.Ingress, limit check.Limit) {
	severity := check.Warning
	if space.Exposure.Set() {
		severity = check.Error
	}
	has := k.Degree
	a := r.Fail(severity, fmt.Sprintf("%s in %q (%s) %s %s; %s needs at least %s.", wording.Capital(countedKind(k.count, k.Kind)), space.Name, k.name, verb(k.count, "is", "are"), has.V, placeText(space), needs)).
		Key(k.name).At(exposedAt(k)).See(askedAt(space), "what the space is").See(readable(has.Span), "what the data sheet says")
	if k.Kind != "loudspeaker" {
		a.See(k.Says, "where it stands")
	}
	protectionLimit(a, space, needs, limit)
	a.Remedy(check.Computed, fmt.Sprintf("Choose one of %s or better, or put it where it stays dry.", needs))
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

// exposedAt is where the choice of a part stands.
func exposedAt(k *kindExposed) source.Span {
	for _, span := range []source.Span{k.Degree.Span, k.Model.Span} {
		if s := inside(k.Part, span); !s.IsZero() {
			return s
		}
	}
	return k.Part.Header
}

// modelAt is where a loudspeaker says which it is: its model, or its first line.
func modelAt(part *schema.Loudspeaker) source.Span {
	if s := inside(&part.Part, part.Model.Span); !s.IsZero() {
		return s
	}
	return part.Header
}

// kindsExposed counts parts of one model and one degree of protection together.
func kindsExposed(e *analysis.Exposure) []*kindExposed {
	var all []*kindExposed
	for _, b := range e.Parts {
		k := &kindExposed{Exposed: b, name: fmt.Sprintf("%s %q", b.Kind, b.Part.Name), count: b.Count}
		if b.Line != nil {
			k.name += fmt.Sprintf(" of line %q", b.Line.Part.Name)
		}
		if b.Model.Set() {
			k.name = fmt.Sprintf("model %q", b.Model.V)
		}
		before := -1
		for i, other := range all {
			if other.name == k.name && other.Degree.V == b.Degree.V && other.Degree.Set() == b.Degree.Set() {
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
