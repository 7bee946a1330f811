// Package review turns a judged design into what a reviewer answers to whoever
// handed it in: each criterion against every part it applies to, numbered
// comments on what is not met, departures by agreement, and what is still to be
// supplied, by the document it is expected in.
//
// It gathers, folds and counts outcomes; it never judges anew, computes a figure
// or lays out a page. Only writers of reviews, the command and tests import it.
package review
