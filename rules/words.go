package rules

import (
	"fmt"
	"math"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema/quantity"
)

// channelName names a power channel at the beginning of a sentence.
func channelName(c *analysis.Channel) string {
	if c.Part.Implied || len(c.Amplifier.Channels) == 1 {
		return fmt.Sprintf("Amplifier %q", c.Amplifier.Part.Name)
	}
	return fmt.Sprintf("Channel %q of amplifier %q", c.Part.Name, c.Amplifier.Part.Name)
}

// channelInside names a power channel inside a sentence.
func channelInside(c *analysis.Channel) string {
	name := channelName(c)
	return strings.ToLower(name[:1]) + name[1:]
}

// percent prints a percentage as people read it: three digits.
func percent(value float64) string { return quantity.Significant(value, 3) }

// standardRating rounds a power up to a rating amplifiers are sold with: the
// steps of the trade, no published source.
func standardRating(need quantity.Power) quantity.Power {
	steps := []float64{1, 1.2, 1.5, 2, 2.4, 3, 3.6, 4.8, 5, 6, 7.2, 8, 10}
	decade := math.Pow(10, math.Floor(math.Log10(float64(need))))
	for _, s := range steps {
		if quantity.AtLeast(s*decade, float64(need)) {
			return quantity.Power(math.Round(s*decade*1e6) / 1e6)
		}
	}
	return need
}

// verb chooses between the forms of a verb for one and for several.
func verb(n int, one, several string) string {
	if n == 1 {
		return one
	}
	return several
}
