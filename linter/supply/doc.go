// Package supply has the formulae of mains and standby power and of the heat
// that comes of it.
//
// It owns the size of a standby battery, what an amplifier draws between no
// signal and rated output, the current of a mains circuit, heat in watts and
// British thermal units, and the air that carries heat away. Each formula names
// its source. It knows nothing of designs or limits and imports nothing of the
// project. linter/analysis is its user.
package supply
