package criterion_test

import (
	"testing"

	"loudlint/linter"
	"loudlint/linter/criterion"
	"loudlint/schema"
	"loudlint/schema/source"
)

// FuzzExpression reads any text as the condition, and as the message, of a
// criterion of every kind and judges a small job by it: it must end, and answer
// or say where in the file what is wrong.
func FuzzExpression(f *testing.F) {
	for _, seed := range [][2]string{
		{`load_w <= 60`, `"${name} takes ${load_w} W"`},
		{`load_w / (loudspeakers - 5) > "3 W" || !constant_voltage`, `"${load_w / 0}"`},
		{`min(load_w, 5) + max(1, 2, 3) * abs(-3) < 9`, `"%{ if load_w > 3 }a%{ endif }"`},
		{`constant_voltage ? drop_percent <= 5 : loss_db <= "1 dB"`, `"${drop_percent > 3 ? "far" : 1}"`},
		{`level_dba - noise_dba >= 10 && duty == "emergency"`, `"${given.x}"`},
		{`given.x * load_w == ((1e9))`, `"$${"`},
		{`load_w ≤ 5 and not x`, `load_w`},
		{"(load_w <\n 5)", `"a\nb"`},
	} {
		f.Add(seed[0], seed[1])
	}
	kinds := criterion.Kinds()
	f.Fuzz(func(t *testing.T, expect, message string) {
		const most = 1 << 11 // longer ones teach nothing
		if len(expect)+len(message) > most {
			t.Skip()
		}
		for _, k := range kinds {
			text := job + asks(k.Each, expect, "  message = "+message) + "given { x = 2 }\n"
			file := source.NewFile("fuzz.pa.hcl", []byte(text))
			design, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{Workers: 1})
			if design != nil {
				for _, c := range design.Criterions {
					if len(c.Expect.V.Steps) > schema.MaxExpressionSteps {
						t.Errorf("%d steps", len(c.Expect.V.Steps))
					}
				}
				problems = linter.Judge(design, linter.Options{Workers: 1}).Problems
			}
			for _, p := range problems {
				if p.Found == "" || p.Span.Start > p.Span.End || int(p.Span.End) > len(file.Text) {
					t.Errorf("a problem says nothing or is outside the file: %v", p)
				}
			}
		}
	})
}
