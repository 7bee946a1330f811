package rules

import (
	"fmt"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// ProgrammeFit asks whether music is played by something that can play it.
var ProgrammeFit = &check.Check{
	ID:      "programme-fit",
	Asks:    "Has each space with music a loudspeaker besides horns that can play it?",
	Summary: "Music is meant for a space that has horns only.",
	Why: "Horns are made for calls that carry far: they have no bass and a narrow, hard treble. Music from horns alone is what people complain of first, and turning it up makes it worse. " +
		"Whoever pays for music should know before it hangs.",
	How:   "Takes the music sources meant for the lines of each space and looks whether every loudspeaker there is a horn. One cone is enough to pass.",
	Basis: "common practice, no published source",
	Blind: "Spaces without a horn are not asked, and neither are those to which no music source is drawn. " +
		"Two-way horns, and music that is only a signal or a background to work, may well be wanted: agree it with a deviation. " +
		"Where loudspeakers name no space, those of one line count as one.",
	Severity: check.Note,
	Failing: check.Example{
		Shows: "A yard with horns gets music.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
}
music "Player" { into = "Rack" }
`,
	},
	Passing: check.Example{
		Shows: "Cabinets play the music; horns stand beside them for calls.",
		Design: `amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
  loudspeaker "Terrace" {
    kind     = "wall"
    quantity = 2
    tap      = "10 W"
  }
}
music "Player" { into = "Rack" }
`,
	},
	Judge: check.EachPlace(programmeFit),
}

func programmeFit(r *check.Report, p *analysis.Place) {
	var (
		horn    *analysis.Run
		music   *analysis.Source
		missing []analysis.Missing
		horns   int
		others  bool
	)
	for _, run := range p.Runs {
		if run.Part.Class.V == "horn" {
			horns += run.Count
			if horn == nil {
				horn = run
			}
		}
	}
	if horn == nil {
		r.NotAsked()
		return
	}
	for _, run := range p.Runs {
		playing := r.System().Playing(run.Line)
		if music == nil {
			music = playing
		}
		switch {
		case playing == nil, run.Part.Class.V == "horn": // it plays no music, or is counted
		case !run.Part.Class.Set():
			missing = append(missing, analysis.Missing{What: "kind of loudspeaker", Part: fmt.Sprintf("loudspeaker %q", run.Part.Name), Where: run.Part.Header, Write: `kind = "wall"`})
		default:
			others = true
		}
	}
	switch {
	case music == nil:
		r.NotAsked()
	case others:
		r.Pass(fmt.Sprintf("Music %s comes from more than horns.", placeIn(p))).At(horn.Part.Header)
	case len(missing) > 0:
		r.Open(fmt.Sprintf("Whether music %s comes from more than horns cannot be told.", placeIn(p)), analysis.MergeMissing(missing)...).At(horn.Part.Header)
	default:
		r.Fail(check.Note, fmt.Sprintf("%s is meant to be heard %s, and %s there %s: music will sound thin and hard.", music.Part.Name, placeIn(p), wording.Counted(horns, "loudspeaker"), verb(horns, "is a horn", "are all horns"))).
			At(modelAt(horn.Part)).See(music.Part.Header, "the music").
			Remedy(check.Advice, fmt.Sprintf("Hang cabinets or columns %s for the music, or keep the music off it (lines = [ … ] on the source).", placeIn(p)))
	}
}
