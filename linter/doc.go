// Package linter is the engine: it reads designs, works out what follows from
// them, asks the checks it is given, applies criteria, and puts the outcomes in
// one order.
//
// It holds no knowledge of the trade and never imports the checks: whoever calls
// it hands it a list, so that the command, tests and other programs can each
// hand it another. It writes nothing: textout, sarif and the other writers below
// it turn its Result into what people and machines read.
package linter
