# 204 W is exactly 15 % below 240 W: at the limit passes.
amplifier "Rack" {
  rated_power = "240 W" # expect pass: 15 % in hand
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 34
    tap      = "6 W"
  }
}
