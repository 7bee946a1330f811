package sound

import "math"

// Transmission is the speech transmission index at a listener when the loudspeakers
// play speech at the levels they were given. Every direct sound counts at its own
// time, so that late arrivals tell:
//
//	m(F) = |Σ (D + R/(1 + j·2π·F·T/13.8))·e^(−j·2π·F·t)|/Σ (D + R)
//
// over the loudspeakers, t being when each one's direct sound arrives; then noise
// and hearing. With the Uniform theory all reverberation begins with the first
// arrival. The sum is the Fourier transform of the squared impulse response (M. R.
// Schroeder, Acustica 49 (1981), 179; from memory).
func (m *Model) Transmission(listener Vector) Transmission {
	return m.transmission(listener, make([]tick, len(m.clock.phase)))
}

// STI is the speech transmission index of each listener.
func (m *Model) STI(listeners []Vector, do Do) []float64 {
	sti := make([]float64, len(listeners))
	m.chunks(len(listeners), do, func(from, to int) {
		ticks := make([]tick, len(m.clock.phase))
		for i := from; i < to; i++ {
			sti[i] = m.transmission(listeners[i], ticks).STI
		}
	})
	return sti
}

// clock turns arrival times into ticks and knows the phase of each modulation at
// each tick. Many loudspeakers share a tick, so that the cost of a listener grows
// with loudspeakers alone, and that of the modulations with the size of the space.
type clock struct {
	start   float64 // the earliest time, seconds
	perTick float64 // seconds
	phase   [][ModulationCount]struct{ cos, sin float64 }
}

// tick holds the energies that arrive then.
type tick struct {
	direct, tail row
	used         bool
}

const (
	// tickSeconds is short against the fastest modulation: sharing an arrival out
	// between two ticks changes its modulation at 12.5 Hz by less than 0.3 %.
	tickSeconds = 0.002
	// mostTicks bounds memory where delays or distances are out of all proportion.
	mostTicks = 1 << 14
)

func newClock(sources []source, longestWaySeconds float64) clock {
	if len(sources) == 0 {
		return clock{perTick: tickSeconds, phase: make([][ModulationCount]struct{ cos, sin float64 }, 2)}
	}
	first, last := math.Inf(1), math.Inf(-1)
	for _, s := range sources {
		first, last = min(first, s.delay), max(last, s.delay)
	}
	span := last + longestWaySeconds - first
	c := clock{start: first, perTick: max(tickSeconds, span/mostTicks)}
	c.phase = make([][ModulationCount]struct{ cos, sin float64 }, int(span/c.perTick)+2)
	for f, hz := range ModulationHz() {
		for i := range c.phase {
			c.phase[i][f].sin, c.phase[i][f].cos = math.Sincos(-2 * math.Pi * hz * float64(i) * c.perTick)
		}
	}
	return c
}

// share says between which tick and the next a time lies, and how far from the
// first. Times after the last tick count as that.
func (c *clock) share(seconds float64) (i int, part float64) {
	at := (seconds - c.start) / c.perTick
	i = max(0, min(int(at), len(c.phase)-2))
	return i, max(0, min(1, at-float64(i)))
}

// transmission is Transmission with ticks as scratch, which it leaves empty.
func (m *Model) transmission(listener Vector, ticks []tick) Transmission {
	var direct, reverberant row
	first := math.Inf(1)
	for i := range m.sources {
		var d, r row
		t := m.add(&m.sources[i], listener, &d, &r)
		first = min(first, t)
		for k := range BandCount {
			direct[k] += d[k]
			reverberant[k] += r[k]
		}
		m.clock.put(ticks, t, &d, &r)
	}
	if m.theory == Uniform && len(m.sources) > 0 {
		copy(reverberant[:], m.reverberant[:])
		m.clock.put(ticks, first, &row{}, &reverberant)
	}
	var s phasors
	m.clock.sum(ticks, &s)
	return m.modulated(&s, &direct, &reverberant)
}

// put shares energies out between the two ticks around a time.
func (c *clock) put(ticks []tick, seconds float64, direct, tail *row) {
	i, part := c.share(seconds)
	low, high := &ticks[i], &ticks[i+1]
	low.used, high.used = true, true
	for k := range BandCount {
		low.direct[k] += (1 - part) * direct[k]
		high.direct[k] += part * direct[k]
		low.tail[k] += (1 - part) * tail[k]
		high.tail[k] += part * tail[k]
	}
}

// phasors are sums of energies with the phase of each modulation at their arrival.
type phasors [ModulationCount]struct{ directRe, directIm, tailRe, tailIm row }

// sum adds up the ticks and empties them.
func (c *clock) sum(ticks []tick, s *phasors) {
	for i := range ticks {
		t := &ticks[i]
		if !t.used {
			continue
		}
		for f := range s {
			cos, sin, to := c.phase[i][f].cos, c.phase[i][f].sin, &s[f]
			for k := range BandCount {
				to.directRe[k] += cos * t.direct[k]
				to.directIm[k] += sin * t.direct[k]
				to.tailRe[k] += cos * t.tail[k]
				to.tailIm[k] += sin * t.tail[k]
			}
		}
		*t = tick{}
	}
}

// modulated turns phasors and the energies they are sums of into the index.
func (m *Model) modulated(s *phasors, direct, reverberant *row) Transmission {
	var mtf MTF
	var speech Bands
	for k := range mtf {
		energy := direct[k] + reverberant[k]
		speech[k] = toDB(energy)
		for f, hz := range ModulationHz() {
			to := &s[f]
			mtf[k][f] = modulation(to.directRe[k], to.directIm[k], to.tailRe[k], to.tailIm[k], turns(hz, m.decay[k]), energy)
		}
	}
	return mtf.WithNoise(speech, m.noise).WithHearing(Over(speech, m.noise)).Transmission()
}
