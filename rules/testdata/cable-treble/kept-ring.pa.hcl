# As a plain line this would lose more than 3 dB at its end; as a ring it does not.
amplifier "Stage" {
  rated_power = "800 W"
  output "A" { lowest_impedance = "2 ohm" }
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
  cable     = "own/2 x 6 mm2" # expect pass: more at 10 kHz than at 1 kHz at "L", where it takes most && 130 m of cable one way and 130 m the other to L
  home_run  = "130 m"
  ring_leg  = "130 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
