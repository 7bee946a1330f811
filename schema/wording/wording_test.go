package wording

import "testing"

func TestWords(t *testing.T) {
	t.Parallel()
	for _, test := range []struct{ got, want string }{
		{Counted(0, "line"), "0 lines"},
		{Counted(1, "line"), "1 line"},
		{Counted(3, "line"), "3 lines"},
		{Counted(2, "pass"), "2 passes"},
		{Counted(2, "switch"), "2 switches"},
		{Counted(2, "supply"), "2 supplies"},
		{Counted(1, "music"), "1 music"},
		{Counted(2, "music"), "2 music sources"},
		{Listed(nil, "or"), ""},
		{Listed([]string{"W"}, "or"), "W"},
		{Listed([]string{"W", "mW"}, "or"), "W or mW"},
		{Listed([]string{"W", "mW", "kW"}, "and"), "W, mW and kW"},
		{WithArticle("XLR 3"), "an XLR 3"},
		{WithArticle("DIN 5"), "a DIN 5"},
		{WithArticle("error"), "an error"},
		{WithArticle("length"), "a length"},
		{WithArticle("Öre"), "a Öre"},
		{WithArticle("8 ohm tap"), "an 8 ohm tap"},
		{WithArticle(""), "a "},
		{Capital("the line"), "The line"},
		{Capital("öl"), "Öl"},
		{Capital(""), ""},
		{Capital("\xff"), "\xff"},
		{Sentence(" the line is open "), "The line is open."},
		{Sentence("Is it?"), "Is it?"},
		{Sentence(" "), ""},
	} {
		if test.got != test.want {
			t.Errorf("%q, not %q", test.got, test.want)
		}
	}
}
