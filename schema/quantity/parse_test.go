package quantity

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// door is one scalar dimension with its types taken away, so that one table can
// run over all of them.
type door struct {
	scale *scale
	parse func(string) (float64, error)
	text  func(float64) string
	exact func(float64) string
}

func doorOf[Q interface {
	~float64
	String() string
	Exact() string
}](s *scale, d Dimension[Q]) door {
	return door{
		scale: s,
		parse: func(text string) (float64, error) { q, err := d.Parse(text); return float64(q), err },
		text:  func(v float64) string { return Q(v).String() },
		exact: func(v float64) string { return Q(v).Exact() },
	}
}

func doors() []door {
	return []door{
		doorOf(&power, Powers), doorOf(&voltage, Voltages), doorOf(&current, Currents),
		doorOf(&resistance, Resistances), doorOf(&length, Lengths), doorOf(&floorArea, FloorAreas),
		doorOf(&crossSection, CrossSections), doorOf(&frequency, Frequencies), doorOf(&duration, Durations),
		doorOf(&charge, Charges), doorOf(&temperature, Temperatures), doorOf(&angle, Angles),
		doorOf(&percent, Percents), doorOf(&gain, Gains), doorOf(&soundLevel, SoundLevels),
		doorOf(&soundPressureLevel, SoundPressureLevels), doorOf(&inductance, Inductances),
		doorOf(&capacitance, Capacitances),
	}
}

func doorNamed(t *testing.T, name string) door {
	t.Helper()
	for _, d := range doors() {
		if d.scale.name == name {
			return d
		}
	}
	t.Fatalf("no dimension is called %q", name)
	return door{}
}

// TestWrittenForms holds the ways people write a value. Values are compared
// exactly: each conversion is rounded once.
func TestWrittenForms(t *testing.T) {
	t.Parallel()
	tests := map[string]map[string]float64{
		"power": {
			"6 W": 6, "6W": 6, " 6  W ": 6, "+6 W": 6, "6 w": 6, "6 watts": 6, "6.0 W": 6, "06 W": 6,
			"7 1/2 W": 7.5, "7½ W": 7.5, "7 ½ W": 7.5, "7 1⁄2 W": 7.5, "½ W": 0.5, "15/2 W": 7.5,
			"1/8 W": 0.125, "⅛ W": 0.125, "3/4 W": 0.75, "¾W": 0.75, "⅝ W": 0.625, "¼ W": 0.25, "⅓ W": 1.0 / 3, "⅔ W": 2.0 / 3, "⅜ W": 0.375, "⅞ W": 0.875, "5/8 W": 0.625,
			"0.62 W": 0.62, ".5 W": 0.5, "500 mW": 0.5, "620 mW": 0.62, "1.2 kW": 1200, "1.2 KW": 1200, "1.2kw": 1200,
			"0 W": 0, "0.000 W": 0, "-0 W": 0,
			"6\u00a0W": 6, "6\u2009W": 6, "6\u202fW": 6, "7\u00a01/2\u2009W": 7.5, // non-breaking, thin, narrow
			"1000000 W": 1e6, "0.000001 W": 1e-6, "0.1234567890123456789 W": 0.1234567890123456789,
		},
		"voltage":    {"100 V": 100, "70.7 V": 70.7, "70 V": 70, "5 mV": 0.005, "1 kV": 1000, "1 kv": 1000, "24 volts": 24},
		"current":    {"4 A": 4, "4 a": 4, "25 mA": 0.025, "0.9 amp": 0.9, "16 amps": 16},
		"resistance": {"8 ohm": 8, "8 ohms": 8, "8 Ω": 8, "8 \u2126": 8, "8Ω": 8, "8 OHM": 8, "1.2 kohm": 1200, "1.2 kΩ": 1200, "1.2 KΩ": 1200, "1.2 k\u2126": 1200, "22 Kohm": 22000, "20 mohm": 0.02, "20 mΩ": 0.02, "20 m\u2126": 0.02, "5 G\u2126": 5e9, "500 Mohm": 5e8, "500 MΩ": 5e8, "2 Gohm": 2e9, "0 ohm": 0},
		"length": {
			"40 m": 40, "40 M": 40, "2.7 m": 2.7, "270 cm": 2.7, "2700 mm": 2.7, "0.0027 km": 2.7, "40 metres": 40, "40 meters": 40,
			"8 in": 0.2032, "8 inches": 0.2032, "12 ft": 3.6576, "1 foot": 0.3048, "131 feet": 39.9288,
			"29 ft 6 in": 8.9916, "29ft6in": 8.9916, "29 ft 6in": 8.9916, "29 feet 6 inches": 8.9916, "29 FT 6 IN": 8.9916,
			"29\u00a0ft\u00a06\u00a0in": 8.9916, "29 ft 0 in": 8.8392, "0 ft 6 in": 0.1524,
			"29 ft 6 1/2 in": 354.5 * 254 / 1e4, "29 ft 6½ in": 354.5 * 254 / 1e4, "29 ft .5 in": 348.5 * 254 / 1e4,
		},
		"floor area":     {"5 m2": 5, "5 m²": 5, "5m²": 5, "5 sq m": 5, "13000 sq ft": 1207.73952, "13000 sqft": 1207.73952, "13000 Sq Ft": 1207.73952, "13000 ft2": 1207.73952, "13000 sq\u00a0ft": 1207.73952, "13000 sq. ft": 1207.73952},
		"conductor size": {"1.5 mm2": 1.5, "1.5mm2": 1.5, "1.5 mm²": 1.5, "1.5 sq mm": 1.5, "1.5 MM2": 1.5, "16 AWG": float64(AWG(16))},
		"frequency":      {"70 Hz": 70, "70 hz": 70, "1 kHz": 1000, "1 khz": 1000, "1 Khz": 1000, "1 KHZ": 1000, "2.4 MHz": 2.4e6},
		"duration":       {"1.1 s": 1.1, "500 ms": 0.5, "30 min": 1800, "24 h": 86400, "24 hours": 86400, "1 h 30 min": 5400, "1h30min": 5400, "2 days": 172800, "1 day 12 h": 129600, "1 h 0 min 20 s": 3620, "1 min 0.5 s": 60.5, "1 1/2 h": 5400, "24 H": 86400},
		"battery capacity": {
			"25 Ah": 25, "25 AH": 25, "7.2 Ah": 7.2, "7200 mAh": 7.2, "25 A h": 25,
		},
		"temperature":            {"30 C": 30, "30 °C": 30, "30°C": 30, "30 ℃": 30, "30 c": 30, "30 deg C": 30, "86 F": 30, "86 °F": 30, "32 F": 0, "-40 F": -40, "-40 °C": -40, "\u221220 °C": -20},
		"angle":                  {"90 deg": 90, "90°": 90, "90 °": 90, "-45 degrees": -45, "0 deg": 0},
		"percentage":             {"10 %": 10, "10%": 10, "0 %": 0, "-25 %": -25, "10 percent": 10},
		"gain":                   {"-20 dB": -20, "3 dB": 3, "+3 dB": 3, "\u22123 dB": -3, "–3 dB": -3, "- 3 dB": -3, "3 db": 3, "0 dB": 0, "-½ dB": -0.5, "-7 1/2 dB": -7.5},
		"sound level":            {"58 dBA": 58, "58 dBa": 58, "58 dB(A)": 58, "58 dB A": 58, "58dBA": 58},
		"sound pressure level":   {"90 dB": 90, "90 dB SPL": 90, "104 dBSPL": 104},
		"inductance per length":  {"0.6 uH/m": 6e-7, "0.6 µH/m": 6e-7, "0.6 μH/m": 6e-7, "600 nH/m": 6e-7, "0.6 mH/km": 6e-7, "600 uH/km": 6e-7, "0.0000006 H/m": 6e-7, "0.3048 uH/ft": 1e-6, "0 H/m": 0},
		"capacitance per length": {"60 pF/m": 6e-11, "60 nF/km": 6e-11, "0.06 nF/m": 6e-11, "0.06 uF/km": 6e-11, "0.06 µF/km": 6e-11, "60000 pF/km": 6e-11, "30.48 pF/ft": 1e-10, "60 pf/m": 6e-11},
	}
	for name, forms := range tests {
		d := doorNamed(t, name)
		for text, want := range forms {
			got, err := d.parse(text)
			if err != nil {
				t.Errorf("%s %q: %v", name, text, err)
			} else if got != want || math.Signbit(got) != math.Signbit(want) {
				t.Errorf("%s %q = %v, want %v", name, text, got, want)
			}
		}
	}
	if len(tests) != len(doors()) {
		t.Errorf("%d dimensions have written forms, want %d", len(tests), len(doors()))
	}
}

// TestConversionFactors holds one unit of each name against its published size.
func TestConversionFactors(t *testing.T) {
	t.Parallel()
	const (
		prefixes  = "SI brochure, 9th ed. (2019), table 7"
		accepted  = "SI brochure, 9th ed. (2019), table 8"
		customary = "NIST SP 811 (2008), appendix B.8"
	)
	tests := []struct {
		name, text string
		want       float64
		source     string
	}{
		{"power", "1 mW", 1e-3, prefixes}, {"power", "1 kW", 1e3, prefixes},
		{"voltage", "1 mV", 1e-3, prefixes}, {"voltage", "1 kV", 1e3, prefixes},
		{"current", "1 mA", 1e-3, prefixes},
		{"resistance", "1 mohm", 1e-3, prefixes}, {"resistance", "1 kohm", 1e3, prefixes},
		{"resistance", "1 Mohm", 1e6, prefixes}, {"resistance", "1 Gohm", 1e9, prefixes},
		{"length", "1 mm", 1e-3, prefixes}, {"length", "1 cm", 1e-2, prefixes}, {"length", "1 km", 1e3, prefixes},
		{"length", "1 ft", 0.3048, customary}, {"length", "1 in", 0.0254, customary},
		{"floor area", "1 sq ft", 0.09290304, customary},
		{"frequency", "1 kHz", 1e3, prefixes}, {"frequency", "1 MHz", 1e6, prefixes},
		{"duration", "1 ms", 1e-3, prefixes},
		{"duration", "1 min", 60, accepted}, {"duration", "1 h", 3600, accepted}, {"duration", "1 day", 86400, accepted},
		{"battery capacity", "1 mAh", 1e-3, prefixes},
		{"temperature", "212 F", 100, customary + ": (t − 32)/1.8"}, {"temperature", "32 F", 0, customary},
		{"inductance per length", "1 uH/m", 1e-6, prefixes}, {"inductance per length", "1 nH/m", 1e-9, prefixes},
		{"inductance per length", "1 mH/km", 1e-6, prefixes}, {"inductance per length", "1 uH/km", 1e-9, prefixes},
		{"inductance per length", "1 uH/ft", 1e-6 / 0.3048, customary}, {"inductance per length", "1 nH/ft", 1e-9 / 0.3048, customary},
		{"capacitance per length", "1 uF/m", 1e-6, prefixes}, {"capacitance per length", "1 nF/m", 1e-9, prefixes},
		{"capacitance per length", "1 pF/m", 1e-12, prefixes}, {"capacitance per length", "1 uF/km", 1e-9, prefixes},
		{"capacitance per length", "1 nF/km", 1e-12, prefixes}, {"capacitance per length", "1 pF/km", 1e-15, prefixes},
		{"capacitance per length", "1 pF/ft", 1e-12 / 0.3048, customary}, {"capacitance per length", "1 nF/ft", 1e-9 / 0.3048, customary},
	}
	held := map[string]bool{}
	for _, tt := range tests {
		got, err := doorNamed(t, tt.name).parse(tt.text)
		if err != nil || math.Abs(got-tt.want) > 1e-15*math.Abs(tt.want) {
			t.Errorf("%s = %v, %v; %s says %v", tt.text, got, err, tt.source, tt.want)
		}
		_, unit, _ := strings.Cut(tt.text, " ")
		held[tt.name+" "+unit] = true
	}
	for _, d := range doors() {
		for _, u := range d.scale.units {
			if (u.mul != 1 || u.div != 1) && !held[d.scale.name+" "+u.name] && u.name != "°F" {
				t.Errorf("no source is named for the size of %s", u.name)
			}
		}
	}
}

// TestUnitTables checks what the parser takes for granted about the tables.
func TestUnitTables(t *testing.T) {
	t.Parallel()
	all := []*scale{&level}
	for _, d := range doors() {
		all = append(all, d.scale)
	}
	for _, s := range all {
		if base := s.units[0]; base.mul != 1 || base.div != 1 || base.zero != 0 {
			t.Errorf("%s: the first unit %s is not the base unit", s.name, base.name)
		}
		for _, p := range s.prints {
			if s.unit(p.unit) == nil {
				t.Errorf("%s prints in %s, which it does not know", s.name, p.unit)
			}
		}
		exact, folded := map[string]string{}, map[string]unit{}
		for _, u := range s.units {
			for _, spelling := range append([]string{u.name}, u.also...) {
				if other, taken := exact[spelling]; taken {
					t.Errorf("%s: %q is both %s and %s", s.name, spelling, other, u.name)
				}
				exact[spelling] = u.name
				lower := strings.ToLower(spelling)
				if other, taken := folded[lower]; taken && other.name != u.name && (!other.strict || !u.strict) {
					t.Errorf("%s: %q may be %s or %s in other letter case", s.name, spelling, other.name, u.name)
				}
				folded[lower] = u
				if got := s.unit(spelling); got == nil || got.name != u.name {
					t.Errorf("%s: %q is not found as %s", s.name, spelling, u.name)
				}
			}
			if u.next != "" && s.unit(u.next) == nil {
				t.Errorf("%s: after %s comes the unknown %s", s.name, u.name, u.next)
			}
		}
		for _, slip := range s.slips {
			if s.unit(slip.unit) != nil {
				t.Errorf("%s: the slip %s is a unit", s.name, slip.unit)
			}
		}
	}
}

// sketch is what a declaration of an attribute uses of a dimension.
type sketch struct {
	Name, Example string
	Units         []string
	Range         string
}

func sketchOf[Q any](t *testing.T, d Dimension[Q]) sketch {
	t.Helper()
	if _, err := d.Parse(d.Example); err != nil {
		t.Errorf("the example of %s: %v", d.Name, err)
	}
	if _, err := d.Parse(""); err == nil {
		t.Errorf("an empty text is a %s", d.Name)
	}
	return sketch{d.Name, d.Example, d.Units, d.Range}
}

// TestDimensions is the whole reference of units and ranges at a glance.
func TestDimensions(t *testing.T) {
	t.Parallel()
	words := func(text string) []string { return strings.Split(text, ", ") }
	want := []sketch{
		{"power", "6 W", words("W, mW, kW"), "from 0.001 mW to 1000 kW, or 0"},
		{"voltage", "100 V", words("V, mV, kV"), "from 0.001 mV to 100 kV, or 0"},
		{"current", "4 A", words("A, mA"), "from 0.001 mA to 10000 A, or 0"},
		{"resistance", "8 ohm", words("ohm, mohm, kohm, Mohm, Gohm"), "from 0.000001 ohm to 1000 Gohm, or 0"},
		{"length", "40 m", words("m, cm, mm, km, ft, in"), "from 0.001 mm to 100 km, or 0"},
		{"floor area", "50 m2", words("m2, sq ft"), "from 0.0001 m2 to 100000000 m2"},
		{"conductor size", "1.5 mm2", words("mm2, AWG"), "from 0.001 mm2 to 10000 mm2"},
		{"frequency", "1 kHz", words("Hz, kHz, MHz"), "from 0.001 Hz to 1000 MHz"},
		{"duration", "30 min", words("s, ms, min, h, day"), "from 0.001 ms to 100000 h, or 0"},
		{"battery capacity", "25 Ah", words("Ah, mAh"), "from 0.001 Ah to 1000000 Ah"},
		{"temperature", "30 °C", words("°C, °F"), "from -100 °C to 1000 °C"},
		{"angle", "90 deg", words("deg"), "from -360 deg to 360 deg"},
		{"percentage", "10 %", words("%"), "from -1000 % to 1000 %"},
		{"gain", "-20 dB", words("dB"), "from -200 dB to 200 dB"},
		{"sound level", "58 dBA", words("dBA"), "from -20 dBA to 200 dBA"},
		{"sound pressure level", "90 dB", words("dB"), "from -100 dB to 200 dB"},
		{"inductance per length", "0.6 uH/m", words("H/m, uH/m, nH/m, mH/km, uH/km, uH/ft, nH/ft"), "from 0.000001 uH/m to 1000000 uH/m, or 0"},
		{"capacitance per length", "60 pF/m", words("F/m, pF/m, nF/m, uF/m, pF/km, nF/km, uF/km, pF/ft, nF/ft"), "from 0.001 pF/m to 1000000 nF/m, or 0"},
		{"signal level", "-10 dBV", words("dBV, dBu, V, mV, dB"), "-160 to 60 in dBV, dBu or dB, or from 0.00001 mV to 1000 V"},
		{"conductor size", "2 x 1.5 mm2", words("mm2, AWG"), "from 0.001 mm2 to 10000 mm2"},
		{"supply rail", "24 V, 4 A", words("V, A"), "a voltage from 0.001 mV to 100 kV, or 0; a current from 0.001 mA to 10000 A, or 0"},
		{"ingress protection", "IP34", words("IP"), "first digit 0 to 6 or X, second digit 0 to 9 or X"},
		{"date", "2027-06-30", words("year-month-day"), "a day of the calendar, from 0001-01-01 to 9999-12-31"},
	}
	got := []sketch{
		sketchOf(t, Powers), sketchOf(t, Voltages), sketchOf(t, Currents), sketchOf(t, Resistances),
		sketchOf(t, Lengths), sketchOf(t, FloorAreas), sketchOf(t, CrossSections), sketchOf(t, Frequencies),
		sketchOf(t, Durations), sketchOf(t, Charges), sketchOf(t, Temperatures), sketchOf(t, Angles),
		sketchOf(t, Percents), sketchOf(t, Gains), sketchOf(t, SoundLevels), sketchOf(t, SoundPressureLevels),
		sketchOf(t, Inductances), sketchOf(t, Capacitances), sketchOf(t, Levels), sketchOf(t, ConductorSets),
		sketchOf(t, Rails), sketchOf(t, Ingresses), sketchOf(t, Dates),
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("dimensions (-want +got):\n%s", diff)
	}
}

// TestRangeEdges writes each limit and the next float64 beyond it.
func TestRangeEdges(t *testing.T) {
	t.Parallel()
	for _, d := range doors() {
		s := d.scale
		least := s.smallest
		if s.lowest < 0 {
			least = s.lowest
		}
		inside := []float64{least, s.highest}
		outside := []float64{math.Nextafter(least, -math.MaxFloat64), math.Nextafter(s.highest, math.MaxFloat64), s.highest * 1e9, -s.highest * 1e9}
		if s.noZero {
			outside = append(outside, 0)
		} else {
			inside = append(inside, 0)
		}
		for _, v := range inside {
			if got, err := d.parse(d.exact(v)); err != nil || got != v {
				t.Errorf("%s: %q = %v, %v; want it accepted", s.name, d.exact(v), got, err)
			}
		}
		for _, v := range outside {
			_, err := d.parse(d.exact(v))
			var e *Error
			if !errors.As(err, &e) || !strings.Contains(e.Expected, s.limits()) {
				t.Errorf("%s: %q gives %v, want an error that states the range", s.name, d.exact(v), err)
			}
		}
		for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
			if s.permits(v) {
				t.Errorf("%s permits %v", s.name, v)
			}
		}
	}
}
