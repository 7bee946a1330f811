# Music down to 50 Hz; the transformers begin at 120 Hz.
amplifier "Rack" { # expect fail warning: Music reaches 20 loudspeakers on amplifier "Rack" down to 50 Hz && "H" of line "Hall" take 120 Hz && at least 120 Hz && high-pass of 120 Hz
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 20
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
music "Player" { into = "Rack" }
