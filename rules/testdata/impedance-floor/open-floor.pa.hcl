# The power is stated into 8 ohm, but not how low one may go.
amplifier "Bar" { # expect open: missing lowest impedance allowed of output "Out" of amplifier "Bar"
  rated_power = "60 W"
  output "Out" { rated_into = "8 ohm" }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "B" { impedance = "8 ohm" }
}
