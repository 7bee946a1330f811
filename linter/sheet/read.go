package sheet

import (
	"bytes"
	"encoding/csv"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"path"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"
)

// Bounds on what is read: each is far above any real table, and keeps a broken
// or hostile file from taking the machine.
const (
	MaxFileBytes = 16 << 20 // of the file as it lies on the disk
	MaxUnpacked  = 48 << 20 // of all parts of a spreadsheet, unpacked
	MaxSheets    = 64
	MaxRows      = 20000 // down to the last in which something stands
	MaxColumns   = 200
)

// Book is what a file of tables holds.
type Book struct {
	Sheets []Sheet
	// DecimalComma tells that the cells are parted by semicolons, as spreadsheet
	// programs do where numbers have a comma: 7,5 is seven and a half there.
	DecimalComma bool
	// From1904 tells that days are counted from 1904, not from 1900.
	From1904 bool
}

// Sheet is one table of cells; Name is empty in CSV.
type Sheet struct {
	Name string
	Rows []Row
}

// Row is a row in which something stands.
type Row struct {
	Number int // as a spreadsheet program counts, from 1
	Cells  []Cell
}

// Cell is a cell as text: what was typed in, or stored.
type Cell struct {
	Text string
	// Formula tells that the text is the stored result of a formula. CSV has
	// none: what begins like one there is its text.
	Formula bool
}

// Read reads a file of tables: XLSX, or CSV parted by commas, semicolons or
// tabs. The error says what the file is instead, or which bound it breaks.
func Read(data []byte) (*Book, error) {
	switch {
	case len(data) > MaxFileBytes:
		return nil, fmt.Errorf("it has %d bytes; at most %d are read", len(data), MaxFileBytes)
	case bytes.HasPrefix(data, []byte("PK\x03\x04")):
		return readXLSX(data)
	case bytes.HasPrefix(data, []byte("\xd0\xcf\x11\xe0")):
		return nil, errors.New("it is a spreadsheet of an old form, or locked by a password: save it as XLSX without one")
	}
	return readCSV(data)
}

func readCSV(data []byte) (*Book, error) {
	if bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")) {
		return nil, errors.New("it is saved as UTF-16: save it as CSV in UTF-8")
	}
	if !utf8.Valid(data) {
		return nil, errors.New("it is neither a spreadsheet (XLSX) nor CSV in UTF-8: save it as one of them")
	}
	if bytes.IndexByte(data, 0) >= 0 {
		return nil, errors.New("it holds a zero byte, so it is no table")
	}
	text := strings.TrimPrefix(string(data), byteOrderMark)
	first := 1
	comma := separator(text)
	if rest, line, found := separatorLine(text); found { // as some programs write in front
		comma, text, first = line, rest, 2
	}
	r := csv.NewReader(strings.NewReader(text))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes, r.ReuseRecord = comma, -1, true, true
	s := Sheet{}
	for {
		record, err := r.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, fmt.Errorf("it is no CSV: %w", err)
		}
		line, _ := r.FieldPos(0)
		row := Row{Number: line + first - 1}
		if err := bounded(len(s.Rows), len(record)); err != nil {
			return nil, fmt.Errorf("row %d: %w", row.Number, err)
		}
		some := false
		for _, field := range record {
			field = strings.TrimSpace(Rearm(strings.TrimSpace(field)))
			some = some || field != ""
			row.Cells = append(row.Cells, Cell{Text: field})
		}
		if some {
			s.Rows = append(s.Rows, row)
		}
	}
	return &Book{Sheets: []Sheet{s}, DecimalComma: comma == ';'}, nil
}

func bounded(rows, columns int) error {
	if rows >= MaxRows {
		return fmt.Errorf("the table has more than %d rows", MaxRows)
	}
	if columns > MaxColumns {
		return fmt.Errorf("it has %d columns; at most %d are read", columns, MaxColumns)
	}
	return nil
}

// separator finds what parts the cells: the one of which most stand in the first
// line, outside quotes.
func separator(text string) rune {
	line, _, _ := strings.Cut(strings.TrimLeft(text, "\r\n"), "\n")
	counts := map[rune]int{}
	quoted := false
	for _, r := range line {
		if r == '"' {
			quoted = !quoted
		}
		if !quoted {
			counts[r]++
		}
	}
	best := ','
	for _, r := range []rune{';', '\t'} {
		if counts[r] > counts[best] {
			best = r
		}
	}
	return best
}

// separatorLine reads a first line such as sep=; that says so.
func separatorLine(text string) (rest string, comma rune, found bool) {
	line, rest, _ := strings.Cut(text, "\n")
	line, found = strings.CutPrefix(strings.TrimSuffix(line, "\r"), "sep=")
	if !found || line != "," && line != ";" && line != "\t" {
		return "", 0, false
	}
	return rest, rune(line[0]), true
}

func readXLSX(data []byte) (book *Book, err error) {
	// The library reads what others wrote, and a broken file must not take the
	// program with it.
	defer func() {
		if r := recover(); r != nil {
			book, err = nil, errors.New("it is a spreadsheet that cannot be read: save it again")
		}
	}()
	f, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: MaxUnpacked, UnzipXMLSizeLimit: MaxUnpacked, RawCellValue: true})
	if err != nil {
		return nil, fmt.Errorf("it is a spreadsheet that cannot be read: %w", err)
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	names := f.GetSheetList()
	if len(names) > MaxSheets {
		return nil, fmt.Errorf("it has %d sheets; at most %d are read", len(names), MaxSheets)
	}
	formulas := formulasOf(f)
	book = &Book{}
	if properties, err := f.GetWorkbookProps(); err == nil && properties.Date1904 != nil {
		book.From1904 = *properties.Date1904
	}
	for _, name := range names {
		s, err := readSheet(f, name, formulas[name])
		if err != nil {
			return nil, fmt.Errorf("sheet %s: %w", name, err)
		}
		book.Sheets = append(book.Sheets, s)
	}
	return book, nil
}

func readSheet(f *excelize.File, name string, formulas map[string]bool) (s Sheet, err error) {
	s.Name = name
	rows, err := f.Rows(name)
	if err != nil {
		return s, err
	}
	defer func() { err = errors.Join(err, rows.Close()) }()
	for number := 1; rows.Next(); number++ {
		texts, err := rows.Columns()
		if err != nil {
			return s, err
		}
		row := Row{Number: number}
		some := false
		for c, text := range texts {
			text = strings.TrimSpace(text)
			switch {
			case c < MaxColumns:
			case text != "":
				return s, bounded(0, c+1)
			default:
				continue
			}
			some = some || text != ""
			row.Cells = append(row.Cells, Cell{Text: text})
		}
		if some && number > MaxRows { // rows with nothing in them may go on for ever
			return s, bounded(number, 0)
		}
		for c := range row.Cells {
			at, err := excelize.CoordinatesToCellName(c+1, number)
			row.Cells[c].Formula = err == nil && formulas[at]
			some = some || row.Cells[c].Formula
		}
		if some {
			s.Rows = append(s.Rows, row)
		}
	}
	return s, nil
}

// formulasOf finds the cells of each sheet that are formulas. The library only
// tells it cell by cell, each time from the front of the sheet.
func formulasOf(f *excelize.File) map[string]map[string]bool {
	part := func(name string) []byte {
		content, _ := f.Pkg.Load(name)
		text, _ := content.([]byte)
		return text
	}
	var links struct {
		Relationship []struct {
			ID     string `xml:"Id,attr"`
			Target string `xml:"Target,attr"`
		}
	}
	var workbook struct {
		Sheets []struct {
			Name string `xml:"name,attr"`
			ID   string `xml:"http://schemas.openxmlformats.org/officeDocument/2006/relationships id,attr"`
		} `xml:"sheets>sheet"`
	}
	if xml.Unmarshal(part("xl/_rels/workbook.xml.rels"), &links) != nil || xml.Unmarshal(part("xl/workbook.xml"), &workbook) != nil {
		return nil
	}
	all := map[string]map[string]bool{}
	for _, s := range workbook.Sheets {
		for _, l := range links.Relationship {
			if l.ID != s.ID {
				continue
			}
			file := strings.TrimPrefix(l.Target, "/")
			if file == l.Target {
				file = path.Join("xl", l.Target)
			}
			all[s.Name] = formulasIn(part(file))
		}
	}
	return all
}

func formulasIn(text []byte) map[string]bool {
	found := map[string]bool{}
	d := xml.NewDecoder(bytes.NewReader(text))
	cell := ""
	for {
		token, err := d.RawToken()
		if err != nil {
			return found
		}
		start, ok := token.(xml.StartElement)
		switch {
		case !ok:
		case start.Name.Local == "c":
			cell = ""
			for _, a := range start.Attr {
				if a.Name.Local == "r" {
					cell = a.Value
				}
			}
		case start.Name.Local == "f" && cell != "":
			found[cell] = true
		}
	}
}

// Date writes the day that a number of days in a cell means, as year-month-day;
// not ok where the number is none.
func (b *Book) Date(days string) (string, bool) {
	n, err := strconv.ParseFloat(days, 64)
	if err != nil || !(n >= 1 && n < 2958466) { // up to the year 9999
		return "", false
	}
	at, err := excelize.ExcelDateToTime(n, b.From1904)
	if err != nil {
		return "", false
	}
	return at.Format("2006-01-02"), true
}

// ColumnName is how a spreadsheet program calls a column, counted from 0: "F".
func ColumnName(column int) string {
	name, err := excelize.ColumnNumberToName(column + 1)
	if err != nil {
		return strconv.Itoa(column + 1)
	}
	return name
}
