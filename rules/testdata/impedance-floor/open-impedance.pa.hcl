# What the loudspeaker is in ohms is not stated.
amplifier "Bar" { # expect open: missing impedance of loudspeaker "B"
  rated_power = "60 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "B" {}
}
