// Package resulttest makes results for the tests of writers: one with everything a
// result can hold, and any number of results of any texts.
//
// It judges nothing: the checks are made up, so that a golden file changes with its
// writer only. Tests of writers alone import it.
package resulttest
