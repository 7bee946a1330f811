// Package compare tells what changed between two judged designs, of which one is
// an older revision of the other: which findings are new and gone, which figures
// moved, and which parts were added, removed or renamed.
//
// It owns how parts, outcomes and figures of the two are paired. Its result is
// data, from which text, pages and SARIF are made; it computes no figure and
// judges nothing. The command, writers and tests import it.
package compare
