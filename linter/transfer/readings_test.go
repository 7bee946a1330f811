package transfer_test

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"io"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/linter/sheet"
	"loudlint/linter/transfer"
	"loudlint/schema"
)

// filled makes the test sheet of the school as a workbook and fills in cells.
func filled(t testing.TB, cells map[string]any, formulas map[string]string) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := sheet.WriteXLSX(&b, []*schedule.Table{schedule.Make(analysis.Analyse(load(t, "school"), 1), schedule.TestSheet, schedule.Usual())}); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&b)
	if err != nil {
		t.Fatal(err)
	}
	for at, value := range cells {
		if err := f.SetCellValue("Test sheet", at, value); err != nil {
			t.Fatal(err)
		}
	}
	for at, formula := range formulas {
		if err := f.SetCellFormula("Test sheet", at, formula); err != nil {
			t.Fatal(err)
		}
	}
	var out bytes.Buffer
	if err := f.Write(&out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// TestFilledIn: what was written into the sheet comes back as readings that the
// dialect takes; what cannot be understood stays beside them.
func TestFilledIn(t *testing.T) {
	t.Parallel()
	// J impedance, K frequency, L instrument, M amplifier disconnected, N DC
	// resistance, O insulation, P polarity, T date, U signed.
	data := filled(t, map[string]any{
		"J2": 204.5, "K2": 1000, "L2": "impedance meter", "M2": "yes", "N2": 3.2, "O2": 50, "P2": "ok", "T2": 46000, "U2": "${a}",
		"J3": "a lot", "L3": "sound", "M3": "perhaps", "T3": "last week",
		"O4": 20, "T4": "2026-05-04",
	}, map[string]string{"J5": "1+1"})
	design := load(t, "school")
	r := convert(t, data, transfer.Options{Design: design})
	const want = `# Made from a table; from now on this text is what counts.

reading "Ground floor, impedance" {
  line                   = "Ground floor"
  impedance              = "204.5 ohm"
  frequency              = "1000 Hz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
  date                   = "2025-12-09"
  # Polarity: ok
  # Signed: ${a}
}

reading "Ground floor, DC resistance" {
  line                   = "Ground floor"
  impedance              = "3.2 ohm"
  instrument             = "multimeter"
  amplifier_disconnected = true
  date                   = "2025-12-09"
}

reading "Ground floor, insulation" {
  line                   = "Ground floor"
  insulation             = "50 Mohm"
  instrument             = "insulation tester"
  amplifier_disconnected = true
  date                   = "2025-12-09"
}

# line "Upper floor":
# sheet "Test sheet", row 3, column J, Impedance read (ohm): Found "a lot", which does not start with a number; expected a resistance such as "8 ohm".
# sheet "Test sheet", row 3, column M, Amplifier disconnected: "perhaps" is not understood. It is yes or no.
# sheet "Test sheet", row 3, column T, Date: Found "last week", which is not written year-month-day; expected a date such as "2027-06-30".
# Instrument: sound

reading "Hall, insulation" {
  line       = "Hall"
  insulation = "20 Mohm"
  instrument = "insulation tester"
  date       = "2026-05-04"
}

# line "Corridors and yard":
# sheet "Test sheet", row 5, column J, Impedance read (ohm): This is a formula of which no result is stored. Type in the figure, or open and save the file.
`
	if diff := cmp.Diff(want, r.Text); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
	if len(r.Notices) != 4 || r.Readings != 4 {
		t.Errorf("%d readings, and: %v", r.Readings, r.Notices)
	}
	read(t, design.Name, append(withoutUses(design), fileOf(r.Text))...)
}

// TestFormulas: the stored result of a formula is taken, and it is said.
func TestFormulas(t *testing.T) {
	t.Parallel()
	f := excelize.NewFile()
	for at, text := range map[string]any{"A1": "Line", "B1": "Designation", "C1": "Tap (W)", "A2": "A", "B2": "B", "C2": 6} {
		if err := f.SetCellValue("Sheet1", at, text); err != nil {
			t.Fatal(err)
		}
	}
	if err := f.SetCellFormula("Sheet1", "C2", "2*3"); err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b); err != nil {
		t.Fatal(err)
	}
	r := convert(t, b.Bytes(), transfer.Options{})
	const want = `sheet "Sheet1", row 2, column C, Tap (W): This is a formula; its stored result "6" is taken. The design does not follow it any more.`
	if len(r.Notices) != 1 || r.Notices[0].String() != want || !strings.Contains(r.Text, `tap = "6 W"`) || !strings.Contains(r.Text, "# "+want) {
		t.Errorf("%v\n%s", r.Notices, r.Text)
	}
}

// TestReadingsOfNoLine: with the design known, a line it has not is told.
func TestReadingsOfNoLine(t *testing.T) {
	t.Parallel()
	r := convert(t, []byte("Line,Impedance read (ohm)\nHal,12\n"), transfer.Options{Design: load(t, "village_hall")})
	if len(r.Notices) != 1 || !strings.Contains(r.Notices[0].String(), `row 2, column A, Line: The design has no line "Hal". It has ["Hall" "Foyer"].`) || r.Readings != 0 || !strings.Contains(r.Text, "# Impedance read (ohm): 12") {
		t.Errorf("%v\n%s", r.Notices, r.Text)
	}
	// Alone it is taken at its word, and a figure without a unit stays one.
	r = convert(t, []byte("Line,Impedance read,DC resistance (ohm)\nHal,1.21,2\nHal,3,\n"), transfer.Options{})
	for _, want := range []string{`reading "Hal, impedance" {`, `impedance = "1.21"`, `reading "Hal, DC resistance" {`, `reading "Hal, impedance, 2" {`} {
		if !strings.Contains(r.Text, want) {
			t.Errorf("%s is missing in\n%s", want, r.Text)
		}
	}
	if len(r.Notices) > 0 {
		t.Error(r.Notices)
	}
}

// TestBrokenWorkbooks: a workbook that was cut off or damaged is refused, or read
// as far as it goes; it never takes the program with it. Compressed bytes are of
// no use to the fuzzer, which would only ever break their checksums.
func TestBrokenWorkbooks(t *testing.T) {
	t.Parallel()
	whole := filled(t, map[string]any{"J2": 204.5, "T2": 46000}, map[string]string{"J3": "1+1"})
	try := func(data []byte) {
		if book, err := sheet.Read(data); err == nil {
			_, _ = transfer.Convert(book, transfer.Options{}) // it ends, and that is all that is asked
		}
	}
	chance := rand.New(rand.NewPCG(1, 2))
	for range 60 {
		try(whole[:chance.IntN(len(whole))])
		damaged := bytes.Clone(whole)
		for range 1 + chance.IntN(4) {
			damaged[chance.IntN(len(damaged))] ^= byte(1 << chance.IntN(8))
		}
		try(damaged)
	}
	// Parts that were changed before they were packed, so that the checksums hold.
	parts, err := zip.NewReader(bytes.NewReader(whole), int64(len(whole)))
	if err != nil {
		t.Fatal(err)
	}
	for range 60 {
		var b bytes.Buffer
		w := zip.NewWriter(&b)
		hit := chance.IntN(len(parts.File))
		for i, part := range parts.File {
			in, err := part.Open()
			if err != nil {
				t.Fatal(err)
			}
			text, err := io.ReadAll(in)
			if err != nil {
				t.Fatal(err)
			}
			if i == hit {
				at := chance.IntN(len(text))
				text = append(text[:at:at], text[min(len(text), at+chance.IntN(40)):]...)
			}
			out, err := w.Create(part.Name)
			if err != nil {
				t.Fatal(err)
			}
			if _, err := out.Write(text); err != nil {
				t.Fatal(err)
			}
		}
		if err := w.Close(); err != nil {
			t.Fatal(err)
		}
		try(b.Bytes())
	}
}

// TestBombs: what would unpack to more than is read is refused, and so are rows
// without end.
func TestBombs(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	out, err := w.Create("xl/worksheets/sheet1.xml")
	if err != nil {
		t.Fatal(err)
	}
	zeros := make([]byte, 1<<20)
	for range sheet.MaxUnpacked>>20 + 1 {
		if _, err := out.Write(zeros); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	if _, err := sheet.Read(b.Bytes()); err == nil || !strings.Contains(err.Error(), "cannot be read") {
		t.Errorf("%d bytes that unpack to %d MB: %v", b.Len(), sheet.MaxUnpacked>>20+1, err)
	}
	for at, refused := range map[string]bool{"A1048576": true, "A20000": false, "GR1": false, "GS1": true, "XFD1": true} {
		f := excelize.NewFile()
		if err := f.SetCellValue("Sheet1", at, "far"); err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := f.Write(&b); err != nil {
			t.Fatal(err)
		}
		if _, err := sheet.Read(b.Bytes()); (err != nil) != refused {
			t.Errorf("a cell at %s: %v", at, err)
		}
	}
}

// FuzzConvert demands that whatever a table holds, reading it ends, and that text
// without a notice is a design.
func FuzzConvert(f *testing.F) {
	for _, seed := range []string{
		"Line,Designation,Tap (W)\nA,B 1,6\nA,B 2,6\n", "Line;Tag;Tap (W);Leg (m)\nHall;\"L\"\"S\";7,5;1e3\n", "Line\tName\tModel\n${x}\t%{y}\t\\\n",
		"Line,Device,Designation,Behind,Tap (W)\nA,attenuator,R 1,,\nA,loudspeaker,\"R 1, B\",R 1,6\nA,attenuator,R 2,,\nA,,\"R 2, B\",R 2,6\n",
		"Line,Impedance read,Insulation (Mohm),Date\nHall,1.21,5,46000\n", "Line,Name,Tap (W)\nNotes\nA,=1,'-\n", "sep=;\nLine;Name;Tap (W)\n",
		"Line,Qty,Name,Tap (W),Behind\nA,4,S,6,Bar\nA,,S 5,6,S\n", "Line,Name,Leg (m)\n\x01,\u202e,1\n",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			return
		}
		book, err := sheet.Read(data)
		if err != nil {
			return
		}
		r, err := transfer.Convert(book, transfer.Options{})
		if err != nil || len(r.Notices) > 0 {
			return
		}
		if _, problems := schema.Read("import"+schema.Ending, withLines(r.Text), schema.Options{}); len(problems) > 0 {
			t.Errorf("%v\n%s", problems, r.Text)
		}
	})
}

// TestInstrument: people write make and number where the kind of instrument is
// asked for. The kind is taken from it, the text is kept, and nothing is wrong.
func TestInstrument(t *testing.T) {
	t.Parallel()
	tests := []struct{ written, kind, comment string }{
		{"impedance meter", "impedance meter", ""},
		{" Impedance-Meter ", "impedance meter", ""},
		{"DMM", "multimeter", ""},
		{"Invented ZM-104 impedance meter, no. 4711", "impedance meter", "# Instrument: Invented ZM-104 impedance meter, no. 4711"},
		{"Invented ZM-104", "", "# Instrument: Invented ZM-104"},
		{"multimeter and impedance meter", "", "# Instrument: multimeter and impedance meter"},
		{"dmmx", "", "# Instrument: dmmx"},
		{"=1+1 \"x\" ${y}\nline \"Z\" {}", "", "# Instrument: =1+1 \"x\" ${y} line \"Z\" {}"},
	}
	for _, test := range tests {
		var table bytes.Buffer
		w := csv.NewWriter(&table)
		if err := w.WriteAll([][]string{{"Line", "Impedance read (ohm)", "Frequency (Hz)", "Instrument"}, {"Hall", "204", "1000", test.written}}); err != nil {
			t.Fatal(err)
		}
		r := convert(t, table.Bytes(), transfer.Options{})
		kind := ""
		if m := regexp.MustCompile(`instrument += "(.*)"`).FindStringSubmatch(r.Text); m != nil {
			kind = m[1]
		}
		comment := regexp.MustCompile(`# Instrument.*`).FindString(r.Text)
		if kind != test.kind || comment != test.comment || len(r.Notices) > 0 || r.Readings != 1 {
			t.Errorf("%q: a kind %q and a comment %q, and: %v\n%s", test.written, kind, comment, r.Notices, r.Text)
		}
	}
}
