// Package rules holds the checks: one file for each, named after the question
// it asks, and All, the list of them.
//
// A check compares figures of the system with limits and words the outcome. It
// never computes more than a comparison needs, never loops over the design's
// text, and never calls another check. Each check has fixtures in
// testdata/<id>/ that show it broken, kept, at its limit, just past it, and open.
//
// Only the command and tests import this package; the engine is handed the list.
package rules
