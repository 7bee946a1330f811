package circuit

import (
	"fmt"
	"math"
	"slices"
	"sort"
)

// Point is one reading of an impedance curve.
type Point struct {
	Hz      float64
	Ohm     float64 // magnitude
	Degrees float64 // positive where voltage leads current (inductive); 0 where only the magnitude is known
}

// Curve is an impedance over frequency. It never changes once made and may be shared.
type Curve struct {
	points                []Point
	lowestOhm, highestOhm float64
}

// NewCurve makes a curve of one point or more in rising order of frequency. Magnitudes must be above zero and phases
// between −90 and 90 degrees, for a loudspeaker gives no power back.
func NewCurve(points []Point) (*Curve, error) {
	if len(points) == 0 {
		return nil, fmt.Errorf("making an impedance curve: it has no points")
	}
	c := &Curve{points: slices.Clone(points), lowestOhm: points[0].Ohm, highestOhm: points[0].Ohm}
	for i, p := range points {
		switch {
		case !within(p.Hz, 0, maxHz) || !(p.Hz > 0):
			return nil, fmt.Errorf("making an impedance curve: point %d: frequency %g Hz is not above 0 and up to %g Hz", i+1, p.Hz, maxHz)
		case i > 0 && !(p.Hz > points[i-1].Hz):
			return nil, fmt.Errorf("making an impedance curve: point %d: %g Hz does not lie above %g Hz", i+1, p.Hz, points[i-1].Hz)
		case !within(p.Ohm, minLoadOhm, maxOhm):
			return nil, fmt.Errorf("making an impedance curve: point %d: %g ohm is not between %g and %g ohm", i+1, p.Ohm, minLoadOhm, maxOhm)
		case !within(p.Degrees, -90, 90):
			return nil, fmt.Errorf("making an impedance curve: point %d: phase %g degrees is not between -90 and 90", i+1, p.Degrees)
		}
		c.lowestOhm, c.highestOhm = min(c.lowestOhm, p.Ohm), max(c.highestOhm, p.Ohm)
	}
	return c, nil
}

// At is the impedance at a frequency. Between two points the magnitude is a straight line on logarithmic scales of both
// frequency and ohms, and the phase a straight line over the logarithm of frequency; outside the points the nearest one
// holds. A plain choice of ours: a curve on paper is drawn on these scales.
func (c *Curve) At(hz float64) complex128 {
	last := len(c.points) - 1
	above := sort.Search(len(c.points), func(i int) bool { return c.points[i].Hz >= hz })
	if above == 0 {
		return polar(c.points[0].Ohm, c.points[0].Degrees)
	}
	if above > last {
		return polar(c.points[last].Ohm, c.points[last].Degrees)
	}
	p, q := c.points[above-1], c.points[above]
	t := math.Log(hz/p.Hz) / math.Log(q.Hz/p.Hz)
	return polar(p.Ohm*math.Pow(q.Ohm/p.Ohm, t), p.Degrees+t*(q.Degrees-p.Degrees))
}

// polar differs from cmplx.Rect at 90 degrees, where the real part is made exactly zero: a pure reactance takes no power.
func polar(ohm, degrees float64) complex128 {
	if math.Abs(degrees) >= 90 {
		return complex(0, math.Copysign(ohm, degrees))
	}
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return complex(ohm*cos, ohm*sin)
}
