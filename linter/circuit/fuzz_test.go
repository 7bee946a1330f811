package circuit_test

import (
	"encoding/binary"
	"errors"
	"math"
	"math/cmplx"
	"slices"
	"testing"

	"loudlint/linter/circuit"
)

// stream reads a network from bytes; past the end it reads zeros.
type stream struct{ bytes []byte }

func (s *stream) next() int {
	if len(s.bytes) == 0 {
		return 0
	}
	b := s.bytes[0]
	s.bytes = s.bytes[1:]
	return int(b)
}

// anything is any float at all, NaN and infinities too.
func (s *stream) anything() float64 {
	var bits [8]byte
	for i := range bits {
		bits[i] = byte(s.next())
	}
	return math.Float64frombits(binary.LittleEndian.Uint64(bits[:]))
}

// extreme is a figure at or past the bounds of what is accepted.
func (s *stream) extreme() float64 {
	figures := [...]float64{0, 1e-300, 1e-15, 1e-9, 1e-6, 1e-3, 1, 60, 199, 1e3, 1e6, 1e9, 1e12, 1e13, -1, -200}
	return figures[s.next()%len(figures)]
}

// The kinds of tree that treeFrom reads.
const (
	buildable = iota // of parts that could be built
	extremes         // of figures at or past the bounds
	wild             // of any figures at all, on nodes that may not exist
	kinds
)

func treeFrom(s *stream, of int) tree {
	figure := func(unit float64) float64 {
		switch of {
		case wild:
			return s.anything()
		case extremes:
			return s.extreme()
		default:
			return float64(s.next()) * unit
		}
	}
	phase := float64(s.next()) - 128
	tr := tree{hz: 10 * math.Pow(2, float64(s.next()%12)), volts: float64(1 + s.next())}
	if of != buildable {
		tr.hz, tr.volts = figure(1), figure(1)
	}
	curve, err := circuit.NewCurve([]circuit.Point{{Hz: 100, Ohm: figure(4), Degrees: phase}, {Hz: 5000, Ohm: figure(1), Degrees: -phase / 2}})
	if err != nil {
		curve = mustCurve([]circuit.Point{{Hz: 1000, Ohm: 100, Degrees: 30}})
	}
	load := func() circuit.Load {
		switch s.next() % 4 {
		case 0:
			return circuit.Load{Ohm: figure(2), SeriesOhm: figure(0.1)}
		case 1:
			return circuit.Load{Curve: curve, CurveScale: figure(0.1), SeriesOhm: figure(0.1)}
		default:
			return circuit.Load{PowerW: figure(0.5), MarkedVolts: figure(0.5)}
		}
	}
	// Loops are laid when all else is there.
	for len(s.bytes) > 0 && len(tr.edges) < 24 && len(tr.loads) < 40 && len(tr.loops) < 4 {
		op, at := s.next(), s.next()
		node := circuit.Node(at % (len(tr.edges) + 1))
		if of == wild {
			node = circuit.Node(at - 2)
		}
		switch op % 9 {
		case 0, 1, 2:
			tr.edges = append(tr.edges, edge{from: node, leg: circuit.Leg{ROhm: figure(0.05), LHenry: figure(2e-6), CFarad: figure(2e-10)}})
		case 3:
			a := circuit.Attenuator{SettingDB: -figure(0.25), InsertionDB: figure(0.02), Off: op >= 128}
			tr.edges = append(tr.edges, edge{from: node, isAttenuator: true, attenuator: a})
		case 4:
			tr.loads = append(tr.loads, hung{at: node, parts: []circuit.Load{load(), load()}})
		case 5:
			l := bent{far: node, reverse: op >= 128, leg: circuit.Leg{ROhm: figure(0.05), LHenry: figure(2e-6), CFarad: figure(2e-10)}}
			if first := s.next(); l.reverse && of == wild {
				l.first = circuit.Node(first - 2)
			} else if l.reverse && node > 0 {
				path := tr.path(node)
				l.first = path[first%len(path)]
			}
			tr.loops = append(tr.loops, l)
		default:
			tr.loads = append(tr.loads, hung{at: node, parts: []circuit.Load{load()}})
		}
	}
	return tr
}

// ringOfNothing tells of a ring without any impedance, round which any current at all may flow: the solver takes none.
func (tr tree) ringOfNothing() bool {
	return slices.ContainsFunc(tr.loops, func(l bent) bool {
		around := complex(l.leg.ROhm, l.leg.LHenry)
		for _, node := range tr.path(l.far) {
			around += complex(tr.edges[node-1].leg.ROhm, tr.edges[node-1].leg.LHenry)
		}
		return !l.reverse && around == 0
	})
}

func finite(t *testing.T, what string, values ...complex128) {
	t.Helper()
	for _, v := range values {
		if cmplx.IsNaN(v) || cmplx.IsInf(v) {
			t.Errorf("%s: %v", what, v)
		}
	}
}

// FuzzSolve: any network, with rings and reverse returns, is either refused with an *Error or solved with finite figures; one that could be built agrees
// with the dense solution.
func FuzzSolve(f *testing.F) {
	f.Add([]byte{})
	f.Add([]byte{0, 128, 6, 99, 10, 10, 0, 0, 20, 5, 5, 5, 1, 2, 40, 10})
	f.Add([]byte("0aZ3kk0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.,-+*#"))
	f.Add(append([]byte{1}, "seeds need not mean anything, only reach every part: 3 attenuators, 4 strings, 5 loads"...))
	f.Add([]byte{0, 200, 7, 100, 30, 60, 131, 0, 40, 20, 5, 1, 2, 50, 60, 4, 1, 1, 10, 5, 0, 20, 9, 0, 1, 30, 20, 10, 5, 2, 2, 8, 90})
	// A ring, and a reverse return, of three loads each.
	ring := []byte{0, 128, 6, 99, 50, 60, 0, 0, 40, 0, 0, 6, 1, 2, 40, 200, 0, 1, 30, 9, 9, 6, 2, 2, 60, 200, 0, 2, 20, 1, 1, 6, 3, 3, 80, 200}
	f.Add(append(slices.Clone(ring), 5, 3, 25, 3, 3, 0))
	f.Add(append(slices.Clone(ring), 131, 3, 25, 3, 3, 0))
	f.Fuzz(func(t *testing.T, data []byte) {
		s := &stream{data}
		of := s.next() % kinds
		tr := treeFrom(s, of)
		n := tr.build()
		sol, err := new(circuit.Solver).Solve(n, tr.hz, tr.volts)
		if err != nil {
			var problem *circuit.Error
			if !errors.As(err, &problem) || problem.Problem == "" {
				t.Fatalf("error without a problem: %v", err)
			}
			return
		}
		finite(t, "source", sol.InputAdmittance, sol.SourceAmps)
		for _, watts := range []float64{sol.SourceWatts, sol.TotalLoadWatts, sol.SeriesWatts, sol.CableWatts, sol.AttenuatorWatts} {
			finite(t, "watts", complex(watts, 0))
		}
		if z, ok := sol.InputImpedance(); ok {
			finite(t, "input impedance", z)
		}
		for node := range circuit.Node(n.Nodes()) {
			lossDB, _ := sol.LossDB(node)
			cableDB, _ := sol.CableLossDB(node)
			finite(t, "node", sol.Volts(node), sol.LegAmps(node), sol.ReturnAmps(node), complex(sol.LossWatts(node), 0), complex(lossDB, cableDB))
		}
		for id := range circuit.LoadID(n.Loads()) {
			finite(t, "load", sol.LoadVolts(id), sol.LoadAmps(id), complex(sol.LoadWatts(id), 0))
		}
		for id := range circuit.LoopID(len(tr.loops)) {
			finite(t, "loop", sol.LoopAmps(id), complex(sol.LoopWatts(id), 0))
		}
		if of != buildable {
			return
		}
		x, ok := tr.dense()
		if !ok && tr.ringOfNothing() {
			return
		}
		if !ok {
			t.Fatalf("the dense system is singular, the solver found an answer: %+v", tr)
		}
		highest := tr.volts
		for _, v := range x.volts {
			highest = max(highest, cmplx.Abs(v))
		}
		// A sharp resonance multiplies rounding as it multiplies volts.
		tolerance := 1e-9 * highest / tr.volts
		for node, want := range x.volts {
			if d := off(sol.Volts(circuit.Node(node)), want, highest*1e-3); d > tolerance {
				t.Errorf("node %d: %v V, dense %v V, off by %g", node, sol.Volts(circuit.Node(node)), want, d)
			}
		}
	})
}
