package schedule

import (
	"fmt"
	"strings"

	"loudlint/linter/analysis"
)

// Columns of a test sheet. An import reads the filled-in ones of them.
const (
	tsLine = iota
	tsAmplifier
	tsOutput
	tsLoudspeakers
	tsLoad
	tsExpected
	tsFrom
	tsTo
	tsAttenuators
	tsImpedance
	tsFrequency
	tsInstrument
	tsDisconnected
	tsResistance
	tsInsulation
	tsPolarity
	tsOrder
	tsPriority
	tsStandby
	tsDate
	tsSigned
	testColumns
)

// testSheet is one row for each line, with what a meter should show and columns
// to fill in.
func (m *maker) testSheet() *Table {
	t := &Table{Columns: []Column{
		tsLine:         {Title: "Line", Key: true},
		tsAmplifier:    {Title: "Amplifier"},
		tsOutput:       {Title: "Output"},
		tsLoudspeakers: {Title: "Loudspeakers", Kind: Number},
		tsLoad:         {Title: "Load", Unit: "W", Kind: Number, Decimals: 2},
		tsExpected:     {Title: "Expected at 1 kHz", Unit: "ohm", Kind: Number, Decimals: 1},
		tsFrom:         {Title: "From", Unit: "ohm", Kind: Number, Decimals: 1},
		tsTo:           {Title: "To", Unit: "ohm", Kind: Number, Decimals: 1},
		tsAttenuators:  {Title: "Attenuators", Kind: Blank},
		tsImpedance:    {Title: "Impedance read", Unit: "ohm", Kind: Blank, Decimals: AsIs},
		tsFrequency:    {Title: "Frequency", Unit: "Hz", Kind: Blank, Decimals: AsIs},
		tsInstrument:   {Title: "Instrument", Kind: Blank},
		tsDisconnected: {Title: "Amplifier disconnected", Kind: Blank},
		tsResistance:   {Title: "DC resistance", Unit: "ohm", Kind: Blank, Decimals: AsIs},
		tsInsulation:   {Title: "Insulation", Unit: "Mohm", Kind: Blank, Decimals: AsIs},
		tsPolarity:     {Title: "Polarity", Kind: Blank},
		tsOrder:        {Title: "Goes before"},
		tsPriority:     {Title: "Priority heard", Kind: Blank},
		tsStandby:      {Title: "On standby", Kind: Blank},
		tsDate:         {Title: "Date", Kind: Blank},
		tsSigned:       {Title: "Signed", Kind: Blank},
	}}
	overs := m.overs()
	for _, l := range m.system.Lines {
		row := make([]Cell, testColumns)
		row[tsLine] = text(l.Part.Name)
		row[tsAmplifier], row[tsOutput] = feeds(l)
		row[tsLoudspeakers], row[tsLoad] = count(l.Loudspeakers), known(&l.Load, 2)
		z := &m.system.Expected(l).Impedance
		row[tsExpected], row[tsFrom], row[tsTo] = known(z, 1), text(NotStated), text(NotStated)
		if z.Known() {
			row[tsFrom] = number(float64(z.Value)*(1-float64(m.options.Below)/100), 1)
			row[tsTo] = number(float64(z.Value)*(1+float64(m.options.Above)/100), 1)
		}
		row[tsAttenuators] = text("none")
		if len(l.Attenuators) > 0 {
			row[tsAttenuators] = text("all fully up")
		}
		row[tsOrder] = text(overs[l])
		if !m.onStandby(l) {
			row[tsStandby] = text("none stated")
		}
		t.Rows = append(t.Rows, Row{Cells: row})
	}
	t.Notes = m.testNotes()
	return t
}

// onStandby tells that a supply with a battery feeds the amplifier of a line.
func (m *maker) onStandby(l *analysis.Line) bool {
	for _, s := range m.system.Design.Supplies {
		if !s.Battery.Set() {
			continue
		}
		for _, f := range s.Feeds.Items {
			if l.Part.Amplifier.Set() && f.V == l.Part.Amplifier.V {
				return true
			}
		}
	}
	return false
}

func (m *maker) testNotes() []string {
	notes := []string{
		"Before anything is measured: switch amplifiers off, secure them against being switched on, take them off the lines.",
		"Instrument: what kind it is (impedance meter, ohmmeter, multimeter), and its make and number.",
		fmt.Sprintf("Impedance: with an impedance meter at the amplifier's end, every attenuator fully up. It may be %s below to %s above what is expected (check reading-agrees).", m.options.Below, m.options.Above),
		"DC resistance: a multimeter sees the copper of cable and transformers, which says nothing about the load; it shows a dead short or a broken line, and no more.",
		"Insulation: between both conductors together and earth, by the local code, with electronics and line monitoring disconnected; its voltage destroys them. Discharge the line afterwards.",
	}
	if p := m.system.Design.System.Polarity; p.Set() {
		notes = append(notes, "Polarity: "+p.V+".")
	}
	var settings []string
	for _, l := range m.system.Lines {
		for _, a := range l.Attenuators {
			if a.Part.Setting.Set() {
				settings = append(settings, fmt.Sprintf("%s of %s: %s", a.Part.Name, l.Part.Name, a.Part.Setting.Text))
			}
		}
	}
	if len(settings) > 0 {
		notes = append(notes, "Attenuators are left as the design sets them: "+strings.Join(settings, "; ")+".")
	}
	return append(notes,
		"Filled in, the sheet comes back into the design: loudlint import reads each row as a reading.",
		"Tests of installed circuits are for those licensed for them; local codes come first.")
}
