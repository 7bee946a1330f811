package conductor_test

import (
	"encoding/json"
	"math"
	"os"
	"strings"
	"testing"

	"loudlint/linter/conductor"
)

// published is testdata/reference/conductors.json, which names the source of each table.
type published struct {
	IEC60228 struct {
		Rows []struct{ MM2, RigidPlain, RigidCoated, FlexiblePlain, FlexibleCoated float64 }
	}
	AWG struct {
		ToleranceRelative float64
		Rows              []struct {
			AWG                                         int
			DiameterMM, AreaMM2, OhmPerKM, OhmPer1000ft float64
		}
	}
	NECTable8 struct {
		Rows []struct {
			AWG                                          int
			Solid, Stranded, SolidCoated, StrandedCoated float64
		}
	}
	Temperature   factors
	IECCorrection factors
}

type factors struct {
	ToleranceRelative float64
	Rows              []struct{ Celsius, Factor float64 }
}

const (
	feetPerKM     = 1000 / 0.3048
	per1000FtToKM = feetPerKM / 1000
)

func readPublished(t *testing.T) published {
	t.Helper()
	text, err := os.ReadFile("../../testdata/reference/conductors.json")
	if err != nil {
		t.Fatal(err)
	}
	var p published
	if err := json.Unmarshal(text, &p); err != nil {
		t.Fatal(err)
	}
	if len(p.IEC60228.Rows) != 15 || len(p.AWG.Rows) != 17 || len(p.NECTable8.Rows) != 6 ||
		len(p.Temperature.Rows) == 0 || len(p.IECCorrection.Rows) == 0 {
		t.Fatal("testdata/reference/conductors.json: a table is missing rows")
	}
	return p
}

func perKM(t *testing.T, c conductor.Conductor, celsius float64) float64 {
	t.Helper()
	r, err := conductor.PerMetre(c, celsius)
	if err != nil {
		t.Fatal(err)
	}
	return r.OhmPerMetre * 1000
}

func within(t *testing.T, what string, got, want, relative float64) {
	t.Helper()
	if !(math.Abs(got-want) <= relative*math.Abs(want)) {
		t.Errorf("%s: got %.7g, want %.7g within %g", what, got, want, relative)
	}
}

// IEC 60228:2004, Tables 1 to 3, cell by cell; rows above 16 mm² are from memory. Class 6 is Table 4, which repeats Table 3 at these sizes (from memory).
func TestIEC60228CellByCell(t *testing.T) {
	t.Parallel()
	for _, row := range readPublished(t).IEC60228.Rows {
		for _, cell := range []struct {
			classes []int
			coated  bool
			want    float64
		}{
			{[]int{1, 2}, false, row.RigidPlain},
			{[]int{1, 2}, true, row.RigidCoated},
			{[]int{5, 6, 0}, false, row.FlexiblePlain},
			{[]int{5, 6, 0}, true, row.FlexibleCoated},
		} {
			for _, class := range cell.classes {
				c := conductor.Conductor{AreaMM2: row.MM2, Class: class, Coated: cell.coated}
				r, err := conductor.PerMetre(c, 20)
				if err != nil {
					t.Fatal(err)
				}
				within(t, r.Basis(), r.OhmPerMetre*1000, cell.want, 1e-12)
				if r.Computed || r.Assumed != (class == 0) {
					t.Errorf("%+v: computed %t, assumed %t", c, r.Computed, r.Assumed)
				}
			}
		}
	}
}

// ASTM B258 diameters and areas; NBS Circular 31 (Copper Wire Tables) resistances of solid annealed copper at 20 °C.
func TestAWGCellByCell(t *testing.T) {
	t.Parallel()
	p := readPublished(t).AWG
	for _, row := range p.Rows {
		c := conductor.Conductor{IsAWG: true, AWG: row.AWG, Construction: conductor.Solid}
		area := conductor.CrossSectionMM2(c)
		// Half a unit in the last printed place.
		if math.Abs(2*math.Sqrt(area/math.Pi)-row.DiameterMM) > 0.5001e-4 || math.Abs(area-row.AreaMM2) > 0.5001e-4 {
			t.Errorf("%d AWG: area %.6f mm², want %.4f mm² and %.4f mm across", row.AWG, area, row.AreaMM2, row.DiameterMM)
		}
		got := perKM(t, c, 20)
		within(t, "ohm/km", got, row.OhmPerKM, p.ToleranceRelative)
		within(t, "ohm/1000 ft", got/per1000FtToKM, row.OhmPer1000ft, p.ToleranceRelative)
		c.Construction = conductor.NotSaid
		within(t, "construction not said", perKM(t, c, 20), got, 0)
	}
}

// NEC Chapter 9 Table 8 is at 75 °C. The solid column is the 20 °C value times 1.2162 within its rounding (16 AWG is
// printed one unit higher); the others follow by their ratio.
func TestNECTable8(t *testing.T) {
	t.Parallel()
	for _, row := range readPublished(t).NECTable8.Rows {
		unit := 0.01
		if row.Solid < 1 {
			unit = 0.001
		}
		for _, cell := range []struct {
			construction conductor.Construction
			coated       bool
			want         float64
		}{
			{conductor.Solid, false, row.Solid},
			{conductor.Stranded, false, row.Stranded},
			{conductor.Solid, true, row.SolidCoated},
			{conductor.Stranded, true, row.StrandedCoated},
		} {
			c := conductor.Conductor{IsAWG: true, AWG: row.AWG, Construction: cell.construction, Coated: cell.coated}
			r, err := conductor.PerMetre(c, 75)
			if err != nil {
				t.Fatal(err)
			}
			if got := r.OhmPerMetre * 1000 / per1000FtToKM; math.Abs(got-cell.want) > unit {
				t.Errorf("%s: got %.4f ohm/1000 ft, want %g", r.Basis(), got, cell.want)
			}
			if r.Computed || r.Assumed {
				t.Errorf("%+v: marked as computed (%t) or assumed (%t)", c, r.Computed, r.Assumed)
			}
		}
	}
}

func TestTemperature(t *testing.T) {
	t.Parallel()
	p := readPublished(t)
	for _, row := range p.Temperature.Rows {
		within(t, "IEC 60028", conductor.AtTemperature(1, row.Celsius), row.Factor, 5e-5)
		got := perKM(t, conductor.Conductor{AreaMM2: 1.5, Class: 5}, row.Celsius)
		within(t, "1.5 mm² class 5", got, 13.3*row.Factor, 5e-5)
	}
	for _, row := range p.IECCorrection.Rows {
		within(t, "IEC 60228 correction to 20 °C", 1/conductor.AtTemperature(1, row.Celsius), row.Factor, p.IECCorrection.ToleranceRelative)
	}
	// The exact form of that correction, kt = 254.5/(234.5 + t) (IEC 60228, from memory; values derived), which is
	// 1/254.5 = 0.003929 per kelvin.
	for celsius, kt := range map[float64]float64{10: 1.0409, 30: 0.9622, 50: 0.8946, 70: 0.8358, 90: 0.7843} {
		within(t, "IEC 60228 correction, exact", 1/conductor.AtTemperature(1, celsius), kt, 1e-4)
	}
}

func TestSizesNotHeld(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		c    conductor.Conductor
		want float64 // ohm/km at 20 °C, by hand
	}{
		// 19.95 = 13.3 × 1.5, the highest product of class 5 plain.
		{conductor.Conductor{AreaMM2: 0.22, Class: 5}, 19.95 / 0.22},
		{conductor.Conductor{AreaMM2: 20}, 19.95 / 20},
		// 19.35 = 0.387 × 50, of class 2 plain; 19.55 = 0.391 × 50, coated; 20.55 = 13.7 × 1.5, of class 5 coated.
		{conductor.Conductor{AreaMM2: 0.945, Class: 2}, 19.35 / 0.945},
		{conductor.Conductor{AreaMM2: 2, Class: 1, Coated: true}, 19.55 / 2},
		{conductor.Conductor{AreaMM2: 0.34, Coated: true}, 20.55 / 0.34},
		// 1.98/1.93 at 12 AWG is the highest ratio stranded to solid; 8.45/7.77 at 18 AWG that of stranded and coated.
		{conductor.Conductor{IsAWG: true, AWG: 22, Construction: conductor.Stranded}, 52.962 * 1.98 / 1.93},
		{conductor.Conductor{IsAWG: true, AWG: 13, Construction: conductor.Stranded, Coated: true}, 6.571 * 8.45 / 7.77},
	} {
		r, err := conductor.PerMetre(test.c, 20)
		if err != nil {
			t.Fatal(err)
		}
		within(t, r.Basis(), r.OhmPerMetre*1000, test.want, 1e-4)
		if !r.Computed {
			t.Errorf("%s: not marked as computed", r.Basis())
		}
	}
}

// A size between two of the table must come out no lower than at the larger and, per area, than at either neighbour.
func TestRuleIsCautious(t *testing.T) {
	t.Parallel()
	rows := readPublished(t).IEC60228.Rows
	for i := range rows[1:] {
		for class, figures := range map[int][2]float64{
			2: {rows[i].RigidPlain, rows[i+1].RigidPlain},
			5: {rows[i].FlexiblePlain, rows[i+1].FlexiblePlain},
		} {
			between := math.Sqrt(rows[i].MM2 * rows[i+1].MM2)
			got := perKM(t, conductor.Conductor{AreaMM2: between, Class: class}, 20)
			product := max(figures[0]*rows[i].MM2, figures[1]*rows[i+1].MM2)
			if got*between < product*(1-1e-12) || got*between > 1.08*product {
				t.Errorf("%.3g mm² class %d: computed %.4f ohm/km, neighbours %v", between, class, got, figures)
			}
		}
	}
}

func TestBasis(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		c       conductor.Conductor
		celsius float64
		want    string
	}{
		{
			conductor.Conductor{AreaMM2: 1.5, Class: 5}, 20,
			"IEC 60228 Table 3, class 5, plain copper: at most 13.3 ohm/km at 20 °C",
		},
		{
			conductor.Conductor{AreaMM2: 2.5, Class: 1, Coated: true}, 50,
			"IEC 60228 Table 1, class 1, metal-coated copper: at most 7.56 ohm/km at 20 °C; taken to 50 °C by 0.00393 per K (IEC 60028)",
		},
		{
			conductor.Conductor{AreaMM2: 1.5}, 20,
			"IEC 60228 Table 3, class 5, plain copper: at most 13.3 ohm/km at 20 °C; class not said, class 5 assumed as the highest",
		},
		{
			conductor.Conductor{AreaMM2: 0.34, Class: 2}, 20,
			"IEC 60228 Table 2, class 2, plain copper: 0.34 mm² is not one of the sizes held, so computed as 19.35 ohm·mm²/km, the highest of the table, over its area: 56.91 ohm/km at 20 °C",
		},
		{
			conductor.Conductor{IsAWG: true, AWG: 16}, 20,
			"16 AWG solid, nominal: area 1.309 mm² by ASTM B258, copper of 17.241 ohm·mm²/km (100 % IACS): 13.17 ohm/km at 20 °C; construction not said, solid assumed: a stranded one can be about 2 % higher",
		},
		{
			conductor.Conductor{IsAWG: true, AWG: 16, Construction: conductor.Stranded}, 20,
			"16 AWG stranded, nominal: area 1.309 mm² by ASTM B258, copper of 17.241 ohm·mm²/km (100 % IACS), × 1.02 for being stranded (NEC Chapter 9 Table 8): 13.44 ohm/km at 20 °C",
		},
		{
			conductor.Conductor{IsAWG: true, AWG: -1, Construction: conductor.Stranded, Coated: true}, 20,
			"2/0 AWG stranded, metal-coated, nominal: area 67.43 mm² by ASTM B258, copper of 17.241 ohm·mm²/km (100 % IACS), × 1.088 for being stranded, metal-coated (this size not held: the highest ratio of NEC Chapter 9 Table 8): 0.2781 ohm/km at 20 °C",
		},
	} {
		r, err := conductor.PerMetre(test.c, test.celsius)
		if err != nil {
			t.Fatal(err)
		}
		if got := r.Basis(); got != test.want {
			t.Errorf("basis\n got %s\nwant %s", got, test.want)
		}
	}
}

func TestErrors(t *testing.T) {
	t.Parallel()
	metric := conductor.Conductor{AreaMM2: 1.5}
	for _, test := range []struct {
		c       conductor.Conductor
		celsius float64
		want    string
	}{
		{conductor.Conductor{}, 20, "looking up the resistance of 0 mm²: its area is not between 0.01 and 1000 mm²"},
		{conductor.Conductor{AreaMM2: -1}, 20, "area is not between"},
		{conductor.Conductor{AreaMM2: math.NaN()}, 20, "area is not between"},
		{conductor.Conductor{AreaMM2: math.Inf(1)}, 20, "area is not between"},
		{conductor.Conductor{AreaMM2: 1.5, Class: 3}, 20, "looking up the resistance of 1.5 mm²: class 3 is none of 1, 2, 5 and 6"},
		{conductor.Conductor{AreaMM2: 1.5, AWG: 16}, 20, "it is metric but has a gauge of 16 AWG"},
		{conductor.Conductor{AreaMM2: 1.5, Construction: conductor.Solid}, 20, "say its class"},
		{conductor.Conductor{AreaMM2: 1.5, Construction: 9}, 20, "construction 9"},
		{conductor.Conductor{IsAWG: true, AWG: 16, AreaMM2: 1.5}, 20, "both a gauge and an area"},
		{conductor.Conductor{IsAWG: true, AWG: 16, Class: 5}, 20, "class 5 is of IEC 60228"},
		{conductor.Conductor{IsAWG: true, AWG: 41}, 20, "looking up the resistance of 41 AWG: gauges run from 4/0 (-3) to 40"},
		{conductor.Conductor{IsAWG: true, AWG: -4}, 20, "looking up the resistance of -4 AWG: gauges run"},
		{metric, math.NaN(), "looking up the resistance of 1.5 mm²: NaN °C is not between -50 and 200 °C"},
		{metric, 201, "201 °C is not between"},
		{metric, -51, "-51 °C is not between"},
	} {
		r, err := conductor.PerMetre(test.c, test.celsius)
		if err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("%+v at %g °C: got %v and error %v, want %q", test.c, test.celsius, r, err, test.want)
		}
	}
}

func TestNextLarger(t *testing.T) {
	t.Parallel()
	climb := func(c conductor.Conductor) (sizes []float64) {
		for {
			next, ok := conductor.NextLarger(c)
			if !ok {
				return sizes
			}
			if conductor.CrossSectionMM2(next) <= conductor.CrossSectionMM2(c) || perKM(t, next, 20) >= perKM(t, c, 20) {
				t.Errorf("%+v is not larger than %+v", next, c)
			}
			size := next.AreaMM2
			next.AreaMM2 = c.AreaMM2
			if c.IsAWG {
				size = float64(next.AWG)
				next.AWG = c.AWG
				next.AreaMM2 = 0
			}
			if next != c {
				t.Errorf("stepping changed more than the size: %+v to %+v", c, next)
			}
			if c.IsAWG {
				next.AWG = int(size)
			} else {
				next.AreaMM2 = size
			}
			sizes = append(sizes, size)
			c = next
		}
	}
	for _, test := range []struct {
		from conductor.Conductor
		want []float64
	}{
		{conductor.Conductor{AreaMM2: 0.22, Class: 5}, []float64{0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16}},
		{conductor.Conductor{AreaMM2: 0.945, Class: 2, Coated: true}, []float64{1, 1.5, 2.5, 4, 6, 10, 16}}, // TV7: 0.945 → 1.0 mm²
		{conductor.Conductor{AreaMM2: 1.5 * (1 - 1e-12)}, []float64{2.5, 4, 6, 10, 16}},
		{conductor.Conductor{AreaMM2: 16}, nil},
		{conductor.Conductor{AreaMM2: 70}, nil},
		{conductor.Conductor{IsAWG: true, AWG: 30}, []float64{24, 22, 20, 18, 16, 14, 12, 10, 8}},
		{conductor.Conductor{IsAWG: true, AWG: 17, Construction: conductor.Solid}, []float64{16, 14, 12, 10, 8}},
		{conductor.Conductor{IsAWG: true, AWG: 12, Construction: conductor.Solid}, []float64{10, 8}},
		{conductor.Conductor{IsAWG: true, AWG: 8}, nil},
		{conductor.Conductor{IsAWG: true, AWG: -3}, nil},
	} {
		got := climb(test.from)
		if len(got) != len(test.want) {
			t.Errorf("from %+v: got %v, want %v", test.from, got, test.want)
			continue
		}
		for i := range got {
			within(t, "size", got[i], test.want[i], 1e-12)
		}
	}
}

// The rules of thumb of gauge tables: three gauges are about a factor of two, ten about a factor of ten.
func TestGaugeRulesOfThumb(t *testing.T) {
	t.Parallel()
	for gauge := -3; gauge <= 30; gauge++ {
		r := func(n int) float64 {
			return perKM(t, conductor.Conductor{IsAWG: true, AWG: n, Construction: conductor.Solid}, 20)
		}
		within(t, "three gauges", r(gauge+3)/r(gauge), 2, 0.01)
		within(t, "ten gauges", r(gauge+10)/r(gauge), 10, 0.02)
	}
}

func TestLoopOhm(t *testing.T) {
	t.Parallel()
	// 150 m of 1.5 mm² class 5: 2 × 150 × 0.0133 = 3.99 ohm.
	within(t, "loop", conductor.LoopOhm(0.0133, 150), 3.99, 1e-12)
}
