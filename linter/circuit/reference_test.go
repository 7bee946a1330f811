package circuit_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"loudlint/linter/circuit"
	"loudlint/linter/conductor"
)

// reference is testdata/reference/lines.json, which explains itself and names the source of every example.
type reference struct {
	Examples       []example
	LongestLengths struct {
		ID, Source  string
		SourceVolts float64
		MM2         []float64
		Rows        []struct {
			Watts  float64
			Metres []float64
		}
		DropPercent map[string][2]float64
	}
	Rule struct{ ID, Source string }
}

type example struct {
	ID, Title, Source, Checked string
	SourceVolts                float64
	Nodes                      []struct {
		Node, From                                  string
		LoopOhm, Metres, OhmPerKM, Resistivity, MM2 float64
		Class, AWG                                  int
		Stranded                                    bool
		Celsius                                     float64
		Loads                                       []struct {
			Count                         int
			Watts, MarkedVolts, Ohm, Amps float64
		}
	}
	Expect []struct {
		Figure, Node    string
		Want, Tolerance float64
	}
}

func readReference(t *testing.T) reference {
	t.Helper()
	text, err := os.ReadFile("../../testdata/reference/lines.json")
	if err != nil {
		t.Fatal(err)
	}
	var r reference
	if err := json.Unmarshal(text, &r); err != nil {
		t.Fatal(err)
	}
	return r
}

// TestPublishedLines holds test vectors TV1 to TV7, worked examples W1 and W3 to W11, a tap sum and three losses; W2 and W12 have tests of their
// own below.
func TestPublishedLines(t *testing.T) {
	t.Parallel()
	seen := map[string]bool{}
	for _, e := range readReference(t).Examples {
		id, _, _ := strings.Cut(e.ID, " ")
		seen[strings.TrimSuffix(id, ",")] = true
		t.Run(e.ID, func(t *testing.T) {
			t.Parallel()
			if e.Source == "" || e.Checked == "" {
				t.Error("no source")
			}
			solved := e.solve(t)
			for _, want := range e.Expect {
				got := solved.figure(t, want.Figure, want.Node)
				if !(math.Abs(got-want.Want) <= want.Tolerance*math.Abs(want.Want)) {
					t.Errorf("%s %s: got %.6g, %s has %.6g", want.Figure, want.Node, got, e.Source, want.Want)
				}
			}
		})
	}
	for id := range strings.FieldsSeq("TV1 TV2 TV3 TV4 TV5 TV6 TV7 W1 W3 W4 W5 W6 W7 W8 W9 W10 W11 HEADROOM1 LOSS1 LOSS2 LOSS3") {
		if !seen[id] {
			t.Errorf("example %s is missing", id)
		}
	}
}

// solvedExample is an example's solution with its names.
type solvedExample struct {
	solution *circuit.Solution
	nodes    map[string]circuit.Node
	legOhm   map[string]float64
	loads    map[string][]circuit.LoadID
}

// solve builds and solves an example. Loads of constant current, which the solver does not have, are found by setting each
// to the resistance that draws its current at the voltage found before, until nothing changes.
func (e example) solve(t *testing.T) solvedExample {
	t.Helper()
	voltsAt := map[string]float64{}
	for range 200 {
		s := e.solveAt(t, voltsAt)
		change := 0.0
		for name, node := range s.nodes {
			v := real(s.solution.Volts(node))
			change = max(change, math.Abs(v-voltsAt[name]))
			voltsAt[name] = v
		}
		if change < 1e-12*e.SourceVolts {
			return s
		}
	}
	t.Fatal("loads of constant current do not settle")
	return solvedExample{}
}

func (e example) solveAt(t *testing.T, voltsAt map[string]float64) solvedExample {
	t.Helper()
	n := circuit.New(len(e.Nodes))
	s := solvedExample{
		nodes:  map[string]circuit.Node{"amplifier": 0},
		legOhm: map[string]float64{},
		loads:  map[string][]circuit.LoadID{},
	}
	for _, part := range e.Nodes {
		if part.Node != "amplifier" {
			from, ok := s.nodes[part.From]
			if !ok {
				t.Fatalf("node %q hangs from %q, which is not there", part.Node, part.From)
			}
			ohm := part.LoopOhm
			switch {
			case part.OhmPerKM > 0:
				ohm = conductor.LoopOhm(part.OhmPerKM/1000, part.Metres)
			case part.Resistivity > 0:
				ohm = conductor.LoopOhm(part.Resistivity/part.MM2, part.Metres)
			case part.AWG > 0:
				c := conductor.Conductor{IsAWG: true, AWG: part.AWG, Construction: conductor.Solid}
				if part.Stranded {
					c.Construction = conductor.Stranded
				}
				ohm = loop(t, c, part.Celsius, part.Metres)
			case part.Class > 0:
				ohm = loop(t, conductor.Conductor{AreaMM2: part.MM2, Class: part.Class}, part.Celsius, part.Metres)
			}
			s.nodes[part.Node] = n.Leg(from, circuit.Leg{ROhm: ohm})
			s.legOhm[part.Node] = ohm
		}
		for _, l := range part.Loads {
			load := circuit.Load{PowerW: l.Watts, MarkedVolts: l.MarkedVolts, Ohm: l.Ohm}
			if l.Amps > 0 {
				volts := voltsAt[part.Node]
				if volts == 0 {
					volts = e.SourceVolts
				}
				load = circuit.Load{Ohm: volts / l.Amps}
			}
			for range max(l.Count, 1) {
				s.loads[part.Node] = append(s.loads[part.Node], n.Load(s.nodes[part.Node], load))
			}
		}
	}
	solution, err := new(circuit.Solver).Solve(n, 1000, e.SourceVolts)
	if err != nil {
		t.Fatal(err)
	}
	s.solution = solution
	return s
}

func loop(t *testing.T, c conductor.Conductor, celsius, metres float64) float64 {
	t.Helper()
	r, err := conductor.PerMetre(c, celsius)
	if err != nil {
		t.Fatal(err)
	}
	return conductor.LoopOhm(r.OhmPerMetre, metres)
}

func (s solvedExample) figure(t *testing.T, name, node string) float64 {
	t.Helper()
	sol := s.solution
	at, known := s.nodes[node]
	if node != "" && !known {
		t.Fatalf("no node %q", node)
	}
	switch name {
	case "inputOhm":
		z, _ := sol.InputImpedance()
		return real(z)
	case "sourceAmps":
		return real(sol.SourceAmps)
	case "sourceWatts":
		return sol.SourceWatts
	case "loadWatts":
		return sol.TotalLoadWatts
	case "cableWatts":
		return sol.CableWatts
	case "shareDB":
		return 10 * math.Log10(sol.SourceWatts/sol.TotalLoadWatts)
	case "legOhm":
		return s.legOhm[node]
	case "volts":
		return real(sol.Volts(at))
	case "lossDB":
		lossDB, _ := sol.LossDB(at)
		return lossDB
	case "dropPercent":
		return 100 * (1 - real(sol.Volts(at))/sol.SourceVolts)
	case "watts":
		sum := 0.0
		for _, id := range s.loads[node] {
			sum += sol.LoadWatts(id)
		}
		return sum
	}
	t.Fatalf("no figure %q", name)
	return 0
}

// W2: a published table of longest lengths. All its cells rest on one voltage drop.
func TestPublishedLongestLengths(t *testing.T) {
	t.Parallel()
	table := readReference(t).LongestLengths
	bases := map[string]func(mm2 float64) float64{
		"resistivity 0.0175": func(mm2 float64) float64 { return 0.0175 / mm2 },
		"class 2":            func(mm2 float64) float64 { return loop(t, conductor.Conductor{AreaMM2: mm2, Class: 2}, 20, 0.5) },
		"class 5":            func(mm2 float64) float64 { return loop(t, conductor.Conductor{AreaMM2: mm2, Class: 5}, 20, 0.5) },
	}
	cells := 0
	for name, span := range table.DropPercent {
		for _, row := range table.Rows {
			for i, metres := range row.Metres {
				n := circuit.New(2)
				end := n.Leg(0, circuit.Leg{ROhm: conductor.LoopOhm(bases[name](table.MM2[i]), metres)})
				n.Load(end, circuit.Load{PowerW: row.Watts, MarkedVolts: table.SourceVolts})
				drop := 100 * (1 - real(solve(t, n, 1000, table.SourceVolts).Volts(end))/table.SourceVolts)
				if drop < span[0]-0.006 || drop > span[1]+0.006 {
					t.Errorf("%s: %g W, %g mm², %g m by %s: drop %.3f %%, want %g to %g %%",
						table.ID, row.Watts, table.MM2[i], metres, name, drop, span[0], span[1])
				}
				cells++
			}
		}
	}
	if cells != 3*24 {
		t.Errorf("%d cells of the table seen", cells)
	}
}

// W12: the voltage drop at the n-th node is the sum, over the sections before it, of the current of all loads beyond times
// the section's resistance ("Voltage Drop Calculation" course page).
func TestDropIsSumOfSections(t *testing.T) {
	t.Parallel()
	if rule := readReference(t).Rule; rule.ID != "W12" {
		t.Errorf("rule %q", rule.ID)
	}
	n := circuit.New(21)
	type section struct {
		ohm  float64
		load circuit.LoadID
	}
	var sections []section
	at := circuit.Node(0)
	for i := range 20 {
		ohm := 0.05 * float64(1+i%7)
		at = n.Leg(at, circuit.Leg{ROhm: ohm})
		sections = append(sections, section{ohm, n.Load(at, circuit.Load{PowerW: float64(1 + i%5), MarkedVolts: 100})})
	}
	sol := solve(t, n, 1000, 100)
	drop := 0.0
	for i, s := range sections {
		beyond := 0.0
		for _, later := range sections[i:] {
			beyond += real(sol.LoadAmps(later.load))
		}
		drop += beyond * s.ohm
		approx(t, fmt.Sprintf("drop at node %d", i+1), 100-real(sol.Volts(circuit.Node(i+1))), drop)
	}
}

// TV7 and W1: the smallest area for a voltage drop of n per cent with all load at the end, A = 2ρ·(100 − n)·L·P/(n·V²), and
// the next size of the trade.
func TestSmallestArea(t *testing.T) {
	t.Parallel()
	const dropPercent, metres, watts, volts, resistivity = 10, 300, 100, 100, 0.0175
	areaMM2 := 2 * resistivity * (100 - dropPercent) * metres * watts / (dropPercent * volts * volts)
	approx(t, "area", areaMM2, 0.945)
	next, ok := conductor.NextLarger(conductor.Conductor{AreaMM2: areaMM2})
	if !ok || next.AreaMM2 != 1 {
		t.Errorf("next size %g mm²", next.AreaMM2)
	}
}

// What insertion loss takes: a load has so many times the power without it, 0.5, 1, 1.5, 2 and 2.5 dB (10^(dB/10), derived;
// the one-page note "Transformer Insertion Losses" prints the first three so). Ten loads of 7.06 W, 70.6 W, behind 1.5 dB
// are left with 5 W each (the note's example).
func TestPublishedInsertionLoss(t *testing.T) {
	t.Parallel()
	arriving := func(lossDB float64, l circuit.Load) float64 {
		n := circuit.New(11)
		for range 10 {
			n.Load(n.Attenuator(0, circuit.Attenuator{InsertionDB: lossDB}), l)
		}
		return solve(t, n, 1000, 100).TotalLoadWatts
	}
	for lossDB, want := range map[float64]float64{0.5: 1.122, 1: 1.259, 1.5: 1.413, 2: 1.585, 2.5: 1.778} {
		l := circuit.Load{Ohm: 2000}
		if got := arriving(0, l) / arriving(lossDB, l); math.Abs(got-want) > 0.0005 {
			t.Errorf("%g dB: %.5g times the power without it, want %g", lossDB, got, want)
		}
	}
	tapped := circuit.Load{PowerW: 7.06, MarkedVolts: 100}
	if without, with := arriving(0, tapped), arriving(1.5, tapped); math.Abs(without-70.6) > 0.001 || math.Abs(with-50) > 0.05 {
		t.Errorf("ten of 7.06 W: %.4g W without 1.5 dB and %.4g W with it, want 70.6 and 50", without, with)
	}
}
