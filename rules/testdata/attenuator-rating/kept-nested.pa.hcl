# Nested attenuators, each with room.
amplifier "Rack" { rated_power = "120 W" }
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Whole foyer" { # expect pass: has 42 W behind it, counting
    rating = "50 W"
    loudspeaker "F" {
      quantity = 2
      tap      = "6 W"
    }
    attenuator "Cloakroom" { # expect pass: has 30 W behind it.
      rating = "36 W"
      loudspeaker "C" {
        quantity = 3
        tap      = "10 W"
      }
    }
  }
}
