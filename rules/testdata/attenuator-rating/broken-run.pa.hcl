# Fourteen rooms: the figure is that of one of them.
amplifier "Rack" { rated_power = "240 W" }
line "Floor" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Room" {
    quantity = 14
    rating   = "6 W" # expect fail error: Each of the 14 attenuators "Room" is rated 6 W and has 9 W behind it: 3 W too much. && 1 × 6 W + 1 × 3 W = 9 W && rated 12 W or more
    loudspeaker "Bed" { tap = "6 W" }
    loudspeaker "Bath" { tap = "3 W" }
  }
}
