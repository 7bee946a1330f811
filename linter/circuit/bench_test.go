package circuit_test

import (
	"fmt"
	"testing"

	"loudlint/linter/circuit"
)

// drawn is a line of one loudspeaker after the other, 8 m apart.
func drawn(count int, leg circuit.Leg) *circuit.Network {
	n := circuit.New(count + 1)
	at := circuit.Node(0)
	for range count {
		at = n.Leg(at, leg)
		n.Load(at, sixWatts)
	}
	return n
}

// branched is a trunk with a tee every 10 m, at each an attenuator and ten loudspeakers behind it.
func branched(count int, leg circuit.Leg) *circuit.Network {
	n := circuit.New(count + count/5 + 1)
	at := circuit.Node(0)
	for range count / 10 {
		at = n.Leg(at, leg)
		out := n.Attenuator(at, circuit.Attenuator{SettingDB: -6, InsertionDB: 0.5})
		n.Chain(out, 10, leg, sixWatts)
	}
	return n
}

// ring is a drawn line whose cable comes back to the amplifier.
func ring(count int, leg circuit.Leg) *circuit.Network {
	n := drawn(count, leg)
	n.Ring(circuit.Node(count), leg)
	return n
}

// reverseReturn is a drawn line whose return conductor begins at the first loudspeaker.
func reverseReturn(count int, leg circuit.Leg) *circuit.Network {
	n := drawn(count, leg)
	n.ReverseReturn(1, circuit.Node(count), leg)
	return n
}

var networks = []struct {
	name  string
	build func(count int, leg circuit.Leg) *circuit.Network
	leg   circuit.Leg
}{
	{"chain", drawn, circuit.Leg{ROhm: 1e-4}},
	{"chain with L and C", drawn, circuit.Leg{ROhm: 1e-4, LHenry: 1e-9, CFarad: 1e-13}},
	{"branched", branched, circuit.Leg{ROhm: 1e-4}},
	{"ring", ring, circuit.Leg{ROhm: 1e-4}},
	{"reverse return", reverseReturn, circuit.Leg{ROhm: 1e-4}},
}

func BenchmarkSolve(b *testing.B) {
	for _, network := range networks {
		for _, count := range []int{10_000, 1_000_000} {
			b.Run(fmt.Sprintf("%s/%d", network.name, count), func(b *testing.B) {
				n := network.build(count, network.leg)
				var s circuit.Solver
				if _, err := s.Solve(n, 1000, 100); err != nil {
					b.Fatal(err)
				}
				b.ReportAllocs()
				for b.Loop() {
					if _, err := s.Solve(n, 1000, 100); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}

func BenchmarkBuild(b *testing.B) {
	for _, network := range networks {
		b.Run(network.name+"/10000", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if err := network.build(10_000, network.leg).Err(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
