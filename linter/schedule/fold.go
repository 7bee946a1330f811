package schedule

// Quantity heads the column of a folded table that says how many rows each row
// stands for.
const Quantity = "Qty"

// Fold puts the rows that were written as one block of a design into one, for
// pages on which nobody wants to read eighteen equal rows: what is equal stands
// once, texts that differ stand as "first … last", numbers as "least … most",
// and a column says how many rows each stands for. The table itself is left as
// it is; one in which nothing is folded is given back.
func (t *Table) Fold() *Table {
	groups := t.groups()
	if len(groups) == len(t.Rows) {
		return t
	}
	folded := &Table{Kind: t.Kind, Title: t.Title, Head: t.Head, Notes: t.Notes}
	at := 0 // where the count stands: behind the headings
	for at < len(t.Columns) && t.Columns[at].Heading {
		at++
	}
	folded.Columns = append(folded.Columns, t.Columns[:at]...)
	folded.Columns = append(folded.Columns, Column{Title: Quantity, Kind: Number})
	folded.Columns = append(folded.Columns, t.Columns[at:]...)
	folded.Rows = make([]Row, 0, len(groups))
	for _, g := range groups {
		cells := make([]Cell, 0, len(folded.Columns))
		for c := range t.Columns {
			if c == at {
				cells = append(cells, count(len(g)))
			}
			cells = append(cells, t.together(g, c))
		}
		first := &t.Rows[g[0]]
		if first.Total {
			cells[at] = Cell{}
		}
		folded.Rows = append(folded.Rows, Row{Cells: cells, Total: first.Total, Block: first.Block})
	}
	return folded
}

// groups gives the numbers of the rows that fold into one, in the order of the
// first of each.
func (t *Table) groups() [][]int {
	groups := make([][]int, 0, len(t.Rows))
	at := map[int]int{}
	for i := range t.Rows {
		block := t.Rows[i].Block
		g, met := at[block]
		if block == 0 || !met {
			at[block] = len(groups)
			groups = append(groups, []int{i})
			continue
		}
		groups[g] = append(groups[g], i)
	}
	return groups
}

// together gives what one column says of several rows.
func (t *Table) together(rows []int, column int) Cell {
	first := t.Rows[rows[0]].Cells[column]
	last, equal, numbers := first, true, first.IsNumber
	least, most := first, first
	for _, r := range rows[1:] {
		c := t.Rows[r].Cells[column]
		equal = equal && c == first
		numbers = numbers && c.IsNumber
		last = c
		if c.Number < least.Number {
			least = c
		}
		if c.Number > most.Number {
			most = c
		}
	}
	switch col := &t.Columns[column]; {
	case equal:
		return first
	case numbers:
		return text(col.Show(least) + " … " + col.Show(most))
	default:
		return text(col.Show(first) + " … " + col.Show(last))
	}
}
