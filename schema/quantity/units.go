package quantity

// MetresPerFoot is the international foot.
const MetresPerFoot = 0.3048

// The scales. Base unit first; factors are exact ratios of whole numbers. Sources
// of the factors: SI prefixes, minute, hour and degree from the SI brochure (9th
// edition, tables 7 and 8); foot = 0.3048 m and inch = 0.0254 m exactly, degree
// Fahrenheit, from NIST SP 811 (2008), appendix B. All these tables are read-only.
//
// The ranges keep absurd values from overflowing later sums. They are wide on
// purpose: whether a value makes sense where it stands is for the declaration of
// the attribute and for the checks.
var (
	power = scale{
		name: "power", example: "6 W",
		units: []unit{
			{name: "W", mul: 1, div: 1, also: []string{"watt", "watts"}},
			{name: "mW", mul: 1, div: 1e3, strict: true, also: []string{"milliwatt", "milliwatts"}},
			{name: "kW", mul: 1e3, div: 1, also: []string{"kilowatt", "kilowatts"}},
		},
		prints: []step{{0, "mW"}, {0.01, "W"}, {1e4, "kW"}},
		slips: []slip{
			{"VA", "VA is apparent power: write the real power in W"},
			{"hp", "write horsepower in W: 1 hp is 746 W"},
		},
		smallest: 1e-6, highest: 1e6,
	}
	voltage = scale{
		name: "voltage", example: "100 V",
		units: []unit{
			{name: "V", mul: 1, div: 1, also: []string{"volt", "volts"}},
			{name: "mV", mul: 1, div: 1e3, strict: true, also: []string{"millivolt", "millivolts"}},
			{name: "kV", mul: 1e3, div: 1, also: []string{"kilovolt", "kilovolts"}},
		},
		prints:   []step{{0, "mV"}, {0.1, "V"}, {1e4, "kV"}},
		smallest: 1e-6, highest: 1e5,
	}
	current = scale{
		name: "current", example: "4 A",
		units: []unit{
			{name: "A", mul: 1, div: 1, also: []string{"amp", "amps", "ampere", "amperes"}},
			{name: "mA", mul: 1, div: 1e3, strict: true, also: []string{"milliamp", "milliamps"}},
		},
		prints:   []step{{0, "mA"}, {0.1, "A"}},
		smallest: 1e-6, highest: 1e4,
	}
	resistance = scale{
		name: "resistance", example: "8 ohm",
		units: []unit{
			// Greek omega and the ohm sign U+2126 look the same; so do the two signs for micro below.
			{name: "ohm", mul: 1, div: 1, also: []string{"ohms", "Ω", "\u2126"}},
			{name: "mohm", mul: 1, div: 1e3, strict: true, also: []string{"mohms", "mOhm", "mΩ", "m\u2126", "milliohm", "milliohms"}},
			{name: "kohm", mul: 1e3, div: 1, also: []string{"kohms", "kΩ", "k\u2126", "kilohm", "kilohms"}},
			{name: "Mohm", mul: 1e6, div: 1, strict: true, also: []string{"Mohms", "MOhm", "MΩ", "M\u2126", "megohm", "megohms"}},
			{name: "Gohm", mul: 1e9, div: 1, also: []string{"Gohms", "GΩ", "G\u2126"}},
		},
		prints:   []step{{0, "ohm"}, {1e3, "kohm"}, {1e6, "Mohm"}, {1e9, "Gohm"}},
		smallest: 1e-6, highest: 1e12,
	}
	length = scale{
		name: "length", example: "40 m",
		units: []unit{
			{name: "m", mul: 1, div: 1, also: []string{"metre", "metres", "meter", "meters"}},
			{name: "cm", mul: 1, div: 1e2, also: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
			{name: "mm", mul: 1, div: 1e3, also: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
			{name: "km", mul: 1e3, div: 1, also: []string{"kilometre", "kilometres", "kilometer", "kilometers"}},
			{name: "ft", mul: 3048, div: 1e4, next: "in", each: 12, also: []string{"foot", "feet"}},
			{name: "in", mul: 254, div: 1e4, also: []string{"inch", "inches"}},
		},
		prints:   []step{{0, "mm"}, {0.1, "m"}, {1e4, "km"}},
		smallest: 1e-6, highest: 1e5,
	}
	floorArea = scale{
		name: "floor area", example: "50 m2",
		units: []unit{
			{name: "m2", mul: 1, div: 1, also: []string{"m²", "sq m", "sqm"}},
			{name: "sq ft", mul: 3048 * 3048, div: 1e8, also: []string{"sqft", "sq. ft", "ft2", "ft²", "square feet", "square foot"}},
		},
		slips: []slip{
			{"m", `write square metres: "# m2"`},
			{"ft", `write square feet: "# sq ft"`},
		},
		smallest: 1e-4, highest: 1e8, noZero: true,
	}
	crossSection = scale{
		name: "conductor size", example: "1.5 mm2",
		units: conductorUnits, slips: conductorSlips, gauges: true,
		smallest: 1e-3, highest: 1e4, noZero: true,
	}
	conductorSet = scale{
		name: "conductor size", example: "2 x 1.5 mm2",
		units: conductorUnits, slips: conductorSlips, gauges: true,
		smallest: 1e-3, highest: 1e4, noZero: true,
	}
	conductorUnits = []unit{
		{name: "mm2", mul: 1, div: 1, also: []string{"mm²", "sq mm", "sqmm"}},
	}
	conductorSlips = []slip{
		{"mm", `write square millimetres, "# mm2"; a diameter is not a conductor size`},
		{"ga", `write "# AWG" if American wire gauge is meant`},
		{"gauge", `write "# AWG" if American wire gauge is meant`},
		{"SWG", "write the cross-section in mm2: SWG is another gauge than AWG"},
	}
	frequency = scale{
		name: "frequency", example: "1 kHz",
		units: []unit{
			{name: "Hz", mul: 1, div: 1, also: []string{"hertz"}},
			{name: "kHz", mul: 1e3, div: 1, also: []string{"kilohertz"}},
			{name: "MHz", mul: 1e6, div: 1, strict: true, also: []string{"megahertz"}},
		},
		prints:   []step{{0, "Hz"}, {1e3, "kHz"}, {1e6, "MHz"}},
		smallest: 1e-3, highest: 1e9, noZero: true,
	}
	duration = scale{
		name: "duration", example: "30 min",
		units: []unit{
			{name: "s", mul: 1, div: 1, also: []string{"sec", "second", "seconds"}},
			{name: "ms", mul: 1, div: 1e3, also: []string{"millisecond", "milliseconds"}},
			{name: "min", mul: 60, div: 1, next: "s", each: 60, also: []string{"mins", "minute", "minutes"}},
			{name: "h", mul: 3600, div: 1, next: "min", each: 60, also: []string{"hr", "hrs", "hour", "hours"}},
			{name: "day", mul: 86400, div: 1, next: "h", each: 24, also: []string{"days"}},
		},
		prints:   []step{{0, "ms"}, {0.1, "s"}, {60, "min"}, {3600, "h"}},
		slips:    []slip{{"m", `write minutes as "# min"`}},
		smallest: 1e-6, highest: 3.6e8,
	}
	charge = scale{
		name: "battery capacity", example: "25 Ah",
		units: []unit{
			{name: "Ah", mul: 1, div: 1, also: []string{"A h", "A·h", "amp hours", "ampere hours"}},
			{name: "mAh", mul: 1, div: 1e3, strict: true},
		},
		slips:    []slip{{"A", `write ampere hours: "# Ah"`}},
		smallest: 1e-3, highest: 1e6, noZero: true,
	}
	temperature = scale{
		name: "temperature", example: "30 °C",
		units: []unit{
			{name: "°C", mul: 1, div: 1, also: []string{"C", "℃", "deg C", "degC", "celsius"}},
			{name: "°F", mul: 5, div: 9, zero: 32, also: []string{"F", "℉", "deg F", "degF", "fahrenheit"}},
		},
		slips: []slip{
			{"°", `write "# °C" or "# °F"`},
			{"deg", `write "# °C" or "# °F"`},
			{"degrees", `write "# °C" or "# °F"`},
			{"K", "write °C: 0 °C is 273.15 K"},
		},
		lowest: -100, highest: 1000, smallest: 1e-6,
	}
	angle = scale{
		name: "angle", example: "90 deg",
		units: []unit{
			{name: "deg", mul: 1, div: 1, also: []string{"°", "degree", "degrees"}},
		},
		lowest: -360, highest: 360, smallest: 1e-6,
	}
	percent = scale{
		name: "percentage", example: "10 %",
		units: []unit{
			{name: "%", mul: 1, div: 1, also: []string{"percent", "per cent"}},
		},
		lowest: -1000, highest: 1000, smallest: 1e-6,
	}
	gain = scale{
		name: "gain", example: "-20 dB",
		units: []unit{
			{name: "dB", mul: 1, div: 1, also: []string{"decibel", "decibels"}},
		},
		slips:  []slip{{"dBA", `write a difference of levels without the A: "# dB"`}},
		lowest: -200, highest: 200, smallest: 1e-6,
	}
	soundLevel = scale{
		name: "sound level", example: "58 dBA",
		units: []unit{
			{name: "dBA", mul: 1, div: 1, also: []string{"dB(A)", "dB A"}},
		},
		slips: []slip{
			{"dB", `write "# dBA" if it was measured with A-weighting`},
			{"dBC", "an A-weighted level is needed: C-weighting gives another figure"},
		},
		lowest: -20, highest: 200, smallest: 1e-6,
	}
	soundPressureLevel = scale{
		name: "sound pressure level", example: "90 dB",
		units: []unit{
			{name: "dB", mul: 1, div: 1, also: []string{"dB SPL", "dBSPL", "decibel", "decibels"}},
		},
		slips:  []slip{{"dBA", `write "# dB" if the figure is not A-weighted`}},
		lowest: -100, highest: 200, smallest: 1e-6,
	}
	inductance = scale{
		name: "inductance per length", example: "0.6 uH/m",
		units: []unit{
			{name: "H/m", mul: 1, div: 1},
			{name: "uH/m", mul: 1, div: 1e6, also: []string{"µH/m", "μH/m"}},
			{name: "nH/m", mul: 1, div: 1e9},
			{name: "mH/km", mul: 1, div: 1e6, strict: true},
			{name: "uH/km", mul: 1, div: 1e9, also: []string{"µH/km", "μH/km"}},
			{name: "uH/ft", mul: 1e4, div: 3048 * 1e6, also: []string{"µH/ft", "μH/ft"}},
			{name: "nH/ft", mul: 1e4, div: 3048 * 1e9},
		},
		prints:   []step{{0, "uH/m"}},
		smallest: 1e-12, highest: 1,
	}
	capacitance = scale{
		name: "capacitance per length", example: "60 pF/m",
		units: []unit{
			{name: "F/m", mul: 1, div: 1},
			{name: "pF/m", mul: 1, div: 1e12},
			{name: "nF/m", mul: 1, div: 1e9},
			{name: "uF/m", mul: 1, div: 1e6, also: []string{"µF/m", "μF/m"}},
			{name: "pF/km", mul: 1, div: 1e15},
			{name: "nF/km", mul: 1, div: 1e12},
			{name: "uF/km", mul: 1, div: 1e9, also: []string{"µF/km", "μF/km"}},
			{name: "pF/ft", mul: 1e4, div: 3048 * 1e12},
			{name: "nF/ft", mul: 1e4, div: 3048 * 1e9},
		},
		prints:   []step{{0, "pF/m"}, {1e-8, "nF/m"}},
		smallest: 1e-15, highest: 1e-3,
	}
	level = scale{
		name: "signal level", example: "-10 dBV",
		units: []unit{
			{name: "dBV", mul: 1, div: 1, strict: true},
			{name: "dBu", mul: 1, div: 1},
			{name: "V", mul: 1, div: 1, also: []string{"volt", "volts"}},
			{name: "mV", mul: 1, div: 1e3, strict: true, also: []string{"millivolt", "millivolts"}},
			{name: "dB", mul: 1, div: 1},
		},
		slips: []slip{
			{"dBv", `write "# dBV" (0 dBV is 1 V) or "# dBu" (0 dBu is 0.775 V): dBv has meant both`},
			{"dBm", `dBm is a power: on 600 ohm write the same number as "# dBu", else write the volts`},
			{"dBFS", "a digital level says nothing of volts: write what the output gives at that level"},
		},
		lowest: -160, highest: 60, smallest: 1e-6, // of the decibels; volts are levelVolts
	}

	// levelVolts bounds a signal level written in volts: as wide as the decibels.
	levelVolts = scale{name: "signal level", units: voltage.units, prints: voltage.prints,
		smallest: 1e-8, highest: 1e3, noZero: true}

	// scales is the order in which a unit of another dimension is named: where two
	// share a unit, the commoner one first.
	scales = [...]*scale{
		&power, &voltage, &current, &resistance, &length, &floorArea, &crossSection,
		&frequency, &duration, &charge, &temperature, &angle, &percent, &gain,
		&soundLevel, &level, &inductance, &capacitance,
	}
)
