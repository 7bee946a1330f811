// Package cli reads command lines by declaration: a [Program] states its
// commands and their flags once, and parsing, help, hints for slips and what a
// shell offers while one types all come from that.
//
// It knows nothing of designs and checks, writes only help pages, and never
// touches the process: the command does. It stands in for a library because
// everything such a library says (help, usage, errors, hints) would have to be
// replaced here, and what is left of it is the loop in parse.go.
package cli
