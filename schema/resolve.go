package schema

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"loudlint/schema/quantity"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// resolver follows everything in a design that points elsewhere.
type resolver struct {
	design   *Design
	layers   [][]*source.File // the weakest first
	refs     [][]reference    // of each section
	hints    map[string]hint
	problems []Problem
	said     int                  // problems of the resolver's own
	partial  bool                 // a file could not be read as a whole: names may be missing
	flawed   map[source.Span]bool // headers of blocks in which something was refused

	units   map[string]*Unit
	lines   map[string]*Line
	spaces  map[string]*Space
	index   map[*Unit]*unitParts
	sharing map[*Line]bool // lines whose devices are those of the line they are like
}

// full tells that no more problems are kept.
func (r *resolver) full() bool { return r.said >= MaxProblems }

func (r *resolver) problem(p Problem) {
	if !r.full() {
		r.said++
		r.problems = append(r.problems, p)
	}
}

// sound tells that what a block says was understood, so that what it does not
// say is not written.
func (r *resolver) sound(p *Part) bool { return !r.flawed[p.Header] }

func (r *resolver) refuse(span source.Span, found, expected, nearest string) {
	r.problem(Problem{Span: span, Found: found, Expected: expected, Nearest: nearest})
}

// merge puts the files together in the order of their names.
func (r *resolver) merge(fragments []*fragment) {
	d := r.design
	var systems []*System
	var safety []*Safety
	kept := 0
	r.flawed = map[source.Span]bool{}
	for i, f := range fragments {
		if i > 0 && fragments[i-1].file != f.file {
			kept = 0
		}
		problems := f.problems[:min(len(f.problems), MaxProblems-kept)]
		kept += len(problems)
		r.problems = append(r.problems, problems...)
		r.refs = append(r.refs, f.refs)
		r.partial = r.partial || f.partial || kept >= MaxProblems
		for _, header := range f.flawed {
			r.flawed[header] = true
		}
		systems = append(systems, f.systems...)
		safety = append(safety, f.safety...)
		d.Units = append(d.Units, f.units...)
		d.Lines = append(d.Lines, f.lines...)
		d.Groups = append(d.Groups, f.groups...)
		d.Sources = append(d.Sources, f.sources...)
		d.MuteLinks = append(d.MuteLinks, f.muteLinks...)
		d.Spaces = append(d.Spaces, f.spaces...)
		d.Readings = append(d.Readings, f.readings...)
		d.Supplies = append(d.Supplies, f.supplies...)
		d.Items = append(d.Items, f.items...)
		d.Deviations = append(d.Deviations, f.deviations...)
		d.Catalogue.add(&f.catalogue)
	}
	r.layCriteria(fragments)
	d.System = &System{}
	if len(systems) > 0 {
		d.System = systems[0]
	}
	for _, s := range systems[min(1, len(systems)):] {
		r.problem(Problem{Span: s.Header, Found: fmt.Sprintf("A second system block, %q.", s.Name), Expected: "A design is one job: one system block in all its files.", Related: []Place{{systems[0].Header, fmt.Sprintf("the first one, %q", systems[0].Name)}}})
	}
	if len(safety) > 0 {
		d.Safety = safety[0]
	}
	for _, s := range safety[min(1, len(safety)):] {
		r.problem(Problem{Span: s.Header, Found: "A second safety block.", Expected: "What a design states about safe work stands in one place.", Related: []Place{{safety[0].Header, "the first one"}}})
	}
}

func (r *resolver) resolve() {
	d := r.design
	distinct(r, "amplifier or mixer", d.Units)
	distinct(r, "line", d.Lines)
	distinct(r, "group", d.Groups)
	distinct(r, "source", d.Sources)
	distinct(r, "mute link", d.MuteLinks)
	distinct(r, "space", d.Spaces)
	distinct(r, "reading", d.Readings)
	distinct(r, "supply", d.Supplies)
	distinct(r, "part", d.Items)
	r.units, r.lines, r.spaces = byName(d.Units), byName(d.Lines), byName(d.Spaces)
	r.groupsAgainstLines()
	r.checkReferences(r.refs)
	r.likeLines()
	r.likeSpaces()
	r.useTypical()
	r.distinctModels()
	if !r.boundUnits() {
		return
	}
	r.models()
	for _, u := range d.Units {
		r.expandUnit(u)
	}
	r.links()
	for _, l := range d.Lines {
		r.line(l)
	}
	r.devices()
	for _, s := range d.Sources {
		r.source(s)
	}
	for _, m := range d.MuteLinks {
		m.UnitPart, m.InputPart = r.feed(m.Into, m.Input, true)
	}
	for _, u := range d.Units {
		r.unitNames(u)
	}
	r.addresses()
	r.limitsOnce()
	d.units, d.lines, d.spaces, d.sources = r.units, r.lines, r.spaces, byName(d.Sources)
}

// distinct refuses two parts of one kind with names that are equal or that
// nobody can tell apart.
func distinct[T interface{ part() *Part }](r *resolver, what string, all []T) {
	seen := make(map[string]*Part, len(all))
	for _, t := range all {
		p := t.part()
		if p.Name == "" { // refused already
			continue
		}
		key := fold(p.Name)
		before, twice := seen[key]
		switch {
		case !twice:
			seen[key] = p
		case before.Name == p.Name:
			r.problem(Problem{Span: p.NameSpan, Found: fmt.Sprintf("A second %s is called %q.", what, p.Name), Expected: "Each has a name of its own.", Related: []Place{{before.NameSpan, "the first one"}}})
		default:
			r.problem(Problem{Span: p.NameSpan, Found: fmt.Sprintf("The name %q differs from %q only in capitals or spaces.", p.Name, before.Name), Expected: "People could not tell them apart: give each a name of its own.", Related: []Place{{before.NameSpan, "the first one"}}})
		}
	}
}

func (r *resolver) groupsAgainstLines() {
	for _, g := range r.design.Groups {
		if l := r.lines[g.Name]; l != nil {
			r.problem(Problem{Span: g.NameSpan, Found: fmt.Sprintf("A line is called %q too.", g.Name), Expected: "A source that names it could mean either.", Related: []Place{{l.NameSpan, "the line"}}})
		}
	}
}

// likeLines carries out `like` on lines: one level deep, so that a reader has
// to look in one other place at most.
func (r *resolver) likeLines() {
	for _, l := range r.design.Lines {
		if !l.Like.Set() {
			continue
		}
		model := r.lines[l.Like.V]
		switch {
		case model == nil: // refused with the references
		case model == l:
			r.refuse(l.Like.Span, "This line is like itself.", "Here stands the name of another line.", "")
		case model.Like.Set():
			r.problem(Problem{Span: l.Like.Span, Found: fmt.Sprintf("%q is itself like another line.", model.Name), Expected: "Name the line that is written out.", Nearest: quoted(model.Like.V), Related: []Place{{model.Like.Span, "here"}}})
		default:
			theDialect().line.inherit(l, model, "like", "formerly")
			if len(l.Devices) == 0 && len(model.Devices) > 0 {
				l.Devices = model.Devices
				if r.sharing == nil {
					r.sharing = map[*Line]bool{}
				}
				r.sharing[l] = true
			}
		}
	}
}

func (r *resolver) likeSpaces() {
	for _, s := range r.design.Spaces {
		if !s.Like.Set() {
			continue
		}
		model := r.spaces[s.Like.V]
		switch {
		case model == nil: // refused with the references
		case model == s:
			r.refuse(s.Like.Span, "This space is like itself.", "Here stands the name of another space.", "")
		case model.Like.Set():
			r.problem(Problem{Span: s.Like.Span, Found: fmt.Sprintf("%q is itself like another space.", model.Name), Expected: "Name the space that is written out.", Nearest: quoted(model.Like.V), Related: []Place{{model.Like.Span, "here"}}})
		default:
			skip := []string{"like", "formerly", "alike"}
			if s.WantedLevel.Set() {
				skip = append(skip, "wanted_over_noise")
			}
			if s.WantedOverNoise.Set() {
				skip = append(skip, "wanted_level")
			}
			if s.Length.Set() || s.Width.Set() || s.Area.Set() || len(s.Outline) > 0 {
				skip = append(skip, otherFloor(s)...)
			}
			if s.Height.Set() || len(s.Heights) > 0 {
				skip = append(skip, "height", "heights")
			}
			theDialect().space.inherit(s, model, skip...)
			if len(s.Surfaces) == 0 {
				s.Surfaces = model.Surfaces
			}
		}
	}
	for _, s := range r.design.Spaces {
		if s.WantedLevel.Set() && s.WantedOverNoise.Set() {
			r.problem(Problem{Span: s.WantedOverNoise.Span, Found: "This space has two wanted levels.", Expected: "Speech is wanted either at a level (wanted_level) or above the noise (wanted_over_noise).", Related: []Place{{s.WantedLevel.Span, "the other one"}}})
		}
		r.heights(s)
		r.outline(s)
		r.reverberation(s)
	}
}

// mostCorners bounds a floor: each pair of its sides is compared.
const mostCorners = 1000

// outline refuses a floor whose sides cross: it would have no inside.
func (r *resolver) outline(s *Space) {
	corner := func(i int) (x, y float64) {
		c := s.Outline[i%len(s.Outline)]
		return float64(c.Items[0].V), float64(c.Items[1].V)
	}
	// turn tells on which side of the line through corners i and i+1 another lies.
	turn := func(i, of int) float64 {
		ax, ay := corner(i)
		bx, by := corner(i + 1)
		x, y := corner(of)
		return (bx-ax)*(y-ay) - (by-ay)*(x-ax)
	}
	if n := len(s.Outline); n > mostCorners {
		r.refuse(s.Outline[mostCorners].Span, fmt.Sprintf("This outline has %d corners.", n), fmt.Sprintf("A floor has at most %d; leave out what nobody would hear.", mostCorners), "")
		return
	}
	for i := range s.Outline {
		for k := i + 2; k < len(s.Outline); k++ {
			if turn(i, k)*turn(i, k+1) < 0 && turn(k, i)*turn(k, i+1) < 0 {
				r.problem(Problem{
					Span: s.Outline[k].Span, Found: "The side of the floor from this corner on crosses another.",
					Expected: "Corners stand in the order in which one walks along the walls.", Related: []Place{{s.Outline[i].Span, "where the other side begins"}},
				})
				return
			}
		}
	}
}

// reverberation refuses times that no room has.
func (r *resolver) reverberation(s *Space) {
	refuse := func(v Value[quantity.Duration]) {
		if v.Set() && v.V <= 0 {
			r.refuse(v.Span, fmt.Sprintf("A reverberation time cannot be %s.", v.Text), "Even a room full of absorbers has some 0.1 s; under the open sky it is left out, with outdoors = true.", "")
		}
	}
	refuse(s.Reverberation.Single)
	for i := range s.Reverberation.Bands {
		refuse(s.Reverberation.Bands[i].Value)
	}
}

// heights refuses a ceiling that is both flat and stepped, or whose steps do not
// follow each other.
func (r *resolver) heights(s *Space) {
	if len(s.Heights) == 0 {
		return
	}
	if s.Height.Set() {
		r.problem(Problem{Span: s.Height.Span, Found: "This space has a height and heights.", Expected: "A flat ceiling has height, one that steps heights.", Related: []Place{{s.Heights[0].Span, "the heights"}}})
	}
	for i, step := range s.Heights {
		along := step.Items[0]
		switch {
		case i == 0 && along.V > 0:
			r.refuse(along.Span, fmt.Sprintf("The first height begins at %s.", along.Text), "It begins at 0 m.", "\"0 m\"")
		case i > 0 && along.V <= s.Heights[i-1].Items[0].V:
			r.problem(Problem{Span: along.Span, Found: fmt.Sprintf("This height begins at %s, not behind the one before it.", along.Text), Expected: "The heights stand in their order along the length.", Related: []Place{{s.Heights[i-1].Items[0].Span, "the one before"}}})
		}
		if height := step.Items[1]; height.V <= 0 {
			r.refuse(height.Span, fmt.Sprintf("A height cannot be %s.", height.Text), "Here stands the height from the floor to the ceiling.", "")
		}
	}
}

// otherFloor lists the ways of saying how large a floor is that a space does not
// use: what it takes over from another space must not contradict it.
func otherFloor(s *Space) []string {
	switch {
	case s.Length.Set() || s.Width.Set():
		return []string{"area", "outline"}
	case s.Area.Set():
		return []string{"length", "width", "outline"}
	}
	return []string{"length", "width", "area"}
}

// modelTables finds models by name.
type modelTables struct {
	units        map[string]*UnitModel
	loudspeakers map[string]*LoudspeakerModel
	attenuators  map[string]*AttenuatorModel
	microphones  map[string]*MicrophoneModel
	cables       map[string]*CableModel
}

func byName[T interface{ part() *Part }](all []T) map[string]T {
	m := make(map[string]T, len(all))
	for _, t := range all {
		m[t.part().Name] = t
	}
	return m
}

func (r *resolver) distinctModels() {
	c := &r.design.Catalogue
	distinct(r, "amplifier or mixer model", c.Units)
	distinct(r, "loudspeaker model", c.Loudspeakers)
	distinct(r, "attenuator model", c.Attenuators)
	distinct(r, "microphone model", c.Microphones)
	distinct(r, "cable model", c.Cables)
	distinct(r, "connector model", c.Connectors)
}

// models lays what parts say over what their models say.
func (r *resolver) models() {
	c := &r.design.Catalogue
	tables := modelTables{byName(c.Units), byName(c.Loudspeakers), byName(c.Attenuators), byName(c.Microphones), byName(c.Cables)}
	r.design.cables = map[string]*Cable{}
	for _, m := range c.Units {
		r.expandRuns(&m.UnitData)
	}
	for _, u := range r.design.Units {
		if m, ok := lookup(r, tables.units, u.Model, "amplifier or mixer model"); ok {
			if m.Kind != u.Kind {
				r.problem(Problem{Span: u.Model.Span, Found: fmt.Sprintf("%q is the model of %s.", m.Name, wording.WithArticle(m.Kind)), Expected: fmt.Sprintf("This block is %s.", wording.WithArticle(u.Kind)), Related: []Place{{m.Header, "the model"}}})
				continue
			}
			u.ModelPart = m
			u.Overrides = inherit(unitDataAttributes(), &u.UnitData, &m.UnitData)
		}
	}
	for _, s := range r.design.Sources {
		if m, ok := lookup(r, tables.microphones, s.Model, "microphone model"); ok {
			s.ModelPart = m
			s.Overrides = inherit(sourceDataAttributes(), &s.SourceData, &m.SourceData)
			s.Fits = m.Fits
			if !s.Connector.Set() {
				s.Connector = m.Fits
			}
		}
	}
	for _, l := range r.design.Lines {
		r.cable(tables.cables, l.Cable)
		r.cable(tables.cables, l.OverrideCable)
		if !r.sharing[l] {
			r.deviceModels(&tables, l.Devices)
		}
	}
}

func lookup[M any](r *resolver, models map[string]M, v Value[string], what string) (M, bool) {
	m, ok := models[v.V]
	if !ok && v.Set() {
		r.refuseNameOutOf(v, wording.WithArticle(what), func() []string { return slices.Sorted(maps.Keys(models)) })
	}
	return m, ok
}

// deviceModels walks a chain without recursion: nesting is bounded, but a stack
// of our own costs nothing.
func (r *resolver) deviceModels(tables *modelTables, chain []Device) {
	todo := [][]Device{chain}
	for len(todo) > 0 {
		last := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, device := range last {
			r.cable(tables.cables, device.Common().Cable)
			switch v := device.(type) {
			case *Loudspeaker:
				r.loudspeakerModel(tables, v)
			case *Attenuator:
				if m, ok := lookup(r, tables.attenuators, v.Model, "attenuator model"); ok {
					v.ModelPart = m
					v.Overrides = inherit(attenuatorDataAttributes(), &v.AttenuatorData, &m.AttenuatorData)
				}
				r.notEmpty(&v.Placement, v.Devices, "attenuator", "An attenuator encloses the loudspeakers it turns down: they stand inside its braces.")
			case *Branch:
				r.notEmpty(&v.Placement, v.Devices, "branch", "A branch encloses the devices on it.")
			}
			if inside := device.Inside(); len(inside) > 0 {
				todo = append(todo, inside)
			}
		}
	}
}

func (r *resolver) notEmpty(p *Placement, devices []Device, what, expected string) {
	if len(devices) == 0 && r.sound(&p.Part) {
		r.refuse(p.Header, fmt.Sprintf("The %s %q holds nothing.", what, p.Name), expected, "")
	}
}

func (r *resolver) loudspeakerModel(tables *modelTables, l *Loudspeaker) {
	m, ok := lookup(r, tables.loudspeakers, l.Model, "loudspeaker model")
	switch {
	case ok && l.LoudspeakerData == nil:
		l.ModelPart, l.LoudspeakerData = m, &m.LoudspeakerData
	case ok:
		l.ModelPart = m
		l.Overrides = inherit(loudspeakerDataAttributes(), l.LoudspeakerData, &m.LoudspeakerData)
	case l.LoudspeakerData == nil:
		l.LoudspeakerData = &LoudspeakerData{}
	}
	if l.To.Set() && !l.Position.Set() && r.sound(&l.Part) {
		r.refuse(l.To.Span, "This run says where its last loudspeaker hangs but not the first.", "position is the first of the run, to is the last.", "")
	}
	if len(l.Position.Items) > 2 && l.Height.Set() && r.sound(&l.Part) {
		r.problem(Problem{Span: l.Height.Span, Found: "The height of this loudspeaker stands in its position too.", Expected: "Write it once.", Related: []Place{{l.Position.Items[2].Span, "the other one"}}})
	}
}

// cable works out what a cable's name means: a size first, then a model.
func (r *resolver) cable(models map[string]*CableModel, v Value[string]) {
	if !v.Set() || r.design.cables[v.V] != nil {
		return
	}
	if m, ok := models[v.V]; ok {
		r.design.cables[v.V] = &Cable{Name: v.V, Model: m, Conductors: m.Size.V}
		return
	}
	c, err := quantity.ParseConductors(v.V)
	switch {
	case err == nil:
		r.design.cables[v.V] = &Cable{Name: v.V, Conductors: c}
	case r.partial || r.full():
	case looksLikeSize(v.V):
		d := &decoder{file: v.Span.File}
		d.refuseAmount(v.Span, err, "a cable")
		for _, p := range d.problems {
			r.problem(p)
		}
	default:
		near := nearest(v.V, slices.Sorted(maps.Keys(models)))
		if near != "" {
			near = quoted(near)
		}
		r.refuse(v.Span, fmt.Sprintf("%q is neither a size of cable nor a model of one.", v.V), "A size is written \"2 x 1.5 mm2\", \"16 AWG\" or \"16/2\"; a model stands in a catalogue.", near)
	}
}

func looksLikeSize(name string) bool {
	return name != "" && (name[0] >= '0' && name[0] <= '9' || name[0] == '.') && !strings.Contains(name, "/") || strings.Contains(strings.ToLower(name), "awg") && !strings.Contains(name, "/")
}
