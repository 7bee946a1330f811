package source

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
)

func TestPositions(t *testing.T) {
	t.Parallel()
	// Column counts what a reader sees, UTF16Column what SARIF counts.
	for name, test := range map[string]struct {
		text  string
		until string // the place is that before this piece
		want  Position
	}{
		"start":                     {"ab\ncd", "ab", Position{0, 1, 1, 1}},
		"second line":               {"ab\ncd", "d", Position{4, 2, 2, 2}},
		"empty file":                {"", "", Position{0, 1, 1, 1}},
		"end of file":               {"ab\ncd", "", Position{5, 2, 3, 3}},
		"end of file after newline": {"ab\n", "", Position{3, 2, 1, 1}},
		"line feed":                 {"ab\ncd", "\n", Position{2, 1, 3, 3}},
		"Windows line ending":       {"ab\r\ncd", "cd", Position{4, 2, 1, 1}},
		"its carriage return":       {"ab\r\ncd", "\r", Position{2, 1, 3, 3}},
		"letter of two bytes":       {"é=1", "=", Position{2, 1, 2, 2}},
		"combining mark":            {"e\u0301=1", "=", Position{3, 1, 2, 3}},
		"outside the basic plane":   {"𝄞=1", "=", Position{4, 1, 2, 3}},
		"family of three":           {"👩‍👩‍👧=1", "=", Position{18, 1, 2, 9}},
		"flag":                      {"🇳🇴=1", "=", Position{8, 1, 2, 5}},
		"tab":                       {"\t=1", "=", Position{1, 1, 2, 2}},
		"byte that is no text":      {"\xff=1", "=", Position{1, 1, 2, 2}},
		"Hangul in pieces":          {"\u1112\u1161\u11ab=1", "=", Position{9, 1, 2, 4}},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			f := NewFile("x", []byte(test.text))
			at := len(test.text)
			if test.until != "" {
				at = strings.Index(test.text, test.until)
			}
			if diff := cmp.Diff(test.want, f.Position(at)); diff != "" {
				t.Errorf("-want +got\n%s", diff)
			}
		})
	}
}

// A place inside the bytes of one character has the column of that character,
// so that no span ends before it starts.
func TestInsideCharacter(t *testing.T) {
	t.Parallel()
	f := NewFile("x", []byte("a𝄞=\x9d"))
	for offset, want := range []int{1, 2, 2, 2, 2, 4, 5, 6} {
		if got := f.Position(offset).UTF16Column; got != want {
			t.Errorf("byte %d: UTF-16 column %d, not %d", offset, got, want)
		}
	}
}

// A byte order mark counts for nothing, as SARIF 2.1.0 demands in clause 3.30.
func TestByteOrderMark(t *testing.T) {
	t.Parallel()
	f := NewFile("x", []byte(BOM+"ab\ncd"))
	if !f.BOM || string(f.Text) != "ab\ncd" {
		t.Errorf("BOM %v, text %q", f.BOM, f.Text)
	}
	if got := f.Position(0); got != (Position{0, 1, 1, 1}) {
		t.Errorf("the text starts at %+v", got)
	}
	if plain := NewFile("x", []byte("ab"+BOM)); plain.BOM || string(plain.Text) != "ab"+BOM {
		t.Error("a mark that stands elsewhere is text")
	}
}

func TestPositionsOutsideTheFile(t *testing.T) {
	t.Parallel()
	f := NewFile("x", []byte("ab\ncd"))
	if got := f.Position(-5); got != f.Position(0) {
		t.Errorf("before the file: %+v", got)
	}
	if got := f.Position(99); got != f.Position(5) {
		t.Errorf("after the file: %+v", got)
	}
}

func TestLines(t *testing.T) {
	t.Parallel()
	for text, want := range map[string][]string{
		"":             {""},
		"a":            {"a"},
		"a\n":          {"a", ""},
		"a\r\nb\n\nc":  {"a", "b", "", "c"},
		"a\rb":         {"a\rb"},
		"\n":           {"", ""},
		BOM + "a\nb\r": {"a", "b"},
	} {
		f := NewFile("x", []byte(text))
		var got []string
		for n := 1; n <= f.Lines(); n++ {
			got = append(got, f.Line(n))
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%q: -want +got\n%s", text, diff)
		}
		if f.Line(0) != "" || f.Line(f.Lines()+1) != "" {
			t.Errorf("%q: a line that is not there holds something", text)
		}
	}
}

func TestSpans(t *testing.T) {
	t.Parallel()
	f := NewFile("b", []byte("ab\ncd"))
	s := Span{File: f, Start: 1, End: 4}
	if s.IsZero() || s.Text() != "b\nc" || s.From().Line != 1 || s.To().Line != 2 {
		t.Errorf("%q from %+v to %+v", s.Text(), s.From(), s.To())
	}
	if end := (Span{File: f, Start: 5, End: 5}); end.Text() != "" || end.From() != end.To() {
		t.Errorf("the end of the file: %q", end.Text())
	}
	var none Span
	if !none.IsZero() || none.Text() != "" || none.From() != (Position{}) || none.To() != (Position{}) {
		t.Error("no place is one")
	}
	for _, part := range []struct {
		offset, length int
		want           string
	}{{0, 1, "b"}, {1, 2, "\nc"}, {0, 99, "b\nc"}, {99, 1, ""}, {-1, 1, "b"}, {1, -1, ""}} {
		if got := s.Part(part.offset, part.length).Text(); got != part.want {
			t.Errorf("part %d, %d is %q, want %q", part.offset, part.length, got, part.want)
		}
	}
}

func TestCompare(t *testing.T) {
	t.Parallel()
	a, b := NewFile("a", []byte("text")), NewFile("b", []byte("text"))
	ordered := []Span{{}, {a, 0, 1}, {a, 0, 2}, {a, 1, 1}, {b, 0, 0}}
	for i, x := range ordered {
		for j, y := range ordered {
			if got := Compare(x, y); (got < 0) != (i < j) || (got > 0) != (i > j) {
				t.Errorf("%d compared with %d gives %d", i, j, got)
			}
		}
	}
}

// Positions of a text grow with the bytes, whatever it holds.
func TestPositionsGrow(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	pieces := []string{"a", " ", "\n", "\r\n", "\r", "\t", "é", "e\u0301", "\u0301", "𝄞", "👩‍👩‍👧", "🇳🇴", "\u200d", "\xff", "\xe2\x84", BOM, "한"}
	for range 300 {
		var text strings.Builder
		for range random.IntN(30) {
			text.WriteString(pieces[random.IntN(len(pieces))])
		}
		f := NewFile("x", []byte(text.String()))
		last := f.Position(0)
		for at := 1; at <= len(f.Text); at++ {
			if at < len(f.Text) && !utf8.RuneStart(f.Text[at]) {
				continue
			}
			p := f.Position(at)
			if p.Line < last.Line || p.Line == last.Line && (p.Column < last.Column || p.UTF16Column < last.UTF16Column) {
				t.Fatalf("%q: %+v comes after %+v", f.Text, p, last)
			}
			last = p
		}
	}
}
