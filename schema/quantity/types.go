package quantity

import "math"

// The scalar types. String prints for people, in the natural unit with at most
// four significant digits; Exact prints text that parses back to the same float64,
// for every value its dimension permits.
type (
	// Power in watts.
	Power float64
	// Voltage in volts, r.m.s. where it alternates.
	Voltage float64
	// Current in amperes, r.m.s. where it alternates.
	Current float64
	// Resistance in ohms; also the magnitude of an impedance.
	Resistance float64
	// Length in metres.
	Length float64
	// FloorArea in square metres.
	FloorArea float64
	// CrossSection of one conductor, in square millimetres.
	CrossSection float64
	// Frequency in hertz.
	Frequency float64
	// Duration in seconds.
	Duration float64
	// Charge in ampere hours: the capacity of a battery.
	Charge float64
	// Temperature in degrees Celsius.
	Temperature float64
	// Angle in degrees.
	Angle float64
	// Percent in hundredths: 10 is 10 %.
	Percent float64
	// Gain in decibels: a ratio of two levels. Negative is a loss.
	Gain float64
	// SoundLevel in dBA: A-weighted, re 20 µPa.
	SoundLevel float64
	// SoundPressureLevel in dB re 20 µPa, unweighted or in one band.
	SoundPressureLevel float64
	// Inductance of a cable in henries per metre.
	Inductance float64
	// Capacitance of a cable in farads per metre.
	Capacitance float64
)

// ParsePower reads a power such as "6 W", "1/8 W" or "1.2 kW".
func ParsePower(text string) (Power, error) {
	value, err := power.parse(text)
	return Power(value), err
}

// ParseVoltage reads a voltage such as "100 V". It does not turn 70 V into the
// line voltage meant: see Voltage.Line.
func ParseVoltage(text string) (Voltage, error) {
	value, err := voltage.parse(text)
	return Voltage(value), err
}

// ParseCurrent reads a current such as "4 A" or "25 mA".
func ParseCurrent(text string) (Current, error) {
	value, err := current.parse(text)
	return Current(value), err
}

// ParseResistance reads a resistance such as "8 ohm" or "1.2 kohm".
func ParseResistance(text string) (Resistance, error) {
	value, err := resistance.parse(text)
	return Resistance(value), err
}

// ParseLength reads a length such as "40 m", "131 ft" or "29 ft 6 in".
func ParseLength(text string) (Length, error) {
	value, err := length.parse(text)
	return Length(value), err
}

// ParseFloorArea reads an area such as "50 m2" or "13000 sq ft".
func ParseFloorArea(text string) (FloorArea, error) {
	value, err := floorArea.parse(text)
	return FloorArea(value), err
}

// ParseFrequency reads a frequency such as "70 Hz" or "1 kHz".
func ParseFrequency(text string) (Frequency, error) {
	value, err := frequency.parse(text)
	return Frequency(value), err
}

// ParseDuration reads a duration such as "0.6 s", "30 min" or "1 h 30 min".
func ParseDuration(text string) (Duration, error) {
	value, err := duration.parse(text)
	return Duration(value), err
}

// ParseCharge reads a battery capacity such as "25 Ah".
func ParseCharge(text string) (Charge, error) {
	value, err := charge.parse(text)
	return Charge(value), err
}

// ParseTemperature reads a temperature such as "30 °C", "30 C" or "86 F".
func ParseTemperature(text string) (Temperature, error) {
	value, err := temperature.parse(text)
	return Temperature(value), err
}

// ParseAngle reads an angle such as "90 deg" or "90°".
func ParseAngle(text string) (Angle, error) {
	value, err := angle.parse(text)
	return Angle(value), err
}

// ParsePercent reads a percentage such as "10 %".
func ParsePercent(text string) (Percent, error) {
	value, err := percent.parse(text)
	return Percent(value), err
}

// ParseGain reads a difference of levels such as "-20 dB".
func ParseGain(text string) (Gain, error) {
	value, err := gain.parse(text)
	return Gain(value), err
}

// ParseSoundLevel reads an A-weighted level such as "58 dBA".
func ParseSoundLevel(text string) (SoundLevel, error) {
	value, err := soundLevel.parse(text)
	return SoundLevel(value), err
}

// ParseSoundPressureLevel reads a level without weighting such as "90 dB", as
// sensitivities and octave bands are given.
func ParseSoundPressureLevel(text string) (SoundPressureLevel, error) {
	value, err := soundPressureLevel.parse(text)
	return SoundPressureLevel(value), err
}

// ParseInductance reads the inductance of a cable such as "0.6 uH/m".
func ParseInductance(text string) (Inductance, error) {
	value, err := inductance.parse(text)
	return Inductance(value), err
}

// ParseCapacitance reads the capacitance of a cable such as "60 pF/m".
func ParseCapacitance(text string) (Capacitance, error) {
	value, err := capacitance.parse(text)
	return Capacitance(value), err
}

func (p Power) String() string              { return power.print(float64(p)) }
func (v Voltage) String() string            { return voltage.print(float64(v)) }
func (c Current) String() string            { return current.print(float64(c)) }
func (r Resistance) String() string         { return resistance.print(float64(r)) }
func (l Length) String() string             { return length.print(float64(l)) }
func (a FloorArea) String() string          { return floorArea.print(float64(a)) }
func (c CrossSection) String() string       { return crossSection.print(float64(c)) }
func (f Frequency) String() string          { return frequency.print(float64(f)) }
func (d Duration) String() string           { return duration.print(float64(d)) }
func (c Charge) String() string             { return charge.print(float64(c)) }
func (t Temperature) String() string        { return temperature.print(float64(t)) }
func (a Angle) String() string              { return angle.print(float64(a)) }
func (p Percent) String() string            { return percent.print(float64(p)) }
func (g Gain) String() string               { return gain.print(float64(g)) }
func (s SoundLevel) String() string         { return soundLevel.print(float64(s)) }
func (s SoundPressureLevel) String() string { return soundPressureLevel.print(float64(s)) }
func (i Inductance) String() string         { return inductance.print(float64(i)) }
func (c Capacitance) String() string        { return capacitance.print(float64(c)) }

// Exact prints text from which ParsePower reads the same float64.
func (p Power) Exact() string { return power.exact(float64(p)) }

// Exact prints text from which ParseVoltage reads the same float64.
func (v Voltage) Exact() string { return voltage.exact(float64(v)) }

// Exact prints text from which ParseCurrent reads the same float64.
func (c Current) Exact() string { return current.exact(float64(c)) }

// Exact prints text from which ParseResistance reads the same float64.
func (r Resistance) Exact() string { return resistance.exact(float64(r)) }

// Exact prints text from which ParseLength reads the same float64.
func (l Length) Exact() string { return length.exact(float64(l)) }

// Exact prints text from which ParseFloorArea reads the same float64.
func (a FloorArea) Exact() string { return floorArea.exact(float64(a)) }

// Exact prints text from which ParseCrossSection reads the same float64.
func (c CrossSection) Exact() string { return crossSection.exact(float64(c)) }

// Exact prints text from which ParseFrequency reads the same float64.
func (f Frequency) Exact() string { return frequency.exact(float64(f)) }

// Exact prints text from which ParseDuration reads the same float64.
func (d Duration) Exact() string { return duration.exact(float64(d)) }

// Exact prints text from which ParseCharge reads the same float64.
func (c Charge) Exact() string { return charge.exact(float64(c)) }

// Exact prints text from which ParseTemperature reads the same float64.
func (t Temperature) Exact() string { return temperature.exact(float64(t)) }

// Exact prints text from which ParseAngle reads the same float64.
func (a Angle) Exact() string { return angle.exact(float64(a)) }

// Exact prints text from which ParsePercent reads the same float64.
func (p Percent) Exact() string { return percent.exact(float64(p)) }

// Exact prints text from which ParseGain reads the same float64.
func (g Gain) Exact() string { return gain.exact(float64(g)) }

// Exact prints text from which ParseSoundLevel reads the same float64.
func (s SoundLevel) Exact() string { return soundLevel.exact(float64(s)) }

// Exact prints text from which ParseSoundPressureLevel reads the same float64.
func (s SoundPressureLevel) Exact() string { return soundPressureLevel.exact(float64(s)) }

// Exact prints text from which ParseInductance reads the same float64.
func (i Inductance) Exact() string { return inductance.exact(float64(i)) }

// Exact prints text from which ParseCapacitance reads the same float64.
func (c Capacitance) Exact() string { return capacitance.exact(float64(c)) }

// Line gives the voltage of a loudspeaker line that is called by this figure. The
// trade's "70 V" line carries 100 V peak at full output, which is 100/√2 =
// 70.71 V r.m.s.; both "70 V" and "70.7 V", within 1 %, are that line. Every
// other voltage is what it says.
func (v Voltage) Line() Voltage {
	const (
		seventy = 100 / math.Sqrt2
		within  = 0.01
	)
	if v >= 70*(1-within) && v <= 70.7*(1+within) {
		return seventy
	}
	return v
}
