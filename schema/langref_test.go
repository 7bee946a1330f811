package schema

import (
	"slices"
	"strings"
	"testing"
	"unicode"
)

// README.md is what the declarations say.
func TestReference(t *testing.T) {
	t.Parallel()
	golden(t, "README.md", Reference())
}

// Every figure of a design is of a kind that the reference explains.
func TestReferenceExplainsAllQuantities(t *testing.T) {
	t.Parallel()
	var known, used []string
	for _, d := range dimensions() {
		if slices.Contains(known, d.name) {
			t.Errorf("%s is listed twice", d.name)
		}
		known = append(known, d.name)
	}
	for _, b := range theDialect().descriptions() {
		for _, a := range b.attributes {
			if a.quantity != "" {
				used = append(used, a.quantity)
			}
			if a.quantity != "" && !slices.Contains(known, a.quantity) {
				t.Errorf("%s of %s is a %s, which the reference does not explain", a.name, b.name, a.quantity)
			}
		}
	}
	for _, k := range known {
		if !slices.Contains(used, k) {
			t.Errorf("the reference explains %s, which no value is", k)
		}
	}
}

// Each block and each attribute says what it is, in the same manner.
func TestDeclarationsAreWhole(t *testing.T) {
	t.Parallel()
	for _, b := range theDialect().descriptions() {
		if b.doc == "" || !unicode.IsUpper([]rune(b.doc)[0]) || !strings.HasSuffix(b.doc, ".") {
			t.Errorf("block %s: %q is no sentence", b.name, b.doc)
		}
		for _, a := range b.attributes {
			switch {
			case a.name == "" || a.doc == "" || a.takes == "" || a.example == "":
				t.Errorf("%s of %s: something is not said", a.name, b.name)
			case strings.HasSuffix(a.doc, "."):
				t.Errorf("%s of %s: %q ends like a sentence", a.name, b.name, a.doc)
			case unicode.IsUpper([]rune(a.doc)[0]) && !strings.HasPrefix(a.doc, "IEC"):
				t.Errorf("%s of %s: %q begins like a sentence", a.name, b.name, a.doc)
			case strings.Contains(a.example, "…") && a.quantity != "":
				t.Errorf("%s of %s: a figure has no example", a.name, b.name)
			}
		}
	}
}
