package schema

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"loudlint/schema/quantity"
)

// blockDescription is a declared block as data: for the language reference, and
// for telling what somebody meant who wrote something else.
type blockDescription struct {
	name       string
	doc        string
	label      label
	attributes []attributeDescription
	children   []childDescription
}

type attributeDescription struct {
	name, doc, takes, example string
	words                     []string
	quantity                  string
	required                  bool
}

type childDescription struct {
	name     string
	describe func() blockDescription
}

func (b *block[T]) description() blockDescription {
	d := blockDescription{name: b.name, doc: b.doc, label: b.label}
	for _, a := range b.attributes {
		d.attributes = append(d.attributes, attributeDescription{a.name, a.doc, a.takes, a.example, a.words, a.quantity, a.required})
	}
	for _, c := range b.children {
		d.children = append(d.children, childDescription{c.name, c.describe})
	}
	return d
}

// describe gives every block of the dialect once: those of the outermost
// level in their order, each followed by what first appears inside it.
func (x *dialect) describe() []blockDescription {
	var all []blockDescription
	seen := map[string]bool{}
	var todo []childDescription
	for _, t := range x.top {
		todo = append(todo, childDescription{t.name, t.describe})
		for len(todo) > 0 {
			next := todo[0]
			todo = todo[1:]
			if seen[next.name] {
				continue
			}
			seen[next.name] = true
			b := next.describe()
			all = append(all, b)
			todo = append(append([]childDescription{}, b.children...), todo...)
		}
	}
	return all
}

// dimension is a kind of quantity as the reference shows it.
type dimension struct {
	name, example, limits string
	units                 []string
}

func shownDimension[Q any](d quantity.Dimension[Q]) dimension {
	return dimension{d.Name, d.Example, d.Range, d.Units}
}

// dimensions lists every kind of quantity that a design can hold.
func dimensions() []dimension {
	return []dimension{
		shownDimension(quantity.Powers),
		shownDimension(quantity.Voltages),
		shownDimension(quantity.Currents),
		shownDimension(quantity.Resistances),
		shownDimension(quantity.Lengths),
		shownDimension(quantity.FloorAreas),
		shownDimension(quantity.ConductorSets),
		shownDimension(quantity.Frequencies),
		shownDimension(quantity.Durations),
		shownDimension(quantity.Charges),
		shownDimension(quantity.Temperatures),
		shownDimension(quantity.Angles),
		shownDimension(quantity.Percents),
		shownDimension(quantity.Gains),
		shownDimension(quantity.SoundLevels),
		shownDimension(quantity.SoundPressureLevels),
		shownDimension(quantity.Levels),
		shownDimension(quantity.Inductances),
		shownDimension(quantity.Capacitances),
		shownDimension(quantity.Rails),
		shownDimension(quantity.Dates),
		shownDimension(quantity.Ingresses),
	}
}

// Reference is the description of the dialect as a Markdown document, made from
// its declarations. The file README.md of this package holds it.
func Reference() string {
	var b strings.Builder
	b.WriteString(referenceHead)
	writeQuantities(&b)
	writeBlocks(&b, theDialect())
	writeLimits(&b)
	writeNotModelled(&b)
	return b.String()
}

const referenceHead = `# The language of designs

This page is made from the declarations that read a design: the program and this page cannot disagree.
After a change, ` + "`go test ./schema -run Reference -update`" + ` writes it anew.

A design is one text file whose name ends in ` + "`.pa.hcl`" + `, or all such files of a folder. In which order files and blocks
stand does not matter, except inside a line. The text is UTF-8.

## How it is written

A **value** is a name, an equals sign and what it is set to. Each stands on a line of its own, without commas.
A **block** is a word, a name in quotes, and values and other blocks between braces. The opening brace stands at the end
of the first line. A block on one line holds one value.

` + "```hcl" + `
# A comment begins with # and goes to the end of the line.
line "North" {
  home_run = "40 m"
  loudspeaker "N" {
    quantity = 8
    tap      = "6 W"
    spacing  = "5 m"
  }
  loudspeaker "Door" { tap = "3 W" }
}
` + "```" + `

- Texts, names, and figures with a unit stand in straight double quotes: ` + "`\"6 W\"`" + `. Bare numbers, ` + "`true`" + ` and ` + "`false`" + ` do not.
- A list stands in square brackets, its values parted by commas: ` + "`[\"6 W\", \"3 W\"]`" + `. A list of one name may be the name alone.
- Figures for several frequencies stand in braces: ` + "`{ \"125 Hz\" = \"60 dBA\", \"1 kHz\" = \"50 dBA\" }`" + `.
- **Names** are free texts, and a block is referred to by the same text. Names of one kind are unique; two that differ only
  in capitals or spaces are refused. Names of devices are unique on their line.
- What is not known is **left out**. It is never guessed: the checks that need it say so.
- Numbers and texts used more than once stand in a ` + "`given`" + ` block and are put into a text with a template:
  ` + "`\"${given.bay} m\"`" + `. Numbers can be computed with ` + "`+ - * /`" + `: ` + "`\"${given.bay * 2} m\"`" + `. There are no functions, loops or conditions.
- All problems of all files are told in one run.

## The ideas

- **A line is written as it is walked.** Devices stand in the order in which the cable meets them. ` + "`home_run`" + ` is the cable
  from the rack to the first device, ` + "`leg`" + ` the cable that leads to a device from the one before, ` + "`cable`" + ` its kind.
- **Braces hold what they control.** A ` + "`branch`" + ` is a tee with a chain of its own; after its brace the line goes on from the
  tee. An ` + "`attenuator`" + ` encloses the devices that it turns down; after its brace the line goes on from its input.
- **Runs.** ` + "`quantity`" + ` makes several of one: ` + "`loudspeaker \"H\" { quantity = 8 }`" + ` is H 1 to H 8; ` + "`first`" + ` begins at another
  number. ` + "`spacing`" + ` is the cable between neighbours. A run inside a run multiplies. A made name that is also written is refused.
- **Like and alike.** A line or a space that is ` + "`like`" + ` another is the same except for what it writes itself; the other one is
  written out. ` + "`alike = 16`" + ` makes a space stand for sixteen equal ones: the loudspeakers that serve it are shared out in walking
  order, the same number for each.
- **Models.** What a model says, a part may say too, and then the part's word counts; that it differs is listed. No part
  needs a model. Names that begin with ` + "`typical/`" + ` are models that the program brings along, with figures typical of a class of device
  and of no maker.
- **Other files.** ` + "`use`" + ` brings a catalogue or criteria from the design's own folder or a folder named on the command line.
  A file that is both in the folder and used is read once.
- **Power belongs to a channel.** Several outputs may share one channel of an amplifier. An amplifier with one rated power has one
  channel, called Main. An amplifier that states no outputs has the ones its lines name: ` + "`output = \"70 V\"`" + ` says what it is.
`

func writeQuantities(b *strings.Builder) {
	b.WriteString(`
## Figures and their units

A unit is always written. Numbers are ` + "`6`, `0.62`, `1/8` or `7 1/2`" + `. A comma in a number is refused, because it is read in two ways.
"70 V" as a line voltage means 70.7 V, which is 100/√2. Feet and inches stand in one text: ` + "`\"29 ft 6 in\"`" + `.

| what | written | units | from, to |
| --- | --- | --- | --- |
`)
	for _, d := range dimensions() {
		fmt.Fprintf(b, "| %s | %s | %s | %s |\n", d.name, code(quoted(d.example)), strings.Join(d.units, ", "), cell(d.limits))
	}
}

func writeBlocks(b *strings.Builder, x *dialect) {
	b.WriteString("\n## Blocks\n\n")
	all := x.descriptions()
	names := make([]string, len(all))
	for i, d := range all {
		names[i] = fmt.Sprintf("[%s](#%s)", d.name, d.name)
	}
	fmt.Fprintf(b, "%s.\n", strings.Join(names, ", "))
	for _, d := range all {
		writeBlock(b, x, d)
	}
}

func writeBlock(b *strings.Builder, x *dialect, d blockDescription) {
	fmt.Fprintf(b, "\n### %s\n\n%s\n\n", d.name, d.doc)
	header := d.name + " {"
	switch d.label {
	case labelName, labelCheck:
		header = d.name + " \"…\" {"
	case labelOptional:
		header = d.name + " {` or `" + d.name + " \"…\" {"
	case labelNone:
	}
	fmt.Fprintf(b, "Begins `%s`", header)
	if d.label == labelCheck {
		b.WriteString(" with the name of a check")
	}
	fmt.Fprintf(b, "; stands %s.", whereOf(x, d.name))
	if len(d.children) > 0 {
		inside := make([]string, len(d.children))
		for i, c := range d.children {
			inside[i] = fmt.Sprintf("[%s](#%s)", c.name, c.name)
		}
		fmt.Fprintf(b, " Holds %s.", strings.Join(inside, ", "))
	}
	b.WriteString("\n")
	if len(d.attributes) == 0 {
		return
	}
	b.WriteString("\n| value | says | takes | example |\n| --- | --- | --- | --- |\n")
	for _, a := range d.attributes {
		says := a.doc
		if a.required {
			says += " (required)"
		}
		fmt.Fprintf(b, "| %s | %s | %s | %s |\n", code(a.name), cell(says), cell(a.takes), code(a.example))
	}
}

func whereOf(x *dialect, block string) string {
	var inside []string
	outermost := false
	for _, place := range x.blocksHolding(block) {
		if place == "" {
			outermost = true
			continue
		}
		inside = append(inside, fmt.Sprintf("[%s](#%s)", place, place))
	}
	if !outermost {
		return "in " + strings.Join(inside, ", ")
	}
	where := "outside all other blocks"
	if i := slices.IndexFunc(x.top, func(t topBlock) bool { return t.name == block }); x.top[i].catalogue {
		where += ", also in a file that is used"
	}
	if len(inside) > 0 {
		where += ", and in " + strings.Join(inside, ", ")
	}
	return where
}

func writeLimits(b *strings.Builder) {
	b.WriteString("\n## Limits\n\nEach is far above any real job; they keep a broken file from taking the machine.\n\n| what | at most |\n| --- | --- |\n")
	for _, l := range []struct {
		what string
		most int
		unit string
	}{
		{"one file", MaxFileBytes >> 20, " MiB"},
		{"all files of a design", MaxTotalBytes >> 20, " MiB"},
		{"brackets and braces inside each other", MaxNesting, ""},
		{"signs of arithmetic in a value", MaxOperators, ""},
		{"pieces of a value made with templates and sums", MaxTemplateParts, ""},
		{"a name", MaxNameBytes, " bytes"},
		{"any other text", MaxTextBytes, " bytes"},
		{"a quantity of devices", MaxRun, ""},
		{"a quantity of channels, outputs, inputs or sends", MaxUnitRun, ""},
		{"devices of a design, runs written out", MaxDevices, ""},
		{"channels, outputs, inputs and sends of a design, runs written out", MaxUnitParts, ""},
		{"files that use files, one after the other", MaxUseDepth, ""},
		{"problems told of one file", MaxProblems, ""},
	} {
		fmt.Fprintf(b, "| %s | %d%s |\n", l.what, l.most, l.unit)
	}
}

func writeNotModelled(b *strings.Builder) {
	b.WriteString("\n## What is not modelled\n\nThese are refused by name, rather than computed wrongly.\n\n")
	reasons := notModelledOnLines()
	for _, name := range slices.Sorted(maps.Keys(reasons)) {
		fmt.Fprintf(b, "- %s: %s\n", code(name), reasons[name])
	}
}

// code writes a text as code in a table.
func code(text string) string { return "`" + cell(text) + "`" }

// cell writes a text so that it stays in its cell of a table.
func cell(text string) string { return strings.ReplaceAll(text, "|", `\|`) }
