package sound

import "math"

// Loudspeaker is one source of sound.
type Loudspeaker struct {
	At          Vector
	Aim         Vector // of any length; none is straight down
	RollDegrees float64
	// OnAxisDB is the free-field level on the axis at 1 m in each octave, at the
	// power it is given: see OnAxisDB.
	OnAxisDB     Bands
	Directivity  *Directivity // nil: equally loud all round
	DelaySeconds float64      // of its signal
}

// Space is where people listen.
type Space struct {
	Planes  []Plane
	Room    *Room // nil: outdoors, a free field
	Air     Air
	NoiseDB Bands // level of the noise in each octave
}

// Heard is what arrives at one listener: levels in each octave, -Inf where nothing.
type Heard struct{ Direct, Reverberant Bands }

// Total is direct and reverberant sound together.
func (h Heard) Total() Bands { return Over(h.Direct, h.Reverberant) }

// Do calls work for 0 to n-1, in any order and on as many cores as it likes, and
// returns when all are done. nil is one after the other. Results never depend on it.
type Do func(n int, work func(i int))

func (do Do) each(n int, work func(i int)) {
	if do == nil {
		for i := range n {
			work(i)
		}
		return
	}
	do(n, work)
}

// leastDistance is how near a listener can come to a loudspeaker: nearer than this
// it is no point any more, and is taken as this far away, in metres.
const leastDistance = 0.25

// Model is a space with its loudspeakers, ready to be asked at any listener. It does
// not change and may be used by many at once.
type Model struct {
	sources []source
	// air is the ratio that air leaves of intensities, tail the share of the
	// reverberant energy that is left, both over distance in steps of stepMetres.
	air, tail   []row
	stepMetres  float64
	clock       clock
	speed       float64
	theory      Theory
	reverberant Bands // energy of all of it, before tail
	hasRoom     bool
	decay       Bands // reverberation time
	noise       Bands // levels
	aWeight     Bands // ratios
}

// source is a loudspeaker as the inner loop wants it.
type source struct {
	at          Vector
	frame       frame
	directivity *Directivity
	delay       float64
	onAxis      row // energy at 1 m on the axis
	reverberant row // energy of its reverberant field, before tail
}

const (
	// distanceSteps bounds the tables over distance: 0.1 dB/m at 1 km is 0.1 dB a
	// step, which linear interpolation turns into an error below 0.001 dB.
	distanceSteps = 1024
	// leastStep is as fine as they need to be in a small room, in metres.
	leastStep = 0.1
)

// NewModel prepares a space with loudspeakers.
func NewModel(space Space, loudspeakers []Loudspeaker) *Model {
	m := &Model{
		sources: make([]source, len(loudspeakers)),
		speed:   space.Air.SpeedMetresPerSecond(),
		noise:   space.NoiseDB,
		aWeight: AWeightingDB().Energy(),
		hasRoom: space.Room != nil,
	}
	perWatt := Bands{} // reverberant energy per unit of sound power
	if m.hasRoom {
		m.theory = space.Room.Theory
		m.decay = space.Room.Reverberation
		area := space.Room.AbsorptionM2()
		if m.theory == Uniform {
			area = space.Room.ConstantM2()
		}
		for k := range perWatt {
			perWatt[k] = 4 / area[k]
		}
	}
	for i, l := range loudspeakers {
		s := source{at: l.At, frame: newFrame(l.Aim, l.RollDegrees), directivity: l.Directivity, delay: l.DelaySeconds}
		q := l.Directivity.Q()
		for k, level := range l.OnAxisDB {
			s.onAxis[k] = fromDB(level)
			// W = 4π·(intensity on the axis at 1 m)/Q.
			s.reverberant[k] = 4 * math.Pi * s.onAxis[k] / q[k] * perWatt[k]
			m.reverberant[k] += s.reverberant[k]
		}
		m.sources[i] = s
	}
	m.tabulate(space)
	return m
}

// tabulate makes the tables over distance, as far as any loudspeaker is from any
// corner. Listeners further away are reckoned as that far in these tables alone.
func (m *Model) tabulate(space Space) {
	reach := 1.0
	for _, plane := range space.Planes {
		low, high := plane.Outline.Bounds()
		for _, s := range m.sources {
			far := Vector{max(s.at.X-low.X, high.X-s.at.X), max(s.at.Y-low.Y, high.Y-s.at.Y), s.at.Z - plane.EarZ}
			reach = max(reach, far.Length())
		}
	}
	m.stepMetres = max(leastStep, reach/distanceSteps)
	steps := int(reach/m.stepMetres) + 2
	m.air, m.tail = make([]row, steps), make([]row, steps)
	m.clock = newClock(m.sources, float64(steps)*m.stepMetres/m.speed)
	alpha := space.Air.AbsorptionDBPerMetre()
	for i := range m.air {
		r := float64(i) * m.stepMetres
		for k := range BandCount {
			m.air[i][k] = fromDB(-alpha[k] * r)
			if m.hasRoom && m.theory == Revised && m.decay[k] > 0 {
				m.tail[i][k] = math.Exp(-decayExponent * r / (m.speed * m.decay[k]))
			}
		}
	}
}

// decayExponent is ln 10⁶: energy falls as e^(−13.8·t/T).
const decayExponent = 6 * math.Ln10

// Heard is what arrives at a listener of all loudspeakers, added as energy:
//
//	direct:      Σ onAxis·Γ·10^(−α·r/10)/r²
//	reverberant: see Theory
func (m *Model) Heard(listener Vector) Heard {
	var direct, reverberant row
	for i := range m.sources {
		m.add(&m.sources[i], listener, &direct, &reverberant)
	}
	h := Heard{Direct: Bands(direct[:BandCount]).Levels()}
	if m.theory == Uniform {
		h.Reverberant = m.reverberant.Levels()
	} else {
		h.Reverberant = Bands(reverberant[:BandCount]).Levels()
	}
	return h
}

// add adds the energies that one source gives a listener and returns when its
// direct sound arrives.
func (m *Model) add(s *source, listener Vector, direct, reverberant *row) (seconds float64) {
	to := listener.Minus(s.at)
	square := to.Dot(to)
	r := math.Sqrt(square)
	gain := 1 / max(square, leastDistance*leastDistance)

	step := r / m.stepMetres
	i := min(int(step), len(m.air)-2)
	part := min(step-float64(i), 1)
	air, airNext := &m.air[i], &m.air[i+1]
	tail, tailNext := &m.tail[i], &m.tail[i+1]

	if s.directivity == nil {
		for k := range BandCount {
			direct[k] += s.onAxis[k] * gain * (air[k] + part*(airNext[k]-air[k]))
		}
	} else {
		var gamma row
		s.directivity.ratio(&gamma, to.Dot(s.frame.axis), to.Dot(s.frame.right), to.Dot(s.frame.up), r)
		for k := range BandCount {
			direct[k] += s.onAxis[k] * gain * gamma[k] * (air[k] + part*(airNext[k]-air[k]))
		}
	}
	for k := range BandCount {
		reverberant[k] += s.reverberant[k] * (tail[k] + part*(tailNext[k]-tail[k]))
	}
	return s.delay + r/m.speed
}

// Field is what each listener hears.
func (m *Model) Field(listeners []Vector, do Do) []Heard {
	heard := make([]Heard, len(listeners))
	m.chunks(len(listeners), do, func(from, to int) {
		for i := from; i < to; i++ {
			heard[i] = m.Heard(listeners[i])
		}
	})
	return heard
}

// chunks calls work for 0 to n-1 in pieces, from one to before another, that are
// worth handing to a core.
func (m *Model) chunks(n int, do Do, work func(from, to int)) {
	const pairs = 20_000
	size := max(1, pairs/max(1, len(m.sources)))
	do.each((n+size-1)/size, func(c int) { work(c*size, min((c+1)*size, n)) })
}
