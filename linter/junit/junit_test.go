package junit_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/junit"
	"loudlint/linter/resulttest"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/source"
)

var update = flag.Bool("update", false, "write the golden file anew")

var options = junit.Options{Name: "loudlint", Version: "0.0.0-test", Gate: check.Warning}

func write(t testing.TB, r *linter.Result, o junit.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := junit.Write(&b, r, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestGolden(t *testing.T) {
	t.Parallel()
	got := write(t, resulttest.Sample(t), options)
	const path = "testdata/sample.xml"
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Errorf("differs from %s; go test ./linter/junit -update writes it anew (-want +got):\n%s", path, diff)
	}
}

// What a service reads of the form.
type (
	readSuites struct {
		XMLName xml.Name    `xml:"testsuites"`
		Suites  []readSuite `xml:"testsuite"`
	}
	readSuite struct {
		Name     string     `xml:"name,attr"`
		Tests    int        `xml:"tests,attr"`
		Failures int        `xml:"failures,attr"`
		Errors   int        `xml:"errors,attr"`
		Skipped  int        `xml:"skipped,attr"`
		Cases    []readCase `xml:"testcase"`
	}
	readCase struct {
		Name    string    `xml:"name,attr"`
		Class   string    `xml:"classname,attr"`
		Failure *readTold `xml:"failure"`
		Error   *readTold `xml:"error"`
		Skipped *readTold `xml:"skipped"`
	}
	readTold struct {
		Message string `xml:"message,attr"`
		Type    string `xml:"type,attr"`
	}
)

// read decodes what was written and holds the counts against the cases.
func read(t testing.TB, text []byte) readSuites {
	t.Helper()
	var all readSuites
	if err := xml.Unmarshal(text, &all); err != nil {
		t.Fatalf("not well formed: %v\n%s", err, text)
	}
	for _, s := range all.Suites {
		counted := readSuite{Name: s.Name, Tests: len(s.Cases), Cases: s.Cases}
		for _, c := range s.Cases {
			if c.Failure != nil {
				counted.Failures++
			}
			if c.Error != nil {
				counted.Errors++
			}
			if c.Skipped != nil {
				counted.Skipped++
			}
		}
		if diff := cmp.Diff(counted, s); diff != "" {
			t.Errorf("counts of %s (-counted +written):\n%s", s.Name, diff)
		}
	}
	return all
}

// The gate decides what is a failure, and nothing else changes.
func TestGate(t *testing.T) {
	t.Parallel()
	for gate, want := range map[check.Severity]int{0: 0, check.Error: 1, check.Warning: 1, check.Note: 2} {
		o := options
		o.Gate = gate
		suite := read(t, write(t, resulttest.Sample(t), o)).Suites[0]
		if suite.Failures != want || suite.Errors != 0 || suite.Skipped != 4 || suite.Tests != 7 {
			t.Errorf("gate %s: %d failures of %d cases, %d skipped, want %d of 7, 4 skipped", gate, suite.Failures, suite.Tests, suite.Skipped, want)
		}
	}
}

// There is a failure or an error exactly where the exit status is not 0.
func TestExamplesAgreeWithTheGate(t *testing.T) {
	t.Parallel()
	for _, j := range examples().Designs {
		r := &linter.Result{Designs: []*linter.Judged{j}}
		text := write(t, r, options)
		suite := read(t, text).Suites[0]
		if red, stops := suite.Failures+suite.Errors > 0, !j.Understood() || j.Gravest() >= check.Warning; red != stops {
			t.Errorf("%s: %d failures and %d errors, gravest finding %s", j.Name, suite.Failures, suite.Errors, j.Gravest())
		}
		seen := map[[2]string]bool{}
		for _, c := range suite.Cases {
			if id := [2]string{c.Class, c.Name}; seen[id] {
				t.Errorf("%s: there are two cases %q", j.Name, id)
			} else {
				seen[id] = true
			}
		}
	}
}

// examples are those at the top of the repository, judged by the real checks.
var examples = sync.OnceValue(func() *linter.Result {
	all, err := filepath.Glob("../../examples/*" + schema.Ending)
	if err != nil || len(all) == 0 {
		panic(fmt.Sprint("there are no examples: ", err))
	}
	return linter.Check(all, linter.Options{Checks: rules.All()})
})

// validator is xmllint of libxml2, which knows XML Schema.
func validator(t *testing.T) func(text []byte) error {
	t.Helper()
	program, err := exec.LookPath("xmllint")
	if err != nil {
		t.Skip("xmllint is not installed; CI installs it")
	}
	return func(text []byte) error {
		command := exec.CommandContext(t.Context(), program, "--nonet", "--noout", "--schema", "junit.xsd", "-")
		command.Stdin = bytes.NewReader(text)
		if said, err := command.CombinedOutput(); err != nil {
			return errors.New(string(said))
		}
		return nil
	}
}

func TestConformsToSchema(t *testing.T) {
	t.Parallel()
	valid := validator(t)
	for _, r := range []*linter.Result{resulttest.Sample(t), {}, examples()} {
		if err := valid(write(t, r, options)); err != nil {
			t.Error(err)
		}
	}
}

// The schema refuses what it should: each of these is one slip in what is written.
func TestSchemaRefuses(t *testing.T) {
	t.Parallel()
	valid := validator(t)
	good := string(write(t, resulttest.Sample(t), options))
	for name, slip := range map[string][2]string{
		"cut off":              {"</testsuites>", ""},
		"no count":             {` failures="1"`, ""},
		"a count of words":     {`errors="0"`, `errors="none"`},
		"a strange result":     {"<skipped ", "<passed "},
		"a strange severity":   {`type="error"`, `type="grave"`},
		"a failure not told":   {"<failure message=", "<failure text="},
		"a case without class": {" classname=", " class="},
		"the same case twice":  {`name="not asked" classname="jobs/hall.test-idle"`, `name="amplifier &#34;Rack&#34;, main" classname="jobs/hall.test-load"`},
	} {
		bad := strings.Replace(good, slip[0], slip[1], 1)
		if bad == good {
			t.Errorf("%s: %q is not written", name, slip[0])
		} else if valid([]byte(bad)) == nil {
			t.Errorf("%s: nothing is wrong with it", name)
		}
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

func TestWriteFails(t *testing.T) {
	t.Parallel()
	full := errors.New("the disk is full")
	if err := junit.Write(failing{full}, resulttest.Sample(t), options); !errors.Is(err, full) {
		t.Errorf("the error is %v", err)
	}
}

// FuzzWrite puts together results of any texts: what is written is well formed, and
// its texts are read back as they are shown.
func FuzzWrite(f *testing.F) {
	f.Add("x.pa.hcl", []byte(resulttest.Design), "Rack", "Too much.", uint64(1))
	f.Add("Öä/🎭 ]]>.pa.hcl", []byte("\ufeffa\r\nb 🎤\n"), `"x" <b> &amp; '`, "<![CDATA[", uint64(2))
	f.Add("/abs/\xff.pa.hcl", []byte("\xff\xfe\x00"), "\x00\x1b[31m\u202e\ufffe\uffff\ud7ff", "\xc3\x28", uint64(3))
	f.Add("", []byte{}, "", "", uint64(4))
	f.Add("a\nb", []byte("\n\n"), "\u2028\x85", "a\r\n\tb", uint64(5))
	f.Fuzz(func(t *testing.T, file string, text []byte, name, message string, seed uint64) {
		r := resulttest.Any(seed, []string{"", name, message, file, "a"}, []*source.File{source.NewFile(file, text), source.NewFile(name, []byte(message))})
		written := write(t, r, junit.Options{Name: name, Version: message, Gate: check.Severity(seed % 4)})
		all := read(t, written)
		if len(all.Suites) != len(r.Designs) {
			t.Fatalf("%d suites for %d designs", len(all.Suites), len(r.Designs))
		}
		for i, s := range all.Suites {
			if want := textout.Printable(r.Designs[i].Name); s.Name != want {
				t.Errorf("the suite is called %q, want %q", s.Name, want)
			}
		}
		wellFormed(t, written)
	})
}

// wellFormed reads every token; Unmarshal passes over elements it does not know.
func wellFormed(t *testing.T, text []byte) {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(text))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			t.Fatalf("not well formed: %v\n%s", err, text)
		}
	}
}
