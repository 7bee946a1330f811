package schedule

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"loudlint/schema"
	"loudlint/schema/wording"
)

// part is one thing to order.
type part struct {
	kind, item, model string
	data              string // how far its figures are to be trusted
	quantity, spares  int
	unit              string // "m" for cable, "" for pieces
	where             []string
	remark            string
}

// Kinds of part in the order of the list.
var partOrder = []string{"amplifier", "mixer", "microphone", "music", "message", "telephone", "loudspeaker", "attenuator", "line end", "cable", "plug", "part"}

// partList gathers parts; equal ones are counted together.
type partList struct {
	all []*part
	at  map[[4]string]*part
}

func (p *partList) add(kind, item, model, data string, n int, where string) *part {
	key := [4]string{kind, item, model, data}
	found := p.at[key]
	if found == nil {
		found = &part{kind: kind, item: item, model: model, data: data}
		p.at[key] = found
		p.all = append(p.all, found)
	}
	found.quantity += n
	if where != "" && !slices.Contains(found.where, where) {
		found.where = append(found.where, where)
	}
	return found
}

// dataOf says how far the data of a part are to be trusted.
func dataOf(model, basis string) string {
	switch {
	case schema.IsTypical(model):
		return "typical: choose before ordering"
	case model == "":
		return "no model stated"
	case basis == "assumed":
		return "assumed"
	case basis == "seen":
		return "seen on site"
	}
	return ""
}

func (m *maker) partList() []*part {
	p := &partList{at: map[[4]string]*part{}}
	for _, u := range m.system.Design.Units {
		p.add(u.Kind, u.Class.V, u.Model.V, dataOf(u.Model.V, u.Basis.V), 1, u.Name)
	}
	for _, src := range m.system.Sources {
		s := src.Part
		p.add(s.Kind, "", s.Model.V, dataOf(s.Model.V, s.Basis.V), 1, s.Name)
		for _, f := range src.Feeds {
			if c := f.Part.Connector.V; c != "" {
				p.add("plug", c, "", "", 1, s.Name)
			}
		}
	}
	for _, l := range m.system.Lines {
		for _, r := range l.Runs {
			item := r.Part.Class.V
			if r.Part.Model.V == "" && r.Part.RatedPower.Set() {
				item = strings.TrimSpace(item + " " + r.Part.RatedPower.Text)
			}
			p.add("loudspeaker", item, r.Part.Model.V, dataOf(r.Part.Model.V, r.Part.Basis.V), r.Count, l.Part.Name)
		}
		for _, a := range l.Attenuators {
			item := a.Part.Rating.Text
			p.add("attenuator", item, a.Part.Model.V, dataOf(a.Part.Model.V, a.Part.Basis.V), a.Count, l.Part.Name)
		}
		devices := l.Devices()
		for i := range devices {
			if e, ok := devices[i].Of.(*schema.LineEnd); ok {
				p.add("line end", e.Watches.V, "", "no model stated", 1, l.Part.Name)
			}
		}
	}
	for _, item := range m.system.Design.Items {
		found := p.add("part", item.Name, "", "", item.Quantity.Or(1), item.Location.V)
		found.remark = item.Note.V
	}
	m.cableParts(p)
	for _, found := range p.all {
		if found.kind == "loudspeaker" || found.kind == "attenuator" {
			found.spares = int(math.Ceil(float64(found.quantity)*float64(m.options.Spares)/100 - 1e-9))
		}
	}
	slices.SortStableFunc(p.all, func(a, b *part) int {
		return cmp.Compare(slices.Index(partOrder, a.kind), slices.Index(partOrder, b.kind))
	})
	return p.all
}

// cableParts adds cable in metres or feet, the cutting allowance included.
func (m *maker) cableParts(p *partList) {
	for _, total := range m.cableTotals() {
		name, data := NotStated, "no cable stated"
		if total.cable != nil {
			name, data = total.cable.Name, ""
			if schema.IsTypical(name) {
				data = dataOf(name, "")
			}
		}
		found := p.add("cable", name, "", data, int(m.order(total).Number), "")
		found.unit, found.where = m.lengthUnit(), total.to
		if total.unsaid > 0 {
			found.remark = "without " + wording.Counted(total.unsaid, "length") + " not stated"
		}
	}
}

// parts is one row for each thing to order.
func (m *maker) parts() *Table {
	t := &Table{Columns: []Column{
		{Title: "Kind", Key: true},
		{Title: "Item", Key: true},
		{Title: "Model", Key: true},
		{Title: "Data"},
		{Title: "Needed", Kind: Number},
		{Title: "Spares", Kind: Number},
		{Title: "To order", Kind: Number},
		{Title: "In"},
		{Title: "For"},
		{Title: "Remarks"},
	}}
	for _, p := range m.partList() {
		unit, spares := "pieces", count(p.spares)
		if p.unit != "" {
			unit, spares = p.unit, Cell{}
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			text(p.kind), text(p.item), text(p.model), text(p.data), count(p.quantity), spares, count(p.quantity + p.spares),
			text(unit), text(listed(p.where)), text(p.remark),
		}})
	}
	t.Notes = []string{
		fmt.Sprintf("Spares are %s of the loudspeakers and attenuators of each model, rounded up; cable is with %s for cutting and ends. Both are common practice, no published source: --spares and --allowance set others.", m.options.Spares, m.options.CuttingAllowance),
		"What is marked typical is invented data of no maker: put in the data sheet of what is bought, and check the design again, before ordering.",
		"Equipment that the design calls existing is not listed.",
	}
	return t
}
