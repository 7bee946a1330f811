package analysis

import (
	"fmt"
	"math"
	"slices"

	"loudlint/linter/sound"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/wording"
)

// Feedback is a live microphone in a space whose loudspeakers it feeds.
type Feedback struct {
	Microphone *Source
	Sound      *Sound
	Missing    []Missing
	Assumed    []string
	// Placed tells that the design says where the microphone and all loudspeakers
	// are.
	Placed bool
	// Open is how many microphones are open in the space at once.
	Open int
	// AtMicrophone and AtListeners are what the loudspeakers give there at the same
	// gain: at full output.
	AtMicrophone, AtListeners Figure[quantity.SoundLevel]
}

// Known tells that it could be worked out.
func (f *Feedback) Known() bool { return len(f.Missing) == 0 }

// Feedback works out how near a microphone is to ringing; nil where it does not
// stand in a space whose loudspeakers it feeds.
func (s *System) Feedback(src *Source) *Feedback {
	if src.Part.Kind != schema.KindMicrophone || !src.Part.StandsIn.Set() {
		return nil
	}
	space := s.Design.Space(src.Part.StandsIn.V)
	if space == nil {
		return nil
	}
	one := s.Sound(space)
	if one == nil || !slices.ContainsFunc(one.Runs, func(r *Run) bool { return slices.Contains(src.Lines, r.Line) }) {
		return nil
	}
	f := &Feedback{Microphone: src, Sound: one, Open: s.openMicrophones(src)}
	f.Missing = one.Wanted.Missing
	if len(f.Missing) > 0 { // what is wanted is asked first, the rest after it
		return f
	}
	if !src.Part.TalkerDistance.Set() {
		f.Missing = MergeMissing(f.Missing, []Missing{src.Missing("distance from the talker's mouth to the microphone", `talker_distance = "30 cm"`)})
	}
	if !one.Open() {
		f.Missing = MergeMissing(f.Missing, one.Reverberation.Missing)
	}
	l := one.Levels()
	f.Missing = MergeMissing(f.Missing, l.Missing)
	if !f.Known() || len(l.heard) == 0 {
		return f
	}
	f.fields(l)
	return f
}

// openMicrophones counts the microphones that stand in the same space and feed the
// same lines, this one included; those that are open only while a key is held are
// not taken to be open at once with it.
func (s *System) openMicrophones(src *Source) int {
	n := 1
	for _, other := range s.Sources {
		if other == src || other.Part.Kind != schema.KindMicrophone || other.Part.StandsIn.V != src.Part.StandsIn.V || other.Part.Trigger.V == "contact" {
			continue
		}
		if slices.ContainsFunc(other.Lines, func(l *Line) bool { return slices.Contains(src.Lines, l) }) {
			n++
		}
	}
	return n
}

// microphoneMetres is the height of a microphone whose height is not stated: at the
// mouth of somebody who sits or stands (common practice, no published source).
const microphoneMetres = 1.2

// fields works out what the loudspeakers give at the microphone and, on the average,
// at the listeners.
func (f *Feedback) fields(l *Levels) {
	s := f.Sound
	f.Assumed = l.Assumed
	f.Placed = l.Placed && f.Microphone.Part.Position.Set()
	f.AtListeners = l.Mean
	place := f.Microphone.Part.Position
	if !place.Set() {
		f.AtMicrophone = l.Mean
		f.Assumed = mergeTexts(f.Assumed, []string{"the microphone stands where the loudspeakers are as loud as they are on the average"})
		return
	}
	at := vector(place)
	if len(place.Items) < 3 {
		at.Z = microphoneMetres
		f.Assumed = mergeTexts(f.Assumed, []string{fmt.Sprintf("the microphone is %s over the floor", quantity.Length(microphoneMetres))})
	}
	level := quantity.SoundLevel(math.Round(10*sound.NewModel(l.space, l.heard).Heard(at).Total().DBA()) / 10)
	f.AtMicrophone = Figure[quantity.SoundLevel]{Value: level, From: append([]schema.Place{{Span: place.Span, Note: "where the microphone stands"}}, l.From...),
		Sum: fmt.Sprintf("%s of %s in %q at full output = %s", fieldOf(l), wording.Counted(len(l.heard), "loudspeaker"), s.Space.Name, level)}
}

func fieldOf(l *Levels) string {
	if l.DirectOnly {
		return "direct sound"
	}
	return "direct and reverberant sound"
}

// Needed is the gain with which a talker of so many dBA at 1 m is heard as loud as is
// wanted: from what the microphone hears of the talker to what the listeners are to hear.
func (f *Feedback) Needed(talkerDBA float64) Figure[quantity.Gain] {
	distance := f.Microphone.Part.TalkerDistance
	talker := talkerDBA - 20*math.Log10(float64(distance.V))
	figure := Figure[quantity.Gain]{Value: tenthDB(float64(f.Sound.Wanted.Value) - talker)}
	figure.Sum = fmt.Sprintf("%s wanted − talker %s at %s = %s", f.Sound.Wanted.Value, quantity.SoundLevel(math.Round(10*talker)/10), distance.Text, figure.Value)
	return figure
}

// Potential is the gain, from the microphone to the listeners, at which the loudspeakers
// give the microphone what they are made of, so that it rings.
func (f *Feedback) Potential() Figure[quantity.Gain] {
	figure := Figure[quantity.Gain]{Value: tenthDB(float64(f.AtListeners.Value-f.AtMicrophone.Value) - sound.OpenMicrophonesDB(f.Open))}
	figure.Sum = fmt.Sprintf("%s at the listeners − %s at the microphone%s = %s", f.AtListeners.Value, f.AtMicrophone.Value, f.shared(), figure.Value)
	return figure
}

// shared words what open microphones cost.
func (f *Feedback) shared() string {
	if f.Open > 1 {
		return fmt.Sprintf(" − 10 lg %d", f.Open)
	}
	return ""
}

func tenthDB(dB float64) quantity.Gain { return quantity.Gain(math.Round(10*dB) / 10) }

// Margin is how far the system stays below the gain at which it rings when it gives
// the listeners the level that is wanted, for a talker of so many dBA at 1 m:
//
//	L(talker at the microphone) − 10 lg(open microphones) + field(listeners) − field(microphone) − wanted
//
// See sound.GainFromLevelsDB.
func (f *Feedback) Margin(talkerDBA float64) Figure[quantity.Gain] {
	distance := f.Microphone.Part.TalkerDistance
	return f.marginAt(talkerDBA, float64(distance.V), distance.Text)
}

func (f *Feedback) marginAt(talkerDBA, metres float64, text string) Figure[quantity.Gain] {
	talker := talkerDBA - 20*math.Log10(metres)
	gain := sound.GainFromLevelsDB(talker, float64(f.AtListeners.Value), float64(f.AtMicrophone.Value), f.Open, 0)
	margin := tenthDB(gain - float64(f.Sound.Wanted.Value))
	figure := Figure[quantity.Gain]{Value: margin, From: f.AtMicrophone.From}
	figure.Sum = fmt.Sprintf("talker %s at %s%s + %s at the listeners − %s at the microphone − %s wanted = %s",
		quantity.SoundLevel(math.Round(10*talker)/10), text, f.shared(), f.AtListeners.Value, f.AtMicrophone.Value, f.Sound.Wanted.Value, margin)
	return figure
}

// Nearer is the distance from the talker at which the margin would be so many dB,
// rounded down to a centimetre.
func (f *Feedback) Nearer(talkerDBA, marginDB float64) quantity.Length {
	distance := f.Microphone.Part.TalkerDistance
	short := marginDB - float64(f.marginAt(talkerDBA, float64(distance.V), "").Value)
	return quantity.Length(math.Floor(100*float64(distance.V)*math.Pow(10, -short/20)+1e-9) / 100)
}
