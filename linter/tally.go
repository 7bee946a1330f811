package linter

import "loudlint/linter/check"

// Tally counts the answers about a design, or about several. Findings that were
// accepted by agreement or known before stand apart and are not among the errors,
// warnings and notes.
type Tally struct {
	Errors, Warnings, Notes, Known, Accepted, Open, Passes int
}

// Tally counts the answers.
func (j *Judged) Tally() Tally {
	var t Tally
	for i := range j.Outcomes {
		switch o := &j.Outcomes[i]; o.Verdict {
		case check.Pass:
			t.Passes++
		case check.Open:
			t.Open++
		case check.Fail:
			switch {
			case o.Accepted != nil:
				t.Accepted++
			case o.Known():
				t.Known++
			case o.Severity == check.Error:
				t.Errors++
			case o.Severity == check.Warning:
				t.Warnings++
			default:
				t.Notes++
			}
		}
	}
	return t
}

// Plus adds another tally.
func (t Tally) Plus(more Tally) Tally {
	return Tally{t.Errors + more.Errors, t.Warnings + more.Warnings, t.Notes + more.Notes, t.Known + more.Known, t.Accepted + more.Accepted, t.Open + more.Open, t.Passes + more.Passes}
}

// Findings counts those that nobody accepted and that were not known before.
func (t Tally) Findings() int { return t.Errors + t.Warnings + t.Notes }

// Answers counts all.
func (t Tally) Answers() int { return t.Findings() + t.Known + t.Accepted + t.Open + t.Passes }

// Size is how much a system has of what people count.
type Size struct{ Amplifiers, Lines, Loudspeakers, Sources int }

// Size counts the parts of the system; none where nothing was judged.
func (j *Judged) Size() Size {
	if j.System == nil {
		return Size{}
	}
	s := Size{Amplifiers: len(j.System.Amplifiers), Lines: len(j.System.Lines), Sources: len(j.System.Sources)}
	for _, l := range j.System.Lines {
		s.Loudspeakers += l.Loudspeakers
	}
	return s
}

// Plus adds another size.
func (s Size) Plus(more Size) Size {
	return Size{s.Amplifiers + more.Amplifiers, s.Lines + more.Lines, s.Loudspeakers + more.Loudspeakers, s.Sources + more.Sources}
}
