package drawing

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math/rand/v2"
	"path/filepath"
	"strings"
	"testing"

	"loudlint/linter"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/schematest"
	"loudlint/schema/source"
)

// judge reads and judges a design's text.
func judge(t testing.TB, text string) *linter.Judged {
	t.Helper()
	design, problems := schema.Read("made.pa.hcl", []*source.File{source.NewFile("made.pa.hcl", []byte(text))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatalf("the design is not understood: %v\n%s", problems[0], text)
	}
	return linter.Judge(design, linter.Options{Checks: rules.All()})
}

// examples are the designs to be read, by name.
func examples(t *testing.T) map[string]*linter.Judged {
	t.Helper()
	paths, err := filepath.Glob("../../examples/*" + schema.Ending)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]*linter.Judged{}
	for _, path := range paths {
		if strings.Contains(path, "catalogue") {
			continue
		}
		all[strings.TrimSuffix(filepath.Base(path), schema.Ending)] = linter.Check([]string{path}, linter.Options{Checks: rules.All()}).Designs[0]
	}
	if len(all) < 5 {
		t.Fatalf("there are only %d examples", len(all))
	}
	return all
}

// pictures draws all there is of a design.
func pictures(j *linter.Judged) map[string]*Picture {
	all := map[string]*Picture{"system": System(j), "overview": Overview(j), "loads": Loads(j), "levels": Levels(j), "impedance": Impedance(j)}
	for _, l := range j.System.Lines {
		all["line "+l.Part.Name] = Line(j, l)
	}
	return all
}

// clashes lists what lies on a label of the picture, and what leaves it.
func clashes(p *Picture) []string {
	var all []string
	paper := box{0, 0, p.Width, p.Height}
	for i, a := range p.things {
		if a.box.left < paper.left-0.5 || a.box.top < paper.top-0.5 || a.box.right > paper.right+0.5 || a.box.bottom > paper.bottom+0.5 {
			all = append(all, fmt.Sprintf("%q leaves the paper: %v", a.text, a.box))
		}
		for _, b := range p.things[:i] {
			if (a.kind == label || b.kind == label) && a.box.overlaps(b.box) {
				all = append(all, fmt.Sprintf("%q at %.1f lies on %q at %.1f", a.text, a.box, b.text, b.box))
			}
		}
	}
	return all
}

func TestNoLabelLiesOnAnother(t *testing.T) {
	t.Parallel()
	for name, j := range examples(t) {
		for what, p := range pictures(j) {
			for _, clash := range clashes(p) {
				t.Errorf("%s of %s: %s", what, name, clash)
			}
		}
	}
}

func TestNoLabelLiesOnAnotherInRandomDesigns(t *testing.T) {
	t.Parallel()
	for seed := range uint64(40) {
		text := randomDesign(rand.New(rand.NewPCG(seed, 1)))
		for what, p := range pictures(judge(t, text)) {
			if found := clashes(p); len(found) > 0 {
				t.Fatalf("%s of random design %d: %d clashes, such as %s\n%s", what, seed, len(found), found[0], text)
			}
		}
	}
}

// randomDesign makes a design with all that a diagram draws, in any order and
// with names of any length.
func randomDesign(r *rand.Rand) string {
	var b strings.Builder
	names := []string{"A", "Hall", "Long name of a part that says where it is and what it is for, and more", "Grüße", "大ホール", "W", "iiiiii", "<b>&amp;", "MMMMMMMMMMMMMMMMMMMMMM"}
	name := func(n int) string { return fmt.Sprintf("%s %d", names[r.IntN(len(names))], n) }
	n := 0
	next := func() string { n++; return name(n) }
	var units, mixers []string
	for range r.IntN(3) {
		u := next()
		fmt.Fprintf(&b, "mixer %q {\n", u)
		for _, to := range mixers {
			fmt.Fprintf(&b, "  send \"To %s\" {\n into = %q\n input = \"From %d\"\n }\n", to, to, n)
		}
		b.WriteString("}\n")
		mixers = append(mixers, u)
	}
	for range 1 + r.IntN(3) {
		u := next()
		fmt.Fprintf(&b, "amplifier %q {\n  rated_power = \"%d W\"\n}\n", u, 60+60*r.IntN(8))
		units = append(units, u)
	}
	into := append(append([]string{}, mixers...), units...)
	for range r.IntN(9) {
		kind := []string{"microphone", "music", "message", "telephone"}[r.IntN(4)]
		fmt.Fprintf(&b, "%s %q {\n", kind, next())
		if r.IntN(5) > 0 {
			fmt.Fprintf(&b, "  into = %q\n  input = \"In %d\"\n", into[r.IntN(len(into))], r.IntN(5))
		}
		if r.IntN(3) == 0 {
			fmt.Fprintf(&b, "  also {\n    into = %q\n    input = \"In %d\"\n  }\n", into[r.IntN(len(into))], r.IntN(5))
		}
		b.WriteString("}\n")
	}
	for range r.IntN(6) {
		fmt.Fprintf(&b, "line %q {\n", next())
		if r.IntN(6) > 0 {
			fmt.Fprintf(&b, "  amplifier = %q\n  output = \"100 V\"\n", units[r.IntN(len(units))])
		}
		if r.IntN(4) > 0 {
			b.WriteString("  cable = \"2 x 1.5 mm2\"\n  home_run = \"30 m\"\n")
			if r.IntN(3) == 0 {
				b.WriteString("  ring_leg = \"300 m\"\n")
			}
		}
		randomDevices(&b, r, next, 3)
		b.WriteString("}\n")
	}
	return b.String()
}

func randomDevices(b *strings.Builder, r *rand.Rand, next func() string, deep int) {
	for range 1 + r.IntN(5+3*deep) {
		kind := r.IntN(10)
		if deep == 0 {
			kind = min(kind, 6)
		}
		quantity := ""
		if r.IntN(3) == 0 {
			quantity = fmt.Sprintf("  quantity = %d\n  spacing = \"%d m\"\n", 2+r.IntN(3), 1+r.IntN(9))
		}
		leg := ""
		if r.IntN(3) > 0 {
			leg = fmt.Sprintf("  leg = \"%d m\"\n", 1+r.IntN(30))
		}
		switch kind {
		case 6:
			fmt.Fprintf(b, "existing %q {\n%s}\n", next(), leg)
		case 7, 8:
			fmt.Fprintf(b, "attenuator %q {\n%s%s  rating = \"30 W\"\n", next(), leg, quantity)
			randomDevices(b, r, next, deep-1)
			b.WriteString("}\n")
		case 9:
			fmt.Fprintf(b, "branch %q {\n%s%s", next(), leg, quantity)
			randomDevices(b, r, next, deep-1)
			b.WriteString("}\n")
		default:
			fmt.Fprintf(b, "loudspeaker %q {\n%s%s  tap = \"%d W\"\n}\n", next(), leg, quantity, 1+r.IntN(10))
		}
	}
}

// TestEqualNeighboursAreFolded shows that a design of 300 loudspeakers, each a
// block of its own, stays readable.
func TestEqualNeighboursAreFolded(t *testing.T) {
	t.Parallel()
	var b strings.Builder
	b.WriteString("amplifier \"Rack\" { rated_power = \"1000 W\" }\n")
	for line := range 6 {
		fmt.Fprintf(&b, "line \"L %d\" {\n amplifier = \"Rack\"\n output = \"100 V\"\n cable = \"2 x 2.5 mm2\"\n home_run = \"20 m\"\n", line)
		for i := range 50 {
			fmt.Fprintf(&b, " loudspeaker \"H %d\" {\n  tap = \"3 W\"\n  leg = \"5 m\"\n }\n", i+1)
		}
		b.WriteString("}\n")
	}
	p := System(judge(t, b.String()))
	if got := bytes.Count(p.body, []byte("H 1 … H 50")); got != 6 {
		t.Errorf("%d of 6 runs are drawn as one", got)
	}
	if !bytes.Contains(p.body, []byte("50 × 3 W")) {
		t.Error("what a folded run comes to is not written")
	}
	if p.Height > 1200 {
		t.Errorf("300 equal loudspeakers take %.0f pixels in height", p.Height)
	}
	made := System(judge(t, schematest.DesignText(300)))
	if found := clashes(made); len(found) > 0 {
		t.Errorf("of 300 loudspeakers of two models: %s", found[0])
	}
}

// TestFindingsStayAtTheirPart shows that a loudspeaker with a finding is not
// folded away among those without.
func TestFindingsStayAtTheirPart(t *testing.T) {
	t.Parallel()
	j := judge(t, `
amplifier "Rack" { rated_power = "240 W" }
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" { tap = "6 W" }
  loudspeaker "B" { tap = "6 W" }
  loudspeaker "C" {
    tap       = "6 W"
    taps_100V = ["10 W", "5 W"]
  }
  loudspeaker "D" { tap = "6 W" }
}`)
	body := string(System(j).body)
	for _, want := range []string{">A … B<", ">C<", ">D<"} {
		if !strings.Contains(body, want) {
			t.Errorf("%s is not drawn by itself", want)
		}
	}
	if len(Findings(j)) == 0 {
		t.Fatal("there is no finding to be marked")
	}
	for i, o := range Findings(j) {
		if !strings.Contains(body, `class="d-on"`) || !strings.Contains(body, o.Check.ID) {
			t.Errorf("finding %d is not marked", i+1)
		}
	}
}

// TestNamesAreNoMarkup gives names that would be markup, or move what stands
// beside them, and demands well-formed XML.
func TestNamesAreNoMarkup(t *testing.T) {
	t.Parallel()
	for _, name := range hostile {
		text := fmt.Sprintf("system %[1]q {}\namplifier %[1]q { rated_power = \"60 W\" }\nmicrophone %[1]q { into = %[1]q }\nline %[1]q {\n amplifier = %[1]q\n output = \"100 V\"\n loudspeaker %[1]q { tap = \"6 W\" }\n}\n", name)
		file := source.NewFile("made.pa.hcl", []byte(text))
		if _, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{}); len(problems) > 0 {
			continue // such a name is no name; FuzzNames draws it all the same
		}
		for what, p := range pictures(judge(t, text)) {
			wellFormed(t, what, p)
			if found := clashes(p); len(found) > 0 {
				t.Errorf("%s with the name %q: %s", what, name, found[0])
			}
		}
	}
}

var hostile = []string{
	`<script>alert(1)</script>`, `</svg><img src=x onerror=alert(1)>`, `"><style>*{display:none}</style>`, `]]>`, `&amp;&lt;&#0;`,
	"\u202eright to left", "a\u0000b", "\u2028", "\ufffe", "e\u0301\u0301\u0301", "👩‍👩‍👧", strings.Repeat("long ", 60), "a\tb\nc",
}

// wellFormed demands XML that nothing but our own elements is in.
func wellFormed(t *testing.T, what string, p *Picture) {
	t.Helper()
	var out bytes.Buffer
	if err := p.Write(&out); err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{"svg": true, "title": true, "desc": true, "style": true, "text": true, "path": true, "rect": true, "circle": true}
	d := xml.NewDecoder(&out)
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%s is not well formed: %v", what, err)
		}
		if start, is := token.(xml.StartElement); is && !known[start.Name.Local] {
			t.Fatalf("%s holds an element %s", what, start.Name.Local)
		}
	}
}

func FuzzNames(f *testing.F) {
	for _, name := range hostile {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		var s sheet
		s.text(strong, leftward, 10, 10, strong.cut(textout.Printable(name), 100), name)
		wellFormed(t, "a label", s.picture(name, name, 200, 20))
	})
}

func TestSamePictureEveryTime(t *testing.T) {
	t.Parallel()
	text := randomDesign(rand.New(rand.NewPCG(7, 7)))
	var first, second bytes.Buffer
	if err := System(judge(t, text)).Write(&first); err != nil {
		t.Fatal(err)
	}
	if err := System(judge(t, text)).Write(&second); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("two runs draw the same design differently")
	}
}
