package report

import (
	"cmp"
	"slices"

	"loudlint/linter/check"
)

// matrixBuild collects the answers about parts of one kind.
type matrixBuild struct {
	name   string
	checks []string
	rows   []string
	column map[string]int
	row    map[string]int
	marks  map[[2]int]int // by row and column: a place in grades
}

// grades are the answers, gravest first.
var grades = []mark{
	{"E", "error"}, {"W", "warning"}, {"N", "note"}, {"O", "open"}, {"A", "accepted"}, {"P", "pass"},
}

func gradeOf(o *check.Outcome) int {
	switch {
	case o.Verdict == check.Open:
		return 3
	case o.Verdict == check.Pass:
		return 5
	case o.Accepted != nil:
		return 4
	case o.Severity == check.Error:
		return 0
	case o.Severity == check.Warning:
		return 1
	}
	return 2
}

// put notes an answer where no graver one stands.
func (b *matrixBuild) put(part string, o *check.Outcome) {
	if b.row == nil {
		b.row, b.column, b.marks = map[string]int{}, map[string]int{}, map[[2]int]int{}
	}
	r, met := b.row[part]
	if !met {
		r = len(b.rows)
		b.row[part] = r
		b.rows = append(b.rows, part)
	}
	c, met := b.column[o.Check.ID]
	if !met {
		c = len(b.checks)
		b.column[o.Check.ID] = c
		b.checks = append(b.checks, o.Check.ID)
	}
	grade := gradeOf(o)
	if old, met := b.marks[[2]int{r, c}]; !met || grade < old {
		b.marks[[2]int{r, c}] = grade
	}
}

// matrix gives the rows in the order of the design; rank tells the place of a
// part in it.
func (b *matrixBuild) matrix(rank map[string]int) matrix {
	m := matrix{Name: b.name, Checks: b.checks}
	slices.SortStableFunc(b.rows, func(x, y string) int { return cmp.Compare(rank[x], rank[y]) })
	for _, name := range b.rows {
		r := b.row[name]
		row := matrixRow{Name: name, Cells: make([]mark, len(b.checks))}
		for c := range b.checks {
			if grade, met := b.marks[[2]int{r, c}]; met {
				row.Cells[c] = grades[grade]
			}
		}
		m.Rows = append(m.Rows, row)
	}
	return m
}

// rankOf gives the place of each name in a list of parts.
func rankOf[P any](parts []P, name func(P) string) map[string]int {
	rank := make(map[string]int, len(parts))
	for i, p := range parts {
		rank[clean(name(p))] = i
	}
	return rank
}
