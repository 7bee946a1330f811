// Package conductor gives what standards and textbooks say of copper conductors and of the cables made of them.
//
// It owns the tables and formulas of resistance: IEC 60228 for metric sizes, ASTM B258 with the resistivity of standard
// copper for American wire gauge, the correction to another temperature, and the list of sizes in the trade by which a
// conductor is made one step larger; of the current a conductor may carry (MostAmps); of the inductance and capacitance of
// two-core cable (Pair); and of what the markings of American cable stand for (Marking). Each result says what it rests on.
// It knows nothing of designs or limits, and imports nothing of the project. linter/analysis is its user, and rules for
// markings.
//
// Figures of resistance are of one conductor. The resistance a load sees is that of both conductors of the route: see LoopOhm.
//
// # What is not covered
//
// Aluminium, copper-clad wire, skin effect and the lay of the cores (they make a core longer than the cable by about 1 to
// 2 %; the maxima of IEC 60228 allow for it: from memory). IEC 60228 gives maxima, American tables give nominal values: a metric figure is
// therefore the more cautious of the two.
package conductor
