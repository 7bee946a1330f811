package schema

import (
	"fmt"
	"os"
	"reflect"
	"strings"
	"testing"

	"loudlint/schema/source"
)

// enclosing gives a block of a kind with some lines in it, inside whatever
// blocks it has to stand in.
func enclosing(kind, body string) string {
	for _, outer := range append([]string{""}, theDialect().blocksHolding(kind)...) {
		if outer == "" && !strings.Contains(strings.Join(theDialect().tops, " ")+" ", kind+" ") {
			continue
		}
		head := kind
		if v := vocabularies()[kind]; v.named {
			head += fmt.Sprintf(" %q", "A "+kind)
		}
		inner := head + " {\n" + body + "}\n"
		if outer == "" {
			return inner
		}
		return enclosing(outer, inner)
	}
	return ""
}

// decodeText decodes a text without following names.
func decodeText(t *testing.T, text string) []Problem {
	t.Helper()
	s := parseFile(source.NewFile("x"+Ending, []byte(text)))
	if s.mended != nil {
		t.Fatalf("%s\n%s", text, told(s.problems))
	}
	return readFragment(s, nil, standsOwn).problems
}

// The example of every attribute, which messages and the reference show, is one
// that the attribute takes.
func TestExamplesAreAccepted(t *testing.T) {
	t.Parallel()
	n := 0
	for _, b := range theDialect().descriptions() {
		var required strings.Builder
		for _, a := range b.attributes {
			if a.required {
				fmt.Fprintf(&required, "%s = %s\n", a.name, a.example)
			}
		}
		for _, a := range b.attributes {
			body := required.String()
			if !a.required {
				body += fmt.Sprintf("%s = %s\n", a.name, a.example)
			}
			text := enclosing(b.name, body)
			for _, p := range decodeText(t, text) {
				if !strings.Contains(p.Expected, "It needs one") { // of a block around it
					t.Errorf("%s of %s: %s\n%s", a.name, b.name, p, text)
				}
			}
			n++
		}
	}
	if n < 200 {
		t.Errorf("only %d attributes: the test tests little", n)
	}
}

// Every attribute refuses a value of another kind, once, at its place, and says
// what it takes.
func TestOtherKindsAreRefused(t *testing.T) {
	t.Parallel()
	for _, b := range theDialect().descriptions() {
		for _, a := range b.attributes {
			for _, wrong := range []string{`[["x"], [1]]`, `{ a = 1 }`, `null`, `1 / 0`, `nonsense`, `max(1, 2)`, `"` + strings.Repeat("x", MaxTextBytes+1) + `"`} {
				if a.takes == takesExpression && !strings.ContainsAny(wrong[:1], "[{\"") && wrong != "null" { // what it means is known elsewhere
					continue
				}
				text := enclosing(b.name, fmt.Sprintf("%s = %s\n", a.name, wrong))
				found := false
				for _, p := range decodeText(t, text) {
					if at := int(p.Span.Start); at >= strings.Index(text, a.name+" = ") && at <= strings.LastIndex(text, wrong)+len(wrong) && !strings.Contains(p.Expected, "It needs one") {
						found = true
					}
				}
				if !found {
					t.Errorf("%s of %s takes %.40s", a.name, b.name, wrong)
				}
			}
		}
	}
}

// Every word that an attribute permits is accepted, in a list or alone.
func TestPermittedWordsAreAccepted(t *testing.T) {
	t.Parallel()
	for _, b := range theDialect().descriptions() {
		for _, a := range b.attributes {
			for _, w := range a.words {
				for _, p := range decodeText(t, enclosing(b.name, fmt.Sprintf("%s = %q\n", a.name, w))) {
					if !strings.Contains(p.Expected, "It needs one") {
						t.Errorf("%s of %s = %q: %s", a.name, b.name, w, p)
					}
				}
			}
		}
	}
}

// Every value of a design keeps the place where it was written: the text there is
// the value's, and so are labels.
func TestValuesKeepTheirPlace(t *testing.T) {
	t.Parallel()
	var text strings.Builder
	for _, b := range theDialect().descriptions() {
		for _, a := range b.attributes {
			text.WriteString(enclosing(b.name, fmt.Sprintf("%s = %s\n", a.name, a.example)))
		}
	}
	for _, name := range fixtures(t, "testdata/designs") {
		more, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text.Write(more)
	}
	file := source.NewFile("x"+Ending, []byte(text.String()))
	f := readFragment(parseFile(file), &givenNames{texts: map[string]string{"bay": "5"}, all: []string{"bay"}, context: givenContext(nil)}, standsOwn)
	walk := placeWalk{t: t, file: file}
	walk.value(reflect.ValueOf(f).Elem(), 0)
	if walk.values < 200 || walk.parts < 100 {
		t.Errorf("only %d values and %d labels: the test tests little", walk.values, walk.parts)
	}
}

type placeWalk struct {
	t             *testing.T
	file          *source.File
	values, parts int
}

func (w *placeWalk) value(v reflect.Value, depth int) {
	if depth > 30 || !v.IsValid() {
		return
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if _, isFile := reflect.TypeAssert[*source.File](v); !isFile && !v.IsNil() {
			w.value(v.Elem(), depth+1)
		}
	case reflect.Slice:
		for i := range v.Len() {
			w.value(v.Index(i), depth+1)
		}
	case reflect.Struct:
		w.structure(v, depth)
	default:
	}
}

func (w *placeWalk) structure(v reflect.Value, depth int) {
	if part, ok := reflect.TypeAssert[Part](v); ok && part.Name != "" {
		w.parts++
		if got := part.NameSpan.Text(); got != quoted(part.Name) {
			w.t.Errorf("the label %q is said to stand where %s stands", part.Name, got)
		}
		if got := part.Header.Text(); !strings.HasSuffix(got, quoted(part.Name)) {
			w.t.Errorf("the header of %q is said to be %s", part.Name, got)
		}
		if got := part.Body.Text(); !strings.HasPrefix(got, "{") || !strings.HasSuffix(got, "}") {
			w.t.Errorf("the body of %q is said to be %s", part.Name, got)
		}
	}
	if text, span := v.FieldByName("Text"), v.FieldByName("Span"); text.IsValid() && span.IsValid() && v.NumField() == 3 {
		if place, ok := reflect.TypeAssert[source.Span](span); ok && place.File != nil {
			w.values++
			written := strings.NewReplacer("${given.bay}", "5", `"`, "").Replace(place.Text())
			if written != text.String() || place.File != w.file {
				w.t.Errorf("the value %q is said to stand where %s stands", text, place.Text())
			}
		}
		return
	}
	for i := range v.NumField() {
		if v.Type().Field(i).IsExported() || depth == 0 {
			field := v.Field(i)
			if !field.CanInterface() { // fields of the fragment itself
				field = reflect.NewAt(field.Type(), field.Addr().UnsafePointer()).Elem()
			}
			w.value(field, depth+1)
		}
	}
}
