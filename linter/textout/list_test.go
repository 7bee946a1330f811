package textout

import (
	"bytes"
	"io"
	"strings"
	"testing"

	"loudlint/linter/check"
)

func TestOtherPages(t *testing.T) {
	t.Parallel()
	sections := []Section{
		{Title: "Loudspeakers", Rows: []Row{
			{Name: "test/ceiling", Text: "ceiling, 6 W, taps 6/3/1.5/0.75 W at 100 V, 90 dB, and a text that goes on for longer than a line of the page does"},
			{Name: "test/a-name-that-is-longer-than-its-column-can-be", Text: "horn, 15 W"},
			{Name: "test/\x1b[31mred", Text: "a name that is no good"},
			{Name: "test/silent"},
		}},
		{Title: "Nothing of this kind"},
		{Title: "Checks", Rows: []Row{
			{Name: "load-margin", Mark: "error", Text: "Too much hangs on it."},
			{Name: "spare", Mark: "off", Text: "Too little is left."},
		}},
	}
	explained := []*check.Check{
		{
			ID: "load-margin", Asks: "Is the load far enough below the rating?", Summary: "Too much hangs on a channel.",
			Why: "It trips.", How: "Adds up the taps.", Basis: "common practice, no published source", Blind: "It sees no losses.",
			Params: []check.Param{
				{Name: "margin", Doc: "what is left free", Unit: check.Percent, Default: 10, High: 90},
				{Name: "count_old", Doc: "whether old equipment counts", Unit: check.Switch, Default: 1, High: 1, Basis: "a basis of its own"},
			},
			Severity: check.Error, Cautions: []string{"Mind the first thing.", "Mind the other."},
			Failing: check.Example{Shows: "Too much.", Design: "amplifier \"Rack\" {\n\trated_power = \"60 W\"\n}\n"},
			Passing: check.Example{Shows: "Enough.", Design: "amplifier \"Rack\" {\n  rated_power = \"120 W\"\n}"},
		},
		{ID: "spare", Asks: "Is there room?", Summary: "There is none.", Why: "It grows.", How: "Looks.", Basis: "the client's wish", Blind: "Much.", Severity: check.Note, Off: true,
			Failing: check.Example{Shows: "Full.", Design: "line \"A\" {\n}\n"}, Passing: check.Example{Shows: "Half full.", Design: "line \"B\" {\n}\n"}},
	}
	tests := []struct {
		name  string
		write func(w io.Writer, o Options) error
		o     Options
	}{
		{"sections", func(w io.Writer, o Options) error { return WriteSections(w, sections, o) }, Options{}},
		{"sections-narrow", func(w io.Writer, o Options) error { return WriteSections(w, sections, o) }, Options{Width: 40}},
		{"sections-colours", func(w io.Writer, o Options) error { return WriteSections(w, sections, o) }, Options{Colour: true}},
		{"explanation", func(w io.Writer, o Options) error { return WriteExplanation(w, explained, o) }, Options{}},
		{"explanation-narrow", func(w io.Writer, o Options) error { return WriteExplanation(w, explained, o) }, Options{Width: 40}},
		{"paragraphs", func(w io.Writer, o Options) error {
			return WriteText(w, []string{"One short.", "Another, " + strings.Repeat("longer ", 9) + "one."}, o)
		}, Options{Width: 40}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var page bytes.Buffer
			if err := test.write(&page, test.o); err != nil {
				t.Fatal(err)
			}
			golden(t, test.name, page.Bytes())
		})
	}
}
