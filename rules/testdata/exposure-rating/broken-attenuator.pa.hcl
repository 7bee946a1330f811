# In the wash hall hang a control by a catalogue and one of its own, both for dry
# rooms, twelve and six of them over two lines that are alike.
attenuator_model "own/dry" {
  rating   = "12 W"
  exposure = "IP20"
}
amplifier "Rack" { rated_power = "240 W" }
line "East" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Bay" {
    quantity  = 6
    model     = "own/dry" # expect fail error: 12 attenuators in "Wash hall" (model "own/dry") are IP20; the place needs at least IP65
    stands_in = "Wash hall"
    loudspeaker "B" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Wash hall"
    }
  }
  attenuator "Post" {
    quantity  = 3
    exposure  = "IP54" # expect fail error: 6 attenuators in "Wash hall" (attenuator "Post" of line "East") are IP54; the place needs at least IP65
    stands_in = "Wash hall"
    loudspeaker "P" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Wash hall"
    }
  }
}
line "West" { like = "East" }
space "Wash hall" { exposure = "IP65" }
