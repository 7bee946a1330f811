package schema

import (
	"math/rand/v2"
	"strings"
	"testing"

	"loudlint/schema/source"
)

func TestBoundText(t *testing.T) {
	t.Parallel()
	deep := func(open string, n int) string { return "a = " + strings.Repeat(open, n) + "\n" }
	for _, test := range []struct {
		name, text string
		want       string // what is found; empty: within bounds
		at         string // what the place marks
	}{
		{name: "empty file", text: ""},
		{name: "a line", text: "line \"A\" {\n  home_run = \"40 m\" # {{{{\n}\n"},
		{name: "many items in one list", text: "a = [" + strings.Repeat(`"6 W", `, 5000) + "]\n"},
		{name: "many lines", text: strings.Repeat("line \"A\" {\n  home_run = \"${given.bay + 1} m\"\n}\n", 5000)},
		{name: "brackets inside quotes and comments", text: strings.Repeat("a = \"[{(\" # [[[\nb = 1 // {{{\n", 5000)},
		{name: "deepest that is read", text: deep("[", MaxNesting)},
		{name: "lists too deep", text: deep("[", MaxNesting+1), want: "More than 64 brackets", at: "["},
		{name: "parentheses too deep", text: deep("(", 1e4), want: "More than 64 brackets", at: "("},
		{name: "blocks too deep", text: strings.Repeat("a {\n", 1e4), want: "More than 64 brackets", at: "{"},
		{name: "a bracket of the wrong kind closes nothing", text: "a = " + strings.Repeat("(]", 1e4), want: "More than 64 brackets", at: "("},
		{name: "templates too deep", text: "a = " + strings.Repeat(`"${`, 1e4) + "\n", want: "More than 64 brackets", at: "${"},
		{name: "depth behind a block comment", text: "/* { */" + deep("[", 1e4), want: "More than 64 brackets", at: "["},
		{name: "depth behind a comment without end", text: "a = 1 /* \n" + deep("[", 1e4), want: "More than 64 brackets", at: "["},
		{name: "depth behind a text of several lines", text: "a = <<END\n[[[\nEND\n" + deep("[", 1e4), want: "More than 64 brackets", at: "["},
		{name: "depth behind an escaped quote", text: `a = "\""` + "\n" + deep("[", 1e4), want: "More than 64 brackets", at: "["},
		{name: "depth behind an escaped template", text: `a = "$${"` + "\n" + deep("[", 1e4), want: "More than 64 brackets", at: "["},
		{name: "nots", text: "a = " + strings.Repeat("!", 1e4) + "true\n", want: "more than 200 signs", at: "!"},
		{name: "sums", text: "a = 1" + strings.Repeat(" + 1", 1e4) + "\n", want: "more than 200 signs", at: "+"},
		{name: "minus signs after names", text: "a = b" + strings.Repeat(" - b", 1e4) + "\n", want: "more than 200 signs", at: "-"},
		{name: "conditions", text: "a = " + strings.Repeat("b ? c : ", 1e4) + "d\n", want: "more than 200 signs"},
		{name: "indexes", text: "a = b" + strings.Repeat("[c]", 1e4) + "\n", want: "more than 200 signs", at: "["},
		{name: "dots", text: "a = b" + strings.Repeat(".c", 1e4) + "\n", want: "more than 200 signs", at: "."},
		{name: "sums over lines in parentheses", text: "a = (1" + strings.Repeat("\n + 1", 1e4) + ")\n", want: "more than 200 signs", at: "+"},
		{name: "sums with lists between", text: "a = 1" + strings.Repeat(" + [1, 1]", 1e4) + "\n", want: "more than 200 signs"},
		{name: "sums in a template", text: "a = \"${1" + strings.Repeat(" + 1", 1e4) + "}\"\n", want: "more than 200 signs", at: "+"},
		{name: "templates in one text", text: "a = \"" + strings.Repeat("${b}", 1e4) + "\"\n", want: "more than 200 signs", at: "${"},
		{name: "instructions in a text", text: "a = \"" + strings.Repeat("%{ if b }", 1e4) + "\"\n", want: "more than 200 signs", at: "%{"},
		{name: "a number of a million digits", text: "a = " + strings.Repeat("1", 1e4) + "\n", want: "longer than 200", at: "1"},
		{name: "a million points", text: "a = 1" + strings.Repeat(".1", 1e4) + "\n", want: "more than 200 signs", at: "."},
		{name: "zero byte", text: "line \"A\" {\n\x00}", want: "zero byte", at: "\x00"},
		{name: "Latin-1", text: "# f\xfcr\nline \"A\" {}\n", want: "the byte FC here", at: "\xfc"},
		{name: "cut in the middle of a character", text: "# Ω\nline \"A\" {}\n# \xe2\x84", want: "the byte E2 here", at: "\xe2"},
		{name: "UTF-16", text: "\xff\xfel\x00", want: "saved as UTF-16", at: "\xff"},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			p, ok := boundText(source.NewFile("x.pa.hcl", []byte(test.text)))
			if ok != (test.want == "") {
				t.Fatalf("within bounds: %v, problem %q", ok, p)
			}
			if !strings.Contains(p.Found, test.want) {
				t.Errorf("found %q, want it to hold %q", p.Found, test.want)
			}
			if test.at != "" && !strings.HasPrefix(test.at, p.Span.Text()) {
				t.Errorf("marks %q, want %q", p.Span.Text(), test.at)
			}
		})
	}
}

// What the look at the bytes vouches for must be within bounds by the parser's
// own tokens too: else a file could be made that only seems shallow.
func TestScanDepthNeverBelowTokens(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	pieces := []string{"{", "}", "[", "]", "(", ")", `"`, `""`, "$", "${", "$${", "%{", "%%{", "~}", "~", "\\", "\n", "\r\n", "\r", "#", "//", "/*", "*/", "/", "*", "<<E\n", "\nE\n",
		"a", "1", ".", ",", "=", "!", "-", " ", "é", "'", "+", "?", ":", `"a b"`, `"${given.x} m"`, "a = 1\n"}
	vouched := 0
	for range 20_000 {
		var b strings.Builder
		b.WriteString("a = " + strings.Repeat("[", MaxNesting-2))
		for range 1 + random.IntN(14) {
			b.WriteString(pieces[random.IntN(len(pieces))])
		}
		text := []byte(b.String())
		if e, sure := scanDepth(text); !sure || e.kind != withinBounds {
			continue
		}
		vouched++
		if e := tokenDepth(text); e.kind != withinBounds {
			t.Fatalf("%q: vouched for, but the tokens exceed bounds (%v) at %d", text, e.kind, e.at)
		}
	}
	if vouched < 500 {
		t.Errorf("only %d texts were vouched for: the test tests little", vouched)
	}
}

// The deepest text that is let through must neither exhaust the stack nor take
// long.
func TestDeepestTextIsRead(t *testing.T) {
	t.Parallel()
	for _, operator := range []string{"!"} {
		value := ""
		for range MaxNesting - 2 {
			value += strings.Repeat(operator, MaxOperators/len(operator)-5) + "("
		}
		value += "1" + strings.Repeat(")", MaxNesting-2)
		file := source.NewFile("x.pa.hcl", []byte("system \"A\" {\n  reference = "+value+"\n}\n"))
		if p, ok := boundText(file); !ok {
			t.Fatalf("%s: %v", operator, p)
		}
		if _, problems := Read("x", []*source.File{file}, Options{}); len(problems) == 0 {
			t.Errorf("%s: read without a problem", operator)
		}
	}
}
