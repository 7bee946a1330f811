package sarif_test

import (
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/sarif"
	"loudlint/schema"
	"loudlint/schema/source"
)

// Results here are put together by hand: a writer is a function of the result,
// whoever made it. All designs and figures are invented.

const design = `amplifier "Rack" {
  rated_power = "240 W"
}

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
`

func loadCheck() *check.Check {
	return &check.Check{
		ID:      "test-load",
		Asks:    "Is the load of each amplifier below its rating?",
		Summary: "The loudspeakers ask for more than the amplifier gives.",
		Why:     "An overloaded amplifier limits or trips.",
		How:     "Adds up the taps {and nothing else}.",
		Basis:   "common practice, no published source",
		Blind:   "Cable loss is not seen.",
		Params: []check.Param{
			{Name: "margin", Doc: "what is to be left of the rating", Unit: check.Percent, Default: 10, Low: 0, High: 90, Basis: "invented for this test"},
			{Name: "strict", Doc: "whether assumed parts count", Unit: check.Switch, Default: 1, Low: 0, High: 1},
		},
		Cautions: []string{"Turning a tap up adds to the load."},
		Severity: check.Error,
	}
}

func lengthCheck() *check.Check {
	return &check.Check{
		ID: "test-length", Asks: "Is the length of each line known?", Summary: "The length of a line is too great.",
		Why: "Length costs level.", How: "Reads the length.", Basis: "common practice, no published source",
		Blind: "Nothing.", Severity: check.Warning, Off: true,
	}
}

// read makes a design of texts by file name, used files included.
func read(t testing.TB, name string, texts map[string]string) *schema.Design {
	t.Helper()
	var own []*source.File
	for file, text := range texts {
		if !strings.Contains(file, "used") {
			own = append(own, source.NewFile(file, []byte(text)))
		}
	}
	d, problems := schema.Read(name, own, schema.Options{Open: func(from *source.File, used string) (*source.File, error) {
		at := from.Name[:strings.LastIndex(from.Name, "/")+1] + used
		return source.NewFile(at, []byte(texts[at])), nil
	}})
	for _, p := range problems {
		t.Fatalf("%s:%d: %s", p.Span.File.Name, p.Span.From().Line, p)
	}
	return d
}

// in finds a piece of text in one of the files of a design.
func in(t testing.TB, d *schema.Design, text string) source.Span {
	t.Helper()
	for _, f := range d.Files {
		if i := bytes.Index(f.Text, []byte(text)); i >= 0 {
			return source.Span{File: f, Start: int32(i), End: int32(i + len(text))}
		}
	}
	t.Fatalf("no file of %s holds %q", d.Name, text)
	return source.Span{}
}

func subject(kind, name string, more ...string) check.Subject {
	s := check.Subject{Path: []check.Step{{Kind: kind, Name: name}}}
	for i := 0; i+1 < len(more); i += 2 {
		s.Path = append(s.Path, check.Step{Kind: more[i], Name: more[i+1]})
	}
	return s
}

func outcome(c *check.Check, v check.Verdict, s check.Severity, about check.Subject, at source.Span, message string) check.Outcome {
	return check.Outcome{Check: c, Verdict: v, Severity: s, Subject: about, Primary: at, Message: message, Identity: c.ID + ": " + about.String()}
}

func judged(d *schema.Design, outcomes ...check.Outcome) *linter.Judged {
	j := &linter.Judged{Name: d.Name, Design: d, Outcomes: outcomes}
	seen := map[string]bool{}
	for _, o := range outcomes {
		if !seen[o.Check.ID] {
			seen[o.Check.ID] = true
			j.InForce = append(j.InForce, linter.InForce{Check: o.Check, Limits: check.DefaultLimits(o.Check)})
		}
	}
	return j
}

func result(designs ...*linter.Judged) *linter.Result {
	r := &linter.Result{Designs: designs}
	seen := map[string]bool{}
	for _, j := range designs {
		for _, o := range j.Outcomes {
			if !seen[o.Check.ID] {
				seen[o.Check.ID] = true
				r.Checks = append(r.Checks, o.Check)
			}
		}
	}
	return r
}

var program = sarif.Tool{Name: "loudlint", Version: "0.0.0-test"}

// write writes a result and holds it against the standard.
func write(t testing.TB, r *linter.Result, tool sarif.Tool) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := sarif.Write(&b, r, tool); err != nil {
		t.Fatal(err)
	}
	conforms(t, b.Bytes())
	return b.Bytes()
}

// sarifSchema is the standard's schema, compiled once.
var sarifSchema = sync.OnceValues(func() (*jsonschema.Schema, error) {
	text, err := os.ReadFile("../../testdata/sarif/sarif-schema-2.1.0.json")
	if err != nil {
		return nil, err
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		return nil, err
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	if err := c.AddResource("sarif.json", doc); err != nil {
		return nil, err
	}
	return c.Compile("sarif.json")
})

// conforms holds a log against the schema, and against those rules of the
// standard that a schema cannot state.
func conforms(t testing.TB, text []byte) {
	t.Helper()
	s, err := sarifSchema()
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatalf("no JSON: %v\n%s", err, text)
	}
	if err := s.Validate(doc); err != nil {
		t.Fatalf("against the schema: %v\n%s", err, text)
	}
	for _, run := range decode(t, text).Runs {
		conformingRun(t, run)
	}
}

func conformingRun(t testing.TB, run logRun) {
	t.Helper()
	if run.ColumnKind != "utf16CodeUnits" {
		t.Errorf("columnKind %q (3.14.27)", run.ColumnKind)
	}
	if run.Results == nil {
		t.Error("results are absent or null (3.14.23)")
	}
	if i := run.Invocations[0]; i.ExecutionSuccessful != (len(i.ToolExecutionNotifications) == 0) {
		t.Errorf("executionSuccessful is %v with %d notifications (3.20.14)", i.ExecutionSuccessful, len(i.ToolExecutionNotifications))
	}
	for base, at := range run.OriginalURIBaseIDs {
		if at.URI != "" {
			t.Errorf("%s tells where it is: %s", base, at.URI)
		}
	}
	for _, r := range run.Results {
		if (r.BaselineState == "") != (run.Results[0].BaselineState == "") {
			t.Errorf("baselineState is on some results and not on others (3.27.24)")
		}
		if (r.Suppressions == nil) != (run.Results[0].Suppressions == nil) {
			t.Errorf("suppressions are on some results and not on others (3.27.23)")
		}
		if (r.Kind == "fail") != (r.Level != "none") {
			t.Errorf("kind %s with level %s (3.27.9)", r.Kind, r.Level)
		}
		if r.RuleIndex == nil || run.Tool.Driver.Rules[*r.RuleIndex].ID != r.RuleID {
			t.Errorf("ruleId %s does not go with ruleIndex (3.27.6)", r.RuleID)
		}
		for _, l := range append(r.Locations, r.RelatedLocations...) {
			if l.PhysicalLocation != nil {
				conformingPlace(t, run, *l.PhysicalLocation)
			}
		}
		for _, f := range r.Fixes {
			for _, c := range f.ArtifactChanges {
				conformingArtifact(t, run, c.ArtifactLocation)
			}
		}
	}
	for _, n := range run.Invocations[0].ToolExecutionNotifications {
		for _, l := range n.Locations {
			if l.PhysicalLocation != nil {
				conformingPlace(t, run, *l.PhysicalLocation)
			}
		}
	}
}

func conformingPlace(t testing.TB, run logRun, p logPlace) {
	t.Helper()
	conformingArtifact(t, run, p.ArtifactLocation)
	if r := p.Region; r != nil && (r.EndLine != 0 && r.EndLine < r.StartLine || r.EndLine == 0 && r.EndColumn < r.StartColumn) {
		t.Errorf("region ends before it starts: %+v (3.30)", r)
	}
}

func conformingArtifact(t testing.TB, run logRun, a logArtifactLocation) {
	t.Helper()
	if a.Index == nil {
		t.Fatalf("%q has no index", a.URI)
	}
	if listed := run.Artifacts[*a.Index].Location; listed.URI != a.URI || listed.URIBaseID != a.URIBaseID {
		t.Errorf("index %d of %+v leads to %+v (3.4.5)", *a.Index, a, listed)
	}
	if _, declared := run.OriginalURIBaseIDs[a.URIBaseID]; !declared {
		t.Errorf("base %q is not declared (3.14.14)", a.URIBaseID)
	}
	if strings.HasPrefix(a.URI, "/") || strings.ContainsAny(a.URI, `\ `) || strings.Contains(a.URI, ":") {
		t.Errorf("%q is no relative reference (3.10)", a.URI)
	}
}

// The parts of a log that tests read.
type (
	sarifLog struct {
		Schema  string `json:"$schema"`
		Version string
		Runs    []logRun
	}
	logRun struct {
		Tool struct {
			Driver struct {
				Name, Version, InformationURI string
				Rules                         []logRule
				Notifications                 []struct{ ID string }
			}
		}
		AutomationDetails struct{ ID string }
		Invocations       []struct {
			ExecutionSuccessful        bool
			ExitCode                   *int
			RuleConfigurationOverrides []struct {
				Descriptor struct {
					ID    string
					Index int
				}
				Configuration struct {
					Enabled    *bool
					Level      string
					Parameters map[string]any
				}
			}
			ToolExecutionNotifications []struct {
				Descriptor struct {
					ID    string
					Index int
				}
				Level      string
				Message    struct{ Text string }
				Locations  []logLocation
				Properties map[string]string
			}
		}
		ColumnKind         string
		Results            []logResult
		OriginalURIBaseIDs map[string]struct{ URI string }
		Artifacts          []struct {
			Location logArtifactLocation
			Length   int
			Roles    []string
			Hashes   map[string]string
			Contents *struct{ Text string }
		}
	}
	logRule struct {
		ID                                      string
		ShortDescription, FullDescription, Help struct{ Text, Markdown string }
		DefaultConfiguration                    struct {
			Level      string
			Enabled    *bool
			Parameters map[string]any
		}
		Properties map[string]any
	}
	logResult struct {
		RuleID                      string
		RuleIndex                   *int
		Kind, Level                 string
		Message                     struct{ Text string }
		Locations, RelatedLocations []logLocation
		PartialFingerprints         map[string]string
		BaselineState               string
		Suppressions                *[]struct{ Kind, Status, Justification string }
		Fixes                       []struct {
			Description     struct{ Text string }
			ArtifactChanges []struct {
				ArtifactLocation logArtifactLocation
				Replacements     []struct {
					DeletedRegion   logRegion
					InsertedContent *struct{ Text string }
				}
			}
		}
		Properties struct {
			Evidence []struct{ Number json.RawMessage }
			Limit    struct{ Number json.RawMessage }
		}
	}
	logLocation struct {
		ID               int
		PhysicalLocation *logPlace
		LogicalLocations []struct{ Name, FullyQualifiedName, Kind string }
		Message          *struct{ Text string }
	}
	logPlace struct {
		ArtifactLocation logArtifactLocation
		Region           *logRegion
	}
	logArtifactLocation struct {
		URI, URIBaseID string
		Index          *int
	}
	logRegion struct {
		StartLine, StartColumn, EndLine, EndColumn int
		Snippet                                    *struct{ Text string }
	}
)

func decode(t testing.TB, text []byte) sarifLog {
	t.Helper()
	var l sarifLog
	if err := json.Unmarshal(text, &l); err != nil {
		t.Fatalf("%v in\n%s", err, text)
	}
	return l
}
