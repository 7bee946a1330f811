package schema_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"loudlint/schema"
)

func TestFind(t *testing.T) {
	t.Parallel()
	const (
		models = "loudspeaker_model \"x\" {\n  taps_100V = [\"6 W\"]\n}\n"
		system = "/* a hall */ system \"Hall\" {}\n"
		line   = "line \"L\" { output = \"100 V\" }\n"
	)
	root := t.TempDir()
	for name, text := range map[string]string{
		"one file/hall.pa.hcl":            line,
		"one design/a.pa.hcl":             system,
		"one design/b.pa.hcl":             line,
		"one design/models.pa.hcl":        models,
		"two designs/a.pa.hcl":            system,
		"two designs/b.pa.hcl":            "# the first line\n" + system,
		"two designs/c.pa.hcl":            line,
		"two designs/models.pa.hcl":       models,
		"no system/a.pa.hcl":              line,
		"no system/b.pa.hcl":              "space \"S\" {}\n",
		"catalogue/models.pa.hcl":         models + "criteria {\n}\nuse {\n  file = \"system.pa.hcl\"\n}\n",
		"deep/er/still/hall.pa.hcl":       system,
		"not understood/quote.pa.hcl":     "line \"L { system = 1",
		"not understood/word.pa.hcl":      "lime \"L\" {}\n",
		".hidden/hall.pa.hcl":             system,
		"other/notes.txt":                 system,
		"folder.pa.hcl/inside.pa.hcl":     line,
		"nested words/catalogue.pa.hcl":   "amplifier_model \"x\" {\n  system = 1\n  line {}\n}\n",
		"text/catalogue.pa.hcl":           "criterion \"x\" {\n  message = \"\nsystem\"\n}\n",
		"[odd] name?/hall.pa.hcl":         line,
		"empty/nothing.pa.hcl":            "",
		"capitals/HALL.PA.HCL":            system,
		"two of one/inner/hall.pa.hcl":    line,
		"two of one/hall.pa.hcl":          line,
		"two of one/inner/models.pa.hcl":  models,
		"two of one/inner/.save.txt.swp":  "",
		"two of one/inner/b/criteria.hcl": system,
	} {
		path := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	found, err := schema.Find(root)
	if err != nil {
		t.Fatal(err)
	}
	for i, f := range found {
		rel, err := filepath.Rel(root, f)
		if err != nil {
			t.Fatal(err)
		}
		found[i] = filepath.ToSlash(rel)
	}
	if diff := cmp.Diff([]string{
		"[odd] name?/hall.pa.hcl",
		"capitals/HALL.PA.HCL",
		"deep/er/still/hall.pa.hcl",
		"folder.pa.hcl/inside.pa.hcl",
		"no system",
		"not understood", // reading it tells why
		"one design",
		"one file/hall.pa.hcl",
		"text/catalogue.pa.hcl", // the text is not closed on its line
		"two designs/a.pa.hcl",
		"two designs/b.pa.hcl",
		"two designs/c.pa.hcl",
		"two of one/hall.pa.hcl",
		"two of one/inner",
	}, found); diff != "" {
		t.Errorf("-want +got\n%s", diff)
	}
	if _, err := schema.Find(filepath.Join(root, "gone")); err == nil {
		t.Error("a folder that is not there gives no error")
	}
}
