package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// TypicalData asks whether figures are those of the things that will be bought.
var TypicalData = &check.Check{
	ID:      "typical-data",
	Asks:    "Does the job rest on the data of the things that will be bought?",
	Summary: "A model of the built-in catalogue is used: its figures are invented.",
	Why: "The models whose names begin with typical/ let a design be judged before anything is chosen. No maker sells them: " +
		"ratings, taps and sensitivities of what is bought will differ, and every figure has to be looked at again.",
	How:       "Lists each typical model in use and how many parts use it.",
	Basis:     "the catalogue says of each of its entries that it is invented",
	Blind:     "A house catalogue is taken at its word. Connectors and cables of the typical catalogue are standard sizes and not listed.",
	Severity:  check.Note,
	NeverOpen: "whether a typical model is named can always be seen in the text",
	Failing: check.Example{
		Shows: "A ceiling loudspeaker from the typical catalogue.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    model = "typical/ceiling-6"
    tap   = "6 W"
  }
}
`,
	},
	Passing: check.Example{
		Shows: "A loudspeaker that says itself what it is.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    rated_power = "6 W"
    tap         = "6 W"
  }
}
`,
	},
	Judge: check.EachJob(typicalData),
}

func typicalData(r *check.Report, s *analysis.System) {
	used := s.TypicalModels()
	if len(used) == 0 {
		r.Pass("No model of the typical catalogue is used.")
		return
	}
	for _, u := range used {
		a := r.Fail(check.Note, fmt.Sprintf("%s is typical data, invented, of no maker; %s of the design %s it.", u.Name, wording.Counted(u.Count, "part"), verb(u.Count, "uses", "use")))
		a.Key(u.Name).At(u.First).
			Remedy(check.Advice, fmt.Sprintf("Before ordering, write the data sheet of what is bought as a model of your own (`loudlint models %q` shows the entry to copy) and name that.", u.Name))
	}
}
