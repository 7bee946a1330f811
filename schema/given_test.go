package schema

import (
	"fmt"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/source"
)

// givensOf reads the given values of some files.
func givensOf(t *testing.T, texts ...string) (*givenNames, []string) {
	t.Helper()
	files, _ := filesOf(texts)
	sections := make([]*section, len(files))
	for i, f := range files {
		sections[i] = &section{syntax: parseFile(f)}
	}
	givens, problems := readGivens(sections)
	return givens, texted(sortProblems(problems))
}

func TestGivenValuesUseEachOther(t *testing.T) {
	t.Parallel()
	givens, problems := givensOf(t,
		"given {\n  total = given.each * given.count\n  label = \"${given.total} m of ${given.kind}\"\n}\n",
		"given {\n  kind = \"cable\"\n  each = 2.5\n  count = given.bays - 1\n}\ngiven {\n  bays = 13\n}\n")
	if len(problems) > 0 {
		t.Fatalf("problems: %q", problems)
	}
	for name, want := range map[string]string{"total": "30", "label": "30 m of cable", "each": "2.5", "bays": "13"} {
		if got := givens.texts[name]; got != want || !givens.has(name) {
			t.Errorf("given.%s is %q, want %q", name, got, want)
		}
	}
}

func TestGivenValuesRefused(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		text string
		want []string // the beginning of each problem's text
	}{
		"circle":           {"given {\n  a = given.b\n  b = given.c + 1\n  c = given.a\n  d = 1\n}\n", []string{"given.a needs itself", "given.b needs itself", "given.c needs itself"}},
		"beside a circle":  {"given {\n  a = given.a\n  b = given.a + 1\n  c = 2\n}\n", []string{"given.a needs itself", "given.b needs itself"}},
		"twice":            {"given {\n  a = 1\n}\ngiven {\n  a = 2\n}\n", []string{"given.a is set twice"}},
		"unknown":          {"given {\n  bay = 1\n  b = given.bey\n}\n", []string{"The given blocks hold no \"bey\""}},
		"said once":        {"given {\n  a = [1]\n  b = given.a + 1\n  c = \"${given.b} m\"\n}\n", []string{"[1] is a list"}},
		"division by zero": {"given {\n  a = 0\n  b = 1 / given.a\n}\n", []string{"1 / given.a c"}},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			_, problems := givensOf(t, c.text)
			if len(problems) != len(c.want) {
				t.Fatalf("problems %q, want %q", problems, c.want)
			}
			for i, want := range c.want {
				if !strings.Contains(problems[i], want) {
					t.Errorf("problem %q, want %q", problems[i], want)
				}
			}
		})
	}
}

// A long chain of given values, each needing the next, is worked out in one go
// over it, not once for each link.
func TestGivenValuesInAChain(t *testing.T) {
	t.Parallel()
	var b strings.Builder
	b.WriteString("given {\n")
	const links = 2000
	for i := range links {
		fmt.Fprintf(&b, "  v%d = given.v%d\n", i, i+1)
	}
	fmt.Fprintf(&b, "  v%d = 7\n}\n", links)
	givens, problems := givensOf(t, b.String())
	if len(problems) > 0 || givens.texts["v0"] != "7" {
		t.Errorf("given.v0 is %q, %d problems", givens.texts["v0"], len(problems))
	}
}

// Templates are filled in as the library would work them out.
func TestFilledText(t *testing.T) {
	t.Parallel()
	givens := newGivenNames(map[string]cty.Value{
		"whole": cty.NumberIntVal(12), "tenth": cty.MustParseNumberVal("0.1"), "large": cty.MustParseNumberVal("1e12"),
		"text": cty.StringVal("Hall"), "yes": cty.True, "refused": cty.UnknownVal(cty.String), "mark": cty.StringVal("\u0301"),
	})
	for template, filled := range map[string]bool{
		"${given.whole} m":                    true,
		"${given.tenth} m":                    true,
		"-${given.large}.${given.tenth} m":    true,
		"${given.text}, ${given.text}":        true,
		"x ${given.yes}":                      true,
		"  ${~ given.whole ~}  m":             true,
		"e${given.mark}":                      true,
		"$${given.whole} ${given.whole}":      true,
		"${given.whole + 1} m":                false,
		"${given.refused} m":                  false,
		"${given.nothing} m":                  false,
		"${whole} m":                          false,
		"${given.text.length} m":              false,
		"${given.whole}":                      false,
		strings.Repeat("${given.whole} ", 40): false,
	} {
		expr, diags := hclsyntax.ParseExpression([]byte(`"`+template+`"`), "template", hcl.InitialPos)
		if diags.HasErrors() {
			t.Fatalf("%s: %s", template, diags.Error())
		}
		d := &decoder{file: source.NewFile("template", []byte(`"`+template+`"`)), given: givens}
		got, ok := d.filledText(expr)
		if ok != filled {
			t.Errorf("%s: filled in is %t, want %t", template, ok, filled)
		}
		if !ok {
			continue
		}
		if want, good := d.evaluate(expr, "a text"); !good || want.AsString() != got {
			t.Errorf("%s is filled in as %q, worked out as %#v", template, got, want)
		}
	}
}
