# Nothing is known of either.
amplifier "Rack" { # expect open: high-pass && lowest frequency it takes
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "6 W"
  }
}
music "Player" { into = "Rack" }
