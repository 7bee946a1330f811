# 1 % above the rating.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    rated_power = "10 W"
    tap         = "10.1 W" # expect fail error: 0.1 W too much
  }
}
