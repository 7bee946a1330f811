package schedule

import (
	"math"
	"strconv"
)

// Table is one schedule: a pure function of a system. It is read-only.
type Table struct {
	Kind    Kind
	Title   string // "Loudspeaker schedule"
	Head    Head
	Columns []Column
	Rows    []Row
	// Notes are sentences below the table.
	Notes []string
}

// Head says what a table is about and what made it; fields that the design does
// not state are empty.
type Head struct {
	Job       string // name of the system
	Reference string
	Revision  string
	Design    string // the path it was read from, as given
	Tool      string // "loudlint 1.0"
}

// ColumnKind tells what stands in a column.
type ColumnKind int

// Kinds of column.
const (
	Text   ColumnKind = iota
	Number            // numbers, and texts such as "not stated" where one is not known
	Blank             // to be filled in by hand; a few cells may be filled in already
)

// AsIs prints as many digits of a number as it has.
const AsIs = -1

// Column is a column of a table.
type Column struct {
	Title string // "Delivered"
	Unit  string // "W"; "" for none. The cells are plain numbers.
	Kind  ColumnKind
	// Heading marks the leading columns in which neighbours are mostly equal:
	// where a page is narrow they stand above the rows that share them.
	Heading bool
	// Key marks the columns that name a row among those under one heading.
	Key bool
	// Decimals is how many a number shows, or AsIs.
	Decimals int
}

// Name is the title with the unit: "Delivered (W)".
func (c *Column) Name() string {
	if c.Unit == "" {
		return c.Title
	}
	return c.Title + " (" + c.Unit + ")"
}

// Row is a row of a table: a cell for each column.
type Row struct {
	Cells []Cell
	// Total tells that it sums up rows above it.
	Total bool
	// Block numbers what the row was written as: rows of one block of a design
	// share it. 0 is none.
	Block int
}

// Cell is a text, a number or empty.
type Cell struct {
	Text     string // "" where IsNumber
	Number   float64
	IsNumber bool
}

// Empty tells that nothing stands in the cell.
func (c Cell) Empty() bool { return !c.IsNumber && c.Text == "" }

// NotStated stands where a figure is not known because the design does not say
// enough.
const NotStated = "not stated"

func text(t string) Cell { return Cell{Text: t} }

func count(n int) Cell { return Cell{Number: float64(n), IsNumber: true} }

// number is a figure with so many decimals, or with AsIs at most six significant
// digits: what is printed is what is in the cell, on every machine.
func number(x float64, decimals int) Cell {
	printed := strconv.FormatFloat(x, 'f', decimals, 64)
	if decimals == AsIs {
		printed = strconv.FormatFloat(x, 'g', 6, 64)
	}
	rounded, err := strconv.ParseFloat(printed, 64)
	if err != nil || math.IsInf(rounded, 0) || math.IsNaN(rounded) {
		return text(NotStated)
	}
	return Cell{Number: rounded + 0, IsNumber: true} // + 0: never -0
}

// Show gives a cell of a column as people read it.
func (c *Column) Show(cell Cell) string {
	if !cell.IsNumber {
		return cell.Text
	}
	return strconv.FormatFloat(cell.Number, 'f', c.Decimals, 64)
}

// Used gives the columns in which something stands, or is to be filled in.
func (t *Table) Used() []int {
	var used []int
	for i := range t.Columns {
		if t.Columns[i].Kind == Blank || t.fills(i) {
			used = append(used, i)
		}
	}
	return used
}

func (t *Table) fills(column int) bool {
	for i := range t.Rows {
		if !t.Rows[i].Cells[column].Empty() {
			return true
		}
	}
	return false
}
