package schema

import (
	"cmp"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/source"
)

type hclBlock = hclsyntax.Block

// fragment is what one file holds before names are followed.
type fragment struct {
	file       *source.File
	problems   []Problem
	refs       []reference
	uses       []*Use
	systems    []*System
	units      []*Unit
	lines      []*Line
	groups     []*Group
	sources    []*Source
	muteLinks  []*MuteLink
	spaces     []*Space
	readings   []*Reading
	supplies   []*Supply
	safety     []*Safety
	items      []*Item
	deviations []*Deviation
	criteria   []*Criteria
	criterions []*Criterion
	catalogue  Catalogue
}

// syntax is a parsed file.
type syntax struct {
	file     *source.File
	body     *hclsyntax.Body
	problems []Problem
}

// parseFile turns the bytes of a file into syntax, or says what is wrong with
// them.
func parseFile(file *source.File) syntax {
	s := syntax{file: file}
	if p, ok := boundText(file); !ok {
		s.problems = []Problem{p}
		return s
	}
	parsed, diags := hclsyntax.ParseConfig(file.Text, file.Name, hcl.InitialPos)
	if diags.HasErrors() {
		s.problems = explainSyntax(file, diags)
		return s
	}
	s.body, _ = parsed.Body.(*hclsyntax.Body)
	return s
}

// readFragment decodes a parsed file. A used file holds models, criteria and
// uses only.
func readFragment(s syntax, givens map[string]cty.Value, used bool) *fragment {
	f := &fragment{file: s.file, problems: s.problems}
	if s.body == nil {
		return f
	}
	d := &decoder{file: s.file}
	d.setGivens(givens)
	x := theDialect()
	for _, a := range attributesInOrder(s.body) {
		d.refuse(d.span(a.NameRange), a.Name+" stands outside any block.", "Every value stands inside the braces of the part it belongs to.", "")
	}
	for _, b := range s.body.Blocks {
		if b.Type == "given" {
			continue // read before everything else
		}
		i := slices.IndexFunc(x.top, func(t topBlock) bool { return t.name == b.Type })
		switch {
		case i < 0:
			d.unknownBlock(b, "", x.tops, nil, notModelledOnLines())
		case used && !x.top[i].catalogue:
			d.refuse(d.span(b.TypeRange), "This file is used by another and holds a "+b.Type+".", "A file that is used holds models and criteria; the parts of a design stand in the design's own files.", "")
		default:
			x.top[i].read(d, f, b)
		}
	}
	f.problems = append(f.problems, d.problems...)
	f.refs = d.refs
	return f
}

// attributesInOrder gives the attributes of a body as they are written.
func attributesInOrder(body *hclsyntax.Body) []*hclsyntax.Attribute {
	all := make([]*hclsyntax.Attribute, 0, len(body.Attributes))
	for _, a := range body.Attributes {
		all = append(all, a)
	}
	slices.SortFunc(all, func(a, b *hclsyntax.Attribute) int {
		return cmp.Compare(a.NameRange.Start.Byte, b.NameRange.Start.Byte)
	})
	return all
}

// setGivens prepares the one name that expressions may use.
func (d *decoder) setGivens(givens map[string]cty.Value) {
	object := cty.EmptyObjectVal
	if len(givens) > 0 {
		object = cty.ObjectVal(givens)
		for name := range givens {
			d.givens = append(d.givens, name)
		}
		slices.Sort(d.givens)
	}
	d.given = &hcl.EvalContext{Variables: map[string]cty.Value{"given": object}}
}

// readGivens works out the given blocks of all files. A value may use others,
// in any order, as long as none needs itself.
func readGivens(all []syntax) (map[string]cty.Value, []Problem) {
	type open struct {
		file *source.File
		attr *hclsyntax.Attribute
	}
	var waiting []open
	var problems []Problem
	first := map[string]source.Span{}
	for _, s := range all {
		if s.body == nil {
			continue
		}
		d := &decoder{file: s.file}
		for _, b := range s.body.Blocks {
			if b.Type != "given" {
				continue
			}
			if len(b.Labels) > 0 {
				d.refuse(d.span(b.LabelRanges[0]), "given has no name.", "The brace follows at once.", "given {")
			}
			for _, inner := range b.Body.Blocks {
				d.refuse(d.span(inner.TypeRange), "given holds values only.", "Here stands a name, an equals sign and a number or text.", "")
			}
			for _, a := range attributesInOrder(b.Body) {
				span := d.span(a.NameRange)
				if before, twice := first[a.Name]; twice {
					d.problem(Problem{Span: span, Found: "given." + a.Name + " is set twice.", Expected: "Each name is set once in all files of a design.", Related: []Place{{before, "first set here"}}})
					continue
				}
				first[a.Name] = span
				waiting = append(waiting, open{s.file, a})
			}
		}
		problems = append(problems, d.problems...)
	}
	values := map[string]cty.Value{}
	for len(waiting) > 0 {
		var still []open
		for _, w := range waiting {
			d := &decoder{file: w.file}
			d.setGivens(values)
			if needs := unsetGivens(w.attr.Expr, values, first); len(needs) > 0 {
				still = append(still, w)
				continue
			}
			v, ok := d.evaluate(w.attr.Expr, "a number or a text")
			if kind := kindOf(v); ok && (kind == "a list" || kind == "a group of values in braces") {
				d.refuse(d.span(w.attr.Expr.Range()), "A given value is "+kind+".", "Here stands a number or a text.", "")
				ok = false
			}
			if ok && v.Type() == cty.String {
				ok = d.fitText(Value[string]{Text: v.AsString(), Span: d.span(w.attr.Expr.Range())}, MaxTextBytes)
			}
			problems = append(problems, d.problems...)
			if !ok {
				v = cty.UnknownVal(cty.String) // said once; what uses it is not said again
			}
			values[w.attr.Name] = v
		}
		if len(still) == len(waiting) {
			for _, w := range still {
				d := &decoder{file: w.file}
				d.refuse(d.span(w.attr.Expr.Range()), "given."+w.attr.Name+" needs itself to be worked out.", "Given values may use each other, but not in a circle.", "")
				problems = append(problems, d.problems...)
			}
			break
		}
		waiting = still
	}
	return values, problems
}

// unsetGivens lists the given names an expression waits for.
func unsetGivens(expr hclsyntax.Expression, values map[string]cty.Value, known map[string]source.Span) []string {
	var names []string
	for _, t := range expr.Variables() {
		if t.RootName() != "given" || len(t) < 2 {
			continue
		}
		if a, ok := t[1].(hcl.TraverseAttr); ok {
			_, done := values[a.Name]
			if _, exists := known[a.Name]; exists && !done {
				names = append(names, a.Name)
			}
		}
	}
	return names
}
