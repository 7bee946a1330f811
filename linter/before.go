package linter

import "loudlint/linter/check"

// Before is what was known of a design before: by a record of its findings, or by
// an older revision of it. How each outcome stands to it is in Outcome.State.
type Before struct {
	From string // what it is known by: "the record hall.record", "hall.pa.hcl at B"
	// Unknown tells that nothing is known of this design, so that all it finds is
	// new.
	Unknown bool
	// Gone are the findings of then that are none any more.
	Gone []Gone
}

// Gone is a finding of before that is none any more.
type Gone struct {
	Check, Identity string
	Severity        check.Severity
	// Now is what the check answers instead: pass or open; 0 when it has nothing
	// to ask there any more.
	Now check.Verdict
	// Then is the outcome as it was; nil when a record tells, which holds no more
	// than the rest.
	Then *check.Outcome
}
