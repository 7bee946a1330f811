package quantity

import (
	"math"
	"strconv"
)

// LevelUnit says how a signal level was written.
type LevelUnit uint8

// The units of a signal level. The zero value is the decibel without a reference.
const (
	UnreferencedDB LevelUnit = iota // "0 dB": relative to nothing that is stated
	DBV                             // dB re 1 V
	DBu                             // dB re √0.6 V = 0.7746 V (1 mW in 600 ohm)
	Volts                           // volts r.m.s.
)

func (u LevelUnit) String() string {
	switch u {
	case DBV:
		return "dBV"
	case DBu:
		return "dBu"
	case Volts:
		return "V"
	case UnreferencedDB:
	}
	return "dB"
}

// Level is the level of an audio signal as it was written. A level in dB without
// a reference is kept, because data sheets give such figures, but has no volts.
type Level struct {
	Value float64 // in Unit
	Unit  LevelUnit
}

// dbuReference is the voltage of 0 dBu squared: 1 mW in 600 ohm (ITU-R V.574,
// from memory).
const dbuReference = 0.6

// ParseLevel reads a signal level such as "-10 dBV", "+4 dBu", "0.8 V" or "5 mV".
// "0 dB" parses too and is not Referenced.
func ParseLevel(text string) (Level, error) {
	if err := level.admit(text); err != nil {
		return Level{}, err
	}
	r := reading{scale: &level, text: text, end: len(text)}
	n, u, err := r.written()
	if err != nil {
		return Level{}, err
	}
	read := Level{Value: n.in(u), Unit: levelUnit(u.name)}
	bounds := &level
	if read.Unit == Volts {
		bounds = &levelVolts
	}
	if !bounds.permits(read.Value) {
		return Level{}, r.outOfRange(read.Value)
	}
	return read, nil
}

func levelUnit(name string) LevelUnit {
	switch name {
	case "dBV":
		return DBV
	case "dBu":
		return DBu
	case "V", "mV":
		return Volts
	default:
		return UnreferencedDB
	}
}

// Referenced tells whether the level says how many volts it is.
func (l Level) Referenced() bool { return l.Unit != UnreferencedDB }

// Volts gives the r.m.s. voltage of the level, and false if it has no reference.
func (l Level) Volts() (Voltage, bool) {
	switch l.Unit {
	case DBV:
		return Voltage(math.Pow(10, l.Value/20)), true
	case DBu:
		return Voltage(math.Sqrt(dbuReference) * math.Pow(10, l.Value/20)), true
	case Volts:
		return Voltage(l.Value), true
	case UnreferencedDB:
	}
	return 0, false
}

// DBV gives the level in dB re 1 V (−∞ for 0 V), and false if it has no reference.
func (l Level) DBV() (levelDBV float64, ok bool) {
	switch l.Unit {
	case DBV:
		return l.Value, true
	case DBu:
		return l.Value + 10*math.Log10(dbuReference), true
	case Volts:
		return 20 * math.Log10(l.Value), true
	case UnreferencedDB:
	}
	return 0, false
}

// String prints the level in the unit it was written in, volts below 0.1 V in mV.
func (l Level) String() string {
	if l.Unit == Volts {
		return levelVolts.print(l.Value)
	}
	return Significant(l.Value, 4) + " " + l.Unit.String()
}

// Exact prints the level so that ParseLevel gives the same value.
func (l Level) Exact() string {
	if l.Unit == Volts {
		return levelVolts.exact(l.Value)
	}
	return strconv.FormatFloat(l.Value, 'f', -1, 64) + " " + l.Unit.String()
}
