package report

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
)

// hallsText is two halls; the first has loudspeakers enough, the second one too few.
// The name of the second is written from the right and would be markup.
var hallsText = func() string {
	hall := func(name string, count int) string {
		return fmt.Sprintf(`
line %[1]q {
  amplifier = "A"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker %[1]q {
    quantity    = %[2]d
    spacing     = "4 m"
    tap         = "6 W"
    kind        = "ceiling"
    space       = %[1]q
    sensitivity = "90 dB"
    coverage    = "120 deg"
  }
}
space %[1]q {
  length            = "20 m"
  width             = "12 m"
  height            = "3.5 m"
  listeners         = "seated"
  noise             = "60 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.9 s"
}
`, name, count)
	}
	return "amplifier \"A\" {\n  rated_power = \"240 W\"\n}\n" + hall("First", 15) + hall("אולם <b>", 2)
}()

func TestWhatIsHeard(t *testing.T) {
	t.Parallel()
	j, ok := judgedText(t, hallsText)
	if !ok {
		t.Fatal("the design is not understood")
	}
	page := written(t, j)
	for _, wrong := range structure(page) {
		t.Error(wrong)
	}
	_, section, ok := bytes.Cut(page, []byte(`<h2 id="heard">`))
	if !ok {
		t.Fatal("no section")
	}
	text, _, _ := strings.Cut(string(section), "</section>")
	for what, n := range map[string]int{
		`<title id="space-1-map-1-t">Level at full output in dBA in space &#34;First&#34;</title>`:              1,
		`<title id="space-2-map-2-t">Speech transmission index (STI) in space &#34;אולם &lt;b&gt;&#34;</title>`: 1,
		"<desc ":                 4,
		`<path class="d-contour`: 4 + 4, // each with its legend
		"<b>אולם":                0,
	} {
		if got := strings.Count(text, what); got != n {
			t.Errorf("%d of %s, want %d", got, what, n)
		}
	}
	for _, one := range j.System.Sounds() {
		levels, speech := one.Levels(), one.Speech()
		for _, figure := range []string{
			levels.Least.Value.String(), levels.Fifth.Value.String(), levels.Mean.Value.String(), levels.Most.Value.String(),
			fmt.Sprintf("%.1f dB", float64(levels.Spread)), fmt.Sprintf("%.2f", speech.Mean), fmt.Sprintf("%.2f", speech.Fifth),
		} {
			if !strings.Contains(text, `<td class="value">`+figure) {
				t.Errorf("%s of %s is not in the table", figure, one.Space.Name)
			}
		}
	}
}

// Where maps would take too much, spaces with findings keep theirs, and the page says
// how many have none.
func TestMapsAreBounded(t *testing.T) {
	t.Parallel()
	j, _ := judgedText(t, hallsText)
	p := &page{}
	p.sounds(j, mapBytes)
	size := 0
	for _, s := range p.Spaces {
		for _, picture := range s.Pictures {
			size += len(picture)
		}
	}
	if p.Unmapped != "" || len(p.Spaces[0].Pictures) != 2 || len(p.Spaces[1].Pictures) != 2 {
		t.Errorf("maps of two spaces are too many: %q", p.Unmapped)
	}
	bounded := &page{}
	bounded.sounds(j, size-1)
	if len(bounded.Spaces[0].Pictures) != 0 || len(bounded.Spaces[1].Pictures) != 2 {
		t.Error("the space with a finding does not keep its maps, or the other does")
	}
	if !strings.HasPrefix(bounded.Unmapped, "Maps of 1 of the 2 spaces are left out") {
		t.Errorf("it says %q", bounded.Unmapped)
	}
}

func TestWithoutSpacesNothingIsHeard(t *testing.T) {
	t.Parallel()
	j, _ := judgedText(t, `amplifier "A" { rated_power = "60 W" }`)
	if bytes.Contains(written(t, j), []byte("What is heard")) {
		t.Error("a section about nothing")
	}
}
