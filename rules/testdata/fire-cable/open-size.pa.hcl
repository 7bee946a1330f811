# A size alone says nothing of fire, and the second line names no cable.
system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
line "A" { # expect open: missing fire resistance of the cable of cable "2 x 1.5 mm2": a cable_model with fire_resistant = "30 min"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  loudspeaker "A" { tap = "6 W" }
}
line "B" { # expect open: missing cable of line "B"
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "6 W" }
}
