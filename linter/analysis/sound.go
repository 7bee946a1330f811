package analysis

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"sync"

	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// SpeechBelowFull is how far average speech lies below what an amplifier gives at
// full output: 10 to 12 dB, so that its peaks are not cut off (common practice, no
// published source). The smaller figure is taken.
const SpeechBelowFull quantity.Gain = 10

// Heights of the ears. Standing is where NFPA 72 measures alarm levels; seated is
// 4 ft (common practice, no published source).
const (
	earsStandingMetres = 1.5
	earsSeatedMetres   = 1.2
)

// Sound is a space with the loudspeakers that serve it. What follows from the text
// alone is there at once; what is heard is worked out when somebody asks for it.
type Sound struct {
	Space *schema.Space
	// Runs are the loudspeaker blocks that serve it, in the order of the lines. A
	// block that like lines share is there once a line.
	Runs []*Run
	// Count is how many loudspeakers serve one of the equal spaces.
	Count int
	// Floor is the floor of one of them.
	Floor Floor
	// Noise is the A-weighted noise while people listen; Wanted the level of speech
	// that is wanted.
	Noise, Wanted Figure[quantity.SoundLevel]
	// Reverberation is the reverberation time at 500 Hz to 2 kHz on the average.
	// In the open it means nothing, and nothing is missing.
	Reverberation Figure[quantity.Duration]

	system  *System
	noiseDB sound.Bands // in each octave
	decay   sound.Bands // reverberation time of each octave, seconds
	levels  func() *Levels
	speech  func() *Speech
}

// Sound gives what is heard in a space; nil when no loudspeaker serves it.
func (s *System) Sound(space *schema.Space) *Sound { return s.sounds().spaces[space] }

// Sounds gives the spaces that loudspeakers serve, in the order of the design.
func (s *System) Sounds() []*Sound {
	var all []*Sound
	for _, space := range s.Design.Spaces {
		if one := s.Sound(space); one != nil {
			all = append(all, one)
		}
	}
	return all
}

// Open tells that no diffuse field builds up in the space: under the open sky, or
// with a side open.
func (s *Sound) Open() bool { return s.Space.Outdoors.V || s.Space.PartlyOpen.V }

// gatherSound sorts loudspeakers to the spaces they serve.
func (s *System) gatherSound() *soundings {
	all := make(map[*schema.Space]*Sound, len(s.Design.Spaces))
	lines := map[*Line]func() []spoken{}
	if len(s.Design.Spaces) == 0 {
		return &soundings{all, lines}
	}
	for _, l := range s.Lines {
		for _, r := range l.Runs {
			if !r.Part.Space.Set() {
				continue
			}
			space := s.Design.Space(r.Part.Space.V)
			if space == nil {
				continue
			}
			one := all[space]
			if one == nil {
				one = &Sound{Space: space, system: s}
				all[space] = one
			}
			if lines[l] == nil {
				lines[l] = s.listenOnce(l)
			}
			one.Runs = append(one.Runs, r)
			one.Count += r.Count
		}
	}
	for _, one := range all {
		one.Count /= one.Space.Count()
		one.Floor = floorOf(one.Space)
		one.noise()
		one.wanted()
		one.reverberation()
		one.levels = sync.OnceValue(func() *Levels { return one.work(nil) })
		one.speech = sync.OnceValue(one.transmission)
	}
	return &soundings{all, lines}
}

// Floor is the floor of a space, from its first corner along its length (x) and
// across its width (y).
type Floor struct {
	Outline sound.Outline
	// Length and Width are those of the smallest rectangle around it.
	Length, Width quantity.Length
	Area          Figure[quantity.FloorArea]
	// Square tells that only its area is known, and that it is taken as a square.
	Square bool
}

// FloorOf gives the floor of a space, whether loudspeakers serve it or not.
func FloorOf(space *schema.Space) Floor { return floorOf(space) }

func floorOf(space *schema.Space) Floor {
	f := Floor{}
	switch {
	case len(space.Outline) > 0:
		for _, corner := range space.Outline {
			f.Outline = append(f.Outline, sound.Point{X: float64(corner.Items[0].V), Y: float64(corner.Items[1].V)})
		}
		f.Area.From = []schema.Place{{Span: space.Outline[0].Span, Note: "corners of the floor"}}
	case space.Length.Set() && space.Width.Set():
		f.Outline = sound.Rectangle(float64(space.Length.V), float64(space.Width.V))
		f.Area.From = []schema.Place{{Span: space.Length.Span, Note: space.Length.Text + " long"}, {Span: space.Width.Span, Note: space.Width.Text + " wide"}}
	case space.Area.Set():
		side := math.Sqrt(float64(space.Area.V))
		f.Outline, f.Square = sound.Rectangle(side, side), true
		f.Area.From = []schema.Place{{Span: space.Area.Span, Note: "floor area"}}
		f.Area.Assumed = []string{fmt.Sprintf("the floor of %q is square; only its area is stated", space.Name)}
	}
	area := f.Outline.AreaM2()
	if area <= 0 {
		f.Outline = nil
		f.Area = Figure[quantity.FloorArea]{Missing: []Missing{missing("size of the floor", "space", &space.Part, `length = "18 m" and width = "10 m"`)}}
		return f
	}
	f.Area.Value = quantity.FloorArea(area)
	low, high := f.Outline.Bounds()
	f.Length, f.Width = quantity.Length(high.X-low.X), quantity.Length(high.Y-low.Y)
	return f
}

// Ears is the height of the ears over the floor, with what is assumed of it.
func (s *Sound) Ears() (quantity.Length, []string) {
	if s.Space.Listeners.V == "standing" {
		return earsStandingMetres, nil
	}
	if s.Space.Listeners.Set() {
		return earsSeatedMetres, nil
	}
	return earsSeatedMetres, []string{fmt.Sprintf("people sit in %q", s.Space.Name)}
}

// Ceiling is the height of the ceiling so far along the length; not known where the
// design does not say, or there is none.
func (s *Sound) Ceiling(along float64) (quantity.Length, bool) {
	if s.Space.Height.Set() {
		return s.Space.Height.V, true
	}
	height, ok := quantity.Length(0), false
	for _, step := range s.Space.Heights {
		if !ok || float64(step.Items[0].V) <= along {
			height, ok = step.Items[1].V, true
		}
	}
	return height, ok
}

// ceilingMissing is what a space lacks that says no height.
func (s *Sound) ceilingMissing() Missing {
	return missing("height of the space", "space", &s.Space.Part, `height = "2.7 m"`)
}

// VolumeMissing is what keeps the volume of the space from being known.
func (s *Sound) VolumeMissing() []Missing {
	if _, _, ok := s.volume(); ok {
		return nil
	}
	if _, known := s.Ceiling(0); known {
		return s.Floor.Area.Missing
	}
	return MergeMissing(s.Floor.Area.Missing, []Missing{s.ceilingMissing()})
}

// volume is the volume of the space and the area of all that bounds it.
func (s *Sound) volume() (volumeM3, surfaceM2 float64, ok bool) {
	if s.Floor.Outline == nil {
		return 0, 0, false
	}
	area := float64(s.Floor.Area.Value)
	if s.Space.Height.Set() {
		volumeM3 = area * float64(s.Space.Height.V)
	}
	low, high := s.Floor.Outline.Bounds()
	for i, step := range s.Space.Heights {
		from, to := low.X+float64(step.Items[0].V), high.X
		if i+1 < len(s.Space.Heights) {
			to = min(high.X, low.X+float64(s.Space.Heights[i+1].Items[0].V))
		}
		if to > from {
			volumeM3 += between(s.Floor.Outline, from, to).AreaM2() * float64(step.Items[1].V)
		}
	}
	if volumeM3 <= 0 {
		return 0, 0, false
	}
	return volumeM3, 2*area + s.Floor.Outline.PerimeterMetres()*volumeM3/area, true
}

// between is the part of a floor between two distances along its length: the outline
// cut at each (Sutherland and Hodgman). Where it falls into pieces they are joined
// by lines without area.
func between(floor sound.Outline, from, to float64) sound.Outline {
	return side(side(floor, from, 1), to, -1)
}

// side keeps what is to one side of a line across: sign 1 what is further along.
func side(floor sound.Outline, at, sign float64) sound.Outline {
	var kept sound.Outline
	for i, p := range floor {
		q := floor[(i+1)%len(floor)]
		dp, dq := sign*(p.X-at), sign*(q.X-at)
		if dp >= 0 {
			kept = append(kept, p)
		}
		if dp*dq < 0 {
			kept = append(kept, sound.Point{X: at, Y: p.Y + (q.Y-p.Y)*(at-p.X)/(q.X-p.X)})
		}
	}
	return kept
}

// octaves spreads figures that are stated for some frequencies over the octaves:
// in between on a straight line over the octaves, outside as the nearest. It is
// not ok when none is stated. Two for one octave are not told apart: the last
// counts.
func octaves[Q ~float64](bands []schema.Band[Q]) (all sound.Bands, some bool) {
	var stated [sound.BandCount]bool
	for _, b := range bands {
		k := octaveOf(b.Frequency.V)
		if k < 0 || k >= sound.BandCount {
			continue
		}
		all[k], stated[k], some = float64(b.Value.V), true, true
	}
	for k := range all {
		if stated[k] || !some {
			continue
		}
		below, above := k-1, k+1
		for below >= 0 && !stated[below] {
			below--
		}
		for above < len(all) && !stated[above] {
			above++
		}
		switch {
		case below < 0:
			all[k] = all[above]
		case above == len(all):
			all[k] = all[below]
		default:
			all[k] = all[below] + (all[above]-all[below])*float64(k-below)/float64(above-below)
		}
	}
	return all, some
}

// filledIn names the octaves that octaves filled in, each with what it took there;
// nothing where all are stated.
func filledIn[Q ~float64](bands []schema.Band[Q], all sound.Bands, write func(float64) string) string {
	var words []string
	for k, value := range all {
		if !slices.ContainsFunc(bands, func(b schema.Band[Q]) bool { return octaveOf(b.Frequency.V) == k }) {
			words = append(words, fmt.Sprintf("%s at %s", write(value), quantity.Frequency(1000*math.Exp2(float64(k-3)))))
		}
	}
	return strings.Join(words, ", ")
}

// stretched says with what the octaves of a figure are filled in that are not
// stated; nothing where all are, or where it is single.
func stretched[Q ~float64](what string, s schema.Spectrum[Q], all sound.Bands, write func(float64) string) []string {
	if s.Single.Set() {
		return nil
	}
	absent := filledIn(s.Bands, all, write)
	if absent == "" {
		return nil
	}
	return []string{fmt.Sprintf("%s is %s: only its other octaves are stated", what, absent)}
}

// Figures as they are printed where an octave is filled in.
func tenthsDB(value float64) string    { return quantity.Gain(math.Round(10*value) / 10).String() }
func threeDigits(value float64) string { return quantity.Significant(value, 3) }
func seconds(value float64) string     { return threeDigits(value) + " s" }

// octaveOf numbers the octave band that a frequency lies in, from 0 at 125 Hz; it may
// lie outside all.
func octaveOf(f quantity.Frequency) int { return int(math.Round(math.Log2(float64(f)/1000))) + 3 }

// spectrum gives a figure in every octave, single or not.
func spectrum[Q ~float64](s schema.Spectrum[Q]) (sound.Bands, bool) {
	if s.Single.Set() {
		return sound.Flat(float64(s.Single.V)), true
	}
	return octaves(s.Bands)
}

// noise works out the level of the noise and its octaves.
func (s *Sound) noise() {
	s.Noise, s.noiseDB = noiseOf(s.Space)
}

// noiseOf gives the A-weighted noise in a space, and its octaves.
func noiseOf(space *schema.Space) (Figure[quantity.SoundLevel], sound.Bands) {
	stated := space.Noise
	from := []schema.Place{{Span: stated.Span, Note: "the noise"}}
	if bands, ok := octaves(stated.Bands); ok {
		level := quantity.SoundLevel(math.Round(10*bands.DBA()) / 10)
		f := Figure[quantity.SoundLevel]{Value: level, From: from, Sum: "octaves A-weighted and added as energies = " + level.String()}
		if absent := filledIn(stated.Bands, bands, tenthsDB); absent != "" {
			f.Assumed = []string{fmt.Sprintf("the noise in %q is %s: only its other octaves are stated", space.Name, absent)}
		}
		return f, bands
	}
	if !stated.Single.Set() {
		return Figure[quantity.SoundLevel]{Missing: []Missing{missing("noise", "space", &space.Part, `noise = "58 dBA"`)}}, sound.Flat(math.Inf(-1))
	}
	return Figure[quantity.SoundLevel]{Value: stated.Single.V, From: from}, sound.NoiseDB(float64(stated.Single.V))
}

// WantedLevel is the level of speech that a space wants: stated, or so far above
// its noise.
func WantedLevel(space *schema.Space) Figure[quantity.SoundLevel] {
	switch {
	case space.WantedLevel.Set():
		return given(space.WantedLevel, "wanted")
	case space.WantedOverNoise.Set():
		noise, _ := noiseOf(space)
		f := Figure[quantity.SoundLevel]{Missing: noise.Missing, Assumed: noise.Assumed}
		if f.Known() {
			f.Value = noise.Value + quantity.SoundLevel(space.WantedOverNoise.V)
			f.From = []schema.Place{{Span: space.Noise.Span, Note: "the noise"}, {Span: space.WantedOverNoise.Span, Note: "how far speech is to stand above it"}}
			f.Sum = fmt.Sprintf("noise %s + %s = %s", noise.Value, space.WantedOverNoise.Text, f.Value)
		}
		return f
	}
	return Figure[quantity.SoundLevel]{Missing: []Missing{missing("level of speech that is wanted", "space", &space.Part, `wanted_over_noise = "10 dB"`)}}
}

func (s *Sound) wanted() { s.Wanted = WantedLevel(s.Space) }

// Purpose is what the design has to say before it makes sense to ask how loud and
// how clear speech is to be: the noise, and the level wanted. What else is lacking
// is asked for only then.
func (s *Sound) Purpose() []Missing {
	return MergeMissing(s.Wanted.Missing, s.Noise.Missing)
}

// air is the air in the space; what is not stated is ordinary.
func (s *Sound) air() sound.Air {
	a := sound.OrdinaryAir()
	a.Celsius = float64(s.Space.Temperature.Or(quantity.Temperature(a.Celsius)))
	a.HumidityPercent = float64(s.Space.Humidity.Or(quantity.Percent(a.HumidityPercent)))
	return a
}

// reverberation works out the reverberation time.
func (s *Sound) reverberation() {
	space, f := s.Space, &s.Reverberation
	if decay, ok := spectrum(space.Reverberation); ok {
		s.decay = decay
		f.From = []schema.Place{{Span: space.Reverberation.Span, Note: "reverberation time"}}
		if !space.Reverberation.Single.Set() {
			f.Sum = "octaves 500 Hz to 2 kHz on the average"
			f.Assumed = stretched(fmt.Sprintf("the reverberation time of %q", space.Name), space.Reverberation, decay, seconds)
		}
	} else if len(space.Surfaces) > 0 {
		s.fromSurfaces()
	} else if !s.Open() {
		f.Missing = []Missing{missing("reverberation time", "space", &space.Part, `reverberation = "1.2 s"`)}
	}
	if f.Known() {
		f.Value = quantity.Duration((s.decay[2] + s.decay[3] + s.decay[4]) / 3)
	}
}

// eyringFrom is the mean absorption from which Eyring's formula is taken in place of
// Sabine's, whose time never falls to 0 (common practice, no published source).
const eyringFrom = 0.2

// fromSurfaces works the reverberation time out from what bounds the space.
func (s *Sound) fromSurfaces() {
	f := &s.Reverberation
	var surfaces []sound.Surface
	for _, part := range s.Space.Surfaces {
		absorption, ok := spectrum(part.Absorption)
		note := fmt.Sprintf("%s of %s", part.Area.Text, part.Name)
		if !ok {
			m, known := materialOf(part.Material.V)
			if !known {
				f.Missing = append(f.Missing, Missing{What: "absorption coefficient of a surface", Part: named("surface", part.Name) + " of " + named("space", s.Space.Name), Where: part.Header, Write: `absorption = 0.05`})
				continue
			}
			absorption = m.Absorption
			f.Assumed = append(f.Assumed, fmt.Sprintf("%q absorbs as %q does by %s", part.Name, m.Name, m.Source))
		} else {
			f.Assumed = mergeTexts(f.Assumed, stretchedAbsorption(part, absorption))
		}
		surfaces = append(surfaces, sound.Surface{AreaM2: float64(part.Area.V), Absorption: absorption})
		f.From = append(f.From, schema.Place{Span: part.Header, Note: note})
	}
	f.Missing = MergeMissing(f.Missing, s.VolumeMissing())
	if !f.Known() {
		return
	}
	volumeM3, _, _ := s.volume()
	mean, areaM2 := sound.MeanAbsorption(surfaces)
	middle := (mean[2] + mean[3] + mean[4]) / 3
	name, formula := "Sabine", "0.161 × V / (S × α + air)"
	s.decay = sound.SabineSeconds(volumeM3, surfaces, s.air())
	if middle > eyringFrom {
		name, formula = "Eyring", "0.161 × V / (−S × ln(1 − α) + air)"
		s.decay = sound.EyringSeconds(volumeM3, surfaces, s.air())
	}
	t := quantity.Duration((s.decay[2] + s.decay[3] + s.decay[4]) / 3)
	f.Sum = fmt.Sprintf("%s, %s with V = %s m³, S = %s and a mean absorption of α = %s, each octave by itself = %s (mean of 500 Hz to 2 kHz)",
		name, formula, quantity.Significant(volumeM3, 4), quantity.FloorArea(areaM2), quantity.Significant(middle, 3), quantity.Significant(float64(t), 3)+" s")
}

// stretchedAbsorption says what of the absorption of a surface is filled in. Tables
// end at 4 kHz: what follows is told once for all surfaces.
func stretchedAbsorption(part *schema.Surface, absorption sound.Bands) []string {
	bands := part.Absorption.Bands
	has := func(k int) bool {
		return slices.ContainsFunc(bands, func(b schema.Band[float64]) bool { return octaveOf(b.Frequency.V) == k })
	}
	const last = sound.BandCount - 1
	if part.Absorption.Single.Set() || has(last) || !has(last-1) {
		return stretched(fmt.Sprintf("the absorption of %q", part.Name), part.Absorption, absorption, threeDigits)
	}
	texts := []string{"surfaces absorb at 8 kHz as they do at 4 kHz, where nothing is stated"}
	if absent := filledIn(append(slices.Clone(bands), schema.Band[float64]{Frequency: schema.Value[quantity.Frequency]{V: 8000}}), absorption, threeDigits); absent != "" {
		texts = append(texts, fmt.Sprintf("the absorption of %q is %s: only its other octaves are stated", part.Name, absent))
	}
	return texts
}

// materialOf finds a material of the published table by its name.
func materialOf(name string) (sound.Material, bool) {
	for _, m := range sound.Materials() {
		if m.Name == name {
			return m, true
		}
	}
	return sound.Material{}, false
}

// HearsSpeech tells whether somebody may want to understand speech in the space: not
// where the job is for music alone, or only music reaches its loudspeakers.
func (s *Sound) HearsSpeech() bool {
	if s.system.Design.System.Duty.V == "music" {
		return false
	}
	music := false
	for _, src := range s.system.Sources {
		for _, l := range src.Lines {
			if !s.servedBy(l) {
				continue
			}
			if src.Part.Announces() {
				return true
			}
			music = true
		}
	}
	return !music
}

func (s *Sound) servedBy(l *Line) bool {
	return slices.ContainsFunc(s.Runs, func(r *Run) bool { return r.Line == l })
}
