# 720 W are 7.2 A, more than the 6 A of this cable. On a ring half of it goes either way.
amplifier "Rack" { rated_power = "900 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect pass: carries 3.5 && its conductors may carry 6 A && by the home run and && by the ring leg
  home_run  = "10 m"
  ring_leg  = "10 m"
  loudspeaker "R" {
    quantity = 9
    tap      = "80 W"
    spacing  = "2 m"
  }
}
