# Exactly the rating passes, old equipment counted.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" { # expect pass: is rated 36 W and has 36 W behind it.
    rating = "36 W"
    loudspeaker "B" {
      quantity = 4
      tap      = "6 W"
    }
    existing "Old columns" { load = "12 W" }
  }
}
