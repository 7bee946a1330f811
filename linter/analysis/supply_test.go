package analysis_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

func supplyOf(t *testing.T, s *analysis.System, name string) *analysis.Supply {
	t.Helper()
	for _, p := range s.Supplies {
		if p.Part.Name == name {
			return p
		}
	}
	t.Fatalf("no supply %q", name)
	return nil
}

// whats lists what is missing, with the part it belongs to.
func whats(all []analysis.Missing) string {
	texts := make([]string, len(all))
	for i, m := range all {
		texts[i] = m.What + " of " + m.Part
	}
	return strings.Join(texts, "; ")
}

// TestStandbyOfPublishedExamples writes published examples as designs.
func TestStandbyOfPublishedExamples(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		source                       string
		idle, full, standby, announc string
		want                         float64
		sum                          string
	}{
		{
			"worked example of the trade guide \"How panel standby batteries are sized\" (BS 5839-1:2025 Annex E): 8.320 Ah",
			"0.25 A", "0.75 A", "24 h", "0.5 h", 8.320, "1.25 × (24 h × 0.25 A + 1.75 × 30 min × 0.75 A) = 8.32 Ah",
		},
		{
			"test vector 9 of the project's reference values, derived from the same formula: 78.06 Ah",
			"1.8 A", "22 A", "24 h", "30 min", 78.0625, "1.25 × (24 h × 1.8 A + 1.75 × 30 min × 22 A) = 78.06 Ah",
		},
	} {
		s := worked(t, fmt.Sprintf(`
amplifier "Rack" {
  rated_power  = "240 W"
  battery_idle = %q
  battery_full = %q
}
supply "Battery" {
  feeds        = ["Rack"]
  standby      = %q
  announcement = %q
}
`, c.idle, c.full, c.standby, c.announc))
		got := supplyOf(t, s, "Battery").Standby(1, 1.25, 1.75)
		if !got.Capacity.Known() {
			t.Errorf("%s: not known: %s", c.source, whats(got.Capacity.Missing))
		}
		within(t, c.source, float64(got.Capacity.Value), c.want, 5e-5)
		if got.Capacity.Sum != c.sum {
			t.Errorf("%s: the sum reads %q", c.source, got.Capacity.Sum)
		}
	}
}

const relaysDesign = `
mixer "Matrix" {
  battery_idle = "0.5 A"
}
amplifier "A" {
  rated_power   = "480 W"
  battery_volts = "24 V"
  battery_idle  = "0.9 A"
  battery_full  = "28 A"
}
amplifier "B" {
  rated_power   = "480 W"
  battery_volts = "24 V"
  battery_idle  = "0.9 A"
  battery_full  = "28 A"
}
line "Floor 1" {
  amplifier     = "A"
  output        = "100 V"
  override_from = "Matrix"
  attenuator "Room" {
    quantity = 14
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "Bed" { tap = "3 W" }
  }
  attenuator "Bar" {
    override = "third conductor"
    loudspeaker "Counter" { tap = "3 W" }
  }
}
line "Floor 2" {
  like      = "Floor 1"
  amplifier = "B"
}
supply "Battery" {
  feeds        = ["Matrix", "A", "B", "A"]
  battery      = "24 V"
  standby      = "24 h"
  announcement = "30 min"
  %s
}
`

// TestStandbyWithRelays counts by hand: 2 floors × 14 relays × 25 mA = 0.7 A;
// waiting 0.5 + 2·0.9 = 2.3 A. Each amplifier of 480 W has 45 W on it and draws
// 0.9 + 27.1·45/480 = 3.440625 A at full output: 0.5 + 2·3.440625 + 0.7 = 8.08125 A.
// At one eighth (480 W of 27.1 A · 24 V is 73.8 %, which class B can have, so by the
// root of 1/8) it is 0.5 + 2·(0.9 + 2.540625·0.353553) + 0.7 = 4.796494 A.
func TestStandbyWithRelays(t *testing.T) {
	t.Parallel()
	s := worked(t, fmt.Sprintf(relaysDesign, ""))
	p := supplyOf(t, s, "Battery")
	if len(p.Units) != 3 {
		t.Errorf("it feeds %d units, want 3", len(p.Units))
	}
	if p.Relays.Count != 28 {
		t.Errorf("it feeds %d relays, want 28", p.Relays.Count)
	}
	full := p.Standby(1, 1.25, 1.75)
	within(t, "waiting", float64(full.Waiting.Value), 2.3, 1e-9)
	within(t, "announcing at full output", float64(full.Announcing.Value), 8.08125, 1e-9)
	within(t, "capacity", float64(full.Capacity.Value), 1.25*(24*2.3+1.75*0.5*8.08125), 1e-9)
	within(t, "without factors", float64(full.Bare), 24*2.3+0.5*8.08125, 1e-9)
	speech := p.Standby(1.0/8, 1.25, 1.75)
	within(t, "announcing speech", float64(speech.Announcing.Value), 4.796494, 1e-6)
	if want := "0.5 A + 2 × 3.441 A + 0.7 A for relays = 8.081 A"; full.Announcing.Sum != want {
		t.Errorf("the sum reads %q, want %q", full.Announcing.Sum, want)
	}
	for _, want := range []string{"takes the same with and without a signal", "override relays are energised for announcements only", "class B"} {
		if all := strings.Join(speech.Capacity.Assumed, "; "); !strings.Contains(all, want) {
			t.Errorf("%q is not among what is assumed: %s", want, all)
		}
	}
}

// TestReleasedRelays are held in while waiting: the same 0.7 A, for 24 h.
func TestReleasedRelays(t *testing.T) {
	t.Parallel()
	design := strings.Replace(fmt.Sprintf(relaysDesign, ""), `current  = "25 mA"`, "current  = \"25 mA\"\n    relay    = \"released to override\"", 1)
	got := supplyOf(t, worked(t, design), "Battery").Standby(1, 1, 1)
	within(t, "waiting", float64(got.Waiting.Value), 3, 1e-9)
	within(t, "announcing", float64(got.Announcing.Value), 7.38125, 1e-9)
	within(t, "capacity", float64(got.Capacity.Value), 24*3+0.5*7.38125, 1e-9)
	if all := strings.Join(got.Capacity.Assumed, "; "); strings.Contains(all, "relays") {
		t.Errorf("it is assumed what the design says: %s", all)
	}
}

// TestRelaysGoToTheirSupply: to the one that feeds the unit which switches them,
// or to the only one that states current for relays.
func TestRelaysGoToTheirSupply(t *testing.T) {
	t.Parallel()
	line := `
amplifier "A" { rated_power = "100 W" }
mixer "M" {}
line "L" {
  amplifier = "A"
  output    = "100 V"
  %s
  attenuator "Room" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "First" {
  feeds = ["A"]
  %s
}
supply "Second" {
  feeds = ["M"]
  %s
}
`
	const relays = `relays = "24 V, 1 A"`
	for _, c := range []struct {
		override, first, second string
		want                    [2]int
	}{
		{"", "", "", [2]int{0, 0}},
		{`override_from = "M"`, "", "", [2]int{0, 1}},
		{`override_from = "A"`, "", "", [2]int{1, 0}},
		{"", relays, "", [2]int{1, 0}},
		{"", relays, relays, [2]int{0, 0}}, // either could
		{`override_from = "M"`, relays, relays, [2]int{0, 1}},
	} {
		s := worked(t, fmt.Sprintf(line, c.override, c.first, c.second))
		if got := [2]int{s.Supplies[0].Relays.Count, s.Supplies[1].Relays.Count}; got != c.want {
			t.Errorf("override %q, relays %q and %q: %v relays, want %v", c.override, c.first, c.second, got, c.want)
		}
	}
}

// TestLoadOfAnAmplifier: no line, a load that is not known, and one beyond the
// rating all count as the rating.
func TestLoadOfAnAmplifier(t *testing.T) {
	t.Parallel()
	const hung = "line \"L\" {\n  amplifier = \"A\"\n  output = \"100 V\"\n  loudspeaker \"S\" {\n    %s\n  }\n}\n"
	for _, c := range []struct {
		line string
		want float64
	}{
		{"", 11},
		{fmt.Sprintf(hung, `tap = "25 W"`), 3.5},
		{fmt.Sprintf(hung, `tap = "100 W"`), 11},
		{fmt.Sprintf(hung, `tap = "200 W"`), 11},
		{fmt.Sprintf(hung, ``), 11},
	} {
		s := worked(t, c.line+`
amplifier "A" {
  rated_power  = "100 W"
  battery_idle = "1 A"
  battery_full = "11 A"
}
supply "S" { feeds = ["A"] }
`)
		within(t, c.line, float64(supplyOf(t, s, "S").Standby(1, 1, 1).Announcing.Value), c.want, 1e-9)
	}
}

func TestStandbyNamesWhatIsMissing(t *testing.T) {
	t.Parallel()
	s := worked(t, `
mixer "M" {}
amplifier "A" {
  rated_power  = "100 W"
  battery_idle = "1 A"
}
line "L" {
  amplifier = "A"
  output    = "100 V"
  attenuator "Room" {
    override = "24 V relay"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "Battery" {
  feeds  = ["M", "A"]
  relays = "24 V, 1 A"
}
supply "Empty" {}
`)
	got := whats(supplyOf(t, s, "Battery").Standby(1, 1.25, 1.75).Capacity.Missing)
	want := `standby supply current with no signal of mixer "M"; ` +
		`standby supply current at rated output of amplifier "A"; ` +
		`current of the override relay of attenuator "Room"; ` +
		`time the supply is to wait without mains of supply "Battery"; ` +
		`time the supply is to announce after waiting of supply "Battery"`
	if got != want {
		t.Errorf("missing is\n%s\nwant\n%s", got, want)
	}
	if got := whats(supplyOf(t, s, "Empty").Standby(1, 1.25, 1.75).Waiting.Missing); got != `units that the supply feeds of supply "Empty"` {
		t.Errorf("missing of an empty supply is %q", got)
	}
}

// TestMainsAndHeat counts by hand. Linear: 240 W of 430 − 25 W is 59 %, so
// 25 + 405·√(1/8) = 168.189 W at one eighth, of which 30 W go to the
// loudspeakers. Switching: 240 W of 300 − 20 W is 86 %, more than class B can
// have, so 20 + 280/8 = 55 W, and 25 W of heat. Mixer 20 W.
func TestMainsAndHeat(t *testing.T) {
	t.Parallel()
	s := worked(t, `
amplifier "Linear" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
amplifier "Switching" {
  mains_idle = "20 W"
  mains_full = "300 W"
  channel "A" {
    quantity    = 2
    rated_power = "120 W"
  }
}
mixer "Matrix" { mains_idle = "20 W" }
supply "Rack" { feeds = ["Linear", "Switching", "Matrix"] }
`)
	m := supplyOf(t, s, "Rack").Mains
	within(t, "idle", float64(m.Idle.Value), 65, 1e-9)
	within(t, "normal use", float64(m.NormalUse.Value), 168.189+55+20, 1e-6)
	within(t, "full", float64(m.Full.Value), 750, 1e-9)
	within(t, "heat idle", float64(s.Heat.Idle.Value), 65, 1e-9)
	within(t, "heat in normal use", float64(s.Heat.NormalUse.Value), 138.189+25+20, 1e-6)
	if s.Heat.Units != 3 || len(s.Heat.Unknown) > 0 {
		t.Errorf("%d units, missing %q", s.Heat.Units, whats(s.Heat.Unknown))
	}
	if want := "25 W + 2 × 20 W = 65 W"; m.Idle.Sum != want {
		t.Errorf("the sum reads %q, want %q", m.Idle.Sum, want)
	}
}

// TestMainsFullBelowOutput: an amplifier gives no more than it takes, so that
// such a figure is of something else.
func TestMainsFullBelowOutput(t *testing.T) {
	t.Parallel()
	s := worked(t, `
amplifier "A" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "120 W"
}
amplifier "B" { rated_power = "240 W" }
amplifier "C" {
  mains_idle = "20 W"
  mains_full = "120 W"
}
supply "Rack" { feeds = ["A"] }
`)
	m := supplyOf(t, s, "Rack").Mains
	if !m.Idle.Known() || m.NormalUse.Known() || m.Full.Known() {
		t.Errorf("missing: %q, %q, %q", whats(m.Idle.Missing), whats(m.NormalUse.Missing), whats(m.Full.Missing))
	}
	want := `power taken from the mains at rated output (what is stated is less than the output itself) of amplifier "A"; ` +
		`power taken from the mains with no signal of amplifier "B"; power taken from the mains at rated output of amplifier "B"; ` +
		`rated power of amplifier "C"`
	if got := whats(s.Heat.Unknown); got != want || s.Heat.Units != 0 {
		t.Errorf("%d units, missing\n%s\nwant\n%s", s.Heat.Units, got, want)
	}
}

// TestStandbyAgainstCounting adds up racks of any size one unit and one relay at
// a time and empties a battery in steps of a minute.
func TestStandbyAgainstCounting(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(6, 9))
	for range 20 {
		amplifiers, rooms := 1+random.IntN(6), 1+random.IntN(40)
		idle, full, relay := 1+random.IntN(900), 1000+random.IntN(20000), 5+random.IntN(30) // mA
		var b strings.Builder
		var names []string
		for i := range amplifiers {
			fmt.Fprintf(&b, "amplifier \"A %d\" {\n  rated_power = \"100 W\"\n  battery_idle = \"%d mA\"\n  battery_full = \"%d mA\"\n}\n", i, idle, full)
			names = append(names, fmt.Sprintf("%q", fmt.Sprintf("A %d", i)))
		}
		fmt.Fprintf(&b, "amplifier \"Other\" { rated_power = \"100 W\" }\nline \"L\" {\n  amplifier = \"Other\"\n  output = \"100 V\"\n  override_from = \"A 0\"\n  attenuator \"R\" {\n    quantity = %d\n    override = \"24 V relay\"\n    current = \"%d mA\"\n    loudspeaker \"B\" { tap = \"1 W\" }\n  }\n}\n", rooms, relay)
		fmt.Fprintf(&b, "supply \"S\" {\n  feeds = [%s]\n  standby = \"24 h\"\n  announcement = \"30 min\"\n}\n", strings.Join(names, ", "))
		s := worked(t, b.String())

		milliampereMinutes := 0
		waiting, announcing := 0, 0
		for range amplifiers {
			waiting += idle
			announcing += full
		}
		for range rooms {
			announcing += relay
		}
		for range 24 * 60 {
			milliampereMinutes += waiting
		}
		for range 30 {
			milliampereMinutes += announcing
		}
		got := supplyOf(t, s, "S").Standby(1, 1, 1)
		want := float64(milliampereMinutes) / 1000 / 60
		if math.Abs(float64(got.Capacity.Value)-want) > 1e-9*want || got.Bare != got.Capacity.Value {
			t.Errorf("%s\n%v Ah, counted %g Ah", b.String(), got.Capacity.Value, want)
		}
		if got.Capacity.Value <= 0 || quantity.AtLeast(got.Capacity.Value, supplyOf(t, s, "S").Standby(1, 1.25, 1.75).Capacity.Value) {
			t.Error("factors do not raise the capacity")
		}
	}
}
