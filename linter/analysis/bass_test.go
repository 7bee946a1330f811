package analysis_test

import (
	"fmt"
	"testing"
)

// bassDesign has a hall with music and calls, and a yard with calls; the music
// comes through a mixer.
const bassDesign = `
mixer "Desk" {
  %s
  send "Out" { into = "Rack" }
}
amplifier "Rack" {
  rated_power      = "240 W"
  lowest_frequency = "%s"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 5
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
  loudspeaker "Off" {
    tap              = "0 W"
    lowest_frequency = "400 Hz"
  }
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity         = 2
    tap              = "10 W"
    lowest_frequency = "350 Hz"
  }
}
music "Player" {
  into  = "Desk"
  lines = ["Hall"]
}
microphone "Calls" { into = "Rack" }
`

// TestBass follows the cut of the bass along each way: the highest one on a way
// protects, and of several sources the least protected counts.
func TestBass(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		mixer, amplifier string
		music, speech    string // loudspeakers short of all, need, cut
	}{
		"none cuts":       {"", "50 Hz", "5 of 5, 120 Hz, 50 Hz", "2 of 2, 350 Hz, 50 Hz"},
		"mixer cuts":      {`high_pass = "150 Hz"`, "50 Hz", "0 of 0, 0 Hz, 0 Hz", "7 of 7, 350 Hz, 50 Hz"},
		"amplifier does":  {"", "120 Hz", "0 of 5, 120 Hz, 120 Hz", "2 of 2, 350 Hz, 120 Hz"},
		"for all of them": {"", "350 Hz", "0 of 5, 120 Hz, 350 Hz", "0 of 2, 350 Hz, 350 Hz"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := worked(t, fmt.Sprintf(bassDesign, c.mixer, c.amplifier))
			music, speech := s.Bass(s.Amplifiers[0])
			if got := fmt.Sprintf("%d of %d, %s, %s", music.Short, music.All, music.Needs.V, music.Cut.V); got != c.music {
				t.Errorf("music: %s, want %s", got, c.music)
			}
			if got := fmt.Sprintf("%d of %d, %s, %s", speech.Short, speech.All, speech.Needs.V, speech.Cut.V); got != c.speech {
				t.Errorf("speech: %s, want %s", got, c.speech)
			}
		})
	}
}

// TestPlaces sorts loudspeakers to spaces, and to lines where they name none.
func TestPlaces(t *testing.T) {
	t.Parallel()
	s := worked(t, `
space "Empty" {}
space "Hall" {}
line "A" {
  loudspeaker "1" {}
  loudspeaker "2" { space = "Hall" }
}
line "B" {
  loudspeaker "3" { space = "Hall" }
  loudspeaker "4" {}
}
`)
	got := ""
	for _, p := range s.Places() {
		got += p.Name() + ":"
		for _, r := range p.Runs {
			got += " " + r.Part.Name
		}
		got += "; "
	}
	if want := "Hall: 2 3; A: 1; B: 4; "; got != want {
		t.Errorf("places %q, want %q", got, want)
	}
}
