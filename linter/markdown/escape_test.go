package markdown

import (
	"bytes"
	"html"
	"strings"
	"testing"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"

	"loudlint/linter/textout"
)

// nasty are texts that mean something in Markdown.
var nasty = []string{
	"Hall", "", " ", "# Hall", "Hall #", "- Hall", "+ Hall", "-", "---", "===", "1. Hall", "2) Hall", "> Hall", "* Hall", "    Hall",
	"[x] done", "[Hall](http://hall.example)", "![Hall](http://hall.example/x.png)", "[Hall]: http://hall.example",
	"<script>alert(1)</script>", "<http://hall.example>", "<!-- hidden", "&lt;b&gt;", "&#35; Hall", "AT&T",
	"a | b", `a \| b`, `a \`, `\`, "`tick`", "``", "a`", "~~gone~~", "~gone~", "**bold**", "_x_", "a_b_c", "*", "**",
	"http://hall.example", "HTTPS://hall.example/a|b", "www.hall.example", "WWW.hall.example", "ftp://hall.example", "mailto:x@hall.example", "x@hall.example", "xmpp:x@hall.example",
	"$x$", "@someone", "Hall:", "fünf 100 V", "\u202e reversed", "two\nlines", "a\tb", "\x1b[31m", "10 lg(1 / 2) = -3 dB", "![", "a  \nb", "|---|", ":---",
}

// TestTextsStandForThemselves renders texts with a parser of Markdown, tables,
// bare links and all: what comes out is what went in, and nothing else.
func TestTextsStandForThemselves(t *testing.T) {
	t.Parallel()
	for _, text := range nasty {
		standsForItself(t, text)
	}
}

func FuzzEscape(f *testing.F) {
	for _, text := range nasty {
		f.Add(text)
	}
	f.Fuzz(standsForItself)
}

func standsForItself(t *testing.T, text string) {
	shown := strings.Join(strings.Fields(textout.Printable(text)), " ")
	if shown == "" {
		return // nothing stands there, and the forms around it are others
	}
	want := html.EscapeString(shown)
	want = strings.NewReplacer("&#34;", "&quot;", "&#39;", "'").Replace(want)
	for _, form := range []struct{ name, markdown, html string }{
		{"point", "- " + escapeFirst(text) + "\n", "<ul>\n<li>" + want + "</li>\n</ul>\n"},
		{"paragraph", escapeFirst(text) + "\n", "<p>" + want + "</p>\n"},
		{"heading", "# " + escape(text) + "\n", "<h1>" + want + "</h1>\n"},
		{"bold", "- **" + escape(text) + "**\n", "<ul>\n<li><strong>" + want + "</strong></li>\n</ul>\n"},
		{"behind", "**Part:** " + escape(text) + "\n", "<p><strong>Part:</strong> " + want + "</p>\n"},
		{"cell", "| a |\n| --- |\n| " + escape(text) + " |\n", "<table>\n<thead>\n<tr>\n<th>a</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n<td>" + want + "</td>\n</tr>\n</tbody>\n</table>\n"},
		{"code", "- " + code(text) + "\n", "<ul>\n<li><code>" + want + "</code></li>\n</ul>\n"},
	} {
		var got bytes.Buffer
		if err := goldmark.New(goldmark.WithExtensions(extension.GFM)).Convert([]byte(form.markdown), &got); err != nil {
			t.Fatal(err)
		}
		if got.String() != form.html {
			t.Errorf("%s of %q: %q becomes %q, want %q", form.name, text, form.markdown, got.String(), form.html)
		}
	}
}
