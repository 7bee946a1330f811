package analysis

import (
	"math/cmplx"

	"loudlint/schema/quantity"
)

// ImpedanceAt is the magnitude of what the amplifier sees at a frequency in Hz,
// cables included where they are known; not ok where Impedance is not known or
// nothing hangs on the output. Taps are taken as resistances: what a transformer
// does at the ends of the band is on no data sheet.
func (o *Output) ImpedanceAt(hz float64) (quantity.Resistance, bool) {
	if !o.Impedance.Known() {
		return 0, false
	}
	var sum complex128
	for _, l := range o.Lines {
		sum += l.admittanceAt(hz)
	}
	if y := cmplx.Abs(sum); y > 0 {
		return quantity.Resistance(1 / y), true
	}
	return 0, false
}
