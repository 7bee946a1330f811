package quantity

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"
)

func TestSignificant(t *testing.T) {
	t.Parallel()
	tests := []struct {
		x      float64
		digits int
		want   string
	}{
		{0, 4, "0"}, {math.Copysign(0, -1), 4, "0"}, {6, 4, "6"}, {-6, 4, "-6"},
		{0.62, 4, "0.62"}, {0.625, 2, "0.62"}, {0.635, 2, "0.64"}, {1.5, 1, "2"}, {100, 4, "100"},
		{1234.5678, 4, "1235"}, {1234.5678, 6, "1234.57"}, {12345, 4, "12340"}, {12355, 4, "12360"}, {99999, 4, "100000"},
		{0.99996, 4, "1"}, {-0.99996, 4, "-1"}, {0.000012345, 3, "0.0000123"}, {-0.0005, 3, "-0.0005"},
		{1e21, 3, "1000000000000000000000"}, {1e-9, 3, "0.000000001"}, {70.71067811865476, 4, "70.71"},
		{0.1, 17, "0.10000000000000001"}, {0.1, 99, "0.10000000000000001"}, {123, 0, "100"},
		{math.NaN(), 4, "NaN"}, {math.Inf(1), 4, "+Inf"}, {math.Inf(-1), 4, "-Inf"},
	}
	for _, tt := range tests {
		if got := Significant(tt.x, tt.digits); got != tt.want {
			t.Errorf("Significant(%v, %d) = %q, want %q", tt.x, tt.digits, got, tt.want)
		}
	}
}

func TestString(t *testing.T) {
	t.Parallel()
	tests := []struct {
		q    fmt.Stringer
		want string
	}{
		{Power(6), "6 W"}, {Power(0), "0 W"}, {Power(0.62), "0.62 W"}, {Power(0.625), "0.625 W"}, {Power(0.01), "0.01 W"},
		{Power(0.005), "5 mW"}, {Power(1000), "1000 W"}, {Power(9999), "9999 W"}, {Power(9999.6), "10 kW"}, {Power(12500), "12.5 kW"},
		{Power(-6), "-6 W"}, {Power(51.000000001), "51 W"}, {Power(math.Copysign(0, -1)), "0 W"},
		{Voltage(70.71067811865476), "70.71 V"}, {Voltage(70), "70 V"}, {Voltage(0.005), "5 mV"}, {Voltage(100), "100 V"},
		{Current(0.025), "25 mA"}, {Current(0.5), "0.5 A"}, {Current(28), "28 A"},
		{Resistance(8), "8 ohm"}, {Resistance(999.94), "999.9 ohm"}, {Resistance(999.96), "1 kohm"}, {Resistance(1666.6667), "1.667 kohm"},
		{Resistance(5e8), "500 Mohm"}, {Resistance(0.0121), "0.0121 ohm"},
		{Length(40), "40 m"}, {Length(8.9916), "8.992 m"}, {Length(0.025), "25 mm"}, {Length(0.1), "0.1 m"}, {Length(1200), "1200 m"}, {Length(12000), "12 km"},
		{FloorArea(1207.73952), "1208 m2"}, {CrossSection(1.5), "1.5 mm2"}, {AWG(16), "1.309 mm2"},
		{Frequency(70), "70 Hz"}, {Frequency(2000), "2 kHz"}, {Frequency(2.4e6), "2.4 MHz"},
		{Duration(0.02), "20 ms"}, {Duration(0.6), "0.6 s"}, {Duration(1800), "30 min"}, {Duration(86400), "24 h"}, {Duration(5400), "1.5 h"},
		{Charge(25), "25 Ah"}, {Temperature(30), "30 °C"}, {Temperature(-5), "-5 °C"}, {Angle(90), "90 deg"}, {Percent(10), "10 %"},
		{Gain(-20), "-20 dB"}, {SoundLevel(58), "58 dBA"}, {SoundPressureLevel(90), "90 dB"},
		{Inductance(6e-7), "0.6 uH/m"}, {Capacitance(6e-11), "60 pF/m"}, {Capacitance(2e-8), "20 nF/m"},
		{Power(math.NaN()), "NaN W"}, {Power(math.Inf(1)), "+Inf kW"},
	}
	for _, tt := range tests {
		if got := tt.q.String(); got != tt.want {
			t.Errorf("%T prints as %q, want %q", tt.q, got, tt.want)
		}
	}
}

func TestUSForms(t *testing.T) {
	t.Parallel()
	length := func(text string) Length {
		l, err := ParseLength(text)
		if err != nil {
			t.Fatal(err)
		}
		return l
	}
	tests := []struct {
		q    fmt.Stringer
		want string
	}{
		{length("29 ft 6 in"), "29 ft 6 in"}, {length("65 ft"), "65 ft"}, {length("131 ft"), "131 ft"}, {length("6 ft 6 in"), "6 ft 6 in"},
		{length("427 ft 6 in"), "427 ft 6 in"}, // whole inches stay as written
		{length("8 in"), "8 in"}, {length("1/2 in"), "0.5 in"}, {length("11.9 in"), "1 ft"},
		{Length(40), "131 ft"}, {Length(9), "29 ft 6 in"}, {Length(30.47), "100 ft"}, {Length(0), "0 ft"},
		{Length(-9), "-29 ft 6 in"}, {Length(math.NaN()), "NaN ft"},
		{FloorArea(1207.73952), "13000 sq ft"}, {Temperature(30), "86 °F"}, {Temperature(0), "32 °F"}, {Temperature(-40), "-40 °F"},
		{Inductance(1e-6), "0.3048 uH/ft"}, {Capacitance(1e-10), "30.48 pF/ft"},
		{Power(6), "6 W"}, {Conductors{Cores: 2, Size: AWG(16), Gauge: 16, IsAWG: true}, "2 x 16 AWG"},
	}
	for _, tt := range tests {
		if got := Format(tt.q, true); got != tt.want {
			t.Errorf("%v prints in US form as %q, want %q", tt.q, got, tt.want)
		}
		if got := Format(tt.q, false); got != tt.q.String() {
			t.Errorf("%v prints in SI form as %q", tt.q, got)
		}
	}
}

// TestLine holds the trade's name of a line against the voltage that is computed
// with.
func TestLine(t *testing.T) {
	t.Parallel()
	for v, want := range map[Voltage]Voltage{
		70: 100 / math.Sqrt2, 70.7: 100 / math.Sqrt2, 70.71: 100 / math.Sqrt2, 69.31: 100 / math.Sqrt2, 71.4: 100 / math.Sqrt2,
		69.2: 69.2, 71.5: 71.5, 100: 100, 25: 25, 35.35: 35.35, 50: 50, 141: 141, 0: 0,
	} {
		if got := v.Line(); got != want {
			t.Errorf("the %v line carries %v, want %v", v, float64(got), float64(want))
		}
	}
}

func TestLimits(t *testing.T) {
	t.Parallel()
	inf, nan := math.Inf(1), math.NaN()
	tests := []struct {
		value, limit    float64
		atMost, atLeast bool
	}{
		{1, 2, true, false}, {2, 1, false, true}, {1, 1, true, true},
		{0.1 + 0.2, 0.3, true, true}, {0.3, 0.1 + 0.2, true, true}, // a last bit decides nothing
		{10 * (1 + 0.9e-9), 10, true, true}, {10 * (1 + 1.1e-9), 10, false, true}, // the stated tolerance
		{10 * (1 - 0.9e-9), 10, true, true}, {10 * (1 - 1.1e-9), 10, true, false},
		{1e-12 * (1 + 0.9e-9), 1e-12, true, true}, {1e-12 * (1 + 1.1e-9), 1e-12, false, true},
		{-10 * (1 + 0.9e-9), -10, true, true}, {-11, -10, true, false}, {-9, -10, false, true},
		{0, 0, true, true}, {1e-30, 0, false, true}, {-1e-30, 0, true, false},
		{inf, 1, false, true}, {1, inf, true, false}, {inf, inf, true, true}, {-inf, inf, true, false},
		{nan, 1, false, false}, {1, nan, false, false}, {nan, nan, false, false},
	}
	for _, tt := range tests {
		if got := AtMost(tt.value, tt.limit); got != tt.atMost {
			t.Errorf("AtMost(%v, %v) = %v", tt.value, tt.limit, got)
		}
		if got := AtLeast(tt.value, tt.limit); got != tt.atLeast {
			t.Errorf("AtLeast(%v, %v) = %v", tt.value, tt.limit, got)
		}
	}
	if !AtMost(Power(51), 60) || AtLeast(Power(51), 60) {
		t.Error("51 W is not under 60 W")
	}
}

// TestRoundTrip prints random values of each dimension, spread evenly over the
// orders of magnitude it permits, and reads them again.
func TestRoundTrip(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	for _, d := range doors() {
		s := d.scale
		for range 2000 {
			v := s.smallest * math.Pow(s.highest/s.smallest, random.Float64())
			if s.lowest < 0 && random.IntN(2) == 0 {
				v = max(-v, s.lowest)
			}
			if got, err := d.parse(d.exact(v)); err != nil || got != v {
				t.Fatalf("%s %v prints exactly as %q, which reads as %v, %v", s.name, v, d.exact(v), got, err)
			}
			// Four significant digits: at worst half of one in a thousand.
			if got, err := d.parse(d.text(v)); err != nil || math.Abs(got-v) > 0.5e-3*math.Abs(v)*(1+1e-9) {
				t.Fatalf("%s %v prints as %q, which reads as %v, %v", s.name, v, d.text(v), got, err)
			}
		}
	}
}

// TestDecimalsKeepTheirDigits writes random decimals in every unit: the same figure
// in two units of one dimension is the same float64.
func TestDecimalsKeepTheirDigits(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(3, 4))
	for range 2000 {
		thousandths := random.IntN(10_000_000)
		inMetres := fmt.Sprintf("%d.%03d m", thousandths/1000, thousandths%1000)
		inMillimetres := fmt.Sprintf("%d mm", thousandths)
		a, errA := ParseLength(inMetres)
		b, errB := ParseLength(inMillimetres)
		if errA != nil || errB != nil || a != b {
			t.Fatalf("%s = %v (%v), %s = %v (%v)", inMetres, float64(a), errA, inMillimetres, float64(b), errB)
		}
	}
}

// TestUSLengthsRoundTrip reads printed feet and inches again: within half an inch
// below 100 ft, half a foot above, half of the third digit below a foot.
func TestUSLengthsRoundTrip(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		l := Length(0.001 * math.Pow(1e7, random.Float64()))
		tolerance := Length(0.0127)
		switch {
		case l > 30.4:
			tolerance = 0.1524
		case l < 0.28:
			tolerance = l * 0.005
		}
		got, err := ParseLength(l.US())
		if err != nil || got-l > tolerance*1.0001 || l-got > tolerance*1.0001 {
			t.Fatalf("%v m prints as %q, which reads as %v, %v", float64(l), l.US(), float64(got), err)
		}
	}
}

func TestCommonFormsDoNotAllocate(t *testing.T) {
	for _, text := range []string{"6 W", "0.62 W", "7 1/2 W", "500 mW", "1.2 kW"} {
		allocations := testing.AllocsPerRun(100, func() {
			if _, err := ParsePower(text); err != nil {
				t.Fatal(err)
			}
		})
		if allocations != 0 {
			t.Errorf("reading %q allocates %v times", text, allocations)
		}
	}
}

// fuzzOne checks what holds for every text on one dimension.
func fuzzOne[Q interface {
	comparable
	fmt.Stringer
}](t *testing.T, d Dimension[Q], text string) {
	t.Helper()
	q, err := d.Parse(text)
	if err != nil {
		checkError(t, d.Name, text, err)
		return
	}
	exact := q.String()
	if e, ok := any(q).(interface{ Exact() string }); ok {
		exact = e.Exact()
	}
	if again, err := d.Parse(exact); err != nil || again != q {
		t.Errorf("%s %q is %v; printed exactly as %q it reads as %v, %v", d.Name, text, q, exact, again, err)
	}
	if again, err := d.Parse(q.String()); err != nil || again.String() != q.String() {
		t.Errorf("%s %q prints as %q, which reads as %v, %v", d.Name, text, q, again, err)
	}
}

// checkError checks what holds for every refusal.
func checkError(t *testing.T, name, text string, err error) {
	t.Helper()
	var e *Error
	if !errors.As(err, &e) {
		t.Fatalf("%s %q: %v is no *Error", name, text, err)
	}
	if e.Offset < 0 || e.Length < 0 || e.Offset+e.Length > len(text) {
		t.Fatalf("%s %q marks %d bytes at %d", name, text, e.Length, e.Offset)
	}
	if e.Found == "" || e.Expected == "" {
		t.Errorf("%s %q: %q does not say what was found and expected", name, text, e)
	}
	if message := e.Error(); !utf8.ValidString(message) || strings.ContainsFunc(message, unicode.IsControl) {
		t.Errorf("%s %q: message %q is not one line of text", name, text, message)
	}
	if utf8.ValidString(text) && !utf8.ValidString(text[e.Offset:e.Offset+e.Length]) {
		t.Errorf("%s %q marks part of a character", name, text)
	}
}

// FuzzParse reads any text on every dimension: no panic, every refusal marks bytes
// of the text, every accepted value is finite, in range and prints to text that
// reads the same.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		"", " ", "6 W", "7 1/2 W", "7½ W", "1/0 W", "0.62 W", ".5 W", "1,500 m", "1 000 W", "1e3 W", "0x10", "NaN", "-∞ W",
		"1.2 kohm", "8 Ω", "29 ft 6 in", "29'6\"", "13000 sq ft", "5 m²", "1.5 mm2", "2 x 1.5 mm2", "16/2", "2/0", "2/0 AWG", "AWG 16",
		"-10 dBV", "+4 dBu", "0 dB", "-10 dBv", "58 dBA", "86 F", "30 °C", "1 h 30 min", "500 ms", "25 Ah", "90°", "10 %", "−20 dB",
		"0.6 µH/m", "60 pF/ft", "24 V, 4 A", "4,5 V, 4,5 A", "IP34", "IPX4", "IP6é", "6\u00a0W", "6\u200bW", "6 \xffW", "6-8 W", "7-1/2 W",
		"0 00000,A", "99999999999999999999 x 1 mm2", "0.00000000000000000001 F/m", "179769313486231570000 W", "1 day 23 h 59 min 59.999 s",
	} {
		f.Add(text)
	}
	scalars := doors()
	f.Fuzz(func(t *testing.T, text string) {
		for _, d := range scalars {
			v, err := d.parse(text)
			if err == nil && !d.scale.permits(v) {
				t.Errorf("%s %q is accepted as %v", d.scale.name, text, v)
			}
		}
		fuzzOne(t, Powers, text)
		fuzzOne(t, Voltages, text)
		fuzzOne(t, Currents, text)
		fuzzOne(t, Resistances, text)
		fuzzOne(t, Lengths, text)
		fuzzOne(t, FloorAreas, text)
		fuzzOne(t, CrossSections, text)
		fuzzOne(t, Frequencies, text)
		fuzzOne(t, Durations, text)
		fuzzOne(t, Charges, text)
		fuzzOne(t, Temperatures, text)
		fuzzOne(t, Angles, text)
		fuzzOne(t, Percents, text)
		fuzzOne(t, Gains, text)
		fuzzOne(t, SoundLevels, text)
		fuzzOne(t, SoundPressureLevels, text)
		fuzzOne(t, Inductances, text)
		fuzzOne(t, Capacitances, text)
		fuzzOne(t, Levels, text)
		fuzzOne(t, ConductorSets, text)
		fuzzOne(t, Rails, text)
		fuzzOne(t, Ingresses, text)
		fuzzOne(t, Dates, text)
	})
}

func BenchmarkParse(b *testing.B) {
	for _, text := range []string{"6 W", "0.62 W", "7 1/2 W", "1.2 kW"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := ParsePower(text); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
	b.Run("29 ft 6 in", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := ParseLength("29 ft 6 in"); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("2 x 1.5 mm2", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := ParseConductors("2 x 1.5 mm2"); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkString(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_ = Power(51.25).String()
	}
}
