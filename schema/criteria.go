package schema

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"

	"loudlint/schema/source"
)

// Criteria count in layers: a firm's file, over it a job's, over both the design
// itself, and over all of them a specification that somebody else holds the
// design against.

// Specification is what files ask of designs that do not name them: limits, and
// checks of somebody's own.
type Specification struct {
	// Named are the files that were named, in that order.
	Named []*source.File
	// Files are all files read, used ones too.
	Files      []*source.File
	Criteria   []*Criteria  // of two settings the later one counts
	Criterions []*Criterion // each of a name of its own
}

// LoadCriteria reads files for their criteria; a later one counts over an
// earlier one. Files that these use lie beside them, or in a folder of the
// options. Models in them serve nothing. Problems and errors are as for Load.
func LoadCriteria(names []string, options Options) (*Specification, []Problem, error) {
	all := &Specification{}
	var problems []Problem
	for _, name := range names {
		disk := &disk{root: filepath.Dir(name), folders: options.Folders, known: map[string]*source.File{}}
		file, err := disk.read(name)
		if errors.Is(err, fs.ErrNotExist) {
			err = missingFile(name, fs.ErrNotExist)
		}
		if err != nil {
			return nil, nil, err
		}
		options.Open = disk.use
		one, more := ReadCriteria(file, options)
		problems = append(problems, more...)
		if one != nil {
			all.Named = append(all.Named, file)
			all.Files = append(all.Files, one.Files...)
			all.Criteria = append(all.Criteria, one.Criteria...)
			all.Criterions = LayCriterions(all.Criterions, one.Criterions)
		}
	}
	if len(problems) > 0 {
		return nil, problems, nil
	}
	return all, nil, nil
}

// ReadCriteria reads a file already in memory for its criteria. The
// specification is nil when there is any problem.
func ReadCriteria(file *source.File, options Options) (*Specification, []Problem) {
	options.forCriteria = true
	design, problems := Read(file.Name, []*source.File{file}, options)
	if len(problems) > 0 {
		return nil, problems
	}
	return &Specification{Named: []*source.File{file}, Files: design.Files, Criteria: design.Criteria, Criterions: design.Criterions}, nil
}

// LayCriterions lays criterions over others: one takes the place of a weaker one
// of its name.
func LayCriterions(weaker, stronger []*Criterion) []*Criterion {
	replaced := make(map[string]bool, len(stronger))
	for _, c := range stronger {
		replaced[fold(c.Name)] = true
	}
	kept := slices.DeleteFunc(slices.Clone(weaker), func(c *Criterion) bool { return replaced[fold(c.Name)] })
	return append(kept, stronger...)
}

// layCriteria gathers what all files say about limits and checks of one's own,
// the weakest layer first. Within a layer no two criterions have one name.
func (r *resolver) layCriteria(fragments []*fragment) {
	byFile := map[*source.File][]*fragment{}
	for _, f := range fragments {
		byFile[f.file] = append(byFile[f.file], f)
	}
	d := r.design
	for _, layer := range r.layers {
		var criterions []*Criterion
		for _, file := range layer {
			for _, f := range byFile[file] {
				d.Criteria = append(d.Criteria, f.criteria...)
				criterions = append(criterions, f.criterions...)
			}
		}
		distinct(r, "criterion", criterions)
		if len(d.Criterions)+len(criterions) > MaxCriterions {
			r.problem(Problem{Span: criterions[0].Header, Found: fmt.Sprintf("A design has more than %d criterions.", MaxCriterions)})
			return
		}
		d.Criterions = LayCriterions(d.Criterions, criterions)
	}
}
