package sarif_test

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"math"
	"net/url"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/sarif"
	"loudlint/schema"
	"loudlint/schema/source"
)

// spots makes a run of one outcome per span, so that regions can be looked at.
func spots(spans ...source.Span) *linter.Result {
	c := loadCheck()
	j := &linter.Judged{Name: spans[0].File.Name, Design: &schema.Design{Files: []*source.File{spans[0].File}}}
	for _, s := range spans {
		j.Outcomes = append(j.Outcomes, outcome(c, check.Pass, 0, check.Subject{}, s, "Here."))
	}
	return result(j)
}

func regions(t *testing.T, r *linter.Result) []logRegion {
	t.Helper()
	var all []logRegion
	for _, one := range decode(t, write(t, r, program)).Runs[0].Results {
		region := *one.Locations[0].PhysicalLocation.Region
		region.Snippet = nil
		all = append(all, region)
	}
	return all
}

// The worked example of the standard (SARIF 2.1.0, clause 3.30.2), and the ends
// of files of other forms, by the same rules.
func TestRegions(t *testing.T) {
	t.Parallel()
	const example = "abcd\r\nefg\r\nhijk\r\nlmn\r\n"
	tests := []struct {
		name, text string
		start, end int32
		want       logRegion
	}{
		{"bc", example, 1, 3, logRegion{StartLine: 1, StartColumn: 2, EndColumn: 4}},
		{"efg", example, 6, 9, logRegion{StartLine: 2, StartColumn: 1, EndColumn: 4}},
		{"two lines", example, 6, 15, logRegion{StartLine: 2, StartColumn: 1, EndLine: 3, EndColumn: 5}},
		{"a line with its ending", example, 6, 11, logRegion{StartLine: 2, StartColumn: 1, EndLine: 3, EndColumn: 1}},
		{"insertion at the end of the file", example, 22, 22, logRegion{StartLine: 4, StartColumn: 6, EndColumn: 6}},
		{"insertion inside a line", example, 8, 8, logRegion{StartLine: 2, StartColumn: 3, EndColumn: 3}},
		{"insertion in front of everything", example, 0, 0, logRegion{StartLine: 1, StartColumn: 1, EndColumn: 1}},
		{"last line with its ending", example, 17, 22, logRegion{StartLine: 4, StartColumn: 1, EndColumn: 6}},
		{"the whole file", example, 0, 22, logRegion{StartLine: 1, StartColumn: 1, EndLine: 4, EndColumn: 6}},
		{"the end after a bare newline", "ab\n", 3, 3, logRegion{StartLine: 1, StartColumn: 4, EndColumn: 4}},
		{"the end without a newline", "ab\ncd", 5, 5, logRegion{StartLine: 2, StartColumn: 3, EndColumn: 3}},
		{"an empty file", "", 0, 0, logRegion{StartLine: 1, StartColumn: 1, EndColumn: 1}},
		{"nothing but a newline", "\n", 1, 1, logRegion{StartLine: 1, StartColumn: 2, EndColumn: 2}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			f := source.NewFile("x.pa.hcl", []byte(test.text))
			got := regions(t, spots(source.Span{File: f, Start: test.start, End: test.end}))
			if diff := cmp.Diff([]logRegion{test.want}, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// Columns are found again by counting UTF-16 units of the line, which is how a
// reader of the log counts.
func TestColumnsCountUTF16(t *testing.T) {
	t.Parallel()
	const line = "ä🎤e\u0301 👩‍🚀 = target # ℹ️"
	f := source.NewFile("x.pa.hcl", []byte("\ufeff"+line+"\n"))
	at := int32(strings.Index(line, "target"))
	got := regions(t, spots(source.Span{File: f, Start: at, End: at + 6}))[0]
	units := utf16.Encode([]rune(line))
	if text := string(utf16.Decode(units[got.StartColumn-1 : got.EndColumn-1])); text != "target" {
		t.Errorf("columns %d to %d hold %q, want %q", got.StartColumn, got.EndColumn, text, "target")
	}
}

func TestMessages(t *testing.T) {
	t.Parallel()
	tests := []struct{ name, message, want string }{
		{"plain", "The load is 250 W.", "The load is 250 W."},
		{"without a full stop", "the load is 250 W", "The load is 250 W."},
		{"braces would be placeholders", `Amplifier "{0}" }{.`, `Amplifier "{{0}}" }}{{.`},
		{"brackets would be a link", `Line "[x](1)" [a].`, `Line "\[x\](1)" \[a\].`},
		{"brackets that make no link", `Line "Hall [2]" (1).`, `Line "Hall [2]" (1).`},
		{"tags are text", `Line "<b>" & more.`, `Line "<b>" & more.`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			d := read(t, "x.pa.hcl", map[string]string{"x.pa.hcl": design})
			r := result(judged(d, outcome(loadCheck(), check.Pass, 0, subject("line", "Hall"), in(t, d, "Hall"), test.message)))
			text := write(t, r, program)
			if got := decode(t, text).Runs[0].Results[0].Message.Text; got != test.want {
				t.Errorf("got %q, want %q", got, test.want)
			}
			if bytes.Contains(text, []byte(`\u003c`)) {
				t.Error("the log is escaped for HTML, which it is no part of")
			}
		})
	}
}

// The first line of a message is the outcome's own sentence, whatever follows.
func TestFirstLineStandsAlone(t *testing.T) {
	t.Parallel()
	d, o := one(t, "x.pa.hcl")
	got := decode(t, write(t, result(judged(d, o)), program)).Runs[0].Results[0].Message.Text
	first, rest, _ := strings.Cut(got, "\n")
	if first != o.Message {
		t.Errorf("first line %q, want %q", first, o.Message)
	}
	for _, want := range []string{o.Evidence[0].Sum, o.Limit.Text, o.Limit.Basis, o.Assumed[0], o.Remedies[0].Text} {
		if !strings.Contains(rest, want) {
			t.Errorf("%q is not in the lines that follow: %q", want, rest)
		}
	}
}

func TestKindsAndLevels(t *testing.T) {
	t.Parallel()
	d := read(t, "x.pa.hcl", map[string]string{"x.pa.hcl": design})
	tests := []struct {
		verdict     check.Verdict
		severity    check.Severity
		kind, level string
	}{
		{check.Pass, 0, "pass", "none"},
		{check.Open, 0, "open", "none"},
		{check.Fail, check.Error, "fail", "error"},
		{check.Fail, check.Warning, "fail", "warning"},
		{check.Fail, check.Note, "fail", "note"},
		{check.Pass, check.Error, "pass", "none"}, // a severity left behind means nothing
		{check.Fail, 0, "fail", "warning"},        // what a reader of the log would take it for
	}
	for _, test := range tests {
		o := outcome(loadCheck(), test.verdict, test.severity, subject("line", "Hall"), in(t, d, "Hall"), "So.")
		got := decode(t, write(t, result(judged(d, o)), program)).Runs[0].Results[0]
		if got.Kind != test.kind || got.Level != test.level {
			t.Errorf("%s with severity %s: kind %s, level %s; want %s, %s", test.verdict, test.severity, got.Kind, got.Level, test.kind, test.level)
		}
	}
}

// A fingerprint names what the outcome is about. Lines, figures and folders may
// change; the identity may not.
func TestFingerprints(t *testing.T) {
	t.Parallel()
	fingerprint := func(name, text string, change func(*check.Outcome)) string {
		d := read(t, name, map[string]string{name: text})
		o := outcome(loadCheck(), check.Fail, check.Error, subject("amplifier", "Rack"), in(t, d, `"240 W"`), "Too much.")
		change(&o)
		prints := decode(t, write(t, result(judged(d, o)), program)).Runs[0].Results[0].PartialFingerprints
		if len(prints) != 1 || len(prints["outcomeIdentity/v1"]) != 32 {
			t.Fatalf("fingerprints %v", prints)
		}
		return prints["outcomeIdentity/v1"]
	}
	unchanged := func(*check.Outcome) {}
	want := fingerprint("hall.pa.hcl", design, unchanged)
	if got := fingerprint("/elsewhere/on/disk/hall.pa.hcl", "# a line more\n\n"+design, unchanged); got != want {
		t.Error("it depends on where the design lies, or on lines")
	}
	if got := fingerprint("hall.pa.hcl", design, func(o *check.Outcome) {
		o.Message, o.Severity, o.Verdict = "Other figures.", check.Note, check.Fail
	}); got != want {
		t.Error("it depends on figures or on the severity")
	}
	if got := fingerprint("hall.pa.hcl", design, func(o *check.Outcome) { o.Identity += ", left" }); got == want {
		t.Error("two identities have one fingerprint")
	}
}

// Where a design lies on this machine stays here.
func TestFileNames(t *testing.T) {
	t.Parallel()
	tests := []struct {
		name, folder    string // of the design; the start folder
		file, uri, base string // a file of it
	}{
		{"hall.pa.hcl", "", "hall.pa.hcl", "hall.pa.hcl", "%SRCROOT%"},
		{"halls", "", "halls/a b.pa.hcl", "halls/a%20b.pa.hcl", "%SRCROOT%"},
		{".", "", "hall.pa.hcl", "hall.pa.hcl", "%SRCROOT%"},
		{"../halls", "", "../halls/x.pa.hcl", "../halls/x.pa.hcl", "%SRCROOT%"},
		{"Bühne", "", "Bühne/100%/#1?.pa.hcl", "B%C3%BChne/100%25/%231%3F.pa.hcl", "%SRCROOT%"},
		{"u\u0308", "", "u\u0308/🎭.pa.hcl", "u%CC%88/%F0%9F%8E%AD.pa.hcl", "%SRCROOT%"},
		{"a:b", "", "a:b/c:d.pa.hcl", "a%3Ab/c%3Ad.pa.hcl", "%SRCROOT%"},
		{"x", "", `x/back\slash.pa.hcl`, "x/back%5Cslash.pa.hcl", "%SRCROOT%"},
		{"x", "", "x/\xff\x01.pa.hcl", "x/%FF%01.pa.hcl", "%SRCROOT%"},
		{"/home/me/job/halls", "/home/me/job", "/home/me/job/halls/x.pa.hcl", "halls/x.pa.hcl", "%SRCROOT%"},
		{"/home/me/job/halls", "/home/me/job/", "/home/me/job/halls/x.pa.hcl", "halls/x.pa.hcl", "%SRCROOT%"},
		{"/home/me/job/halls", "/home/me/jo", "/home/me/job/halls/x.pa.hcl", "x.pa.hcl", "%DESIGN%"},
		{"/home/me/job/halls", "", "/home/me/job/halls/sub/x.pa.hcl", "sub/x.pa.hcl", "%DESIGN%"},
		{"/home/me/job/x.pa.hcl", "", "/home/me/job/x.pa.hcl", "x.pa.hcl", "%DESIGN%"},
		{"/home/me/job/halls", "", "/srv/models/x.pa.hcl", "x.pa.hcl", "%ELSEWHERE1%"},
		{"halls", "/home/me", "/srv/models/x.pa.hcl", "x.pa.hcl", "%ELSEWHERE1%"},
		{"/x.pa.hcl", "", "/x.pa.hcl", "x.pa.hcl", "%DESIGN%"},
		{"C:/Users/me/halls", "C:/Users/me", "C:/Users/me/halls/x.pa.hcl", "halls/x.pa.hcl", "%SRCROOT%"},
		{"C:/Users/me/halls", "", "C:/Users/me/halls/x.pa.hcl", "x.pa.hcl", "%DESIGN%"},
	}
	for _, test := range tests {
		t.Run(test.name+" "+test.folder, func(t *testing.T) {
			t.Parallel()
			f := source.NewFile(test.file, []byte(design))
			j := &linter.Judged{Name: test.name, Design: &schema.Design{Name: test.name, Files: []*source.File{f}}}
			j.Outcomes = []check.Outcome{outcome(loadCheck(), check.Fail, check.Note, check.Subject{}, source.Span{File: f, Start: 0, End: 9}, "Here.")}
			tool := program
			tool.Folder = test.folder
			text := write(t, result(j), tool)
			run := decode(t, text).Runs[0]
			got := run.Results[0].Locations[0].PhysicalLocation.ArtifactLocation
			if got.URI != test.uri || got.URIBaseID != test.base {
				t.Errorf("got %s in %s, want %s in %s", got.URI, got.URIBaseID, test.uri, test.base)
			}
			if name, err := url.PathUnescape(got.URI); err != nil || !strings.HasSuffix(test.file, name) {
				t.Errorf("%q leads to %q: %v", got.URI, name, err)
			}
			for _, place := range []string{"/home", "/srv", "C:"} {
				if bytes.Contains(text, []byte(place)) {
					t.Errorf("the log tells of %s", place)
				}
			}
			if id := run.AutomationDetails.ID; !strings.HasPrefix(id, "loudlint/") || !strings.HasSuffix(id, "/") {
				t.Errorf("automationDetails.id %q", id)
			}
		})
	}
}

// Two folders outside the design's are told apart.
func TestFoldersElsewhere(t *testing.T) {
	t.Parallel()
	var spans []source.Span
	for _, name := range []string{"/one/x.pa.hcl", "/two/x.pa.hcl", "/one/y.pa.hcl", "/one/deep/z.pa.hcl"} {
		spans = append(spans, source.Span{File: source.NewFile(name, []byte(design)), Start: 0, End: 9})
	}
	r := spots(spans...)
	r.Designs[0].Name = "halls"
	var got []string
	for _, a := range decode(t, write(t, r, program)).Runs[0].Artifacts {
		got = append(got, a.Location.URIBaseID+" "+a.Location.URI)
	}
	want := []string{"%ELSEWHERE1% x.pa.hcl", "%ELSEWHERE2% x.pa.hcl", "%ELSEWHERE1% y.pa.hcl", "%ELSEWHERE1% deep/z.pa.hcl"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// Length and hash are those of the file on disk, with its byte order mark.
func TestArtifacts(t *testing.T) {
	t.Parallel()
	for _, text := range []string{design, "\ufeff" + design, ""} {
		f := source.NewFile("x.pa.hcl", []byte(text))
		a := decode(t, write(t, spots(source.Span{File: f}), program)).Runs[0].Artifacts[0]
		sum := sha256.Sum256([]byte(text))
		if want := hex.EncodeToString(sum[:]); a.Hashes["sha-256"] != want || a.Length != len(text) {
			t.Errorf("%d bytes, %s; want %d bytes, %s", a.Length, a.Hashes["sha-256"], len(text), want)
		}
	}
}

// The typical catalogue is on no disk, so a log that points into it brings the
// text along.
func TestTypicalCatalogue(t *testing.T) {
	t.Parallel()
	all, err := schema.Typical()
	if err != nil {
		t.Fatal(err)
	}
	model := all.Loudspeakers[0]
	d := read(t, "x.pa.hcl", map[string]string{"x.pa.hcl": design})
	o := outcome(loadCheck(), check.Fail, check.Note, subject("line", "Hall"), in(t, d, "Hall"), "So.")
	o.Related = []schema.Place{{Span: model.Header, Note: "typical figures"}}
	run := decode(t, write(t, result(judged(d, o)), program)).Runs[0]
	at := run.Results[0].RelatedLocations[0].PhysicalLocation.ArtifactLocation
	a := run.Artifacts[*at.Index]
	if at.URIBaseID != "%LOUDLINT%" || a.Contents == nil || a.Contents.Text != string(model.Header.File.Text) {
		t.Errorf("%+v has not the text of the catalogue", at)
	}
	for _, other := range run.Artifacts[:*at.Index] {
		if other.Contents != nil {
			t.Errorf("%s is on disk and need not be brought along", other.Location.URI)
		}
	}
}

// JSON cannot carry what is not finite.
func TestNumbersNotFinite(t *testing.T) {
	t.Parallel()
	d, o := one(t, "x.pa.hcl")
	o.Evidence = []check.Evidence{
		{Name: "a", Value: "∞", Number: math.Inf(1)}, {Name: "b", Value: "?", Number: math.NaN()},
		{Name: "c", Value: "0", Number: 0}, {Name: "d", Value: "largest", Number: math.MaxFloat64},
		{Name: "e", Value: "a third", Number: 1.0 / 3},
	}
	o.Limit.Number = math.Inf(-1)
	properties := decode(t, write(t, result(judged(d, o)), program)).Runs[0].Results[0].Properties
	var got []string
	for _, e := range properties.Evidence {
		got = append(got, string(e.Number))
	}
	if diff := cmp.Diff([]string{"", "", "0", "1.79769313e+308", "0.333333333"}, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if properties.Limit.Number != nil {
		t.Error("an infinite limit is written")
	}
}

func TestFixes(t *testing.T) {
	t.Parallel()
	d, o := one(t, "x.pa.hcl")
	o.Remedies = append(o.Remedies, o.Remedies[0], check.Remedy{Text: "Somewhere.", Edits: []check.Edit{{New: "nowhere"}}},
		check.Remedy{Text: "Take the tap away.", Edits: []check.Edit{{Span: in(t, d, `"10 W"`)}}})
	fixes := decode(t, write(t, result(judged(d, o)), program)).Runs[0].Results[0].Fixes
	var got []string
	for _, f := range fixes {
		got = append(got, f.Description.Text)
	}
	// One is a repetition, one has no edits, one no place.
	if diff := cmp.Diff([]string{"Set the tap to 6 W.", "Leave loudspeakers out and say so.", "Take the tap away."}, got); diff != "" {
		t.Fatalf("(-want +got):\n%s", diff)
	}
	if c := fixes[2].ArtifactChanges[0].Replacements[0].InsertedContent; c != nil {
		t.Errorf("a removal inserts %q", c.Text)
	}
}

func TestRules(t *testing.T) {
	t.Parallel()
	r := many(t)
	run := decode(t, write(t, r, program)).Runs[0]
	if len(run.Tool.Driver.Rules) != len(r.Checks) {
		t.Fatalf("%d rules for %d checks", len(run.Tool.Driver.Rules), len(r.Checks))
	}
	load := run.Tool.Driver.Rules[0]
	c := loadCheck()
	for _, want := range []string{c.Asks, "Common practice, no published source.", c.Blind, c.Cautions[0], "10 % unless set, 0 % to 90 %", "true unless set"} {
		if !strings.Contains(load.Help.Text, want) || !strings.Contains(load.Help.Markdown, want) {
			t.Errorf("the help does not say %q:\n%s", want, load.Help.Text)
		}
	}
	if diff := cmp.Diff(map[string]any{"margin": 10.0, "strict": true}, load.DefaultConfiguration.Parameters); diff != "" {
		t.Errorf("default parameters (-want +got):\n%s", diff)
	}
	enabled := map[string]bool{}
	for _, o := range run.Invocations[0].RuleConfigurationOverrides {
		if o.Configuration.Enabled != nil {
			enabled[o.Descriptor.ID] = *o.Configuration.Enabled
		}
		if o.Descriptor.ID == "test-load" {
			if diff := cmp.Diff(map[string]any{"margin": 5.0}, o.Configuration.Parameters); diff != "" || o.Configuration.Level != "error" {
				t.Errorf("of test-load: level %q, parameters (-want +got):\n%s", o.Configuration.Level, diff)
			}
		}
		if id := run.Tool.Driver.Rules[o.Descriptor.Index].ID; id != o.Descriptor.ID {
			t.Errorf("an override of %s leads to %s", o.Descriptor.ID, id)
		}
	}
	// One was off and answered; one was on and is off for this design.
	if diff := cmp.Diff(map[string]bool{"test-length": true, "test-silent": false}, enabled); diff != "" {
		t.Errorf("overrides (-want +got):\n%s", diff)
	}
	if d := run.Tool.Driver.Rules[1].DefaultConfiguration; d.Enabled == nil || *d.Enabled {
		t.Error("a check that is off unless set is not said to be")
	}
}

func TestNotUnderstood(t *testing.T) {
	t.Parallel()
	two := 2
	tool := program
	tool.ExitCode = &two
	r := notUnderstood()
	runs := decode(t, write(t, r, tool)).Runs
	problems := runs[0].Invocations[0]
	if problems.ExecutionSuccessful || problems.ExitCode == nil || *problems.ExitCode != 2 || len(problems.ToolExecutionNotifications) != 2 {
		t.Fatalf("%+v", problems)
	}
	n := problems.ToolExecutionNotifications[0]
	if want := "There is no block \"amplifer\". A design has {{amplifiers}} and lines. Did you mean `amplifier`?"; n.Message.Text != want {
		t.Errorf("message %q, want %q", n.Message.Text, want)
	}
	if diff := cmp.Diff(map[string]string{"found": r.Designs[0].Problems[0].Found, "expected": r.Designs[0].Problems[0].Expected, "nearest": "`amplifier`"}, n.Properties); diff != "" {
		t.Errorf("properties (-want +got):\n%s", diff)
	}
	if at := n.Locations[0].PhysicalLocation; at.ArtifactLocation.URI != "bad/hall.pa.hcl" || at.Region.EndColumn != 9 {
		t.Errorf("location %+v", at)
	}
	if n := problems.ToolExecutionNotifications[1]; len(n.Locations) != 2 || n.Locations[1].Message.Text != "Here too." {
		t.Errorf("related places are lost: %+v", n.Locations)
	}
	unread := runs[1].Invocations[0].ToolExecutionNotifications
	if len(unread) != 1 || unread[0].Message.Text != "There is no file or folder absent.pa.hcl." || len(unread[0].Locations) != 0 {
		t.Errorf("%+v", unread)
	}
	for _, run := range runs {
		for _, n := range run.Invocations[0].ToolExecutionNotifications {
			if id := run.Tool.Driver.Notifications[n.Descriptor.Index].ID; id != n.Descriptor.ID {
				t.Errorf("descriptor %s leads to %s", n.Descriptor.ID, id)
			}
		}
	}
}

func TestNoDesigns(t *testing.T) {
	t.Parallel()
	if l := decode(t, write(t, &linter.Result{}, program)); l.Version != "2.1.0" || l.Runs == nil || len(l.Runs) != 0 {
		t.Errorf("%+v", l)
	}
}

func TestTool(t *testing.T) {
	t.Parallel()
	for _, uri := range []string{"", "https://example.com/about"} {
		tool := program
		tool.InformationURI = uri
		text := write(t, nothing(t), tool)
		got := decode(t, text).Runs[0].Tool.Driver
		if got.Name != tool.Name || got.Version != tool.Version || got.InformationURI != uri {
			t.Errorf("%+v", got)
		}
		if uri == "" && bytes.Contains(text, []byte("informationUri")) {
			t.Error("an empty URI is written")
		}
	}
}

// full is a disk without room.
type full struct{ room int }

var errFull = errors.New("no room left")

func (f *full) Write(b []byte) (int, error) {
	if len(b) > f.room {
		return f.room, errFull
	}
	f.room -= len(b)
	return len(b), nil
}

func TestWriteFails(t *testing.T) {
	t.Parallel()
	for _, room := range []int{0, 100, 5000} {
		if err := sarif.Write(&full{room}, many(t), program); !errors.Is(err, errFull) {
			t.Errorf("with room for %d bytes: %v, want %v", room, err, errFull)
		}
	}
}

// The same result gives the same bytes, and is not changed by being written.
func TestSameBytes(t *testing.T) {
	t.Parallel()
	r := many(t)
	first := write(t, r, program)
	for range 3 {
		if !bytes.Equal(first, write(t, r, program)) {
			t.Fatal("the bytes differ")
		}
	}
}

// lots is a result of n findings.
func lots(t testing.TB, n int) *linter.Result {
	t.Helper()
	d, o := one(t, "x.pa.hcl")
	j := judged(d)
	j.Outcomes = make([]check.Outcome, n)
	for i := range j.Outcomes {
		j.Outcomes[i] = o
	}
	return &linter.Result{Checks: []*check.Check{o.Check}, Designs: []*linter.Judged{j}}
}

func BenchmarkWrite(b *testing.B) {
	r := lots(b, 100_000)
	b.ReportAllocs()
	for b.Loop() {
		var n counter
		if err := sarif.Write(&n, r, program); err != nil {
			b.Fatal(err)
		}
		b.SetBytes(int64(n))
	}
}

type counter int

func (c *counter) Write(b []byte) (int, error) { *c += counter(len(b)); return len(b), nil }
