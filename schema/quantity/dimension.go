package quantity

// Dimension describes one kind of quantity: how it is called, which units it may
// be written in, and how a text of it is read. It is what a declaration of an
// attribute points to. Treat it, Units included, as read-only.
type Dimension[Q any] struct {
	Name    string   // in the singular: "power"
	Example string   // one right form: "6 W"
	Units   []string // every unit by the name it is printed with, the base unit first
	Range   string   // the values permitted, in words: "from 0.001 mW to 1000 kW, or 0"

	// Parse reads one quantity from the whole text. The error, if any, is an
	// *Error.
	Parse func(text string) (Q, error)
}

// The dimensions. Each permits the values its Range states and no others.
var (
	Powers              = describe(&power, ParsePower)
	Voltages            = describe(&voltage, ParseVoltage)
	Currents            = describe(&current, ParseCurrent)
	Resistances         = describe(&resistance, ParseResistance)
	Lengths             = describe(&length, ParseLength)
	FloorAreas          = describe(&floorArea, ParseFloorArea)
	CrossSections       = describe(&crossSection, ParseCrossSection)
	Frequencies         = describe(&frequency, ParseFrequency)
	Durations           = describe(&duration, ParseDuration)
	Charges             = describe(&charge, ParseCharge)
	Temperatures        = describe(&temperature, ParseTemperature)
	Angles              = describe(&angle, ParseAngle)
	Percents            = describe(&percent, ParsePercent)
	Gains               = describe(&gain, ParseGain)
	SoundLevels         = describe(&soundLevel, ParseSoundLevel)
	SoundPressureLevels = describe(&soundPressureLevel, ParseSoundPressureLevel)
	Inductances         = describe(&inductance, ParseInductance)
	Capacitances        = describe(&capacitance, ParseCapacitance)
	Levels              = describe(&level, ParseLevel)
	ConductorSets       = describe(&conductorSet, ParseConductors)

	Rails = Dimension[Rail]{
		Name:    "supply rail",
		Example: "24 V, 4 A",
		Units:   []string{"V", "A"},
		Range:   "a voltage " + voltage.limits() + "; a current " + current.limits(),
		Parse:   ParseRail,
	}
	Ingresses = Dimension[Ingress]{
		Name:    "ingress protection",
		Example: "IP34",
		Units:   []string{"IP"},
		Range:   "first digit 0 to 6 or X, second digit 0 to 9 or X",
		Parse:   ParseIngress,
	}
	Dates = Dimension[Date]{
		Name:    "date",
		Example: "2027-06-30",
		Units:   []string{"year-month-day"},
		Range:   "a day of the calendar, from 0001-01-01 to 9999-12-31",
		Parse:   ParseDate,
	}
)

func describe[Q any](s *scale, parse func(string) (Q, error)) Dimension[Q] {
	return Dimension[Q]{Name: s.name, Example: s.example, Units: s.unitNames(), Range: s.limits(), Parse: parse}
}
