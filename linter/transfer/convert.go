package transfer

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"loudlint/linter/sheet"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Options of a transfer.
type Options struct {
	// Design is the design the text will stand in; nil where it stands alone.
	// What the design has is not written again, and what it has not is told.
	Design *schema.Design
}

// Result is what a file of tables came to.
type Result struct {
	// Text is text of the dialect.
	Text string
	// Notices say what was not understood. Each is in the text as a comment too.
	Notices []Notice
	// Lines, Devices and Readings count what was made.
	Lines, Devices, Readings int
}

// Notice is something that was not understood, and where it stands.
type Notice struct {
	Sheet  string // "" in CSV
	Row    int    // 0 for the sheet as a whole
	Column string // "F, Tap (W)"; "" for the row as a whole
	// Found says what stands there, Expected what is understood; sentences.
	Found, Expected string
}

// String writes a notice on one line: `sheet "Hall", row 7, column F, Tap (W): …`.
func (n *Notice) String() string {
	var at []string
	if n.Sheet != "" {
		at = append(at, fmt.Sprintf("sheet %q", n.Sheet))
	}
	if n.Row > 0 {
		at = append(at, fmt.Sprintf("row %d", n.Row))
	}
	if n.Column != "" {
		at = append(at, "column "+n.Column)
	}
	text := strings.TrimSpace(n.Found + " " + n.Expected)
	if len(at) == 0 {
		return text
	}
	return strings.Join(at, ", ") + ": " + text
}

// Convert turns the tables of a file into text. The error says that no sheet
// holds a table it knows, or that a head is nearly one it knows: a column that is
// passed over would change the design.
func Convert(book *sheet.Book, o Options) (*Result, error) {
	c := &converter{book: book, options: o, result: &Result{}, spaces: set{}, amplifiers: set{}, models: set{}, controls: set{}, lines: map[string]*table{}}
	found := 0
	var heads []string
	for i := range book.Sheets {
		s := &book.Sheets[i]
		h, ok := find(s)
		if !ok {
			heads = append(heads, firstTexts(s)...)
			continue
		}
		if err := misspelt(h); err != nil {
			return nil, err
		}
		found++
		if h.test {
			c.readings(h)
		} else {
			c.loudspeakers(h)
		}
	}
	if found == 0 {
		return nil, noTable(heads)
	}
	c.finish()
	return c.result, nil
}

// converter gathers what the tables of a file come to.
type converter struct {
	book    *sheet.Book
	options Options
	result  *Result

	order    []*table // lines in the order in which they are met
	lines    map[string]*table
	readouts []*block
	measured []string // names of the lines that were measured

	// What the lines refer to, in the order in which it is met.
	spaces, amplifiers, models, controls set

	builtIn map[string]bool // names of the built-in catalogue, once they were asked for
}

// set keeps names in the order in which they come.
type set map[string]int

func (s set) add(name string) {
	if _, ok := s[name]; name != "" && !ok {
		s[name] = len(s)
	}
}

func (s set) sorted() []string {
	all := make([]string, len(s))
	for name, i := range s {
		all[i] = name
	}
	return all
}

func (c *converter) notice(n Notice) { c.result.Notices = append(c.result.Notices, n) }

func firstTexts(s *sheet.Sheet) []string {
	if len(s.Rows) == 0 {
		return nil
	}
	var all []string
	for _, cell := range s.Rows[0].Cells {
		if cell.Text != "" {
			all = append(all, cell.Text)
		}
	}
	return all
}

func noTable(heads []string) error {
	const most = 8
	has := "it is empty"
	if len(heads) > 0 {
		if len(heads) > most {
			heads = append(heads[:most:most], "…")
		}
		has = fmt.Sprintf("its heads are %q", heads)
	}
	return fmt.Errorf("no table is found: %s; a table of loudspeakers has Line or Designation, and Tap (W), Model or Leg (m) among its heads, a test sheet Line and Impedance read (ohm) or Insulation (Mohm)", has)
}

// misspelt refuses heads that are nearly known.
func misspelt(h *headed) error {
	var all []error
	for _, col := range h.columns {
		if col.key == unknown && col.near != "" {
			where := ""
			if h.sheet.Name != "" {
				where = fmt.Sprintf("sheet %q, ", h.sheet.Name)
			}
			all = append(all, fmt.Errorf("%srow %d, column %s: the head %q is not known; did you mean %q?", where, h.sheet.Rows[h.first-1].Number, sheet.ColumnName(col.index), col.head, col.near))
		}
	}
	return errors.Join(all...)
}

// row is one row of a table, by the meaning of its columns.
type row struct {
	c      *converter
	of     *headed
	number int
	cells  []sheet.Cell
	notes  []string // comments for the block it becomes
}

// rows gives the rows below the head up to the notes of a schedule.
func (c *converter) rows(h *headed) []*row {
	var all []*row
	for i := h.first; i < len(h.sheet.Rows); i++ {
		cells := h.sheet.Rows[i].Cells
		filled := 0
		for _, cell := range cells {
			if cell.Text != "" || cell.Formula {
				filled++
			}
		}
		if filled == 1 && len(cells) > 0 && cells[0].Text == sheet.NotesMark {
			break
		}
		all = append(all, &row{c: c, of: h, number: h.sheet.Rows[i].Number, cells: cells})
	}
	return all
}

// at gives the text of a column of the row; "" where there is none.
func (r *row) at(k key) (string, *column) {
	for i := range r.of.columns {
		col := &r.of.columns[i]
		if col.key == k && col.index < len(r.cells) {
			return r.text(col), col
		}
	}
	return "", nil
}

func (r *row) text(col *column) string {
	if col.index >= len(r.cells) {
		return ""
	}
	return oneLine(r.cells[col.index].Text)
}

// refuse notes what is not understood, and keeps it.
func (r *row) refuse(col *column, found, expected string) {
	n := Notice{Sheet: r.of.sheet.Name, Row: r.number, Found: found, Expected: expected}
	if col != nil {
		n.Column = sheet.ColumnName(col.index) + ", " + col.head
	}
	r.c.notice(n)
	r.notes = append(r.notes, n.String())
}

// formulas says which cells of the row are results of formulas.
func (r *row) formulas() {
	for i := range r.of.columns {
		col := &r.of.columns[i]
		if col.key == keyWorkedOut || col.index >= len(r.cells) || !r.cells[col.index].Formula {
			continue
		}
		if text := r.text(col); text == "" {
			r.refuse(col, "This is a formula of which no result is stored.", "Type in the figure, or open and save the file.")
		} else {
			r.refuse(col, fmt.Sprintf("This is a formula; its stored result %q is taken.", text), "The design does not follow it any more.")
		}
	}
}

// rest keeps what stands in columns that are not known.
func (r *row) rest() {
	for i := range r.of.columns {
		col := &r.of.columns[i]
		if text := r.text(col); col.key == unknown && text != "" {
			r.notes = append(r.notes, oneLine(col.head)+": "+text)
		}
	}
	for i := range r.cells { // and below no head at all
		headless := !slices.ContainsFunc(r.of.columns, func(c column) bool { return c.index == i })
		if text := oneLine(r.cells[i].Text); headless && text != "" {
			r.notes = append(r.notes, fmt.Sprintf("row %d, column %s: %s", r.number, sheet.ColumnName(i), text))
		}
	}
}

// name makes a name of a text: one line, not too long.
func (r *row) name(text string, col *column) string {
	text = oneLine(text)
	if len(text) > schema.MaxNameBytes {
		r.refuse(col, fmt.Sprintf("This name is %d bytes long.", len(text)), fmt.Sprintf("A name has at most %d.", schema.MaxNameBytes))
		text = strings.ToValidUTF8(text[:schema.MaxNameBytes-8], "")
	}
	return text
}

// finish puts the text together, and reads it once as a design to say what is
// wrong with it.
func (c *converter) finish() {
	var body strings.Builder
	for _, t := range c.order {
		t.block(c).write(&body, 0)
		body.WriteByte('\n')
	}
	for _, b := range c.readouts {
		if b.write(&body, 0); b.kind != commentsOnly {
			c.result.Readings++
		}
		body.WriteByte('\n')
	}
	text := c.beside(body.String())
	c.result.Text = strings.TrimSuffix(text, "\n")
	c.result.Lines = len(c.order)
	if c.options.Design == nil {
		c.verify()
	}
}

// verify reads the text and tells what keeps it from being a design. Lines that
// readings are of and the tables do not have are left out of account: they are
// in the design.
func (c *converter) verify() {
	var text strings.Builder
	text.WriteString(c.result.Text)
	for i, name := range c.measured {
		if c.lines[name] == nil && !slices.Contains(c.measured[:i], name) {
			text.WriteString("\nline " + quote(name) + " {}\n")
		}
	}
	file := source.NewFile("import"+schema.Ending, []byte(text.String()))
	_, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{})
	for _, p := range problems {
		c.notice(Notice{Found: fmt.Sprintf("Line %d of the text: %s", p.Span.From().Line, p.Found), Expected: p.Expected})
	}
}

// beside adds what the text refers to and is not there yet.
func (c *converter) beside(body string) string {
	var w strings.Builder
	w.WriteString("# Made from a table; from now on this text is what counts.\n\n")
	d := c.options.Design
	stub := func(kind string, names []string, known func(string) bool) {
		for _, n := range names {
			if d == nil || !known(n) {
				fmt.Fprintf(&w, "%s %s {} # not in the table\n", kind, quote(n))
			}
		}
	}
	before := w.Len()
	stub(schema.KindAmplifier, c.amplifiers.sorted(), func(n string) bool { return d.Unit(n) != nil })
	stub("loudspeaker_model", c.models.sorted(), func(n string) bool {
		return slices.ContainsFunc(d.Catalogue.Loudspeakers, func(m *schema.LoudspeakerModel) bool { return m.Name == n })
	})
	stub("attenuator_model", c.controls.sorted(), func(n string) bool {
		return slices.ContainsFunc(d.Catalogue.Attenuators, func(m *schema.AttenuatorModel) bool { return m.Name == n })
	})
	stub("space", c.spaces.sorted(), func(n string) bool { return d.Space(n) != nil })
	if w.Len() > before {
		w.WriteByte('\n')
	}
	w.WriteString(body)
	return w.String()
}
