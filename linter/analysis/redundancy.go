package analysis

import (
	"slices"

	"loudlint/schema"
)

// SpaceShare is how many loudspeakers of a space hang on one amplifier, or on one
// line whose amplifier is not stated.
type SpaceShare struct {
	Amplifier *Amplifier // nil when not stated
	Lines     []*Line
	Count     int
}

// Name is what fails together: amplifier "Rack", or line "Hall".
func (s *SpaceShare) Name() string {
	if s.Amplifier == nil {
		return named("line", s.Lines[0].Part.Name)
	}
	return named("amplifier", s.Amplifier.Part.Name)
}

// Shares gives how the loudspeakers of a space hang on the amplifiers, in walking
// order, and how many there are.
func (s *System) Shares(space *schema.Space) (shares []*SpaceShare, total int) {
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if !r.Part.Space.Set() || r.Part.Space.V != space.Name {
				continue
			}
			total += r.Count
			at := slices.IndexFunc(shares, func(o *SpaceShare) bool {
				return o.Lines[0] == l || l.Amplifier != nil && o.Amplifier == l.Amplifier
			})
			if at < 0 {
				at = len(shares)
				shares = append(shares, &SpaceShare{Amplifier: l.Amplifier})
			}
			share := shares[at]
			share.Count += r.Count
			if !slices.Contains(share.Lines, l) {
				share.Lines = append(share.Lines, l)
			}
		}
	}
	return shares, total
}

// Unplaced gives the blocks of loudspeakers that do not say which space they
// serve.
func (s *System) Unplaced() []*Run {
	var all []*Run
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if !r.Part.Space.Set() {
				all = append(all, r)
			}
		}
	}
	return all
}

// MostInOne gives, of a space that stands for several equal ones, the most
// loudspeakers of any one of them that hang on each share, when all loudspeakers
// of the space are shared out over them in walking order. The dialect demands that
// they come to a whole number each.
func (s *System) MostInOne(space *schema.Space, shares []*SpaceShare, total int) []int {
	each := total / space.Count()
	most := make([]int, len(shares))
	inRoom := make([]int, len(shares)) // of the room the walk has got to
	walked := 0
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if !r.Part.Space.Set() || r.Part.Space.V != space.Name {
				continue
			}
			at := slices.IndexFunc(shares, func(o *SpaceShare) bool { return slices.Contains(o.Lines, l) })
			for left := r.Count; left > 0; {
				if walked%each == 0 {
					clear(inRoom)
				}
				part := min(left, each-walked%each)
				inRoom[at] += part
				most[at] = max(most[at], inRoom[at])
				walked += part
				left -= part
				if part == each { // whole rooms of one block are all alike
					left %= each
				}
			}
		}
	}
	return most
}
