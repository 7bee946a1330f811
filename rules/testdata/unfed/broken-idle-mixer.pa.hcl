# A mixer that sends on what nobody gives it.
mixer "Desk" { # expect fail warning: Nothing is plugged into mixer
  send "Out" {
    into  = "Rack"
    input = "Line in"
  }
}
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
