# Only the total length is known: the whole load counts at the far end.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect pass: takes 4.57 % && only the total length is known
  length    = "150 m"
  loudspeaker "H" {
    quantity = 12
    tap      = "10 W"
  }
}
