package criterion

import (
	"fmt"
	"slices"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Figures of sources, of spaces and of the job as a whole.

func sourceFigures() []figure[*analysis.Source] {
	type src = *analysis.Source
	kinds := []string{schema.KindMicrophone, schema.KindMusic, schema.KindMessage, schema.KindTelephone}
	kindOf := named("kind", "what sort of source it is", func(s src) string { return s.Part.Kind })
	kindOf.Says = kinds
	say := func(name, doc string, lacks lack, at func(*schema.Source) schema.Value[string]) figure[src] {
		return word(name, doc, schema.WordsOf(schema.KindMicrophone, name), lacks, func(s src) (schema.Value[string], *schema.Part, string) {
			return at(s.Part), &s.Part.Part, s.Part.Kind
		})
	}
	return []figure[src]{
		named("name", "its name", func(s src) string { return s.Part.Name }),
		kindOf,
		say("into", "the unit it is plugged into", lack{"unit it is plugged into", `into = "…"`}, func(s *schema.Source) schema.Value[string] { return s.Into }),
		say("input", "the input it is plugged into", lack{"input", `input = "Mic 1"`}, func(s *schema.Source) schema.Value[string] { return s.Input }),
		say("connector", "its plug", lack{"connector", `connector = "XLR 3"`}, func(s *schema.Source) schema.Value[string] { return s.Connector }),
		say("trigger", "what it gives to silence others", lack{"trigger", `trigger = "contact"`}, func(s *schema.Source) schema.Value[string] { return s.Trigger }),
		say("isolation", "what isolates it", lack{"isolation", `isolation = "transformer"`}, func(s *schema.Source) schema.Value[string] { return s.Isolation }),
		{Description{Name: "priority", Doc: "its priority; 1 is the highest", Kind: Number}, func(_ *analysis.System, s src) reading {
			v := s.Part.Priority
			if !v.Set() {
				return lack{"priority", `priority = 1`}.of(s.Part.Kind, &s.Part.Part)
			}
			return numbered(float64(v.V), check.Number("priority", float64(v.V), ""), nil)
		}},
		stated("lead_m", "m", "length of its lead", lack{"length of the lead", `lead = "6 m"`}, func(s src) (schema.Value[quantity.Length], *schema.Part, string) {
			return s.Part.Lead, &s.Part.Part, s.Part.Kind
		}),
		flag("balanced", "whether it is balanced", lack{"whether the source is balanced", `balanced = true`}, func(s src) (schema.Value[bool], *schema.Part, string) {
			return s.Part.Balanced, &s.Part.Part, s.Part.Kind
		}),
		fact("announces", "whether it is speech meant to be heard over music", func(_ *analysis.System, s src) (bool, []analysis.Missing) { return s.Part.Announces(), nil }),
		count("lines", "the lines on which it is heard", func(_ *analysis.System, s src) int { return len(s.Lines) }),
		computed("in_hand_db", "dB", "how far its input can be turned down, from full gain, before rated output is no longer reached; the least over its plugs", func(_ *analysis.System, s src) analysis.Figure[quantity.Gain] { return leastInHand(s) }),
	}
}

func leastInHand(s *analysis.Source) analysis.Figure[quantity.Gain] {
	var f analysis.Figure[quantity.Gain]
	found := false
	for _, feed := range s.Feeds {
		stage := feed.Stage()
		if stage == nil {
			continue
		}
		f.Missing = analysis.MergeMissing(f.Missing, stage.InHand.Missing)
		if !found || stage.InHand.Value < f.Value {
			missing := f.Missing
			f, found = stage.InHand, true
			f.Missing = missing
		}
	}
	if !found {
		f.Missing = []analysis.Missing{lack{"audio input it is plugged into", `input = "Mic 1"`}.in(s.Part.Kind, &s.Part.Part)}
	}
	return f
}

func spaceFigures() []figure[*schema.Space] {
	type space = *schema.Space
	size := func(name, doc string, lacks lack, at func(space) schema.Value[quantity.Length]) figure[space] {
		return stated(name, "m", doc, lacks, func(s space) (schema.Value[quantity.Length], *schema.Part, string) { return at(s), &s.Part, "space" })
	}
	return []figure[space]{
		named("name", "its name", func(s space) string { return s.Name }),
		count("quantity", "how many equal spaces it stands for", func(_ *analysis.System, s space) int { return s.Count() }),
		size("length_m", "its length", lack{"length of the space", `length = "18 m"`}, func(s space) schema.Value[quantity.Length] { return s.Length }),
		size("width_m", "its width", lack{"width of the space", `width = "10 m"`}, func(s space) schema.Value[quantity.Length] { return s.Width }),
		size("height_m", "floor to ceiling", lack{"height of the space", `height = "2.7 m"`}, func(s space) schema.Value[quantity.Length] { return s.Height }),
		computed("area_m2", "m2", "its floor area", func(_ *analysis.System, s space) analysis.Figure[quantity.FloorArea] { return analysis.FloorOf(s).Area }),
		ofSound("noise_dba", "dBA", "noise while people listen", func(s *analysis.Sound) analysis.Figure[quantity.SoundLevel] { return s.Noise }),
		ofSound("wanted_dba", "dBA", "level of speech that is wanted", func(s *analysis.Sound) analysis.Figure[quantity.SoundLevel] { return s.Wanted }),
		ofSound("level_dba", "dBA", "the level at full output, on the average over the floor; average speech is 10 dB lower", func(s *analysis.Sound) analysis.Figure[quantity.SoundLevel] {
			return ofLevels(s, s.Levels().Mean)
		}),
		ofSound("least_level_dba", "dBA", "the level at full output where it is lowest", func(s *analysis.Sound) analysis.Figure[quantity.SoundLevel] {
			return ofLevels(s, s.Levels().Least)
		}),
		ofSound("most_level_dba", "dBA", "the level at full output where it is highest", func(s *analysis.Sound) analysis.Figure[quantity.SoundLevel] {
			return ofLevels(s, s.Levels().Most)
		}),
		ofSound("spread_db", "dB", "how far these two are apart", func(s *analysis.Sound) analysis.Figure[quantity.Gain] {
			l := s.Levels()
			return analysis.Figure[quantity.Gain]{Value: l.Spread, Missing: l.Missing, Assumed: l.Assumed, From: l.From}
		}),
		{Description{Name: "sti", Doc: "speech transmission index of average speech, on the average over the floor", Kind: Number}, func(s *analysis.System, p space) reading {
			return index("sti", s.Sound(p), p, func(t *analysis.Speech) float64 { return t.Mean })
		}},
		{Description{Name: "least_sti", Doc: "the same where it is lowest", Kind: Number}, func(s *analysis.System, p space) reading {
			return index("least_sti", s.Sound(p), p, func(t *analysis.Speech) float64 { return t.Least })
		}},
		ofSound("reverberation_s", "s", "its reverberation time at 500 Hz to 2 kHz", func(s *analysis.Sound) analysis.Figure[quantity.Duration] {
			f := s.Reverberation
			if s.Open() {
				f.Missing = []analysis.Missing{lack{"reverberation in a space that is open", ""}.in("space", &s.Space.Part)}
			}
			return f
		}),
		fact("outdoors", "whether it is open to the sky; not, where the design does not say so", func(_ *analysis.System, s space) (bool, []analysis.Missing) { return s.Outdoors.V, nil }),
		count("loudspeakers", "the loudspeakers that serve it", func(s *analysis.System, p space) int { _, n := s.Shares(p); return n }),
		count("lines", "the lines whose loudspeakers serve it", func(s *analysis.System, p space) int {
			shares, _ := s.Shares(p)
			n := 0
			for _, one := range shares {
				n += len(one.Lines)
			}
			return n
		}),
		count("amplifiers", "the amplifiers whose loudspeakers serve it", func(s *analysis.System, p space) int {
			shares, _ := s.Shares(p)
			return len(slices.DeleteFunc(shares, func(one *analysis.SpaceShare) bool { return one.Amplifier == nil }))
		}),
	}
}

// ofSound declares a figure of what is heard in a space.
func ofSound[Q printed](name, unit, doc string, of func(s *analysis.Sound) analysis.Figure[Q]) figure[*schema.Space] {
	return computed(name, unit, doc, func(s *analysis.System, p *schema.Space) analysis.Figure[Q] {
		heard := s.Sound(p)
		if heard == nil {
			return analysis.Figure[Q]{Missing: []analysis.Missing{noLoudspeaker(p)}}
		}
		return of(heard)
	})
}

func noLoudspeaker(p *schema.Space) analysis.Missing {
	return analysis.Missing{What: "loudspeakers that serve the space", Part: check.Step{Kind: "space", Name: p.Name}.String(), Where: p.Header, Write: fmt.Sprintf("loudspeaker \"…\" { space = %q }", p.Name)}
}

func ofLevels(s *analysis.Sound, f analysis.Figure[quantity.SoundLevel]) analysis.Figure[quantity.SoundLevel] {
	l := s.Levels()
	f.Missing, f.Assumed = l.Missing, l.Assumed
	if f.Known() && l.Silent() {
		f.Missing = []analysis.Missing{noLoudspeaker(s.Space)}
	}
	if len(f.From) == 0 {
		f.From = l.From
	}
	return f
}

func index(name string, s *analysis.Sound, p *schema.Space, of func(*analysis.Speech) float64) reading {
	if s == nil {
		return reading{value: value{missing: []analysis.Missing{noLoudspeaker(p)}}}
	}
	t := s.Speech()
	if !t.Known() {
		return reading{value: value{missing: t.Missing}}
	}
	return numbered(of(t), check.Number(name, of(t), ""), t.Assumed)
}

func systemFigures() []figure[*analysis.System] {
	type system = *analysis.System
	say := func(name, doc string, lacks lack, at func(*schema.System) schema.Value[string]) figure[system] {
		return word(name, doc, schema.WordsOf("system", name), lacks, func(s system) (schema.Value[string], *schema.Part, string) {
			return at(s.Design.System), &s.Design.System.Part, "system"
		})
	}
	return []figure[system]{
		{Description{Name: "name", Doc: "the name of the job", Kind: Word}, func(s *analysis.System, _ system) reading {
			if s.Design.System.Name == "" {
				return reading{value: value{missing: []analysis.Missing{{What: "name of the job", Where: s.Design.System.Header, Write: `system "…" { }`}}}}
			}
			return worded("name", s.Design.System.Name)
		}},
		say("reference", "the number the job goes by", lack{"reference", `reference = "KW-31"`}, func(s *schema.System) schema.Value[string] { return s.Reference }),
		say("revision", "which issue of the design this is", lack{"revision", `revision = "C"`}, func(s *schema.System) schema.Value[string] { return s.Revision }),
		say("polarity", "which conductor goes to which terminal", lack{"polarity", `polarity = "brown to +, blue to -"`}, func(s *schema.System) schema.Value[string] { return s.Polarity }),
		computed("load_w", "W", "what all loudspeakers take at nominal line voltage", func(_ *analysis.System, s system) power { return loadOf(s.Channels) }),
		computed("rated_w", "W", "rated power of all amplifiers", func(_ *analysis.System, s system) power { return ratedOf(s.Channels) }),
		computed("heat_idle_w", "W", "what amplifiers and mixers leave as heat without signal", func(_ *analysis.System, s system) power { return heat(s, s.Heat.Idle) }),
		computed("heat_w", "W", "the same at one eighth of rated output", func(_ *analysis.System, s system) power { return heat(s, s.Heat.NormalUse) }),
		count("amplifiers", "its amplifiers", func(_ *analysis.System, s system) int { return len(s.Amplifiers) }),
		count("lines", "its lines", func(_ *analysis.System, s system) int { return len(s.Lines) }),
		count("loudspeakers", "its loudspeakers", func(_ *analysis.System, s system) int { return loudspeakersOn(s.Lines) }),
		count("sources", "its sources", func(_ *analysis.System, s system) int { return len(s.Sources) }),
		count("spaces", "its spaces, equal ones counted one by one", func(_ *analysis.System, s system) int {
			n := 0
			for _, p := range s.Design.Spaces {
				n += p.Count()
			}
			return n
		}),
		count("readings", "the readings of meters in the design", func(_ *analysis.System, s system) int { return len(s.Design.Readings) }),
		count("supplies", "its supplies", func(_ *analysis.System, s system) int { return len(s.Supplies) }),
	}
}

// heat is known where it is of every unit.
func heat(s *analysis.System, f power) power {
	f.Missing = analysis.MergeMissing(f.Missing, s.Heat.Unknown)
	return f
}
