package textout

import (
	"bufio"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Problems writes what keeps texts from being a design: each problem with the
// line it stands on, the culprit marked below it, grouped by file, and how many
// there are. The problems are in the order of their places, as schema gives
// them. Its errors are those of w.
func Problems(w io.Writer, problems []schema.Problem, o Options) error {
	buffered := bufio.NewWriter(w)
	p := newPage(buffered, o)
	p.problems(problems)
	p.say(problemCount(problems))
	p.sentence()
	return buffered.Flush()
}

// problemCount says how many problems there are, and whether those are all.
func problemCount(problems []schema.Problem) string {
	text := wording.Counted(len(problems), "problem")
	if files := filesWith(problems); files > 1 {
		text += " in " + wording.Counted(files, "file")
	}
	if len(problems) >= schema.MaxProblems {
		return text + "; there may be more."
	}
	return text + "."
}

func filesWith(problems []schema.Problem) int {
	n := 0
	for i := range problems {
		if i == 0 || problems[i].Span.File != problems[i-1].Span.File {
			n++
		}
	}
	return n
}

// problems writes an entry for each problem; where they are of several files,
// below the name of its file.
func (p *page) problems(all []schema.Problem) {
	several := filesWith(all) > 1
	for i := range all {
		file := all[i].Span.File
		if several && file != nil && (i == 0 || file != all[i-1].Span.File) {
			p.heading(file.Name, Head, "")
			p.line()
		}
		p.problem(&all[i])
		p.line()
	}
}

func (p *page) problem(problem *schema.Problem) {
	p.say(problem.Found)
	p.entry("PROBLEM", Error, 0)
	if !problem.Span.IsZero() {
		p.exactPlace(problem.Span)
		p.row("at")
		p.marked(problem.Span)
	}
	if problem.Expected != "" {
		p.say(problem.Expected)
		p.row("right")
	}
	label := "perhaps"
	if problem.Nearest != "" {
		for line := range strings.Lines(problem.Nearest) {
			p.verbatim(strings.TrimSuffix(line, "\n"), label)
			label = ""
		}
	}
	label = "see"
	for _, r := range problem.Related[:min(len(problem.Related), mostPlaces)] {
		p.exactPlace(r.Span)
		if r.Note != "" {
			p.join(":")
			p.say(r.Note)
		}
		p.row(label)
		label = ""
	}
	if more := len(problem.Related) - mostPlaces; more > 0 {
		p.say("and " + wording.Counted(more, "more place"))
		p.row("")
	}
}

// exactPlace adds file, line and column of the start of a span.
func (p *page) exactPlace(s source.Span) {
	p.whole(Place, placeOf(s)+":"+strconv.Itoa(s.From().Column))
}

// verbatim writes a row of text as it is, spaces and all.
func (p *page) verbatim(text, label string) {
	rest := strings.TrimLeft(text, " ")
	indent := len(text) - len(rest)
	p.whole(Plain, strings.Repeat(" ", indent)+rest)
	p.row(label)
}

// marked writes the line a span begins on, and marks below what of it is meant.
func (p *page) marked(s source.Span) {
	column := textColumn
	if !p.labelled() {
		column = labelInset + 2
	}
	shown := excerptOf(s, p.width-column)
	p.pad(column)
	p.write(shown.before)
	p.paint(Error, shown.culprit)
	p.write(shown.after)
	p.line()
	p.pad(column + visibleWidth(shown.before))
	p.paint(Error, strings.Repeat("=", max(1, visibleWidth(shown.culprit))))
	p.line()
}

// excerpt is a line, or the part of a long one that matters.
type excerpt struct{ before, culprit, after string }

// excerptOf shows at most so many columns of the line a span begins on.
func excerptOf(s source.Span, columns int) excerpt {
	const context = 2000 // bytes of a line that are looked at on both sides
	text := s.File.Text
	start, end := int(s.Start), int(s.End)
	from, to := start, start
	for from > 0 && text[from-1] != '\n' && start-from < context {
		from--
	}
	for from < start && !utf8.RuneStart(text[from]) {
		from++
	}
	for to < len(text) && text[to] != '\n' && to-start < 2*context {
		to++
	}
	line := strings.TrimRight(string(text[start:to]), "\r")
	end = max(start, min(end, start+len(line)))
	e := excerpt{
		before:  strings.TrimLeft(shown(string(text[from:start])), " "),
		culprit: shown(line[:end-start]),
		after:   strings.TrimRight(shown(line[end-start:]), " "),
	}
	if int(s.End) > start && e.culprit == "" { // a line ending is meant
		e.after = ""
	}
	return e.cut(columns)
}

// shown makes a piece of a line printable; a tab is two spaces wide.
func shown(text string) string { return Printable(strings.ReplaceAll(text, "\t", "  ")) }

// cut keeps the culprit, or its beginning, in sight: what is left out before and
// after is marked.
func (e excerpt) cut(columns int) excerpt {
	const mark = "..."
	columns = max(columns, 4*len(mark))
	if visibleWidth(e.before)+visibleWidth(e.culprit)+visibleWidth(e.after) <= columns {
		return e
	}
	if room := columns / 3; visibleWidth(e.before) > room {
		e.before = mark + lastColumns(e.before, room-len(mark))
	}
	left := columns - visibleWidth(e.before)
	if visibleWidth(e.culprit) >= left {
		e.culprit, e.after = shorten(e.culprit, left), ""
		return e
	}
	if left -= visibleWidth(e.culprit); left <= len(mark) {
		e.after = ""
	} else {
		e.after = shorten(e.after, left)
	}
	return e
}

// lastColumns gives the end of a printable text, at most so many columns wide.
func lastColumns(text string, columns int) string {
	for text != "" && visibleWidth(text) > columns {
		size, _ := cluster(text)
		text = text[size:]
	}
	return text
}
