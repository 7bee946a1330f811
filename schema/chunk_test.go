package schema

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/schematest"
	"loudlint/schema/source"
)

// parseCut parses a text in pieces of about so many bytes, as files are. It
// gives nil where the text has to be parsed whole.
func parseCut(text []byte, size int) (*hclsyntax.Body, int) {
	file := source.NewFile("cut.pa.hcl", text)
	pieces := cut(file.Text, size)
	parsed := make([]*hclsyntax.Body, len(pieces))
	for i, p := range pieces {
		parsed[i] = parsePiece(file, p)
	}
	if len(pieces) == 0 {
		return nil, 0
	}
	return assemble(pieces, parsed), len(pieces)
}

// agree holds a text that is parsed in pieces of some sizes against the same
// text parsed as a whole: every node and every range of it, or an error in both.
// It gives the most pieces in which the text was parsed.
func agree(t *testing.T, text []byte, sizes ...int) (most int) {
	t.Helper()
	file := source.NewFile("cut.pa.hcl", text)
	parsed, diags := hclsyntax.ParseConfig(file.Text, file.Name, hcl.InitialPos)
	whole, ok := parsed.Body.(*hclsyntax.Body)
	if !ok {
		t.Fatalf("the parser gives a %T", parsed.Body)
	}
	for _, size := range sizes {
		body, pieces := parseCut(text, size)
		switch {
		case body == nil:
		case diags.HasErrors():
			t.Errorf("in %d pieces of about %d bytes the error %q is not met in\n%s", pieces, size, diags.Error(), text)
		case !reflect.DeepEqual(whole.Attributes, body.Attributes) || !reflect.DeepEqual(whole.Blocks, body.Blocks):
			t.Errorf("in %d pieces of about %d bytes the text comes to something else than as a whole:\n%s\nwhole:\n%s\nin pieces:\n%s", pieces, size, text, outlineOf(whole), outlineOf(body))
		default:
			most = max(most, pieces)
		}
	}
	return most
}

// outlineOf writes what a body holds with all ranges, for a person to compare.
func outlineOf(body *hclsyntax.Body) string {
	var b strings.Builder
	_ = hclsyntax.VisitAll(body, func(n hclsyntax.Node) hcl.Diagnostics {
		fmt.Fprintf(&b, "%T %s\n", n, n.Range())
		return nil
	})
	return b.String()
}

// Texts that are cut and come to the same as a whole.
var cutTexts = map[string]string{
	"two blocks":           "a \"x\" {\n  b = \"1 m\"\n}\nc {\n}\n",
	"no last line end":     "a {\n  b = 1\n}\nc {\n  d = 2\n}",
	"braces in texts":      "a \"x{\" {\n  b = \"}{}\"\n  c = \"{\"\n}\nd \"}\" {\n}\n",
	"braces in comments":   "a { # }{\n  b = 1 // } {\n  # {\n}\n// }\nd {\n}\n",
	"quotes in comments":   "# it's \"so\na {\n  // \" {\n  b = 1\n}\nc {\n}\n",
	"comments between":     "# one\n\n# two\na {\n}\n# three\n\n// four\nb {\n}\n# five",
	"escaped quotes":       "a {\n  b = \"\\\" { \\\\\"\n  c = \"\\\\\\\"}\"\n}\nd {\n}\n",
	"templates":            "a {\n  b = \"${given.x} m\"\n  c = \"$${ %%{\"\n  d = \"{${ given.y + 1 }}\"\n}\ne {\n}\n",
	"one-line blocks":      "a { b = 1 }\nc \"x\" { d = \"}\" }\ne {}\nf { }\n",
	"lists":                "a {\n  b = [\"1\", \"2\"]\n  c = [\n    1,\n    2, # {\n  ]\n  d = { e = 1, \"f }\" = 2 }\n  g = {\n    h = 1\n  }\n}\ni {\n}\n",
	"nested":               "a \"1\" {\n  b \"2\" {\n    c \"3\" {\n      d = 1\n    }\n    c \"4\" {\n      d = 2\n    }\n  }\n  e = 5\n  b \"6\" {\n  }\n}\n",
	"attributes last":      "a {\n  b {\n    c = 1\n  }\n  b {\n    c = 1\n  }\n  b {\n    c = 1\n  }\n  d = 1\n  e = 2\n}\nf {\n}\n",
	"comment on a brace":   "a { // {\n  b {\n    c = 1\n  } # after\n  b {\n    c = 2\n  }\t// after\n  b {\n  }\n} # last\nd {\n}\n",
	"spaces on a brace":    "a {   \n  b = 1\n  c {\n  }  \n\n  c {\n  }\n\t}\t \nd {\n}\n",
	"not ASCII":            "space \"Größe é 音響 👩‍🚒\" { # ü\n  b = \"e\u0301\" # é\n}\nc \"…\" {\n  größe = \"ü\"\n  d = 1\n}\n",
	"names without quotes": "a b {\n  c = 1\n}\nd e \"f\" {\n}\n",
	"functions":            "a {\n  b = max(1,\n    2)\n  c = (1 +\n   2)\n  d = x ? 1 : 2\n  e = [for v in w : v]\n  f = g.h[0].*.i\n}\nj {\n}\n",
	"heredoc":              "a {\n  b = <<END\n  text\n  END\n  c = 1\n}\nd {\n}\n",
	"empty lines":          "\n\n\n  \na {\n}\n\n\n\n\n\n\n\n\n\nb {\n}\n\n\n\n",
}

func TestCutComesToTheWhole(t *testing.T) {
	t.Parallel()
	for name, text := range cutTexts {
		for _, variant := range []struct{ name, text string }{
			{"", text},
			{" with CRLF", strings.ReplaceAll(text, "\n", "\r\n")},
			{" with a mark", "\ufeff" + text},
			{" with two marks", "\ufeff\ufeff" + text},
			{" six times", strings.Repeat(strings.TrimSuffix(text, "\n")+"\n", 6)},
		} {
			t.Run(name+variant.name, func(t *testing.T) {
				t.Parallel()
				if agree(t, []byte(variant.text), 0, 1, 5, 12, 20, 33, 60, 100, 150) < 2 {
					t.Errorf("this text is never cut:\n%s", variant.text)
				}
			})
		}
	}
}

// Texts that cannot be cut, or that have an error which the pieces must not hide.
func TestCutGivesUp(t *testing.T) {
	t.Parallel()
	for name, text := range map[string]string{
		"empty":                      "",
		"spaces":                     " \n\t\n ",
		"only a comment":             "# {",
		"a long comment":             "a {\n}\n/* { */\nb {\n}\n",
		"text over lines":            "a {\n  b = \"x\n}\nc {\n}\n\"\n}\n",
		"template over lines":        "a {\n  b = \"${\n    given.x\n  } m\"\n}\nc {\n}\n",
		"backslash at a line end":    "a {\n  b = \"x\\\n\"\n}\nc {\n}\n",
		"quotes in a template":       "a {\n  b = \"${\"{\"}\"\n}\nc {\n  d = \"${\"}\"}\"\n}\n",
		"heredoc with braces":        "a {\n  b = <<END\n}\n{\n\"\nEND\n}\nc {\n}\n",
		"heredoc without an end":     "a {\n  b = <<END\n  x\n}\nc {\n}\n",
		"missing brace":              "a {\n  b = 1\nc {\n  d = 1\n}\n",
		"brace too many":             "a {\n  b = 1\n}\n}\nc {\n}\n",
		"brace after a value":        "a {\n  b {\n  }\n  b {\n  }\n  c = 1 }\nd {\n}\n",
		"two braces on a line":       "a {\n  b {\n    c = 1\n  } }\nd {\n}\n",
		"block after a brace":        "a {\n  b {\n  }\n  b {\n  }\n} c {\n}\n",
		"value after a brace":        "a {\n  b {\n  }\n  b {\n  }\n} c = 1\n",
		"value on the brace":         "a { b = 1\n  c = 2\n}\nd {\n}\n",
		"two blocks opened":          "a { b {\n  c = 1\n}\n}\nd {\n}\n",
		"equals before a brace":      "a = {\n  b = 1\n}\nc {\n}\n",
		"block as a value":           "a \"x\" = {\n  b = 1\n}\nc {\n}\n",
		"brace on the next line":     "a\n{\n  b = 1\n}\nc {\n}\n",
		"wrong bracket":              "a {\n  b = [1, 2}\n]\nc {\n}\n",
		"bracket closes a block":     "a {\n  b = 1\n  c = 2\n]\nd {\n}\n",
		"attribute twice":            "a {\n  b = 1\n  c {\n  }\n  c {\n  }\n  b = 1\n}\nd {\n}\n",
		"attribute twice outside":    "a = 1\nb {\n}\na = 2\n",
		"mark in the middle":         "a {\n}\n\ufeffb {\n}\n",
		"mark inside a block":        "a {\n  b = 1\n\ufeff  c = 1\n}\n",
		"sign in the middle":         "a {\n}\n;\nb {\n}\n",
		"odd quotes":                 "a {\n  b = “1 m”\n}\nc {\n}\n",
		"apostrophe":                 "a {\n  b = '1 m'\n}\nc {\n}\n",
		"carriage returns alone":     "a {\r  b = 1\r}\rc {\r}\r",
		"not UTF-8":                  "a {\n  b = \"\xff\"\n}\nc {\n}\n",
		"not UTF-8 in a comment":     "a {\n  # \xff\n}\nc {\n}\n",
		"zero byte":                  "a {\n  \x00\n}\nc {\n}\n",
		"header in quotes":           "\"a\" {\n  b = 1\n}\nc {\n}\n",
		"number as a header":         "1 {\n  b = 1\n}\nc {\n}\n",
		"no value":                   "a {\n  b =\n  c = 1\n}\nd {\n}\n",
		"value goes on":              "a {\n  b = 1 +\n  c = 1\n}\nd {\n}\n",
		"comment without its end":    "a {\n}\n/* b {\n}\n",
		"brackets without their end": "a {\n  b = [1,\n}\nc {\n}\n",
	} {
		for _, variant := range []string{text, strings.ReplaceAll(text, "\n", "\r\n"), text + "z {\n}\n" + text} {
			t.Run(name, func(t *testing.T) {
				t.Parallel()
				agree(t, []byte(variant), 0, 5, 12, 20, 33, 60)
			})
		}
	}
}

// Whatever is left out, put in or changed in a text, it is cut rightly or not at
// all.
func TestCutOfBrokenTexts(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	signs := []string{"{", "}", "\"", "#", "\n", "[", "]", "=", "${", "/*", "*/", "\\", " ", "<<X\n", "\ufeff", "é", "a", "\r"}
	texts := make([]string, 0, len(cutTexts))
	for _, text := range cutTexts {
		texts = append(texts, text)
	}
	slices.Sort(texts)
	for range 1500 {
		text := texts[random.IntN(len(texts))] + texts[random.IntN(len(texts))]
		for range 1 + random.IntN(3) {
			at := random.IntN(len(text) + 1)
			to := at
			if random.IntN(3) > 0 {
				to = min(len(text), at+random.IntN(4))
			}
			put := ""
			if random.IntN(3) > 0 {
				put = signs[random.IntN(len(signs))]
			}
			text = text[:at] + put + text[to:]
		}
		agree(t, []byte(text), 0, 1+random.IntN(60))
	}
}

// randomDesign writes blocks in every manner that the parser lets pass.
func randomDesign(random *rand.Rand) []byte {
	var b bytes.Buffer
	end := []string{"\n", "\r\n"}[random.IntN(2)]
	pick := func(all ...string) string { return all[random.IntN(len(all))] }
	comment := func() string {
		return pick("", "", "", " # {", " // }\" ", "\t#é", " ")
	}
	value := func() string {
		return pick(`"6 W"`, `12`, `"${given.x} m"`, `["2 m", "0 m"]`, `{ "1 kHz" = "3 dB" }`, `true`, `"}"`, `"{\""`, "[ # one"+end+"  1,"+end+"  2 ]", "{"+end+" a = 1"+end+"}", `"é"`, `-1 * (2 + 3)`)
	}
	var body func(depth int)
	body = func(depth int) {
		indent := strings.Repeat(pick(" ", "  ", "\t", ""), depth)
		for n := range random.IntN(7) {
			switch what := random.IntN(6); {
			case what == 0:
				b.WriteString(pick("", indent+"# {", indent+"// \"", "   ") + end)
			case what == 1 && depth < 4 || depth == 0 && what < 4:
				b.WriteString(indent + pick("line", "branch", "größe") + pick("", ` "x"`, ` "x{"`, ` "é # \" "`) + pick(" ", "") + "{" + comment() + end)
				body(depth + 1)
				b.WriteString(indent + "}" + comment() + end)
			case what == 2:
				b.WriteString(indent + pick("use { ", "a \"}\" {") + "b = \"c {\" }" + comment() + end)
			case depth > 0:
				fmt.Fprintf(&b, "%sv%d = %s%s%s", indent, n, value(), comment(), end)
			}
		}
	}
	for range 2 + random.IntN(4) {
		body(0)
	}
	text := b.Bytes()
	if random.IntN(4) == 0 {
		text = bytes.TrimRight(text, "\r\n")
	}
	return text
}

func TestCutOfRandomDesigns(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(3, 4))
	cuts := 0
	for range 300 {
		text := randomDesign(random)
		if _, diags := hclsyntax.ParseConfig(text, "random", hcl.InitialPos); diags.HasErrors() {
			t.Fatalf("the random design has an error: %s\n%s", diags.Error(), text)
		}
		if agree(t, text, random.IntN(20), random.IntN(300)) > 1 {
			cuts++
		}
	}
	if cuts < 200 {
		t.Errorf("only %d of the designs were cut", cuts)
	}
}

// A large block is cut open, and blocks in it, and their pieces are of a size.
func TestCutOpensLargeBlocks(t *testing.T) {
	t.Parallel()
	text := []byte(schematest.OneLine(1000))
	if pieces := agree(t, text, pieceBytes); pieces < len(text)/pieceBytes/3 {
		t.Errorf("%d bytes are parsed in %d pieces", len(text), pieces)
	}
	deepest, depth := 0, 0
	for _, p := range cut(text, pieceBytes) {
		if n := p.end - p.start.Byte; n > 3*pieceBytes {
			t.Errorf("a piece has %d bytes", n)
		}
		switch p.kind {
		case pieceOpen:
			depth++
		case pieceClose:
			depth--
		case pieceItems:
		}
		deepest = max(deepest, depth)
	}
	if deepest != 2 {
		t.Errorf("blocks are opened %d deep, not 2", deepest)
	}
}

// Designs are the same, and so are problems, however files are cut and however
// many workers there are.
func TestReadInPieces(t *testing.T) {
	t.Parallel()
	good := schematest.DesignText(60)
	for name, texts := range map[string][]string{
		"one file":             {good},
		"one line":             {schematest.OneLine(60)},
		"files":                schematest.DesignFiles(60, 3),
		"given at the end":     {strings.Replace(good, "given {\n  ceiling = 3\n}\n", "", 1) + "given {\n  ceiling = 3\n}\n"},
		"given in a file":      {strings.Replace(good, "given {\n  ceiling = 3\n}\n", "", 1), "given {\n  ceiling = 3\n}\n"},
		"given in capitals":    {good + strings.Repeat("# nothing\n", 40) + "GIVEN {\n  wide = 3\n}\n", strings.Replace(good, "given {", "Given {", 1)},
		"use in capitals":      {good + strings.Repeat("# nothing\n", 40) + "Use { file = \"models.pa.hcl\" }\n"},
		"given missing":        {strings.Replace(good, "ceiling = 3", "", 1)},
		"given twice":          {good, "given {\n  ceiling = 3\n}\n"},
		"wrong values":         {strings.ReplaceAll(good, "\"6 m\"", "\"6\"")},
		"wrong names":          {strings.ReplaceAll(good, "\"Ward 2\"\n", "\"Wart 2\"\n")},
		"wrong attribute":      {strings.ReplaceAll(good, "leg ", "lag ")},
		"error in the middle":  {strings.Replace(good, "loudspeaker \"H 7\" {", "loudspeaker \"H 7\"", 3), good},
		"error at the end":     {good + "line {\n", "given {\n  ceiling = 4\n}\n"},
		"value outside":        {good + "a = 1\nb = 2\n"},
		"value outside twice":  {"a = 1\n" + good + "a = 1\n"},
		"unknown block":        {good + "lamp \"x\" {\n}\n"},
		"a file used":          {good + "use {\n  file = \"models.pa.hcl\"\n}\n"},
		"a file used twice":    {good + "use { file = \"models.pa.hcl\" }\n", "use { file = \"models.pa.hcl\" }\n"},
		"a file missing":       {good + "use { file = \"nothing.pa.hcl\" }\n"},
		"a file with an error": {good + "use { file = \"broken.pa.hcl\" }\n"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			files, _ := filesOf(texts)
			opened := map[string]*source.File{
				"models.pa.hcl": source.NewFile("models.pa.hcl", []byte(strings.Repeat("# a model\n", 500)+"cable_model \"made/cable\" {\n  size = \"2 x 1.5 mm2\"\n}\n")),
				"broken.pa.hcl": source.NewFile("broken.pa.hcl", []byte(strings.Repeat("# a model\n", 500)+"cable_model \"made/cable\" {\n  size = \n}\ngiven {\n  ceiling = 1\n}\n")),
			}
			read := func(size, workers int) (*Design, []Problem) {
				return readInPieces("made", files, Options{Workers: workers, Open: func(_ *source.File, name string) (*source.File, error) {
					if f := opened[name]; f != nil {
						return f, nil
					}
					return nil, fmt.Errorf("there is no file %q", name)
				}}, size)
			}
			design, problems := read(1<<30, 1)
			if (design == nil) != (len(problems) > 0) {
				t.Fatalf("a design with problems, or neither: %d problems", len(problems))
			}
			for _, c := range []struct{ size, workers int }{{1, 2}, {300, 1}, {300, 9}, {3000, 3}} {
				d, p := read(c.size, c.workers)
				if !reflect.DeepEqual(problems, p) {
					t.Fatalf("pieces of %d bytes, %d workers: problems differ (-whole +pieces):\n%s", c.size, c.workers, cmp.Diff(texted(problems), texted(p)))
				}
				if !reflect.DeepEqual(design, d) {
					t.Fatalf("pieces of %d bytes, %d workers: the design differs", c.size, c.workers)
				}
			}
		})
	}
}

// texted writes problems with their places.
func texted(problems []Problem) []string {
	all := make([]string, len(problems))
	for i, p := range problems {
		all[i] = fmt.Sprintf("%s %d-%d %s", p.Span.File.Name, p.Span.Start, p.Span.End, p)
	}
	return all
}

func FuzzCut(f *testing.F) {
	for _, text := range cutTexts {
		f.Add([]byte(text), 10)
	}
	f.Fuzz(func(t *testing.T, text []byte, size int) {
		if file := source.NewFile("cut.pa.hcl", text); len(text) < 10_000 {
			if _, ok := boundText(file); ok {
				agree(t, text, size)
			}
		}
	})
}
