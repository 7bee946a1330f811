package conductor

import (
	"fmt"
	"math"
	"strconv"
)

// Construction is how an American conductor is made. Metric conductors are told apart by their class instead.
type Construction uint8

// The constructions.
const (
	NotSaid Construction = iota
	Solid
	Stranded
)

// Conductor is one copper conductor, either metric or of American wire gauge. It is comparable and may serve as a key.
type Conductor struct {
	AreaMM2 float64 // nominal cross-section in mm², when not IsAWG
	Class   int     // IEC 60228: 1 solid, 2 stranded, 5 flexible, 6 very flexible; 0 not said. Metric only

	IsAWG        bool
	AWG          int          // gauge; 0 is 1/0, −1 is 2/0, −2 is 3/0, −3 is 4/0
	Construction Construction // AWG only

	Coated bool // each wire tinned, or coated with another metal
}

// Resistance is the resistance of one conductor, with its grounds.
type Resistance struct {
	OhmPerMetre float64

	// Computed: the size is not in the table the figure rests on, so it was worked out by rule. AWG solid uncoated is
	// always a formula, the one its tables are printed from, and is not marked.
	Computed bool
	// Assumed: class or construction was not said.
	Assumed bool

	conductor Conductor
	celsius   float64
}

// Spans of what is accepted. Gauges 4/0 to 40 are those of the Copper Wire Tables (NBS Circular 31; span from memory).
const (
	minAreaMM2, maxAreaMM2 = 0.01, 1000
	minAWG, maxAWG         = -3, 40
	minCelsius, maxCelsius = -50, 200
)

// alpha is the temperature coefficient of resistance of annealed copper at 20 °C and constant mass, per kelvin: IEC 60028.
const alpha = 0.00393

// standardResistivity is that of copper of 100 % IACS at 20 °C, in ohm·mm²/km: IEC 60028, NBS Handbook 100.
const standardResistivity = 17.241

// AtTemperature corrects a resistance at 20 °C to another temperature: R(t) = R20·[1 + 0.00393·(t − 20)], IEC 60028.
// IEC 60228 itself corrects measurements with a table that amounts to 0.004 per kelvin; at 70 °C the two are 0.3 % apart.
func AtTemperature(ohmAt20, celsius float64) float64 { return ohmAt20 * (1 + alpha*(celsius-20)) }

// LoopOhm is the resistance of a two-core cable as its load sees it: both conductors, 2 × length × ohm per metre.
func LoopOhm(ohmPerMetre, lengthMetres float64) float64 { return 2 * lengthMetres * ohmPerMetre }

// PerMetre gives the resistance of one metre of one conductor at a temperature in °C.
//
// Metric sizes take the maximum of IEC 60228 for their class; where no class is said, class 5, whose figures are the
// highest. A size that is not in the table takes the highest product of resistance and area of its column, divided by the
// area, so that no figure comes out below what the standard permits at the sizes around it.
//
// AWG sizes take 17.241 ohm·mm²/km (100 % IACS) over the area by ASTM B258, which is the nominal value of a solid plain
// conductor; where no construction is said, that one too. Stranded and coated ones are raised by the ratio in which NEC
// Chapter 9 Table 8 holds them against solid plain ones at the same size; at sizes not held here (other than 18, 16, 14,
// 12, 10 and 8) by the highest ratio of the column.
//
// The error says which figure of the conductor, or the temperature, makes no sense.
func PerMetre(c Conductor, celsius float64) (Resistance, error) {
	if err := c.validate(); err != nil {
		return Resistance{}, fmt.Errorf("looking up the resistance of %s: %w", c.name(), err)
	}
	if !(celsius >= minCelsius && celsius <= maxCelsius) {
		return Resistance{}, fmt.Errorf("looking up the resistance of %s: %g °C is not between %d and %d °C",
			c.name(), celsius, minCelsius, maxCelsius)
	}
	r := Resistance{conductor: c, celsius: celsius, Assumed: c.assumed()}
	ohmPerKM, tabulated := c.ohmPerKM()
	r.Computed = !tabulated
	r.OhmPerMetre = AtTemperature(ohmPerKM/1000, celsius)
	return r, nil
}

// NextLarger steps to the next larger size of the trade: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16 mm², or AWG 24, 22, …, 8,
// keeping everything else. It is not ok when there is none.
func NextLarger(c Conductor) (larger Conductor, ok bool) {
	if c.IsAWG {
		for gauge := 24; gauge >= 8; gauge -= 2 {
			if gauge < c.AWG {
				c.AWG = gauge
				return c, true
			}
		}
		return c, false
	}
	for _, areaMM2 := range tradeSizesMM2() {
		if areaMM2 > c.AreaMM2 && !sameSize(areaMM2, c.AreaMM2) {
			c.AreaMM2 = areaMM2
			return c, true
		}
	}
	return c, false
}

// CrossSectionMM2 is the area of the copper in mm²: the nominal one of a metric size; for AWG π/4·d² with
// d = 0.127 mm · 92^((36−n)/39), ASTM B258. A conductor that PerMetre refuses has no meaningful area.
func CrossSectionMM2(c Conductor) float64 {
	if !c.IsAWG {
		return c.AreaMM2
	}
	diameterMM := 0.127 * math.Pow(92, float64(36-c.AWG)/39)
	return math.Pi / 4 * diameterMM * diameterMM
}

func (c Conductor) assumed() bool {
	if c.IsAWG {
		return c.Construction == NotSaid
	}
	return c.Class == 0
}

func (c Conductor) validate() error {
	switch {
	case c.Construction > Stranded:
		return fmt.Errorf("construction %d is none of those known", c.Construction)
	case c.IsAWG && c.AreaMM2 != 0:
		return fmt.Errorf("it has both a gauge and an area of %g mm²; give one", c.AreaMM2)
	case c.IsAWG && c.Class != 0:
		return fmt.Errorf("class %d is of IEC 60228 and does not go with AWG; say solid or stranded", c.Class)
	case c.IsAWG && (c.AWG < minAWG || c.AWG > maxAWG):
		return fmt.Errorf("gauges run from 4/0 (-3) to %d", maxAWG)
	case c.IsAWG:
		return nil
	case c.AWG != 0:
		return fmt.Errorf("it is metric but has a gauge of %d AWG", c.AWG)
	case c.Construction != NotSaid:
		return fmt.Errorf("solid or stranded goes with AWG; for a metric conductor say its class: 1, 2, 5 or 6")
	case !(c.AreaMM2 >= minAreaMM2 && c.AreaMM2 <= maxAreaMM2):
		return fmt.Errorf("its area is not between %g and %d mm²", minAreaMM2, maxAreaMM2)
	case c.Class != 0 && c.Class != 1 && c.Class != 2 && c.Class != 5 && c.Class != 6:
		return fmt.Errorf("class %d is none of 1, 2, 5 and 6 (IEC 60228)", c.Class)
	}
	return nil
}

func (c Conductor) name() string {
	switch {
	case !c.IsAWG:
		return strconv.FormatFloat(c.AreaMM2, 'g', -1, 64) + " mm²"
	case c.AWG > 0 || c.AWG < minAWG:
		return strconv.Itoa(c.AWG) + " AWG"
	default:
		return strconv.Itoa(1-c.AWG) + "/0 AWG"
	}
}
