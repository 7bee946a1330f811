# Where the return conductor comes home from is said, how far it is is not.
amplifier "Rack" { rated_power = "240 W" }
line "Loop" { # expect open: missing length of the return conductor from the last device back to the amplifier of line "Loop"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  return    = "reverse"
  loudspeaker "L" {
    quantity = 9
    spacing  = "10 m"
    tap      = "10 W"
  }
}
