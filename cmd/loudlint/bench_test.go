package main

import (
	"io"
	"runtime/debug"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"loudlint/linter"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/schematest"
	"loudlint/schema/source"
)

// What the whole check of a design of 10,000 loudspeakers, drawn device by
// device, costs against the floor: the HCL parser alone on the same bytes.
//
//	go test ./cmd/loudlint -run '^$' -bench 'Floor|Whole' -cpu 1,2 -count 5
//
// The floor runs on one core whatever -cpu says, and with Go's usual garbage
// collection; the whole check runs with the command's. The aim is a whole check of at
// most 1.5 times the floor on one core and less than the floor on two.

const benchmarkLoudspeakers = 10_000

func BenchmarkFloor(b *testing.B) {
	text := []byte(schematest.DesignText(benchmarkLoudspeakers))
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if _, diags := hclsyntax.ParseConfig(text, "made.pa.hcl", hcl.InitialPos); diags.HasErrors() {
			b.Fatal(diags)
		}
	}
}

func BenchmarkWhole(b *testing.B) {
	defer debug.SetGCPercent(debug.SetGCPercent(garbagePercent)) // as the command runs
	text := []byte(schematest.DesignText(benchmarkLoudspeakers))
	checks := rules.All()
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		design, problems := schema.Read("made", []*source.File{source.NewFile("made.pa.hcl", text)}, schema.Options{})
		if len(problems) > 0 {
			b.Fatal(problems[0])
		}
		result := &linter.Result{Checks: checks, Designs: []*linter.Judged{linter.Judge(design, linter.Options{Checks: checks})}}
		if err := textout.Write(io.Discard, result, textout.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
