package schema

import (
	"slices"
	"strings"
	"sync"
)

// vocabulary is what may stand in one kind of block, for telling what was meant
// where the text itself could not be read.
type vocabulary struct {
	attributes map[string]string // name to what it takes
	children   []string
	named      bool // it has a label
	free       bool // attributes have names of the user's own
}

// vocabularies holds one vocabulary for each kind of block; "" is the outermost
// level of a file.
var vocabularies = sync.OnceValue(func() map[string]*vocabulary {
	all := map[string]*vocabulary{"": {children: theDialect().tops}}
	for _, b := range theDialect().descriptions() {
		v := &vocabulary{attributes: map[string]string{}, named: b.label != labelNone, free: b.name == "given" || b.name == "limit"}
		for _, a := range b.attributes {
			v.attributes[a.name] = a.takes
		}
		for _, c := range b.children {
			v.children = append(v.children, c.name)
		}
		all[b.name] = v
	}
	return all
})

func (v *vocabulary) holds(block string) bool { return v != nil && slices.Contains(v.children, block) }

func (v *vocabulary) says(attribute string) bool {
	if v == nil {
		return false
	}
	_, ok := v.attributes[attribute]
	return ok || v.free
}

// anyAttribute tells that some block has an attribute of this name.
func anyAttribute(name string) bool {
	for _, v := range vocabularies() {
		if _, ok := v.attributes[name]; ok {
			return true
		}
	}
	return false
}

// knownBlock gives the kind of block that a word names, whatever its capitals.
func knownBlock(word string) (string, bool) {
	if _, ok := vocabularies()[word]; ok && word != "" {
		return word, true
	}
	folded := strings.ReplaceAll(strings.ToLower(word), "-", "_")
	_, ok := vocabularies()[folded]
	return folded, ok && folded != ""
}

// WordsOf gives the words that an attribute of a block can be, nil where any can
// stand.
func WordsOf(block, attribute string) []string {
	for _, b := range theDialect().descriptions() {
		if b.name != block {
			continue
		}
		for _, a := range b.attributes {
			if a.name == attribute {
				return slices.Clone(a.words)
			}
		}
	}
	return nil
}

// OnDataSheet tells that an attribute of a block is one that a data sheet says
// rather than the design: one that a model of such a part may say.
func OnDataSheet(block, attribute string) bool {
	switch block {
	case "channel", "output", "input":
		return true // they are part of the model of a unit
	case KindMusic, KindMessage, KindTelephone:
		block = KindMicrophone // their data are of the same kind
	}
	model := strings.TrimSuffix(block, "_model") + "_model"
	return vocabularies()[model].says(attribute)
}
