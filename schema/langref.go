package schema

// blockDescription is a declared block as data, for the language reference.
type blockDescription struct {
	name       string
	doc        string
	label      label
	attributes []attributeDescription
	children   []string
}

type attributeDescription struct {
	name, doc, takes, example string
	words                     []string
	required                  bool
}

func (b *block[T]) description() blockDescription {
	d := blockDescription{name: b.name, doc: b.doc, label: b.label, children: b.childNames()}
	for _, a := range b.attributes {
		d.attributes = append(d.attributes, attributeDescription{a.name, a.doc, a.takes, a.example, a.words, a.required})
	}
	return d
}
