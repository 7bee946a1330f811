# More than the rating: nothing is free (load-margin says the rest).
amplifier "Rack" { rated_power = "240 W" } # expect fail warning: 0 W (0 %) is free
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
criteria {
  limit "spare-capacity" { wanted = "20 %" }
}
