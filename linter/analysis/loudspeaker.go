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
	case part.Tap.Set():
		b.tapped(l, part)
	case part.Impedance.Set() && (b.kind == LowImpedance || !hasTaps(part)):
		b.direct(l, part)
	case b.kind == LowImpedance:
		l.missing = []Missing{missing("impedance", "loudspeaker", &part.Part, `impedance = "8 ohm"`)}
	default:
		l.missing = []Missing{missing("tap", "loudspeaker", &part.Part, `tap = "6 W"`)}
	}
	return l
}

// hasTaps tells that a loudspeaker has a line transformer.
func hasTaps(part *schema.Loudspeaker) bool {
	return part.Taps100V.Set() || part.Taps70V.Set() || part.Taps25V.Set()
}

// tapped works out a loudspeaker behind a line transformer: a resistance of
// (voltage the tap is marked for)² / tap. On another voltage it takes
// tap × (V / that voltage)².
func (b *builder) tapped(l *speakerLoad, part *schema.Loudspeaker) {
	marked, from := markedVolts(part, b.volts, b.line)
	if marked == 0 && b.volts == 0 && b.kind != LowImpedance {
		// The line's voltage is not stated; the tap is what it takes at it.
		l.watts = float64(part.Tap.V)
		l.term = term{text: part.Tap.Text, watts: l.watts, from: part.Tap.Span}
		l.load = circuit.Load{PowerW: l.watts, MarkedVolts: 100}
		return
	}
	if marked == 0 {
		l.missing = []Missing{missing("voltage the tap is marked for", "loudspeaker", &part.Part, `tap_for = "100 V"`)}
		return
	}
	l.tap = Tap{Marked: quantity.Voltage(marked), MarkedFrom: from}
	l.load = circuit.Load{PowerW: float64(part.Tap.V), MarkedVolts: marked, SeriesOhm: float64(part.SeriesResistance.V)}
	ohm := marked * marked / float64(part.Tap.V)
	total := ohm + l.load.SeriesOhm
	l.term = term{text: part.Tap.Text, watts: float64(part.Tap.V), from: part.Tap.Span, ohm: quantity.Resistance(total).String()}
	if b.volts > 0 {
		l.watts = b.volts * b.volts / total
		if math.Abs(l.watts/float64(part.Tap.V)-1) > 1e-6 {
			l.term.text = fmt.Sprintf("%s (%s at %s, on %s)", quantity.Power(l.watts), part.Tap.Text, voltsText(marked), voltsText(b.volts))
			if l.load.SeriesOhm > 0 {
				l.term.text = fmt.Sprintf("%s (%s in series with %s)", quantity.Power(l.watts), part.Tap.Text, part.SeriesResistance.Text)
			}
		} else {
			l.watts = float64(part.Tap.V) // exactly: a sum of taps has no rounding to explain
		}
		l.term.watts = l.watts
	}
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
	var all []TapList
	for _, t := range []TapList{
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

// tapTolerance is how far a written tap may be from the list's: data sheets
// round 0.625 W to 0.62 or 0.63 W.
const tapTolerance = 0.02

// Find gives the tap of the list that a written power means, within 2 %.
func (t TapList) Find(tap quantity.Power) (quantity.Power, bool) {
	for _, v := range t.List.Items {
		if quantity.AtMost(math.Abs(float64(tap-v.V)), tapTolerance*float64(v.V)) {
			return v.V, true
		}
	}
	return 0, false
}

// direct works out a loudspeaker without a transformer.
func (b *builder) direct(l *speakerLoad, part *schema.Loudspeaker) {
	l.tap = Tap{Direct: true}
	l.load = circuit.Load{Ohm: float64(part.Impedance.V), SeriesOhm: float64(part.SeriesResistance.V)}
	total := l.load.Ohm + l.load.SeriesOhm
	l.term = term{ohm: part.Impedance.Text, from: part.Impedance.Span}
	if l.load.SeriesOhm > 0 {
		l.term.ohm = fmt.Sprintf("(%s + %s)", part.Impedance.Text, part.SeriesResistance.Text)
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
	volts := b.volts
	if volts == 0 && b.line.Output != nil && b.line.Output.Volts.Known() {
		volts = float64(b.line.Output.Volts.Value)
	}
	if volts > 0 {
		l.watts = volts * volts / total
		l.term.watts = l.watts
		l.term.text = fmt.Sprintf("%s (%s across %s)", quantity.Power(l.watts), part.Impedance.Text, voltsText(volts))
	}
}

// voltsText prints a line voltage the way the trade writes it.
func voltsText(volts float64) string {
	if math.Abs(volts-100/math.Sqrt2) < 0.01 {
		return "70.7 V"
	}
	return quantity.Voltage(volts).String()
}
