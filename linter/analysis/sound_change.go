package analysis

import "loudlint/schema/quantity"

// Changed is what a change of loudspeaker blocks does to a line.
type Changed struct {
	Line *Line
	// Load is what the line takes then, More how much more that is.
	Load, More quantity.Power
	// Drop is what its cable takes then; not known where it is not known now.
	Drop Figure[quantity.Percent]
}

// Change solves the lines that a change of blocks is about again.
func (s *System) Change(change Instead) []Changed {
	var all []Changed
	for _, l := range s.Lines {
		if !changes(l, change) {
			continue
		}
		again := *l
		again.Runs, again.Attenuators, again.Loss = nil, nil, Loss{}
		b := build(s, &again, wiring{lumped: l.reads.how.lumped, instead: change})
		again.lose(b)
		load, _ := b.sum.total()
		all = append(all, Changed{Line: l, Load: load, More: load - l.Load.Value, Drop: again.Loss.Drop})
	}
	return all
}
