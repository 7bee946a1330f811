package analysis_test

import (
	"math"
	"testing"

	"loudlint/linter/sound"
)

// Maps are of the very field that is judged: at its listeners they have its figures.
func TestFiguresAnywhere(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
    quantity = 4
    spacing  = "3 m"
  }
`)+`space "Room" {
  length            = "12 m"
  width             = "8 m"
  height            = "3.2 m"
  noise             = "50 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.8 s"
}
space "Yard" {
  length = "10 m"
  width  = "10 m"
}
`)
	room := soundOf(t, s, "Room")
	l, speech := room.Levels(), room.Speech()
	for i, level := range room.LevelsAt(l.Survey.Listeners) {
		if math.Abs(level-l.Survey.LevelDBA[i]) > 1e-9 {
			t.Fatalf("listener %d: %.6f, surveyed %.6f dBA", i, level, l.Survey.LevelDBA[i])
		}
	}
	for i, sti := range room.SpeechAt(speech.Listeners) {
		if math.Abs(sti-speech.STI[i]) > 1e-9 {
			t.Fatalf("listener %d: %.6f, surveyed %.6f", i, sti, speech.STI[i])
		}
	}
	if got := room.LevelsAt([]sound.Vector{{X: 1, Y: 1, Z: 1.2}}); len(got) != 1 || !(got[0] > 60) {
		t.Errorf("at a place of its own: %v", got)
	}
}

func TestFiguresAnywhereOfWhatIsNotKnown(t *testing.T) {
	t.Parallel()
	s := worked(t, served("Room", `
  loudspeaker "C" {`+ceiling+`
  }
`)+`space "Room" {
  length = "12 m"
  width  = "8 m"
}
`)
	room, places := soundOf(t, s, "Room"), []sound.Vector{{X: 1, Y: 1, Z: 1.2}}
	if got := room.LevelsAt(places); got != nil {
		t.Errorf("levels %v without a height of the ceiling", got)
	}
	if got := room.SpeechAt(places); got != nil {
		t.Errorf("speech %v without anything", got)
	}
}
