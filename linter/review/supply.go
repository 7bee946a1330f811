package review

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Document is a paper in which a reviewer looks for what the design does not
// say, with what it has to tell.
type Document struct {
	// Title is such as `Data sheet of loudspeaker model "house/wall-10"`, or
	// "Drawing of the lines".
	Title string
	Items []Item
}

// Item is one thing that is not stated.
type Item struct {
	What    string        // "coverage angle"
	Write   string        // what would be written, for example; may be empty
	For     []string      // the parts it is missing for
	Places  []source.Span // of these
	Answers int           // that wait for it
	Rows    []string      // names of what waits
}

// paper is a kind of document.
type paper int

// Papers, in the order in which a job makes them.
const (
	brief paper = iota
	survey
	layout
	lineDrawing
	connections
	powerSupply
	dataSheet
	measurements
	designText
)

var papers = map[paper]string{
	brief:        "Brief of the job",
	survey:       "Site survey",
	layout:       "Layout drawing",
	lineDrawing:  "Drawing of the lines",
	connections:  "Plan of connections",
	powerSupply:  "Power supply calculation",
	measurements: "Record of measurements",
	designText:   "The design itself",
}

// supplyOf gathers what open answers wait for: by the document it is looked for
// in, and there that first for which most wait. Open answers that name nothing
// are given as they are.
func supplyOf(j *linter.Judged) (documents []Document, unnamed []*check.Outcome) {
	s := &supplies{j: j, holders: holdersOf(j.Design), at: map[itemKey]*pending{}}
	for i := range j.Outcomes {
		o := &j.Outcomes[i]
		if o.Verdict != check.Open {
			continue
		}
		if len(o.Missing) == 0 {
			unnamed = append(unnamed, o)
		}
		for _, m := range o.Missing {
			s.add(o, m)
		}
	}
	return s.documents(), unnamed
}

// supplies puts documents together.
type supplies struct {
	j       *linter.Judged
	holders map[source.Span]holder
	at      map[itemKey]*pending
	all     []*pending
}

// holder is a named part of the design.
type holder struct {
	kind  string // loudspeaker
	text  string // line "Hall", loudspeaker "H"
	model string // that it names; "" for none
}

type itemKey struct {
	paper paper
	of    string // whose data sheet
	what  string
	write string
}

type pending struct {
	itemKey
	Item
	last *check.Outcome // that waits
}

func (s *supplies) add(o *check.Outcome, m analysis.Missing) {
	block, attribute := attributeOf(m)
	key := itemKey{paper: paperOf(block, attribute), what: m.What, write: m.Write}
	if m.Write == "" && key.paper == layout {
		key.paper = measurements // nothing that could be written would tell
	}
	part := m.Part
	h, known := s.holders[m.Where]
	sheet := strings.HasSuffix(block, "_model") // of a cable or a plug, which no part is
	switch {
	case part == "":
		part = "the job"
	case m.Where == o.Subject.Span && len(o.Subject.Path) > 0:
		part = o.Subject.String()
	case known && !sheet:
		part = h.text
	}
	if key.paper == dataSheet {
		switch {
		case sheet:
			key.of = strings.Replace(part, "_model", "", 1)
		case h.model != "":
			key.of = h.kind + ` "` + h.model + `"`
		case h.kind == "":
			key.of = part
		default:
			key.of = wording.Plural(h.kind) + " that name no model"
		}
	}
	p := s.at[key]
	if p == nil {
		p = &pending{itemKey: key, Item: Item{What: m.What, Write: m.Write}}
		s.at[key] = p
		s.all = append(s.all, p)
	}
	if !slices.Contains(p.Places, m.Where) || !slices.Contains(p.For, part) {
		p.For = append(p.For, part)
		p.Places = append(p.Places, m.Where)
	}
	if p.last != o {
		p.last = o
		p.Answers++
	}
	if name := nameOf(o.Check, s.j); !slices.Contains(p.Rows, name) {
		p.Rows = append(p.Rows, name)
	}
}

func (s *supplies) documents() []Document {
	slices.SortStableFunc(s.all, func(a, b *pending) int {
		return cmp.Or(cmp.Compare(a.paper, b.paper), cmp.Compare(a.of, b.of), cmp.Compare(b.Answers, a.Answers))
	})
	var all []Document
	for _, p := range s.all {
		title := papers[p.paper]
		if p.paper == dataSheet {
			title = "Data sheet of " + p.of
		}
		if n := len(all); n == 0 || all[n-1].Title != title {
			all = append(all, Document{Title: title})
		}
		last := &all[len(all)-1]
		last.Items = append(last.Items, p.Item)
	}
	return all
}

// assignment is the form in which most missing things are written.
var assignment = regexp.MustCompile(`^(?:([a-z_]+) "[^"]*" \{ )?([a-zA-Z_0-9]+) = `)

// ofCableModel is how an attribute of a cable is asked for of which the design
// gives only the size.
const ofCableModel = "a cable_model with "

// attributeOf gives the block and the attribute by which a missing thing would be
// said; without one only the block it is missing from.
func attributeOf(m analysis.Missing) (block, attribute string) {
	block, _, _ = strings.Cut(m.Part, " ")
	if block == "" || m.Part == "the job" {
		block = "system"
	}
	write, cable := strings.CutPrefix(m.Write, ofCableModel)
	if cable {
		block = "cable_model"
	}
	if found := assignment.FindStringSubmatch(write); found != nil {
		if found[1] != "" {
			block = found[1]
		}
		attribute = found[2]
	}
	return block, attribute
}

// paperOf says in which document a reviewer looks for an attribute of a block.
func paperOf(block, attribute string) paper {
	switch {
	case attribute == "connector":
		return connections
	case block == "output" && (attribute == "amplifier" || attribute == "output"):
		return lineDrawing
	}
	if block == "model" || schema.OnDataSheet(block, attribute) {
		return dataSheet
	}
	switch block {
	case "system", "safety":
		return brief
	case "space":
		switch attribute {
		case "noise", "noise_at", "reverberation", "reverberation_at", "air_handling_void":
			return survey
		case "wanted_level", "wanted_over_noise":
			return brief
		}
		return layout
	case "surface":
		return survey
	case "existing":
		if attribute == "leg" || attribute == "spacing" {
			return lineDrawing
		}
		return survey
	case "loudspeaker":
		switch attribute {
		case "position", "to", "height", "aim", "tilt", "space":
			return layout
		}
		return lineDrawing
	case "line", "attenuator", "branch", "line_end", "group":
		return lineDrawing
	case "amplifier", "mixer", "send", "also", "mute_link", schema.KindMusic, schema.KindMessage, schema.KindTelephone:
		return connections
	case schema.KindMicrophone:
		if attribute == "position" || attribute == "talker_distance" {
			return layout
		}
		return connections
	case "supply":
		if attribute == "standby" || attribute == "announcement" {
			return brief
		}
		return powerSupply
	case "reading":
		return measurements
	}
	return designText
}

// holdersOf finds named parts by their headers.
func holdersOf(d *schema.Design) map[source.Span]holder {
	all := map[source.Span]holder{}
	for part := range d.Named() {
		s := check.Subject{}
		if part.Line != "" {
			s.Path = append(s.Path, check.Step{Kind: "line", Name: part.Line})
		}
		s.Path = append(s.Path, check.Step{Kind: part.Kind, Name: part.Part.Name})
		if _, known := all[part.Part.Header]; known {
			continue // a line like another shares its devices
		}
		all[part.Part.Header] = holder{kind: strings.ReplaceAll(part.Kind, "_", " "), text: s.String(), model: part.Model}
	}
	for _, u := range d.Units {
		inside := func(kind string, p *schema.Part) {
			if _, known := all[p.Header]; !known { // a model's inputs are those of every unit of it
				path := []check.Step{{Kind: u.Kind, Name: u.Name}, {Kind: kind, Name: p.Name}}
				all[p.Header] = holder{kind: u.Kind, text: check.Subject{Path: path}.String(), model: u.Model.V}
			}
		}
		for _, c := range u.Channels {
			inside("channel", &c.Part)
		}
		for _, o := range u.Outputs {
			inside("output", &o.Part)
		}
		for _, i := range u.Inputs {
			inside("input", &i.Part)
		}
	}
	return all
}
