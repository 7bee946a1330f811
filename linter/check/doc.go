// Package check is the contract between checks and the engine: what a check is
// and what its answer is.
//
// It owns the types Check, Param, Outcome and everything in an outcome. It never
// runs a check (that is linter), never knows which checks exist (that is rules)
// and never words or computes anything about the trade. rules, linter, the
// writers and the command import it; it imports linter/analysis and schema.
package check
