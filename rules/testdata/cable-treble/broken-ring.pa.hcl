# 4 ohm in the middle of a ring twice as long: 262 m either way are like 131 m of plain line.
amplifier "Stage" {
  rated_power = "400 W"
  output "A" { lowest_impedance = "4 ohm" }
}
cable_model "own/2 x 6 mm2" {
  size        = "6 mm2"
  cores       = 2
  inductance  = "0.6 uH/m"
  capacitance = "70 pF/m"
}
line "Ring" {
  amplifier = "Stage"
  output    = "A"
  cable     = "own/2 x 6 mm2" # expect fail warning: takes 3.0 && more at 10 kHz than at 1 kHz at "L" && remedy (computed) Share the load out over 2 lines of the same cable
  home_run  = "262 m"
  ring_leg  = "262 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
