package textout

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
)

func TestPrintable(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		"":                         "",
		"plain 100 V":              "plain 100 V",
		"Übergang, 拡声器, ½ Ω":       "Übergang, 拡声器, ½ Ω",
		"two\nlines\tand\r\nmore":  "two lines and  more",
		"\x1b[31mred\x1b[0m":       "<U+001B>[31mred<U+001B>[0m",
		"back\bspace\x7f":          "back<U+0008>space<U+007F>",
		"\u009b31m":                "<U+009B>31m", // C1 form of the same
		"abc\u202edcba\u2066":      "abc<U+202E>dcba<U+2066>",
		"zero\u200bwidth\ufeff":    "zero<U+200B>width<U+FEFF>",
		"line\u2028and\u2029para":  "line<U+2028>and<U+2029>para",
		"family 👩\u200d👧":          "family 👩\u200d👧",
		"non-breaking 6\u00a0W":    "non-breaking 6\u00a0W",
		"not UTF-8 \xff\xc3(":      "not UTF-8 <byte FF><byte C3>(",
		"replacement \ufffd stays": "replacement \ufffd stays",
	} {
		if got := Printable(text); got != want {
			t.Errorf("Printable(%q) = %q, want %q", text, got, want)
		}
	}
}

// Whatever stands in a text, nothing that steers a terminal comes out.
func TestPrintableLeavesNothingThatSteers(t *testing.T) {
	t.Parallel()
	const joiners = "\u200c\u200d"
	for _, table := range []*unicode.RangeTable{unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp} {
		for _, span := range table.R16 {
			for r := rune(span.Lo); r <= rune(span.Hi); r += rune(span.Stride) {
				if got := Printable("a" + string(r)); got == "a"+string(r) && !strings.ContainsRune(joiners, r) {
					t.Errorf("%U is printed as it is", r)
				}
			}
		}
	}
}

func TestVisibleWidth(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]int{
		"":                     0,
		"line":                 4,
		"Café":                 4,
		"Cafe\u0301":           4, // combining acute
		"拡声器":                  6,
		"👩\u200d👩\u200d👧":      2,
		"8 × 6 W":              7,
		"Ω":                    1,
		"\u1112\u1161\u11ab":   2, // one Hangul syllable of three letters
		"Ａ":                    2, // full width
		strings.Repeat("é", 9): 9,
	} {
		if got := visibleWidth(text); got != want {
			t.Errorf("visibleWidth(%q) = %d, want %d", text, got, want)
		}
	}
}

func TestShorten(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		text    string
		columns int
		want    string
	}{
		{"fits", 4, "fits"},
		{"does not fit", 8, "does..."},
		{"拡声器拡声器", 8, "拡声..."},
		{"e\u0301e\u0301e\u0301e\u0301e\u0301", 4, "e\u0301..."},
	} {
		if got := shorten(test.text, test.columns); got != test.want {
			t.Errorf("shorten(%q, %d) = %q, want %q", test.text, test.columns, got, test.want)
		}
	}
}

func TestWrapping(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name, label, text string
		width             int
		want              string
	}{
		{"beside a column of labels", "sum", "one two three four five six seven eight nine ten eleven", 60, "" +
			"  sum        one two three four five six seven eight nine\n" +
			"             ten eleven\n"},
		{"below a label", "sum", "one two three four five six seven", 26, "" +
			"  sum: one two three four\n" +
			"    five six seven\n"},
		{"a number stays with its unit", "sum", "takes a good 240 W.", 24, "" +
			"  sum: takes a good\n" +
			"    240 W.\n"},
		{"a term stays with its sign", "sum", "8 × 6 W + 12 × 3 W = 84 W", 24, "" +
			"  sum: 8 × 6 W\n" +
			"    + 12 × 3 W = 84 W\n"},
		{"exactly the width", "sum", "seventeen letters", 24, "" +
			"  sum: seventeen letters\n"},
		{"a word longer than the line", "sum", "a " + strings.Repeat("x", 45), 24, "" +
			"  sum: a xxxxxxxxxxxxxxx\n" +
			"    xxxxxxxxxxxxxxxxxxxx\n" +
			"    xxxxxxxxxx\n"},
		{"wide characters", "sum", "拡声器拡声器拡声器拡声器", 24, "" +
			"  sum: 拡声器拡声器拡声\n" +
			"    器拡声器\n"},
		{"spaces at odd places", "sum", "  one   two  ", 60, "" +
			"  sum        one two\n"},
		{"no label", "", "one", 60, "             one\n"},
		{"nothing", "sum", "", 60, "  sum\n"},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var text bytes.Buffer
			w := bufio.NewWriter(&text)
			p := newPage(w, Options{Width: test.width})
			p.say(test.text)
			p.row(test.label)
			_ = w.Flush()
			if diff := cmp.Diff(test.want, text.String()); diff != "" {
				t.Errorf("(-want +got)\n%s", diff)
			}
		})
	}
}

// A page is as wide as was asked for, but for places, which are never cut.
func TestNoLineIsWiderThanThePage(t *testing.T) {
	t.Parallel()
	r := resultOf(judge(pierDesign(t), everyCheck()...), judge(read(t, "a.pa.hcl", map[string]string{"a.pa.hcl": foreign}), foreignCheck()))
	for width := leastWidth; width < 130; width++ {
		var page bytes.Buffer
		if err := Write(&page, r, Options{Width: width, Passes: true}); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(page.String()) {
			line = strings.TrimSuffix(line, "\n")
			if visibleWidth(line) > width {
				t.Errorf("at a width of %d: %q is %d wide", width, line, visibleWidth(line))
			}
			if strings.TrimRight(line, " ") != line {
				t.Errorf("at a width of %d: %q ends in a space", width, line)
			}
		}
	}
}

// Colour adds escapes and changes nothing else, whatever the environment says.
func TestColourChangesNoText(t *testing.T) {
	t.Setenv("NO_COLOR", "1")
	r := resultOf(judge(pierDesign(t), everyCheck()...))
	var plain, coloured bytes.Buffer
	if err := errors.Join(Write(&plain, r, Options{Passes: true}), Write(&coloured, r, Options{Passes: true, Colour: true})); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(plain.String(), "\x1b") {
		t.Error("the plain page has escapes")
	}
	stripped := regexp.MustCompile(`\x1b\[[0-9;]*m`).ReplaceAllString(coloured.String(), "")
	if stripped == coloured.String() {
		t.Error("the coloured page has no escapes")
	}
	if diff := cmp.Diff(plain.String(), stripped); diff != "" {
		t.Errorf("(-plain +coloured)\n%s", diff)
	}
}

// full is a disk that takes so many bytes.
type full struct{ left int }

var errFull = errors.New("no space left")

func (f *full) Write(b []byte) (int, error) {
	if len(b) > f.left {
		return 0, errFull
	}
	f.left -= len(b)
	return len(b), nil
}

func TestWriteErrorsAreReturned(t *testing.T) {
	t.Parallel()
	r := resultOf(judge(read(t, "long.pa.hcl", map[string]string{"long.pa.hcl": manyLines(200)}), priorityCheck(), passing("zone-load")), notADesign("b.pa.hcl", "line {\n}\n"))
	for _, room := range []int{0, 5000} {
		if err := Write(&full{room}, r, Options{Passes: true}); !errors.Is(err, errFull) {
			t.Errorf("Write with room for %d bytes: %v", room, err)
		}
		if err := WriteLines(&full{room}, r, Options{Passes: true}); !errors.Is(err, errFull) {
			t.Errorf("WriteLines with room for %d bytes: %v", room, err)
		}
	}
}

// A large design with nothing stated is a short page.
func TestOpenAnswersMakeAShortPage(t *testing.T) {
	t.Parallel()
	var page bytes.Buffer
	r := resultOf(judge(read(t, "long.pa.hcl", map[string]string{"long.pa.hcl": manyLines(500)}), lossCheck(), tapsOpen(), priorityCheck()))
	if err := Write(&page, r, Options{}); err != nil {
		t.Fatal(err)
	}
	if lines := strings.Count(page.String(), "\n"); lines > 70 {
		t.Errorf("500 lines without figures give %d rows", lines)
	}
	if !strings.Contains(page.String(), "1250 open") {
		t.Error("an answer that waits for several things is not counted once")
	}
}

// BenchmarkWrite writes a page of 100,000 answers.
func BenchmarkWrite(b *testing.B) {
	d := judge(pierDesign(b), everyCheck()...)
	one := d.Outcomes
	d.Outcomes = nil
	for i := range 100_000 {
		o := one[i%len(one)]
		o.Subject.Path = append([]check.Step{{Kind: "line", Name: fmt.Sprint("L ", i/50)}}, o.Subject.Path...)
		if o.Verdict == check.Open {
			o.Missing = []analysis.Missing{{What: "tap", Part: fmt.Sprintf(`loudspeaker "H %d"`, i), Where: o.Primary, Write: `tap = "6 W"`}}
		}
		d.Outcomes = append(d.Outcomes, o)
	}
	r := &linter.Result{Designs: []*linter.Judged{d}}
	b.ReportAllocs()
	for b.Loop() {
		if err := Write(io.Discard, r, Options{Passes: true}); err != nil {
			b.Fatal(err)
		}
	}
}
