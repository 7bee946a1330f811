package jsonout_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/jsonout"
	"loudlint/linter/resulttest"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/source"
)

var update = flag.Bool("update", false, "write the golden file anew")

func options() jsonout.Options {
	status := 2
	return jsonout.Options{Name: "loudlint", Version: "0.0.0-test", Gate: check.Warning, ExitStatus: &status}
}

func write(t testing.TB, r *linter.Result, o jsonout.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jsonout.Write(&b, r, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// The golden file is indented for its readers.
func TestGolden(t *testing.T) {
	t.Parallel()
	var got bytes.Buffer
	if err := json.Indent(&got, write(t, resulttest.Sample(t), options()), "", "  "); err != nil {
		t.Fatal(err)
	}
	const path = "testdata/sample.json"
	if *update {
		if err := os.WriteFile(path, got.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got.String()); diff != "" {
		t.Errorf("differs from %s; go test ./linter/jsonout -update writes it anew (-want +got):\n%s", path, diff)
	}
}

// closedSchema is the schema as the tests hold what is written against it: a member
// that it does not describe is a slip here, while readers pass over it.
var closedSchema = sync.OnceValues(func() (*jsonschema.Schema, error) {
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(jsonout.Schema))
	if err != nil {
		return nil, err
	}
	closeObjects(doc)
	c := jsonschema.NewCompiler()
	if err := c.AddResource("result.json", doc); err != nil {
		return nil, err
	}
	return c.Compile("result.json")
})

// closeObjects lets no object that is described hold anything else. What stands in
// "if" only asks.
func closeObjects(doc any) {
	switch v := doc.(type) {
	case []any:
		for _, one := range v {
			closeObjects(one)
		}
	case map[string]any:
		for name, one := range v {
			if name != "if" {
				closeObjects(one)
			}
		}
		if v["type"] == "object" {
			v["additionalProperties"] = false
		}
	}
}

// conforms holds a document against the schema.
func conforms(text []byte) error {
	s, err := closedSchema()
	if err != nil {
		return err
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		return fmt.Errorf("no JSON: %w", err)
	}
	return s.Validate(doc)
}

// examples are those at the top of the repository, judged by the real checks.
var examples = sync.OnceValue(func() *linter.Result {
	all, err := filepath.Glob("../../examples/*" + schema.Ending)
	if err != nil || len(all) == 0 {
		panic(fmt.Sprint("there are no examples: ", err))
	}
	return linter.Check(all, linter.Options{Checks: rules.All()})
})

func TestConformsToSchema(t *testing.T) {
	t.Parallel()
	for _, r := range []*linter.Result{resulttest.Sample(t), {}, examples()} {
		if err := conforms(write(t, r, options())); err != nil {
			t.Error(err)
		}
	}
}

// The schema refuses what it should: each of these is one slip in what is written.
func TestSchemaRefuses(t *testing.T) {
	t.Parallel()
	good := string(write(t, resulttest.Sample(t), options()))
	for name, slip := range map[string][2]string{
		"cut off":             {"\"scope\":", "\"scope\""},
		"another form":        {"loudlint result", "another result"},
		"another version":     {`"version":"1.`, `"version":"2.`},
		"a strange state":     {`"state":"pass"`, `"state":"fine"`},
		"a strange severity":  {`"severity":"error"`, `"severity":"grave"`},
		"a figure in words":   {`"number":250`, `"number":"250"`},
		"an unknown member":   {`"assumed":`, `"presumed":`},
		"no counts":           {`"counts":{"errors"`, `"count":{"errors"`},
		"line 0":              {`"line":6,`, `"line":0,`},
		"a problem untold":    {`"found":`, `"seen":`},
		"judged and not told": {`"state":"not-read"`, `"state":"judged"`},
	} {
		bad := strings.Replace(good, slip[0], slip[1], 1)
		if bad == good {
			t.Errorf("%s: %q is not written", name, slip[0])
		} else if conforms([]byte(bad)) == nil {
			t.Errorf("%s: nothing is wrong with it", name)
		}
	}
}

// Every member that the schema describes is written of the sample, and every one is
// described in words.
func TestSchemaIsWholeAndUsed(t *testing.T) {
	t.Parallel()
	var doc map[string]any
	if err := json.Unmarshal([]byte(jsonout.Schema), &doc); err != nil {
		t.Fatal(err)
	}
	r := resulttest.Sample(t)
	r.Designs[0].Held = &schema.Specification{Named: r.Designs[0].Design.Files}
	r.Designs[1].Before = &linter.Before{From: "the record hall.record", Unknown: true}
	var sample any
	if err := json.Unmarshal(write(t, r, options()), &sample); err != nil {
		t.Fatal(err)
	}
	written := map[string]bool{}
	membersOf(sample, written)
	described := map[string]bool{}
	describedIn(t, doc, described)
	for _, name := range slices.Sorted(maps.Keys(described)) {
		if !written[name] {
			t.Errorf("the schema describes %q, which the sample has nowhere", name)
		}
	}
}

func membersOf(v any, all map[string]bool) {
	switch v := v.(type) {
	case []any:
		for _, one := range v {
			membersOf(one, all)
		}
	case map[string]any:
		for name, one := range v {
			all[name] = true
			membersOf(one, all)
		}
	}
}

func describedIn(t *testing.T, v any, all map[string]bool) {
	t.Helper()
	switch v := v.(type) {
	case []any:
		for _, one := range v {
			describedIn(t, one, all)
		}
	case map[string]any:
		if members, ok := v["properties"].(map[string]any); ok && v["type"] == "object" {
			for name, one := range members {
				all[name] = true
				member, _ := one.(map[string]any)
				if member["description"] == nil && member["$ref"] == nil {
					t.Errorf("the schema does not say what %q is", name)
				}
			}
		}
		for name, one := range v {
			if name != "if" {
				describedIn(t, one, all)
			}
		}
	}
}

// A design reaches the gate as it would alone make the exit status 1.
func TestGate(t *testing.T) {
	t.Parallel()
	for gate, want := range map[check.Severity]bool{0: false, check.Error: true, check.Note: true} {
		o := options()
		o.Gate = gate
		text := string(write(t, &linter.Result{Designs: resulttest.Sample(t).Designs[:1]}, o))
		if got := strings.Contains(text, `"reachesGate":true`); got != want {
			t.Errorf("gate %s: reached %v", gate, got)
		}
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

func TestWriteFails(t *testing.T) {
	t.Parallel()
	full := errors.New("the disk is full")
	if err := jsonout.Write(failing{full}, resulttest.Sample(t), options()); !errors.Is(err, full) {
		t.Errorf("the error is %v", err)
	}
}

// FuzzWrite puts together results of any texts, places and figures: what is written
// always conforms.
func FuzzWrite(f *testing.F) {
	f.Add("x.pa.hcl", []byte(resulttest.Design), "Rack", "Too much.", uint64(1))
	f.Add("Öä/🎭 \".pa.hcl", []byte("\ufeffa\r\nb 🎤\n"), `"x" <b> \`, "</script>", uint64(2))
	f.Add("/abs/\xff.pa.hcl", []byte("\xff\xfe\x00"), "\x00\x1b[31m\u202e\ufffe\ud7ff", "\xc3\x28", uint64(3))
	f.Add("", []byte{}, "", "", uint64(4))
	f.Add("a\nb", []byte("\n\n"), "\u2028\x85", "a\r\n\tb", uint64(5))
	f.Fuzz(func(t *testing.T, file string, text []byte, name, message string, seed uint64) {
		r := resulttest.Any(seed, []string{"", name, message, file, "a"}, []*source.File{source.NewFile(file, text), source.NewFile(name, []byte(message))})
		status := int(seed % 3)
		written := write(t, r, jsonout.Options{Name: name, Version: message, Gate: check.Severity(seed % 4), ExitStatus: &status})
		if err := conforms(written); err != nil {
			t.Fatalf("%v\n%s", err, written)
		}
	})
}
