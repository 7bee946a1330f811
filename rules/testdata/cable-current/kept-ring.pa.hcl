# A ring: however its current divides, no leg carries more than all of it.
amplifier "Rack" { rated_power = "240 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect pass: its conductors may carry 6 A
  home_run  = "20 m"
  ring_leg  = "20 m"
  loudspeaker "R" {
    quantity = 10
    tap      = "20 W"
    spacing  = "10 m"
  }
}
