# On 100 V a tap marked for 70 V takes twice its watts: 2 × 10 W.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    rating = "12 W" # expect fail error: has 20 W behind it: 8 W too much.
    loudspeaker "B" {
      quantity = 2
      tap      = "5 W"
      tap_for  = "70 V"
    }
  }
}
