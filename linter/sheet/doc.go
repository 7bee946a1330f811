// Package sheet writes and reads spreadsheets: CSV by RFC 4180 and XLSX
// (ISO/IEC 29500, from memory), the latter through a library.
//
// It owns how a table becomes cells and how cells become text again, bounded and
// without running anything: formulas are never written, and never worked out
// when read. It knows no column by name; that is schedule's and transfer's.
// Reading and writing are functions of bytes: the same table gives the same
// file. Only transfer, the command and tests import it.
package sheet
