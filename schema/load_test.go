package schema

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// folderWith makes a folder of files; a text that begins with "-> " is a link.
func folderWith(t *testing.T, files map[string]string) string {
	t.Helper()
	folder := t.TempDir()
	for name, text := range files {
		path := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if target, isLink := strings.CutPrefix(text, "-> "); isLink {
			if err := os.Symlink(filepath.FromSlash(target), path); err != nil {
				t.Skip("no links here:", err)
			}
			continue
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return folder
}

const oneModel = "loudspeaker_model \"made/one\" { rated_power = \"6 W\" }\n"

func TestLoad(t *testing.T) {
	t.Parallel()
	for name, test := range map[string]struct {
		files    map[string]string
		load     string // "" is the folder
		folders  []string
		lines    int
		models   int
		problems []string // beginnings of what is found
		err      string
	}{
		"a file":             {files: map[string]string{"a.pa.hcl": "line \"A\" {}\n", "b.pa.hcl": "line \"B\" {}\n"}, load: "a.pa.hcl", lines: 1},
		"a folder":           {files: map[string]string{"a.pa.hcl": "line \"A\" {}\n", "b.PA.HCL": "line \"B\" {}\n", "c.txt": "no", "d/d.pa.hcl": "line \"D\" {}\n"}, lines: 2},
		"an empty file":      {files: map[string]string{"a.pa.hcl": ""}},
		"comments only":      {files: map[string]string{"a.pa.hcl": "# nothing yet\n/* really */\n"}},
		"a byte order mark":  {files: map[string]string{"a.pa.hcl": "\ufeffline \"A\" {}\r\n"}, lines: 1},
		"a used file":        {files: map[string]string{"a.pa.hcl": "use { file = \"lib/c.pa.hcl\" }\n", "lib/c.pa.hcl": oneModel}, load: "a.pa.hcl", models: 1},
		"used in the folder": {files: map[string]string{"a.pa.hcl": "use { file = \"c.pa.hcl\" }\n", "c.pa.hcl": oneModel}, models: 1},
		"used twice":         {files: map[string]string{"a.pa.hcl": "use { file = \"c.pa.hcl\" }\nuse { file = \"./c.pa.hcl\" }\n", "c.pa.hcl": "use { file = \"c.pa.hcl\" }\n" + oneModel}, load: "a.pa.hcl", models: 1},
		"used by a link":     {files: map[string]string{"a.pa.hcl": "use { file = \"link.pa.hcl\" }\n", "c.pa.hcl": oneModel, "link.pa.hcl": "-> c.pa.hcl"}, models: 1},
		"used by used":       {files: map[string]string{"a.pa.hcl": "use { file = \"lib/b.pa.hcl\" }\n", "lib/b.pa.hcl": "use { file = \"c.pa.hcl\" }\n", "lib/c.pa.hcl": oneModel}, load: "a.pa.hcl", models: 1},
		"a named folder":     {files: map[string]string{"job/a.pa.hcl": "use { file = \"c.pa.hcl\" }\n", "house/c.pa.hcl": oneModel}, load: "job", folders: []string{"house"}, models: 1},

		"a used design":     {files: map[string]string{"a.pa.hcl": "use { file = \"lib/b.pa.hcl\" }\n", "lib/b.pa.hcl": "line \"B\" {}\n"}, problems: []string{"This file is used by another and holds a line."}},
		"a way out":         {files: map[string]string{"job/a.pa.hcl": "use { file = \"../c.pa.hcl\" }\n", "c.pa.hcl": oneModel}, load: "job", problems: []string{"The path \"../c.pa.hcl\" leaves the design's folder"}},
		"an absolute path":  {files: map[string]string{"a.pa.hcl": "use { file = \"/etc/passwd\" }\n"}, problems: []string{"The path \"/etc/passwd\" leaves"}},
		"a drive":           {files: map[string]string{"a.pa.hcl": "use { file = \"C:/c.pa.hcl\" }\n"}, problems: []string{"The path \"C:/c.pa.hcl\" leaves"}},
		"a link out":        {files: map[string]string{"job/a.pa.hcl": "use { file = \"c.pa.hcl\" }\n", "c.pa.hcl": oneModel, "job/lib/x": "", "job/c.pa.hcl": "-> ../c.pa.hcl"}, load: "job/a.pa.hcl", problems: []string{"The file \"c.pa.hcl\" leads out of the design's folder"}},
		"a used folder":     {files: map[string]string{"a.pa.hcl": "use { file = \"lib\" }\n", "lib/c.pa.hcl": oneModel}, problems: []string{"There is no file \"lib\""}},
		"a misspelt file":   {files: map[string]string{"a.pa.hcl": "use { file = \"catalog.pa.hcl\" }\n", "catalogue.pa.hcl": oneModel}, load: "a.pa.hcl", problems: []string{"There is no file \"catalog.pa.hcl\"; did you mean \"catalogue.pa.hcl\"?"}},
		"a template":        {files: map[string]string{"a.pa.hcl": "given { n = \"c\" }\nuse { file = \"${given.n}.pa.hcl\" }\n", "c.pa.hcl": oneModel}, load: "a.pa.hcl", problems: []string{"The name of this file is made with a template."}},
		"problems all over": {files: map[string]string{"a.pa.hcl": "line \"A\" { home_run = 40 m }\n", "b.pa.hcl": "line \"A\" {}\nsystem \"X\" {}\n", "c.pa.hcl": "system \"Y\" {}\n"}, problems: []string{"40 m stands without quotes.", "A second line is called \"A\".", "A second system block, \"Y\"."}},
		"a slip hides no name": {
			files:    map[string]string{"a.pa.hcl": "line \"A\" { cable = 16 AWG }\n", "b.pa.hcl": "group \"G\" { lines = [\"A\"] }\n"},
			problems: []string{"16 AWG stands without quotes."},
		},
		"what cannot be read hides names, which is not held against others": {
			files:    map[string]string{"a.pa.hcl": "line \"A\" {}\n\x00", "b.pa.hcl": "group \"G\" { lines = [\"A\"] }\n"},
			problems: []string{"This file holds a zero byte"},
		},

		"no such file":          {load: "gone.pa.hcl", files: map[string]string{"gona.pa.hcl": ""}, err: "did you mean"},
		"a folder of no design": {files: map[string]string{"a.txt": ""}, err: "holds no design: no file in it ends in .pa.hcl"},
		"an ending too many":    {files: map[string]string{"hall.pa.hcl.txt": ""}, err: "hall.pa.hcl.txt so that it does"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			folder := folderWith(t, test.files)
			options := Options{}
			for _, f := range test.folders {
				options.Folders = append(options.Folders, filepath.Join(folder, f))
			}
			design, problems, err := Load(filepath.Join(folder, filepath.FromSlash(test.load)), options)
			switch {
			case test.err != "":
				if err == nil || !strings.Contains(err.Error(), test.err) {
					t.Errorf("error %v, want one with %q", err, test.err)
				}
				return
			case err != nil:
				t.Fatal(err)
			case len(problems) != len(test.problems):
				t.Fatalf("told:\n%swant %q", told(problems), test.problems)
			}
			for i, want := range test.problems {
				if !strings.HasPrefix(problems[i].Found, want) {
					t.Errorf("problem %d is %q, want %q", i, problems[i].Found, want)
				}
			}
			if design != nil && (len(design.Lines) != test.lines || len(design.Catalogue.Loudspeakers) != test.models) {
				t.Errorf("%d lines, %d models", len(design.Lines), len(design.Catalogue.Loudspeakers))
			}
		})
	}
}
