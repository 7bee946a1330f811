package criterion

import (
	"fmt"
	"strings"
)

// Explained says in a line what a figure is: a phrase without full stop.
func (d Description) Explained() string {
	text := d.Doc
	switch {
	case d.Kind == Truth:
		text += "; true or false"
	case d.Kind == Word && d.Says != nil:
		text += "; one of " + quotedWords(d.Says)
	case d.Kind == Word:
		text += "; a text"
	}
	return text
}

// Takes says what stands beside the figure in a condition, as an example.
func (d Description) Takes() string {
	switch d.Kind {
	case Truth:
		return "true or false"
	case Word:
		if d.Says != nil {
			return `"` + d.Says[0] + `"`
		}
		return `"…"`
	case Number:
	}
	for _, k := range knownUnits() {
		if k.symbol == d.Unit && k.sample != "" {
			return `"` + k.sample + `"`
		}
	}
	return "a plain number"
}

// Reference gives the page of all figures, README.md, in Markdown. A test keeps
// the file in step with it.
func Reference() string {
	var b strings.Builder
	b.WriteString(`# Figures for criterions

This page is made from the list that criterions are checked against; ` + "`go test ./linter/criterion -update`" + ` writes it. The same
is told by ` + "`loudlint figures`" + `.

A criterion is a check of your own:

` + "```hcl" + `
criterion "Far end" {
  each     = "line"
  when     = constant_voltage
  expect   = drop_percent <= 5 && loss_db <= "0.5 dB"
  message  = "Line ${name} loses ${drop_percent} % on its way to the last loudspeaker."
  severity = "warning"
}
` + "```" + `

It is asked of each part of the kind that ` + "`each`" + ` names, where ` + "`when`" + ` holds. A part passes where ` + "`expect`" + ` holds, fails with the
severity where it does not, and stays open where a figure that decides is not known. Its check goes by the name in
lower case with hyphens, here ` + "`criterion:far-end`" + `: ` + "`--only`" + `, ` + "`limit`" + ` and ` + "`deviation`" + ` take it as they take others.

- Names of numbers end in their unit, and a bare number beside one is in that unit. With its unit in quotes a figure may be
  in any unit of its kind: ` + "`cable_m <= \"400 ft\"`" + `.
- Results show a figure in the unit of its name, also where the job prints in US units.
- Watts cannot be compared with ohms. Products are followed: ` + "`voltage_v * voltage_v / impedance_ohm <= \"60 W\"`" + ` is right. Per cent
  count as plain numbers in a product; two levels have a difference, in dB, and no sum.
- ` + "`+ - * /`" + `, ` + "`< <= > >= == !=`" + `, ` + "`&&`" + ` (and), ` + "`||`" + ` (or), ` + "`!`" + ` (not), ` + "`condition ? one : other`" + `, ` + "`min`" + `, ` + "`max`" + `, ` + "`abs`" + ` and
  parentheses. There are no loops.
- A figure exactly at its limit passes ` + "`<=` and `>=`" + `, as limits of checks do; figures that differ by less than one part in
  10⁹ are equal.
- What is not known decides nothing: ` + "`a && b`" + ` fails where one of them fails, whatever the other. What would be divided by 0
  leaves the criterion open and says so.
- ` + "`${…}`" + ` in a message puts a figure, or what is worked out of some, in its place.
`)
	for _, k := range Kinds() {
		fmt.Fprintf(&b, "\n## %s\n\n%s\n\n| figure | is | beside it |\n| --- | --- | --- |\n", k.Each, k.Doc)
		for _, d := range k.Figures {
			fmt.Fprintf(&b, "| `%s` | %s | %s |\n", d.Name, strings.ReplaceAll(d.Explained(), "|", `\|`), d.Takes())
		}
	}
	return b.String()
}
