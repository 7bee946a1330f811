package conductor_test

import (
	"math"
	"testing"

	"loudlint/linter/conductor"
)

// The tables name their sources; none could be read here, so that these figures are from memory as well.
func TestMostAmps(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		c    conductor.Conductor
		want float64
	}{
		// IEC 60364-5-52 Table B.52.2, reference method C, two loaded, copper, PVC (from memory).
		{conductor.Conductor{AreaMM2: 1.5}, 19.5},
		{conductor.Conductor{AreaMM2: 2.5, Class: 5}, 27},
		{conductor.Conductor{AreaMM2: 4, Class: 1}, 36},
		{conductor.Conductor{AreaMM2: 6}, 46},
		{conductor.Conductor{AreaMM2: 10}, 63},
		{conductor.Conductor{AreaMM2: 16}, 85},
		// BS 7671 Tables 4D2A and 4F3A (from memory).
		{conductor.Conductor{AreaMM2: 1}, 15},
		{conductor.Conductor{AreaMM2: 0.75}, 6},
		{conductor.Conductor{AreaMM2: 0.5}, 3},
		// NEC Tables 310.16 (60 °C), 402.5 and 725.144 (from memory).
		{conductor.Conductor{IsAWG: true, AWG: 10}, 30},
		{conductor.Conductor{IsAWG: true, AWG: 12}, 20},
		{conductor.Conductor{IsAWG: true, AWG: 14}, 15},
		{conductor.Conductor{IsAWG: true, AWG: 16}, 8},
		{conductor.Conductor{IsAWG: true, AWG: 18}, 6},
		{conductor.Conductor{IsAWG: true, AWG: 22}, 3},
		{conductor.Conductor{IsAWG: true, AWG: 0}, 125},
		{conductor.Conductor{IsAWG: true, AWG: -3}, 195},
	} {
		got, ok := conductor.MostAmps(test.c, 20)
		if !ok {
			t.Errorf("%+v: no figure", test.c)
			continue
		}
		within(t, got.Table, got.Amps, test.want, 1e-12)
		if got.Smaller != "" || got.FactorBasis != "" || got.Table == "" {
			t.Errorf("%+v: %+v", test.c, got)
		}
	}
}

// A size between two rows has the figure of the smaller one; one below all has none.
func TestMostAmpsBetweenSizes(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		c       conductor.Conductor
		want    float64
		smaller string
	}{
		{conductor.Conductor{AreaMM2: 2}, 19.5, "1.5 mm²"},
		{conductor.Conductor{AreaMM2: 1000}, 299, "120 mm²"},
		{conductor.Conductor{IsAWG: true, AWG: 20}, 3, "22 AWG"},
		{conductor.Conductor{IsAWG: true, AWG: 13}, 15, "14 AWG"},
		{conductor.Conductor{IsAWG: true, AWG: 5}, 55, "6 AWG"},
	} {
		got, ok := conductor.MostAmps(test.c, 30)
		if !ok || got.Smaller != test.smaller {
			t.Errorf("%+v: %+v, %t; want the figure of %s", test.c, got, ok, test.smaller)
		}
		within(t, test.smaller, got.Amps, test.want, 1e-12)
	}
	for _, c := range []conductor.Conductor{{AreaMM2: 0.22}, {IsAWG: true, AWG: 28}, {}} {
		if got, ok := conductor.MostAmps(c, 20); ok {
			t.Errorf("%+v has a figure: %+v", c, got)
		}
	}
}

// IEC 60364-5-52 Table B.52.14 (PVC, in air) and NEC Table 310.15(B)(1) (60 °C), both from memory: two decimals each.
func TestWarmth(t *testing.T) {
	t.Parallel()
	metric, american := conductor.Conductor{AreaMM2: 1.5}, conductor.Conductor{IsAWG: true, AWG: 14}
	for _, test := range []struct {
		c       conductor.Conductor
		celsius float64
		want    float64
	}{
		{metric, 10, 1},
		{metric, 30, 1},
		{metric, 35, 0.94},
		{metric, 40, 0.87},
		{metric, 45, 0.79},
		{metric, 50, 0.71},
		{metric, 55, 0.61},
		{metric, 60, 0.50},
		{metric, 70, 0.50}, // hotter than the table: its last row
		{american, 35, 0.91},
		{american, 40, 0.82},
		{american, 45, 0.71},
		{american, 50, 0.58},
		{american, 55, 0.41},
	} {
		got, ok := conductor.MostAmps(test.c, test.celsius)
		if !ok || math.Abs(got.Factor-test.want) > 0.0051 {
			t.Errorf("%+v at %g °C: factor %.4f, want %g", test.c, test.celsius, got.Factor, test.want)
		}
		within(t, "amps", got.Amps, got.Tabled*got.Factor, 1e-12)
		if (got.FactorBasis == "") != (test.celsius <= 30) {
			t.Errorf("%g °C: basis %q", test.celsius, got.FactorBasis)
		}
	}
	if factor, basis := conductor.WarmthFactor(40); math.Abs(factor-0.87) > 0.005 || basis == "" {
		t.Errorf("at 40 °C: %g, %q", factor, basis)
	}
	if factor, basis := conductor.WarmthFactor(20); factor < 1 || factor > 1 || basis != "" {
		t.Errorf("at 20 °C: %g, %q", factor, basis)
	}
}
