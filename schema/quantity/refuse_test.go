package quantity

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// refusal is a text, the culprit that must be marked in it, and the message.
type refusal struct{ text, culprit, message string }

func checkRefusals[Q any](t *testing.T, d Dimension[Q], refusals []refusal) {
	t.Helper()
	for _, want := range refusals {
		q, err := d.Parse(want.text)
		var e *Error
		if !errors.As(err, &e) {
			t.Errorf("%s %q = %v, %v; want an *Error", d.Name, want.text, q, err)
			continue
		}
		got := refusal{want.text, want.text[e.Offset : e.Offset+e.Length], e.Error()}
		if diff := cmp.Diff(want.culprit, got.culprit); diff != "" {
			t.Errorf("%s %q marks (-want +got):\n%s", d.Name, want.text, diff)
		}
		if diff := cmp.Diff(want.message, got.message); diff != "" {
			t.Errorf("%s %q says (-want +got):\n%s", d.Name, want.text, diff)
		}
	}
}

const wantPower = `expected a power such as "6 W"`

func TestRefusedNumbers(t *testing.T) {
	t.Parallel()
	checkRefusals(t, Powers, []refusal{
		{"", "", `found an empty text; ` + wantPower},
		{"  ", "", `found nothing; ` + wantPower},
		{"W", "W", `found "W", a unit without a number; ` + wantPower},
		{"-", "-", `found "-", which does not start with a number; ` + wantPower},
		{".", ".", `found ".", which does not start with a number; ` + wantPower},
		{"abc", "abc", `found "abc", which does not start with a number; ` + wantPower},
		{"ca. 6 W", "ca. 6 W", `found "ca. 6 W", which does not start with a number; ` + wantPower},
		{"6", "6", `found "6", a number without a unit; ` + wantPower + `; write "6 W"`},
		{" -7 1/2 ", "-7 1/2", `found "-7 1/2", a number without a unit; ` + wantPower + `; write "-7 1/2 W"`},

		// Commas: both right forms where both can be meant.
		{"1,5 W", "1,5", `found "1,5", a number with a comma; ` + wantPower + `; write "1.5 W"`},
		{"1,500 W", "1,500", `found "1,500", a number with a comma; ` + wantPower + `; write "1.5 W" or "1500 W"`},
		{"-1,000 W", "-1,000", `found "-1,000", a number with a comma; ` + wantPower + `; write "-1 W" or "-1000 W"`},
		{"0,625 W", "0,625", `found "0,625", a number with a comma; ` + wantPower + `; write "0.625 W"`},
		{",5 W", ",5", `found ",5", a number with a comma; ` + wantPower + `; write "0.5 W"`},
		{"1,234,567 W", "1,234,567", `found "1,234,567", a number with a comma; ` + wantPower + `; write "1234567 W"`},
		{"1,200.5 W", "1,200.5", `found "1,200.5", a number with a comma; ` + wantPower + `; write "1200.5 W"`},
		{"1.200,5 W", "1.200,5", `found "1.200,5", a number with a comma; ` + wantPower + `; write "1200.5 W"`},
		{"6,5,W", "6,5", `found "6,5", a number with a comma; ` + wantPower + `; write "6.5,W"`},
		{"1 200,5 W", "1 200,5", `found "1 200,5", a number with a comma; ` + wantPower + `; write "1200.5 W"`},
		{"6,5", "6,5", `found "6,5", a number with a comma; ` + wantPower + `; write "6.5 W"`},

		{"1 000 W", "1 000", `found "1 000", a number with spaces in it; ` + wantPower + `; write "1000 W"`},
		{"1\u202f000\u202fW", "1\u202f000", `found "1\u202f000", a number with spaces in it; ` + wantPower + `; write "1000` + "\u202f" + `W"`},
		{"1e3 W", "1e3", `found "1e3", a number with an exponent; ` + wantPower + `; write "1000 W"`},
		{"5E-1 W", "5E-1", `found "5E-1", a number with an exponent; ` + wantPower + `; write "0.5 W"`},
		{"1e300 W", "1e300", `found "1e300", a number with an exponent; ` + wantPower},
		{"0x10 W", "0x10", `found "0x10", a hexadecimal number; ` + wantPower},
		{"NaN", "NaN", `found "NaN", which does not start with a number; ` + wantPower},
		{"Inf W", "Inf W", `found "Inf W", which does not start with a number; ` + wantPower},
		{"-inf W", "-inf W", `found "-inf W", which does not start with a number; ` + wantPower},
		{"6. W", "6.", `found "6.", a number with a misplaced point; ` + wantPower + `; write "6 W"`},
		{"1.2.3 W", "1.2.3", `found "1.2.3", a number with a misplaced point; ` + wantPower},
		{"1/0 W", "1/0", `found "1/0", a fraction with 0 below the line; ` + wantPower},
		{"7 1/0 W", "7 1/0", `found "7 1/0", a fraction with 0 below the line; ` + wantPower},
		{"7 9/2 W", "7 9/2", `found "7 9/2", which is no plain fraction; expected a fraction such as "1/8" or "7 1/2"`},
		{"1.5/2 W", "1.5/2", `found "1.5/2", which is no plain fraction; expected a fraction such as "1/8" or "7 1/2"`},
		{"1.5½ W", "1.5½", `found "1.5½", which is no plain fraction; expected a fraction such as "1/8" or "7 1/2"`},
		{"1/1234567890 W", "1/1234567890", `found "1/1234567890", which is no plain fraction; expected a fraction such as "1/8" or "7 1/2"`},
		{"6-8 W", "6-8 W", `found "6-8 W", which has two numbers; ` + wantPower},
		{"7-1/2 W", "7-1/2 W", `found "7-1/2 W", which has two numbers; ` + wantPower + `; write "7 1/2 W"`},
		{"--6 W", "--6 W", `found "--6 W", which does not start with a number; ` + wantPower},
	})
}

func TestRefusedUnits(t *testing.T) {
	t.Parallel()
	checkRefusals(t, Powers, []refusal{
		{"6 V", "6 V", `found "6 V", which is a voltage; ` + wantPower},
		{"6 m", "6 m", `found "6 m", which is a length; ` + wantPower},
		{"6 dB", "6 dB", `found "6 dB", which is a gain; ` + wantPower},
		{"6 dBu", "6 dBu", `found "6 dBu", which is a signal level; ` + wantPower},
		{"16 AWG", "16 AWG", `found "16 AWG", which is a conductor size; ` + wantPower},
		{"10 %", "10 %", `found "10 %", which is a percentage; ` + wantPower},
		{"3 H/m", "3 H/m", `found "3 H/m", which is an inductance per length; ` + wantPower},
		{"6 Wat", "Wat", `found "Wat" as a unit; expected a power in W, mW or kW; did you mean "6 W"?`},
		{"6 k", "k", `found "k" as a unit; expected a power in W, mW or kW; did you mean "6 kW"?`},
		{"6 xyz", "xyz", `found "xyz" as a unit; expected a power in W, mW or kW`},
		{"6 VA", "6 VA", `found "6 VA"; ` + wantPower + `; VA is apparent power: write the real power in W`},
		// Letter case is ignored unless it may mean milli or mega.
		{"6 mw", "mw", `found "mw" as a unit, where capital and small letters differ in meaning; expected a power in W, mW or kW; write "6 mW"`},
		{"6 MW", "MW", `found "MW" as a unit, where capital and small letters differ in meaning; expected a power in W, mW or kW; write "6 mW"`},
		{"6 W 3 W", "3 W", `found "3 W" after a complete value; expected nothing after "6 W"`},
		{"6 W,", ",", `found "," after a complete value; expected nothing after "6 W"`},
		{"6 W per unit", "per unit", `found "per unit" after a complete value; expected nothing after "6 W"`},
		{"6 W ½", "½", `found "½" after a complete value; expected nothing after "6 W"`},
	})
	checkRefusals(t, Resistances, []refusal{
		{"22 k", "k", `found "k" as a unit; expected a resistance in ohm, mohm, kohm, Mohm or Gohm; did you mean "22 kohm"?`},
		{"500 MOHM", "MOHM", `found "MOHM" as a unit, where capital and small letters differ in meaning; expected a resistance in ohm, mohm, kohm, Mohm or Gohm; write "500 mohm" or "500 Mohm"`},
		{"1 ohm/m", "/m", `found "/m" after a complete value; expected nothing after "1 ohm"`},
	})
	checkRefusals(t, Lengths, []refusal{
		{"1,500 m", "1,500", `found "1,500", a number with a comma; expected a length such as "40 m"; write "1.5 m" or "1500 m"`},
		{"29'", "'", `found "'" as a unit; expected a length such as "40 m"; write "29 ft"`},
		{`29'6"`, "'", `found "'" as a unit; expected a length such as "40 m"; write "29 ft 6 in"`},
		{`8"`, `"`, `found '"' as a unit; expected a length such as "40 m"; write "8 in"`},
		{"29′ 6″", "′", `found "′" as a unit; expected a length such as "40 m"; write "29 ft 6 in"`},
		{"29’6”", "’", `found "’" as a unit; expected a length such as "40 m"; write "29 ft 6 in"`},
		{"29.5 ft 6 in", "29.5 ft", `found "29.5 ft", which has a fraction before a smaller unit; expected a whole number before "ft"`},
		{"29 ft 12 in", "12", `found "12" after "ft"; expected less than 12 in there`},
		{"29 ft 6", "6", `found "6", a number without a unit; expected a figure in "in" there; write "29 ft 6 in"`},
		{"29 ft 6 ft", "6 ft", `found "6 ft" after "ft"; expected a figure in "in" there`},
		{"29 ft 6 in 3 in", "3 in", `found "3 in" after "in"; expected nothing more`},
		{"29 ft 6,5 in", "6,5", `found "6,5", a number with a comma; expected a length such as "40 m"; write "29 ft 6.5 in"`},
		{"29 ft 6 on", "on", `found "on" as a unit; expected a length in m, cm, mm, km, ft or in; did you mean "6 in"?`},
		{"29 ft -6 in", "-6 in", `found "-6 in" after a complete value; expected nothing after "29 ft"`},
		{"1 m 20 cm", "20 cm", `found "20 cm" after a complete value; expected nothing after "1 m"`},
		{"5 m2", "5 m2", `found "5 m2", which is a floor area; expected a length such as "40 m"`},
		{"40 metros", "metros", `found "metros" as a unit; expected a length in m, cm, mm, km, ft or in; did you mean "40 m"?`},
		{"-2 m", "-2 m", `found "-2 m", which is negative; expected a length from 0.001 mm to 100 km, or 0`},
		{"-1 ft 6 in", "-1 ft 6 in", `found "-1 ft 6 in", which is negative; expected a length from 0.001 mm to 100 km, or 0`},
	})
	checkRefusals(t, FloorAreas, []refusal{
		{"50 m", "50 m", `found "50 m", which is a length; expected a floor area such as "50 m2"; write square metres: "50 m2"`},
		{"50 ft", "50 ft", `found "50 ft", which is a length; expected a floor area such as "50 m2"; write square feet: "50 sq ft"`},
		{"0 m2", "0 m2", `found "0 m2", which is zero; expected a floor area from 0.0001 m2 to 100000000 m2`},
	})
	checkRefusals(t, Durations, []refusal{
		{"30 m", "30 m", `found "30 m", which is a length; expected a duration such as "30 min"; write minutes as "30 min"`},
		{"1 h 90 min", "90", `found "90" after "h"; expected less than 60 min there`},
		{"1 h 20 s", "20 s", `found "20 s" after "h"; expected a figure in "min" there`},
	})
	checkRefusals(t, Temperatures, []refusal{
		{"30 deg", "30 deg", `found "30 deg", which is an angle; expected a temperature such as "30 °C"; write "30 °C" or "30 °F"`},
		{"300 K", "300 K", `found "300 K"; expected a temperature such as "30 °C"; write °C: 0 °C is 273.15 K`},
		{"2000 F", "2000 F", `found "2000 F", which is out of range; expected a temperature from -100 °C to 1000 °C`},
	})
	checkRefusals(t, Charges, []refusal{
		{"25 A", "25 A", `found "25 A", which is a current; expected a battery capacity such as "25 Ah"; write ampere hours: "25 Ah"`},
	})
	checkRefusals(t, Gains, []refusal{
		{"10 dBA", "10 dBA", `found "10 dBA", which is a sound level; expected a gain such as "-20 dB"; write a difference of levels without the A: "10 dB"`},
		{"0.0000001 dB", "0.0000001 dB", `found "0.0000001 dB", which is too near zero; expected a gain from -200 dB to 200 dB`},
	})
	checkRefusals(t, SoundLevels, []refusal{
		{"58 dB", "58 dB", `found "58 dB", which is a gain; expected a sound level such as "58 dBA"; write "58 dBA" if it was measured with A-weighting`},
		{"58 dBC", "58 dBC", `found "58 dBC"; expected a sound level such as "58 dBA"; an A-weighted level is needed: C-weighting gives another figure`},
	})
	checkRefusals(t, SoundPressureLevels, []refusal{
		{"58 dBA", "58 dBA", `found "58 dBA", which is a sound level; expected a sound pressure level such as "90 dB"; write "58 dB" if the figure is not A-weighted`},
	})
	checkRefusals(t, Capacitances, []refusal{
		{"60 pF", "pF", `found "pF" as a unit; expected a capacitance per length in F/m, pF/m, nF/m, uF/m, pF/km, nF/km, uF/km, pF/ft or nF/ft; did you mean "60 pF/m"?`},
	})
}

// TestRefusedTexts holds what is no short line of printable characters.
func TestRefusedTexts(t *testing.T) {
	t.Parallel()
	checkRefusals(t, Powers, []refusal{
		{"6\tW", "\t", `found the invisible character U+0009; ` + wantPower + `; delete it`},
		{"6 W\n", "\n", `found the invisible character U+000A; ` + wantPower + `; delete it`},
		{"6\x00 W", "\x00", `found the invisible character U+0000; ` + wantPower + `; delete it`},
		{"6 W\x7f", "\x7f", `found the invisible character U+007F; ` + wantPower + `; delete it`},
		{"6\u0085W", "\u0085", `found the invisible character U+0085; ` + wantPower + `; delete it`},
		{"6\u200bW", "\u200b", `found the invisible character U+200B; ` + wantPower + `; delete it`},
		{"\ufeff6 W", "\ufeff", `found the invisible character U+FEFF; ` + wantPower + `; delete it`},
		{"6 \u202eW", "\u202e", `found the invisible character U+202E; ` + wantPower + `; delete it`},
		{"6 W\u2028", "\u2028", `found the invisible character U+2028; ` + wantPower + `; delete it`},
		{"6 \xffW", "\xff", `found the byte 0xFF, which is not UTF-8 text; ` + wantPower + `; save the file as UTF-8`},
		{"8 \xe2\x84", "\xe2", `found the byte 0xE2, which is not UTF-8 text; ` + wantPower + `; save the file as UTF-8`},
	})
	longest := strings.Repeat("0", longestText-3) + "6 W"
	if got, err := ParsePower(longest); err != nil || got != 6 {
		t.Errorf("a text of %d bytes = %v, %v; want 6 W", len(longest), got, err)
	}
	checkRefusals(t, Powers, []refusal{
		{"0" + longest, "0" + longest, `found a text of 201 bytes; ` + wantPower + `, in at most 200 bytes`},
	})
	// A long culprit is shortened in the message, not in the marking.
	long := "6 " + strings.Repeat("é", 60)
	checkRefusals(t, Powers, []refusal{
		{long, long[2:], `found "` + strings.Repeat("é", 40) + `…" as a unit; expected a power in W, mW or kW`},
	})
}
