package quantity

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestConductorForms(t *testing.T) {
	t.Parallel()
	awg := func(cores, gauge int) Conductors {
		return Conductors{Cores: cores, Size: AWG(gauge), Gauge: gauge, IsAWG: true}
	}
	tests := []struct {
		text    string
		want    Conductors
		printed string
	}{
		{"1.5 mm2", Conductors{Size: 1.5}, "1.5 mm2"},
		{"1.5mm²", Conductors{Size: 1.5}, "1.5 mm2"},
		{"2 x 1.5 mm2", Conductors{Cores: 2, Size: 1.5}, "2 x 1.5 mm2"},
		{"4 x 1.5mm2", Conductors{Cores: 4, Size: 1.5}, "4 x 1.5 mm2"},
		{"2x1.5mm2", Conductors{Cores: 2, Size: 1.5}, "2 x 1.5 mm2"},
		{"2 X 0.75 mm²", Conductors{Cores: 2, Size: 0.75}, "2 x 0.75 mm2"},
		{" 2\u00a0×\u00a01.5\u202fmm² ", Conductors{Cores: 2, Size: 1.5}, "2 x 1.5 mm2"},
		{"2 x 1 1/2 mm2", Conductors{Cores: 2, Size: 1.5}, "2 x 1.5 mm2"},
		{"16 AWG", awg(0, 16), "16 AWG"},
		{"16AWG", awg(0, 16), "16 AWG"},
		{"16 awg", awg(0, 16), "16 AWG"},
		{"AWG 16", awg(0, 16), "16 AWG"},
		{"2 x 16 AWG", awg(2, 16), "2 x 16 AWG"},
		{"2 x AWG 16", awg(2, 16), "2 x 16 AWG"},
		{"16/2", awg(2, 16), "2 x 16 AWG"},
		{"12/4", awg(4, 12), "4 x 12 AWG"},
		{"16/2 AWG", awg(2, 16), "2 x 16 AWG"},
		{"0 AWG", awg(0, 0), "1/0 AWG"},
		{"1/0 AWG", awg(0, 0), "1/0 AWG"},
		{"2/0 AWG", awg(0, -1), "2/0 AWG"},
		{"00 AWG", awg(0, -1), "2/0 AWG"},
		{"000 AWG", awg(0, -2), "3/0 AWG"},
		{"4/0 AWG", awg(0, -3), "4/0 AWG"},
		{"AWG 0000", awg(0, -3), "4/0 AWG"},
		{"2 x 2/0 AWG", awg(2, -1), "2 x 2/0 AWG"},
	}
	for _, tt := range tests {
		got, err := ParseConductors(tt.text)
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
		if again, err := ParseConductors(got.Exact()); err != nil || again != got {
			t.Errorf("%q read again from %q = %v, %v", tt.text, got.Exact(), again, err)
		}
	}
}

func TestRefusedConductors(t *testing.T) {
	t.Parallel()
	const want = `expected a conductor size such as "2 x 1.5 mm2"`
	const aGauge = `expected a whole number up to 40, or 1/0 to 4/0`
	checkRefusals(t, ConductorSets, []refusal{
		// No silent guess between the gauge 2/0 and gauge/cores.
		{"2/0", "2/0", `found "2/0", which may be gauge 2/0 or 2 AWG with the cores missing; ` + want + `; write "2/0 AWG" or "2 x 2 AWG"`},
		{"0/2", "0/2", `found "0/2", which is no usual gauge/cores; ` + want + `; write "2 x 0 AWG" if that is meant`},
		{"1/2", "1/2", `found "1/2", which is no usual gauge/cores; ` + want + `; write "2 x 1 AWG" if that is meant`},
		{"1/2 mm", "1/2 mm", `found "1/2 mm", which is a length; ` + want + `; write square millimetres, "1/2 mm2"; a diameter is not a conductor size`},
		{"36/2", "36/2", `found "36/2", which is no usual gauge/cores; ` + want + `; write "2 x 36 AWG" if that is meant`},
		{"2 x 16/2", "16/2", `found "16/2" after a number of cores; expected a size there, the cores only once; write "2 x 16 AWG"`},
		{"16/0", "16/0", `found "16/0" as a gauge; ` + aGauge},
		{"5/0 AWG", "5/0", `found "5/0" as a gauge; ` + aGauge},
		{"16/200", "200", `found "200" as the number of cores; expected 1 to 100 there`},
		{"16/02", "02", `found "02" as the number of cores; expected 1 to 100 there`},
		{"16/2/3 AWG", "16/2/3", `found "16/2/3" as a gauge; ` + aGauge},
		{"41 AWG", "41", `found "41" as a gauge; ` + aGauge},
		{"16.5 AWG", "16.5", `found "16.5" as a gauge; ` + aGauge},
		{"-2 AWG", "-2", `found "-2" as a gauge; ` + aGauge},
		{"016 AWG", "016", `found "016" as a gauge; ` + aGauge},
		{"00000 AWG", "00000", `found "00000" as a gauge; ` + aGauge},
		{"AWG", "AWG", `found "AWG" without a gauge; ` + want + `; write the gauge too: "16 AWG"`},
		{"2 x AWG", "AWG", `found "AWG" without a gauge; ` + want + `; write the gauge too: "16 AWG"`},
		{"16 ga", "16 ga", `found "16 ga"; ` + want + `; write "16 AWG" if American wire gauge is meant`},
		{"16 SWG", "16 SWG", `found "16 SWG"; ` + want + `; write the cross-section in mm2: SWG is another gauge than AWG`},
		{"1.5", "1.5", `found "1.5", a number without a unit; ` + want + `; write "1.5 mm2"`},
		{"2 x 1.5", "1.5", `found "1.5", a number without a unit; ` + want + `; write "2 x 1.5 mm2"`},
		{"2 x 1,5 mm2", "1,5", `found "1,5", a number with a comma; ` + want + `; write "2 x 1.5 mm2"`},
		{"2 x 1,5", "1,5", `found "1,5", a number with a comma; ` + want + `; write "2 x 1.5 mm2"`},
		{"2 x", "", `found nothing; ` + want},
		{"0 x 1.5 mm2", "0", `found "0" as the number of cores; expected 1 to 100 there`},
		{"101 x 1.5 mm2", "101", `found "101" as the number of cores; expected 1 to 100 there`},
		{"99999999999999999999 x 1.5 mm2", "99999999999999999999", `found "99999999999999999999" as the number of cores; expected 1 to 100 there`},
		{"3G1.5", "G1.5", `found "G1.5" as a unit; expected a conductor size in mm2 or AWG`},
		{"12-2", "12-2", `found "12-2", which has two numbers; ` + want},
		{"-1.5 mm2", "-1.5 mm2", `found "-1.5 mm2", which is negative; expected a conductor size from 0.001 mm2 to 10000 mm2`},
	})
	checkRefusals(t, CrossSections, []refusal{
		{"16/2", "16/2", `found "16/2", which says a number of cores; expected the size of one conductor; write "16 AWG"`},
		{"2 x 1.5 mm2", "2 x 1.5 mm2", `found "2 x 1.5 mm2", which says a number of cores; expected the size of one conductor; write "1.5 mm2"`},
		{"1.5", "1.5", `found "1.5", a number without a unit; expected a conductor size such as "1.5 mm2"; write "1.5 mm2"`},
	})
}

// TestAWGDefinition holds the two gauges that define the series: ASTM B258 fixes
// the diameters 0.4600 in for 4/0 and 0.0050 in for 36.
func TestAWGDefinition(t *testing.T) {
	t.Parallel()
	for gauge, diameterInch := range map[int]float64{-3: 0.46, 36: 0.005} {
		diameterMM := diameterInch * 25.4
		want := math.Pi / 4 * diameterMM * diameterMM
		if got := float64(AWG(gauge)); math.Abs(got-want) > 1e-12*want {
			t.Errorf("area of gauge %d = %v mm2, want %v", gauge, got, want)
		}
	}
}

// TestAWGResistance checks the areas through the published resistance of solid
// annealed copper at 20 °C in ohm per 1000 ft: NBS Circular 31, Copper Wire Tables,
// with the resistivity of the International Annealed Copper Standard, 1.7241e-8
// ohm metre. The table is rounded to four digits.
func TestAWGResistance(t *testing.T) {
	t.Parallel()
	published := map[int]float64{8: 0.6282, 10: 0.9989, 12: 1.588, 14: 2.525, 16: 4.016, 18: 6.385, 20: 10.15, 22: 16.14, 24: 25.67}
	for gauge, want := range published {
		const resistivity = 17.241 // ohm mm2 per km
		ohmPerThousandFeet := resistivity / float64(AWG(gauge)) * 0.3048
		if math.Abs(ohmPerThousandFeet-want) > 0.0005*want {
			t.Errorf("gauge %d: %.5g ohm per 1000 ft, want %v", gauge, ohmPerThousandFeet, want)
		}
	}
}
