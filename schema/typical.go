package schema

import (
	"bytes"
	"embed"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/source"
)

// The typical catalogue is the one the program brings along: invented figures
// typical of a class of device, of no maker. It is read only as far as a design
// names it, so that one that names nothing of it pays nothing.

//go:embed typical/*.pa.hcl
var typicalTexts embed.FS

const (
	// typicalPrefix begins the name of every typical model and of no other.
	typicalPrefix = "typical/"
	// builtInScheme begins the name of a file that is part of the program. No
	// file that a design uses has a colon in its name.
	builtInScheme = "loudlint:"
)

// The files of the typical catalogue, one per class.
const (
	typicalAmplifiers   = "amplifiers"
	typicalMixers       = "mixers"
	typicalLoudspeakers = "loudspeakers"
	typicalAttenuators  = "attenuators"
	typicalMicrophones  = "microphones"
	typicalCables       = "cables"
	typicalConnectors   = "connectors"
)

func typicalClasses() []string {
	return []string{typicalAmplifiers, typicalMixers, typicalLoudspeakers, typicalAttenuators, typicalMicrophones, typicalCables, typicalConnectors}
}

// IsTypical tells that a model of this name has invented figures, typical of its
// class.
func IsTypical(name string) bool { return strings.HasPrefix(name, typicalPrefix) }

// OwnName gives the name that a typical model gets when it is copied into a
// catalogue of one's own, where names of typical models are taken.
func OwnName(name string) string { return "own/" + plainConnector(name) }

// IsBuiltIn tells that a file is part of the program: nobody finds it on a disk.
func IsBuiltIn(file *source.File) bool {
	return file != nil && strings.HasPrefix(file.Name, builtInScheme)
}

// Typical gives the whole typical catalogue, its runs not written out. Each call
// reads it anew. An error means that the program was built wrongly.
func Typical() (*Catalogue, error) {
	all := &Catalogue{}
	for _, class := range typicalClasses() {
		f := readFragment(parseTypical(typicalFile(class), anyName), nil, standsUsed)
		if len(f.problems) > 0 {
			p := f.problems[0]
			return nil, fmt.Errorf("read the typical catalogue, %s, line %d: %s", class, p.Span.From().Line, p)
		}
		all.add(&f.catalogue)
	}
	return all, nil
}

// typicalFile gives one class of the typical catalogue as a file.
func typicalFile(class string) *source.File {
	name := typicalPrefix + class + Ending
	text, err := typicalTexts.ReadFile(name)
	if err != nil {
		panic("schema: the typical catalogue has no file for " + class)
	}
	return source.NewFile(builtInScheme+name, text)
}

// typicalBlock is one model in the text of a class: from its first byte to the
// one behind its last brace.
type typicalBlock struct {
	name       string
	start, end int
}

// typicalBlocks finds the models in the text of a class without parsing it: most
// of a class is of no use to a design, and parsing all of it would take longer
// than a small design does. It relies on how these files are laid out, which a
// test holds: a model begins at the left edge and ends with the first brace there.
func typicalBlocks(text []byte) []typicalBlock {
	var all []typicalBlock
	for at := 0; at < len(text); {
		line := text[at:]
		if i := bytes.IndexByte(line, '\n'); i >= 0 {
			line = line[:i+1]
		}
		if line[0] < 'a' || line[0] > 'z' {
			at += len(line)
			continue
		}
		b := typicalBlock{start: at, end: len(text)}
		if parts := bytes.SplitN(line, []byte{'"'}, 3); len(parts) == 3 {
			b.name = string(parts[1])
		}
		if i := bytes.Index(text[at:], []byte("\n}")); i >= 0 {
			b.end = at + i + len("\n}")
		}
		all = append(all, b)
		at = b.end
	}
	return all
}

// parseTypical parses those models of a class that are wanted.
func parseTypical(file *source.File, wanted func(name string) bool) syntax {
	s := syntax{file: file, body: &hclsyntax.Body{}}
	for _, b := range typicalBlocks(file.Text) {
		if !wanted(b.name) {
			continue
		}
		parsed, diags := hclsyntax.ParseConfig(file.Text[b.start:b.end], file.Name, hcl.Pos{Byte: b.start, Line: 1, Column: 1})
		if diags.HasErrors() {
			s.problems = append(s.problems, Problem{Span: source.Span{File: file, Start: int32(b.start), End: int32(b.end)}, Found: fmt.Sprintf("The typical model %q cannot be read.", b.name)})
			continue
		}
		if body, ok := parsed.Body.(*hclsyntax.Body); ok {
			s.body.Blocks = append(s.body.Blocks, body.Blocks...)
		}
	}
	return s
}

func anyName(string) bool { return true }

// connectorsByName are the typical connectors by their plain names, folded. What
// a DIN 5 is differs from no design to another, so they are read once.
var connectorsByName = sync.OnceValue(func() map[string]*ConnectorModel {
	byName := map[string]*ConnectorModel{}
	for _, m := range readFragment(parseTypical(typicalFile(typicalConnectors), anyName), nil, standsUsed).catalogue.Connectors {
		byName[fold(plainConnector(m.Name))] = m
	}
	return byName
})

func plainConnector(name string) string { return strings.TrimPrefix(name, typicalPrefix) }

// Connector gives what is known of a connector such as "DIN 5": what the
// design's own catalogue says, else what is usual. Case and doubled spaces do not
// matter. It is nil when neither knows the name.
func (d *Design) Connector(name string) *ConnectorModel {
	key := fold(plainConnector(name))
	for _, m := range d.Catalogue.Connectors {
		if fold(m.Name) == key {
			return m
		}
	}
	return connectorsByName()[key]
}

// typicalNeed is what a design needs of the typical models that one attribute
// can name.
type typicalNeed struct {
	classes []string // where they stand, the likeliest first
	names   map[string]bool
}

func (n *typicalNeed) add(v Value[string]) {
	if !IsTypical(v.V) {
		return
	}
	if n.names == nil {
		n.names = map[string]bool{}
	}
	n.names[v.V] = true
}

// useTypical reads those typical models that the design names.
func (r *resolver) useTypical() {
	r.reserveTypicalNames()
	for _, need := range r.typicalNeeds() {
		r.readTypical(need)
	}
	r.plainConnectors()
}

// typicalNeeds walks the design once, without recursion.
func (r *resolver) typicalNeeds() []*typicalNeed {
	d := r.design
	units := &typicalNeed{classes: []string{typicalMixers, typicalAmplifiers}}
	loudspeakers := &typicalNeed{classes: []string{typicalLoudspeakers}}
	attenuators := &typicalNeed{classes: []string{typicalAttenuators}}
	microphones := &typicalNeed{classes: []string{typicalMicrophones}}
	cables := &typicalNeed{classes: []string{typicalCables}}
	for _, u := range d.Units {
		units.add(u.Model)
		if u.Kind == KindAmplifier && IsTypical(u.Model.V) {
			units.classes = []string{typicalAmplifiers, typicalMixers}
		}
	}
	for _, s := range d.Sources {
		microphones.add(s.Model)
	}
	walked := map[Device]bool{} // lines that are like another share its devices
	for _, l := range d.Lines {
		cables.add(l.Cable)
		cables.add(l.OverrideCable)
		if len(l.Devices) == 0 || walked[l.Devices[0]] {
			continue
		}
		walked[l.Devices[0]] = true
		todo := [][]Device{l.Devices}
		for len(todo) > 0 {
			last := todo[len(todo)-1]
			todo = todo[:len(todo)-1]
			for _, device := range last {
				cables.add(device.Common().Cable)
				switch v := device.(type) {
				case *Loudspeaker:
					loudspeakers.add(v.Model)
				case *Attenuator:
					attenuators.add(v.Model)
				}
				if inside := device.Inside(); len(inside) > 0 {
					todo = append(todo, inside)
				}
			}
		}
	}
	return []*typicalNeed{units, loudspeakers, attenuators, microphones, cables}
}

// readTypical puts the models that are needed into the design's catalogue. When
// one does not exist all of its class go there, so that whoever refuses the name
// can tell the nearest.
func (r *resolver) readTypical(need *typicalNeed) {
	var files []*source.File
	missing := maps.Clone(need.names)
	for _, class := range need.classes {
		if len(missing) == 0 {
			break
		}
		file := typicalFile(class)
		files = append(files, file)
		for _, b := range typicalBlocks(file.Text) {
			delete(missing, b.name)
		}
	}
	wanted := func(name string) bool { return need.names[name] }
	if len(missing) > 0 {
		wanted = anyName
	}
	for _, file := range files {
		f := readFragment(parseTypical(file, wanted), nil, standsUsed)
		r.problems = append(r.problems, f.problems...)
		r.design.Catalogue.add(&f.catalogue)
	}
}

// reserveTypicalNames refuses models of a design's own that look like typical
// ones: what reads them must be able to tell real figures from invented ones.
func (r *resolver) reserveTypicalNames() {
	c := &r.design.Catalogue
	reserve(r, &c.Units)
	reserve(r, &c.Loudspeakers)
	reserve(r, &c.Attenuators)
	reserve(r, &c.Microphones)
	reserve(r, &c.Cables)
	reserve(r, &c.Connectors)
}

func reserve[T interface{ part() *Part }](r *resolver, all *[]T) {
	*all = slices.DeleteFunc(*all, func(t T) bool {
		p := t.part()
		if !IsTypical(p.Name) {
			return false
		}
		r.refuse(p.NameSpan, fmt.Sprintf("%q is kept for the models the program brings along.", p.Name), "A model that was copied from there gets a name of its own, and the figures of its data sheet.", strconv.Quote(OwnName(p.Name)))
		return true
	})
}

// plainConnectors lets a connector be named as the list of typical models shows
// it: "typical/DIN 5" means what "DIN 5" means everywhere.
func (r *resolver) plainConnectors() {
	d := r.design
	for _, s := range d.Sources {
		r.plainly(&s.Connector)
		for _, also := range s.Also {
			r.plainly(&also.Connector)
		}
	}
	for _, m := range d.Catalogue.Microphones {
		r.plainly(&m.Fits)
	}
	for _, u := range d.Units {
		r.plainInputs(&u.UnitData)
	}
	for _, m := range d.Catalogue.Units {
		r.plainInputs(&m.UnitData)
	}
}

func (r *resolver) plainInputs(u *UnitData) {
	for _, i := range u.Inputs {
		for n := range i.Connectors.Items {
			r.plainly(&i.Connectors.Items[n])
		}
	}
}

func (r *resolver) plainly(v *Value[string]) {
	if !IsTypical(v.V) {
		return
	}
	plain := plainConnector(v.V)
	if m := connectorsByName()[fold(plain)]; m != nil && strings.EqualFold(plainConnector(m.Name), plain) {
		v.V = plainConnector(m.Name)
		return
	}
	var names []string
	for _, m := range connectorsByName() {
		names = append(names, m.Name)
	}
	slices.Sort(names)
	r.refuseName(*v, "a connector model", names)
}
