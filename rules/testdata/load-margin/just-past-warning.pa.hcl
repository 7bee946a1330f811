# 216 W would be exactly 10 % below; 217 W is a warning. Two lines share the channel.
amplifier "Rack" {
  rated_power = "240 W" # expect fail warning: take 217 W && only 9.58 % in hand
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 36
    tap      = "6 W"
  }
}
line "Lobby" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "L" { tap = "1 W" }
}
