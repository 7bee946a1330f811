package schema

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"github.com/hashicorp/hcl/v2/hclwrite"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

func typicalCatalogue(t *testing.T) *Catalogue {
	t.Helper()
	c, err := Typical()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// readText reads a design of one file.
func readText(text string) (*Design, []Problem) {
	return Read("design", []*source.File{source.NewFile("design"+Ending, []byte(text))}, Options{Workers: 1})
}

func mustRead(t *testing.T, text string) *Design {
	t.Helper()
	d, problems := readText(text)
	for _, p := range problems {
		t.Errorf("line %d: %s", p.Span.From().Line, p)
	}
	if d == nil {
		t.Fatalf("no design of:\n%s", text)
	}
	return d
}

func within(a, b, share float64) bool { return math.Abs(a-b) <= share*b }

// The files are cut into models without parsing them: that must find what the
// parser finds.
func TestTypicalFilesAreLaidOutForCutting(t *testing.T) {
	t.Parallel()
	for _, class := range typicalClasses() {
		file := typicalFile(class)
		whole := parseFile(file)
		if len(whole.problems) > 0 {
			t.Fatalf("%s: %v", class, whole.problems[0])
		}
		var parsed []typicalBlock
		for _, b := range whole.body.Blocks {
			parsed = append(parsed, typicalBlock{b.Labels[0], b.TypeRange.Start.Byte, b.CloseBraceRange.End.Byte})
		}
		if diff := cmp.Diff(parsed, typicalBlocks(file.Text), cmp.AllowUnexported(typicalBlock{})); diff != "" {
			t.Errorf("%s, parsed against cut:\n%s", class, diff)
		}
		if formatted := hclwrite.Format(file.Text); string(formatted) != string(file.Text) {
			t.Errorf("%s is not laid out evenly:\n%s", class, cmp.Diff(string(file.Text), string(formatted)))
		}
	}
}

func TestTypicalHasEveryClass(t *testing.T) {
	t.Parallel()
	models := typicalCatalogue(t).Models()
	if len(models) < 30 {
		t.Errorf("the typical catalogue has %d models, at least 30 are promised", len(models))
	}
	tests := []struct {
		what, kind, class, summary string
	}{
		{"mixer amplifier with zones", "amplifier_model", "mixer amplifier", `zones of 100 V`},
		{"mixer amplifier for 70 V", "amplifier_model", "mixer amplifier", `^\d+ W, 70 V`},
		{"mixer amplifier with a low-impedance output", "amplifier_model", "mixer amplifier", `8 ohm`},
		{"line amplifier", "amplifier_model", "power amplifier", `^\d+ W, 100 V`},
		{"line amplifier of several channels", "amplifier_model", "power amplifier", `^\d × \d+ W, 100 V`},
		{"the same for 70 V", "amplifier_model", "power amplifier", `^\d × \d+ W, 70 V`},
		{"stereo low-impedance amplifier", "amplifier_model", "low-impedance amplifier", `^2 × \d+ W, 4 ohm`},
		{"pre-amplifier", "mixer_model", "pre-amplifier", `1 output`},
		{"matrix", "mixer_model", "matrix", `any input to any output`},
		{"ceiling loudspeaker", "loudspeaker_model", "ceiling", `taps .* at 100 V`},
		{"loudspeaker for 70 V", "loudspeaker_model", "ceiling", `taps .* at 70 V`},
		{"loudspeaker for 25 V", "loudspeaker_model", "ceiling", `taps .* at 25 V`},
		{"cabinet", "loudspeaker_model", "wall", `taps .* at 100 V`},
		{"low-impedance loudspeaker", "loudspeaker_model", "wall", `8 ohm, no transformer`},
		{"column", "loudspeaker_model", "column", `taps`},
		{"horn", "loudspeaker_model", "horn", `taps`},
		{"pendant loudspeaker", "loudspeaker_model", "pendant", `taps`},
		{"garden loudspeaker", "loudspeaker_model", "garden", `taps`},
		{"plain attenuator", "attenuator_model", "attenuator", `off, no override`},
		{"attenuator that cannot silence", "attenuator_model", "attenuator", `-20 dB`},
		{"attenuator with relay", "attenuator_model", "attenuator", `24 V relay`},
		{"attenuator with third conductor", "attenuator_model", "attenuator", `third conductor, 3 cores`},
		{"desk with contact", "microphone_model", "microphone", `DIN 5, contact`},
		{"desk without contact", "microphone_model", "microphone", `XLR 3, no contact`},
		{"desk with zone keys", "microphone_model", "microphone", `RJ45, contact, selects`},
		{"microphone with phantom power", "microphone_model", "microphone", `phantom 48 V`},
		{"cable of class 2", "cable_model", "cable", `mm2, class 2`},
		{"cable of class 5", "cable_model", "cable", `mm2, class 5`},
		{"cable with cores for an override", "cable_model", "cable", `^4 x 1.5 mm2`},
		{"fire-resistant cable", "cable_model", "cable", `in a fire`},
		{"solid gauge", "cable_model", "cable", `16 AWG, solid`},
		{"stranded gauge", "cable_model", "cable", `16 AWG, stranded`},
		{"microphone cable", "cable_model", "cable", `shield`},
		{"connector", "connector_model", "connector", `^5 contacts`},
	}
	for _, test := range tests {
		summary := regexp.MustCompile(test.summary)
		if !slices.ContainsFunc(models, func(m Model) bool {
			return m.Kind == test.kind && m.Class == test.class && summary.MatchString(m.Summary)
		}) {
			t.Errorf("no %s: no %s of class %q has %q in its summary", test.what, test.kind, test.class, test.summary)
		}
	}
	for _, mm2 := range []string{"0.75", "1", "1.5", "2.5", "4", "6"} {
		for _, name := range []string{"typical/2 x " + mm2 + " mm2", "typical/2 x " + mm2 + " mm2 class 2"} {
			if !slices.ContainsFunc(models, func(m Model) bool { return m.Name == name }) {
				t.Errorf("no %q", name)
			}
		}
	}
	for gauge := 12; gauge <= 22; gauge += 2 {
		for _, made := range []string{"solid", "stranded"} {
			if name := fmt.Sprintf("typical/%d-2 AWG %s", gauge, made); !slices.ContainsFunc(models, func(m Model) bool { return m.Name == name }) {
				t.Errorf("no %q", name)
			}
		}
	}
}

func TestTypicalEntriesSayWhatTheyAre(t *testing.T) {
	t.Parallel()
	c := typicalCatalogue(t)
	notes := map[string]string{}
	for _, m := range c.Units {
		notes[m.Name] = m.Note.V
	}
	for _, m := range c.Loudspeakers {
		notes[m.Name] = m.Note.V
	}
	for _, m := range c.Attenuators {
		notes[m.Name] = m.Note.V
	}
	for _, m := range c.Microphones {
		notes[m.Name] = m.Note.V
	}
	for _, m := range c.Cables {
		notes[m.Name] = m.Note.V
	}
	for _, m := range c.Connectors {
		notes[m.Name] = m.Note.V
	}
	seen := map[string]bool{}
	for _, m := range c.Models() {
		if !IsTypical(m.Name) {
			t.Errorf("%q is not called typical", m.Name)
		}
		if key := fold(m.Name); seen[key] {
			t.Errorf("a second model is called %q", m.Name)
		} else {
			seen[key] = true
		}
		if !strings.Contains(notes[m.Name], "of no maker") {
			t.Errorf("%q does not say that it is of no maker, but %q", m.Name, notes[m.Name])
		}
		if m.Kind != "connector_model" && !strings.Contains(notes[m.Name], "invented figures, typical of the class") {
			t.Errorf("%q does not say that its figures are invented, but %q", m.Name, notes[m.Name])
		}
	}
}

// tapList is the taps of one loudspeaker at one voltage.
type tapList struct {
	volts float64
	taps  []Value[quantity.Power]
}

// tapRounding is how far a printed tap may be from the power a winding takes:
// "0.38 W" for 0.375 W.
const tapRounding = 0.03

func (l tapList) has(watts float64) bool {
	return slices.ContainsFunc(l.taps, func(v Value[quantity.Power]) bool { return within(float64(v.V), watts, tapRounding) })
}

// Taps of one winding at different voltages take power as the square of the
// voltage: half of the 100 V figure at 70 V (100/√2), an eighth of the 70 V
// figure at 25 V.
func TestTypicalTapsBelongToTheSameWindings(t *testing.T) {
	t.Parallel()
	for _, m := range typicalCatalogue(t).Loudspeakers {
		at100, at70, at25 := tapList{100, m.Taps100V.Items}, tapList{float64(quantity.Voltage(70).Line()), m.Taps70V.Items}, tapList{25, m.Taps25V.Items}
		if len(at100.taps)+len(at70.taps)+len(at25.taps) == 0 && !m.Impedance.Set() {
			t.Errorf("%s has neither taps nor an impedance", m.Name)
		}
		if m.Taps100V.Set() && !m.Taps70V.Set() {
			t.Errorf("%s has no taps for 70 V", m.Name)
		}
		for _, l := range []tapList{at100, at70, at25} {
			tapsFall(t, m, l)
		}
		sameWindings(t, m, at100, at70)
		sameWindings(t, m, at70, at25)
	}
}

func tapsFall(t *testing.T, m *LoudspeakerModel, l tapList) {
	t.Helper()
	for n, tap := range l.taps {
		if tap.V > m.RatedPower.V {
			t.Errorf("%s: the tap of %s is above the rated power of %s", m.Name, tap.Text, m.RatedPower.Text)
		}
		if n > 0 && tap.V >= l.taps[n-1].V {
			t.Errorf("%s: the taps at %.0f V do not fall", m.Name, l.volts)
		}
	}
}

func sameWindings(t *testing.T, m *LoudspeakerModel, high, low tapList) {
	t.Helper()
	if len(high.taps) == 0 || len(low.taps) == 0 {
		return
	}
	ratio := (high.volts / low.volts) * (high.volts / low.volts)
	for _, tap := range low.taps {
		if up := float64(tap.V) * ratio; up <= float64(m.RatedPower.V)*(1+tapRounding) && !high.has(up) {
			t.Errorf("%s: %s at %.0f V would take %.3g W at %.0f V, which is not listed", m.Name, tap.Text, low.volts, up, high.volts)
		}
	}
	lowest := float64(low.taps[len(low.taps)-1].V)
	for _, tap := range high.taps {
		// At 25 V few of the windings are marked, so only figures in the span of the list must be there.
		if down := float64(tap.V) / ratio; (low.volts > 25 || down >= lowest*(1-tapRounding)) && !low.has(down) {
			t.Errorf("%s: %s at %.0f V would take %.3g W at %.0f V, which is not listed", m.Name, tap.Text, high.volts, down, low.volts)
		}
	}
}

// Spans in which figures of real classes lie; from memory, no published source.
func TestTypicalLoudspeakersArePlausible(t *testing.T) {
	t.Parallel()
	for _, m := range typicalCatalogue(t).Loudspeakers {
		low, high := 86.0, 97.0
		if m.Class.V == "horn" {
			low, high = 100, 112
		}
		if s := float64(m.Sensitivity.V); s < low || s > high {
			t.Errorf("%s: sensitivity %g dB is not between %g and %g dB", m.Name, s, low, high)
		}
		if a := float64(m.Coverage.V); a < 40 || a > 360 || !m.CoverageAt.Set() {
			t.Errorf("%s: coverage %g deg at %s", m.Name, a, m.CoverageAt.Text)
		}
		if m.CoverageUp.Set() && m.CoverageUp.V > m.Coverage.V {
			t.Errorf("%s covers more upright than level", m.Name)
		}
		if f := float64(m.LowestFrequency.V); f < 40 || f > 500 {
			t.Errorf("%s: lowest frequency %g Hz", m.Name, f)
		}
		outdoors := m.Class.V == "horn" || m.Class.V == "garden"
		if outdoors && (m.Exposure.V.Water < 4 || !m.Exposure.Set()) {
			t.Errorf("%s stands outdoors with %q", m.Name, m.Exposure.Text)
		}
	}
}

func ratedWatts(m *UnitModel) float64 {
	rated := 0.0
	for _, c := range m.Channels {
		rated += float64(c.RatedPower.V) * float64(c.Count())
	}
	return rated
}

func TestTypicalUnitsTakeMoreThanTheyGive(t *testing.T) {
	t.Parallel()
	for _, m := range typicalCatalogue(t).Units {
		rated, idle, full := ratedWatts(m), float64(m.MainsIdle.V), float64(m.MainsFull.V)
		if full <= idle || idle <= 0 {
			t.Errorf("%s takes %g W idle and %g W in full use", m.Name, idle, full)
		}
		if m.BatteryVolts.Set() && m.BatteryFull.V <= m.BatteryIdle.V {
			t.Errorf("%s takes no more from its battery in full use than idle", m.Name)
		}
		if watts := float64(m.BatteryVolts.V) * float64(m.BatteryFull.V); m.BatteryVolts.Set() && watts <= rated {
			t.Errorf("%s takes %g W from its battery and gives %g W", m.Name, watts, rated)
		}
		if m.Kind == KindMixer {
			if rated > 0 {
				t.Errorf("%s is a mixer with a power stage", m.Name)
			}
			continue
		}
		// Share of the mains power that reaches the lines: from memory, no published source.
		if share := rated / full; rated < 30 || share < 0.4 || share > 0.85 {
			t.Errorf("%s gives %g W and takes %g W from the mains", m.Name, rated, full)
		}
	}
}

func TestTypicalUnitsHaveFittingOutputsAndInputs(t *testing.T) {
	t.Parallel()
	for _, m := range typicalCatalogue(t).Units {
		if m.Kind == KindAmplifier && !m.LowestFrequency.Set() {
			t.Errorf("%s has no lowest frequency", m.Name)
		}
		for _, o := range m.Outputs {
			if o.HighestLoad.Set() && float64(o.HighestLoad.V) > ratedWatts(m) {
				t.Errorf("%s: the output %q carries more than the amplifier gives", m.Name, o.Name)
			}
		}
		for _, i := range m.Inputs {
			most := 0
			for _, name := range i.Connectors.Items {
				c := (&Design{}).Connector(name.V)
				if c == nil {
					t.Errorf("%s: the input %q has the connector %q, which is not a typical one", m.Name, i.Name, name.V)
					continue
				}
				most = max(most, c.Cores.V)
			}
			if i.NeedsCores.V > most {
				t.Errorf("%s: none of the connectors of the input %q has %d contacts", m.Name, i.Name, i.NeedsCores.V)
			}
		}
	}
}

func TestTypicalControlsAndMicrophonesArePlausible(t *testing.T) {
	t.Parallel()
	c := typicalCatalogue(t)
	for _, m := range c.Attenuators {
		cores := map[string]int{"none": 2, "third conductor": 3, "24 V relay": 4}[m.Override.V]
		if m.Cores.V != cores {
			t.Errorf("%s: override %q with %d cores", m.Name, m.Override.V, m.Cores.V)
		}
		if relay := m.Override.V == "24 V relay"; relay != m.Current.Set() {
			t.Errorf("%s: override %q, current of a relay %q", m.Name, m.Override.V, m.Current.Text)
		}
		if !m.Lowest.Set() || !m.Rating.Set() || m.InsertionLoss.V < 0 || m.InsertionLoss.V > 1 {
			t.Errorf("%s: rating %q, lowest %q, insertion loss %q", m.Name, m.Rating.Text, m.Lowest.Text, m.InsertionLoss.Text)
		}
	}
	for _, m := range c.Microphones {
		plug := (&Design{}).Connector(m.Fits.V)
		if plug == nil {
			t.Errorf("%s comes with %q, which is not a typical connector", m.Name, m.Fits.V)
			continue
		}
		if m.Trigger.V == "contact" && plug.Cores.V < 5 {
			t.Errorf("%s has a contact, and its %s only %d pins", m.Name, m.Fits.V, plug.Cores.V)
		}
		if volts, ok := m.Level.V.DBV(); m.Level.Set() && (!ok || volts < -70 || volts > 4) {
			t.Errorf("%s: level %s", m.Name, m.Level.Text)
		}
	}
}

// Waves run along a cable at 1/√(L'C'), slower than light by the insulation:
// PVC and polyethylene make it 0.4 to 0.7 of 299 792 458 m/s.
func TestTypicalCablesArePlausible(t *testing.T) {
	t.Parallel()
	for _, m := range typicalCatalogue(t).Cables {
		share := 1 / math.Sqrt(float64(m.Inductance.V)*float64(m.Capacitance.V)) / 299_792_458
		if share < 0.4 || share > 0.7 {
			t.Errorf("%s: L' %s and C' %s make waves run at %.2f of light", m.Name, m.Inductance.Text, m.Capacitance.Text, share)
		}
		if m.Size.V.IsAWG == m.Class.Set() && !m.Shield.Set() {
			t.Errorf("%s: class %q with size %s", m.Name, m.Class.Text, m.Size.Text)
		}
		if m.Size.V.IsAWG != m.Stranded.Set() {
			t.Errorf("%s does not say rightly whether it is stranded", m.Name)
		}
		if m.Cores.V < 2 || !m.Insulation.Set() {
			t.Errorf("%s: %d cores, insulation %q", m.Name, m.Cores.V, m.Insulation.Text)
		}
		// The name tells cores and size.
		name := strings.TrimPrefix(m.Name, typicalPrefix)
		written := strconv.Itoa(m.Cores.V) + " x " + m.Size.Text
		if m.Size.V.IsAWG {
			written = fmt.Sprintf("%d-%d AWG", m.Size.V.Gauge, m.Cores.V)
		}
		if !strings.HasPrefix(name, written) && !m.Shield.Set() {
			t.Errorf("%s is a cable of %s", m.Name, written)
		}
	}
}

// A model shown as a block can be copied: read again it says the same.
func TestModelBlocksReadAgain(t *testing.T) {
	t.Parallel()
	c := typicalCatalogue(t)
	again := &Catalogue{}
	for _, m := range c.Models() {
		if !strings.HasPrefix(m.Block, m.Kind+" "+strconv.Quote(m.Name)+" {") || !strings.HasSuffix(m.Block, "\n}") {
			t.Errorf("%s is not a whole block:\n%s", m.Name, m.Block)
		}
		f := readFragment(parseFile(source.NewFile("copy"+Ending, []byte(m.Block+"\n"))), nil, standsUsed)
		for _, p := range f.problems {
			t.Errorf("%s: %s", m.Name, p)
		}
		again.add(&f.catalogue)
	}
	if diff := cmp.Diff(c, again, cmpopts.IgnoreTypes(source.Span{})); diff != "" {
		t.Errorf("first reading against second:\n%s", diff)
	}
	if block := c.Models()[0].Block; !strings.Contains(block, "# the contact comes through the 5-pin connector only") {
		t.Errorf("a comment inside is lost:\n%s", block)
	}
}

func TestModelSummaries(t *testing.T) {
	t.Parallel()
	d := mustRead(t, `
amplifier_model "own/zones" {
  rated_power = "240 W"
  output "Zone" {
    quantity = 4
    volts    = "100 V"
    switched = true
  }
}
amplifier_model "own/bare" {}
amplifier_model "own/two" {
  channel "A" { rated_power = "50 W" }
  channel "B" { rated_power = "80 W" }
  output "A" { volts = "100 V" }
  output "B" { lowest_impedance = "4 ohm" }
  input "Fire" { takes = "contact" }
  input "Line" {}
}
mixer_model "own/mixer" {
  output "Main" {}
  battery_volts = "24 V"
}
loudspeaker_model "own/half" {
  rated_power = "7 1/2 W"
  taps_70V    = ["7 1/2 W", "1/8 W"]
}
attenuator_model "own/attenuator" { rating = "36 W" }
microphone_model "own/microphone" { trigger = "none" }
cable_model "own/cable" {
  size   = "4 x 2.5 mm2"
  shield = "foil"
}
connector_model "own/plug" { cores = 1 }
`)
	want := []string{
		"own/zones | amplifier | 240 W, 4 zones of 100 V",
		"own/bare | amplifier | ",
		"own/two | amplifier | 50 W, 80 W, 100 V and 4 ohm, 1 input",
		"own/mixer | mixer | 1 output, 24 V standby",
		"own/half | loudspeaker | 7 1/2 W, taps 7.5/0.125 W at 70 V",
		"own/attenuator | attenuator | 36 W",
		"own/microphone | microphone | no contact",
		"own/cable | cable | 4 x 2.5 mm2, shield foil",
		"own/plug | connector | 1 contact",
	}
	var got []string
	for _, m := range d.Catalogue.Models() {
		got = append(got, m.Name+" | "+m.Class+" | "+m.Summary)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// everyTypical is a design that uses every typical model once.
func everyTypical(c *Catalogue) string {
	var b strings.Builder
	for _, m := range c.Units {
		fmt.Fprintf(&b, "%s %q { model = %q }\n", m.Kind, m.Name, m.Name)
	}
	for _, m := range c.Microphones {
		fmt.Fprintf(&b, "microphone %q { model = %q }\n", m.Name, m.Name)
	}
	b.WriteString("line \"L\" {\n")
	for _, m := range c.Cables {
		fmt.Fprintf(&b, "branch \"B %s\" {\ncable = %q\n", m.Name, m.Name)
		fmt.Fprintf(&b, "existing \"E %s\" { load = \"1 W\" }\n}\n", m.Name)
	}
	for _, m := range c.Attenuators {
		fmt.Fprintf(&b, "attenuator \"A %s\" {\nmodel = %q\n", m.Name, m.Name)
	}
	for _, m := range c.Loudspeakers {
		fmt.Fprintf(&b, "loudspeaker %q { model = %q }\n", m.Name, m.Name)
	}
	b.WriteString(strings.Repeat("}\n", len(c.Attenuators)))
	b.WriteString("}\n")
	return b.String()
}

func TestEveryTypicalModelCanBeUsed(t *testing.T) {
	t.Parallel()
	c := typicalCatalogue(t)
	d := mustRead(t, everyTypical(c))
	sorted := func(models []Model) []Model {
		models = slices.DeleteFunc(models, func(m Model) bool { return m.Kind == "connector_model" })
		slices.SortFunc(models, func(a, b Model) int { return strings.Compare(a.Name, b.Name) })
		return models
	}
	// The design's catalogue has its runs written out; what is said of a model does not change by that.
	if diff := cmp.Diff(sorted(c.Models()), sorted(d.Catalogue.Models())); diff != "" {
		t.Errorf("models against those of a design that uses all:\n%s", diff)
	}
	for _, u := range d.Units {
		if u.ModelPart == nil || len(u.Inputs) == 0 || len(u.Outputs) == 0 {
			t.Errorf("%s is not filled from its model", u.Name)
		}
	}
}

func TestTypicalModelsAreReadOnlyWhereNamed(t *testing.T) {
	t.Parallel()
	tests := []struct {
		name, text string
		want       []string
	}{
		{"nothing", `amplifier "A" { rated_power = "100 W" }
loudspeaker_model "own/ceiling-6" { rated_power = "6 W" }`, []string{"own/ceiling-6"}},
		{"an amplifier", `amplifier "A" { model = "typical/mixer-amp-120" }`, []string{"typical/mixer-amp-120"}},
		{"a mixer", `mixer "M" { model = "typical/pre-mixer-6" }`, []string{"typical/pre-mixer-6"}},
		{"both", `mixer "M" { model = "typical/pre-mixer-6" }
amplifier "A" { model = "typical/line-amp-240" }`, []string{"typical/line-amp-240", "typical/pre-mixer-6"}},
		{"deep in a line", `line "L" {
  cable = "typical/2 x 2.5 mm2"
  branch "B" {
    cable = "typical/4 x 1.5 mm2"
    attenuator "V" {
      model = "typical/attenuator-12-relay"
      loudspeaker "S" { model = "typical/ceiling-6" }
      loudspeaker "T" { model = "typical/ceiling-6" }
    }
  }
}
line "M" { like = "L" }`, []string{"typical/ceiling-6", "typical/attenuator-12-relay", "typical/2 x 2.5 mm2", "typical/4 x 1.5 mm2"}},
		{"a name made by a template", `given { watts = 6 }
line "L" {
  loudspeaker "S" { model = "typical/ceiling-${given.watts}" }
}`, []string{"typical/ceiling-6"}},
		{"a source", `music "M" { model = "typical/handheld-xlr" }`, []string{"typical/handheld-xlr"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			d := mustRead(t, test.text)
			var got []string
			for _, m := range d.Catalogue.Models() {
				got = append(got, m.Name)
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Error(diff)
			}
			for _, f := range d.Files {
				if IsBuiltIn(f) {
					t.Errorf("%s counts as a file of the design", f.Name)
				}
			}
		})
	}
}

func TestTypicalPlacesAreBuiltIn(t *testing.T) {
	t.Parallel()
	d := mustRead(t, `line "L" {
  loudspeaker "S" { model = "typical/horn-15" }
}`)
	m := d.Catalogue.Loudspeakers[0]
	if got := m.Sensitivity.Span.Text(); got != `"104 dB"` {
		t.Errorf("the sensitivity stands at %q", got)
	}
	if line := m.NameSpan.From().Line; m.NameSpan.File.Line(line) != `loudspeaker_model "typical/horn-15" {` {
		t.Errorf("the name stands in line %d: %q", line, m.NameSpan.File.Line(line))
	}
	if !IsBuiltIn(m.NameSpan.File) || IsBuiltIn(d.Files[0]) || IsBuiltIn(nil) {
		t.Error("files of the program and of the design are mixed up")
	}
}

func TestUnknownTypicalNames(t *testing.T) {
	t.Parallel()
	tests := []struct {
		name, text, found, nearest string
	}{
		{"loudspeaker", `line "L" {
  loudspeaker "S" { model = "typical/celing-6" }
}`, `"typical/celing-6" is not the name of a loudspeaker model.`, `"typical/ceiling-6"`},
		{"amplifier", `amplifier "A" { model = "typical/mixer-amp-240-4zones" }`, `"typical/mixer-amp-240-4zones" is not the name of an amplifier or mixer model.`, `"typical/mixer-amp-240-4zone"`},
		{"mixer beside a good amplifier", `amplifier "A" { model = "typical/line-amp-240" }
mixer "M" { model = "typical/matrix-8x9" }`, `"typical/matrix-8x9" is not the name of an amplifier or mixer model.`, `"typical/matrix-8x8"`},
		{"mixer that is an amplifier", `mixer "M" { model = "typical/mixer-amp-120" }`, `"typical/mixer-amp-120" is the model of an amplifier.`, ""},
		{"attenuator", `line "L" {
  attenuator "V" {
    model = "typical/attenuator-12-rely"
    loudspeaker "S" {}
  }
}`, `"typical/attenuator-12-rely" is not the name of an attenuator model.`, `"typical/attenuator-12-relay"`},
		{"microphone", `microphone "M" { model = "typical/desk-contact-dn" }`, `"typical/desk-contact-dn" is not the name of a microphone model.`, `"typical/desk-contact-din"`},
		{"cable", `line "L" { cable = "typical/16-2 AWG strand" }`, `"typical/16-2 AWG strand" is neither a size of cable nor a model of one.`, `"typical/16-2 AWG stranded"`},
		{"connector", `microphone "M" { connector = "typical/DIN5" }`, `"typical/DIN5" is not the name of a connector model.`, `"typical/DIN 5"`},
		{"a model of one's own", `loudspeaker_model "typical/ceiling-6" { rated_power = "6 W" }
line "L" {
  loudspeaker "S" { model = "typical/ceiling-6" }
}`, `"typical/ceiling-6" is kept for the models the program brings along.`, `"own/ceiling-6"`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			_, problems := readText(test.text)
			if len(problems) != 1 {
				t.Fatalf("problems: %v", problems)
			}
			if p := problems[0]; p.Found != test.found || p.Nearest != test.nearest {
				t.Errorf("found   %s\nnearest %s\nwant    %s\nnearest %s", p.Found, p.Nearest, test.found, test.nearest)
			}
		})
	}
}

func TestConnector(t *testing.T) {
	t.Parallel()
	own := mustRead(t, `
connector_model "DIN 5" { cores = 4 }
connector_model "Block 9" { cores = 9 }
microphone "M" { connector = "typical/xlr 3" }
amplifier "A" {
  input "I" { connectors = ["typical/DIN 5", "RJ45"] }
}`)
	tests := []struct {
		design *Design
		name   string
		cores  int // 0: not known
	}{
		{&Design{}, "DIN 5", 5},
		{&Design{}, "din  5", 5},
		{&Design{}, "typical/DIN 5", 5},
		{&Design{}, "XLR 3", 3},
		{&Design{}, "RCA pair", 4},
		{&Design{}, "screw terminals", 6},
		{&Design{}, "RJ45", 8},
		{&Design{}, "DIN 55", 0},
		{&Design{}, "", 0},
		{own, "DIN 5", 4},
		{own, "Block 9", 9},
		{own, "XLR 3", 3},
	}
	for _, test := range tests {
		cores := 0
		if m := test.design.Connector(test.name); m != nil {
			cores = m.Cores.V
		}
		if cores != test.cores {
			t.Errorf("%q has %d contacts, want %d", test.name, cores, test.cores)
		}
	}
	if c := own.Sources[0].Connector; c.V != "XLR 3" || c.Text != "typical/xlr 3" {
		t.Errorf("a typical connector means %q, written %q", c.V, c.Text)
	}
	if c := own.Units[0].Inputs[0].Connectors.Items[0]; c.V != "DIN 5" {
		t.Errorf("a typical connector of an input means %q", c.V)
	}
}

func BenchmarkReadTypical(b *testing.B) {
	file := []*source.File{source.NewFile("design"+Ending, []byte(`amplifier "A" { model = "typical/mixer-amp-240-4zone" }
line "L" {
  amplifier = "A"
  output    = "Zone 1"
  cable     = "typical/2 x 1.5 mm2"
  loudspeaker "S" { model = "typical/ceiling-6" }
}
`))}
	for b.Loop() {
		if _, problems := Read("design", file, Options{Workers: 1}); len(problems) > 0 {
			b.Fatal(problems[0])
		}
	}
}
