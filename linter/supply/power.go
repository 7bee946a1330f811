package supply

import "math"

// NormalUse is the share of rated output that stands for programme in normal
// use: one eighth, 9 dB below. IEC 60065, as quoted in a forum of test engineers.
const NormalUse = 1.0 / 8

// Law is how the draw of an amplifier rises from no signal to rated output.
type Law int

// Laws.
const (
	// WithVolts: the draw rises with the output voltage, that is with the root
	// of the output power. An output stage of class B draws a current in
	// proportion to its output current (textbooks on power amplifiers, from
	// memory).
	WithVolts Law = iota
	// WithPower: the draw rises with the output power, as in a switching stage
	// of constant efficiency.
	WithPower
)

// classBMost is the highest efficiency of a class B stage with a sine: π/4.
const classBMost = math.Pi / 4

// LawOf tells the law of an amplifier by its rated output and its draw, all in
// one unit. A stage that turns more than π/4 of what it draws above idle into
// output cannot be class B and is a switching one. Of any other WithVolts is the
// safe side: it gives the higher draw. An output of 0 stands for not known.
func LawOf(rated, idle, full float64) Law {
	if rated > classBMost*(full-idle) && full > idle {
		return WithPower
	}
	return WithVolts
}

// At gives the draw at a share (0 to 1) of rated output, in the unit of idle and
// full. A sine is taken: the average of speech and music of equal power is lower.
func (l Law) At(share, idle, full float64) float64 {
	if l == WithVolts {
		share = math.Sqrt(share)
	}
	return idle + share*(full-idle)
}

// Loaded gives the draw at full output voltage into a share (0 to 1) of the rated
// load, in the unit of idle and full: what is drawn above idle falls with the
// output current, as it does in class B, and with the output power, as it does in
// a switching stage.
func Loaded(share, idle, full float64) float64 { return idle + share*(full-idle) }

// Input is the power an amplifier draws that gives an output power with an
// efficiency of 0 to 1.
func Input(outputWatts, efficiency float64) float64 { return outputWatts / efficiency }

// Heat is what stays in the rack: drawn less given to the loudspeakers.
func Heat(drawnWatts, outputWatts float64) float64 { return drawnWatts - outputWatts }

// btuPerHour is one watt in BTU/h: 3600 s / 1055.056 J (the international table
// BTU).
const btuPerHour = 3.412142

// BTUPerHour gives watts as British thermal units per hour.
func BTUPerHour(watts float64) float64 { return btuPerHour * watts }

// Air at 20 °C and sea level: density in kg/m³ and specific heat in J/(kg·K)
// (physics tables, from memory).
const (
	airDensity = 1.2
	airHeat    = 1005
)

// AirFlow is the air in m³/h that carries heat away while it warms by so many
// kelvins: V = P / (ρ·c·ΔT), the definition of specific heat.
func AirFlow(heatWatts, riseKelvin float64) float64 {
	return 3600 * heatWatts / (airDensity * airHeat * riseKelvin)
}

// CubicFeetPerMinute gives m³/h in cubic feet per minute: 0.3048 m to the foot.
func CubicFeetPerMinute(cubicMetresPerHour float64) float64 {
	return cubicMetresPerHour / 60 / (0.3048 * 0.3048 * 0.3048)
}

// MainsAmps is the current of a mains circuit: I = P / (V·power factor).
func MainsAmps(watts, volts, powerFactor float64) float64 { return watts / (volts * powerFactor) }
