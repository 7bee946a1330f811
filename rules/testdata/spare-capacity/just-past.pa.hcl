# 0.1 W more than three quarters.
amplifier "Rack" { rated_power = "240 W" } # expect fail warning: 59.9 W (24.96 %) is free
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 18
    tap      = "10 W"
  }
  loudspeaker "Lobby" { tap = "0.1 W" }
}
criteria {
  limit "spare-capacity" { wanted = "25 %" }
}
