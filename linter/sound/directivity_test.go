package sound

import (
	"math"
	"testing"
)

// sphereQ is 4π over the integral of a ratio of intensities over all directions, as
// a plain sum over rings and sectors: no part of what it tests is in it.
func sphereQ(ratio func(to Vector) float64) float64 {
	const rings, sectors = 360, 72
	sum := 0.0
	for i := range rings {
		theta := (float64(i) + 0.5) * math.Pi / rings
		for j := range sectors {
			phi := (float64(j) + 0.5) * 2 * math.Pi / sectors
			sum += math.Sin(theta) * ratio(Vector{math.Sin(theta) * math.Cos(phi), math.Sin(theta) * math.Sin(phi), math.Cos(theta)})
		}
	}
	return 4 * math.Pi / (sum * math.Pi / rings * 2 * math.Pi / sectors)
}

func TestSphereSumAgainstClosedForms(t *testing.T) {
	t.Parallel()
	within(t, "all round", sphereQ(func(Vector) float64 { return 1 }), 1, 1e-4)
	within(t, "half-space", sphereQ(func(to Vector) float64 { return float64(btoi(to.Z > 0)) }), 2, 1e-3)
	// A cone of half-angle a: Q = 2/(1 − cos a).
	within(t, "cone of 60°", sphereQ(func(to Vector) float64 { return float64(btoi(to.Z > math.Cos(math.Pi/6))) }), 2/(1-math.Cos(math.Pi/6)), 0.05)
	// A dipole, cos²: Q = 3.
	within(t, "dipole", sphereQ(func(to Vector) float64 { return to.Z * to.Z }), 3, 1e-3)
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

func TestDirectivityFactor(t *testing.T) {
	t.Parallel()
	within(t, "nil", (*Directivity)(nil).Q()[3], 1, 0)
	within(t, "all round", NewDirectivity(Coverage{HorizontalDegrees: 360, VerticalDegrees: 360}).Q()[3], 1, 1e-9)
	within(t, "all round in half-space", NewDirectivity(Coverage{HorizontalDegrees: 360, VerticalDegrees: 360, HalfSpace: true}).Q()[3], 2, 1e-9)
	// A narrow one, by the flat approximation: ∫Γ = (1 − b)·π·h·v/κ + 4π·b.
	for _, degrees := range []float64{10, 20} {
		half := degrees / 2 * math.Pi / 180
		want := 4 * math.Pi / ((1-backRatio)*math.Pi*half*half/kappa + 4*math.Pi*backRatio)
		within(t, "narrow", NewDirectivity(Coverage{HorizontalDegrees: degrees, VerticalDegrees: degrees}).Q()[3], want, 0.01*want)
	}
}

// Energy is consistent: Q is what a sum over the sphere of the very ratios that the
// field uses comes to, in every octave.
func TestDirectivityFactorIsThatOfTheRatios(t *testing.T) {
	t.Parallel()
	for _, c := range []Coverage{
		{HorizontalDegrees: 90, VerticalDegrees: 90},
		{HorizontalDegrees: 90, VerticalDegrees: 40},
		{HorizontalDegrees: 60, VerticalDegrees: 120, HalfSpace: true},
		{HorizontalDegrees: 180, VerticalDegrees: 180, FromHz: 4000},
		{HorizontalDegrees: 40, VerticalDegrees: 20, Q: Bands{1.5, 2, 5, 10, 20, 35, 50}},
	} {
		d := NewDirectivity(c)
		for _, k := range []int{0, 3, 6} {
			got := sphereQ(func(to Vector) float64 { return fromDB(d.OffAxisDB(Vector{Z: 1}, to, 30)[k]) })
			within(t, "Q", d.Q()[k], got, 0.005*got)
		}
	}
}

func TestDirectivityAtItsAngles(t *testing.T) {
	t.Parallel()
	d := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 40})
	level := func(sideways, up float64, k int) float64 {
		// Looking along x; y is left.
		sin, cos := math.Sincos(sideways * math.Pi / 180)
		sinUp, cosUp := math.Sincos(up * math.Pi / 180)
		return d.OffAxisDB(Vector{X: 1}, Vector{cos * cosUp, sin * cosUp, sinUp}, 0)[k]
	}
	for _, test := range []struct {
		sideways, up float64
		octave       int
		want         float64
	}{
		{0, 0, 3, 0}, {45, 0, 3, -6}, {-45, 0, 3, -6}, {0, 20, 3, -6}, {0, -20, 5, -6},
		{90, 0, 2, -6}, // angles double with each octave below 1 kHz
		{180, 0, 1, -6},
		{0, 40, 2, -6}, {0, 80, 1, -6},
		{180, 0, 3, -25}, {0, 90, 3, -25},
	} {
		within(t, "level", level(test.sideways, test.up, test.octave), test.want, 0.01)
	}
	turned := d.OffAxisDB(Vector{X: 1}, Vector{math.Cos(math.Pi / 4), 0, math.Sin(math.Pi / 4)}, 90)
	within(t, "turned by 90°", turned[3], -6, 0.01)
}

// Straight down, the horizontal angle lies along x; roll turns it.
func TestDirectivityStraightDown(t *testing.T) {
	t.Parallel()
	d := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 40})
	for _, test := range []struct {
		to   Vector
		roll float64
		want float64
	}{
		{Vector{1, 0, -1}, 0, -6},
		{Vector{0, 1, -1}, 90, -6},
		{Vector{0, math.Tan(20 * math.Pi / 180), -1}, 0, -6},
	} {
		within(t, "level", d.OffAxisDB(Vector{Z: -1}, test.to, test.roll)[3], test.want, 0.01)
		within(t, "level, no aim given", d.OffAxisDB(Vector{}, test.to, test.roll)[3], test.want, 0.01)
	}
	flush := NewDirectivity(Coverage{HorizontalDegrees: 180, VerticalDegrees: 180, HalfSpace: true})
	if got := flush.OffAxisDB(Vector{Z: -1}, Vector{1, 0, 0.01}, 0)[3]; !math.IsInf(got, -1) {
		t.Errorf("%g dB above a flush ceiling loudspeaker", got)
	}
}

// The frequency the angles are stated for begins the octaves in which they hold.
func TestDirectivityFromFrequency(t *testing.T) {
	t.Parallel()
	stated := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, FromHz: 4000}).Q()
	twice := NewDirectivity(Coverage{HorizontalDegrees: 180, VerticalDegrees: 180, FromHz: 2000}).Q()
	for k := range 5 {
		within(t, "Q", stated[k], twice[k], 1e-9)
	}
	if stated[5] <= stated[4] || stated[6] != stated[5] {
		t.Errorf("Q %v does not hold from 4 kHz up", stated)
	}
}

// Stated directivity factors are met, and keep the proportion of the angles.
func TestDirectivityOfStatedQ(t *testing.T) {
	t.Parallel()
	want := Bands{1, 2, 4, 8, 16, 32, 64}
	got := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 40, Q: want}).Q()
	for k := range want {
		within(t, "Q", got[k], want[k], 1e-6*want[k])
	}
	// What no angle gives comes as near as it can.
	extreme := NewDirectivity(Coverage{HorizontalDegrees: 90, VerticalDegrees: 90, HalfSpace: true, Q: Flat(1)}).Q()
	within(t, "Q below that of a half-space", extreme[3], 2, 1e-6)
}

func TestArccosAndBessel(t *testing.T) {
	t.Parallel()
	for i := -1000; i <= 1000; i++ {
		x := float64(i) / 1000
		within(t, "arccos", arccos(x), math.Acos(x), 3e-8)
	}
	// I0(x) is the mean of e^(x·cos φ) over a turn.
	for _, x := range []float64{0, 0.5, 2, 3.7, 3.8, 10, 100} {
		mean := 0.0
		const steps = 2000
		for j := range steps {
			mean += math.Exp(x*math.Cos(2*math.Pi*(float64(j)+0.5)/steps)-x) / steps
		}
		within(t, "e^(−x)·I0", scaledBesselI0(x), mean, 3e-7)
	}
}

func TestAim(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		bearing, down float64
		want          Vector
	}{
		{0, 0, Vector{1, 0, 0}}, {90, 0, Vector{0, 1, 0}}, {0, 90, Vector{0, 0, -1}}, {180, 30, Vector{-math.Sqrt(3) / 2, 0, -0.5}},
	} {
		if got := Aim(test.bearing, test.down).Minus(test.want).Length(); got > 1e-12 {
			t.Errorf("aim %g, %g is off by %g", test.bearing, test.down, got)
		}
	}
}
