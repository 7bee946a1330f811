# Two metres more of the conductor home.
amplifier "Rack" { rated_power = "240 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect fail warning: takes 10.03 % of the voltage && remedy (proved) Use 2 x 4 mm2
  home_run  = "250 m"
  ring_leg  = "252 m"
  return    = "reverse"
  existing "Old" { impedance = "93.366 ohm" }
  existing "Older" {
    leg       = "300 m"
    impedance = "93.366 ohm"
  }
}
