package conductor

import "math"

// metric is a row of IEC 60228: the maximum resistance at 20 °C in ohm per km of one conductor.
type metric struct {
	areaMM2                       float64
	rigidPlain, rigidCoated       float64
	flexiblePlain, flexibleCoated float64
}

// iec60228 is IEC 60228:2004, Tables 1 and 2 (classes 1 and 2, which agree at these sizes) and Tables 3 and 4 (classes 5
// and 6, which agree too). Rows up to 16 mm² were read in reprints of the standard; larger ones and class 6 are from
// memory. A function, so that no code can change the table.
func iec60228() [15]metric {
	return [15]metric{
		{0.5, 36.0, 36.7, 39.0, 40.1},
		{0.75, 24.5, 24.8, 26.0, 26.7},
		{1, 18.1, 18.2, 19.5, 20.0},
		{1.5, 12.1, 12.2, 13.3, 13.7},
		{2.5, 7.41, 7.56, 7.98, 8.21},
		{4, 4.61, 4.70, 4.95, 5.09},
		{6, 3.08, 3.11, 3.30, 3.39},
		{10, 1.83, 1.84, 1.91, 1.95},
		{16, 1.15, 1.16, 1.21, 1.24},
		{25, 0.727, 0.734, 0.780, 0.795},
		{35, 0.524, 0.529, 0.554, 0.565},
		{50, 0.387, 0.391, 0.386, 0.393},
		{70, 0.268, 0.270, 0.272, 0.277},
		{95, 0.193, 0.195, 0.206, 0.210},
		{120, 0.153, 0.154, 0.161, 0.164},
	}
}

// tradeSizesMM2 are the metric sizes loudspeaker cable is sold in.
func tradeSizesMM2() [9]float64 { return [9]float64{0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16} }

// flexible: classes 5 and 6, and a class that was not said.
func (c Conductor) flexible() bool { return c.Class != 1 && c.Class != 2 }

// column picks the figure of a row that is meant for a conductor.
func (c Conductor) column(row metric) float64 {
	switch {
	case c.flexible() && c.Coated:
		return row.flexibleCoated
	case c.flexible():
		return row.flexiblePlain
	case c.Coated:
		return row.rigidCoated
	default:
		return row.rigidPlain
	}
}

// american is a row of NEC Chapter 9 Table 8: direct-current resistance at 75 °C in ohm per 1000 ft.
type american struct {
	gauge                       int
	solid, stranded             float64
	solidCoated, strandedCoated float64
}

// necTable8 is NEC Chapter 9 Table 8 at the sizes it lists for both solid and seven-strand conductors. Only the ratios
// between its columns are used.
func necTable8() [6]american {
	return [6]american{
		{18, 7.77, 7.95, 8.08, 8.45},
		{16, 4.89, 4.99, 5.08, 5.29},
		{14, 3.07, 3.14, 3.19, 3.26},
		{12, 1.93, 1.98, 2.01, 2.05},
		{10, 1.21, 1.24, 1.26, 1.29},
		{8, 0.764, 0.778, 0.786, 0.809},
	}
}

// ohmPerKM is the resistance at 20 °C, and whether it stands in a table at this size.
func (c Conductor) ohmPerKM() (ohmPerKM float64, tabulated bool) {
	if c.IsAWG {
		ratio, tabulated := c.ratioToSolid()
		return standardResistivity / CrossSectionMM2(c) * ratio, tabulated
	}
	for _, row := range iec60228() {
		if sameSize(row.areaMM2, c.AreaMM2) {
			return c.column(row), true
		}
	}
	return c.highestProduct() / c.AreaMM2, false
}

// highestProduct is the highest product of resistance and area in a conductor's column, in ohm·mm²/km.
func (c Conductor) highestProduct() float64 {
	highest := 0.0
	for _, row := range iec60228() {
		highest = max(highest, c.column(row)*row.areaMM2)
	}
	return highest
}

// ratioToSolid is how much higher an American conductor's resistance is than a solid plain one's.
func (c Conductor) ratioToSolid() (ratio float64, tabulated bool) {
	if c.Construction != Stranded && !c.Coated {
		return 1, true
	}
	for _, row := range necTable8() {
		r := row.solidCoated / row.solid
		switch {
		case c.Construction == Stranded && c.Coated:
			r = row.strandedCoated / row.solid
		case c.Construction == Stranded:
			r = row.stranded / row.solid
		}
		if row.gauge == c.AWG {
			return r, true
		}
		ratio = max(ratio, r)
	}
	return ratio, false
}

// sameSize allows for a size that was computed from another unit.
func sameSize(a, b float64) bool { return math.Abs(a-b) <= 1e-9*a }
