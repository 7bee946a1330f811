package conductor

import (
	"fmt"
	"math"
)

// Ampacity is the current one conductor of a cable may carry for long, with its grounds.
type Ampacity struct {
	Amps float64
	// Table says where the figure at 30 °C is from, and Tabled what it is there, for a size that may be the next smaller one.
	Table  string
	Tabled float64
	// Smaller names the size that was looked up where the conductor's own is not in the table; "" otherwise.
	Smaller string
	// Factor is what warm surroundings make of it, FactorBasis where that is from; 1 and "" up to 30 °C.
	Factor      float64
	FactorBasis string
}

// rated is a row of a table of currents.
type rated struct {
	size float64 // mm², or the gauge
	amps float64
	from ratingTable
}

// ratingTable names a table and says what its insulation stands.
type ratingTable struct {
	name string
	// limitCelsius is the highest temperature of a conductor, and endCelsius that of the surroundings at which the table of
	// factors ends.
	limitCelsius, endCelsius float64
	factors                  string
}

// Tables of current. None of them could be read here: every figure is from memory of the table named.

func methodC() ratingTable {
	return pvc("IEC 60364-5-52 Table B.52.2: two loaded copper conductors in PVC, reference method C, clipped to a surface (from memory)")
}

func fixedOne() ratingTable {
	return pvc("BS 7671 Table 4D2A: two-core copper cable in PVC, reference method C, clipped to a surface (from memory)")
}

func flexibleCable() ratingTable {
	return pvc("BS 7671 Table 4F3A: flexible cable with copper conductors in PVC (from memory)")
}

func pvc(name string) ratingTable {
	return ratingTable{name: name, limitCelsius: 70, endCelsius: 60, factors: "IEC 60364-5-52 Table B.52.14, PVC (from memory)"}
}

func necConductors() ratingTable {
	return sixty("NEC Table 310.16: copper at 60 °C, no more than three conductors together (from memory)")
}

func necFixtureWire() ratingTable {
	return sixty("NEC Table 402.5: fixture wire, as 725.43 has it for 18 and 16 AWG (from memory)")
}

func necDataCable() ratingTable {
	return sixty("NEC Table 725.144: one four-pair cable at 60 °C (from memory)")
}

func sixty(name string) ratingTable {
	return ratingTable{name: name, limitCelsius: 60, endCelsius: 55, factors: "NEC Table 310.15(B)(1), 60 °C (from memory)"}
}

// metricRatings is sorted by size.
func metricRatings() []rated {
	return []rated{
		{0.5, 3, flexibleCable()},
		{0.75, 6, flexibleCable()},
		{1, 15, fixedOne()},
		{1.5, 19.5, methodC()},
		{2.5, 27, methodC()},
		{4, 36, methodC()},
		{6, 46, methodC()},
		{10, 63, methodC()},
		{16, 85, methodC()},
		{25, 112, methodC()},
		{35, 138, methodC()},
		{50, 168, methodC()},
		{70, 213, methodC()},
		{95, 258, methodC()},
		{120, 299, methodC()},
	}
}

// americanRatings is sorted from the thinnest gauge to 4/0, which is −3.
func americanRatings() []rated {
	return []rated{
		{26, 1, necDataCable()},
		{24, 2, necDataCable()},
		{23, 2.5, necDataCable()},
		{22, 3, necDataCable()},
		{18, 6, necFixtureWire()},
		{16, 8, necFixtureWire()},
		{14, 15, necConductors()},
		{12, 20, necConductors()},
		{10, 30, necConductors()},
		{8, 40, necConductors()},
		{6, 55, necConductors()},
		{4, 70, necConductors()},
		{3, 85, necConductors()},
		{2, 95, necConductors()},
		{1, 110, necConductors()},
		{0, 125, necConductors()},
		{-1, 145, necConductors()},
		{-2, 165, necConductors()},
		{-3, 195, necConductors()},
	}
}

// ThinnestRated is how far down the tables of current reach.
const ThinnestRated = "0.5 mm² or 26 AWG"

// MostAmps looks up the current a conductor may carry in surroundings of a temperature in °C. A size between two of a
// table takes the figure of the smaller one. It is not ok for a size below all of them, or one that PerMetre refuses.
//
// Above 30 °C the figure falls by √((t_c − t) / (t_c − 30)), t_c being what the insulation stands: heat flows with the
// difference of temperatures and comes with the square of current. The published factors are this formula rounded. They
// end where half of the rating or less is left; hotter surroundings are taken as those of the last row. Below 30 °C
// nothing is added.
func MostAmps(c Conductor, celsius float64) (Ampacity, bool) {
	if c.validate() != nil {
		return Ampacity{}, false
	}
	row, exact, ok := c.ratedRow()
	if !ok {
		return Ampacity{}, false
	}
	a := Ampacity{Table: row.from.name, Tabled: row.amps, Factor: 1}
	if !exact {
		smaller := c
		if c.IsAWG {
			smaller.AWG = int(row.size)
		} else {
			smaller.AreaMM2 = row.size
		}
		a.Smaller = smaller.name()
	}
	if celsius > 30 {
		a.Factor = warmth(row.from, celsius)
		a.FactorBasis = fmt.Sprintf("× %s at %s °C, %s", short(a.Factor), short(min(celsius, row.from.endCelsius)), row.from.factors)
	}
	a.Amps = row.amps * a.Factor
	return a, true
}

// WarmthFactor is what surroundings of a temperature in °C leave of a current that is rated at 30 °C for PVC, and where
// that is from.
func WarmthFactor(celsius float64) (factor float64, basis string) {
	if celsius <= 30 {
		return 1, ""
	}
	return warmth(methodC(), celsius), methodC().factors
}

func warmth(t ratingTable, celsius float64) float64 {
	return math.Sqrt((t.limitCelsius - min(celsius, t.endCelsius)) / (t.limitCelsius - 30))
}

// ratedRow finds the largest row that is no larger than the conductor.
func (c Conductor) ratedRow() (row rated, exact, ok bool) {
	if c.IsAWG {
		for _, r := range americanRatings() {
			if int(r.size) >= c.AWG {
				row, exact, ok = r, int(r.size) == c.AWG, true
			}
		}
		return row, exact, ok
	}
	for _, r := range metricRatings() {
		if same := sameSize(r.size, c.AreaMM2); same || r.size < c.AreaMM2 {
			row, exact, ok = r, same, true
		}
	}
	return row, exact, ok
}
