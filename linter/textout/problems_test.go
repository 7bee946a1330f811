package textout

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"loudlint/schema"
	"loudlint/schema/source"
)

// marking is a problem about the first piece of a file that reads like this.
func marking(f *source.File, culprit string) schema.Problem {
	at := strings.Index(string(f.Text), culprit)
	return schema.Problem{
		Span:     source.Span{File: f, Start: int32(at), End: int32(at + len(culprit))},
		Found:    "This is what was found.",
		Expected: "Here stands what is expected.",
	}
}

func at(f *source.File, start, end int) schema.Problem {
	p := marking(f, "")
	p.Span.Start, p.Span.End = int32(start), int32(end)
	return p
}

func TestProblems(t *testing.T) {
	t.Parallel()
	plain := source.NewFile("hall.pa.hcl", []byte("line \"North\" {\n  home_run = 40 m\n}\nline \"North\" {}\n"))
	one := marking(plain, "40 m")
	one.Nearest = "home_run = \"40 m\""
	second := schema.Problem{
		Span: source.Span{File: plain, Start: 40, End: 47}, Found: "A second line is called \"North\".", Nearest: "line \"North 2\" {\n  home_run = \"40 m\"\n}",
		Related: []schema.Place{{Span: source.Span{File: plain, Start: 5, End: 12}, Note: "the first one"}},
	}
	for range 5 {
		second.Related = append(second.Related, schema.Place{Span: source.Span{File: plain, Start: 5, End: 12}, Note: "here too"})
	}

	wide := source.NewFile("wide.pa.hcl", []byte("line \"拡声器 e\u0301tage 👩‍👩‍👧\" { tap = 6 W }\n\tline\t\"Tab\" { \ttap = 6 W }\n"))
	hostile := source.NewFile("hostile.pa.hcl", []byte("line \"\x1b[31mred\u202e\x07\" { tap = 6 W\xff } # \u200bnothing\r\n"))
	long := source.NewFile("long.pa.hcl", []byte("a = \""+strings.Repeat("before ", 60)+"culprit"+strings.Repeat(" behind", 60)+"\"\nb = \""+strings.Repeat("拡声器", 100)+"\"\n"))
	edges := source.NewFile("edges.pa.hcl", []byte("first line\n\n  last"))

	for name, problems := range map[string][]schema.Problem{
		"problems-none": nil,
		"problems-one":  {one},
		"problems-many": {one, second, marking(edges, "last")},
		"problems-wide": {
			marking(wide, "拡声器"), marking(wide, "e\u0301tage"), marking(wide, "👩‍👩‍👧"), marking(wide, "6 W"),
			at(wide, strings.LastIndex(string(wide.Text), "6 W"), strings.LastIndex(string(wide.Text), "6 W")+3),
		},
		"problems-hostile": {marking(hostile, "\x1b[31mred\u202e\x07"), marking(hostile, "6 W"), marking(hostile, "\xff"), marking(hostile, "\u200b"), marking(hostile, "\r\n")},
		"problems-long":    {marking(long, "a = "), marking(long, "culprit"), marking(long, "before"), marking(long, "behind\""), marking(long, strings.Repeat("拡声器", 100)), marking(long, strings.Repeat("before ", 60))},
		"problems-edges":   {at(edges, 0, 0), at(edges, 10, 10), at(edges, 0, len(edges.Text)), at(edges, 11, 11), at(edges, 14, 18), at(edges, 18, 18), {Found: "A problem without a place."}},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			var text bytes.Buffer
			if err := Problems(&text, problems, Options{}); err != nil {
				t.Fatal(err)
			}
			golden(t, name, text.Bytes())
			for line := range strings.Lines(text.String()) {
				if visibleWidth(strings.TrimSuffix(line, "\n")) > defaultWidth {
					t.Errorf("a line is wider than the page: %q", line)
				}
				if strings.ContainsAny(line, "\x1b\x07\r\t\u202e\u200b") || strings.Contains(line, "\xff") {
					t.Errorf("a line does something to a terminal: %q", line)
				}
			}
		})
	}
}

func TestProblemsNarrowAndColoured(t *testing.T) {
	t.Parallel()
	f := source.NewFile("hall.pa.hcl", []byte("line \"North\" {\n  home_run = 40 m\n}\n"))
	var text bytes.Buffer
	for _, o := range []Options{{Width: 30}, {Colour: true}} {
		if err := Problems(&text, []schema.Problem{marking(f, "40 m")}, o); err != nil {
			t.Fatal(err)
		}
	}
	golden(t, "problems-narrow", text.Bytes())
}

// brokenPipe fails like the end of a pipe that nobody reads.
type brokenPipe struct{}

var errPipe = errors.New("nobody reads")

func (brokenPipe) Write([]byte) (int, error) { return 0, errPipe }

func TestProblemsTellWriteErrors(t *testing.T) {
	t.Parallel()
	f := source.NewFile("hall.pa.hcl", []byte("x"))
	if err := Problems(brokenPipe{}, []schema.Problem{at(f, 0, 1)}, Options{}); !errors.Is(err, errPipe) {
		t.Errorf("error %v", err)
	}
}

func TestProblemsSayWhenThereMayBeMore(t *testing.T) {
	t.Parallel()
	f := source.NewFile("hall.pa.hcl", []byte("x"))
	all := make([]schema.Problem, schema.MaxProblems)
	for i := range all {
		all[i] = at(f, 0, 1)
	}
	if got := problemCount(all); got != "1000 problems; there may be more." {
		t.Error(got)
	}
}
