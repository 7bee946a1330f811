package analysis

import (
	"fmt"
	"math"

	"loudlint/linter/circuit"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// loudspeaker works out what one loudspeaker of a block is to the line, once
// for each block.
func (b *builder) loudspeaker(part *schema.Loudspeaker) *speakerLoad {
	if l := b.loads[part]; l != nil {
		return l
	}
	l := &speakerLoad{}
	b.loads[part] = l
	switch {
	case part.Tap.Set() && part.Tap.V <= 0:
		l.idle, l.tap.Off = true, true
		l.term = term{text: part.Tap.Text, from: part.Tap.Span}
	case part.Tap.Set():
		b.tapped(l, part)
	case nominal(part).Set() && (b.kind == LowImpedance || !HasTaps(part)):
		b.direct(l, part)
	case b.kind == LowImpedance:
		l.missing = []Missing{missing("impedance", "loudspeaker", &part.Part, `impedance = "8 ohm"`)}
	default:
		l.missing = []Missing{missing("tap", "loudspeaker", &part.Part, `tap = "6 W"`)}
	}
	return l
}

// ohm is what the loudspeaker is to the line, with what is in series with it.
func (l *speakerLoad) ohm() float64 {
	ohm := l.load.Ohm
	switch {
	case l.load.Curve != nil:
		ohm = l.nominalOhm
	case l.load.PowerW > 0:
		ohm = l.load.MarkedVolts * l.load.MarkedVolts / l.load.PowerW
	}
	return ohm + l.load.SeriesOhm
}

// HasTaps tells that a loudspeaker is stated to have a line transformer.
func HasTaps(part *schema.Loudspeaker) bool {
	return part.Taps100V.Set() || part.Taps70V.Set() || part.Taps25V.Set()
}

// nominal is the impedance without a transformer by which a loudspeaker goes;
// where only a curve is stated, the lowest point of it.
func nominal(part *schema.Loudspeaker) schema.Value[quantity.Resistance] {
	lowest := part.Impedance
	if lowest.Set() {
		return lowest
	}
	lowest = part.ImpedanceAt.Single
	for _, band := range part.ImpedanceAt.Bands {
		if !lowest.Set() || band.Value.V < lowest.V {
			lowest = band.Value
		}
	}
	return lowest
}

// tapped works out a loudspeaker behind a line transformer: a resistance of
// (voltage the tap is marked for)² / tap. On another voltage it takes
// tap × (V / that voltage)².
func (b *builder) tapped(l *speakerLoad, part *schema.Loudspeaker) {
	tap := float64(part.Tap.V)
	l.term = term{text: part.Tap.Text, watts: tap, from: part.Tap.Span}
	l.watts = tap
	marked, from := markedVolts(part, b.volts, b.line)
	if marked == 0 {
		if b.kind == LowImpedance {
			l.missing = []Missing{missing("voltage the tap is marked for", "loudspeaker", &part.Part, `tap_for = "100 V"`)}
			return
		}
		// The line's voltage is not stated; the tap is what it takes at it. Any
		// voltage does: what depends on it is not worked out.
		l.load = circuit.Load{PowerW: tap, MarkedVolts: 100}
		return
	}
	l.tap = Tap{Marked: quantity.Voltage(marked), MarkedFrom: from}
	l.load = circuit.Load{PowerW: tap, MarkedVolts: marked, SeriesOhm: float64(part.SeriesResistance.V)}
	if b.kind != ConstantVoltage { // where ohms add up, and not watts
		l.term.ohm = quantity.Resistance(l.ohm()).String()
	}
	volts := b.sourceVolts()
	if volts == 0 {
		l.unfed = b.line.VoltsMissing()
		l.term.watts, l.watts = 0, 0
		return
	}
	watts := volts * volts / l.ohm()
	if same(watts, tap) {
		return // exactly the tap: a sum of taps has no rounding to explain
	}
	l.watts, l.term.watts = watts, watts
	l.arithmetic = fmt.Sprintf("%s × (%s / %s)² = %s", part.Tap.Text, voltsText(volts), voltsText(marked), quantity.Power(watts))
	l.term.text = fmt.Sprintf("%s (%s at %s, on %s)", quantity.Power(watts), part.Tap.Text, voltsText(marked), voltsText(volts))
	if l.load.SeriesOhm > 0 {
		l.arithmetic = fmt.Sprintf("(%s)² / (%s + %s) = %s", voltsText(volts), quantity.Resistance(marked*marked/tap), part.SeriesResistance.Text, quantity.Power(watts))
		l.term.text = fmt.Sprintf("%s (%s at %s, with %s in series)", quantity.Power(watts), part.Tap.Text, voltsText(marked), part.SeriesResistance.Text)
	}
}

// delivers writes how the power that a loudspeaker receives comes about.
func (l *speakerLoad) delivers(watts quantity.Power, volts quantity.Voltage) string {
	if l.load.PowerW > 0 {
		return fmt.Sprintf("%s × (%s / %s)² = %s", quantity.Power(l.load.PowerW), volts, voltsText(l.load.MarkedVolts), watts)
	}
	return fmt.Sprintf("(%s)² / %s = %s", volts, quantity.Resistance(l.ohm()-l.load.SeriesOhm), watts)
}

// markedVolts is the voltage a tap is marked for: tap_for where written; on a
// constant-voltage line its own voltage; else that of the only list of the model
// that holds such a tap. 0 when it cannot be told.
func markedVolts(part *schema.Loudspeaker, lineVolts float64, line *Line) (float64, source.Span) {
	if part.TapFor.Set() {
		return float64(part.TapFor.V.Line()), part.TapFor.Span
	}
	if lineVolts > 0 {
		return lineVolts, line.Output.Part.Volts.Span
	}
	var volts float64
	var from source.Span
	lists := 0
	for _, t := range TapLists(part) {
		if _, ok := t.Find(part.Tap.V); ok {
			lists++
			volts, from = float64(t.Volts), t.List.Span
		}
	}
	if lists != 1 {
		return 0, source.Span{}
	}
	return volts, from
}

// TapList is the taps a loudspeaker has at one voltage.
type TapList struct {
	Volts quantity.Voltage
	Name  string // of the attribute: "taps_100V"
	List  schema.List[quantity.Power]
}

// TapLists gives the lists of taps that are stated, highest voltage first.
func TapLists(part *schema.Loudspeaker) []TapList {
	if !HasTaps(part) {
		return nil
	}
	all := make([]TapList, 0, 3)
	for _, t := range [...]TapList{
		{100, "taps_100V", part.Taps100V},
		{quantity.Voltage(70).Line(), "taps_70V", part.Taps70V},
		{25, "taps_25V", part.Taps25V},
	} {
		if t.List.Set() {
			all = append(all, t)
		}
	}
	return all
}

// TapsAt gives the taps a loudspeaker is stated to have at a voltage, which may
// be 2 % off: transformers are not more exact.
func TapsAt(part *schema.Loudspeaker, volts quantity.Voltage) (TapList, bool) {
	for _, t := range [...]TapList{
		{100, "taps_100V", part.Taps100V},
		{quantity.Voltage(70).Line(), "taps_70V", part.Taps70V},
		{25, "taps_25V", part.Taps25V},
	} {
		if len(t.List.Items) > 0 && quantity.AtMost(math.Abs(float64(t.Volts-volts)), TapTolerance*float64(t.Volts)) {
			return t, true
		}
	}
	return TapList{}, false
}

// TapTolerance is how far a written tap may be from the list's: data sheets
// round 0.625 W to 0.62 or 0.63 W.
const TapTolerance = 0.02

// Find gives the tap of the list that a written power means, within 2 %.
func (t TapList) Find(tap quantity.Power) (quantity.Power, bool) {
	for i := range t.List.Items {
		if v := t.List.Items[i].V; quantity.AtMost(math.Abs(float64(tap-v)), TapTolerance*float64(v)) {
			return v, true
		}
	}
	return 0, false
}

// direct works out a loudspeaker without a transformer.
func (b *builder) direct(l *speakerLoad, part *schema.Loudspeaker) {
	ohm := nominal(part)
	l.tap = Tap{Direct: true}
	l.load = circuit.Load{Ohm: float64(ohm.V), SeriesOhm: float64(part.SeriesResistance.V)}
	l.nominalOhm = float64(ohm.V)
	l.term = term{ohm: ohm.Text, from: ohm.Span}
	across := ohm.Text
	if l.load.SeriesOhm > 0 {
		across = fmt.Sprintf("(%s + %s)", ohm.Text, part.SeriesResistance.Text)
		l.term.ohm = across
	}
	if len(part.ImpedanceAt.Bands) > 0 {
		points := make([]circuit.Point, 0, len(part.ImpedanceAt.Bands))
		for _, band := range part.ImpedanceAt.Bands {
			points = append(points, circuit.Point{Hz: float64(band.Frequency.V), Ohm: float64(band.Value.V)})
			b.curves = append(b.curves, float64(band.Frequency.V))
		}
		if curve, err := circuit.NewCurve(points); err == nil {
			l.load = circuit.Load{Curve: curve, SeriesOhm: l.load.SeriesOhm}
		}
	}
	volts := b.sourceVolts()
	if volts == 0 {
		l.unfed = b.line.VoltsMissing()
		return
	}
	l.watts = volts * volts / l.ohm()
	l.term.watts = l.watts
	l.term.text = fmt.Sprintf("%s (%s across %s)", quantity.Power(l.watts), across, voltsText(volts))
	l.arithmetic = fmt.Sprintf("(%s)² / %s = %s", voltsText(volts), across, quantity.Power(l.watts))
}

// voltsText prints a line voltage the way the trade writes it.
func voltsText(volts float64) string {
	if isSeventy(volts) {
		return "70.7 V"
	}
	return quantity.Voltage(volts).String()
}

// isSeventy tells the line that the trade calls 70 V or 70.7 V.
func isSeventy(volts float64) bool { return math.Abs(volts-100/math.Sqrt2) < 0.01 }
