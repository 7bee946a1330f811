package rules

import "loudlint/linter/check"

// All gives every check, in the order in which they are listed and asked.
func All() []*check.Check {
	return []*check.Check{}
}
