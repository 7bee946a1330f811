# Class 1 in conduit, and metal-clad cable in the open.
system "Stadium" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass: 70 V is Class 1
  rated_power  = "1000 W"
  wiring_class = "Class 1"
}
cable_model "own/MC 12-2" {
  size    = "12 AWG"
  cores   = 2
  marking = "MC"
}
line "Stand" { # expect pass: Line "Stand" is Class 1 and its cable is power wiring
  amplifier   = "Amp"
  output      = "70 V"
  cable       = "12/2"
  containment = "conduit"
  loudspeaker "S" { tap = "100 W" }
}
line "Concourse" { # expect pass
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/MC 12-2"
  loudspeaker "C" { tap = "100 W" }
}
