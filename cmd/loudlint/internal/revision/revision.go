// Package revision reads designs as they were in a revision of a git repository.
//
// It asks the git program that is installed for trees and blobs, and takes them
// into memory: nothing is checked out, written or fetched. Which program is
// started, and with which words, is never up to a design. Only the command imports
// it, and only when a call names a revision.
package revision

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
	"loudlint/schema/source"
)

// Load reads the design at a path as it was in a revision: a file, or all design
// files of a folder, with the files they use. The path need not be there any more,
// but the repository has to be the one around it. Problems and errors are as those
// of schema.Load.
func Load(name, revision string, options schema.Options) (*schema.Design, []schema.Problem, error) {
	r, err := open(name, revision)
	if err != nil {
		return nil, nil, fmt.Errorf("read %s at revision %s: %w", name, revision, err)
	}
	r.folders = options.Folders
	files, err := r.design()
	if err != nil {
		return nil, nil, fmt.Errorf("read %s at revision %s: %w", name, revision, err)
	}
	options.Open = r.use
	design, problems := schema.Read(r.name, files, options)
	return design, problems, nil
}

// repository is one revision of a repository, seen from a folder in it.
type repository struct {
	git     string // the program
	folder  string // on disk, inside the work tree
	commit  string
	name    string // of the design, with forward slashes, as it is shown
	at      string // its path in the tree, "" for the top
	folders []string
	trees   map[string]string       // paths in the tree of the files read, by the name shown
	files   map[string]*source.File // by path in the tree
	total   int                     // bytes
}

// open finds the repository around a path, and the revision in it.
func open(name, revision string) (*repository, error) {
	git, err := exec.LookPath("git")
	if err != nil {
		return nil, errors.New("the program git is not installed, or not on the PATH")
	}
	absolute, err := filepath.Abs(filepath.FromSlash(name))
	if err != nil {
		return nil, err
	}
	folder := absolute
	for { // the folder of a path that was there once
		if info, err := os.Stat(folder); err == nil && info.IsDir() {
			break
		}
		up := filepath.Dir(folder)
		if up == folder {
			return nil, errors.New("no folder of its path is there")
		}
		folder = up
	}
	r := &repository{git: git, folder: folder, name: path.Clean(filepath.ToSlash(name)), trees: map[string]string{}, files: map[string]*source.File{}}
	if r.at, err = r.treePath(absolute); err != nil {
		return nil, err
	}
	if strings.HasPrefix(revision, "-") {
		return nil, errors.New("the name of a revision does not begin with a hyphen")
	}
	commit, err := r.run("rev-parse", "--verify", "--quiet", revision+"^{commit}")
	if err != nil {
		return nil, fmt.Errorf("there is no such revision in the repository%s", said(err))
	}
	r.commit = strings.TrimSpace(string(commit))
	return r, nil
}

// treePath gives the path in the tree of a path on disk that lies in the work
// tree.
func (r *repository) treePath(absolute string) (string, error) {
	prefix, err := r.run("rev-parse", "--show-prefix")
	if err != nil {
		return "", fmt.Errorf("it lies in no git repository%s", said(err))
	}
	rest, err := filepath.Rel(r.folder, absolute)
	if err != nil {
		return "", err
	}
	at := path.Join(strings.TrimSuffix(string(prefix), "\n"), filepath.ToSlash(rest))
	if at == ".." || strings.HasPrefix(at, "../") {
		return "", errors.New("it lies outside the repository")
	}
	if at == "." {
		at = ""
	}
	return at, nil
}

// gitError is what git said when it failed.
type gitError struct {
	err  error
	said string
}

func (e *gitError) Error() string { return "git: " + e.err.Error() + said(e) }
func (e *gitError) Unwrap() error { return e.err }

// said gives what git said, in brackets, when it said anything.
func said(err error) string {
	if e, ok := errors.AsType[*gitError](err); ok && e.said != "" {
		return " (" + e.said + ")"
	}
	return ""
}

// run runs git in the folder and gives what it writes.
func (r *repository) run(words ...string) ([]byte, error) {
	command := exec.Command(r.git, append([]string{"-C", r.folder, "--no-pager", "--literal-pathspecs"}, words...)...)
	// In a hook git tells its children about one repository, by paths relative to
	// another folder; here the folder alone says which is meant. Nothing may come
	// from a network.
	command.Env = append(slices.DeleteFunc(command.Environ(), func(v string) bool {
		name, _, _ := strings.Cut(v, "=")
		return slices.Contains([]string{"GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_PREFIX", "GIT_COMMON_DIR", "GIT_OBJECT_DIRECTORY"}, strings.ToUpper(name))
	}), "GIT_NO_LAZY_FETCH=1", "GIT_TERMINAL_PROMPT=0", "LC_ALL=C")
	var out, problems bytes.Buffer
	command.Stdout, command.Stderr = &out, &problems
	if err := command.Run(); err != nil {
		first, _, _ := strings.Cut(strings.TrimSpace(problems.String()), "\n")
		return nil, &gitError{err, strings.TrimPrefix(first, "fatal: ")}
	}
	return out.Bytes(), nil
}

// entry is something in a tree.
type entry struct {
	mode, kind, id string
	size           int
	path           string // from the top
}

// modes of entries that are no ordinary files.
const (
	modeLink   = "120000"
	kindFile   = "blob"
	kindFolder = "tree"
)

// list lists what stands at a path of the tree: the entry itself, or behind a
// slash what is in that folder.
func (r *repository) list(at string) ([]entry, error) {
	words := []string{"ls-tree", "-z", "-l", "--full-tree", r.commit}
	if at != "" {
		words = append(words, "--", at)
	}
	text, err := r.run(words...)
	if err != nil {
		return nil, err
	}
	var all []entry
	for line := range strings.SplitSeq(strings.TrimSuffix(string(text), "\x00"), "\x00") {
		head, name, ok := strings.Cut(line, "\t")
		fields := strings.Fields(head)
		if !ok || len(fields) != 4 {
			continue
		}
		size, err := strconv.Atoi(fields[3])
		if err != nil {
			size = 0 // folders have none
		}
		all = append(all, entry{mode: fields[0], kind: fields[1], id: fields[2], size: size, path: name})
	}
	return all, nil
}

// design reads the file, or the design files of the folder.
func (r *repository) design() ([]*source.File, error) {
	if r.at != "" {
		all, err := r.list(r.at)
		switch {
		case err != nil:
			return nil, err
		case len(all) == 0:
			return nil, fmt.Errorf("there is no %s in it%s", r.at, r.nearest(r.at))
		case all[0].kind == kindFile:
			file, err := r.read(all[0], r.name)
			return []*source.File{file}, err
		case all[0].kind != kindFolder:
			return nil, errors.New("it is another repository inside this one")
		}
	}
	folder := r.at
	if folder != "" {
		folder += "/"
	}
	all, err := r.list(folder)
	if err != nil {
		return nil, err
	}
	var files []*source.File
	for _, e := range all {
		if e.kind != kindFile || !isDesign(e.path) {
			continue
		}
		file, err := r.read(e, path.Join(r.name, path.Base(e.path)))
		if err != nil {
			return nil, err
		}
		files = append(files, file)
	}
	if len(files) == 0 {
		return nil, fmt.Errorf("the folder holds no design: no file in it ends in %s", schema.Ending)
	}
	return files, nil
}

func isDesign(name string) bool { return strings.HasSuffix(strings.ToLower(name), schema.Ending) }

// nearest suggests a design beside a path that is not there.
func (r *repository) nearest(at string) string {
	folder := path.Dir(at) + "/"
	if folder == "./" {
		folder = ""
	}
	all, err := r.list(folder)
	if err != nil {
		return ""
	}
	var names []string
	for _, e := range all {
		if e.kind == kindFolder || isDesign(e.path) {
			names = append(names, path.Base(e.path))
		}
	}
	if near := schema.Nearest(path.Base(at), names); near != "" {
		return "; did you mean " + folder + near + "?"
	}
	return ""
}

// read reads a file of the tree once, under the name it is shown by.
func (r *repository) read(e entry, shown string) (*source.File, error) {
	if file := r.files[e.path]; file != nil {
		return file, nil
	}
	if e.mode == modeLink {
		return nil, fmt.Errorf("%s is a link there, and links are not followed in a revision", e.path)
	}
	if r.total += e.size; e.size > schema.MaxFileBytes || r.total > schema.MaxTotalBytes {
		return nil, fmt.Errorf("%s is too large; a file may have %d bytes and a design %d", e.path, schema.MaxFileBytes, schema.MaxTotalBytes)
	}
	text, err := r.run("cat-file", "blob", e.id)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read%s", e.path, said(err))
	}
	file := source.NewFile(shown, text)
	r.files[e.path], r.trees[shown] = file, e.path
	return file, nil
}

// use finds a file that another names: beside it, or in one of the folders named on
// the command line, always in the same revision.
func (r *repository) use(from *source.File, name string) (*source.File, error) {
	if path.IsAbs(name) || strings.ContainsAny(name, `\:`) || slices.Contains(strings.Split(name, "/"), "..") {
		return nil, fmt.Errorf("the path %q leaves the design's folder; a used file lies in it, or in a folder named on the command line with --folder", name)
	}
	if file, err := r.find(path.Join(path.Dir(r.trees[from.Name]), name), path.Join(path.Dir(from.Name), name)); file != nil || err != nil {
		return file, err
	}
	for _, folder := range r.folders {
		absolute, err := filepath.Abs(folder)
		if err != nil {
			return nil, fmt.Errorf("find the folder %s: %w", folder, err)
		}
		at, err := r.treePath(absolute)
		if err != nil {
			return nil, fmt.Errorf("the folder %s has no revisions: %w", folder, err)
		}
		if file, err := r.find(path.Join(at, name), path.Join(filepath.ToSlash(folder), name)); file != nil || err != nil {
			return file, err
		}
	}
	return nil, fmt.Errorf("there is no file %q beside this one in that revision", name)
}

// find reads a file of the tree; nil when there is none.
func (r *repository) find(at, shown string) (*source.File, error) {
	all, err := r.list(at)
	if err != nil || len(all) == 0 || all[0].kind != kindFile {
		return nil, err
	}
	return r.read(all[0], shown)
}
