# Two metres more of the one way.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect fail warning: takes 10.01 % of the voltage && the worst place && remedy (proved) Use 2 x 4 mm2
  home_run  = "1000 m"
  ring_leg  = "1002 m"
  existing "Old units" { impedance = "71.82 ohm" }
}
