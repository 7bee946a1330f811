# A mixer that is wired to nothing, and a player that goes into it.
mixer "Desk" {} # expect fail warning: sends to no other unit
amplifier "Rack" { rated_power = "120 W" }
line "Hall" { # expect pass: fed by "Rack"
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    tap   = "6 W"
    space = "Hall"
  }
}
space "Hall" { height = "3 m" } # expect pass: served by 1 loudspeaker
music "Player" { # expect fail warning: no line can be reached
  into  = "Desk"
  input = "Aux"
}
