package schema

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// Ending is the ending of the names of design files.
const Ending = ".pa.hcl"

// Options of reading.
type Options struct {
	// Folders are places outside the design's own folder where files that are
	// used may be found.
	Folders []string
	// Workers bounds how many goroutines parse at once; 0 means as many as
	// there are processors.
	Workers int
	// Open reads a file that a `use` names: from is the file that names it.
	// Load sets it; Read without it refuses every use.
	Open func(from *source.File, name string) (*source.File, error)

	forCriteria bool // the files are read for their criteria alone
}

// Load reads a design from disk: one file, or all files of a folder that end in
// .pa.hcl. Problems are about what the text says and have a place in it; an
// error is about files that cannot be read. The design is nil when either is
// given.
func Load(name string, options Options) (*Design, []Problem, error) {
	info, err := os.Stat(name)
	if err != nil {
		return nil, nil, missingFile(name, err)
	}
	var paths []string
	root := name
	if info.IsDir() {
		entries, err := os.ReadDir(name)
		if err != nil {
			return nil, nil, fmt.Errorf("read the folder %s: %w", name, err)
		}
		for _, e := range entries {
			if isDesign(e.Name()) && !e.IsDir() {
				paths = append(paths, filepath.Join(name, e.Name()))
			}
		}
		if len(paths) == 0 {
			return nil, nil, fmt.Errorf("the folder %s holds no design: no file in it ends in %s%s", name, Ending, designsBelow(name, entries))
		}
	} else {
		root = filepath.Dir(name)
		paths = []string{name}
	}
	disk := &disk{root: root, folders: options.Folders, known: map[string]*source.File{}}
	var files []*source.File
	for _, p := range paths {
		file, err := disk.read(p)
		if err != nil {
			return nil, nil, err
		}
		if !slices.Contains(files, file) { // a link beside the file it leads to
			files = append(files, file)
		}
	}
	options.Open = disk.use
	design, problems := Read(filepath.ToSlash(name), files, options)
	return design, problems, nil
}

// isDesign tells a design by its name. Some systems give names in capitals.
func isDesign(name string) bool {
	return len(name) > len(Ending) && strings.EqualFold(name[len(name)-len(Ending):], Ending)
}

// designsBelow names the first folders in a folder that hold designs, as the end
// of a sentence, or gives "".
func designsBelow(name string, entries []fs.DirEntry) string {
	const most = 3
	var below []string
	for _, e := range entries {
		if !e.IsDir() || len(below) == most {
			continue
		}
		folder := filepath.Join(name, e.Name())
		if inside, err := os.ReadDir(folder); err == nil && len(fileNames(inside)) > 0 {
			below = append(below, folder)
		}
	}
	for _, e := range entries { // some editors add an ending of their own
		if strings.Contains(strings.ToLower(e.Name()), Ending+".") && !e.IsDir() {
			return fmt.Sprintf("; rename %s so that it does", filepath.Join(name, e.Name()))
		}
	}
	if len(below) == 0 {
		return ""
	}
	return "; did you mean " + wording.Listed(below, "or") + "?"
}

func missingFile(name string, err error) error {
	if !os.IsNotExist(err) {
		return fmt.Errorf("read the design %s: %w", name, err)
	}
	folder, base := filepath.Split(name)
	if folder == "" {
		folder = "."
	}
	var names []string
	if entries, e := os.ReadDir(folder); e == nil {
		for _, entry := range entries {
			if entry.IsDir() || isDesign(entry.Name()) {
				names = append(names, entry.Name())
			}
		}
	}
	if near := nearestFile(base, names); near != "" {
		return fmt.Errorf("there is no file or folder %s; did you mean %s?", name, filepath.Join(folder, near))
	}
	return fmt.Errorf("there is no file or folder %s", name)
}

// nearestFile gives the name closest to one that is not there. What all names
// of design files end in makes no two of them alike.
func nearestFile(name string, names []string) string {
	bare := make([]string, len(names))
	for i, n := range names {
		bare[i] = strings.TrimSuffix(n, Ending)
	}
	near := nearest(strings.TrimSuffix(name, Ending), bare)
	if near == "" {
		return ""
	}
	return names[slices.Index(bare, near)]
}

// disk reads the files of one design, each once, by whatever path it is named.
type disk struct {
	root    string
	folders []string
	known   map[string]*source.File // by the path that links lead to
	total   int64
}

func (d *disk) read(name string) (*source.File, error) {
	info, err := os.Stat(name)
	if err != nil {
		return nil, fmt.Errorf("read the file %s: %w", name, err)
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("read the file %s: it is no ordinary file", name)
	}
	target, err := filepath.EvalSymlinks(name)
	if err != nil {
		return nil, fmt.Errorf("read the file %s: %w", name, err)
	}
	if file := d.known[target]; file != nil {
		return file, nil
	}
	text, err := readBounded(target)
	if err != nil {
		return nil, fmt.Errorf("read the file %s: %w", name, err)
	}
	if d.total += int64(len(text)); len(text) > MaxFileBytes || d.total > MaxTotalBytes {
		return nil, fmt.Errorf("read the file %s: it is too large; a file may have %d bytes and a design %d", name, MaxFileBytes, MaxTotalBytes)
	}
	file := source.NewFile(filepath.ToSlash(filepath.Clean(name)), text)
	d.known[target] = file
	return file, nil
}

// readBounded reads a file, and no more than one byte too many of it.
func readBounded(name string) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer func() { _ = f.Close() }() // it was only read
	info, err := f.Stat()
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	b.Grow(int(min(info.Size(), MaxFileBytes)) + bytes.MinRead)
	_, err = b.ReadFrom(io.LimitReader(f, MaxFileBytes+1))
	return b.Bytes(), err
}

// use finds a file that another names: beside it, inside the design's folder or
// one that the command line names, and nowhere else.
func (d *disk) use(from *source.File, name string) (*source.File, error) {
	if path.IsAbs(name) || strings.ContainsAny(name, `\:`) || slices.Contains(strings.Split(name, "/"), "..") {
		return nil, fmt.Errorf("the path %q leaves the design's folder; a used file lies in it, or in a folder named on the command line with --folder", name)
	}
	candidates := []string{filepath.Join(filepath.Dir(filepath.FromSlash(from.Name)), filepath.FromSlash(name))}
	for _, f := range d.folders {
		candidates = append(candidates, filepath.Join(f, filepath.FromSlash(name)))
	}
	for _, c := range candidates {
		info, err := os.Stat(c)
		if err != nil || info.IsDir() {
			continue
		}
		if !d.inside(c) {
			return nil, fmt.Errorf("the file %q leads out of the design's folder through a link", name)
		}
		return d.read(c)
	}
	near := ""
	if entries, err := os.ReadDir(filepath.Dir(candidates[0])); err == nil {
		near = nearestFile(path.Base(name), fileNames(entries))
	}
	if near != "" {
		return nil, fmt.Errorf("there is no file %q; did you mean %q?", name, path.Join(path.Dir(name), near))
	}
	return nil, fmt.Errorf("there is no file %q beside this one", name)
}

// inside tells that a file really lies in the design's folder or a named one,
// links followed.
func (d *disk) inside(name string) bool {
	target, err := filepath.EvalSymlinks(name)
	if err != nil {
		return false
	}
	for _, folder := range append([]string{d.root}, d.folders...) {
		base, err := filepath.EvalSymlinks(folder)
		if err != nil {
			continue
		}
		if a, err := filepath.Abs(base); err == nil {
			base = a
		}
		if a, err := filepath.Abs(target); err == nil {
			target = a
		}
		if rel, err := filepath.Rel(base, target); err == nil && rel != ".." && !strings.HasPrefix(rel, ".."+string(filepath.Separator)) {
			return true
		}
	}
	return false
}

func fileNames(entries []fs.DirEntry) []string {
	var names []string
	for _, e := range entries {
		if isDesign(e.Name()) {
			names = append(names, e.Name())
		}
	}
	return names
}

// Read makes a design of files already in memory. All problems of all files are
// given together, in the order of their places; the design is nil when there is
// any.
func Read(name string, files []*source.File, options Options) (*Design, []Problem) {
	return readInPieces(name, files, options, pieceBytes)
}

// readInPieces reads a design; files longer than size are parsed in pieces of
// about that many bytes.
func readInPieces(name string, files []*source.File, options Options, size int) (*Design, []Problem) {
	own := slices.Clone(files)
	slices.SortFunc(own, func(a, b *source.File) int { return strings.Compare(a.Name, b.Name) })
	options.Open = openOnce(options.Open)
	c := cutting{size: size, workers: options.Workers, whole: map[*source.File]bool{}}
	for {
		sections, layers, used, problems := readFirstSections(own, c, options)
		givens, more := readGivens(sections)
		problems = append(problems, more...)
		fragments, doubtful := readFragments(sections, givens, options.Workers)
		if len(doubtful) > 0 { // rare: a large file with an error in its syntax
			for _, f := range doubtful {
				c.whole[f] = true
			}
			continue
		}
		r := &resolver{design: &Design{Name: name, Files: append(own, used...)}, layers: layers}
		r.problems = problems
		r.merge(fragments)
		r.resolve()
		if len(r.problems) > 0 {
			return nil, sortProblems(r.problems)
		}
		return r.design, nil
	}
}

// openOnce remembers the files that were opened.
func openOnce(open func(*source.File, string) (*source.File, error)) func(*source.File, string) (*source.File, error) {
	if open == nil {
		return nil
	}
	type call struct {
		from *source.File
		name string
	}
	type result struct {
		file *source.File
		err  error
	}
	opened := map[call]result{}
	return func(from *source.File, name string) (*source.File, error) {
		r, ok := opened[call{from, name}]
		if !ok {
			r.file, r.err = open(from, name)
			opened[call{from, name}] = r
		}
		return r.file, r.err
	}
}

// readFragments decodes all sections. It gives the files that have to be read
// anew as a whole, if there are any.
func readFragments(sections []*section, givens *givenNames, workers int) (fragments []*fragment, doubtful []*source.File) {
	fragments = make([]*fragment, len(sections))
	parseSections(sections, workers, func(i int) {
		s := sections[i]
		if !s.doubt {
			fragments[i] = readFragment(s.syntax, givens, s.place)
		}
		s.body = nil // to be collected
	})
	for _, s := range sections {
		if s.doubt {
			doubtful = append(doubtful, s.file)
		}
	}
	return fragments, doubtful
}

// readFirstSections divides the files of a design, and those they use, each
// once, into sections, and parses those sections that come first. Layers are all
// files, those first over which others count.
func readFirstSections(own []*source.File, c cutting, options Options) (all []*section, layers [][]*source.File, used []*source.File, problems []Problem) {
	seen := map[string]*source.File{}
	for _, f := range own {
		seen[f.Name] = f
	}
	uses := map[*source.File][]*source.File{}
	files, place := own, standsOwn
	if options.forCriteria {
		place = standsForLimit
	}
	for depth := 0; len(files) > 0; depth++ {
		sections := c.sections(files, place)
		place = standsUsed
		all = append(all, sections...)
		var first []*section
		for _, s := range sections {
			if s.first {
				first = append(first, s)
			}
		}
		parseSections(first, options.Workers, func(int) {})
		files = nil
		for _, s := range first {
			for _, u := range usesOf(s.syntax) {
				file, err := options.follow(s.file, u.V, depth)
				if err != nil {
					problems = append(problems, Problem{Span: u.Span, Found: wording.Capital(err.Error()) + "."})
					continue
				}
				if seen[file.Name] == nil {
					seen[file.Name] = file
					files = append(files, file)
				}
				uses[s.file] = append(uses[s.file], seen[file.Name])
			}
		}
		used = append(used, files...)
	}
	return all, layersOf(own, uses), used, problems
}

// layersOf puts files in the order in which they count over each other, the
// weakest first: a file counts over those it uses, and of two that it uses the
// later one over the earlier. The design's own files count over all others and
// are one layer.
func layersOf(own []*source.File, uses map[*source.File][]*source.File) [][]*source.File {
	var layers [][]*source.File
	seen := make(map[*source.File]bool, len(own))
	for _, f := range own {
		seen[f] = true
	}
	// On the way down a file waits for those it uses; a stack of our own, as the
	// way can be as long as there are files.
	type visit struct {
		file *source.File
		next int // of the files it uses
	}
	for _, first := range own {
		for way := []visit{{file: first}}; len(way) > 0; {
			v := &way[len(way)-1]
			if v.next == len(uses[v.file]) {
				if len(way) > 1 {
					layers = append(layers, []*source.File{v.file})
				}
				way = way[:len(way)-1]
				continue
			}
			f := uses[v.file][v.next]
			v.next++
			if !seen[f] {
				seen[f] = true
				way = append(way, visit{file: f})
			}
		}
	}
	return append(layers, own)
}

// follow opens a file that another names.
func (o *Options) follow(from *source.File, name string, depth int) (*source.File, error) {
	if depth >= MaxUseDepth {
		return nil, fmt.Errorf("files use files more than %d deep", MaxUseDepth)
	}
	if o.Open == nil {
		return nil, fmt.Errorf("other files cannot be used here")
	}
	return o.Open(from, name)
}

// usesOf lists the files a parsed file uses. Whatever is wrong with a use
// block is said when the block is decoded.
func usesOf(s syntax) []Value[string] {
	if s.body == nil {
		return nil
	}
	var all []Value[string]
	d := s.decoder()
	for _, b := range s.body.Blocks {
		if !strings.EqualFold(b.Type, "use") {
			continue
		}
		if a, ok := b.Body.Attributes["file"]; ok {
			if t, plain := plainText(a.Expr); plain && t != "" {
				all = append(all, Value[string]{V: t, Text: t, Span: d.span(a.Expr.Range())})
			}
		}
	}
	return all
}
