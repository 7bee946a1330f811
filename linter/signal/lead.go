package signal

import "math"

// CornerHz is the frequency at which the capacitance of a lead has taken 3 dB of
// the treble: the low-pass of source impedance and cable,
//
//	f = 1 / (2π·Zs·C'·d)
//
// as on the page "Cable and treble damping". The input's impedance beside it only
// raises f and is left out.
func CornerHz(sourceOhm, faradPerMetre, metres float64) float64 {
	return 1 / (2 * math.Pi * sourceOhm * faradPerMetre * metres)
}

// LongestMetres is the length at which a lead has its corner at a frequency:
// CornerHz solved for d.
func LongestMetres(sourceOhm, faradPerMetre, cornerHz float64) float64 {
	return 1 / (2 * math.Pi * sourceOhm * faradPerMetre * cornerHz)
}
