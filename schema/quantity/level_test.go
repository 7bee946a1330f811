package quantity

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestLevelForms(t *testing.T) {
	t.Parallel()
	tests := []struct {
		text    string
		want    Level
		printed string
	}{
		{"-10 dBV", Level{-10, DBV}, "-10 dBV"},
		{"\u221210\u00a0dBV", Level{-10, DBV}, "-10 dBV"},
		{"+4 dBu", Level{4, DBu}, "4 dBu"},
		{"4 dbu", Level{4, DBu}, "4 dBu"},
		{"0 dBV", Level{0, DBV}, "0 dBV"},
		{"0 dB", Level{0, UnreferencedDB}, "0 dB"},
		{"-20 db", Level{-20, UnreferencedDB}, "-20 dB"},
		{"0.8 V", Level{0.8, Volts}, "0.8 V"},
		{"5 mV", Level{0.005, Volts}, "5 mV"},
		{"1.6 mV", Level{0.0016, Volts}, "1.6 mV"},
	}
	for _, tt := range tests {
		got, err := ParseLevel(tt.text)
		if err != nil {
			t.Errorf("%q: %v", tt.text, err)
			continue
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%q (-want +got):\n%s", tt.text, diff)
		}
		if got.String() != tt.printed {
			t.Errorf("%q prints as %q, want %q", tt.text, got, tt.printed)
		}
		if again, err := ParseLevel(got.Exact()); err != nil || again != got {
			t.Errorf("%q read again from %q = %v, %v", tt.text, got.Exact(), again, err)
		}
	}
}

// TestLevelReference holds the conversions against the definitions: 0 dBV is 1 V;
// 0 dBu is the voltage of 1 mW in 600 ohm, √0.6 V = 0.7746 V (ITU-R V.574, from
// memory), so 0 dBu = −2.218 dBV and +4 dBu = 1.228 V.
func TestLevelReference(t *testing.T) {
	t.Parallel()
	tests := []struct {
		text       string
		volts, dbv float64
	}{
		{"0 dBV", 1, 0},
		{"20 dBV", 10, 20},
		{"-10 dBV", 0.3162278, -10},
		{"0 dBu", math.Sqrt(0.6), -2.2184875},
		{"+4 dBu", 1.2276527, 1.7815125},
		{"2.2184875 dBu", 1, 0},
		{"1 V", 1, 0},
		{"0.775 V", 0.775, -2.2139660},
		{"100 mV", 0.1, -20},
	}
	for _, tt := range tests {
		l, err := ParseLevel(tt.text)
		if err != nil {
			t.Errorf("%q: %v", tt.text, err)
			continue
		}
		volts, hasVolts := l.Volts()
		dbv, hasDBV := l.DBV()
		if !hasVolts || !hasDBV || !l.Referenced() {
			t.Errorf("%q has no reference", tt.text)
		}
		if math.Abs(float64(volts)-tt.volts) > 1e-6 || math.Abs(dbv-tt.dbv) > 1e-6 {
			t.Errorf("%q = %v V, %v dBV; want %v V, %v dBV", tt.text, float64(volts), dbv, tt.volts, tt.dbv)
		}
	}

	unreferenced, err := ParseLevel("0 dB")
	if err != nil {
		t.Fatal(err)
	}
	if volts, ok := unreferenced.Volts(); ok {
		t.Errorf("0 dB without a reference is %v", volts)
	}
	if dbv, ok := unreferenced.DBV(); ok || unreferenced.Referenced() {
		t.Errorf("0 dB without a reference is %v dBV", dbv)
	}
	if (Level{}).Referenced() {
		t.Error("the zero Level has a reference")
	}
}

func TestRefusedLevels(t *testing.T) {
	t.Parallel()
	const want = `expected a signal level such as "-10 dBV"`
	const inRange = `expected a signal level -160 to 60 in dBV, dBu or dB, or from 0.00001 mV to 1000 V`
	checkRefusals(t, Levels, []refusal{
		{"-10 dBv", "-10 dBv", `found "-10 dBv"; ` + want + `; write "-10 dBV" (0 dBV is 1 V) or "-10 dBu" (0 dBu is 0.775 V): dBv has meant both`},
		{"-10 DBV", "DBV", `found "DBV" as a unit, where capital and small letters differ in meaning; expected a signal level in dBV, dBu, V, mV or dB; write "-10 dBV"`},
		{"0 dBm", "0 dBm", `found "0 dBm"; ` + want + `; dBm is a power: on 600 ohm write the same number as "0 dBu", else write the volts`},
		{"-18 dBFS", "-18 dBFS", `found "-18 dBFS"; ` + want + `; a digital level says nothing of volts: write what the output gives at that level`},
		{"58 dBA", "58 dBA", `found "58 dBA", which is a sound level; ` + want},
		{"-10", "-10", `found "-10", a number without a unit; ` + want + `; write "-10 dBV"`},
		{"5 MV", "MV", `found "MV" as a unit, where capital and small letters differ in meaning; expected a signal level in dBV, dBu, V, mV or dB; write "5 mV"`},
		{"0 V", "0 V", `found "0 V", which is zero; ` + inRange},
		{"-1 V", "-1 V", `found "-1 V", which is out of range; ` + inRange},
		{"1001 V", "1001 V", `found "1001 V", which is out of range; ` + inRange},
		{"61 dBV", "61 dBV", `found "61 dBV", which is out of range; ` + inRange},
		{"-161 dBu", "-161 dBu", `found "-161 dBu", which is out of range; ` + inRange},
		{"61 dB", "61 dB", `found "61 dB", which is out of range; ` + inRange},
	})
}
