package schema

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"loudlint/schema/source"
)

// soundDesign reads a design of one file that has no problem.
func soundDesign(t *testing.T, text string) *Design {
	t.Helper()
	d, problems := readText(text)
	if d == nil {
		t.Fatalf("%s", told(problems))
	}
	return d
}

const quad = `
amplifier_model "made/quad" {
  lowest_impedance = "8 ohm"
  channel "Ch" {
    quantity    = 4
    rated_power = "120 W"
  }
  output "Ch" {
    quantity = 4
    channel  = "Ch" # Ch 1 belongs to Ch 1, and so on
    volts    = "70 V"
  }
  input "In" {
    quantity = 4
    channel  = "Ch"
    pad      = "0 dB"
  }
}
`

func TestRunsGoTogetherOneToOne(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, quad+`
amplifier "A" {
  model = "made/quad"
  output "Ch 3" { pad = "-3 dB" }
  input "In 2" { pad = "-6 dB" }
}
mixer "M" {
  send "Zone" {
    first    = 5
    quantity = 4
    into     = "A"
    input    = "In"
  }
}
line "L" {
  amplifier = "A"
  output    = "Ch 3"
}
`)
	a := d.Unit("A")
	for i := range 4 {
		o, in := a.Outputs[i], a.Inputs[i]
		if want := fmt.Sprintf("Ch %d", i+1); o.Name != want || o.Channel.V != want || in.Channel.V != want {
			t.Errorf("output %q is on channel %q, input %q on %q", o.Name, o.Channel.V, in.Name, in.Channel.V)
		}
		if l := d.Links[i]; l.Output.Name != fmt.Sprintf("Zone %d", i+5) || l.Input != in {
			t.Errorf("link %d goes from %q to %q", i, l.Output.Name, l.Input.Name)
		}
		if v := float64(o.Volts.V); v < 70.7 || v > 70.72 || o.Volts.Text != "70 V" {
			t.Errorf("70 V is %v, written %q", v, o.Volts.Text)
		}
	}
	if o := a.Output("Ch 3"); o.Pad.Text != "-3 dB" || d.Line("L").OutputPart != o || d.Line("L").ChannelPart != a.Channel("Ch 3") {
		t.Errorf("Ch 3: pad %q, channel of the line %v", o.Pad.Text, d.Line("L").ChannelPart)
	}
	if len(a.Overrides) != 1 || a.Overrides[0].Attribute != `input "In 2" pad` {
		t.Errorf("overrides: %+v", a.Overrides)
	}
}

// What one unit says of itself must not reach another of the same model.
func TestUnitsOfOneModelAreApart(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, quad+`
amplifier "A" {
  model            = "made/quad"
  lowest_impedance = "4 ohm"
}
amplifier "B" { model = "made/quad" }
`)
	if got := d.Unit("A").Output("Ch 1").LowestImpedance.Text; got != "4 ohm" {
		t.Errorf("A: %q", got)
	}
	if got := d.Unit("B").Output("Ch 1").LowestImpedance.Text; got != "8 ohm" {
		t.Errorf("B: %q", got)
	}
}

func TestRatedPowerIsWhatThePartSays(t *testing.T) {
	t.Parallel()
	for name, test := range map[string]struct{ model, part, want, override string }{
		"nobody says it":            {"", "", "", ""},
		"the model's channel":       {`channel "Main" { rated_power = "240 W" }`, "", "240 W", ""},
		"the model":                 {`rated_power = "240 W"`, "", "240 W", ""},
		"the part over the model":   {`rated_power = "240 W"`, `rated_power = "200 W"`, "200 W", "rated_power"},
		"the part over a channel":   {`channel "Main" { rated_power = "240 W" }`, `rated_power = "200 W"`, "200 W", "rated_power"},
		"its channel over a model":  {`rated_power = "240 W"`, `channel "Main" { rated_power = "200 W" }`, "200 W", `channel "Main" rated_power`},
		"its channel over the same": {`channel "Main" { rated_power = "240 W" }`, `channel "Main" { rated_power = "200 W" }`, "200 W", `channel "Main" rated_power`},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			d := soundDesign(t, fmt.Sprintf("amplifier_model \"made/one\" {\n%s\n}\namplifier \"A\" {\nmodel = \"made/one\"\n%s\n}\n", test.model, test.part))
			a := d.Unit("A")
			if len(a.Channels) != 1 || a.Channels[0].RatedPower.Text != test.want || a.RatedPower.Set() && a.RatedPower.Text != test.want {
				t.Errorf("channels %d, rated %q, amplifier %q", len(a.Channels), a.Channels[0].RatedPower.Text, a.RatedPower.Text)
			}
			got := ""
			for _, o := range a.Overrides {
				got += o.Attribute
			}
			if got != test.override {
				t.Errorf("overrides %q, want %q", got, test.override)
			}
		})
	}
}

// What lines imply of an amplifier hangs on no order.
func TestImpliedOutputs(t *testing.T) {
	t.Parallel()
	blocks := []string{
		"line \"A\" {\n  amplifier = \"Amp\"\n  output = \"70 V\"\n}\n",
		"line \"B\" {\n  amplifier = \"Amp\"\n  output = \"70V\"\n}\n",
		"line \"C\" { amplifier = \"Amp\" }\n",
		"line \"D\" {\n  amplifier = \"Amp\"\n  output = \"8 ohm\"\n}\n",
		"line \"Alone\" { output = \"100 V\" }\n",
		"amplifier \"Amp\" { rated_power = \"100 W\" }\n",
	}
	for range 2 {
		slices.Reverse(blocks)
		d := soundDesign(t, strings.Join(blocks, ""))
		amp := d.Unit("Amp")
		if len(amp.Outputs) != 2 || d.Line("A").OutputPart != d.Line("B").OutputPart || d.Line("A").OutputPart == nil {
			t.Errorf("%d outputs", len(amp.Outputs))
		}
		if c := d.Line("C"); c.OutputPart != nil || c.ChannelPart != amp.Channels[0] {
			t.Error("a line that names no output got one")
		}
		if o := d.Line("D").OutputPart; !o.Implied || o.RatedInto.Text != "8 ohm" || o.LowestImpedance.Text != "8 ohm" || o.Channel.V != "Main" {
			t.Errorf("8 ohm is %+v", o)
		}
		if o := d.Line("Alone").OutputPart; o == nil || o.Volts.Text != "100 V" {
			t.Error("a line drawn alone does not know its voltage")
		}
	}
}

// A run of sends into a unit of which nothing is known has an input for each.
func TestImpliedInputsOfARun(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, `
mixer "M" {
  send "Zone" {
    quantity = 3
    into     = "A"
    input    = "Channel"
  }
}
amplifier "A" {}
`)
	var names []string
	for _, l := range d.Links {
		names = append(names, l.Output.Name+" → "+l.Input.Name)
	}
	if got := strings.Join(names, ", "); got != "Zone 1 → Channel 1, Zone 2 → Channel 2, Zone 3 → Channel 3" {
		t.Error(got)
	}
}

func TestLike(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, `
amplifier "A" {}
line "One" {
  amplifier = "A"
  output    = "100 V"
  cable     = "16/2"
  home_run  = "40 m"
  formerly  = "Old"
  loudspeaker "S" { quantity = 4 }
}
line "Two" {
  like     = "One"
  home_run = "60 m"
}
line "Three" {
  like = "One"
  loudspeaker "T" {}
}
space "Hall" {
  alike   = 3
  area    = "50 m2"
  height  = "3 m"
  noise   = "50 dBA"
  wanted_over_noise = "10 dB"
}
space "Annex" {
  like         = "Hall"
  length       = "8 m"
  width        = "6 m"
  wanted_level = "70 dBA"
}
`)
	one, two, three := d.Line("One"), d.Line("Two"), d.Line("Three")
	if two.HomeRun.Text != "60 m" || two.Cable.Text != "16/2" || two.Formerly.Set() || two.Devices[0] != one.Devices[0] {
		t.Errorf("Two: %+v", two)
	}
	if three.HomeRun.Text != "40 m" || len(three.Devices) != 1 || three.Devices[0].Common().Name != "T" {
		t.Errorf("Three: %+v", three)
	}
	annex := d.Space("Annex")
	if annex.Area.Set() || annex.WantedOverNoise.Set() || annex.Alike.Set() || annex.Height.Text != "3 m" || annex.Noise.Single.Text != "50 dBA" {
		t.Errorf("Annex: %+v", annex)
	}
}

// Texts are compared as people read them: composed or not.
func TestNamesAreComposed(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, "line \"Cafe\u0301\" {}\ngroup \"G\" { lines = [\"Caf\u00e9\"] }\nmicrophone \"M\" { lines = [\"Cafe\u0301\"] }\n")
	if d.Line("Caf\u00e9") == nil {
		t.Error("not found")
	}
}

func TestDeviceAddresses(t *testing.T) {
	t.Parallel()
	soundDesign(t, `
line "L" {
  loudspeaker "H" {
    quantity = 4
    first    = 3
  }
  attenuator "Room" {
    quantity = 14
    loudspeaker "Bed" {}
    loudspeaker "Bath" { quantity = 2 }
  }
  branch "Tee" {
    loudspeaker "Aisle 2 7" {}
  }
}
reading "1" {
  line = "L"
  at   = "H 6"
}
reading "2" {
  line   = "L"
  at     = "Room 14 Bath 2"
  beyond = "Tee"
}
reading "3" {
  line = "L"
  at   = "Aisle 2 7"
}
deviation "tap-setting" {
  line        = "L"
  loudspeaker = "Room 3 Bed"
}
`)
}

// A large design, drawn device by device, in which every name is wrong, is
// refused in a time that does not grow with the square of it.
func TestLargeWrongDesign(t *testing.T) {
	t.Parallel()
	const many = 1500
	var b strings.Builder
	b.WriteString("amplifier \"A\" {\n")
	for i := range many {
		fmt.Fprintf(&b, "  output \"O %d\" { volts = \"100 V\" }\n", i)
	}
	b.WriteString("}\nline \"Model\" {\n  loudspeaker \"S\" {}\n}\n")
	for i := range many {
		fmt.Fprintf(&b, "space \"Space %d\" {}\nline \"Line %d\" {\n  like = \"Model\"\n  amplifier = \"A\"\n  output = \"P %d\"\n  loudspeaker \"S\" {\n    space = \"Spaze %d\"\n    model = \"Mode %d\"\n  }\n}\n", i, i, i, i, i)
	}
	_, problems := Read("x", []*source.File{source.NewFile("x.pa.hcl", []byte(b.String()))}, Options{})
	if len(problems) != MaxProblems {
		t.Errorf("%d problems, the first %v, the last %v", len(problems), problems[0], problems[len(problems)-1])
	}
}

// What a space says of its sound: steps, layout, noise in octaves; and where
// loudspeakers and microphones are.
func TestSpacesForSound(t *testing.T) {
	t.Parallel()
	d := soundDesign(t, `
space "Nave" {
  length  = "30 m"
  width   = "12 m"
  heights = [["0 m", "9 m"], ["20 m", "4 m"]]
  layout  = "2 x 6"
  noise   = { "1 kHz" = "42 dB", "125 Hz" = "50 dB" }
}
space "Choir" {
  like   = "Nave"
  height = "7 m"
  noise  = "40 dBA"
  layout = "hexagonal"
}
line "Nave" {
  loudspeaker "N" {
    quantity = 6
    space    = "Nave"
    position = ["2 m", "0 m", "3 m"]
    to       = ["27 m", "0 m", "4 m"]
    directivity_factor = { "500 Hz" = 4, "1 kHz" = 6.5 }
    rated_power_at     = { "125 Hz" = "3 W" }
  }
}
microphone "Lectern" { position = ["3 m", "6 m"] }
`)
	nave, choir := d.Space("Nave"), d.Space("Choir")
	if want := (Layout{Pattern: LayoutRows, Rows: 2, Columns: 6}); nave.Layout.V != want {
		t.Errorf("layout: %+v", nave.Layout)
	}
	if len(nave.Heights) != 2 || nave.Heights[1].Items[1].V != 4 {
		t.Errorf("heights: %+v", nave.Heights)
	}
	if bands := nave.Noise.Bands; len(bands) != 2 || bands[0].Frequency.V != 125 || bands[1].Value.V != 42 {
		t.Errorf("noise: %+v", bands)
	}
	if len(choir.Heights) > 0 || choir.Height.V != 7 || choir.Layout.V.Pattern != LayoutHexagonal || choir.Noise.Single.V != 40 || len(choir.Noise.Bands) > 0 {
		t.Errorf("Choir: %+v", choir)
	}
	n, ok := d.Line("Nave").Devices[0].(*Loudspeaker)
	if !ok || len(n.Position.Items) != 3 || n.To.Items[2].V != 4 || len(n.DirectivityFactor.Bands) != 2 || n.DirectivityFactor.Bands[1].Value.V != 6.5 || n.RatedPowerAt.Bands[0].Value.V != 3 {
		t.Errorf("N: %+v", n)
	}
	if len(d.Sources[0].Position.Items) != 2 {
		t.Errorf("Lectern: %+v", d.Sources[0].Position)
	}
}
