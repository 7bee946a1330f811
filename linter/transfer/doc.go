// Package transfer turns tables of other people into text of the dialect, once:
// a table of loudspeakers into lines, a filled-in test sheet into readings.
// From then on the text is the only truth.
//
// It owns which head means what, how a cell becomes an attribute, and how equal
// neighbours become a run. What it does not understand it keeps as a comment
// beside the block, and says in which sheet, row and column it stands; nothing
// is dropped silently and nothing guessed. Numbers go through the one door of
// schema/quantity, with the unit of the cell or else of the head. It judges
// nothing. Only the command and tests import it.
package transfer
