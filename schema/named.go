package schema

import (
	"iter"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// NamedPart is a named block of a design.
type NamedPart struct {
	Kind string // the name of its block: "amplifier", "line", "loudspeaker", …
	Line string // the line a device stands on; "" for other parts
	Part *Part
	// Count is how many the block stands for, of a device without the runs around
	// it.
	Count int
	Model string // the model it names, "" for none
}

// Named gives the named blocks of a design: units, lines each with its devices,
// groups, sources, mute links, spaces, readings, supplies and parts to buy. What
// stands inside a unit is part of it.
func (d *Design) Named() iter.Seq[NamedPart] {
	return func(yield func(NamedPart) bool) {
		more := true
		named := func(n NamedPart) bool {
			more = more && yield(n)
			return more
		}
		give := func(kind string, p *Part, count int) { named(NamedPart{Kind: kind, Part: p, Count: count}) }
		for _, u := range d.Units {
			named(NamedPart{Kind: u.Kind, Part: &u.Part, Count: 1, Model: u.Model.V})
		}
		for _, l := range d.Lines {
			give("line", &l.Part, 1)
			chainOf(l, func(device Device, _ int) bool {
				p := device.Common()
				return named(NamedPart{Kind: DeviceKind(device), Line: l.Name, Part: &p.Part, Count: p.Count(), Model: modelOf(device)})
			})
		}
		for _, g := range d.Groups {
			give("group", &g.Part, 1)
		}
		for _, s := range d.Sources {
			named(NamedPart{Kind: s.Kind, Part: &s.Part, Count: 1, Model: s.Model.V})
		}
		for _, m := range d.MuteLinks {
			give("mute_link", &m.Part, 1)
		}
		for _, s := range d.Spaces {
			give("space", &s.Part, s.Count())
		}
		for _, m := range d.Readings {
			give("reading", &m.Part, 1)
		}
		for _, s := range d.Supplies {
			give("supply", &s.Part, 1)
		}
		for _, i := range d.Items {
			give("part", &i.Part, i.Quantity.Or(1))
		}
	}
}

func modelOf(device Device) string {
	switch device := device.(type) {
	case *Loudspeaker:
		return device.Model.V
	case *Attenuator:
		return device.Model.V
	}
	return ""
}

// DeviceKind gives the name of the block of a device.
func DeviceKind(device Device) string {
	switch device.(type) {
	case *Loudspeaker:
		return "loudspeaker"
	case *Attenuator:
		return "attenuator"
	case *Branch:
		return "branch"
	case *Existing:
		return "existing"
	case *LineEnd:
		return "line_end"
	}
	return "device"
}

// Content is what stands between the braces of a part without layout and
// comments: two parts with the same content say the same of themselves.
func (p *Part) Content() string {
	tokens, _ := hclsyntax.LexConfig([]byte(p.Body.Text()), "", hcl.InitialPos)
	var b strings.Builder
	for _, t := range tokens {
		switch t.Type {
		case hclsyntax.TokenComment, hclsyntax.TokenNewline, hclsyntax.TokenEOF:
			// A comment takes the end of its line with it: neither says anything.
		default:
			b.Write(t.Bytes)
			b.WriteByte(' ')
		}
	}
	return b.String()
}
