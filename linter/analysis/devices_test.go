package analysis_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema"
)

// walked writes the devices of a line one by one.
func walked(l *analysis.Line) []string {
	var all []string
	for _, d := range l.Devices() {
		text := fmt.Sprintf("%s %s <%s", d.Kind, d.Name, d.From)
		if d.Within != "" {
			text += " in " + d.Within
		}
		for _, leg := range d.Legs {
			name, length := "nothing", "?"
			if leg.Cable != nil {
				name = leg.Cable.Name
			}
			if leg.Length.Known() {
				length = leg.Length.Value.String()
			}
			text += fmt.Sprintf(", %s of %s", length, name)
			if leg.HomeRun {
				text += " home"
			}
		}
		all = append(all, text)
	}
	return all
}

func TestDevicesAreWalked(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "240 W" }
line "House" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "Off" {
    leg   = "2 m"
    cable = "2 x 1.5 mm2"
    tap   = "0 W"
  }
  branch "Tee" {
    leg = "3 m"
    loudspeaker "T" {
      quantity = 2
      first    = 4
      leg      = "1 m"
      spacing  = "5 m"
      cable    = "2 x 1.5 mm2"
      tap      = "6 W"
    }
  }
  attenuator "Room" {
    quantity = 2
    leg      = "4 m"
    spacing  = "6 m"
    loudspeaker "Bed" {
      leg = "2 m"
      tap = "3 W"
    }
  }
  existing "Old" {
    leg  = "7 m"
    load = "12 W"
  }
  line_end "Watch" {}
}
`)
	want := []string{
		"loudspeaker Off <, 20 m of 2 x 2.5 mm2 home, 2 m of 2 x 1.5 mm2",
		"branch Tee <Off, 3 m of 2 x 2.5 mm2",
		"loudspeaker T 4 <Tee in Tee, 1 m of 2 x 1.5 mm2",
		"loudspeaker T 5 <T 4 in Tee, 5 m of 2 x 1.5 mm2",
		"attenuator Room 1 <Tee, 4 m of 2 x 2.5 mm2",
		"loudspeaker Room 1, Bed <Room 1 in Room 1, 2 m of 2 x 2.5 mm2",
		"attenuator Room 2 <Room 1, 6 m of 2 x 2.5 mm2",
		"loudspeaker Room 2, Bed <Room 2 in Room 2, 2 m of 2 x 2.5 mm2",
		"existing Old <Room 2, 7 m of 2 x 2.5 mm2",
		"line_end Watch <Old",
	}
	if diff := cmp.Diff(want, walked(s.Lines[0])); diff != "" {
		t.Error(diff)
	}
	watts := map[string]float64{}
	for _, d := range s.Lines[0].Devices() {
		watts[d.Name] = float64(d.Watts.Value)
	}
	// Less than the taps by what the cable takes, and each in its place.
	for name, tap := range map[string]float64{"T 4": 6, "T 5": 6, "Room 1, Bed": 3, "Room 2, Bed": 3, "Old": 12} {
		if w := watts[name]; w > tap || w < 0.95*tap {
			t.Errorf("%s receives %g W of %g W", name, w, tap)
		}
	}
	if watts["T 5"] >= watts["T 4"] || watts["Room 2, Bed"] >= watts["Room 1, Bed"] {
		t.Errorf("the farther one receives more: %v", watts)
	}
}

func TestDevicesWithGaps(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "240 W" }
line "Gaps" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" {
    quantity = 2
    tap      = "6 W"
  }
  loudspeaker "Tapless" { cable = "2 x 1.5 mm2" }
}
line "Lumped" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  length    = "80 m"
  loudspeaker "L" {
    quantity = 2
    tap      = "6 W"
  }
}
`)
	want := []string{
		"loudspeaker G 1 <, ? of nothing home",
		"loudspeaker G 2 <G 1, ? of nothing",
		"loudspeaker Tapless <G 2, ? of 2 x 1.5 mm2",
	}
	if diff := cmp.Diff(want, walked(s.Lines[0])); diff != "" {
		t.Error(diff)
	}
	for _, d := range s.Lines[0].Devices() {
		if d.Watts.Known() {
			t.Errorf("%s receives %v although its cable is not known", d.Name, d.Watts.Value)
		}
	}
	if diff := cmp.Diff([]string{"loudspeaker L 1 <", "loudspeaker L 2 <L 1"}, walked(s.Lines[1])); diff != "" {
		t.Error(diff)
	}
	whole, ok := s.Lines[1].Whole()
	if !ok || whole.Length.Value != 80 || whole.Cable.Name != "2 x 1.5 mm2" {
		t.Errorf("the cable of the whole line: %+v %v", whole, ok)
	}
}

// TestDevicesAgreeWithTheLine holds what arrives at each device of every example
// against what the line says of its worst one, and each block of the one that
// receives most.
func TestDevicesAgreeWithTheLine(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"village_hall", "ferry_terminal", "warehouse_us", "school", "hotel"} {
		design, problems, err := schema.Load("../../examples/"+name+schema.Ending, schema.Options{})
		if err != nil || len(problems) > 0 {
			t.Fatal(name, err, problems)
		}
		for _, l := range analysis.Analyse(design, 1).Lines {
			worst, most, names, count := 0.0, map[*analysis.Run]float64{}, map[string]bool{}, 0
			for _, d := range l.Devices() {
				if names[d.Name] {
					t.Errorf("%s: %s stands twice on line %s", name, d.Name, l.Part.Name)
				}
				names[d.Name] = true
				worst = math.Max(worst, float64(d.Loss.Value))
				if d.Run != nil {
					count++
					most[d.Run] = math.Max(most[d.Run], float64(d.Watts.Value))
				}
			}
			if count != l.Loudspeakers {
				t.Errorf("%s: line %s has %d loudspeakers, walked past %d", name, l.Part.Name, l.Loudspeakers, count)
			}
			if l.Loss.Drop.Known() && math.Abs(worst-float64(l.Loss.DB)) > 1e-9 {
				t.Errorf("%s: line %s loses %g dB, its worst device %g", name, l.Part.Name, float64(l.Loss.DB), worst)
			}
			for _, r := range l.Runs {
				if r.Delivered.Known() && len(r.Delivered.Assumed) == 0 && strings.TrimSpace(r.MostAt) != "" && math.Abs(most[r]-float64(r.Delivered.Value)) > 1e-9*most[r] {
					t.Errorf("%s: %s of line %s receives %v at most, its devices %g", name, r.Part.Name, l.Part.Name, r.Delivered.Value, most[r])
				}
			}
		}
	}
}

func TestExpected(t *testing.T) {
	t.Parallel()
	s := worked(t, `amplifier "Rack" { rated_power = "120 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "0 m"
  attenuator "Bar" {
    setting = "-20 dB"
    leg     = "0 m"
    loudspeaker "C" {
      quantity = 10
      spacing  = "0 m"
      leg      = "0 m"
      tap      = "10 W"
    }
  }
}
`)
	m := s.Expected(s.Lines[0])
	// (100 V)² / 100 W; the attenuator is taken as fully up, whatever it is set to.
	if !m.Impedance.Known() || math.Abs(float64(m.Impedance.Value)-100) > 1e-6 || len(m.Unsure) > 0 {
		t.Errorf("%+v", m.Impedance)
	}
}
