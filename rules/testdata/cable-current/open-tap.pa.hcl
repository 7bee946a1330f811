amplifier "Rack" { rated_power = "240 W" }
line "Hall" { # expect open: missing tap of loudspeaker "H"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker "H" { quantity = 8 }
}
line "Foyer" { # expect open: missing cable of line "Foyer": cable = "2 x 1.5 mm2"
  amplifier = "Rack"
  output    = "100 V"
  home_run  = "20 m"
  loudspeaker "F" { tap = "6 W" }
}
line "Yard" { # expect open: missing current a conductor of the cable may carry of cable "2 x 0.22 mm2": a cable_model with current = "3 A"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.22 mm2"
  home_run  = "20 m"
  loudspeaker "Y" { tap = "6 W" }
}
