# Everything that is named is used; the amplifier has an output to spare on purpose.
amplifier "Rack" { # expect pass
  rated_power = "120 W"
  output "Zone 1" { volts = "100 V" }
  output "Zone 2" { volts = "100 V" }
  input "Aux" { takes = "line" }
}
line "Hall" { # expect pass: fed by "Rack"
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "H" {
    tap   = "6 W"
    space = "Hall"
  }
}
space "Hall" { height = "3 m" } # expect pass: served by 1 loudspeaker
music "Player" { # expect pass: reaches 1 line
  into  = "Rack"
  input = "Aux"
}
