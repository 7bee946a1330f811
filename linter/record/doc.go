// Package record keeps the findings of designs in a small text file, so that a
// design that was built long ago can be gated on what is found newly.
//
// It owns the form of that file, and how outcomes are marked by it. It never
// judges and never touches a disk: the command reads and writes the file. The
// command and tests import it.
//
// # The file
//
// The first line says what the file is and the version of its form. A design is a
// line, and below it stand its findings in the order of their names, a line each:
// the severity, and the identity of the outcome, which holds neither a place nor
// a figure. So the file changes only where findings come and go, and reads well in
// the review of a change.
//
//	loudlint record 1
//	# comment
//
//	design examples/ferry_terminal.pa.hcl
//	error   load-margin: amplifier "Halls amp", channel "Main"
//	warning cable-loss: line "Pier"
//
// What cannot be seen, and a backslash, is written \u{HEX}. Blank lines, lines that
// begin with #, and either kind of line ending are accepted. Names of designs are
// paths with forward slashes, from the folder of the file.
package record
