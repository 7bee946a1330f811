# Within its rating at 70 V, twice it on the 100 V line it is on.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    rated_power = "6 W"
    tap         = "6 W" # expect fail error: receives 12 W && 6 W × (100 V / 70.7 V)² = 12 W && remedy (computed) Connect it to a tap that takes at most 6 W at 100 V
    tap_for     = "70 V"
  }
}
