# A catalogue names the next size: the remedy is a model of it.
attenuator_model "own/12" {
  rating = "12 W"
  lowest = "off"
}
attenuator_model "own/36" {
  rating = "36 W"
  lowest = "off"
}
attenuator_model "own/100" {
  rating = "100 W"
  lowest = "off"
}
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    model = "own/12" # expect fail error: Attenuator "Counter" is rated 12 W and has 30 W behind it: 18 W too much. && 5 × 6 W = 30 W && at most 12 W, its rating && remedy (proved) Fit own/36, which is rated 36 W. && Take 18 W off it
    loudspeaker "B" {
      quantity = 5
      tap      = "6 W"
    }
  }
}
