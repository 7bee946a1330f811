# The amplifier itself delivers nothing below what the transformers take.
amplifier "Rack" { # expect pass: Music reaches 20 loudspeakers
  rated_power      = "240 W"
  lowest_frequency = "130 Hz"
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
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
