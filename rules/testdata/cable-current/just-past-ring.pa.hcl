# Two watts more.
amplifier "Rack" { rated_power = "900 W" }
cable_model "own/short" {
  size    = "120 mm2"
  cores   = 2
  current = "3 A"
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/short" # expect fail warning: carries 3.01 A at full output; its conductors may carry 3 A && in the leg to Y
  home_run  = "0.5 m"
  ring_leg  = "0.5 m"
  loudspeaker "Y" { tap = "602 W" }
}
