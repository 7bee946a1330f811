# 25 × 10 W on 240 W: the amplifier is asked for more than it has.
amplifier "Rack" {
  rated_power = "240 W" # expect fail error: 10 W too much && 25 × 10 W = 250 W && at most 216 W && remedy (proved) Fit an amplifier channel rated 300 W
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
