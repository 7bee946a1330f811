package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Significant prints x with at most the given number of significant digits
// (1 to 17), without trailing zeros, never with an exponent, never as "-0".
// NaN and infinities print as "NaN", "+Inf" and "-Inf".
func Significant(x float64, digits int) string {
	if x == 0 {
		return "0"
	}
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	digits = min(max(digits, 1), 17)
	// d.ddde±xx: strconv rounds, and only the point has to be moved.
	var room [32]byte
	rounded := strconv.AppendFloat(room[:0], math.Abs(x), 'e', digits-1, 64)
	mantissa, tail, _ := strings.Cut(string(rounded), "e")
	exponent, _ := strconv.Atoi(tail)
	figures := strings.TrimRight(strings.Replace(mantissa, ".", "", 1), "0")

	var out strings.Builder
	if x < 0 {
		out.WriteByte('-')
	}
	switch point := exponent + 1; {
	case point <= 0:
		out.WriteString("0.")
		out.WriteString(strings.Repeat("0", -point))
		out.WriteString(figures)
	case point >= len(figures):
		out.WriteString(figures)
		out.WriteString(strings.Repeat("0", point-len(figures)))
	default:
		out.WriteString(figures[:point])
		out.WriteByte('.')
		out.WriteString(figures[point:])
	}
	return out.String()
}

// Format prints a quantity for people: in feet, square feet and degrees
// Fahrenheit where us is set and the quantity has such a form, else as String
// does.
func Format(q fmt.Stringer, us bool) string {
	if customary, ok := q.(interface{ US() string }); ok && us {
		return customary.US()
	}
	return q.String()
}

const inchesPerMetre = 1 / 0.0254

// US prints the length as read off a tape in the United States: "8 in",
// "29 ft 6 in", "131 ft". Below a foot it keeps three significant digits, below
// 100 ft it rounds to the inch, above to the foot, unless the length is a whole
// number of inches, which then shows.
func (l Length) US() string {
	inches := math.Abs(float64(l)) * inchesPerMetre
	sign := ""
	if l < 0 {
		sign = "-"
	}
	whole := math.Round(inches)
	switch isWhole := math.Abs(inches-whole) < 1e-6; {
	case math.IsNaN(inches) || math.IsInf(inches, 0):
		return Significant(float64(l), 4) + " ft"
	case inches == 0:
		return "0 ft"
	case whole < 12:
		return sign + Significant(inches, 3) + " in"
	case inches >= 1200 && !isWhole:
		whole = 12 * math.Round(inches/12)
	}
	feet := math.Floor(whole / 12)
	text := sign + strconv.FormatFloat(feet, 'f', 0, 64) + " ft"
	if rest := whole - 12*feet; rest > 0 {
		text += " " + strconv.FormatFloat(rest, 'f', 0, 64) + " in"
	}
	return text
}

// US prints the area in square feet.
func (a FloorArea) US() string { return floorArea.printIn("sq ft", float64(a)) }

// US prints the temperature in degrees Fahrenheit.
func (t Temperature) US() string { return temperature.printIn("°F", float64(t)) }

// US prints the inductance per foot.
func (i Inductance) US() string { return inductance.printIn("uH/ft", float64(i)) }

// US prints the capacitance per foot.
func (c Capacitance) US() string { return capacitance.printIn("pF/ft", float64(c)) }

func (s *scale) printIn(name string, value float64) string {
	u := s.unit(name)
	return Significant(value*u.div/u.mul+u.zero, 4) + " " + u.name
}
