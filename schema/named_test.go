package schema

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestNamed(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, `
amplifier "Rack" {
  output "Zone 1" { volts = "100 V" }
}
mixer "Matrix" {}
line "L" {
  loudspeaker "H" { quantity = 4 }
  attenuator "Room" {
    quantity = 3
    loudspeaker "Bed" {}
  }
  existing "Old" {}
}
group "All" { lines = ["L"] }
music "Player" {}
mute_link "Panel" {}
space "Hall" { alike = 3 }
reading "First" { line = "L" }
supply "Mains" {}
part "Rack rails" { quantity = 2 }
`)
	var got []string
	for p := range d.Named() {
		got = append(got, strings.TrimSpace(p.Line+" "+p.Kind+" "+p.Part.Name+" "+strings.Repeat("I", p.Count)))
	}
	want := []string{
		"amplifier Rack I", "mixer Matrix I", "line L I", "L loudspeaker H IIII", "L attenuator Room III", "L existing Old I", "L loudspeaker Bed I",
		"group All I", "music Player I", "mute_link Panel I", "space Hall III", "reading First I", "supply Mains I", "part Rack rails II",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("parts (-want +got):\n%s", diff)
	}
	n := 0
	for range d.Named() {
		if n++; n == 5 {
			break
		}
	}
}

func TestContent(t *testing.T) {
	t.Parallel()
	const plain = "{ containment = \"tray # 4\" }"
	for text, same := range map[string]bool{
		"{\n  containment   = \"tray # 4\" # a comment\n\n  /* another */\n}": true,
		"{\r\n// one\r\ncontainment=\"tray # 4\"\r\n}":                        true,
		"{ containment = \"tray\" }":                                          false,
		"{ containment = \"tray #4\" }":                                       false,
		"{}":                                                                  false,
	} {
		a := soundDesign(t, "line \"A\" "+plain).Lines[0].Content()
		if b := soundDesign(t, "line \"B\" "+text).Lines[0].Content(); (a == b) != same {
			t.Errorf("%q is the same as %q: %v, want %v", a, b, !same, same)
		}
	}
}
