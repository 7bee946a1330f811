# No length, no cable.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" { # expect open: missing length of the home run of line "Hall" && missing cable of line "Hall"
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 8
    tap      = "6 W"
    spacing  = "5 m"
  }
}
