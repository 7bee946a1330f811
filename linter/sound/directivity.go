package sound

import "math"

// Coverage is what a data sheet says of the directions a loudspeaker covers.
type Coverage struct {
	// HorizontalDegrees and VerticalDegrees are the full angles between the
	// directions in which it is 6 dB less loud than on its axis. From 360 on it is
	// equally loud all round.
	HorizontalDegrees, VerticalDegrees float64
	// FromHz is the frequency the angles are stated for; 0 is 1 kHz. They are taken
	// to hold from there up; below, they double with each octave down, as they do
	// for a source of fixed size.
	FromHz float64
	// HalfSpace says that it sits flush in a large surface: nothing goes behind it.
	HalfSpace bool
	// Q, where above 0, is the directivity factor of that octave on the data sheet:
	// the angles of that octave are scaled together until the model has it.
	Q Bands
}

// Directivity is how loud a loudspeaker is off its axis, in each octave. It is made
// once for each kind of loudspeaker, does not change, and may be shared. nil is a
// loudspeaker that is equally loud all round (Q = 1).
type Directivity struct {
	horizontal, vertical float64 // half the coverage angle as stated, radians
	narrow               Bands   // by what factor the angles are narrower in each octave
	halfSpace            bool
	q                    Bands
	table                []row // over u·tableSteps; see ratio
}

// row holds the seven octaves and one unused, so that it fills a cache line.
type row [8]float64

const (
	// backRatio is what is left in directions far outside the coverage: −25 dB
	// (common practice, no published source).
	backRatio = 0.0031622776601683794
	// kappa makes Γ 10^(−6/10) at u = 1: ln((1 − b)/(10^(−0.6) − b)).
	kappa = 1.3910529377789056
	// tableSteps is steps per unit of u. With linear interpolation the error is
	// below 0.001 dB.
	tableSteps = 64
	// leastHalfAngle keeps tables small: 2.5°.
	leastHalfAngle = 2.5 * math.Pi / 180
)

// NewDirectivity makes a smooth directivity from coverage angles. With ϑ the angle
// off the axis and φ the direction around it,
//
//	u² = (ϑ·cos φ/h)² + (ϑ·sin φ/v)²
//	Γ  = (1 − b)·e^(−κ·u²) + b
//
// is the ratio of intensities to that on the axis: h and v are half the angles in
// that octave, b is 10^(−25/10), and κ makes Γ exactly 10^(−6/10) at u = 1. Level
// falls with the square of the angle, which is how a smooth main lobe begins. There
// is no published source for this shape; Q follows from it by integration, so that
// energy is consistent.
func NewDirectivity(c Coverage) *Directivity {
	from := c.FromHz
	if from <= 0 {
		from = 1000
	}
	d := &Directivity{
		horizontal: max(c.HorizontalDegrees/2*math.Pi/180, leastHalfAngle),
		vertical:   max(c.VerticalDegrees/2*math.Pi/180, leastHalfAngle),
		halfSpace:  c.HalfSpace,
	}
	round := c.HorizontalDegrees >= 360 && c.VerticalDegrees >= 360
	for k := range d.narrow {
		// A band belongs to the stated frequency when it is less than half an octave away.
		d.narrow[k] = min(1, math.Pow(2, math.Round(math.Log2(CentreHz(k)/from))))
		if round {
			d.narrow[k] = 0
		}
		if c.Q[k] > 0 {
			d.narrow[k] = d.narrowFor(c.Q[k])
		}
		d.q[k] = d.integrateQ(d.narrow[k])
	}
	d.tabulate()
	return d
}

// tabulate refers u to the narrowest octave, so that its steps are fine enough for
// all of them, and fills the table up to where no direction lies any more.
func (d *Directivity) tabulate() {
	narrowest := 0.0
	for _, narrow := range d.narrow {
		narrowest = max(narrowest, narrow)
	}
	if narrowest > 1 {
		d.horizontal, d.vertical = d.horizontal/narrowest, d.vertical/narrowest
		for k := range d.narrow {
			d.narrow[k] /= narrowest
		}
	}
	reach := math.Pi / min(d.horizontal, d.vertical)
	d.table = make([]row, int(math.Ceil(reach*tableSteps))+2)
	for i := range d.table {
		u := float64(i) / tableSteps
		for k, narrow := range d.narrow {
			d.table[i][k] = gamma(u * u * narrow * narrow)
		}
	}
}

// gamma is the ratio of intensities at u².
func gamma(uu float64) float64 { return (1-backRatio)*math.Exp(-kappa*uu) + backRatio }

// Q is the directivity factor of each octave: the intensity on the axis over that
// of an all-round source of the same power.
func (d *Directivity) Q() Bands {
	if d == nil {
		return Flat(1)
	}
	return d.q
}

// OffAxisDB is the level re that on the axis, in direction to as seen from the
// loudspeaker, in each octave; -Inf behind one that sits in a half-space.
func (d *Directivity) OffAxisDB(aim, to Vector, rollDegrees float64) Bands {
	if d == nil {
		return Bands{}
	}
	frame := newFrame(aim, rollDegrees)
	var out row
	d.ratio(&out, to.Dot(frame.axis), to.Dot(frame.right), to.Dot(frame.up), to.Length())
	return Bands(out[:BandCount]).Levels()
}

// ratio looks Γ up for a direction given along axis, right and up, and its length.
func (d *Directivity) ratio(out *row, along, right, up, length float64) {
	if d.halfSpace && along < 0 {
		*out = row{}
		return
	}
	across := right*right + up*up
	u := 0.0
	if across > 0 {
		right, up = right/d.horizontal, up/d.vertical
		u = arccos(along/length) * math.Sqrt((right*right+up*up)/across)
	} else if along < 0 {
		u = math.Pi / max(d.horizontal, d.vertical)
	}
	u *= tableSteps
	i := min(int(u), len(d.table)-2)
	part := min(u-float64(i), 1)
	low, high := &d.table[i], &d.table[i+1]
	for k := range BandCount {
		out[k] = low[k] + part*(high[k]-low[k])
	}
}

// arccos is the angle in radians of a cosine, by the polynomial of Abramowitz and
// Stegun, Handbook of Mathematical Functions, 4.4.46 (from memory; error below
// 3·10⁻⁸). It takes a third of the time of math.Acos, which took a third of a field's.
func arccos(x float64) float64 {
	y := min(1, math.Abs(x))
	angle := math.Sqrt(1-y) * (1.5707963050 + y*(-0.2145988016+y*(0.0889789874+y*(-0.0501743046+
		y*(0.0308918810+y*(-0.0170881256+y*(0.0066700901+y*-0.0012624911)))))))
	if x < 0 {
		return math.Pi - angle
	}
	return angle
}

// frame is the directions of a loudspeaker: its axis, and right and up as seen
// from behind it.
type frame struct{ axis, right, up Vector }

// newFrame lays right level; with an axis straight up or down it lies along x. roll
// turns right and up about the axis. An aim of no length is straight down.
func newFrame(aim Vector, rollDegrees float64) frame {
	length := aim.Length()
	if !(length > 0) {
		aim, length = Vector{Z: -1}, 1
	}
	f := frame{axis: aim.times(1 / length)}
	f.right = f.axis.cross(Vector{Z: 1})
	if n := f.right.Length(); n > 1e-9 {
		f.right = f.right.times(1 / n)
	} else {
		f.right = Vector{X: 1}
	}
	f.up = f.right.cross(f.axis)
	if rollDegrees != 0 {
		sin, cos := math.Sincos(rollDegrees * math.Pi / 180)
		f.right, f.up = f.right.times(cos).plus(f.up.times(sin)), f.up.times(cos).plus(f.right.times(-sin))
	}
	return f
}

// integrateQ is 4π over the integral of Γ over all directions,
//
//	∫∫ Γ sin ϑ dϑ dφ
//
// The integral over φ has a closed form, 2π·e^(−p)·I0(q) with p and q half the sum
// and half the difference of κ·(ϑ/h)² and κ·(ϑ/v)²; that over ϑ is done by Simpson's rule.
func (d *Directivity) integrateQ(narrow float64) float64 {
	const steps = 400
	end := math.Pi
	if d.halfSpace {
		end = math.Pi / 2
	}
	h, v := d.horizontal, d.vertical
	k := kappa * narrow * narrow
	sum := 0.0
	for i := range steps + 1 {
		theta := end * float64(i) / steps
		inH, inV := k*(theta/h)*(theta/h), k*(theta/v)*(theta/v)
		value := math.Sin(theta) * ((1-backRatio)*math.Exp(-min(inH, inV))*scaledBesselI0(math.Abs(inH-inV)/2) + backRatio)
		switch {
		case i == 0 || i == steps:
			sum += value
		case i%2 == 1:
			sum += 4 * value
		default:
			sum += 2 * value
		}
	}
	return 2 / (sum * end / steps / 3)
}

// scaledBesselI0 is e^(−x)·I0(x) for x ≥ 0, by the polynomials of Abramowitz and
// Stegun, Handbook of Mathematical Functions, 9.8.1 and 9.8.2 (from memory; error
// below 2·10⁻⁷).
func scaledBesselI0(x float64) float64 {
	if x < 3.75 {
		t := x / 3.75
		t *= t
		return math.Exp(-x) * (1 + t*(3.5156229+t*(3.0899424+t*(1.2067492+t*(0.2659732+t*(0.0360768+t*0.0045813))))))
	}
	t := 3.75 / x
	return (0.39894228 + t*(0.01328592+t*(0.00225319+t*(-0.00157565+t*(0.00916281+t*(-0.02057706+
		t*(0.02635537+t*(-0.01647633+t*0.00392377)))))))) / math.Sqrt(x)
}

// narrowFor finds the factor by which the angles have to be narrower to have the
// wanted Q. Q grows with it, so that halving finds it; what cannot be reached
// gives the nearest that can.
func (d *Directivity) narrowFor(wantQ float64) float64 {
	low, high := 0.0, min(d.horizontal, d.vertical)/leastHalfAngle
	for range 26 {
		middle := (low + high) / 2
		if d.integrateQ(middle) < wantQ {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}
