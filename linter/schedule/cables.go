package schedule

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// cableRun is one length of cable with its two ends.
type cableRun struct {
	designation string
	line        string // "" for leads between units and from sources
	from, to    string
	cable       *schema.Cable
	length      analysis.Figure[quantity.Length]
	in          string // containment
	remark      string
	block       int
	lead        bool // a lead of a source or between units: its cable is not in the design
}

// designation names a length of cable by the number of its line and of the
// length on it: "L2.05". The same stands at both ends.
func designation(line, leg, legs int) string {
	return fmt.Sprintf("L%d.%0*d", line, max(2, digits(legs)), leg)
}

func digits(n int) int {
	d := 1
	for ; n >= 10; n /= 10 {
		d++
	}
	return d
}

// cableRuns lists all cable of the design: that of the lines, then leads.
func (m *maker) cableRuns() []cableRun {
	var all []cableRun
	block := 0
	for n, l := range m.system.Lines {
		all = append(all, m.lineCables(l, n+1, &block)...)
	}
	return append(all, m.leads()...)
}

// lineCables lists the cable of one line in walking order.
func (m *maker) lineCables(l *analysis.Line, n int, block *int) []cableRun {
	rack := l.Part.Amplifier.V
	switch {
	case rack == "":
		rack = "amplifier " + NotStated
	case l.Part.Output.Set():
		rack += ", " + l.Part.Output.V
	}
	var all []cableRun
	add := func(c *analysis.LaidCable, from, to, remark string, block int) {
		if c.Length.Known() && c.Length.Value <= 0 {
			return // side by side
		}
		if from == "" {
			from = rack
		}
		all = append(all, cableRun{
			line: l.Part.Name, from: from, to: to, cable: c.Cable, length: c.Length,
			in: l.Part.Containment.V, remark: remark, block: block,
		})
	}
	devices := l.Devices()
	if whole, ok := l.Whole(); ok {
		last := ""
		if len(devices) > 0 {
			last = devices[len(devices)-1].Name
		}
		add(&whole, "", last, "the whole line; its lengths are not stated one by one", 0)
	}
	// The first of a run may have another leg than the others: it folds with its
	// like in other members of an enclosing run.
	type like struct {
		of    schema.Device
		first bool
	}
	blocks := map[like]int{}
	for i := range devices {
		d := &devices[i]
		key := like{d.Of, d.Index == 0}
		if blocks[key] == 0 {
			*block++
			blocks[key] = *block
		}
		legs := joined(d.Legs)
		for k := range legs {
			from, to := d.From, d.Name
			if k > 0 {
				from = "end of the home run"
			} else if len(legs) > 1 {
				to = "end of the home run"
			}
			add(&legs[k], from, to, "", blocks[key])
		}
	}
	if closing, from, ok := l.Closing(); ok {
		remark := "closes the ring"
		if l.Part.Return.V == "reverse" {
			remark = "the return conductor home"
		}
		add(&closing, from, rack, remark, 0)
	}
	for i := range all {
		all[i].designation = designation(n, i+1, len(all))
	}
	if v := l.Part.OverrideCable; v.Set() {
		all = append(all, cableRun{
			designation: fmt.Sprintf("L%d.R", n), line: l.Part.Name, from: l.Part.OverrideFrom.V, to: "attenuators",
			cable: m.system.Design.Cable(v.V), length: l.OverrideWay(), in: l.Part.Containment.V, remark: "override, along the line",
		})
	}
	return all
}

// joined puts the home run and the leg of the first device together where both
// are of one cable: it is laid in one length.
func joined(legs []analysis.LaidCable) []analysis.LaidCable {
	if len(legs) != 2 || legs[0].Cable != legs[1].Cable {
		return legs
	}
	one := legs[0]
	one.Length.Value += legs[1].Length.Value
	one.Length.Missing = analysis.MergeMissing(one.Length.Missing, legs[1].Length.Missing)
	return []analysis.LaidCable{one}
}

// leads lists the leads of sources and those between units, where the design
// says that there are any.
func (m *maker) leads() []cableRun {
	var all []cableRun
	for n, src := range m.system.Sources {
		for k, f := range src.Feeds {
			if f.Into == nil {
				continue
			}
			c := cableRun{designation: fmt.Sprintf("S%d", n+1), from: src.Part.Name, to: f.Into.Name(), lead: true, length: leadLength(f.Part.Lead), remark: connector(f.Part.Connector.V)}
			if len(src.Feeds) > 1 {
				c.designation += fmt.Sprintf(".%d", k+1)
			}
			all = append(all, c)
		}
	}
	n := 0
	for _, u := range m.system.Units {
		for _, k := range u.Links {
			n++
			from := u.Part.Name
			if k.Part.Output != nil {
				from = k.Part.Output.Name + " of " + from
			}
			all = append(all, cableRun{designation: fmt.Sprintf("X%d", n), from: from, to: k.Into.Name(), lead: true, length: leadLength(k.Part.Send.Lead)})
		}
	}
	return all
}

func leadLength(v schema.Value[quantity.Length]) analysis.Figure[quantity.Length] {
	f := analysis.Figure[quantity.Length]{Value: v.V}
	if !v.Set() {
		f.Missing = []analysis.Missing{{What: "length of the lead"}}
	}
	return f
}

func connector(name string) string {
	if name == "" {
		return ""
	}
	return "plug " + name
}

// cables is one row for each length of cable.
func (m *maker) cables() *Table {
	t := &Table{Columns: []Column{
		{Title: "Line", Heading: true},
		{Title: "Cable no.", Key: true},
		{Title: "From"},
		{Title: "To"},
		{Title: "Cable"},
		{Title: "Cores", Kind: Number},
		{Title: "Length", Unit: m.lengthUnit(), Kind: Number, Decimals: AsIs},
		{Title: "Laid in"},
		{Title: "Remarks"},
	}}
	for _, c := range m.cableRuns() {
		line, cable := c.line, cableName(c.cable)
		if c.lead {
			line, cable = "leads", Cell{}
		}
		length := text(NotStated)
		if c.length.Known() {
			length = m.length(c.length.Value)
		}
		typical := ""
		if c.cable != nil {
			typical = modelRemark(c.cable.Name)
		}
		t.Rows = append(t.Rows, Row{Block: c.block, Cells: []Cell{
			text(line), text(c.designation), text(c.from), text(c.to), cable, cores(c.cable), length, text(c.in), remarks(c.remark, typical),
		}})
	}
	t.Notes = []string{
		"Each cable number is written at both ends. It is made of the line's place in the design and the length's on the line: numbers move when lines or devices are put in before them.",
	}
	if p := m.system.Design.System.Polarity; p.Set() {
		t.Notes = append(t.Notes, "Polarity: "+p.V+".")
	} else {
		t.Notes = append(t.Notes, "Polarity: no convention is stated.")
	}
	return t
}

func cores(c *schema.Cable) Cell {
	switch {
	case c == nil:
		return Cell{}
	case c.Cores() == 0:
		return text(NotStated)
	}
	return count(c.Cores())
}

// cableTotal is all of one cable.
type cableTotal struct {
	cable           *schema.Cable
	lengths, unsaid int
	sum, longest    quantity.Length
	to              []string // lines
}

// cableTotals adds up the cable of the lines by type, in the order in which the
// lines name them; what is of no stated type comes last.
func (m *maker) cableTotals() []*cableTotal {
	var all []*cableTotal
	var none *cableTotal
	at := map[*schema.Cable]*cableTotal{}
	for _, c := range m.cableRuns() {
		if c.lead {
			continue
		}
		total := at[c.cable]
		if total == nil {
			total = &cableTotal{cable: c.cable}
			at[c.cable] = total
			if c.cable == nil {
				none = total
			} else {
				all = append(all, total)
			}
		}
		if !slices.Contains(total.to, c.line) {
			total.to = append(total.to, c.line)
		}
		if !c.length.Known() {
			total.unsaid++
			continue
		}
		total.lengths++
		total.sum += c.length.Value
		total.longest = max(total.longest, c.length.Value)
	}
	if none != nil {
		all = append(all, none)
	}
	return all
}

// order is what is bought of a cable: its lengths with the allowance, rounded up
// to whole metres or feet.
func (m *maker) order(total *cableTotal) Cell {
	sum := float64(total.sum) * (1 + float64(m.options.CuttingAllowance)/100)
	return count(int(math.Ceil(math.Min(m.inUnit(sum), 1e12) - 1e-6)))
}

// inUnit turns metres into the unit of the columns.
func (m *maker) inUnit(metres float64) float64 {
	if m.us {
		return metres / quantity.MetresPerFoot
	}
	return metres
}

// drum is how much cable is on a drum, in metres.
func (m *maker) drum() float64 {
	switch {
	case m.options.Drum > 0:
		return float64(m.options.Drum)
	case m.us:
		return 1000 * quantity.MetresPerFoot
	}
	return 100
}

// totals is one row for each cable.
func (m *maker) totals() *Table {
	unit := m.lengthUnit()
	t := &Table{Columns: []Column{
		{Title: "Cable", Key: true},
		{Title: "Cores", Kind: Number},
		{Title: "Lengths", Kind: Number},
		{Title: "Longest", Unit: unit, Kind: Number, Decimals: AsIs},
		{Title: "Laid", Unit: unit, Kind: Number, Decimals: AsIs},
		{Title: "To order", Unit: unit, Kind: Number},
		{Title: "Drums", Kind: Number},
		{Title: "Lines"},
		{Title: "Remarks"},
	}}
	for _, total := range m.cableTotals() {
		typical, unsaid, longer := "", "", ""
		if total.cable != nil {
			typical = modelRemark(total.cable.Name)
		}
		if total.unsaid > 0 {
			unsaid = "without " + wording.Counted(total.unsaid, "length") + " not stated"
		}
		if float64(total.longest) > m.drum() {
			longer = "a length is longer than a drum"
		}
		to := m.order(total)
		drums := math.Ceil(to.Number/m.inUnit(m.drum()) - 1e-6)
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			cableName(total.cable), cores(total.cable), count(total.lengths), m.length(total.longest), m.length(total.sum), to,
			number(drums, 0), text(listed(total.to)), remarks(unsaid, longer, typical),
		}})
	}
	drum := quantity.Format(quantity.Length(m.drum()), m.us)
	t.Notes = []string{
		fmt.Sprintf("To order is what is laid and %s for cutting and ends, rounded up; drums are of %s. Both are common practice, no published source: --allowance and --drum set others.", m.options.CuttingAllowance, drum),
		"Drums are counted by length alone; lengths without joints may need more.",
	}
	return t
}
