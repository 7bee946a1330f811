package schema

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// MaxFound bounds the designs that Find gives.
const MaxFound = 100_000

// lookedInto is up to which size Find looks into a file; a larger one is taken
// for a design.
const lookedInto = 4 << 20

// Find gives the designs in a folder and in all folders below it, in the order
// of their names. Files in one folder are one design, as Load reads them,
// unless two or more of them hold a `system` block or there is only one: then
// each file that holds parts of a system is a design. Files that hold nothing
// but models and criteria are none. Folders whose names begin with a dot, and
// links to folders, are passed over. An error is about a folder that cannot be
// read, or too many designs.
func Find(root string) ([]string, error) {
	var found []string
	err := filepath.WalkDir(root, func(name string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if !entry.IsDir() {
			return nil
		}
		if base := entry.Name(); name != root && strings.HasPrefix(base, ".") {
			return filepath.SkipDir
		}
		here, err := findIn(name)
		found = append(found, here...)
		if err == nil && len(found) > MaxFound {
			err = fmt.Errorf("there are more than %d designs below %s; name a smaller part of it", MaxFound, root)
		}
		return err
	})
	if err != nil {
		return nil, fmt.Errorf("look for designs: %w", err)
	}
	slices.Sort(found)
	return found, nil
}

// findIn gives the designs of one folder.
func findIn(folder string) ([]string, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	var designs []string
	files, systems := 0, 0
	for _, name := range fileNames(slices.DeleteFunc(entries, fs.DirEntry.IsDir)) {
		name = filepath.Join(folder, name)
		files++
		parts, system := holds(name)
		if system {
			systems++
		}
		if parts {
			designs = append(designs, name)
		}
	}
	if len(designs) == 0 || systems >= 2 || files == 1 {
		return designs, nil
	}
	return []string{folder}, nil
}

// holds tells whether a file holds parts of a system, and whether it holds a
// `system` block. What cannot be looked into counts as parts, so that reading
// it tells why.
func holds(name string) (parts, system bool) {
	info, err := os.Stat(name)
	if err != nil || !info.Mode().IsRegular() || info.Size() > lookedInto {
		return true, false
	}
	text, err := readBounded(name)
	if err != nil {
		return true, false
	}
	tokens, diagnostics := hclsyntax.LexConfig(text, name, hcl.InitialPos)
	if diagnostics.HasErrors() {
		return true, false
	}
	depth, first := 0, true // of a line
	for _, t := range tokens {
		switch t.Type {
		case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack, hclsyntax.TokenOParen, hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateControl:
			depth++
		case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack, hclsyntax.TokenCParen, hclsyntax.TokenTemplateSeqEnd:
			depth--
		case hclsyntax.TokenNewline, hclsyntax.TokenComment:
			first = true
			continue
		case hclsyntax.TokenIdent:
			if depth == 0 && first {
				word := string(t.Bytes)
				system = system || word == "system"
				parts = parts || !aside(word)
			}
		default:
		}
		first = false
	}
	return parts, system
}

// aside tells of an outermost block that it serves designs and is no part of
// one: what a used file may hold, and values with names.
func aside(word string) bool {
	x := theDialect()
	i := slices.Index(x.tops, word)
	return word == x.given.name || i >= 0 && x.top[i].catalogue
}
