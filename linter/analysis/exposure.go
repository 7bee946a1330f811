package analysis

import (
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Exposure is what hangs in a space that is open to the sky or states the degree
// of protection it needs.
type Exposure struct {
	// Loudspeakers are the loudspeaker blocks in it; one that several like lines
	// share is one.
	Loudspeakers []*Exposed
	// Attenuators are those that turn loudspeakers in it down. Where they hang
	// themselves, no design says.
	Attenuators []*schema.Attenuator
}

// Exposed is a loudspeaker block and how many loudspeakers it comes to over all
// lines.
type Exposed struct {
	Line  *Line // the first one it is on
	Part  *schema.Loudspeaker
	Count int
}

// Exposure gives what hangs in a space; nil when the space asks for no protection
// or nothing hangs in it.
func (s *System) Exposure(space *schema.Space) *Exposure { return s.exposures[space.Name] }

// analyseExposure sorts loudspeakers to the spaces that ask for protection.
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
	blocks := map[*schema.Loudspeaker]*Exposed{}
	type control struct {
		space string
		part  *schema.Attenuator
	}
	controls := map[control]bool{}
	for _, l := range s.Lines {
		for _, run := range l.Runs {
			name := run.Part.Space.V
			if !asks[name] {
				continue
			}
			e := s.exposures[name]
			if e == nil {
				e = &Exposure{}
				s.exposures[name] = e
			}
			block := blocks[run.Part]
			if block == nil {
				block = &Exposed{Line: l, Part: run.Part}
				blocks[run.Part] = block
				e.Loudspeakers = append(e.Loudspeakers, block)
			}
			block.Count += run.Count
			for _, a := range run.Behind {
				if c := (control{name, a.Part}); !controls[c] {
					controls[c] = true
					e.Attenuators = append(e.Attenuators, a.Part)
				}
			}
		}
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
