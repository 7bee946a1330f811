package textout

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"loudlint/linter"
	"loudlint/linter/analysis"
)

// quay has a desk that silences music, a handheld whose plug leaves the contact
// behind, a message of which not enough is said, a fire panel, and lines of which
// some are alike.
const quay = `system "Quay" { revision = "A" }
mixer "Matrix" {
  input "Desk" {
    takes    = "paging desk"
    triggers = ["contact"]
    mutes    = ["Music", "Handheld"]
  }
  input "Handheld" {
    takes      = "microphone"
    connectors = ["XLR 3"]
    triggers   = ["contact"]
    mutes      = ["Music"]
  }
  input "Message" { takes = "line" }
  input "Music" { takes = "line" }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Music"]
    mutes_on = "open"
  }
  send "Zone" {
    quantity = 2
    into     = "Amp"
    input    = "Channel"
  }
}
amplifier "Amp" { model = "typical/line-amp-2x240" }
amplifier "Café amp" {
  input "Aux" { takes = "line" }
}
amplifier "Spare" { rated_power = "60 W" }
line "North" {
  amplifier = "Amp"
  output    = "Channel 1"
  loudspeaker "N" { tap = "6 W" }
}
line "South" {
  amplifier = "Amp"
  output    = "Channel 2"
  loudspeaker "S" { tap = "6 W" }
}
line "Café" {
  amplifier = "Café amp"
  output    = "100 V"
  loudspeaker "C" { tap = "6 W" }
}
line "Store" {
  amplifier = "Spare"
  output    = "100 V"
  loudspeaker "T" { tap = "6 W" }
}
microphone "Harbour office" {
  into      = "Matrix"
  input     = "Desk"
  connector = "RJ45"
  trigger   = "contact"
  priority  = 1
}
microphone "Handheld" {
  into      = "Matrix"
  input     = "Handheld"
  connector = "XLR 3"
  trigger   = "contact"
  priority  = 2
}
message "Departures" {
  into     = "Matrix"
  input    = "Message"
  priority = 3
}
music "Matrix player" {
  into     = "Matrix"
  input    = "Music"
  priority = 4
}
music "Café player with a name that is longer than its column" {
  into  = "Café amp"
  input = "Aux"
}
mute_link "Fire panel" {
  into    = "Matrix"
  input   = "Fire mute"
  contact = "opens in alarm"
  mutes   = ["Matrix player"]
}
`

// bar has marks that are rare: music that silences the desk on one line only, two
// desks that silence each other, and one that turns the music down.
const bar = `system "Bar" {}
amplifier "Rack" {
  input "Desk" {
    takes      = "microphone"
    triggers   = ["signal"]
    mutes      = ["Door", "Jukebox"]
    mute_depth = "20 dB"
  }
  input "Door" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Desk", "Jukebox"]
  }
  input "Jukebox" {
    takes    = "line"
    triggers = ["signal"]
    mutes    = ["Desk"]
  }
}
amplifier "Yard amp" {
  input "Desk" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Jukebox"]
  }
  input "Jukebox" {
    takes    = "line"
    triggers = []
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "6 W" }
}
line "Yard" {
  amplifier = "Yard amp"
  output    = "100 V"
  loudspeaker "Y" { tap = "6 W" }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Desk"
  trigger  = "signal"
  priority = 1
  also {
    into  = "Yard amp"
    input = "Desk"
  }
}
microphone "Door" {
  into     = "Rack"
  input    = "Door"
  trigger  = "signal"
  priority = 2
}
music "Jukebox" {
  into     = "Rack"
  input    = "Jukebox"
  trigger  = "signal"
  priority = 3
  also {
    into  = "Yard amp"
    input = "Jukebox"
  }
}
`

// crowd is a design with more sources than a page has columns.
func crowd(sources int) string {
	var b strings.Builder
	b.WriteString("amplifier \"Rack\" {\n")
	for n := range sources {
		fmt.Fprintf(&b, "  input \"Aux %d\" { triggers = [] }\n", n+1)
	}
	b.WriteString("}\nline \"Hall\" {\n  amplifier = \"Rack\"\n  output = \"100 V\"\n  loudspeaker \"H\" { tap = \"6 W\" }\n}\n")
	for n := range sources {
		fmt.Fprintf(&b, "music \"Player %d\" {\n  into = \"Rack\"\n  input = \"Aux %d\"\n}\n", n+1, n+1)
	}
	return b.String()
}

func TestMatrices(t *testing.T) {
	t.Parallel()
	design := func(name, text string) *linter.Judged {
		d := read(t, name, map[string]string{name: text})
		return &linter.Judged{Name: name, Design: d, System: analysis.Analyse(d, 1)}
	}
	broken := &linter.Judged{Name: "absent.pa.hcl", Err: errors.New("there is no file or folder absent.pa.hcl")}
	for _, test := range []struct {
		name   string
		result *linter.Result
		o      Options
	}{
		{"matrix", resultOf(design("quay.pa.hcl", quay)), Options{}},
		{"matrix-colours", resultOf(design("quay.pa.hcl", quay)), Options{Colour: true}},
		{"matrix-above", resultOf(design("bar.pa.hcl", bar)), Options{}},
		{"matrix-crowd", resultOf(design("crowd.pa.hcl", crowd(12)), design("alone.pa.hcl", "system \"Alone\" {}\n"), broken), Options{Width: 50}},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var page bytes.Buffer
			if err := WriteMatrix(&page, test.result, test.o); err != nil {
				t.Fatal(err)
			}
			golden(t, test.name, page.Bytes())
		})
	}
}
