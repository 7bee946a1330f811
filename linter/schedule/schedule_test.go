package schedule_test

import (
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/schema"
	"loudlint/schema/source"
)

// systemOf works out an example, or a design given as text.
func systemOf(t *testing.T, design string) *analysis.System {
	t.Helper()
	if !strings.Contains(design, "\n") {
		d, problems, err := schema.Load("../../examples/"+design+schema.Ending, schema.Options{})
		if err != nil || len(problems) > 0 {
			t.Fatalf("%s: %v %v", design, err, problems)
		}
		return analysis.Analyse(d, 1)
	}
	d, problems := schema.Read("test"+schema.Ending, []*source.File{source.NewFile("test"+schema.Ending, []byte(design))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return analysis.Analyse(d, 1)
}

// shown gives the rows of a table as people read them, without empty columns.
func shown(table *schedule.Table) []string {
	used := table.Used()
	line := func(at func(int) string) string {
		cells := make([]string, len(used))
		for i, c := range used {
			cells[i] = at(c)
		}
		return strings.Join(cells, " | ")
	}
	rows := []string{line(func(c int) string { return table.Columns[c].Name() })}
	for _, r := range table.Rows {
		rows = append(rows, line(func(c int) string { return table.Columns[c].Show(r.Cells[c]) }))
	}
	return rows
}

func TestLoudspeakersInWalkingOrder(t *testing.T) {
	t.Parallel()
	table := schedule.Make(systemOf(t, "village_hall"), schedule.Loudspeakers, schedule.Options{Tool: "loudlint test"})
	if diff := cmp.Diff(schedule.Head{Job: "Tarnwhistle village hall", Reference: "TW-01", Revision: "B", Design: "../../examples/village_hall.pa.hcl", Tool: "loudlint test"}, table.Head); diff != "" {
		t.Error(diff)
	}
	got := shown(table)
	if len(got) != 1+6+4 {
		t.Fatalf("%d rows: %v", len(got), got)
	}
	// Worked by hand: 13.3 ohm/km (IEC 60228 class 5, 1.5 mm²) × 2 × 14 m = 0.372 ohm carry the whole 36 W,
	// 0.36 A, which is 0.13 V; H 1 is left 99.87 V and 6 W × 0.9987² = 5.98 W, 0.01 dB less.
	for i, want := range map[int]string{
		0:  "Line | Amplifier | Output | Device | Designation | Space | Model | Tap (W) | Leg (m) | Cable | Height (m) | Voltage (V) | Delivered (W) | Lost (dB)",
		1:  "Hall | Rack | 100 V | loudspeaker | H 1 | Hall | hall/wall-10 | 6 | 14 | hall/2 x 1.5 mm2 | 3 | 99.9 | 5.98 | 0.01",
		10: "Foyer | Rack | 100 V | loudspeaker | Kitchen | Kitchen | hall/ceiling-6 | 3 | 7 | hall/2 x 1.5 mm2 |  | 99.9 | 3.00 | 0.00",
	} {
		if diff := cmp.Diff(want, got[i]); diff != "" {
			t.Error(diff)
		}
	}
}

func TestLoudspeakersOfAllKinds(t *testing.T) {
	t.Parallel()
	s := systemOf(t, `amplifier "Rack" { rated_power = "240 W" }
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "0 m"
  loudspeaker "Off" {
    model = "typical/ceiling-6"
    leg   = "0 m"
    cable = "2 x 1.5 mm2"
    tap   = "0 W"
  }
  loudspeaker "Turned" {
    leg      = "0 m"
    tap      = "5 W"
    tap_for  = "70 V"
    polarity = "reversed"
    basis    = "assumed"
  }
  attenuator "Bar" {
    leg = "0 m"
    loudspeaker "B" {
      leg = "0 m"
      tap = "6 W"
    }
  }
  existing "Old" { leg = "0 m" }
  line_end "Watch" { load = "0.5 W" }
}
line "B" {
  loudspeaker "C" { }
  loudspeaker "D" { impedance = "8 ohm" }
}
`)
	want := []string{
		"Line | Amplifier | Output | Device | Designation | Behind | Model | Tap (W) | Tap for (V) | Impedance (ohm) | Leg (m) | Cable | Voltage (V) | Delivered (W) | Lost (dB) | Remarks",
		"A | Rack | 100 V | home run |  |  |  |  |  |  | 0 | 2 x 2.5 mm2 |  |  |  | ",
		"A | Rack | 100 V | loudspeaker | Off |  | typical/ceiling-6 | 0 |  |  | 0 | 2 x 1.5 mm2 |  | 0.00 |  | switched off, typical data",
		"A | Rack | 100 V | loudspeaker | Turned |  |  | 5 | 70 |  | 0 | 2 x 2.5 mm2 | not stated | not stated | not stated | polarity reversed, assumed",
		"A | Rack | 100 V | attenuator | Bar |  |  |  |  |  | 0 | 2 x 2.5 mm2 |  |  |  | ",
		"A | Rack | 100 V | loudspeaker | B | Bar |  | 6 |  |  | 0 | 2 x 2.5 mm2 | not stated | not stated | not stated | ",
		"A | Rack | 100 V | existing | Old |  |  | not stated |  |  | 0 | 2 x 2.5 mm2 | not stated | not stated | not stated | ",
		"A | Rack | 100 V | line end | Watch |  |  | 0.5 |  |  |  |  |  |  |  | ",
		"B |  |  | loudspeaker | C |  |  | not stated |  |  | not stated | not stated | not stated | not stated | not stated | ",
		"B |  |  | loudspeaker | D |  |  |  |  | 8 | not stated | not stated | not stated | not stated | not stated | ",
	}
	if diff := cmp.Diff(want, shown(schedule.Make(s, schedule.Loudspeakers, schedule.Options{}))); diff != "" {
		t.Error(diff)
	}
}

func TestFold(t *testing.T) {
	t.Parallel()
	table := schedule.Make(systemOf(t, "hotel"), schedule.Loudspeakers, schedule.Options{})
	folded := table.Fold()
	// Twelve floors of corridor, room controls, beds and baths; two lines of the lounge.
	if len(table.Rows) != 12*(5+3*14)+2*2 || len(folded.Rows) != 12*4+2 {
		t.Errorf("%d rows fold into %d", len(table.Rows), len(folded.Rows))
	}
	const want = "Floor 1 | Amp A | Channel 1 | 14 | loudspeaker | Room 1, Bed … Room 14, Bed | Room 1 … Room 14 | Bedroom | house/ceiling-6 | 3 |  | 4 | house/4 x 1.5 mm2 |  | 98.7 … 99.1 | 2.93 … 2.95 | 0.08 … 0.11"
	if diff := cmp.Diff(want, shown(folded)[3]); diff != "" {
		t.Error(diff)
	}
	small := schedule.Make(systemOf(t, "line \"A\" {\n  loudspeaker \"B\" { }\n}\n"), schedule.Loudspeakers, schedule.Options{})
	if small.Fold() != small {
		t.Error("a table without runs is folded")
	}
}

func TestLengthsInFeet(t *testing.T) {
	t.Parallel()
	got := shown(schedule.Make(systemOf(t, "warehouse_us"), schedule.Loudspeakers, schedule.Options{}))
	const want = "North | North amp | 70 V | loudspeaker | Dock 1 |  | Dock | house/horn-15 | 7.5 | 130 | 12/2 | 69.4 | 7.23 | 0.16"
	if !strings.Contains(got[0], " | Leg (ft) | ") || got[1] != want {
		t.Errorf("%s\n%s", got[0], got[1])
	}
}

var examples = []string{"first_steps", "village_hall", "ferry_terminal", "warehouse_us", "school", "hotel"}

func column(t *testing.T, table *schedule.Table, title string) int {
	t.Helper()
	for i := range table.Columns {
		if table.Columns[i].Title == title {
			return i
		}
	}
	t.Fatalf("%s has no column %q", table.Title, title)
	return 0
}

// TestEveryKindOfEveryExample holds what must be so of any schedule.
func TestEveryKindOfEveryExample(t *testing.T) {
	t.Parallel()
	for _, name := range examples {
		s := systemOf(t, name)
		for _, k := range schedule.Kinds() {
			table := schedule.Make(s, k.Kind, schedule.Usual())
			if table.Kind != k.Kind || table.Title != k.Title || len(table.Notes) == 0 || table.Head.Design == "" {
				t.Errorf("%s: %s is headed %+v", name, k.Kind, table.Head)
			}
			for i, r := range table.Rows {
				if len(r.Cells) != len(table.Columns) {
					t.Errorf("%s: row %d of %s has %d cells for %d columns", name, i, k.Kind, len(r.Cells), len(table.Columns))
				}
			}
			folded := table.Fold()
			for i, r := range folded.Rows {
				if len(r.Cells) != len(folded.Columns) {
					t.Errorf("%s: row %d of %s folded has %d cells for %d columns", name, i, k.Kind, len(r.Cells), len(folded.Columns))
				}
			}
			if diff := cmp.Diff(table, schedule.Make(s, k.Kind, schedule.Usual()), cmp.AllowUnexported()); diff != "" {
				t.Errorf("%s: %s is not the same twice: %s", name, k.Kind, diff)
			}
		}
	}
	if schedule.Make(systemOf(t, "village_hall"), "nonsense", schedule.Usual()) != nil {
		t.Error("there is a schedule of nonsense")
	}
}

// TestCableNumbersAndSums: each number is given once, and what is laid in all
// lengths is what the lines say of themselves and what is added up by type.
func TestCableNumbersAndSums(t *testing.T) {
	t.Parallel()
	for _, name := range examples {
		s := systemOf(t, name)
		cables := schedule.Make(s, schedule.Cables, schedule.Usual())
		number, length, line := column(t, cables, "Cable no."), column(t, cables, "Length"), column(t, cables, "Line")
		seen, laid := map[string]bool{}, map[string]float64{}
		var all float64
		for _, r := range cables.Rows {
			if n := r.Cells[number].Text; seen[n] || n == "" {
				t.Errorf("%s: the number %q is there twice", name, n)
			}
			seen[r.Cells[number].Text] = true
			laid[r.Cells[line].Text] += r.Cells[length].Number
			if r.Cells[line].Text != "leads" {
				all += r.Cells[length].Number
			}
		}
		lines := schedule.Make(s, schedule.Lines, schedule.Usual())
		at := column(t, lines, "Cable laid")
		for _, r := range lines.Rows {
			if c := r.Cells[at]; c.IsNumber && math.Abs(c.Number-laid[r.Cells[0].Text]) > 1e-6 {
				t.Errorf("%s: line %s is %g long, its cables %g", name, r.Cells[0].Text, c.Number, laid[r.Cells[0].Text])
			}
		}
		totals := schedule.Make(s, schedule.CableTotals, schedule.Usual())
		at = column(t, totals, "Laid")
		for _, r := range totals.Rows {
			all -= r.Cells[at].Number
		}
		if math.Abs(all) > 1e-6 {
			t.Errorf("%s: the totals miss %g", name, all)
		}
	}
}

func TestCablesOfOneLine(t *testing.T) {
	t.Parallel()
	s := systemOf(t, `amplifier "Rack" { rated_power = "240 W" }
line "A" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "2 x 2.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  override_cable = "2 x 0.75 mm2"
  containment   = "conduit"
  loudspeaker "First" {
    leg   = "3 m"
    cable = "typical/2 x 1.5 mm2"
    tap   = "6 W"
  }
  attenuator "Bar" {
    leg      = "7 m"
    override = "24 V relay"
    loudspeaker "B" {
      leg = "0 m"
      tap = "6 W"
    }
  }
  loudspeaker "Last" { tap = "6 W" }
}
line "B" {
  amplifier = "Rack"
  output    = "100 V"
  length    = "120 m"
  cable     = "2 x 2.5 mm2"
  loudspeaker "C" {
    quantity = 3
    tap      = "6 W"
  }
}
microphone "Desk" {
  into      = "Rack"
  connector = "XLR 3"
  lead      = "5 m"
}
`)
	want := []string{
		"Line | Cable no. | From | To | Cable | Cores | Length (m) | Laid in | Remarks",
		"A | L1.01 | Rack, 100 V | end of the home run | 2 x 2.5 mm2 | 2 | 20 | conduit | ",
		"A | L1.02 | end of the home run | First | typical/2 x 1.5 mm2 | 2 | 3 | conduit | typical data",
		"A | L1.03 | First | Bar | 2 x 2.5 mm2 | 2 | 7 | conduit | ",
		"A | L1.04 | Bar | Last | 2 x 2.5 mm2 | 2 | not stated | conduit | ",
		// Along the line to the attenuator: 20 m + 3 m + 7 m.
		"A | L1.R | Rack | attenuators | 2 x 0.75 mm2 | 2 | 30 | conduit | override, along the line",
		"B | L2.01 | Rack, 100 V | C 3 | 2 x 2.5 mm2 | 2 | 120 |  | the whole line; its lengths are not stated one by one",
		"leads | S1 | Desk | an input of Rack |  |  | 5 |  | plug XLR 3",
	}
	if diff := cmp.Diff(want, shown(schedule.Make(s, schedule.Cables, schedule.Usual()))); diff != "" {
		t.Error(diff)
	}
	want = []string{
		"Cable | Cores | Lengths | Longest (m) | Laid (m) | To order (m) | Drums | Lines | Remarks",
		"2 x 2.5 mm2 | 2 | 3 | 120 | 147 | 162 | 2 | A, B | without 1 length not stated, a length is longer than a drum",
		"typical/2 x 1.5 mm2 | 2 | 1 | 3 | 3 | 4 | 1 | A | typical data",
		"2 x 0.75 mm2 | 2 | 1 | 30 | 30 | 33 | 1 | A | ",
	}
	totals := schedule.Make(s, schedule.CableTotals, schedule.Usual())
	if diff := cmp.Diff(want, shown(totals)); diff != "" {
		t.Error(diff)
	}
	generous := schedule.Make(s, schedule.CableTotals, schedule.Options{CuttingAllowance: 50, Drum: 500})
	if got := generous.Rows[0].Cells; got[5].Number != 221 || got[6].Number != 1 {
		t.Errorf("147 m and a half more are %g m on %g drums of 500 m", got[5].Number, got[6].Number)
	}
}

func TestAmplifierLoads(t *testing.T) {
	t.Parallel()
	got := shown(schedule.Make(systemOf(t, "ferry_terminal"), schedule.Amplifiers, schedule.Usual()))
	for i, want := range map[int]string{
		1: "Halls amp | Main | Zone 1 | Departure hall | 18 | 108.00 | 93.7 | 41.7 |  |  | ",
		4: "Halls amp | Main | Zone 4 |  | 0 |  |  | 41.7 |  |  | ",
		5: "Halls amp | Main | all outputs | 3 lines | 38 | 246.00 |  |  | 240 | 102.5 | -6.00",
	} {
		if diff := cmp.Diff(want, got[i]); diff != "" {
			t.Error(diff)
		}
	}
	// Stereo into ohms: watts of loudspeakers mean nothing there.
	got = shown(schedule.Make(systemOf(t, "hotel"), schedule.Amplifiers, schedule.Usual()))
	if diff := cmp.Diff("Lounge amp | Left | Left | Lounge left | 2 |  | 4.2 | 4.0 | 50 |  | ", got[13]); diff != "" {
		t.Error(diff)
	}
}

func TestPartsAndSpares(t *testing.T) {
	t.Parallel()
	s := systemOf(t, `mixer "Desk" {}
amplifier "Rack" {
  model = "typical/mixer-amp-60"
}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 21
    model    = "typical/ceiling-6"
    tap      = "6 W"
  }
  loudspeaker "Horn" {
    kind        = "horn"
    rated_power = "15 W"
    tap         = "10 W"
  }
  line_end "Watch" {}
}
part "Wall plate" {
  quantity = 2
  location = "bar"
  note     = "white"
}
`)
	want := []string{
		"Kind | Item | Model | Data | Needed | Spares | To order | In | For | Remarks",
		"amplifier | mixer amplifier | typical/mixer-amp-60 | typical: choose before ordering | 1 | 0 | 1 | pieces | Rack | ",
		"mixer |  |  | no model stated | 1 | 0 | 1 | pieces | Desk | ",
		"loudspeaker | ceiling | typical/ceiling-6 | typical: choose before ordering | 21 | 2 | 23 | pieces | A | ",
		"loudspeaker | horn 15 W |  | no model stated | 1 | 1 | 2 | pieces | A | ",
		"line end |  |  | no model stated | 1 | 0 | 1 | pieces | A | ",
		"cable | not stated |  | no cable stated | 0 |  | 0 | m | A | without 22 lengths not stated",
		"part | Wall plate |  |  | 2 | 0 | 2 | pieces | bar | white",
	}
	if diff := cmp.Diff(want, shown(schedule.Make(s, schedule.Parts, schedule.Usual()))); diff != "" {
		t.Error(diff)
	}
	none := schedule.Make(s, schedule.Parts, schedule.Options{})
	if got := none.Rows[2].Cells[5]; got.Number != 0 {
		t.Errorf("%g spares although none are asked for", got.Number)
	}
}

func TestInputsAndPriorities(t *testing.T) {
	t.Parallel()
	s := systemOf(t, "school")
	got := shown(schedule.Make(s, schedule.Inputs, schedule.Usual()))
	for i, want := range map[int]string{
		1: "Office mixer | Desk | microphone | Office desk | microphone | house/desk | DIN 5 | 3 | -54 dBV | contact | 1 | Mic, Bell, Music | all lines | ",
		5: "Office mixer | Fire mute | contact | Fire panel | mute link |  |  |  |  | opens in alarm |  | Desk, Mic, Bell, Music |  | ",
		6: "Line amp | Line in | line | Main of Office mixer | send |  |  | 2 | 0 dBV |  |  |  |  | ",
	} {
		if diff := cmp.Diff(want, got[i]); diff != "" {
			t.Error(diff)
		}
	}
	got = shown(schedule.Make(s, schedule.Priorities, schedule.Usual()))
	for i, want := range map[int]string{
		1:  "Office desk | 1 | Class change | 2 | silence it | silences it | all lines | ",
		4:  "Class change | 2 | Office desk | 1 | give way | lets it go on | all lines | all lines",
		16: "Fire panel | alarm | Player | 4 | silence it | silences it | all lines | ",
	} {
		if diff := cmp.Diff(want, got[i]); diff != "" {
			t.Error(diff)
		}
	}
	const fault = "Purser | 1 | Hall player | 2 | silence it | does not silence it | Departure hall, Arrival hall | Departure hall, Arrival hall"
	if got := shown(schedule.Make(systemOf(t, "ferry_terminal"), schedule.Priorities, schedule.Usual())); got[1] != fault {
		t.Error(got[1])
	}
}

func TestTestSheet(t *testing.T) {
	t.Parallel()
	table := schedule.Make(systemOf(t, "school"), schedule.TestSheet, schedule.Options{Below: 25, Above: 20})
	// 334.8 ohm − 25 % and + 20 %; the line has a volume control and no battery.
	const want = "Hall | Line amp | Line 3 | 5 | 30.00 | 334.8 | 251.1 | 401.8 | all fully up |  |  |  |  |  |  |  | " +
		"Office desk before Class change, Hall handheld, Player; Class change before Hall handheld, Player; Hall handheld before Player |  | none stated |  | "
	if diff := cmp.Diff(want, shown(table)[3]); diff != "" {
		t.Error(diff)
	}
	// A battery feeds the floors of the hotel, and not its lounge.
	table = schedule.Make(systemOf(t, "hotel"), schedule.TestSheet, schedule.Usual())
	standby := column(t, table, "On standby")
	if first, last := table.Rows[0].Cells[standby], table.Rows[13].Cells[standby]; !first.Empty() || last.Text != "none stated" {
		t.Errorf("standby: %+v, %+v", first, last)
	}
}
