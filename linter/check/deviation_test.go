package check_test

import (
	"testing"

	"loudlint/linter/check"
	"loudlint/schema"
	"loudlint/schema/source"
)

func TestCovers(t *testing.T) {
	t.Parallel()
	written := func(name string) schema.Value[string] {
		return schema.Value[string]{V: name, Text: name, Span: source.Span{File: source.NewFile("x", nil)}}
	}
	step := func(kind, name string) check.Step { return check.Step{Kind: kind, Name: name} }
	onLine := []check.Step{step("line", "South"), step("attenuator", "Bar level"), step("loudspeaker", "B")}
	for _, test := range []struct {
		name    string
		address schema.Address
		path    []check.Step
		want    bool
	}{
		{"the job", schema.Address{}, nil, true},
		{"a part without being named", schema.Address{}, onLine[:1], false},
		{"the job, with a part named", schema.Address{Line: written("South")}, nil, false},
		{"the part", schema.Address{Line: written("South")}, onLine[:1], true},
		{"another part", schema.Address{Line: written("North")}, onLine[:1], false},
		{"another case of a line", schema.Address{Line: written("south")}, onLine[:1], false},
		{"inside the part", schema.Address{Line: written("South")}, onLine, true},
		{"behind the attenuator", schema.Address{Attenuator: written("bar  level")}, onLine, true},
		{"a device in any case", schema.Address{Line: written("South"), Loudspeaker: written("b")}, onLine, true},
		{"a device of another line", schema.Address{Line: written("North"), Loudspeaker: written("B")}, onLine, false},
		{"around the part", schema.Address{Line: written("South"), Loudspeaker: written("B")}, onLine[:1], false},
		{"one of a run", schema.Address{Loudspeaker: written("B 2")}, onLine, false},
		{"a channel", schema.Address{Amplifier: written("Rack"), Channel: written("A")}, []check.Step{step("amplifier", "Rack"), step("channel", "A")}, true},
		{"an output of the same name", schema.Address{Amplifier: written("Rack"), Channel: written("A")}, []check.Step{step("amplifier", "Rack"), step("output", "A")}, false},
		{"an amplifier called a mixer", schema.Address{Mixer: written("Rack")}, []check.Step{step("amplifier", "Rack")}, true},
		{"a mixer", schema.Address{Mixer: written("Matrix")}, []check.Step{step("mixer", "Matrix"), step("input", "1")}, true},
		{"a source", schema.Address{Source: written("Desk")}, []check.Step{step("telephone", "Desk")}, true},
		{"a line called like a source", schema.Address{Source: written("Desk")}, []check.Step{step("line", "Desk")}, false},
		{"a mute link", schema.Address{MuteLink: written("Panel")}, []check.Step{step("mute_link", "Panel")}, true},
		{"a space", schema.Address{Space: written("Bar")}, []check.Step{step("space", "Bar")}, true},
		{"a supply", schema.Address{Supply: written("Mains")}, []check.Step{step("supply", "Mains")}, true},
		{"a reading", schema.Address{Reading: written("First")}, []check.Step{step("reading", "First")}, true},
	} {
		if got := check.Covers(test.address.Parts(), check.Subject{Path: test.path}); got != test.want {
			t.Errorf("%s: %v, want %v", test.name, got, test.want)
		}
	}
}
