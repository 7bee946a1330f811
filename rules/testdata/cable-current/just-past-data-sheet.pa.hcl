# One watt more.
amplifier "Rack" { rated_power = "500 W" }
cable_model "own/short" {
  size    = "120 mm2"
  cores   = 2
  current = "3 A"
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/short" # expect fail warning: carries 3.01 A at full output; its conductors may carry 3 A && data sheet of own/short
  home_run  = "0.5 m"
  loudspeaker "Y" { tap = "301 W" }
}
