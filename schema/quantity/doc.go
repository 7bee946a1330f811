// Package quantity holds one Go type per physical dimension of a design (power
// in watts, length in metres, signal level in dBV or dBu …) and the one door
// where the text of a value becomes a number: parse, range check, compare,
// print.
//
// # What it owns
//
// Each scalar type is a float64 in the unit its comment names, so arithmetic is
// plain Go. Each [Dimension] names its units, shows an example and parses.
// Every parsed value is finite and inside the range its Dimension states. A
// text that cannot be read is an [*Error] that says which bytes are at fault,
// what was expected and, where possible, the right form to write.
//
// # How texts are read
//
//   - A unit is always written. A number alone is an error.
//   - Numbers are 6, 0.62, .5, 1/8, 7 1/2, 7½. A minus may be typed as a hyphen,
//     a minus sign or an en dash. Any Unicode space counts as a space.
//   - A comma in a number is refused (half the world reads it as a point, half as
//     a thousands mark), as are spaces between digits, scientific notation,
//     hexadecimal, NaN and infinity.
//   - Letter case of a unit is ignored, except where it carries meaning: milli and
//     mega (mW, MW) and dBV (dBv is an old name of dBu) must be written exactly.
//     A unit never has two readings inside one dimension.
//   - Feet and inches or hours and minutes may be written in one value, largest
//     first. Inch and foot marks are refused: inside quotes they break the design
//     file.
//
// # What it never does
//
// It knows nothing of the dialect, of HCL, of files, or of what a value is used
// for: bounds that depend on an attribute belong to package schema, limits to the
// checks. It keeps no state. Any package may import it; it imports only the
// standard library.
package quantity
