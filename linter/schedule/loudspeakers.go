package schedule

import (
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema"
)

// Words in the device column of rows that are only cable: a home run that meets
// another cable at the first device, the cable back from the last device, and
// the whole line where only its length is stated.
const (
	homeRun   = "home run"
	ringLeg   = "ring leg"
	wholeLine = "whole line"
)

// Columns of a loudspeaker schedule.
const (
	ofLine = iota
	ofAmplifier
	ofOutput
	ofDevice
	ofDesignation
	ofBehind
	ofSpace
	ofModel
	ofTap
	ofTapFor
	ofImpedance
	ofLeg
	ofCable
	ofHeight
	ofVoltage
	ofDelivered
	ofLost
	ofRemarks
	loudspeakerColumns
)

// The columns of a loudspeaker schedule. An import reads the same ones, so that
// a table can go out, be changed and come back.
func (m *maker) loudspeakerColumns() []Column {
	return []Column{
		ofLine:        {Title: "Line", Heading: true},
		ofAmplifier:   {Title: "Amplifier", Heading: true},
		ofOutput:      {Title: "Output", Heading: true},
		ofDevice:      {Title: "Device", Key: true},
		ofDesignation: {Title: "Designation", Key: true},
		ofBehind:      {Title: "Behind"},
		ofSpace:       {Title: "Space"},
		ofModel:       {Title: "Model"},
		ofTap:         {Title: "Tap", Unit: "W", Kind: Number, Decimals: AsIs},
		ofTapFor:      {Title: "Tap for", Unit: "V", Kind: Number, Decimals: AsIs},
		ofImpedance:   {Title: "Impedance", Unit: "ohm", Kind: Number, Decimals: AsIs},
		ofLeg:         {Title: "Leg", Unit: m.lengthUnit(), Kind: Number, Decimals: AsIs},
		ofCable:       {Title: "Cable"},
		ofHeight:      {Title: "Height", Unit: m.lengthUnit(), Kind: Number, Decimals: AsIs},
		ofVoltage:     {Title: "Voltage", Unit: "V", Kind: Number, Decimals: 1},
		ofDelivered:   {Title: "Delivered", Unit: "W", Kind: Number, Decimals: 2},
		ofLost:        {Title: "Lost", Unit: "dB", Kind: Number, Decimals: 2},
		ofRemarks:     {Title: "Remarks"},
	}
}

func (m *maker) loudspeakers() *Table {
	t := &Table{Columns: m.loudspeakerColumns()}
	block := 0
	for _, l := range m.system.Lines {
		devices := l.Devices()
		blocks := map[schema.Device]int{}
		if whole, ok := l.Whole(); ok {
			t.Rows = append(t.Rows, m.cableRow(l, wholeLine, &whole))
		}
		for i := range devices {
			d := &devices[i]
			if blocks[d.Of] == 0 {
				block++
				blocks[d.Of] = block
			}
			legs := joined(d.Legs)
			if len(legs) == 2 {
				t.Rows = append(t.Rows, m.cableRow(l, homeRun, &legs[0]))
				legs = legs[1:]
			}
			t.Rows = append(t.Rows, m.deviceRow(l, d, legs, blocks[d.Of]))
		}
		if closing, _, ok := l.Closing(); ok {
			t.Rows = append(t.Rows, m.cableRow(l, ringLeg, &closing))
		}
	}
	t.Notes = []string{
		"Devices stand in the order in which the cable meets them; a leg is the cable that leads to a device from the one before, there and back being one cable.",
		"Voltage, watts delivered and dB lost are worked out at full output and 1 kHz with all attenuators fully up, cable included.",
	}
	if m.lumped() {
		t.Notes = append(t.Notes, "Where only the total length of a line is stated, its whole load counts at the far end.")
	}
	return t
}

// lumped tells that of some line only the total length is known.
func (m *maker) lumped() bool {
	for _, l := range m.system.Lines {
		if l.Loss.Lumped {
			return true
		}
	}
	return false
}

// feeds names what feeds a line: amplifier and output.
func feeds(l *analysis.Line) (amplifier, output Cell) {
	return text(l.Part.Amplifier.V), text(l.Part.Output.V)
}

// cableRow is a row that is only cable.
func (m *maker) cableRow(l *analysis.Line, what string, leg *analysis.LaidCable) Row {
	amplifier, output := feeds(l)
	row := make([]Cell, loudspeakerColumns)
	row[ofLine], row[ofAmplifier], row[ofOutput], row[ofDevice] = text(l.Part.Name), amplifier, output, text(what)
	row[ofLeg], row[ofCable] = known(&leg.Length, AsIs), cableName(leg.Cable)
	if leg.Length.Known() {
		row[ofLeg] = m.length(leg.Length.Value)
	}
	if what == ringLeg && l.Part.Return.V == "reverse" {
		row[ofRemarks] = text("reverse return")
	}
	return Row{Cells: row}
}

func (m *maker) deviceRow(l *analysis.Line, d *analysis.Device, legs []analysis.LaidCable, block int) Row {
	amplifier, output := feeds(l)
	leg, cable := m.legCells(legs)
	row := make([]Cell, loudspeakerColumns)
	row[ofLine], row[ofAmplifier], row[ofOutput] = text(l.Part.Name), amplifier, output
	row[ofDevice], row[ofDesignation], row[ofBehind] = text(strings.ReplaceAll(d.Kind, "_", " ")), text(d.Name), text(d.Within)
	row[ofLeg], row[ofCable] = leg, cable
	switch v := d.Of.(type) {
	case *schema.Loudspeaker:
		m.loudspeakerCells(row, d, v)
	case *schema.Attenuator:
		row[ofModel] = text(v.Model.V)
		row[ofRemarks] = remarks(modelRemark(v.Model.V), assumedRemark(v.Basis.V))
	case *schema.Existing:
		if v.Load.Set() {
			row[ofTap] = number(float64(v.Load.V), AsIs)
		}
		if v.Impedance.Set() {
			row[ofImpedance] = number(float64(v.Impedance.V), AsIs)
		}
		if !v.Load.Set() && !v.Impedance.Set() {
			row[ofTap] = text(NotStated)
		}
		m.received(row, d)
		row[ofRemarks] = remarks(assumedRemark(v.Basis.V))
	case *schema.LineEnd:
		if v.Load.Set() {
			row[ofTap] = number(float64(v.Load.V), AsIs)
		}
	}
	return Row{Cells: row, Block: block}
}

func (m *maker) loudspeakerCells(row []Cell, d *analysis.Device, v *schema.Loudspeaker) {
	row[ofSpace], row[ofModel] = text(v.Space.V), text(v.Model.V)
	switch {
	case v.Tap.Set():
		row[ofTap] = number(float64(v.Tap.V), AsIs)
	case d.Run != nil && d.Run.Tap.Direct:
		row[ofImpedance] = number(float64(v.Impedance.V), AsIs)
		if !v.Impedance.Set() {
			row[ofImpedance] = text("varies")
		}
	default:
		row[ofTap] = text(NotStated)
	}
	if v.TapFor.Set() {
		row[ofTapFor] = number(float64(v.TapFor.V), AsIs)
	}
	if v.Height.Set() {
		row[ofHeight] = m.length(v.Height.V)
	}
	m.received(row, d)
	polarity, off := "", ""
	if v.Polarity.V == "reversed" {
		polarity = "polarity reversed"
	}
	if d.Run != nil && d.Run.Tap.Off {
		off = "switched off"
		row[ofVoltage], row[ofDelivered], row[ofLost] = Cell{}, count(0), Cell{}
	}
	row[ofRemarks] = remarks(off, polarity, modelRemark(v.Model.V), assumedRemark(v.Basis.V))
}

// received fills in what arrives at a device.
func (*maker) received(row []Cell, d *analysis.Device) {
	row[ofVoltage], row[ofDelivered], row[ofLost] = known(&d.Volts, 1), known(&d.Watts, 2), known(&d.Loss, 2)
}

// legCells gives the length and the cable that lead to a device.
func (m *maker) legCells(legs []analysis.LaidCable) (length, cable Cell) {
	switch {
	case len(legs) == 0:
		return Cell{}, Cell{}
	case !legs[0].Length.Known():
		return text(NotStated), cableName(legs[0].Cable)
	}
	return m.length(legs[0].Length.Value), cableName(legs[0].Cable)
}

func cableName(c *schema.Cable) Cell {
	if c == nil {
		return text(NotStated)
	}
	return text(c.Name)
}

// remarks joins what is to be said.
func remarks(all ...string) Cell {
	var said []string
	for _, r := range all {
		if r != "" {
			said = append(said, r)
		}
	}
	return text(strings.Join(said, ", "))
}

func modelRemark(model string) string {
	if schema.IsTypical(model) {
		return "typical data"
	}
	return ""
}

func assumedRemark(basis string) string {
	if basis == "assumed" {
		return "assumed"
	}
	return ""
}
