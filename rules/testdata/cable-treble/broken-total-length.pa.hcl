# Only the total length is known: the whole load counts at its end, and the answer
# says so.
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
  cable     = "own/2 x 6 mm2" # expect fail warning: takes 3.528 dB more && only the total length is known
  length    = "150 m"
  loudspeaker "L" {
    quantity  = 2
    impedance = "8 ohm"
  }
}
