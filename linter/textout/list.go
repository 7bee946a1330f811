package textout

import (
	"bufio"
	"io"
	"strings"
)

// DefaultWidth is the width of a page, in columns, when none is given.
const DefaultWidth = defaultWidth

// Section is a titled list of named things, for pages that are no results: what
// checks there are, what models, what commands.
type Section struct {
	Title string
	Rows  []Row
}

// Row is one thing of a section.
type Row struct {
	Name string
	Mark string // what stands between name and text, such as a severity; may be empty
	Text string
}

// WriteSections writes sections, each with its names in one column and the rest
// in another; empty ones are left out. Its errors are those of w.
func WriteSections(w io.Writer, sections []Section, o Options) error {
	b := bufio.NewWriter(w)
	p := newPage(b, o)
	hang := p.columnFor(sections)
	first := true
	for _, s := range sections {
		if len(s.Rows) == 0 {
			continue
		}
		if !first {
			p.line()
		}
		first = false
		if s.Title != "" {
			p.heading(s.Title, Head, "")
		}
		for _, r := range s.Rows {
			p.listed(r, hang)
		}
	}
	return b.Flush()
}

// columnFor gives the column in which the texts begin: behind the longest name,
// but not where that would leave too little for them.
func (p *page) columnFor(sections []Section) int {
	longest := 0
	for _, s := range sections {
		for _, r := range s.Rows {
			longest = max(longest, visibleWidth(Printable(r.Name)))
		}
	}
	return min(labelInset+longest+2, p.width*2/5)
}

func (p *page) listed(r Row, hang int) {
	name := Printable(r.Name)
	p.pad(labelInset)
	p.paint(Plain, name)
	if r.Mark != "" {
		p.whole(markStyle(r.Mark), r.Mark)
		p.join(":")
	}
	p.say(r.Text)
	if len(p.words) == 0 {
		p.line()
		return
	}
	used := labelInset + visibleWidth(name)
	if used+2 > hang { // the name reaches into the texts' column
		p.line()
		used = 0
	}
	p.fill(used, hang, hang)
}

func markStyle(mark string) Style {
	switch mark {
	case "error":
		return Error
	case "warning":
		return Warning
	case "note":
		return Note
	}
	return Label
}

// WriteText writes paragraphs, each wrapped. Its errors are those of w.
func WriteText(w io.Writer, paragraphs []string, o Options) error {
	b := bufio.NewWriter(w)
	p := newPage(b, o)
	for i, text := range paragraphs {
		if i > 0 {
			p.line()
		}
		p.say(text)
		p.sentence()
	}
	return b.Flush()
}

// block writes lines as they are, set off from the left edge.
func (p *page) block(text string) {
	const inset = 4
	for line := range strings.SplitSeq(strings.TrimRight(text, "\n"), "\n") {
		line = strings.TrimRight(Printable(strings.ReplaceAll(line, "\t", "  ")), " ")
		if line != "" {
			p.pad(inset)
			p.write(line)
		}
		p.line()
	}
}
