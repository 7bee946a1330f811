package schema

import (
	"maps"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/source"
	"loudlint/schema/wording"
)

type hclBlock = hclsyntax.Block

// fragment is what one file holds before names are followed.
type fragment struct {
	place      standing
	file       *source.File
	problems   []Problem
	partial    bool          // names that the file holds may be missing here
	flawed     []source.Span // headers of blocks in which something was refused
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
	body     *hclsyntax.Body // nil when nothing of the file could be read
	problems []Problem
	mended   *mended // the text that was parsed, where it is not the file's own
	partial  bool    // names that the file holds may be missing from body
}

// parseFile turns the bytes of a file into syntax, and says what is wrong with
// them.
func parseFile(file *source.File) syntax {
	parsed, diags := hclsyntax.ParseConfig(file.Text, file.Name, hcl.InitialPos)
	if diags.HasErrors() {
		return explainSyntax(file, Problem{Span: source.Span{File: file}, Found: "This file cannot be read as a design."})
	}
	s := syntax{file: file}
	s.body, _ = parsed.Body.(*hclsyntax.Body)
	return s
}

func (s *syntax) decoder() *decoder {
	return &decoder{file: s.file, mended: s.mended, dialect: theDialect()}
}

// readFragment decodes a parsed file. One that is not the design's own holds
// models, criteria and uses only.
func readFragment(s syntax, givens *givenNames, place standing) *fragment {
	f := &fragment{file: s.file, problems: s.problems, partial: s.partial, place: place}
	if s.body == nil {
		return f
	}
	if givens == nil {
		givens = &givenNames{}
	}
	d := s.decoder()
	d.given = givens
	x := theDialect()
	for _, a := range d.inOrder(s.body.Attributes) {
		d.refuse(d.span(a.NameRange), a.Name+" stands outside any block.", "Every value stands inside the braces of the block it belongs to.", "")
	}
	for _, b := range s.body.Blocks {
		if b.Type == "given" {
			continue // read before everything else
		}
		i := slices.Index(x.tops, b.Type)
		if i < 0 {
			if b = d.unknownBlock(b, "", x.tops, nil, notModelledOnLines()); b == nil || b.Type == "given" {
				continue
			}
			i = slices.Index(x.tops, b.Type)
		}
		switch {
		case place != standsOwn && !x.top[i].catalogue:
			read := "This file is used by another"
			if place == standsForLimit {
				read = "This file is read for its criteria"
			}
			d.refuse(d.span(b.TypeRange), read+" and holds "+wording.WithArticle(b.Type)+".", "A file that is used holds models and criteria; the other blocks of a design stand in its own files.", "")
		default:
			x.top[i].read(d, f, b)
		}
	}
	f.problems = append(f.problems, d.problems...)
	f.refs, f.flawed = d.refs, d.flawed
	return f
}

// givenNames are the names that expressions may use: those of the given blocks.
type givenNames struct {
	all     []string // sorted
	context *hcl.EvalContext
	texts   map[string]string // how their values read in a text
}

// newGivenNames prepares values for use.
func newGivenNames(values map[string]cty.Value) *givenNames {
	g := &givenNames{
		all:     slices.Sorted(maps.Keys(values)),
		context: givenContext(values),
		texts:   make(map[string]string, len(values)),
	}
	for name, v := range values {
		if v.IsWhollyKnown() && !v.IsNull() {
			g.texts[name] = plainly(v)
		}
	}
	return g
}

// text gives a given value that is a text and cannot be computed with.
func (g *givenNames) text(name string) (string, bool) {
	all := g.context.Variables["given"]
	if !all.Type().HasAttribute(name) {
		return "", false
	}
	v := all.GetAttr(name)
	if v.Type() != cty.String || !v.IsKnown() || v.IsNull() {
		return "", false
	}
	return v.AsString(), true
}

// has tells that a given block sets the name.
func (g *givenNames) has(name string) bool {
	_, found := slices.BinarySearch(g.all, name)
	return found
}

func givenContext(values map[string]cty.Value) *hcl.EvalContext {
	object := cty.EmptyObjectVal
	if len(values) > 0 {
		object = cty.ObjectVal(values)
	}
	return &hcl.EvalContext{Variables: map[string]cty.Value{"given": object}}
}

// given is one value of a given block.
type given struct {
	in      *syntax
	attr    *hclsyntax.Attribute
	uses    []string // other given values
	waiting int      // how many of them are not worked out yet
}

// readGivens works out the given blocks of all files. A value may use others,
// in any order, as long as none needs itself.
func readGivens(all []*section) (*givenNames, []Problem) {
	found, problems := collectGivens(all)
	known := make(map[string]*given, len(found))
	for _, g := range found {
		known[g.attr.Name] = g
	}
	users := map[string][]*given{}
	var ready []*given
	for _, g := range found {
		g.uses = givensIn(g.attr.Expr, known)
		for _, name := range g.uses {
			users[name] = append(users[name], g)
		}
		if g.waiting = len(g.uses); g.waiting == 0 {
			ready = append(ready, g)
		}
	}
	names := slices.Sorted(maps.Keys(known))
	values := make(map[string]cty.Value, len(found))
	for ; len(ready) > 0; ready = ready[1:] {
		g := ready[0]
		used := map[string]cty.Value{}
		for _, name := range g.uses {
			used[name] = values[name]
		}
		d := g.in.decoder()
		d.given = &givenNames{all: names, context: givenContext(used)}
		values[g.attr.Name] = d.givenValue(g.attr.Expr)
		problems = append(problems, d.problems...)
		for _, user := range users[g.attr.Name] {
			if user.waiting--; user.waiting == 0 {
				ready = append(ready, user)
			}
		}
	}
	for _, g := range found {
		if g.waiting > 0 {
			d := g.in.decoder()
			d.refuse(d.span(g.attr.Expr.Range()), "given."+g.attr.Name+" needs itself to be worked out.", "Given values may use each other, but not in a circle.", "")
			problems = append(problems, d.problems...)
		}
	}
	return newGivenNames(values), problems
}

// collectGivens lists the values of all given blocks.
func collectGivens(all []*section) ([]*given, []Problem) {
	var found []*given
	var problems []Problem
	first := map[string]source.Span{}
	for _, s := range all {
		if s.body == nil {
			continue
		}
		d := s.decoder()
		for _, b := range s.body.Blocks {
			if !strings.EqualFold(b.Type, "given") {
				continue
			}
			if len(b.Labels) > 0 {
				d.refuse(d.span(b.LabelRanges[0]), "A name stands after given.", "After given stands its brace at once.", "given {")
			}
			for _, inner := range b.Body.Blocks {
				d.refuse(d.span(inner.TypeRange), "given holds values only.", "Here stands a name, an equals sign and a number or text.", "")
			}
			for _, a := range d.inOrder(b.Body.Attributes) {
				span := d.span(a.NameRange)
				if before, twice := first[a.Name]; twice {
					d.problem(Problem{Span: span, Found: "given." + a.Name + " is set twice.", Expected: "Each name is set once in all files of a design.", Related: []Place{{before, "first set here"}}})
					continue
				}
				first[a.Name] = span
				found = append(found, &given{in: &s.syntax, attr: a})
			}
		}
		problems = append(problems, d.problems...)
	}
	return found, problems
}

// givenValue works out one value. What was refused is said once: what uses it
// is not said again.
func (d *decoder) givenValue(expr hclsyntax.Expression) cty.Value {
	v, ok := d.evaluate(expr, "a number or a text")
	if kind := kindOf(v); ok && (kind == "a list" || kind == "a group of values in braces") {
		d.refuse(d.span(expr.Range()), "A given value is "+kind+".", "Here stands a number or a text.", "")
		ok = false
	}
	if ok && v.Type() == cty.String {
		ok = d.fitText(Value[string]{Text: v.AsString(), Span: d.span(expr.Range())}, MaxTextBytes)
	}
	if !ok {
		return cty.UnknownVal(cty.String)
	}
	return v
}

// givensIn lists the known given values that an expression uses, each once.
func givensIn(expr hclsyntax.Expression, known map[string]*given) []string {
	var names []string
	for _, t := range expr.Variables() {
		if t.RootName() != "given" || len(t) < 2 {
			continue
		}
		if a, ok := t[1].(hcl.TraverseAttr); ok && known[a.Name] != nil {
			names = append(names, a.Name)
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}
