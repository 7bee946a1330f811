package wholefile_test

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"loudlint/cmd/loudlint/internal/wholefile"
)

func text(t string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, t)
		return err
	}
}

func failing(w io.Writer) error {
	_, _ = io.WriteString(w, "half")
	return errors.New("the pen broke")
}

func put(t *testing.T, name, text string, mode os.FileMode) {
	t.Helper()
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(name, mode); err != nil {
		t.Fatal(err)
	}
}

// lies demands that a folder holds these files with these texts and no others.
func lies(t *testing.T, folder string, want map[string]string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		got, err := os.ReadFile(filepath.Join(folder, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		if text, ok := want[e.Name()]; !ok || text != string(got) {
			t.Errorf("%s holds %q, want %q", e.Name(), got, text)
		}
	}
	if len(entries) != len(want) {
		t.Errorf("there are %d files, want %d", len(entries), len(want))
	}
}

func TestNewFile(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	if err := wholefile.Write(filepath.Join(folder, "a.txt"), text("whole")); err != nil {
		t.Fatal(err)
	}
	lies(t, folder, map[string]string{"a.txt": "whole"})
}

func TestOldFileStaysWhenWritingFails(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	put(t, filepath.Join(folder, "a.txt"), "old", 0o644)
	err := wholefile.Write(filepath.Join(folder, "a.txt"), failing)
	if err == nil || !strings.Contains(err.Error(), "the pen broke") || !strings.Contains(err.Error(), "a.txt") {
		t.Errorf("the error is %v", err)
	}
	lies(t, folder, map[string]string{"a.txt": "old"})
}

func TestNothingIsLeftOfANewFileWhenWritingFails(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	if err := wholefile.Write(filepath.Join(folder, "a.txt"), failing); err == nil {
		t.Error("there is no error")
	}
	lies(t, folder, nil)
}

func TestPermissionsAreKept(t *testing.T) {
	t.Parallel()
	if runtime.GOOS == "windows" {
		t.Skip("Windows has no permission bits")
	}
	name := filepath.Join(t.TempDir(), "a.txt")
	put(t, name, "old", 0o640)
	if err := wholefile.Write(name, text("new")); err != nil {
		t.Fatal(err)
	}
	info, err := os.Stat(name)
	if err != nil {
		t.Fatal(err)
	}
	if got := info.Mode().Perm(); got != 0o640 {
		t.Errorf("the permissions are %o, want 640", got)
	}
}

func TestALinkStaysALink(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	put(t, filepath.Join(folder, "real.txt"), "old", 0o644)
	link := filepath.Join(folder, "link.txt")
	if err := os.Symlink("real.txt", link); err != nil {
		t.Skipf("links cannot be made here: %v", err)
	}
	if err := wholefile.Write(link, text("new")); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v", err)
	}
	lies(t, folder, map[string]string{"real.txt": "new", "link.txt": "new"})
}

func TestAnUnfinishedFileOfAnotherStays(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	put(t, filepath.Join(folder, ".a.txt.0.part"), "of another", 0o644)
	if err := wholefile.Write(filepath.Join(folder, "a.txt"), text("whole")); err != nil {
		t.Fatal(err)
	}
	lies(t, folder, map[string]string{"a.txt": "whole", ".a.txt.0.part": "of another"})
}

func TestWhatCannotBeWritten(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	for name, want := range map[string]string{
		folder:                                 "it is a folder",
		filepath.Join(folder, "none", "a.txt"): "no such file or directory",
	} {
		if err := wholefile.Write(name, text("x")); err == nil || !strings.Contains(err.Error(), want) && runtime.GOOS != "windows" {
			t.Errorf("%s: the error is %v, want one with %q", name, err, want)
		}
	}
}

func TestADeviceIsWrittenTo(t *testing.T) {
	t.Parallel()
	if _, err := os.Stat("/dev/null"); err != nil {
		t.Skip("there is no /dev/null")
	}
	if err := wholefile.Write("/dev/null", text("gone")); err != nil {
		t.Error(err)
	}
	if info, err := os.Stat("/dev/null"); err != nil || info.Mode().IsRegular() {
		t.Error("/dev/null is no device any more")
	}
}
