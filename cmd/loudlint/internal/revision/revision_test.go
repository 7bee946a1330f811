package revision_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"loudlint/cmd/loudlint/internal/revision"
	"loudlint/schema"
)

// repository makes a git repository of two commits, the older tagged "before".
// Between them the hall loses a line, the bar goes away, and a file comes that is
// not committed.
func repository(t *testing.T) string {
	t.Helper()
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("git is not installed")
	}
	top := t.TempDir()
	write := func(name, text string) {
		path := filepath.Join(top, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	git := func(words ...string) {
		t.Helper()
		command := exec.CommandContext(t.Context(), "git", append([]string{"-C", top, "-c", "user.name=Tester", "-c", "user.email=tester@example.invalid", "-c", "commit.gpgsign=false", "-c", "core.autocrlf=false"}, words...)...)
		command.Env = append(command.Environ(), "GIT_CONFIG_GLOBAL="+os.DevNull, "GIT_CONFIG_NOSYSTEM=1")
		if said, err := command.CombinedOutput(); err != nil {
			t.Fatalf("git %v: %v\n%s", words, err, said)
		}
	}
	git("init", "-q")
	write("jobs/hall/a.pa.hcl", "use { file = \"lib/models.pa.hcl\" }\nline \"A\" {\n  loudspeaker \"H\" { model = \"made/one\" }\n}\n")
	write("jobs/hall/b*.PA.HCL", "line \"B\" {}\n")
	write("jobs/hall/notes.txt", "line \"N\" {}\n")
	write("jobs/hall/lib/models.pa.hcl", "use { file = \"more.pa.hcl\" }\nloudspeaker_model \"made/one\" { rated_power = \"6 W\" }\n")
	write("jobs/hall/lib/more.pa.hcl", "loudspeaker_model \"made/two\" { rated_power = \"10 W\" }\n")
	write("jobs/bar/bar.pa.hcl", "use { file = \"shared.pa.hcl\" }\nline \"Bar\" {}\n")
	write("shared/shared.pa.hcl", "loudspeaker_model \"made/three\" { rated_power = \"10 W\" }\n")
	write("top.pa.hcl", "line \"Top\" {}\n")
	git("add", "-A")
	git("commit", "-q", "-m", "before")
	git("tag", "before")
	git("rm", "-q", "-r", "jobs/bar", "jobs/hall/b*.PA.HCL")
	git("commit", "-q", "-m", "after")
	write("jobs/hall/c.pa.hcl", "line \"C\" {}\n")
	return top
}

func TestLoad(t *testing.T) {
	t.Parallel()
	top := repository(t)
	for _, test := range []struct {
		name, path, revision string
		folder               string
		lines                string // their names
		files                string
		err                  string
	}{
		{name: "a folder", path: "jobs/hall", revision: "before", lines: "A B", files: "a.pa.hcl b*.PA.HCL models.pa.hcl more.pa.hcl"},
		{name: "a folder as it is committed now", path: "jobs/hall", revision: "HEAD", lines: "A", files: "a.pa.hcl models.pa.hcl more.pa.hcl"},
		{name: "a file", path: "jobs/hall/b*.PA.HCL", revision: "before", lines: "B", files: "b*.PA.HCL"},
		{name: "the top", path: ".", revision: "before", lines: "Top", files: "top.pa.hcl"},
		{name: "a folder that is gone", path: "jobs/bar", revision: "HEAD~1", folder: "shared", lines: "Bar", files: "bar.pa.hcl shared.pa.hcl"},
		{name: "a used file that is not there", path: "jobs/bar", revision: "before", err: "problem: There is no file \"shared.pa.hcl\" beside this one in that revision."},
		{name: "no such revision", path: "jobs/hall", revision: "befor", err: "at revision befor: there is no such revision in the repository"},
		{name: "a flag for a revision", path: "jobs/hall", revision: "--all", err: "does not begin with a hyphen"},
		{name: "a tree for a revision", path: "jobs/hall", revision: "HEAD:jobs", err: "there is no such revision"},
		{name: "no such file", path: "jobs/hal", revision: "before", err: "there is no jobs/hal in it; did you mean jobs/hall?"},
		{name: "a folder without designs", path: "jobs", revision: "before", err: "the folder holds no design: no file in it ends in .pa.hcl"},
	} {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			options := schema.Options{}
			if test.folder != "" {
				options.Folders = []string{filepath.Join(top, test.folder)}
			}
			design, problems, err := revision.Load(filepath.Join(top, filepath.FromSlash(test.path)), test.revision, options)
			said := ""
			switch {
			case err != nil:
				said = err.Error()
			case len(problems) > 0:
				said = "problem: " + problems[0].String()
			}
			if test.err != "" || said != "" {
				if test.err == "" || !strings.Contains(said, test.err) {
					t.Fatalf("it says %q, want %q", said, test.err)
				}
				return
			}
			var lines, files []string
			for _, l := range design.Lines {
				lines = append(lines, l.Name)
			}
			for _, f := range design.Files {
				files = append(files, filepath.Base(filepath.FromSlash(f.Name)))
				if !strings.HasPrefix(f.Name, filepath.ToSlash(top)+"/") {
					t.Errorf("%s is not named as on disk", f.Name)
				}
			}
			if got := strings.Join(lines, " "); got != test.lines {
				t.Errorf("the lines are %s, want %s", got, test.lines)
			}
			if got := strings.Join(files, " "); got != test.files {
				t.Errorf("the files are %s, want %s", got, test.files)
			}
		})
	}
}

func TestOutsideARepository(t *testing.T) {
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("git is not installed")
	}
	folder := t.TempDir()
	t.Setenv("GIT_CEILING_DIRECTORIES", filepath.Dir(folder))
	if _, _, err := revision.Load(filepath.Join(folder, "hall"), "HEAD", schema.Options{}); err == nil || !strings.Contains(err.Error(), "it lies in no git repository") {
		t.Errorf("the error is %v", err)
	}
}

// TestInAHook demands that what git tells its hooks changes nothing.
func TestInAHook(t *testing.T) {
	top := repository(t)
	t.Setenv("GIT_DIR", ".git")
	t.Setenv("GIT_INDEX_FILE", ".git/index")
	t.Setenv("GIT_PREFIX", "elsewhere/")
	if _, _, err := revision.Load(filepath.Join(top, "jobs", "hall"), "before", schema.Options{}); err != nil {
		t.Error(err)
	}
}

func TestWithoutGit(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	if _, _, err := revision.Load("hall", "HEAD", schema.Options{}); err == nil || !strings.Contains(err.Error(), "read hall at revision HEAD: the program git is not installed, or not on the PATH") {
		t.Errorf("the error is %v", err)
	}
}

// TestLinks demands that links in a tree are not followed.
func TestLinks(t *testing.T) {
	t.Parallel()
	top := repository(t)
	if err := os.Symlink("a.pa.hcl", filepath.Join(top, "jobs", "hall", "link.pa.hcl")); err != nil {
		t.Skip("no links here:", err)
	}
	for _, words := range [][]string{{"add", "jobs/hall/link.pa.hcl"}, {"-c", "user.name=T", "-c", "user.email=t@example.invalid", "-c", "commit.gpgsign=false", "commit", "-q", "-m", "link"}} {
		if said, err := exec.CommandContext(t.Context(), "git", append([]string{"-C", top}, words...)...).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, said)
		}
	}
	if _, _, err := revision.Load(filepath.Join(top, "jobs", "hall"), "HEAD", schema.Options{}); err == nil || !strings.Contains(err.Error(), "link.pa.hcl is a link there") {
		t.Errorf("the error is %v", err)
	}
}
