package sarif

import (
	"crypto/sha256"
	"encoding/hex"
	"net/url"
	"path"
	"slices"
	"strconv"
	"strings"

	"loudlint/schema"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// places turns the files and spans of one run into SARIF's artifacts and
// locations, and remembers what it was asked for.
type places struct {
	design    string // the design's name, cleaned
	artifacts []artifact
	indexes   map[string]int // of artifacts, by file name
	folders   []folder
	elsewhere int                         // how many of them are elsewhere
	used      map[string]artifactLocation // bases in use, for originalUriBaseIds
}

// folder is one that names of files are written relative to.
type folder struct {
	base string // its uriBaseId
	path string // absolute, without a slash at the end
	what string
}

const (
	startBase     = "%SRCROOT%"
	designBase    = "%DESIGN%"
	elsewhereBase = "%ELSEWHERE"
	programBase   = "%LOUDLINT%"
)

const startWhat = "The folder the program was started in."

// newPlaces begins a run for the design of this name.
func newPlaces(design string, files []*source.File, start string) *places {
	p := &places{design: path.Clean(design), indexes: map[string]int{}, used: map[string]artifactLocation{}}
	if start != "" {
		p.folders = append(p.folders, folder{startBase, strings.TrimSuffix(start, "/"), startWhat})
	}
	if isAbsolute(p.design) && !p.below(p.design) {
		own := p.design
		if strings.HasSuffix(own, schema.Ending) {
			own = path.Dir(own)
		}
		p.folders = append(p.folders, folder{designBase, strings.TrimSuffix(own, "/"), "The folder of the design."})
	}
	for _, f := range files {
		p.index(f)
	}
	return p
}

func isAbsolute(name string) bool {
	return strings.HasPrefix(name, "/") || len(name) > 2 && name[1] == ':' && name[2] == '/'
}

func (p *places) below(name string) bool {
	return slices.ContainsFunc(p.folders, func(f folder) bool { return strings.HasPrefix(name, f.path+"/") })
}

// uri writes the name of a file as a URI relative to a base.
func (p *places) uri(f *source.File) artifactLocation {
	switch {
	case schema.IsBuiltIn(f):
		_, name, _ := strings.Cut(f.Name, ":")
		return p.relative(name, folder{base: programBase, what: "The program itself: the catalogue it brings along."})
	case !isAbsolute(f.Name):
		return p.relative(f.Name, folder{base: startBase, what: startWhat})
	}
	if !p.below(f.Name) {
		dir, _ := path.Split(f.Name)
		p.elsewhere++
		p.folders = append(p.folders, folder{elsewhereBase + strconv.Itoa(p.elsewhere) + "%", strings.TrimSuffix(dir, "/"), "A folder outside that of the design."})
	}
	at := slices.IndexFunc(p.folders, func(folder folder) bool { return strings.HasPrefix(f.Name, folder.path+"/") })
	return p.relative(strings.TrimPrefix(f.Name, p.folders[at].path+"/"), p.folders[at])
}

func (p *places) relative(name string, from folder) artifactLocation {
	p.used[from.base] = artifactLocation{Description: &message{Text: from.what}}
	return artifactLocation{URI: relativeURI(name), URIBaseID: from.base}
}

// relativeURI writes a path with forward slashes as a relative reference (RFC
// 3986, section 4.2). A colon would make the front of it look like a scheme, a
// slash at the front like a path from the root: a name such as "//x" has one
// even after its folder is cut off.
func relativeURI(name string) string {
	uri := strings.ReplaceAll((&url.URL{Path: name}).EscapedPath(), ":", "%3A")
	if strings.HasPrefix(uri, "/") {
		return "." + uri
	}
	return uri
}

// index gives the place of a file among the run's artifacts.
func (p *places) index(f *source.File) int {
	at, ok := p.indexes[f.Name]
	if !ok {
		at = len(p.artifacts)
		p.indexes[f.Name] = at
		p.artifacts = append(p.artifacts, p.artifact(f))
	}
	return at
}

func (p *places) artifact(f *source.File) artifact {
	a := artifact{Location: p.uri(f), Length: len(f.Text), Roles: p.roles(f)}
	hash := sha256.New()
	if f.BOM {
		a.Length += len(source.BOM)
		_, _ = hash.Write([]byte(source.BOM))
	}
	_, _ = hash.Write(f.Text)
	a.Hashes = map[string]string{"sha-256": hex.EncodeToString(hash.Sum(nil))}
	if schema.IsBuiltIn(f) {
		a.Description = &message{Text: "Part of the typical catalogue: invented figures, typical of a class of device."}
		a.Contents = &artifactContent{Text: string(f.Text)}
	}
	return a
}

// roles says what a file is to the run (3.24.6).
func (p *places) roles(f *source.File) []string {
	switch {
	case schema.IsBuiltIn(f):
		return []string{"toolSpecifiedConfiguration"}
	case f.Name == p.design:
		return []string{"analysisTarget", "referencedOnCommandLine"}
	case path.Dir(f.Name) == p.design:
		return []string{"analysisTarget"}
	}
	return []string{"userSpecifiedConfiguration"} // catalogues and criteria that the design uses
}

func (p *places) artifactLocation(f *source.File) artifactLocation {
	index := p.index(f)
	location := p.artifacts[index].Location
	location.Index = &index
	return location
}

// at gives a span as a place, nil for no place.
func (p *places) at(s source.Span) *physicalLocation {
	if s.IsZero() {
		return nil
	}
	r := regionOf(s)
	return &physicalLocation{ArtifactLocation: p.artifactLocation(s.File), Region: &r}
}

// noted lists places with what is to be seen there, numbered from first. A place
// without a span or a note says nothing and is left out.
func (p *places) noted(all []schema.Place, first int) []location {
	list := make([]location, 0, len(all))
	for _, place := range all {
		if place.Span.IsZero() && place.Note == "" {
			continue
		}
		l := location{ID: first + len(list), PhysicalLocation: p.at(place.Span)}
		if place.Note != "" {
			l.Message = &message{Text: escaped(wording.Sentence(place.Note))}
		}
		list = append(list, l)
	}
	return list
}

// regionOf gives a span in lines and UTF-16 columns.
func regionOf(s source.Span) region {
	var r region
	r.StartLine, r.StartColumn = position(s.File, s.Start)
	r.EndLine, r.EndColumn = position(s.File, max(s.Start, s.End))
	if r.EndLine == r.StartLine {
		r.EndLine = 0
	}
	return r
}

// position gives line and column. To the standard the end of a file that ends
// with a line ending is still on its last line, behind the ending: no line
// begins there (3.30.2).
func position(f *source.File, offset int32) (line, column int) {
	at := f.Position(int(offset))
	if at.Byte == len(f.Text) && at.Line > 1 && at.UTF16Column == 1 {
		ending := f.Position(at.Byte - 1)
		return ending.Line, ending.UTF16Column + 1
	}
	return at.Line, at.UTF16Column
}
