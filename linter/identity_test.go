package linter_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

func TestIdentitiesOfBefore(t *testing.T) {
	t.Parallel()
	c := &check.Check{ID: "fit"}
	of := func(key string, path ...check.Step) check.Outcome {
		return check.Outcome{Check: c, Key: key, Subject: check.Subject{Path: path}}
	}
	outcomes := []check.Outcome{
		of("", check.Step{Kind: "line", Name: "Hall"}, check.Step{Kind: "loudspeaker", Name: "H"}),
		of("", check.Step{Kind: "line", Name: "Hall"}, check.Step{Kind: "loudspeaker", Name: "H"}),
		of("", check.Step{Kind: "line", Name: "Bar"}, check.Step{Kind: "loudspeaker", Name: "H"}),
		of("plug at Rack", check.Step{Kind: "music", Name: "Rack"}),
		of("Racks and Rack"),
	}
	now := []string{
		`fit: line "Hall", loudspeaker "H"`, `fit: line "Hall", loudspeaker "H" (2)`, `fit: line "Bar", loudspeaker "H"`,
		`fit: music "Rack", plug at Rack`, "fit: the job, Racks and Rack",
	}
	if diff := cmp.Diff(now, linter.Identities(outcomes, nil)); diff != "" {
		t.Errorf("now (-want +got):\n%s", diff)
	}
	renames := []linter.Rename{
		{Kind: "line", Was: "Foyer", Is: "Hall"},
		{Kind: "loudspeaker", Line: "Hall", Was: "Wall", Is: "H"},
		{Kind: "amplifier", Was: "Amp", Is: "Rack"},
	}
	before := []string{
		`fit: line "Foyer", loudspeaker "Wall"`, `fit: line "Foyer", loudspeaker "Wall" (2)`, `fit: line "Bar", loudspeaker "H"`,
		`fit: music "Rack", plug at Amp`, "fit: the job, Racks and Amp",
	}
	if diff := cmp.Diff(before, linter.Identities(outcomes, renames)); diff != "" {
		t.Errorf("before (-want +got):\n%s", diff)
	}
}

// TestNamesInKeys puts names of before into keys, where parts may have changed
// their names among each other.
func TestNamesInKeys(t *testing.T) {
	t.Parallel()
	renames := []linter.Rename{{Kind: "mixer", Was: "B", Is: "A"}, {Kind: "mixer", Was: "A", Is: "B"}, {Kind: "mixer", Was: "Old", Is: "A 2"}, {Kind: "mixer", Was: "Ø", Is: "Éa"}, {Kind: "mixer", Was: "x"}}
	for key, want := range map[string]string{
		"A":                    "B",
		"loop through A and B": "loop through B and A",
		"at A 2, at A":         "at Old, at B",
		"AB, A1, cA, Bé":       "AB, A1, cA, Bé",
		"Éa-Éa":                "Ø-Ø",
		"conductors":           "conductors",
	} {
		outcomes := []check.Outcome{{Check: &check.Check{ID: "fit"}, Key: key}}
		if got := linter.Identities(outcomes, renames)[0]; got != "fit: the job, "+want {
			t.Errorf("%q becomes %q, want %q", key, got, want)
		}
	}
}

func TestFormerly(t *testing.T) {
	t.Parallel()
	design, problems := schema.Read("hall", []*source.File{source.NewFile("hall.pa.hcl", []byte(`line "Hall" {
  formerly = "Foyer"
  loudspeaker "H" { formerly = "Wall" }
  loudspeaker "Same" { formerly = "Same" }
}
amplifier "Rack" {
}
`))}, schema.Options{})
	if len(problems) > 0 {
		t.Fatal(problems[0])
	}
	want := []linter.Rename{{Kind: "line", Was: "Foyer", Is: "Hall"}, {Kind: "loudspeaker", Line: "Hall", Was: "Wall", Is: "H"}}
	if diff := cmp.Diff(want, linter.Formerly(design)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}
