package transfer_test

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/linter/sheet"
	"loudlint/linter/transfer"
	"loudlint/schema"
	"loudlint/schema/source"
)

func load(t testing.TB, name string) *schema.Design {
	t.Helper()
	d, problems, err := schema.Load("../../examples/"+name+schema.Ending, schema.Options{})
	if err != nil || len(problems) > 0 {
		t.Fatal(name, err, problems)
	}
	return d
}

func read(t testing.TB, name string, files ...*source.File) *schema.Design {
	t.Helper()
	d, problems := schema.Read(name, files, schema.Options{})
	if len(problems) > 0 {
		t.Fatalf("%v\n%s", problems, files[len(files)-1].Text)
	}
	return d
}

func convert(t testing.TB, data []byte, o transfer.Options) *transfer.Result {
	t.Helper()
	book, err := sheet.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	r, err := transfer.Convert(book, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

var uses = regexp.MustCompile(`(?m)^use \{.*\}$`)

// withoutLines gives the files of a design with the blocks of its lines cut out.
func withoutLines(d *schema.Design) []*source.File {
	var files []*source.File
	for _, f := range d.Files {
		text := slices.Clone(f.Text)
		for _, l := range d.Lines {
			if l.Header.File == f {
				for i := l.Header.Start; i < l.Body.End; i++ {
					if text[i] != '\n' {
						text[i] = ' '
					}
				}
			}
		}
		// All files are there already.
		files = append(files, source.NewFile(f.Name, uses.ReplaceAll(text, nil)))
	}
	return files
}

func withoutUses(d *schema.Design) []*source.File {
	var files []*source.File
	for _, f := range d.Files {
		files = append(files, source.NewFile(f.Name, uses.ReplaceAll(f.Text, nil)))
	}
	return files
}

func fileOf(text string) *source.File {
	return source.NewFile("import"+schema.Ending, []byte(text))
}

var measuredLine = regexp.MustCompile(`(?m)^  line +=( "(?:[^"\\]|\\.)*")$`)

// withLines gives a text with the lines that its readings are of.
func withLines(text string) []*source.File {
	seen := map[string]bool{}
	for _, m := range measuredLine.FindAllStringSubmatch(text, -1) {
		if !seen[m[1]] && !strings.Contains(text, "\nline"+m[1]) {
			text += "\nline" + m[1] + " {}\n"
		}
		seen[m[1]] = true
	}
	return []*source.File{fileOf(text)}
}

// branched has what the examples have not: a tee, a home run that meets another
// cable, control inside control, names that need quoting, gaps.
const branched = `amplifier "Rack" {
  rated_power = "240 W"
  output "100 V" { volts = "100 V" }
}
space "Café \"Süd\" $${x}" {}
line "Line \"1\" %%{y}" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "First" {
    leg   = "3 m"
    cable = "2 x 1.5 mm2"
    tap   = "6 W"
    space = "Café \"Süd\" $${x}"
  }
  branch "Tee" {
    quantity = 2
    leg      = "4.25 m"
    spacing  = "8 m"
    cable    = "2 x 1.5 mm2"
    attenuator "Room" {
      quantity = 2
      leg      = "1 m"
      spacing  = "2 m"
      loudspeaker "Bed" {
        quantity = 3
        leg      = "2 m"
        spacing  = "0.5 m"
        tap      = "1.5 W"
      }
    }
    loudspeaker "Hall" {
      leg = "7 m"
      tap = "3 W"
    }
  }
  existing "Old" {
    leg  = "6 m"
    load = "12 W"
  }
  loudspeaker "Off" {
    leg      = "1 m"
    tap      = "0 W"
    polarity = "reversed"
    basis    = "assumed"
  }
  line_end "Watch" {}
}
line "Gaps" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" {
    quantity = 4
    tap      = "6 W"
  }
}
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  ring_leg  = "60 m"
  loudspeaker "R" {
    quantity = 8
    spacing  = "20 m"
    tap      = "3 W"
  }
}
line "Reverse" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  ring_leg  = "60 m"
  return    = "reverse"
  loudspeaker "R" {
    quantity = 8
    spacing  = "20 m"
    tap      = "3 W"
  }
}
line "Lumped" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  length    = "90 m"
  loudspeaker "L" {
    quantity = 3
    tap      = "3 W"
  }
}
`

// TestRoundTrip: a design's own schedule comes back as lines that come to the
// same figures, device by device, by CSV and by XLSX.
func TestRoundTrip(t *testing.T) {
	t.Parallel()
	designs := map[string]*schema.Design{"branched": read(t, "branched"+schema.Ending, source.NewFile("branched"+schema.Ending, []byte(branched)))}
	for _, name := range []string{"village_hall", "ferry_terminal", "warehouse_us", "school", "hotel"} {
		designs[name] = load(t, name)
	}
	for name, design := range designs {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			table := schedule.Make(analysis.Analyse(design, 1), schedule.Loudspeakers, schedule.Usual())
			var asCSV, asXLSX bytes.Buffer
			if err := sheet.WriteCSV(&asCSV, table); err != nil {
				t.Fatal(err)
			}
			if err := sheet.WriteXLSX(&asXLSX, []*schedule.Table{table}); err != nil {
				t.Fatal(err)
			}
			one, two := convert(t, asCSV.Bytes(), transfer.Options{Design: design}), convert(t, asXLSX.Bytes(), transfer.Options{Design: design})
			if diff := cmp.Diff(one.Text, two.Text); diff != "" {
				t.Errorf("CSV and XLSX say different things:\n%s", diff)
			}
			if len(one.Notices) > 0 {
				t.Errorf("not understood: %v", one.Notices)
			}
			files := append(withoutLines(design), source.NewFile("import"+schema.Ending, []byte(one.Text)))
			again := analysis.Analyse(read(t, design.Name, files...), 1)
			for _, kind := range []schedule.Kind{schedule.Loudspeakers, schedule.Lines, schedule.Amplifiers, schedule.CableTotals, schedule.TestSheet} {
				want, got := schedule.Make(analysis.Analyse(design, 1), kind, schedule.Usual()), schedule.Make(again, kind, schedule.Usual())
				if diff := cmp.Diff(rows(want), rows(got)); diff != "" {
					t.Errorf("%s (-design +import):\n%s", kind, diff)
				}
			}
			if name == "hotel" && strings.Count(one.Text, "\n") > 500 {
				t.Errorf("the rooms were not folded into runs: %d lines", strings.Count(one.Text, "\n"))
			}
		})
	}
}

// TestSavedByAnotherProgram: a schedule that LibreOffice opened and saved, as
// people do, says the same.
func TestSavedByAnotherProgram(t *testing.T) {
	t.Parallel()
	if testing.Short() {
		t.Skip("it starts an office program")
	}
	program, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("soffice is not installed: Debian's libreoffice-calc-nogui has it")
	}
	design := read(t, "branched"+schema.Ending, source.NewFile("branched"+schema.Ending, []byte(branched)))
	table := schedule.Make(analysis.Analyse(design, 1), schedule.Loudspeakers, schedule.Usual())
	var b bytes.Buffer
	if err := sheet.WriteXLSX(&b, []*schedule.Table{table}); err != nil {
		t.Fatal(err)
	}
	folder, out := t.TempDir(), t.TempDir()
	file := filepath.Join(folder, "workbook.xlsx")
	want := convert(t, b.Bytes(), transfer.Options{Design: design}).Text
	if err := os.WriteFile(file, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	arguments := []string{"-env:UserInstallation=file://" + filepath.Join(folder, "profile"), "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", out, file}
	if text, err := exec.CommandContext(t.Context(), program, arguments...).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, text)
	}
	data, err := os.ReadFile(filepath.Join(out, "workbook.xlsx"))
	if err != nil {
		t.Fatal(err)
	}
	got := convert(t, data, transfer.Options{Design: design})
	if diff := cmp.Diff(want, got.Text); diff != "" || len(got.Notices) > 0 {
		t.Errorf("(-written +saved again) %v\n%s", got.Notices, diff)
	}
}

func rows(table *schedule.Table) [][]schedule.Cell {
	var all [][]schedule.Cell
	for _, r := range table.Rows {
		all = append(all, r.Cells)
	}
	return all
}

// TestAlone: without a design the text is one by itself, and says what it lacks.
func TestAlone(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"village_hall", "ferry_terminal", "warehouse_us", "school", "hotel"} {
		var b bytes.Buffer
		if err := sheet.WriteCSV(&b, schedule.Make(analysis.Analyse(load(t, name), 1), schedule.Loudspeakers, schedule.Usual())); err != nil {
			t.Fatal(err)
		}
		r := convert(t, b.Bytes(), transfer.Options{})
		if len(r.Notices) > 0 {
			t.Errorf("%s: %v", name, r.Notices)
		}
		read(t, name, source.NewFile("import"+schema.Ending, []byte(r.Text)))
	}
}

func TestTablesOfOthers(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name, table, want string
		notices           []string
	}{
		{
			"plain heads, units in the head, a line named once", "Circuit;Tag;Room;Power tap [W];Cable length (m)\nHall;LS 1;Hall;6;20\n;LS 2;Hall;6;5\n;LS 3;Hall;7,5;5\n",
			`line "Hall" {
  home_run = "20 m"
  # amplifier = "…" is not in the table
  # output = "100 V", or another one of the amplifier, is not in the table
  loudspeaker "LS" {
    quantity = 2
    tap      = "6 W"
    spacing  = "5 m"
    space    = "Hall"
  }
  loudspeaker "LS 3" {
    tap   = "7.5 W"
    leg   = "5 m"
    space = "Hall"
  }
}
`, nil,
		},
		{
			"units in the cells, and heads without brackets", "Line,Name,Tap,Leg ft\nA,B,\"6 W\",29.5\n",
			`line "A" {
  home_run = "29.5 ft"
  # amplifier = "…" is not in the table
  # output = "100 V", or another one of the amplifier, is not in the table
  loudspeaker "B" {
    tap = "6 W"
  }
}
`, nil,
		},
		{
			"what is not understood stays", "Line,Name,Tap (W),Leg,Colour\nA,B,six,20,white\nA,C,6,5 m,\nA,C,6,,\n,,,,just a remark\n",
			`line "A" {
  # amplifier = "…" is not in the table
  # output = "100 V", or another one of the amplifier, is not in the table
  # row 5: This row says nothing of a device. It is kept as a comment.
  # Colour: just a remark
  loudspeaker "B" {
    # row 2, column D, Leg: "20" has no unit. Write it into the head, such as Leg (m), or into the cell, such as 40 m.
    # row 2, column C, Tap (W): Found "six", which does not start with a number; expected a power such as "6 W".
    # Colour: white
  }
  loudspeaker "C" {
    tap = "6 W"
    leg = "5 m"
  }
  loudspeaker "C (2)" {
    tap = "6 W"
    # row 4, column B, Name: The designation "C" is there already on line "A". This one is called "C (2)".
  }
}
`, []string{
				`row 2, column D, Leg: "20" has no unit. Write it into the head, such as Leg (m), or into the cell, such as 40 m.`,
				`row 2, column C, Tap (W): Found "six", which does not start with a number; expected a power such as "6 W".`,
				`row 4, column B, Name: The designation "C" is there already on line "A". This one is called "C (2)".`,
				`row 5: This row says nothing of a device. It is kept as a comment.`,
			},
		},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			r := convert(t, []byte(test.table), transfer.Options{})
			_, text, _ := strings.Cut(r.Text, "\n\n")
			if i := strings.Index(text, "line "); i > 0 {
				text = text[i:]
			}
			if diff := cmp.Diff(test.want, text); diff != "" {
				t.Errorf("(-want +got)\n%s", diff)
			}
			var notices []string
			for i := range r.Notices {
				notices = append(notices, r.Notices[i].String())
			}
			if diff := cmp.Diff(test.notices, notices); diff != "" {
				t.Errorf("notices (-want +got)\n%s", diff)
			}
		})
	}
}

func TestRefusedTables(t *testing.T) {
	t.Parallel()
	for table, want := range map[string]string{
		"":                                     "no table is found: it is empty",
		"a,b,c\n1,2,3\n":                       `its heads are ["a" "b" "c"]`,
		"Line,Name,Tapp (W)\nA,B,6\n":          "",
		"Line,Name,Leg (m),Tpa (W)\nA,B,6,6\n": `row 1, column D: the head "Tpa (W)" is not known; did you mean "tap"?`,
		"\xff\xfeL\x00":                        "UTF-16",
		"Line,Name\x80,Tap\n":                  "CSV in UTF-8",
		"\xd0\xcf\x11\xe0old":                  "locked by a password",
		"PK\x03\x04nonsense":                   "cannot be read",
		strings.Repeat("x", sheet.MaxFileBytes+1):                        "at most",
		"Line,Name,Tap (W)" + strings.Repeat(",x", sheet.MaxColumns):     "at most 200 are read",
		"Line,Name,Tap (W)\n" + strings.Repeat("A,B,6\n", sheet.MaxRows): "more than 20000 rows",
	} {
		book, err := sheet.Read([]byte(table))
		if err == nil {
			_, err = transfer.Convert(book, transfer.Options{})
		}
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%.40q: %v, want %q", table, err, want)
		}
	}
}
