package quantity

import "strings"

// Rail is a supply output or a need for one: a voltage and the current with it.
type Rail struct {
	Voltage Voltage
	Current Current
}

// railScale words the errors that concern the form as a whole.
var railScale = scale{name: "supply rail", example: "24 V, 4 A"}

// ParseRail reads a voltage and a current parted by a comma: "24 V, 4 A".
func ParseRail(text string) (Rail, error) {
	if err := railScale.admit(text); err != nil {
		return Rail{}, err
	}
	comma := railComma(text)
	if comma < 0 {
		r := reading{scale: &railScale, text: text, end: len(text)}
		from, to := trimSpace(text, 0, len(text))
		return Rail{}, r.fail(from, to, "without a comma between volts and amperes", railScale.wanted(), "")
	}
	volts, err := reading{scale: &voltage, text: text, end: comma}.value()
	if err != nil {
		return Rail{}, err
	}
	amperes, err := reading{scale: &current, text: text, start: comma + 1, end: len(text)}.value()
	if err != nil {
		return Rail{}, err
	}
	return Rail{Voltage: Voltage(volts), Current: Current(amperes)}, nil
}

// railComma finds the first comma that cannot stand inside a number.
func railComma(text string) int {
	for i := range len(text) {
		if text[i] != ',' {
			continue
		}
		if i == 0 || i+1 == len(text) || !isDigit(text[i-1]) || !isDigit(text[i+1]) {
			return i
		}
	}
	return strings.LastIndexByte(text, ',')
}

func (r Rail) String() string { return r.Voltage.String() + ", " + r.Current.String() }

// Exact prints the rail so that ParseRail gives the same value.
func (r Rail) Exact() string { return r.Voltage.Exact() + ", " + r.Current.Exact() }
