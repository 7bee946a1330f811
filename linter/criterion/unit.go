package criterion

import (
	"fmt"
	"strconv"
	"strings"

	"loudlint/schema/quantity"
)

// unit is what a number is measured in. Of those that can be multiplied it is
// the powers of base units; W is V·A and ohm is V/A, so that volts times amperes
// can be held against watts. Hours and minutes are bases of their own: a figure
// has one or the other, and nobody means to add them.
type unit struct {
	powers [bases]int8
	scale  scale
}

const (
	baseVolt = iota
	baseAmpere
	baseMetre
	baseMillimetre
	baseSecond
	baseMinute
	baseHour
	bases
)

// scale tells units that are no powers of others.
type scale int8

const (
	linear  scale = iota
	percent       // taken as a plain number in products
	gain          // dB, a difference of levels
	level         // dBA or dB of sound pressure
	celsius
	degree
)

func powers(of ...int8) unit {
	var u unit
	for i := 0; i+1 < len(of); i += 2 {
		u.powers[of[i]] = of[i+1]
	}
	return u
}

// knownUnit is a unit that figures have.
type knownUnit struct {
	symbol string // as it is printed
	suffix string // what the name of a figure ends in
	unit   unit
	words  string // "watts"
	parse  func(text string) (float64, error)
	sample string
}

// knownUnits lists the units of figures.
func knownUnits() []knownUnit {
	return []knownUnit{
		{"", "", unit{}, "a plain number", nil, ""},
		{"W", "_w", powers(baseVolt, 1, baseAmpere, 1), "watts", parse(quantity.ParsePower, 1), "6 W"},
		{"V", "_v", powers(baseVolt, 1), "volts", parse(quantity.ParseVoltage, 1), "100 V"},
		{"A", "_a", powers(baseAmpere, 1), "amperes", parse(quantity.ParseCurrent, 1), "2 A"},
		{"ohm", "_ohm", powers(baseVolt, 1, baseAmpere, -1), "ohms", parse(quantity.ParseResistance, 1), "40 ohm"},
		{"m", "_m", powers(baseMetre, 1), "metres", parse(quantity.ParseLength, 1), "40 m"},
		{"m2", "_m2", powers(baseMetre, 2), "square metres", parse(quantity.ParseFloorArea, 1), "50 m2"},
		{"mm2", "_mm2", powers(baseMillimetre, 2), "square millimetres", parse(quantity.ParseCrossSection, 1), "1.5 mm2"},
		{"Hz", "_hz", powers(baseSecond, -1), "hertz", parse(quantity.ParseFrequency, 1), "120 Hz"},
		{"s", "_s", powers(baseSecond, 1), "seconds", parse(quantity.ParseDuration, 1), "1.2 s"},
		{"min", "_min", powers(baseMinute, 1), "minutes", parse(quantity.ParseDuration, 60), "30 min"},
		{"h", "_h", powers(baseHour, 1), "hours", parse(quantity.ParseDuration, 3600), "24 h"},
		{"Ah", "_ah", powers(baseAmpere, 1, baseHour, 1), "ampere-hours", parse(quantity.ParseCharge, 1), "65 Ah"},
		{"%", "_percent", unit{scale: percent}, "per cent", parse(quantity.ParsePercent, 1), "5 %"},
		{"dB", "_db", unit{scale: gain}, "decibels", parse(quantity.ParseGain, 1), "3 dB"},
		{"dBA", "_dba", unit{scale: level}, "dBA", parse(quantity.ParseSoundLevel, 1), "75 dBA"},
		{"°C", "_c", unit{scale: celsius}, "degrees Celsius", parse(quantity.ParseTemperature, 1), "30 C"},
		{"deg", "_deg", unit{scale: degree}, "degrees", parse(quantity.ParseAngle, 1), "90 deg"},
	}
}

func parse[Q ~float64](read func(string) (Q, error), per float64) func(string) (float64, error) {
	return func(text string) (float64, error) {
		q, err := read(text)
		return float64(q) / per, err
	}
}

// unitOf gives a unit by its symbol, which is one of the list.
func unitOf(symbol string) unit {
	for _, k := range knownUnits() {
		if k.symbol == symbol {
			return k.unit
		}
	}
	panic("criterion: no unit " + strconv.Quote(symbol))
}

// known finds the unit in the list.
func (u unit) known() (knownUnit, bool) {
	for _, k := range knownUnits() {
		if k.unit == u {
			return k, true
		}
	}
	return knownUnit{}, false
}

// words says what is measured in the unit: "in watts", "a plain number", "in W/m".
func (u unit) words() string {
	k, ok := u.known()
	switch {
	case ok && k.symbol == "":
		return k.words
	case ok:
		return "in " + k.words
	}
	return "in " + u.symbol()
}

// symbol writes the unit: "W", "W/m", "V²/m".
func (u unit) symbol() string {
	if k, ok := u.known(); ok {
		return k.symbol
	}
	all := knownUnits()
	for _, k := range all {
		for _, l := range all {
			if k.symbol == "" || l.symbol == "" || k.unit.scale != linear || l.unit.scale != linear {
				continue
			}
			if k.unit.times(l.unit, -1) == u {
				return k.symbol + "/" + l.symbol
			}
		}
	}
	names := [bases]string{"V", "A", "m", "mm", "s", "min", "h"}
	var b strings.Builder
	for i, p := range u.powers {
		if p == 0 {
			continue
		}
		if b.Len() > 0 {
			b.WriteString("·")
		}
		b.WriteString(names[i])
		if p != 1 {
			fmt.Fprintf(&b, "^%d", p)
		}
	}
	return b.String()
}

// times multiplies by a power of another linear unit.
func (u unit) times(by unit, power int8) unit {
	for i := range u.powers {
		u.powers[i] += power * by.powers[i]
	}
	return u
}

// fits tells that no power has grown beyond any use.
func (u unit) fits() bool {
	const most = 9
	for _, p := range u.powers {
		if p > most || p < -most {
			return false
		}
	}
	return true
}
