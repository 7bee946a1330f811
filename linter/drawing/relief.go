package drawing

import (
	"math"
	"strings"
)

// relief is figures on a lattice that covers a rectangle of a sheet, from its upper
// left corner row by row, to be drawn as shades with contour lines. The plotting
// library draws every cell as an element of its own, which makes files of megabytes.
type relief struct {
	box           box
	columns, rows int // of points of the lattice, two at least
	figures       []float64
}

// at is the figure at a place of a cell, between its corners as between planes.
func (r *relief) at(column, row int, x, y float64) float64 {
	i := row*r.columns + column
	top := r.figures[i] + x*(r.figures[i+1]-r.figures[i])
	bottom := r.figures[i+r.columns] + x*(r.figures[i+r.columns+1]-r.figures[i+r.columns])
	return top + y*(bottom-top)
}

// under is the figure at a point of the sheet inside the rectangle.
func (r *relief) under(x, y float64) float64 {
	column, part := cellOf((x-r.box.left)/(r.box.right-r.box.left), r.columns)
	row, down := cellOf((y-r.box.top)/(r.box.bottom-r.box.top), r.rows)
	return r.at(column, row, part, down)
}

func cellOf(share float64, points int) (cell int, part float64) {
	at := share * float64(points-1)
	cell = max(0, min(int(at), points-2))
	return cell, at - float64(cell)
}

// ring is a closed line around figures that reach a level. Where it runs along the
// edge of the rectangle it bounds the area, and is no contour line: there every
// piece has a point of the edge at one end at least.
type ring []ringPoint

type ringPoint struct {
	x, y float64
	edge bool
}

// rings gives the lines around all figures from a level on (marching squares: in
// each cell a line is straight from side to side). Higher figures lie to one hand all
// along, so that holes run the other way round.
func (r *relief) rings(level float64) []ring {
	t := tracing{relief: r, level: level, across: r.columns + 2, down: r.rows + 2}
	t.next = make([]int32, 2*t.across*t.down)
	for row := range t.down - 1 {
		for column := range t.across - 1 {
			t.cross(column, row)
		}
	}
	var all []ring
	for side := range t.next {
		if t.next[side] != 0 {
			all = append(all, t.follow(int32(side))) //nolint:gosec // a lattice has thousands of sides
		}
	}
	return all
}

// tracing follows the lines of one level. Around the lattice lies a frame of points
// that are never reached, at the places of the outermost ones: it closes the lines.
// The side of a cell from a point to the right is numbered twice the point, the one
// downwards one more. No line goes to side 0, which belongs to the frame.
type tracing struct {
	*relief

	level        float64
	across, down int
	next         []int32 // the side that a line goes on to; 0 where none goes
}

// figure is the figure at a point of the framed lattice.
func (t *tracing) figure(point int) float64 {
	column, row := point%t.across-1, point/t.across-1
	if column < 0 || row < 0 || column >= t.columns || row >= t.rows {
		return math.Inf(-1)
	}
	if v := t.figures[row*t.columns+column]; !math.IsNaN(v) {
		return v
	}
	return math.Inf(-1)
}

// place is where a point of the framed lattice lies on the sheet.
func (t *tracing) place(point int) (x, y float64, edge bool) {
	column, row := point%t.across-1, point/t.across-1
	edge = column < 0 || row < 0 || column >= t.columns || row >= t.rows
	column, row = max(0, min(column, t.columns-1)), max(0, min(row, t.rows-1))
	return t.box.left + float64(column)/float64(t.columns-1)*(t.box.right-t.box.left),
		t.box.top + float64(row)/float64(t.rows-1)*(t.box.bottom-t.box.top), edge
}

// cross notes how lines cross a cell: in by the side where figures fall below the
// level as one goes round, out by one where they reach it.
func (t *tracing) cross(column, row int) {
	p := row*t.across + column
	corners := [4]int{p, p + 1, p + 1 + t.across, p + t.across}
	sides := [4]int32{int32(2 * p), int32(2*(p+1) + 1), int32(2 * (p + t.across)), int32(2*p + 1)} //nolint:gosec // a lattice has thousands of sides
	var high [4]bool
	sum := 0.0
	for k, corner := range corners {
		v := t.figure(corner)
		high[k] = v >= t.level
		sum += v
	}
	// Where opposite corners are high the middle says whether they belong together.
	middleHigh := sum/4 >= t.level
	for k := range sides {
		if !high[k] || high[(k+1)%4] {
			continue
		}
		// In here; out by the next side around the low corners, or the last around
		// the high ones: the same unless there are two.
		out := (k + 1) % 4
		for high[out] || !high[(out+1)%4] {
			out = (out + 1) % 4
		}
		if !middleHigh {
			out = (k + 3) % 4
			for high[out] || !high[(out+1)%4] {
				out = (out + 3) % 4
			}
		}
		t.next[sides[k]] = sides[out]
	}
}

// follow walks a line from one of its sides until it closes, and takes it out.
func (t *tracing) follow(side int32) ring {
	var one ring
	for t.next[side] != 0 {
		one = append(one, t.point(int(side)))
		side, t.next[side] = t.next[side], 0
	}
	return one.thinned()
}

// point is where the line crosses a side.
func (t *tracing) point(side int) ringPoint {
	from, to := side/2, side/2+1
	if side%2 == 1 {
		to = from + t.across
	}
	a, b := t.figure(from), t.figure(to)
	ax, ay, aEdge := t.place(from)
	bx, by, bEdge := t.place(to)
	part := (t.level - a) / (b - a)
	switch {
	case math.IsInf(a, -1):
		part = 1
	case math.IsInf(b, -1):
		part = 0
	}
	return ringPoint{ax + part*(bx-ax), ay + part*(by-ay), aEdge || bEdge}
}

// thinned leaves out points that lie on the line between their neighbours, as far
// as can be seen.
func (r ring) thinned() ring {
	const seen, mostInARow = 0.06, 12
	kept := r[:0:0]
	left := 0
	for i, p := range r {
		if len(kept) > 0 && i+1 < len(r) && left < mostInARow {
			a, c := kept[len(kept)-1], r[i+1]
			across := math.Abs((c.x-a.x)*(p.y-a.y) - (c.y-a.y)*(p.x-a.x))
			if a.edge == p.edge && p.edge == c.edge && across <= seen*math.Hypot(c.x-a.x, c.y-a.y) {
				left++
				continue
			}
		}
		kept, left = append(kept, p), 0
	}
	return kept
}

// area is the path around what a ring encloses.
func (r ring) area(d *strings.Builder) {
	for i, p := range r {
		by := "L"
		if i == 0 {
			by = "M"
		}
		d.WriteString(by + num(p.x) + " " + num(p.y))
	}
	d.WriteString("Z")
}

// contour is the path along a ring where it is a contour line.
func (r ring) contour(d *strings.Builder) {
	drawn := false
	for i, p := range r {
		q := r[(i+1)%len(r)]
		if p.edge || q.edge {
			drawn = false
			continue
		}
		if !drawn {
			d.WriteString("M" + num(p.x) + " " + num(p.y))
		}
		drawn = true
		d.WriteString("L" + num(q.x) + " " + num(q.y))
	}
}

// contours draws what reaches each level over what does not, then the lines between;
// it gives the rings of each. The first level is reached everywhere.
func (r *relief) contours(s *sheet, levels []float64, class func(n int) string) [][]ring {
	s.rect(class(0), r.box)
	all := make([][]ring, len(levels))
	for n := 1; n < len(levels); n++ {
		all[n] = r.rings(levels[n])
		var d strings.Builder
		for _, one := range all[n] {
			one.area(&d)
		}
		if d.Len() > 0 {
			s.path(class(n), d.String())
		}
	}
	var d strings.Builder
	for _, rings := range all {
		for _, one := range rings {
			one.contour(&d)
		}
	}
	if d.Len() > 0 {
		s.path("d-contour", d.String())
	}
	return all
}

// shadeOf is the last level that a figure reaches; the first when it reaches none.
func shadeOf(v float64, levels []float64) int {
	n := 0
	for n+1 < len(levels) && v >= levels[n+1] {
		n++
	}
	return n
}
