package sheet_test

import (
	"bytes"
	"encoding/csv"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/linter/sheet"
	"loudlint/schema"
	"loudlint/schema/source"
)

// nasty names what a spreadsheet program would like to work out, and whatever
// else could go wrong with a cell.
const nasty = `system "Quay & pier &D" { revision = "1&A" }
amplifier "=1+1" { rated_power = "120 W" }
line "+cmd|' /C calc'!A0" {
  amplifier = "=1+1"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  containment = "-2+3"
  loudspeaker "@SUM(1,2)" {
    quantity = 2
    spacing  = "5 m"
    tap      = "6 W"
    space    = "Café \"Süd\", 1. Stock; 日本"
  }
  loudspeaker "'=quoted" {
    leg = "1.25 m"
    tap = "0.75 W"
  }
  loudspeaker "_x000D_ <b>" {
    leg = "3 m"
    tap = "6 W"
  }
}
space "Café \"Süd\", 1. Stock; 日本" {}
`

func systemOf(t testing.TB, design string) *analysis.System {
	t.Helper()
	var d *schema.Design
	var problems []schema.Problem
	var err error
	if strings.Contains(design, "\n") {
		d, problems = schema.Read("test"+schema.Ending, []*source.File{source.NewFile("test"+schema.Ending, []byte(design))}, schema.Options{})
	} else {
		d, problems, err = schema.Load("../../examples/"+design+schema.Ending, schema.Options{})
	}
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return analysis.Analyse(d, 1)
}

func tablesOf(t testing.TB, design string) []*schedule.Table {
	t.Helper()
	s := systemOf(t, design)
	var all []*schedule.Table
	for _, k := range schedule.Kinds() {
		all = append(all, schedule.Make(s, k.Kind, schedule.Usual()))
	}
	return all
}

func TestDisarm(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		"": "", "Hall": "Hall", "=1+1": "'=1+1", "+1": "'+1", "-54 dBV": "'-54 dBV", "@x": "'@x", "\t=x": "'\t=x", "\r=x": "'\r=x",
		"'=x": "''=x", "''-": "'''-", "'quoted'": "'quoted'", "'": "'", "a=b": "a=b",
	} {
		if got := sheet.Disarm(text); got != want {
			t.Errorf("%q is disarmed as %q, want %q", text, got, want)
		}
		if got := sheet.Rearm(sheet.Disarm(text)); got != text {
			t.Errorf("%q comes back as %q", text, got)
		}
	}
}

// TestCSV holds the form: RFC 4180, a mark of UTF-8 only where it is needed, no
// text that begins like a formula, numbers as they are.
func TestCSV(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	if err := sheet.WriteCSV(&b, schedule.Make(systemOf(t, "ferry_terminal"), schedule.Amplifiers, schedule.Usual())); err != nil {
		t.Fatal(err)
	}
	const want = "Amplifier,Channel,Output,Lines,Loudspeakers,Load (W),Impedance (ohm),Lowest allowed (ohm),Rated (W),Used (%),In hand (W)\r\n" +
		"Halls amp,Main,Zone 1,Departure hall,18,108.00,93.7,41.7,,,\r\n"
	if !strings.HasPrefix(b.String(), want) || !strings.Contains(b.String(), ",240,102.5,-6.00\r\n") {
		t.Errorf("%q", b.String())
	}
	for _, table := range tablesOf(t, nasty) {
		b.Reset()
		if err := sheet.WriteCSV(&b, table); err != nil {
			t.Fatal(err)
		}
		text := b.String()
		if ascii := strings.IndexFunc(text, func(r rune) bool { return r > '~' }) < 0; ascii == strings.HasPrefix(text, "\ufeff") {
			t.Errorf("%s: the mark of UTF-8 is wrong", table.Kind)
		}
		records, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(text, "\ufeff"))).ReadAll()
		if err != nil || len(records) != len(table.Rows)+1 {
			t.Fatal(table.Kind, len(records), err)
		}
		for r, record := range records[1:] {
			for c, field := range record {
				cell := table.Rows[r].Cells[c]
				if _, err := strconv.ParseFloat(field, 64); err != nil && field != "" && strings.ContainsAny(field[:1], "=+-@\t\r") {
					t.Errorf("%s: %q would be worked out", table.Kind, field)
				}
				if !cell.IsNumber && sheet.Rearm(field) != cell.Text {
					t.Errorf("%s: %q comes back as %q", table.Kind, cell.Text, field)
				}
			}
		}
	}
}

func TestXLSXIsTheSameTwice(t *testing.T) {
	t.Parallel()
	var one, two bytes.Buffer
	for _, b := range []*bytes.Buffer{&one, &two} {
		if err := sheet.WriteXLSX(b, tablesOf(t, "ferry_terminal")); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(one.Bytes(), two.Bytes()) {
		t.Error("two workbooks of one design differ")
	}
}

// TestLibreOfficeReadsTheSame opens the workbooks with an independent program
// and compares what it found with what was to be written: numbers that are
// numbers, texts as they are, nothing worked out.
func TestLibreOfficeReadsTheSame(t *testing.T) {
	t.Parallel()
	if testing.Short() {
		t.Skip("it starts an office program")
	}
	program, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("soffice is not installed: Debian's libreoffice-calc-nogui has it")
	}
	folder := t.TempDir()
	designs := map[string][]*schedule.Table{"ferry": tablesOf(t, "ferry_terminal"), "hotel": tablesOf(t, "hotel"), "nasty": tablesOf(t, nasty)}
	arguments := []string{
		"-env:UserInstallation=file://" + filepath.Join(folder, "profile"), "--headless",
		// Comma, quote, UTF-8, from the first line; texts in quotes and numbers not; every sheet into a file of its own.
		"--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,true,false,false,false,-1",
		"--outdir", folder,
	}
	for name, tables := range designs {
		file := filepath.Join(folder, name+".xlsx")
		var b bytes.Buffer
		if err := sheet.WriteXLSX(&b, tables); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, b.Bytes(), 0o600); err != nil {
			t.Fatal(err)
		}
		arguments = append(arguments, file)
	}
	command := exec.CommandContext(t.Context(), program, arguments...)
	command.Env = append(command.Environ(), "LC_ALL=C.UTF-8")
	if out, err := command.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	for name, tables := range designs {
		for _, table := range tables {
			title := strings.ReplaceAll(string(table.Kind), "-", " ")
			file := filepath.Join(folder, name+"-"+strings.ToUpper(title[:1])+title[1:]+".csv")
			text, err := os.ReadFile(file)
			if err != nil {
				t.Error(err)
				continue
			}
			r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))
			r.FieldsPerRecord = -1
			records, err := r.ReadAll()
			if err != nil || len(records) < len(table.Rows)+1 {
				t.Errorf("%s: %d records: %v", file, len(records), err)
				continue
			}
			if diff := cmp.Diff(wanted(table), records[:len(table.Rows)+1]); diff != "" {
				t.Errorf("%s of %s (-written +read):\n%s", table.Kind, name, diff)
			}
			// Quotes stand around texts alone: as many as there are texts.
			rows := bytes.SplitN(text, []byte("\n,"), 2)[0] // up to the empty row before the notes
			if got, want := bytes.Count(rows, []byte(`"`)), quotes(table); got != want {
				t.Errorf("%s of %s: %d quotes around texts, want %d: a number came as a text, or the other way round", table.Kind, name, got, want)
			}
		}
	}
}

// quotes counts those of a table as CSV with every text in quotes.
func quotes(table *schedule.Table) int {
	n := 0
	add := func(text string) {
		if text != "" {
			n += 2 + 2*strings.Count(text, `"`)
		}
	}
	for c := range table.Columns {
		add(table.Columns[c].Name())
	}
	for _, row := range table.Rows {
		for _, cell := range row.Cells {
			add(cell.Text)
		}
	}
	return n
}

func wanted(table *schedule.Table) [][]string {
	head := make([]string, len(table.Columns))
	for c := range table.Columns {
		head[c] = table.Columns[c].Name()
	}
	all := [][]string{head}
	for _, row := range table.Rows {
		record := make([]string, len(table.Columns))
		for c := range table.Columns {
			if record[c] = row.Cells[c].Text; row.Cells[c].IsNumber {
				record[c] = strconv.FormatFloat(row.Cells[c].Number, 'f', -1, 64)
			}
		}
		all = append(all, record)
	}
	return all
}
