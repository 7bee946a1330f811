# Two blocks use one typical model: one outcome, at the first place.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    model = "typical/ceiling-6" # expect fail note: typical/ceiling-6 is typical data && 2 parts of the design use it
    tap   = "6 W"
  }
  loudspeaker "I" {
    model = "typical/ceiling-6"
    tap   = "3 W"
  }
}
