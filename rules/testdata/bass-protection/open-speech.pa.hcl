# Some loudspeakers are known to be safe, of others nothing is known.
amplifier "Rack" { # expect open: lowest frequency it takes
  rated_power      = "240 W"
  lowest_frequency = "150 Hz"
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
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "F" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
