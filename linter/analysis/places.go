package analysis

import (
	"slices"

	"loudlint/schema"
)

// Place is loudspeakers that are heard together: those that serve one space, or
// those of one line that do not say what they serve.
type Place struct {
	Space *schema.Space // nil when the loudspeakers name none
	Line  *Line         // set when Space is nil
	Runs  []*Run        // in the order of the lines; a block that like lines share is there once a line
}

// Name is the name of the space or the line.
func (p *Place) Name() string {
	if p.Space != nil {
		return p.Space.Name
	}
	return p.Line.Part.Name
}

// Places gives the places with loudspeakers in the order of the design: the
// spaces first.
func (s *System) Places() []*Place {
	var spaces, lines []*Place
	at := make(map[*schema.Space]*Place, len(s.Design.Spaces))
	for _, space := range s.Design.Spaces {
		p := &Place{Space: space}
		at[space] = p
		spaces = append(spaces, p)
	}
	for _, l := range s.Lines {
		var rest *Place
		for _, r := range l.Runs {
			p := at[s.Design.Space(r.Part.Space.V)]
			if p == nil {
				if rest == nil {
					rest = &Place{Line: l}
					lines = append(lines, rest)
				}
				p = rest
			}
			p.Runs = append(p.Runs, r)
		}
	}
	spaces = slices.DeleteFunc(spaces, func(p *Place) bool { return len(p.Runs) == 0 })
	return append(spaces, lines...)
}

// Playing gives the first music source that is meant to be heard on a line, nil
// when there is none.
func (s *System) Playing(l *Line) *Source {
	for _, src := range s.Sources {
		if !src.Part.Announces() && slices.Contains(src.Lines, l) {
			return src
		}
	}
	return nil
}
