package schema

import (
	"github.com/hashicorp/hcl/v2"

	"loudlint/schema/source"
)

// explainSyntax words what the parser refused.
func explainSyntax(file *source.File, diags hcl.Diagnostics) []Problem {
	var problems []Problem
	for _, d := range diags {
		p := Problem{Found: d.Summary + ".", Expected: d.Detail}
		if d.Subject != nil {
			p.Span = source.Span{File: file, Start: int32(d.Subject.Start.Byte), End: int32(d.Subject.End.Byte)}
		}
		problems = append(problems, p)
	}
	return problems
}
