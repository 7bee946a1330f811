// Package schedule makes the tables that people order, wire, test and hand over
// by: loudspeakers, lines, amplifiers, cables, inputs, priorities, parts, and
// the sheet that is filled in on site.
//
// It owns what stands in which column and in which row. Every figure comes from
// analysis; nothing is computed here but sums of rows and what a rule of
// purchase adds (cutting allowance, spares). It knows no form of output: text is
// textout's, CSV and spreadsheets are sheet's, pages are report's. Writers, the
// command and tests import it.
//
// A figure that is not known is the text "not stated" in the column of numbers;
// a design that says too little makes a schedule with gaps, never one that
// looks complete.
package schedule
