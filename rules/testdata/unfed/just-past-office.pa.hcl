# The same office, and the microphone stands elsewhere.
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
space "Office" { height = "2.7 m" } # expect fail warning: No loudspeaker serves space "Office"
microphone "Desk" { # expect pass
  into      = "Rack"
  input     = "Mic 1"
  stands_in = "Hall"
}
