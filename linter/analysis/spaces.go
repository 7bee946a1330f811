package analysis

// Serving is how many loudspeakers serve a space, over all lines.
func (s *System) Serving(space string) int {
	n := 0
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if r.Part.Space.Set() && r.Part.Space.V == space {
				n += r.Count
			}
		}
	}
	return n
}

// Mentions tells that a source or an attenuator stands in a space, or a reading
// was taken there.
func (s *System) Mentions(space string) bool {
	for _, part := range s.Design.Sources {
		if part.StandsIn.V == space {
			return true
		}
	}
	for _, part := range s.Design.Readings {
		if part.Space.V == space {
			return true
		}
	}
	for _, l := range s.Lines {
		for _, a := range l.Attenuators {
			if a.Part.StandsIn.V == space {
				return true
			}
		}
	}
	return false
}
