// Package schema owns the dialect: which blocks and attributes a design may
// hold, what their values mean, how names refer to each other, and every
// message about a text that is not a design. Its result is a [Design], typed and
// read-only, in which every value keeps the place it was written.
//
// HCL and cty types stop here: nothing exported mentions them. The package
// never computes what a design does (that is linter/analysis) and never judges
// it (that is rules). Anything above it may import it; it imports only its own
// subpackages.
//
// The way through the package: load.go finds files, bound.go refuses what would
// take the parser too far, parse.go turns bytes into syntax, decode.go turns
// syntax into the structs of units.go, lines.go, sources.go and job.go by the
// declarations of dialect*.go, resolve*.go follows names, models, runs and
// "like". The language reference (README.md) is made from the same declarations.
//
// A text that the parser refused takes a turn: slips*.go reads it anew, line by
// line, finds every usual slip and mends it in a copy (mend.go), so that the rest
// of the file is decoded too and all problems are told in one run.
package schema
