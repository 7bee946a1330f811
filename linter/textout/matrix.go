package textout

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/schema/wording"
)

// WriteMatrix writes who silences whom in each design: for lines that have the
// same sources, a table with a row for each source, and each fire panel, that may
// speak and a column for each that may be heard meanwhile. Its errors are those
// of w.
func WriteMatrix(w io.Writer, r *linter.Result, o Options) error {
	m := BeginMatrix(w, o)
	for _, d := range r.Designs {
		m.Design(d)
	}
	return m.End()
}

// Matrices are written design by design, as WriteMatrix does for all of a result.
type Matrices struct {
	page
	more bool // something was written
}

// BeginMatrix begins a page of matrices.
func BeginMatrix(w io.Writer, o Options) *Matrices {
	return &Matrices{page: *newPage(bufio.NewWriter(w), o)}
}

// Design writes those of one design.
func (m *Matrices) Design(d *linter.Judged) {
	if m.more {
		m.line()
	}
	m.more = true
	m.title(d)
	if d.Understood() {
		m.matrices(d.System)
	} else {
		m.notUnderstood(d)
	}
}

// End ends the page. Its error is the first of the writer.
func (m *Matrices) End() error { return m.w.Flush() }

// Marks of a matrix.
const (
	markSilences = "S"
	markTurns    = "d"
	markWrongly  = "X"
	markInTurn   = "="
	markFails    = "!"
	markUntold   = "?"
	markGoesOn   = "-"
	markItself   = "."
)

// speaker is a row: a source or a fire panel, with what it does to each source on
// each line, by the source's number.
type speaker struct {
	name string
	does []map[*analysis.Line]string
}

func (p *page) matrices(s *analysis.System) {
	if len(s.Sources) == 0 {
		p.say("No source is in the design: there is nobody to silence.")
		p.sentence()
		return
	}
	numbers := make(map[*analysis.Source]int, len(s.Sources))
	for n, src := range s.Sources {
		numbers[src] = n
	}
	p.heading("Who silences whom", Head, "")
	p.line()
	speakers := make([]speaker, 0, len(s.Sources))
	for _, src := range s.Sources {
		speakers = append(speakers, speakerOf(s, src.Part.Name, s.Silencings(src), numbers))
	}
	for _, m := range s.MuteLinks() {
		speakers = append(speakers, speakerOf(s, m.Part.Name, m.Silences, numbers))
	}
	silent := 0
	for _, g := range matrixGroups(s, speakers, numbers) {
		if len(g.sources) == 0 {
			silent += len(g.lines)
			continue
		}
		p.matrix(s, g, speakers)
	}
	if silent > 0 {
		p.say("No source is meant for " + wording.Counted(silent, "more line") + ".")
		p.sentence()
		p.line()
	}
	p.legend(speakers)
	for _, m := range s.MuteLinks() {
		p.sequence(m)
	}
	p.say("This follows from what the design says. Try every source against every other on site.")
	p.sentence()
}

// legend explains the marks; those that are rare only where they stand.
func (p *page) legend(speakers []speaker) {
	used := map[string]bool{markSilences: true, markFails: true, markUntold: true, markGoesOn: true}
	for _, sp := range speakers {
		for _, lines := range sp.does {
			for _, mark := range lines {
				used[mark] = true
			}
		}
	}
	for _, mark := range [][2]string{
		{markSilences, "the source of the row silences the one of the column"},
		{markTurns, "it turns it down without switching it off: priority-wired and mute-link say whether that is enough"},
		{markFails, "it is to silence it, and does not: priority-wired and mute-link say why"},
		{markUntold, "the design does not say enough"},
		{markGoesOn, "the other one goes on, as its priority says"},
		{markWrongly, "it silences one that stands above it, which is wrong: priority-wired says how"},
		{markInTurn, "it silences one above it that silences it in turn: the unit decides who is heard"},
	} {
		if used[mark[0]] {
			p.say(mark[1])
			p.row(mark[0])
		}
	}
	p.line()
}

// sequence writes what happens when an alarm comes.
func (p *page) sequence(m *analysis.MuteLink) {
	p.heading("In alarm: "+m.Part.Name, Head, placeOf(m.Part.Header))
	p.line()
	for _, step := range m.Sequence() {
		says := step.Says
		if says == "" {
			says = "not stated"
		}
		p.say(step.What)
		p.join(":")
		p.say(says)
		p.row("")
	}
	p.line()
}

// speakerOf works out the marks of one row.
func speakerOf(s *analysis.System, name string, all []analysis.Silencing, numbers map[*analysis.Source]int) speaker {
	sp := speaker{name: name, does: make([]map[*analysis.Line]string, len(numbers))}
	for _, c := range all {
		wrongly, inTurn := s.Wrongly(&c)
		marks := make(map[*analysis.Line]string, len(c.Lines))
		for _, l := range c.Lines {
			mark := markGoesOn
			if slices.Contains(c.Still, l) {
				switch {
				case c.State == analysis.Unsure && c.Rank != analysis.After && c.Rank != analysis.Equal || c.Rank == analysis.Unranked:
					mark = markUntold
				case c.Rank == analysis.Before:
					mark = markFails
				}
			} else {
				mark = silencingMark(s, &c, l, wrongly, inTurn)
			}
			marks[l] = mark
		}
		sp.does[numbers[c.Of]] = marks
	}
	return sp
}

// silencingMark is the mark for a line on which a source silences another one.
func silencingMark(s *analysis.System, c *analysis.Silencing, l *analysis.Line, wrongly, inTurn bool) string {
	switch {
	case wrongly:
		return markWrongly
	case inTurn:
		return markInTurn
	case s.TurnsDown(c, l):
		return markTurns
	}
	return markSilences
}

// matrixGroup is lines on which everything is the same.
type matrixGroup struct {
	lines   []*analysis.Line
	sources []int
}

func matrixGroups(s *analysis.System, speakers []speaker, numbers map[*analysis.Source]int) []*matrixGroup {
	on := map[*analysis.Line][]int{}
	for _, src := range s.Sources {
		for _, l := range src.Lines {
			on[l] = append(on[l], numbers[src])
		}
	}
	var all []*matrixGroup
	at := map[string]*matrixGroup{}
	for _, l := range s.Lines {
		var key strings.Builder
		for _, n := range on[l] {
			fmt.Fprintf(&key, "%d:", n)
			for _, sp := range speakers {
				fmt.Fprintf(&key, "%s,", sp.does[n][l])
			}
		}
		g := at[key.String()]
		if g == nil {
			g = &matrixGroup{sources: on[l]}
			at[key.String()] = g
			all = append(all, g)
		}
		g.lines = append(g.lines, l)
	}
	return all
}

// matrix writes one table, in as many pieces as its columns need.
func (p *page) matrix(s *analysis.System, g *matrixGroup, speakers []speaker) {
	names := make([]string, len(g.lines))
	for n, l := range g.lines {
		names[n] = l.Part.Name
	}
	p.styled(Head, "On "+strings.Join(names, ", "))
	p.sentence()
	p.line()
	const most = 32 // columns of a name
	cell := len(strconv.Itoa(len(speakers))) + 2
	first := g.lines[0]
	var rows []int
	widest := 0
	for n, sp := range speakers {
		if n < len(s.Sources) && !slices.Contains(g.sources, n) || n >= len(s.Sources) && !speaksOn(sp, g, first) {
			continue
		}
		rows = append(rows, n)
		widest = max(widest, visibleWidth(shorten(Printable(sp.name), most)))
	}
	start := labelInset + cell + widest + 1
	per := max(1, (p.width-start)/cell)
	for from := 0; from < len(g.sources); from += per {
		columns := g.sources[from:min(from+per, len(g.sources))]
		p.pad(start)
		for _, c := range columns {
			p.cell(Label, strconv.Itoa(c+1), cell)
		}
		p.line()
		for _, n := range rows {
			sp := speakers[n]
			number := ""
			if n < len(s.Sources) {
				number = strconv.Itoa(n + 1)
			}
			p.pad(labelInset)
			p.paint(Label, number)
			p.pad(cell - len(number))
			name := shorten(Printable(sp.name), most)
			p.write(name)
			gap := widest + 1 - visibleWidth(name)
			for _, c := range columns {
				mark := sp.does[c][first]
				if n == c {
					mark = markItself
				}
				gap += cell
				if mark != "" {
					p.cell(styleOfMark(mark), mark, gap)
					gap = 0
				}
			}
			p.line()
		}
		p.line()
	}
}

// speaksOn tells that a fire panel is to silence something on a line.
func speaksOn(sp speaker, g *matrixGroup, l *analysis.Line) bool {
	return slices.ContainsFunc(g.sources, func(n int) bool { return sp.does[n][l] != "" })
}

// cell writes a text at the right end of so many columns.
func (p *page) cell(style Style, text string, columns int) {
	p.pad(columns - len(text))
	p.paint(style, text)
}

func styleOfMark(mark string) Style {
	switch mark {
	case markFails, markWrongly:
		return Error
	case markUntold, markInTurn:
		return Warning
	case markSilences:
		return Pass
	}
	return Plain
}
