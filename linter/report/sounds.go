package report

import (
	"fmt"
	"html/template"
	"slices"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/linter/drawing"
	"loudlint/schema/wording"
)

// mapBytes is how much maps may add to a report: it has to be mailed.
const mapBytes = 2_500_000

// sounds makes a sheet for each space that loudspeakers serve, with its figures and
// maps. Where maps would take more bytes than they may, spaces about which something
// was found come first.
func (p *page) sounds(j *linter.Judged, most int) {
	all := j.System.Sounds()
	p.Spaces = make([]sheet, len(all))
	order := make([]int, 0, 2*len(all))
	for i, one := range all {
		p.Spaces[i] = spaceSheet(one, i+1)
		if foundAbout(j, one.Space.Name) {
			order = append(order, i)
		}
	}
	for i := range all {
		if !slices.Contains(order, i) {
			order = append(order, i)
		}
	}
	left, without := most, 0
	for _, i := range order {
		s := &p.Spaces[i]
		if left <= 0 {
			without++
			continue
		}
		level, speech := drawing.MapsOf(j, all[i])
		for k, one := range []drawing.Map{level, speech} {
			if one.Picture == nil {
				s.Notes = append(s.Notes, cleanAll(one.Says)...)
				continue
			}
			drawn := template.HTML(one.Element(fmt.Sprintf("%s-map-%d", s.ID, k+1))) //nolint:gosec // a picture escapes all that it letters
			if left -= len(drawn); left > 0 {
				s.Pictures = append(s.Pictures, drawn)
			}
		}
		if left <= 0 {
			s.Pictures = nil
			without++
		}
	}
	if without > 0 {
		p.Unmapped = fmt.Sprintf("Maps of %d of the %d spaces are left out, for the size of the report; spaces about which something was found come first. `loudlint draw sound` draws them all.", without, len(all))
	}
}

// foundAbout tells that a check fails about a space.
func foundAbout(j *linter.Judged, space string) bool {
	return slices.ContainsFunc(j.Outcomes, func(o check.Outcome) bool {
		return o.Verdict == check.Fail && len(o.Subject.Path) > 0 && o.Subject.Path[0] == check.Step{Kind: "space", Name: space}
	})
}

// spaceSheet gives the figures of a space.
func spaceSheet(one *analysis.Sound, number int) sheet {
	s := sheet{ID: fmt.Sprintf("space-%d", number), Name: clean(one.Space.Name)}
	levels, speech := one.Levels(), one.Speech()
	s.Says = wording.Counted(one.Count, "loudspeaker")
	if levels.Of != "" {
		s.Says += ", " + levels.Of
	}
	add(&s, "noise", &one.Noise)
	add(&s, "level of speech wanted", &one.Wanted)
	if !one.Open() {
		add(&s, "reverberation time", &one.Reverberation)
	}
	switch {
	case !levels.Known():
		s.Figures = append(s.Figures, figure{Name: "level at full output", Value: "not known", Sum: clean("not stated: " + missingText(levels.Missing))})
	case !levels.Silent():
		add(&s, "level at full output: softest", &levels.Least)
		for _, row := range []struct {
			name  string
			level fmt.Stringer
		}{{"95 % of the floor has at least", levels.Fifth.Value}, {"mean", levels.Mean.Value}, {"loudest", levels.Most.Value}} {
			s.Figures = append(s.Figures, figure{row.name, row.level.String(), "of the same field"})
		}
		s.Figures = append(s.Figures, figure{Name: "spread", Value: fmt.Sprintf("%.1f dB", float64(levels.Spread)), Sum: "from softest to loudest"})
		if levels.DirectOnly {
			s.note("levels are of the direct sound alone, without reverberation")
		}
	}
	for _, assumed := range levels.Assumed {
		s.note(assumed)
	}
	switch {
	case !speech.Known():
		s.Figures = append(s.Figures, figure{Name: "speech transmission index", Value: "not known", Sum: clean("not stated: " + missingText(speech.Missing))})
	case !levels.Silent():
		add(&s, "level of speech for the index below", &speech.Level)
		for _, row := range []struct {
			name  string
			index float64
		}{{"speech transmission index (STI): least", speech.Least}, {"95 % of the floor has at least", speech.Fifth}, {"mean", speech.Mean}} {
			s.Figures = append(s.Figures, figure{row.name, drawing.Index(row.index), ""})
		}
		for _, doubt := range speech.Doubts {
			s.note(doubt)
		}
	}
	return s
}

func cleanAll(texts []string) []string {
	var all []string
	for _, text := range texts {
		all = append(all, clean(text))
	}
	return all
}
