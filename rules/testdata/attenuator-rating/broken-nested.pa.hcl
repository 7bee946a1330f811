# What stands behind the attenuators inside it counts: 2 × 6 W beside, 3 × 10 W
# behind the inner one. The inner one holds.
amplifier "Rack" { rated_power = "120 W" }
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Whole foyer" {
    rating = "36 W" # expect fail error: is rated 36 W and has 42 W behind it, counting what stands behind the attenuators inside it: 6 W too much. && remedy (proved) Fit an attenuator rated 50 W or more.
    loudspeaker "F" {
      quantity = 2
      tap      = "6 W"
    }
    attenuator "Cloakroom" { # expect pass: rated 36 W and has 30 W behind it.
      rating = "36 W"
      loudspeaker "C" {
        quantity = 3
        tap      = "10 W"
      }
    }
  }
}
