package schedule

import (
	"math"
	"slices"
	"strings"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// Columns of an input schedule.
const (
	inUnit = iota
	inInput
	inTakes
	inPlugged
	inKind
	inModel
	inConnector
	inLead
	inLevel
	inTrigger
	inPriority
	inMutes
	inHeard
	inRemarks
	inputColumns
)

// inputs is one row for each thing plugged in, and one for each input that is
// free.
func (m *maker) inputs() *Table {
	t := &Table{Columns: []Column{
		inUnit:      {Title: "Unit", Heading: true},
		inInput:     {Title: "Input", Key: true},
		inTakes:     {Title: "Takes"},
		inPlugged:   {Title: "Plugged in", Key: true},
		inKind:      {Title: "Kind"},
		inModel:     {Title: "Model"},
		inConnector: {Title: "Plug"},
		inLead:      {Title: "Lead", Unit: m.lengthUnit(), Kind: Number, Decimals: AsIs},
		inLevel:     {Title: "Level"},
		inTrigger:   {Title: "Trigger"},
		inPriority:  {Title: "Priority", Kind: Number},
		inMutes:     {Title: "Input mutes"},
		inHeard:     {Title: "Heard on"},
		inRemarks:   {Title: "Remarks"},
	}}
	links := m.system.MuteLinks()
	for _, u := range m.system.Units {
		for _, i := range u.Inputs {
			rows := m.plugged(u, i, links)
			if len(rows) == 0 {
				row := inputRow(u, i)
				row[inPlugged] = text("free")
				rows = append(rows, Row{Cells: row})
			}
			t.Rows = append(t.Rows, rows...)
		}
	}
	t.Rows = append(t.Rows, m.nowhere()...)
	t.Notes = []string{"Priority 1 is the highest. The priority schedule tells whether a source really silences the others."}
	return t
}

// plugged makes the rows of what is in an input.
func (m *maker) plugged(u *analysis.Unit, i *analysis.Input, links []*analysis.MuteLink) []Row {
	var rows []Row
	for _, f := range i.Feeds {
		row := inputRow(u, i)
		m.sourceCells(row, f)
		rows = append(rows, Row{Cells: row})
	}
	for _, k := range i.Links {
		row := inputRow(u, i)
		from := k.From.Part.Name
		if k.Part.Output != nil {
			from = k.Part.Output.Name + " of " + from
			row[inLevel] = text(k.Part.Output.Level.Text)
		}
		row[inPlugged], row[inKind] = text(from), text("send")
		if k.Part.Send.Lead.Set() {
			row[inLead] = m.length(k.Part.Send.Lead.V)
		}
		row[inRemarks] = remarks(summedBy(k.Part.Send.SummedBy.V))
		rows = append(rows, Row{Cells: row})
	}
	for _, l := range links {
		if l.Input == nil || i.Part == nil || l.Input.Part != i.Part {
			continue
		}
		row := inputRow(u, i)
		row[inPlugged], row[inKind], row[inTrigger] = text(l.Part.Name), text("mute link"), text(l.Part.Contact.V)
		rows = append(rows, Row{Cells: row})
	}
	return rows
}

func inputRow(u *analysis.Unit, i *analysis.Input) []Cell {
	row := make([]Cell, inputColumns)
	row[inUnit], row[inInput] = text(u.Part.Name), text(NotStated)
	if i.Part != nil {
		row[inInput], row[inTakes], row[inMutes] = text(i.Part.Name), text(i.Part.Takes.V), chosen(i.Part.Mutes)
	}
	return row
}

func chosen(c schema.Choice) Cell {
	if c.All {
		return text("all")
	}
	names := make([]string, len(c.Names))
	for i, n := range c.Names {
		names[i] = n.V
	}
	return text(strings.Join(names, ", "))
}

func (m *maker) sourceCells(row []Cell, f *analysis.Feed) {
	src := f.Source
	row[inPlugged], row[inKind], row[inModel] = text(src.Part.Name), text(src.Part.Kind), text(src.Part.Model.V)
	row[inConnector], row[inLevel], row[inTrigger] = text(f.Part.Connector.V), text(src.Part.Level.Text), text(src.Part.Trigger.V)
	if f.Part.Lead.Set() {
		row[inLead] = m.length(f.Part.Lead.V)
	}
	row[inPriority] = priorityOf(src)
	row[inHeard] = text(m.lineNames(src.Lines))
	twice := ""
	if len(src.Feeds) > 1 {
		twice = wording.Counted(len(src.Feeds), "plug")
	}
	row[inRemarks] = remarks(twice, summedBy(f.Part.SummedBy.V), modelRemark(src.Part.Model.V))
}

func summedBy(what string) string {
	if what == "" {
		return ""
	}
	return "left and right summed by " + what
}

func priorityOf(src *analysis.Source) Cell {
	if !src.Part.Priority.Set() {
		return Cell{}
	}
	return count(src.Part.Priority.V)
}

// lineNames names lines, shortly where they are all there are.
func (m *maker) lineNames(lines []*analysis.Line) string {
	if n := len(lines); n > 1 && n == len(m.system.Lines) {
		return "all lines"
	}
	names := make([]string, len(lines))
	for i, l := range lines {
		names[i] = l.Part.Name
	}
	return listed(names)
}

// nowhere makes the rows of sources of which it is not stated where they go.
func (m *maker) nowhere() []Row {
	var rows []Row
	for _, src := range m.system.Sources {
		for _, f := range src.Feeds {
			if f.Into != nil {
				continue
			}
			row := make([]Cell, inputColumns)
			row[inUnit], row[inInput] = text(NotStated), text(NotStated)
			m.sourceCells(row, f)
			rows = append(rows, Row{Cells: row})
		}
	}
	return rows
}

// priorities is one row for each pair of sources that share a line.
func (m *maker) priorities() *Table {
	t := &Table{Columns: []Column{
		{Title: "While this speaks", Heading: true},
		{Title: "Priority", Kind: Number},
		{Title: "Other source", Key: true},
		{Title: "Other's priority", Kind: Number},
		{Title: "Is to"},
		{Title: "Does"},
		{Title: "On lines"},
		{Title: "Still heard on"},
		{Title: "Remarks"},
	}}
	add := func(by string, priority Cell, all []analysis.Silencing) {
		for i := range all {
			c := &all[i]
			does, remark := does(c)
			lines := text(m.lineNames(c.Lines))
			if len(c.Lines) == 0 {
				lines = text(NotStated)
			}
			t.Rows = append(t.Rows, Row{Cells: []Cell{
				text(by), priority, text(c.Of.Part.Name), priorityOf(c.Of), text(isTo(c)), text(does), lines, text(m.lineNames(c.Still)), text(remark),
			}})
		}
	}
	for _, src := range m.system.Sources {
		add(src.Part.Name, priorityOf(src), m.system.Silencings(src))
	}
	for _, l := range m.system.MuteLinks() {
		add(l.Part.Name, text("alarm"), l.Silences)
	}
	t.Notes = []string{
		"This follows from what the design says. Try every source against every other on site.",
		"Where priorities are not written, announcements are taken to come before music.",
		"The checks priority-wired and mute-link tell why one does not silence what it is to silence.",
	}
	return t
}

func isTo(c *analysis.Silencing) string {
	switch c.Rank {
	case analysis.Before:
		return "silence it"
	case analysis.After:
		return "give way"
	case analysis.Equal:
		return "leave it"
	case analysis.Unranked:
	}
	return NotStated
}

// does tells what a source does to another one.
func does(c *analysis.Silencing) (does, remark string) {
	if len(c.Assumed) > 0 {
		remark = "priority assumed"
	}
	switch c.State {
	case analysis.Silenced:
		least := math.Inf(1)
		for i := range c.Mutes {
			least = math.Min(least, c.Mutes[i].DepthDB)
		}
		if !math.IsInf(least, 1) {
			return "turns it down by " + quantity.Gain(least).String(), remark
		}
		return "silences it", remark
	case analysis.Heard:
		if c.Rank == analysis.Before {
			return "does not silence it", remark
		}
		return "lets it go on", remark
	case analysis.Unsure:
	}
	if c.Rank == analysis.After || c.Rank == analysis.Equal {
		return "lets it go on", remark // what it could do is not asked
	}
	var what []string
	for _, missing := range c.Missing {
		if w := missing.What; !slices.Contains(what, w) {
			what = append(what, w)
		}
	}
	if len(what) > 0 {
		if remark != "" {
			remark += "; "
		}
		remark += NotStated + ": " + strings.Join(what, ", ")
	}
	return NotStated, remark
}

// overs writes, for each line, who goes before whom on it: "Desk before Player".
func (m *maker) overs() map[*analysis.Line]string {
	said := map[*analysis.Line][]string{}
	for _, src := range m.system.Sources {
		others := map[*analysis.Line][]string{}
		for _, c := range m.system.Silencings(src) {
			if c.Rank != analysis.Before {
				continue
			}
			for _, l := range c.Lines {
				others[l] = append(others[l], c.Of.Part.Name)
			}
		}
		for _, l := range m.system.Lines {
			if len(others[l]) > 0 {
				said[l] = append(said[l], src.Part.Name+" before "+strings.Join(others[l], ", "))
			}
		}
	}
	all := make(map[*analysis.Line]string, len(said))
	for l, each := range said {
		all[l] = strings.Join(each, "; ")
	}
	return all
}
