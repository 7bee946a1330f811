# At the same frequency exactly.
amplifier "Rack" {
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
  high_pass        = "120 Hz" # expect pass: none needs a cut above 120 Hz
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
