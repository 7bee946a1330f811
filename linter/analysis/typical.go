package analysis

import (
	"cmp"
	"slices"

	"loudlint/schema"
	"loudlint/schema/source"
)

// TypicalUse is a model of the typical catalogue and how often it is used.
type TypicalUse struct {
	Name  string
	Count int         // parts, not pieces: a run is one
	First source.Span // the first place that names it
}

// TypicalModels lists the typical models that units, sources, loudspeakers and
// attenuators use, in the order of their first places. Cables and connectors of
// the typical catalogue are standard sizes and are left out.
func (s *System) TypicalModels() []TypicalUse {
	found := map[string]*TypicalUse{}
	add := func(v schema.Value[string]) {
		if !schema.IsTypical(v.V) {
			return
		}
		u := found[v.V]
		if u == nil {
			u = &TypicalUse{Name: v.V, First: v.Span}
			found[v.V] = u
		}
		u.Count++
		if source.Compare(v.Span, u.First) < 0 {
			u.First = v.Span
		}
	}
	for _, u := range s.Design.Units {
		add(u.Model)
	}
	for _, p := range s.Design.Sources {
		add(p.Model)
	}
	seen := map[*schema.Loudspeaker]bool{}
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if !seen[r.Part] {
				seen[r.Part] = true
				add(r.Part.Model)
			}
		}
		for _, a := range l.Attenuators {
			add(a.Part.Model)
		}
	}
	all := make([]TypicalUse, 0, len(found))
	for _, u := range found {
		all = append(all, *u)
	}
	slices.SortFunc(all, func(a, b TypicalUse) int {
		return cmp.Or(source.Compare(a.First, b.First), cmp.Compare(a.Name, b.Name))
	})
	return all
}
