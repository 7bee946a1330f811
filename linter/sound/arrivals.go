package sound

import (
	"cmp"
	"math"
	"slices"
)

// Arrival is the direct sound of one loudspeaker at a listener.
type Arrival struct {
	Loudspeaker int     // its index
	Seconds     float64 // when: delay and way
	LevelDBA    float64
}

// LateArrival is one that may be heard as an echo.
type LateArrival struct {
	Arrival
	First        int     // the loudspeaker whose sound was the first that counts
	AfterSeconds float64 // after that
	BelowDB      float64 // how far it is below the sum of all earlier arrivals; negative when above
}

// Arrivals are the direct sounds at a listener in the order in which they come,
// without those of no energy. They are appended to into[:0].
func (m *Model) Arrivals(listener Vector, into []Arrival) []Arrival {
	into = into[:0]
	for i := range m.sources {
		var direct, reverberant row
		seconds := m.add(&m.sources[i], listener, &direct, &reverberant)
		energy := 0.0
		for k, w := range m.aWeight {
			energy += w * direct[k]
		}
		if energy > 0 {
			into = append(into, Arrival{i, seconds, toDB(energy)})
		}
	}
	slices.SortFunc(into, func(a, b Arrival) int {
		return cmp.Or(cmp.Compare(a.Seconds, b.Seconds), cmp.Compare(a.Loudspeaker, b.Loudspeaker))
	})
	return into
}

// Late are the arrivals, of those in order of time, that come more than afterSeconds
// after the first and are less than withinDB below the energy sum of all before
// them. The first is the first one that counts: it is less than withinDB below the
// loudest. Sounds up to some 35 ms late are heard as one with the first; from 50 ms on
// as echoes, unless they are weak (F. A. Everest, The Master Handbook of Acoustics,
// fig. 3-19, after H. Haas).
func Late(arrivals []Arrival, afterSeconds, withinDB float64) []LateArrival {
	loudest := math.Inf(-1)
	for _, a := range arrivals {
		loudest = max(loudest, a.LevelDBA)
	}
	// A sum of one level need not give back its last digit, and what is exactly at
	// the bound is no echo.
	const slackDB = 1e-9
	var late []LateArrival
	first, earlier := -1, 0.0
	for i, a := range arrivals {
		if first < 0 && a.LevelDBA > loudest-withinDB {
			first = i
		}
		below := toDB(earlier) - a.LevelDBA
		if first >= 0 && a.Seconds-arrivals[first].Seconds > afterSeconds && below < withinDB-slackDB {
			late = append(late, LateArrival{a, arrivals[first].Loudspeaker, a.Seconds - arrivals[first].Seconds, below})
		}
		earlier += fromDB(a.LevelDBA)
	}
	return late
}
