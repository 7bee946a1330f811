# Class 1, and what the conductors lie in is not said.
system "Stadium" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass
  rated_power  = "1000 W"
  wiring_class = "Class 1"
}
line "Stand" { # expect open: missing containment of the line of line "Stand": containment = "conduit"
  amplifier = "Amp"
  output    = "70 V"
  cable     = "12/2"
  loudspeaker "S" { tap = "100 W" }
}
line "Loose" { # expect open: missing amplifier that feeds the line
  cable = "12/2"
  loudspeaker "L" { tap = "100 W" }
}
