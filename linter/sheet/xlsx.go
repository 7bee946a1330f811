package sheet

import (
	"fmt"
	"io"
	"math"
	"regexp"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"

	"loudlint/linter/schedule"
	"loudlint/linter/textout"
)

// NotesMark stands in the first column above the notes of a sheet: what is below
// belongs to no row.
const NotesMark = "Notes"

// Sizes of paper as spreadsheets number them.
const (
	letter = 1
	a4     = 9
)

// What a sheet looks like. Widths are in characters, heights in points.
const (
	narrowest, widest = 6.0, 38.0
	widestByHand      = 24.0 // on sheets with cells to fill in, which need the room
	leastByHand       = 10.0 // of a column to fill in
	rowHeight         = 15.0
	lineHeight        = 13.0
	toWriteIn         = 27.0 // rows with cells to fill in by hand
)

// WriteXLSX writes tables as a workbook, each on a sheet of its own: the head in
// the first row, frozen and repeated on every printed page, then the rows, then
// the notes. Texts are stored as texts and numbers as numbers; no cell is a
// formula. The same tables give the same bytes. Its errors are those of w, and
// of a text that does not fit a spreadsheet.
func WriteXLSX(w io.Writer, tables []*schedule.Table) error {
	f := excelize.NewFile()
	b := &book{f: f, styles: map[look]int{}}
	for i, t := range tables {
		if err := b.add(i, t); err != nil {
			return fmt.Errorf("write the sheet %s: %w", sheetName(t), err)
		}
	}
	if len(tables) > 0 {
		head := tables[0].Head
		if err := f.SetDocProps(&excelize.DocProperties{
			Title: stored(tables[0].Title), Subject: stored(head.Job), Creator: head.Tool, LastModifiedBy: head.Tool,
			Created: fixedTime, Modified: fixedTime,
		}); err != nil {
			return fmt.Errorf("write the properties of the workbook: %w", err)
		}
	}
	if err := f.Write(w); err != nil {
		return err
	}
	return f.Close()
}

// fixedTime is when every workbook says it was made: a clock would make no two
// files the same.
const fixedTime = "2000-01-01T00:00:00Z"

// book is a workbook being made.
type book struct {
	f      *excelize.File
	styles map[look]int
}

// look is how a cell looks.
type look struct {
	head, total, boxed, right, note bool
	number                          bool
	decimals                        int
}

func sheetName(t *schedule.Table) string {
	name := strings.ReplaceAll(string(t.Kind), "-", " ")
	return strings.ToUpper(name[:1]) + name[1:]
}

// add makes the sheet of one table.
func (b *book) add(index int, t *schedule.Table) error {
	name := sheetName(t)
	if index == 0 {
		if err := b.f.SetSheetName("Sheet1", name); err != nil {
			return err
		}
	} else if _, err := b.f.NewSheet(name); err != nil {
		return err
	}
	widths := b.widths(t)
	if err := b.columns(name, widths); err != nil {
		return err
	}
	if err := b.head(name, t, widths); err != nil {
		return err
	}
	if err := b.rows(name, t, widths); err != nil {
		return err
	}
	if err := b.notes(name, t); err != nil {
		return err
	}
	return b.page(name, t)
}

// widths gives each column as much as its longest cell takes, within bounds, and
// never less than the longest word of its head.
func (*book) widths(t *schedule.Table) []float64 {
	widths := make([]float64, len(t.Columns))
	most := widest
	if byHand(t) {
		most = widestByHand
	}
	for c := range t.Columns {
		col := &t.Columns[c]
		wide := narrowest
		if col.Kind == schedule.Blank {
			wide = leastByHand
		}
		for word := range strings.FieldsSeq(col.Name()) {
			wide = math.Max(wide, float64(utf8.RuneCountInString(word))+1.5) // bold
		}
		for r := range t.Rows {
			wide = math.Max(wide, math.Min(most, float64(utf8.RuneCountInString(col.Show(t.Rows[r].Cells[c])))+2))
		}
		if col.Kind == schedule.Number {
			wide += 1.5 // they stand a little off the right edge
		}
		widths[c] = wide
	}
	return widths
}

func (b *book) columns(name string, widths []float64) error {
	for c, width := range widths {
		column, err := excelize.ColumnNumberToName(c + 1)
		if err != nil {
			return err
		}
		if err := b.f.SetColWidth(name, column, column, width); err != nil {
			return err
		}
	}
	return nil
}

// byHand tells that a table has cells to fill in.
func byHand(t *schedule.Table) bool {
	return slices.ContainsFunc(t.Columns, func(c schedule.Column) bool { return c.Kind == schedule.Blank })
}

// head writes the first row, as high as its longest head is when wrapped.
func (b *book) head(name string, t *schedule.Table, widths []float64) error {
	lines := 1
	for c := range t.Columns {
		text := t.Columns[c].Name()
		if err := b.text(name, 1, c, text, look{head: true, right: t.Columns[c].Kind == schedule.Number}); err != nil {
			return err
		}
		lines = max(lines, linesIn(text, widths[c]))
	}
	return b.f.SetRowHeight(name, 1, lineHeight*float64(lines)+5)
}

// linesIn reckons how many lines a text takes in a column.
func linesIn(text string, width float64) int {
	used, lines := 0.0, 1
	for word := range strings.FieldsSeq(text) {
		wide := float64(utf8.RuneCountInString(word)) + 1
		if used > 0 && used+wide > width {
			used, lines = 0, lines+1
		}
		used += wide
	}
	return lines
}

func (b *book) rows(name string, t *schedule.Table, widths []float64) error {
	byHand := byHand(t)
	for r := range t.Rows {
		row := &t.Rows[r]
		lines := 1
		for c, cell := range row.Cells {
			col := &t.Columns[c]
			style := look{total: row.Total, boxed: byHand, right: col.Kind == schedule.Number}
			lines = max(lines, linesIn(cell.Text, widths[c]))
			if !cell.IsNumber {
				if err := b.text(name, r+2, c, cell.Text, style); err != nil {
					return err
				}
				continue
			}
			style.number, style.right, style.decimals = true, true, col.Decimals
			at, err := excelize.CoordinatesToCellName(c+1, r+2)
			if err != nil {
				return err
			}
			if err := b.f.SetCellValue(name, at, cell.Number); err != nil {
				return err
			}
			if err := b.style(name, at, style); err != nil {
				return err
			}
		}
		if byHand {
			if err := b.f.SetRowHeight(name, r+2, math.Max(toWriteIn, lineHeight*float64(lines)+3)); err != nil {
				return err
			}
		}
	}
	return nil
}

// text writes one text; nothing where there is none and nothing to see.
func (b *book) text(name string, row, column int, text string, style look) error {
	if text == "" && !style.boxed && !style.total {
		return nil
	}
	at, err := excelize.CoordinatesToCellName(column+1, row)
	if err != nil {
		return err
	}
	if text != "" {
		if utf8.RuneCountInString(text) > excelize.TotalCellChars {
			return fmt.Errorf("cell %s: a text of more than %d characters fits no spreadsheet", at, excelize.TotalCellChars)
		}
		if err := b.f.SetCellStr(name, at, literal().ReplaceAllString(stored(text), "_x005F$0")); err != nil {
			return err
		}
	}
	return b.style(name, at, style)
}

// literal is what spreadsheet programs read as the code of a character, and a
// text may hold as it is: _x000D_ (ISO/IEC 29500-1, ST_Xstring, from memory).
var literal = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`_x[0-9A-Fa-f]{4}_`) })

// stored makes a text safe to show.
func stored(text string) string { return textout.Printable(text) }

// style gives a cell its look.
func (b *book) style(name, at string, l look) error {
	id, ok := b.styles[l]
	if !ok {
		var err error
		if id, err = b.f.NewStyle(l.style()); err != nil {
			return err
		}
		b.styles[l] = id
	}
	return b.f.SetCellStyle(name, at, at, id)
}

func (l look) style() *excelize.Style {
	const grey, rule, middle = "E7E9EC", "7F868E", "center" //nolint:misspell // a word of the format
	s := &excelize.Style{Alignment: &excelize.Alignment{Vertical: middle, WrapText: !l.note && !l.number}}
	s.Font = &excelize.Font{Family: "Calibri", Size: 10, Bold: l.head || l.total}
	side := func(kind string, style int) excelize.Border {
		return excelize.Border{Type: kind, Color: rule, Style: style}
	}
	const thin, hair = 1, 7
	switch {
	case l.head:
		s.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{grey}}
		s.Border = []excelize.Border{side("bottom", thin)}
		s.Alignment.Vertical = "bottom"
	case l.boxed:
		s.Border = []excelize.Border{side("left", hair), side("right", hair), side("top", hair), side("bottom", hair)}
	case l.total && !l.note:
		s.Border = []excelize.Border{side("top", hair), side("bottom", thin)}
	}
	if l.number {
		format := "General"
		if l.decimals >= 0 {
			format = "0"
			if l.decimals > 0 {
				format += "." + strings.Repeat("0", l.decimals)
			}
		}
		s.CustomNumFmt = &format
	}
	if l.right {
		s.Alignment.Horizontal, s.Alignment.Indent = "right", 1 // so that the next text does not touch it
	}
	return s
}

// notes writes what is to be said below the table, and whose table it is.
func (b *book) notes(name string, t *schedule.Table) error {
	row := len(t.Rows) + 3
	lines := append([]string{NotesMark}, t.Notes...)
	if about := about(t.Head); about != "" {
		lines = append(lines, about)
	}
	for i, line := range lines {
		if err := b.text(name, row+i, 0, line, look{note: true, total: i == 0}); err != nil {
			return err
		}
	}
	return nil
}

func about(h schedule.Head) string {
	var all []string
	for _, part := range [...][2]string{{"", h.Job}, {"reference ", h.Reference}, {"revision ", h.Revision}, {"made from ", h.Design}, {"by ", h.Tool}} {
		if part[1] != "" {
			all = append(all, part[0]+part[1])
		}
	}
	return strings.Join(all, ", ")
}

// page sets up screen and print.
func (b *book) page(name string, t *schedule.Table) error {
	if err := b.f.SetPanes(name, &excelize.Panes{
		Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft",
		Selection: []excelize.Selection{{SQRef: "A2", ActiveCell: "A2", Pane: "bottomLeft"}},
	}); err != nil {
		return err
	}
	paper, landscape := a4, "landscape"
	if slices.ContainsFunc(t.Columns, func(c schedule.Column) bool { return c.Unit == "ft" }) {
		paper = letter
	}
	one, asMany := 1, 0
	if err := b.f.SetPageLayout(name, &excelize.PageLayoutOptions{Size: &paper, Orientation: &landscape, FitToWidth: &one, FitToHeight: &asMany}); err != nil {
		return err
	}
	fit := true
	if err := b.f.SetSheetProps(name, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	side, top, edge := 0.4, 0.75, 0.3 // inches
	if err := b.f.SetPageMargins(name, &excelize.PageLayoutMarginsOptions{Left: &side, Right: &side, Top: &top, Bottom: &top, Header: &edge, Footer: &edge}); err != nil {
		return err
	}
	marks := strings.Join(present("reference ", t.Head.Reference, "revision ", t.Head.Revision), ", ")
	if err := b.f.SetHeaderFooter(name, &excelize.HeaderFooterOptions{
		OddHeader: "&L" + printed(t.Head.Job) + "&C&B" + printed(t.Title) + "&B&R" + printed(marks),
		OddFooter: "&L" + printed(t.Head.Design) + "&C" + printed(t.Head.Tool) + "&RPage &P of &N",
	}); err != nil {
		return err
	}
	return b.f.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: fmt.Sprintf("'%s'!$1:$1", name), Scope: name})
}

// present joins names with values that are there.
func present(pairs ...string) []string {
	var all []string
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i+1] != "" {
			all = append(all, pairs[i]+pairs[i+1])
		}
	}
	return all
}

// printed makes a text safe for the head or foot of a page, where & begins a
// code, and bounds it: all of one together may have 255 characters.
func printed(text string) string {
	const most = 60
	text = stored(text)
	if runes := []rune(text); len(runes) > most {
		text = string(runes[:most-1]) + "…"
	}
	text = strings.ReplaceAll(text, "&", "&&")
	if text != "" && text[0] >= '0' && text[0] <= '9' {
		text = " " + text // a digit behind a code would be a size
	}
	return text
}
