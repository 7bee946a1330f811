package sound

import "math"

// Air is the air between loudspeaker and listener. Air of no humidity absorbs
// nothing: that leaves absorption out.
type Air struct {
	Celsius         float64
	HumidityPercent float64 // relative
	PressureKPa     float64 // 0 is 101.325 kPa, the standard atmosphere
}

// OrdinaryAir is what is taken where nothing is said: 20 °C, 50 % relative
// humidity, standard pressure.
func OrdinaryAir() Air {
	return Air{Celsius: 20, HumidityPercent: 50, PressureKPa: referencePressureKPa}
}

const (
	referencePressureKPa = 101.325
	referenceKelvin      = 293.15
	triplePointKelvin    = 273.16
	zeroCelsiusKelvin    = 273.15
)

// SpeedMetresPerSecond is the speed of sound: 343.2·√(T/293.15 K) (ISO 9613-1:1993,
// annex A; from memory).
func (a Air) SpeedMetresPerSecond() float64 {
	return 343.2 * math.Sqrt((a.Celsius+zeroCelsiusKelvin)/referenceKelvin)
}

// AbsorptionDBPerMetre is what air takes of a pure tone at each exact mid-band
// frequency.
func (a Air) AbsorptionDBPerMetre() Bands {
	var b Bands
	if !(a.HumidityPercent > 0) {
		return b
	}
	for k := range b {
		b[k] = a.toneDBPerMetre(CentreHz(k))
	}
	return b
}

// toneDBPerMetre is ISO 9613-1:1993, equations 3 to 5, with the saturation
// pressure of its annex B. The standard gives it ±10 % within −20 to +50 °C and
// 10 to 100 % relative humidity at frequencies over pressure of 4·10⁻⁴ to 10 Hz/Pa.
func (a Air) toneDBPerMetre(hz float64) float64 {
	kelvin := a.Celsius + zeroCelsiusKelvin
	pressure := 1.0 // over the reference
	if a.PressureKPa > 0 {
		pressure = a.PressureKPa / referencePressureKPa
	}
	warmth := kelvin / referenceKelvin
	saturation := math.Pow(10, -6.8346*math.Pow(triplePointKelvin/kelvin, 1.261)+4.6151)
	h := a.HumidityPercent * saturation / pressure // molar concentration of water vapour, %

	oxygenHz := pressure * (24 + 4.04e4*h*(0.02+h)/(0.391+h))
	nitrogenHz := pressure / math.Sqrt(warmth) * (9 + 280*h*math.Exp(-4.170*(math.Pow(warmth, -1.0/3)-1)))
	f := hz * hz
	return 8.686 * f * (1.84e-11/pressure*math.Sqrt(warmth) + math.Pow(warmth, -2.5)*
		(0.01275*math.Exp(-2239.1/kelvin)/(oxygenHz+f/oxygenHz)+
			0.1068*math.Exp(-3352/kelvin)/(nitrogenHz+f/nitrogenHz)))
}

// IntensityPerMetre is the absorption m that reverberation times reckon with:
// intensity falls as e^(−m·x), so m = α/(10·lg e) for α in dB/m.
func (a Air) IntensityPerMetre() Bands {
	b := a.AbsorptionDBPerMetre()
	for k := range b {
		b[k] /= 10 * math.Log10E
	}
	return b
}
