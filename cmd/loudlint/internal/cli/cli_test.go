package cli_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/cmd/loudlint/internal/cli"
)

// flags are those of a command made up for these tests.
type flags struct {
	loud  bool
	file  string
	more  []string
	form  string
	some  []string
	count int
}

func commandFor(f *flags) *cli.Command {
	forms := []cli.Choice{{Word: "text", Says: "for people"}, {Word: "lines"}}
	parts := func() []cli.Choice { return []cli.Choice{{Word: "line"}, {Word: "loudspeaker"}, {Word: "amplifier"}} }
	file := cli.Text(&f.file, "file", "FILE", "where to")
	file.Short = "f"
	return &cli.Command{
		Name: "show", Arguments: "[THING...]", Summary: "show things",
		Flags: []*cli.Flag{
			cli.Switch(&f.loud, "loud", "aloud"),
			file,
			cli.Texts(&f.more, "more", "FOLDER", "where from"),
			cli.Word(&f.form, "form", "in which form", forms...),
			cli.Words(&f.some, "some", "PART", "which parts", "part", parts),
			cli.Number(&f.count, "count", "NUMBER", "how many", 1, 9),
		},
	}
}

func TestParse(t *testing.T) {
	t.Parallel()
	tests := []struct {
		words     string
		want      flags
		arguments []string
		problem   string // a part of it
	}{
		{words: ""},
		{words: "a b", arguments: []string{"a", "b"}},
		{words: "--loud a --file f b", want: flags{loud: true, file: "f"}, arguments: []string{"a", "b"}},
		{words: "a --file=f=g", want: flags{file: "f=g"}, arguments: []string{"a"}},
		{words: "--more a --more=b", want: flags{more: []string{"a", "b"}}},
		{words: "--file a --file b", want: flags{file: "b"}},
		{words: "--form lines --count 9", want: flags{form: "lines", count: 9}},
		{words: "--some line,amplifier --some loudspeaker", want: flags{some: []string{"line", "amplifier", "loudspeaker"}}},
		{words: "-- --loud -x", arguments: []string{"--loud", "-x"}},
		{words: "--file -", want: flags{file: "-"}},
		{words: "--file -5", want: flags{file: "-5"}},
		{words: "a -f x b", want: flags{file: "x"}, arguments: []string{"a", "b"}},
		{words: "-f=x", want: flags{file: "x"}},
		{words: "-- -f x", arguments: []string{"-f", "x"}},
		{words: "-", arguments: []string{"-"}},

		{words: "--lout", problem: "show has no flag --lout. Did you mean --loud?"},
		{words: "-l", problem: "show has no flag -l."},
		{words: "-loud", problem: "show has no flag -loud. Did you mean --loud?"},
		{words: "--", arguments: nil},
		{words: "--=x", problem: "show has no flag --."},
		{words: "--loud=yes", problem: "--loud takes no value."},
		{words: "--file", problem: "--file has no value. It is written --file FILE."},
		{words: "--file --loud", problem: "--file has no value."},
		{words: "-f", problem: "-f has no value. It is written -f FILE."},
		{words: "-f --loud", problem: "-f has no value."},
		{words: "-fx", problem: "show has no flag -fx."},
		{words: "--f x", problem: "show has no flag --f."},
		{words: "--file=", problem: "--file has an empty value."},
		{words: "--form page", problem: `--form cannot be "page". It is one of text, lines.`},
		{words: "--some line,loudspeeker", problem: `There is no part "loudspeeker". Did you mean loudspeaker?`},
		{words: "--count 10", problem: "It is a whole number from 1 to 9."},
		{words: "--count 1.5", problem: "It is a whole number from 1 to 9."},
	}
	for _, test := range tests {
		var got flags
		arguments, err := commandFor(&got).Parse(strings.Fields(test.words))
		if problem := new(cli.CallError); test.problem != "" {
			if !errors.As(err, &problem) || !strings.Contains(err.Error(), test.problem) {
				t.Errorf("%q: the error is %v, want %q", test.words, err, test.problem)
			}
			continue
		}
		if err != nil {
			t.Errorf("%q: %v", test.words, err)
		}
		if diff := cmp.Diff(test.want, got, cmp.AllowUnexported(flags{})); diff != "" {
			t.Errorf("%q (-want +got):\n%s", test.words, diff)
		}
		if diff := cmp.Diff(test.arguments, arguments); diff != "" {
			t.Errorf("%q: arguments (-want +got):\n%s", test.words, diff)
		}
	}
	for _, words := range [][]string{{"-h"}, {"--help"}, {"a", "--loud", "--help", "--nonsense"}} {
		if _, err := commandFor(&flags{}).Parse(words); !errors.Is(err, cli.ErrHelp) {
			t.Errorf("%q: the error is %v, want ErrHelp", words, err)
		}
	}
}

func TestOffer(t *testing.T) {
	t.Parallel()
	var f flags
	program := &cli.Program{Name: "prog", Commands: []*cli.Command{commandFor(&f), {Name: "shut", Summary: "close"}}}
	tests := []struct {
		typed string // words separated by spaces; the last may be empty
		want  []string
		files bool
	}{
		{typed: "", want: []string{"show", "shut"}},
		{typed: "shu", want: []string{"shut"}},
		{typed: "show ", files: true},
		{typed: "show --l", want: []string{"--loud"}},
		{typed: "show --", want: []string{"--loud", "--file", "--more", "--form", "--some", "--count", "--help"}},
		{typed: "show --form ", want: []string{"text", "lines"}},
		{typed: "show --form=l", want: []string{"--form=lines"}},
		{typed: "show --form =", want: []string{"text", "lines"}},
		{typed: "show --form = l", want: []string{"lines"}},
		{typed: "show --form lines ", files: true},
		{typed: "show --some line,l", want: []string{"line,line", "line,loudspeaker"}},
		{typed: "show --file ", files: true},
		{typed: "show --file=x", files: true},
		{typed: "show --count "},
		{typed: "show --loud ", files: true},
		{typed: "show --nonsense=x"},
		{typed: "show -- --l", files: true},
		{typed: "shut "},
		{typed: "nonsense "},
	}
	for _, test := range tests {
		choices, files := program.Offer(strings.Split(test.typed, " "))
		var got []string
		for _, c := range choices {
			got = append(got, c.Word)
		}
		if diff := cmp.Diff(test.want, got); diff != "" || files != test.files {
			t.Errorf("%q: files %v, want %v (-want +got):\n%s", test.typed, files, test.files, diff)
		}
	}
	if choices, files := program.Offer(nil); choices != nil || files {
		t.Error("something is offered for nothing")
	}
}

func TestEveryShellHasAScript(t *testing.T) {
	t.Parallel()
	for _, shell := range cli.Shells() {
		text, err := cli.Script(shell.Word)
		if err != nil || !strings.Contains(text, "loudlint completion --typed -- ") {
			t.Errorf("%s: %v", shell.Word, err)
		}
	}
	for _, shell := range []string{"", "../loudlint", "csh"} {
		if _, err := cli.Script(shell); err == nil {
			t.Errorf("%q: there is no error", shell)
		}
	}
}
