package schema

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/schema/source"
)

// criterionOf reads a criterion on lines with these attributes.
func criterionOf(t *testing.T, given, attributes string) *Criterion {
	t.Helper()
	text := given + "\ncriterion \"C\" {\n  each = \"line\"\n" + attributes + "\n}\n"
	s, problems := ReadCriteria(source.NewFile("c.pa.hcl", []byte(text)), Options{})
	if len(problems) > 0 {
		t.Fatalf("%s: %v", attributes, problems)
	}
	return s.Criterions[0]
}

// order writes steps one behind the other, each with how many it takes.
func order(e Expression) string {
	var all []string
	for _, s := range e.Steps {
		switch s.Kind {
		case StepFigure:
			all = append(all, s.Name)
		case StepNumber:
			all = append(all, fmt.Sprint(s.Number))
		case StepText:
			all = append(all, fmt.Sprintf("%q", s.Text))
		case StepTruth:
			all = append(all, fmt.Sprint(s.Truth))
		case StepChoose:
			all = append(all, "?:")
		case StepSign:
			all = append(all, s.Name)
		case StepCall:
			all = append(all, fmt.Sprintf("%s/%d", s.Name, s.Takes))
		}
	}
	return strings.Join(all, " ")
}

func TestExpression(t *testing.T) {
	t.Parallel()
	const given = "given {\n  most = 5\n  unit = \"W\"\n  hard = true\n}\n"
	for text, want := range map[string]string{
		`load_w <= 60`:                       "load_w 60 <=",
		`load_w <= "60 W"`:                   `load_w "60 W" <=`,
		`load_w <= "${given.most} W"`:        `load_w "5 W" <=`,
		`drop_percent <= given.most`:         "drop_percent 5 <=",
		`a + b * -c / (d - 1) > 2.5`:         "a b c negate * d 1 - / + 2.5 >",
		`a == 1 || !(b != 2) && c`:           "a 1 == b 2 != ! c && ||",
		`given.hard ? min(a, b, 3) : abs(c)`: "true a b 3 min/3 c abs/1 ?:",
		`a < 1 && b >= 2`:                    "a 1 < b 2 >= &&",
		`((a))`:                              "a",
		`true`:                               "true",
	} {
		c := criterionOf(t, given, "  expect = "+text)
		if got := order(c.Expect.V); got != want {
			t.Errorf("%s is %s, not %s", text, got, want)
		}
		last := c.Expect.V.Steps[len(c.Expect.V.Steps)-1]
		if last.First != 0 {
			t.Errorf("%s: the last step begins at %d", text, last.First)
		}
		if c.Expect.Text != text {
			t.Errorf("%s is shown as %s", text, c.Expect.Text)
		}
	}
	last := criterionOf(t, "", "  expect = a + 1 < 3 * (b - 2)").Expect.V.Steps
	for i, want := range map[int]string{0: "a", 2: "a + 1", 7: "3 * (b - 2)", 8: "a + 1 < 3 * (b - 2)"} {
		if got := last[i].Span.Text(); got != want {
			t.Errorf("step %d stands at %q, not %q", i, got, want)
		}
	}
	if last[8].First != 0 || last[7].First != 3 {
		t.Errorf("steps begin at %d and %d, not 0 and 3", last[8].First, last[7].First)
	}
}

func TestMessage(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		`"Too much."`:                          "Too much.",
		`"Line ${name} takes ${load_w} W."`:    "Line |{name}| takes |{load_w}| W.",
		`"${load_w - 60}"`:                     "{load_w 60 -}",
		`"$${name} by ${given.who}"`:           "${name} by |{\"us\"}",
		`"${given.who}"`:                       `{"us"}`,
		`"${drop_percent > 3 ? "far" : "ok"}"`: `{drop_percent 3 > "far" "ok" ?:}`,
	} {
		c := criterionOf(t, "given { who = \"us\" }", "  expect = true\n  message = "+text)
		var got []string
		for _, p := range c.Message.V {
			if p.Expression == nil {
				got = append(got, p.Text)
			} else {
				got = append(got, "{"+order(*p.Expression)+"}")
			}
		}
		if diff := cmp.Diff(want, strings.ReplaceAll(strings.Join(got, "|"), "${|name}", "${name}")); diff != "" {
			t.Errorf("%s (-want +got):\n%s", text, diff)
		}
	}
}

// TestCriterionTextIsRead shows that a criterion written out says the same
// without the given values it was made with.
func TestCriterionTextIsRead(t *testing.T) {
	t.Parallel()
	const given = "given {\n  most = 5\n  kind = \"a \\\"horn\\\"\"\n}\n"
	first := criterionOf(t, given, `  when     = class == given.kind && quantity > 1
  expect   = drop_percent <= given.most + 1 || load_w < "${given.most} W"
  message  = "More than ${given.most} % on ${name}: ${given.kind} and $${that}."
  severity = "error"`)
	s, problems := ReadCriteria(source.NewFile("again.pa.hcl", []byte(first.Text()+"\n")), Options{})
	if len(problems) > 0 {
		t.Fatalf("%v in\n%s", problems, first.Text())
	}
	second := s.Criterions[0]
	if order(second.When.V) != order(first.When.V) || order(second.Expect.V) != order(first.Expect.V) || second.Severity.V != "error" {
		t.Errorf("read again it is\n%s", second.Text())
	}
	if diff := cmp.Diff(first.Text(), second.Text()); diff != "" {
		t.Error(diff)
	}
}

func TestMostCriterions(t *testing.T) {
	t.Parallel()
	var b strings.Builder
	for i := range MaxCriterions + 1 {
		fmt.Fprintf(&b, "criterion \"%d\" {\n  each = \"line\"\n  expect = true\n}\n", i)
	}
	_, problems := ReadCriteria(source.NewFile("c.pa.hcl", []byte(b.String())), Options{})
	if len(problems) != 1 || !strings.Contains(problems[0].Found, "more than 1000 criterions") {
		t.Errorf("%v", problems)
	}
}
