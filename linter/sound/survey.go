package sound

import (
	"math"
	"slices"
)

// SurveyOptions are how a space is surveyed. The zero value is ready to use.
type SurveyOptions struct {
	Do Do
	// SpacingMetres between listeners; 0: chosen from the geometry, and halved until
	// the figures settle.
	SpacingMetres float64
	// MostListeners bounds the refinement; 0 is 10,000.
	MostListeners int
	// Transmission asks for the speech transmission index too.
	Transmission bool
}

// Survey is what was found on a grid of listeners.
type Survey struct {
	Listeners     []Vector
	SpacingMetres float64
	// Settled says that least, mean and 5th percentile of the level moved by less
	// than 0.2 dB when the spacing was last halved. A spacing that was given is not
	// tried.
	Settled  bool
	Heard    []Heard
	LevelDBA []float64 // of direct and reverberant sound together
	STI      []float64 // nil where not asked for

	Level        Statistics // of LevelDBA
	Transmission Statistics // of STI
}

// Statistics describe figures of listeners, each of whom stands for as much floor.
type Statistics struct {
	Least  float64
	Fifth  float64 // 5th percentile: 95 % of the floor have more
	Mean   float64 // arithmetic, of the levels in dB as such
	Spread float64 // most less least
	Most   float64
	// LeastAt and MostAt are the listeners (indices) of the two.
	LeastAt, MostAt int
}

// Describe works out statistics; of no figures all are 0. Percentiles lie on the
// straight line between neighbours.
func Describe(figures []float64) Statistics {
	if len(figures) == 0 {
		return Statistics{}
	}
	s := Statistics{Least: figures[0], Most: figures[0]}
	sum := 0.0
	for i, v := range figures {
		sum += v
		if v < s.Least {
			s.Least, s.LeastAt = v, i
		}
		if v > s.Most {
			s.Most, s.MostAt = v, i
		}
	}
	s.Mean = sum / float64(len(figures))
	s.Spread = s.Most - s.Least
	sorted := slices.Sorted(slices.Values(figures))
	at := 0.05 * float64(len(sorted)-1)
	i := int(at)
	s.Fifth = sorted[i]
	if i+1 < len(sorted) {
		s.Fifth += (at - float64(i)) * (sorted[i+1] - sorted[i])
	}
	return s
}

// settledDB is how much figures may move when the spacing is halved.
const settledDB = 0.2

// SurveySpace lays a grid of listeners over a space and works out what they hear.
func SurveySpace(space Space, loudspeakers []Loudspeaker, options SurveyOptions) *Survey {
	model := NewModel(space, loudspeakers)
	most := options.MostListeners
	if most <= 0 {
		most = 10_000
	}
	spacing := options.SpacingMetres
	given := spacing > 0
	if !given {
		spacing = firstSpacing(space, loudspeakers)
	}
	s := model.survey(space, spacing, options.Do)
	for !given && !s.Settled && 4*len(s.Listeners) <= most {
		finer := model.survey(space, s.SpacingMetres/2, options.Do)
		finer.Settled = near(s.Level.Least, finer.Level.Least) && near(s.Level.Mean, finer.Level.Mean) && near(s.Level.Fifth, finer.Level.Fifth)
		s = finer
	}
	if options.Transmission {
		s.STI = model.STI(s.Listeners, options.Do)
		s.Transmission = Describe(s.STI)
	}
	return s
}

func near(a, b float64) bool { return math.Abs(a-b) < settledDB }

func (m *Model) survey(space Space, spacingMetres float64, do Do) *Survey {
	s := &Survey{SpacingMetres: spacingMetres}
	for _, plane := range space.Planes {
		s.Listeners = append(s.Listeners, plane.Grid(spacingMetres)...)
	}
	s.Heard = m.Field(s.Listeners, do)
	s.LevelDBA = make([]float64, len(s.Heard))
	for i, h := range s.Heard {
		s.LevelDBA[i] = h.Total().DBA()
	}
	s.Level = Describe(s.LevelDBA)
	return s
}

// firstSpacing is half the least height of a loudspeaker over the ears, about the
// size of what changes under it, but so that there are some 64 to 1,000 listeners.
func firstSpacing(space Space, loudspeakers []Loudspeaker) float64 {
	area, height := 0.0, math.Inf(1)
	for _, plane := range space.Planes {
		area += plane.Outline.AreaM2()
		for _, l := range loudspeakers {
			height = min(height, math.Abs(l.At.Z-plane.EarZ))
		}
	}
	if !(area > 0) {
		return 1
	}
	return max(math.Sqrt(area/1000), min(height/2, math.Sqrt(area/64)))
}
