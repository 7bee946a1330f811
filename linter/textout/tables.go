package textout

import (
	"bufio"
	"io"
	"slices"
	"strings"

	"loudlint/linter/schedule"
)

// WriteTables writes schedules as pages for people, rows that were written as
// one block folded into one. Where a table is wider than the page, its cells
// are wrapped; where even that does not do, each row becomes a paragraph. Its
// errors are those of w.
func WriteTables(w io.Writer, tables []*schedule.Table, o Options) error {
	b := bufio.NewWriter(w)
	p := newPage(b, o)
	for i, t := range tables {
		if i > 0 {
			p.line()
		}
		p.table(t.Fold())
	}
	return b.Flush()
}

func (p *page) table(t *schedule.Table) {
	p.heading(t.Title, Head, t.Head.Design)
	if about := aboutTable(t); about != "" {
		p.say(about)
		p.sentence()
	}
	p.paint(Label, strings.Repeat("_", p.width))
	p.line()
	p.line()
	p.rows(t)
}

// rows writes a table without what stands above it.
func (p *page) rows(t *schedule.Table) {
	g := gridOf(t)
	wide := g.fit(p.width - labelInset)
	if wide && len(t.Rows) > 0 && !g.grouped() {
		p.gridHead(g)
	}
	for i := range t.Rows {
		if g.begins(i) {
			if i > 0 && wide {
				p.line()
			}
			p.groupHeading(g, i)
			if wide {
				p.gridHead(g)
			}
		}
		if wide {
			p.gridRow(g, &t.Rows[i])
		} else {
			p.paragraph(g, &t.Rows[i])
		}
	}
	switch {
	case len(t.Rows) == 0:
		p.say("There is nothing to list.")
		p.sentence()
		p.line()
	case wide:
		p.line()
	}
	for _, note := range t.Notes {
		p.say(note)
		p.row("note")
	}
}

// aboutTable says whose table it is: "Ferry terminal, reference GM-12, revision A".
func aboutTable(t *schedule.Table) string {
	var about []string
	for _, part := range [...][2]string{{"", t.Head.Job}, {"reference ", t.Head.Reference}, {"revision ", t.Head.Revision}} {
		if part[1] != "" {
			about = append(about, part[0]+part[1])
		}
	}
	return strings.Join(about, ", ")
}

// grid is a table on a page: which columns stand over which rows.
type grid struct {
	t        *schedule.Table
	headings []int // columns that stand above the rows that share them
	columns  []int // the others in which something stands
	widths   []int // of these, once fitted
}

func gridOf(t *schedule.Table) *grid {
	g := &grid{t: t}
	for _, c := range t.Used() {
		if t.Columns[c].Heading {
			g.headings = append(g.headings, c)
		} else {
			g.columns = append(g.columns, c)
		}
	}
	return g
}

func (g *grid) grouped() bool { return len(g.headings) > 0 }

// begins tells that other headings stand above a row than above the one before.
func (g *grid) begins(row int) bool {
	if !g.grouped() || row == 0 {
		return g.grouped()
	}
	return slices.ContainsFunc(g.headings, func(c int) bool { return g.t.Rows[row].Cells[c] != g.t.Rows[row-1].Cells[c] })
}

// shown gives what stands in a column of a row.
func (g *grid) shown(r *schedule.Row, column int) string {
	return Printable(g.t.Columns[column].Show(r.Cells[column]))
}

// columnGap is between columns.
const columnGap = 2

// fit finds widths for the columns so that they fit on the page; not where even
// the longest words do not.
func (g *grid) fit(width int) bool {
	const longestWord = 24 // longer ones are cut
	g.widths = make([]int, len(g.columns))
	least := make([]int, len(g.columns))
	all := columnGap * (len(g.columns) - 1)
	measure := func(i int, text string) {
		g.widths[i] = max(g.widths[i], visibleWidth(text))
		for word := range strings.FieldsSeq(text) {
			least[i] = max(least[i], min(visibleWidth(word), longestWord))
		}
	}
	for i, c := range g.columns {
		if g.t.Columns[c].Kind == schedule.Blank {
			return false // there is no room on a page to write into
		}
		for word := range strings.FieldsSeq(g.t.Columns[c].Name()) {
			measure(i, word) // a head is wrapped where it can
		}
		for r := range g.t.Rows {
			measure(i, g.shown(&g.t.Rows[r], c))
		}
		all += g.widths[i]
	}
	for all > width {
		widest := -1
		for i := range g.widths {
			if g.widths[i] > least[i] && (widest < 0 || g.widths[i] > g.widths[widest]) {
				widest = i
			}
		}
		if widest < 0 {
			return false
		}
		g.widths[widest]--
		all--
	}
	return true
}

func (p *page) groupHeading(g *grid, row int) {
	names := make([]string, 0, len(g.headings))
	for _, c := range g.headings {
		if name := g.shown(&g.t.Rows[row], c); name != "" {
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		names = append(names, schedule.NotStated)
	}
	p.heading(names[0], Head, strings.Join(names[1:], ", "))
	p.line()
}

// gridHead writes the names of the columns, and a rule below.
func (p *page) gridHead(g *grid) {
	cells := make([]string, len(g.columns))
	for i, c := range g.columns {
		cells[i] = g.t.Columns[c].Name()
	}
	p.gridCells(g, cells, Label)
	for i := range cells {
		cells[i] = strings.Repeat("-", g.widths[i])
	}
	p.gridCells(g, cells, Label)
}

func (p *page) gridRow(g *grid, r *schedule.Row) {
	cells := make([]string, len(g.columns))
	for i, c := range g.columns {
		cells[i] = g.shown(r, c)
	}
	style := Plain
	if r.Total {
		style = Head
	}
	p.gridCells(g, cells, style)
}

// gridCells writes one row, over as many lines as its longest cell takes.
func (p *page) gridCells(g *grid, cells []string, style Style) {
	pieces := make([][]string, len(cells))
	lines := 1
	for i, cell := range cells {
		pieces[i] = wrapped(cell, g.widths[i])
		lines = max(lines, len(pieces[i]))
	}
	for line := range lines {
		space := labelInset
		for i, piece := range pieces {
			text := ""
			if line < len(piece) {
				text = piece[line]
			}
			before, after := 0, g.widths[i]-visibleWidth(text)
			if g.t.Columns[g.columns[i]].Kind == schedule.Number {
				before, after = after, 0
			}
			if space += before; text != "" {
				p.pad(space)
				p.paint(style, text)
				space = 0
			}
			space += after + columnGap
		}
		p.line()
	}
}

// wrapped breaks a printable text into lines of at most so many columns, between
// words where it can.
func wrapped(text string, columns int) []string {
	var lines []string
	line := ""
	for word := range strings.FieldsSeq(text) {
		for visibleWidth(word) > columns { // cut what fits no line
			if line != "" {
				lines, line = append(lines, line), ""
			}
			at, used := 0, 0
			for at < len(word) {
				size, wide := cluster(word[at:])
				if used+wide > columns && at > 0 {
					break
				}
				at, used = at+size, used+wide
			}
			lines, word = append(lines, word[:at]), word[at:]
		}
		switch {
		case line == "":
			line = word
		case visibleWidth(line)+1+visibleWidth(word) <= columns:
			line += " " + word
		default:
			lines, line = append(lines, line), word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// paragraph writes a row whose columns do not fit beside each other: what names
// it, then each column with its title.
func (p *page) paragraph(g *grid, r *schedule.Row) {
	var names []string
	var rest []int
	number := ""
	for _, c := range g.columns {
		col := &g.t.Columns[c]
		switch shown := g.shown(r, c); {
		case col.Title == schedule.Quantity:
			number = shown + " × "
		case col.Key && shown != "":
			names = append(names, shown)
		case shown != "" || col.Kind == schedule.Blank && !r.Total:
			rest = append(rest, c)
		}
	}
	if len(names) > 0 {
		p.pad(labelInset)
		p.styled(Head, number+strings.Join(names, ", "))
		p.fill(labelInset, labelInset, 2*labelInset)
	}
	for n, c := range rest {
		col := &g.t.Columns[c]
		shown, unit := g.shown(r, c), col.Unit
		if shown == "" {
			shown = "________"
		} else if !r.Cells[c].IsNumber && !strings.ContainsAny(shown, "0123456789") {
			unit = "" // not a figure
		}
		p.styled(Label, inSentence(col.Title))
		p.say(strings.TrimSpace(shown + " " + unit))
		if n+1 < len(rest) {
			p.join(";")
		}
	}
	p.fill(0, 2*labelInset, 2*labelInset)
	p.line()
}

// inSentence writes a title inside a sentence: "Leg" as "leg", but "DC" as it is.
func inSentence(title string) string {
	if len(title) > 1 && title[1] >= 'a' && title[1] <= 'z' {
		return strings.ToLower(title[:1]) + title[1:]
	}
	return title
}
