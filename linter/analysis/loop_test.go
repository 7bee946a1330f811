package analysis_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"loudlint/linter/analysis"
)

// loopRack and 1.5 mm² of class 5: 13.3 ohm/km, so 26.6 mohm a metre there and back (IEC 60228, table 3).
const (
	loopRack  = "amplifier \"Rack\" { rated_power = \"480 W\" }\n"
	loopMetre = 0.0266
)

// looped writes a line whose cable comes back.
func looped(attributes, devices string) string {
	return loopRack + "line \"Ring\" {\n  amplifier = \"Rack\"\n  output = \"100 V\"\n  cable = \"2 x 1.5 mm2\"\n" + attributes + "\n" + devices + "\n}\n"
}

// One loudspeaker of 100 W, 100 ohm, on a ring: 40 m one way and 60 m the other in parallel.
func TestRingOfOne(t *testing.T) {
	t.Parallel()
	s := worked(t, looped("home_run = \"40 m\"\nring_leg = \"60 m\"", `loudspeaker "H" { tap = "100 W" }`))
	l := line(t, s, "Ring")
	a, b := 40*loopMetre, 60*loopMetre
	amps := 100 / (100 + a*b/(a+b))
	within(t, "volts", float64(l.Loss.Volts), 100*amps, 1e-9)
	within(t, "drop", float64(l.Loss.Drop.Value), 100-100*amps, 1e-9)
	within(t, "power", float64(run(t, s, "H").Delivered.Value), 100*amps*amps, 1e-9)
	within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 100/amps, 1e-9)
	within(t, "heat", float64(l.Loss.CablePower), amps*amps*a*b/(a+b), 1e-9)
	if len(l.Loss.Cables) != 1 || len(l.Loss.Round) != 1 {
		t.Fatalf("ways: %+v and %+v", l.Loss.Cables, l.Loss.Round)
	}
	within(t, "one way", l.Loss.Cables[0].Metres, 40, 1e-12)
	within(t, "the other way", l.Loss.Round[0].Metres, 60, 1e-12)
	within(t, "ohms the other way", l.Loss.Round[0].LoopOhm, b, 1e-12)
	if want := "40 m of cable one way (1.064 ohm there and back) and 60 m the other (1.596 ohm): "; !strings.HasPrefix(l.Loss.Drop.Sum, want) {
		t.Errorf("it reads %q; want %q…", l.Loss.Drop.Sum, want)
	}
	currents, missing := l.Currents()
	if len(missing) > 0 || len(currents) != 1 || currents[0].Bound {
		t.Fatalf("%+v, lacking %s", currents, lacks(missing))
	}
	within(t, "current", float64(currents[0].Most.Value), amps*b/(a+b), 1e-9)
	if got, want := currents[0].Most.Sum, "0.5962 A of it by the home run and 0.3975 A by the ring leg, and with its cable 0.5962 A in the leg to H"; !strings.Contains(got, want) {
		t.Errorf("it reads %q; want %q", got, want)
	}
}

// A short ring leg carries most, and says so.
func TestRingLegCarriesMost(t *testing.T) {
	t.Parallel()
	s := worked(t, looped("home_run = \"60 m\"\nring_leg = \"40 m\"", `loudspeaker "H" { tap = "100 W" }`))
	currents, _ := line(t, s, "Ring").Currents()
	if got := currents[0].Leg; got != "back to the amplifier" {
		t.Errorf("most flows in the leg %s", got)
	}
}

// On a ring of equal legs the middle loses most; with a heavy loudspeaker, that; and a branch counts with its own cable.
func TestWorstOfARing(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ attributes, devices, worst, ways string }{
		{`ring_leg = "20 m"`, `loudspeaker "H" {
  quantity = 7
  leg      = "20 m"
  spacing  = "20 m"
  tap      = "20 W"
}`, "H 4", "80 m of cable one way (2.128 ohm there and back) and 80 m the other (2.128 ohm): "},
		{`ring_leg = "20 m"`, `loudspeaker "H" {
  quantity = 6
  leg      = "20 m"
  spacing  = "20 m"
  tap      = "1 W"
}
loudspeaker "Horn" {
  leg = "20 m"
  tap = "240 W"
}`, "Horn", "140 m of cable one way (3.724 ohm there and back) and 20 m the other (0.532 ohm): "},
		{`ring_leg = "20 m"`, `loudspeaker "H" {
  leg = "20 m"
  tap = "20 W"
}
branch "Tee" {
  leg = "30 m"
  loudspeaker "Shed" {
    leg = "100 m"
    tap = "60 W"
  }
}
loudspeaker "I" {
  leg = "10 m"
  tap = "20 W"
}`, "Shed", "150 m of cable one way (3.99 ohm there and back) and 130 m the other (3.458 ohm): "},
	} {
		s := worked(t, looped("home_run = \"0 m\"\n"+c.attributes, c.devices))
		l := line(t, s, "Ring")
		if l.Loss.Worst != c.worst || !strings.HasPrefix(l.Loss.Drop.Sum, c.ways) {
			t.Errorf("worst is %s: %s; want %s: %s", l.Loss.Worst, l.Loss.Drop.Sum, c.worst, c.ways)
		}
	}
}

// A reverse return of two equal loudspeakers, 100 ohm each: one conductor 13.3 mohm a metre, 20 m to the first, 10 m between
// and 30 m home are the same 60 m for both. With half the current each, I: 100 V = I·(0.266 + 0.133/2 + 0.399) + 50·I.
func TestReverseReturn(t *testing.T) {
	t.Parallel()
	const devices = `loudspeaker "H" {
  quantity = 2
  spacing  = "10 m"
  tap      = "100 W"
}`
	s := worked(t, looped("home_run = \"20 m\"\nring_leg = \"30 m\"\nreturn = \"reverse\"", devices))
	l := line(t, s, "Ring")
	amps := 100 / (0.266 + 0.0665 + 0.399 + 50)
	within(t, "volts", float64(l.Loss.Volts), 50*amps, 1e-9)
	within(t, "impedance", float64(s.Outputs[0].Impedance.Value), 100/amps, 1e-9)
	within(t, "power", float64(run(t, s, "H").Delivered.Value), 25*amps*amps, 1e-9)
	within(t, "heat", float64(l.Loss.CablePower), amps*amps*(0.266+0.0665+0.399), 1e-9)
	if c := l.Loss.Cables; len(c) != 1 || c[0].Conductors != 1 || len(l.Loss.Round) != 0 {
		t.Fatalf("ways: %+v and %+v", c, l.Loss.Round)
	}
	if want := "60 m of conductor there and on round the loop, 0.798 ohm: "; !strings.HasPrefix(l.Loss.Drop.Sum, want) {
		t.Errorf("it reads %q; want %q…", l.Loss.Drop.Sum, want)
	}
	currents, missing := l.Currents()
	if len(missing) > 0 || len(currents) != 1 || currents[0].Bound {
		t.Fatalf("%+v, lacking %s", currents, lacks(missing))
	}
	within(t, "current", float64(currents[0].Most.Value), amps, 1e-9)
	if got := fmt.Sprint(l.Loss.Drop.Assumed); !strings.Contains(got, "lie side by side") {
		t.Errorf("assumed: %s", got)
	}
}

// What hangs behind a branch on a reverse return has two conductors of its own from the tee.
func TestBranchOfReverseReturn(t *testing.T) {
	t.Parallel()
	s := worked(t, looped("home_run = \"20 m\"\nring_leg = \"30 m\"\nreturn = \"reverse\"", `loudspeaker "H" { tap = "6 W" }
branch "Tee" {
  leg = "10 m"
  loudspeaker "Shed" {
    leg = "100 m"
    tap = "60 W"
  }
}`))
	l := line(t, s, "Ring")
	if want := "60 m of conductor there and on round the loop, 0.798 ohm and 100 m of cable, 2.66 ohm there and back: "; l.Loss.Worst != "Shed" || !strings.HasPrefix(l.Loss.Drop.Sum, want) {
		t.Errorf("worst is %s: %s; want %s", l.Loss.Worst, l.Loss.Drop.Sum, want)
	}
}

// In the middle of equal loudspeakers a reverse return loses most, and both ends are alike; wired there and back the last
// would lose more than any of them.
func TestReverseReturnEvensOut(t *testing.T) {
	t.Parallel()
	devices := `loudspeaker "H" {
  quantity = 9
  spacing  = "10 m"
  tap      = "20 W"
}`
	reverse := line(t, worked(t, looped("home_run = \"20 m\"\nring_leg = \"20 m\"\nreturn = \"reverse\"", devices)), "Ring")
	if reverse.Loss.Worst != "H 5" {
		t.Errorf("worst is %s, want H 5", reverse.Loss.Worst)
	}
	if plain := line(t, worked(t, looped("home_run = \"20 m\"", devices)), "Ring"); plain.Loss.Drop.Value <= reverse.Loss.Drop.Value {
		t.Errorf("there and back %v, with a reverse return %v", plain.Loss.Drop.Value, reverse.Loss.Drop.Value)
	}
}

// Of a ring or a reverse return of which only the total length is known, no way of hanging the loudspeakers loses more than
// what is said.
func TestTotalLengthOfALoop(t *testing.T) {
	t.Parallel()
	rng := rand.New(rand.NewPCG(5, 6))
	for range 60 {
		total, back := 20+rng.IntN(300), 1+rng.IntN(200)
		loop := fmt.Sprintf("ring_leg = \"%d m\"", back)
		if rng.IntN(2) == 0 {
			loop += "\nreturn = \"reverse\""
		}
		var known, lumped strings.Builder
		left := total
		for i := range 5 {
			leg := rng.IntN(left + 1)
			if i == 4 {
				leg = left
			}
			left -= leg
			watts := 1 + rng.IntN(60)
			fmt.Fprintf(&known, "loudspeaker \"H%d\" {\n  leg = \"%d m\"\n  tap = \"%d W\"\n}\n", i, leg, watts)
			fmt.Fprintf(&lumped, "loudspeaker \"H%d\" {\n  tap = \"%d W\"\n}\n", i, watts)
		}
		exact := line(t, worked(t, looped("home_run = \"0 m\"\n"+loop, known.String())), "Ring")
		bound := line(t, worked(t, looped(fmt.Sprintf("length = \"%d m\"\n%s", total, loop), lumped.String())), "Ring")
		if !exact.Loss.Drop.Known() || !bound.Loss.Drop.Known() || exact.Loss.Lumped || !bound.Loss.Lumped {
			t.Fatalf("exact %+v, bound %+v", exact.Loss, bound.Loss)
		}
		if exact.Loss.Drop.Value > bound.Loss.Drop.Value*(1+1e-9) {
			t.Errorf("%s of %d m: %v lost, at most %v said\n%s", loop, total, exact.Loss.Drop.Value, bound.Loss.Drop.Value, known.String())
		}
		exactAmps, _ := exact.Currents()
		boundAmps, missing := bound.Currents()
		if len(exactAmps) != 1 || len(boundAmps) != 1 || exactAmps[0].Bound || !boundAmps[0].Bound {
			t.Fatalf("%+v, %+v, lacking %s", exactAmps, boundAmps, lacks(missing))
		}
		got, least, most := exactAmps[0].Most.Value, boundAmps[0].Least.Value, boundAmps[0].Most.Value
		if got < least*(1-1e-9) || got > most*(1+1e-9) {
			t.Errorf("%s of %d m: %v is outside %v to %v\n%s", loop, total, got, least, most, known.String())
		}
	}
}

// Only the ring leg's length is lacking: nothing else is asked for.
func TestLoopLacks(t *testing.T) {
	t.Parallel()
	s := worked(t, looped("return = \"reverse\"\nlength = \"100 m\"", "loudspeaker \"H\" { tap = \"6 W\" }\nloudspeaker \"I\" { tap = \"6 W\" }"))
	if got, want := lacks(line(t, s, "Ring").Loss.Drop.Missing), `length of the return conductor from the last device back to the amplifier of line "Ring"`; got != want {
		t.Errorf("the loss lacks %q; want %q", got, want)
	}
}

// A thicker conductor is found for a ring, and divides the current as before.
func TestCablesForARing(t *testing.T) {
	t.Parallel()
	s := worked(t, looped("home_run = \"200 m\"\nring_leg = \"200 m\"", `loudspeaker "H" {
  quantity = 4
  spacing  = "10 m"
  tap      = "100 W"
}`))
	l := line(t, s, "Ring")
	larger, ok := l.SmallestCable(5)
	if !ok || larger.Cable != "2 x 2.5 mm2" && larger.Cable != "2 x 4 mm2" || larger.Drop > 5 {
		t.Errorf("%+v", larger)
	}
	currents, _ := l.Currents()
	// 400 W are 4 A with no cable, 2 A each way: a tenth of what 2.5 mm² may carry (27 A), and 1.5 mm² (19.5 A) does not.
	if cable, most, ok := l.CableFor(&currents[0], 0.1); !ok || cable != "2 x 2.5 mm2" {
		t.Errorf("it is %q for %v", cable, most)
	}
}

// The treble of a ring is known where the cable states what it has; that of a reverse return only within bounds.
func TestTrebleOfLoops(t *testing.T) {
	t.Parallel()
	const model = `cable_model "own/2 x 1.5 mm2" {
  size        = "1.5 mm2"
  cores       = 2
  inductance  = "0.6 uH/m"
  capacitance = "70 pF/m"
}
`
	design := func(loop string) *analysis.Line {
		text := looped("home_run = \"100 m\"\n"+loop, `loudspeaker "H" {
  quantity = 4
  spacing  = "10 m"
  tap      = "100 W"
}`)
		return line(t, worked(t, model+strings.Replace(text, "\"2 x 1.5 mm2\"", "\"own/2 x 1.5 mm2\"", 1)), "Ring")
	}
	plain, ring := design("").Treble(), design("ring_leg = \"100 m\"").Treble()
	if plain.Bound || ring.Bound || len(ring.Missing) > 0 {
		t.Fatalf("plain %+v, ring %+v", plain, ring)
	}
	if !(ring.Loss > 0 && ring.Loss < plain.Loss) || !strings.Contains(ring.Way, " m of cable one way and ") {
		t.Errorf("plain %v, ring %v, %s", plain.Loss, ring.Loss, ring.Way)
	}
	reverse := design("ring_leg = \"100 m\"\nreturn = \"reverse\"").Treble()
	if !reverse.Bound || len(reverse.Unstated) != 1 || !(reverse.Loss > 0) || math.IsInf(float64(reverse.Loss), 0) {
		t.Errorf("%+v", reverse)
	}
	if strings.Contains(fmt.Sprint(reverse.Assumed), "side by side") {
		t.Errorf("assumed: %q", reverse.Assumed)
	}
	_, _, ok := design("ring_leg = \"100 m\"").TrebleSplit(0.01)
	if !ok {
		t.Error("no number of lines is found")
	}
}

// A ring written from its other end is the same ring, and a run written singly the same as with a quantity.
func TestLoopsWrittenOtherwise(t *testing.T) {
	t.Parallel()
	taps := []int{6, 30, 12, 60, 20}
	single := func(order []int, home int, legs []int, more string) *analysis.Line {
		var devices strings.Builder
		for i, k := range order {
			fmt.Fprintf(&devices, "loudspeaker \"H%d\" {\n  leg = \"%d m\"\n  tap = \"%d W\"\n}\n", k, legs[i], taps[k])
		}
		return line(t, worked(t, looped(fmt.Sprintf("home_run = \"%d m\"\n%s", home, more), devices.String())), "Ring")
	}
	a := single([]int{0, 1, 2, 3, 4}, 10, []int{0, 20, 30, 40, 50}, `ring_leg = "60 m"`)
	b := single([]int{4, 3, 2, 1, 0}, 60, []int{0, 50, 40, 30, 20}, `ring_leg = "10 m"`)
	if a.Loss.Worst != b.Loss.Worst {
		t.Errorf("worst is %s, from the other end %s", a.Loss.Worst, b.Loss.Worst)
	}
	within(t, "drop", float64(a.Loss.Drop.Value), float64(b.Loss.Drop.Value), 1e-9)
	within(t, "heat", float64(a.Loss.CablePower), float64(b.Loss.CablePower), 1e-9)
	if len(a.Loss.Cables) != 1 || a.Loss.Cables[0] != b.Loss.Round[0] || a.Loss.Round[0] != b.Loss.Cables[0] {
		t.Errorf("ways %+v and %+v, from the other end %+v and %+v", a.Loss.Cables, a.Loss.Round, b.Loss.Cables, b.Loss.Round)
	}
	for _, loop := range []string{`ring_leg = "60 m"`, "ring_leg = \"60 m\"\nreturn = \"reverse\""} {
		taps = []int{10, 10, 10, 10}
		singly := single([]int{0, 1, 2, 3}, 10, []int{0, 7, 7, 7}, loop)
		run := line(t, worked(t, looped("home_run = \"10 m\"\n"+loop, "loudspeaker \"H\" {\n  quantity = 4\n  spacing = \"7 m\"\n  tap = \"10 W\"\n}")), "Ring")
		within(t, "drop of "+loop, float64(run.Loss.Drop.Value), float64(singly.Loss.Drop.Value), 1e-12)
		within(t, "heat of "+loop, float64(run.Loss.CablePower), float64(singly.Loss.CablePower), 1e-12)
	}
}
