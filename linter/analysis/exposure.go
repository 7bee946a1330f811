package analysis

import (
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Exposure is what stands in a space that is open to the sky or states the degree
// of protection it needs.
type Exposure struct {
	// Parts are the loudspeakers, attenuators and sources that stand in it, a block
	// at a time; one that several like lines share is one.
	Parts []*Exposed
	// Unplaced are attenuators that turn loudspeakers in it down, and of which the
	// design does not say where they stand themselves.
	Unplaced []*Attenuator
}

// Exposed is a block and how many it comes to over all lines.
type Exposed struct {
	Kind   string // "loudspeaker", "attenuator", "microphone" …
	Part   *schema.Part
	Line   *Line // the first one it is on, nil for a source
	Model  schema.Value[string]
	Degree schema.Value[quantity.Ingress]
	// Says is where it says that it stands there.
	Says  source.Span
	Count int
}

// Exposure gives what stands in a space; nil when the space asks for no protection
// or nothing stands in it.
func (s *System) Exposure(space *schema.Space) *Exposure { return s.exposures[space.Name] }

// analyseExposure sorts parts to the spaces that ask for protection.
func (s *System) analyseExposure() {
	asks := map[string]bool{}
	for _, space := range s.Design.Spaces {
		if space.Exposure.Set() || space.Outdoors.V {
			asks[space.Name] = true
		}
	}
	if len(asks) == 0 {
		return
	}
	s.exposures = make(map[string]*Exposure, len(asks))
	blocks := map[*schema.Part]*Exposed{}
	at := func(space string) *Exposure {
		if s.exposures[space] == nil {
			s.exposures[space] = &Exposure{}
		}
		return s.exposures[space]
	}
	stands := func(space schema.Value[string], count int, e Exposed) {
		if !asks[space.V] {
			return
		}
		if blocks[e.Part] == nil {
			e.Says = space.Span
			blocks[e.Part] = &e
			to := at(space.V)
			to.Parts = append(to.Parts, &e)
		}
		blocks[e.Part].Count += count
	}
	type control struct {
		space string
		part  *schema.Attenuator
	}
	controls := map[control]bool{}
	for _, l := range s.Lines {
		for _, run := range l.Runs {
			p := run.Part
			stands(p.Space, run.Count, Exposed{Kind: "loudspeaker", Part: &p.Part, Line: l, Model: p.Model, Degree: p.Exposure})
			if !asks[p.Space.V] {
				continue
			}
			for _, a := range run.Behind {
				if c := (control{p.Space.V, a.Part}); !a.Part.StandsIn.Set() && !controls[c] {
					controls[c] = true
					e := at(p.Space.V)
					e.Unplaced = append(e.Unplaced, a)
				}
			}
		}
		for _, a := range l.Attenuators {
			p := a.Part
			stands(p.StandsIn, a.Count, Exposed{Kind: "attenuator", Part: &p.Part, Line: l, Model: p.Model, Degree: p.Exposure})
		}
	}
	for _, src := range s.Design.Sources {
		stands(src.StandsIn, 1, Exposed{Kind: src.Kind, Part: &src.Part, Model: src.Model, Degree: src.Exposure})
	}
}

// Protection is how a degree of protection compares with the one needed.
type Protection int

// Protections.
const (
	Protected   Protection = iota // it covers what is needed
	Unprotected                   // a digit is below what is needed
	Untold                        // a digit that matters is not stated, or the codes do not compare
)

// Protects compares by IEC 60529 (from memory): each digit covers the lower ones,
// except that water digits 7 and 8 (immersion) and 9 (hot jets from near) do not
// cover 5 and 6 (jets), so that one code of both is stated where both hold; nor
// does 9 cover immersion. What is needed with an X is not asked for.
func Protects(has, needs quantity.Ingress) Protection {
	solids, water := protectsDigit(has.Solids, needs.Solids), protectsDigit(has.Water, needs.Water)
	jets := needs.Water == 5 || needs.Water == 6
	immersion := needs.Water == 7 || needs.Water == 8
	if has.Water >= 7 && jets || has.Water == 9 && immersion {
		water = Untold
	}
	switch {
	case solids == Unprotected || water == Unprotected:
		return Unprotected
	case solids == Untold || water == Untold:
		return Untold
	}
	return Protected
}

func protectsDigit(has, needs int) Protection {
	switch {
	case needs == quantity.Unstated || needs == 0:
		return Protected
	case has == quantity.Unstated:
		return Untold
	case has < needs:
		return Unprotected
	}
	return Protected
}
