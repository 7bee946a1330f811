// Package signal has the formulae of audio signals on their way from a source to
// an amplifier: levels in decibels, what is in hand at an input, what a shared
// source has to drive, how signals add in resistors, and where a long lead takes
// the treble away.
//
// Each formula names its source. It knows nothing of designs or limits and
// imports nothing of the project. Impedances are taken as resistances, which
// those of audio inputs and outputs are in the middle of the audio band.
// linter/analysis is its user.
package signal
