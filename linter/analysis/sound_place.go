package analysis

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// Speaker is one loudspeaker in a space: where it is, where it looks, and what it
// gets.
type Speaker struct {
	Run  *Run
	Name string // "H 3"
	At   sound.Vector
	Aim  sound.Vector
	// Watts is what it receives at full output, cable and attenuators included.
	Watts quantity.Power
	// Assumed tells that the design does not say where it is or where it looks.
	Assumed bool
}

// Classes of loudspeaker.
const (
	classCeiling = "ceiling"
	classPendant = "pendant"
	classWall    = "wall"
	classColumn  = "column"
	classGarden  = "garden"
)

// gardenMetres is how high a garden loudspeaker sounds from (common practice, no
// published source).
const gardenMetres = 0.5

// placing puts the loudspeakers of one space where they hang.
type placing struct {
	s       *Sound
	missing []Missing
	assumed []string
	grid    []int // of the speakers: those laid out evenly over the floor
	walls   []int // those laid out along the walls
}

// place puts loudspeakers where the design says, else evenly, and says so.
func (s *Sound) place(all []Speaker) (lacks []Missing, assumed []string) {
	p := placing{s: s}
	blocks, members := blocksOf(all)
	for b, part := range blocks {
		p.block(all, part, members[b])
	}
	p.layGrid(all)
	p.layWalls(all)
	for b, part := range blocks {
		for _, i := range members[b] {
			p.raise(&all[i], part)
		}
	}
	return p.missing, p.assumed
}

// blocksOf sorts loudspeakers by their block, in walking order.
func blocksOf(all []Speaker) (blocks []*schema.Loudspeaker, members [][]int) {
	at := map[*schema.Loudspeaker]int{}
	for i := range all {
		part := all[i].Run.Part
		b, ok := at[part]
		if !ok {
			b = len(blocks)
			at[part] = b
			blocks, members = append(blocks, part), append(members, nil)
		}
		members[b] = append(members[b], i)
	}
	return blocks, members
}

func (p *placing) lacks(m Missing) { p.missing = MergeMissing(p.missing, []Missing{m}) }

func (p *placing) assume(format string, args ...any) {
	p.assumed = mergeTexts(p.assumed, []string{fmt.Sprintf(format, args...)})
}

// block places the loudspeakers of one block along and across, or leaves them to be
// laid out.
func (p *placing) block(all []Speaker, part *schema.Loudspeaker, members []int) {
	if part.Position.Set() {
		p.stated(all, part, members)
		return
	}
	open := p.s.Open()
	switch class := part.Class.V; {
	case !part.Class.Set():
		p.lacks(missing("kind of loudspeaker", "loudspeaker", &part.Part, `kind = "ceiling"`))
	case class == classCeiling || class == classPendant || class == classGarden:
		p.grid = append(p.grid, members...)
	case (class == classWall || class == classColumn) && !open && p.s.rectangular():
		p.walls = append(p.walls, members...)
	default:
		p.lacks(missing("position of the loudspeaker", "loudspeaker", &part.Part, `position = ["2 m", "0 m"]`))
	}
}

// stated places a block whose position is written.
func (p *placing) stated(all []Speaker, part *schema.Loudspeaker, members []int) {
	first := vector(part.Position)
	last := first
	switch {
	case part.To.Set():
		last = vector(part.To)
		if len(part.To.Items) < 3 {
			last.Z = first.Z
		}
	case len(members) > 1:
		p.lacks(missing("position of the last of the run", "loudspeaker", &part.Part, `to = ["16 m", "0 m"]`))
		return
	}
	for n, i := range members {
		along := 0.0
		if len(members) > 1 {
			along = float64(n) / float64(len(members)-1)
		}
		all[i].At = sound.Vector{X: first.X + along*(last.X-first.X), Y: first.Y + along*(last.Y-first.Y), Z: first.Z + along*(last.Z-first.Z)}
		p.aim(&all[i], part)
	}
}

func vector(l schema.List[quantity.Length]) sound.Vector {
	v := sound.Vector{X: float64(l.Items[0].V), Y: float64(l.Items[1].V)}
	if len(l.Items) > 2 {
		v.Z = float64(l.Items[2].V)
	}
	return v
}

// aim lets a loudspeaker that stands where it is written look where it is written,
// straight down from a ceiling, or else away from the wall it hangs on.
func (p *placing) aim(at *Speaker, part *schema.Loudspeaker) {
	class := part.Class.V
	if class == classCeiling || class == classPendant || part.Aim.Set() || part.Tilt.Set() && steep(part.Tilt.V) || allRound(part) {
		at.Aim = sound.Aim(float64(part.Aim.V), tilt(part))
		return
	}
	if bearing, ok := p.s.awayFromWall(at.At); ok && !p.s.Open() && (class == classWall || class == classColumn) {
		at.Aim, at.Assumed = sound.Aim(bearing, tilt(part)), true
		p.assume("loudspeakers that do not say where they look do so away from the nearest wall")
		return
	}
	p.lacks(missing("direction in which the loudspeaker looks", "loudspeaker", &part.Part, `aim = "90 deg"`))
}

// steep tells that something looks straight down, so that no direction in plan
// matters.
func steep(tilt quantity.Angle) bool { return tilt > 89 }

func allRound(part *schema.Loudspeaker) bool { return part.Coverage.V >= 360 }

// tilt is how far down a loudspeaker looks, in degrees.
func tilt(part *schema.Loudspeaker) float64 {
	switch {
	case part.Tilt.Set():
		return float64(part.Tilt.V)
	case part.Class.V == classCeiling || part.Class.V == classPendant:
		return 90
	}
	return 0
}

// raise gives a loudspeaker its height.
func (p *placing) raise(at *Speaker, part *schema.Loudspeaker) {
	ceiling, known := p.s.Ceiling(at.At.X)
	switch {
	case len(part.Position.Items) > 2:
		return // stated with its place
	case part.Height.Set():
		at.At.Z = float64(part.Height.V)
	case part.Class.V == classCeiling && known:
		at.At.Z = float64(ceiling)
	case part.Class.V == classCeiling:
		p.lacks(p.s.ceilingMissing())
	case part.Class.V == classGarden:
		at.At.Z = gardenMetres
		p.assume("garden loudspeakers sound from %s over the ground", quantity.Length(gardenMetres))
	case part.Class.Set():
		p.lacks(missing("height of the loudspeaker", "loudspeaker", &part.Part, `height = "3 m"`))
	default:
		p.lacks(missing("kind of loudspeaker", "loudspeaker", &part.Part, `kind = "ceiling"`))
	}
}

// layGrid lays loudspeakers out evenly over the floor, in walking order: row after
// row, forth and back.
func (p *placing) layGrid(all []Speaker) {
	n := len(p.grid)
	if n == 0 || p.s.Floor.Outline == nil {
		return
	}
	layout := p.s.Space.Layout
	if layout.V.Pattern == schema.LayoutRows && layout.V.Rows*layout.V.Columns != n {
		p.lacks(Missing{What: "layout that fits the number of loudspeakers", Part: named("space", p.s.Space.Name), Where: layout.Span, Write: fmt.Sprintf("layout = \"1 x %d\"", n)})
		return
	}
	points := gridOver(&p.s.Floor, layout.V, n)
	for k, i := range p.grid {
		all[i].At.X, all[i].At.Y = points[k].X, points[k].Y
		all[i].Aim = sound.Aim(float64(all[i].Run.Part.Aim.V), tilt(all[i].Run.Part))
		all[i].Assumed = !layout.Set()
	}
	if !layout.Set() {
		p.assume("%s in %q %s in an even grid over the floor", wording.Counted(n, "loudspeaker"), p.s.Space.Name, hang(n))
	}
}

func hang(n int) string {
	if n == 1 {
		return "hangs"
	}
	return "hang"
}

// gridOver gives n points spread evenly over a floor.
func gridOver(f *Floor, layout schema.Layout, n int) []sound.Point {
	if f.rectangular() {
		return rows(f, layout, n)
	}
	// The grid over the smallest rectangle around it that has enough points inside.
	share := float64(f.Length) * float64(f.Width) / f.Outline.AreaM2()
	for total := n; total <= int(3*share*float64(n))+50; total++ {
		inside := slices.DeleteFunc(rows(f, layout, total), func(at sound.Point) bool { return !f.Outline.Contains(at) })
		if len(inside) >= n {
			return spreadOver(inside, n)
		}
	}
	fine := sound.Plane{Outline: f.Outline}.Grid(math.Sqrt(f.Outline.AreaM2()/float64(n)) / 8)
	points := make([]sound.Point, len(fine))
	for i, v := range fine {
		points[i] = sound.Point{X: v.X, Y: v.Y}
	}
	return spreadOver(points, n)
}

// spreadOver picks n points of a list at even steps; points serve more than once
// where there are fewer.
func spreadOver(points []sound.Point, n int) []sound.Point {
	picked := make([]sound.Point, n)
	for i := range picked {
		picked[i] = points[i*len(points)/n]
	}
	return picked
}

// rows lays n points out over the rectangle around a floor.
func rows(f *Floor, layout schema.Layout, n int) []sound.Point {
	low, _ := f.Outline.Bounds()
	count := layout.Rows
	if layout.Pattern != schema.LayoutRows {
		count = evenRows(float64(f.Length), float64(f.Width), n)
	}
	points := make([]sound.Point, 0, n)
	for row := range count {
		columns := n / count
		if row < n%count {
			columns++
		}
		step := float64(f.Length) / float64(columns)
		shift := 0.0
		if layout.Pattern == schema.LayoutHexagonal {
			shift = step / 4
			if row%2 == 1 {
				shift = -shift
			}
		}
		for k := range columns {
			if row%2 == 1 {
				k = columns - 1 - k
			}
			points = append(points, sound.Point{
				X: low.X + (float64(k)+0.5)*step + shift,
				Y: low.Y + (float64(row)+0.5)*float64(f.Width)/float64(count),
			})
		}
	}
	return points
}

// evenRows is the number of rows that makes the cells of n loudspeakers most nearly
// square.
func evenRows(length, width float64, n int) int {
	best, worst := 1, math.Inf(1)
	ideal := math.Sqrt(float64(n) * width / length)
	for _, count := range []int{int(ideal), int(ideal) + 1} {
		count = max(1, min(n, count))
		columns := float64(n) / float64(count)
		if off := math.Abs(math.Log(length / columns / (width / float64(count)))); off < worst-1e-9 {
			best, worst = count, off
		}
	}
	return best
}

// layWalls lays loudspeakers out along both long walls, looking across; a single one
// hangs on a short wall and looks along.
func (p *placing) layWalls(all []Speaker) {
	n := len(p.walls)
	if n == 0 || p.s.Floor.Outline == nil {
		return
	}
	low, high := p.s.Floor.Outline.Bounds()
	turned := high.Y-low.Y > high.X-low.X // the long walls run across
	length, width := high.X-low.X, high.Y-low.Y
	if turned {
		length, width = width, length
	}
	near := (n + 1) / 2
	for k, i := range p.walls {
		along, across, bearing := 0.0, width/2, 0.0
		switch {
		case n == 1:
		case k < near:
			along, across, bearing = (float64(k)+0.5)*length/float64(near), 0, 90
		default:
			along, across, bearing = length-(float64(k-near)+0.5)*length/float64(n-near), width, 270
		}
		at := &all[i]
		if turned {
			along, across, bearing = across, along, 90-bearing
		}
		at.At.X, at.At.Y = low.X+along, low.Y+across
		if at.Run.Part.Aim.Set() {
			bearing = float64(at.Run.Part.Aim.V)
		}
		at.Aim, at.Assumed = sound.Aim(bearing, tilt(at.Run.Part)), true
	}
	if n == 1 {
		p.assume("the loudspeaker in %q hangs in the middle of a short wall and looks along", p.s.Space.Name)
		return
	}
	p.assume("%s in %q hang evenly along both long walls and look across", wording.Counted(n, "loudspeaker"), p.s.Space.Name)
}

func (f *Floor) rectangular() bool {
	return same(float64(f.Length)*float64(f.Width), f.Outline.AreaM2())
}

func (s *Sound) rectangular() bool { return s.Floor.Outline == nil || s.Floor.rectangular() }

// awayFromWall is the bearing, in degrees, straight away from the nearest side of
// the floor.
func (s *Sound) awayFromWall(at sound.Vector) (degrees float64, ok bool) {
	floor := s.Floor.Outline
	nearest := math.Inf(1)
	for i, a := range floor {
		b := floor[(i+1)%len(floor)]
		dx, dy := b.X-a.X, b.Y-a.Y
		square := dx*dx + dy*dy
		if square <= 0 {
			continue
		}
		t := max(0, min(1, ((at.X-a.X)*dx+(at.Y-a.Y)*dy)/square))
		if d := math.Hypot(at.X-a.X-t*dx, at.Y-a.Y-t*dy); d < nearest-1e-9 {
			nearest, ok = d, true
			side := math.Sqrt(square)
			in := sound.Point{X: -dy / side, Y: dx / side}
			middle := sound.Point{X: (a.X+b.X)/2 + in.X*1e-3, Y: (a.Y+b.Y)/2 + in.Y*1e-3}
			if !floor.Contains(middle) {
				in = sound.Point{X: -in.X, Y: -in.Y}
			}
			degrees = math.Atan2(in.Y, in.X) * 180 / math.Pi
		}
	}
	return degrees, ok
}
