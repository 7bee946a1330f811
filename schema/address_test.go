package schema

import "testing"

func TestAbsent(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, `
amplifier "Rack" {
  channel "Main" { rated_power = "60 W" }
  output "Zone 1" { volts = "100 V" }
}
mixer "Matrix" {}
line "Hall" {
  loudspeaker "H" { quantity = 4 }
  attenuator "Level" {
    loudspeaker "Back" {}
  }
}
line "Bar" {
  loudspeaker "B" {}
}
music "Player" {}
mute_link "Panel" {}
space "Hall" {}
supply "Mains" {}
reading "First" { line = "Hall" }
`)
	at := func(name string) Value[string] { return Value[string]{V: name, Text: name, Span: d.Lines[0].Header} }
	for _, test := range []struct {
		address Address
		absent  string // kind and name, then the nearest
	}{
		{Address{}, ""},
		{Address{Amplifier: at("Rack"), Channel: at("Main")}, ""},
		{Address{Amplifier: at("Rack"), Output: at("Zone 1")}, ""},
		{Address{Mixer: at("Matrix")}, ""},
		{Address{Line: at("Hall"), Loudspeaker: at("h 4")}, ""},
		{Address{Line: at("Hall"), Attenuator: at("Level")}, ""},
		{Address{Loudspeaker: at("B")}, ""},
		{Address{Source: at("Player"), Space: at("Hall"), Supply: at("Mains"), Reading: at("First"), MuteLink: at("Panel")}, ""},
		{Address{Amplifier: at("Rak")}, "amplifier Rak Rack"},
		{Address{Amplifier: at("Rack"), Channel: at("Mian")}, "channel Mian Main"},
		{Address{Amplifier: at("Rack"), Output: at("Zone 2")}, "output Zone 2 Zone 1"},
		{Address{Amplifier: at("Gone"), Output: at("Zone 2")}, "amplifier Gone "},
		{Address{Line: at("Hal")}, "line Hal Hall"},
		{Address{Line: at("Hall"), Loudspeaker: at("B")}, "loudspeaker B "},
		{Address{Loudspeaker: at("Bck")}, "loudspeaker Bck Back"},
		{Address{Source: at("Player 2")}, "source Player 2 Player"},
		{Address{Space: at("Kitchen")}, "space Kitchen "},
		{Address{Supply: at("Main")}, "supply Main Mains"},
		{Address{Reading: at("Frist")}, "reading Frist First"},
		{Address{MuteLink: at("Pannel")}, "mute_link Pannel Panel"},
	} {
		got := ""
		if part, nearest, absent := d.Absent(&test.address); absent {
			got = part.Kind + " " + part.Name.V + " " + nearest
		}
		if got != test.absent {
			t.Errorf("%+v: %q, want %q", test.address.Parts(), got, test.absent)
		}
	}
}
