package supply_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"loudlint/linter/supply"
)

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %g, want %g ± %g", name, got, want, tolerance)
	}
}

// TestPublishedBatteries holds the size of a battery against published examples.
func TestPublishedBatteries(t *testing.T) {
	t.Parallel()
	five, fifteen := 5.0/60, 15.0/60
	for _, c := range []struct {
		source       string
		battery      supply.Battery
		wantAmpHours float64
		wantDerating float64
		tolerance    float64
	}{
		{
			"BS 5839-1:2025 Annex E, worked example of the trade guide \"How panel standby batteries are sized\": 8.32 Ah, 8.32/20 = 0.416 < 0.75",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.25, AnnouncementHours: 0.5, AnnouncementAmps: 0.75, Derating: 1.75, Ageing: 1.25}, 8.320, 1.75, 0.0005,
		},
		{
			"test vector 9 of the project's reference values, derived from the formula of BS 5839-1: 78.06 Ah, 78.06/20 = 3.90 < 22",
			supply.Battery{StandbyHours: 24, StandbyAmps: 1.8, AnnouncementHours: 0.5, AnnouncementAmps: 22, Derating: 1.75, Ageing: 1.25}, 78.06, 1.75, 0.005,
		},
		{
			"the same with D = 1: 67.75 Ah",
			supply.Battery{StandbyHours: 24, StandbyAmps: 1.8, AnnouncementHours: 0.5, AnnouncementAmps: 22, Derating: 1, Ageing: 1.25}, 67.75, 1, 0.005,
		},
		{
			"figures of the page \"How to Calculate Fire Alarm Standby Battery Size\" with half an hour and D = 1: 1.6875 Ah",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.05, AnnouncementHours: 0.5, AnnouncementAmps: 0.3, Derating: 1, Ageing: 1.25}, 1.6875, 1, 1e-9,
		},
		{
			"the same with D = 1.75: 1.828 Ah (the page drops T2 and prints 1.875)",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.05, AnnouncementHours: 0.5, AnnouncementAmps: 0.3, Derating: 1.75, Ageing: 1.25}, 1.828, 1.75, 0.0005,
		},
		{
			"the figure that page prints is right for an alarm of one hour",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.05, AnnouncementHours: 1, AnnouncementAmps: 0.3, Derating: 1, Ageing: 1.25}, 1.875, 1, 1e-9,
		},
		{
			"NFPA 72 10.6.7, study page: 0.25 A for 24 h and 1.5 A for 5 min = 6.125 Ah before margin",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.25, AnnouncementHours: five, AnnouncementAmps: 1.5, Derating: 1, Ageing: 1}, 6.125, 1, 1e-9,
		},
		{
			"the same × 1.2 = 7.35 Ah",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.25, AnnouncementHours: five, AnnouncementAmps: 1.5, Derating: 1, Ageing: 1.2}, 7.35, 1, 1e-9,
		},
		{
			"the same with 15 min for voice: 6.375 Ah",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.25, AnnouncementHours: fifteen, AnnouncementAmps: 1.5, Derating: 1, Ageing: 1}, 6.375, 1, 1e-9,
		},
		{
			"the same × 1.2 = 7.65 Ah",
			supply.Battery{StandbyHours: 24, StandbyAmps: 0.25, AnnouncementHours: fifteen, AnnouncementAmps: 1.5, Derating: 1, Ageing: 1.2}, 7.65, 1, 1e-9,
		},
		{
			"slow enough for the 20 h rate: 24 h and 30 min at 1 A = 1.25 × 24.5 Ah, 30.6/20 ≥ 1, so D = 1",
			supply.Battery{StandbyHours: 24, StandbyAmps: 1, AnnouncementHours: 0.5, AnnouncementAmps: 1, Derating: 1.75, Ageing: 1.25}, 30.625, 1, 1e-9,
		},
	} {
		got := c.battery.Capacity()
		near(t, c.source, got.AmpHours, c.wantAmpHours, c.tolerance)
		near(t, c.source+": D", got.Derating, c.wantDerating, 1e-12)
		if got.AtRate {
			t.Errorf("%s: the 20 h rate decides", c.source)
		}
	}
}

// TestEditionOf2002 holds the formula against the one of BS 5839-1:2002, read in
// a forum: 1.25·(T1·I1 + D·I2/2).
func TestEditionOf2002(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ t1, i1, i2, d float64 }{{24, 0.25, 0.75, 1.75}, {72, 0.1, 3, 1.75}, {48, 1, 0.2, 1}} {
		b := supply.Battery{StandbyHours: c.t1, StandbyAmps: c.i1, AnnouncementHours: 0.5, AnnouncementAmps: c.i2, Derating: 1.75, Ageing: 1.25}
		near(t, "2002", b.Capacity().AmpHours, 1.25*(c.t1*c.i1+c.d*c.i2/2), 1e-9)
	}
}

// TestCapacityAgainstSearch finds the smallest battery another way: it empties
// batteries of growing capacity, minute by minute, and takes the first one that
// lasts.
func TestCapacityAgainstSearch(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(5839, 1))
	const step = 0.05 // Ah
	border := 0
	for n := range 80 {
		standbyMinutes, announcementMinutes := 30*random.IntN(20), 5*random.IntN(40)
		b := supply.Battery{
			StandbyHours: float64(standbyMinutes) / 60, StandbyAmps: 2 * random.Float64(),
			AnnouncementHours: float64(announcementMinutes) / 60, AnnouncementAmps: 3 * random.Float64(),
			Derating: 1 + random.Float64(), Ageing: 1 + random.Float64()/2,
		}
		if n%4 == 0 { // near the border: I2 just above C/20 of a battery that is not derated
			b.StandbyHours = 10 + b.StandbyHours
			standbyMinutes += 600
			b.AnnouncementAmps = 1.01 * b.Ageing * b.StandbyHours * b.StandbyAmps / (20 - b.Ageing*b.AnnouncementHours)
		}
		lasts := func(ampHours float64) bool {
			left := ampHours / b.Ageing
			for range standbyMinutes {
				left -= b.StandbyAmps / 60
			}
			pull := b.AnnouncementAmps
			if ampHours/20 < b.AnnouncementAmps {
				pull *= b.Derating
			}
			for range announcementMinutes {
				left -= pull / 60
			}
			return left >= -1e-9
		}
		found := 0.0
		for n := 0; !lasts(found); n++ {
			found = float64(n) * step
		}
		got := b.Capacity()
		if got.AtRate {
			border++
		}
		if got.AmpHours > found+1e-6 || got.AmpHours < found-step-1e-6 {
			t.Errorf("%+v: %g Ah, found by search %g", b, got.AmpHours, found)
		}
	}
	if border == 0 {
		t.Error("no case lies on the border where the 20 h rate decides: the search shows nothing about it")
	}
}

// TestBorder is the case in which each derating asks for the other.
func TestBorder(t *testing.T) {
	t.Parallel()
	// 20·I2 = 20 Ah. D = 1: 1.25·(15.2 + 0.5) = 19.625 Ah, too little for the
	// 20 h rate. D = 1.75: 1.25·(15.2 + 0.875) = 20.094 Ah, enough for it.
	b := supply.Battery{StandbyHours: 24, StandbyAmps: 15.2 / 24, AnnouncementHours: 0.5, AnnouncementAmps: 1, Derating: 1.75, Ageing: 1.25}
	got := b.Capacity()
	if !got.AtRate {
		t.Errorf("the 20 h rate does not decide: %+v", got)
	}
	near(t, "border", got.AmpHours, 20, 1e-9)
	near(t, "without factors", b.Bare(), 15.7, 1e-9)
}

// TestPublishedHeat holds heat against the page "Amplifier heat output and
// current requirements": 1000 W out of class AB (60 %) and class D (85 %).
func TestPublishedHeat(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ efficiency, input, heat, btu float64 }{{0.60, 1667, 667, 2276}, {0.85, 1176, 176, 602}} {
		input := supply.Input(1000, c.efficiency)
		heat := supply.Heat(input, 1000)
		near(t, "input", input, c.input, 0.5)
		near(t, "heat", heat, c.heat, 0.5)
		near(t, "BTU/h", supply.BTUPerHour(heat), c.btu, 1.5) // the page rounds watts first
	}
	near(t, "1 W", supply.BTUPerHour(1), 3.412142, 1e-9)
	// The BTU of the international table is the heat for 1 lb of water and 1 °F:
	// 453.59237 g · 5/9 K · 4.1868 J/(g·K).
	near(t, "from its definition", 1/supply.BTUPerHour(1), 453.59237*5/9*4.1868/3600, 1e-7)
}

// TestNormalUse: one eighth is 9 dB below rated output (IEC 60065).
func TestNormalUse(t *testing.T) {
	t.Parallel()
	near(t, "dB", 10*math.Log10(supply.NormalUse), -9, 0.04)
}

// TestLawOfClassB works out the draw of an ideal class B stage by adding up its
// supply current over a sine, and finds the law and its efficiency again.
func TestLawOfClassB(t *testing.T) {
	t.Parallel()
	const rail, ohm, steps = 40.0, 8.0, 10000
	into := func(share, ohm float64) (in, out float64) {
		peak := rail * math.Sqrt(share)
		for n := range steps {
			volts := peak * math.Sin(2*math.Pi*(float64(n)+0.5)/steps)
			in += rail * math.Abs(volts) / ohm / steps
			out += volts * volts / ohm / steps
		}
		return in, out
	}
	drawn := func(share float64) (in, out float64) { return into(share, ohm) }
	full, rated := drawn(1)
	near(t, "efficiency", rated/full, math.Pi/4, 1e-6)
	for _, share := range []float64{1.0 / 8, 0.5, 1} {
		in, _ := drawn(share)
		near(t, "draw", supply.WithVolts.At(share, 0, full), in, 1e-6*full)
	}
	half, _ := into(1, 2*ohm)
	near(t, "half the load", supply.Loaded(0.5, 0, full), half, 1e-6*full)
	both, _ := into(1.0/8, 2*ohm)
	near(t, "half the load at one eighth", supply.WithVolts.At(1.0/8, 0, supply.Loaded(0.5, 0, full)), both, 1e-6*full)
	if got := supply.LawOf(0.99*rated, 0, full); got != supply.WithVolts {
		t.Error("a class B stage is taken for a switching one")
	}
	if got := supply.LawOf(1.01*rated, 0, full); got != supply.WithPower {
		t.Error("a stage better than class B can be is taken for one")
	}
	if got := supply.LawOf(0, 20, 20); got != supply.WithVolts {
		t.Error("what draws the same always is taken for a switching amplifier")
	}
}

func TestDrawBetweenIdleAndFull(t *testing.T) {
	t.Parallel()
	for _, law := range []supply.Law{supply.WithVolts, supply.WithPower} {
		near(t, "idle", law.At(0, 25, 430), 25, 0)
		near(t, "full", law.At(1, 25, 430), 430, 1e-9)
	}
	near(t, "switching", supply.WithPower.At(supply.NormalUse, 20, 300), 20+280.0/8, 1e-9)
	if a, b := supply.WithVolts.At(supply.NormalUse, 20, 300), supply.WithPower.At(supply.NormalUse, 20, 300); a <= b {
		t.Errorf("%g is not above %g: it is to be the safe side", a, b)
	}
}

func TestAirAndCurrent(t *testing.T) {
	t.Parallel()
	// By hand: 1 m³ of air takes 1.2 kg · 1005 J/(kg·K) · 10 K = 12 060 J; 201 W
	// over an hour is 723 600 J = 60 m³.
	near(t, "air", supply.AirFlow(201, 10), 60, 1e-9)
	near(t, "cfm", supply.CubicFeetPerMinute(60), 35.3147, 1e-4) // 1 m³ is 35.3147 cubic feet
	near(t, "current", supply.MainsAmps(2300, 230, 1), 10, 1e-12)
	near(t, "current", supply.MainsAmps(1610, 230, 0.7), 10, 1e-9)
}
