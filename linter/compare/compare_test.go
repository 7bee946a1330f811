package compare_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/compare"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// hall is an invented design: a load that is too great, and nothing said of a
// convention of polarity.
const hall = `system "Hall" { duty = "announcements and music" }
amplifier "Rack" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
    spacing  = "5 m"
  }
}
`

func judged(t *testing.T, name, text string, only ...string) *linter.Judged {
	t.Helper()
	design, problems := schema.Read(name, []*source.File{source.NewFile(name, []byte(text))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatalf("%s: %v", name, problems[0])
	}
	options := linter.Options{Checks: rules.All(), Date: quantity.Date{Year: 2026, Month: 11, Day: 25}}
	if len(only) > 0 {
		options.Only = only
	}
	return linter.Judge(design, options)
}

// compared compares hall with what it becomes when texts in it are replaced.
func compared(t *testing.T, only []string, oldNew ...string) *compare.Comparison {
	t.Helper()
	return compare.Compare(judged(t, "old.pa.hcl", hall, only...), judged(t, "new.pa.hcl", strings.NewReplacer(oldNew...).Replace(hall), only...), "old", "new")
}

func TestNothingChanged(t *testing.T) {
	t.Parallel()
	c := compared(t, nil, "line \"Hall\" {", "# A comment.\nline   \"Hall\" { # more")
	if len(c.Figures)+len(c.Parts) > 0 || c.Count(compare.Unchanged) != len(c.Findings) || len(c.Findings) == 0 {
		t.Errorf("%+v\n%+v\n%+v", c.Findings, c.Figures, c.Parts)
	}
	for _, o := range c.New.Outcomes {
		if o.State != check.Unchanged || o.Gates() {
			t.Errorf("%s is %s", o.Identity, o.State)
		}
	}
}

func TestFindings(t *testing.T) {
	t.Parallel()
	const agreed = "deviation \"load-margin\" {\n  amplifier   = \"Rack\"\n  reason      = \"Phase 2\"\n  accepted_by = \"Engineer\"\n"
	for _, test := range []struct {
		name    string
		changes []string
		old     string // stands at the end of the old design
		want    []string
		gates   bool
	}{
		{name: "gone", changes: []string{`"60 W"`, `"120 W"`}, want: []string{"gone error load-margin pass"}},
		{name: "less grave", changes: []string{"= 11", "= 10"}, want: []string{"changed error load-margin warning"}},
		{name: "cannot be judged any more", changes: []string{`    tap      = "6 W"` + "\n", ""}, want: []string{"gone error load-margin open"}},
		{name: "renamed", changes: []string{`amplifier "Rack" {`, `amplifier "Main" {`, `= "Rack"`, `= "Main"`}, want: []string{"unchanged error load-margin error"}},
		{name: "replaced", changes: []string{`amplifier "Rack" { rated_power = "60 W" }`, `amplifier "Main" { rated_power = "50 W" }`, `= "Rack"`, `= "Main"`}, want: []string{"new none load-margin error", "gone error load-margin none"}, gates: true},
		{name: "accepted", changes: []string{"system", agreed + "}\nsystem"}, want: []string{"accepted error load-margin error"}},
		{name: "accepted no more", old: agreed + "}\n", changes: []string{"system", agreed + "  until = \"2026-11-24\"\n}\nsystem"}, want: []string{"new error load-margin error"}, gates: true},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			c := compare.Compare(judged(t, "old.pa.hcl", hall+test.old, "load-margin"), judged(t, "new.pa.hcl", strings.NewReplacer(test.changes...).Replace(hall), "load-margin"), "old", "new")
			var got []string
			for _, f := range c.Findings {
				said := [2]string{"none", "none"}
				id := ""
				for i, o := range []*check.Outcome{f.Old, f.New} {
					if o == nil {
						continue
					}
					id = o.Check.ID
					if said[i] = o.Severity.String(); o.Verdict != check.Fail {
						said[i] = o.Verdict.String()
					}
				}
				got = append(got, fmt.Sprintf("%s %s %s %s", f.State, said[0], id, said[1]))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
			result := linter.Result{Designs: []*linter.Judged{c.New}}
			if gates := result.Gravest() > 0; gates != test.gates {
				t.Errorf("something new counts: %v, want %v", gates, test.gates)
			}
			if n := len(c.New.Before.Gone); n != c.Count(compare.Gone) {
				t.Errorf("%d are gone for the outcomes", n)
			}
		})
	}
}

// TestGoneWithItsQuestion demands that a finding whose question is another one now
// is told with what is answered about the part instead.
func TestGoneWithItsQuestion(t *testing.T) {
	t.Parallel()
	const player = "amplifier \"Rack\" {\n  rated_power = \"60 W\"\n  input \"Aux\" { stereo = \"summed inside\" }\n}\nline \"L\" {\n  amplifier = \"Rack\"\n  output    = \"100 V\"\n  loudspeaker \"H\" { tap = \"6 W\" }\n}\nmusic \"Player\" {\n  into      = \"Rack\"\n  input     = \"Aux\"\n  channels  = \"stereo\"\n  summed_by = \"Y-lead\"\n}\n"
	c := compare.Compare(judged(t, "old.pa.hcl", player, "mono-sum"), judged(t, "new.pa.hcl", strings.Replace(player, "Y-lead", "input", 1), "mono-sum"), "old", "new")
	if len(c.Findings) != 1 || c.Findings[0].State != compare.Gone || c.Findings[0].New == nil || c.Findings[0].New.Verdict != check.Pass {
		t.Errorf("%+v", c.Findings)
	}
}

func TestFigures(t *testing.T) {
	t.Parallel()
	figures := func(c *compare.Comparison) []string {
		var all []string
		for _, f := range c.Figures {
			all = append(all, strings.TrimSuffix(fmt.Sprintf("%s: %s: %s, %s: %s", f.Subject, f.Name, f.Before.Text, f.Now.Text, f.Difference), ": "))
		}
		return all
	}
	for _, test := range []struct {
		name    string
		changes []string
		want    []string
	}{
		// By hand: 11 × 6 W = 66 W, and with a loop of 26.6 ohm/km (IEC 60228 class 5)
		// (0.04 km × 0.66 A + 0.005 km × 0.06 A × (1 + … + 10)) × 26.6 ohm/km = 1.14 V
		// of 100 V, a little less because the loudspeakers then take less.
		{"a rating", []string{`"60 W"`, `"80 W"`}, []string{`amplifier "Rack": rated power: 60 W, 80 W: +20 W (+33.3 %)`}},
		{"one fewer", []string{"= 11", "= 10"}, []string{
			"the job: loudspeakers: 11, 10: -1",
			`amplifier "Rack": load: 66 W, 60 W: -6 W (-9.09 %)`,
			`amplifier "Rack", output "100 V": load: 66 W, 60 W: -6 W (-9.09 %)`,
			`amplifier "Rack", output "100 V": lowest impedance: 153 ohm, 168.1 ohm: +15.1 ohm (+9.87 %)`,
			`line "Hall": loudspeakers: 11, 10: -1`,
			`line "Hall": load: 66 W, 60 W: -6 W (-9.09 %)`,
			`line "Hall": drop at the worst loudspeaker: 1.13 %, 0.9887 %: -0.141 percentage points`,
			`line "Hall", loudspeaker "H": quantity: 11, 10: -1`,
			`line "Hall", loudspeaker "H": most that one receives: 5.917 W, 5.924 W: +0.00745 W (+0.126 %)`,
		}},
		{"not known any more", []string{`  home_run  = "40 m"` + "\n", ""}, []string{
			`amplifier "Rack", output "100 V": lowest impedance: 153 ohm, 151.9 ohm: -1.06 ohm (-0.695 %)`,
			`line "Hall": drop at the worst loudspeaker: 1.13 %, not known`,
			`line "Hall", loudspeaker "H": most that one receives: 5.917 W, 6 W: +0.0832 W (+1.41 %)`,
		}},
		{"under another name", []string{`line "Hall" {`, "line \"Foyer\" {\n  formerly = \"Hall\"", `"60 W"`, `"80 W"`}, []string{`amplifier "Rack": rated power: 60 W, 80 W: +20 W (+33.3 %)`}},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(test.want, figures(compared(t, []string{"load-margin"}, test.changes...))); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestParts(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name     string
		old, now string
		want     []string
	}{
		{"the same", `space "A" { alike = 2 }`, `space "A" { alike = 3 }`, nil},
		{"added and removed", `space "A" { alike = 2 }`, `space "B" { alike = 3 }`, []string{"added space B", "removed space A"}},
		{"by what it says", `space "A" { alike = 2 }`, `space "B" { formerly = "A" }`, []string{"renamed space A B stated"}},
		{"by content", `space "A" { alike = 2 }`, "space \"B\" {\n  alike =   2 # rooms\n}", []string{"renamed space A B"}},
		{"of two contents alike neither is known", "space \"A\" { alike = 2 }\nspace \"B\" { alike = 2 }", "space \"C\" { alike = 2 }\nspace \"B\" { alike = 3 }\nspace \"D\" { alike = 2 }", []string{"added space C", "added space D", "removed space A"}},
		{"nothing is no content", `space "A" {}`, `space "B" {}`, []string{"added space B", "removed space A"}},
		{"another kind", `space "A" { alike = 2 }`, `part "A" { quantity = 2 }`, []string{"removed space A", "added part A"}},
		{"said long ago", `space "B" { formerly = "A" }` + "\nspace \"A\" { alike = 2 }", `space "B" { formerly = "A" }` + "\nspace \"A\" { alike = 2 }", nil},
		{"said of a part that is not there", `space "A" { alike = 2 }`, "space \"A\" {\n  alike    = 2\n  formerly = \"Z\"\n}", nil},
		{"two change their names", "space \"A\" { alike = 2 }\nspace \"B\" { alike = 3 }", "space \"A\" { formerly = \"B\" }\nspace \"B\" { formerly = \"A\" }", []string{"renamed space B A stated", "renamed space A B stated"}},
		{"a line goes with what is on it", "line \"L\" {\n  loudspeaker \"H\" { quantity = 3 }\n  existing \"Old\" {}\n}", "", []string{"removed line L 4 devices"}},
		{"devices of a renamed line", "line \"L\" {\n  loudspeaker \"H\" { tap = \"6 W\" }\n}", "line \"M\" {\n  formerly = \"L\"\n  loudspeaker \"J\" { tap = \"6 W\" }\n  loudspeaker \"K\" { tap = \"3 W\" }\n}", []string{"renamed line L M stated", "renamed loudspeaker H J on M", "added loudspeaker K on M"}},
		{"devices of other lines", "line \"L\" {\n  loudspeaker \"H\" { tap = \"6 W\" }\n}\nline \"M\" { home_run = \"2 m\" }", "line \"L\" { home_run = \"3 m\" }\nline \"M\" {\n  loudspeaker \"H\" { tap = \"6 W\" }\n}", []string{"removed loudspeaker H on L", "added loudspeaker H on M"}},
		{"runs of one name", "line \"L\" {\n  loudspeaker \"H\" { quantity = 2 }\n  loudspeaker \"H\" {\n    quantity = 2\n    first    = 3\n  }\n}", "line \"L\" {\n  loudspeaker \"H\" { quantity = 2 }\n}", []string{"removed loudspeaker H on L"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			c := compare.Compare(judged(t, "old.pa.hcl", test.old, "unfed"), judged(t, "new.pa.hcl", test.now, "unfed"), "old", "new")
			var got []string
			for _, p := range c.Parts {
				text := strings.Join(strings.Fields(fmt.Sprintf("%s %s %s %s", p.Change, p.Kind, p.Was, p.Is)), " ")
				if p.Line != "" {
					text += " on " + p.Line
				}
				if p.Stated {
					text += " stated"
				}
				if p.Devices > 0 {
					text += fmt.Sprintf(" %d devices", p.Devices)
				}
				if p.Change != compare.Added && p.Old.IsZero() || p.Change != compare.Removed && p.New.IsZero() {
					t.Errorf("%s: it has no place", text)
				}
				got = append(got, text)
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
