package schema

import (
	"sync/atomic"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/parallel"
	"loudlint/schema/source"
)

// section is a stretch of a file that is parsed and decoded apart from the rest
// of it: some whole blocks, one very large block, or all of the file.
type section struct {
	syntax
	place  standing
	first  bool // holds, or may hold, blocks that are read before all others
	ready  bool // parsed, or refused
	doubt  bool // does not come to what the whole file would
	pieces []piece
	parsed []*hclsyntax.Body
	left   atomic.Int32 // pieces still to be parsed
}

// standing is what a file is to the design, which decides what it may hold.
type standing int

const (
	standsOwn      standing = iota // it is the design, or a part of it
	standsUsed                     // another file uses it
	standsForLimit                 // it is read for its criteria, apart from any design
)

// cutting says how files are divided into sections.
type cutting struct {
	size    int // of a piece, in bytes
	workers int
	whole   map[*source.File]bool // files that are left whole
}

// sections divides files, in order.
func (c cutting) sections(files []*source.File, place standing) []*section {
	perFile := make([][]*section, len(files))
	parallel.Do(len(files), c.workers, func(i int) {
		f := files[i]
		if p, ok := boundText(f); !ok {
			perFile[i] = []*section{{syntax: explainSyntax(f, p), first: true, ready: true}}
			return
		}
		var pieces []piece
		if !c.whole[f] {
			pieces = cut(f.Text, c.size)
		}
		if len(pieces) < 2 {
			perFile[i] = []*section{{syntax: syntax{file: f}, first: pieces == nil || pieces[0].first}}
		} else {
			perFile[i] = grouped(f, pieces)
		}
	})
	var all []*section
	for _, sections := range perFile {
		for _, s := range sections {
			s.place = place
			all = append(all, s)
		}
	}
	return all
}

// grouped makes sections of pieces: those of a block that is cut open stay
// together.
func grouped(file *source.File, pieces []piece) []*section {
	var all []*section
	depth := 0
	for i, from := 0, 0; i < len(pieces); i++ {
		switch pieces[i].kind {
		case pieceOpen:
			depth++
		case pieceClose:
			depth--
		case pieceItems:
		}
		if depth == 0 {
			s := &section{syntax: syntax{file: file}, pieces: pieces[from : i+1], parsed: make([]*hclsyntax.Body, i+1-from)}
			s.left.Store(int32(len(s.pieces)))
			for _, p := range s.pieces {
				s.first = s.first || p.first
			}
			all = append(all, s)
			from = i + 1
		}
	}
	return all
}

// parseSections parses those sections that are not parsed yet and calls done
// for every one. Sections that are large are shared out among the workers.
func parseSections(sections []*section, workers int, done func(i int)) {
	type job struct{ section, piece int }
	var jobs []job
	for i, s := range sections {
		if s.ready || len(s.pieces) == 0 {
			jobs = append(jobs, job{section: i})
			continue
		}
		for p := range s.pieces {
			jobs = append(jobs, job{i, p})
		}
	}
	parallel.Do(len(jobs), workers, func(n int) {
		j := jobs[n]
		s := sections[j.section]
		switch {
		case s.ready:
		case len(s.pieces) == 0:
			s.syntax = parseFile(s.file)
		default:
			s.parsed[j.piece] = parsePiece(s.file, s.pieces[j.piece])
			if s.left.Add(-1) > 0 {
				return
			}
			s.body = assemble(s.pieces, s.parsed)
			s.parsed = nil
		}
		if !s.ready {
			s.ready = true
			s.judge()
		}
		done(j.section)
	})
}

// judge sees whether the section is what the same stretch of the whole file
// would be.
func (s *section) judge() {
	if len(s.pieces) > 0 {
		// An attribute at the left edge is wrong anyway, and more wrong when
		// another section repeats it.
		s.doubt = s.body == nil || len(s.body.Attributes) > 0
	}
	if s.first || s.body == nil {
		return
	}
	for _, b := range s.body.Blocks {
		if readFirst([]byte(b.Type)) {
			s.doubt = true
		}
	}
}
