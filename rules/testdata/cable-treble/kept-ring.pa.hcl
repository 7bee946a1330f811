# A ring loses no more than it would if it were open at its far end.
amplifier "Rack" { rated_power = "240 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 2.5 mm2" # expect pass: more at 10 kHz than at 1 kHz
  home_run  = "200 m"
  ring_leg  = "200 m"
  loudspeaker "R" {
    quantity = 10
    tap      = "20 W"
    spacing  = "10 m"
  }
}
