// Package sound computes what is heard of loudspeakers: direct and reverberant
// levels on a grid of listeners, how even they are, how well speech is understood,
// which arrivals come late, and the small sums of the trade beside it (ceiling
// coverage, gain before feedback, time in a loud place).
//
// It owns the formulae, each with its source beside it. Numbers go in and numbers
// come out, in SI units: metres, seconds, square and cubic metres, degrees Celsius,
// watts; levels are in dB re 20 µPa (sound pressure) or re 1 pW (sound power). It
// knows nothing of designs, limits or wording, and imports nothing of the project.
// linter/analysis is its user.
//
// Co-ordinates: x and y lie in the floor, z points up, all in one frame of the
// caller's choice.
//
// # How a space is worked out
//
// A Space says where ears are (Planes), what the room does (Room, nil outdoors),
// what the air takes, and how loud the noise is. A Loudspeaker says where it hangs,
// where it aims, how loud it is on its axis at 1 m in each octave, and its
// Directivity. SurveySpace lays a grid of listeners, makes it finer until the
// figures settle, and returns levels and speech transmission index at each.
//
// # Models, and what they leave out
//
// Loudspeakers are points far enough away; their signals add as energy, without
// interference. Nothing stands in the way, and walls reflect only through the
// reverberant field, which is statistical: see Theory. Room.Doubts says when that
// is on thin ice. Outdoors the ground reflects nothing.
package sound
