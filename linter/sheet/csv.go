package sheet

import (
	"bufio"
	"encoding/csv"
	"io"
	"strings"
	"unicode/utf8"

	"loudlint/linter/schedule"
	"loudlint/linter/textout"
)

// Byte order mark of UTF-8, by which spreadsheet programs know it.
const byteOrderMark = "\ufeff"

// WriteCSV writes one table as CSV: the head, then a record for each row, ended
// as RFC 4180 says. Where it holds more than ASCII a byte order mark stands in
// front. A text that a spreadsheet program could take for a formula has an
// apostrophe in front, see [Disarm]. Its errors are those of w.
func WriteCSV(w io.Writer, t *schedule.Table) error {
	b := bufio.NewWriter(w)
	if !plain(t) {
		if _, err := b.WriteString(byteOrderMark); err != nil {
			return err
		}
	}
	out := csv.NewWriter(b)
	out.UseCRLF = true
	record := make([]string, len(t.Columns))
	for i := range t.Columns {
		record[i] = Disarm(t.Columns[i].Name())
	}
	if err := out.Write(record); err != nil {
		return err
	}
	for r := range t.Rows {
		for c, cell := range t.Rows[r].Cells {
			record[c] = t.Columns[c].Show(cell)
			if !cell.IsNumber {
				record[c] = Disarm(textout.Printable(cell.Text))
			}
		}
		if err := out.Write(record); err != nil {
			return err
		}
	}
	out.Flush()
	if err := out.Error(); err != nil {
		return err
	}
	return b.Flush()
}

// plain tells that a table is all ASCII.
func plain(t *schedule.Table) bool {
	ascii := func(text string) bool {
		return strings.IndexFunc(text, func(r rune) bool { return r >= utf8.RuneSelf }) < 0
	}
	for i := range t.Columns {
		if !ascii(t.Columns[i].Name()) {
			return false
		}
	}
	for r := range t.Rows {
		for _, cell := range t.Rows[r].Cells {
			if !ascii(cell.Text) {
				return false
			}
		}
	}
	return true
}

// armed are the characters with which spreadsheet programs begin a formula, or
// that they skip to find one.
const armed = "=+-@\t\r"

// Disarm puts an apostrophe in front of a text that a spreadsheet program could
// take for a formula, and in front of one that would be mistaken for such a
// text. [Rearm] takes it off again.
func Disarm(text string) string {
	if text != "" && (strings.IndexByte(armed, text[0]) >= 0 || text != Rearm(text)) {
		return "'" + text
	}
	return text
}

// Rearm gives back what Disarm was given.
func Rearm(text string) string {
	rest, found := strings.CutPrefix(text, "'")
	if bare := strings.TrimLeft(rest, "'"); found && bare != "" && strings.IndexByte(armed, bare[0]) >= 0 {
		return rest
	}
	return text
}
