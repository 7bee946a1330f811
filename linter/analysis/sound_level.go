package analysis

import (
	"fmt"
	"math"
	"slices"
	"sync"

	"loudlint/linter/circuit"
	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/parallel"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// Levels is what is heard in a space at full output: pink or speech-shaped, it comes
// to the same A-weighted figure (sound.OnAxisDB). Average speech is SpeechBelowFull
// lower.
type Levels struct {
	Missing []Missing
	Assumed []string
	From    []schema.Place
	// Of tells which of several equal spaces this is: the least supplied one. It is
	// empty where there is only one.
	Of string
	// Speakers are its loudspeakers in walking order; silent ones too.
	Speakers []Speaker
	// Placed tells that the design says where all of them are and where they look.
	Placed bool
	// DirectOnly tells that the reverberant field is left out, because it is not
	// known or there is none.
	DirectOnly bool
	// Survey is the field over the floor; nil while something is missing.
	Survey *sound.Survey
	// Least, Fifth (95 % of the floor has more), Mean and Most are of that field.
	Least, Fifth, Mean, Most Figure[quantity.SoundLevel]
	// Spread is from Least to Most.
	Spread quantity.Gain

	space sound.Space
	heard []sound.Loudspeaker // of Speakers that are not silent
	index []int               // which of Speakers each is
}

// Known tells that the levels could be worked out.
func (l *Levels) Known() bool { return len(l.Missing) == 0 }

// Silent tells that all loudspeakers of the space are switched off.
func (l *Levels) Silent() bool { return l.Known() && len(l.heard) == 0 }

// Levels gives what is heard in the space at full output. It is worked out at the
// first call, once.
func (s *Sound) Levels() *Levels { return s.levels() }

// Instead is what stands in the place of loudspeaker blocks when a change is tried.
type Instead map[*schema.Loudspeaker]*schema.Loudspeaker

// With gives what would be heard with blocks changed.
func (s *Sound) With(change Instead) *Levels { return s.work(change) }

// spoken is one loudspeaker of a line and what it receives.
type spoken struct {
	run   *Run
	name  func() string
	watts float64
}

// walked is a block as the walk along a line met it.
type walked struct {
	run   int // in Runs of the line
	count int
	draws bool // it is in the network
}

// speak solves a line as it stands for an announcement and gives what each of its
// loudspeakers receives at full output, in walking order.
func (s *System) speak(l *Line, change Instead) []spoken {
	again := *l
	again.Runs, again.Attenuators = nil, nil
	b := build(s, &again, wiring{lumped: l.reads.how.lumped, set: announced, listen: true, instead: change})
	var solution *circuit.Solution
	if volts := b.sourceVolts(); volts > 0 && !b.empty() {
		var solver circuit.Solver
		if done, err := solver.Solve(b.net, referenceHz, volts); err == nil {
			solution = done
		}
	}
	all := make([]spoken, 0, again.Loudspeakers)
	at, k := 0, 0 // the place, and which of its run
	for _, w := range b.walked {
		for range w.count {
			one := spoken{run: l.Runs[w.run], name: func() string { return l.Runs[w.run].Part.Name }}
			if w.draws {
				for at < len(b.places) && (k >= b.places[at].count || b.places[at].run == nil) {
					at, k = at+1, 0
				}
			}
			if w.draws && at < len(b.places) { // it is not where the network refused what was added
				p, member := &b.places[at], k
				one.name = func() string { return p.memberName(member) }
				if solution != nil {
					one.watts = solution.LoadWatts(p.loads + circuit.LoadID(member))
				}
				k++
			}
			all = append(all, one)
		}
	}
	return all
}

// announced is how an attenuator stands during an announcement: lifted where it has
// an override, else as it is set. One that is set off counts as turned up: that it
// can silence announcements is another question.
func announced(a *schema.Attenuator) schema.Attenuation {
	if Lifted(a) || a.Setting.V.Off {
		return schema.Attenuation{}
	}
	return a.Setting.V
}

// Lifted tells that something lifts an attenuator for an announcement.
func Lifted(a *schema.Attenuator) bool {
	return a.Override.Set() && a.Override.V != schema.OverrideNone
}

// speakers gives the loudspeakers of one of the equal spaces: of several, the one
// that gets the least.
func (s *Sound) speakers(change Instead) (all []Speaker, of string) {
	var spread []spoken
	lines := s.lines()
	for _, l := range lines {
		line := s.system.spoken(l)
		if changes(l, change) {
			line = s.system.speak(l, change)
		}
		for i := range line {
			if space := line[i].run.Part.Space; space.Set() && space.V == s.Space.Name {
				spread = append(spread, line[i])
			}
		}
	}
	rooms := s.Space.Count()
	each := len(spread) / rooms
	least := spread[:each]
	if rooms > 1 {
		lowest := math.Inf(1)
		for room := range rooms {
			some, total := spread[room*each:(room+1)*each], 0.0
			for i := range some {
				sensitivity, _ := sensitivityOf(some[i].run.Part)
				total += some[i].watts * math.Pow(10, sensitivity[3]/10)
			}
			if total < lowest*(1-1e-9) {
				least, lowest = some, total
				of = fmt.Sprintf("the least supplied of the %d equal spaces, number %d in walking order", rooms, room+1)
			}
		}
	}
	all = make([]Speaker, len(least))
	for i := range least {
		all[i] = Speaker{Run: least[i].run, Name: least[i].name(), Watts: quantity.Power(least[i].watts)}
		if with := change[least[i].run.Part]; with != nil {
			changed := *least[i].run
			changed.Part = with
			all[i].Run = &changed
		}
	}
	return all, of
}

// lines are the lines that serve the space.
func (s *Sound) lines() []*Line {
	var all []*Line
	for _, r := range s.Runs {
		if len(all) == 0 || all[len(all)-1] != r.Line {
			all = append(all, r.Line)
		}
	}
	return all
}

// changes tells that a change is about a block of the line.
func changes(l *Line, change Instead) bool {
	return slices.ContainsFunc(l.Runs, func(r *Run) bool { return change[r.Part] != nil })
}

// sensitivityOf is how loud a loudspeaker is at 1 W and 1 m, in each octave.
func sensitivityOf(part *schema.Loudspeaker) (sound.Bands, bool) {
	if bands, ok := spectrum(part.SensitivityAt); ok {
		return bands, true
	}
	return sound.Flat(float64(part.Sensitivity.V)), part.Sensitivity.Set()
}

// stretchedSensitivity says in which octaves the sensitivity of a loudspeaker is
// filled in.
func stretchedSensitivity(part *schema.Loudspeaker) []string {
	bands, ok := octaves(part.SensitivityAt.Bands)
	if !ok {
		return nil
	}
	name := named("loudspeaker", part.Name)
	if part.Model.Set() {
		name = named("model", part.Model.V)
	}
	return stretched("the sensitivity of "+name, part.SensitivityAt, bands, tenthsDB)
}

// work works out what is heard.
func (s *Sound) work(change Instead) *Levels {
	l := &Levels{Placed: true, Missing: s.Floor.Area.Missing, Assumed: slices.Clone(s.Floor.Area.Assumed)}
	for _, r := range s.Runs {
		l.Missing = MergeMissing(l.Missing, r.Delivered.Missing, dataMissing(r.Part))
		l.Assumed = mergeTexts(l.Assumed, r.Delivered.Assumed, stretchedSensitivity(r.Part))
	}
	if !l.Known() {
		return l
	}
	l.Speakers, l.Of = s.speakers(change)
	missing, assumed := s.place(l.Speakers)
	ears, seated := s.Ears()
	l.Missing = missing
	l.Assumed = mergeTexts(l.Assumed, s.attenuated(), assumed, seated)
	if !l.Known() {
		return l
	}
	l.space = sound.Space{
		Planes:  []sound.Plane{{Outline: s.Floor.Outline, EarZ: float64(ears)}},
		Air:     s.air(),
		NoiseDB: s.noiseDB,
	}
	l.DirectOnly = !s.room(l)
	l.load()
	l.Survey = sound.SurveySpace(l.space, l.heard, sound.SurveyOptions{Do: s.system.do, MostListeners: atMostFor(mostPairs, len(l.heard), 10_000)})
	l.describe(s)
	return l
}

// room adds the reverberant field where one builds up and it is known.
func (s *Sound) room(l *Levels) bool {
	volumeM3, surfaceM2, ok := s.volume()
	if !ok || s.Open() || !s.Reverberation.Known() {
		return false
	}
	l.Assumed = mergeTexts(l.Assumed, s.Reverberation.Assumed)
	l.space.Room = &sound.Room{VolumeM3: volumeM3, SurfaceM2: surfaceM2, Reverberation: s.decay}
	return true
}

// dataMissing is what the data sheet of a loudspeaker lacks for working out levels.
func dataMissing(part *schema.Loudspeaker) []Missing {
	var all []Missing
	if _, ok := sensitivityOf(part); !ok {
		all = append(all, missing("sensitivity", "loudspeaker", &part.Part, `sensitivity = "90 dB"`))
	}
	if !part.Coverage.Set() {
		all = append(all, missing("coverage angle", "loudspeaker", &part.Part, `coverage = "120 deg"`))
	}
	return all
}

// attenuated says which attenuators are taken as fully up.
func (s *Sound) attenuated() []string {
	var all []string
	for _, r := range s.Runs {
		for _, a := range r.Behind {
			if !Lifted(a.Part) && (!a.Part.Setting.Set() || a.Part.Setting.V.Off) {
				all = mergeTexts(all, []string{fmt.Sprintf("attenuator %q stands fully up", a.Part.Name)})
			}
		}
	}
	return all
}

// shape is what makes the directivities of two loudspeakers equal.
type shape struct {
	horizontal, vertical, hz float64
	half                     bool
	q                        sound.Bands
}

// load turns loudspeakers into what the field is worked out of.
func (l *Levels) load() {
	known := map[shape]*sound.Directivity{}
	for i := range l.Speakers {
		at := &l.Speakers[i]
		l.Placed = l.Placed && !at.Assumed
		if at.Watts <= 0 {
			continue // switched off
		}
		part := at.Run.Part
		form := shapeOf(part)
		directivity := known[form]
		if directivity == nil {
			directivity = sound.NewDirectivity(sound.Coverage{HorizontalDegrees: form.horizontal, VerticalDegrees: form.vertical, FromHz: form.hz, HalfSpace: form.half, Q: form.q})
			known[form] = directivity
		}
		l.heard = append(l.heard, sound.Loudspeaker{At: at.At, Aim: at.Aim, OnAxisDB: l.onAxis(part, float64(at.Watts)), Directivity: directivity})
		l.index = append(l.index, i)
	}
}

func shapeOf(part *schema.Loudspeaker) shape {
	form := shape{horizontal: float64(part.Coverage.V), hz: float64(part.CoverageAt.V), half: part.Class.V == classCeiling}
	form.vertical = float64(part.CoverageUp.Or(part.Coverage.V))
	if q := part.DirectivityFactor; q.Single.Set() {
		form.q = sound.Flat(q.Single.V)
	} else {
		for _, b := range q.Bands { // octaves that are not stated follow from the angles
			if k := int(math.Round(math.Log2(float64(b.Frequency.V)/1000))) + 3; k >= 0 && k < sound.BandCount {
				form.q[k] = b.Value.V
			}
		}
	}
	return form
}

// onAxis is how loud a loudspeaker is on its axis, held to what it takes in each
// octave.
func (l *Levels) onAxis(part *schema.Loudspeaker, watts float64) sound.Bands {
	sensitivity, _ := sensitivityOf(part)
	level := sound.OnAxisDB(sensitivity, watts)
	most, ok := spectrum(part.RatedPowerAt)
	if !ok {
		return level
	}
	speech := sound.SpeechDB(0)
	all := speech.TotalDB()
	for k := range level {
		share := watts * math.Pow(10, (speech[k]-all)/10)
		if share > most[k] {
			level[k] -= 10 * math.Log10(share/most[k])
			l.Assumed = mergeTexts(l.Assumed, []string{fmt.Sprintf("loudspeaker %q gives no more in an octave than the power it can take there", part.Name)})
		}
	}
	return level
}

// describe words the figures of a survey.
func (l *Levels) describe(s *Sound) {
	level := &l.Survey.Level
	if len(l.heard) == 0 {
		return
	}
	loudest := 0
	for i := range l.heard {
		if l.heard[i].OnAxisDB.DBA() > l.heard[loudest].OnAxisDB.DBA() {
			loudest = i
		}
	}
	at := l.Speakers[l.index[loudest]]
	field := "direct and reverberant sound"
	if l.DirectOnly {
		field = "direct sound"
	}
	sum := fmt.Sprintf("%s of %s at %s, the loudest, %q, with %s on its axis at 1 m: ", field, wording.Counted(len(l.heard), "loudspeaker"), wording.Counted(len(l.Survey.Listeners), "listener"),
		at.Name, onAxisText(at.Run.Part, float64(at.Watts)))
	l.From = l.sources(s)
	figure := func(value float64, text string) Figure[quantity.SoundLevel] {
		rounded := quantity.SoundLevel(math.Round(10*value) / 10)
		return Figure[quantity.SoundLevel]{Value: rounded, Sum: sum + text + " " + rounded.String(), From: l.From, Assumed: l.Assumed}
	}
	l.Least, l.Fifth = figure(level.Least, "at the softest"), figure(level.Fifth, "at 95 % of the floor at least")
	l.Mean, l.Most = figure(level.Mean, "on the average"), figure(level.Most, "at the loudest")
	l.Spread = quantity.Gain(math.Round(10*level.Spread) / 10)
}

// onAxisText writes how loud a loudspeaker is at 1 m.
func onAxisText(part *schema.Loudspeaker, watts float64) string {
	sensitivity, _ := sensitivityOf(part)
	stated := part.Sensitivity.Text
	if part.SensitivityAt.Set() || stated == "" {
		stated = quantity.Significant(sensitivity.Plus(sound.SpeechDB(0)).DBA(), 3) + " dB"
	}
	return fmt.Sprintf("%s + 10 lg %s W = %s dB", stated, quantity.Significant(watts, 3), quantity.Significant(onAxisDB(part, watts), 3))
}

// sources points to what made the levels.
func (l *Levels) sources(s *Sound) []schema.Place {
	var from []schema.Place
	seen := map[*schema.Loudspeaker]bool{}
	for i := range l.Speakers {
		part := l.Speakers[i].Run.Part
		if !seen[part] && len(seen) < 6 {
			seen[part] = true
			from = append(from, schema.Place{Span: part.Header, Note: "loudspeakers that serve it"})
		}
	}
	from = append(from, s.Floor.Area.From...)
	if !l.DirectOnly {
		from = append(from, s.Reverberation.From...)
	}
	return from
}

// Late is what may be heard as an echo in a space.
type Late struct {
	// Share of the listeners who hear one, to a whole per cent.
	Share quantity.Percent
	// At is the place where it is worst, Speaker what comes late there, First what
	// comes first.
	At             sound.Vector
	Speaker, First Speaker
	After          quantity.Duration
	// Below is how far it is below the sum of all that came before.
	Below quantity.Gain
}

// mostPairs bounds loudspeakers × listeners of a survey, mostArrivals where each pair
// costs much more; no real space comes near either.
const (
	mostPairs    = 50_000_000
	mostArrivals = 2_000_000
)

// atMostFor is how many listeners there may be for so many loudspeakers.
func atMostFor(pairs, loudspeakers, most int) int {
	return max(16, min(most, pairs/max(1, loudspeakers)))
}

// thinned is how many listeners are asked where each costs much.
const thinned = 400

// thin picks at most so many listeners, evenly.
func thin(all []sound.Vector, most int) []sound.Vector {
	if len(all) <= most {
		return all
	}
	some := make([]sound.Vector, most)
	for i := range some {
		some[i] = all[i*len(all)/most]
	}
	return some
}

// Late looks for direct sounds that come more than afterSeconds after the first and
// less than withinDB below the sum of all before them. ok is false while levels
// are not known.
func (s *Sound) Late(afterSeconds, withinDB float64) (worst Late, ok bool) {
	l := s.Levels()
	if !l.Known() || len(l.heard) == 0 {
		return worst, false
	}
	model := sound.NewModel(l.space, l.heard)
	listeners := thin(l.Survey.Listeners, atMostFor(mostArrivals, len(l.heard), thinned))
	found := make([]Late, len(listeners))
	s.system.do(len(listeners), func(i int) {
		arrivals := model.Arrivals(listeners[i], nil)
		found[i].Below = quantity.Gain(math.Inf(1))
		for _, late := range sound.Late(arrivals, afterSeconds, withinDB) {
			if below := quantity.Gain(late.BelowDB); below < found[i].Below-1e-9 {
				found[i] = Late{
					At: listeners[i], Speaker: l.Speakers[l.index[late.Loudspeaker]], First: l.Speakers[l.index[late.First]],
					After: quantity.Duration(late.AfterSeconds), Below: below,
				}
			}
		}
	})
	count := 0
	worst.Below = quantity.Gain(math.Inf(1))
	for i := range found {
		if math.IsInf(float64(found[i].Below), 1) {
			continue
		}
		count++
		if found[i].Below < worst.Below-1e-9 {
			worst = found[i]
		}
	}
	worst.Share = quantity.Percent(math.Round(100 * float64(count) / float64(len(listeners))))
	return worst, true
}

// Reach is the length of the longest way across the floor, in metres.
func (s *Sound) Reach() quantity.Length {
	return quantity.Length(math.Hypot(float64(s.Floor.Length), float64(s.Floor.Width)))
}

// soundings is what is gathered once for all spaces.
type soundings struct {
	spaces map[*schema.Space]*Sound
	lines  map[*Line]func() []spoken
}

// spoken gives what each loudspeaker of a line receives, worked out once.
func (s *System) spoken(l *Line) []spoken { return s.sounds().lines[l]() }

// do spreads work over the cores.
func (s *System) do(n int, work func(i int)) { parallel.Do(n, s.workers, work) }

// listenOnce makes the solution of a line something that is worked out once.
func (s *System) listenOnce(l *Line) func() []spoken {
	return sync.OnceValue(func() []spoken { return s.speak(l, nil) })
}
