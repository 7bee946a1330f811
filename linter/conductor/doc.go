// Package conductor gives the direct-current resistance of copper conductors.
//
// It owns the tables and formulas: IEC 60228 for metric sizes, ASTM B258 with the resistivity of standard copper for
// American wire gauge, the correction to another temperature, and the list of sizes in the trade by which a conductor is
// made one step larger. Each result says what it rests on and whether it is a table's figure or a computed one. It knows
// nothing of cables (cores, marking, insulation), designs or limits, and imports nothing of the project. linter/analysis
// is its user.
//
// Figures are of one conductor. The resistance a load sees is that of both conductors of the route: see LoopOhm.
//
// # What is not covered
//
// Aluminium, copper-clad wire, skin effect and the lay of the cores (they make a core longer than the cable by about 1 to
// 2 %; the maxima of IEC 60228 allow for it: from memory). IEC 60228 gives maxima, American tables give nominal values: a metric figure is
// therefore the more cautious of the two.
package conductor
