package schema

import (
	"fmt"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/schema/schematest"
	"loudlint/schema/source"
)

// The floor of reading is the HCL library alone on the same bytes. Compare
//
//	go test ./schema -run '^$' -bench 'Parse|Read' -cpu 1,2 -count 5
//
// BenchmarkParse runs on one core whatever -cpu says; BenchmarkRead is held
// against it.

func benchmarkDesigns() []struct {
	name  string
	texts []string
} {
	return []struct {
		name  string
		texts []string
	}{
		{"100", []string{schematest.DesignText(100)}},
		{"10k", []string{schematest.DesignText(10_000)}},
		{"10k-on-one-line", []string{schematest.OneLine(10_000)}},
		{"10k-in-200-files", schematest.DesignFiles(10_000, 200)},
		{"100k", []string{schematest.DesignText(100_000)}},
		{"100k-in-200-files", schematest.DesignFiles(100_000, 200)},
	}
}

func filesOf(texts []string) ([]*source.File, int64) {
	files, size := make([]*source.File, len(texts)), 0
	for i, t := range texts {
		files[i] = source.NewFile(fmt.Sprintf("part-%03d%s", i, Ending), []byte(t))
		size += len(t)
	}
	return files, int64(size)
}

func BenchmarkParse(b *testing.B) {
	for _, design := range benchmarkDesigns() {
		b.Run(design.name, func(b *testing.B) {
			files, size := filesOf(design.texts)
			b.SetBytes(size)
			b.ReportAllocs()
			for b.Loop() {
				for _, f := range files {
					if _, diags := hclsyntax.ParseConfig(f.Text, f.Name, hcl.InitialPos); diags.HasErrors() {
						b.Fatal(diags)
					}
				}
			}
		})
	}
}

func BenchmarkRead(b *testing.B) {
	for _, design := range benchmarkDesigns() {
		b.Run(design.name, func(b *testing.B) {
			files, size := filesOf(design.texts)
			b.SetBytes(size)
			b.ReportAllocs()
			for b.Loop() {
				if _, problems := Read("made", files, Options{}); len(problems) > 0 {
					b.Fatalf("%d problems, first: %s: %s", len(problems), problems[0].Span.Text(), problems[0].Found)
				}
			}
		})
	}
}
