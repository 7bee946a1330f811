# A quarter of a watt more.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    rating = "36 W" # expect fail error: has 36.25 W behind it: 0.25 W too much.
    loudspeaker "B" {
      quantity = 4
      tap      = "6 W"
    }
    existing "Old columns" { load = "12.25 W" }
  }
}
