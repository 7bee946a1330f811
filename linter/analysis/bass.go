package analysis

import (
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Bass is how far down in frequency one kind of programme goes on the lines of an
// amplifier, and how far down the transformers there take it.
type Bass struct {
	// Needs is the highest of the lowest frequencies of the loudspeakers that
	// get less of a cut than they need or, when none does, of all. WorstRun states
	// it.
	Needs    schema.Value[quantity.Frequency]
	WorstRun *Run
	// Cut is the frequency below which the bass is cut on the way there, and Source
	// is whose way it is.
	Cut    schema.Value[quantity.Frequency]
	Source *Source
	// Short counts the loudspeakers that get less of a cut than they need, and
	// All those that the programme reaches and that have a transformer.
	Short, All int
	// Missing is what keeps some loudspeakers from being judged.
	Missing []Missing
}

// Bass gives what music does to the transformers on an amplifier, and what speech
// does where music does nothing or does not come. Loudspeakers that no source
// reaches, and those connected directly, are in neither.
func (s *System) Bass(a *Amplifier) (music, speech Bass) {
	ways := cuts{system: s, known: map[cutKey]cut{}}
	for n, l := range s.Lines {
		if l.Amplifier == a && l.Output != nil && l.Output.Kind == ConstantVoltage {
			ways.judge(n, l, &music, &speech)
		}
	}
	return music, speech
}

// cuts remembers what cuts the bass on the way of a source to a power channel:
// the way is the same to every line of it.
type cuts struct {
	system *System
	known  map[cutKey]cut
}

type cutKey struct {
	source  *Source
	channel *Channel
}

func (c *cuts) judge(n int, l *Line, music, speech *Bass) {
	played, plays := c.lowest(n, l, true)
	spoken, speaks := c.lowest(n, l, false)
	if !plays && !speaks {
		return
	}
	for _, r := range l.Runs {
		if r.Tap.Direct || r.Tap.Off {
			continue
		}
		switch {
		case plays && (!speaks || !played.holds(r) || spoken.holds(r)):
			music.add(r, played)
		default:
			speech.add(r, spoken)
		}
	}
}

// cut is where the bass is cut on the way of a source.
type cut struct {
	at     schema.Value[quantity.Frequency]
	source *Source
	amp    *schema.Unit
}

// holds tells that the cut is where a loudspeaker needs it, or higher.
func (c cut) holds(r *Run) bool {
	needs := r.Part.LowestFrequency
	return needs.Set() && c.at.Set() && quantity.AtLeast(float64(c.at.V), float64(needs.V))
}

// lowest gives the lowest cut of all sources of one kind on the n-th line; the one
// of which nothing is known counts as lowest. It is false when none reaches it.
func (c *cuts) lowest(n int, l *Line, music bool) (cut, bool) {
	var lowest cut
	for _, src := range c.system.Sources {
		if src.Part.Announces() == music || !src.heard.has(n) {
			continue
		}
		if next := c.way(src, l); lowest.source == nil || next.at.V < lowest.at.V {
			lowest = next
		}
	}
	return lowest, lowest.source != nil
}

func (c *cuts) way(src *Source, l *Line) cut {
	key := cutKey{src, l.Channel}
	if known, ok := c.known[key]; ok && l.Channel != nil {
		return known
	}
	next := cut{source: src, amp: l.Amplifier.Part}
	for _, step := range c.system.Way(src, l) {
		if at := cutOf(step.Into.Unit.Part); at.Set() && at.V > next.at.V {
			next.at = at
		}
	}
	c.known[key] = next
	return next
}

// cutOf is the frequency below which a unit cuts the bass: its high-pass, or the
// lowest frequency it delivers.
func cutOf(u *schema.Unit) schema.Value[quantity.Frequency] {
	if u.HighPass.Set() && (!u.LowestFrequency.Set() || u.HighPass.V >= u.LowestFrequency.V) {
		return u.HighPass
	}
	return u.LowestFrequency
}

func (b *Bass) add(r *Run, c cut) {
	b.All += r.Count
	needs := r.Part.LowestFrequency
	if !needs.Set() {
		b.Missing = MergeMissing(b.Missing, []Missing{missing("lowest frequency it takes", "loudspeaker", &r.Part.Part, `lowest_frequency = "120 Hz"`)})
	}
	if !c.at.Set() {
		b.Missing = MergeMissing(b.Missing, []Missing{missing("high-pass", "amplifier", &c.amp.Part, `high_pass = "120 Hz"`)})
	}
	if !needs.Set() || !c.at.Set() {
		return
	}
	short := !c.holds(r)
	if short {
		b.Short += r.Count
	}
	first := b.WorstRun == nil || short && b.Short == r.Count
	if first || short == (b.Short > 0) && needs.V > b.Needs.V {
		b.Needs, b.WorstRun, b.Cut, b.Source = needs, r, c.at, c.source
	}
}
