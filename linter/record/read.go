package record

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

// mostProblems bounds what is told of one file: a file that is no record has
// something wrong on each line.
const mostProblems = 20

// Read reads the file. With problems there is no record; each has its place in
// the file.
func Read(file *source.File) (*Record, []schema.Problem) {
	r := &reader{file: file, record: &Record{}}
	at := 0
	for n := 1; at < len(file.Text) && len(r.problems) < mostProblems; n++ {
		end, next := at, len(file.Text)
		for end < len(file.Text) && file.Text[end] != '\n' {
			end++
		}
		if end < len(file.Text) {
			next = end + 1
		}
		for end > at && (file.Text[end-1] == '\r' || file.Text[end-1] == ' ' || file.Text[end-1] == '\t') {
			end--
		}
		if line := (source.Span{File: file, Start: int32(at), End: int32(end)}); n > 1 {
			r.line(line)
		} else if !r.first(line) {
			break
		}
		at = next
	}
	if len(file.Text) == 0 {
		r.first(source.Span{File: file})
	}
	if len(r.problems) > 0 {
		return nil, r.problems
	}
	return r.record, nil
}

type reader struct {
	file     *source.File
	record   *Record
	places   []source.Span          // of the designs' names
	seen     map[string]source.Span // findings of the design being read
	problems []schema.Problem
}

func (r *reader) refuse(at source.Span, found, expected, nearest string) {
	r.problems = append(r.problems, schema.Problem{Span: at, Found: found, Expected: expected, Nearest: nearest})
}

// first reads the line that says what the file is. Nothing after it means
// anything when it is not there.
func (r *reader) first(line source.Span) bool {
	text := line.Text()
	v, ok := strings.CutPrefix(text, head)
	switch {
	case !ok:
		r.refuse(line, "This file is no record of findings.", fmt.Sprintf("Its first line is %q; `loudlint record` writes such a file.", head+version), "")
	case v != version:
		r.refuse(line.Part(len(head), len(v)), fmt.Sprintf("This record is of version %s of its form.", strconv.Quote(v)), fmt.Sprintf("This program reads version %s; write the record anew, or use the program that wrote it.", version), "")
	}
	return len(r.problems) == 0
}

func (r *reader) line(line source.Span) {
	text := line.Text()
	indent := len(text) - len(strings.TrimLeft(text, " \t"))
	line, text = line.Part(indent, len(text)-indent), text[indent:]
	if text == "" || text[0] == '#' {
		return
	}
	word, rest, _ := strings.Cut(text, " ")
	written := strings.TrimLeft(rest, " ")
	value := line.Part(len(text)-len(written), len(written))
	severity, known := check.ParseSeverity(word)
	if word != designWord && !known {
		r.unknownWord(line, word)
		return
	}
	if written == "" {
		r.refuse(line, fmt.Sprintf("Nothing stands behind %q.", word), form, "")
		return
	}
	name, bad := unescaped(written)
	if bad >= 0 {
		r.refuse(value.Part(bad, 1), "This backslash begins nothing that is known.", `What cannot be seen is written \u{HEX}, and a backslash itself \u{5C}.`, "")
		return
	}
	if word == designWord {
		r.design(value, name)
		return
	}
	r.finding(line, value, Finding{Severity: severity, Identity: name})
}

const form = "A line is `design NAME`, or a severity (error, warning or note) with the name of a finding."

func (r *reader) unknownWord(line source.Span, word string) {
	for _, mark := range []string{"<<<<<<<", "=======", ">>>>>>>", "|||||||"} {
		if strings.HasPrefix(word, mark) {
			r.refuse(line, "A mark of git: two versions of this record were not brought together.", "Take either, and write the record anew with `loudlint record`.", "")
			return
		}
	}
	r.refuse(line.Part(0, len(word)), fmt.Sprintf("A line begins with %s.", strconv.Quote(word)), form, schema.Nearest(word, []string{designWord, check.Error.String(), check.Warning.String(), check.Note.String()}))
}

func (r *reader) design(at source.Span, name string) {
	for i, d := range r.record.Designs {
		if d.Name == name {
			r.problems = append(r.problems, schema.Problem{
				Span: at, Found: fmt.Sprintf("The design %q stands here twice.", name), Expected: "All findings of a design stand in one place.",
				Related: []schema.Place{{Span: r.places[i], Note: "the first time"}},
			})
			return
		}
	}
	r.record.Designs = append(r.record.Designs, Design{Name: name})
	r.places = append(r.places, at)
	r.seen = map[string]source.Span{}
}

func (r *reader) finding(line, at source.Span, f Finding) {
	if len(r.record.Designs) == 0 {
		r.refuse(line, "A finding stands above the first design.", "It stands below the line that names its design.", "")
		return
	}
	if !strings.Contains(f.Identity, ": ") {
		r.refuse(at, "This names no finding.", "It is a check and what it was asked of, such as `load-margin: amplifier \"Rack\"`.", "")
		return
	}
	if first, again := r.seen[f.Identity]; again {
		r.problems = append(r.problems, schema.Problem{
			Span: at, Found: "This finding stands here twice.", Expected: "Each stands once.",
			Related: []schema.Place{{Span: first, Note: "the first time"}},
		})
		return
	}
	r.seen[f.Identity] = at
	d := &r.record.Designs[len(r.record.Designs)-1]
	d.Findings = append(d.Findings, f)
}

// escaped writes a text on one line so that all of it is seen, and unescaped
// gives it back.
func escaped(text string) string {
	plain := !strings.Contains(text, `\`) && !strings.HasPrefix(text, " ") && !strings.HasSuffix(text, " ")
	for _, c := range text {
		plain = plain && unicode.IsPrint(c) && c != utf8.RuneError
	}
	if plain {
		return text
	}
	var b strings.Builder
	for i := 0; i < len(text); {
		c, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case c == utf8.RuneError && size == 1: // no text: the byte itself
			fmt.Fprintf(&b, `\x{%02X}`, text[i])
		case c == '\\' || !unicode.IsPrint(c) || c == ' ' && (i == 0 || i == len(text)-1):
			fmt.Fprintf(&b, `\u{%X}`, c)
		default:
			b.WriteRune(c)
		}
		i += size
	}
	return b.String()
}

// unescaped gives the text that was escaped, and where a backslash begins
// nothing, or -1.
func unescaped(text string) (plain string, bad int) {
	if !strings.Contains(text, `\`) {
		return text, -1
	}
	var b strings.Builder
	for i := 0; i < len(text); {
		if text[i] != '\\' {
			b.WriteByte(text[i])
			i++
			continue
		}
		c, size, ok := escape(text[i:])
		if !ok {
			return "", i
		}
		b.WriteString(c)
		i += size
	}
	return b.String(), -1
}

// escape reads \u{HEX} or \x{HEX} at the beginning of a text.
func escape(text string) (c string, size int, ok bool) {
	end := strings.IndexByte(text, '}')
	if len(text) < 3 || text[2] != '{' || end < 3 {
		return "", 0, false
	}
	n, err := strconv.ParseUint(text[3:end], 16, 32)
	switch {
	case err != nil:
	case text[1] == 'u' && n <= unicode.MaxRune && utf8.ValidRune(rune(n)):
		return string(rune(n)), end + 1, true
	case text[1] == 'x' && n <= 0xFF:
		return string([]byte{byte(n)}), end + 1, true
	}
	return "", 0, false
}
