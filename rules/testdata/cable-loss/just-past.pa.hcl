# A metre more than exactly 10 %.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect fail warning: takes 10.02 % of the voltage && = 10.02 % less && the worst place && remedy (proved) Use 2 x 4 mm2
  home_run  = "501 m"
  existing "Old units" { impedance = "71.82 ohm" }
}
