# Ten times the load exactly.
amplifier "Rack" { rated_power = "240 W" } # expect pass: 10 times the 24 W && at most 240 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 4
    tap      = "6 W"
  }
}
