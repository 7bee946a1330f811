package main

import (
	"fmt"
	"path/filepath"
	"slices"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/schema"
)

// searching is what commands have in common that take designs by their names and
// those of whole trees of folders.
type searching struct{ below []string }

func (s *searching) belowFlag(does string) *cli.Flag {
	return cli.Texts(&s.below, "below", "FOLDER", does+" every design in this folder and in the folders below it; files that hold only models or criteria are none")
}

// designs gives those that a call names, and those below folders it names.
func (s *searching) designs(arguments []string) ([]string, error) {
	if len(s.below) == 0 {
		return designsOf(arguments)
	}
	var paths []string
	if len(arguments) > 0 {
		named, err := designsOf(arguments)
		if err != nil {
			return nil, err
		}
		paths = named
	}
	for _, folder := range s.below {
		found, err := schema.Find(filepath.Clean(folder))
		if err != nil {
			return nil, &cli.CallError{Found: err.Error() + "."}
		}
		if len(found) == 0 {
			return nil, &cli.CallError{Found: fmt.Sprintf("No design lies in %s or below it.", folder), Hint: "A design is a file whose name ends in " + schema.Ending + "."}
		}
		for _, path := range found {
			if !slices.Contains(paths, path) {
				paths = append(paths, path)
			}
		}
	}
	return paths, nil
}

// designsOf gives the designs named in a call, each once.
func designsOf(arguments []string) ([]string, error) {
	if len(arguments) == 0 {
		if files, err := filepath.Glob("*" + schema.Ending); err != nil || len(files) == 0 {
			return nil, &cli.CallError{
				Found: "No design is named, and the current folder is none: no file in it ends in " + schema.Ending + ".",
				Hint:  "Name a file or a folder, as in loudlint check hall" + schema.Ending + ".",
			}
		}
		return []string{"."}, nil
	}
	var paths []string
	for _, a := range arguments {
		if a == "" || a == "-" {
			return nil, &cli.CallError{Found: fmt.Sprintf("%q is no design.", a), Hint: "A design is a file or a folder."}
		}
		if a = filepath.Clean(a); !slices.Contains(paths, a) {
			paths = append(paths, a)
		}
	}
	return paths, nil
}
