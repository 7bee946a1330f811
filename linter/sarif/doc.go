// Package sarif writes results in the Static Analysis Results Interchange
// Format, version 2.1.0 (OASIS Standard), for code-scanning services, editors
// and other programs.
//
// It owns the SARIF objects it needs, as types of its own, and how a result maps
// to them. It is a pure function of the result: it never judges, computes or
// words a finding, and reads no clock, environment or disk, so that the same
// result gives the same bytes everywhere. Only the command and tests import it.
// Numbers in parentheses here and in comments are clauses of the standard.
//
// # Runs and results
//
// Each design is one run, told apart by automationDetails.id (3.17.3); services
// may take only so many runs in one log (one is known to stop at 20). Every
// outcome is one result of kind pass, fail or open; only a fail has a level
// other than none (3.27.9, 3.27.10). A result takes one line of the file, so that
// comparing two files shows the outcomes that changed.
//
// A run always has its list of results, be it empty. That of a design that could
// not be read or understood is empty too: its analysis began with the text and
// ended there (3.14.23), and services refuse a whole log over one run without the
// list. That nothing was judged stands in its invocation: executionSuccessful is
// false, with a notification for each problem and its place.
//
// In a design that has deviations every result has its list of suppressions,
// empty unless the finding was accepted by agreement (3.27.23). Their kind is
// always inSource, for deviations stand in the design's own files, and their
// status accepted: a deviation that does not hold suppresses nothing. A
// suppressed result keeps its level. Other designs have no such lists.
//
// Where a design was held against a record of its findings, or against an older
// revision, every result has a baselineState (3.27.24): a finding that was none
// before is new; the same answer is unchanged; another severity, or a pass or open
// answer where there was a finding, is updated. A finding about which nothing is
// answered any more is a result of its own, absent, at the beginning of the first
// file. A record holds findings only: other answers count as unchanged where it
// has none of their name.
//
// # Places
//
// Columns count UTF-16 code units. A file name is a relative URI with one of
// these uriBaseIds, whose own URI is left out, so that nothing in the file tells
// where the design lies on this machine (3.14.14):
//
//   - %SRCROOT%: the folder the program was started in, from which relative names
//     start. An absolute name below Tool.Folder is written this way too.
//   - %DESIGN%: the design's own folder, when it was named by an absolute path
//     that leads elsewhere.
//   - %ELSEWHERE1%, 2 …: another folder named by an absolute path.
//   - %LOUDLINT%: the program itself. The typical catalogue is part of it and on
//     no disk, so its text stands in artifact.contents when a result refers to it.
//
// # Message texts
//
// The first line of a message is the outcome's own sentence. Lines that follow
// give the sums, the limit with its basis, and the first remedy, or for an open
// outcome what is not stated. Braces are doubled (3.11.5). Brackets get a
// backslash where they would otherwise make a link (3.11.6).
//
// # Fingerprints
//
// partialFingerprints has "outcomeIdentity/v1": the first 32 hexadecimal digits
// of the SHA-256 of Outcome.Identity, that is of check, subject and key. It
// depends neither on lines and numbers nor on where the design lies. Another way
// to make it gets another name (3.27.17).
//
// # Properties
//
// What SARIF has no place for stands in property bags. Texts there are as the
// result has them, numbers are rounded to nine significant digits, and a
// "location" or "origin" is a physicalLocation. A property with nothing to say is
// left out.
//
// result.properties:
//
//	subject    the part the outcome is about: amplifier "Rack", channel "Main"
//	key        tells apart several outcomes of one check about one subject
//	identity   the outcome's name across revisions
//	evidence   list of {name, value, number, unit, sum, from: list of {note, location}}
//	limit      {text, number, unit, relation: "at most" or "at least", basis, origin}
//	remedies   list of {text, certainty: "advice", "computed" or "proved"}; those that
//	           can be written as edits are fixes too
//	missing    list of {what, part, write, location}: what an open outcome waits for
//	assumed    list of texts: what was taken for granted
//
// reportingDescriptor.properties of a rule:
//
//	asks, basis, blind   as in the check
//	cautions             list of texts
//	parameters           list of {name, description, unit, default, low, high, basis};
//	                     the default of a switch is true or false
//
// suppression.properties:
//
//	acceptedBy, until   who accepted it, and the last day that it holds
//
// notification.properties:
//
//	found, expected, nearest   the parts of the message
package sarif
