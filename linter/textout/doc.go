// Package textout writes results as text for people: on a terminal, on a phone,
// in a log.
//
// It owns the look of that text: what stands where, how it is wrapped, coloured
// and made safe to print. It is a pure function of a result; it never judges,
// computes a figure or words a finding, and reads neither the environment nor
// the terminal: the command decides about colour and width. Only the command
// and tests import it.
//
// # The look
//
// The page is that of a test sheet. A part of the system is a heading, joined
// by dots to the place where it is written. Each finding is an entry below it:
// the severity at the left edge with the sentence beside it, then one short row
// for each thing a reader asks next, its label in the left column: the sum, the
// limit, what was assumed, how to put it right, where else to look, which check
// asks. Where the page is too narrow for a column of labels they are followed
// by a colon and the text hangs below them.
package textout
