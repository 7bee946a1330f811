package sound

import "math"

// CoverageDiameterMetres is the circle at ear height within which a ceiling
// loudspeaker is less than 6 dB below its axis by angle alone: 2·h·tan(angle/2).
// heightMetres is from the ears up. From 180° on it is +Inf.
func CoverageDiameterMetres(heightMetres, angleDegrees float64) float64 {
	if angleDegrees >= 180 {
		return math.Inf(1)
	}
	return 2 * heightMetres * math.Tan(angleDegrees/2*math.Pi/180)
}

// Density is how close circles of coverage lie.
type Density int

const (
	// EdgeToEdge circles touch: gaps between them are less well covered.
	EdgeToEdge Density = iota
	// MinimumOverlap circles leave no gap.
	MinimumOverlap
	// CentreToCentre circles reach the middle of the next: most even.
	CentreToCentre
)

// Pattern is how ceiling loudspeakers are laid out.
type Pattern int

const (
	// Square is rows and columns.
	Square Pattern = iota
	// Hexagonal is rows that are moved by half a spacing against each other.
	Hexagonal
)

// SpacingMetres is the greatest distance between neighbours for circles of this
// diameter: D, D/√2 (or √3/2·D in a hexagonal pattern), D/2 (geometry).
func SpacingMetres(diameterMetres float64, density Density, pattern Pattern) float64 {
	switch density {
	case EdgeToEdge:
		return diameterMetres
	case MinimumOverlap:
		if pattern == Hexagonal {
			return diameterMetres * math.Sqrt(3) / 2
		}
		return diameterMetres / math.Sqrt2
	case CentreToCentre:
		return diameterMetres / 2
	}
	return math.NaN()
}

// Needed is how many loudspeakers a rectangle needs at a spacing: columns along its
// length and rows along its width, each half a spacing from the walls at most. Rows
// of a hexagonal pattern are √3/2 of the spacing apart.
func Needed(lengthMetres, widthMetres, spacingMetres float64, pattern Pattern) (columns, rows int) {
	columns, _ = cells(lengthMetres, spacingMetres)
	if pattern == Hexagonal {
		spacingMetres *= math.Sqrt(3) / 2
	}
	rows, _ = cells(widthMetres, spacingMetres)
	return columns, rows
}

// NeededForArea is how many loudspeakers an area of any shape needs, edges left
// aside: area over the area of one cell.
func NeededForArea(areaM2, spacingMetres float64, pattern Pattern) int {
	cell := spacingMetres * spacingMetres
	if pattern == Hexagonal {
		cell *= math.Sqrt(3) / 2
	}
	return max(1, int(math.Ceil(areaM2/cell-1e-9)))
}
