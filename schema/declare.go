package schema

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// block declares one kind of block, once: reading it, checking its names,
// suggesting near ones and the language reference all come from here.
type block[T any] struct {
	name       string
	doc        string
	label      label
	attributes []attribute[T]
	children   []child[T]
	// notModelled are things people look for that the dialect refuses, with
	// the reason.
	notModelled map[string]string

	index  map[string]int
	needed []int // the attributes that are required
}

// label says what stands in quotes after the name of a block.
type label int

const (
	labelNone     label = iota
	labelName           // a name of the part
	labelOptional       // a name that may be left out
	labelCheck          // the name of a check
)

func (l label) describe() string {
	switch l {
	case labelName:
		return "a name"
	case labelOptional:
		return "a name, if any,"
	case labelCheck:
		return "the name of a check"
	default:
		return "nothing"
	}
}

// attribute declares one attribute of a block that decodes into T.
type attribute[T any] struct {
	name     string
	doc      string
	takes    string   // what it takes, as it reads after "Here stands …"
	words    []string // the words it can be, where only some are permitted
	example  string   // as it would be written
	quantity string   // the dimension of its figures, where it has any
	required bool
	read     func(d *decoder, to *T, expr hclsyntax.Expression)
	// inherit fills the attribute of `to` from `from` where it is not set. It
	// tells the two places where both are set to something different.
	inherit func(to, from *T) (part, other source.Span, differs bool)
	set     func(*T) bool
}

// child declares that blocks of another kind may stand inside.
type child[T any] struct {
	name string
	doc  string
	read func(d *decoder, to *T, b *hclsyntax.Block)
	// describe gives the reference of the block; it is a function because
	// branches hold branches.
	describe func() blockDescription
}

// seal builds the index of a declaration.
func (b *block[T]) seal() *block[T] {
	b.index = make(map[string]int, len(b.attributes))
	for i, a := range b.attributes {
		if _, twice := b.index[a.name]; twice {
			panic("schema: block " + b.name + " declares " + a.name + " twice")
		}
		b.index[a.name] = i
		if a.required {
			b.needed = append(b.needed, i)
		}
	}
	return b
}

// option refines an attribute.
type option func(*attributeOptions)

type attributeOptions struct {
	required bool
	example  string
	fewest   int // of a list: at least so many items
	most     int // and at most so many; 0 for any number
	later    bool
}

func required(o *attributeOptions) { o.required = true }

func example(text string) option { return func(o *attributeOptions) { o.example = text } }

// later says of a name that it is not for the dialect to find out whether there is
// such a part.
func later(o *attributeOptions) { o.later = true }

// between demands a list of so many items.
func between(fewest, most int) option {
	return func(o *attributeOptions) { o.fewest, o.most = fewest, most }
}

func gather(options []option) attributeOptions {
	var o attributeOptions
	for _, f := range options {
		f(&o)
	}
	return o
}

// written is what Value, List, Spectrum and Choice have in common.
type written interface{ Set() bool }

// inheriting makes the inherit and set functions of an attribute that lives at
// the place `at` gives.
func inheriting[T any, V written](a *attribute[T], at func(*T) *V, place func(V) source.Span, equal func(a, b V) bool) {
	a.set = func(t *T) bool { return (*at(t)).Set() }
	a.inherit = func(to, from *T) (source.Span, source.Span, bool) {
		mine, theirs := at(to), at(from)
		switch {
		case !(*theirs).Set():
			return source.Span{}, source.Span{}, false
		case !(*mine).Set():
			*mine = *theirs
			return source.Span{}, source.Span{}, false
		}
		return place(*mine), place(*theirs), !equal(*mine, *theirs)
	}
}

func ofValue[T any, V any](a *attribute[T], at func(*T) *Value[V]) attribute[T] {
	inheriting(a, at, func(v Value[V]) source.Span { return v.Span }, func(x, y Value[V]) bool { return x.Text == y.Text })
	return *a
}

func ofList[T any, V any](a *attribute[T], at func(*T) *List[V]) attribute[T] {
	inheriting(a, at, func(l List[V]) source.Span { return l.Span }, func(x, y List[V]) bool {
		return slices.EqualFunc(x.Items, y.Items, func(p, q Value[V]) bool { return p.Text == q.Text })
	})
	return *a
}

// amount declares a figure with a unit.
func amount[T, Q any](name string, dimension quantity.Dimension[Q], at func(*T) *Value[Q], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes := fmt.Sprintf("%s, such as %q", wording.WithArticle(dimension.Name), orText(o.example, dimension.Example))
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: takes, example: strconv.Quote(orText(o.example, dimension.Example)), quantity: dimension.Name}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := readAmount(d, expr, dimension, takes); ok {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// amounts declares a list of figures with units.
func amounts[T, Q any](name string, dimension quantity.Dimension[Q], at func(*T) *List[Q], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes, each := fmt.Sprintf("a list of figures, such as [%q, %q]", dimension.Example, dimension.Example), aFigure(dimension)
	if o.example != "" {
		takes = "a list of figures, such as " + o.example
	}
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: takes, example: orText(o.example, fmt.Sprintf("[%q, %q]", dimension.Example, dimension.Example)), quantity: dimension.Name}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if l, ok := readAmounts(d, expr, dimension, takes, each, o.fewest, o.most); ok {
			*at(to) = l
		}
	}
	return ofList(a, at)
}

// readAmount reads a figure with a unit.
func readAmount[Q any](d *decoder, expr hclsyntax.Expression, dimension quantity.Dimension[Q], takes string) (Value[Q], bool) {
	v := Value[Q]{Span: d.span(expr.Range())}
	plain, isPlain := plainText(expr)
	if isPlain {
		v.Text = plain
	} else if filled, ok := d.filledText(expr); ok {
		v.Text = filled
	} else {
		c, ok := d.evaluate(expr, takes)
		if !ok {
			return v, false
		}
		v.Text = plainly(c)
		if kind := kindOf(c); kind != "a text" {
			near := ""
			if kind == "a bare number" {
				near = withUnit(tidy(v.Span.Text()), dimension.Example)
				kind += " without a unit"
			}
			d.refuse(v.Span, fmt.Sprintf("%s is %s.", quoteSource(v.Span), kind), fmt.Sprintf("Here stands %s, in quotes.", takes), near)
			return v, false
		}
	}
	q, err := dimension.Parse(v.Text)
	if err != nil {
		d.refuseAmount(v.Span, err, takes)
		return v, false
	}
	v.V = q
	return v, true
}

// refuseAmount words what the quantity door refused, marking the culprit inside
// the text where the text stands as it was written.
func (d *decoder) refuseAmount(span source.Span, err error, takes string) {
	var q *quantity.Error
	if !errors.As(err, &q) {
		d.refuse(span, wording.Capital(err.Error())+".", fmt.Sprintf("Here stands %s.", takes), "")
		return
	}
	if written := span.Text(); q.Length > 0 && len(written) >= q.Offset+q.Length+2 && written[0] == '"' && !strings.ContainsAny(written, `\$`) {
		span = span.Part(1+q.Offset, q.Length)
	}
	expected, near := "Expected "+q.Expected, ""
	if form := rightForm().FindStringSubmatch(q.Hint); form != nil {
		near = form[1]
	} else if q.Hint != "" {
		expected += "; " + q.Hint
	}
	d.refuse(span, "Found "+q.Found+".", expected+".", near)
}

// rightForm tells a hint that is nothing but a text to write.
var rightForm = pattern(`^(?:write|did you mean) ("[^"]*")\??$`)

// aFigure says what a figure of the dimension is.
func aFigure[Q any](dimension quantity.Dimension[Q]) string {
	return fmt.Sprintf("%s, such as %q", wording.WithArticle(dimension.Name), dimension.Example)
}

// readAmounts reads a list of figures; count is how many, 0 for any.
func readAmounts[Q any](d *decoder, expr hclsyntax.Expression, dimension quantity.Dimension[Q], takes, each string, fewest, most int) (List[Q], bool) {
	items, span, ok := d.items(expr, takes)
	l := List[Q]{Span: span}
	if !ok {
		return l, false
	}
	if most > 0 && (len(items) < fewest || len(items) > most) {
		wanted := strconv.Itoa(most)
		if fewest < most {
			wanted = fmt.Sprintf("%d to %d", fewest, most)
		}
		d.refuse(span, fmt.Sprintf("The number of values in this list is %d.", len(items)), fmt.Sprintf("Here stand %s: %s.", wanted, takes), "")
		return l, false
	}
	l.Items = make([]Value[Q], 0, len(items))
	for _, item := range items {
		v, good := readAmount(d, item, dimension, each)
		ok = ok && good
		l.Items = append(l.Items, v)
	}
	return l, ok
}

// text declares a free text.
func text[T any](name string, at func(*T) *Value[string], doc string, options ...option) attribute[T] {
	o := gather(options)
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: "a text", example: strconv.Quote(orText(o.example, "…"))}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := d.text(expr, "a text"); ok {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// fileName declares the name of a file. It is looked for before given values are
// worked out, so it holds no template.
func fileName[T any](attr string, at func(*T) *Value[string], doc string, options ...option) attribute[T] {
	o := gather(options)
	const takes = "the name of a file"
	a := &attribute[T]{name: attr, doc: doc, required: o.required, takes: takes, example: strconv.Quote(o.example)}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		v, ok := d.text(expr, takes)
		if _, plain := plainText(expr); ok && !plain {
			d.refuse(v.Span, "The name of this file is made with a template.", "Files are looked for before given values are worked out: write the name out.", quoted(v.Text))
			return
		}
		if ok && d.fitName(v) {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// name declares the name of another part. A kind that is not refNone is looked
// up once all files are read.
func name[T any](attr string, kind refKind, at func(*T) *Value[string], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes := "the name of " + kind.describe()
	if kind == refCable {
		takes = "a cable: its size, such as \"2 x 1.5 mm2\" or \"16/2\", or the name of its model"
	}
	a := &attribute[T]{name: attr, doc: doc, required: o.required, takes: takes, example: strconv.Quote(orText(o.example, "…"))}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := d.text(expr, takes); ok && d.fitName(v) {
			*at(to) = v
			if !o.later {
				d.refer(kind, v)
			}
		}
	}
	return ofValue(a, at)
}

// names declares a list of names of other parts. A single name may stand
// without brackets.
func names[T any](attr string, kind refKind, at func(*T) *List[string], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes := "a list of names of " + kind.describePlural()
	a := &attribute[T]{name: attr, doc: doc, required: o.required, takes: takes, example: orText(o.example, "[\"…\", \"…\"]")}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if l, ok := readTexts(d, expr, takes, nil); ok {
			*at(to) = l
			for _, v := range l.Items {
				d.refer(kind, v)
			}
		}
	}
	return ofList(a, at)
}

// choice declares "all" or a list of names.
func choice[T any](attr string, kind refKind, at func(*T) *Choice, doc string) attribute[T] {
	takes := "\"all\" or a list of names of " + kind.describePlural()
	a := &attribute[T]{name: attr, doc: doc, takes: takes, example: "\"all\""}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if t, plain := plainText(expr); plain && t == "all" {
			*at(to) = Choice{All: true, Span: d.span(expr.Range())}
			return
		} else if plain && strings.EqualFold(t, "all") {
			d.permitted(Value[string]{Text: t, Span: d.span(expr.Range())}, []string{"all"})
			return
		}
		if l, ok := readTexts(d, expr, takes, nil); ok {
			*at(to) = Choice{Names: l.Items, Span: l.Span}
			for _, v := range l.Items {
				d.refer(kind, v)
			}
		}
	}
	inheriting(a, at, func(c Choice) source.Span { return c.Span }, func(x, y Choice) bool {
		return x.All == y.All && slices.EqualFunc(x.Names, y.Names, func(p, q Value[string]) bool { return p.Text == q.Text })
	})
	return *a
}

// readTexts reads a list of texts, or one text that stands for a list of one.
func readTexts(d *decoder, expr hclsyntax.Expression, takes string, words []string) (List[string], bool) {
	exprs := []hclsyntax.Expression{expr}
	span := d.span(expr.Range())
	if list, ok := expr.(*hclsyntax.TupleConsExpr); ok {
		exprs = list.Exprs
	}
	l, all := List[string]{Span: span, Items: make([]Value[string], 0, len(exprs))}, true
	for _, e := range exprs {
		v, ok := d.text(e, takes)
		ok = ok && d.fitName(v) && d.permitted(v, words)
		all = all && ok
		l.Items = append(l.Items, v)
	}
	return l, all
}

// word declares a text that can only be one of some.
func word[T any](name string, permitted []string, at func(*T) *Value[string], doc string, options ...option) attribute[T] {
	o := gather(options)
	a := &attribute[T]{name: name, doc: doc, required: o.required, words: permitted, takes: "one of " + quotedList(permitted), example: strconv.Quote(orText(o.example, permitted[0]))}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := d.text(expr, a.takes); ok && d.permitted(v, permitted) {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// words declares a list of texts out of some.
func words[T any](name string, permitted []string, at func(*T) *List[string], doc string) attribute[T] {
	a := &attribute[T]{name: name, doc: doc, words: permitted, takes: "a list out of " + quotedList(permitted), example: "[" + strconv.Quote(permitted[0]) + "]"}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if l, ok := readTexts(d, expr, a.takes, permitted); ok {
			*at(to) = l
		}
	}
	return ofList(a, at)
}

func (d *decoder) permitted(v Value[string], words []string) bool {
	if words == nil || slices.Contains(words, v.Text) {
		return true
	}
	if d.full() {
		return false
	}
	near := nearest(v.Text, words)
	if near != "" {
		near = strconv.Quote(near)
	}
	d.refuse(v.Span, fmt.Sprintf("%q is not one of the words that can stand here.", v.Text), "Here stands one of "+quotedList(words)+".", near)
	return false
}

// whole declares a whole number.
func whole[T any](name string, low, high int, at func(*T) *Value[int], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes := fmt.Sprintf("a whole number from %d to %d", low, high)
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: takes, example: orText(o.example, strconv.Itoa(max(low, 2)))}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := d.whole(expr, takes, low, high); ok {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// number declares a plain number without a dimension.
func number[T any](name string, low, high float64, at func(*T) *Value[float64], doc string, options ...option) attribute[T] {
	o := gather(options)
	takes := fmt.Sprintf("a number from %s to %s", quantity.Significant(low, 6), quantity.Significant(high, 6))
	a := &attribute[T]{name: name, doc: doc, required: o.required, takes: takes, example: orText(o.example, quantity.Significant(high, 6))}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		v, ok := d.number(expr, takes)
		if ok && !(v.V >= low && v.V <= high) {
			d.refuse(v.Span, fmt.Sprintf("%s is out of range.", v.Text), fmt.Sprintf("Here stands %s.", takes), "")
			ok = false
		}
		if ok {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// flag declares true or false.
func flag[T any](name string, at func(*T) *Value[bool], doc string) attribute[T] {
	a := &attribute[T]{name: name, doc: doc, takes: "true or false", example: "true"}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if v, ok := d.flag(expr); ok {
			*at(to) = v
		}
	}
	return ofValue(a, at)
}

// spectrum declares a figure that is single or given per frequency.
func spectrum[T, Q any](name string, dimension quantity.Dimension[Q], at func(*T) *Spectrum[Q], doc string, options ...option) attribute[T] {
	one := orText(gather(options).example, dimension.Example)
	banded := fmt.Sprintf("{ \"125 Hz\" = %q, \"1 kHz\" = %q }", one, one)
	takes := fmt.Sprintf("%s, such as %q, or one per frequency: %s", wording.WithArticle(dimension.Name), one, banded)
	a := &attribute[T]{name: name, doc: doc, takes: takes, example: strconv.Quote(one), quantity: dimension.Name}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if s, ok := readSpectrum(d, expr, takes, func(e hclsyntax.Expression) (Value[Q], bool) { return readAmount(d, e, dimension, takes) }); ok {
			*at(to) = s
		}
	}
	return ofSpectrum(a, at)
}

// fractions declares numbers per frequency, such as absorption coefficients.
func fractions[T any](name string, low, high float64, at func(*T) *Spectrum[float64], doc string, options ...option) attribute[T] {
	one := orText(gather(options).example, "0.3")
	takes := fmt.Sprintf("a number from %s to %s, or one per frequency: { \"500 Hz\" = %s, \"1 kHz\" = %s }", quantity.Significant(low, 6), quantity.Significant(high, 6), one, one)
	a := &attribute[T]{name: name, doc: doc, takes: takes, example: one}
	a.read = func(d *decoder, to *T, expr hclsyntax.Expression) {
		if s, ok := readSpectrum(d, expr, takes, func(e hclsyntax.Expression) (Value[float64], bool) {
			v, good := d.number(e, takes)
			if good && !(v.V >= low && v.V <= high) {
				d.refuse(v.Span, fmt.Sprintf("%s is out of range.", v.Text), fmt.Sprintf("Here stands %s.", takes), "")
				good = false
			}
			return v, good
		}); ok {
			*at(to) = s
		}
	}
	return ofSpectrum(a, at)
}

func ofSpectrum[T, Q any](a *attribute[T], at func(*T) *Spectrum[Q]) attribute[T] {
	inheriting(a, at, func(s Spectrum[Q]) source.Span { return s.Span }, func(x, y Spectrum[Q]) bool {
		return x.Single.Text == y.Single.Text && slices.EqualFunc(x.Bands, y.Bands, func(p, q Band[Q]) bool {
			return p.Frequency.Text == q.Frequency.Text && p.Value.Text == q.Value.Text
		})
	})
	return *a
}

func readSpectrum[Q any](d *decoder, expr hclsyntax.Expression, takes string, read func(hclsyntax.Expression) (Value[Q], bool)) (Spectrum[Q], bool) {
	s := Spectrum[Q]{Span: d.span(expr.Range())}
	object, ok := expr.(*hclsyntax.ObjectConsExpr)
	if !ok {
		s.Single, ok = read(expr)
		return s, ok
	}
	all := len(object.Items) > 0
	if !all {
		d.refuse(s.Span, "These braces hold nothing.", fmt.Sprintf("Here stands %s.", takes), "")
	}
	for _, item := range object.Items {
		key := item.KeyExpr
		if k, wrapped := key.(*hclsyntax.ObjectConsKeyExpr); wrapped {
			key = k.Wrapped
		}
		f, goodF := readAmount(d, key, quantity.Frequencies, "a frequency, such as \"1 kHz\"")
		v, goodV := read(item.ValueExpr)
		all = all && goodF && goodV
		s.Bands = append(s.Bands, Band[Q]{Frequency: f, Value: v})
	}
	slices.SortStableFunc(s.Bands, func(a, b Band[Q]) int {
		switch {
		case a.Frequency.V < b.Frequency.V:
			return -1
		case a.Frequency.V > b.Frequency.V:
			return 1
		}
		return 0
	})
	for i := 1; i < len(s.Bands) && all; i++ {
		if s.Bands[i].Frequency.V == s.Bands[i-1].Frequency.V { // both parsed from text: equal means written twice
			d.refuse(s.Bands[i].Frequency.Span, fmt.Sprintf("%s stands here twice.", s.Bands[i].Frequency.Text), "Each frequency has one figure.", "")
			all = false
		}
	}
	return s, all
}

// nested declares that blocks of the kind that declared gives may stand inside.
func nested[T, C any](declared func() *block[C], add func(*T, *C)) child[T] {
	return child[T]{
		name: declared().name,
		doc:  declared().doc,
		read: func(d *decoder, to *T, b *hclsyntax.Block) {
			add(to, declared().decode(d, b))
		},
		describe: func() blockDescription { return declared().description() },
	}
}

// lift makes the attributes of a piece of T out of those declared for the
// piece, so that what a model may say and what a part may say is declared once.
func lift[T, C any](attributes []attribute[C], piece func(*T) *C) []attribute[T] {
	lifted := make([]attribute[T], len(attributes))
	for i, a := range attributes {
		lifted[i] = attribute[T]{
			name: a.name, doc: a.doc, takes: a.takes, words: a.words, example: a.example, quantity: a.quantity, required: a.required,
			read:    func(d *decoder, to *T, expr hclsyntax.Expression) { a.read(d, piece(to), expr) },
			inherit: func(to, from *T) (source.Span, source.Span, bool) { return a.inherit(piece(to), piece(from)) },
			set:     func(t *T) bool { return a.set(piece(t)) },
		}
	}
	return lifted
}

// decode reads one block of the declared kind. A block with problems is still
// given back, as far as it could be read, so that names in it are known.
func (b *block[T]) decode(d *decoder, hb *hclsyntax.Block) *T {
	t := new(T)
	part := any(t).(interface{ part() *Part }).part() //nolint:forcetypeassert // a block that declares a T without a Part is a bug: say so at once
	before := len(d.problems)
	b.decodeHeader(d, part, hb)
	b.decodeBody(d, t, hb.Body, part.Header)
	if len(d.problems) > before || d.full() {
		d.flawed = append(d.flawed, part.Header)
	}
	return t
}

func (b *block[T]) decodeHeader(d *decoder, part *Part, hb *hclsyntax.Block) {
	part.Header = d.span(hcl.RangeBetween(hb.TypeRange, hb.DefRange()))
	part.Body = d.span(hcl.RangeBetween(hb.OpenBraceRange, hb.CloseBraceRange))
	if len(hb.Labels) == 0 {
		if b.label == labelName || b.label == labelCheck {
			d.refuse(part.Header, fmt.Sprintf("This %s has no name.", b.name), "After it stands "+b.label.describe()+" in quotes.", b.name+" \"…\" {")
		}
		return
	}
	if b.label == labelNone {
		d.refuse(d.span(hb.LabelRanges[0]), fmt.Sprintf("A name, %q, stands after %s.", hb.Labels[0], b.name), fmt.Sprintf("After %s stands its brace at once.", b.name), b.name+" {")
		return
	}
	part.Name, part.NameSpan = cty.NormalizeString(hb.Labels[0]), d.span(hb.LabelRanges[0])
	last := hb.LabelRanges[len(hb.LabelRanges)-1]
	switch all := d.source(hcl.RangeBetween(hb.LabelRanges[0], last)); {
	case strings.Count(all, `"`) < 2*len(hb.Labels): // words are labels to HCL
		part.Name = strings.Join(hb.Labels, " ")
		part.NameSpan = d.span(hcl.RangeBetween(hb.LabelRanges[0], last))
		d.refuse(part.NameSpan, fmt.Sprintf("The name %s stands without quotes.", part.Name), "The name of a block stands between two straight quotes.", quoted(part.Name))
	case len(hb.Labels) > 1:
		d.refuse(d.span(hb.LabelRanges[1]), fmt.Sprintf("A second name, %q, stands after %s.", hb.Labels[1], b.name), "One name in quotes stands before the brace.", "")
	default:
		d.fitName(Value[string]{V: part.Name, Text: part.Name, Span: part.NameSpan})
	}
	part.Name = strings.TrimSpace(part.Name) // refused, but other blocks may mean it
}

func (b *block[T]) decodeBody(d *decoder, t *T, body *hclsyntax.Body, header source.Span) {
	var meant []string // attributes that were written with another name
	for _, a := range d.inOrder(body.Attributes) {
		i, ok := b.index[a.Name]
		if !ok {
			meant = append(meant, d.unknownAttribute(a.Name, d.span(a.NameRange), b.name, b.attributeNames(), b.childNames(), b.notModelled))
			continue
		}
		if d.spoilt(a.Expr) {
			continue
		}
		b.attributes[i].read(d, t, a.Expr)
	}
	for _, i := range b.needed {
		a := &b.attributes[i]
		if _, ok := body.Attributes[a.name]; !ok && !slices.Contains(meant, a.name) {
			d.refuse(header, fmt.Sprintf("This %s has no %s.", b.name, a.name), "It needs one.", a.name+" = "+a.example)
		}
	}
	for _, inner := range body.Blocks {
		b.decodeChild(d, t, inner)
	}
}

func (b *block[T]) decodeChild(d *decoder, t *T, inner *hclsyntax.Block) {
	if b.readChild(d, t, inner) {
		return
	}
	if meant := d.unknownBlock(inner, b.name, b.childNames(), b.attributeNames(), b.notModelled); meant != nil {
		b.readChild(d, t, meant)
	}
}

func (b *block[T]) readChild(d *decoder, t *T, inner *hclsyntax.Block) bool {
	for i := range b.children {
		if b.children[i].name == inner.Type {
			b.children[i].read(d, t, inner)
			return true
		}
	}
	return false
}

func (b *block[T]) attributeNames() []string {
	all := make([]string, len(b.attributes))
	for i, a := range b.attributes {
		all[i] = a.name
	}
	return all
}

func (b *block[T]) childNames() []string {
	all := make([]string, len(b.children))
	for i, c := range b.children {
		all[i] = c.name
	}
	return all
}

// inherit fills what `to` leaves out from `from` and lists what differs.
func (b *block[T]) inherit(to, from *T, skip ...string) []Override {
	return inherit(b.attributes, to, from, skip...)
}

func inherit[T any](attributes []attribute[T], to, from *T, skip ...string) []Override {
	var overrides []Override
	for i := range attributes {
		a := &attributes[i]
		if slices.Contains(skip, a.name) {
			continue
		}
		if part, other, differs := a.inherit(to, from); differs {
			overrides = append(overrides, Override{Attribute: a.name, Part: part, Model: other})
		}
	}
	return overrides
}

// unknownAttribute says that a block of the kind `in` has no such attribute. It
// gives the one that may be meant.
func (d *decoder) unknownAttribute(name string, span source.Span, in string, attributes, children []string, refused map[string]string) (near string) {
	if d.full() {
		return ""
	}
	if reason, ok := refused[name]; ok {
		d.refuse(span, fmt.Sprintf("%s is not modelled.", name), reason, "")
		return ""
	}
	if slices.Contains(children, name) {
		d.refuse(span, fmt.Sprintf("%s begins a block and takes no value.", name), "Leave out the equals sign.", name+" {")
		return ""
	}
	expected := ""
	if places := d.dialect.blocksWith(name); len(places) > 0 {
		expected = fmt.Sprintf("%s stands in: %s.", name, strings.Join(places, ", "))
	} else if near = nearest(name, attributes); near == "" {
		expected = fmt.Sprintf("%s can say: %s.", wording.Capital(wording.WithArticle(in)), strings.Join(attributes, ", "))
	}
	d.refuse(span, fmt.Sprintf("%s has no %q.", wording.Capital(wording.WithArticle(in)), name), expected, near)
	return near
}

// kinds lists the kinds of block that stand inside others.
func (x *dialect) kinds() []string {
	var all []string
	for _, b := range x.descriptions() {
		if !slices.Contains(x.tops, b.name) {
			all = append(all, b.name)
		}
	}
	return all
}

// exampleOf gives the example of an attribute.
func (x *dialect) exampleOf(block, attribute string) string {
	for _, b := range x.descriptions() {
		for _, a := range b.attributes {
			if b.name == block && a.name == attribute {
				return a.example
			}
		}
	}
	return "…"
}

// blocksWith lists the kinds of block that have an attribute of this name.
func (x *dialect) blocksWith(attribute string) []string {
	var all []string
	for _, b := range x.descriptions() {
		if slices.ContainsFunc(b.attributes, func(a attributeDescription) bool { return a.name == attribute }) {
			all = append(all, b.name)
		}
	}
	return all
}

// unknownBlock says that no such block stands in a block of the kind `in`, or on
// the outermost level where `in` is empty. Where it is clear what was meant, it
// gives the block as that, to be read on.
func (d *decoder) unknownBlock(hb *hclsyntax.Block, in string, children, attributes []string, refused map[string]string) *hclsyntax.Block {
	if d.full() {
		return nil
	}
	span := d.span(hb.TypeRange)
	if reason, ok := refused[hb.Type]; ok {
		d.refuse(span, fmt.Sprintf("%s is not modelled.", hb.Type), reason, "")
		return nil
	}
	if slices.Contains(attributes, hb.Type) {
		d.refuse(span, fmt.Sprintf("%s takes a value and begins no block.", hb.Type), "An equals sign stands between the name and the value.", hb.Type+" = "+d.dialect.exampleOf(in, hb.Type))
		return nil
	}
	if meant := spacedBlock(hb, children); meant != nil {
		d.refuse(d.span(hcl.RangeBetween(hb.TypeRange, hb.LabelRanges[0])), fmt.Sprintf("A space stands inside %s %s.", hb.Type, hb.Labels[0]), "The kind of a block is one word; _ stands for the space.", meant.Type)
		return meant
	}
	places := d.dialect.blocksHolding(hb.Type)
	near := ""
	if len(places) == 0 {
		near = nearest(hb.Type, children)
	}
	found := fmt.Sprintf("A design has no block %q.", hb.Type)
	if in != "" {
		found = fmt.Sprintf("%s holds no block %q.", wording.Capital(wording.WithArticle(in)), hb.Type)
	}
	if near == "" && len(places) == 0 { // one that stands elsewhere may be meant
		if near = nearest(hb.Type, d.dialect.kinds()); near != "" {
			places = d.dialect.blocksHolding(near)
			d.refuse(span, found, fmt.Sprintf("%s stands in: %s.", near, strings.Join(places, ", ")), near)
			return nil
		}
	}
	expected := ""
	switch {
	case near != "":
	case slices.Contains(places, ""):
		expected = fmt.Sprintf("%s stands outside all other blocks: perhaps a } is missing before it.", hb.Type)
	case len(places) > 0:
		expected = fmt.Sprintf("%s stands in: %s.", hb.Type, strings.Join(places, ", "))
	case len(children) == 0:
		expected = fmt.Sprintf("%s holds values only.", wording.Capital(wording.WithArticle(in)))
	default:
		expected = fmt.Sprintf("Here can stand: %s.", strings.Join(children, ", "))
	}
	d.refuse(span, found, expected, near)
	const slip = 2 // letters
	if near == "" || editDistance(fold(hb.Type), near, slip) > slip {
		return nil
	}
	meant := *hb
	meant.Type = near
	return &meant
}

// spacedBlock gives a block whose kind was written with a space, such as mute
// link, as what it was meant to be.
func spacedBlock(hb *hclsyntax.Block, children []string) *hclsyntax.Block {
	if len(hb.Labels) == 0 || hb.LabelRanges[0].End.Byte-hb.LabelRanges[0].Start.Byte != len(hb.Labels[0]) { // in quotes
		return nil
	}
	kind := strings.ToLower(hb.Type + "_" + hb.Labels[0])
	if !slices.Contains(children, kind) {
		return nil
	}
	meant := *hb
	meant.Type, meant.Labels, meant.LabelRanges = kind, hb.Labels[1:], hb.LabelRanges[1:]
	return &meant
}

// blocksHolding lists the kinds of block that a block of this kind may stand
// in; "" is the outermost level.
func (x *dialect) blocksHolding(block string) []string {
	var all []string
	if slices.Contains(x.tops, block) {
		all = append(all, "")
	}
	for _, b := range x.descriptions() {
		if slices.ContainsFunc(b.children, func(c childDescription) bool { return c.name == block }) {
			all = append(all, b.name)
		}
	}
	return all
}

func orText(text, otherwise string) string {
	if text != "" {
		return text
	}
	return otherwise
}

// withUnit gives a number as it would be written with the unit of an example such
// as "6 W", "" when the example is no number and unit.
func withUnit(number, example string) string {
	parts := strings.Fields(example)
	switch {
	case len(parts) != 2:
		return ""
	case strings.Contains(number, "given."):
		return quoted("${" + number + "} " + parts[1])
	}
	return quoted(number + " " + parts[1])
}

func quotedList(all []string) string {
	quoted := make([]string, len(all))
	for i, w := range all {
		quoted[i] = strconv.Quote(w)
	}
	return strings.Join(quoted, ", ")
}
