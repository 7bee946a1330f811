# One chain with its device; a tee with a device of its own; attenuators beside the
# way. The music line has no device and is not asked.
amplifier "Rack" { rated_power = "120 W" }
line "Ground" { # expect pass: End-of-line device "Far end" watches line "Ground" to its far end.
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "3 W" }
  line_end "Far end" { watches = "20 kHz tone" }
}
line "Upper" { # expect pass: End-of-line devices "Wing end" and "Upper end" watch line "Upper" to its far end, except what stands behind its attenuator, which no such device sees.
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "U" { tap = "3 W" }
  branch "Wing tee" {
    loudspeaker "W" { tap = "3 W" }
    line_end "Wing end" { watches = "20 kHz tone" }
  }
  loudspeaker "V" { tap = "3 W" }
  attenuator "Room" {
    loudspeaker "R" { tap = "3 W" }
  }
  line_end "Upper end" { watches = "20 kHz tone" }
}
line "Music" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "M" { tap = "3 W" }
  branch "Tee" {
    loudspeaker "N" { tap = "3 W" }
  }
}
