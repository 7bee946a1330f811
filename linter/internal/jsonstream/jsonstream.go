// Package jsonstream writes JSON piece by piece. It owns how members and items are
// parted, and how numbers are written; writers of results use it, and nothing else.
package jsonstream

import (
	"bufio"
	"bytes"
	"encoding/json"
	"io"
	"math"
	"strconv"
)

// Writer writes JSON piece by piece, each on a line, so that a document of any size
// needs the memory of one piece. Errors wait for Flush.
type Writer struct {
	out     *bufio.Writer // keeps its first error until flush
	scratch bytes.Buffer
	encoder *json.Encoder
	err     error // of encoding
	more    bool  // the object or list that is open has something in it
}

// New begins an empty document.
func New(to io.Writer) *Writer {
	w := &Writer{out: bufio.NewWriter(to)}
	w.encoder = json.NewEncoder(&w.scratch)
	w.encoder.SetEscapeHTML(false) // it is no part of a web page: "<" stays "<"
	return w
}

// Open opens an object or a list that is a value.
func (w *Writer) Open(bracket string) {
	_, _ = w.out.WriteString(bracket)
	w.more = false
}

// Close closes what is open.
func (w *Writer) Close(bracket string) {
	_, _ = w.out.WriteString("\n" + bracket)
	w.more = true
}

// Item begins the next thing in the object or list that is open.
func (w *Writer) Item() {
	if w.more {
		_ = w.out.WriteByte(',')
	}
	_ = w.out.WriteByte('\n')
	w.more = true
}

// Value writes any value.
func (w *Writer) Value(v any) {
	w.scratch.Reset()
	if err := w.encoder.Encode(v); err != nil && w.err == nil {
		w.err = err
	}
	_, _ = w.out.Write(bytes.TrimSuffix(w.scratch.Bytes(), []byte{'\n'}))
}

// Member writes a member of an object.
func (w *Writer) Member(name string, v any) {
	w.Item()
	_, _ = w.out.WriteString(`"` + name + `":`)
	w.Value(v)
}

// List opens a list that is a member.
func (w *Writer) List(name string) {
	w.Item()
	w.Open(`"` + name + `":[`)
}

// Object opens an object that is a member.
func (w *Writer) Object(name string) {
	w.Item()
	w.Open(`"` + name + `":{`)
}

// Flush ends the document with a line ending. Its error is the first there was.
func (w *Writer) Flush() error {
	_ = w.out.WriteByte('\n')
	if w.err != nil {
		return w.err
	}
	return w.out.Flush()
}

// Number is a number that JSON can carry. Infinity and not-a-number count as
// zero for omitzero; zero itself does not.
type Number float64

// IsZero tells that the number is to be left out.
func (n Number) IsZero() bool {
	return math.IsNaN(float64(n)) || math.IsInf(float64(n), 0)
}

// MarshalJSON rounds to nine significant digits: processors differ in the last
// ones.
func (n Number) MarshalJSON() ([]byte, error) {
	if n.IsZero() {
		return []byte("null"), nil
	}
	return strconv.AppendFloat(nil, float64(n), 'g', 9, 64), nil
}
