package analysis

import (
	"fmt"
	"math"

	"loudlint/linter/sound"
	"loudlint/schema/quantity"
)

// Speech is how well average speech is understood in a space.
type Speech struct {
	Missing []Missing
	Assumed []string
	// Level is the mean level of speech for which it is worked out: as loud as is
	// wanted, or so far above the noise that more adds nothing, as far as the
	// amplifier has it.
	Level Figure[quantity.SoundLevel]
	// STI is the speech transmission index at each of Listeners.
	STI       []float64
	Listeners []sound.Vector
	// Mean, Fifth and Least are of those, to two digits, as the standard reports them.
	Mean, Fifth, Least float64
	// Doubts say why the diffuse field that the reverberation is worked out of is
	// doubtful here.
	Doubts []string
	// ArticulationLoss is Peutz's figure for the mean distance, as a cross-check.
	ArticulationLoss Figure[quantity.Percent]

	model *sound.Model
}

// Known tells that it could be worked out.
func (t *Speech) Known() bool { return len(t.Missing) == 0 }

// Speech gives how well average speech is understood. It is worked out at the first
// call, once.
func (s *Sound) Speech() *Speech { return s.speech() }

// clearAbove is how far speech stands above noise when more adds nothing to the
// speech transmission index (IEC 60268-16: 15 dB).
const clearAbove = 15

// transmission works the speech transmission index out.
func (s *Sound) transmission() *Speech { return s.transmissionWith(s.decay) }

func (s *Sound) transmissionWith(decay sound.Bands) *Speech {
	t := &Speech{Missing: s.Purpose()}
	if len(t.Missing) > 0 { // what is wanted is asked first, the rest after it
		return t
	}
	t.Missing = MergeMissing(s.Levels().Missing, s.Reverberation.Missing)
	if !s.Open() {
		t.Missing = MergeMissing(t.Missing, s.VolumeMissing())
	} else {
		what := "measured speech intelligibility (in the open no diffuse field builds up to work it out of)"
		if s.Space.PartlyOpen.V {
			what = "measured speech intelligibility (with a side open no diffuse field builds up to work it out of)"
		}
		t.Missing = MergeMissing(t.Missing, []Missing{missing(what, "space", &s.Space.Part, "")})
	}
	l := s.Levels()
	if !t.Known() || len(l.heard) == 0 {
		return t
	}
	t.Assumed = l.Assumed
	space := l.space
	room := *l.space.Room
	room.Reverberation = decay
	space.Room = &room
	t.Listeners = thin(l.Survey.Listeners, atMostFor(mostArrivals, len(l.heard), thinned))
	full := l.Survey.Level.Mean
	if decay != s.decay { // both copied or both scaled: a change that is tried
		full = meanLevel(sound.NewModel(space, l.heard).Field(t.Listeners, s.system.do))
	}
	available := full - float64(SpeechBelowFull)
	level := min(available, max(float64(s.Wanted.Value), float64(s.Noise.Value)+clearAbove))
	heard := make([]sound.Loudspeaker, len(l.heard))
	for i := range heard {
		heard[i] = l.heard[i]
		heard[i].OnAxisDB = heard[i].OnAxisDB.Shift(level - full)
	}
	t.model = sound.NewModel(space, heard)
	t.STI = make([]float64, len(t.Listeners))
	s.system.do(len(t.Listeners), func(i int) { t.STI[i] = t.model.Transmission(t.Listeners[i]).STI })
	found := sound.Describe(t.STI)
	t.Mean, t.Fifth, t.Least = hundredth(found.Mean), hundredth(found.Fifth), hundredth(found.Least)
	t.Level = Figure[quantity.SoundLevel]{Value: quantity.SoundLevel(math.Round(10*level) / 10), From: l.From}
	t.Level.Sum = fmt.Sprintf("the louder of %s (wanted) and noise %s + %d dB, at most the %s there is = %s", s.Wanted.Value, s.Noise.Value, clearAbove,
		quantity.SoundLevel(math.Round(10*available)/10), t.Level.Value)
	t.doubts(s, &room)
	t.articulation(l, &room)
	return t
}

func hundredth(sti float64) float64 { return math.Round(100*sti) / 100 }

// meanLevel is the mean A-weighted level over listeners.
func meanLevel(heard []sound.Heard) float64 {
	sum := 0.0
	for i := range heard {
		sum += heard[i].Total().DBA()
	}
	return sum / float64(len(heard))
}

// doubts words what is doubtful about the diffuse field.
func (t *Speech) doubts(s *Sound, room *sound.Room) {
	height := room.VolumeM3 / float64(s.Floor.Area.Value)
	for _, d := range room.Doubts(float64(s.Floor.Length), float64(s.Floor.Width), height) {
		switch d {
		case sound.TooAbsorbent:
			t.Doubts = append(t.Doubts, "the space absorbs so much that its reverberation is hardly diffuse")
		case sound.TooFlat:
			t.Doubts = append(t.Doubts, "the space is more than 5 times as long as high, so that its reverberation is not the same everywhere")
		case sound.TooSmall:
			t.Doubts = append(t.Doubts, "the space is so small that it has too few resonances at 250 Hz for statistics")
		}
	}
}

// articulation works out Peutz's articulation loss for the mean distance to the
// nearest loudspeaker.
func (t *Speech) articulation(l *Levels, room *sound.Room) {
	sum := 0.0
	for _, listener := range t.Listeners {
		nearest := math.Inf(1)
		for i := range l.heard {
			nearest = min(nearest, listener.Minus(l.heard[i].At).Length())
		}
		sum += nearest
	}
	distance := sum / float64(len(t.Listeners))
	decay := (room.Reverberation[3] + room.Reverberation[4]) / 2
	q := l.heard[0].Directivity.Q()[4]
	n := float64(len(l.heard))
	loss, far := sound.ArticulationLossPercent(distance, decay, room.VolumeM3, q, n)
	f := &t.ArticulationLoss
	f.Value = quantity.Percent(loss)
	if far {
		f.Sum = fmt.Sprintf("9 × %s s = %s: beyond 3.16 times the critical distance", quantity.Significant(decay, 3), f.Value)
		return
	}
	f.Sum = fmt.Sprintf("200 × (%s m)² × (%s s)² × %d / (%s m³ × %s) = %s", quantity.Significant(distance, 3), quantity.Significant(decay, 3), len(l.heard),
		quantity.Significant(room.VolumeM3, 4), quantity.Significant(q, 3), f.Value)
}

// DecayFor finds the longest reverberation time with which the mean and the 5th
// percentile of the speech transmission index reach what is asked, by working it
// out again with all octaves shortened alike; not ok when even a tenth does not do.
func (s *Sound) DecayFor(mean, fifth float64) (quantity.Duration, bool) {
	does := func(share float64) bool {
		decay := s.decay
		for k := range decay {
			decay[k] *= share
		}
		t := s.transmissionWith(decay)
		return t.Known() && t.Mean >= mean && t.Fifth >= fifth
	}
	const least = 0.1
	if !does(least) {
		return 0, false
	}
	low, high := least, 1.0
	for range 6 { // to 1.5 % of the time
		middle := (low + high) / 2
		if does(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return quantity.Duration(low * float64(s.Reverberation.Value)), true
}
