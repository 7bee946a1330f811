package sound

import (
	"fmt"
	"runtime"
	"sync"
	"testing"
)

// hall is a space of this length and 60 m width with ceiling loudspeakers in rows.
func hall(loudspeakers int) (Space, []Loudspeaker) {
	const width, apart = 60.0, 5.0
	perRow := int(width / apart)
	length := float64((loudspeakers+perRow-1)/perRow) * apart
	space := Space{
		Planes:  []Plane{{Rectangle(length, width), 1.2}},
		Room:    &Room{VolumeM3: length * width * 6, SurfaceM2: 2*length*width + 12*(length+width), Reverberation: Flat(1.5)},
		Air:     OrdinaryAir(),
		NoiseDB: NoiseDB(55),
	}
	directivity := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, HalfSpace: true})
	all := make([]Loudspeaker, loudspeakers)
	for i := range all {
		all[i] = Loudspeaker{
			At:          Vector{(float64(i/perRow) + 0.5) * apart, (float64(i%perRow) + 0.5) * apart, 6},
			OnAxisDB:    OnAxisDB(Flat(91), 6),
			Directivity: directivity,
		}
	}
	return space, all
}

// workers is a Do on n goroutines.
func workers(n int) Do {
	return func(count int, work func(i int)) {
		var wait sync.WaitGroup
		for w := range n {
			wait.Go(func() {
				for i := w; i < count; i += n {
					work(i)
				}
			})
		}
		wait.Wait()
	}
}

func BenchmarkField(b *testing.B) {
	for _, size := range []struct{ loudspeakers, listeners int }{{100, 1_000}, {1_000, 1_000}, {1_000, 10_000}} {
		b.Run(fmt.Sprintf("%dx%d", size.loudspeakers, size.listeners), func(b *testing.B) {
			space, loudspeakers := hall(size.loudspeakers)
			listeners := gridOf(space.Planes[0], size.listeners)
			b.ReportAllocs()
			for b.Loop() {
				NewModel(space, loudspeakers).Field(listeners, workers(runtime.GOMAXPROCS(0)))
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(len(listeners)*len(loudspeakers)), "ns/pair")
		})
	}
}

// What a space costs before anybody listens, and a kind of loudspeaker before it is used.
func BenchmarkNewModel(b *testing.B) {
	space, loudspeakers := hall(24)
	for b.Loop() {
		NewModel(space, loudspeakers)
	}
}

func BenchmarkNewDirectivity(b *testing.B) {
	for name, c := range map[string]Coverage{
		"angles": {HorizontalDegrees: 90, VerticalDegrees: 60},
		"Q":      {HorizontalDegrees: 90, VerticalDegrees: 60, Q: Bands{2, 3, 4, 6, 9, 12, 15}},
	} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				NewDirectivity(c)
			}
		})
	}
}

func BenchmarkTransmission(b *testing.B) {
	space, loudspeakers := hall(1000)
	model := NewModel(space, loudspeakers)
	listeners := gridOf(space.Planes[0], 200)
	b.ReportAllocs()
	for b.Loop() {
		model.STI(listeners, nil)
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(len(listeners)*len(loudspeakers)), "ns/pair")
}

// gridOf is at least this many listeners of a plane.
func gridOf(plane Plane, atLeast int) []Vector {
	spacing := 10.0
	for {
		if listeners := plane.Grid(spacing); len(listeners) >= atLeast {
			return listeners[:atLeast]
		}
		spacing *= 0.95
	}
}
