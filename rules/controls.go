package rules

import (
	"strconv"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// What the checks of controls on the line have in common.

// attenuatorName names an attenuator block at the beginning of a sentence; what
// follows is in the singular.
func attenuatorName(a *analysis.Attenuator) string {
	if a.Count == 1 {
		return "Attenuator " + strconv.Quote(a.Part.Name)
	}
	return "Each of the " + strconv.Itoa(a.Count) + " attenuators " + strconv.Quote(a.Part.Name)
}

// attenuatorAt is where one would change what is said of an attenuator: in its own
// braces, else at its head.
func attenuatorAt(a *analysis.Attenuator, spans ...source.Span) source.Span {
	for _, s := range spans {
		if own := inside(&a.Part.Part, s); !own.IsZero() {
			return own
		}
	}
	return a.Part.Header
}

// lineOf gives the line in whose braces a part is written: lines that are like
// another share its devices.
func lineOf(s *analysis.System, part *schema.Part) *schema.Line {
	for _, l := range s.Lines {
		if !inside(&l.Part.Part, part.Header).IsZero() {
			return l.Part
		}
	}
	return nil
}

// setAttenuator is the edit that lets an attenuator say something.
func setAttenuator(a *analysis.Attenuator, old source.Span, attribute, value string) check.Edit {
	return check.Write(&a.Part.Part, old, attribute, value)
}

// attenuatorModel finds the attenuator of the design's own catalogue with the
// lowest rating that is enough, among those with the override, the conductors and
// the lowest setting of the one there is.
func attenuatorModel(s *analysis.System, a *analysis.Attenuator, least quantity.Power) *schema.AttenuatorModel {
	var best *schema.AttenuatorModel
	old := &a.Part.AttenuatorData
	if a.Part.ModelPart == nil || !inside(&a.Part.Part, old.Rating.Span).IsZero() {
		return nil
	}
	for _, m := range s.Design.Catalogue.Attenuators {
		switch {
		case !m.Rating.Set() || !quantity.AtLeast(m.Rating.V, least):
		case m.Override.V != old.Override.V || m.Cores.V != old.Cores.V || m.Lowest.V != old.Lowest.V || m.Relay.V != old.Relay.V:
		case best == nil || m.Rating.V < best.Rating.V:
			best = m
		}
	}
	return best
}

// attenuatorRating rounds a load up to a rating attenuators are sold with: the
// steps of the trade, no published source.
func attenuatorRating(need quantity.Power) quantity.Power {
	for _, step := range []quantity.Power{3, 6, 12, 20, 24, 36, 50, 60, 100, 120, 150, 200, 240} {
		if quantity.AtLeast(step, need) {
			return step
		}
	}
	return standardRating(need)
}

// sourceNames lists announcements by name.
func sourceNames(all []analysis.Announcement) string {
	names := make([]string, len(all))
	for i, a := range all {
		names[i] = a.Source.Part.Name
	}
	return listed(names)
}

// blockNames lists attenuator blocks by name.
func blockNames(all []*analysis.Attenuator) string {
	names := make([]string, len(all))
	for i, a := range all {
		names[i] = strconv.Quote(a.Part.Name)
	}
	return listed(names)
}
