# Of usual cable the one with most inductance would take more than 3 dB, the one with
# least would not: the data sheet decides. Of the second one a part is stated.
amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
  output "Right" { lowest_impedance = "4 ohm" }
}
cable_model "own/2 x 6 mm2" {
  size       = "6 mm2"
  cores      = 2
  inductance = "0.68 uH/m"
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 6 mm2" # expect open: missing inductance and capacitance of the cable of cable "2 x 6 mm2": a cable_model with inductance = "0.6 uH/m" and capacitance = "60 pF/m"
  home_run  = "125 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
line "Right" {
  amplifier = "Stage"
  output    = "Right"
  cable     = "own/2 x 6 mm2" # expect open: missing inductance and capacitance of the cable of cable_model "own/2 x 6 mm2": capacitance = "60 pF/m"
  home_run  = "125 m"
  loudspeaker "R" { impedance = "4 ohm" }
}
