# What the other one is, is not said.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { # expect open: kind of loudspeaker && loudspeaker "T"
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
  loudspeaker "T" {
    tap = "6 W"
  }
}
music "Player" { into = "Rack" }
