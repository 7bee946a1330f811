# Half is free. What has no line on it is not asked.
amplifier "Spare" { rated_power = "120 W" }
amplifier "Rack" { rated_power = "240 W" } # expect pass: 120 W (50 %) is free
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 12
    tap      = "10 W"
  }
}
criteria {
  limit "spare-capacity" { wanted = "30 %" }
}
