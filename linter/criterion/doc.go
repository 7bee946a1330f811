// Package criterion makes checks of what a design or a consultant writes as a
// criterion: a condition over computed figures, asked of each part of a kind.
//
// It owns which figures there are (figures*.go: each with its name, unit, words
// and one function that takes it from the analysis), how a condition is checked
// before anything is judged (compile.go) and how it is worked out for a part
// (run.go). README.md is made from the same list. It computes no figure itself
// (that is linter/analysis) and reads no text (that is schema). The engine and
// the command import it.
//
// Nothing a condition says can take long: its steps are bounded, each is carried
// out once for each part, and there are no loops, files or functions beyond min,
// max and abs.
package criterion
