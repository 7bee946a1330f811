# A space without a loudspeaker is no slip while a microphone stands in it.
amplifier "Rack" { rated_power = "120 W" } # expect pass
line "Hall" { # expect pass: fed by "Rack"
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    tap   = "6 W"
    space = "Hall"
  }
}
space "Hall" { height = "3 m" } # expect pass: served by 1 loudspeaker
space "Office" { height = "2.7 m" } # expect pass: a microphone stands
microphone "Desk" { # expect pass
  into      = "Rack"
  input     = "Mic 1"
  stands_in = "Office"
}
