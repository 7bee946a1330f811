# 600 W at 100 V are 6 A, 3 A each way round a ring of equal ways; the data sheet says 3 A.
amplifier "Rack" { rated_power = "900 W" }
cable_model "own/short" {
  size    = "120 mm2"
  cores   = 2
  current = "3 A"
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/short" # expect pass: carries 3 A at full output; its conductors may carry 3 A && 3 A of it by the home run and 3 A by the ring leg
  home_run  = "0.5 m"
  ring_leg  = "0.5 m"
  loudspeaker "Y" { tap = "600 W" }
}
