package record_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/record"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// hall is an invented design with a load that is too great, a tap that does not
// exist, and nothing said about polarity.
const hall = `system "Hall" { duty = "announcements and music" }
amplifier "Rack" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity  = 11
    taps_100V = ["6 W", "3 W"]
    tap       = "5.5 W"
  }
}
`

var asked = []string{"load-margin", "tap-setting", "polarity", "cable-loss"}

func judged(t *testing.T, text string, only []string) *linter.Result {
	t.Helper()
	design, problems := schema.Read("hall.pa.hcl", []*source.File{source.NewFile("hall.pa.hcl", []byte(text))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatal(problems[0])
	}
	options := linter.Options{Checks: rules.All(), Only: only, Date: quantity.Date{Year: 2026, Month: 11, Day: 25}}
	return &linter.Result{Checks: options.Checks, Designs: []*linter.Judged{linter.Judge(design, options)}}
}

func same(name string) string { return name }

func written(t *testing.T, r *record.Record) string {
	t.Helper()
	var b strings.Builder
	if err := r.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestWrite(t *testing.T) {
	t.Parallel()
	const want = "loudlint record 1\n" +
		"# Findings that are known, written by `loudlint record`. With `loudlint check --record` only others count.\n" +
		`
design hall.pa.hcl
error   load-margin: amplifier "Rack"
note    polarity: the job, convention
error   tap-setting: line "Hall", loudspeaker "H"
`
	r := record.Of(judged(t, hall, asked), same)
	if diff := cmp.Diff(want, written(t, r)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if r.Count() != 3 {
		t.Errorf("%d findings", r.Count())
	}
	// What was accepted is not recorded.
	const agreed = `deviation "polarity" {
  reason      = "Drawings"
  accepted_by = "Engineer"
}
`
	if got := written(t, record.Of(judged(t, hall+agreed, asked), same)); strings.Contains(got, "polarity") {
		t.Errorf("an accepted finding is recorded:\n%s", got)
	}
}

// TestWriteFails demands that what cannot be written is told.
func TestWriteFails(t *testing.T) {
	t.Parallel()
	full := errors.New("disk full")
	if err := (&record.Record{}).Write(failing{full}); !errors.Is(err, full) {
		t.Errorf("the error is %v", err)
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

// read reads a record that has to be right.
func read(t *testing.T, text string) *record.Record {
	t.Helper()
	r, problems := record.Read(source.NewFile("hall.record", []byte(text)))
	if len(problems) > 0 {
		t.Fatalf("%v", problems)
	}
	return r
}

func TestRead(t *testing.T) {
	t.Parallel()
	want := &record.Record{Designs: []record.Design{
		{Name: "a/hall.pa.hcl", Findings: []record.Finding{
			{Severity: check.Error, Identity: `load-margin: amplifier "Rack"`},
			{Severity: check.Note, Identity: "polarity: the job\n\\ "},
		}},
		{Name: "b"},
	}}
	for name, text := range map[string]string{
		"as written":  written(t, want),
		"line ends":   strings.ReplaceAll(written(t, want), "\n", "\r\n"),
		"byte order":  "\ufeff" + written(t, want),
		"no last end": strings.TrimSuffix(written(t, want), "\n"),
		"by hand":     "loudlint record 1\n\n  design   a/hall.pa.hcl  \n\terror load-margin: amplifier \"Rack\"\t\n# more\nnote polarity: the job\\u{A}\\u{5c}\\u{20}\ndesign b",
	} {
		if diff := cmp.Diff(want, read(t, text)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	t.Parallel()
	const head = "loudlint record 1\n"
	for text, want := range map[string]string{ // place, then a part of what is told
		"":                                     "1:1 This file is no record of findings.",
		"system \"Hall\" {}\n":                 "1:1 This file is no record of findings.",
		"loudlint record 2\nx":                 `1:17 This record is of version "2"`,
		"loudlint record 1x\n":                 `1:17 This record is of version "1x"`,
		head + "eror x: y\n":                   `2:1 A line begins with "eror". A line is`,
		head + "error x: y\n":                  "2:1 A finding stands above the first design.",
		head + "design\n":                      `2:1 Nothing stands behind "design".`,
		head + "design a\n\nerror\n":           `4:1 Nothing stands behind "error".`,
		head + "design a\nerror load-margin\n": "3:7 This names no finding.",
		head + "design a\nerror x: y\n  note x: y\n":  "4:8 This finding stands here twice.",
		head + "design a\ndesign b\ndesign a\n":       `4:8 The design "a" stands here twice.`,
		head + `design a\b`:                           "2:9 This backslash begins nothing that is known.",
		head + `design a\u{110000}`:                   "2:9 This backslash",
		head + `design a\x{100}`:                      "2:9 This backslash",
		head + `design a\u{41`:                        "2:9 This backslash",
		head + "design a\n<<<<<<< HEAD\nerror x: y\n": "3:1 A mark of git",
	} {
		r, problems := record.Read(source.NewFile("hall.record", []byte(text)))
		if r != nil || len(problems) == 0 {
			t.Errorf("%q is taken for a record", text)
			continue
		}
		at := problems[0].Span.From()
		if got := fmt.Sprintf("%d:%d %s", at.Line, at.Column, problems[0]); !strings.HasPrefix(got, want) {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
	r, problems := record.Read(source.NewFile("x", []byte(head+strings.Repeat("nonsense\n", 1000))))
	if r != nil || len(problems) != 20 {
		t.Errorf("of 1000 wrong lines %d are told", len(problems))
	}
}

func TestIs(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]bool{
		"loudlint record 1\n": true, "\ufeffloudlint record 7": true, "loudlint record": false, "": false, "amplifier \"Rack\" {}": false,
	} {
		if got := record.Is([]byte(text)); got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// TestMark holds changed designs against the record of hall.
func TestMark(t *testing.T) {
	t.Parallel()
	known := record.Of(judged(t, hall, asked), same)
	const load, polarity, tap, loss = `load-margin: amplifier "Rack"`, "polarity: the job, convention", `tap-setting: line "Hall", loudspeaker "H"`, `cable-loss: line "Hall"`
	for _, test := range []struct {
		name     string
		from, to string // what is changed in hall
		only     []string
		gravest  check.Severity
		states   map[string]string // verdict, severity, state and what it was
		gone     []string
	}{
		{
			name: "nothing changed", only: asked,
			states: map[string]string{load: "fail error unchanged error", polarity: "fail note unchanged note", tap: "fail error unchanged error", loss: "open none unchanged none"},
		},
		{
			name: "one is put right", from: `"5.5 W"`, to: `"3 W"`, only: asked,
			states: map[string]string{load: "pass none changed error", polarity: "fail note unchanged note", tap: "pass none changed error", loss: "open none unchanged none"},
			gone:   []string{"error " + load + " pass", "error " + tap + " pass"},
		},
		{
			name: "less grave", from: "= 11", to: "= 10", only: asked[:1],
			states: map[string]string{load: "fail warning changed error"},
		},
		{
			name: "a part is gone", from: `line "Hall"`, to: `line "Foyer"`, only: asked[:2], gravest: check.Error,
			states: map[string]string{load: "fail error unchanged error", `tap-setting: line "Foyer", loudspeaker "H"`: "fail error new none"},
			gone:   []string{"error " + tap + " none"},
		},
		{
			name: "a part is renamed", from: `line "Hall" {`, to: "line \"Foyer\" {\n  formerly = \"Hall\"", only: asked[:2],
			states: map[string]string{load: "fail error unchanged error", `tap-setting: line "Foyer", loudspeaker "H"`: "fail error unchanged error"},
		},
		{
			name: "a device is renamed", from: `loudspeaker "H" {`, to: "loudspeaker \"Wall\" {\n    formerly = \"H\"", only: asked[1:2],
			states: map[string]string{`tap-setting: line "Hall", loudspeaker "Wall"`: "fail error unchanged error"},
		},
		{
			name: "one cannot be judged any more", from: `{ rated_power = "60 W" }`, to: "{}", only: asked[:1],
			states: map[string]string{load: "open none changed error"},
			gone:   []string{"error " + load + " open"},
		},
		{
			name: "a check is not asked", only: asked[2:3],
			states: map[string]string{polarity: "fail note unchanged note"},
		},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			r := judged(t, strings.Replace(hall, test.from, test.to, 1), test.only)
			known.Mark(r, "the record", same)
			states := map[string]string{}
			for _, o := range r.Designs[0].Outcomes {
				states[o.Identity] = fmt.Sprintf("%s %s %s %s", o.Verdict, o.Severity, o.State, o.Was)
			}
			if diff := cmp.Diff(test.states, states); diff != "" {
				t.Errorf("states (-want +got):\n%s", diff)
			}
			var gone []string
			for _, g := range r.Designs[0].Before.Gone {
				gone = append(gone, fmt.Sprintf("%s %s %s", g.Severity, g.Identity, g.Now))
			}
			if diff := cmp.Diff(test.gone, gone); diff != "" {
				t.Errorf("gone (-want +got):\n%s", diff)
			}
			if got := r.Gravest(); got != test.gravest {
				t.Errorf("the gravest of what is new is %s, want %s", got, test.gravest)
			}
		})
	}
}

// TestGraver demands that a finding counts again when it has become graver.
func TestGraver(t *testing.T) {
	t.Parallel()
	known := record.Of(judged(t, strings.Replace(hall, "= 11", "= 10", 1), asked[:1]), same)
	r := judged(t, hall, asked[:1])
	known.Mark(r, "the record", same)
	if o := r.Designs[0].Outcomes[0]; o.State != check.Changed || o.Was != check.Warning || r.Gravest() != check.Error {
		t.Errorf("%s, was %s, gravest %s", o.State, o.Was, r.Gravest())
	}
}

// TestUnknownDesign demands that everything is new in a design that is not
// recorded, and that a design that was not understood is left alone.
func TestUnknownDesign(t *testing.T) {
	t.Parallel()
	known := record.Of(judged(t, hall, asked), func(string) string { return "another" })
	r := judged(t, hall, asked)
	r.Designs = append(r.Designs, &linter.Judged{Name: "broken", Err: errors.New("gone")})
	known.Mark(r, "the record", same)
	if b := r.Designs[0].Before; !b.Unknown || len(b.Gone) > 0 || r.Designs[0].Outcomes[0].State != check.New || r.Designs[1].Before != nil {
		t.Errorf("%+v, %s, %+v", b, r.Designs[0].Outcomes[0].State, r.Designs[1].Before)
	}
}

// TestRemovedCheck demands that findings of a check that is no more are gone.
func TestRemovedCheck(t *testing.T) {
	t.Parallel()
	known := read(t, "loudlint record 1\ndesign hall.pa.hcl\nerror no-such-check: the job\n")
	r := judged(t, hall, asked)
	known.Mark(r, "the record", same)
	if gone := r.Designs[0].Before.Gone; len(gone) != 1 || gone[0].Check != "no-such-check" {
		t.Errorf("%+v", gone)
	}
}

// FuzzRead reads any text: a place of a problem lies in the file, and what is
// understood is written so that it is understood again.
func FuzzRead(f *testing.F) {
	f.Add([]byte("loudlint record 1\ndesign hall.pa.hcl\nerror   load-margin: amplifier \"Rack\"\n"))
	f.Add([]byte("\ufeffloudlint record 1\r\n\r\ndesign a\\u{5C}b\x00\r\nnote x: \\x{FF}\u202e\r\n"))
	f.Add([]byte("loudlint record 2"))
	f.Add([]byte("loudlint record 1\n<<<<<<< a\nerror\ndesign \xff\xfe\nerror \\u{"))
	f.Fuzz(func(t *testing.T, text []byte) {
		file := source.NewFile("x.record", text)
		r, problems := record.Read(file)
		if (r == nil) != (len(problems) > 0) {
			t.Fatalf("a record: %v, problems: %v", r != nil, problems)
		}
		for _, p := range problems {
			if p.Span.Start < 0 || p.Span.End < p.Span.Start || int(p.Span.End) > len(file.Text) || p.Found == "" {
				t.Errorf("%+v", p)
			}
		}
		if r == nil {
			return
		}
		again, problems := record.Read(source.NewFile("y.record", []byte(written(t, r))))
		if len(problems) > 0 {
			t.Fatalf("%v in\n%s", problems, written(t, r))
		}
		if diff := cmp.Diff(r, again, cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("(-first +again):\n%s", diff)
		}
	})
}
