# One cabinet beside four horns is enough.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { # expect pass
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
  loudspeaker "T" {
    kind = "wall"
    tap  = "6 W"
  }
}
music "Player" { into = "Rack" }
