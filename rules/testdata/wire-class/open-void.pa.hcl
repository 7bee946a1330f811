# Class 2 above a drop ceiling: is the void used for air? Once it is plenum cable, it
# does not matter. A marking of another country says nothing here, nor does a bare size.
system "Office" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass
  rated_power  = "120 W"
  wiring_class = "Class 2"
}
cable_model "own/CL2" {
  size    = "18 AWG"
  cores   = 2
  marking = "CL2"
}
cable_model "own/CL2P" {
  size    = "18 AWG"
  cores   = 2
  marking = "CL2P"
}
cable_model "own/abroad" {
  size    = "0.75 mm2"
  cores   = 2
  marking = "LSZH Dca"
}
space "Office" { ceiling = "drop ceiling" }
line "A" { # expect open: missing whether the void above the ceiling carries air for the building of space "Office": air_handling_void = false
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2"
  loudspeaker "A" {
    tap   = "2 W"
    space = "Office"
  }
}
line "B" { # expect pass
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2P"
  loudspeaker "B" {
    tap   = "2 W"
    space = "Office"
  }
}
line "C" { # expect open: missing US marking of the cable of cable_model "own/abroad": marking = "CL2" && missing US marking of the cable of cable "18/2": a cable_model with marking = "CL2"
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/abroad"
  loudspeaker "C" { tap = "2 W" }
  branch "Tee" {
    cable = "18/2"
    loudspeaker "D" { tap = "2 W" }
  }
}
line "E" { # expect open: missing whether the void above the ceiling carries air for the building of line "E"
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2"
  loudspeaker "E" {
    kind = "ceiling"
    tap  = "2 W"
  }
}
