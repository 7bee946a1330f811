// Package jsonout writes results as JSON of our own form, for programs that want
// more than a list of findings and less than SARIF.
//
// It owns the form, which schema.json beside this file describes member by member,
// with units. It is a pure function of the result: it never judges, computes or
// words a finding. The command and tests import it.
//
// # What readers can rely on
//
// The first members are format, always "loudlint result", and version. Its first
// number grows when a member goes or comes to mean something else, its second when
// members come; so readers of one first number pass over members they do not know
// and go on. Words listed in the schema, such as those of state, are not added to
// within a first number. Texts meant for people (messages, sums, limits, remedies)
// may be worded otherwise in any version: what is to be computed with stands beside
// them as a number with its unit.
//
// Members with nothing to say are left out; lists that are always there are empty.
// Designs come in the order of the call, outcomes in that of the text, and the same
// designs give the same bytes. An outcome takes one line.
package jsonout
