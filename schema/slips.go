package schema

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"loudlint/schema/source"
)

// boundText refuses a text whose nesting could exhaust the parser's stack.
func boundText(file *source.File) (Problem, bool) {
	if len(file.Text) > MaxFileBytes {
		return Problem{Span: source.Span{File: file}, Found: fmt.Sprintf("This file is %d bytes long.", len(file.Text)), Expected: fmt.Sprintf("At most %d bytes are read.", MaxFileBytes)}, false
	}
	return Problem{}, true
}

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
