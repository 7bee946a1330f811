# The criteria ask of larger ones only.
amplifier "Rack" { rated_power = "240 W" } # expect pass: below 250 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 2
    tap      = "6 W"
  }
}
criteria {
  limit "oversized-amplifier" { smallest_rating = "250 W" }
}
