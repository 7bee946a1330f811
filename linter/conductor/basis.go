package conductor

import (
	"fmt"
	"strconv"
)

// Basis tells in words what a figure rests on, and what was assumed.
func (r Resistance) Basis() string {
	text := r.conductor.metricBasis()
	if r.conductor.IsAWG {
		text = r.conductor.americanBasis()
	}
	if r.celsius < 20 || r.celsius > 20 {
		text += fmt.Sprintf("; taken to %s °C by 0.00393 per K (IEC 60028)", short(r.celsius))
	}
	return text
}

func (c Conductor) metricBasis() string {
	class := c.Class
	if class == 0 {
		class = 5
	}
	// Classes 1, 2, 5 and 6 are Tables 1 to 4 of IEC 60228:2004.
	table := map[int]int{1: 1, 2: 2, 5: 3, 6: 4}[class]
	finish := "plain"
	if c.Coated {
		finish = "metal-coated"
	}
	text := fmt.Sprintf("IEC 60228 Table %d, class %d, %s copper", table, class, finish)
	ohmPerKM, tabulated := c.ohmPerKM()
	if tabulated {
		text += fmt.Sprintf(": at most %s ohm/km at 20 °C", short(ohmPerKM))
	} else {
		text += fmt.Sprintf(": %s is not one of the sizes held, so computed as %s ohm·mm²/km, the highest of the table, over its area: %s ohm/km at 20 °C",
			c.name(), short(c.highestProduct()), short(ohmPerKM))
	}
	if c.Class == 0 {
		text += "; class not said, class 5 assumed as the highest"
	}
	return text
}

func (c Conductor) americanBasis() string {
	kind := "solid"
	if c.Construction == Stranded {
		kind = "stranded"
	}
	if c.Coated {
		kind += ", metal-coated"
	}
	ohmPerKM, _ := c.ohmPerKM()
	text := fmt.Sprintf("%s %s, nominal: area %s mm² by ASTM B258, copper of 17.241 ohm·mm²/km (100 %% IACS)",
		c.name(), kind, short(CrossSectionMM2(c)))
	if ratio, tabulated := c.ratioToSolid(); c.Construction == Stranded || c.Coated {
		text += fmt.Sprintf(", × %s for being %s", short(ratio), kind)
		if tabulated {
			text += " (NEC Chapter 9 Table 8)"
		} else {
			text += " (this size not held: the highest ratio of NEC Chapter 9 Table 8)"
		}
	}
	text += fmt.Sprintf(": %s ohm/km at 20 °C", short(ohmPerKM))
	if c.Construction == NotSaid {
		text += "; construction not said, solid assumed: a stranded one can be about 2 % higher"
	}
	return text
}

// short writes a figure with four significant digits at most.
func short(x float64) string {
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 4, 64), 64)
	if err != nil {
		rounded = x
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}
