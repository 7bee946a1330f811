# A line with nothing on it, and an amplifier that nothing hangs on.
amplifier "Rack" { rated_power = "120 W" }
amplifier "Spare" { rated_power = "120 W" } # expect fail warning: feeds no line
line "Yard" { # expect fail warning: no loudspeaker
  amplifier = "Rack"
  output    = "100 V"
}
