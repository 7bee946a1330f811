// Package junit writes results as JUnit XML, so that any CI service shows outcomes
// as it shows tests.
//
// It owns which outcome becomes what, and what stands where. It is a pure function
// of the result: it never judges, computes or words a finding, and writes no times,
// so that the same result gives the same bytes. The command and tests import it.
//
// Nobody has standardised the form; junit.xsd beside this file is a schema of our
// own, written from memory, of what is written here. All of it is in common use.
//
// # What becomes what
//
// Each design is a testsuite. Each outcome, that is each question asked of each
// part, is a testcase: its name is the part, its classname the design's name
// without ending, a full stop and the check, its file and line where it stands.
// Names and classnames together are unique in a suite and hold neither lines nor
// figures, so that services follow a case over time.
//
//	passes                             a case with nothing in it
//	finding that reaches the gate      failure; its type is the severity
//	finding below the gate             a case that passes, with the finding in system-out
//	finding accepted by agreement      skipped, with by whom, until when and why
//	finding known to a record          skipped, with what record
//	open                               skipped, with what is missing
//	check that is turned off           skipped, one case, with where it was turned off
//	design not read or not understood  error, one case: design-not-read or design-not-understood
//
// So there is a failure or an error exactly where the exit status is not 0. What
// is known to a record and found no more is no case: nothing asks for it.
//
// The properties of a suite are the job's name, reference and revision, what the
// design is held against, the program's version and the counts of answers; its
// system-out tells what to mind on site, and what a result does not replace. Texts
// are made safe to be shown by textout.Printable, which also leaves nothing in them
// that XML cannot carry.
package junit
