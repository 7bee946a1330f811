package check

import (
	"loudlint/linter/analysis"
	"loudlint/schema/source"
)

// Check is one question asked of a part of the system. Help, the check
// reference, SARIF's rule metadata and the examples run as tests all come from
// this value.
type Check struct {
	// ID is the question's short name in lower case with hyphens, in the words
	// of the trade. It is never used again for another question.
	ID string
	// Asks says of what it is asked and what, as one sentence with a question
	// mark: "Is the load of each power channel far enough below its rating?"
	Asks string
	// Summary is one sentence, with full stop, of what is found when the answer
	// is no.
	Summary string
	// Why says why it matters, for a person who has to decide.
	Why string
	// How says what is computed and compared.
	How string
	// Basis says where the default limits come from: a published source, or
	// "common practice, no published source".
	Basis string
	// Blind says what the check does not see and where it holds back.
	Blind string
	// Params are the limits that criteria can set.
	Params []Param
	// Cautions are what to mind when acting on it.
	Cautions []string
	// Severity is the gravest severity it gives by default.
	Severity Severity
	// Off tells that it answers only when criteria turn it on.
	Off bool
	// Last tells that it is asked when all others have answered, because it is
	// about deviations from them.
	Last bool
	// Origin is where criteria define it; zero for a check of the program's own.
	Origin source.Span
	// NeverOpen says why it can always be judged; empty for most checks, which
	// have an answer "open".
	NeverOpen string
	// Failing and Passing are whole designs; they run as tests.
	Failing, Passing Example
	// Judge asks the question of every part it applies to. It is made by one of
	// the Each functions.
	Judge Judge
}

// Example is a design that shows a check.
type Example struct {
	Design string // text of a design file
	Shows  string // what it shows, as a sentence
}

// Judge asks a check's question of all its subjects and collects the answers.
type Judge func(run *Run)

// Run is one check asked of one system with the limits in force.
type Run struct {
	Check  *Check
	System *analysis.System
	Limits Limits
	// Departures are the deviations of the design, for a check that is asked
	// Last; nil for others.
	Departures []*Departure
	Outcomes   []Outcome
}

// Severity of a failure. Higher is graver.
type Severity int

// Severities.
const (
	Note    Severity = iota + 1 // worth knowing
	Warning                     // should be put right before ordering
	Error                       // breaks something or someone
)

// String gives "error", "warning" or "note", the words SARIF uses too.
func (s Severity) String() string {
	switch s {
	case Error:
		return "error"
	case Warning:
		return "warning"
	case Note:
		return "note"
	}
	return "none"
}

// ParseSeverity reads what String prints.
func ParseSeverity(text string) (Severity, bool) {
	for _, s := range []Severity{Error, Warning, Note} {
		if s.String() == text {
			return s, true
		}
	}
	return 0, false
}
