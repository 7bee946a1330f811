package schematest

import (
	"fmt"
	"strings"
)

// PerLine is how many loudspeakers a line of a made design holds at most, as on
// a real 100 V line.
const PerLine = 50

// head is what every made design begins with. The models are invented.
const head = `# A made-up design, as large as a test asks for.
system "Made-up site" {
  reference    = "MADE-1"
  revision     = "A"
  duty         = "announcements"
  wiring_rules = "Europe"
}
given {
  ceiling = 3
}
amplifier_model "made/quad-240" {
  kind             = "power amplifier"
  lowest_frequency = "60 Hz"
  channel "Ch" {
    quantity    = 4
    rated_power = "240 W"
  }
  output "100 V" {
    quantity     = 4
    channel      = "Ch"
    volts        = "100 V"
    highest_load = "240 W"
  }
  input "In" {
    takes       = "line"
    sensitivity = "0 dBu"
    connectors  = ["XLR 3"]
  }
}
loudspeaker_model "made/ceiling-6" {
  kind        = "ceiling"
  rated_power = "6 W"
  taps_100V   = ["6 W", "3 W", "1.5 W"]
  sensitivity = "90 dB"
  coverage    = "120 deg"
}
loudspeaker_model "made/wall-10" {
  kind        = "wall"
  rated_power = "10 W"
  taps_100V   = ["10 W", "6 W", "3 W"]
  sensitivity = "91 dB"
  coverage    = "100 deg"
}
music "Line source" {
  into      = "Amplifier 1"
  input     = "In"
  connector = "XLR 3"
  lead      = "5 m"
  lines     = "all"
}
`

// DesignText makes a design of so many loudspeakers, each drawn as a block of
// its own with five to ten attributes, on lines of PerLine, as one file. It
// reads without a problem and is the same for the same number.
func DesignText(loudspeakers int) string {
	var b strings.Builder
	b.WriteString(head)
	for line := range lines(loudspeakers) {
		writeLine(&b, line, min(PerLine, loudspeakers-line*PerLine))
	}
	return b.String()
}

// DesignFiles makes the same design as DesignText, its lines dealt out to so
// many files in turn.
func DesignFiles(loudspeakers, files int) []string {
	builders := make([]strings.Builder, files)
	builders[0].WriteString(head)
	for line := range lines(loudspeakers) {
		writeLine(&builders[line%files], line, min(PerLine, loudspeakers-line*PerLine))
	}
	texts := make([]string, files)
	for i := range builders {
		texts[i] = builders[i].String()
	}
	return texts
}

// OneLine makes a design whose loudspeakers all hang on a single line, half of
// them on one branch of it: no way to build, but a hard shape to read.
func OneLine(loudspeakers int) string {
	var b strings.Builder
	b.WriteString(head)
	writeAmplifier(&b, 1)
	writeSpace(&b, 1)
	b.WriteString("line \"L 1\" {\n  amplifier = \"Amplifier 1\"\n  output    = \"100 V 1\"\n  cable     = \"2 x 2.5 mm2\"\n  home_run  = \"40 m\"\n")
	for i := range loudspeakers / 2 {
		writeLoudspeaker(&b, "  ", i, 1)
	}
	b.WriteString("  branch \"Tee\" {\n    leg = \"4 m\"\n")
	for i := loudspeakers / 2; i < loudspeakers; i++ {
		writeLoudspeaker(&b, "    ", i, 1)
	}
	b.WriteString("  }\n}\n")
	return b.String()
}

func lines(loudspeakers int) int { return (loudspeakers + PerLine - 1) / PerLine }

// writeLine writes a line, its space and, before every fourth, the amplifier
// that feeds the four.
func writeLine(b *strings.Builder, line, loudspeakers int) {
	if line%4 == 0 {
		writeAmplifier(b, line/4+1)
	}
	writeSpace(b, line+1)
	fmt.Fprintf(b, "line \"L %d\" {\n  amplifier = \"Amplifier %d\"\n  output    = \"100 V %d\"\n  cable     = \"2 x 2.5 mm2\"\n  home_run  = \"%d m\"\n", line+1, line/4+1, line%4+1, 15+line%40)
	for i := range loudspeakers {
		writeLoudspeaker(b, "  ", i, line+1)
	}
	b.WriteString("}\n")
}

func writeAmplifier(b *strings.Builder, number int) {
	fmt.Fprintf(b, "amplifier \"Amplifier %d\" {\n  model     = \"made/quad-240\"\n  high_pass = \"100 Hz\"\n}\n", number)
}

func writeSpace(b *strings.Builder, number int) {
	fmt.Fprintf(b, "space \"Ward %d\" {\n  length = \"60 m\"\n  width  = \"8 m\"\n  height = \"${given.ceiling} m\"\n  noise  = \"50 dBA\"\n}\n", number)
}

func writeLoudspeaker(b *strings.Builder, indent string, i, space int) {
	model, tap := "made/ceiling-6", "3 W"
	if i%5 == 4 {
		model, tap = "made/wall-10", "6 W"
	}
	fmt.Fprintf(b, "%sloudspeaker \"H %d\" {\n", indent, i+1)
	set := func(name, value string) {
		fmt.Fprintf(b, "%s  %-8s = %s\n", indent, name, value)
	}
	set("model", `"`+model+`"`)
	set("tap", `"`+tap+`"`)
	set("leg", fmt.Sprintf(`"%d m"`, 4+i%5))
	set("space", fmt.Sprintf(`"Ward %d"`, space))
	set("basis", `"planned"`)
	if i%2 == 0 {
		set("position", fmt.Sprintf(`["%d.5 m", "%d m"]`, i%60, 2+i%5))
	}
	if i%3 == 0 {
		set("height", `"2.8 m"`)
	}
	if i%5 == 4 {
		set("aim", `"90 deg" # across the ward`)
		set("tilt", `"20 deg"`)
		set("cable", `"2 x 1.5 mm2"`)
	}
	b.WriteString(indent + "}\n")
}
