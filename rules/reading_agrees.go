package rules

import (
	"fmt"
	"math"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// What is usual of readings of impedance: how far they may be from what is
// predicted, in per cent, and between which frequencies they are compared.
const (
	readingLowest, readingHighest     = 25, 20
	readingLowestHz, readingHighestHz = 250, 4000
)

// ReadingAgrees asks whether a meter agrees with the design.
var ReadingAgrees = &check.Check{
	ID:      "reading-agrees",
	Asks:    "Does the meter agree with the design?",
	Summary: "A reading of a line is not what the design predicts.",
	Why: "A line on paper is only as good as the line on the wall. The impedance of a line, taken before the amplifier is connected, shows shorts, broken cable, " +
		"wrong terminals of transformers and forgotten loudspeakers while they cost nothing; found later they cost amplifiers.",
	How: "Solves the part of the line that was measured at the frequency of the meter, cable included, attenuators as the reading says they stood, and holds the impedance shown against it. " +
		"Without at and beyond that is the whole line from the amplifier's end; at is the whole line seen from that device; beyond is only what the braces of a branch or attenuator hold, or what follows any other device. " +
		"A signal voltage is held against the voltage there at rated output.",
	Basis: "common practice, no published source: measured transformer primaries run 0 to 17 % below V² / P, and meters and taps add their own tolerance",
	Blind: "The figure of a resistance meter is never compared: it sees the copper of the transformers. A reading of many loudspeakers hides one wrong unit; the smallest fault it could show is printed. " +
		"Impedances far from 1 kHz depend on the transformers and are left open. Causes are guesses from the figure alone.",
	Params: []check.Param{
		{Name: "lowest", Doc: "how far the impedance may be below the predicted one", Unit: check.Percent, Default: readingLowest, Low: 1, High: 90},
		{Name: "highest", Doc: "how far it may be above", Unit: check.Percent, Default: readingHighest, Low: 1, High: 900},
		{Name: "volts", Doc: "how far a signal voltage may be from the predicted one", Unit: check.Percent, Default: 10, Low: 1, High: 90, Basis: "common practice, no published source"},
		{Name: "lowest_frequency", Doc: "frequency of the meter below which impedances are not compared", Unit: check.Hertz, Default: readingLowestHz, Low: 20, High: 1000, Basis: "common practice, no published source: below, the transformers' own inductance counts"},
		{Name: "highest_frequency", Doc: "frequency above which they are not compared", Unit: check.Hertz, Default: readingHighestHz, Low: 1000, High: 20000, Basis: "common practice, no published source: above, leakage and voice coil inductance count"},
	},
	Severity: check.Error,
	Cautions: []string{"Take the amplifier off the line before measuring: its output, and the meter, may be damaged, and the reading is not that of the line."},
	Failing: check.Example{
		Shows: "A line of 60 W reads as if it were 400 W.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "C" {
    quantity = 10
    tap      = "6 W"
  }
}
reading "Shop, first fix" {
  line                   = "Shop"
  impedance              = "25 ohm"
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
`,
	},
	Passing: check.Example{
		Shows: "It reads 150 ohm where 167 ohm are predicted.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "C" {
    quantity = 10
    spacing  = "5 m"
    tap      = "6 W"
  }
}
reading "Shop, first fix" {
  line                   = "Shop"
  impedance              = "150 ohm"
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
`,
	},
	Judge: check.EachReading(readingAgrees),
}

func readingAgrees(r *check.Report, part *schema.Reading) {
	switch {
	case part.Impedance.Set() || part.Volts.Set():
	case part.Earth.Set() || part.Insulation.Set() || part.Level.Set():
		r.NotAsked() // asked by the other checks of readings
		return
	default:
		r.Open(fmt.Sprintf("Reading %q does not say what the meter showed.", part.Name), readingLacks(part, "what the meter showed", `impedance = "198 ohm"`))
		return
	}
	m := r.System().Measure(part)
	if part.Impedance.Set() {
		impedanceAgrees(r, m)
	}
	if part.Volts.Set() {
		voltsAgree(r, m)
	}
}

func readingLacks(part *schema.Reading, what, write string) analysis.Missing {
	return analysis.Missing{What: what, Part: "reading " + quoted(part.Name), Where: part.Header, Write: write}
}

// impedanceAgrees judges the impedance, if it is one.
func impedanceAgrees(r *check.Report, m *analysis.Measured) {
	part := m.Part
	var text string
	var missing analysis.Missing
	switch unfit := m.Unfit(); {
	case unfit == analysis.NoUnit:
		text = fmt.Sprintf("Reading %q notes %s without a unit: %s.", part.Name, part.Impedance.Text, bothMeanings(m))
		missing = readingLacks(part, "unit of the reading, its frequency and how the controls stood", fmt.Sprintf(`impedance = "%s kohm"`, part.Impedance.Text))
	case unfit == analysis.DirectCurrent:
		text = fmt.Sprintf("Reading %q is a resistance: the %s that the %s shows is the copper of cable and transformers and is not to be compared with an impedance.", part.Name, part.Impedance.Text, part.Instrument.V)
		missing = readingLacks(part, "impedance, measured with a tone", `instrument = "impedance meter"`)
	case unfit == analysis.NotAnImpedance:
		text = fmt.Sprintf("Reading %q gives an impedance of %s, but it was taken with %s, which measures none.", part.Name, part.Impedance.Text, article(part.Instrument.V))
		missing = readingLacks(part, "impedance, measured with a tone", `instrument = "impedance meter"`)
	case unfit == analysis.NoFrequency:
		text = fmt.Sprintf("Reading %q shows %s without a frequency: an impedance at 1 kHz%s, or the resistance of the copper, which means nothing beside it.", part.Name, part.Impedance.Text, asksFor(m, m.Shown()))
		missing = readingLacks(part, "frequency of the meter's tone", `frequency = "1 kHz"`)
	case unfit == analysis.AmplifierOnLine:
		text = fmt.Sprintf("Reading %q was taken with the amplifier on the line: the %s is that of both.", part.Name, part.Impedance.Text)
		missing = readingLacks(part, "reading with the amplifier disconnected", "amplifier_disconnected = true")
	case !m.Impedance.Known():
		r.Open(fmt.Sprintf("What reading %q should show cannot be told; it shows %s%s.", part.Name, part.Impedance.Text, asksFor(m, m.Shown())), m.Impedance.Missing...).
			Key("impedance").At(part.Impedance.Span)
		return
	case !quantity.AtLeast(m.Hz, r.Limit("lowest_frequency").Value) || !quantity.AtMost(m.Hz, r.Limit("highest_frequency").Value):
		text = fmt.Sprintf("Reading %q was taken at %s, where what the transformers are by themselves counts: it is not compared.", part.Name, part.Frequency.V)
		missing = readingLacks(part, "impedance near 1 kHz", `frequency = "1 kHz"`)
	default:
		compareImpedance(r, m)
		return
	}
	if m.Impedance.Known() {
		text += fmt.Sprintf(" At 1 kHz, with the amplifier disconnected, %s should show %s.", m.Where, m.Impedance.Value)
	}
	answer := r.Open(text, missing).Key("impedance").At(part.Impedance.Span)
	if m.Impedance.Known() {
		answer.Evidence(check.Of("predicted impedance", m.Impedance)).Assumed(m.Impedance.Assumed...)
	}
	if m.Unfit() == analysis.NoUnit || m.Unfit() == analysis.DirectCurrent {
		answer.Evidence(besides(r.System(), m)...)
		answer.Assumed("a resistance meter can show a dead short or a broken line, and no more")
	}
}

// bothMeanings says what a number without unit comes to.
func bothMeanings(m *analysis.Measured) string {
	n := m.Part.Impedance.V.Number
	ohm, kilohm := quantity.Resistance(n), quantity.Resistance(1000*n)
	return fmt.Sprintf("%s%s, or %s%s", ohm, asksFor(m, ohm), kilohm, asksFor(m, kilohm))
}

// asksFor says what load an impedance would be.
func asksFor(m *analysis.Measured, z quantity.Resistance) string {
	if w := m.Implies(z); w > 0 {
		return fmt.Sprintf(" (%s at %s, were it an impedance)", w, lineVolts(m.Volts))
	}
	return ""
}

// besides holds a figure against the others of the same output: what all come to
// in parallel, and what each is for one loudspeaker.
func besides(s *analysis.System, m *analysis.Measured) []check.Evidence {
	var all []check.Evidence
	together, ok := s.Together(m)
	if !ok {
		return nil
	}
	e := check.Plainly("all lines of the output together", together.AsOhms)
	if quantity.AtMost(float64(together.AsOhms), 0.99*float64(together.AsKilohms)) {
		e.Value = fmt.Sprintf("%s if what has no unit is in ohms, %s if in kilohms", together.AsOhms, together.AsKilohms)
	}
	e.Sum = together.Sum + " = " + e.Value
	all = append(all, e)
	if slip, of := rangeSlip(together.Readings, m); of != nil {
		all = append(all, check.Evidence{
			Name: "for one loudspeaker", Value: slip.String(), Number: float64(slip), Unit: "ohm",
			Sum: fmt.Sprintf("%d × %s = %s, ten times or a tenth of what reading %q gives: a slip of the meter's range, or an attenuator left turned down", m.Loudspeakers, m.Part.Impedance.Text, slip, of.Part.Name),
		})
	}
	return all
}

// rangeSlip finds another reading that differs by a factor of ten for each
// loudspeaker.
func rangeSlip(all []*analysis.Measured, m *analysis.Measured) (quantity.Resistance, *analysis.Measured) {
	for _, mine := range figures(m) {
		for _, other := range all {
			if other == m || other.Part == m.Part || other.Loudspeakers == 0 || m.Loudspeakers == 0 {
				continue
			}
			for _, theirs := range figures(other) {
				a, b := mine*float64(m.Loudspeakers), theirs*float64(other.Loudspeakers)
				if near(a, 10*b, 0.15) || near(b, 10*a, 0.15) {
					return quantity.Resistance(a), other
				}
			}
		}
	}
	return 0, nil
}

// figures is what a reading may mean in ohms, likeliest first: without a unit a
// line in working order reads in kilohms sooner than in ohms when below 10.
func figures(m *analysis.Measured) []float64 {
	v := m.Part.Impedance.V
	switch {
	case !v.Unitless:
		return []float64{float64(v.Ohm)}
	case v.Number < 10:
		return []float64{1000 * v.Number, v.Number}
	}
	return []float64{v.Number, 1000 * v.Number}
}

// near tells that a is b within a share of it.
func near(a, b, share float64) bool { return quantity.AtMost(math.Abs(a-b), share*math.Abs(b)) }

// compareImpedance judges an impedance that can be compared.
func compareImpedance(r *check.Report, m *analysis.Measured) {
	part := m.Part
	low, high := r.Limit("lowest"), r.Limit("highest")
	predicted, shown := float64(m.Impedance.Value), float64(m.Shown())
	least, most := below(predicted, low), predicted*(1+high.Value/100)
	message := fmt.Sprintf("Reading %q shows %s for %s at %s; %s is predicted", part.Name, part.Impedance.Text, m.Where, part.Frequency.V, m.Impedance.Value)
	if m.Load > 0 && shown > 0 {
		message += fmt.Sprintf(": %s instead of %s", m.Implies(m.Shown()), m.Load)
	}
	evidence := append([]check.Evidence{check.Of("predicted impedance", m.Impedance)}, impliedLoad(m)...)
	evidence = append(evidence, smallestFault(m, least, most)...)
	finish := func(a *check.Answer) *check.Answer {
		a.Key("impedance").At(part.Impedance.Span).Evidence(evidence...).Assumed(m.Impedance.Assumed...)
		if !part.AmplifierDisconnected.Set() {
			a.Assumed("the amplifier was disconnected")
		}
		if part.Instrument.V == "" {
			a.Assumed("the figure is an impedance, because a frequency is stated")
		}
		if len(m.Unsure) > 0 {
			a.Assumed("attenuators of which nothing is said stood fully up")
		}
		return a
	}
	switch {
	case !quantity.AtLeast(shown, least):
		severity := check.Warning
		if shown < shortShare*predicted || overRating(m) {
			severity = check.Error
		}
		a := finish(r.Fail(severity, message+", and the line takes more than it should"+likely(m, least, most)+"."))
		a.AtLeast(fmt.Sprintf("at least %s (%s below %s)", quantity.Resistance(least), low, m.Impedance.Value), least, "ohm", low)
		remedies(a, m)
	case quantity.AtMost(shown, most):
		finish(r.Pass(message+".")).
			AtMost(fmt.Sprintf("%s to %s (%s below to %s above %s)", quantity.Resistance(least), quantity.Resistance(most), low, high, m.Impedance.Value), most, "ohm", high)
	case len(m.Unsure) > 0:
		finish(r.Open(message+", which attenuators turned down would account for"+likely(m, least, most)+".", stood(m)...))
	case m.Plain != nil:
		finish(r.Open(message+"; but the impedance of a loudspeaker without a transformer is its nominal one at some frequencies only.",
			analysis.Missing{What: "impedance over frequency", Part: "loudspeaker " + quoted(m.Plain.Name), Where: m.Plain.Header, Write: `impedance_at = { "1 kHz" = "9 ohm" }`}))
	default:
		a := finish(r.Fail(check.Warning, message+", and part of the line is not there"+likely(m, least, most)+"."))
		a.AtMost(fmt.Sprintf("at most %s (%s above %s)", quantity.Resistance(most), high, m.Impedance.Value), most, "ohm", high)
		remedies(a, m)
	}
}

// stood asks how the attenuators stood.
func stood(m *analysis.Measured) []analysis.Missing {
	if !m.Part.Attenuators.Set() {
		return []analysis.Missing{readingLacks(m.Part, "how the attenuators stood", `attenuators = "all fully up"`)}
	}
	var all []analysis.Missing
	for _, a := range m.Unsure {
		all = append(all, analysis.Missing{What: "setting of the attenuator", Part: "attenuator " + quoted(a.Name), Where: a.Header, Write: `setting = "-6 dB"`})
	}
	return all
}

// overRating tells that what the meter saw would overload the amplifier.
func overRating(m *analysis.Measured) bool {
	c := m.Line.Channel
	return c != nil && c.Rated.Known() && m.Volts > 0 && !quantity.AtMost(m.Implies(m.Shown()), c.Rated.Value)
}

// impliedLoad shows what load the reading is.
func impliedLoad(m *analysis.Measured) []check.Evidence {
	w := m.Implies(m.Shown())
	if w <= 0 {
		return nil
	}
	e := check.Plainly("load that the reading implies", w)
	e.Sum = fmt.Sprintf("(%s)² / %s = %s", lineVolts(m.Volts), m.Shown(), w)
	return []check.Evidence{e}
}

// commonKind is the kind of which there are most, the first of equals.
func commonKind(m *analysis.Measured) (analysis.Kind, bool) {
	var common analysis.Kind
	for _, k := range m.Kinds {
		n := k.Count
		if n > common.Count && k.Each > 0 {
			common = k
		}
	}
	return common, common.Count > 0
}

// smallestFault says what the band lets through: how much may be missing or too
// much, and what one loudspeaker on the wrong terminals would read.
func smallestFault(m *analysis.Measured, least, most float64) []check.Evidence {
	k, ok := commonKind(m)
	if m.Load <= 0 || !ok {
		return nil
	}
	missing := m.Load - m.Implies(quantity.Resistance(most))
	extra := m.Implies(quantity.Resistance(least)) - m.Load
	smallest := check.Plainly("smallest fault this reading could show", missing)
	smallest.Value = fmt.Sprintf("%s missing (%s of %s) or %s too much", missing, wording.Counted(int(min(float64(missing/k.Each)+1, 1e9)), "loudspeaker"), k.Each, extra)
	smallest.Sum = fmt.Sprintf("%s − (%s)² / %s, (%s)² / %s − %s = %s", m.Load, lineVolts(m.Volts), quantity.Resistance(most), lineVolts(m.Volts), quantity.Resistance(least), m.Load, smallest.Value)
	all := []check.Evidence{smallest}
	if k.Marked <= 25*1.02 {
		return all
	}
	wrong := wrongUnit(k, 25)
	z := m.At(m.Load + wrong)
	e := check.Plainly("with one loudspeaker of "+k.Each.String()+" on its 25 V terminals", z)
	e.Sum = fmt.Sprintf("(%s)² / (%s + %s) = %s", lineVolts(m.Volts), m.Load, wrong, z)
	if quantity.AtLeast(float64(z), least) {
		e.Sum += "; inside the band: this reading hides it"
	}
	return append(all, e)
}

// wrongUnit is what a loudspeaker takes more when its tap is connected for
// another voltage: tap × (V / that voltage)² in place of the tap.
func wrongUnit(k analysis.Kind, volts float64) quantity.Power {
	ratio := float64(k.Marked) / volts
	return k.Each * quantity.Power(ratio*ratio-1)
}

// shortShare is the share of the predicted impedance below which a reading is as
// good as a short circuit: common practice, no published source.
const shortShare = 0.15

// cause is a guess at what is wrong, and what to do about it.
type cause struct{ is, look string }

// likely names what would account for the reading.
func likely(m *analysis.Measured, least, most float64) string {
	all := causes(m, least, most)
	if len(all) == 0 {
		return ""
	}
	texts := make([]string, 0, 3)
	for _, c := range all[:min(3, len(all))] {
		texts = append(texts, c.is)
	}
	return "; likely " + strings.Join(texts, ", or ")
}

// remedies says where to look for each cause.
func remedies(a *check.Answer, m *analysis.Measured) {
	low, high := a.Limit("lowest"), a.Limit("highest")
	predicted := float64(m.Impedance.Value)
	for _, c := range causes(m, below(predicted, low), predicted*(1+high.Value/100)) {
		a.Remedy(check.Advice, c.look)
	}
	if !m.Part.AmplifierDisconnected.Set() && float64(m.Shown()) < predicted {
		a.Remedy(check.Advice, "Take the amplifier off the line and measure again, if it was still connected: its output pulls the reading down.")
	}
	if m.Line.Ring() {
		a.Remedy(check.Computed, fmt.Sprintf("Part the two ends of the ring at the amplifier, open it in the middle and measure each half, until the part is found that differs; the whole of %s should read %s.", m.Where, m.Impedance.Value))
		return
	}
	a.Remedy(check.Computed, fmt.Sprintf("Open the line in the middle and measure each half, until the part is found that differs; the whole of %s should read %s.", m.Where, m.Impedance.Value))
}

// causes guesses, likeliest first, at what would account for a reading outside the
// band.
func causes(m *analysis.Measured, least, most float64) []cause {
	shown, predicted := float64(m.Shown()), float64(m.Impedance.Value)
	inBand := func(z float64) bool { return quantity.AtLeast(z, least) && quantity.AtMost(z, most) }
	if shown < least {
		return causesLow(m, shown, predicted, inBand)
	}
	return causesHigh(m, shown, inBand)
}

func causesLow(m *analysis.Measured, shown, predicted float64, inBand func(float64) bool) []cause {
	var all []cause
	if shown < shortShare*predicted {
		all = append(all, cause{"a short circuit", "Look for a short: a staple or screw through the cable, a pinched cover, strands across terminals, a failed transformer."})
	}
	if slip := 10 * shown; inBand(slip) {
		all = append(all, cause{
			fmt.Sprintf("a slip of the meter's range (%s)", quantity.Resistance(slip)),
			fmt.Sprintf("Read the range of the meter again: ten times as much, %s, would agree.", quantity.Resistance(slip)),
		})
	}
	if m.Volts <= 0 {
		return append(all, cause{"more loudspeakers than drawn, or in parallel instead of in series", "Count the loudspeakers on the line and look at how they are joined."})
	}
	extra := m.Implies(m.Shown()) - m.Load
	if coil := float64(m.At(extra)); quantity.AtLeast(coil, 3) && quantity.AtMost(coil, 20) && float64(extra) > 0 {
		all = append(all, cause{
			"a loudspeaker without a transformer across the line",
			fmt.Sprintf("Look for a loudspeaker connected without its transformer: what is too much is one voice coil of %s.", m.At(extra)),
		})
	}
	if k, ok := commonKind(m); ok {
		if c, found := otherTerminals(m, k, extra); found {
			all = append(all, c)
		}
		if n := math.Round(float64(extra / k.Each)); n >= 1 && shown >= shortShare*predicted {
			all = append(all, cause{
				fmt.Sprintf("about %s too many of %s each", wording.Counted(int(min(n, 1e9)), "loudspeaker"), k.Each),
				fmt.Sprintf("Count the loudspeakers and read their taps: %s more than drawn, or higher taps, make this reading.", quantity.Power(extra)),
			})
		}
	}
	return all
}

// otherTerminals finds one to three loudspeakers of a kind, or all, on the terminals
// of a lower voltage that would account for what is too much.
func otherTerminals(m *analysis.Measured, k analysis.Kind, extra quantity.Power) (cause, bool) {
	for _, volts := range []float64{25, 100 / math.Sqrt2} {
		if k.Marked <= 0 || float64(k.Marked) < 1.02*volts {
			continue
		}
		one := wrongUnit(k, volts)
		times := percent(float64(one/k.Each) + 1)
		for n := 1; n <= 3 && n <= k.Count; n++ {
			if near(float64(extra), float64(n)*float64(one), 0.2) {
				return cause{
					fmt.Sprintf("%s on the %s terminals", wording.Counted(n, "loudspeaker"), lineVolts(quantity.Voltage(volts))),
					fmt.Sprintf("Look for %s of %s connected to %s terminals: each draws %s times its marking there.", wording.Counted(n, "loudspeaker"), k.Each, lineVolts(quantity.Voltage(volts)), times),
				}, true
			}
		}
		if near(float64(extra+m.Load), float64(m.Load)*(float64(one/k.Each)+1), 0.2) {
			return cause{
				fmt.Sprintf("all loudspeakers on their %s terminals", lineVolts(quantity.Voltage(volts))),
				fmt.Sprintf("Look at the marking of the taps: all on their %s terminals draw %s times their marking.", lineVolts(quantity.Voltage(volts)), times),
			}, true
		}
	}
	return cause{}, false
}

func causesHigh(m *analysis.Measured, shown float64, inBand func(float64) bool) []cause {
	var all []cause
	if slip := shown / 10; inBand(slip) {
		all = append(all, cause{
			fmt.Sprintf("a slip of the meter's range (%s)", quantity.Resistance(slip)),
			fmt.Sprintf("Read the range of the meter again: a tenth, %s, would agree.", quantity.Resistance(slip)),
		})
	}
	if m.Volts <= 0 {
		return append(all, cause{"a loudspeaker that is not connected, or in series instead of in parallel", "Count the loudspeakers on the line and look at how they are joined."})
	}
	sees := m.Implies(m.Shown())
	lacks := m.Load - sees
	k, ok := commonKind(m)
	switch {
	case !ok || quantity.AtLeast(float64(sees), 0.5*float64(k.Each)):
	case m.Line.Ring():
		all = append(all, cause{"a ring of which both ends are open", "Look for broken conductors or loose terminals near the meter and at the amplifier: one break alone does not show on a ring, and hardly one loudspeaker is seen."})
	default:
		all = append(all, cause{"a line that is open before its first loudspeaker", "Look for a broken conductor or a loose terminal near the meter: hardly one loudspeaker is seen."})
	}
	if name, found := m.BreakAfter(sees); found {
		all = append(all, cause{
			fmt.Sprintf("a line that is open behind %q", name),
			fmt.Sprintf("Look for a broken conductor or a loose terminal behind %q: up to there the line takes about %s.", name, sees),
		})
	}
	for _, a := range m.Attenuated {
		all = append(all, turnedDown(a, lacks)...)
	}
	if ok {
		if n := math.Round(float64(lacks / k.Each)); n >= 1 {
			all = append(all, cause{
				fmt.Sprintf("about %s of %s missing", wording.Counted(int(min(n, 1e9)), "loudspeaker"), k.Each),
				fmt.Sprintf("Count the loudspeakers and read their taps: %s less than drawn, or lower taps, make this reading.", lacks),
			})
		}
		if hundred := 100.0; k.Marked > 0 && float64(k.Marked) < hundred/1.02 && near(float64(sees), float64(m.Load)*float64(k.Marked)*float64(k.Marked)/(hundred*hundred), 0.2) {
			all = append(all, cause{"all loudspeakers on their 100 V terminals", "Look at the marking of the taps: on their 100 V terminals all take half their marking, or less, on this line."})
		}
	}
	return all
}

// turnedDown is how far an attenuator would have to be turned down: what is behind
// it then takes P·10^(−dB/10).
func turnedDown(a *analysis.Attenuator, lacks quantity.Power) []cause {
	if !a.Behind.Known() || a.Behind.Value <= 0 {
		return nil
	}
	behind := float64(a.Behind.Value) * float64(a.Count)
	left := 1 - float64(lacks)/behind
	switch {
	case left > 0.01:
		db := quantity.Significant(-10*math.Log10(left), 2)
		return []cause{{fmt.Sprintf("attenuator %q left %s dB down", a.Part.Name, db), fmt.Sprintf("Turn attenuator %q fully up and measure again: %s dB down would make this reading.", a.Part.Name, db)}}
	case left > -0.2:
		return []cause{{fmt.Sprintf("attenuator %q left off", a.Part.Name), fmt.Sprintf("Turn attenuator %q fully up and measure again: turned off it would make this reading.", a.Part.Name)}}
	}
	return nil
}

// voltsAgree judges a signal voltage.
func voltsAgree(r *check.Report, m *analysis.Measured) {
	part := m.Part
	shown := fmt.Sprintf("Reading %q shows %s", part.Name, part.Volts.Text)
	instead := ""
	if m.Impedance.Known() {
		instead = fmt.Sprintf(" Without a tone, measure the impedance of the line with the amplifier disconnected: %s should show %s at 1 kHz.", "line "+quoted(m.Line.Part.Name), m.Impedance.Value)
	}
	signal := strings.ToLower(part.Signal.V)
	steady := strings.Contains(signal, "tone") || strings.Contains(signal, "sine")
	full := strings.Contains(signal, "rated") || strings.Contains(signal, "full")
	expected := m.VoltsAt()
	open := func(text string, missing ...analysis.Missing) {
		a := r.Open(shown+text+instead, missing...).Key("volts").At(part.Volts.Span)
		if m.Impedance.Known() {
			a.Evidence(check.Of("predicted impedance", m.Impedance)).Evidence(smallestFault(m, below(float64(m.Impedance.Value), r.Limit("lowest")), float64(m.Impedance.Value)*(1+r.Limit("highest").Value/100))...)
		}
	}
	const tone = `signal = "1 kHz tone at rated output"`
	switch {
	case !steady && part.Signal.Set():
		open(fmt.Sprintf(" on %s, which says nothing: the volts of a programme wander far below those of full output.", part.Signal.V), readingLacks(part, "steady tone at a stated level of the amplifier", tone))
		return
	case !steady:
		open(" of a signal that is not stated, which says nothing: only a steady tone can be compared.", readingLacks(part, "steady tone at a stated level of the amplifier", tone))
		return
	case !full:
		open(" of a tone at a level that is not stated.", readingLacks(part, "level of the amplifier during the tone", tone))
		return
	case !expected.Known():
		open("; what it should show cannot be told.", expected.Missing...)
		return
	}
	limit := r.Limit("volts")
	message := fmt.Sprintf("%s; %s is predicted there at rated output", shown, expected.Value)
	var a *check.Answer
	switch volts, want := float64(part.Volts.V), float64(expected.Value); {
	case near(volts, want, limit.Value/100):
		a = r.Pass(message + ".")
	case volts < want:
		a = r.Fail(check.Warning, message+": the amplifier is not at rated output, or something on the way takes the volts.")
		a.Remedy(check.Advice, "Measure at the amplifier's terminals first: if the volts are there, look for thin or corroded cable, a loose joint, or more load than drawn between.")
	default:
		a = r.Fail(check.Warning, message+": the line gets more than its voltage.")
		a.Remedy(check.Advice, "Look at which output the line is on, and at the level of the tone.")
	}
	a.Key("volts").At(part.Volts.Span).Evidence(check.Of("predicted voltage", expected)).Assumed(expected.Assumed...).
		AtLeast(fmt.Sprintf("within %s of %s", limit, expected.Value), below(float64(expected.Value), limit), "V", limit)
}

// article puts an article before an instrument.
func article(noun string) string {
	if strings.HasPrefix(noun, "i") || strings.HasPrefix(noun, "o") {
		return "an " + noun
	}
	return "a " + noun
}
