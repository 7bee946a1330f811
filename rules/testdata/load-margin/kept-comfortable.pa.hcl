# Published test vector 1: 12 × 6 W, 4 × 10 W and 2 × 15 W are 142 W, 78.9 % of 180 W.
amplifier "Rack" {
  rated_power = "180 W" # expect pass: take 142 W && 78.89 % && 12 × 6 W + 4 × 10 W + 2 × 15 W = 142 W
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 12
    tap      = "6 W"
  }
  loudspeaker "B" {
    quantity = 4
    tap      = "10 W"
  }
  loudspeaker "C" {
    quantity = 2
    tap      = "15 W"
  }
}
