# A reverse return makes its ends alike, not the loss small: the middle has lost most.
amplifier "Rack" { rated_power = "480 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect fail warning: from "L 5", the worst loudspeaker; 8 others lose more than 10 % too && remedy (proved) Use 2 x 0.75 mm2
  home_run  = "40 m"
  ring_leg  = "40 m"
  return    = "reverse"
  loudspeaker "L" {
    quantity = 9
    spacing  = "10 m"
    tap      = "30 W"
  }
}
