package analysis

import (
	"loudlint/linter/sound"
)

// LevelsAt gives the A-weighted level at full output at any places, in dBA; nil
// while levels are not known or all loudspeakers are silent.
func (s *Sound) LevelsAt(places []sound.Vector) []float64 {
	l := s.Levels()
	if !l.Known() || l.Silent() {
		return nil
	}
	levels := make([]float64, len(places))
	for i, heard := range sound.NewModel(l.space, l.heard).Field(places, s.system.do) {
		levels[i] = heard.Total().DBA()
	}
	return levels
}

// SpeechAt gives the speech transmission index at any places; nil while it is not
// known.
func (s *Sound) SpeechAt(places []sound.Vector) []float64 {
	t := s.Speech()
	if !t.Known() || t.model == nil {
		return nil
	}
	return t.model.STI(places, s.system.do)
}
