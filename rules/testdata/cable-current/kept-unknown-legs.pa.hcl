# No length is known, and even all of it together is not too much for either cable.
amplifier "Rack" { rated_power = "500 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1 mm2"
  loudspeaker "Y" {
    quantity = 8
    tap      = "30 W"
    spacing  = "10 m"
  }
  branch "Gate" {
    cable = "2 x 0.5 mm2" # expect pass
    loudspeaker "G" { tap = "30 W" }
  }
}
