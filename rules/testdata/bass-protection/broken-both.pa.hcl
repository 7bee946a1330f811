# Music for the hall alone, calls for both lines: the hall is a matter of music and
# the yard one of speech. A high-pass for the horns would take the bass from the
# music, so that none is offered.
amplifier "Rack" {
  rated_power = "240 W"
  high_pass   = "100 Hz" # expect fail warning: Music reaches 10 loudspeakers on amplifier "Rack" down to 100 Hz # expect fail note: Speech reaches 4 loudspeakers && amplifier of their own
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 10
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity         = 4
    tap              = "10 W"
    lowest_frequency = "350 Hz"
  }
}
music "Player" {
  into  = "Rack"
  lines = ["Hall"]
}
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
