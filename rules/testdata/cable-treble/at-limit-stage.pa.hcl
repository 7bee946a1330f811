# By 20 lg |1 + (R + jωL) / Z| 2.998 dB are lost at 10 kHz beyond those at 1 kHz.
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
  cable     = "own/2 x 6 mm2" # expect pass: takes 2.998 dB more at 10 kHz than at 1 kHz at "L", where it takes most && limit at most 3 dB at 10 kHz against 1 kHz
  home_run  = "129.9 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
