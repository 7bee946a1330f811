package criterion_test

import (
	"flag"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/criterion"
	"loudlint/schema"
	"loudlint/schema/source"
)

var update = flag.Bool("update", false, "write README.md anew")

// job has one part of every kind; its figures are worked out by hand below.
const job = `system "Test hall" {
  duty = "announcements and music"
}
amplifier "Rack" {
  rated_power = "120 W"
  high_pass   = "120 Hz"
  input "Mic 1" { sensitivity = "-50 dBV" }
}
microphone "Desk" {
  into  = "Rack"
  input = "Mic 1"
  level = "-40 dBV"
  lead  = "8 m"
}
line "North" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Level" {
    leg    = "5 m"
    rating = "36 W"
    loudspeaker "H" {
      leg      = "1 m"
      quantity = 4
      tap      = "6 W"
      spacing  = "5 m"
      space    = "Hall"
    }
  }
  loudspeaker "F" {
    leg         = "10 m"
    tap         = "12 W"
    rated_power = "15 W"
    space       = "Hall"
  }
}
space "Hall" {
  length = "12 m"
  width  = "10 m"
}
supply "Mains" {
  feeds   = ["Rack"]
  breaker = "16 A"
}
`

// judged judges a design with its own criterions alone.
func judged(t *testing.T, text string) *linter.Judged {
	t.Helper()
	file := source.NewFile("job.pa.hcl", []byte(text))
	design, problems := schema.Read(file.Name, []*source.File{file}, schema.Options{Workers: 1})
	if len(problems) > 0 {
		t.Fatalf("%v in\n%s", problems, text)
	}
	return linter.Judge(design, linter.Options{Workers: 1})
}

// asks writes a criterion.
func asks(each, expect string, more ...string) string {
	return fmt.Sprintf("criterion \"Mine\" {\n  each = %q\n  expect = %s\n%s}\n", each, expect, strings.Join(more, "\n")+"\n")
}

// about finds the answers about a part.
func about(t *testing.T, j *linter.Judged, subject string) *check.Outcome {
	t.Helper()
	if len(j.Problems) > 0 {
		t.Fatal(j.Problems)
	}
	for i := range j.Outcomes {
		if j.Outcomes[i].Subject.String() == subject {
			return &j.Outcomes[i]
		}
	}
	t.Fatalf("no answer about %s", subject)
	return nil
}

// TestEachKind asks one figure of every kind of part below, at and past its
// value, and where the design does not say it.
func TestEachKind(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		each, subject, figure string
		value                 float64 // by hand
		drop, missing         string  // what to leave out, and what is then missing
	}{
		{"amplifier", `amplifier "Rack"`, "load_w", 36, `    tap         = "12 W"`, "tap"},               // 4 × 6 W + 12 W
		{"channel", `amplifier "Rack"`, "load_percent", 30, `  rated_power = "120 W"`, "rated power"},    // 36 W of 120 W
		{"output", `amplifier "Rack", output "100 V"`, "load_w", 36, `    tap         = "12 W"`, "tap"},  // the same
		{"line", `line "North"`, "cable_m", 51, `    leg         = "10 m"`, "length of the leg"},         // 20 + 5 + 1 + 3 × 5 + 10 m
		{"loudspeaker", `line "North", loudspeaker "F"`, "rated_w", 15, "", ""},                          //
		{"loudspeaker", `line "North", attenuator "Level", loudspeaker "H"`, "all_w", 24, "", ""},        // 4 × 6 W
		{"attenuator", `line "North", attenuator "Level"`, "behind_w", 24, `      tap      = "6 W"`, ""}, //
		{"source", `microphone "Desk"`, "lead_m", 8, `  lead  = "8 m"`, "length of the lead"},            //
		{"source", `microphone "Desk"`, "in_hand_db", 10, `  level = "-40 dBV"`, "nominal level"},        // -40 − -50
		{"space", `space "Hall"`, "area_m2", 120, `  width  = "10 m"`, "size of the floor"},              // 12 m × 10 m
		{"space", `space "Hall"`, "loudspeakers", 5, "", ""},                                             //
		{"supply", `supply "Mains"`, "breaker_a", 16, `  breaker = "16 A"`, "rating of the breaker"},     //
		{"system", `the job`, "rated_w", 120, `  rated_power = "120 W"`, "rated power"},                  //
	} {
		name := test.each + " " + test.figure
		verdict := func(design string, limit float64) *check.Outcome {
			return about(t, judged(t, design+asks(test.each, fmt.Sprintf("%s <= %.9g", test.figure, limit))), test.subject)
		}
		for kind, want := range map[string]struct {
			limit   float64
			verdict check.Verdict
		}{
			"kept": {1.5 * test.value, check.Pass}, "at the limit": {test.value, check.Pass},
			"just past": {test.value * (1 - 1e-6), check.Fail}, "broken": {test.value / 2, check.Fail},
		} {
			if o := verdict(job, want.limit); o.Verdict != want.verdict {
				t.Errorf("%s, %s: %s, not %s: %s", name, kind, o.Verdict, want.verdict, o.Message)
			}
		}
		if test.drop == "" {
			continue
		}
		without := strings.Replace(job, test.drop+"\n", "", 1)
		if without == job {
			t.Fatalf("%s: there is no %q to leave out", name, test.drop)
		}
		o := verdict(without, test.value)
		if o.Verdict != check.Open || len(o.Missing) == 0 || test.missing != "" && !strings.Contains(o.Missing[0].What, test.missing) {
			t.Errorf("%s without %q: %s %v", name, test.drop, o.Verdict, o.Missing)
		}
	}
}

// TestAnswer holds everything that an answer carries.
func TestAnswer(t *testing.T) {
	t.Parallel()
	j := judged(t, job+asks("line", `load_w <= 0.25 * 120 && loudspeakers < 10`, `  message = "${name} takes ${load_w} W on ${voltage_v} V"`, `  severity = "error"`))
	o := about(t, j, `line "North"`)
	if o.Verdict != check.Fail || o.Severity != check.Error || o.Check.ID != "criterion:mine" || o.Identity != `criterion:mine: line "North"` {
		t.Errorf("%s %s %s %s", o.Verdict, o.Severity, o.Check.ID, o.Identity)
	}
	if o.Message != "North takes 36 W on 100 V." {
		t.Errorf("it says %q", o.Message)
	}
	if got := o.Primary.Text(); got != `line "North"` {
		t.Errorf("it stands at %s", got)
	}
	var evidence []string
	for _, e := range o.Evidence {
		evidence = append(evidence, e.Name+": "+e.Value+": "+e.Sum)
	}
	want := []string{"load_w: 36 W: 4 × 6 W + 1 × 12 W = 36 W", "loudspeakers: 5: "}
	if diff := cmp.Diff(want, evidence); diff != "" {
		t.Errorf("evidence (-want +got):\n%s", diff)
	}
	limit := check.Bound{Text: "at most 30 W (load_w <= 0.25 * 120)", Number: 30, Unit: "W", AtMost: true, Basis: "set by the criteria at job.pa.hcl:48", Origin: o.Limit.Origin}
	if diff := cmp.Diff(limit, *o.Limit, cmp.Comparer(func(a, b source.Span) bool { return a == b })); diff != "" {
		t.Errorf("limit (-want +got):\n%s", diff)
	}
	if o.Related[0].Note != `what criterion "Mine" expects` || !strings.HasPrefix(o.Related[0].Span.Text(), "load_w <=") || len(o.Related) < 3 {
		t.Errorf("it points to %v", o.Related)
	}
}

// TestConditions works conditions out for the line of the job.
func TestConditions(t *testing.T) {
	t.Parallel()
	for expect, want := range map[string]string{
		`load_w == 36`: "pass",
		`load_w <= "36 W" && load_w >= "0.036 kW"`:     "pass",
		`cable_m <= "167.33 ft"`:                       "pass", // 51 m are 167.323 ft
		`cable_m <= "167.3 ft"`:                        "fail",
		`voltage_v * voltage_v / load_w > "277 W"`:     "problem",
		`voltage_v * voltage_v / load_w > "277 ohm"`:   "pass", // (100 V)² / 36 W = 277.8 ohm
		`voltage_v * (load_w / voltage_v) == load_w`:   "pass",
		`load_w / cable_m < 0.8`:                       "pass", // 36 W over 51 m
		`load_w / cable_m < 0.7`:                       "fail",
		`min(load_w, 12, "20 W") == 12`:                "pass",
		`max(load_w, 12) == load_w`:                    "pass",
		`abs(-load_w - "4 W") == 40`:                   "pass",
		`-load_w + 2 * 3 - 6 / 2 == -33`:               "pass",
		`constant_voltage ? load_w < 40 : load_w > 40`: "pass",
		`(load_w > 40 ? "36 W" : load_w) == 36`:        "pass", // beside watts it is in watts
		`(load_w > 40 ? 1 : load_w) == 36`:             "pass",
		`name == "North" && amplifier != "Other"`:      "pass",
		`!(name == "North") || false`:                  "fail",
		`duty == "announcements and music"`:            "pass",
		`constant_voltage == true`:                     "pass",
		`load_w < 36`:                                  "fail",
		`load_w > 36`:                                  "fail",
		`load_w != 36`:                                 "fail",
		`loudspeakers == 5 && attenuators == 1`:        "pass",
		`drop_percent > 0 && loss_db > "0 dB"`:         "pass",
		`drop_percent * load_w / 100 < 1`:              "pass", // per cent are numbers in a product
		`load_w * "2" > 3`:                             "problem",
		// What is not known decides nothing.
		`monitored || load_w == 36`:                     "pass",
		`load_w == 36 || monitored`:                     "pass",
		`monitored && load_w == 37`:                     "fail",
		`monitored && load_w == 36`:                     "open",
		`!monitored`:                                    "open",
		`monitored ? true : load_w > 0`:                 "open",
		`load_w > 0 ? load_w > 0 : monitored`:           "pass",
		`max(1, insulation_v) > 0`:                      "open",
		`load_w / (loudspeakers - 5) > 3`:               "open", // nothing can be divided by 0
		`load_w / (loudspeakers - 5) > 3 || load_w > 1`: "pass",
		`load_w * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 * 999999999999999 > 3`: "open",
	} {
		j := judged(t, job+asks("line", expect))
		got := "problem"
		if len(j.Problems) == 0 {
			got = about(t, j, `line "North"`).Verdict.String()
		}
		if got != want {
			t.Errorf("%.80s: %s, not %s %v", expect, got, want, j.Problems)
		}
	}
}

// TestProblems tells what is wrong with a condition before anything is judged.
func TestProblems(t *testing.T) {
	t.Parallel()
	for expect, want := range map[string]string{
		`lod_w <= 5`:                    "7:12 lod_w: A line has no figure \"lod_w\". `loudlint figures line` lists those it has. Did you mean load_w?",
		`breaker_a <= 5`:                "7:12 breaker_a: A line has no figure \"breaker_a\". breaker_a is a figure of a supply. `loudlint figures line` lists those it has.",
		`load_w <= voltage_v`:           "7:12 load_w <= voltage_v: load_w is in watts and voltage_v is in volts: they cannot be compared.",
		`load_w + voltage_v <= 5`:       "7:12 load_w + voltage_v: load_w is in watts and voltage_v is in volts: they cannot be added.",
		`load_w <= loudspeakers`:        "7:12 load_w <= loudspeakers: load_w is in watts and loudspeakers is a plain number: they cannot be compared.",
		`load_w <= "6 V"`:               "7:22 \"6 V\": load_w is in watts: found \"6 V\", which is a voltage; expected a power such as \"6 W\".",
		`loudspeakers <= "6 W"`:         "7:28 \"6 W\": loudspeakers is a plain number and \"6 W\" is a text: they cannot be compared. Here stands a number without quotes.",
		`load_w <= name`:                "7:22 name: name is a word. <= stands with numbers.",
		`load_w`:                        "7:12 load_w: load_w neither holds nor fails by itself. A condition compares",
		`load_w && true`:                "7:12 load_w: load_w is in watts. && stands with comparisons",
		`!load_w`:                       "7:13 load_w: load_w is in watts. ! stands with comparisons",
		`-name == "x"`:                  "7:13 name: name is a word. - stands with numbers.",
		`name < "x"`:                    "7:12 name: name is a word. < stands with numbers.",
		`3 < load_w < 5`:                "7:12 3 < load_w < 5: 3 < load_w < 5 compares twice. Each comparison stands by itself, joined by &&. Did you mean 3 < load_w && load_w < 5?",
		`duty == "emergncy"`:            "7:20 \"emergncy\": duty is never \"emergncy\".",
		`load_w ? true : false`:         "7:12 load_w: load_w is in watts. Before ? stands a comparison",
		`true ? load_w > 3 : "x"`:       "they cannot be chosen between.",
		`1 + 1 == 2`:                    "7:12 1 + 1 == 2: 1 + 1 == 2 holds no figure: it is the same for every line.",
		`loss_db * loss_db > 3`:         "that product means nothing.",
		`min(name, 3) > 2`:              "7:16 name: name is a word. min takes numbers.",
		`"6 W" < "7 W" && load_w > 3`:   "Nothing says what \"6 W\" is measured in.",
		`loss_db < "3 W"`:               "loss_db is in decibels",
		`load_w + constant_voltage > 3`: "constant_voltage is true or false. + stands with numbers.",
		`abs(name == "x") > 2`:          "name == \"x\" is true or false. abs takes numbers.",
	} {
		j := judged(t, strings.Replace(job, "\n", "", 1)[:0]+"\n\n\n\n"+asks("line", expect))
		got := ""
		for _, p := range j.Problems {
			from := p.Span.From()
			got += fmt.Sprintf("%d:%d %s: %s\n", from.Line, from.Column, p.Span.Text(), p)
		}
		if strings.Count(got, "\n") != 1 || !strings.Contains(got, want) {
			t.Errorf("%s: told is\n%snot %s", expect, got, want)
		}
	}
	// Levels.
	for expect, want := range map[string]string{
		`level_dba + level_dba > 3`:                     "adds two levels, which have no such sum.",
		`level_dba - noise_dba >= level_dba`:            "they cannot be compared.",
		`level_dba - noise_dba >= "10 dB"`:              "",
		`level_dba - 10 >= noise_dba + "6 dB"`:          "",
		`noise_dba + 10 <= 90 && level_dba <= "95 dBA"`: "",
		`abs(level_dba) > 3`:                            "is a level. abs takes a difference",
		`2 * level_dba > "3 dB"`:                        "level_dba",
	} {
		j := judged(t, asks("space", expect))
		got := ""
		for _, p := range j.Problems {
			got += p.String()
		}
		if (want == "") != (got == "") || !strings.Contains(got, want) {
			t.Errorf("%s: told is %q, not %q", expect, got, want)
		}
	}
}

// TestWhen asks only those of which the condition holds.
func TestWhen(t *testing.T) {
	t.Parallel()
	for when, want := range map[string]string{
		`tap_w > 6`:          `fail line "North", loudspeaker "F"`,
		`tap_w > 20`:         ``,
		`sensitivity_db > 3`: `open line "North", attenuator "Level", loudspeaker "H"; open line "North", loudspeaker "F"`,
		`attenuators > 0`:    `fail line "North", attenuator "Level", loudspeaker "H"`,
	} {
		j := judged(t, job+asks("loudspeaker", "load_w > 100", "  when = "+when))
		var got []string
		for _, o := range j.Outcomes {
			got = append(got, o.Verdict.String()+" "+o.Subject.String())
		}
		if diff := cmp.Diff(want, strings.Join(got, "; ")); diff != "" {
			t.Errorf("%s (-want +got):\n%s", when, diff)
		}
	}
}

// TestMessages puts figures into messages.
func TestMessages(t *testing.T) {
	t.Parallel()
	for message, want := range map[string]string{
		``: `Line "North" does not meet "Mine": load_w < 36 is expected; load_w is 36 W.`,
		`"${name}: ${load_w / loudspeakers} W each of ${loudspeakers}"`: `North: 7.2 W each of 5.`,
		`"${load_w > 30 ? "far" : "little"} too much!"`:                 `far too much!`,
		`"Monitored: ${monitored}; ${constant_voltage}."`:               `Monitored: (not known); true.`,
		`"${drop_percent * 1000} %"`:                                    `292.9 %.`,
	} {
		more := ""
		if message != "" {
			more = "  message = " + message
		}
		o := about(t, judged(t, job+asks("line", "load_w < 36", more)), `line "North"`)
		if o.Message != want {
			t.Errorf("%s: %q, not %q", message, o.Message, want)
		}
	}
	// As many digits as it takes to tell the figure from its limit.
	o := about(t, judged(t, job+asks("line", "load_w + 0.0001 <= 36", `  message = "${load_w + 0.0001} W"`)), `line "North"`)
	if o.Message != "36.0001 W." {
		t.Errorf("%q", o.Message)
	}
}

// TestLikeOtherChecks sets the severity of a criterion, turns it off, agrees to a
// departure from it, and asks for it alone.
func TestLikeOtherChecks(t *testing.T) {
	t.Parallel()
	text := job + asks("line", "load_w < 10")
	o := about(t, judged(t, text+"criteria {\n  limit \"criterion:mine\" { severity = \"note\" }\n}\n"), `line "North"`)
	if o.Severity != check.Note || o.SeverityOrigin.IsZero() {
		t.Errorf("severity %s", o.Severity)
	}
	j := judged(t, text+"criteria {\n  limit \"criterion:mine\" { severity = \"off\" }\n}\n")
	if len(j.Outcomes) > 0 || len(j.Off) != 1 {
		t.Errorf("%d answers of a criterion that is off", len(j.Outcomes))
	}
	j = judged(t, text+"criteria {\n  limit \"criterion:mind\" { severity = \"off\" }\n}\n")
	if len(j.Problems) != 1 || !strings.Contains(j.Problems[0].String(), `Did you mean "criterion:mine"?`) {
		t.Errorf("%v", j.Problems)
	}
	o = about(t, judged(t, text+"deviation \"criterion:mine\" {\n  line = \"North\"\n  reason = \"agreed\"\n  accepted_by = \"Client\"\n}\n"), `line "North"`)
	if o.Accepted == nil {
		t.Error("the deviation is not met")
	}
}

func TestID(t *testing.T) {
	t.Parallel()
	for name, want := range map[string]string{
		"Far end": "criterion:far-end", "4.2 Cable, loss": "criterion:4.2-cable-loss", " (Größe) ": "criterion:größe",
		"日本": "criterion:日本", "a--b": "criterion:a-b",
	} {
		if got := criterion.ID(name); got != want {
			t.Errorf("%q is %s, not %s", name, got, want)
		}
	}
	j := judged(t, asks("line", "load_w < 10")+strings.Replace(asks("line", "load_w < 10"), "Mine", "Mine!", 1))
	if len(j.Problems) != 1 || !strings.Contains(j.Problems[0].Found, `makes the same check as "Mine"`) {
		t.Errorf("%v", j.Problems)
	}
}

// TestFigures holds what every figure declares to the form that the reference and
// conditions rely on.
func TestFigures(t *testing.T) {
	t.Parallel()
	form := regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)
	suffixes := map[string]string{
		"W": "_w", "V": "_v", "A": "_a", "ohm": "_ohm", "m": "_m", "m2": "_m2", "mm2": "_mm2", "Hz": "_hz", "s": "_s", "min": "_min",
		"h": "_h", "Ah": "_ah", "%": "_percent", "dB": "_db", "dBA": "_dba", "°C": "_c", "deg": "_deg",
	}
	for _, k := range criterion.Kinds() {
		seen := map[string]bool{}
		for _, f := range k.Figures {
			if !form.MatchString(f.Name) || seen[f.Name] || f.Doc == "" || strings.HasSuffix(f.Doc, ".") || f.Kind == 0 {
				t.Errorf("%s of %s: name, kind or doc is wrong, or it is there twice", f.Name, k.Each)
			}
			seen[f.Name] = true
			if suffix := suffixes[f.Unit]; f.Unit != "" && (suffix == "" || !strings.HasSuffix(f.Name, suffix)) {
				t.Errorf("%s of %s is in %s and does not say so", f.Name, k.Each, f.Unit)
			}
			if f.Unit == "" && f.Kind == criterion.Number && slices.ContainsFunc([]string{"_w", "_v", "_a", "_m", "_s", "_h", "_db", "_dba", "_ohm", "_percent"}, func(s string) bool { return strings.HasSuffix(f.Name, s) }) {
				t.Errorf("%s of %s ends in a unit and has none", f.Name, k.Each)
			}
		}
	}
}

// TestEveryFigureIsRead asks every figure of every part of a design: each has to
// come to something or say what is missing.
func TestEveryFigureIsRead(t *testing.T) {
	t.Parallel()
	for _, k := range criterion.Kinds() {
		for _, f := range k.Figures {
			expect := f.Name
			switch f.Kind {
			case criterion.Number:
				expect += " > -1000"
			case criterion.Word:
				expect += ` != ""`
				if f.Says != nil {
					expect = f.Name + ` == "` + f.Says[0] + `" || true`
				}
			case criterion.Truth:
				expect += " || !" + f.Name
			}
			for name, text := range map[string]string{"a job": job, "hardly anything": "amplifier \"A\" {}\nline \"L\" {\n  loudspeaker \"S\" {}\n  attenuator \"B\" {\n    loudspeaker \"T\" {}\n  }\n}\nmusic \"M\" {}\nspace \"P\" {}\nsupply \"U\" {}\n"} {
				j := judged(t, text+asks(k.Each, expect))
				if len(j.Problems) > 0 {
					t.Fatalf("%s of %s: %v", f.Name, k.Each, j.Problems)
				}
				if len(j.Outcomes) == 0 && !(name == "hardly anything" && (k.Each == "output" || k.Each == "channel")) {
					t.Errorf("%s of %s is asked of nothing in %s", f.Name, k.Each, name)
				}
				for _, o := range j.Outcomes {
					if o.Verdict == check.Fail || o.Verdict == check.Open && len(o.Missing) == 0 {
						t.Errorf("%s of %s in %s: %s: %s", f.Name, k.Each, name, o.Verdict, o.Message)
					}
					for _, m := range o.Missing {
						if m.What == "" {
							t.Errorf("%s of %s in %s: something without a name is missing", f.Name, k.Each, name)
						}
					}
				}
			}
		}
	}
}

// TestReferenceIsInStep compares README.md with the list of figures.
func TestReferenceIsInStep(t *testing.T) {
	t.Parallel()
	if *update {
		if err := os.WriteFile("README.md", []byte(criterion.Reference()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	have, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(have), criterion.Reference()); diff != "" {
		t.Errorf("README.md is not what the figures say; go test ./linter/criterion -update writes it (-have +want):\n%s", diff)
	}
}
