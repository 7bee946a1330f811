# 180 W are a quarter below 240 W exactly.
amplifier "Rack" { rated_power = "240 W" } # expect pass: 60 W (25 %) is free && at most 180 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 18
    tap      = "10 W"
  }
}
criteria {
  limit "spare-capacity" { wanted = "25 %" }
}
