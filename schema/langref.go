package schema

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
	required                  bool
}

type childDescription struct {
	name     string
	describe func() blockDescription
}

func (b *block[T]) description() blockDescription {
	d := blockDescription{name: b.name, doc: b.doc, label: b.label}
	for _, a := range b.attributes {
		d.attributes = append(d.attributes, attributeDescription{a.name, a.doc, a.takes, a.example, a.words, a.required})
	}
	for _, c := range b.children {
		d.children = append(d.children, childDescription{c.name, c.describe})
	}
	return d
}

// descriptions gives every block of the dialect once: those of the outermost
// level in their order, each followed by what first appears inside it.
func (x *dialect) descriptions() []blockDescription {
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
