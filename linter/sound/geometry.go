package sound

import "math"

// Vector is a point or a direction in metres: x and y in the floor, z up.
type Vector struct{ X, Y, Z float64 }

// Minus is the vector from other to v.
func (v Vector) Minus(other Vector) Vector {
	return Vector{v.X - other.X, v.Y - other.Y, v.Z - other.Z}
}

// Dot is the scalar product.
func (v Vector) Dot(other Vector) float64 { return v.X*other.X + v.Y*other.Y + v.Z*other.Z }

// Length is in metres.
func (v Vector) Length() float64 { return math.Sqrt(v.Dot(v)) }

func (v Vector) cross(o Vector) Vector {
	return Vector{v.Y*o.Z - v.Z*o.Y, v.Z*o.X - v.X*o.Z, v.X*o.Y - v.Y*o.X}
}

func (v Vector) times(f float64) Vector { return Vector{v.X * f, v.Y * f, v.Z * f} }

func (v Vector) plus(o Vector) Vector { return Vector{v.X + o.X, v.Y + o.Y, v.Z + o.Z} }

// Aim is the direction of an axis that points to bearingDegrees (0 along x, 90
// along y) and down from level by downDegrees (90 is straight down).
func Aim(bearingDegrees, downDegrees float64) Vector {
	sinB, cosB := math.Sincos(bearingDegrees * math.Pi / 180)
	sinD, cosD := math.Sincos(downDegrees * math.Pi / 180)
	return Vector{cosD * cosB, cosD * sinB, -sinD}
}

// Point lies in the floor.
type Point struct{ X, Y float64 }

// Outline is the corners of a floor in order, either way round, without repeating
// the first. Sides must not cross.
type Outline []Point

// Rectangle is a floor from 0, 0 to its length along x and its width along y.
func Rectangle(lengthMetres, widthMetres float64) Outline {
	return Outline{{0, 0}, {lengthMetres, 0}, {lengthMetres, widthMetres}, {0, widthMetres}}
}

// AreaM2 is the area of the floor (the surveyor's formula).
func (o Outline) AreaM2() float64 {
	sum := 0.0
	for i, p := range o {
		q := o[(i+1)%len(o)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return math.Abs(sum) / 2
}

// PerimeterMetres is the length of all sides.
func (o Outline) PerimeterMetres() float64 {
	sum := 0.0
	for i, p := range o {
		q := o[(i+1)%len(o)]
		sum += math.Hypot(q.X-p.X, q.Y-p.Y)
	}
	return sum
}

// Bounds are the corners of the smallest upright rectangle around the floor.
func (o Outline) Bounds() (low, high Point) {
	if len(o) == 0 {
		return Point{}, Point{}
	}
	low, high = o[0], o[0]
	for _, p := range o[1:] {
		low.X, low.Y = min(low.X, p.X), min(low.Y, p.Y)
		high.X, high.Y = max(high.X, p.X), max(high.Y, p.Y)
	}
	return low, high
}

// Contains says whether a point is inside: a ray from it crosses an odd number of
// sides. Points on a side may count as either.
func (o Outline) Contains(p Point) bool {
	inside := false
	for i, a := range o {
		b := o[(i+1)%len(o)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			inside = !inside
		}
	}
	return inside
}

// BeyondMetres is how far a point lies outside the floor; 0 inside.
func (o Outline) BeyondMetres(p Point) float64 {
	if len(o) == 0 || o.Contains(p) {
		return 0
	}
	beyond := math.Inf(1)
	for i, a := range o {
		b := o[(i+1)%len(o)]
		along, square := 0.0, (b.X-a.X)*(b.X-a.X)+(b.Y-a.Y)*(b.Y-a.Y)
		if square > 0 {
			along = max(0, min(1, ((p.X-a.X)*(b.X-a.X)+(p.Y-a.Y)*(b.Y-a.Y))/square))
		}
		beyond = min(beyond, math.Hypot(a.X+along*(b.X-a.X)-p.X, a.Y+along*(b.Y-a.Y)-p.Y))
	}
	return beyond
}

// Plane is where ears are over a part of the floor. A stepped floor has several.
type Plane struct {
	Outline Outline
	EarZ    float64 // height of the ears in the frame, metres
}

// Grid is the listeners of a plane: its bounds are cut into equal cells no wider
// than the spacing, and a listener stands in the middle of each cell whose middle
// is inside. Row by row from low y, each from low x. A floor too thin for any
// middle gets its first corner as one listener.
func (p Plane) Grid(spacingMetres float64) []Vector {
	low, high := p.Outline.Bounds()
	columns, dx := cells(high.X-low.X, spacingMetres)
	rows, dy := cells(high.Y-low.Y, spacingMetres)
	var listeners []Vector
	for row := range rows {
		for column := range columns {
			at := Point{low.X + (float64(column)+0.5)*dx, low.Y + (float64(row)+0.5)*dy}
			if p.Outline.Contains(at) {
				listeners = append(listeners, Vector{at.X, at.Y, p.EarZ})
			}
		}
	}
	if len(listeners) == 0 && len(p.Outline) > 0 {
		listeners = append(listeners, Vector{p.Outline[0].X, p.Outline[0].Y, p.EarZ})
	}
	return listeners
}

func cells(lengthMetres, spacingMetres float64) (n int, width float64) {
	n = max(1, int(math.Ceil(lengthMetres/spacingMetres-1e-9)))
	return n, lengthMetres / float64(n)
}
