package review

import "loudlint/linter/schedule"

// Matrix gives rows as a table: what each expects, and how many parts do not meet
// it, cannot be judged, depart from it by agreement and meet it.
func Matrix(rows []*Row) *schedule.Table {
	t := &schedule.Table{Columns: []schedule.Column{
		{Title: "Criterion", Key: true},
		{Title: "Expected"},
		{Title: "Not met", Kind: schedule.Number},
		{Title: "Open", Kind: schedule.Number},
		{Title: "Agreed", Kind: schedule.Number},
		{Title: "Met", Kind: schedule.Number},
	}}
	for _, row := range rows {
		expects := row.Expects
		if row.asked() == 0 {
			expects += " (there is no such part)"
		}
		cells := []schedule.Cell{{Text: row.Name}, {Text: expects}}
		for _, groups := range [][]Group{row.NotMet, row.Open, row.Agreed, row.Met} {
			cell := schedule.Cell{Text: "-"}
			if n := Count(groups); n > 0 {
				cell = schedule.Cell{Number: float64(n), IsNumber: true}
			}
			cells = append(cells, cell)
		}
		t.Rows = append(t.Rows, schedule.Row{Cells: cells})
	}
	return t
}

// Throughout gives the rows that every part meets, and the others.
func Throughout(rows []*Row) (met, others []*Row) {
	for _, row := range rows {
		if len(row.NotMet)+len(row.Open)+len(row.Agreed) == 0 {
			met = append(met, row)
		} else {
			others = append(others, row)
		}
	}
	return met, others
}
