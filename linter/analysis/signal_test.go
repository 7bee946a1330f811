package analysis_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/linter/analysis"
	"loudlint/schema"
	"loudlint/schema/source"
)

// chain reads and works out a design of one or several files.
func chain(t *testing.T, texts ...string) *analysis.System {
	t.Helper()
	var files []*source.File
	for i, text := range texts {
		files = append(files, source.NewFile(fmt.Sprintf("part-%d.pa.hcl", i+1), []byte(text)))
	}
	design, problems := schema.Read("test", files, schema.Options{Workers: 1})
	for _, p := range problems {
		t.Errorf("%s:%d: %s", p.Span.File.Name, p.Span.From().Line, p)
	}
	if len(problems) > 0 {
		t.FailNow()
	}
	return analysis.Analyse(design, 1)
}

func lineNames(lines []*analysis.Line) string {
	var names []string
	for _, l := range lines {
		names = append(names, l.Part.Name)
	}
	return strings.Join(names, ", ")
}

// reach describes where a source is heard: its lines, then those it should reach
// and does not, then its dead ends.
func reach(s *analysis.Source) string {
	text := lineNames(s.Lines)
	if len(s.Unreached) > 0 {
		text += "; not " + lineNames(s.Unreached)
	}
	var ends []string
	for _, i := range s.DeadEnds {
		ends = append(ends, i.Name())
	}
	if len(ends) > 0 {
		text += "; dead end " + strings.Join(ends, ", ")
	}
	return text
}

func reaches(s *analysis.System) map[string]string {
	all := map[string]string{}
	for _, src := range s.Sources {
		all[src.Part.Name] = reach(src)
	}
	return all
}

// ampAndLine is an amplifier with a line of one loudspeaker on it.
func ampAndLine(amp, line string) string {
	return fmt.Sprintf(`
amplifier %[1]q { rated_power = "100 W" }
line %[2]q {
  amplifier = %[1]q
  output    = "100 V"
  loudspeaker "L" { tap = "6 W" }
}
`, amp, line)
}

func mic(name, into, input string, more ...string) string {
	return fmt.Sprintf("microphone %q {\n  into = %q\n  input = %q\n  %s\n}\n", name, into, input, strings.Join(more, "\n  "))
}

func music(name, into, input string, more ...string) string {
	return fmt.Sprintf("music %q {\n  into = %q\n  input = %q\n  channels = \"mono\"\n  %s\n}\n", name, into, input, strings.Join(more, "\n  "))
}

func send(output, into, input string) string {
	return fmt.Sprintf("  send %q {\n    into = %q\n    input = %q\n  }\n", output, into, input)
}

func mixer(name string, parts ...string) string {
	return fmt.Sprintf("mixer %q {\n%s}\n", name, strings.Join(parts, ""))
}

// quad is an amplifier with four channels, each with an input and an output of
// its own, and lines on those outputs that are named.
func quad(name string, lines ...string) string {
	var b strings.Builder
	fmt.Fprintf(&b, `
amplifier %q {
  channel "Ch" {
    quantity    = 4
    rated_power = "120 W"
  }
  output "Out" {
    quantity = 4
    channel  = "Ch"
    volts    = "100 V"
  }
  input "In" {
    quantity = 4
    channel  = "Ch"
    takes    = "line"
  }
}
`, name)
	for i, l := range lines {
		if l != "" {
			fmt.Fprintf(&b, "line %q {\n  amplifier = %q\n  output = \"Out %d\"\n  loudspeaker \"L\" { tap = \"6 W\" }\n}\n", l, name, i+1)
		}
	}
	return b.String()
}

func TestWaysOfSources(t *testing.T) {
	t.Parallel()
	tests := map[string]struct {
		design string
		want   map[string]string
	}{
		"one amplifier": {
			design: ampAndLine("Rack", "Hall") + mic("Desk", "Rack", "Mic 1"),
			want:   map[string]string{"Desk": "Hall"},
		},
		"through three units": {
			design: mixer("A", send("Out", "B", "In")) + mixer("B", send("Out", "Rack", "In")) + ampAndLine("Rack", "Hall") + mic("Desk", "A", "Mic 1"),
			want:   map[string]string{"Desk": "Hall"},
		},
		"an input with a channel drives that one only": {
			design: quad("Rack", "One", "Two", "Three") + music("Player", "Rack", "In 2") + music("Spare", "Rack", "In 4"),
			want:   map[string]string{"Player": "Two", "Spare": "; dead end In 4 of Rack"},
		},
		"a run of sends into a run of inputs": {
			design: mixer("Matrix", "  send \"Zone\" {\n    quantity = 3\n    into = \"Rack\"\n    input = \"In\"\n  }\n") +
				quad("Rack", "One", "Two", "Three", "Four") + mic("Desk", "Matrix", "Desk", `lines = "all"`),
			want: map[string]string{"Desk": "One, Two, Three; not Four"},
		},
		"only the lines it names, by group too": {
			design: mixer("Matrix", send("Zone 1", "A", "In"), send("Zone 2", "B", "In"), send("Zone 3", "C", "In")) +
				ampAndLine("A", "One") + ampAndLine("B", "Two") + ampAndLine("C", "Three") + ampAndLine("D", "Four") +
				"group \"Low\" { lines = [\"One\", \"Two\"] }\n" +
				music("Player", "Matrix", "Aux", `lines = ["Low", "Four"]`),
			want: map[string]string{"Player": "One, Two; not Four"},
		},
		"a second place": {
			design: ampAndLine("A", "One") + ampAndLine("B", "Two") + mic("Desk", "A", "Mic", "also {\n    into = \"B\"\n    input = \"Mic\"\n  }"),
			want:   map[string]string{"Desk": "One, Two"},
		},
		"a mixer that feeds nothing": {
			design: mixer("Stage") + ampAndLine("A", "One") + mic("Desk", "Stage", "Ch 1"),
			want:   map[string]string{"Desk": "; dead end Ch 1 of Stage"},
		},
		"an amplifier without lines at the end of one of two ways": {
			design: mixer("Desk mixer", send("Left", "A", "In"), send("Right", "B", "In")) + ampAndLine("A", "One") + "amplifier \"B\" { rated_power = \"10 W\" }\n" + mic("Desk", "Desk mixer", "Ch 1"),
			want:   map[string]string{"Desk": "One; dead end In of B"},
		},
		"contacts carry no sound": {
			design: "amplifier \"A\" {\n  rated_power = \"100 W\"\n  input \"Page\" { takes = \"contact\" }\n}\n" +
				"line \"One\" {\n  amplifier = \"A\"\n  output = \"100 V\"\n  loudspeaker \"L\" { tap = \"6 W\" }\n}\n" + mic("Desk", "A", "Page"),
			want: map[string]string{"Desk": ""},
		},
		"neither unit nor input stated": {
			design: ampAndLine("A", "One") + "microphone \"Desk\" {}\nmicrophone \"Lectern\" { into = \"A\" }\n",
			want:   map[string]string{"Desk": "", "Lectern": "One"},
		},
		"a loop is followed once": {
			design: mixer("A", send("Out", "B", "In")) + mixer("B", send("Back", "A", "Return"), send("Out", "Rack", "In")) + ampAndLine("Rack", "Hall") + mic("Desk", "A", "Mic 1"),
			want:   map[string]string{"Desk": "Hall"},
		},
		"a loop without a line": {
			design: mixer("A", send("Out", "B", "In")) + mixer("B", send("Back", "A", "Return")) + ampAndLine("Rack", "Hall") + mic("Desk", "A", "Mic 1"),
			want:   map[string]string{"Desk": "; dead end Mic 1 of A"},
		},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if diff := cmp.Diff(tc.want, reaches(chain(t, tc.design))); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// matrixDesign is a matrix of sixteen zones over four amplifiers, with local
// music in one of them.
func matrixDesign() []string {
	units := mixer("Matrix", `  routing = "any input to any output"
  input "Urgent" {
    takes    = "line"
    triggers = ["signal"]
    mutes    = ["Desk", "Music"]
  }
  input "Desk" {
    takes      = "paging desk"
    connectors = ["RJ45"]
    triggers   = ["contact"]
    mutes      = ["Music"]
  }
  input "Music" {
    takes    = "line"
    triggers = []
  }
`, `  send "Zone" {
    quantity = 4
    into     = "Amp 1"
    input    = "In"
  }
  send "Zone" {
    first    = 5
    quantity = 4
    into     = "Amp 2"
    input    = "In"
  }
  send "Zone" {
    first    = 9
    quantity = 4
    into     = "Amp 3"
    input    = "In"
  }
  send "Zone" {
    first    = 13
    quantity = 4
    into     = "Amp 4"
    input    = "In"
  }
`)
	lines := ""
	for a := range 4 {
		var names []string
		for i := range 4 {
			names = append(names, fmt.Sprintf("Floor %d", 4*a+i+1))
		}
		lines += quad(fmt.Sprintf("Amp %d", a+1), names...)
	}
	sources := `
group "Low" { lines = ["Floor 1", "Floor 2", "Floor 3"] }
microphone "Reception" {
  into      = "Matrix"
  input     = "Desk"
  connector = "RJ45"
  trigger   = "contact"
  priority  = 2
  lines     = "all"
}
message "General call" {
  into     = "Matrix"
  input    = "Urgent"
  priority = 1
  lines    = "all"
}
music "Low player" {
  into     = "Matrix"
  input    = "Music"
  channels = "mono"
  lines    = ["Low"]
}
`
	return []string{units, lines, sources}
}

func TestMatrixOfSixteenZones(t *testing.T) {
	t.Parallel()
	s := chain(t, matrixDesign()...)
	var all []string
	for i := range 16 {
		all = append(all, fmt.Sprintf("Floor %d", i+1))
	}
	want := map[string]string{
		"Reception":    strings.Join(all, ", "),
		"General call": strings.Join(all, ", "),
		"Low player":   "Floor 1, Floor 2, Floor 3",
	}
	if diff := cmp.Diff(want, reaches(s)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	wantSilence := []string{
		"Reception before Low player: silenced [Desk→Music of Matrix]",
		"Reception after General call: heard on all [Desk→Urgent of Matrix: does not mute]",
		"General call before Reception: silenced [Urgent→Desk of Matrix]",
		"General call before Low player: silenced [Urgent→Music of Matrix]",
	}
	if diff := cmp.Diff(wantSilence, priorities(s), cmpSorted()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// TestOrderOfFiles: what follows from a design does not hang on the order in
// which its files are read.
func TestOrderOfFiles(t *testing.T) {
	t.Parallel()
	parts := matrixDesign()
	first := chain(t, parts...)
	slices.Reverse(parts)
	second := chain(t, parts...)
	if diff := cmp.Diff(reaches(first), reaches(second)); diff != "" {
		t.Errorf("reach (-forwards +backwards):\n%s", diff)
	}
	if diff := cmp.Diff(priorities(first), priorities(second), cmpSorted()); diff != "" {
		t.Errorf("priorities (-forwards +backwards):\n%s", diff)
	}
}

func TestWay(t *testing.T) {
	t.Parallel()
	s := chain(t, mixer("A", send("Out", "B", "In"))+
		mixer("B", send("Zone 1", "Amp 1", "In 2"), send("Zone 2", "C", "In"))+
		mixer("C", send("Out", "Amp 1", "In 3"))+
		quad("Amp 1", "One", "Two", "Three")+
		mic("Desk", "A", "Mic 1", "also {\n    into = \"C\"\n    input = \"Direct\"\n  }"))
	tests := map[string]string{
		"One":   "",
		"Two":   "plug Mic 1 of A, Out to In of B, Zone 1 to In 2 of Amp 1",
		"Three": "plug Direct of C, Out to In 3 of Amp 1",
	}
	for _, l := range s.Lines {
		var steps []string
		for _, step := range s.Way(s.Sources[0], l) {
			if step.Feed != nil {
				steps = append(steps, "plug "+step.Into.Name())
			} else {
				steps = append(steps, step.Link.Part.Output.Name+" to "+step.Into.Name())
			}
		}
		if got := strings.Join(steps, ", "); got != tests[l.Part.Name] {
			t.Errorf("way to %s: %q; want %q", l.Part.Name, got, tests[l.Part.Name])
		}
	}
}

func TestLoops(t *testing.T) {
	t.Parallel()
	tests := map[string]struct {
		design string
		want   []string
	}{
		"none": {mixer("A", send("Out", "B", "In")) + mixer("B", send("Out", "C", "In")) + mixer("C"), nil},
		"two ways to one unit are no loop": {
			mixer("A", send("1", "B", "In"), send("2", "C", "In")) + mixer("B", send("Out", "D", "1")) + mixer("C", send("Out", "D", "2")) + mixer("D"), nil,
		},
		"of two": {mixer("A", send("Out", "B", "In")) + mixer("B", send("Back", "A", "Return")), []string{"A B"}},
		"two loops apart": {
			mixer("A", send("Out", "B", "In")) + mixer("B", send("Back", "A", "Return"), send("On", "C", "In")) +
				mixer("C", send("Out", "D", "In")) + mixer("D", send("Back", "C", "Return")), []string{"A B", "C D"},
		},
		"through three": {mixer("C", send("Out", "A", "In")) + mixer("B", send("Out", "C", "In")) + mixer("A", send("Out", "B", "In")), []string{"C B A"}},
		"channels of one amplifier keep apart": {
			mixer("A", send("Out", "Rack", "In 1")) + quad("Rack") + "", nil,
		},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			var got []string
			for _, loop := range chain(t, tc.design).Loops {
				var names []string
				for _, u := range loop {
					names = append(names, u.Part.Name)
				}
				got = append(got, strings.Join(names, " "))
			}
			slices.Sort(got)
			if diff := cmp.Diff(tc.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// TestLongChain: a chain of any length is followed without recursion, a ring
// too, and in time that grows with its length.
func TestLongChain(t *testing.T) {
	t.Parallel()
	const units = 500
	var b strings.Builder
	for i := range units {
		b.WriteString(mixer(fmt.Sprintf("M %d", i), send("Out", fmt.Sprintf("M %d", (i+1)%units), "In"), send("Side", "Rack", fmt.Sprintf("In %d", i))))
	}
	b.WriteString(ampAndLine("Rack", "Hall"))
	b.WriteString(mic("Desk", "M 0", "Mic", "priority = 1") + music("Player", fmt.Sprintf("M %d", units/2), "Aux", "priority = 2"))
	s := chain(t, b.String())
	if got := reach(s.Sources[0]); got != "Hall" {
		t.Errorf("reach %q", got)
	}
	if len(s.Loops) != 1 || len(s.Loops[0]) != units {
		t.Errorf("%d loops", len(s.Loops))
	}
	if got := s.Silencings(s.Sources[0]); len(got) != 1 || got[0].State != analysis.Unsure {
		t.Errorf("silencings: %+v", got)
	}
}
