# A matrix keeps left and right of the lounge player apart for an amplifier with
# two channels, and sums the room player for the rooms.
mixer "Matrix" {
  model = "typical/matrix-16-standby"
  send "Zone 1" {
    into  = "Room amp"
    input = "Line in"
  }
  send "Zone 13" {
    into     = "Lounge amp"
    input    = "Left"
    channels = "left"
  }
  send "Zone 14" {
    into     = "Lounge amp"
    input    = "Right"
    channels = "right"
  }
}
amplifier "Room amp" { rated_power = "120 W" }
amplifier "Lounge amp" { model = "typical/low-impedance-amp-2x50" }
line "Rooms" {
  amplifier = "Room amp"
  output    = "100 V"
  loudspeaker "R" {
    quantity = 10
    tap      = "6 W"
  }
}
line "Lounge left" {
  amplifier = "Lounge amp"
  output    = "Left"
  loudspeaker "L" { impedance = "8 ohm" }
}
line "Lounge right" {
  amplifier = "Lounge amp"
  output    = "Right"
  loudspeaker "R" { impedance = "8 ohm" }
}
music "Room player" { # expect pass: Matrix sums left and right at its outputs
  into      = "Matrix"
  input     = "Music 1"
  channels  = "stereo"
  summed_by = "output"
  lines     = ["Rooms"]
}
music "Lounge player" { # expect pass: Music 2 of Matrix keeps left and right apart, and each has lines of its own
  into     = "Matrix"
  input    = "Music 2"
  channels = "stereo"
  lines    = ["Lounge left", "Lounge right"]
}
