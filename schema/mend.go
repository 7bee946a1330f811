package schema

import (
	"slices"
	"sort"
)

// edit replaces a stretch of a text.
type edit struct {
	start, end int
	with       string
	// spoiled marks a value that could not be read and was said already: it is
	// there, but nothing more is said about it.
	spoiled bool
}

// mended is a text after edits, and the way back from places in it to places in
// the text as it was written.
type mended struct {
	text   []byte
	pieces []mendedPiece
}

// mendedPiece is a stretch of a mended text: kept as it was, or put in place of
// what stood from `from` to `to`.
type mendedPiece struct {
	at       int // in the mended text
	from, to int // in the text as it was written
	kept     bool
	spoiled  bool
}

// mend carries out edits. An edit that begins inside an earlier one is left
// out: what it would change is gone.
func mend(text []byte, edits []edit) *mended {
	slices.SortStableFunc(edits, sortEdits)
	m := &mended{text: make([]byte, 0, len(text)+len(edits))}
	at := 0
	for _, e := range edits {
		if e.start < at {
			continue
		}
		m.keep(text, at, e.start)
		m.pieces = append(m.pieces, mendedPiece{at: len(m.text), from: e.start, to: e.end, spoiled: e.spoiled})
		m.text = append(m.text, e.with...)
		at = e.end
	}
	m.keep(text, at, len(text))
	return m
}

func (m *mended) keep(text []byte, from, to int) {
	m.pieces = append(m.pieces, mendedPiece{at: len(m.text), from: from, to: to, kept: true})
	m.text = append(m.text, text[from:to]...)
}

// piece finds the last piece that begins at or before a place in the mended
// text and is not empty there.
func (m *mended) piece(at int) mendedPiece {
	i := sort.Search(len(m.pieces), func(i int) bool { return m.pieces[i].at > at }) - 1
	return m.pieces[max(i, 0)]
}

// written gives what was written where a stretch of the mended text stands.
func (m *mended) written(start, end int) (int, int) {
	p := m.piece(start)
	from := p.from
	if p.kept {
		from += start - p.at
	}
	if end <= start {
		return from, from
	}
	p = m.piece(end - 1)
	to := p.to
	if p.kept {
		to = p.from + end - p.at
	}
	return from, max(from, to)
}

// spoiled tells that what stands at a place is there only in place of something
// that could not be read.
func (m *mended) spoiled(at int) bool { return m.piece(at).spoiled }
