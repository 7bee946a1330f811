package analysis_test

import (
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

// TestProtects compares degrees of protection by IEC 60529 (from memory).
func TestProtects(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		has, needs string
		want       analysis.Protection
	}{
		{"IP55", "IP55", analysis.Protected},
		{"IP66", "IP55", analysis.Protected},
		{"IP54", "IP55", analysis.Unprotected},
		{"IP45", "IP55", analysis.Unprotected},
		{"IPX5", "IP55", analysis.Untold},
		{"IPX4", "IP55", analysis.Unprotected}, // water is short whatever the other digit is
		{"IP5X", "IP55", analysis.Untold},
		{"IP20", "IPX4", analysis.Unprotected},
		{"IPX4", "IPX4", analysis.Protected},
		{"IPX4", "IP04", analysis.Protected}, // 0 asks for nothing
		{"IP67", "IP65", analysis.Untold},    // immersion does not tell of jets
		{"IP68", "IP66", analysis.Untold},
		{"IP69", "IP65", analysis.Untold},
		{"IP67", "IP64", analysis.Protected},
		{"IP68", "IP67", analysis.Protected},
		{"IP69", "IP67", analysis.Untold},
		{"IP66", "IP67", analysis.Unprotected},
		{"IP47", "IP65", analysis.Unprotected},
		{"IPXX", "IPXX", analysis.Protected},
	} {
		has, err := quantity.ParseIngress(c.has)
		if err != nil {
			t.Fatal(err)
		}
		needs, err := quantity.ParseIngress(c.needs)
		if err != nil {
			t.Fatal(err)
		}
		if got := analysis.Protects(has, needs); got != c.want {
			t.Errorf("%s where %s is needed: %d, want %d", c.has, c.needs, got, c.want)
		}
	}
}

func TestExposure(t *testing.T) {
	t.Parallel()
	s := worked(t, `
amplifier "Rack" { rated_power = "100 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 4
    tap      = "5 W"
    space    = "Yard"
  }
  attenuator "Post" {
    quantity  = 2
    stands_in = "Wash"
    loudspeaker "P" {
      tap   = "5 W"
      space = "Hut"
    }
  }
  attenuator "Gate" {
    loudspeaker "G" {
      tap   = "5 W"
      space = "Yard"
    }
    loudspeaker "Hut" {
      tap   = "5 W"
      space = "Hut"
    }
  }
}
line "Again" {
  like = "Yard"
}
space "Yard" { outdoors = true }
microphone "Washer" {
  stands_in = "Wash"
  exposure  = "IP54"
}
microphone "Guard" { stands_in = "Hut" }
space "Wash" { exposure = "IP65" }
space "Hut" { height = "2.5 m" }
`)
	for space, want := range map[string][]string{
		"Yard": {"loudspeaker Y of Yard, 8", "loudspeaker G of Yard, 2", "unplaced Gate"},
		"Wash": {"attenuator Post of Yard, 4", "microphone Washer, 1"},
		"Hut":  nil,
	} {
		var got []string
		if e := s.Exposure(s.Design.Space(space)); e != nil {
			for _, p := range e.Parts {
				text := p.Kind + " " + p.Part.Name
				if p.Line != nil {
					text += " of " + p.Line.Part.Name
				}
				got = append(got, fmt.Sprintf("%s, %d", text, p.Count))
			}
			for _, a := range e.Unplaced {
				got = append(got, "unplaced "+a.Part.Name)
			}
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("what stands in %q (-want +got):\n%s", space, diff)
		}
	}
}
