package review

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/source"
)

func judged(t *testing.T, text string, options linter.Options) *linter.Judged {
	t.Helper()
	design, problems := schema.Read("hall.pa.hcl", []*source.File{source.NewFile("hall.pa.hcl", []byte(text))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	options.Checks = rules.All()
	j := linter.Judge(design, options)
	if !j.Understood() {
		t.Fatal(j.Problems)
	}
	return j
}

// floors has six alike lines, each with rooms of an attenuator and two
// loudspeakers.
func floors() string {
	var b strings.Builder
	b.WriteString(`amplifier "Rack" { rated_power = "60 W" }` + "\n")
	for i := range 6 {
		fmt.Fprintf(&b, `line "Floor %d" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "%d m"
  attenuator "Room" {
    leg      = "2 m"
    rating   = "6 W"
    override = "none"
    loudspeaker "Bed" {
      leg = "1 m"
      tap = "1.5 W"
    }
    loudspeaker "Bath" {
      leg = "1 m"
      tap = "0.75 W"
    }
  }
}
`, i+1, 10+i)
	}
	return b.String()
}

// TestFolding: what is said of many parts alike is said once, with all of them.
func TestFolding(t *testing.T) {
	t.Parallel()
	j := judged(t, floors()+`
criterion "No control" {
  each    = "attenuator"
  expect  = lifted
  message = "${name} on line ${line} can silence a page"
}
criterion "Short" {
  each   = "line"
  expect = cable_m <= 20
}
`, linter.Options{})
	r := Of(j, Options{Gate: check.Warning})
	if len(r.Criteria) != 2 {
		t.Fatalf("the criteria name %d rows", len(r.Criteria))
	}
	control, short := r.Criteria[0], r.Criteria[1]
	if len(control.NotMet) != 1 || Count(control.NotMet) != 6 {
		t.Errorf("six alike findings are %d in %d groups", Count(control.NotMet), len(control.NotMet))
	}
	if diff := cmp.Diff([]string{`attenuator "Room" of 6 lines "Floor 1", "Floor 2" and 4 more`}, Parts(control.NotMet[0], 2)); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]string{`attenuator "Room" of 6 lines "Floor 1", "Floor 2", "Floor 3", "Floor 4", "Floor 5" and "Floor 6"`}, Parts(control.NotMet[0], 0)); diff != "" {
		t.Error(diff)
	}
	if len(short.Met) != 6 {
		t.Errorf("six lines of different length are %d groups", len(short.Met))
	}
	want := []string{`6 lines "Floor 1", "Floor 2", "Floor 3" and 3 more: cable_m: 14 m to 19 m; at most 20 m (cable_m <= 20)`}
	if diff := cmp.Diff(want, MetBy(short, false, 4, 3)); diff != "" {
		t.Error(diff)
	}
	if each := MetBy(short, true, 4, 3); len(each) != 6 || each[0] != `line "Floor 1": cable_m: 10 m + 2 m + 1 m + 1 m = 14 m; at most 20 m (cable_m <= 20)` {
		t.Errorf("each is %q", each)
	}
}

func TestParts(t *testing.T) {
	t.Parallel()
	path := func(steps ...string) *check.Outcome {
		o := &check.Outcome{}
		for i := 0; i < len(steps); i += 2 {
			o.Subject.Path = append(o.Subject.Path, check.Step{Kind: steps[i], Name: steps[i+1]})
		}
		return o
	}
	for _, test := range []struct {
		group Group
		want  []string
	}{
		{Group{path()}, []string{"the job"}},
		{Group{path("line", "A")}, []string{`line "A"`}},
		{Group{path("line", "A"), path("line", "A")}, []string{`line "A"`}},
		{Group{path("line", "A"), path("mute_link", "B"), path("line", "C")}, []string{`2 lines "A" and "C"`, `mute link "B"`}},
		{Group{path("line", "A", "loudspeaker", "B")}, []string{`line "A", loudspeaker "B"`}},
		{Group{path("line", "A", "loudspeaker", "B"), path("line", "A", "loudspeaker", "C")}, []string{`line "A": 2 loudspeakers "B" and "C"`}},
		{Group{path("line", "A", "loudspeaker", "B"), path("line", "C", "loudspeaker", "B")}, []string{`loudspeaker "B" of 2 lines "A" and "C"`}},
		{
			Group{path("line", "A", "attenuator", "R", "loudspeaker", "B"), path("line", "C", "attenuator", "R", "loudspeaker", "B"), path("line", "C", "loudspeaker", "B")},
			[]string{`loudspeaker "B" of attenuator "R" of 2 lines "A" and "C"; line "C"`},
		},
	} {
		if diff := cmp.Diff(test.want, Parts(test.group, 0)); diff != "" {
			t.Error(diff)
		}
	}
}

// TestVerdicts: what is found decides, then what is open.
func TestVerdicts(t *testing.T) {
	t.Parallel()
	hall := `amplifier "Rack" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = %d
    tap      = "6 W"
  }
}
`
	agreed := `deviation "load-margin" {
  amplifier   = "Rack"
  reason      = "Phase 2"
  accepted_by = "Client"
}
`
	only := []string{"load-margin"}
	for _, test := range []struct {
		name, text string
		only       []string
		gate       check.Severity
		want       Verdict
		reason     string
	}{
		{"met", fmt.Sprintf(hall, 4), only, check.Warning, Accept, "1 answer met; only load-margin asked."},
		{"not met", fmt.Sprintf(hall, 12), only, check.Warning, Return, "1 comment, 1 error among them; only load-margin asked."},
		{"below the gate", fmt.Sprintf(hall, 9), only, check.Error, AcceptWithComments, "1 comment, none as grave as an error; only load-margin asked."},
		{"agreed", fmt.Sprintf(hall, 12) + agreed, only, check.Warning, Accept, "0 answers met; 1 finding departed from by an agreement that the design states; only load-margin asked."},
		{"open", strings.Replace(fmt.Sprintf(hall, 4), `tap      = "6 W"`, "", 1), only, check.Warning, NotYet, "nothing judged so far is as grave as a warning; 1 answer cannot be given yet; only load-margin asked."},
		{"nothing asked", fmt.Sprintf(hall, 4), []string{"mute-link"}, check.Warning, NotYet, "nothing was asked of any part."},
		{"grave and open", fmt.Sprintf(hall, 12), nil, check.Warning, Return, ""},
	} {
		r := Of(judged(t, test.text, linter.Options{Only: test.only}), Options{Gate: test.gate, Only: test.only})
		if r.Verdict != test.want {
			t.Errorf("%s: the verdict is %q, want %q (%s)", test.name, r.Verdict, test.want, r.Reason)
		}
		if test.reason != "" && r.Reason != test.reason {
			t.Errorf("%s: the reason is %q, want %q", test.name, r.Reason, test.reason)
		}
	}
}

// TestDocuments says where a reviewer looks for what.
func TestDocuments(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		missing analysis.Missing
		want    paper
	}{
		{analysis.Missing{Part: "the job", Write: `system "…" { duty = "announcements and music" }`}, brief},
		{analysis.Missing{Part: `space "Hall"`, Write: `noise = "58 dBA"`}, survey},
		{analysis.Missing{Part: `space "Hall"`, Write: `wanted_over_noise = "10 dB"`}, brief},
		{analysis.Missing{Part: `space "Hall"`, Write: `length = "18 m" and width = "10 m"`}, layout},
		{analysis.Missing{Part: `loudspeaker "H"`, Write: `position = ["2 m", "0 m"]`}, layout},
		{analysis.Missing{Part: `loudspeaker "H"`, Write: `tap = "6 W"`}, lineDrawing},
		{analysis.Missing{Part: `loudspeaker "H"`, Write: `coverage = "120 deg"`}, dataSheet},
		{analysis.Missing{Part: `line "Hall"`, Write: `cable = "2 x 1.5 mm2"`}, lineDrawing},
		{analysis.Missing{Part: `cable "2 x 1.5 mm2"`, Write: `a cable_model with insulation = "300 V"`}, dataSheet},
		{analysis.Missing{Part: `connector "Own 7"`, Write: `connector_model "Own 7" { cores = 5 }`}, dataSheet},
		{analysis.Missing{Part: `input "Mic 1" of Rack`, Write: `input "Mic 1" { mutes = ["Aux"] }`}, dataSheet},
		{analysis.Missing{Part: `music "Player"`, Write: `level = "-10 dBV"`}, dataSheet},
		{analysis.Missing{Part: `microphone "Desk"`, Write: `connector = "DIN 5"`}, connections},
		{analysis.Missing{Part: `existing "Old"`, Write: `load = "30 W"`}, survey},
		{analysis.Missing{Part: `supply "Battery"`, Write: `capacity = "80 Ah"`}, powerSupply},
		{analysis.Missing{Part: `reading "First"`, Write: `line = "…"`}, measurements},
	} {
		if got := paperOf(attributeOf(test.missing)); got != test.want {
			t.Errorf("%s is looked for in %q, want %q", test.missing.Write, papers[got], papers[test.want])
		}
	}
}

// TestEverythingHasADocument: whatever a check of the program can miss is looked
// for in some document, and on a data sheet that is named.
func TestEverythingHasADocument(t *testing.T) {
	t.Parallel()
	paths, err := filepath.Glob("../../rules/testdata/*/open*.pa.hcl")
	if err != nil || len(paths) == 0 {
		t.Fatalf("there are no designs with open answers: %v", err)
	}
	for _, j := range linter.Check(paths, linter.Options{Checks: rules.All()}).Designs {
		if !j.Understood() {
			continue // some fixtures are half a design
		}
		documents, _ := supplyOf(j)
		for _, d := range documents {
			if d.Title == papers[designText] || d.Title == "" || strings.HasSuffix(d.Title, "of ") {
				t.Errorf("%s: %q holds %q", j.Name, d.Title, d.Items[0].What)
			}
			for _, item := range d.Items {
				if len(item.For) == 0 || len(item.For) != len(item.Places) || item.Answers == 0 || len(item.Rows) == 0 {
					t.Errorf("%s: %+v is missing for nothing", j.Name, item)
				}
			}
		}
	}
}
