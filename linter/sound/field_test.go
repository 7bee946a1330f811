package sound

import (
	"math"
	"math/rand/v2"
	"testing"
)

// scene is a made-up space with loudspeakers of all kinds, from a seed.
func scene(seed uint64, loudspeakers int) (Space, []Loudspeaker, []Vector) {
	r := rand.New(rand.NewPCG(seed, 1))
	length, width, height := 10+40*r.Float64(), 8+30*r.Float64(), 4+6*r.Float64()
	space := Space{
		Planes:  []Plane{{Rectangle(length, width), 1.2}},
		Room:    &Room{VolumeM3: length * width * height, SurfaceM2: 2 * (length*width + height*(length+width))},
		Air:     Air{Celsius: 30 * r.Float64(), HumidityPercent: 20 + 60*r.Float64()},
		NoiseDB: NoiseDB(40 + 30*r.Float64()),
	}
	if r.IntN(2) == 0 {
		space.Room.Theory = Uniform
	}
	for k := range space.Room.Reverberation {
		space.Room.Reverberation[k] = 0.5 + 2*r.Float64()
	}
	kinds := []*Directivity{
		nil,
		NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, HalfSpace: true}),
		NewDirectivity(Coverage{HorizontalDegrees: 100, VerticalDegrees: 50, FromHz: 2000}),
		NewDirectivity(Coverage{HorizontalDegrees: 60, VerticalDegrees: 40, Q: Bands{2, 3, 5, 9, 15, 20, 30}}),
	}
	all := make([]Loudspeaker, loudspeakers)
	for i := range all {
		all[i] = Loudspeaker{
			At:           Vector{length * r.Float64(), width * r.Float64(), 2 + (height-2)*r.Float64()},
			Aim:          Aim(360*r.Float64(), 90*r.Float64()),
			RollDegrees:  180 * r.Float64(),
			OnAxisDB:     OnAxisDB(Flat(85+20*r.Float64()), 1+20*r.Float64()),
			Directivity:  kinds[r.IntN(len(kinds))],
			DelaySeconds: 0.05 * r.Float64(),
		}
	}
	return space, all, space.Planes[0].Grid(length / 7)
}

// bruteHeard adds everything up as the formulae are written: no table, no frame, no
// shared step.
func bruteHeard(space Space, loudspeakers []Loudspeaker, at Vector) (direct, reverberant [BandCount]float64, seconds []float64, directs, tails [][BandCount]float64) {
	c := space.Air.SpeedMetresPerSecond()
	alpha := space.Air.AbsorptionDBPerMetre()
	for _, l := range loudspeakers {
		dx, dy, dz := at.X-l.At.X, at.Y-l.At.Y, at.Z-l.At.Z
		r := math.Sqrt(dx*dx + dy*dy + dz*dz)
		var d, rev [BandCount]float64
		for k := range BandCount {
			intensity := math.Pow(10, l.OnAxisDB[k]/10)
			off := bruteRatio(l, Vector{dx, dy, dz}, k)
			d[k] = intensity * off * math.Pow(10, -alpha[k]*r/10) / math.Max(r*r, 1.0/16)
			if room := space.Room; room != nil {
				power := 4 * math.Pi * intensity / l.Directivity.Q()[k]
				a := 0.161 * room.VolumeM3 / room.Reverberation[k]
				if room.Theory == Uniform {
					rev[k] = power * 4 / (a / (1 - a/room.SurfaceM2))
				} else {
					rev[k] = power * 4 / a * math.Pow(10, -6*r/c/room.Reverberation[k])
				}
			}
			direct[k] += d[k]
			reverberant[k] += rev[k]
		}
		seconds, directs, tails = append(seconds, l.DelaySeconds+r/c), append(directs, d), append(tails, rev)
	}
	return direct, reverberant, seconds, directs, tails
}

// bruteRatio is Γ from the angles themselves: azimuth by Atan2, the axis by spherical
// co-ordinates instead of a frame of vectors.
func bruteRatio(l Loudspeaker, to Vector, k int) float64 {
	d := l.Directivity
	if d == nil {
		return 1
	}
	aim := l.Aim
	// Turn the scene so that the axis lies along x: first its bearing, then its elevation.
	bearing := math.Atan2(aim.Y, aim.X)
	elevation := math.Atan2(aim.Z, math.Hypot(aim.X, aim.Y))
	x := to.X*math.Cos(bearing) + to.Y*math.Sin(bearing)
	left := -to.X*math.Sin(bearing) + to.Y*math.Cos(bearing)
	along := x*math.Cos(elevation) + to.Z*math.Sin(elevation)
	up := -x*math.Sin(elevation) + to.Z*math.Cos(elevation)
	if d.halfSpace && along < 0 {
		return 0
	}
	theta := math.Atan2(math.Hypot(left, up), along)
	phi := math.Atan2(up, -left) - l.RollDegrees*math.Pi/180
	h, v := d.horizontal/d.narrow[k], d.vertical/d.narrow[k]
	uu := math.Pow(theta*math.Cos(phi)/h, 2) + math.Pow(theta*math.Sin(phi)/v, 2)
	b := math.Pow(10, -2.5)
	return (1-b)*math.Pow((math.Pow(10, -0.6)-b)/(1-b), uu) + b
}

func TestFieldAgainstPlainSum(t *testing.T) {
	t.Parallel()
	for seed := range uint64(6) {
		space, loudspeakers, listeners := scene(seed, 23)
		if seed == 5 {
			space.Room = nil
		}
		for i, heard := range NewModel(space, loudspeakers).Field(listeners, nil) {
			direct, reverberant, _, _, _ := bruteHeard(space, loudspeakers, listeners[i])
			for k := range BandCount {
				within(t, "direct", heard.Direct[k], 10*math.Log10(direct[k]), 0.003)
				if space.Room != nil {
					within(t, "reverberant", heard.Reverberant[k], 10*math.Log10(reverberant[k]), 0.003)
				}
			}
		}
	}
}

// Another formulation of the speech transmission index: each octave's squared
// impulse response written out in steps of 0.2 ms, direct sounds as spikes and
// tails as decays, and its Fourier transform taken by summing, over the energy.
func TestTransmissionAgainstImpulseResponse(t *testing.T) {
	t.Parallel()
	for seed := range uint64(4) {
		space, loudspeakers, listeners := scene(seed+10, 5)
		if seed == 3 {
			space.Room = nil
		}
		at := listeners[len(listeners)/3]
		got := NewModel(space, loudspeakers).Transmission(at)
		want := bruteTransmission(space, loudspeakers, at)
		within(t, "STI", got.STI, want, 0.001)
	}
}

func bruteTransmission(space Space, loudspeakers []Loudspeaker, at Vector) float64 {
	const step = 2e-4
	direct, reverberant, seconds, directs, tails := bruteHeard(space, loudspeakers, at)
	first := math.Inf(1)
	for _, s := range seconds {
		first = math.Min(first, s)
	}
	thresholds := [BandCount]float64{46, 27, 12, 6.5, 7.5, 8, 12}
	alpha := [BandCount]float64{0.085, 0.127, 0.230, 0.233, 0.309, 0.224, 0.173}
	beta := [BandCount]float64{0.085, 0.078, 0.065, 0.011, 0.047, 0.095}
	sti, below, belowTotal := 0.0, 0.0, 0.0
	for k := range BandCount {
		decay := 0.0
		if space.Room != nil {
			decay = space.Room.Reverberation[k]
		}
		response := make([]float64, int((decay*1.6+0.5)/step))
		for i, s := range seconds {
			response[int(math.Round((s-first)/step))] += directs[i][k]
			start := s
			if space.Room != nil && space.Room.Theory == Uniform {
				start = first
			}
			// The tail's energy, shared out over the steps of a decay of 60 dB in T.
			rest := 1.0
			for j := int(math.Round((start - first) / step)); j < len(response) && decay > 0; j++ {
				next := rest * math.Pow(10, -6*step/decay)
				response[j] += tails[i][k] * (rest - next)
				rest = next
			}
		}
		speech := direct[k] + reverberant[k]
		noise := math.Pow(10, space.NoiseDB[k]/10)
		total := speech + noise
		masking := 0.0
		if k > 0 {
			level := 10 * math.Log10(belowTotal)
			a := -10.0
			switch {
			case level < 63:
				a = 0.5*level - 65
			case level < 67:
				a = 1.8*level - 146.9
			case level < 100:
				a = 0.5*level - 59.8
			}
			masking = belowTotal * math.Pow(10, a/10)
		}
		index := 0.0
		for _, hz := range []float64{0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5} {
			re, im := 0.0, 0.0
			for j, energy := range response {
				if energy == 0 {
					continue
				}
				sin, cos := math.Sincos(2 * math.Pi * hz * float64(j) * step)
				re += energy * cos
				im += energy * sin
			}
			m := math.Hypot(re, im) / speech * speech / (total + masking + math.Pow(10, thresholds[k]/10))
			snr := math.Max(-15, math.Min(15, 10*math.Log10(m/(1-m))))
			index += (snr + 15) / 30 / 14
		}
		sti += alpha[k] * index
		if k > 0 {
			sti -= beta[k-1] * math.Sqrt(index*below)
		}
		below, belowTotal = index, total
	}
	return sti
}

func TestDoublingPowerIsThreeDecibels(t *testing.T) {
	t.Parallel()
	space, loudspeakers, listeners := scene(20, 12)
	before := NewModel(space, loudspeakers).Field(listeners, nil)
	for i := range loudspeakers {
		loudspeakers[i].OnAxisDB = loudspeakers[i].OnAxisDB.Shift(10 * math.Log10(2))
	}
	for i, after := range NewModel(space, loudspeakers).Field(listeners, nil) {
		within(t, "change", after.Total().DBA()-before[i].Total().DBA(), 3.0103, 1e-4)
	}
}

// Loudspeaker and listener of no direction may change places.
func TestReciprocity(t *testing.T) {
	t.Parallel()
	space, _, listeners := scene(21, 1)
	space.Planes[0].EarZ = 0
	a, b := Vector{3, 4, 5}, listeners[len(listeners)-1]
	there := NewModel(space, []Loudspeaker{{At: a, OnAxisDB: SpeechDB(90)}}).Heard(b)
	back := NewModel(space, []Loudspeaker{{At: b, OnAxisDB: SpeechDB(90)}}).Heard(a)
	for k := range BandCount {
		within(t, "direct", there.Direct[k], back.Direct[k], 1e-3)
		within(t, "reverberant", there.Reverberant[k], back.Reverberant[k], 1e-3)
	}
}

func TestInverseSquare(t *testing.T) {
	t.Parallel()
	d := NewDirectivity(Coverage{HorizontalDegrees: 80, VerticalDegrees: 50})
	m := NewModel(Space{}, []Loudspeaker{{Aim: Vector{X: 1}, OnAxisDB: Flat(100), Directivity: d}})
	way := Vector{0.8, 0.3, -0.2}
	for _, times := range []float64{1, 5, 40} {
		near, far := m.Heard(way.times(times)), m.Heard(way.times(2*times))
		within(t, "loss of a doubling", near.Direct[4]-far.Direct[4], 6.0206, 1e-4)
	}
	// Nearer than leastDistance nothing grows any more.
	within(t, "in the loudspeaker", m.Heard(Vector{}).Direct[4], 100-20*math.Log10(leastDistance), 1e-9)
}

func TestMoreLoudspeakersAreLouder(t *testing.T) {
	t.Parallel()
	space, loudspeakers, listeners := scene(22, 16)
	last := NewModel(space, loudspeakers[:1]).Field(listeners, nil)
	for n := 2; n <= len(loudspeakers); n++ {
		field := NewModel(space, loudspeakers[:n]).Field(listeners, nil)
		for i := range field {
			if field[i].Total().DBA() < last[i].Total().DBA() {
				t.Fatalf("loudspeaker %d makes listener %d hear less", n, i)
			}
		}
		last = field
	}
}

// Two of half the power in one place are one of the whole; and order is nothing.
func TestSplittingAndOrderChangeNothing(t *testing.T) {
	t.Parallel()
	space, loudspeakers, listeners := scene(23, 9)
	var split []Loudspeaker
	for i := range loudspeakers {
		half := loudspeakers[len(loudspeakers)-1-i]
		half.OnAxisDB = half.OnAxisDB.Shift(-10 * math.Log10(2))
		split = append(split, half, half)
	}
	one, two := NewModel(space, loudspeakers), NewModel(space, split)
	for _, at := range listeners {
		within(t, "level", two.Heard(at).Total().DBA(), one.Heard(at).Total().DBA(), 1e-9)
		within(t, "STI", two.Transmission(at).STI, one.Transmission(at).STI, 1e-9)
	}
}

// Turning and moving everything together is nothing either.
func TestMovingTheSceneChangesNothing(t *testing.T) {
	t.Parallel()
	space, loudspeakers, listeners := scene(24, 9)
	sin, cos := math.Sincos(0.7)
	turn := func(v Vector) Vector { return Vector{v.X*cos - v.Y*sin, v.X*sin + v.Y*cos, v.Z} }
	shift := Vector{100, -40, 7}
	moved := space
	moved.Planes = []Plane{{EarZ: space.Planes[0].EarZ + shift.Z}}
	for _, p := range space.Planes[0].Outline {
		v := turn(Vector{p.X, p.Y, 0}).plus(shift)
		moved.Planes[0].Outline = append(moved.Planes[0].Outline, Point{v.X, v.Y})
	}
	others := make([]Loudspeaker, len(loudspeakers))
	for i, l := range loudspeakers {
		l.At, l.Aim = turn(l.At).plus(shift), turn(l.Aim)
		others[i] = l
	}
	one, two := NewModel(space, loudspeakers), NewModel(moved, others)
	for _, at := range listeners {
		within(t, "level", two.Heard(turn(at).plus(shift)).Total().DBA(), one.Heard(at).Total().DBA(), 2e-3)
	}
}

// What passes through a sphere around a loudspeaker is the power its reverberant
// field is reckoned from.
func TestPowerIsWhatLeaves(t *testing.T) {
	t.Parallel()
	d := NewDirectivity(Coverage{HorizontalDegrees: 110, VerticalDegrees: 60})
	room := Room{VolumeM3: 500, Reverberation: Flat(1), Theory: Uniform}
	m := NewModel(Space{Room: &room}, []Loudspeaker{{Aim: Vector{1, 2, -1}, OnAxisDB: Flat(90), Directivity: d}})
	const radius = 5.0
	// sphereQ is 4π over the integral, so that the integral of intensity is 4π/Q·r².
	for _, k := range []int{1, 4} {
		passing := 4 * math.Pi / sphereQ(func(to Vector) float64 { return fromDB(m.Heard(to.times(radius)).Direct[k]) }) * radius * radius
		power := fromDB(m.Heard(Vector{}).Reverberant[k]) * room.AbsorptionM2()[k] / 4
		within(t, "power", passing/power, 1, 0.005)
	}
}

func TestResultsDoNotDependOnWorkers(t *testing.T) {
	t.Parallel()
	space, loudspeakers, _ := scene(25, 40)
	alone := SurveySpace(space, loudspeakers, SurveyOptions{Transmission: true, SpacingMetres: 1.5})
	for _, n := range []int{2, 3, 7} {
		together := SurveySpace(space, loudspeakers, SurveyOptions{Transmission: true, SpacingMetres: 1.5, Do: workers(n)})
		if len(alone.LevelDBA) != len(together.LevelDBA) {
			t.Fatal("another grid")
		}
		for i := range alone.LevelDBA {
			if alone.LevelDBA[i] != together.LevelDBA[i] || alone.STI[i] != together.STI[i] || alone.Heard[i] != together.Heard[i] {
				t.Fatalf("listener %d differs with %d workers", i, n)
			}
		}
	}
}

func TestInnerLoopAllocatesNothing(t *testing.T) {
	space, loudspeakers, listeners := scene(26, 30)
	m := NewModel(space, loudspeakers)
	if n := testing.AllocsPerRun(20, func() { m.Heard(listeners[3]) }); n != 0 {
		t.Errorf("a listener's level costs %g allocations", n)
	}
	ticks := make([]tick, len(m.clock.phase))
	if n := testing.AllocsPerRun(20, func() { m.transmission(listeners[3], ticks) }); n != 0 {
		t.Errorf("a listener's index costs %g allocations", n)
	}
}

// Whatever finite figures come in, finite ones come out (or silence, -Inf).
func FuzzModel(f *testing.F) {
	f.Add(uint64(1), 1.0, 20.0, 50.0, 90.0, 60.0)
	f.Add(uint64(2), 0.0, -20.0, 0.0, 0.0, 720.0)
	f.Add(uint64(3), 1e-9, 50.0, 100.0, 360.0, 1e-3)
	f.Add(uint64(4), 1e4, 20.0, 1.0, 200.0, 1e9)
	f.Fuzz(func(t *testing.T, seed uint64, reverberation, celsius, humidity, degrees, metres float64) {
		ok := reverberation >= 0 && reverberation < 1e6 && celsius > -100 && celsius < 200 && humidity >= 0 && humidity <= 100 &&
			degrees >= 0 && degrees <= 1e4 && metres > 0 && metres <= 1e9
		if !ok {
			t.Skip("outside what quantities let through")
		}
		space, loudspeakers, listeners := scene(seed, 3)
		space.Room.Reverberation = Flat(reverberation)
		space.Air = Air{Celsius: celsius, HumidityPercent: humidity}
		loudspeakers[0].Directivity = NewDirectivity(Coverage{HorizontalDegrees: degrees, VerticalDegrees: metres})
		loudspeakers[1].At = listeners[0]
		loudspeakers[2].At.X += metres
		loudspeakers[2].DelaySeconds = metres
		m := NewModel(space, loudspeakers)
		for _, at := range listeners[:min(5, len(listeners))] {
			for _, level := range m.Heard(at).Total() {
				if math.IsNaN(level) || math.IsInf(level, 1) {
					t.Fatalf("level %g", level)
				}
			}
			if sti := m.Transmission(at).STI; !(sti >= 0 && sti <= 1) {
				t.Fatalf("STI %g", sti)
			}
			for _, a := range m.Arrivals(at, nil) {
				if math.IsNaN(a.LevelDBA) || math.IsNaN(a.Seconds) {
					t.Fatalf("arrival %+v", a)
				}
			}
		}
	})
}
