package textout

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/schema"
)

func schedulesOf(t *testing.T, path string) []*schedule.Table {
	t.Helper()
	design, problems, err := schema.Load(path, schema.Options{})
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	s := analysis.Analyse(design, 1)
	var tables []*schedule.Table
	for _, k := range schedule.Kinds() {
		tables = append(tables, schedule.Make(s, k.Kind, schedule.Usual()))
	}
	return tables
}

// TestTablesOfExamples shows every schedule of three examples.
func TestTablesOfExamples(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"village_hall", "ferry_terminal", "hotel"} {
		var b bytes.Buffer
		if err := WriteTables(&b, schedulesOf(t, "../../examples/"+name+schema.Ending), Options{}); err != nil {
			t.Fatal(err)
		}
		golden(t, "schedules-"+name, b.Bytes())
	}
}

// TestTablesFitThePage demands that nothing stands beyond the page, however
// narrow it is, and that nothing of a cell is lost.
func TestTablesFitThePage(t *testing.T) {
	t.Parallel()
	tables := schedulesOf(t, "../../examples/hotel"+schema.Ending)
	for _, width := range []int{24, 40, 60, 80, 96, 140, 300} {
		for _, table := range tables {
			var b bytes.Buffer
			if err := WriteTables(&b, []*schedule.Table{table}, Options{Width: width}); err != nil {
				t.Fatal(err)
			}
			text := b.String()
			for line := range strings.Lines(text) {
				line = strings.TrimRight(line, "\n")
				if visibleWidth(line) > width && !strings.Contains(line, table.Head.Design) || strings.HasSuffix(line, " ") {
					t.Errorf("%s at %d columns: %q", table.Kind, width, line)
				}
			}
			folded := table.Fold()
			for _, row := range folded.Rows {
				for c, cell := range row.Cells {
					for word := range strings.FieldsSeq(folded.Columns[c].Show(cell)) {
						if width >= 60 && !strings.Contains(text, word) {
							t.Errorf("%s at %d columns: %q is missing", table.Kind, width, word)
						}
					}
				}
			}
		}
	}
}

func TestTablesWithNothing(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	empty := &schedule.Table{Title: "Cable schedule", Columns: []schedule.Column{{Title: "Cable"}}, Head: schedule.Head{Design: "empty.pa.hcl"}}
	if err := WriteTables(&b, []*schedule.Table{empty, empty}, Options{Width: 40}); err != nil || strings.Count(b.String(), "There is nothing to list.") != 2 {
		t.Errorf("%v: %s", err, b.String())
	}
	if err := WriteTables(&full{10}, []*schedule.Table{empty}, Options{}); !errors.Is(err, errFull) {
		t.Errorf("the error of the writer is lost: %v", err)
	}
}

// TestTablesAreSafe: what a design is called cannot move the cursor.
func TestTablesAreSafe(t *testing.T) {
	t.Parallel()
	table := &schedule.Table{
		Title: "Line schedule", Head: schedule.Head{Job: "a\x1b[2Jb", Design: "x"},
		Columns: []schedule.Column{{Title: "Line", Heading: true}, {Title: "Space", Key: true}},
		Rows:    []schedule.Row{{Cells: []schedule.Cell{{Text: "c\x1b[31m"}, {Text: "d\u202ee"}}}},
	}
	var b bytes.Buffer
	if err := WriteTables(&b, []*schedule.Table{table}, Options{}); err != nil || strings.ContainsAny(b.String(), "\x1b\u202e") {
		t.Errorf("%v: %q", err, b.String())
	}
}
