// Package source owns text files and places in them: it converts a byte offset
// into what a reader, an editor or a SARIF viewer counts. It never reads a disk
// and knows nothing of the dialect. Anything in the project may import it.
//
// Three coordinate systems meet here, and only here:
//
//   - byte offset, 0-based, into [File.Text]. It is the truth; everything else
//     is derived from it.
//   - visible column, 1-based, counting what a person sees as one character
//     (grapheme clusters, Unicode Standard Annex 29). Used in printed messages.
//   - UTF-16 column, 1-based, counting UTF-16 code units. Used in SARIF.
//
// Lines are 1-based. A line ends at "\n"; a "\r" before it belongs to the line
// ending. A byte order mark is removed by [NewFile] and counts for nothing, as
// SARIF 2.1.0 clause 3.30 demands.
package source

import (
	"bytes"
	"cmp"
	"sort"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
)

// BOM is the byte order mark as it stands in a file.
const BOM = "\ufeff"

// File is the text of one file. It is never changed after NewFile, so that it
// may be read from many goroutines.
type File struct {
	// Name is the path as it is shown to people, with forward slashes.
	Name string
	// Text is what the file holds, without a byte order mark.
	Text []byte
	// BOM tells that a byte order mark stood before Text.
	BOM bool

	once   sync.Once
	starts []int // byte offset of the first byte of each line
}

// NewFile makes a File of a name and its bytes. The bytes must not be changed
// afterwards.
func NewFile(name string, text []byte) *File {
	rest, marked := bytes.CutPrefix(text, []byte(BOM))
	return &File{Name: name, Text: rest, BOM: marked}
}

func (f *File) lineStarts() []int {
	f.once.Do(func() {
		f.starts = make([]int, 1, 1+bytes.Count(f.Text, []byte{'\n'}))
		for i, b := range f.Text {
			if b == '\n' {
				f.starts = append(f.starts, i+1)
			}
		}
	})
	return f.starts
}

// Lines is the number of lines; an empty file has one.
func (f *File) Lines() int { return len(f.lineStarts()) }

// Line gives the text of a 1-based line without its line ending, or "" when
// there is no such line.
func (f *File) Line(number int) string {
	starts := f.lineStarts()
	if number < 1 || number > len(starts) {
		return ""
	}
	end := len(f.Text)
	if number < len(starts) {
		end = starts[number] - 1
	}
	return strings.TrimSuffix(string(f.Text[starts[number-1]:end]), "\r")
}

// Position is one place in a file in every coordinate system.
type Position struct {
	Byte        int // 0-based
	Line        int // 1-based
	Column      int // 1-based, visible characters
	UTF16Column int // 1-based, UTF-16 code units
}

// Position converts a byte offset, which is clamped to the file.
func (f *File) Position(offset int) Position {
	offset = max(0, min(offset, len(f.Text)))
	starts := f.lineStarts()
	line := sort.Search(len(starts), func(i int) bool { return starts[i] > offset })
	before := f.Text[starts[line-1]:f.characterStart(offset)]
	return Position{Byte: offset, Line: line, Column: 1 + visibleLength(before), UTF16Column: 1 + utf16Length(before)}
}

// characterStart moves an offset inside the bytes of one encoded character to
// its first: a place in the middle of one has the column of the character.
func (f *File) characterStart(offset int) int {
	for back := 1; back < utf8.UTFMax && back <= offset; back++ {
		if !utf8.RuneStart(f.Text[offset-back]) {
			continue
		}
		if _, size := utf8.DecodeRune(f.Text[offset-back:]); size > back {
			return offset - back
		}
		break
	}
	return offset
}

func visibleLength(text []byte) int {
	if isASCII(text) {
		return len(text)
	}
	n, err := textseg.TokenCount(text, textseg.ScanGraphemeClusters)
	if err != nil { // the splitter has no error of its own; count runes if it ever gains one
		return utf8.RuneCount(text)
	}
	return n
}

func utf16Length(text []byte) int {
	n := 0
	for len(text) > 0 {
		r, size := utf8.DecodeRune(text)
		n++
		if r > 0xFFFF {
			n++
		}
		text = text[size:]
	}
	return n
}

func isASCII(text []byte) bool {
	for _, b := range text {
		if b >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// Span is a piece of a file, from Start up to but not including End. The zero
// Span is no place at all.
type Span struct {
	File       *File
	Start, End int32
}

// IsZero tells that the span is no place.
func (s Span) IsZero() bool { return s.File == nil }

// Text is what stands in the span.
func (s Span) Text() string {
	if s.File == nil {
		return ""
	}
	return string(s.File.Text[s.Start:s.End])
}

// From converts the start of the span.
func (s Span) From() Position {
	if s.File == nil {
		return Position{}
	}
	return s.File.Position(int(s.Start))
}

// To converts the end of the span, one past its last character.
func (s Span) To() Position {
	if s.File == nil {
		return Position{}
	}
	return s.File.Position(int(s.End))
}

// Part gives the piece of s that starts offset bytes into it and is length
// bytes long, kept inside s.
func (s Span) Part(offset, length int) Span {
	start := min(int(s.Start)+max(offset, 0), int(s.End))
	end := min(start+max(length, 0), int(s.End))
	return Span{File: s.File, Start: int32(start), End: int32(end)}
}

// Compare orders spans by file name, start and end: the one order in which
// places are printed.
func Compare(a, b Span) int {
	return cmp.Or(cmp.Compare(a.name(), b.name()), cmp.Compare(a.Start, b.Start), cmp.Compare(a.End, b.End))
}

func (s Span) name() string {
	if s.File == nil {
		return ""
	}
	return s.File.Name
}
