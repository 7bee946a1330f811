package schedule_test

import (
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
	const want = "Floor 1 | Amp A | Channel 1 | 14 | loudspeaker | Room 1, Bed … Room 14, Bed | Room 1 … Room 14 | Bedroom | house/ceiling-6 | 3 |  | 4 | house/4 x 1.5 mm2 | 98.7 … 99.1 | 2.93 … 2.95 | 0.08 … 0.11"
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
