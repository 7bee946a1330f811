package check

import (
	"fmt"
	"maps"
	"strconv"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Unit is what a parameter is measured in.
type Unit string

// Units of parameters.
const (
	Percent Unit = "%"
	Decibel Unit = "dB"
	Watt    Unit = "W"
	Volt    Unit = "V"
	Ampere  Unit = "A"
	Ohm     Unit = "ohm"
	Metre   Unit = "m"
	Second  Unit = "s"
	Minute  Unit = "min"
	Hertz   Unit = "Hz"
	Plain   Unit = ""           // a number without dimension
	Switch  Unit = "true/false" // 1 is true
)

// Param is one limit of a check that criteria can set.
type Param struct {
	Name    string // in lower case with underscores, unit left out
	Doc     string
	Unit    Unit
	Default float64 // in Unit
	Low     float64 // lowest value permitted
	High    float64 // highest value permitted
	Basis   string  // where the default comes from; the check's Basis when empty
}

// Limits are the parameters of one check as they are in force for a job.
type Limits struct {
	values map[string]Limit
}

// Limit is one parameter in force.
type Limit struct {
	Param  *Param
	Value  float64
	Origin source.Span // where criteria set it; zero for the default
}

// DefaultLimits gives the parameters of a check as they are without criteria.
func DefaultLimits(c *Check) Limits {
	l := Limits{values: make(map[string]Limit, len(c.Params))}
	for i := range c.Params {
		l.values[c.Params[i].Name] = Limit{Param: &c.Params[i], Value: c.Params[i].Default}
	}
	return l
}

// With gives a copy in which one parameter is set.
func (l Limits) With(set Limit) Limits {
	next := Limits{values: maps.Clone(l.values)}
	next.values[set.Param.Name] = set
	return next
}

// Get gives a parameter in force. A name the check does not declare is a bug of
// the check.
func (l Limits) Get(name string) Limit {
	v, ok := l.values[name]
	if !ok {
		panic("check: no parameter " + strconv.Quote(name))
	}
	return v
}

// Basis says where the value comes from: the criteria, or the default's basis.
func (l Limit) Basis(c *Check) string {
	if !l.Origin.IsZero() {
		return SetAt(l.Origin)
	}
	if l.Param.Basis != "" {
		return l.Param.Basis
	}
	return c.Basis
}

// SetAt says where criteria set something.
func SetAt(origin source.Span) string {
	return fmt.Sprintf("set by the criteria at %s:%d", origin.File.Name, origin.From().Line)
}

// String prints the value with its unit.
func (l Limit) String() string { return l.Param.Unit.Format(l.Value) }

// On tells whether a Switch is true.
func (l Limit) On() bool { return l.Value >= 0.5 }

// Format prints a number with the unit.
func (u Unit) Format(value float64) string {
	switch u {
	case Plain:
		return quantity.Significant(value, 6)
	case Switch:
		return strconv.FormatBool(value >= 0.5)
	default:
		return quantity.Significant(value, 6) + " " + string(u)
	}
}

// Parse reads a value of a parameter as it is written in criteria. A plain
// number stands without quotes, everything with a unit in quotes.
func (u Unit) Parse(text string, quoted bool) (float64, error) {
	switch u {
	case Plain:
		v, err := strconv.ParseFloat(text, 64)
		if err != nil || quoted {
			return 0, fmt.Errorf("found %q; expected a plain number without quotes", text)
		}
		return v, nil
	case Switch:
		v, err := strconv.ParseBool(text)
		if err != nil || quoted {
			return 0, fmt.Errorf("found %q; expected true or false without quotes", text)
		}
		if v {
			return 1, nil
		}
		return 0, nil
	case Percent:
		return parsed(quantity.ParsePercent(text))
	case Decibel:
		return parsed(quantity.ParseGain(text))
	case Watt:
		return parsed(quantity.ParsePower(text))
	case Volt:
		return parsed(quantity.ParseVoltage(text))
	case Ampere:
		return parsed(quantity.ParseCurrent(text))
	case Ohm:
		return parsed(quantity.ParseResistance(text))
	case Metre:
		return parsed(quantity.ParseLength(text))
	case Second:
		return parsed(quantity.ParseDuration(text))
	case Minute:
		seconds, err := parsed(quantity.ParseDuration(text))
		return seconds / 60, err
	case Hertz:
		return parsed(quantity.ParseFrequency(text))
	}
	return 0, fmt.Errorf("unknown unit %q", string(u))
}

func parsed[Q ~float64](q Q, err error) (float64, error) { return float64(q), err }
