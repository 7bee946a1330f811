package analysis_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// worked works out a design that is understood; several texts are several
// files.
func worked(t *testing.T, texts ...string) *analysis.System {
	t.Helper()
	files := make([]*source.File, len(texts))
	for i, text := range texts {
		files[i] = source.NewFile(fmt.Sprintf("%d.pa.hcl", i), []byte(text))
	}
	design, problems := schema.Read("test", files, schema.Options{Workers: 1})
	for _, p := range problems {
		t.Errorf("line %d: %s", p.Span.From().Line, p)
	}
	if len(problems) > 0 {
		t.FailNow()
	}
	return analysis.Analyse(design, 1)
}

func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Abs(want)) {
		t.Errorf("%s is %.6g; want %.6g within %g", what, got, want, tolerance)
	}
}

func line(t *testing.T, s *analysis.System, name string) *analysis.Line {
	t.Helper()
	for _, l := range s.Lines {
		if l.Part.Name == name {
			return l
		}
	}
	t.Fatalf("no line %q", name)
	return nil
}

func run(t *testing.T, s *analysis.System, name string) *analysis.Run {
	t.Helper()
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if r.Part.Name == name {
				return r
			}
		}
	}
	t.Fatalf("no loudspeaker %q", name)
	return nil
}

func lacks(all []analysis.Missing) string {
	texts := make([]string, len(all))
	for i, m := range all {
		texts[i] = m.What + " of " + m.Part
	}
	return strings.Join(texts, "; ")
}

// The source of each figure is named beside it: with "derived", the formula from
// which it was computed once, outside this program. Conductors are those of IEC
// 60228 class 5 (Table 3) and of ASTM B258.
func TestPublishedLines(t *testing.T) {
	t.Parallel()
	t.Run("tap sum on 100 V", func(t *testing.T) { // P = Σ n·tap, Z = V²/P: derived
		t.Parallel()
		s := worked(t, `amplifier "Rack" { rated_power = "180 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 12
    tap      = "6 W"
  }
  loudspeaker "B" {
    quantity = 4
    tap      = "10 W"
  }
  loudspeaker "C" {
    quantity = 2
    tap      = "15 W"
  }
}`)
		within(t, "load", float64(s.Channels[0].Load.Value), 142, 0)
		within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 70.423, 1e-5)
		if got, want := s.Channels[0].Load.Sum, "12 × 6 W + 4 × 10 W + 2 × 15 W = 142 W"; got != want {
			t.Errorf("the sum reads %q; want %q", got, want)
		}
		if got, want := s.Outputs[0].Impedance.Sum, "(100 V)² / 142 W = 70.42 ohm"; got != want {
			t.Errorf("the impedance reads %q; want %q", got, want)
		}
	})
	t.Run("tap sum on 70 V", func(t *testing.T) { // the same with V = 100/√2 V: derived
		t.Parallel()
		s := worked(t, `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "A" {
    quantity = 8
    tap      = "7.5 W"
  }
  loudspeaker "B" {
    quantity = 3
    tap      = "15 W"
  }
}`)
		within(t, "load", float64(s.Channels[0].Load.Value), 105, 0)
		within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 47.619, 1e-5)
		within(t, "lowest impedance that 120 W imply", float64(s.Outputs[0].Floor.Value), 5000.0/120, 1e-9) // 5000/P: from memory
	})

	// R = 2·L·R'·[1 + 0.00393(t − 20)], V = V0·Z/(Z + R): derived.
	const farEnd = `system "Test" { conductor_temperature = "%s" }
amplifier "Rack" { rated_power = "180 W" }
line "Far" {
  amplifier = "Rack"
  output    = "%s"
  cable     = "%s"
  home_run  = "%s"
  loudspeaker "Horn" { tap = "%s" }
}`
	for _, c := range []struct {
		temperature, output, cable, length, tap string

		loop, volts, drop, lossDB, watts, cableW float64 // 0: not given
	}{
		{"20 C", "100 V", "2 x 1.5 mm2", "150 m", "120 W", 3.990, 95.431, 4.569, 0.4062, 109.28, 5.233},
		{"50 C", "100 V", "2 x 1.5 mm2", "150 m", "120 W", 4.4604, 94.919, 5.081, 0.4529, 0, 0},
		{"20 C", "70 V", "16 AWG", "100 m", "100 W", 2.6348, 67.171, 5.006, 0.4461, 90.239, 4.755},
		// A = 2ρ(100 − n)LP/(nV²) gives 0.945 mm² for n = 10 %; of the real conductors the next size still loses more.
		{"20 C", "100 V", "1 mm2", "300 m", "100 W", 11.70, 89.526, 10.474, 0, 0, 0},
		{"20 C", "100 V", "1.5 mm2", "300 m", "100 W", 7.98, 92.610, 7.390, 0, 0, 0},
	} {
		t.Run(strings.Join([]string{c.temperature, c.cable, c.length}, " "), func(t *testing.T) {
			t.Parallel()
			l := line(t, worked(t, fmt.Sprintf(farEnd, c.temperature, c.output, c.cable, c.length, c.tap)), "Far")
			within(t, "loop", l.Loss.Cables[0].LoopOhm, c.loop, 1e-3)
			within(t, "voltage", float64(l.Loss.Volts), c.volts, 1e-3)
			within(t, "drop", float64(l.Loss.Drop.Value), c.drop, 1e-3)
			if c.lossDB > 0 {
				within(t, "loss", float64(l.Loss.DB), c.lossDB, 1e-3)
			}
			if c.watts > 0 {
				within(t, "power delivered", float64(l.Runs[0].Delivered.Value), c.watts, 1e-3)
			}
			if c.cableW > 0 {
				within(t, "power in the cable", float64(l.Loss.CablePower), c.cableW, 1e-3)
			}
		})
	}

	// Four resistances of 400 ohm, ladder worked from the far end: derived.
	t.Run("daisy chain", func(t *testing.T) {
		t.Parallel()
		s := worked(t, `amplifier "Rack" { rated_power = "180 W" }
line "Chain" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "50 m"
  loudspeaker "H" {
    quantity = 4
    spacing  = "50 m"
    tap      = "25 W"
  }
}`)
		l := line(t, s, "Chain")
		within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 102.488, 5e-4)
		within(t, "voltage at the end", float64(l.Loss.Volts), 96.766, 5e-4)
		within(t, "loss", float64(l.Loss.DB), 0.2855, 5e-4)
		within(t, "power in the cable", float64(l.Loss.CablePower), 2.363, 5e-4)
		within(t, "most power delivered", float64(l.Runs[0].Delivered.Value), 98.702*98.702/400, 5e-4)
		if l.Loss.Worst != "H 4" || l.Runs[0].MostAt != "H 1" {
			t.Errorf("worst is %q and best %q; want H 4 and H 1", l.Loss.Worst, l.Runs[0].MostAt)
		}
		if got := l.CountPast(2.5); got != 2 { // 97.088 V and 96.766 V are more than 2.5 % down
			t.Errorf("%d loudspeakers lose more than 2.5 %%; want 2", got)
		}
	})

	// Parallel admittances behind a trunk: derived.
	t.Run("branches", func(t *testing.T) {
		t.Parallel()
		s := worked(t, branched)
		l := line(t, s, "Yard")
		within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 113.647, 5e-4)
		within(t, "voltage at the worst", float64(l.Loss.Volts), 97.660, 5e-4)
		within(t, "loss", float64(l.Loss.DB), 0.2056, 5e-4)
		within(t, "power of the amplifier", float64(l.Loss.SourcePower), 87.99, 5e-4)
		for name, watts := range map[string]float64{"Gate": 9.721, "Long": 57.225, "Thin": 19.083} {
			within(t, "power of "+name, float64(run(t, s, name).Delivered.Value), watts, 5e-4)
		}
		if l.Loss.Worst != "Long" {
			t.Errorf("worst is %q; want Long", l.Loss.Worst)
		}
		if got := len(l.Loss.Cables); got != 2 {
			t.Fatalf("%d kinds of cable lead to it; want 2", got)
		}
		within(t, "trunk", l.Loss.Cables[0].LoopOhm, 1.596, 1e-9)
		within(t, "branch", l.Loss.Cables[1].LoopOhm, 1.596, 1e-9)
	})
}

// branched is a trunk with a loudspeaker at its tee and two branches of thinner
// cable.
const branched = `amplifier "Rack" { rated_power = "180 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "100 m"
  loudspeaker "Gate" { tap = "10 W" }
  branch "A" {
    leg = "0 m"
    loudspeaker "Long" {
      leg   = "60 m"
      cable = "2 x 1.5 mm2"
      tap   = "60 W"
    }
  }
  branch "B" {
    leg   = "0 m"
    cable = "2 x 1 mm2"
    loudspeaker "Thin" {
      leg = "120 m"
      tap = "20 W"
    }
  }
}
`

// Each pair of designs says the same in two ways.
func TestSameLineWrittenOtherwise(t *testing.T) {
	t.Parallel()
	const head = `amplifier "Rack" { rated_power = "180 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
`
	for _, c := range []struct{ name, one, other string }{
		{"a leg in two pieces", `
  loudspeaker "H" { tap = "30 W" }
  loudspeaker "I" {
    leg = "50 m"
    tap = "20 W"
  }
}`, `
  loudspeaker "H" { tap = "30 W" }
  branch "Joint" {
    leg = "20 m"
    loudspeaker "I" {
      leg = "30 m"
      tap = "20 W"
    }
  }
}`},
		{"a leg in two pieces by a device that takes nothing", `
  loudspeaker "H" { tap = "30 W" }
  loudspeaker "I" {
    leg = "50 m"
    tap = "20 W"
  }
}`, `
  loudspeaker "H" { tap = "30 W" }
  line_end "Joint" { leg = "20 m" }
  loudspeaker "I" {
    leg = "30 m"
    tap = "20 W"
  }
}`},
		{"a run written out", `
  loudspeaker "H" {
    quantity = 3
    spacing  = "7 m"
    tap      = "15 W"
  }
}`, `
  loudspeaker "H 1" { tap = "15 W" }
  loudspeaker "H 2" {
    leg = "7 m"
    tap = "15 W"
  }
  loudspeaker "H 3" {
    leg = "7 m"
    tap = "15 W"
  }
}`},
		{"two runs of branches", `
  branch "Bay" {
    quantity = 2
    spacing  = "9 m"
    loudspeaker "H" {
      quantity = 2
      leg      = "3 m"
      spacing  = "4 m"
      tap      = "10 W"
    }
  }
}`, `
  branch "Bay 1" {
    loudspeaker "H 1" {
      leg = "3 m"
      tap = "10 W"
    }
    loudspeaker "H 2" {
      leg = "4 m"
      tap = "10 W"
    }
  }
  branch "Bay 2" {
    leg = "9 m"
    loudspeaker "I 1" {
      leg = "3 m"
      tap = "10 W"
    }
    loudspeaker "I 2" {
      leg = "4 m"
      tap = "10 W"
    }
  }
}`},
		{"order of branches", `
  branch "A" {
    loudspeaker "H" {
      leg = "3 m"
      tap = "10 W"
    }
  }
  branch "B" {
    leg = "0 m"
    loudspeaker "I" {
      leg = "30 m"
      tap = "20 W"
    }
  }
}`, `
  branch "B" {
    loudspeaker "I" {
      leg = "30 m"
      tap = "20 W"
    }
  }
  branch "A" {
    leg = "0 m"
    loudspeaker "H" {
      leg = "3 m"
      tap = "10 W"
    }
  }
}`},
		{"old equipment stated as a load or as an impedance", `
  existing "Old" { load = "40 W" }
}`, `
  existing "Old" { impedance = "250 ohm" }
}`},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			one, other := worked(t, head+c.one), worked(t, head+c.other)
			a, b := line(t, one, "Yard"), line(t, other, "Yard")
			for _, s := range []*analysis.System{one, other} {
				if l := line(t, s, "Yard"); !l.Loss.Drop.Known() || l.Loss.Drop.Value <= 0 {
					t.Fatalf("the drop is not worked out: %s", lacks(l.Loss.Drop.Missing))
				}
			}
			within(t, "drop", float64(a.Loss.Drop.Value), float64(b.Loss.Drop.Value), 1e-12)
			within(t, "load", float64(a.Load.Value), float64(b.Load.Value), 1e-12)
			within(t, "power in the cable", float64(a.Loss.CablePower), float64(b.Loss.CablePower), 1e-12)
			within(t, "impedance", float64(one.Outputs[0].Impedance.Value), float64(other.Outputs[0].Impedance.Value), 1e-12)
		})
	}
}

func TestOrderOfFilesWithLines(t *testing.T) {
	t.Parallel()
	amplifier, hall, _ := strings.Cut(branched, "\n")
	stairs := `line "Stairs" {
  like     = "Yard"
  home_run = "140 m"
}`
	one, other := worked(t, amplifier, hall, stairs), worked(t, stairs, hall, amplifier)
	for _, name := range []string{"Yard", "Stairs"} {
		a, b := line(t, one, name), line(t, other, name)
		if a.Loss.Drop.Value != b.Loss.Drop.Value || a.Loss.Worst != b.Loss.Worst || a.Load.Sum != b.Load.Sum {
			t.Errorf("%s: %v at %s of %s; in another order %v at %s of %s", name, a.Loss.Drop.Value, a.Loss.Worst, a.Load.Sum, b.Loss.Drop.Value, b.Loss.Worst, b.Load.Sum)
		}
	}
	within(t, "load of both lines", float64(one.Channels[0].Load.Value), 180, 0)
	within(t, "load of both lines", float64(other.Channels[0].Load.Value), 180, 0)
	if one.Outputs[0].Load.Sum != "2 × 10 W + 2 × 60 W + 2 × 20 W = 180 W" {
		t.Errorf("the lines of one output add up to %q", one.Outputs[0].Load.Sum)
	}
	y1, y2 := line(t, one, "Yard").Loss.SourcePower, line(t, one, "Stairs").Loss.SourcePower
	within(t, "impedance of both lines together", float64(one.Outputs[0].Impedance.Value), 100*100/float64(y1+y2), 1e-9)
	if a, b := line(t, one, "Yard").Loss.Drop.Value, line(t, one, "Stairs").Loss.Drop.Value; a >= b {
		t.Errorf("the longer like line loses %v, the other %v", b, a)
	}
}

const floor = `amplifier "Rack" { rated_power = "180 W" }
line "Floor 1" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "18 m"
  loudspeaker "Corridor" {
    quantity = 5
    tap      = "1.5 W"
    leg      = "2 m"
    spacing  = "9 m"
  }
  attenuator "Room" {
    quantity = 14
    leg      = "3 m"
    spacing  = "4 m"
    rating   = "12 W"
    loudspeaker "Bed" {
      tap = "3 W"
      leg = "4 m"
    }
    loudspeaker "Bath" {
      tap = "0.75 W"
      leg = "3 m"
    }
  }
}
line "Floor 2" {
  like     = "Floor 1"
  home_run = "21 m"
}
`

func TestNestedRuns(t *testing.T) {
	t.Parallel()
	s := worked(t, floor)
	l := line(t, s, "Floor 1")
	if l.Loss.Worst != "Room 14, Bath" {
		t.Errorf("worst is %q; want Room 14, Bath", l.Loss.Worst)
	}
	if l.Loudspeakers != 33 || len(l.Runs) != 3 || l.Runs[1].Count != 14 {
		t.Errorf("%d loudspeakers in %d blocks, %d beds; want 33 in 3, 14", l.Loudspeakers, len(l.Runs), l.Runs[1].Count)
	}
	if got, want := l.Load.Sum, "5 × 1.5 W + 14 × 3 W + 14 × 0.75 W = 60 W"; got != want {
		t.Errorf("load is %q; want %q", got, want)
	}
	a := l.Attenuators[0]
	if a.Count != 14 || a.Behind.Sum != "1 × 3 W + 1 × 0.75 W = 3.75 W" {
		t.Errorf("%d attenuators with %q behind each; want 14 with 3.75 W", a.Count, a.Behind.Sum)
	}
	if got, want := l.Runs[1].All().Sum, "14 × 3 W = 42 W"; got != want {
		t.Errorf("the beds take %q; want %q", got, want)
	}
	var metres float64
	for _, c := range l.Loss.Cables {
		metres += c.Metres
	}
	within(t, "way to the worst", metres, 18+2+4*9+3+13*4+4+3, 1e-12)
	within(t, "load of the other floor", float64(line(t, s, "Floor 2").Load.Value), 60, 0)
	if r := l.Runs[2]; r.MostAt != "Room 1, Bath" || len(r.Behind) != 1 || r.Behind[0] != a {
		t.Errorf("the best bath is %q behind %d attenuators", r.MostAt, len(r.Behind))
	}
}

// Only the total length is known: all loads count at its far end.
func TestTotalLength(t *testing.T) {
	t.Parallel()
	const design = `amplifier "Rack" { rated_power = "180 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  length    = "150 m"
  attenuator "Knob" {
    rating         = "60 W"
    insertion_loss = "1 dB"
    loudspeaker "In" { tap = "60 W" }
  }
  loudspeaker "H" {
    quantity = 6
    tap      = "10 W"
  }
}`
	s := worked(t, strings.Replace(design, `insertion_loss = "1 dB"`, "", 1))
	l := line(t, s, "Yard")
	if !l.Loss.Lumped || !l.Loss.Drop.Known() {
		t.Fatalf("the loss is not worked out with the load at the far end: %s", lacks(l.Loss.Drop.Missing))
	}
	within(t, "drop", float64(l.Loss.Drop.Value), 4.569, 1e-3) // as one load of 120 W
	within(t, "impedance, in which no cable may help", float64(s.Outputs[0].Impedance.Value), 10000.0/120, 1e-9)
	within(t, "power of each of the run", float64(run(t, s, "H").Delivered.Value), 10, 1e-9)
	if l.CountPast(4) != 7 || l.CountPast(5) != 0 {
		t.Errorf("%d lose more than 4 %%, %d more than 5 %%; want 7 and 0", l.CountPast(4), l.CountPast(5))
	}

	s = worked(t, design)
	l = line(t, s, "Yard")
	if l.Loss.Worst == "" {
		t.Error("the worst loudspeaker has no name")
	}
	within(t, "power behind the attenuator", float64(run(t, s, "In").Delivered.Value), 60*math.Pow(10, -0.1), 1e-9)
	if single := line(t, worked(t, `line "L" {
  output = "100 V"
  cable  = "2 x 1.5 mm2"
  length = "150 m"
  loudspeaker "Only" { tap = "120 W" }
}`), "L"); single.Loss.Lumped {
		t.Error("with one loudspeaker the total length is its leg: nothing is overestimated")
	}
}

func TestLowImpedance(t *testing.T) {
	t.Parallel()
	const design = `amplifier "Bar" {
  rated_power = "40 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "Pair" {
  amplifier = "Bar"
  output    = "Out"
  cable     = "2 x 2.5 mm2"
  wiring    = "%s"
  home_run  = "%s"
  loudspeaker "B" {
    quantity  = 2
    spacing   = "%[2]s"
    impedance = "8 ohm"
  }
}`
	for _, c := range []struct {
		wiring, length   string
		ohm, watts, drop float64
		sum              string
	}{
		{"parallel", "0 m", 4, 20, 0, "2 × 8 ohm in parallel, with cable = 4 ohm"},
		{"series", "0 m", 16, 5, 0, "2 × 8 ohm in series, with cable = 16 ohm"},
		// Loop of 10 m there and back of 2.5 mm²: 0.1596 ohm; of 20 m: 0.3192 ohm.
		{"series", "10 m", 16.3192, 12.6491 * 12.6491 / 16.3192 / 16.3192 * 8, 100 * 0.3192 / 16.3192, "in series"},
		{"parallel", "10 m", 0.1596 + 1/(1.0/8+1/8.1596), 0, 0, "in parallel"},
	} {
		t.Run(c.wiring+" "+c.length, func(t *testing.T) {
			t.Parallel()
			s := worked(t, fmt.Sprintf(design, c.wiring, c.length))
			o, l := s.Outputs[0], s.Lines[0]
			within(t, "impedance", float64(o.Impedance.Value), c.ohm, 1e-6)
			if c.watts > 0 {
				within(t, "power delivered", float64(l.Runs[0].Delivered.Value), c.watts, 1e-5)
			}
			if c.drop > 0 {
				within(t, "drop", float64(l.Loss.Drop.Value), c.drop, 1e-5)
			}
			if !strings.Contains(o.Impedance.Sum, c.sum) {
				t.Errorf("the impedance reads %q; want %q in it", o.Impedance.Sum, c.sum)
			}
			within(t, "voltage", float64(o.Volts.Value), math.Sqrt(160), 1e-12)
		})
	}
	t.Run("load of a series circuit", func(t *testing.T) {
		t.Parallel()
		s := worked(t, fmt.Sprintf(design, "series", "0 m"))
		within(t, "load", float64(s.Outputs[0].Load.Value), 10, 1e-12)
	})
	t.Run("curve", func(t *testing.T) { // the lowest point counts, not the nominal impedance
		t.Parallel()
		s := worked(t, `amplifier "Bar" {
  rated_power = "40 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "One" {
  amplifier = "Bar"
  output    = "Out"
  cable     = "2 x 2.5 mm2"
  home_run  = "0 m"
  loudspeaker "B" {
    impedance    = "8 ohm"
    impedance_at = { "125 Hz" = "40 ohm", "250 Hz" = "6.4 ohm", "1 kHz" = "9 ohm" }
  }
}`)
		within(t, "lowest impedance", float64(s.Outputs[0].Impedance.Value), 6.4, 1e-9)
		within(t, "where", s.Outputs[0].AtHz, 250, 0)
		if !strings.Contains(s.Outputs[0].Impedance.Sum, "at 250 Hz") {
			t.Errorf("the impedance reads %q", s.Outputs[0].Impedance.Sum)
		}
	})
}

func TestWrongVoltage(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "180 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "25 V"
  loudspeaker "E" {
    quantity = 20
    tap      = "1/2 W"
    tap_for  = "70 V"
  }
  loudspeaker "Coil" { impedance = "8 ohm" }
}`)
	e, coil := run(t, s, "E"), run(t, s, "Coil")
	within(t, "power of the tap", float64(e.Each.Value), 0.0625, 1e-9)
	if got, want := e.Each.Sum, "1/2 W × (25 V / 70.7 V)² = 0.0625 W"; got != want {
		t.Errorf("the tap reads %q; want %q", got, want)
	}
	within(t, "power of the coil", float64(coil.Each.Value), 78.125, 1e-12)
	if got, want := coil.Each.Sum, "(25 V)² / 8 ohm = 78.12 W"; got != want {
		t.Errorf("the coil reads %q; want %q", got, want)
	}
	if e.Tap.Direct || !coil.Tap.Direct {
		t.Error("only the coil is connected directly")
	}
	within(t, "load", float64(s.Channels[0].Load.Value), 79.375, 1e-9)
}

func TestAttenuatorsAndLineEnd(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "180 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "100 m"
  attenuator "Outer" {
    rating         = "60 W"
    insertion_loss = "1 dB"
    setting        = "-20 dB"
    attenuator "Inner" {
      leg    = "5 m"
      rating = "36 W"
      loudspeaker "In" {
        leg = "5 m"
        tap = "20 W"
      }
    }
    loudspeaker "Beside" {
      leg = "5 m"
      tap = "10 W"
    }
  }
  line_end "Watch" {
    leg  = "300 m"
    load = "1 W"
  }
}`)
	l := line(t, s, "Hall")
	within(t, "load", float64(l.Load.Value), 31, 0)
	if got := l.Loss.Worst; got != "In" {
		t.Errorf("worst is %q; want In: nobody listens to the line end", got)
	}
	outer, inner := l.Attenuators[0], l.Attenuators[1]
	within(t, "load of the outer attenuator", float64(outer.Behind.Value), 30, 0)
	within(t, "load of the inner attenuator", float64(inner.Behind.Value), 20, 0)
	if len(inner.Inside) != 1 || inner.Inside[0] != outer {
		t.Error("the inner attenuator stands behind the outer one")
	}
	// Turned down or not: limits hold with the attenuator fully up, where only
	// its insertion loss of 1 dB is left; cable loss does not count that.
	in := run(t, s, "In")
	if watts := float64(in.Delivered.Value); !(watts > 20*math.Pow(10, -0.1)*0.97 && watts < 20*math.Pow(10, -0.1)) {
		t.Errorf("behind 1 dB and little cable arrive %.4g W", watts)
	}
	if drop := l.Loss.Drop.Value; drop > 2 {
		t.Errorf("the insertion loss counts as cable loss: %v", drop)
	}
	if !strings.Contains(l.Loss.Drop.Sum, "behind its attenuator") {
		t.Errorf("the loss reads %q", l.Loss.Drop.Sum)
	}
}

func TestMissing(t *testing.T) {
	t.Parallel()
	const rack = `amplifier "Rack" { rated_power = "180 W" }
`
	for _, c := range []struct{ name, design, load, loss, delivered, impedance string }{
		{
			"nothing but taps", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 2
    tap      = "6 W"
  }
  loudspeaker "I" { tap = "6 W" }
}`,
			"", `length of the home run of line "L"; cable between neighbours of the run of loudspeaker "H"; cable of line "L"; length of the leg that leads to it of loudspeaker "I"`, "", "",
		},
		{
			"a tap", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {}
}`,
			`tap of loudspeaker "H"`, `tap of loudspeaker "H"`, `tap of loudspeaker "H"`, `tap of loudspeaker "H"`,
		},
		{
			"legs inside", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  attenuator "Knob" {
    rating = "10 W"
    loudspeaker "H" { tap = "6 W" }
  }
  branch "Tee" {
    loudspeaker "I" {
      leg = "1 m"
      tap = "6 W"
    }
  }
}`,
			"", `length of the leg that leads to it of loudspeaker "H"; length of the leg that leads to it of branch "Tee"`, "", "",
		},
		{
			"old equipment", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" { tap = "6 W" }
  existing "Old" { leg = "10 m" }
}`,
			`load of the existing equipment of existing "Old"`, `load of the existing equipment of existing "Old"`, "", `load of the existing equipment of existing "Old"`,
		},
		{
			"output", rack + `line "L" {
  amplifier = "Rack"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" { tap = "6 W" }
}`,
			`output, with its voltage or its ohms of line "L"`, `output, with its voltage or its ohms of line "L"`, `output, with its voltage or its ohms of line "L"`, "",
		},
		{
			"kind of output", rack + `line "L" {
  amplifier = "Rack"
  output    = "Zone 1"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" { tap = "6 W" }
}`,
			`kind of output (a line voltage, or ohms) of output "Zone 1" of amplifier "Rack"`, `kind of output (a line voltage, or ohms) of output "Zone 1" of amplifier "Rack"`, `kind of output (a line voltage, or ohms) of output "Zone 1" of amplifier "Rack"`, `kind of output (a line voltage, or ohms) of output "Zone 1" of amplifier "Rack"`,
		},
		{
			"rated power", `amplifier "Rack" {
  output "A" { lowest_impedance = "4 ohm" }
}
line "L" {
  amplifier = "Rack"
  output    = "A"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" { impedance = "8 ohm" }
}`,
			`rated power of amplifier "Rack"`, "", `rated power of amplifier "Rack"`, "",
		},
		{
			"impedance", `amplifier "Rack" {
  rated_power = "60 W"
  output "A" { lowest_impedance = "4 ohm" }
}
line "L" {
  amplifier = "Rack"
  output    = "A"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {}
}`,
			`impedance of loudspeaker "H"`, `impedance of loudspeaker "H"`, `impedance of loudspeaker "H"`, `impedance of loudspeaker "H"`,
		},
		{
			"voltage of a tap", `amplifier "Rack" {
  rated_power = "60 W"
  output "A" { lowest_impedance = "4 ohm" }
}
line "L" {
  amplifier = "Rack"
  output    = "A"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" { tap = "6 W" }
}`,
			`voltage the tap is marked for of loudspeaker "H"`, `voltage the tap is marked for of loudspeaker "H"`, `voltage the tap is marked for of loudspeaker "H"`, `voltage the tap is marked for of loudspeaker "H"`,
		},
		{
			"series on a line", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  wiring    = "series"
  loudspeaker "H" { tap = "6 W" }
}`,
			`way the loudspeakers are joined (loudspeakers on a constant-voltage line are in parallel) of line "L"`, `way the loudspeakers are joined (loudspeakers on a constant-voltage line are in parallel) of line "L"`, "-", `way the loudspeakers are joined (loudspeakers on a constant-voltage line are in parallel) of line "L"`,
		},
		{
			"series on a ring", `amplifier "Rack" {
  rated_power = "60 W"
  output "A" { lowest_impedance = "4 ohm" }
}
line "L" {
  amplifier = "Rack"
  output    = "A"
  wiring    = "series"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  ring_leg  = "10 m"
  loudspeaker "H" { impedance = "4 ohm" }
}`,
			"", `cable that can be computed (how the conductors of a ring join loudspeakers in series is not said) of line "L"`, "", "",
		},
		{
			"return from the far end", rack + `line "L" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  return    = "reverse"
  loudspeaker "H" { tap = "6 W" }
}`,
			"", `length of the return conductor from the last device back to the amplifier of line "L"`, "", "",
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := worked(t, c.design)
			l := line(t, s, "L")
			for _, f := range []struct {
				what, got, want string
			}{
				{"load", lacks(l.Load.Missing), c.load},
				{"loss", lacks(l.Loss.Drop.Missing), c.loss},
			} {
				if f.got != f.want {
					t.Errorf("%s lacks %q; want %q", f.what, f.got, f.want)
				}
			}
			if c.delivered != "-" {
				if got := lacks(l.Runs[0].Delivered.Missing); got != c.delivered {
					t.Errorf("delivered lacks %q; want %q", got, c.delivered)
				}
			}
			if len(s.Outputs) > 0 {
				if got := lacks(s.Outputs[0].Impedance.Missing); got != c.impedance {
					t.Errorf("impedance lacks %q; want %q", got, c.impedance)
				}
			}
		})
	}
}

// A line of which the output is not stated may be on any output of its amplifier.
func TestLooseLine(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" {
  channel "A" { rated_power = "60 W" }
  channel "B" { rated_power = "60 W" }
  output "A" { volts = "100 V" }
  output "B" { volts = "100 V" }
}
line "On A" {
  amplifier = "Rack"
  output    = "A"
  loudspeaker "H" { tap = "30 W" }
}
line "Somewhere" {
  amplifier = "Rack"
  loudspeaker "I" { tap = "40 W" }
}`)
	for _, c := range s.Channels {
		if got := lacks(c.Load.Missing); got != `output, with its voltage or its ohms of line "Somewhere"` {
			t.Errorf("the load of channel %s lacks %q", c.Part.Name, got)
		}
		if !c.CarriesLines() {
			t.Errorf("channel %s may carry a line", c.Part.Name)
		}
	}
	for _, o := range s.Outputs {
		if o.Load.Known() || o.Impedance.Known() {
			t.Errorf("output %s counts as known", o.Part.Name)
		}
	}
}

func TestSmallestCable(t *testing.T) {
	t.Parallel()
	const far = `line "Far" {
  output   = "100 V"
  %s
  %s
  loudspeaker "Horn" {
    %s
    tap = "100 W"
  }
}`
	for _, c := range []struct {
		name, cable, home, leg string
		limit                  quantity.Percent
		want                   string
		throughout             bool
	}{
		{"metric", `cable = "2 x 0.75 mm2"`, `home_run = "300 m"`, "", 10, "2 x 1.5 mm2", false}, // 1 mm²: 10.47 %, see above
		{"AWG", `cable = "18/2"`, `home_run = "300 m"`, "", 10, "2 x 16 AWG", false},
		{"cores not said", `cable = "18 AWG"`, `home_run = "300 m"`, "", 5, "14 AWG", false},
		{"no size does", `cable = "2 x 1.5 mm2"`, `home_run = "9000 m"`, "", 10, "", false},
		{"the leg is of thin cable", `cable = "2 x 2.5 mm2"`, `home_run = "10 m"`, "leg = \"400 m\"\n    cable = \"2 x 0.75 mm2\"", 10, "2 x 1.5 mm2", true},
		{"total length", `cable = "2 x 0.75 mm2"`, `length = "300 m"`, "", 10, "2 x 1.5 mm2", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			l := line(t, worked(t, fmt.Sprintf(far, c.cable, c.home, c.leg)), "Far")
			before := len(l.Runs)
			got, ok := l.SmallestCable(c.limit)
			if ok != (c.want != "") || got.Cable != c.want || got.Throughout != c.throughout {
				t.Errorf("it is %q, throughout %v; want %q, %v", got.Cable, got.Throughout, c.want, c.throughout)
			}
			if ok && got.Drop > c.limit {
				t.Errorf("it loses %v", got.Drop)
			}
			if len(l.Runs) != before || l.Loudspeakers != 1 {
				t.Error("trying cables changed the line")
			}
		})
	}
}

// Figures that no loudspeaker has are refused with a sentence, never worked out
// and never a crash.
func TestImpossibleFigures(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "180 W" }
line "L" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {
    quantity = 3
    spacing  = "1 m"
    tap      = "1000 kW"
    tap_for  = "1 mV"
  }
  attenuator "Knob" {
    leg    = "1 m"
    rating = "5 W"
    loudspeaker "I" {
      quantity = 2
      spacing  = "1 m"
      leg      = "1 m"
      tap      = "6 W"
    }
  }
  existing "Old" {
    leg       = "1 m"
    impedance = "0 ohm"
  }
}`)
	l := line(t, s, "L")
	for what, got := range map[string]string{
		"loss":      lacks(l.Loss.Drop.Missing),
		"delivered": lacks(l.Runs[1].Delivered.Missing),
		"impedance": lacks(s.Outputs[0].Impedance.Missing),
	} {
		if !strings.HasPrefix(got, "network that can be solved") {
			t.Errorf("%s lacks %q", what, got)
		}
	}
	idle := worked(t, `line "L" {
  output   = "100 V"
  cable    = "1.5 mm2"
  home_run = "10 m"
  loudspeaker "Off" {
    quantity = 2
    spacing  = "5 m"
    tap      = "0 W"
  }
  loudspeaker "On" {
    leg = "5 m"
    tap = "6 W"
  }
  existing "None" {
    leg  = "1 m"
    load = "0 W"
  }
}`)
	if l := line(t, idle, "L"); !l.Loss.Drop.Known() || l.Loss.Worst != "On" || l.Load.Value != 6 {
		t.Errorf("taps of 0 W take something: %v, %q", l.Load.Value, l.Loss.Worst)
	}
}

// Many different taps are added up in the time of their number.
func TestManyDifferentTaps(t *testing.T) {
	t.Parallel()
	var text strings.Builder
	text.WriteString("line \"L\" {\n  output = \"100 V\"\n")
	want := 0.0
	for i := 1; i <= 3000; i++ {
		fmt.Fprintf(&text, "loudspeaker \"H %d\" {\n  tap = \"%d mW\"\n}\n", i, i)
		want += float64(i) / 1000
	}
	text.WriteString("}\n")
	l := line(t, worked(t, text.String()), "L")
	within(t, "load", float64(l.Load.Value), want, 1e-12)
	if !strings.HasPrefix(l.Load.Sum, "1 × 1 mW + ") || !strings.Contains(l.Load.Sum, "more terms") {
		t.Errorf("the sum reads %q", l.Load.Sum)
	}
}
