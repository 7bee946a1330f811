# Ten centimetres further it is 3.0007 dB.
amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
cable_model "own/2 x 6 mm2" {
  size        = "6 mm2"
  cores       = 2
  inductance  = "0.6 uH/m"
  capacitance = "70 pF/m"
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "own/2 x 6 mm2" # expect fail warning: takes 3.001 dB more at 10 kHz than at 1 kHz at "L" && remedy (computed) Share the load out over 2 lines of the same cable, each with a home run of its own: 1.139 dB is then lost && from a constant-voltage line
  home_run  = "130 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
