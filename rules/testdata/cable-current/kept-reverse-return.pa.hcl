# A reverse return: the whole current goes out by the one conductor and comes home by the other.
amplifier "Rack" { rated_power = "900 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect pass: carries 5.1 && its conductors may carry 6 A && in the leg to R 1
  home_run  = "10 m"
  ring_leg  = "10 m"
  return    = "reverse"
  loudspeaker "R" {
    quantity = 9
    tap      = "60 W"
    spacing  = "2 m"
  }
}
