package schedule

import (
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema/wording"
)

// lines is one row for each line.
func (m *maker) lines() *Table {
	t := &Table{Columns: []Column{
		{Title: "Line", Key: true},
		{Title: "Amplifier"},
		{Title: "Channel"},
		{Title: "Output"},
		{Title: "Line voltage", Unit: "V", Kind: Number, Decimals: 1},
		{Title: "Loudspeakers", Kind: Number},
		{Title: "Load", Unit: "W", Kind: Number, Decimals: 2},
		{Title: "Impedance", Unit: "ohm", Kind: Number, Decimals: 1},
		{Title: "Cable"},
		{Title: "Cable laid", Unit: m.lengthUnit(), Kind: Number, Decimals: AsIs},
		{Title: "Loses most"},
		{Title: "Drop", Unit: "%", Kind: Number, Decimals: 2},
		{Title: "Lost", Unit: "dB", Kind: Number, Decimals: 2},
		{Title: "Remarks"},
	}}
	for _, l := range m.system.Lines {
		channel := ""
		if l.Channel != nil {
			channel = l.Channel.Part.Name
		}
		amplifier, output := feeds(l)
		volts := analysisVolts(l)
		expected := m.system.Expected(l)
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			text(l.Part.Name), amplifier, text(channel), output, volts, count(l.Loudspeakers),
			known(&l.Load, 2), known(&expected.Impedance, 1), text(strings.Join(cableNames(l), ", ")), m.laid(l),
			text(l.Loss.Worst), known(&l.Loss.Drop, 2), lost(l), lineRemarks(l),
		}})
	}
	t.Notes = []string{
		"The impedance is what a meter should show at the amplifier's end at 1 kHz, the amplifier disconnected and attenuators fully up, cable included.",
		"Drop and dB lost are what the cable takes from the loudspeaker that loses most.",
	}
	return t
}

func analysisVolts(l *analysis.Line) Cell {
	if l.Output == nil {
		return text(NotStated)
	}
	return known(&l.Output.Volts, 1)
}

// lost is the loss of the worst loudspeaker, known where its drop is.
func lost(l *analysis.Line) Cell {
	if !l.Loss.Drop.Known() {
		return text(NotStated)
	}
	return number(float64(l.Loss.DB), 2)
}

// cableNames are the cables of a line, each once, the line's own first.
func cableNames(l *analysis.Line) []string {
	var names []string
	seen := map[string]bool{}
	cables, missing := l.Cables()
	for _, c := range cables {
		if !seen[c.Cable.Name] {
			seen[c.Cable.Name] = true
			names = append(names, c.Cable.Name)
		}
	}
	if len(missing) > 0 {
		names = append(names, NotStated)
	}
	return names
}

// laid is the cable of a line together, what returns from its end included.
func (m *maker) laid(l *analysis.Line) Cell {
	var sum analysis.LaidCable
	add := func(c *analysis.LaidCable) {
		sum.Length.Value += c.Length.Value
		sum.Length.Missing = analysis.MergeMissing(sum.Length.Missing, c.Length.Missing)
	}
	if whole, ok := l.Whole(); ok {
		add(&whole)
	}
	devices := l.Devices()
	for i := range devices {
		for k := range devices[i].Legs {
			add(&devices[i].Legs[k])
		}
	}
	if closing, _, ok := l.Closing(); ok {
		add(&closing)
	}
	if !sum.Length.Known() {
		return text(NotStated)
	}
	return m.length(sum.Length.Value)
}

func lineRemarks(l *analysis.Line) Cell {
	lumped, ring, reverse, assumed, series := "", "", "", "", ""
	if l.Loss.Lumped {
		lumped = "only the total length is stated"
	}
	if l.Ring() {
		ring = "ring"
	}
	if l.Part.Return.V == "reverse" {
		reverse = "reverse return"
	}
	if l.AssumedLoad > 0 {
		assumed = l.AssumedLoad.String() + " of it assumed"
	}
	if l.Part.Wiring.V == "series" {
		series = "in series"
	}
	return remarks(lumped, ring, reverse, series, assumed)
}

// amplifiers is one row for each output with what hangs on it, and one for each
// power channel.
func (m *maker) amplifiers() *Table {
	t := &Table{Columns: []Column{
		{Title: "Amplifier", Heading: true},
		{Title: "Channel", Key: true},
		{Title: "Output", Key: true},
		{Title: "Lines"},
		{Title: "Loudspeakers", Kind: Number},
		{Title: "Load", Unit: "W", Kind: Number, Decimals: 2},
		{Title: "Impedance", Unit: "ohm", Kind: Number, Decimals: 1},
		{Title: "Lowest allowed", Unit: "ohm", Kind: Number, Decimals: 1},
		{Title: "Rated", Unit: "W", Kind: Number, Decimals: AsIs},
		{Title: "Used", Unit: "%", Kind: Number, Decimals: 1},
		{Title: "In hand", Unit: "W", Kind: Number, Decimals: 2},
	}}
	for _, a := range m.system.Amplifiers {
		for _, c := range a.Channels {
			all := channelRow(c)
			if len(c.Outputs) == 1 { // one row is enough
				only := outputRow(a, c.Part.Name, c.Outputs[0])
				copy(only.Cells[8:], all.Cells[8:])
				t.Rows = append(t.Rows, only)
				continue
			}
			for _, o := range c.Outputs {
				t.Rows = append(t.Rows, outputRow(a, c.Part.Name, o))
			}
			t.Rows = append(t.Rows, all)
		}
		for _, o := range a.Outputs {
			if o.Channel == nil {
				t.Rows = append(t.Rows, outputRow(a, NotStated, o))
			}
		}
	}
	t.Notes = []string{
		"The load is what the devices take at nominal line voltage, attenuators fully up. Where an output has no line voltage its loudspeakers count as ohms, not as watts.",
		"The lowest impedance allowed is that of the data sheet, or for a line voltage the one at which the output gives the rated power of its channel.",
	}
	return t
}

func outputRow(a *analysis.Amplifier, channel string, o *analysis.Output) Row {
	names := make([]string, len(o.Lines))
	loudspeakers := 0
	for i, l := range o.Lines {
		names[i] = l.Part.Name
		loudspeakers += l.Loudspeakers
	}
	var load, impedance, lowest Cell
	switch {
	case len(o.Lines) == 0:
	case o.Kind == analysis.LowImpedance:
		impedance = known(&o.Impedance, 1)
	default:
		load, impedance = known(&o.Load, 2), known(&o.Impedance, 1)
	}
	switch {
	case o.Part.LowestImpedance.Set():
		lowest = number(float64(o.Part.LowestImpedance.V), 1)
	case o.Kind == analysis.ConstantVoltage && o.Channel != nil:
		lowest = known(&o.Floor, 1)
	}
	return Row{Cells: []Cell{
		text(a.Part.Name), text(channel), text(o.Part.Name), text(listed(names)), count(loudspeakers),
		load, impedance, lowest, {}, {}, {},
	}}
}

func channelRow(c *analysis.Channel) Row {
	name := c.Part.Name
	lines, loudspeakers := 0, 0
	for _, o := range c.Outputs {
		lines += len(o.Lines)
		for _, l := range o.Lines {
			loudspeakers += l.Loudspeakers
		}
	}
	row := []Cell{
		text(c.Amplifier.Part.Name), text(name), text("all outputs"), text(wording.Counted(lines, "line")), count(loudspeakers),
		{}, {}, {}, known(&c.Rated, AsIs), {}, {},
	}
	if c.CarriesLines() {
		used := c.Used()
		row[5], row[9] = known(&c.Load, 2), known(&used, 1)
		row[10] = text(NotStated)
		if used.Known() {
			row[10] = number(float64(c.Rated.Value-c.Load.Value), 2)
		}
	}
	return Row{Cells: row, Total: true}
}
