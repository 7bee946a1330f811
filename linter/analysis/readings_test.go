package analysis

import (
	"fmt"
	"math"
	"math/cmplx"
	"testing"

	"loudlint/linter/circuit"
	"loudlint/schema"
	"loudlint/schema/source"
)

func measured(t *testing.T, text string) []*Measured {
	t.Helper()
	design, problems := schema.Read("test", []*source.File{source.NewFile("test.pa.hcl", []byte(text))}, schema.Options{Workers: 1})
	if len(problems) > 0 {
		t.Fatal(problems[0])
	}
	s := Analyse(design, 1)
	var all []*Measured
	for _, r := range design.Readings {
		all = append(all, s.Measure(r))
	}
	return all
}

// TestMeasure holds predicted impedances against the constant-voltage principle,
// Z = V² / P (Sound System Design Reference Manual, chapter 7, from memory), with
// cable of no length.
func TestMeasure(t *testing.T) {
	t.Parallel()
	const line = `
line "L" {
  output = "70 V"
  cable  = "2 x 1.5 mm2"
  home_run = "0 m"
  loudspeaker "A" {
    quantity = 36
    tap      = "1 W"
    spacing  = "0 m"
  }
  attenuator "Level" {
    leg = "0 m"
    setting = "-6 dB"
    loudspeaker "B" {
      tap = "4 W"
      leg = "0 m"
    }
    loudspeaker "C" {
      tap = "0.5 W"
      leg = "0 m"
    }
  }
}
`
	for name, c := range map[string]struct {
		reading string
		want    float64
		count   int
	}{
		"whole":                  {``, 5000 / 40.5, 38},
		"from a loudspeaker":     {`at = "A 7"`, 5000 / 40.5, 38},
		"beyond one of a run":    {`beyond = "A 30"`, 5000 / 10.5, 8},
		"beyond the run":         {`beyond = "A"`, 5000 / 4.5, 2},
		"beyond an attenuator":   {`beyond = "Level"`, 5000 / 4.5, 2},
		"beyond one inside":      {`beyond = "B"`, 5000 / 0.5, 1},
		"as found, a²= 10^(−.6)": {`attenuators = "as found"`, 5000 / (36 + 4.5*math.Pow(10, -0.6)), 38},
	} {
		text := line + "reading \"R\" {\n  line = \"L\"\n  impedance = \"100 ohm\"\n  " + c.reading + "\n}\n"
		m := measured(t, text)[0]
		if !m.Impedance.Known() {
			t.Errorf("%s: %v", name, m.Impedance.Missing)
			continue
		}
		if got := float64(m.Impedance.Value); math.Abs(got/c.want-1) > 1e-6 || m.Loudspeakers != c.count {
			t.Errorf("%s: %g ohm and %d loudspeakers, want %g and %d", name, got, m.Loudspeakers, c.want, c.count)
		}
	}
	for name, reading := range map[string]string{"no such device": `beyond = "Nobody"`} {
		text := line + "reading \"R\" {\n  line = \"L\"\n  impedance = \"100 ohm\"\n  " + reading + "\n}\n"
		design, problems := schema.Read("test", []*source.File{source.NewFile("test.pa.hcl", []byte(text))}, schema.Options{Workers: 1})
		if len(problems) > 0 {
			continue // refused on reading: as good
		}
		if m := Analyse(design, 1).Measure(design.Readings[0]); m.Impedance.Known() {
			t.Errorf("%s: %s is predicted", name, m.Impedance.Value)
		}
	}
}

// TestSeenFrom holds the impedance at the far end of a ladder against one worked by
// hand: source open, 3 ohm in the first leg with 60 ohm behind it and 5 ohm in the
// second with 40 ohm; from the far end 40 ∥ (5 + 60) = 24.762 ohm, the first leg
// being dead; from the middle 60 ∥ (5 + 40) = 25.714 ohm.
func TestSeenFrom(t *testing.T) {
	t.Parallel()
	for far, want := range map[bool]float64{true: 40 * 65.0 / 105, false: 60 * 45.0 / 105} {
		b := &builder{net: circuit.New(4)}
		middle := b.net.Leg(0, circuit.Leg{ROhm: 3})
		b.net.Load(middle, circuit.Load{Ohm: 60})
		end := b.net.Leg(middle, circuit.Leg{ROhm: 5})
		b.net.Load(end, circuit.Load{Ohm: 40})
		at := middle
		if far {
			at = end
		}
		z, seen, err := b.seenFrom(at, 1000)
		if err != nil || !seen || math.Abs(cmplx.Abs(z)-want) > 1e-6 {
			t.Errorf("%v: %v, %v, want %g", far, z, err, want)
		}
	}
}

// TestTogether puts the figures of a house in parallel by hand: with 1.21 and 3.51
// as ohms 0.89 ohm, as kilohms 82 ohm.
func TestTogether(t *testing.T) {
	t.Parallel()
	text := `amplifier "Amp" { rated_power = "200 W" }` + "\n"
	for _, r := range []struct{ name, z string }{{"A", "1.21"}, {"B", "3.51"}, {"C", "359 ohm"}, {"D", "0.359 kohm"}, {"E", "181.5 ohm"}} {
		text += "line \"" + r.name + "\" {\n  amplifier = \"Amp\"\n  output = \"100 V\"\n  existing \"Old\" { quantity = 1 }\n}\n" +
			"reading \"" + r.name + "\" {\n  line = \"" + r.name + "\"\n  impedance = \"" + r.z + "\"\n}\n"
	}
	m := measured(t, text)[0]
	got, ok := m.Line.reads.system.Together(m)
	ohms := 1 / (1/1.21 + 1/3.51 + 2/359.0 + 1/181.5)
	kilohms := 1 / (1/1210.0 + 1/3510.0 + 2/359.0 + 1/181.5)
	if !ok || math.Abs(float64(got.AsOhms)-ohms) > 1e-9 || math.Abs(float64(got.AsKilohms)-kilohms) > 1e-9 {
		t.Errorf("%v, %v, want %g and %g", got, ok, ohms, kilohms)
	}
}

// TestReadingsOnARing works a ring of three loudspeakers of 100 ohm by hand, with four legs of 10 m of 1.5 mm² (0.266 ohm
// there and back). From the second the first and the third are alike, so that nothing flows between them by way of the
// amplifier's end, which is open: 100 ∥ (0.266 + 100)/2. Opened behind the second, the meter sees a chain: a leg, the
// third, two legs by way of the amplifier, the first, a leg, the second.
func TestReadingsOnARing(t *testing.T) {
	t.Parallel()
	text := `amplifier "Rack" { rated_power = "480 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  ring_leg  = "10 m"
  loudspeaker "H" {
    quantity = 3
    spacing  = "10 m"
    tap      = "100 W"
  }
}
`
	for i, where := range []string{"", `at = "H 2"`, `beyond = "H 2"`, `beyond = "H 3"`} {
		text += fmt.Sprintf("reading \"R %d\" {\n  line = \"Ring\"\n  impedance = \"33 ohm\"\n  frequency = \"1 kHz\"\n  %s\n}\n", i, where)
	}
	const leg = 0.266
	parallel := func(a, b float64) float64 { return a * b / (a + b) }
	whole := func() float64 {
		// Seen from the amplifier, which feeds both ends alike: the first and third in parallel behind half a leg, and
		// behind another half leg the second.
		return leg/2 + parallel(50, leg/2+100)
	}()
	chain := func(legs ...float64) float64 {
		z := math.Inf(1)
		for _, l := range legs { // from the far end
			z = 1/(1/z+1/100.0) + l
		}
		return z
	}
	wants := []float64{whole, parallel(100, (leg+100)/2), chain(leg, 2*leg, leg), chain(leg, leg, 2*leg)}
	all := measured(t, text)
	for i, m := range all {
		if !m.Impedance.Known() || math.Abs(float64(m.Impedance.Value)-wants[i]) > 1e-9 {
			t.Errorf("%s: %v, by hand %g", m.Where, m.Impedance.Value, wants[i])
		}
		if m.Loudspeakers != 3 {
			t.Errorf("%s: %d loudspeakers", m.Where, m.Loudspeakers)
		}
		if name, ok := m.BreakAfter(200); ok {
			t.Errorf("%s: a break after %s", m.Where, name)
		}
	}
	if got, want := all[2].Where, `line "Ring" beyond "H 2", round the ring,`; got != want {
		t.Errorf("it reads %q; want %q", got, want)
	}
}

// TestReadingsOnAReverseReturn: opened behind a loudspeaker, what is left of the line is wired there and back.
func TestReadingsOnAReverseReturn(t *testing.T) {
	t.Parallel()
	m := measured(t, `amplifier "Rack" { rated_power = "480 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  ring_leg  = "10 m"
  return    = "reverse"
  loudspeaker "H" {
    quantity = 2
    spacing  = "10 m"
    tap      = "100 W"
  }
}
reading "Whole" {
  line      = "Loop"
  impedance = "50 ohm"
  frequency = "1 kHz"
}
reading "Behind the first" {
  line      = "Loop"
  beyond    = "H 1"
  impedance = "100 ohm"
  frequency = "1 kHz"
}
`)
	for i, want := range []float64{3*0.133 - 0.133/2 + 50, 100.266} {
		if got := float64(m[i].Impedance.Value); math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %g ohm, by hand %g", m[i].Where, got, want)
		}
	}
}
