package transfer

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"sync"

	"loudlint/schema/quantity"
)

// number is a figure without a unit.
var number = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$`) })

// comma is a figure with a decimal comma.
var comma = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^([+-]?\d+),(\d+)`) })

// amount reads a quantity of a column: with the unit that stands in the cell, or
// else the one of the head. It gives the text as a design writes it; "" where
// nothing stands there, or nothing that is understood.
func amount[Q any](r *row, k key, d quantity.Dimension[Q]) string {
	text, col := r.at(k)
	if text == "" || text == "not stated" || text == "-" {
		return ""
	}
	written, ok := r.written(text, col, d.Example)
	if !ok {
		return ""
	}
	if _, err := d.Parse(written); err != nil {
		r.refuse(col, sentence(err), "")
		return ""
	}
	return written
}

// sentence writes what a quantity says of a text as a sentence.
func sentence(err error) string {
	text := err.Error()
	return strings.ToUpper(text[:1]) + text[1:] + "."
}

// written puts figure and unit together.
func (r *row) written(text string, col *column, example string) (string, bool) {
	if r.c.book.DecimalComma {
		text = comma().ReplaceAllString(text, "$1.$2")
	}
	if !number().MatchString(text) {
		return text, true // with a unit of its own, or whatever it is
	}
	if col.unit == "" {
		r.refuse(col, fmt.Sprintf("%q has no unit.", text), fmt.Sprintf("Write it into the head, such as %s (%s), or into the cell, such as %s.", col.head, unitOf(example), example))
		return "", false
	}
	if x, err := strconv.ParseFloat(text, 64); err == nil {
		text = quantity.Significant(x, 12) // a stored 0.30000000000000004 was typed 0.3
	}
	return text + " " + col.unit, true
}

// unitOf is the unit of an example such as "6 W".
func unitOf(example string) string {
	if i := strings.LastIndexByte(example, ' '); i >= 0 {
		return example[i+1:]
	}
	return example
}

// metres is a length as a figure, to compare.
func metres(text string) (quantity.Length, bool) {
	l, err := quantity.ParseLength(text)
	return l, err == nil && text != ""
}
